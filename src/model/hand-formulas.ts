/** Formulas that a person sets. */
import type { Attribute, Quantity } from '../language/notes.ts';
import { ATTRIBUTES } from '../language/notes.ts';
import type { CheckInput } from './checks/check.ts';
import { circleOf } from './circles.ts';
import { inputsOf } from './derivation.ts';
import type { FormulaSet } from './events.ts';
import { type Formula, readFormula, withSlots } from './formula.ts';
import { nameOfSlot, putFormula, reportCircle, slotNamed } from './formulas.ts';
import { reportTrouble, sourceOfStanding, standingFor } from './hand-figures.ts';
import { usualDimension } from './measures.ts';
import { wordsOf } from './names.ts';
import { itemFor } from './naming.ts';
import { recompute } from './recompute.ts';
import type { FormulaRow, ItemRow, Slot } from './rows.ts';
import { slotOf } from './rows.ts';
import { settleTroubles } from './troubles.ts';
import type { Tolerance } from './views.ts';
import { inPlainUnit, stackUp, workOut } from './work-out.ts';
import type { Working } from './working.ts';

/**
 * Sets how a figure follows from others; an empty formula takes it away. A formula that reads a figure nobody has
 * said yet waits for it. One that would follow from itself, or whose units do not fit, is not kept. Each is a finding.
 */
export function setFormula(work: Working, event: FormulaSet): void {
  const item = itemFor(work.draft, event.item, []);
  const target = targetOf(work, item, event.attribute);
  settleTroubles(work, target.slot, 'a new formula was set');
  if (event.formula.trim() === '') takeAway(work, target);
  else {
    const trouble = tryFormula(work, event, target);
    if (trouble) {
      const { kind, why } = trouble;
      reportTrouble(work, kind, item, event.attribute, target.slot, undefined, why);
    }
  }
}

interface Trouble {
  readonly kind: 'unit-clash' | 'not-run';
  readonly why: string;
}

/** Puts a formula in force, or says why it is not. A circle is reported with its way. */
function tryFormula(work: Working, event: FormulaSet, target: Target): Trouble | undefined {
  const read = readFormula(event.formula);
  if (!read.ok) return { kind: 'not-run', why: `"${event.formula}" is no formula: ${read.why}` };
  const formula = withSlots(read.formula, (name, of) => slotFor(work, name, target, of));
  const circle = circleOf(work.draft, target.slot, inputsOf(formula));
  if (circle) {
    const { source: _byHand, ...place } = target;
    reportCircle(work, { ...place, ...sourceOfStanding(work, work.draft.standing(target.slot)) }, circle);
    return undefined;
  }
  const kept = keep(work, target, formula);
  const missing = kept.inputs.filter((slot) => work.draft.standing(slot) === undefined);
  if (missing.length > 0) {
    const names = missing.map((slot) => nameOfSlot(work.draft, slot)).join(', ');
    return { kind: 'not-run', why: `it waits for figures that were never said: ${names}` };
  }
  const trouble = runs(work, event, target, kept);
  if (trouble) takeAway(work, target);
  return trouble;
}

function runs(work: Working, event: FormulaSet, target: Target, kept: FormulaRow): Trouble | undefined {
  const result = workOut(work.draft, kept, work.settings.region);
  if (!result.ok) {
    const kind = result.kind === 'unit-clash' ? 'unit-clash' : 'not-run';
    return { kind, why: `"${event.formula}" cannot be worked out: ${result.what}` };
  }
  const dimension = result.value.exact.kind.replace(/:.*$/, '');
  if (dimension !== target.dimension) {
    const why = `"${event.formula}" gives a quantity of ${dimension}, and ${event.attribute} is none`;
    return { kind: 'unit-clash', why };
  }
  const now = inPlainUnit(result.value, target.unit, work.settings.region);
  stand(work, target, kept, now, stackUp(result.value, now.unit, work.settings.region));
  return undefined;
}

