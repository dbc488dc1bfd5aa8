import { afterEach, beforeEach, expect, test } from 'vitest';
import { openWorkplace, type Workplace } from '../kit/command-line.ts';

let place: Workplace;
beforeEach(() => {
  place = openWorkplace();
  place.call(['init', '--name', 'Shed']);
  place.file('one.txt', 'The bench top is 915 millimetres high, I measured it. I need to oil the bench top.');
  place.file('two.txt', 'The bench top is 951 millimetres high.');
  place.call(['take', 'one.txt', '--at', '2026-02-02T17:00+01:00']);
  place.call(['take', 'two.txt', '--at', '2026-02-04T17:00+01:00']);
});
afterEach(() => place.remove());

const clash = (): { id: string; kind: string } =>
  JSON.parse(place.call(['findings', '--open', '--json']).out)[0];
const benchTop = () => place.call(['figures', 'bench', 'top']).out.split('\n')[0];

test('a clash is settled and the settling undone', () => {
  const { id, kind } = clash();
  expect([kind, benchTop()]).toEqual(['slip', 'bench top height: 915 mm']);
  const settled = place.call(['settle', id, 'take-new', '--reason', 'taped it']);
  expect(settled.code).toBe(0);
  expect(settled.out).toMatch(/^ {2}settled {2}take-new, \d{4}-\d\d-\d\d: taped it$/m);
  expect([benchTop(), clash()]).toEqual(['bench top height: 951 mm', undefined]);
  expect(place.call(['undo']).out).toBe(`Undone: settling ${id} with take-new.\n`);
  expect([benchTop(), clash().id]).toEqual(['bench top height: 915 mm', id]);
  expect(place.call(['verify']).code).toBe(0);
});

test('the right value takes the place of both', () => {
  place.call(['settle', clash().id, 'correct', '--value', '916 mm']);
  expect([benchTop(), clash()]).toEqual(['bench top height: 916 mm', undefined]);
});

test('a note is rejected, put right, and left as it was by undo', () => {
  expect(place.call(['note', 'm2.f1', 'reject']).out).toBe('m2.f1: rejected.\n');
  expect(clash()).toBeUndefined();
  expect(place.call(['memos', '2']).out).toContain('(rejected)');
  expect(JSON.parse(place.call(['export']).out).memos[1].figures).toEqual([]);
  expect(place.call(['undo']).out).toBe('Undone: the word on note m2.f1.\n');
  expect(place.call(['redo']).out).toBe('Done again: the word on note m2.f1.\n');
  expect(place.call(['redo'])).toMatchObject({
    code: 0,
    out: 'Nothing was taken back, or something else was done since: nothing to do again.\n',
  });
  place.call(['undo']);
  place.call(['note', 'm2.f1', 'amend', '--item', 'shelf', '--value', '950 mm']);
  expect(place.call(['figures', 'shelf']).out.split('\n')[0]).toBe('shelf height: 950 mm');
  expect(place.call(['note', 'm2.f1', 'accept']).out).toBe('m2.f1: accepted.\n');
  expect(place.call(['verify']).code).toBe(0);
});

test('a figure, a tolerance and names are set by hand', () => {
  expect(place.call(['tolerance', 'length', '50 mm']).out).toBe('A length may differ by 50 mm.\n');
  expect(clash()).toBeUndefined();
  expect(place.call(['undo']).out).toBe('Undone: the tolerance on length.\n');
  const set = place.call(['set', 'bench top', 'height', '920 mm', '--reason', 'taped it']);
  expect(set.out.split('\n')[0]).toBe('bench top height: 920 mm');
  expect(set.out).toMatch(/^ {4}\S+ {2}by hand {2}920 mm {2}standing {2}\[s\d+\]$/m);
  expect(clash()).toBeUndefined();
  expect(place.call(['merge', 'worktop', 'bench top']).out).toBe('"worktop" means "bench top".\n');
  place.file('three.txt', 'The worktop is 920 millimetres high.');
  place.call(['take', 'three.txt', '--at', '2026-02-05T17:00+01:00']);
  expect(place.call(['figures', 'bench', 'top']).out).toContain('"920 millimetres high"');
  expect(place.call(['split', 'worktop']).out).toBe('"worktop" means a thing of its own.\n');
  expect(place.call(['figures', 'worktop']).out.split('\n')[0]).toBe('worktop height: 920 mm');
  expect(place.call(['verify']).code).toBe(0);
});

