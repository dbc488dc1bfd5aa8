/** Checks that stand: attached by hand or by speech, run anew when a figure that they read changes. */
import { expect, test } from 'vitest';
import { type CheckNote, NO_NOTES } from '../../../src/language/notes.ts';
import { checkViews } from '../../../src/model/checks/check-views.ts';
import { type ByHand, ToldStory } from '../../kit/told-story.ts';

/** `add('clearance', 'opening=side hatch width', 'part=40 mm')` */
function add(check: string, ...inputs: readonly string[]): ByHand {
  const split = inputs.map((text) => {
    const [input = '', expression = ''] = text.split('=');
    return { input, expression };
  });
  return { kind: 'check-added', check, inputs: split };
}

/** What each check comes to now; what its row keeps must be the same. */
function states(story: ToldStory): readonly string[] {
  const kept = story.project.rows.all('checks').filter(({ active }) => active);
  const now = checkViews(story.project.rows).map(({ state, why }) => `${state}: ${why}`);
  expect(kept.map(({ last }) => `${last.state}: ${last.why}`)).toEqual(now);
  return now;
}
const broken = (story: ToldStory) =>
  story
    .findings()
    .filter(({ kind }) => kind === 'check')
    .map(({ status, item, why }) => `${status} ${item}: ${why}`);

test('a check holds, breaks when a figure changes by speech, and holds again when it is changed by hand', () => {
  const story = new ToldStory()
    .set('side hatch', 'width', 560)
    .set('locker lid', 'width', 552)
    .hand(add('clearance', 'opening=side hatch width', 'part=locker lid width', 'gap=2 mm'));
  expect(states(story)).toEqual(['holds: 4 mm left at worst']);
  story.hear('I changed my mind, the locker lid is now 558 millimetres wide.');
  expect(states(story)).toEqual(['broken: 2 mm short at worst']);
  expect(broken(story)).toEqual(['open clearance (side hatch, locker lid): 2 mm short at worst']);
  story.set('side hatch', 'width', 562);
  expect(states(story)).toEqual(['holds: 0 mm left at worst']);
  expect(broken(story)).toEqual(['settled clearance (side hatch, locker lid): 2 mm short at worst']);
});

test('a check waits for figures that were never said, says what to say, and runs once they are', () => {
  const story = new ToldStory().hand(add('clearance', 'opening=side hatch width', 'part=locker lid'));
  const [view] = checkViews(story.project.rows);
  expect(view).toMatchObject({
    state: 'not-run',
    why: 'the side hatch width was never said; the locker lid was never said',
    ask: [
      'say it, or: hearwright figures set "side hatch width = … mm"',
      'say it, or: hearwright figures set "locker lid = … mm"',
    ],
  });
  expect(story.findings()).toEqual([]);
  story.hear('The side hatch is 560 millimetres wide.').hear('The locker lid is 570 millimetres wide.');
  expect(states(story)).toEqual(['broken: 10 mm short at worst']);
  expect(broken(story)).toEqual(['open clearance (side hatch, locker lid): 10 mm short at worst']);
});

test('hedges and tolerances are intervals, and the worst of them decides', () => {
  const story = new ToldStory()
    .hear('The side hatch is 560 millimetres wide, give or take 3.')
    .hand(add('clearance', 'opening=side hatch width', 'part=558 mm'));
  expect(states(story)).toEqual(['broken: 1 mm short at worst (2 mm left as said)']);
  expect(checkViews(story.project.rows)[0]?.inputs[0]).toMatchObject({
    range: { low: 557, mid: 560, high: 563, unit: 'mm' },
    reads: [{ name: 'side hatch width', value: 560, tolerance: 3 }],
  });
});

test('sums and products of figures go in as they are written', () => {
  const story = new ToldStory()
    .set('side hatch', 'width', 560)
    .set('edge strip', 'width', 4)
    .hand(add('clearance', 'opening=side hatch width - 2 * edge strip width', 'part=550 mm'));
  expect(states(story)).toEqual(['holds: 2 mm left at worst']);
  story.set('edge strip', 'width', 6);
  expect(states(story)).toEqual(['broken: 2 mm short at worst']);
});

/** A memo in which a listener heard that a check has to hold. */
function hearCheck(story: ToldStory, memoId: string, note: Pick<CheckNote, 'check' | 'inputs'>): ToldStory {
  const text = 'That has to go through.';
  const recordedAt = '2026-02-20T17:00:00+01:00';
  const source = { name: `${memoId}.txt`, kind: 'text', sha256: memoId, bytes: text.length } as const;
  const record: CheckNote = { kind: 'check', quote: text, span: { start: 0, end: text.length }, ...note };
  return story.hand(
    { kind: 'recording-kept', memoId, source, file: 'x', recordedAt, recordedAtFrom: 'given' },
    { kind: 'transcript-made', memoId, transcript: { text } },
    { kind: 'notes-read', memoId, notes: { ...NO_NOTES, records: [record] }, reader: 'test' },
  );
}

