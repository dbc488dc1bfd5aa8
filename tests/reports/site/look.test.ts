import { expect, test } from 'vitest';
import { STYLE } from '../../../src/reports/pages/look.ts';

/** The colours of one appearance: those of daylight, changed by what the named rule says. */
function colours(rule?: string): Readonly<Record<string, string>> {
  const from = rule === undefined ? 0 : STYLE.indexOf(rule);
  expect(from).toBeGreaterThanOrEqual(0);
  const block = STYLE.slice(from, STYLE.indexOf('}', from));
  const own = Object.fromEntries(
    [...block.matchAll(/--([a-z]+): (#[0-9a-f]{6});/g)].map(([, name, colour]) => [name, colour] as const),
  );
  return rule === undefined ? own : { ...colours(), ...own };
}

/** Relative luminance and contrast ratio. Source: WCAG 2.2, definitions of "relative luminance" and "contrast ratio". */
function luminance(colour: string): number {
  const channel = (at: number) => {
    const value = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  };
  return 0.2126 * channel(1) + 0.7152 * channel(3) + 0.0722 * channel(5);
}
function contrast(a: string, b: string): number {
  const [light, dark] = [luminance(a), luminance(b)].sort((x, y) => y - x) as [number, number];
  return (light + 0.05) / (dark + 0.05);
}

test('black on white has the contrast that the definition gives', () => {
  expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 5);
  // A grey that is often quoted as just missing 4.5: from memory.
  expect(contrast('#777777', '#ffffff')).toBeCloseTo(4.48, 2);
});

/** Words, and what they stand on. */
const WORDS: readonly (readonly [string, string])[] = [
  ['ink', 'paper'],
  ['ink', 'sheet'],
  ['ink', 'band'],
  ['faint', 'paper'],
  ['faint', 'sheet'],
  ['link', 'paper'],
  ['link', 'sheet'],
  ['alarm', 'paper'],
  ['calm', 'paper'],
  ['paper', 'ink'],
  // Numbers in a disc.
  ['paper', 'link'],
];

/** Lines and shapes that tell something. */
const SHAPES: readonly (readonly [string, string])[] = [
  ['mark', 'paper'],
  ['link', 'band'],
  ['alarm', 'band'],
  ['calm', 'band'],
  ['alarm', 'sheet'],
  ['faint', 'band'],
];

test.each([
  ['by day', undefined],
  ['in the dark', '@media (prefers-color-scheme: dark)'],
  ['on paper', '@media print'],
])('%s every word has a contrast of 4.5 and every shape of 3', (_, rule) => {
  const seen = colours(rule);
  expect(Object.keys(seen)).toHaveLength(10);
  const of = ([a, b]: readonly [string, string]) => contrast(seen[a] ?? '', seen[b] ?? '');
  for (const pair of WORDS) expect(of(pair), pair.join(' on ')).toBeGreaterThanOrEqual(4.5);
  for (const pair of SHAPES) expect(of(pair), pair.join(' on ')).toBeGreaterThanOrEqual(3);
});
