/** The clock of a product beside its check: which work started it, and what it says at a time. */
import { describe, expect, test } from 'vitest';
import type { CheckRow } from '../../../src/model/checks/check-rows.ts';
import {
  clocksFor,
  hasClock,
  type RunningClock,
  readClock,
  span,
  type Times,
} from '../../../src/model/checks/running-clock.ts';
import type { ClockRow } from '../../../src/model/kept/record-rows.ts';

const HOUR = 3600;
/** `12:30` of the third of February, or of another day of it. */
const at = (time: string, day = 3) => `2026-02-0${day}T${time}:00+01:00`;
const clock = (act: ClockRow['act'], when: string, more: Partial<ClockRow> = {}): ClockRow => ({
  id: `${act} ${when.slice(8, 16)}`,
  kind: 'clock',
  act,
  product: 'primer',
  at: when,
  isSaid: true,
  source: { memoId: 'm1', recordedAt: when, quote: `${act} it` },
  ...more,
});

/** A data sheet that stands, by what it is of. */
const sheet = (of: string | undefined, memoId = 'm1') =>
  ({
    check: 'recoat window',
    inputs: [{ input: 'recoat after', expression: '4 h', ...(of === undefined ? {} : { of }) }],
    source: { memoId, recordedAt: at('08:00'), quote: '' },
  }) as unknown as CheckRow;

