import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type ItemQuantity, readItems } from '../../src/language/items/assign-items.ts';
import { isTradeNoun, kindsOf, singular, tradeNounCount } from '../../src/language/lexicon/trade-nouns.ts';
import type { KnownFigure } from '../../src/language/notes.ts';
import { bracketed } from '../kit/bracketed.ts';

const CONTEXT = { units: 'metric', recordedAt: '2026-05-01T12:00:00Z' } as const;

const figuresOf = (marked: string, knownFigures: readonly KnownFigure[] = []) => {
  const { text, quantities } = bracketed(marked);
  return readItems(text, quantities, { ...CONTEXT, knownFigures }).figures;
};
const named = (marked: string, known: readonly KnownFigure[] = []) =>
  figuresOf(marked, known).map(({ item, attribute }) => `${item}: ${attribute}`);

const mm = (item: string, attribute: KnownFigure['attribute'], value: number): KnownFigure => ({
  item,
  attribute,
  value,
  unit: 'mm',
});

test.each([
  ['The hatch is [520] wide by [610] high.', ['hatch: width', 'hatch: height']],
  [
    'Windows, the east sash opening is [1210] wide and the west one is [1190] wide.',
    ['east sash opening: width', 'west sash opening: width'],
  ],
  [
    'The port tank is [80 L] and the starboard one is [95 L].',
    ['port tank: volume', 'starboard tank: volume'],
  ],
  ['I need a [40 A] supply.', ['supply: current']],
  ['Battery, [55 kg].', ['battery: weight']],
  ['The berth needs [18 mm] ply.', ['berth ply: thickness']],
  ['So nothing wider than [740] comes in.', ['anything comes in: width']],
  ['Loft. The underside is [2010] off the floor.', ['loft underside above floor: height']],
  ['Shower, the drain is [350] off the back wall.', ['shower drain from back wall: offset']],
  [
    'The old joists are [165] deep and the new ones are [195] deep.',
    ['old joists: depth', 'new joists: depth'],
  ],
  ['I bought a bandsaw, it is [210 kg].', ['bandsaw: weight']],
  ['It is going in the alcove, that is [1240] wide.', ['alcove: width']],
  ['The frame is bolted up, M10s, [35 N.m].', ['frame bolts: torque']],
  ['Sockets are on [2.5 mm2] and the heater gets [4 mm2].', ['socket cable: area', 'heater cable: area']],
  ['Boards are [18] thick, instead of the oak, [22].', ['boards: thickness', 'boards: thickness']],
  ['The rebate is [3] too deep.', ['rebate: offset']],
  ['Bench is [880], and the legs are [810].', ['bench: height', 'bench legs: length']],
])('"%s" names its figures', (said, wanted) => {
  expect(named(said)).toEqual(wanted);
});

test.each([
  ['The top wants to be [3040] long now.', [mm('bench top', 'length', 3100)], 'bench top: length'],
  ['For the record it is [4740] long.', [mm('upstairs room', 'length', 4740)], 'upstairs room: length'],
  ['The slide is in its niche, [635] wide.', [mm('niche', 'width', 635)], 'niche: width'],
  [
    'The kitchen window is [1230] wide.',
    [mm('kitchen window rough opening', 'width', 930)],
    'kitchen window rough opening: width',
  ],
  ['The drawers are [785].', [mm('drawers', 'width', 788)], 'drawers: width'],
])('"%s" leans on what is known', (said, known, wanted) => {
  expect(named(said, known)).toEqual([wanted]);
});

test('what is known never makes a figure', () => {
  expect(figuresOf('The top is lovely.', [mm('bench top', 'length', 3100)])).toEqual([]);
});

test.each([
  ['I put a tape on the alcove and it is [1226].', 'measured', 'remeasured'],
  ['The bench wants to be [900].', 'target', undefined],
  ['The book says the slide wants [2 thou].', 'quoted', undefined],
  ['I changed my mind, so I am going up to [960] on the bench.', 'decided', 'decided'],
  ['The bench, call it [900].', 'assumed', undefined],
  ['The legs were cut to [890].', 'made', undefined],
  ['The worktop is coming down to [880].', 'decided', 'decided'],
  ['The shelf is [300] high now, I changed it.', 'decided', 'decided'],
  ['The shelf is [300] high.', 'measured', undefined],
  ['The water comes up to [300] in the tank.', 'measured', undefined],
])('"%s" tells what the speaker was doing', (said, state, change) => {
  const [figure] = figuresOf(said);
  expect([figure?.state, figure?.change]).toEqual([state, change]);
});