test('a check that was said stands; said again it is the same one, with another number it takes its place', () => {
  const said = (part: string) => ({
    check: 'clearance',
    inputs: [
      { input: 'opening', expression: 'side hatch width' },
      { input: 'part', expression: part },
    ],
  });
  const story = new ToldStory().set('side hatch', 'width', 560);
  hearCheck(story, 'm9', said('570 mm'));
  expect(broken(story)).toEqual(['open clearance (side hatch): 10 mm short at worst']);
  expect(story.open()[0]).toMatchObject({
    memoId: 'm9',
    checkId: 'm9.r1',
    now: { source: { memoId: 'm9' } },
  });
  hearCheck(story, 'm10', said('570 mm'));
  expect(checkViews(story.project.rows).map(({ id }) => id)).toEqual(['m9.r1']);
  hearCheck(story, 'm11', said('555 mm'));
  expect(checkViews(story.project.rows).map(({ id, state }) => `${id} ${state}`)).toEqual(['m11.r1 holds']);
  expect(story.open()).toEqual([]);
});

test('checks of literals alone stand side by side', () => {
  const story = new ToldStory()
    .hand(add('clearance', 'opening=560 mm', 'part=550 mm'))
    .hand(add('clearance', 'opening=560 mm', 'part=570 mm'))
    .hand(add('clearance', 'opening=560 mm', 'part=550 mm'));
  expect(states(story)).toEqual(['holds: 10 mm left at worst', 'broken: 10 mm short at worst']);
});

test('a check that is taken away is run no more, and undo brings it back', () => {
  const story = new ToldStory()
    .set('side hatch', 'width', 560)
    .hand(add('clearance', 'opening=side hatch width', 'part=570 mm'))
    .hand({ kind: 'check-removed', checkId: 's3' });
  expect([states(story), story.open()]).toEqual([[], []]);
  story.set('side hatch', 'width', 540);
  expect(story.open()).toEqual([]);
  story.hand({ kind: 'undone', undoes: 4 });
  expect(states(story)).toEqual(['broken: 30 mm short at worst']);
});

test('where no part is named, everything that has a weight is counted, and a new weight runs it anew', () => {
  const story = new ToldStory()
    .set('water tank', 'weight', 230, 'kg')
    .set('stove', 'weight', 60, 'kg')
    .set('van', 'weight', 2100, 'kg')
    .hand(add('running mass', 'limit=400 kg'));
  const [view] = checkViews(story.project.rows);
  expect(view).toMatchObject({
    state: 'holds',
    results: [{ name: 'mass', mid: 290, unit: 'kg' }, {}, {}, {}],
  });
  expect(view?.notes).toContain('every weight that stands is counted, but not of what holds the others: van');
  story.set('batteries', 'weight', 140, 'kg');
  expect(broken(story)[0]).toMatch(/^open running mass \(water tank, stove, batteries\): /);
});

test('a sum over nothing waits for the first figure', () => {
  const story = new ToldStory().hand(add('running mass', 'limit=100 kg'));
  expect(states(story)[0]).toMatch(/^not-run: /);
  story.set('stove', 'weight', 160, 'kg');
  expect(states(story)[0]).toMatch(/^broken: /);
});

const fits = add('clearance', 'opening=side hatch width', 'part=550 mm');

test.each([
  ['The side hatch is lined with 6 millimetre ply now, I lined the side hatch this morning.', true],
  ['I trimmed the side hatch this morning.', true],
  ['I painted the side hatch this morning.', false],
  ['I lined the wheel arch this morning.', false],
  ['I ordered lining for the side hatch.', false],
])('a size measured before "%s" is to be measured again: %s', (talk, isStale) => {
  const story = new ToldStory()
    .hear('I measured the side hatch, it is 560 millimetres wide.')
    .hand(fits)
    .hear(talk);
  expect(states(story)[0]?.split(':')[0]).toBe(isStale ? 'stale' : 'holds');
  expect(story.open().filter(({ kind }) => kind === 'check')).toEqual([]);
});

