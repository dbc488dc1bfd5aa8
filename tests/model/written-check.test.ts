/** What a person writes to ask for a check, and how each check there is comes out on its example. */
import { expect, test } from 'vitest';
import { CHECKS } from '../../src/model/checks/all-checks.ts';
import { workOutCheck } from '../../src/model/checks/check-views.ts';
import { EXAMPLES } from '../../src/model/checks/examples.ts';
import { exampleCall, readWrittenCheck } from '../../src/model/checks/written-check.ts';
import { MemoryRows } from '../../src/model/memory-rows.ts';

function workedOut(text: string) {
  const read = readWrittenCheck(text);
  if (!read.ok) throw new Error(read.why);
  return workOutCheck(new MemoryRows(), read.value, { units: 'metric' }).run;
}

test('every check has an example that runs, and no example is of none', () => {
  expect(Object.keys(EXAMPLES).sort()).toEqual(CHECKS.map(({ name }) => name).sort());
});

test.each(CHECKS.map((check) => [exampleCall(check, 'work out'), check] as const))('%s', (call, check) => {
  const run = workedOut(call.replace('hearwright work out ', '').replaceAll('"', ''));
  expect(run.why).not.toMatch(/NaN|Infinity|undefined|e-\d/);
  expect(run).toMatchObject({ check: check.name, state: expect.stringMatching(/^(?:holds|broken|told)$/) });
  expect(run.results.length).toBeGreaterThan(0);
});

test.each([
  ['opening=706 mm +- 1 mm', 705, 706, 707],
  ['opening=706 mm ± 1 mm', 705, 706, 707],
  ['opening=706 mm give or take 2', 704, 706, 708],
  ['opening=700 mm +/- 1 %', 693, 700, 707],
  ['opening=700 to 710 mm', 700, 705, 710],
  ['opening=between 700 mm and 71 cm', 700, 705, 710],
  ['opening=about 700 mm', 665, 700, 735],
  ['opening=about 500 mm + 200 mm', 665, 700, 735],
  ['opening=2 ft 4 in', 711.2, 711.2, 711.2],
  ['opening=4 x 175 mm', 700, 700, 700],
  ['opening=(706 - 6) * 1 mm', 700, 700, 700],
])('"%s" is an interval', (opening, low, mid, high) => {
  const [read] = workedOut(`clearance ${opening} part=10 mm`).inputs;
  const { range } = read ?? {};
  const scale = range?.unit === 'in' ? 25.4 : range?.unit === 'm' ? 1000 : 1;
  const inMillimetres = [range?.low, range?.mid, range?.high].map((value) => (value ?? 0) * scale);
  for (const [index, wanted] of [low, mid, high].entries())
    expect(inMillimetres[index]).toBeCloseTo(wanted, 1);
});

test('a tolerance of a temperature is a difference', () => {
  const run = workedOut('product temperature temperature=14 degC +- 3 degC least=12 degC');
  expect(run.inputs[0]?.range).toEqual({ low: 11, mid: 14, high: 17, unit: 'degC' });
  expect(run.state).toBe('broken');
});

test.each([
  ['clearance part=at least 560 mm opening=570 mm', 'not-run'],
  ['clearance part=at most 560 mm opening=570 mm', 'holds'],
  ['clearance part=560 mm opening=at least 570 mm', 'holds'],
  ['clearance part=560 mm opening=up to 570 mm', 'not-run'],
  ['running mass part=60 kg limit=at most 80 kg', 'holds'],
])('an open end is not invented: %s is %s', (text, state) => {
  expect(workedOut(text).state).toBe(state);
});

test.each([
  ['', 'no check is named'],
  ['clearance opening=5 mm opening', 'opening: "5 mm opening" cannot be read: "opening" is left over'],
  ['clearance opening=7 kg +- 1 mm part=5 mm', 'opening: a tolerance of length on a quantity of mass'],
  ['clearance opening=between 7 kg and 1 mm part=5 mm', 'opening: mass and length are no two ends'],
  [
    'voltage drop current=1 A length=1 m length is=twice',
    'length is: expected there and back or one way, got "twice"',
  ],
])('what cannot be read is told: "%s"', (text, why) => {
  const read = readWrittenCheck(text);
  expect(
    read.ok ? workOutCheck(new MemoryRows(), read.value, { units: 'metric' }).run.why : read.why,
  ).toContain(why);
});

test.each([
  ['tank', 'tank volume'],
  ['panel', 'panel through opening'],
  ['votage drop current=3 A', 'voltage drop'],
  ['stackup layers=3 mm', 'stack-up'],
  ['dewpoint air=3 degC', 'dew point'],
])('"%s" is offered %s', (text, name) => {
  const read = readWrittenCheck(text);
  expect(read.ok ? '' : read.why).toContain(name);
});

test.each([
  ['clearence opening=700 mm part=10 mm', 'no check is called "clearence": did you mean clearance?'],
  ['dew pt air=18 degC', 'no check is called "dew pt"'],
  ['stack up', 'no check is called "stack up": did you mean stack-up?'],
  ['', 'no check is named'],
  [
    'clearance opening=700 mm  width  of gab=2 mm part=10 mm',
    '"gab" is no input of clearance: did you mean gap?',
  ],
  ['clearance 700 mm', '"700 mm" is no input of clearance: it takes opening, part, gap, gap on'],
])('"%s" is told why it is none', (line, why) => {
  expect(readWrittenCheck(line)).toEqual({ ok: false, why });
});