type Target = Omit<FormulaRow, 'expression' | 'text' | 'inputs' | 'was' | 'from'> & Quantity;

/** The figure that a formula is set for: the one that stands, else one of the usual kind. */
function targetOf(work: Working, item: ItemRow, attribute: Attribute): Target {
  const standing = standingFor(work, item, attribute);
  const dimension = standing?.dimension ?? usualDimension(attribute);
  const source = work.source({ quote: '' });
  const { value, unit } = standing ?? { value: 0, unit: '' };
  const slot = standing?.slot ?? slotOf(item.id, attribute, dimension);
  return { slot, itemId: item.id, attribute, dimension, source, value, unit };
}

/** The slot that a name stands for: of a figure that stands, else the place where it would. */
function slotFor(work: Working, name: string, target: Target, of?: CheckInput): Slot {
  const { item, attribute } = itemAndAttribute(name, of ? attributeFor(of, target) : target.attribute);
  const own = itemFor(work.draft, item, []);
  if (own.id === target.itemId && attribute === target.attribute) return target.slot;
  const standing = of ? standingForInput(work, name, target, of) : slotNamed(work.draft, name, target);
  return standing?.slot ?? slotOf(own.id, attribute, usualDimension(attribute));
}

/** What is measured of a thing that goes into a check by its name alone: as of the result, where that is of its kind. */
function attributeFor(of: CheckInput, target: Target): Attribute {
  if (target.dimension === of.kind) return target.attribute;
  if (of.kind === 'length') return 'length';
  return ATTRIBUTES.find((attribute) => usualDimension(attribute) === of.kind) ?? 'other';
}

/** The standing figure that goes into a check: of what the input's own name says is measured, else as of the result. */
function standingForInput(work: Working, name: string, target: Target, of: CheckInput) {
  const words = wordsOf(of.name);
  const own = ATTRIBUTES.find((one) => one === words[words.length - 1]);
  const tried = [...(own ? [own] : []), attributeFor(of, target)];
  for (const attribute of tried) {
    const row = slotNamed(work.draft, name, {
      ...target,
      attribute,
      dimension: of.kind as Target['dimension'],
    });
    if (row) return row;
  }
  return undefined;
}

/** "room length" is the length of the room; "the room" is of it what the result is of its thing. */
function itemAndAttribute(name: string, fallback: Attribute) {
  const words = wordsOf(name);
  const attribute = ATTRIBUTES.find((one) => one === words[words.length - 1]);
  const bare = words.slice(0, -1).join(' ');
  return attribute && bare !== '' ? { item: bare, attribute } : { item: name, attribute: fallback };
}

function keep(work: Working, target: Target, formula: Formula): FormulaRow {
  putFormula(work, target, formula, 'set');
  return work.draft.formula(target.slot) as FormulaRow;
}

function takeAway(work: Working, target: Target): void {
  const { value, unit, ...place } = target;
  const gone = { expression: '', text: '', inputs: [], was: { value, unit }, from: 'set' } as const;
  work.draft.put({ table: 'formulas', row: { ...place, ...gone } });
}

/** Lets what was worked out stand, and works out anew what follows from it. */
function stand(
  work: Working,
  target: Target,
  kept: FormulaRow,
  now: Quantity,
  stack: Tolerance | undefined,
): void {
  work.draft.put({ table: 'formulas', row: { ...kept, was: now } });
  const { slot, itemId, attribute, dimension } = target;
  const row = { slot, itemId, attribute, dimension, ...now, bound: 'exact', status: 'stands' } as const;
  const claim = work.draft.standing(slot)?.claimId;
  const old = claim === undefined ? undefined : work.draft.claim(claim);
  if (old?.status === 'standing') {
    work.draft.put({ table: 'claims', row: { ...old, status: 'superseded' } });
  }
  work.draft.put({
    table: 'standing',
    row: { ...row, rule: `worked out: ${kept.text}`, ...(stack ? { tolerance: stack } : {}) },
  });
  recompute(work, slot);
}
