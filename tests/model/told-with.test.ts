/** Figures of earlier memos found by the words that they were told with, and words that tell of a change. */
import { describe, expect, test } from 'vitest';
import type { Arriving } from '../../src/model/claims.ts';
import { LIMIT_MARK } from '../../src/model/counterpart.ts';
import { cueOf, isToldMade } from '../../src/model/cues.ts';
import type { StandingRow } from '../../src/model/rows.ts';
import { toldBefore, toldWith, wordsToldWith } from '../../src/model/told-with.ts';
import type { Working } from '../../src/model/working.ts';

const place = (sentence: string, more: Readonly<Record<string, unknown>> = {}) => ({
  sentence,
  clause: sentence,
  until: sentence,
  before: '',
  after: '',
  index: 0,
  ...more,
});

const row = (slot: string, told: string, more: Partial<StandingRow> = {}) =>
  ({ slot, told, status: 'stands', claimId: 'm1.f1', ...more }) as StandingRow;

/** `pump 1 of 1, sink 0.5 of 0.5`: what is found among these rows for a figure told in a sentence. */
function found(rows: readonly StandingRow[], sentence: string, before = '') {
  const work = { memo: { id: 'm9' }, draft: { latestIn: () => rows } } as unknown as Working;
  const arriving = { note: { dimension: 'length' }, place: place(sentence, { before }) };
  return toldBefore(work, arriving as unknown as Arriving);
}
const alike = (rows: readonly StandingRow[], sentence: string, before = '') =>
  found(rows, sentence, before).alike.map(({ slot, shared, ofBest }) => [slot, shared, ofBest]);

describe('the words that a figure is told with', () => {
  test('are stems that tell, each once, without numbers and units; then those of the sentence before', () => {
    expect(toldWith(place('The pump by the pump is 40 mm wide', { before: 'The pump and the boiler' }))).toBe(
      'pump|boiler',
    );
  });

  test('are sixteen at most of either', () => {
    const letters = (from: number) =>
      Array.from({ length: 20 }, (_none, at) => `zq${String.fromCharCode(97 + at + from)}x`).join(' ');
    const [own = '', before = ''] = toldWith(place(letters(0), { before: letters(6) })).split('|');
    expect(own.split(' ').length).toBeLessThanOrEqual(16);
    expect(before.split(' ').length).toBeLessThanOrEqual(16);
    expect(before).not.toContain('zqgx');
  });

  test('are read back from a standing figure', () => {
    expect([...wordsToldWith(row('a', 'pump sink|boiler'))]).toEqual(['pump', 'sink', 'boiler']);
    expect([...wordsToldWith(row('a', '|'))]).toEqual([]);
    expect([...wordsToldWith({ slot: 'a', status: 'stands' } as StandingRow)]).toEqual([]);
  });
});

describe('a figure told in like words', () => {
  test('counts a word of both sentences whole, of one before half, of both before a quarter', () => {
    const rows = () => [row('own', 'pump|')];
    expect(alike(rows(), 'the pump')).toEqual([['own', 1, 1]]);
    expect(alike(rows(), '', 'the pump')).toEqual([['own', 0.5, 1]]);
    const behind = () => [row('before', '|pump')];
    expect(alike(behind(), 'the pump')).toEqual([['before', 0.5, 1]]);
    expect(alike(behind(), '', 'the pump')).toEqual([['before', 0.25, 1]]);
    expect(alike(rows(), 'the boiler')).toEqual([]);
  });

  test('a word that many have is worth less, and the likest is first', () => {
    const rows = [row('a', 'pump|'), row('b', 'pump boiler|'), row('c', 'pump|'), row('d', 'pump|')];
    expect(alike(rows, 'the pump and the boiler')).toEqual([
      ['b', 1.5, 1],
      ['a', 0.5, 1 / 3],
      ['c', 0.5, 1 / 3],
      ['d', 0.5, 1 / 3],
    ]);
  });

  test('six are looked at more closely', () => {
    const rows = Array.from({ length: 9 }, (_none, at) => row(`r${at}`, 'pump|'));
    expect(alike([...rows, row('likest', 'pump boiler|')], 'pump, boiler').map(([slot]) => slot)).toEqual([
      ...['likest', 'r0', 'r1', 'r2', 'r3', 'r4'],
    ]);
  });

  test.each([
    ['a limit', { slot: `a${LIMIT_MARK}` }],
    ['a series', { status: 'series' }],
    ['of this memo', { claimId: 'm9.f1' }],
  ] as const)('%s is left out', (_what, more) => {
    expect(found([row('a', 'pump|', more as Partial<StandingRow>)], 'pump').rows).toEqual([]);
  });

  test('of a memo of like number, or worked out, it stays', () => {
    const rows = [row('a', 'pump|', { claimId: 'm90.f1' }), { ...row('b', 'pump|'), claimId: undefined }];
    expect(found(rows as StandingRow[], 'pump').rows.length).toBe(2);
  });

  test('three of a dimension are few, and four are not', () => {
    const rows = ['a', 'b', 'c', 'd'].map((slot) => row(slot, '|'));
    expect(found(rows.slice(0, 3), 'pump').few.length).toBe(3);
    expect(found(rows, 'pump').few).toEqual([]);
  });
});

describe('words of change', () => {
  const cue = (words: string, more: Readonly<Record<string, unknown>> = {}, isInDecision = false) =>
    cueOf({}, place(words, more), isInDecision);

  test.each([
    ['there is no word', 'the rail is 900', {}, undefined, 0],
    ['in the clause', 'going with 900 instead', {}, 'decided', 3],
    ['up to the figure', 'rail 900', { until: 'going with it instead, rail 900' }, 'decided', 2],
    ['in the sentence', 'rail 900', { sentence: 'rail 900, so going with it instead' }, 'decided', 1],
    ['in the one before', 'rail 900', { before: 'I decided' }, 'decided', 0.75],
    ['in the one after', 'rail 900', { after: 'I decided' }, 'decided', 0.25],
    ['measured', 'I measured the rail, 900', {}, 'remeasured', 3],
    ['measured again', 'I measured the rail again, 900', {}, 'remeasured', 6],
    ['of both the decision', 'I measured, and decided on the rail, 900', {}, 'decided', 3],
  ] as const)('%s', (_what, words, more, change, weight) => {
    expect(cue(words, more)).toMatchObject({ change, weight });
  });

  test('a choice around it counts for two; the word of the reader comes first', () => {
    expect(cue('rail 900', {}, true)).toMatchObject({ change: 'decided', weight: 2 });
    expect(cueOf({ change: 'remeasured' }, place('going with 900 instead'), true)).toMatchObject({
      change: 'remeasured',
      weight: 6,
    });
  });

  test.each([
    ['the rail has to be 900', true, false],
    ['the rail should be 900', true, false],
    ['as I said the rail is 900', false, true],
    ['for the lady at the back, the rail is 900', false, true],
    ['the rail is 900', false, false],
    ['as before I measured the rail again, 900', false, false],
  ])('"%s": needed %s, restated %s', (words, isNeeded, isRestated) => {
    expect(cue(words)).toMatchObject({ isNeeded, isRestated });
  });

  test.each([
    ["the brackets I'd bent", '', true],
    ['they are 40', 'I cut them', true],
    ['the brackets to bend', 'they are next', false],
  ])('"%s" after "%s" is told of work done: %s', (sentence, before, made) => {
    expect(isToldMade({ sentence, before })).toBe(made);
  });
});
