import Fraction from 'fraction.js';
import type { FigureNote } from '../language/notes.ts';
import { baseUnit } from './base-units.ts';
import { circleOf } from './circles.ts';
import { LIMIT_MARK } from './counterpart.ts';
import {
  derivationOf,
  formulaText,
  hasReasonBehind,
  type Ingredient,
  ingredientOf,
  inputsOf,
  isWorkedOut,
} from './derivation.ts';
import { sourced } from './finding.ts';
import { type Formula, readFormula, readsOf, withSlots, writeFormula } from './formula.ts';
import { kinship, nameStems, wordsOf } from './names.ts';
import type { ClaimRow, FormulaRow, ItemRow, ModelReader, StandingRow } from './rows.ts';
import { isSpokenOf, spokenOf, stemsSaid } from './spoken-names.ts';
import { LONGEST, nearWords, type Place } from './talk.ts';
import { toleranceBetween } from './tolerance.ts';
import { difference } from './units.ts';
import type { Kept, Source } from './views.ts';
import { workOut } from './work-out.ts';
import type { Working } from './working.ts';

/** Sentences back in which the parts of a sum are looked for. */
const SENTENCES_BACK = 2;

/** A filed figure of this memo and where it stands. */
export interface Filed {
  readonly note: Kept<FigureNote>;
  readonly claim: ClaimRow;
}

/** Keeps how figures of this memo were worked out: as said, else as the arithmetic of the talk shows. */
export function fileFormulas(work: Working, filed: readonly Filed[]): void {
  for (const one of filed) {
    const { claim, note } = one;
    const standing = work.draft.standing(claim.slot);
    if (standing?.claimId !== claim.id || standing.status === 'series') continue;
    if (claim.bound !== 'exact' && claim.bound !== 'about') continue;
    const told =
      note.formula === undefined ? ofThePair(work, one, filed) : saidFormula(work, claim, note.formula);
    const said = told && ofEachSide(work, one, told);
    const formula = said ?? (stillHolds(work, claim) ? undefined : worked(work, one, filed));
    if (!formula) continue;
    const circle = circleOf(work.draft, claim.slot, inputsOf(formula));
    if (circle) reportCircle(work, claim, circle);
    else putFormula(work, claim, formula, said ? 'said' : 'arithmetic');
  }
}

/**
 * "594 by 394, that's the aperture less three all round": the sum is told once, behind the last size of the pair, and
 * holds for the other as well where it comes out right.
 */
function ofThePair(work: Working, { note, claim }: Filed, filed: readonly Filed[]): Formula | undefined {
  const other = filed.find(
    (one) =>
      one.note.formula !== undefined &&
      one.claim.slot !== claim.slot &&
      one.claim.itemId === claim.itemId &&
      one.claim.attribute === claim.attribute &&
      work.sentenceOf(one.note.span) === work.sentenceOf(note.span),
  );
  const told = other?.note.formula && saidFormula(work, claim, other.note.formula);
  return told && agrees(work, claim, { expression: writeFormula(told) }) ? told : undefined;
}

/** What is left on each of two sides. */
const EACH_SIDE =
  /\b(?:each|either|both|per|every) (?:side|sides|end|ends|way|edge)s?\b|\ba side\b|\bon both sides\b/i;

/** "The opening less the drawer, 13 each side": what the words of the sum give is both sides together. */
function ofEachSide(work: Working, { note, claim }: Filed, formula: Formula): Formula {
  if (!EACH_SIDE.test(`${note.item} ${work.place(note.span).sentence}`)) return formula;
  const half: Formula = {
    kind: 'quotient',
    left: formula,
    right: { kind: 'number', value: new Fraction(2) },
  };
  const agreesWith = (one: Formula) => agrees(work, claim, { expression: writeFormula(one) });
  return !agreesWith(formula) && agreesWith(half) ? half : formula;
}

/** The formula that a figure has already and still agrees with. */
function stillHolds(work: Working, claim: ClaimRow): boolean {
  const formula = work.draft.formula(claim.slot);
  return formula !== undefined && agrees(work, claim, formula);
}

