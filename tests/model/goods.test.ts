/** What is expected, what comes, and what its use tells, note by note. */
import { describe, expect, test } from 'vitest';
import { bareGoods, isSameGoods, partsOf } from '../../src/model/goods.ts';
import { NotedStory, type NoteToTell } from '../kit/noted-story.ts';

const coming = (item: string, expected?: string): NoteToTell => ({
  kind: 'arrival',
  item,
  received: false,
  ...(expected === undefined ? {} : { expected }),
});
const here = (item: string): NoteToTell => ({ kind: 'arrival', item, received: true });
const done = (gist: string): NoteToTell => ({ kind: 'done', gist });
const story = (...memos: readonly (NoteToTell | readonly NoteToTell[])[]) =>
  memos.reduce<NotedStory>(
    (told, notes, day) => told.memo(`Talk of day ${day + 1}.`, ...([notes].flat() as NoteToTell[])),
    new NotedStory(),
  );

/** `m1.a1 hob: received by m2`, with its day where one was told. */
const rows = (told: NotedStory) =>
  told.project.rows
    .all('arrivals')
    .map(
      ({ id, item, expected, status, receivedBy }) =>
        `${id} ${item}${expected ? ` on ${expected}` : ''}: ${status}${receivedBy ? ` by ${receivedBy.memoId}` : ''}`,
    );

describe('goods', () => {
  test.each([
    ['that are expected', [coming('hob')], ['m1.a1 hob: expected']],
    ['with their day', [coming('hob', '2026-03-01')], ['m1.a1 hob on 2026-03-01: expected']],
    ['that came', [here('hob')], ['m1.a1 hob: received by m1']],
    ['that came as expected', [coming('hob'), here('hob')], ['m1.a1 hob: received by m2']],
    [
      'that came as expected keep their day',
      [coming('hob', '2026-03-01'), here('hob')],
      ['m1.a1 hob on 2026-03-01: received by m2'],
    ],
    ['that are expected again are expected once', [coming('hob'), coming('hob')], ['m1.a1 hob: expected']],
    [
      'of which only the day is new',
      [coming('hob', '2026-03-01'), coming('hob', '2026-03-08')],
      ['m1.a1 hob on 2026-03-08: expected'],
    ],
    [
      'of which no day is told again keep theirs',
      [coming('hob', '2026-03-01'), coming('hob')],
      ['m1.a1 hob on 2026-03-01: expected'],
    ],
    ['of another name', [coming('hob'), here('sink')], ['m1.a1 hob: expected', 'm2.a1 sink: received by m2']],
    [
      'that come a second time are others',
      [coming('hob'), here('hob'), here('hob')],
      ['m1.a1 hob: received by m2', 'm3.a1 hob: received by m3'],
    ],
    [
      'that are told together are each their own',
      [coming('hob, the sink and a tap', '2026-03-01')],
      [
        'm1.a1 hob on 2026-03-01: expected',
        'm1.a1.2 sink on 2026-03-01: expected',
        'm1.a1.3 tap on 2026-03-01: expected',
      ],
    ],
    [
      'of which one comes first',
      [coming('hob and the sink'), here('sink')],
      ['m1.a1 hob: expected', 'm1.a1.2 sink: received by m2'],
    ],
    ['told as arrived', [coming('hob'), here('hob (arrived)')], ['m1.a1 hob: received by m2']],
  ] as const)('%s', (_what, memos, expected) => {
    expect(rows(story(...memos))).toEqual(expected);
  });
});