describe('the clocks that run', () => {
  const found = (
    rows: readonly ClockRow[],
    { check = 'recoat window', product = 'primer', now = at('20:00'), sheets = [sheet('primer')] } = {},
  ) =>
    clocksFor(
      { records: (kind: string) => (kind === 'clock' ? rows : []), checksWatching: () => sheets } as never,
      check,
      product === '' ? undefined : product,
      now,
    ).map(({ start, before, used, freed }) =>
      [start, before, used, freed].map((row) => row?.id ?? '-').join(', '),
    );
  const [first, second] = [clock('laid', at('10:00')), clock('laid', at('14:00'))];
  const mixed = clock('mixed', at('09:00'));

  test.each([
    ['a coat starts it', [first], {}, ['laid 03T10:00, -, -, -']],
    ['the last of two coats', [first, second], {}, ['laid 03T14:00, -, -, -']],
    ['by their time, and not by the order of talk', [second, first], {}, ['laid 03T14:00, -, -, -']],
    ['mixing starts no window', [mixed], {}, []],
    ['a mix starts the life of a pot', [mixed], { check: 'pot life' }, ['mixed 03T09:00, -, -, -']],
    ['a coat starts none', [first], { check: 'pot life' }, []],
    [
      'a cure starts by the coat before the mix',
      [mixed, first],
      { check: 'cure time' },
      ['laid 03T10:00, -, -, -'],
    ],
    ['else by the mix', [mixed], { check: 'cure time' }, ['mixed 03T09:00, -, -, -']],
    ['drying does not', [mixed], { check: 'drying time' }, []],
    ['what is told to come is not on yet', [first], { now: at('09:00') }, []],
    ['a memo may be begun twenty minutes before', [first], { now: at('09:40') }, ['laid 03T10:00, -, -, -']],
    ['and not more', [first], { now: at('09:39') }, []],
    ['another product has another clock', [clock('laid', at('10:00'), { product: 'varnish' })], {}, []],
    [
      'no name is the only product there is',
      [clock('laid', at('10:00'), { product: '' })],
      {},
      ['laid 03T10:00, -, -, -'],
    ],
    [
      'of two products nobody knows',
      [clock('laid', at('10:00'), { product: '' })],
      { sheets: [sheet('primer'), sheet('varnish')] },
      [],
    ],
    [
      'nor where a sheet names none',
      [clock('laid', at('10:00'), { product: '' })],
      { sheets: [sheet('primer'), sheet(undefined)] },
      [],
    ],
    [
      'a sheet without a name is of the only one that names none',
      [first],
      { product: '', sheets: [sheet(undefined), sheet(undefined)] },
      ['laid 03T10:00, -, -, -'],
    ],
    [
      'but not of two talks',
      [first],
      { product: '', sheets: [sheet(undefined), sheet(undefined, 'm2')] },
      [],
    ],
  ] as const)('%s', (_what, rows, how, expected) => {
    expect(found(rows, how as never)).toEqual(expected);
  });

  test.each([
    [
      'that goes on one before knows it',
      [first, { ...second, isNext: true as const }],
      ['laid 03T14:00, laid 03T10:00, -, -'],
    ],
    ['that goes on none knows none', [{ ...second, isNext: true as const }], ['laid 03T14:00, -, -, -']],
    [
      'of another product is not before it',
      [
        { ...first, product: '' },
        { ...second, isNext: true as const },
      ],
      ['laid 03T14:00, laid 03T10:00, -, -'],
    ],
  ] as const)('a coat %s', (_what, rows, expected) => {
    expect(found(rows)).toEqual(expected);
  });

  test('a mix knows its last use, and not its mixing or what came off', () => {
    const rows = [mixed, first, clock('used', at('11:00')), clock('freed', at('15:00'))];
    expect(found(rows, { check: 'pot life' })).toEqual(['mixed 03T09:00, -, used 03T11:00, freed 03T15:00']);
  });

  test('a cure knows when what held it first came off, and not what came off before', () => {
    const rows = [
      clock('freed', at('08:00')),
      first,
      clock('freed', at('15:00')),
      clock('freed', at('18:00')),
    ];
    expect(found(rows, { check: 'cure time' })).toEqual(['laid 03T10:00, -, -, freed 03T15:00']);
  });

  describe('on several things', () => {
    const on = (what: string, when: string) => clock('laid', at(when), { on: what });
    test.each([
      [
        'each has its own',
        [on('hull', '10:00'), on('deck', '12:00')],
        ['laid 03T10:00, -, -, -', 'laid 03T12:00, -, -, -'],
      ],
      [
        'in order of their last coats',
        [on('deck', '12:00'), on('hull', '10:00'), on('deck', '09:00')],
        ['laid 03T10:00, -, -, -', 'laid 03T12:00, -, -, -'],
      ],
      ['the same thing again is one', [on('hull', '10:00'), on('hull', '12:00')], ['laid 03T12:00, -, -, -']],
      [
        'what names none goes on with the last',
        [on('hull', '10:00'), on('deck', '11:00'), second],
        ['laid 03T10:00, -, -, -', 'laid 03T14:00, -, -, -'],
      ],
      ['a name after none is its name', [first, on('hull', '12:00')], ['laid 03T12:00, -, -, -']],
      [
        'and a second name is another thing',
        [first, on('hull', '12:00'), on('deck', '13:00')],
        ['laid 03T12:00, -, -, -', 'laid 03T13:00, -, -, -'],
      ],
    ] as const)('%s', (_what, rows, expected) => {
      expect(found(rows)).toEqual(expected);
    });

    test('a pot is one, wherever it is used', () => {
      const rows = [clock('mixed', at('09:00'), { on: 'hull' }), clock('mixed', at('10:00'), { on: 'deck' })];
      expect(found(rows, { check: 'pot life' })).toEqual(['mixed 03T10:00, -, -, -']);
    });
  });

  test.each([
    ['pot life', true],
    ['recoat window', true],
    ['cure time', true],
    ['drying time', true],
    ['clearance', false],
  ])('%s has one: %s', (check, answer) => {
    expect(hasClock(check)).toBe(answer);
  });
});