/** Whether a formula gives a figure, within twice its tolerance. */
function agrees(work: Working, claim: ClaimRow, formula: Pick<FormulaRow, 'expression'>): boolean {
  const result = workOut(work.draft, formula, work.settings.region);
  if (!result.ok) return false;
  const exact = result.value.exact;
  const told = { value: exact.base.valueOf(), unit: baseUnit(exact.kind) };
  const apart = difference(claim, told, work.settings.region);
  const { value } = toleranceBetween(claim, claim, work.settings.tolerances, work.settings.region);
  return apart !== undefined && Math.abs(apart) <= value * 2;
}

function worked(work: Working, { note, claim }: Filed, filed: readonly Filed[]): Formula | undefined {
  const place = nearPlace(work.place(note.span));
  if (!isWorkedOut(place)) return undefined;
  const runsOn = work.place(note.span).sentence.length > LONGEST;
  const said = stemsSaid(`${place.sentence} ${note.item}`);
  // "Cut to 860 because the top's forty thick": the sentence goes on with what it was worked out from.
  const goesOn = hasReasonBehind(place);
  const cameFirst = ({ span }: Pick<Filed['note'], 'span'>) =>
    span.start < note.span.start || (goesOn && work.sentenceOf(span) === place.index);
  const isAtHand = (row: StandingRow) =>
    !row.slot.includes(LIMIT_MARK) &&
    row.slot !== claim.slot &&
    wasSaidBefore(work, row, cameFirst, filed) &&
    circleOf(work.draft, claim.slot, [row.slot]) === undefined;
  const near = filed.flatMap(({ note: other, claim: part }): Ingredient[] => {
    const back = place.index - work.sentenceOf(other.span);
    const row = work.draft.standing(part.slot);
    if (part === claim || back > SENTENCES_BACK || !cameFirst(other)) return [];
    if (runsOn && note.span.start - other.span.end > LONGEST / 2) return [];
    if (!row || !isAtHand(row)) return [];
    return [
      {
        ...ingredientOf(row, part.said, isSpokenOf(part.said, said), back),
        value: part.value,
        unit: part.unit,
      },
    ];
  });
  const items = spokenOf(work.draft.itemsSharing([...said]), said);
  const earlier = items.flatMap((item) =>
    work.draft
      .standingOf(item.id)
      .filter((row) => isAtHand(row) && !near.some((one) => one.slot === row.slot))
      .map((row) => ingredientOf(row, item.name, true)),
  );
  const unique = dedupe([...near, ...earlier]);
  return derivationOf(claim, place, unique, work.settings.region);
}

/** The place as far as it is about the figure: of talk without full stops only the words near it. */
function nearPlace(place: Place): Place {
  if (place.sentence.length <= LONGEST) return place;
  const sentence = nearWords(place);
  const start = Math.max(0, place.until.length - LONGEST / 2);
  return { ...place, sentence, until: place.sentence.slice(start, place.until.length) };
}

/** What a figure was worked out from was known before it: it stood in an earlier memo, or its note came first. */
function wasSaidBefore(
  work: Working,
  row: StandingRow,
  cameFirst: (note: Filed['note']) => boolean,
  filed: readonly Filed[],
): boolean {
  const claim = row.claimId === undefined ? undefined : work.draft.claim(row.claimId);
  if (claim?.memoId !== work.memo.id) return true;
  const said = filed.find((one) => one.claim.id === claim.id);
  return said !== undefined && cameFirst(said.note);
}

function dedupe(ingredients: readonly Ingredient[]): readonly Ingredient[] {
  const seen = new Map<string, Ingredient>();
  for (const one of ingredients) if (!seen.has(one.slot)) seen.set(one.slot, one);
  return [...seen.values()];
}

/** A formula in the speaker's words, over the slots that its names stand for; undefined when one stands for nothing. */
export function saidFormula(
  work: { readonly draft: ModelReader },
  claim: Pick<ClaimRow, 'slot' | 'attribute' | 'dimension'>,
  text: string,
): Formula | undefined {
  const read = readFormula(text);
  if (!read.ok) return undefined;
  const formula = withSlots(read.formula, (name) => slotNamed(work.draft, name, claim)?.slot);
  const complete = readsOf(formula).every((ref) => ref.kind === 'slot') && readsOf(formula).length > 0;
  return complete ? formula : undefined;
}

