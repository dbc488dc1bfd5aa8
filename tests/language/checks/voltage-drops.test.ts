import { expect, test } from 'vitest';
import { checksIn, recordsIn } from '../../kit/records.ts';

test.each([
  [
    "The pump pulls 10 amps and it's 6 metres of cable there and back at 12 volts, I don't want to lose more than 3 percent.",
    'current=pump current; length=cable length; voltage=pump voltage; allowed=3 %',
  ],
  [
    'The fridge run is 4 metres one way in 6 mil cable, 5 amps at 12 volts, keep the drop under 3 percent.',
    'current=cable current; length=fridge run length; area=cable area; voltage=cable voltage; allowed=3 %',
  ],
  [
    'Voltage drop has to stay under 3 percent on the windlass, 80 amps, 14 metres round trip, 35 square mil.',
    'current=voltage drop current; length=14 m; area=voltage drop cable area; allowed=3 %',
  ],
  [
    "It's twenty one feet round trip of ten gauge carrying ten amps at twelve volts, three percent drop at most.",
    'current=gauge current; length=21 ft; voltage=gauge voltage; allowed=3 %',
  ],
])('"%s" asks for the check', (said, inputs) => {
  expect(checksIn(said)).toEqual([`voltage drop: ${inputs}`]);
});

test.each([
  'We lost 3 percent of the paint.',
  'Is the drop under three percent at ten amps?',
  'The pump pulls 10 amps at 12 volts.',
  'The voltage dropped to 11 when the pump came on.',
  'The ramp drops 3 percent.',
])('"%s" asks for none', (said) => {
  expect(checksIn(said)).toEqual([]);
});

test('how the length is counted, and the gauge, are choices of the check', () => {
  const options = (said: string) =>
    recordsIn(said).flatMap((note) => (note.kind === 'check' ? [note.options ?? {}] : []));
  expect(
    options('The fridge is 4 metres away, 5 amps in 6 mil cable at 12 volts, keep the drop under 3 percent.'),
  ).toEqual([{ 'length is': 'one way' }]);
  expect(
    options('Twenty one feet round trip of ten gauge at ten amps, no more than three percent drop.'),
  ).toEqual([{ form: 'us marine', wire: '10 AWG (SAE)' }]);
});

test.each([
  ['the marine formula', 'us marine'],
  ['US marine table', 'us marine'],
  ['K is 10.75', 'us marine'],
  ['the house wiring formula', 'us building'],
  ['the ISO formula', 'iso'],
])('of "%s" the form is %s', (words, form) => {
  const said = `It's 10 amps and 21 feet there and back at 12 volts by ${words}, not more than three percent drop.`;
  expect(recordsIn(said)).toMatchObject([{ check: 'voltage drop', options: { form } }]);
});

test('feet and gauges go by the tables that have them, metres and square millimetres by the metric form', () => {
  const options = (said: string) =>
    recordsIn(said).flatMap((note) => (note.kind === 'check' ? [note.options ?? {}] : []));
  expect(
    options("10 amps, 21 feet there and back at 12 volts, and I don't want to lose more than 3 percent."),
  ).toEqual([{ form: 'us marine' }]);
  expect(
    options(
      "15 amps at 120 volts, 100 feet one way, 12 gauge, and I don't want to lose more than 5 percent.",
    ),
  ).toEqual([{ form: 'us building', 'length is': 'one way', wire: '12 AWG (plain)' }]);
  expect(
    options("10 amps, 6 metres one way on 4 mil squared at 12 volts, don't lose more than 3 percent."),
  ).toEqual([{ 'length is': 'one way' }]);
  expect(
    options(
      "10 amps, 21 feet there and back at 12 volts by the metric formula, don't lose more than 3 percent.",
    ),
  ).toEqual([{ form: 'iso' }]);
});
