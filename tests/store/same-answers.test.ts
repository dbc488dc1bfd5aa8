/** The rows on disk and those in memory answer every question alike, and as plainly going through all rows would. */
import { expect, test } from 'vitest';
import type { NewEvent, ProjectEvent } from '../../src/model/events.ts';
import { isLike, itemStems } from '../../src/model/items.ts';
import { MemoryProject } from '../../src/model/memory.ts';
import { kinship, nameStems, shapeOf } from '../../src/model/names.ts';
import { isQuestion } from '../../src/model/questions.ts';
import type { ItemRow } from '../../src/model/rows.ts';
import { createStore } from '../../src/store/store.ts';
import { tenYearBuild } from '../kit/ten-year-build.ts';

const store = createStore(':memory:', { name: 'barge', units: 'metric', at: '2017-03-01T08:00:00Z' });
const at = '2018-03-01T08:00:00Z';
for (const { events } of tenYearBuild(0.02)) store.append(events);
store.append([
  { kind: 'items-merged', at, from: 'odd nook', into: store.rows.all('items')[3]?.name ?? '' },
  {
    kind: 'figure-set',
    at,
    item: 'odd nook',
    attribute: 'width',
    quantity: { value: 400, unit: 'mm' },
  },
  ...store.rows
    .all('items')
    .slice(0, 60)
    .map(
      ({ name }): NewEvent => ({
        kind: 'check-added',
        at,
        check: 'clearance',
        inputs: [
          { input: 'opening', expression: `${name} width` },
          { input: 'part', expression: '40 mm' },
        ],
      }),
    ),
  { kind: 'check-removed', at, checkId: `s${store.lastSeq() + 5}` },
]);
const memory = new MemoryProject();
memory.append(store.log().map(({ seq: _seq, ...event }: ProjectEvent) => event as NewEvent));
const [disk, held] = [store.rows, memory.rows];
const items = held.all('items');
const names = [
  ...items.map(({ name }) => name),
  'top',
  'port bench',
  'the odd nook',
  'galley window opening',
  'nothing of the kind',
  'the of',
];

test.each(names.filter((_, index) => index % 4 === 0 || index > names.length - 6))(
  'what "%s" may stand for',
  (name) => {
    const stems = nameStems(name);
    const likely = items.filter((item) => isLike(item, stems));
    expect(disk.itemsLike(stems)).toEqual(likely);
    expect(held.itemsLike(stems)).toEqual(likely);
    const sharing = items.filter((item) => itemStems(item).some((stem) => stems.includes(stem)));
    expect(disk.itemsSharing(stems)).toEqual(sharing);
    expect(held.itemsSharing(stems)).toEqual(sharing);
    expect(held.itemsNear(stems, 7)).toEqual(disk.itemsNear(stems, 7));
    const byThisName = (rows: readonly ItemRow[]) =>
      rows.filter((item) => [item.name, ...item.aliases].some((known) => kinship(name, known) === 'same'));
    expect(byThisName(disk.itemsNamed(name))).toEqual(byThisName(likely));
    expect(byThisName(held.itemsNamed(name))).toEqual(byThisName(likely));
  },
);

test.each(names.filter((_, index) => index % 4 === 1))('acts that were done to "%s"', (name) => {
  const { head, stems } = shapeOf(name);
  for (const least of [1, 2, 3]) {
    const done = held
      .all('acts')
      .filter(
        ({ words }) => words.includes(head) && stems.filter((stem) => words.includes(stem)).length >= least,
      );
    expect(disk.actsNaming(head, stems, least)).toEqual(done);
    expect(held.actsNaming(head, stems, least)).toEqual(done);
  }
});

test('the dearest questions come first, of equals the earlier one', () => {
  const asked = held
    .all('findings')
    .filter(isQuestion)
    .sort((a, b) => b.cost - a.cost);
  expect(asked.length).toBeGreaterThan(5);
  expect(disk.questions(6)).toEqual(asked.slice(0, 6));
  expect(held.questions(6)).toEqual(asked.slice(0, 6));
});

test('checks that a change brings up: those that read its thing, and no others', () => {
  const checks = held.all('checks');
  expect(checks.length).toBeGreaterThan(40);
  for (const item of items.slice(0, 12)) {
    const keys = [item.id, ...itemStems(item).map((stem) => `~${stem}`)];
    const watching = checks.filter(
      ({ active, watches }) => active && watches.some((key) => keys.includes(key)),
    );
    expect(disk.checksWatching(keys)).toEqual(watching);
    expect(held.checksWatching(keys)).toEqual(watching);
    expect(watching.length).toBeLessThan(checks.length / 2);
  }
  expect(disk.checksWatching(['=clearance'])).toEqual(checks.filter(({ active }) => active));
});

test('figures of one dimension', () => {
  const masses = held.all('standing').filter(({ dimension }) => dimension === 'mass');
  expect(disk.standingIn('mass')).toEqual(masses);
  expect(held.standingIn('mass')).toEqual(masses);
});

test('days with talk, and the memos of each', () => {
  const days = [...new Set(held.all('memos').map(({ recordedAt }) => recordedAt.slice(0, 10)))].sort();
  expect(days.length).toBeGreaterThan(50);
  expect(disk.daysWithTalk()).toEqual(days);
  expect(held.daysWithTalk()).toEqual(days);
  const day = days[7] ?? '';
  const memos = held.all('memos').filter(({ recordedAt }) => recordedAt.startsWith(day));
  expect(memos.length).toBeGreaterThan(0);
  expect(disk.where('memos', 'day', day)).toEqual(memos);
  expect(held.where('memos', 'day', day)).toEqual(memos);
});