/** The standing figure that a name with or without an attribute stands for: "bench top height", "the opening". */
export function slotNamed(
  reader: ModelReader,
  name: string,
  claim: Pick<ClaimRow, 'slot' | 'attribute' | 'dimension'>,
): StandingRow | undefined {
  const words = wordsOf(name);
  const last = words[words.length - 1] ?? '';
  const bare = words.slice(0, -1).join(' ');
  for (const [item, attribute] of [
    [bare, last],
    [name, claim.attribute],
    [name, undefined],
  ] as const) {
    if (item === '') continue;
    const found = itemNamed(reader, item);
    const rows = (found ? reader.standingOf(found.id) : []).filter(
      (row) => row.slot !== claim.slot && !row.slot.includes(LIMIT_MARK),
    );
    const fitting = rows.filter((row) =>
      attribute === undefined ? row.dimension === claim.dimension : row.attribute === attribute,
    );
    if (fitting.length === 1 || (attribute !== undefined && fitting.length > 0))
      return fitting.find((row) => placeInPair(row.slot) === placeInPair(claim.slot)) ?? fitting[0];
  }
  return undefined;
}

/** Which size of a pair a slot is for: "592 by 400" are the first and the second. */
const placeInPair = (slot: string): string => slot.split('#')[1] ?? '';

function itemNamed(reader: ModelReader, name: string): ItemRow | undefined {
  const kin = reader.itemsLike(nameStems(name)).map((item) => ({ item, kin: kinship(name, item.name) }));
  const same = kin.find((one) => one.kin === 'same');
  if (same) return same.item;
  const close = kin.filter((one) => one.kin === 'shorter');
  return close.length === 1 ? close[0]?.item : undefined;
}

/** A figure in words: its thing and what is measured of it. */
export function nameOfSlot(reader: ModelReader, slot: string): string {
  const [itemId = '', attribute = ''] = slot.split('|');
  const row = reader.standing(slot);
  const name = reader.item(row?.itemId ?? itemId)?.name;
  return name === undefined ? slot : `${name} ${row?.attribute ?? attribute}`;
}

/** Says that a formula would go round in a circle, with the way round. The formulas stay as they were. */
export function reportCircle(
  work: Working,
  place: Pick<ClaimRow, 'slot' | 'itemId' | 'attribute' | 'value' | 'unit'> & { readonly source?: Source },
  circle: readonly string[],
): void {
  const { slot, itemId, attribute, source } = place;
  const asked = [...work.findings(), ...work.draft.findingsOn(slot)];
  if (asked.some((finding) => finding.kind === 'cycle' && finding.slot === slot)) return;
  const way = circle.map((one) => nameOfSlot(work.draft, one)).join(', which follows from ');
  work.find({
    kind: 'cycle',
    item: work.draft.item(itemId)?.name ?? '',
    itemId,
    attribute,
    slot,
    was: sourced(place, source ? { source } : {}),
    now: sourced(place, {}),
    why: `it would follow from itself: ${way}`,
  });
}

/** Keeps a formula for a figure. */
export function putFormula(
  work: Working,
  claim: Pick<ClaimRow, 'slot' | 'itemId' | 'attribute' | 'dimension' | 'value' | 'unit' | 'source'>,
  formula: Formula,
  from: FormulaRow['from'],
): void {
  const nameOf = (slot: string) => nameOfSlot(work.draft, slot);
  work.draft.put({
    table: 'formulas',
    row: {
      slot: claim.slot,
      itemId: claim.itemId,
      attribute: claim.attribute,
      dimension: claim.dimension,
      expression: writeFormula(formula),
      text: formulaText(formula, nameOf),
      inputs: inputsOf(formula),
      was: { value: claim.value, unit: claim.unit },
      source: claim.source,
      from,
    },
  });
}
