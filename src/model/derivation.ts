/**
 * Finds out how a figure was worked out, from the words around it and the figures that were at hand: "the opening
 * plus thirty a side, 930". Only figures said as worked out are looked at, and only arithmetic that comes out right
 * is believed.
 */
import Fraction from 'fraction.js';
import type { Quantity } from '../language/notes.ts';
import { evaluate } from './evaluate.ts';
import { type Formula, readsOf, writeFormula } from './formula.ts';
import { wordsOf } from './names.ts';
import type { ClaimRow, StandingRow } from './rows.ts';
import type { Place } from './talk.ts';
import { unitKind } from './units.ts';

/** Words that say that a figure follows from others. */
const WORKED_OUT =
  /\b(?:so|that's|that is|which (?:makes|leaves|means|gives)|leaves?|less|minus|plus|take off|takes off|added|adds|comes? (?:out )?(?:at|to)|makes?|works? out|all told|in total|all up|a side|per side|(?:each|either|both) (?:side|end|way)s?|each|a riser|apiece|into (?:that|it)|set to|(?:as|is as) \w+ as|same as|to match|matches|to suit|'d be|would be|hanging over|the width|the height|the length|worked out)\b/i;
const SAME =
  /\b(?:set to|as (?:deep|thick|wide|long|high|tall|big|heavy|broad) as|same as|the same (?:as|width|height|length|depth|thickness)|to match|matches|matching|to suit|equal to|off the|straight off)\b/i;
const BOTH_SIDES =
  /\b(?:each|either|both|a side|per side|every side|two|pair|all round|sides|ends|double|twice)\b/i;
const DIVIDES = /\b(?:each|a |per|into|apiece|equal|spaces|divided|between)/i;
const ALL_TOLD =
  /\b(?:all told|in total|total|all up|altogether|comes? to|makes?|adds? up|so|that's|would be|'d be)\b/i;

/** Counts that are said as words. Twelve equal spaces, thirteen risers. */
const COUNTS =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen twenty'.split(
    ' ',
  );

/** A figure that may have gone into another. */
export interface Ingredient extends Quantity {
  readonly slot: string;
  readonly name: string;
  /** Sentences back from the figure that is looked at; 0 is the same one; undefined for earlier memos. */
  readonly sentencesBack?: number;
  /** Its item is named in the sentence. */
  readonly isNamed: boolean;
}

