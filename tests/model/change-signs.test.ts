/** What a name, a size and the words around a figure say for it being a change: one condition each, both its sides. */
import { describe, expect, test } from 'vitest';
import { type Around, type Held, signsOfName, weighChange } from '../../src/model/change-signs.ts';
import { CHANGE_WEIGHTS } from '../../src/model/change-weights.ts';
import type { Arriving } from '../../src/model/claims.ts';
import type { ItemRow, StandingRow } from '../../src/model/rows.ts';
import { isOtherMeasure, signsOfSize } from '../../src/model/size-signs.ts';
import { talkStems } from '../../src/model/talk-stems.ts';

const item = (name: string, id = 'i1') => ({ id, name }) as ItemRow;

const arriving = (note: Readonly<Record<string, unknown>>, id = 'i9'): Arriving =>
  ({
    note: { item: 'rail', attribute: 'width', unit: 'mm', ...note },
    item: item('rail', id),
  }) as unknown as Arriving;

interface Talk {
  readonly sentence?: string;
  readonly before?: string;
  readonly further?: string;
  readonly after?: string;
}

function held({ sentence = '', before = '', further = '', after = '' }: Talk): Held {
  const all = [sentence, before, further, after];
  const around: Around = {
    sentence: talkStems(sentence),
    before: talkStems(before),
    further: [talkStems(''), talkStems(further)],
    after: talkStems(after),
    memo: talkStems(all.join(' ')),
  };
  return { around, signs: [], size: 1, near: [] };
}

const nameSigns = (said: string, known: string, talk: Talk = {}, assumed: readonly string[] = []) =>
  Object.fromEntries(signsOfName(arriving({ item: said, assumed }), item(known), held(talk)));

describe('the name', () => {
  test('of the same thing', () => {
    expect(nameSigns('oak rail', 'oak rail')).toEqual({ 'same head': 1, 'name shared': 1 });
    expect(Object.fromEntries(signsOfName(arriving({}, 'i1'), item('rail'), held({})))).toHaveProperty([
      'own thing',
    ]);
  });

  test.each([
    ['rail', 'rail bracket', { 'head within': 1, 'name shared': 0.5 }],
    ['rail bracket', 'rail', { 'head beside': 1, 'name shared': 1 }],
    ['rail', 'pump', { 'name shared': 0 }],
  ])('"%s" beside "%s"', (said, known, expected) => {
    const found = nameSigns(said, known);
    for (const sign of ['same head', 'head within', 'head beside', 'name shared'])
      expect([sign, found[sign] ?? 0]).toEqual([sign, (expected as Record<string, number>)[sign] ?? 0]);
  });

  test.each([
    ['left rail', 'right rail', true],
    ['left rail', 'rail', false],
    ['rail', 'right rail', false],
    ['left rail', 'oak rail', false],
    ['fridge', 'fridge cavity', true],
  ])('"%s" and "%s" are set apart: %s', (said, known, isApart) => {
    expect(nameSigns(said, known)['set apart']).toBe(isApart ? 1 : undefined);
  });

  test.each([
    ['another of its kind', 'stool leg', 'bench leg', {}, true],
    ['whose name is told here', 'stool leg', 'bench leg', { sentence: 'on the bench' }, false],
    ['whose name was told just before', 'stool leg', 'bench leg', { before: 'on the bench' }, false],
    ['whose name was told further up', 'stool leg', 'bench leg', { further: 'on the bench' }, true],
    ['that says no more', 'stool leg', 'leg', {}, false],
    ['of a name that says no more', 'leg', 'bench leg', {}, false],
    ['of another kind', 'kiln lid', 'kiln shelf', {}, true],
    ['of another kind that is told', 'kiln lid', 'kiln shelf', { sentence: 'the shelf' }, false],
    ['that has the first in its name', 'oak lid', 'lid shelf', {}, false],
  ] as const)('one %s is another by name', (_what, said, known, talk, isOther) => {
    expect(nameSigns(said, known, talk)['another by name']).toBe(isOther ? 1 : undefined);
    expect(nameSigns(said, known, talk, ['item'])['another by name']).toBeUndefined();
  });

  test.each([
    ['sentence', { 'name in the sentence': 0.5, 'head in the sentence': 1, 'name in the memo': 0.5 }],
    ['before', { 'name before': 0.5, 'head before': 1, 'name in the memo': 0.5 }],
    ['further', { 'name further up': 0.5, 'name in the memo': 0.5 }],
    ['after', { 'name behind': 0.5, 'name in the memo': 0.5 }],
  ])('told in the %s', (where, more) => {
    const { 'another by name': _other, ...found } = nameSigns('pump', 'oak rail', { [where]: 'the rail' });
    expect(found).toEqual({ 'name unsaid': 1, ...more });
  });

  test('a head in the sentence is none of the one before', () => {
    const found = nameSigns('pump', 'oak rail', { sentence: 'the rail', before: 'the rail' });
    expect(found['head in the sentence']).toBe(1);
    expect(found['head before']).toBeUndefined();
  });

  test('unsaid in the sentence, where it says more', () => {
    expect(nameSigns('pump', 'rail', { sentence: 'the rail' })['name unsaid']).toBe(1);
    expect(nameSigns('pump', 'rail', { sentence: 'the pump' })['name unsaid']).toBeUndefined();
    expect(nameSigns('rail', 'oak rail')['name unsaid']).toBeUndefined();
  });
});

