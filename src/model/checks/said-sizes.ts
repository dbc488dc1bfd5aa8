/**
 * Sizes that went into a check as plain lengths of a thing, tied to the figures that they were said as: "2400 by 880 by
 * 40" names none of them, and still each has its slot, which a later memo may change.
 */
import type { Attribute, SpokenInput } from '../../language/notes.ts';
import type { ModelReader } from '../rows.ts';
import { convert, unitKind } from '../units.ts';
import type { Working } from '../working.ts';
import { itemNamed, type Names } from './named-figure.ts';

/**
 * The inputs of a spoken check, with each plain length of a thing as the slot of the one standing figure of that thing
 * that says it; where none or several do, it stays as it was said. Nothing else is changed.
 */
export function tiedToFigures(
  work: Pick<Working, 'draft'>,
  inputs: readonly SpokenInput[],
): readonly SpokenInput[] {
  return inputs.map((one) => {
    const slot = isSaidOnce(one, inputs) ? slotOfSize(work, one) : undefined;
    return slot === undefined ? one : { ...one, expression: `[${slot}]` };
  });
}

/** Two sides of one length have one figure, and it cannot be told which of them a later one changes. */
const isSaidOnce = (one: SpokenInput, inputs: readonly SpokenInput[]): boolean =>
  inputs.filter(({ of, expression }) => of === one.of && expression === one.expression).length === 1;

const PLAIN = /^(\d+(?:\.\d+)?) ([a-z]+)$/;

function slotOfSize({ draft }: Pick<Working, 'draft'>, { of, expression }: SpokenInput): string | undefined {
  const [, value, unit = ''] = PLAIN.exec(expression) ?? [];
  if (of === undefined || value === undefined || unitKind(unit)?.kind !== 'length') return undefined;
  const names: Names = { reader: draft, ruleOf: (key) => draft.nameRule(key) };
  const item = itemNamed(names, of);
  const same = item
    ? draft
        .standingOf(item.id)
        .filter((row) => row.dimension === 'length' && row.bound === 'exact' && row.status === 'stands')
        .filter((row) => row.value === Number(value) && row.unit === unit)
    : [];
  return same.length === 1 ? same[0]?.slot : undefined;
}

const SIZE_ALONE = /^\[(([^|\]]+)\|size\|length(?:#\d+)?)\]$/;
const SIDES: ReadonlySet<Attribute> = new Set(['width', 'height', 'length', 'depth', 'thickness']);

/**
 * An expression that is a size without a name, as the side that the same size was later told by: "850 wide" of a thing
 * of 2400 by 850. From then on that side is what changes. Any other expression as it is.
 */
export function namedSince(reader: Pick<ModelReader, 'standing' | 'standingOf'>, expression: string): string {
  const [, slot = '', itemId = ''] = SIZE_ALONE.exec(expression) ?? [];
  const size = slot === '' ? undefined : reader.standing(slot);
  if (size?.attribute !== 'size') return expression;
  const named = reader
    .standingOf(itemId)
    .filter((row) => SIDES.has(row.attribute) && row.dimension === 'length' && row.bound === 'exact')
    .filter((row) => convert(row, size.unit)?.value === size.value);
  return named.length === 1 ? `[${named[0]?.slot}]` : expression;
}
