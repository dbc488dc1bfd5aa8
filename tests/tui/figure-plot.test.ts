/** A figure's history as a small plot, and the same in words. */
import { expect, test } from 'vitest';
import type { ClaimView, StandingFigure } from '../../src/model/views.ts';
import { plotOf } from '../../src/tui/state/figure-plot.ts';
import { FIGURES } from '../kit/views.ts';

const BEAM = FIGURES[0] as StandingFigure;

/** The beam with these values, the last one standing, said a day apart from this day on. */
function said(values: readonly (readonly [value: number, unit: 'mm' | 'cm' | 'kg'])[], from = '2026-03-09') {
  const history = values.map(([value, unit], index): ClaimView => {
    const day = new Date(Date.parse(from) + index * 86_400_000).toISOString();
    const source = { memoId: `m${index + 1}`, quote: 'x', recordedAt: day };
    const status = index === values.length - 1 ? 'standing' : 'superseded';
    return { ...BEAM.history[0], id: `m${index + 1}.f1`, value, unit, status, source } as ClaimView;
  });
  const last = history.at(-1) as ClaimView;
  return { ...BEAM, value: last.value, unit: last.unit, history } as StandingFigure;
}

test('time runs down, the value across; what is let pass is a band, what stands has a mark of its own', () => {
  const figure = said([
    [2115, 'mm'],
    [214.9, 'cm'],
    [2150, 'mm'],
  ]);
  expect(plotOf(figure)).toEqual({
    words: [
      '3 values from Mon 9 Mar 2026 to Wed 11 Mar 2026: least 2115 mm (≈ 83 1/4 in) on Mon 9 Mar, most 2150 mm (≈ 84 5/8 in) on Wed 11 Mar',
      '= is let pass, 1 mm either way: 1 of 3 outside',
    ],
    rows: [
      'Mon 9 Mar  |o--------==| 2115 mm',
      'Tue 10 Mar |---------o=| 214.9 cm',
      'Wed 11 Mar |---------=*| 2150 mm',
    ],
  });
});

test('years are told where there are several, and a row still fits the narrowest screen', () => {
  const plot = plotOf(
    said(
      [
        [2115, 'mm'],
        [2150, 'mm'],
      ],
      '2025-12-31',
    ),
  );
  expect(plot?.rows[0]).toMatch(/^Wed 31 Dec 2025 \|o-+==\| 2115 mm$/);
  for (const row of plot?.rows ?? []) expect(row.length).toBeLessThanOrEqual(38);
});

test('readings that are meant to change have no band; without a tolerance there is none either', () => {
  const { tolerance: _, ...bare } = said([
    [12, 'mm'],
    [14, 'mm'],
    [16, 'mm'],
  ]);
  for (const figure of [
    bare,
    {
      ...said([
        [12, 'mm'],
        [14, 'mm'],
        [16, 'mm'],
      ]),
      status: 'series',
    } as const,
  ])
    expect(plotOf(figure)).toMatchObject({
      words: [expect.stringMatching(/^3 values /)],
      rows: [
        'Mon 9 Mar  |o----------| 12 mm',
        'Tue 10 Mar |-----o-----| 14 mm',
        'Wed 11 Mar |----------*| 16 mm',
      ],
    });
});

test('one value is no history, nor is one beside what cannot be set against it', () => {
  expect(plotOf(said([[2150, 'mm']]))).toBeUndefined();
  expect(
    plotOf(
      said([
        [2150, 'kg'],
        [2150, 'mm'],
      ]),
    ),
  ).toBeUndefined();
});

test('the same value twice lies within its band', () => {
  expect(
    plotOf(
      said([
        [2150, 'mm'],
        [2150, 'mm'],
      ]),
    ),
  ).toMatchObject({
    words: [expect.stringContaining('all 2150 mm'), '= is let pass, 1 mm either way: none lies outside'],
    rows: ['Mon 9 Mar  |=====o=====| 2150 mm', 'Tue 10 Mar |=====*=====| 2150 mm'],
  });
});

test('of a long history the newest are drawn, and all are told in words', () => {
  const plot = plotOf(said(Array.from({ length: 60 }, (_, index) => [2000 + index, 'mm'] as const)));
  expect(plot?.rows).toHaveLength(14);
  expect(plot?.words[0]).toMatch(/^60 values .*least 2000 mm .*most 2059 mm/);
});
