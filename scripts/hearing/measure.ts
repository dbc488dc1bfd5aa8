/** What was said against what was heard, before and after repair, and the notes of both. */

import { doubtsInText } from '../../src/language/heard/heard-doubts.ts';
import { mendText } from '../../src/language/heard/mended-text.ts';
import { readMemo } from '../../src/language/pipeline.ts';
import { foldSpeech, numbersIn } from '../../tests/kit/fold-speech.ts';
import { readHeardStory, readStory } from '../../tests/kit/read-story.ts';
import { StoryScore } from '../../tests/kit/score-story.ts';
import type { Story } from '../../tests/kit/story.ts';
import { sumErrors, type WordErrors, wordErrors } from '../../tests/kit/word-error-rate.ts';
import { addToTally, emptyTally, heardRight, plainWord, plainWords, type RepairTally } from './aligned.ts';
import { type HeardTalk, textOf } from './heard-talk.ts';

interface BeforeAndAfter {
  before: WordErrors[];
  after: WordErrors[];
}

/** Counts over many memos. */
export class HearingMeasure {
  readonly #words: BeforeAndAfter = { before: [], after: [] };
  readonly #numbers: BeforeAndAfter = { before: [], after: [] };
  readonly #tally: RepairTally = emptyTally();
  readonly #itemWords = { all: 0, wrongBefore: 0, wrongAfter: 0 };
  readonly #said = new StoryScore();
  readonly #heard = new StoryScore();
  #notesOfMemos = 0;

  /** One story with what was heard of each of its memos; memos that were not heard are left out. */
  add(story: Story, heardOf: (text: string) => HeardTalk | undefined): void {
    const memos = story.memos.flatMap((memo) => {
      const talk = heardOf(memo.text);
      if (talk === undefined) return [];
      const doubts = doubtsInText(talk.utterances);
      return [{ memo, heard: textOf(talk), ...(doubts ? { doubts } : {}) }];
    });
    const known: string[] = [];
    for (const { memo, heard, doubts } of memos) {
      const { notes, repairs = [] } = readMemo(heard, {
        units: story.units,
        ...(story.region ? { region: story.region } : {}),
        recordedAt: memo.recordedAt,
        knownItems: known,
        isHeard: true,
        ...(doubts ? { doubts } : {}),
      });
      known.push(...notes.figures.map(({ item }) => item));
      this.addText(memo.text, heard, mendText(heard, repairs).text, repairs.length);
      this.#addItemWords(
        memo.text,
        heard,
        mendText(heard, repairs).text,
        (memo.figures ?? []).map(({ item }) => item),
      );
    }
    if (memos.length === 0) return;
    const part = { ...story, memos: memos.map(({ memo }) => memo) };
    this.#said.add(part, readStory(part));
    this.#heard.add(
      part,
      readHeardStory({
        ...part,
        memos: memos.map(({ memo, heard, doubts }) => ({
          ...memo,
          text: heard,
          ...(doubts ? { doubts } : {}),
        })),
      }),
    );
    this.#notesOfMemos += memos.length;
  }

  /** One text; `mended` is what was heard with its repairs. */
  addText(said: string, heard: string, mended = heard, repairs = 0): void {
    const reference = foldSpeech(said);
    for (const [text, when] of [
      [heard, 'before'],
      [mended, 'after'],
    ] as const) {
      const folded = foldSpeech(text);
      this.#words[when].push(wordErrors(reference, folded));
      this.#numbers[when].push(wordErrors(numbersIn(reference), numbersIn(folded)));
    }
    addToTally(this.#tally, said, heard, mended, repairs);
  }

  #addItemWords(said: string, heard: string, mended: string, items: readonly string[]): void {
    const names = new Set(
      items
        .flatMap((item) => item.toLowerCase().split(/[^\p{L}']+/u))
        .filter((word) => word.length > 2)
        .map(plainWord),
    );
    const words = plainWords(said);
    const [before, after] = [heardRight(words, plainWords(heard)), heardRight(words, plainWords(mended))];
    words.forEach((word, at) => {
      if (!names.has(word)) return;
      this.#itemWords.all++;
      if (!before[at]) this.#itemWords.wrongBefore++;
      if (!after[at]) this.#itemWords.wrongAfter++;
    });
  }

  /** One line; `undefined` when nothing was heard. */
  line(): string | undefined {
    const { words, tradeWords, tradeWrongBefore, tradeWrongAfter, newErrors } = this.#tally;
    if (words === 0) return undefined;
    const parts = [
      `${words} words`,
      `wrong ${change(this.#words)}`,
      `trade words ${percent(tradeWrongBefore / tradeWords)} to ${percent(tradeWrongAfter / tradeWords)} of ${tradeWords} (${percent(1 - tradeWrongAfter / Math.max(1, tradeWrongBefore))} mended)`,
      `new errors ${((newErrors / words) * 1000).toFixed(2)} in 1,000`,
      `numbers ${change(this.#numbers)}`,
    ];
    if (this.#notesOfMemos > 0) {
      const { all, wrongBefore, wrongAfter } = this.#itemWords;
      parts.push(
        `item words ${percent(wrongBefore / Math.max(1, all))} to ${percent(wrongAfter / Math.max(1, all))}`,
        `figures ${this.#ratio('figures')}`,
        `items ${this.#ratio('figure item')}`,
      );
    }
    return parts.join(', ');
  }

  /** A score from speech, from text, and the one as a share of the other. */
  #ratio(name: string): string {
    const of = (score: StoryScore) => score.rows().find((row) => row.name === name)?.f1 ?? 0;
    const [heard, said] = [of(this.#heard), of(this.#said)];
    return `${heard.toFixed(3)} of ${said.toFixed(3)} (${(heard / said).toFixed(2)})`;
  }
}

const percent = (share: number) => `${(share * 100).toFixed(1)} %`;

function change({ before, after }: BeforeAndAfter): string {
  return `${percent(sumErrors(before).rate)} to ${percent(sumErrors(after).rate)}`;
}