const row = (more: Partial<StandingRow> = {}) =>
  ({ itemId: 'i1', attribute: 'width', unit: 'mm', status: 'stands', claimId: 'c1', ...more }) as StandingRow;

const sizeSigns = (
  note: Readonly<Record<string, unknown>> = {},
  more: Partial<StandingRow> = {},
  ratio = 1,
  id = 'i9',
) => Object.fromEntries(signsOfSize(arriving(note, id), row(more), ratio).signs);

describe('the measure and the size', () => {
  test.each([
    ['width', 'width', 'same measure'],
    ['size', 'width', 'loose measure'],
    ['height', 'other', 'loose measure'],
    ['height', 'length', 'loose measure'],
    ['width', 'diameter', 'like measure'],
    ['gap', 'offset', 'like measure'],
    ['clearance', 'width', 'like measure'],
    ['width', 'height', 'other measure'],
    ['height', 'diameter', 'other measure'],
  ] as const)('%s and %s are the %s', (known, said, sign) => {
    const is = sizeSigns({ attribute: said }, { attribute: known });
    const measures = Object.keys(is).filter((one) => / measure$/.test(one));
    expect(measures).toEqual([sign]);
    expect(is['other measure told']).toBe(sign === 'other measure' ? 1 : undefined);
    expect(isOtherMeasure(arriving({ attribute: said }).note, row({ attribute: known }))).toBe(
      sign === 'other measure',
    );
  });

  test('one that was guessed tells no other measure', () => {
    const note = { attribute: 'height', assumed: ['attribute'] };
    expect(sizeSigns(note)).toMatchObject({ 'other measure, guessed': 1 });
    expect(sizeSigns(note)).not.toHaveProperty(['other measure told']);
    expect(isOtherMeasure(arriving(note).note, row())).toBe(false);
    expect(sizeSigns({ attribute: 'height', assumed: ['item'] })).not.toHaveProperty([
      'other measure, guessed',
    ]);
  });

  test.each([
    [1, 'ratio below 1.02'],
    [1.0199, 'ratio below 1.02'],
    [1.02, 'ratio below 1.06'],
    [1.06, 'ratio below 1.15'],
    [1.15, 'ratio below 1.3'],
    [1.3, 'ratio below 1.6'],
    [1.6, 'ratio below 2.2'],
    [2.1999, 'ratio below 2.2'],
    [2.2, 'ratio far'],
    [900, 'ratio far'],
  ])('%d times: %s', (ratio, sign) => {
    const found = Object.keys(sizeSigns({}, {}, ratio)).filter((one) => one.startsWith('ratio'));
    expect(found).toEqual([sign]);
  });

  test.each([
    ['the same unit', {}, { unit: 'mm' }, 'same unit', true],
    ['another unit', {}, { unit: 'in' }, 'same unit', false],
    ['in doubt', {}, { status: 'in-doubt' }, 'in doubt', true],
    ['that stands', {}, { status: 'stands' }, 'in doubt', false],
    ['worked out', {}, { claimId: undefined }, 'worked out', true],
    ['said', {}, { claimId: 'c1' }, 'worked out', false],
    ['measured', {}, { state: 'measured' }, 'was measured', true],
    ['of no told state', {}, {}, 'was untold', true],
    ['of a told state', {}, { state: 'measured' }, 'was untold', false],
  ] as const)('one %s', (_what, note, more, sign, isThere) => {
    expect(sizeSigns(note, more as Partial<StandingRow>)[sign]).toBe(isThere ? 1 : undefined);
  });

  test('of its own thing', () => {
    expect(sizeSigns({}, {}, 1, 'i1')).toHaveProperty(['same measure, own thing']);
    expect(sizeSigns({}, {}, 1, 'i2')).not.toHaveProperty(['same measure, own thing']);
  });

  test('the sum is that of the signs, also when asked for again', () => {
    for (let again = 0; again < 2; again++) {
      const { signs, sum } = signsOfSize(arriving({ attribute: 'height' }), row({ state: 'made' }), 1.4);
      expect(sum).toBe(weighChange(signs));
      expect(signs).toContainEqual(['was made', 1]);
    }
  });
});

test('signs weigh by their size; one without a weight weighs nothing', () => {
  const [[one, weight], [other, more]] = Object.entries(CHANGE_WEIGHTS) as [
    [string, number],
    [string, number],
  ];
  expect(weighChange([])).toBe(0);
  expect(
    weighChange([
      [one, 2],
      [other, 0.5],
      ['no such sign', 9],
    ]),
  ).toBeCloseTo(2 * weight + more / 2, 12);
});
