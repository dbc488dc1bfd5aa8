/** What speaks for a deed being the end of a task and what against it: one condition each, with both its sides. */
import { describe, expect, test } from 'vitest';
import { type Gisted, type Match, type Standing, signsOf } from '../../src/model/closing-signs.ts';

const told = (gist: string, named: readonly string[], more: Partial<Gisted> = {}): Gisted => ({
  gist,
  weights: new Map() as unknown as Gisted['weights'],
  words: new Set(named),
  actions: new Set(['oil']),
  named: new Set(named),
  things: new Set(named),
  telling: new Set(),
  goes: undefined,
  ...more,
});

const DEED = told('oiled the pump', ['pump']);
const TASK = told('oil the pump', ['pump']);
const NONE: Match = {
  things: 0,
  nearby: 0,
  acts: 0,
  isAnchored: false,
  sameRank: false,
  common: 0,
  clash: false,
  isGot: false,
};
const ALONE: Standing = {
  ofDeed: 1,
  ofTask: 1,
  sharers: 0,
  asked: 1,
  waits: false,
  days: 0,
  isDue: undefined,
};

interface Pair {
  readonly deed?: Gisted;
  readonly task?: Gisted;
  readonly match?: Partial<Match>;
  readonly standing?: Partial<Standing>;
}

const signs = ({ deed = DEED, task = TASK, match, standing }: Pair): Readonly<Record<string, number>> =>
  Object.fromEntries(signsOf(deed, task, { ...NONE, ...match }, { ...ALONE, ...standing }));

test('a plain pair has the plain signs, and none that is nought', () => {
  expect(signs({})).toEqual({
    any: 1,
    'first thing shared': 1,
    'last thing shared': 1,
    'of the deed': 1,
    'of the task': 1,
  });
});

describe('the match', () => {
  test.each([
    [{ things: 0.59 }, { things: 0.59 }],
    [{ things: 0.6 }, { things: 0.6, 'things enough': 1 }],
    [{ things: 1.19 }, { things: 1.19, 'things enough': 1 }],
    [{ things: 1.2 }, { things: 1.2, 'things enough': 1, 'things plenty': 1 }],
    [{ things: 3 }, { things: 2, 'things enough': 1, 'things plenty': 1 }],
    [{ nearby: 0.4 }, { nearby: 0.4 }],
    [{ nearby: 3 }, { nearby: 1 }],
    [{ acts: 0.4 }, { acts: 0.4 }],
    [{ acts: 3 }, { acts: 1 }],
    [{ sameRank: true }, { 'same rank': 1 }],
    [{ clash: true }, { 'other way': 1 }],
    [{ isGot: true }, { 'goods got': 1 }],
    [{ common: 0.1 }, { 'same way': 1, 'not anchored, same way': 1 }],
    [{ isAnchored: true }, { anchored: 1 }],
    [
      { isAnchored: true, common: 1 },
      { anchored: 1, 'same way': 1, 'anchored, same way': 1 },
    ],
    [
      { isAnchored: true, clash: true },
      { anchored: 1, 'other way': 1, 'anchored, other way': 1 },
    ],
  ] as const)('%j', (match, more) => {
    expect(signs({ match })).toEqual({ ...signs({}), ...more });
  });
});

describe('the standing', () => {
  test.each([
    [{ asked: 4 }, { 'best of deed': 0.75, 'best of task': 0.75 }],
    [{ asked: 0 }, {}],
    [
      { asked: 4, ofDeed: 0.75 },
      { 'worse of deed': 0.25, 'best of task': 0.75 },
    ],
    [
      { asked: 4, ofTask: 0.75 },
      { 'best of deed': 0.75, 'worse of task': 0.25 },
    ],
    [{ sharers: 1 }, { 'only sharer': 1 }],
    [{ sharers: 2 }, { sharers: 1 }],
    [{ sharers: 9 }, { sharers: 4 }],
    [{ waits: true }, { waits: 1 }],
    [{ days: 7 }, { days: 1 }],
    [{ days: 30 }, { days: 2 }],
    [{ isDue: true }, { 'day has come': 1 }],
    [{ isDue: false }, { 'day to come': 1 }],
  ] as const)('%j', (standing, more) => {
    expect(signs({ standing })).toEqual({ ...signs({}), ...more });
  });

  test('the one task that shares what is anchored', () => {
    expect(signs({ match: { isAnchored: true }, standing: { sharers: 1 } })).toMatchObject({
      'anchored, only sharer': 1,
    });
    expect(signs({ match: { isAnchored: true }, standing: { sharers: 2 } })).not.toHaveProperty([
      'anchored, only sharer',
    ]);
  });
});

