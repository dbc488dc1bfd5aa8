/** Snags: what is done, told or fetched that ends one, and what does not. */
import { describe, expect, test } from 'vitest';
import { NotedStory, type NoteToTell } from '../kit/noted-story.ts';

const snag = (gist: string): NoteToTell => ({ kind: 'problem', gist, quote: gist });
const done = (gist: string): NoteToTell => ({ kind: 'done', gist, quote: gist });
const task = (gist: string): NoteToTell => ({ kind: 'task', gist, quote: gist, waitsFor: [] });
const here = (item: string): NoteToTell => ({ kind: 'arrival', item, received: true });

/** A memo whose sentences are its notes, in order. */
function said(told: NotedStory, ...notes: readonly NoteToTell[]): NotedStory {
  return told.memo(`${notes.map(({ quote }) => quote ?? 'Here it is').join('. ')}.`, ...notes);
}
/** `m1.p1: solved by m2.x1`. */
const snags = (told: NotedStory) =>
  told.project.rows
    .all('problems')
    .map(({ id, status, solvedById }) => `${id}: ${status}${solvedById ? ` by ${solvedById}` : ''}`);

/** The snag of one memo after another memo of these notes. */
const snagAfter = (gist: string, ...notes: readonly NoteToTell[]) =>
  snags(said(said(new NotedStory(), snag(gist)), ...notes))[0];
/** The same after talk without notes. */
const afterTalk = (gist: string, talk: string) => snags(said(new NotedStory(), snag(gist)).memo(talk))[0];

const OPEN = 'm1.p1: open';
const BY_DEED = 'm1.p1: solved by m2.x1';

describe('a deed ends', () => {
  test.each([
    ['the snag whose thing it mends', 'The tap leaks', 'Mended the tap', BY_DEED],
    ['and that whose thing it changes', 'The tap leaks', 'Changed the tap', BY_DEED],
    ['by whatever word', 'The tap leaks', 'Swapped the tap', BY_DEED],
    ['and that it tells as fixed', 'The tap leaks', 'The tap is fixed', BY_DEED],
    ['not one of another thing', 'The tap leaks', 'Mended the gate', OPEN],
    ['not one that it only works on', 'The tap leaks', 'Painted the tap', OPEN],
    ['not one that it fits something to', 'The tap leaks', 'Fitted the tap', OPEN],
    ['that which gets a new one', 'The tap leaks', 'Fitted a new tap', BY_DEED],
    ['not that of the other side', 'The left tap leaks', 'Mended the right tap', OPEN],
    ['that of the same side', 'The left tap leaks', 'Mended the left tap', BY_DEED],
    [
      'not that of a thing it only names besides',
      'The tap leaks',
      'Mended the gate hinge post by the tap',
      OPEN,
    ],
  ] as const)('%s', (_what, gist, deed, expected) => {
    expect(snagAfter(gist, done(deed))).toBe(expected);
  });

  test.each([
    [
      'of several snags the last',
      ['The tap leaks', 'The tap drips'],
      'Mended the tap',
      ['m1.p1: open', 'm1.p2: solved by m2.x1'],
    ],
    [
      'that which shares two things before a later one that shares one',
      ['The washer in the tap leaks', 'The tap drips'],
      'Changed the tap washer',
      ['m1.p1: solved by m2.x1', 'm1.p2: open'],
    ],
    [
      'both that share two things with it',
      ['The washer in the tap leaks', 'The tap washer is perished'],
      'Changed the tap washer',
      ['m1.p1: solved by m2.x1', 'm1.p2: solved by m2.x1'],
    ],
  ] as const)('%s', (_what, gists, deed, expected) => {
    const told = said(new NotedStory(), ...gists.map(snag));
    expect(snags(said(told, done(deed)))).toEqual(expected);
  });

  test('the snag of its own talk that is told just before it', () => {
    const own = (...notes: readonly NoteToTell[]) => snags(said(new NotedStory(), ...notes));
    expect(own(snag('The tap leaks'), done('Mended the tap'))).toEqual(['m1.p1: solved by m1.x1']);
    expect(own(done('Mended the tap'), snag('The tap leaks'))).toEqual(['m1.p1: open']);
    expect(own(snag('The tap leaks'), task('Paint the gate'), done('Mended the tap'))).toEqual([
      'm1.p1: open',
    ]);
  });

  test.each([
    ['told right behind it', 'Stripped the tap', 'Stripped the tap and resealed it', BY_DEED],
    ['spot on', 'Stripped the tap', 'Stripped the tap and it is spot on', BY_DEED],
    ['nothing of it', 'Stripped the tap', 'Stripped the tap and it is heavy', OPEN],
  ] as const)('with what is %s', (_what, gist, talk, expected) => {
    const told = said(new NotedStory(), snag('The tap leaks')).memo(`${talk}.`, {
      kind: 'done',
      gist,
      quote: gist,
    });
    expect(snags(told)[0]).toBe(expected);
  });

  test('with goods that came in the same talk', () => {
    const told = () => said(new NotedStory(), snag('The belt slips'));
    expect(snags(said(told(), done('Fitted the belt'), here('belt')))).toEqual([BY_DEED]);
    expect(snags(said(told(), done('Fitted the belt'), here('hinge')))).toEqual([OPEN]);
    expect(
      snags(said(told(), done('Fitted the belt'), { ...here('belt'), received: false } as NoteToTell)),
    ).toEqual([OPEN]);
  });
});

