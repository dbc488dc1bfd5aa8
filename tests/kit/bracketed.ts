/** Sentences for tests with their quantities in square brackets: "the bench is [920 mm] high". */
import type { ItemQuantity } from '../../src/language/items/assign-items.ts';
import type { Dimension } from '../../src/language/notes.ts';

const DIMENSION_OF: Readonly<Record<string, Dimension>> = {
  mm: 'length',
  m: 'length',
  in: 'length',
  ft: 'length',
  thou: 'length',
  kg: 'mass',
  lb: 'mass',
  A: 'current',
  V: 'voltage',
  kW: 'power',
  mm2: 'area',
  m2: 'area',
  h: 'time',
  d: 'time',
  L: 'volume',
  gal: 'volume',
  degC: 'temperature',
  degF: 'temperature',
  deg: 'angle',
  'N.m': 'torque',
  g: 'mass',
  W: 'power',
  m3: 'volume',
  EUR: 'money',
  USD: 'money',
  min: 'time',
  psi: 'pressure',
  bar: 'pressure',
  rpm: 'frequency',
  '%': 'ratio',
  GBP: 'money',
  kn: 'speed',
  mph: 'speed',
  'm/s': 'speed',
};

/** Takes the brackets out; each held a number and a unit ("[920 mm]", "[40 A]"), a number alone is millimetres. */
export function bracketed(marked: string): {
  readonly text: string;
  readonly quantities: readonly ItemQuantity[];
} {
  let text = '';
  const quantities: ItemQuantity[] = [];
  for (const piece of marked.split(/(\[[^\]]+\])/)) {
    if (!piece.startsWith('[')) {
      text += piece;
      continue;
    }
    const quote = piece.slice(1, -1);
    const [number = '0', unit = 'mm'] = quote.split(' ');
    const dimension = DIMENSION_OF[unit];
    if (!dimension) throw new Error(`no unit "${unit}" in the kit`);
    const span = { start: text.length, end: text.length + quote.length };
    quantities.push({ quote, span, core: span, value: Number(number), unit, dimension, bound: 'exact' });
    text += quote;
  }
  return { text, quantities };
}
