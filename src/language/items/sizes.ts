import type { Attribute } from '../notes.ts';

/** Sizes that a length may be. */
export const SIZES = [
  'height',
  'width',
  'length',
  'depth',
  'thickness',
  'diameter',
  'radius',
  'clearance',
  'gap',
  'offset',
  'size',
  'other',
] as const satisfies readonly Attribute[];
export type Size = (typeof SIZES)[number];

const OF_LENGTH: ReadonlySet<Attribute> = new Set(SIZES);
/** Whether an attribute is one that a length may have. */
export const isSize = (attribute: Attribute): attribute is Size => OF_LENGTH.has(attribute);

/** Measures that one limit may bind together: how far a thing reaches, however it is called. */
export const REACH: ReadonlySet<Attribute> = new Set<Attribute>([
  'height',
  'length',
  'clearance',
  'gap',
  'offset',
  'depth',
  'width',
  'size',
]);
