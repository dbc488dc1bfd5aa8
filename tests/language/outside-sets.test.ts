import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { readMemo } from '../../src/language/pipeline.ts';
import { agreementOn, agrees, ratesOf, scoreOutside } from '../kit/outside/agreement.ts';
import { type OutsideCase, outsideCases } from '../kit/outside/sets.ts';

const load = <T>(name: string): T =>
  JSON.parse(readFileSync(new URL(`../outside/${name}`, import.meta.url), 'utf8')) as T;

/** Sources, commits and licences of the sets: tests/outside/SOURCE.md. */
const sample = load<readonly (OutsideCase & { readonly read: boolean })[]>('sample.json');

// Source of each: the set's own labels. Sentences with `read: false` are conventions or gaps (docs/outside-sets.md).
test.each(['recognizers-text specs', 'quantulum3 tests', 'nemo itn'])(
  'what was once read in the sample of %s is read still',
  (set) => {
    const known = sample.filter((one) => one.set === set && one.read);
    expect(known.length).toBeGreaterThan(20);
    expect(known.filter((one) => !agrees(one)).map(({ id, text }) => `${id}: ${text}`)).toEqual([]);
  },
);

// Floors a little under what is measured; the whole sets are measured by `npm run bench:outside`.
test.each([
  ['nemo itn', 'length', 0.95],
  ['nemo itn', 'area', 0.95],
  ['quantulum3 tests', 'mass', 0.75],
  ['recognizers-text specs', 'speed', 0.95],
] as const)('%s: %s are read with F1 of %d or more', (set, kind, floor) => {
  const row = scoreOutside(sample).find((each) => each.set === set && each.kind === kind);
  expect(row && ratesOf(row).f1).toBeGreaterThanOrEqual(floor);
});

// Source: Recognizers-Text AgeModel.json, named in the file. To the set they are ages; no figure of a build is one.
test('no published age becomes a time or a size', () => {
  const { sentences } = load<{ readonly sentences: readonly string[] }>('age-decoys.json');
  const figures = sentences.flatMap((said) =>
    readMemo(said, { units: 'metric', recordedAt: '2016-11-07T12:00:00Z' }).notes.figures.map(
      ({ quote }) => quote,
    ),
  );
  // Percentages and the wall are no ages; "87" of "a 87 yo man" is a known gap.
  expect(figures).toEqual(['more than 5,000 miles', '25%', '50%', '95%', '87']);
});

test('an answer is right only with value and unit, and counts once', () => {
  const one: OutsideCase = {
    set: 'own',
    id: '1',
    text: 'The shelf is 20 mm thick and 20 cm deep.',
    kinds: ['length'],
    gold: [
      { kind: 'length', keys: ['20 mm'] },
      { kind: 'length', keys: ['20 mm'] },
    ],
  };
  const { right, missed, extra } = agreementOn(one);
  expect([right.map(({ key }) => key), missed.length, extra.map(({ key }) => key)]).toEqual([
    ['20 mm'],
    1,
    ['20 cm'],
  ]);
});

test('a folder without sets gives no sentences', () => {
  expect(outsideCases('/nowhere')).toEqual([]);
});
