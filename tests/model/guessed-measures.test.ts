/** A figure whose measure was only guessed has that of the figure whose place it takes. */
import { describe, expect, test } from 'vitest';
import type { FigureNote } from '../../src/language/notes.ts';
import { dayView } from '../../src/model/day-views.ts';
import { findingViews, standingFigures } from '../../src/model/project-views.ts';
import { figure, NotedStory } from '../kit/noted-story.ts';

const ORDERS: Partial<FigureNote> = { change: 'decided', replaces: { value: 642, unit: 'mm' } };
/** How tall a shelf is, and on the next day a number for it whose measure is told or guessed. */
const changed = (more: Partial<FigureNote>) =>
  new NotedStory()
    .memo('The shelf is 642 tall.', figure('shelf', 'height', 642))
    .memo(
      'I changed my mind about the shelf, not 642, 700.',
      figure('shelf', 'width', 700, { ...ORDERS, ...more }),
    );
const stands = (story: NotedStory) =>
  standingFigures(story.project.rows)
    .map(({ item, attribute, value }) => `${item} ${attribute} ${value}`)
    .sort();

describe('in place of another figure', () => {
  test('a guessed measure is the one that was told, in what stands and on the page of the day', () => {
    const story = changed({ assumed: ['attribute'] });
    expect(stands(story)).toEqual(['shelf height 700']);
    expect(dayView(story.project.rows, '2026-02-02')?.changes).toMatchObject([
      { kind: 'changed', figure: { attribute: 'height', value: 700 } },
    ]);
  });

  test('a measure that was told stays', () => {
    expect(stands(changed({}))).toContain('shelf width 700');
  });

  test('so does one that a person put right', () => {
    const story = new NotedStory()
      .memo('The shelf is 642 tall.', figure('shelf', 'height', 642))
      .memo('The shelf is 624.', figure('shelf', 'width', 624, { assumed: ['attribute'] }))
      .hand({ kind: 'note-amended', noteId: 'm2.f1', fields: { attribute: 'width' } });
    expect(stands(story)).toEqual(['shelf height 642', 'shelf width 624']);
  });

  test('and a slip that a person takes for the newer one', () => {
    const story = new NotedStory()
      .memo('The shelf is 642 tall.', figure('shelf', 'height', 642))
      .memo('Cut the shelf at 624.', figure('shelf', 'length', 624, { assumed: ['attribute', 'item'] }));
    const [slip] = findingViews(story.project.rows);
    expect(slip?.kind).toBe('slip');
    story.hand({ kind: 'finding-settled', findingId: slip?.id ?? '', choice: 'take-new' });
    expect(stands(story)).toEqual(['shelf height 624']);
  });
});
