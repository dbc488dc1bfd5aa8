/** Reads what a person writes to put a note right. Pure. */
import type { Bound } from '../language/notes.ts';
import type { MemoView } from './views.ts';
import { readWrittenFigure, readWrittenQuantity, type Written } from './written.ts';
import { isWrittenDay } from './written-day.ts';

type KeptNote = MemoView['notes'][keyof MemoView['notes']][number];
type Fields = Readonly<Record<string, unknown>>;

const wrong = (why: string) => ({ ok: false, why }) as const;

const BOUNDS: readonly (readonly [RegExp, Bound])[] = [
  [/^(?:at most|no more than|up to)\s+/i, 'at-most'],
  [/^(?:at least|no less than)\s+/i, 'at-least'],
  [/^about\s+/i, 'about'],
];

/** The fields of a note that differ from what was read. `kind` is that of the note. */
export function readWrittenNote(kind: KeptNote['kind'], text: string, region?: string): Written<Fields> {
  if (text.trim() === '') return wrong('expected words');
  if (kind === 'figure') return figureFields(text, region);
  const [words = '', due, ...rest] = text.split(/;\s*due\s+/i);
  if (words.trim() === '' || rest.length > 0)
    return wrong('expected words, and after them "; due" and a day');
  const name = kind === 'arrival' ? 'item' : 'gist';
  const fields = { [name]: words.trim() };
  if (due === undefined) return { ok: true, value: fields };
  if (kind !== 'task' && kind !== 'promise' && kind !== 'arrival')
    return wrong('a day goes with what is to come');
  const dueName = kind === 'arrival' ? 'expected' : 'due';
  if (!isWrittenDay(due.trim())) return wrong(`expected a day such as 2026-05-03; got "${due.trim()}"`);
  return { ok: true, value: { ...fields, [dueName]: due.trim() } };
}

/** "bench top height = at most 915 mm", "gap width = between 3 mm and 5 mm". */
function figureFields(text: string, region: string | undefined): Written<Fields> {
  const [subject = '', ...rest] = text.split('=');
  const amount = rest.join('=').trim();
  const between = /^between\s+(.+?)\s+and\s+(.+)$/i.exec(amount);
  const [words, bound] = BOUNDS.find(([one]) => one.test(amount)) ?? [];
  const low = between?.[1] ?? (words ? amount.replace(words, '') : amount);
  const figure = readWrittenFigure(rest.length === 0 ? subject : `${subject}= ${low}`, region);
  if (!figure.ok) return figure;
  if (figure.value.kind !== 'figure-set') return wrong('expected a quantity after the equals sign');
  const { item, attribute, quantity } = figure.value;
  const fields = { item, attribute, ...quantity };
  if (!between) return { ok: true, value: { ...fields, bound: bound ?? 'exact' } };
  const high = readWrittenQuantity(between[2] ?? '', region);
  if (!high.ok) return high;
  if (high.value.unit !== quantity.unit) return wrong('both ends of a range have one unit');
  return { ok: true, value: { ...fields, bound: 'between', high: high.value.value } };
}