test.each([
  ['The room is [4800] long, and the bench top is the room less [1700], so [3100].', 'room length - 1700 mm'],
  [
    'The bench is [960] high and the top is [70] thick, so the legs are [890].',
    'bench height - bench top thickness',
  ],
  [
    'The window is [870] wide, and the sill is the window plus [30] each side, so [930].',
    'window width + 2 * 30 mm',
  ],
  [
    'The hull is [1180 lb]. The motor is [610 lb]. Seats, [160 lb]. Comes to [1950 lb].',
    'hull weight + motor weight + seats weight',
  ],
])('"%s" is worked out', (said, formula) => {
  expect(figuresOf(said).at(-1)?.formula).toBe(formula);
});

test('a sum that does not come out is not taken for a formula when nothing says so', () => {
  expect(
    figuresOf('The bench is [960] high and the top is [70] thick, so the shelf is [555].').at(-1)?.formula,
  ).toBeUndefined();
});

test.each([
  ['The floor takes [400 kg] at the most.', ''],
  ['So nothing wider than [740] comes in.', 'anything comes in'],
])('"%s" is a limit about "%s"', (said, about) => {
  const { text, quantities } = bracketed(said);
  const bound = quantities.map((quantity): ItemQuantity => ({ ...quantity, bound: 'at-most' }));
  expect(readItems(text, bound, CONTEXT).figures[0]?.limit).toEqual({ about });
});

test('a condition and a datum are kept as they were said', () => {
  expect(figuresOf('The bath is [110 kg] empty.')[0]?.condition).toBe('empty');
  expect(figuresOf('The drain is [350] off the back wall.')[0]?.datum).toBe('off the back wall');
});

test('the list of trade nouns is long and knows plurals', () => {
  expect(tradeNounCount).toBeGreaterThan(1500);
  expect(singular('sashes')).toBe('sash');
  expect(singular('batteries')).toBe('battery');
  expect(singular('brass')).toBe('brass');
  expect(isTradeNoun('stringers')).toBe(true);
  expect(kindsOf(['fresh', 'water', 'tank']).has('container')).toBe(true);
});

test('any text with any spans gives one figure for each quantity, in order', () => {
  fc.assert(
    fc.property(
      fc.string({ maxLength: 200 }),
      fc.array(fc.tuple(fc.nat(200), fc.nat(12)), { maxLength: 4 }),
      (text, places) => {
        const quantities = places.map(([start, length]): ItemQuantity => {
          const span = { start: Math.min(start, text.length), end: Math.min(start + length, text.length) };
          return {
            span,
            quote: text.slice(span.start, span.end),
            value: 1,
            unit: 'mm',
            dimension: 'length',
            bound: 'exact',
          };
        });
        const { figures, trace } = readItems(text, quantities, CONTEXT);
        expect(figures.map((figure) => figure.span)).toEqual(quantities.map((quantity) => quantity.span));
        expect(trace.filter(({ stage }) => stage === 'item')).toHaveLength(quantities.length);
        for (const figure of figures) expect(figure.item).not.toBe('');
      },
    ),
    { numRuns: 200 },
  );
});

test('reading twice as much takes about twice as long', () => {
  const memo =
    'The bench is [900] high, and the top is [70] thick in beech. It is going in the alcove, that is [1240] wide. ';
  const time = (copies: number) => {
    const { text, quantities } = bracketed(memo.repeat(copies));
    const start = performance.now();
    readItems(text, quantities, CONTEXT);
    return performance.now() - start;
  };
  time(40);
  const once = Math.min(time(60), time(60), time(60));
  const eightfold = Math.min(time(480), time(480));
  expect(eightfold / once).toBeLessThan(24);
});
