/** Reads what a person writes to put a note right, and writes a note in that form. Pure. */
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
const BOUND_WORDS: Readonly<Partial<Record<Bound, string>>> = {
  'at-most': 'at most ',
  'at-least': 'at least ',
  about: 'about ',
};

/** A note as it is put right: "bench top height = 915 mm", "Oil the hinges; due 2026-05-02". Nothing for a record. */
export function noteAsWritten(note: KeptNote): string | undefined {
  switch (note.kind) {
    case 'figure': {
      const unit = note.unit === '1' ? '' : ` ${note.unit}`;
      const value =
        note.high === undefined
          ? `${BOUND_WORDS[note.bound] ?? ''}${note.value}${unit}`
          : `between ${note.value}${unit} and ${note.high}${unit}`;
      return `${note.item} ${note.attribute} = ${value}`;
    }
    case 'arrival':
      return note.expected ? `${note.item}; due ${note.expected}` : note.item;
    case 'task':
    case 'promise':
      return note.due ? `${note.gist}; due ${note.due}` : note.gist;
    case 'decision':
    case 'done':
    case 'problem':
    case 'correction':
      return note.gist;
    default:
      return undefined;
  }
}

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

/** Words for the kinds that a note may be changed into; what is on record stays what it is. */
export const KIND_WORDS = {
  'to do': 'task',
  done: 'done',
  decided: 'decision',
  snag: 'problem',
  coming: 'arrival',
  here: 'arrival',
  promise: 'promise',
  'put right': 'correction',
} as const satisfies Readonly<Record<string, KeptNote['kind']>>;

/** The fields that make a note one of another kind. `word` may be the beginning of one of `KIND_WORDS`. */
export function kindFields(note: KeptNote, word: string): Written<Fields> {
  const typed = word.trim().toLowerCase();
  const meant = Object.keys(KIND_WORDS).filter((one) => one.startsWith(typed)) as (keyof typeof KIND_WORDS)[];
  const [only] = meant;
  if (typed === '' || only === undefined || meant.length > 1)
    return wrong(`expected one of: ${Object.keys(KIND_WORDS).join(', ')}`);
  if (noteAsWritten(note) === undefined) return wrong('what is on record stays what it is');
  const kind = KIND_WORDS[only];
  const words =
    'gist' in note ? note.gist : 'item' in note && note.kind === 'arrival' ? note.item : note.quote;
  if (kind === 'arrival') return { ok: true, value: { kind, item: words, received: only === 'here' } };
  return { ok: true, value: { kind, gist: words, ...(kind === 'task' ? { waitsFor: [] } : {}) } };
}