/** A reason comes before its figure: "930, because the opening is 870" works out the 930 and not the 870. */
const GIVEN_AS_REASON = /\b(?:because|'?cause|cos|since|given that|seeing that|seeing as)\b[^,;:]*$/i;

/** What a figure allows for stands behind it: "cut to 860, because the top is 40 thick". */
const REASON_BEHIND =
  /^[^.;]{0,40}?\b(?:because|'?cause|cos|since|seeing as|given that|to allow for|allowing for|so as to leave|what with)\b/i;

/** Whether a figure is followed by the reason that it was worked out from. */
export function hasReasonBehind(place: Place): boolean {
  return REASON_BEHIND.test(place.sentence.slice(place.until.length));
}

/** Whether a figure is said as worked out at all. */
export function isWorkedOut(place: Place): boolean {
  if (GIVEN_AS_REASON.test(place.until)) return false;
  return WORKED_OUT.test(place.sentence) || hasReasonBehind(place) || /^\s*so\b/i.test(place.after);
}

interface Attempt {
  readonly formula: Formula;
  readonly score: number;
}

/** The likeliest formula for a claim, or undefined. Ingredients are the figures at hand. */
export function derivationOf(
  claim: Pick<ClaimRow, 'value' | 'unit' | 'slot'>,
  place: Place,
  ingredients: readonly Ingredient[],
  region?: string,
): Formula | undefined {
  if (!isWorkedOut(place)) return undefined;
  const usable = ingredients.filter((one) => one.slot !== claim.slot);
  const kind = unitKind(claim.unit, region)?.kind;
  const alike = usable.filter((one) => unitKind(one.unit, region)?.kind === kind);
  const talk = `${place.sentence}`;
  const attempts = [
    ...equalities(alike, talk),
    ...sumsAndDifferences(alike, talk),
    ...multiples(alike, talk, [claim, ...usable.filter(({ sentencesBack }) => sentencesBack === 0)]),
    ...longSums(alike, talk),
    ...proportions(usable, kind, region),
  ];
  const right = attempts.filter((attempt) => comesOut(attempt.formula, claim, usable, region));
  return right.sort((a, b) => b.score - a.score)[0]?.formula;
}

const reading = (one: Ingredient): Formula => ({ kind: 'slot', slot: one.slot });
const number = (value: number): Formula => ({ kind: 'number', value: new Fraction(value) });

/** How likely an ingredient is to be meant: said in this sentence, or named in it. */
function pull(one: Ingredient): number {
  const near =
    one.sentencesBack === undefined ? 0 : one.sentencesBack === 0 ? 2 : one.sentencesBack === 1 ? 1 : 0.5;
  return near + (one.isNamed ? 1.5 : 0);
}

function equalities(alike: readonly Ingredient[], talk: string): readonly Attempt[] {
  if (!SAME.test(talk)) return [];
  return alike.filter((one) => one.isNamed).map((one) => ({ formula: reading(one), score: 3 + pull(one) }));
}

function sumsAndDifferences(alike: readonly Ingredient[], talk: string): readonly Attempt[] {
  const attempts: Attempt[] = [];
  const times = BOTH_SIDES.test(talk) ? [2, 1] : [1];
  for (const base of alike) {
    for (const part of alike) {
      if (part === base || part.slot === base.slot) continue;
      // One of the two was just said; two figures out of the past make a sum by chance.
      if (
        part.sentencesBack === undefined &&
        base.sentencesBack === undefined &&
        !(part.isNamed && base.isNamed)
      )
        continue;
      for (const count of times) {
        const right: Formula =
          count === 1 ? reading(part) : { kind: 'product', left: number(count), right: reading(part) };
        const score = pull(base) + pull(part) + (count === 2 ? 0.5 : 0);
        attempts.push({ formula: { kind: 'difference', left: reading(base), right }, score });
        attempts.push({ formula: { kind: 'sum', left: reading(base), right }, score });
      }
    }
  }
  return attempts;
}

function multiples(
  alike: readonly Ingredient[],
  talk: string,
  told: readonly Quantity[],
): readonly Attempt[] {
  // "A seventy pulley and a two ten, three to one": the ratio is told of both, and gives neither.
  if (!DIVIDES.test(talk) || RATIO.test(talk)) return [];
  // "Counter's at 36, an inch thick": the 36 is a size there, and no count that gives the inch.
  const isSize = (count: number) => told.some(({ value, unit }) => value === count && unit !== '1');
  const counts = countsIn(talk).filter((count) => count > 1 && !isSize(count));
  const near = alike.filter((one) => one.isNamed || (one.sentencesBack ?? 2) <= 1);
  return near.flatMap((one) =>
    counts.flatMap((count): Attempt[] => [
      { formula: { kind: 'quotient', left: reading(one), right: number(count) }, score: pull(one) },
      { formula: { kind: 'product', left: reading(one), right: number(count) }, score: pull(one) - 0.5 },
    ]),
  );
}

const RATIO =
  /\b(?:one|two|three|four|five|six|seven|eight|nine|ten|\d+) to (?:one|1)\b|\b(?:one|1) (?:in|to) (?:\w+)\b|\bratio\b|\b\d+:\d+\b/i;

function countsIn(talk: string): readonly number[] {
  return wordsOf(talk).flatMap((word) => {
    const at = COUNTS.indexOf(word);
    if (at > 0) return [at];
    return /^\d{1,2}$/.test(word) ? [Number(word)] : [];
  });
}

/** Three to eight figures said one after the other, added up. */
function longSums(alike: readonly Ingredient[], talk: string): readonly Attempt[] {
  if (!ALL_TOLD.test(talk)) return [];
  const said = alike.filter((one) => one.sentencesBack !== undefined && one.sentencesBack <= 2);
  const attempts: Attempt[] = [];
  for (let from = 0; from < said.length; from++) {
    for (let count = 3; count <= 8 && from + count <= said.length; count++) {
      const run = said.slice(from, from + count);
      const formula = run.map(reading).reduce((left, right): Formula => ({ kind: 'sum', left, right }));
      attempts.push({ formula, score: 1 + run.reduce((sum, one) => sum + pull(one), 0) / count });
    }
  }
  return attempts;
}

/** One figure in the ratio of two others: a speed through two pulleys. */
function proportions(
  usable: readonly Ingredient[],
  kind: string | undefined,
  region?: string,
): readonly Attempt[] {
  const attempts: Attempt[] = [];
  const sameKind = (a: Ingredient, b: Ingredient) =>
    unitKind(a.unit, region)?.kind === unitKind(b.unit, region)?.kind;
  // Both parts of a ratio are said here.
  const here = usable.filter(({ sentencesBack }) => sentencesBack === 0);
  for (const base of usable) {
    if (unitKind(base.unit, region)?.kind !== kind || !base.isNamed) continue;
    for (const over of here) {
      for (const under of here) {
        if (over === under || over === base || under === base || !sameKind(over, under)) continue;
        // One length in the ratio of two lengths comes out by chance.
        if (kind === 'count' || sameKind(base, over)) continue;
        const ratio: Formula = { kind: 'quotient', left: reading(over), right: reading(under) };
        const score = pull(base) + pull(over) + pull(under) - 1;
        attempts.push({ formula: { kind: 'product', left: reading(base), right: ratio }, score });
      }
    }
  }
  return attempts;
}

/** Products and ratios are said rounded: to a millimetre, or to a five-hundredth. A plain sum of lengths is said as it is. */
const ROUNDED_MM = 1;
const ROUNDED_SHARE = 0.002;

function comesOut(
  formula: Formula,
  claim: Quantity,
  ingredients: readonly Ingredient[],
  region?: string,
): boolean {
  const result = evaluate(formula, (slot) => ingredients.find((one) => one.slot === slot), region);
  const unit = unitKind(claim.unit, region);
  if (!result.ok || !unit || result.value.exact.kind !== unit.kind) return false;
  const told = result.value.exact.base.div(unit.factor).valueOf();
  const least = unit.kind === 'length' ? ROUNDED_MM / 1000 / unit.factor.valueOf() : 0;
  const isPlainSum = formula.kind === 'sum' || formula.kind === 'difference';
  const share = isPlainSum && unit.kind === 'length' ? 0 : ROUNDED_SHARE;
  return Math.abs(told - claim.value) <= Math.max(least, Math.abs(claim.value) * share);
}

/** The slots that a formula reads, each once. */
export function inputsOf(formula: Formula): readonly string[] {
  return readsOf(formula)
    .filter((ref) => ref.kind === 'slot')
    .map((ref) => ref.text);
}

/** A formula in words: items and attributes instead of slots. */
export function formulaText(formula: Formula, standing: (slot: string) => string): string {
  return writeFormula(formula, standing);
}

/** A standing figure as an ingredient; `isNamed`: whether its thing is spoken of in the sentence. */
export function ingredientOf(
  { slot, value, unit }: StandingRow,
  name: string,
  isNamed: boolean,
  sentencesBack?: number,
): Ingredient {
  return { slot, value, unit, name, isNamed, ...(sentencesBack === undefined ? {} : { sentencesBack }) };
}
