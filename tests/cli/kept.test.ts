/** What is kept on record, through the built command line: said, kept by hand, withdrawn, asked for. */
import { afterEach, beforeEach, expect, test } from 'vitest';
import { openWorkplace, type Workplace } from '../kit/command-line.ts';

let place: Workplace;
beforeEach(() => {
  place = openWorkplace();
  place.call(['init', '--name', 'Shed']);
});
afterEach(() => place.remove());

function say(day: string, text: string): string {
  place.file(`${day}.txt`, text);
  return place.call(['take', `${day}.txt`, '--at', `2026-02-${day}T17:00Z`]).out;
}

test('what is behind a panel is told when it is drilled, and asked for by its name', () => {
  expect(
    say('02', "Behind the galley panel there's the twelve volt feed for the pump. I need to cut the shelf."),
  ).toContain('1 task, 1 thing behind a panel\n');
  expect(say('03', "I've drilled two holes in the galley panel.")).toContain(
    'behind the galley panel: twelve volt feed for the pump (cable), memo 1',
  );
  expect(place.call(['behind', 'galley', 'panel']).out).toContain('  twelve volt feed for the pump (cable)');
  expect(place.call(['behind', 'cooker', 'panel']).out).toBe(
    'Nothing is on record of what is behind "cooker panel". That means only that nobody told.\n',
  );
  expect(JSON.parse(place.call(['behind', '--json']).out)).toMatchObject([
    { id: 'm1.r1', panel: 'galley panel', service: 'cable' },
  ]);
  expect(place.call(['ask', 'galley', 'panel']).out).toContain('Behind panels\n');
  expect(place.call(['journal', '2026-02-03']).out).toContain('## Behind where work goes through\n');
  expect(place.call(['next', '--on', '2026-02-04']).out).toContain(
    '## Sizes not said yet\n\n- Shelf: width, length or height, thickness (memo 1)\n',
  );
  expect(place.call(['withdraw', 'm1.r1']).code).toBe(0);
  expect(JSON.parse(place.call(['behind', '--json']).out)).toEqual([]);
  expect(place.call(['undo']).code).toBe(0);
  expect(JSON.parse(place.call(['behind', '--json']).out)).toHaveLength(1);
  expect(place.call(['verify']).code).toBe(0);
});

test('batches are shown with their gaps and the word of caution, and kept by hand', () => {
  say('02', 'Mixed the epoxy, five to one by weight, 14 degrees in the shed, for the keel floors.');
  const { out } = place.call(['batches']);
  expect(out).toContain('  ratio five to one; metered by weight; air 14 degrees; used for the keel floors\n');
  expect(out).toContain('  not said: surface, humidity\n');
  expect(out).toContain("those of the product's own data sheet");
  const added = place.call(['batches', 'add', 'grey primer', '--air', '12 degC', '--used', 'keel', '--json']);
  expect(JSON.parse(added.out)).toMatchObject({
    product: 'grey primer',
    facts: [{ what: 'air' }, { what: 'used' }],
  });
  const { id } = JSON.parse(added.out);
  expect(place.call(['withdraw', id]).out).toBe('Withdrawn: the batch of grey primer.\n');
  expect(JSON.parse(place.call(['batches', '--json']).out)).toHaveLength(1);
});

test('a pair of hands is kept by hand, asks about its other side, and is settled', () => {
  expect(place.call(['hands', 'add', 'locker', 'lid', '--side', 'port']).out).toMatch(
    /^locker lid: one port, one starboard {3}\S+ {2}by hand {3}\[s\d+\]$/m,
  );
  say('02', 'The port locker lid is 420 wide. The starboard locker lid is 420 wide.');
  const out = say('03', 'Change of plan, the port locker lid is now 440 wide.');
  expect(out).toContain('starboard locker lid width: its other hand has another size');
  const open = JSON.parse(place.call(['findings', '--open', '--json']).out);
  expect(open).toHaveLength(1);
  place.call(['settle', open[0].id, 'take-new']);
  expect(place.call(['figures', 'starboard', 'locker', 'lid']).out).toContain('width: 440 mm');
  expect(JSON.parse(place.call(['hands', '--json']).out)).toMatchObject([{ part: 'locker lid' }]);
  const wrong = place.call(['hands', 'add', 'knee', '--side', 'aft']);
  expect([wrong.code, wrong.err]).toEqual([
    2,
    'hearwright: --side: expected port, starboard, left, right, nearside, offside, driver or passenger, got "aft"\n',
  ]);
  expect(place.call(['verify']).code).toBe(0);
});

test('what came is held against what was ordered, said or by hand', () => {
  place.call(['orders', 'add', 'larch boards', '--count', '8', '--size', 'thickness=21 mm']);
  const out = say(
    '02',
    "The larch boards came, they're 18 millimetres thick and there are only six of them.",
  );
  expect(out).toContain('larch boards count: what came is not what was ordered');
  expect(out).toContain('larch boards thickness: what came is not what was ordered');
  expect(place.call(['orders']).out).toMatch(/^larch boards: short$/m);
  const came = place.call(['orders', 'came', 'larch boards', '--count', '2']);
  expect(came.out).toMatch(/^larch boards: complete$/m);
  expect(JSON.parse(place.call(['orders', '--json']).out)).toMatchObject([
    { status: 'complete', order: { count: 8 }, received: [{ count: 6 }, { count: 2 }] },
  ]);
  expect(place.call(['orders', 'add', 'glass', '--count', 'some']).err).toContain(
    '--count: expected a whole number, got "some"',
  );
  expect(place.call(['orders', 'add', 'glass', '--size', 'big']).err).toContain(
    '--size: expected an attribute and a quantity such as "thickness=21 mm", got "big"',
  );
  const document = JSON.parse(place.call(['export']).out);
  expect([document.orders.length, document.memos[0].records.length]).toEqual([1, 1]);
  expect(place.call(['verify']).code).toBe(0);
});