describe('what a clock says', () => {
  const told = (check: string, running: RunningClock, times: Times, now: string) => {
    const { state, why } = readClock(check, running, times, now);
    return `${state}: ${why}`;
  };
  const start = clock('laid', at('10:00'));
  const mix = clock('mixed', at('10:00'));

  describe('of a pot', () => {
    const LIFE = { until: 2 * HOUR };
    const usable = 'primer mixed 2026-02-03 10:00, usable until 2026-02-03 12:00';
    const used = (time: string) => ({ start: mix, used: clock('used', at(time)) });
    test.each([
      ['while it lasts', { start: mix }, at('11:15'), `told: ${usable}; 45 min left at worst`],
      ['at its end', { start: mix }, at('12:00'), `told: ${usable}; 0 min left at worst`],
      ['after it', { start: mix }, at('12:01'), `told: ${usable}; over since then`],
      ['used at its end', used('12:00'), at('13:00'), `told: ${usable}; over since then`],
      [
        'used after it',
        used('12:10'),
        at('13:00'),
        `broken: ${usable}; in use 2026-02-03 12:10, 10 min over at worst`,
      ],
      [
        'used three lives after it was mixed',
        used('16:00'),
        at('17:00'),
        `broken: ${usable}; in use 2026-02-03 16:00, 4 h over at worst`,
      ],
      [
        'used later than that it is another mix',
        used('16:01'),
        at('17:00'),
        `told: ${usable}; over since then`,
      ],
    ] as const)('%s', (_what, running, now, expected) => {
      expect(told('pot life', running, LIFE, now)).toBe(expected);
    });
  });

  describe('of a coat', () => {
    const WINDOW = { from: 4 * HOUR, until: 12 * HOUR };
    const next = 'primer laid 2026-02-03 10:00; the next coat from 2026-02-03 14:00';
    test.each([
      ['before the window', WINDOW, at('13:30'), `${next} until 2026-02-03 22:00, 30 min to wait at worst`],
      ['where it opens', WINDOW, at('14:00'), `${next} until 2026-02-03 22:00, 8 h left at worst`],
      ['where it closes', WINDOW, at('22:00'), `${next} until 2026-02-03 22:00, 0 min left at worst`],
      ['after it', WINDOW, at('22:01'), `${next} until 2026-02-03 22:00, over since then`],
      ['without an end', { from: 4 * HOUR }, at('22:01'), next],
    ] as const)('%s', (_what, times, now, expected) => {
      expect(told('recoat window', { start }, times, now)).toBe(`told: ${expected}`);
    });

    const second = (time: string, isSaid = true, firstSaid = true) => ({
      start: clock('laid', at(time, time < '10:00' ? 4 : 3), { isNext: true, isSaid }),
      before: { ...start, isSaid: firstSaid },
    });
    const on = (time: string, gap: string) =>
      `primer laid 2026-02-0${time < '10:00' ? 4 : 3} ${time}, ${gap} after the coat of 2026-02-03 10:00`;
    test.each([
      ['too early', second('13:59'), `broken: ${on('13:59', '3 h 59 min')}: 1 min too early at worst`],
      [
        'as it opens',
        second('14:00'),
        `holds: ${on('14:00', '4 h')}, within its times; the next coat from 2026-02-03 18:00 until 2026-02-04 02:00`,
      ],
      [
        'as it closes',
        second('22:00'),
        `holds: ${on('22:00', '12 h')}, within its times; the next coat from 2026-02-04 02:00 until 2026-02-04 10:00`,
      ],
      ['too late', second('22:01'), `broken: ${on('22:01', '12 h 1 min')}: 1 min too late at worst`],
      [
        'too late, the first one told without a time',
        second('22:01', true, false),
        `broken: ${on('22:01', '12 h 1 min')}: 1 min too late at worst`,
      ],
      [
        'too early, itself told without a time',
        second('13:59', false),
        `broken: ${on('13:59', '3 h 59 min')}: 1 min too early at worst`,
      ],
    ] as const)('on one before: %s', (_what, running, expected) => {
      expect(told('recoat window', running, WINDOW, at('23:00'))).toBe(expected);
    });

    test.each([
      ['too early after one told without a time', second('13:59', true, false)],
      ['too late, itself told without a time', second('22:01', false)],
      ['within, one of them told without a time', second('15:00', true, false)],
    ] as const)('on one before: nobody knows, %s', (_what, running) => {
      expect(told('recoat window', running, WINDOW, at('23:00'))).toMatch(
        /^told: primer laid [^,]+; the next coat /,
      );
    });
  });

  describe('of a joint', () => {
    const CURE = { from: 6 * HOUR };
    const by = "primer laid 2026-02-03 10:00, by the data sheet's time cured 2026-02-03 16:00";
    const freed = (time: string, isSaid = true) => ({
      start: { ...start, isSaid },
      freed: clock('freed', at(time)),
    });
    test.each([
      ['before its time', { start }, at('15:00'), `told: ${by}, 1 h to go at worst`],
      ['at its time', { start }, at('16:00'), `holds: ${by}: that time is over`],
      ['after it', { start }, at('17:00'), `holds: ${by}: that time is over`],
      [
        'freed before its time',
        freed('15:59'),
        at('17:00'),
        'broken: primer laid 2026-02-03 10:00, clamps or formwork off 2026-02-03 15:59, 5 h 59 min after it: 1 min too early at worst',
      ],
      ['freed at its time', freed('16:00'), at('17:00'), `holds: ${by}: that time is over`],
      [
        'freed where no time of laying was said: half a working day before the memo is let pass',
        freed('12:00', false),
        at('17:00'),
        `holds: ${by}: that time is over`,
      ],
      [
        'freed a little sooner',
        freed('11:59', false),
        at('17:00'),
        'broken: primer laid 2026-02-03 10:00, clamps or formwork off 2026-02-03 11:59, 1 h 59 min after it, counted from the memo that told of it: 4 h 1 min too early at worst',
      ],
    ] as const)('%s', (_what, running, now, expected) => {
      expect(told('cure time', running, CURE, now)).toBe(expected);
    });

    test('of paint that dries, what came off says nothing', () => {
      expect(told('drying time', freed('11:00'), CURE, at('17:00'))).toBe(
        "holds: primer laid 2026-02-03 10:00, by the data sheet's time dry 2026-02-03 16:00: that time is over",
      );
    });
  });

  test('its window holds what it is of, when it was begun, and both ends', () => {
    const running = { start: { ...mix, on: 'hull' }, used: clock('used', at('11:00')) };
    expect(readClock('pot life', running, { until: HOUR, from: HOUR / 2 }, at('12:00')).window).toEqual({
      product: 'primer',
      on: 'hull',
      act: 'mixed',
      startedAt: at('10:00'),
      source: mix.source,
      usedSource: running.used.source,
      opens: at('10:30'),
      closes: at('11:00'),
    });
    expect(readClock('recoat window', running, {}, at('12:00')).window).toEqual({
      product: 'primer',
      on: 'hull',
      act: 'mixed',
      startedAt: at('10:00'),
      source: mix.source,
    });
  });

  test.each([
    [{ start: { ...mix, product: '' } }, 'pot life', /^told: the mix mixed /],
    [{ start: { ...start, product: '' } }, 'recoat window', /^told: the coat laid /],
    [{ start: { ...start, on: 'hull' } }, 'recoat window', /^told: primer \(hull\) laid /],
  ] as const)('%# by its name, or what it is', (running, check, words) => {
    expect(told(check, running, { from: HOUR, until: HOUR }, at('10:30'))).toMatch(words);
  });
});

test.each([
  [0, '0 min'],
  [-50, '0 min'],
  [29, '0 min'],
  [30, '1 min'],
  [59 * 60, '59 min'],
  [60 * 60, '1 h'],
  [61 * 60, '1 h 1 min'],
  [47 * HOUR + 59 * 60, '47 h 59 min'],
  [48 * HOUR, '2 d'],
  [49 * HOUR + 60, '2 d 1 h'],
  [72 * HOUR, '3 d'],
])('%d seconds are %s', (seconds, words) => {
  expect(span(seconds)).toBe(words);
});
