/** Which standing figure a name in a check stands for, and where none or several do. */
import { describe, expect, test } from 'vitest';
import type { Attribute, Dimension } from '../../../src/language/notes.ts';
import {
  figureIn,
  figureNamed,
  itemAndAttribute,
  type Names,
} from '../../../src/model/checks/named-figure.ts';
import { LIMIT_MARK } from '../../../src/model/counterpart.ts';
import { nameStems } from '../../../src/model/names.ts';
import type { ItemRow, LimitRow, StandingRow } from '../../../src/model/rows.ts';

interface Figure {
  readonly of: string;
  readonly attribute: Attribute;
  readonly value: number;
  readonly dimension?: Dimension;
  /** Which one of its slot it is, from 2 on. */
  readonly number?: number;
}

const slotFor = (of: string, attribute: string, dimension: string, number?: number) =>
  `${of}|${attribute}|${dimension}${number === undefined ? '' : `#${number}`}`;

/** What a check reads, over a few figures and limits; the id of a thing is its name. */
function names(figures: readonly Figure[], limits: readonly Figure[] = []): Names {
  const rows = figures.map(({ of, attribute, value, dimension = 'length', number }) => {
    const slot = slotFor(of, attribute, dimension, number);
    return { slot, itemId: of, attribute, dimension, value, unit: 'mm', bound: 'exact', status: 'stands' };
  }) as unknown as StandingRow[];
  const ends = limits.map(({ of, attribute, value, dimension = 'length' }) => {
    const slot = `${slotFor(of, attribute, dimension)}${LIMIT_MARK}`;
    return { id: 'l', slot, itemId: of, attribute, dimension, value, unit: 'mm', bound: 'at-most' };
  }) as unknown as LimitRow[];
  const items = [...new Set([...figures, ...limits].map(({ of }) => of))].map(
    (name) => ({ id: name, name, otherNames: [], aliases: [] }) as unknown as ItemRow,
  );
  return {
    reader: {
      itemsLike: (stems) => items.filter(({ name }) => nameStems(name).some((stem) => stems.includes(stem))),
      standingOf: (id) => rows.filter(({ itemId }) => itemId === id),
      standing: (slot) => rows.find((row) => row.slot === slot),
      item: (id) => items.find((one) => one.id === id),
      limitsIn: (dimension) => ends.filter((one) => one.dimension === dimension),
    },
    ruleOf: () => undefined,
  };
}

/** The value that a name stands for; else what it says. */
function meant(among: Names, name: string, inputName = 'length', kind = 'length') {
  const found = figureNamed(among, name, kind, inputName);
  return found.kind === 'figure' ? found.row.value : found;
}

const width = (of: string, value: number): Figure => ({ of, attribute: 'width', value });
const height = (of: string, value: number): Figure => ({ of, attribute: 'height', value });

test.each([
  ['side hatch width', 'side hatch', 'width'],
  [' side  hatch width ', 'side hatch', 'width'],
  ['side hatch', 'side hatch', undefined],
  ['width', 'width', undefined],
  ['side hatch other', 'side hatch other', undefined],
])('"%s" is of "%s", its %s', (name, item, attribute) => {
  expect(itemAndAttribute(name)).toEqual({ item, attribute });
});

describe('a name', () => {
  const hatch = names([width('hatch', 500), height('hatch', 700)]);

  test('tells the measure, or the input does', () => {
    expect(meant(hatch, 'hatch width')).toBe(500);
    expect(meant(hatch, 'hatch height', 'width')).toBe(700);
    expect(meant(hatch, 'hatch', 'panel width')).toBe(500);
    expect(meant(hatch, 'hatch', 'panel height')).toBe(700);
  });

  test('of what nobody said is told back, with the measure that is asked for', () => {
    expect(meant(hatch, 'hatch depth')).toEqual({ kind: 'unsaid', words: 'hatch depth' });
    expect(meant(hatch, 'pump', 'panel width')).toEqual({ kind: 'unsaid', words: 'pump width' });
    expect(meant(hatch, 'pump', 'gap on')).toEqual({ kind: 'unsaid', words: 'pump' });
  });

  test('of a thing with several figures of the kind is not enough', () => {
    expect(meant(hatch, 'hatch', 'reach')).toEqual({
      kind: 'several',
      words: 'hatch',
      which: ['hatch width', 'hatch height'],
    });
  });

  test('of a thing with one figure of the kind means that one', () => {
    const pump = names([width('pump', 90), { of: 'pump', attribute: 'weight', dimension: 'mass', value: 4 }]);
    expect(meant(pump, 'pump', 'reach')).toBe(90);
    expect(meant(pump, 'pump', 'load', 'mass')).toBe(4);
    expect(meant(pump, 'pump', 'reach', 'area')).toEqual({ kind: 'unsaid', words: 'pump' });
    expect(meant(pump, 'pump', 'panel height')).toEqual({ kind: 'unsaid', words: 'pump height' });
  });

  test('a single size without a name is any measure of the thing', () => {
    const sized = names([{ of: 'pump', attribute: 'size', value: 90 }]);
    expect(meant(sized, 'pump', 'panel height')).toBe(90);
  });

  test('a count is a plain ratio', () => {
    const risers = names([{ of: 'risers', attribute: 'count', dimension: 'count', value: 13 }]);
    expect(meant(risers, 'risers count', 'pieces', 'ratio')).toBe(13);
    expect(meant(risers, 'risers', 'pieces', 'ratio')).toBe(13);
    expect(meant(risers, 'risers', 'pieces', 'length')).toMatchObject({ kind: 'unsaid' });
  });

  test.each([
    ['width', 'diameter'],
    ['diameter', 'width'],
    ['gap', 'clearance'],
    ['clearance', 'gap'],
  ] as const)('%s is said for %s, where that alone stands', (asked, stands) => {
    const one = names([{ of: 'flue', attribute: stands, value: 150 }]);
    expect(meant(one, `flue ${asked}`)).toBe(150);
    const both = names([
      { of: 'flue', attribute: stands, value: 150 },
      { of: 'flue', attribute: asked, value: 160 },
    ]);
    expect(meant(both, `flue ${asked}`)).toBe(160);
  });

  test('height is not said for width', () => {
    expect(meant(names([height('flue', 150)]), 'flue width')).toMatchObject({ kind: 'unsaid' });
  });
});

