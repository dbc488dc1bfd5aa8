import { expect, test } from 'vitest';
import { checksIn, recordsIn } from '../../kit/records.ts';

test.each([
  ['Full cure is seven days at twenty.', 'cure time: time=7 d; data sheet temperature=20 degC'],
  ['It says full cure in five days at 20 degrees.', 'cure time: time=5 d; data sheet temperature=20 degC'],
  [
    'The varnish takes 24 hours to cure at 18 degrees.',
    'cure time: time=24 h; data sheet temperature=18 degC',
  ],
  ['This stuff cures in 12 hours.', 'cure time: time=12 h'],
  ['Each coat takes sixteen hours to dry.', 'drying time: time=16 h'],
  ['Oil needs twenty four hours to dry.', 'drying time: time=24 h'],
  ['Drying time is two hours at twenty degrees.', 'drying time: time=2 h; data sheet temperature=20 degC'],
  ["You've got to leave it 48 hours before it's fully cured.", 'cure time: time=48 h'],
  ['Recoat after four hours, no more than twenty four.', 'recoat window: earliest=4 h; latest=24 h'],
  [
    'You can recoat after four hours but no later than twenty four hours.',
    'recoat window: earliest=4 h; latest=24 h',
  ],
  ['Recoat between four and twenty four hours.', 'recoat window: earliest=4 h; latest=24 h'],
  ['Next coat in six hours, and no later than three days.', 'recoat window: earliest=6 h; latest=3 d'],
  ['The sealer can be recoated after four hours.', 'recoat window: earliest=4 h'],
  ['The second coat can go on after 16 hours.', 'recoat window: earliest=16 h'],
  ['Minimum six hours between coats.', 'recoat window: earliest=6 h'],
  [
    'Pot life is twenty five minutes at twenty degrees.',
    'pot life: time=25 min; data sheet temperature=20 degC',
  ],
  ["You've got about 20 minutes pot life at 25.", 'pot life: time=20 min; data sheet temperature=25 degC'],
  ["Working time's forty minutes.", 'pot life: time=40 min'],
  ["Don't use it under ten degrees.", 'product temperature: least=10 degC'],
  ['The tin says not below ten degrees.', 'product temperature: least=10 degC'],
  ["Don't lay it below five degrees.", 'product temperature: least=5 degC'],
  ["It won't go off below eight degrees.", 'product temperature: least=8 degC'],
  ['Minimum temperature is five degrees.', 'product temperature: least=5 degC'],
  ['Not to be applied under ten degrees or over thirty.', 'product temperature: least=10 degC; most=30 degC'],
  ['The primer wants no colder than ten degrees.', 'product temperature: least=10 degC'],
  ["It's no good under five degrees.", 'product temperature: least=5 degC'],
  ['Only use it above ten degrees.', 'product temperature: least=10 degC'],
  [
    'The data sheet says seven days to full cure at 23 degrees.',
    'cure time: time=7 d; data sheet temperature=23 degC',
  ],
  ['You need to get the next coat on within three days.', 'recoat window: latest=3 d'],
  ['The grout needs at least five degrees.', 'product temperature: least=5 degC'],
])('"%s" is what a data sheet gives', (said, check) => {
  expect(checksIn(said)).toEqual([check]);
});

test('a time and a warmth in one breath are two checks', () => {
  const said = 'The varnish wants eight hours between coats and nothing under 10 degrees.';
  expect(checksIn(said)).toEqual(['recoat window: earliest=8 h', 'product temperature: least=10 degC']);
});

test.each([
  'It cured in seven days.',
  'The room needs at least eighteen degrees.',
  'It took four hours to dry and I recoated it.',
  "It's been curing for two days.",
  'I recoated it after four hours.',
  'Back to it in four hours.',
  'The delivery is seven days.',
  'How long is the pot life, twenty minutes?',
  'It was under ten degrees in the shed.',
  "I didn't use it because it was under ten degrees.",
  'Keep the bevel under ten degrees.',
  "Don't cut it over ten degrees.",
  "It won't go above ten degrees outside tonight.",
  'Two coats of varnish on the hatch.',
])('"%s" is none', (said) => {
  expect(checksIn(said)).toEqual([]);
});

test('each time of a sentence is of what stands beside it', () => {
  expect(
    recordsIn('The glue needs twenty four hours to dry, pot life is thirty minutes.').flatMap((note) =>
      note.kind === 'check' ? [`${note.check} ${note.inputs[0]?.expression} ${note.inputs[0]?.of}`] : [],
    ),
  ).toEqual(['pot life 30 min glue', 'drying time 24 h glue']);
});

test('the least warmth is told with the time', () => {
  expect(checksIn('Pot life is thirty minutes at twenty degrees, not below eight.')).toEqual([
    'pot life: time=30 min; data sheet temperature=20 degC',
    'product temperature: least=8 degC',
  ]);
});