describe('the ways', () => {
  const none = { actions: new Set<string>() };
  const [deed, task] = [told('the pump', ['pump'], none), told('that pump', ['pump'], none)];

  test('that are not known, on either side', () => {
    expect(signs({ deed })).toEqual({ ...signs({}), 'way of deed unknown': 1 });
    expect(signs({ task })).toEqual({ ...signs({}), 'way of task unknown': 1 });
    const match = { isAnchored: true };
    expect(signs({ deed, match })['anchored, way unknown']).toBe(1);
    expect(signs({ task, match })['anchored, way unknown']).toBe(1);
    expect(signs({ match })['anchored, way unknown']).toBeUndefined();
  });

  test('where to', () => {
    const goes = (where: string | undefined) => told('the pump', ['pump'], { goes: where });
    expect(signs({ deed: goes('in'), task: goes('in') })).toMatchObject({
      'same direction': 1,
      'deed moves': 1,
    });
    const other = signs({ deed: goes('in'), task: goes('out') });
    expect(other['deed moves']).toBe(1);
    expect(other['same direction']).toBeUndefined();
    const still = signs({ deed: goes(undefined), task: goes(undefined) });
    expect(still['deed moves'] ?? still['same direction']).toBeUndefined();
  });
});

describe('the things', () => {
  test('first of the deed and last of the task, shared or another', () => {
    const found = signs({
      deed: told('oiled the pump by the sink', ['pump', 'sink']),
      task: told('oil the sink and the tap', ['sink', 'tap']),
    });
    expect(found).toMatchObject({ 'first thing another': 1, 'last thing another': 1 });
    expect(found).toMatchObject({ 'of the deed': 0.5, 'of the task': 0.5 });
    expect(found['first thing shared'] ?? found['last thing shared']).toBeUndefined();
  });

  test('none, where one of the two only points', () => {
    const it = told('oiled it', []);
    expect(signs({ deed: it })).toEqual({ any: 1, 'deed points': 1 });
    expect(signs({ task: it })).toEqual({ any: 1, 'first thing another': 1, 'task points': 1 });
  });
});

describe('the words', () => {
  const [deedIs, taskIs] = [
    (gist: string) => signs({ deed: told(`${gist} pump`, ['pump']) }),
    (gist: string) => signs({ task: told(`${gist} pump`, ['pump']) }),
  ];

  test.each([
    ["it's oiled, the", 'told as a state'],
    ['got it oiled, the', 'told as a state'],
    ['were oiled, the', 'told as a state'],
    ['made a start on the', 'begun'],
    ['oiled half the', 'begun'],
    ['oiled most of the', 'begun'],
    ['oiled the whole', 'whole'],
    ['finally oiled the', 'whole'],
    ["didn't oil the", 'denied'],
    ['never oiled the', 'denied'],
    ['no oil for the', 'denied'],
  ])('"%s pump" of a deed: %s', (gist, sign) => {
    expect(deedIs(gist)).toEqual({ ...signs({}), [sign]: 1 });
  });

  test('a task tells whether it was begun, and no more', () => {
    expect(taskIs('oil half the')).toEqual({ ...signs({}), 'task begun': 1 });
    expect(taskIs("don't oil the whole")).toEqual(signs({}));
  });
});
