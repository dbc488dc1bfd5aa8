/** Quantities in print: the value as it stands, rounded only here, and the other system beside it where asked. */
import type { Bound, HouseUnits, Quantity, UnitName } from '../language/notes.ts';
import {
  joined,
  numberText,
  ofThing,
  quantityText,
  type ToldQuantity,
  unitSign,
} from '../model/quantity-words.ts';
import { convert } from '../model/units.ts';

export { numberText, ofThing, quantityText, unitSign };

/** A difference or a tolerance: without a sign, to four figures, because the rest is below any tape. */
export function amountText(amount: ToldQuantity): string {
  return quantityText({ ...amount, value: Number(Math.abs(amount.value).toPrecision(4)) });
}

export interface BoundedQuantity extends ToldQuantity {
  readonly bound?: Bound | undefined;
  readonly high?: number | undefined;
  readonly plusMinus?: number | undefined;
  readonly plusMinusUnit?: UnitName | undefined;
}

const BOUND_WORDS: Readonly<Record<Bound, string>> = {
  exact: '',
  about: 'about ',
  'at-least': 'at least ',
  'at-most': 'at most ',
  between: '',
};

/** "10 to 12 mm"; of falls and mixes each end by itself: "1 in 40 to 1 in 60". */
function rangeText(figure: BoundedQuantity, high: number): string {
  const { value, unit } = figure;
  const plain = joined(numberText(high, unit), unit);
  const told = quantityText({ ...figure, value: high });
  if (told !== plain) return `${quantityText(figure)} to ${told}`;
  return joined(`${numberText(value, unit)} to ${numberText(high, unit)}`, unit);
}

/** A quantity with its bound and its spoken tolerance: "about 905 mm", "10 to 12 mm", "40 mm ± 1 mm", "at least 1 in 60". */
export function boundedText(figure: BoundedQuantity): string {
  const range = figure.high === undefined ? quantityText(figure) : rangeText(figure, figure.high);
  const spread =
    figure.plusMinus === undefined
      ? ''
      : ` ± ${quantityText({ value: figure.plusMinus, unit: figure.plusMinusUnit ?? figure.unit })}`;
  return `${BOUND_WORDS[figure.bound ?? 'exact']}${range}${spread}`;
}

interface Counterpart {
  readonly unit: UnitName;
  /** Finest step printed in the unit converted to. */
  readonly step: number;
}

/** What a quantity is said in where the other system is spoken, and how finely. Common practice, no source. */
const COUNTERPARTS: Readonly<Record<UnitName, Counterpart>> = {
  mm: { unit: 'in', step: 1 / 16 },
  cm: { unit: 'in', step: 1 / 16 },
  m: { unit: 'ft', step: 0.01 },
  in: { unit: 'mm', step: 0.1 },
  ft: { unit: 'm', step: 0.001 },
  yd: { unit: 'm', step: 0.001 },
  thou: { unit: 'mm', step: 0.001 },
  kg: { unit: 'lb', step: 0.1 },
  g: { unit: 'oz', step: 0.1 },
  lb: { unit: 'kg', step: 0.1 },
  oz: { unit: 'g', step: 1 },
  m2: { unit: 'ft2', step: 0.1 },
  ft2: { unit: 'm2', step: 0.01 },
  bar: { unit: 'psi', step: 0.1 },
  psi: { unit: 'bar', step: 0.01 },
  'N.m': { unit: 'ft.lbf', step: 0.1 },
  'ft.lbf': { unit: 'N.m', step: 0.1 },
  'km/h': { unit: 'mph', step: 0.1 },
  mph: { unit: 'km/h', step: 0.1 },
  degC: { unit: 'degF', step: 0.1 },
  degF: { unit: 'degC', step: 0.1 },
};

/**
 * The same quantity in the other system, rounded for print and marked "≈" when rounding changed it. Volumes stay as
 * they are: which gallon is meant depends on the country.
 */
export function counterpartText(quantity: Quantity): string | undefined {
  const counterpart = COUNTERPARTS[quantity.unit];
  const exact = counterpart && convert(quantity, counterpart.unit);
  if (!exact) return undefined;
  const rounded = Math.round(exact.value / counterpart.step) * counterpart.step;
  const mark = Math.abs(rounded - exact.value) > 1e-9 ? '≈ ' : '';
  return `${mark}${quantityText({ value: Number(rounded.toPrecision(12)), unit: exact.unit })}`;
}

/** A figure for a page: in a project of mixed units with its counterpart in brackets. */
export function figureText(figure: BoundedQuantity, units: HouseUnits): string {
  const text = boundedText(figure);
  if (units !== 'mixed') return text;
  const other = counterpartText(figure);
  if (other === undefined) return text;
  const high =
    figure.high === undefined ? undefined : counterpartText({ value: figure.high, unit: figure.unit });
  return `${text} (${high === undefined ? other : `${other} to ${high}`})`;
}
