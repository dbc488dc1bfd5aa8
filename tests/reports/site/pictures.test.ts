import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { CheckView } from '../../../src/model/checks/check-views.ts';
import { fitsInto } from '../../../src/model/checks/rectangles.ts';
import type { ClaimView, LimitView, StandingFigure } from '../../../src/model/views.ts';
import type { Desk } from '../../../src/reports/pages/fragments.ts';
import { html } from '../../../src/reports/pages/html.ts';
import { hangsOn } from '../../../src/reports/pages/pictures/hangs-on.ts';
import { historyPicture } from '../../../src/reports/pages/pictures/history.ts';
import { openingPictures } from '../../../src/reports/pages/pictures/opening.ts';
import { niceStep, ticksOf } from '../../../src/reports/pages/pictures/picture.ts';
import { stackUpOfCheck, stackUpOfFigure } from '../../../src/reports/pages/pictures/stack-up.ts';
import { sumParts } from '../../../src/reports/pages/pictures/sum-parts.ts';
import { weekPicture } from '../../../src/reports/pages/pictures/week.ts';
import { relationsOf } from '../../../src/reports/pages/relations.ts';
import { linksFrom } from '../../../src/reports/pages/site-map.ts';
import { weekOf } from '../../../src/reports/pages/weeks.ts';
import { hostileMarkup } from '../../kit/hostile-markup.ts';
import { DAY } from '../../kit/views.ts';

const EMPTY = new Map<string, string>();
const desk: Desk = {
  links: linksFrom('things/x.html', {
    items: EMPTY,
    memos: EMPTY,
    days: new Set(),
    findings: EMPTY,
    tasks: EMPTY,
    figures: new Map(),
    named: EMPTY,
    claims: EMPTY,
    told: new Map(),
  }),
  today: '2026-03-12',
};

const figure = (item: string, value: number, more: Partial<StandingFigure> = {}): StandingFigure => ({
  item,
  attribute: 'thickness',
  dimension: 'length',
  value,
  unit: 'mm',
  bound: 'exact',
  status: 'stands',
  rule: 'first said',
  history: [],
  dependents: [],
  ...more,
});

const claim = (value: number, status: ClaimView['status'], date = '2026-03-09'): ClaimView => ({
  id: `c${value}`,
  item: 'sill',
  attribute: 'thickness',
  bound: 'exact',
  value,
  unit: 'mm',
  status,
  source: { memoId: 'm1', recordedAt: `${date}T08:00:00Z`, quote: `${value}` },
});

const textOf = (part: Parameters<typeof html>[1]) => html`${part}`.text;
const numbersOf = (text: string, pattern: RegExp) =>
  [...text.matchAll(pattern)].map(([, number]) => Number(number));
const lookup = (...figures: StandingFigure[]) => relationsOf(figures);
const read = (formula: string) => {
  const { named } = lookup(...LAYERS);
  return sumParts(formula, 'mm', (name) => named(name, figure('floor', 0, { formula })));
};

test.each([
  [0, 10, 5, [0, 2, 4, 6, 8, 10]],
  [29.4, 33.4, 4, [30, 31, 32, 33]],
  [-3, 3, 3, [-2, 0, 2]],
  [0.02, 0.11, 4, [0.05, 0.1]],
])('from %d to %d about %d steps are %j', (least, greatest, wanted, ticks) => {
  expect(ticksOf(least, greatest, wanted)).toEqual(ticks);
});

test('a figure that is worked out by now has its own value in its history, behind what was said', () => {
  const sill = figure('sill', 31, { formula: 'board + trim', history: [claim(30, 'superseded')] });
  const text = textOf(historyPicture(sill, 'x', []));
  expect(text).toContain(
    '2 values in the order of speech: 30 mm on 2026-03-09, superseded; 31 mm, standing.',
  );
  expect(text.match(/class="dot"/g)).toHaveLength(1);
});