describe('goods that are used have come', () => {
  test.each([
    ['bedded', [done('Bedded the hob')], 'received by m2'],
    ['fitted', [done('Fitted the hob')], 'received by m2'],
    ['with another deed before it', [done('Swept the loft'), done('Fitted the hob')], 'received by m2'],
    ['but not measured', [done('Measured the hob')], 'expected'],
    ['nor asked about', [done('Asked about the hob')], 'expected'],
    ['nor paid for', [done('Paid for the hob')], 'expected'],
    ['nor ordered', [done('Ordered the hob')], 'expected'],
    ['nor booked', [done('Booked the hob')], 'expected'],
    ['nor chased', [done('Chased the hob')], 'expected'],
    ['nor as part of another thing', [done('Fitted the hob lid')], 'expected'],
    ['nor another thing', [done('Fitted the sink')], 'expected'],
  ] as const)('%s', (_what, notes, status) => {
    expect(rows(story(coming('hob'), notes))).toEqual([`m1.a1 hob: ${status}`]);
  });

  test('but not in the same talk', () => {
    expect(rows(story([coming('hob'), done('Fitted the hob')]))).toEqual(['m1.a1 hob: expected']);
  });

  test.each([
    ['gas hob', 'Fitted the hob', 'received by m2'],
    ['hob', 'Fitted the gas hob', 'received by m2'],
    ['gas hob', 'Fitted the brass hob', 'expected'],
  ])('"%s": "%s"', (item, gist, status) => {
    expect(rows(story(coming(item), done(gist)))).toEqual([`m1.a1 ${item}: ${status}`]);
  });

  test('of two of a name one is used at a time', () => {
    const told = story([coming('gas hob'), coming('brass hob')], done('Fitted the brass hob'));
    expect(rows(told)).toEqual(['m1.a1 gas hob: expected', 'm1.a2 brass hob: received by m2']);
  });
});

describe('the bare goods', () => {
  test.each([
    ['the oak', 'oak'],
    ['some more oak', 'oak'],
    ['another tin of varnish', 'varnish'],
    ['two tins of varnish', 'varnish'],
    ['12 tins of varnish', 'varnish'],
    ['a couple of hinges', 'hinges'],
    ['half a dozen hinges', 'hinges'],
    ['the last hinges', 'hinges'],
    ['rest of the hinges', 'hinges'],
    ['the last of the hinges', 'hinges'],
    ['the first of the hinges', 'hinges'],
    ['most of the hinges', 'hinges'],
    ['oak at two inches', 'oak'],
    ['oak, two inches thick', 'oak'],
    ['oak (the good one)', 'oak'],
    ['hinges for the gate', 'hinges for the gate'],
    ['hinges for two gates', 'hinges'],
    ['hinges as well', 'hinges'],
    ['hinges too', 'hinges'],
    ['right door', 'door'],
    ['right hand door', 'right hand door'],
    ['right side door', 'right side door'],
    ['two gauge wire', 'two gauge wire'],
    ['onions', 'onions'],
    ['the', 'the'],
    ['two', 'two'],
    ['sheet of ply', 'ply'],
    ['sheets', 'sheets'],
  ])('of "%s" are "%s"', (name, bare) => {
    expect(bareGoods(name)).toBe(bare);
  });
});

describe('two names', () => {
  test.each([
    ['hinges', 'hinges', true],
    ['brass hinges', 'hinges', true],
    ['hinges', 'brass hinges', true],
    ['two tins of varnish', 'varnish', true],
    ['varnish', 'the last tin of varnish', true],
    ['yacht varnish tin', 'boat varnish tin', true],
    ['yacht varnish', 'boat varnish', false],
    ['hinges', 'screws', false],
    ['two', 'three', false],
  ])('"%s" and "%s" mean the same goods: %s', (a, b, same) => {
    expect(isSameGoods(a, b)).toBe(same);
  });
});

describe('goods that are told together', () => {
  test.each([
    ['hob, sink', ['hob', 'sink']],
    ['hob, sink, and the tap', ['hob', 'sink', 'tap']],
    ['the hob and my sink', ['hob', 'sink']],
    ['a, b, c', ['a, b, c']],
    ['hob, sink, tap, rail, shelf', ['hob', 'sink', 'tap', 'rail', 'shelf']],
    ['hob, sink, tap, rail, shelf, lamp', ['hob, sink, tap, rail, shelf, lamp']],
    ['nuts and bolts', ['nuts and bolts']],
    ['the nuts and bolts and washers', ['the nuts and bolts and washers']],
    ['left and right brackets', ['left and right brackets']],
    ['the left and the right bracket', ['the left and the right bracket']],
    ['brackets and hinges', ['brackets', 'hinges']],
    ['one and a half tonnes', ['one and a half tonnes']],
    ['a hundred and twenty', ['a hundred and twenty']],
    ['oak, two inches thick', ['oak, two inches thick']],
    ['oak', ['oak']],
    ['hob and', ['hob and']],
  ])('"%s" come as %j', (item, parts) => {
    expect(partsOf(item)).toEqual(parts);
  });
});