test('tasks are added and closed by hand', () => {
  expect(place.call(['todo', 'ring', 'the', 'glazier', '--due', '2026-02-09']).out).toBe(
    'Noted: ring the glazier.\n',
  );
  const tasks = () => place.call(['tasks', '--on', '2026-02-05']).out;
  expect(tasks()).toContain('  ring the glazier; due 2026-02-09  (by hand) [s');
  expect(place.call(['close', 'm1.t1']).out).toMatch(/^Closed: oil the bench top\.\n$/i);
  expect(place.call(['close', 'm1.t1']).out).toMatch(/^It was closed already: /);
  expect(tasks()).toMatch(/\nDone\n {2}oil the bench top /i);
});

test('a check is a function in a formula, and is worked out anew when a figure changes', () => {
  const waiting = place.call(['figures', 'set', 'ramp length = diagonal(rise; run)']);
  expect(waiting.out).toContain('it waits for figures that were never said: rise length, run length');
  place.call(['set', 'rise', 'length', '300 mm']);
  place.call(['set', 'run', 'length', '400 mm']);
  const ramp = () => place.call(['figures', 'ramp']).out;
  expect(ramp()).toMatch(/^ramp length: 500 mm\n/);
  expect(ramp()).toContain('  formula   diagonal(rise length; run length)\n');
  place.call(['set', 'rise', 'length', '560 mm']);
  expect(ramp()).toMatch(/^ramp length: 688\.186 mm\n/);
  const wrong = place.call(['figures', 'set', 'ramp length = hypotenuse(rise; run)']);
  expect(wrong).toMatchObject({ code: 2, err: expect.stringContaining('no check that gives a number') });
  expect(place.call(['verify']).code).toBe(0);
});

test('formulas and limits are set in one line, and what they clash with is shown', () => {
  expect(place.call(['figures', 'set', 'room length = 4100 mm']).out).toContain('room length: 4100 mm\n');
  const set = place.call(['figures', 'set', 'bench top length = room length - 1700 mm']);
  expect(set.out).toContain('bench top length: 2400 mm\n');
  expect(set.out).toContain('  formula   room length - 1700 mm\n');
  const circle = place.call(['figures', 'set', 'room length = bench top length + 1 m']);
  expect(circle.out).toContain('room length: its formulas go round in a circle');
  expect(circle.out).toContain(
    'room length, which follows from bench top length, which follows from room length',
  );
  expect(place.call(['figures', 'room']).out).toContain('room length: 4100 mm\n');
  const limit = place.call(['limits', 'set', 'bench top length at most 2350 mm']);
  expect(limit.out).toContain('bench top length: breaks a stated limit');
  expect(limit.out).toMatch(/bench top length {2}at most 2350 mm .* by hand, \d{4}-\d\d-\d\d {2}\[s\d+\]\n$/);
  expect(place.call(['figures', 'set', 'bench top length =']).out).not.toContain('formula');
  expect(place.call(['verify']).code).toBe(0);
});

test('any fact is withdrawn by its id and comes back by undo', () => {
  expect(place.call(['withdraw', 'm2.f1']).out).toBe('Withdrawn: 951 millimetres high.\n');
  expect(clash()).toBeUndefined();
  expect(place.call(['withdraw', 'm2.f1']).code).toBe(2);
  place.call(['undo']);
  expect(clash().kind).toBe('slip');
  place.call(['limits', 'set', 'bench top height at most 950 mm']);
  const [{ id }] = JSON.parse(place.call(['limits', '--json']).out);
  expect(place.call(['withdraw', id]).out).toBe('Withdrawn: the limit on the height of "bench top".\n');
  expect(JSON.parse(place.call(['limits', '--json']).out)).toEqual([]);
  expect(place.call(['verify']).code).toBe(0);
});