test('a fall is a fall on its axis, at its band and at its limit, whose wrong side is the flatter one', () => {
  const said = (value: number, status: 'superseded' | 'standing', quote: string) => ({
    ...claim(value, status),
    item: 'shower floor',
    attribute: 'ratio' as const,
    unit: '1',
    source: { memoId: 'm1', recordedAt: '2026-03-09T08:00:00Z', quote },
  });
  const fall = figure('shower floor', 40, {
    attribute: 'ratio',
    dimension: 'ratio',
    unit: '1',
    tolerance: { value: 1, unit: '1', from: 'said' },
    source: said(40, 'standing', 'one in forty').source,
    history: [said(60, 'superseded', 'one in sixty'), said(40, 'standing', 'one in forty')],
  });
  const least: LimitView = {
    id: 'l1',
    item: 'shower floor',
    attribute: 'ratio',
    about: '',
    bound: 'at-least',
    value: 50,
    unit: '1',
    source: { memoId: 'm1', recordedAt: '2026-03-09T08:00:00Z', quote: 'at least one in fifty' },
  };
  const text = textOf(historyPicture(fall, 'x', [least]));
  const labels = [...text.matchAll(/<text class="end faint"[^>]*>([^<]*)</g)].map(([, words]) => words);
  expect(labels.length).toBeGreaterThan(2);
  for (const words of labels) expect(words).toMatch(/^1 in \d+$/);
  expect(text).toContain('>1 in 39 to 1 in 41<');
  expect(text).toContain('>at least 1 in 50<');
  // Greater numbers stand higher and are flatter: the hatching lies above the limit.
  const [limitAt = 0] = numbersOf(text, /class="limit" x1="[\d.]+" y1="([\d.]+)"/g);
  const strokes = /class="hatch" d="([^"]+)"/.exec(text)?.[1] ?? '';
  const starts = numbersOf(strokes, /M[\d.]+ ([\d.]+)/g);
  expect(starts.length).toBeGreaterThan(5);
  for (const y of starts) expect(y).toBeLessThanOrEqual(limitAt + 0.1);
});

test('steps are 1, 2 or 5 times a power of ten', () => {
  fc.assert(
    fc.property(fc.double({ min: 1e-6, max: 1e9, noNaN: true }), (span) => {
      const step = niceStep(span, 5);
      expect(['1', '2', '5']).toContain(step.toExponential()[0]);
      expect(span / step).toBeLessThan(6);
    }),
  );
});

