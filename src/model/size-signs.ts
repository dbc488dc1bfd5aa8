/** What the measure and the size of a figure say when it is held against one that stands. */
import type { Attribute, FigureNote } from '../language/notes.ts';
import { Signs, weighChange } from './change-signs.ts';
import type { Arriving } from './claims.ts';
import type { Sign } from './closing-signs.ts';
import { isOwnerOf } from './names.ts';
import type { StandingRow } from './rows.ts';

const MEASURES = ['same measure', 'loose measure', 'like measure', 'other measure'] as const;
const LOOSE: readonly Attribute[] = ['size', 'other', 'length'];
const ACROSS: readonly Attribute[] = ['width', 'diameter', 'clearance', 'gap', 'offset'];

function measureSign(known: Attribute, said: Attribute): (typeof MEASURES)[number] {
  if (known === said) return 'same measure';
  if (LOOSE.includes(known) || LOOSE.includes(said)) return 'loose measure';
  if (ACROSS.includes(known) && ACROSS.includes(said)) return 'like measure';
  return 'other measure';
}

const isGuessed = ({ assumed }: FigureNote): boolean => assumed?.includes('attribute') ?? false;

/** Whether a figure was told, in so many words, of another measure than one that stands. */
export const isOtherMeasure = (note: FigureNote, row: StandingRow): boolean =>
  measureSign(row.attribute, note.attribute) === 'other measure' && !isGuessed(note);

/**
 * Whether a figure tells a measure of a whole, and the one that stands another of its part: how high a bench is, how long its
 * legs.
 */
export const isOfWhole = ({ note, item }: Arriving, part: string, row: StandingRow): boolean =>
  row.attribute !== note.attribute && !isGuessed(note) && isOwnerOf(item.name, part);

/** How far apart two figures are: how many times one is the other. */
const RATIOS = [1.02, 1.06, 1.15, 1.3, 1.6, 2.2];
const RATIO_SIGNS = [...RATIOS.map((most) => `ratio below ${most}`), 'ratio far'];

function ratioStep(ratio: number): number {
  let step = 0;
  while (step < RATIOS.length && ratio >= (RATIOS[step] as number)) step++;
  return step;
}

/** Signs with what they come to. */
export interface SizeSigns {
  readonly signs: readonly Sign[];
  readonly sum: number;
}

/** Numbers of states, in the order in which they are met. */
const states = new Map<string, number>();

function numberOf(state: string): number {
  let number = states.get(state);
  if (number === undefined) {
    number = states.size;
    states.set(state, number);
  }
  return number;
}

/** By what they are put together from: a few hundred lists, asked for with every pair of figures, each made once. */
const known = new Map<number, SizeSigns>();

/**
 * The signs of one figure against one that stands, as far as measure and size go. `ratio`: how many times one is the
 * other, 1 or more.
 */
export function signsOfSize({ note, item }: Arriving, row: StandingRow, ratio: number): SizeSigns {
  const measure = measureSign(row.attribute, note.attribute);
  const step = ratioStep(ratio);
  const is = {
    guessed: isGuessed(note),
    own: item.id === row.itemId,
    sameUnit: row.unit === note.unit,
    inDoubt: row.status === 'in-doubt',
    workedOut: row.claimId === undefined,
  };
  const flags = [is.guessed, is.own, is.sameUnit, is.inDoubt, is.workedOut];
  let key = numberOf(row.state ?? 'untold') * MEASURES.length + MEASURES.indexOf(measure);
  key = key * RATIO_SIGNS.length + step;
  for (const flag of flags) key = 2 * key + Number(flag);
  const before = known.get(key);
  if (before) return before;
  const signs = new Signs();
  signs.put(measure);
  signs.put(`${measure}, guessed`, is.guessed);
  signs.put('other measure told', measure === 'other measure' && !is.guessed);
  signs.put(`${measure}, own thing`, is.own);
  signs.put(RATIO_SIGNS[step] as string);
  signs.put('same unit', is.sameUnit);
  signs.put(`was ${row.state ?? 'untold'}`);
  signs.put('in doubt', is.inDoubt);
  signs.put('worked out', is.workedOut);
  const found = { signs: signs.list, sum: weighChange(signs.list) };
  known.set(key, found);
  return found;
}
