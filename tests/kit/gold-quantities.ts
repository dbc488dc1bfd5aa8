/**
 * Scores the naming of items alone: the quantities are the gold ones, so that a misread number costs nothing here.
 * Memos are read in order, and each is given the figures named in the memos before it.
 */
import { readItems } from '../../src/language/items/assign-items.ts';
import type { FigureNote, KnownFigure } from '../../src/language/notes.ts';
import type { GoldFigure, GoldMemo, Story, StoryReading } from './story.ts';

/** Gold figures as quantities, each at its quote; a quote said twice is taken in order of the list. */
export function goldQuantities(memo: GoldMemo) {
  let from = 0;
  return (memo.figures ?? []).map((figure) => {
    let start = memo.text.indexOf(figure.quote, from);
    if (start < 0) start = memo.text.indexOf(figure.quote);
    from = start + 1;
    const { quote, value, unit, dimension, bound } = figure;
    return { quote, value, unit, dimension, bound, span: { start, end: start + quote.length } };
  });
}

export interface NamedFigure {
  readonly memo: string;
  readonly gold: GoldFigure;
  readonly said: FigureNote;
  readonly rule: string;
}

/** Names every gold quantity of a story; `reading` holds figures only. */
export function nameGoldQuantities(story: Story): {
  readonly named: readonly NamedFigure[];
  readonly reading: StoryReading;
} {
  const named: NamedFigure[] = [];
  const known: KnownFigure[] = [];
  const memos = story.memos.map((memo) => {
    const { figures, trace } = readItems(memo.text, goldQuantities(memo), {
      units: story.units,
      ...(story.region ? { region: story.region } : {}),
      recordedAt: memo.recordedAt,
      knownItems: [...new Set(known.map((figure) => figure.item))],
      knownFigures: [...known],
    });
    figures.forEach((said, k) => {
      named.push({
        memo: memo.id,
        gold: memo.figures?.[k] as GoldFigure,
        said,
        rule: trace[k]?.rule ?? '',
      });
      if (!said.limit?.about)
        known.push({ item: said.item, attribute: said.attribute, value: said.value, unit: said.unit });
    });
    return {
      figures,
      decisions: [],
      tasks: [],
      done: [],
      arrivals: [],
      problems: [],
      promises: [],
      conflicts: [],
    };
  });
  return { named, reading: { memos, open: [] } };
}

/** Of the gold names said in two memos or more: how many of the later mentions got the name of the first. */
export function nameStability(named: readonly NamedFigure[]): {
  readonly same: number;
  readonly all: number;
  readonly differing: readonly string[];
} {
  const first = new Map<string, string>();
  let same = 0;
  let all = 0;
  const differing: string[] = [];
  for (const { memo, gold, said } of named) {
    const key = `${gold.item} ${gold.attribute}`;
    const name = `${said.item} | ${said.attribute}`;
    const before = first.get(key);
    if (before === undefined) {
      first.set(key, name);
      continue;
    }
    all++;
    if (before === name) same++;
    else differing.push(`${memo} ${gold.item} (${gold.attribute}): first "${before}", then "${name}"`);
  }
  return { same, all, differing };
}
