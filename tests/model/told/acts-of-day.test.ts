import { expect, test } from 'vitest';
import { dayView } from '../../../src/model/day-views.ts';
import { ToldStory } from '../../kit/told-story.ts';

const actsOn = (story: ToldStory, date: string) =>
  (dayView(story.project.rows, date)?.acts ?? []).map(
    ({ act, what, against }) =>
      `${act}: ${what}: ${against.map(({ item, attribute, value, unit }) => `${item} ${attribute} ${value} ${unit}`).join(', ')}`,
  );

test('what is ordered or cut names the figures that stood for it on that day', () => {
  const story = new ToldStory().hear(
    'The hatch opening is 620 millimetres wide and 480 high. The loom bench is 900 high.',
    'Ordered the glass for the hatch opening.',
    'The hatch opening is 640 millimetres wide, measured it again. Ordered a lamp.',
    'I have cut the loom bench down.',
  );
  expect(actsOn(story, '2026-02-02')).toEqual([
    'ordered: Ordered the glass for the hatch opening: hatch opening width 620 mm, hatch opening height 480 mm',
  ]);
  // Later talk changes nothing of what stood on that day.
  expect(actsOn(story, '2026-02-03')).toEqual([]);
  expect(actsOn(story, '2026-02-04')).toEqual(['made: Cut the loom bench down: loom bench height 900 mm']);
});

test.each([
  ['The cabin sole is 1140 millimetres wide.', 'Cut the sole panels.'],
  ['The hatch panels are 700 millimetres long.', 'Closed in the port settee panels.'],
  ['The locker is 400 millimetres deep.', 'Cut the locker lids.'],
])('"%s" is no size of what "%s" is done to', (figure, act) => {
  expect(actsOn(new ToldStory().hear(figure, act), '2026-02-02')).toEqual([]);
});

test('two figures of one memo in the same words do not take each other for the older value', () => {
  const story = new ToldStory().hear(
    'The shelf is 60 millimetres thick. The ledge is 300 wide.',
    'The shelf is 42 millimetres thick, measured it again. The slat is 42 millimetres thick.',
  );
  const changes = dayView(story.project.rows, '2026-02-02')?.changes ?? [];
  expect(changes.map(({ kind, figure, old }) => [kind, figure.item, old?.value])).toEqual([
    ['changed', 'shelf', 60],
    ['new', 'slat', undefined],
  ]);
});
