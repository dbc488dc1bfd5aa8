/** What was made or ordered on a day against which sizes, and what of it is to be looked over when a size gives way. */
import { describe, expect, test } from 'vitest';
import { dayView } from '../../src/model/day-views.ts';
import { findingViews } from '../../src/model/project-views.ts';
import { figure, NotedStory, type NoteToTell } from '../kit/noted-story.ts';

const done = (gist: string): NoteToTell => ({ kind: 'done', gist, quote: gist });
const coming = (item: string, quote: string): NoteToTell => ({
  kind: 'arrival',
  item,
  received: false,
  quote,
});
const sized = () =>
  new NotedStory().memo(
    'The rail and the shelf.',
    figure('rail', 'width', 70, { quote: 'The rail' }),
    figure('shelf', 'depth', 300, { quote: 'the shelf' }),
  );

describe('the acts of a day', () => {
  const acts = (text: string, ...notes: readonly NoteToTell[]) =>
    dayView(sized().memo(text, ...notes).project.rows, '2026-02-02')?.acts?.map(
      ({ act, what, against }) =>
        `${act} ${what}: ${against.map(({ item, value }) => `${item} ${value}`).join(', ')}`,
    );

  test.each([
    ['made', 'Cut the rail.', [done('Cut the rail')], ['made Cut the rail: rail 70']],
    ['ordered', 'Ordered the rail.', [done('Ordered the rail')], ['ordered Ordered the rail: rail 70']],
    [
      'in the order of speech, whatever kind of note',
      'The shelf is on order. Cut the rail.',
      [done('Cut the rail'), coming('shelf', 'The shelf is on order')],
      ['ordered shelf: shelf 300', 'made Cut the rail: rail 70'],
    ],
    [
      'a size is told with the first act alone',
      'Cut the rail. Bored the rail.',
      [done('Cut the rail'), done('Bored the rail')],
      ['made Cut the rail: rail 70'],
    ],
    ['none without sizes', 'Cut the gate.', [done('Cut the gate')], []],
    ['none that makes nothing', 'Swept the rail.', [done('Swept the rail')], []],
    ['none of a thing only named in front of another', 'Cut the rail cap.', [done('Cut the rail cap')], []],
    ['none that was filmed', 'Filmed the rail.', [done('Filmed the rail')], []],
  ] as const)('%s', (_what, text, notes, expected) => {
    expect(acts(text, ...notes)).toEqual(expected);
  });
});

describe('what was made to a size that gave way', () => {
  /** The tasks of looking over, when the new size is settled after these memos. */
  const tasks = (
    choice: 'take-new' | 'keep-old',
    reason: string | undefined,
    ...later: readonly string[]
  ) => {
    const told = sized()
      .memo('Cut the shelf.', done('Cut the shelf'))
      .memo('Now it is so.', figure('shelf', 'depth', 350, { change: 'decided' }));
    for (const gist of later) told.memo(`${gist}.`, done(gist));
    const finding = findingViews(told.project.rows, { status: 'open' }).find(
      ({ kind }) => kind === 'decided',
    );
    told.hand({
      kind: 'finding-settled',
      findingId: finding?.id ?? '',
      choice,
      ...(reason === undefined ? {} : { reason }),
    });
    return told.project.rows
      .all('tasks')
      .filter(({ status }) => status === 'open')
      .map(({ gist }) => gist);
  };
  const LOOK = ['look over: cut the shelf (to 300 mm, now 350 mm)'];

  test.each([
    ['is to be looked over', 'take-new', undefined, [], LOOK],
    ['not where the old size holds', 'keep-old', undefined, [], []],
    ['not where it was trimmed since', 'take-new', undefined, ['Trimmed the shelf'], []],
    ['but where other work was done on it since', 'take-new', undefined, ['Bored the shelf'], LOOK],
    ['and where another thing was trimmed', 'take-new', undefined, ['Trimmed the rail'], LOOK],
    ['not where the reason says so', 'take-new', 'I trimmed it', [], []],
    ['but with another reason', 'take-new', 'taped it', [], LOOK],
  ] as const)('%s', (_what, choice, reason, later, expected) => {
    expect(tasks(choice, reason, ...later)).toEqual(expected);
  });

  test('also where it was trimmed before that', () => {
    const told = sized()
      .memo('Trimmed the shelf.', done('Trimmed the shelf'))
      .memo('Now it is so.', figure('shelf', 'depth', 350, { change: 'decided' }));
    const [finding] = findingViews(told.project.rows, { status: 'open' });
    told.hand({ kind: 'finding-settled', findingId: finding?.id ?? '', choice: 'take-new' });
    expect(told.project.rows.all('tasks').map(({ gist }) => gist)).toEqual([
      'look over: trimmed the shelf (to 300 mm, now 350 mm)',
    ]);
  });
});