describe('goods end the want of them', () => {
  test.each([
    ['that are late', 'The hinges are late', 'hinges', 'm1.p1: solved by m2.a1'],
    ['that have not come', "The hinges haven't come", 'hinges', 'm1.p1: solved by m2.a1'],
    ['that came wrong', 'The hinges were the wrong ones', 'hinges', 'm1.p1: solved by m2.a1'],
    ['not of others', 'The hinges are late', 'screws', OPEN],
    ['not what is wrong with them otherwise', 'The hinges squeak', 'hinges', OPEN],
    ['not what waits for them', 'The gate is late because of the hinges', 'hinges', OPEN],
  ] as const)('%s', (_what, gist, item, expected) => {
    expect(snagAfter(gist, here(item))).toBe(expected);
  });

  test('not in the same talk, and not while they are still to come', () => {
    expect(snags(said(new NotedStory(), snag('The hinges are late'), here('hinges')))).toEqual([OPEN]);
    expect(snagAfter('The hinges are late', { ...here('hinges'), received: false } as NoteToTell)).toBe(OPEN);
  });
});

describe('a state that is told to be right again ends the snag of its kind', () => {
  const NOW = 'm1.p1: solved by m2.now';
  test.each([
    ['The wall is damp', 'The wall is dry now.', NOW],
    ['The wall is damp', 'The wall is finally dry.', NOW],
    ['The wall is damp', 'The wall has dried out.', NOW],
    ['The wall is damp', 'The wall is dry.', OPEN],
    ['The wall is damp', 'The wall is nearly dry now.', OPEN],
    ['The wall is damp', 'Is the wall dry now?', OPEN],
    ['The wall is damp', 'The floor is dry now.', OPEN],
    ['The wall is damp', 'The wall is straight now.', OPEN],
    ['The wall is damp', 'The wall is fine now.', NOW],
    ['The gate is bent', 'The gate is straight again.', NOW],
    ['The gate sticks', 'The gate closes again.', NOW],
    ['The gate squeaks', 'The gate no longer squeaks.', NOW],
    ['The gate squeaks', 'The gate stopped squeaking.', NOW],
    ['The gate squeaks', "The gate doesn't squeak any more.", NOW],
    ['The gate squeaks', 'The gate no longer leans.', OPEN],
    ['The pump is loose', 'The pump is solid now.', NOW],
    ['The pump overheats', 'The pump is cool now.', NOW],
    ['The drain is blocked', 'The drain is clear now.', NOW],
    ['The left gate sticks', 'The right gate closes again.', OPEN],
  ])('"%s", "%s": %s', (gist, talk, expected) => {
    expect(afterTalk(gist, talk)).toBe(expected);
  });

  test('only where it can mean one', () => {
    const told = said(new NotedStory(), snag('The wall is damp'), snag('The wall is wet'));
    expect(snags(told.memo('The wall is dry now.'))).toEqual(['m1.p1: open', 'm1.p2: open']);
  });

  test('of "it", what was told beside a snag that was just put right', () => {
    const told = () =>
      said(new NotedStory(), snag('The roof leaks'), snag('The wall is damp'), snag('The gate sticks'));
    const repaired = told().memo('Mended the roof. It is dry now.', done('Mended the roof'));
    expect(snags(repaired)).toEqual(['m1.p1: solved by m2.x1', 'm1.p2: solved by m2.now', 'm1.p3: open']);
    expect(snags(told().memo('It is dry now.'))).toEqual(['m1.p1: open', 'm1.p2: open', 'm1.p3: open']);
    const far = told().memo('Mended the roof. We sat. We ate. It is dry now.', done('Mended the roof'));
    expect(snags(far)).toEqual(['m1.p1: solved by m2.x1', 'm1.p2: open', 'm1.p3: open']);
  });
});

describe('the work that was told as its remedy ends a snag', () => {
  const told = (remedy: string) => said(new NotedStory(), snag('The tap leaks'), task(remedy));
  const mends = (one: NotedStory) => one.project.rows.get('tasks', 'm1.t1')?.mends;

  test('when it is done', () => {
    expect(mends(told('Change the tap washer'))).toBe('m1.p1');
    expect(snags(said(told('Change the tap washer'), done('Changed the tap washer')))).toEqual([BY_DEED]);
  });

  test.each([
    ['of another thing', [snag('The tap leaks'), task('Paint the gate')]],
    ['told before the snag', [task('Change the tap washer'), snag('The tap leaks')]],
    [
      'told two sentences after it',
      [snag('The tap leaks'), done('Swept the loft'), task('Change the tap washer')],
    ],
  ] as const)('not %s', (_what, notes) => {
    expect(mends(said(new NotedStory(), ...notes))).toBeUndefined();
  });

  test('not when it was only ordered', () => {
    const one = told('Order a tap washer');
    expect(snags(said(one, done('Ordered the tap washer')))).toEqual([OPEN]);
  });
});
