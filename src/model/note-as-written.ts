/** A note in the words in which a person puts it right, and the kinds that it may be changed into. Pure, and quick to load. */
import type { Bound } from '../language/notes.ts';
import type { MemoView } from './views.ts';
import type { Written } from './written.ts';

type KeptNote = MemoView['notes'][keyof MemoView['notes']][number];
type Fields = Readonly<Record<string, unknown>>;

const wrong = (why: string) => ({ ok: false, why }) as const;

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
