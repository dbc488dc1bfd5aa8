import { expect, test } from 'vitest';
import { SHEET_MATERIALS } from '../../../src/model/checks/materials.ts';
import { SHEET_MASS } from '../../../src/model/checks/sheet-mass.ts';
import { holdsWhatLiesWithin, isMonotone } from '../../kit/check-properties.ts';
import { ran, resultOf } from '../../kit/given.ts';

const SHEET = { length: '2400 mm', width: '1200 mm', thickness: '12 mm' };
const density = { low: 400, mid: 550, high: 700 };

test('a 2400 x 1200 x 12 plywood sheet weighs 14 to 24 kg', () => {
  // Source: https://vinawoodltd.com/blogs/news/density-of-plywood, density 400 to 700 kg/m3.
  const mass = resultOf(ran(SHEET_MASS, { ...SHEET, density }), 'mass');
  expect(mass.low).toBeCloseTo(13.824, 9);
  expect(mass.high).toBeCloseTo(24.192, 9);
  expect(mass.mid).toBeCloseTo(19.008, 9);
  expect(resultOf(ran(SHEET_MASS, SHEET, { material: 'plywood' }), 'mass')).toEqual(mass);
});

test('a density chosen by name is marked as one, with its source', () => {
  const worked = ran(SHEET_MASS, SHEET, { material: 'mdf' });
  expect(worked).toMatchObject({ verdict: 'told', why: '17.3 to 34.6 in all' });
  expect('notes' in worked && worked.notes[0]).toMatch(
    /^density of mdf taken as 500 to 1000 kg\/m3 \(https:.*own goes/,
  );
});

test('the density given goes before the one chosen by name', () => {
  const worked = ran(SHEET_MASS, { ...SHEET, density: '600 kg/m3' }, { material: 'steel' });
  expect(worked).toMatchObject({ why: '20.7 in all', notes: ['density as given', expect.any(String)] });
});

test('without a density and without a material nothing is worked out', () => {
  expect(ran(SHEET_MASS, SHEET)).toEqual({
    verdict: 'not-run',
    why: 'no density was given and no material was chosen',
    missing: [],
  });
});

test('three sheets weigh three times as much as one', () => {
  const [one, three] = [SHEET, { ...SHEET, count: '3' }].map((inputs) =>
    resultOf(ran(SHEET_MASS, { ...inputs, density }), 'mass'),
  );
  expect(three?.high).toBeCloseTo(3 * (one?.high ?? 0), 9);
});

test('feet and pounds give the mass that metres and kilograms do', () => {
  const metric = {
    length: '2438.4 mm',
    width: '1219.2 mm',
    thickness: '12.7 mm',
    density: '640.738534958403 kg/m3',
  };
  const imperial = { length: '8 ft', width: '4 ft', thickness: '0.5 in', density: '40 lb/ft3' };
  const [left, right] = [metric, imperial].map((inputs) => resultOf(ran(SHEET_MASS, inputs), 'mass').mid);
  // 32 square feet of half an inch are 1 1/3 cubic feet: 53 1/3 lb.
  expect(left).toBeCloseTo((160 / 3) * 0.45359237, 9);
  expect(right).toBeCloseTo(left ?? 0, 9);
});

test.each([
  ['length', '0 mm'],
  ['width', '-1200 mm'],
  ['thickness', '12 km'],
  ['density', '0 kg/m3'],
  ['density', '90000 kg/m3'],
])('%s of %s is refused with a sentence and no number', (input, written) => {
  const worked = ran(SHEET_MASS, { ...SHEET, density: '600 kg/m3', [input]: written });
  expect(worked.verdict).toBe('refused');
  expect(worked.why.startsWith(`${input}: `)).toBe(true);
  expect(worked).not.toHaveProperty('results');
});

const DRAWS = {
  length: { least: 0.1, most: 3 },
  width: { least: 0.1, most: 2 },
  thickness: { least: 0.001, most: 0.05 },
  count: { least: 1, most: 40, whole: true },
  density: { least: 300, most: 9000 },
};

test('the range holds every mass that the inputs allow, and every size adds to it', () => {
  holdsWhatLiesWithin(SHEET_MASS, DRAWS, ['mass']);
  isMonotone(SHEET_MASS, DRAWS, 'mass', { rises: Object.keys(DRAWS) });
});

test('every material has a range, a source that can be opened, and a name of its own', () => {
  for (const { low, high, source } of SHEET_MATERIALS) {
    expect(low).toBeLessThanOrEqual(high);
    expect(source).toMatch(/^https?:\/\//);
  }
  expect(new Set(SHEET_MATERIALS.map(({ name }) => name)).size).toBe(SHEET_MATERIALS.length);
});
