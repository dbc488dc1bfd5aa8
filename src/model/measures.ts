/** What each attribute is a quantity of. */
import type { Attribute, Dimension } from '../language/notes.ts';
import { DIMENSIONS } from '../language/notes.ts';
import { unitKind } from './units.ts';

/** Attributes that are said of one kind of quantity; "size", "gap", "other" and "time" take what they are given. */
const KIND_OF: Partial<Readonly<Record<Attribute, readonly Dimension[]>>> = {
  height: ['length'],
  width: ['length'],
  length: ['length'],
  depth: ['length'],
  thickness: ['length'],
  diameter: ['length'],
  radius: ['length'],
  clearance: ['length'],
  gap: ['length'],
  offset: ['length', 'angle'],
  angle: ['angle', 'ratio'],
  temperature: ['temperature'],
  weight: ['mass'],
  volume: ['volume'],
  area: ['area'],
  voltage: ['voltage'],
  current: ['current'],
  power: ['power'],
  pressure: ['pressure'],
  torque: ['torque'],
  time: ['time'],
  ratio: ['ratio'],
  money: ['money'],
  count: ['count', 'ratio'],
};

/** The dimension of a unit; a bare 1 is a count where a count is meant. Undefined for an unknown unit. */
export function dimensionOf(attribute: Attribute, unit: string, region?: string): Dimension | undefined {
  const kind = unitKind(unit, region)?.kind.replace(/:.*$/, '');
  if (kind === undefined) return undefined;
  if (attribute === 'count' && kind === 'ratio') return 'count';
  return DIMENSIONS.find((dimension) => dimension === kind);
}

/** The dimension that an attribute usually has; a length where it may be anything. */
export function usualDimension(attribute: Attribute): Dimension {
  return KIND_OF[attribute]?.[0] ?? 'length';
}

/** Whether an attribute may be a quantity of this dimension: a height is no weight. */
export function mayBe(attribute: Attribute, dimension: Dimension): boolean {
  const kinds = KIND_OF[attribute];
  return kinds === undefined || kinds.includes(dimension);
}
