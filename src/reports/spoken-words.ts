/** A figure and what it clashes with, in words for a voice: short, without signs. */
import type { FindingView, MemoView, SourcedQuantity } from '../model/views.ts';
import { subjectOf } from './finding-text.ts';
import { boundedText, ofThing } from './quantity-text.ts';
import { oneLine } from './words.ts';

type Figure = MemoView['notes']['figures'][number];

/** Units as they are spoken; one that is missing is spelled as it is written. */
const UNITS: Readonly<Record<string, string>> = {
  mm: 'millimetres',
  cm: 'centimetres',
  m: 'metres',
  km: 'kilometres',
  in: 'inches',
  ft: 'feet',
  yd: 'yards',
  thou: 'thou',
  '°': 'degrees',
  deg: 'degrees',
  '°C': 'degrees',
  degC: 'degrees',
  '°F': 'degrees Fahrenheit',
  degF: 'degrees Fahrenheit',
  g: 'grams',
  kg: 'kilos',
  t: 'tonnes',
  oz: 'ounces',
  lb: 'pounds',
  mL: 'millilitres',
  L: 'litres',
  l: 'litres',
  gal: 'gallons',
  V: 'volts',
  A: 'amps',
  Ah: 'amp hours',
  W: 'watts',
  kW: 'kilowatts',
  Wh: 'watt hours',
  bar: 'bar',
  psi: 'P S I',
  'N.m': 'newton metres',
  s: 'seconds',
  min: 'minutes',
  h: 'hours',
  d: 'days',
  '%': 'per cent',
  rpm: 'R P M',
  mm2: 'square millimetres',
  'mm²': 'square millimetres',
  m2: 'square metres',
  'm²': 'square metres',
  m3: 'cubic metres',
  'm³': 'cubic metres',
};
/** Parts of an inch: a voice reads "3/8" as two numbers. */
const PARTS: Readonly<Record<string, string>> = {
  '2': 'half',
  '4': 'quarter',
  '8': 'eighth',
  '16': 'sixteenth',
  '32': 'thirty second',
  '64': 'sixty fourth',
};

/** "stair opening width, 820 millimetres. Clash with 280 millimetres." Nothing where there is nothing to read. */
export function spokenWords(figures: readonly Figure[], clashes: readonly FindingView[]): string {
  const said = figures.map((figure) => `${namedWords(figure)}, ${amountWords(boundedText(figure))}.`);
  const against = clashes
    .filter(({ status }) => status === 'open')
    .map((clash) => {
      const was = clash.was.unit === '' ? '' : ` with ${amountWords(boundedText(boundedOf(clash)))}`;
      // Which figure clashes is told where it is another one than was just said.
      const isSaid = figures.some(
        ({ item, attribute }) => item === clash.item && attribute === clash.attribute,
      );
      return isSaid ? `Clash${was}.` : `${namedWords(clash)}: clash${was}.`;
    });
  return [...said, ...against].join(' ');
}

const boundedOf = (clash: FindingView): SourcedQuantity => ofThing(clash.was, clash);
/** Letters, digits and what stands inside a word: a voice, and whoever calls it, is given no sign to take for an order. */
const namedWords = (thing: Parameters<typeof subjectOf>[0]) =>
  oneLine(subjectOf(thing))
    .replace(/(?<=\p{L})['’-](?=\p{L})|[^\p{L}\p{N}]/gu, (sign) => (/['’-]/.test(sign) ? sign : ' '))
    .replace(/(?<!\p{L})['’-]|['’-](?!\p{L})/gu, ' ')
    .replace(/ +/g, ' ')
    .trim();

/** "at most 3 1/8 in" becomes "at most 3 and an eighth inches". */
export function amountWords(text: string): string {
  return text
    .replace(/±/g, ' plus or minus ')
    .replace(/≈/g, ' about ')
    .replace(/−/g, ' minus ')
    .replace(/(\d),(?=\d{3}\b)/g, '$1')
    .replace(/(?:(\d+) )?(\d+)\/(\d+)/g, (whole, units: string | undefined, top: string, below: string) => {
      const part = PARTS[below];
      if (part === undefined) return whole;
      const many = top === '1' ? `${/^[aeiou]/.test(part) ? 'an' : 'a'} ${part}` : `${top} ${part}s`;
      return units === undefined ? many : `${units} and ${many}`;
    })
    .split(/\s+/)
    .map((word) => UNITS[word] ?? word)
    .join(' ')
    .replace(/(\d)(°C|°F|°|%)/g, (_, digit: string, sign: string) => `${digit} ${UNITS[sign]}`)
    .trim();
}
