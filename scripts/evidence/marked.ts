/** Memos with what is marked in them, as the evidence is fitted on: stories, and our own sentences of many trades. */
import { readFileSync } from 'node:fs';
import { readItems } from '../../src/language/items/assign-items.ts';
import type { ReadContext } from '../../src/language/notes.ts';
import { readQuantities } from '../../src/language/quantities.ts';
import { splitSentences } from '../../src/language/sentences.ts';
import type { Draft, Scene } from '../../src/language/statements/draft.ts';
import { KINDS, type Kind } from '../../src/language/statements/evidence/kinds.ts';
import { draftsIn, sceneOf } from '../../src/language/statements/read-statements.ts';
import { tokenise } from '../../src/language/tokens.ts';
import type { GoldMemo, Story } from '../../tests/kit/story.ts';
import { readStoryFile } from '../../tests/kit/story-file.ts';

export interface Mark {
  readonly start: number;
  readonly end: number;
}

export interface MarkedMemo {
  /** Memos of one source are left out together. */
  readonly source: string;
  /** Whether rules were written with this talk in view. */
  readonly tuned: boolean;
  /** One of our own sentences, and no story. */
  readonly isSentence?: boolean;
  readonly scene: Scene;
  readonly found: readonly Draft[];
  /** What is marked, for the kinds that are marked in this memo at all. */
  readonly marks: Readonly<Partial<Record<Kind, readonly Mark[]>>>;
}

const LISTS = {
  decision: 'decisions',
  task: 'tasks',
  done: 'done',
  arrival: 'arrivals',
  problem: 'problems',
  promise: 'promises',
} as const;

function marksOf(memo: GoldMemo): Record<Kind, readonly Mark[]> {
  const marks = {} as Record<Kind, readonly Mark[]>;
  for (const kind of KINDS) {
    marks[kind] = (memo[LISTS[kind]] ?? []).flatMap(({ quote }) => {
      const start = memo.text.indexOf(quote);
      return start < 0 ? [] : [{ start, end: start + quote.length }];
    });
  }
  return marks;
}

function drafted(text: string, context: ReadContext): { scene: Scene; found: readonly Draft[] } {
  const { quantities } = readQuantities(text, tokenise(text), context);
  const { figures } = readItems(text, quantities, context);
  const scene = sceneOf(text, splitSentences(text), context);
  return { scene, found: draftsIn(scene, figures, context) };
}

/** A story's memos, each read with the tasks that the marks leave open before it. */
export function memosOf(story: Story, tuned: boolean): MarkedMemo[] {
  const open = new Map<string, string>();
  return story.memos.map((memo) => {
    const context: ReadContext = {
      units: story.units,
      ...(story.region ? { region: story.region } : {}),
      recordedAt: memo.recordedAt,
      openTasks: [...open.values()],
    };
    const read = drafted(memo.text, context);
    for (const { closes } of memo.done ?? []) if (closes) open.delete(closes);
    for (const { id, gist } of memo.tasks ?? []) open.set(id, gist);
    return { source: story.story, tuned, ...read, marks: marksOf(memo) };
  });
}

const CONTEXT: ReadContext = { units: 'metric', region: 'GB', recordedAt: '2026-06-10T18:00:00+01:00' };
const KIND_OF = new Map<string, Kind>(KINDS.map((kind) => [LISTS[kind], kind]));

/** Kinds that one sentence may well state beside the one it is listed under. */
const BESIDE: Readonly<Record<Kind, readonly Kind[]>> = {
  decision: ['task', 'problem'],
  task: ['decision', 'promise', 'arrival'],
  done: ['arrival', 'decision'],
  arrival: ['done', 'problem', 'task'],
  problem: ['arrival', 'task', 'done'],
  promise: ['task'],
};

/** A sentence as it would stand in talk, with the stretch of it marked. */
function framed(said: string, k: number, marks: (own: Mark) => MarkedMemo['marks']): MarkedMemo {
  const text = `Right. ${said.slice(0, 1).toUpperCase()}${said.slice(1)}${/[.!?]$/.test(said) ? '' : '.'} Lovely.`;
  return {
    source: `sentences ${k % 16}`,
    tuned: true,
    isSentence: true,
    ...drafted(text, CONTEXT),
    marks: marks({ start: 7, end: 7 + said.length }),
  };
}

const listed = (said: string, k: number, kind: Kind): MarkedMemo =>
  framed(said, k, (own) =>
    Object.fromEntries(
      KINDS.filter((other) => !BESIDE[kind].includes(other)).map((other) => [
        other,
        other === kind ? [own] : [],
      ]),
    ),
  );