describe('a limit', () => {
  test('stands in where nothing but the limit was said', () => {
    expect(meant(names([], [width('hatch', 600)]), 'hatch width')).toBe(600);
    expect(meant(names([width('hatch', 500)], [width('hatch', 600)]), 'hatch width')).toBe(500);
    expect(
      meant(
        names([{ of: 'hatch', attribute: 'diameter', value: 550 }], [width('hatch', 600)]),
        'hatch width',
      ),
    ).toBe(550);
    expect(meant(names([], [width('hatch', 600)]), 'hatch', 'reach')).toEqual({
      kind: 'unsaid',
      words: 'hatch',
    });
  });

  test('is read with its bound, and with the limit that it is', () => {
    const found = figureNamed(names([], [width('hatch', 600)]), 'hatch width', 'length', 'width');
    expect(found).toMatchObject({
      kind: 'figure',
      row: { bound: 'at-most', status: 'stands', rule: 'a limit', limit: { id: 'l' } },
    });
    expect(found.kind === 'figure' && found.row).not.toHaveProperty('high');
  });
});

describe('what was told without the names of its sides', () => {
  const sizes = (...values: readonly number[]) =>
    names(
      values.map((value, at) => ({
        of: 'board',
        attribute: 'size' as const,
        value,
        ...(at === 0 ? {} : { number: at + 1 }),
      })),
    );

  test.each([
    ['panel length', 2400],
    ['panel width', 880],
    ['thickness', 40],
  ])('%s is told by its order', (input, value) => {
    expect(meant(sizes(2400, 880, 40), 'board', input)).toBe(value);
  });

  test.each([
    ['opening width', 710],
    ['opening height', 540],
  ])('%s is told by its order', (input, value) => {
    expect(meant(sizes(710, 540), 'board', input)).toBe(value);
  });

  test('as many sizes are needed as it has sides, for an input that has a place', () => {
    expect(meant(sizes(2400, 880), 'board', 'panel width')).toMatchObject({ kind: 'unsaid' });
    expect(meant(sizes(2400, 880, 40), 'board', 'opening width')).toMatchObject({ kind: 'unsaid' });
    expect(meant(sizes(2400, 880, 40), 'board', 'panel height')).toMatchObject({ kind: 'unsaid' });
  });
});

describe('an opening', () => {
  const door = names([width('back door opening', 760), height('back door opening', 1980)]);

  test('is meant by the door that one goes through', () => {
    expect(meant(door, 'back door', 'opening width')).toBe(760);
    expect(meant(door, 'back door height', 'opening height')).toBe(1980);
  });

  test.each(['hole', 'bay', 'recess', 'slot', 'gap', 'frame'])('may be told of as the %s', (room) => {
    const flue = names([{ of: `flue ${room}`, attribute: 'diameter', value: 150 }]);
    expect(meant(flue, 'flue opening diameter', 'opening')).toBe(150);
    expect(meant(flue, 'flue opening diameter', 'part')).toMatchObject({ kind: 'unsaid' });
    expect(meant(flue, 'flue opening height', 'opening')).toMatchObject({ kind: 'unsaid' });
  });

  test('that is told of by two names is not settled', () => {
    const two = names([width('flue hole', 150), width('flue recess', 160)]);
    expect(meant(two, 'flue opening width', 'opening')).toMatchObject({ kind: 'unsaid' });
  });
});

describe('a slot', () => {
  const among = names(
    [{ ...width('hatch', 500), number: 2 }, height('hatch', 700)],
    [{ of: 'hatch', attribute: 'depth', value: 90 }],
  );
  const valueIn = (slot: string) => figureIn(among, slot)?.value;

  test.each([
    ['hatch|height|length', 700],
    ['hatch|width|length#2', 500],
    ['hatch|width|length', 500],
    ['hatch|width|mass', undefined],
    ['pump|width|length', undefined],
    [`hatch|depth|length${LIMIT_MARK}`, 90],
    [`hatch|width|length${LIMIT_MARK}`, undefined],
    ['hatch|depth|length', undefined],
  ])('%s holds %s', (slot, value) => {
    expect(valueIn(slot)).toBe(value);
  });
});