test('of two hatches, work on the one leaves the other as it was; a hatch alone goes by its bare name', () => {
  const story = new ToldStory()
    .hear('I measured the side hatch, it is 560 millimetres wide.')
    .hand(fits)
    .hear('I lined the hatch this morning.');
  expect(states(story)[0]).toMatch(/^stale: /);
  const two = new ToldStory()
    .hear('I measured the side hatch, it is 560 millimetres wide. The wheel hatch is 400 millimetres wide.')
    .hand(fits)
    .hear('I lined the wheel hatch this morning.');
  expect(states(two)[0]).toMatch(/^holds: /);
  story.hear('The wheel hatch is 400 millimetres wide.');
  expect(states(story)[0]).toMatch(/^holds: /);
});

test('what is measured anew after the layer is no longer stale', () => {
  const story = new ToldStory()
    .hear('I measured the side hatch, it is 560 millimetres wide.')
    .hand(fits)
    .hear(
      'I lined the side hatch this morning.',
      'I measured the side hatch again, it is 548 millimetres wide now.',
    );
  expect(states(story)).toEqual(['broken: 2 mm short at worst']);
});

test('a figure measured from what is built up later is stale, also when it was attached after', () => {
  const story = new ToldStory()
    .hear('The worktop is 900 millimetres high above the cabin floor.')
    .hear('We lined the cabin floor with cork today.')
    .hand(add('clearance', 'opening=worktop height', 'part=850 mm'));
  expect(checkViews(story.project.rows)[0]).toMatchObject({ state: 'stale' });
});

test('a worked-out size that no longer agrees with the part makes a check stale', () => {
  const story = new ToldStory()
    .set('frame', 'width', 600)
    .set('door', 'width', 590)
    .formula('door', 'width', 'frame width - 10 mm')
    .hand(add('clearance', 'opening=600 mm', 'part=door width'));
  expect(states(story)).toEqual(['holds: 10 mm left at worst']);
  story.set('frame', 'width', 595);
  expect(states(story)[0]).toMatch(/^stale: door width: it was worked out anew/);
});

test.each([
  ['The side hatch is at least 560 millimetres wide.', 'opening=side hatch width', 'part=550 mm', 'holds'],
  ['The locker lid is at most 550 millimetres wide.', 'opening=560 mm', 'part=locker lid width', 'holds'],
  ['The locker lid is at least 550 millimetres wide.', 'opening=560 mm', 'part=locker lid width', 'not-run'],
  ['The side hatch is at most 560 millimetres wide.', 'opening=side hatch width', 'part=550 mm', 'not-run'],
  [
    'The locker lid is between 540 and 550 millimetres wide.',
    'opening=560 mm',
    'part=locker lid width',
    'holds',
  ],
  ['The locker lid is about 550 millimetres wide.', 'opening=560 mm', 'part=locker lid width', 'broken'],
])('%s With %s and %s it %s', (talk, opening, part, state) => {
  const story = new ToldStory().hear(talk).hand(add('clearance', opening, part));
  expect(checkViews(story.project.rows)[0]?.state).toBe(state);
});

test('what a bound leaves open is asked for and not invented', () => {
  const story = new ToldStory()
    .hear('The locker lid is at least 550 millimetres wide.')
    .hand(add('clearance', 'opening=560 mm', 'part=locker lid width'));
  expect(checkViews(story.project.rows)[0]).toMatchObject({
    why: 'it holds only as far as was said: part (locker lid width) has an open end, and beyond it this breaks',
    ask: ['say how far it may go: part (locker lid width)'],
    results: [],
    inputs: [{ name: 'opening' }, { name: 'part', open: 'above' }],
  });
});

test('a limit that was stated is an input, and another limit in its place runs the check anew', () => {
  const limit = (value: number): ByHand => ({
    kind: 'limit-set',
    item: 'roof rack',
    attribute: 'weight',
    about: '',
    bound: 'at-most',
    quantity: { value, unit: 'kg' },
  });
  const story = new ToldStory()
    .hear('The roof rack takes at most 80 kilos.')
    .hand(limit(80), add('running mass', 'part=60 kg', 'limit=roof rack weight'));
  expect(states(story)[0]?.split(':')[0]).toBe('holds');
  story.hand(limit(50));
  expect(broken(story)[0]).toMatch(/^open running mass \(roof rack\): /);
});

test('a call in an input takes the size that its check asks for, else the only one that a thing has', () => {
  const story = new ToldStory()
    .set('rise', 'length', 300)
    .set('run', 'length', 400)
    .hand(add('clearance', 'opening=diagonal(rise; run)', 'part=502 mm'));
  expect(broken(story)).toEqual([expect.stringMatching(/^open clearance .*: 2 mm short at worst$/)]);
  story.set('run', 'width', 1200);
  story.hand(add('clearance', 'opening=diagonal(rise; run)', 'part=503 mm'));
  expect(broken(story)).toHaveLength(1);
});