test('a task is opened again by hand', () => {
  place.call(['close', 'm1.t1']);
  expect(place.call(['reopen', 'm1.t1']).out).toMatch(/^Opened again: oil the bench top\.\n$/i);
  expect(place.call(['reopen', 'm1.t1']).out).toMatch(/^It is open: /);
});

test('a clash that was settled before is not settled again in silence', () => {
  const { id } = clash();
  place.call(['settle', id, 'take-new', '--reason', 'taped it']);
  const same = place.call(['settle', id, 'take-new']);
  expect([same.code, same.err]).toEqual([
    0,
    expect.stringMatching(`^${id} was settled so already, on \\d{4}-\\d\\d-\\d\\d: nothing was changed\n$`),
  ]);
  expect(place.call(['undo']).out).toBe(`Undone: settling ${id} with take-new.\n`);
  place.call(['settle', id, 'take-new', '--reason', 'taped it']);
  const other = place.call(['settle', id, 'keep-old']);
  expect(other.err).toMatch(
    /^\S+ was settled before: take-new, \S+: taped it; that gives way to this one\n$/,
  );
  expect(benchTop()).toBe('bench top height: 915 mm');
});

test('a tolerance is set with its figure, and goes through a formula', () => {
  const set = (...words: string[]) => place.call(['figures', 'set', words.join(' ')]);
  const first = set('plinth height = 100 mm ± 1 mm');
  expect(first.out.split('\n').slice(0, 3)).toEqual([
    'plinth height: 100 mm',
    '  rule      set by hand',
    '  tolerance 1 mm (said)',
  ]);
  expect(first.out).toContain('100 mm ± 1 mm');
  set('carcass height = 700 mm +/- 2');
  expect(place.call(['set', 'worktop', 'height', '38 mm give or take 2 mm']).out).toContain('38 mm ± 2 mm');
  const stack = set('unit height = plinth height + carcass height + worktop height');
  expect(stack.out).toContain('unit height: 838 mm');
  expect(stack.out).toContain('tolerance 5 mm (worst case)');
  expect(stack.out).toContain('3 mm');
  expect(place.call(['verify']).code).toBe(0);
});

test.each([
  ['figures', 'set', 'plinth height = 100 mm ± 0 mm', 'a tolerance has to be more than nothing'],
  ['figures', 'set', 'plinth height = 100 mm ± 1 kg', 'mm and kg do not compare'],
  ['figures', 'set', 'plinth height = 100 mm ± 1 ± 2', 'more than one tolerance'],
  ['figures', 'set', `plinth height = ${'('.repeat(10_000)}1 mm${')'.repeat(10_000)}`, 'longer than 400'],
  ['limits', 'set', 'plinth height maybe 3 mm', 'limits set "doorway width at most 740 mm"'],
  ['tolerance', 'length', '0 mm', 'expected a difference above nothing'],
  ['merge', 'the bench top', 'bench top', 'expected two names that differ'],
  ['todo', ' ', '', 'expected what is to be done'],
])('%s %s is refused and says why in short', (...call) => {
  const why = call.pop() as string;
  const { code, err } = place.call(call.filter((word) => word !== ''));
  expect(code).toBe(2);
  expect(err).toContain(why);
  expect(err.length).toBeLessThan(500);
});

test('a figure of another kind than its measure is told, and what stood goes on standing', () => {
  expect(place.call(['set', 'bench top', 'height', '20 degC']).out).toContain('two kinds of quantity');
  expect(benchTop()).toBe('bench top height: 915 mm');
});

test('an answer: both systems, what hangs on it, and plainly when there is none', () => {
  place.file('three.txt', 'I have ordered the bench top.');
  place.call(['take', 'three.txt', '--at', '2026-02-05T17:00+01:00']);
  const answer = place.call(['ask', 'how high is the bench top']).out;
  expect(answer).toContain('bench top height: 915 mm (≈ 36 in)');
  expect(answer).toContain('On it\n  ordered: ');
  const none = place.call(['ask', 'how wide is the mast']).out;
  expect(none).toBe('No figure is on record for "how wide is the mast".\n');
});
