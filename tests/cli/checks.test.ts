/** Checks through the real command line: worked out anywhere, attached, broken by a memo, taken away and brought back. */
import { afterAll, beforeAll, expect, test } from 'vitest';
import { openWorkplace, type Workplace } from '../kit/command-line.ts';

let place: Workplace;
beforeAll(() => {
  place = openWorkplace();
});
afterAll(() => place.remove());

test('a check is worked out without a project, in the system that it is asked in', () => {
  expect(place.call(['work', 'out', 'clearance', 'opening=706 mm', 'part=700 mm', 'gap=2 mm'])).toEqual({
    out: `clearance: holds
  why       2 mm left at worst
  room left 2 mm
  opening   706 mm
  part      700 mm
  gap       2 mm
  gap on    both sides
  note      the gap is kept on both sides
  formula   opening - part - 2 x gap, each tolerance taken off in the bad direction, each direction by itself
  source    arithmetic; worst case as in tolerance stacks
`,
    err: '',
    code: 0,
  });
  const inches = place.call([
    'work',
    'out',
    'clearance',
    'opening=27',
    '7/8',
    'in',
    'part=2',
    'ft',
    '4',
    'in',
  ]);
  expect(inches.out).toContain('clearance: breaks\n  why       1/8 in short at worst\n');
  const both = place.call(['work', 'out', 'clearance', 'opening=706 mm', 'part=700 mm', '--units', 'mixed']);
  expect(both.out).toContain('  room left 6 mm (≈ 1/4 in)\n');
});

test('many figures go in one by one or with commas, and a caution of the topic stands beside', () => {
  const { out, code } = place.call([
    'work',
    'out',
    'running mass',
    'part=230 kg, 60 kg',
    'part=4 x 12 kg',
    'limit=300 kg',
  ]);
  expect(out).toContain('running mass: breaks\n');
  expect(out).toContain('338 kg');
  expect(out).toContain('  caution  ');
  expect(out).toContain('a hazard that is not listed here is not thereby safe.');
  expect(code).toBe(0);
});

test('as JSON a check says its state, and an exit code says that it has none', () => {
  const worked = place.call(['work', 'out', 'clearance', 'opening=706 mm', 'part=700 mm', '--json']);
  expect(JSON.parse(worked.out)).toMatchObject({
    check: 'clearance',
    state: 'holds',
    results: [{ name: 'room left', low: 6, mid: 6, high: 6, unit: 'mm' }],
  });
  const missing = place.call(['work', 'out', 'clearance', 'opening=706 mm', '--json']);
  expect(JSON.parse(missing.out)).toMatchObject({ state: 'not-run', results: [] });
  expect([missing.code, missing.err]).toEqual([2, '']);
});

test('frost is a temperature below nought', () => {
  const call = ['work', 'out', 'product temperature', 'temperature=-5 degC', 'least=-2 degC'];
  expect(place.call(call).out).toContain(
    'product temperature: breaks\n  why             -5 °C: 3 °C under the least of -2 °C at worst\n',
  );
});

test('what there is to check is told with inputs, formula, source and an example', () => {
  const all = place.call(['checks', 'kinds']);
  expect(all.out).toMatch(/^clearance {2,}whether a part goes into an opening/m);
  expect(
    place.call(['checks', 'kinds', 'clearance']).out,
  ).toBe(`clearance: whether a part goes into an opening with the gap it needs on each side
  opening  clear size of the opening, one for each direction (length, as many as there are)
  part     size of the part in the same directions (length, as many as there are)
  gap      gap wanted on each side: one for all directions, or one for each (length, as many as there are, may be left out)
  gap on   where the gap is wanted: both sides or one side
  formula  opening - part - 2 x gap, each tolerance taken off in the bad direction, each direction by itself
  source   arithmetic; worst case as in tolerance stacks
  gives    room left
  example  hearwright work out clearance "opening=706 mm" "part=700 mm +- 1 mm" "gap=2 mm"
`);
  const described = JSON.parse(place.call(['checks', 'kinds', 'clearance', '--json']).out);
  expect(described).toMatchObject({
    name: 'clearance',
    inputs: [{ name: 'opening', kind: 'length' }, {}, {}],
  });
});

test('a standing check waits, breaks when a memo changes a figure, is taken away, and comes back by undo', () => {
  const home = openWorkplace();
  try {
    home.call(['init', '--name', 'Barge']);
    expect(home.call(['checks']).out).toBe(
      'No check stands. See what there is with: hearwright checks kinds\n',
    );
    const added = home.call([
      'checks',
      'add',
      'clearance',
      'opening=side',
      'hatch',
      'width',
      'part=locker lid',
      '--note',
      'swells',
    ]);
    expect(added.out).toContain('clearance: not run   [s2]\n');
    expect(added.out).toContain('say it, or: hearwright figures set "locker lid = … mm"');
    home.file(
      'monday.txt',
      'The side hatch is 560 millimetres wide. The locker lid is 552 millimetres wide.',
    );
    home.call(['take', 'monday.txt', '--at', '2026-02-02T17:30:00+01:00']);
    expect(home.call(['checks']).out).toContain(`clearance (side hatch, locker lid): holds   [s2]
  why       8 mm left at worst
  room left 8 mm
  opening   560 mm   side hatch width   memo 1, `);
    home.file('tuesday.txt', 'I changed my mind, the locker lid is now 566 millimetres wide.');
    const taken = home.call(['take', 'tuesday.txt', '--at', '2026-02-03T17:30:00+01:00']);
    expect(taken.out).toContain('clearance (side hatch, locker lid): breaks   [m2.c');
    expect(home.call(['journal', '2026-02-03']).out).toContain(
      '## Checks\n\n### Broke\n\n- **clearance (side hatch, locker lid)**: breaks',
    );
    const document = JSON.parse(home.call(['export', '--json']).out);
    expect(document.checks).toMatchObject([
      { id: 's2', state: 'broken', why: '6 mm short at worst', note: 'swells' },
    ]);
    expect(document.memos[1].conflicts.map((one: { kind: string }) => one.kind)).toEqual(['decided']);
    expect(home.call(['checks', 'remove', 's2'])).toMatchObject({
      out: 'Taken away: clearance (side hatch, locker lid). "hearwright undo" brings it back.\n',
      code: 0,
    });
    expect(home.call(['findings', '--open']).out).not.toContain('clearance');
    home.call(['undo']);
    expect(JSON.parse(home.call(['checks', '--json']).out)).toMatchObject([{ id: 's2', state: 'broken' }]);
    expect(home.call(['verify']).code).toBe(0);
  } finally {
    home.remove();
  }
});

test('next steps ask for what a check misses', () => {
  const home = openWorkplace();
  try {
    home.call(['init', '--name', 'Barge']);
    home.call(['checks', 'add', 'clearance', 'opening=side hatch width', 'part=40 mm']);
    const { out } = home.call(['next', '--on', '2026-02-03']);
    expect(out).toContain(
      '## Questions\n\n- **clearance**: not run (s2)\n  - why: the side hatch width was never said\n',
    );
  } finally {
    home.remove();
  }
});