test('a history shows each value by its state, higher ones higher up, and says the same in words', () => {
  const sill = figure('sill', 32, {
    tolerance: { value: 1, unit: 'mm', from: 'project' },
    history: [
      claim(30, 'superseded'),
      claim(32, 'standing', '2026-03-10'),
      claim(23, 'doubted', '2026-03-11'),
    ],
  });
  const limit: LimitView = {
    id: 'l1',
    item: 'sill',
    attribute: 'thickness',
    about: '',
    bound: 'at-most',
    value: 3.15,
    unit: 'cm',
    source: { memoId: 'm1', recordedAt: '2026-03-09T08:00:00Z', quote: 'at most' },
  };
  const text = textOf(historyPicture(sill, 'x', [limit]));
  const [ring = 0] = numbersOf(text, /class="ring" cx="[\d.]+" cy="([\d.]+)"/g);
  const [dot = 0] = numbersOf(text, /class="dot" cx="[\d.]+" cy="([\d.]+)"/g);
  const [doubt = 0] = numbersOf(text, /class="doubt" d="M[\d.]+ ([\d.]+)l8/g);
  const [most = 0] = numbersOf(text, /class="limit" x1="[\d.]+" y1="([\d.]+)"/g);
  expect(dot).toBeLessThan(most);
  expect(most).toBeLessThan(ring);
  expect(ring).toBeLessThan(doubt);
  // The band reaches as far up as down, and the limit of 31.5 mm lies a quarter of it above its lower edge.
  const [top = 0] = numbersOf(text, /class="band" x="[\d.]+" y="([\d.]+)"/g);
  const [tall = 0] = numbersOf(text, /class="band"[^>]* height="([\d.]+)"/g);
  expect(top + tall / 2).toBeCloseTo(dot, 0);
  expect((top + tall - most) / tall).toBeCloseTo(0.25, 1);
  expect(text).toContain(
    '3 values in the order of speech: 30 mm on 2026-03-09, superseded; 32 mm on 2026-03-10, standing; 23 mm on 2026-03-11, doubted. Let pass: 1 mm. Limit: at most 3.15 cm.',
  );
});

test('one value without a limit has nothing to compare', () => {
  expect(historyPicture(figure('sill', 30, { history: [claim(30, 'standing')] }), 'x', [])).toBeUndefined();
});

test('values that are all the same, or nought, still have a scale', () => {
  for (const value of [0, 30]) {
    const same = figure('sill', value, { history: [claim(value, 'superseded'), claim(value, 'standing')] });
    expect(textOf(historyPicture(same, 'x', []))).not.toMatch(/NaN|Infinity/);
  }
});

const LAYERS = [figure('batten', 18), figure('cork', 32), figure('board', 21)] as const;

test.each([
  [
    'batten thickness + cork thickness - 3 mm',
    [
      [18, 1],
      [32, 1],
      [3, -1],
    ],
  ],
  [
    '2 * batten thickness + cork thickness / 2',
    [
      [36, 1],
      [16, 1],
    ],
  ],
  [
    'batten thickness - (cork thickness - 1 in)',
    [
      [18, 1],
      [32, -1],
      [25.4, 1],
    ],
  ],
  [
    '-(batten thickness) + 10 cm',
    [
      [18, -1],
      [100, 1],
    ],
  ],
])('%s is a sum of parts', (formula, parts) => {
  expect(read(formula)?.map(({ size, sign }) => [size, sign])).toEqual(parts);
});

test.each([
  'batten thickness',
  'batten thickness * cork thickness',
  'batten thickness + unknown thickness',
  '3 mm + 4 mm',
  'batten thickness + 3',
  'batten thickness +',
  'diagonal(batten thickness; cork thickness)',
])('%s is drawn as no sum', (formula) => {
  expect(read(formula)).toBeUndefined();
});

test('the parts of a stack-up are drawn to one scale, each where the one before ends', () => {
  const total = figure('floor', 47, { formula: 'batten thickness + cork thickness - 3 mm' });
  const text = textOf(stackUpOfFigure(desk, total, 'x', lookup(...LAYERS)));
  const bars = [...text.matchAll(/class="(?:part|less|total)" x="([\d.]+)" y="[\d.]+" width="([\d.]+)"/g)];
  const [batten, cork, less, all] = bars.map(([, x, width]) => [Number(x), Number(width)] as const);
  const scale = (batten?.[1] ?? 0) / 18;
  expect(cork?.[1]).toBeCloseTo(32 * scale, 0);
  expect(less?.[1]).toBeCloseTo(3 * scale, 0);
  expect(all?.[1]).toBeCloseTo(47 * scale, 0);
  expect(cork?.[0]).toBeCloseTo((batten?.[0] ?? 0) + (batten?.[1] ?? 0), 0);
  // What is taken off goes back from where the cork ends.
  expect((less?.[0] ?? 0) + (less?.[1] ?? 0)).toBeCloseTo((cork?.[0] ?? 0) + (cork?.[1] ?? 0), 0);
  expect(text).toContain('3 parts: batten thickness, 18 mm; cork thickness, 32 mm; less 3 mm. In all 47 mm');
  for (const words of ['Parts', 'in all', 'in the formula']) expect(text).toContain(words);
});

const input = (name: string, value: number, expression = `${value} mm`) => ({
  name,
  expression,
  range: { low: value, mid: value, high: value, unit: 'mm' },
  reads: [],
});
const check = (name: string, inputs: CheckView['inputs'], more: Partial<CheckView> = {}): CheckView => ({
  id: 's4',
  check: name,
  state: 'holds',
  why: 'it goes',
  results: [],
  notes: [],
  inputs,
  options: {},
  ask: [],
  subject: name,
  source: { memoId: 's4', recordedAt: '2026-03-09T08:00:00Z', quote: '' },
  since: '2026-03-09T08:00:00Z',
  formula: '',
  formulaSource: '',
  ...more,
});

test('a check of a stack-up is drawn with what it is held against', () => {
  const text = textOf(
    stackUpOfCheck(check('stack-up', [input('layers', 18), input('layers', 32), input('limit', 60)])),
  );
  expect(text).toContain('2 parts: 18 mm; 32 mm. In all 50 mm, held against the limit of 60 mm.');
  expect(stackUpOfCheck(check('clearance', [input('layers', 18)]))).toBeUndefined();
});

test('a panel is drawn as going through where its section fits, by the condition of Carver, and only there', () => {
  const size = fc.integer({ min: 20, max: 1500 });
  fc.assert(
    fc.property(
      size,
      size,
      fc.integer({ min: 5, max: 120 }),
      size,
      size,
      (length, width, thickness, a, b) => {
        const inputs = [
          input('panel length', length),
          input('panel width', width),
          input('thickness', thickness),
          input('opening width', a),
          input('opening height', b),
        ];
        const text = textOf(openingPictures(check('panel through opening', inputs)));
        const sections = [
          [width, thickness],
          [length, thickness],
          [length, width],
        ] as const;
        const goes = sections.some(([p, q]) => fitsInto({ width: p, height: q }, { width: a, height: b }));
        expect(text.includes(': it goes through')).toBe(goes);
        // As drawn, nothing that goes through sticks out of its opening by more than a unit of the picture.
        const drawn =
          /class="panel[^"]*" x="[^"]+" y="[^"]+" width="([\d.]+)" height="([\d.]+)" transform="rotate\(-?([\d.]+)/;
        const [w = 0, h = 0, degrees = 0] = (drawn.exec(text) ?? []).slice(1).map(Number);
        const hole = /class="hole"[^>]* width="([\d.]+)" height="([\d.]+)"/.exec(text) ?? [];
        const [wide = 0, high = 0] = hole.slice(1).map(Number);
        const [c, s] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
        const sticksOut = Math.max(w * c + h * s - wide, w * s + h * c - high);
        expect(w * wide).toBeGreaterThan(0);
        expect(sticksOut <= 1 || !goes).toBe(true);
        expect(text).not.toMatch(/NaN|Infinity/);
      },
    ),
    { numRuns: 300 },
  );
});

test('a panel with a size missing is not drawn', () => {
  expect(textOf(openingPictures(check('panel through opening', [input('panel length', 5)])))).toBe('');
});

test('what hangs on what goes from left to right, and a circle comes to an end', () => {
  const a = figure('a', 1, { dependents: ['b thickness'] });
  const b = figure('b', 2, { formula: 'a thickness + 1 mm', dependents: ['c thickness'] });
  const c = figure('c', 3, { formula: 'b thickness + 1 mm', dependents: ['b thickness'] });
  const text = textOf(hangsOn(desk, b, 'x', lookup(a, b, c)));
  expect(text).toContain('3 figures. ');
  expect(text).toContain('b thickness comes from a thickness');
  expect(text).toContain('Comes from:');
  expect(text).toContain('Hangs on it:');
  expect(hangsOn(desk, figure('z', 1), 'x', lookup(a, b, c))).toBeUndefined();
});

test('a week shows each memo at its day with as many notes as it has', () => {
  const text = textOf(weekPicture(desk, weekOf(DAY.date), [DAY]));
  expect(text).toContain('1 memo: memo 1 on 2026-03-09 17:30, 1 figures, 1 decisions, 1 tasks.');
  expect(text.match(/class="disc"/g)).toHaveLength(3);
  for (const day of ['Mon 09', 'Sun 15']) expect(text).toContain(day);
});

/** Every picture, with these words for all that was said. */
function picturesSaying(words: string): string {
  const item = `${words} x`;
  const a = figure(item, 30, {
    dependents: ['plank thickness'],
    history: [claim(30, 'superseded'), claim(32, 'standing')],
  });
  const b = figure('plank', 33, { formula: 'sill thickness + 1 mm' });
  const limit: LimitView = {
    id: 'l1',
    item,
    attribute: 'thickness',
    about: item,
    bound: 'between',
    value: 20,
    high: 40,
    unit: 'mm',
    source: { memoId: 'm1', recordedAt: '2026-03-09T08:00:00Z', quote: item },
  };
  const reads = [{ name: item, value: 18, unit: 'mm', bound: 'exact' as const }];
  const panel = ['panel length', 'panel width', 'thickness', 'opening width', 'opening height'].map(
    (name) => ({
      ...input(name, 100, item),
      reads,
    }),
  );
  const layers = [input('layers', 18, item), input('layers', 20, item)];
  return textOf([
    historyPicture(a, 'x', [limit]),
    hangsOn(desk, a, 'x', lookup(a, b)),
    stackUpOfCheck(check('stack-up', layers, { subject: item, why: item })),
    openingPictures(check('panel through opening', panel, { subject: item, why: item })),
  ]);
}

test('no word changes the structure of a picture', () => {
  const shapeOf = (text: string) =>
    [...text.matchAll(/<(\/?[a-z]+)((?: [a-z-]+="[^"]*")*)\/?>/gi)]
      .map(([, tag, attributes = '']) => `${tag}${attributes.replace(/="[^"]*"/g, '')}`)
      .concat(`${text.split('<').length} opening signs`)
      .join('|');
  const plain = shapeOf(picturesSaying('oak'));
  expect(plain.split('|').length).toBeGreaterThan(60);
  fc.assert(
    fc.property(hostileMarkup, (words) => {
      const text = picturesSaying(words);
      expect(shapeOf(text)).toBe(plain);
      expect(text).not.toMatch(/[^\P{Cc}\n]|[\u202a-\u202e]/u);
    }),
    { numRuns: 200 },
  );
});

test('two figures that go by one name are told apart', () => {
  const clear = figure('door', 698, { dependents: ['door thickness'] });
  const leaf = figure('door', 688, { formula: 'door thickness - 10 mm' });
  const { comesFrom, hangOn, named } = lookup(clear, leaf);
  expect([comesFrom(leaf), comesFrom(clear), hangOn(clear), hangOn(leaf)]).toEqual([[clear], [], [leaf], []]);
  expect(named('door thickness', leaf)).toBe(clear);
  const text = textOf(hangsOn(desk, clear, 'x', lookup(clear, leaf)));
  expect(text).toContain('698 mm');
  expect(text).toContain('688 mm');
});
