/** Quantities in words: the unit as it is printed, inches as common fractions. */
import type { Quantity, UnitName } from '../language/notes.ts';
import { type Proportioned, proportionOf } from './falls.ts';

const SIGNS: Readonly<Record<string, string>> = {
  deg: '°',
  degC: '°C',
  degF: '°F',
  'degC diff': '°C',
  'degF diff': '°F',
  m3: 'm³',
  mm2: 'mm²',
  cm2: 'cm²',
  m2: 'm²',
  ft2: 'ft²',
  'N.m': 'N·m',
  'ft.lbf': 'ft·lbf',
  floz: 'fl oz',
  '1': '',
};

/** How a unit is printed. */
export function unitSign(unit: UnitName): string {
  return SIGNS[unit] ?? unit;
}

/** Common fraction of an inch, sixty-fourths at finest: 48.5 gives "48 1/2"; nothing when it is none. */
function inchFraction(value: number, parts = 64): string | undefined {
  const sign = value < 0 ? '-' : '';
  const size = Math.abs(value);
  let top = Math.round(size * parts);
  if (Math.abs(top / parts - size) > 1e-9) return undefined;
  const whole = Math.floor(top / parts);
  top -= whole * parts;
  if (top === 0) return `${sign}${whole}`;
  let bottom = parts;
  while (top % 2 === 0) {
    top /= 2;
    bottom /= 2;
  }
  return `${sign}${whole > 0 ? `${whole} ` : ''}${top}/${bottom}`;
}

/** A bare number as printed beside its unit. */
export function numberText(value: number, unit: UnitName): string {
  if (unit === 'in' || unit === 'ft') {
    const fraction = inchFraction(value);
    if (fraction !== undefined) return fraction;
  }
  if (/^[A-Z]{3}$/.test(unit)) return Number.isInteger(value) ? String(value) : value.toFixed(2);
  const said = String(Number(value.toPrecision(8)));
  // Nobody said so many places: a third, or a root. Two figures less are still finer than any tape.
  return (said.split('.')[1]?.length ?? 0) > 4 ? String(Number(value.toPrecision(6))) : said;
}

/** A number as it is printed, with the sign of its unit. */
export const joined = (number: string, unit: UnitName) => {
  const sign = unitSign(unit);
  return sign === '' || sign === '°' ? `${number}${sign}` : `${number} ${sign}`;
};

/** A quantity with what it is of and how it was said, as far as that is known. */
export type ToldQuantity = Quantity & Proportioned;

/**
 * "905 mm", "48 1/2 in", "20 °C", "137.50 USD", "12"; of a ratio whose words or thing tell how it is spoken, "1 in 40"
 * and "3 to 1".
 */
export function quantityText(quantity: ToldQuantity): string {
  const { value, unit } = quantity;
  const number = numberText(value, unit);
  switch (proportionOf(quantity)) {
    case 'one-in':
      return `1 in ${number}`;
    case 'to-one':
      return `${number} to 1`;
    case undefined:
      return joined(number, unit);
  }
}

/** A side of a clash or a change with the thing and the measure that it is of, so that a ratio can be told in words. */
export function ofThing<Q extends Quantity>(
  quantity: Q,
  { item, attribute }: { readonly item: string; readonly attribute: string },
): Q & { readonly item: string; readonly attribute: string } {
  return { ...quantity, item, attribute };
}