const NOTHING_MARKED = Object.fromEntries(KINDS.map((kind) => [kind, []]));

const json = (name: string) =>
  JSON.parse(readFileSync(new URL(`../../tests/language/${name}.json`, import.meta.url), 'utf8'));

/** Our own sentences: lists of one kind, what is left alone, plain sizes, and short talk with its marks in brackets. */
export function sentenceMemos(): MarkedMemo[] {
  const memos: MarkedMemo[] = [];
  const lists = json('statements-sentences');
  for (const part of [lists.kinds, lists.gaps])
    for (const [list, sentences] of Object.entries(part as Record<string, readonly string[]>))
      sentences.forEach((said, k) => {
        memos.push(listed(said, k, KIND_OF.get(list) as Kind));
      });
  (lists.silent as readonly string[]).forEach((said, k) => {
    memos.push(framed(said, k, () => NOTHING_MARKED));
  });
  for (const list of ['problems', 'decisions', 'arrivals', 'promises'] as const) {
    const kind = KIND_OF.get(list) as Kind;
    const talk = json(`talk/${list}`) as Record<'read' | 'leave' | 'gaps', readonly string[]>;
    [...talk.read, ...talk.gaps].forEach((said, k) => {
      memos.push(listed(said, k, kind));
    });
    talk.leave.forEach((said, k) => {
      memos.push(framed(said, k, () => ({ [kind]: [] })));
    });
  }
  sizesTold().forEach((said, k) => {
    memos.push(framed(said, k, () => NOTHING_MARKED));
  });
  const brackets: readonly (readonly [string, readonly Kind[]])[] = [
    ['work-told', ['done', 'task']],
    ['work-voices', ['done', 'task', 'arrival']],
  ];
  for (const [name, kinds] of brackets) {
    const { told, gaps } = json(name) as { told: readonly string[]; gaps: readonly string[] };
    [...told, ...gaps].forEach((marked, k) => {
      memos.push({
        source: `${name} ${k % 10}`,
        tuned: true,
        isSentence: true,
        ...unbracket(marked, kinds),
      });
    });
  }
  return memos;
}

/** "The shelf is 40 mm thick.": plain sizes state nothing of the work. */
function sizesTold(): readonly string[] {
  const things = [
    'shelf',
    'rear axle',
    'window sill',
    'bunk board',
    'gate',
    'worktop',
    'flue pipe',
    'ridge beam',
  ];
  const sizes = [
    '40 mm thick',
    'nine hundred wide',
    '20 mm above the floor',
    'two metres long',
    'six foot four high',
  ];
  const sizesMore = ['under 700 wide', '85 by 120 centimetres', '150 off the wall', '12 kilos', '14 degrees'];
  const ways = [
    (thing: string, size: string) => `The ${thing} is ${size}`,
    (thing: string, size: string) => `I measured the ${thing} and it is ${size}`,
    (thing: string, size: string) => `The ${thing} comes out at ${size}, give or take`,
    (thing: string, size: string) => `The ${thing} will be ${size}`,
  ];
  return things.flatMap((thing, k) =>
    [...sizes, ...sizesMore]
      .filter((_, n) => n % 2 === k % 2)
      .map((size, n) => (ways[(k + n) % ways.length] as (typeof ways)[0])(thing, size)),
  );
}

function unbracket(marked: string, kinds: readonly Kind[]) {
  const marks: Partial<Record<Kind, Mark[]>> = Object.fromEntries(kinds.map((kind) => [kind, []]));
  const kindOf: Record<string, Kind> = { '[': 'done', '{': 'task', '<': 'arrival' };
  let text = '';
  const opened: { kind: Kind; start: number }[] = [];
  for (const letter of marked) {
    const kind = kindOf[letter];
    if (kind) opened.push({ kind, start: text.length });
    else if (/[\]}>]/.test(letter)) {
      const last = opened.pop();
      if (last) marks[last.kind]?.push({ start: last.start, end: text.length });
    } else text += letter;
  }
  return { ...drafted(text, CONTEXT), marks };
}

/** Reads the stories that can be read; a file that cannot is named and passed over. */
export function storiesFrom(files: readonly string[], tuned: boolean): MarkedMemo[] {
  return files.flatMap((file) => {
    try {
      return memosOf(readStoryFile(file), tuned);
    } catch (error) {
      console.error(`passed over: ${(error as Error).message.split('\n')[0]}`);
      return [];
    }
  });
}
