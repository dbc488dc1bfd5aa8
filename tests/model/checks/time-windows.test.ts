import { expect, test } from 'vitest';
import { CURE_TIME } from '../../../src/model/checks/cure-time.ts';
import { DRYING_TIME } from '../../../src/model/checks/drying-time.ts';
import { POT_LIFE } from '../../../src/model/checks/pot-life.ts';
import { RECOAT_WINDOW } from '../../../src/model/checks/recoat-window.ts';
import { holdsWhatLiesWithin, isMonotone } from '../../kit/check-properties.ts';
import { ran, resultOf, type Written } from '../../kit/given.ts';

const HOUR = 3600;
type Inputs = Readonly<Record<string, Written>>;

const cured = (inputs: Inputs) => resultOf(ran(CURE_TIME, inputs), 'cured after').mid;

test.each([
  // Source of the rule of thumb (half or double per 10 °C, 18 °F):
  // https://forum.swaylocks.com/t/somewhat-ot-epoxy-cure-cycle-question/29218,
  // https://experts123.com/q/how-does-temperature-variation-effect-epoxy.html
  ['25 degC', '15 degC', 2],
  ['15 degC', '25 degC', 0.5],
  ['25 degC', '5 degC', 4],
  ['77 degF', '59 degF', 2],
  ['20 degC', '20 degC', 1],
])('what takes a day at %s takes %s times that at %s', (sheet, temperature, times) => {
  expect(cured({ time: '24 h', 'data sheet temperature': sheet, temperature })).toBeCloseTo(
    24 * HOUR * times,
    6,
  );
});

test('it says that it is a rule of thumb and that the data sheet goes first', () => {
  const worked = ran(CURE_TIME, { time: '7 d', 'data sheet temperature': '20 degC', temperature: '10 degC' });
  expect('notes' in worked && worked.notes[0]).toMatch(
    /by a rule of thumb, half or double per 10 °C: the data sheet goes/,
  );
});

test.each([
  ['cure time', CURE_TIME, { time: '24 h' }],
  ['drying time', DRYING_TIME, { time: '16 h' }],
  ['pot life', POT_LIFE, { time: '25 min' }],
  ['recoat window', RECOAT_WINDOW, { earliest: '4 h', latest: '24 h' }],
] as const)('%s below the least that the product takes is refused, with no time', (_name, check, times) => {
  const cold = {
    ...times,
    'data sheet temperature': '25 degC',
    temperature: '5 degC',
    'least temperature': '10 degC',
  };
  const worked = ran(check, cold);
  expect(worked.verdict).toBe('refused');
  expect(worked.why).toMatch(/is below the .* that the product takes at least: no time is worked out$/);
  expect(worked).not.toHaveProperty('results');
  expect(ran(check, { ...cold, temperature: '10 degC' }).verdict).toBe('told');
});

test.each([
  ['cure time', CURE_TIME, 'time'],
  ['drying time', DRYING_TIME, 'time'],
  ['pot life', POT_LIFE, 'time'],
  ['recoat window', RECOAT_WINDOW, 'earliest'],
] as const)('%s has no time of its own: without the data sheet it is not run', (_name, check, missing) => {
  expect(ran(check, { temperature: '18 degC' })).toMatchObject({
    verdict: 'not-run',
    missing: [{ name: missing }],
  });
});

test.each<[Inputs, string]>([
  [{}, 'no temperatures were given: the time is as the data sheet has it'],
  [
    { temperature: '12 degC' },
    'the temperature that the data sheet gives it for was not given: the time is as',
  ],
  [{ 'data sheet temperature': '20 degC' }, 'the temperature of the work was not given: the time is as'],
])('with %o the time stays as the data sheet has it, and that is said', (more, note) => {
  const worked = ran(CURE_TIME, { time: '24 h', ...more });
  expect(resultOf(worked, 'cured after').mid).toBe(24 * HOUR);
  expect('notes' in worked && worked.notes[0]).toContain(note);
});

test.each([
  ['20 h', 'broken', 14_400],
  ['24 h', 'holds', 0],
  ['0 h', 'broken', 86_400],
])('%s into a cure of a day is %s', (elapsed, verdict, toGo) => {
  const worked = ran(CURE_TIME, { time: '24 h', elapsed });
  expect(worked.verdict).toBe(verdict);
  expect(resultOf(worked, 'to go').mid).toBe(toGo);
});

test.each([
  ['3 h', 'broken', '3600 to wait at worst'],
  ['4 h', 'holds', '72000 left at worst'],
  ['24 h', 'holds', '0 left at worst'],
  ['25 h', 'broken', '3600 too late at worst'],
])('%s after the last coat a window of 4 to 24 hours is %s', (elapsed, verdict, why) => {
  const worked = ran(RECOAT_WINDOW, { earliest: '4 h', latest: '24 h', elapsed });
  expect(worked.verdict).toBe(verdict);
  expect(worked.why).toContain(why);
});

test('a window moves with the warmth at both ends', () => {
  const worked = ran(RECOAT_WINDOW, {
    earliest: '4 h',
    latest: '24 h',
    'data sheet temperature': '20 degC',
    temperature: '10 degC',
  });
  expect(resultOf(worked, 'recoat from').mid).toBeCloseTo(8 * HOUR, 6);
  expect(resultOf(worked, 'recoat until').mid).toBeCloseTo(48 * HOUR, 6);
});

test('a window whose end is not after its start is refused', () => {
  expect(ran(RECOAT_WINDOW, { earliest: '24 h', latest: '4 h' })).toMatchObject({ verdict: 'refused' });
});

test.each([
  ['20 min', 'holds', '300 left at worst'],
  ['30 min', 'broken', '300 over at worst'],
])('%s into a pot life of 25 minutes is %s', (elapsed, verdict, why) => {
  const worked = ran(POT_LIFE, { time: '25 min', elapsed });
  expect(worked).toMatchObject({ verdict });
  expect(worked.why).toContain(why);
});

test.each(['0 h', '-4 h', '20000 d'])('a data sheet time of %s is refused', (time) => {
  expect(ran(CURE_TIME, { time })).toMatchObject({
    verdict: 'refused',
    why: expect.stringMatching(/^time: /),
  });
});

const DRAWS = {
  time: { least: 600, most: 800_000 },
  'data sheet temperature': { least: 288, most: 298 },
  temperature: { least: 278, most: 308 },
  elapsed: { least: 0, most: 900_000 },
};

test('the ranges hold every time that the inputs allow; warmth shortens, a warmer data sheet lengthens', () => {
  for (const [check, result] of [
    [CURE_TIME, 'cured after'],
    [POT_LIFE, 'usable for'],
  ] as const) {
    holdsWhatLiesWithin(check, DRAWS, [result]);
    isMonotone(check, DRAWS, result, { rises: ['time', 'data sheet temperature'], falls: ['temperature'] });
  }
  isMonotone(CURE_TIME, DRAWS, 'to go', { falls: ['elapsed'] });
});

test('dry is told apart from cured', () => {
  const worked = ran(DRYING_TIME, { time: '16 h', elapsed: '20 h' });
  expect(worked.verdict).toBe('holds');
  expect(worked.why).toMatch(/^dry after /);
  expect('notes' in worked && worked.notes.at(-1)).toMatch(/^dry is not cured/);
});
