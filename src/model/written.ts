/** Reads what a person writes to set a figure, a formula or a limit: "bench top length = room length - 1700 mm". */
import { ATTRIBUTES, type Attribute, type Quantity } from '../language/notes.ts';
import { evaluate } from './evaluate.ts';
import type { FigureSet, FormulaSet, LimitSet } from './events.ts';
import { readFormula, readsOf } from './formula.ts';
import { unitKind } from './units.ts';
import { inPlainUnit } from './work-out.ts';

type Set<E> = Omit<E, 'seq' | 'at'>;
export type Written<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly why: string };

const wrong = (why: string) => ({ ok: false, why }) as const;

/**
 * A figure or a formula: the thing, what is measured of it, an equals sign, and a quantity or an expression over other
 * figures. Nothing after the sign takes the formula away.
 */
export function readWrittenFigure(text: string, region?: string): Written<Set<FigureSet> | Set<FormulaSet>> {
  const [subject = '', ...rest] = text.split('=');
  if (rest.length !== 1) return wrong('expected one equals sign, as in "bench top height = 915 mm"');
  const place = placeOf(subject);
  if (!place) return wrong(attributeMissing(subject));
  const formula = (rest[0] as string).trim();
  if (SPREAD.test(formula)) {
    const measure = readWrittenMeasure(formula, region);
    return measure.ok ? { ok: true, value: { kind: 'figure-set', ...place, ...measure.value } } : measure;
  }
  if (formula === '') return { ok: true, value: { kind: 'formula-set', ...place, formula } };
  const read = readFormula(formula);
  if (!read.ok) return wrong(`"${inShort(formula)}" is no formula: ${read.why}`);
  if (readsOf(read.formula).length > 0)
    return { ok: true, value: { kind: 'formula-set', ...place, formula } };
  const quantity = readWrittenQuantity(formula, region);
  if (!quantity.ok) return quantity;
  return { ok: true, value: { kind: 'figure-set', ...place, quantity: quantity.value } };
}

/** Between a value and how far it may be off. */
const SPREAD = /\s*(?:±|\+\/-|\+-|\bplus or minus\b|\bgive or take\b)\s*/i;

/** A quantity, and how far it may be off where that is written too: "915 mm", "915 mm ± 2 mm", "915 mm +/- 2". */
export function readWrittenMeasure(
  text: string,
  region?: string,
): Written<Pick<FigureSet, 'quantity' | 'plusMinus'>> {
  const [value = '', ...spreads] = text.split(SPREAD);
  const quantity = readWrittenQuantity(value.trim(), region);
  if (!quantity.ok) return quantity;
  const [spread] = spreads;
  if (spread === undefined) return { ok: true, value: { quantity: quantity.value } };
  if (spreads.length > 1) return wrong(`"${inShort(text)}" has more than one tolerance`);
  const read = readWrittenQuantity(spread.trim(), region);
  if (!read.ok) return read;
  const { unit } = quantity.value;
  const plusMinus = read.value.unit === '1' ? { ...read.value, unit } : read.value;
  if (inUnitOf(plusMinus, unit, region) === undefined)
    return wrong(`${unit} and ${plusMinus.unit} do not compare`);
  if (!(plusMinus.value > 0)) return wrong('a tolerance has to be more than nothing');
  return { ok: true, value: { quantity: quantity.value, plusMinus } };
}

/** A long text cut short, for a message. */
const inShort = (text: string): string =>
  text.length > LONGEST_SHOWN ? `${text.slice(0, LONGEST_SHOWN)}…` : text;
const LONGEST_SHOWN = 60;

/** A quantity: "915 mm", "4 ft 2 3/8 in", "2 * 18 mm". */
export function readWrittenQuantity(text: string, region?: string): Written<Quantity> {
  const read = readFormula(text);
  if (!read.ok) return wrong(`"${inShort(text)}" is no quantity: ${read.why}`);
  const [unknown] = readsOf(read.formula);
  if (unknown) return wrong(`"${inShort(unknown.text)}" is no unit that is known`);
  if (read.formula.kind === 'number') {
    const { value, unit = '1' } = read.formula;
    return { ok: true, value: { value: value.valueOf(), unit } };
  }
  const result = evaluate(read.formula, () => undefined, region);
  if (!result.ok) return wrong(`"${inShort(text)}" cannot be worked out: ${result.what}`);
  return { ok: true, value: inPlainUnit(result.value, '', region) };
}

const SIDES: readonly (readonly [RegExp, LimitSet['bound']])[] = [
  [/\s+(?:at most|no more than|up to|<=|≤)\s+/i, 'at-most'],
  [/\s+(?:at least|no less than|>=|≥)\s+/i, 'at-least'],
  [/\s+between\s+/i, 'between'],
];

/** What a reading must reach: "workshop at least 15 degC". */
export function readWrittenReading(
  text: string,
  region?: string,
): Written<Quantity & { readonly bound: 'at-least' | 'at-most' }> {
  const side = SIDES.find(([words, bound]) => bound !== 'between' && words.test(text));
  const [words, bound] = side ?? [];
  if (!words || !bound || bound === 'between')
    return wrong('expected "at least" or "at most" before the amount');
  const quantity = readWrittenQuantity((text.split(words)[1] ?? '').trim(), region);
  return quantity.ok ? { ok: true, value: { ...quantity.value, bound } } : quantity;
}

/** A limit: "doorway width at most 740 mm", "gap height between 3 mm and 5 mm". `about` says what must respect it. */
export function readWrittenLimit(text: string, about: string, region?: string): Written<Set<LimitSet>> {
  const side = SIDES.find(([words]) => words.test(text));
  if (!side)
    return wrong('expected "at most", "at least" or "between", as in "doorway width at most 740 mm"');
  const [words, bound] = side;
  const [subject = '', edges = ''] = text.split(words);
  const place = placeOf(subject);
  if (!place) return wrong(attributeMissing(subject));
  const [low, high] = bound === 'between' ? edges.split(/\s+and\s+/i) : [edges];
  const first = readWrittenQuantity(low ?? '', region);
  if (!first.ok) return first;
  const limit = { kind: 'limit-set', ...place, about, bound, quantity: first.value } as const;
  if (bound !== 'between') return { ok: true, value: limit };
  const second = readWrittenQuantity(high ?? '', region);
  if (!second.ok) return second;
  const top = inUnitOf(second.value, first.value.unit, region);
  if (top === undefined) return wrong(`${first.value.unit} and ${second.value.unit} do not compare`);
  return { ok: true, value: { ...limit, high: top } };
}

function inUnitOf({ value, unit }: Quantity, wanted: string, region?: string): number | undefined {
  const [from, to] = [unitKind(unit, region), unitKind(wanted, region)];
  if (!from || !to || from.kind !== to.kind) return undefined;
  return unit === wanted ? value : from.factor.mul(value).div(to.factor).valueOf();
}

/** "bench top length": the last word says what is measured, the words before it of what. */
function placeOf(subject: string): { readonly item: string; readonly attribute: Attribute } | undefined {
  const words = subject.trim().split(/\s+/);
  const attribute = ATTRIBUTES.find((one) => one === words[words.length - 1]?.toLowerCase());
  return attribute && words.length > 1 ? { item: words.slice(0, -1).join(' '), attribute } : undefined;
}

function attributeMissing(subject: string): string {
  return `"${inShort(subject.trim())}" does not end in what is measured: ${ATTRIBUTES.join(', ')}`;
}
