import { expect, test } from 'vitest';
import { cautionsOfChecks, checkViews, workOutCheck } from '../../src/model/checks/check-views.ts';
import { CLEARANCE } from '../../src/model/checks/clearance.ts';
import { dayView, nextView } from '../../src/model/day-views.ts';
import { MemoryRows } from '../../src/model/memory-rows.ts';
import { projectInfo } from '../../src/model/project-views.ts';
import { cautionsText, checksText, kindText, workedOutText } from '../../src/reports/checks-text.ts';
import { findingsText } from '../../src/reports/finding-text.ts';
import { journalPage } from '../../src/reports/journal.ts';
import { nextStepsPage } from '../../src/reports/next-steps.ts';
import { type ByHand, ToldStory } from '../kit/told-story.ts';

const NOW = '2026-02-05T20:00:00+01:00';

function add(check: string, inputs: Readonly<Record<string, string>>, note?: string): ByHand {
  const asked = Object.entries(inputs).map(([input, expression]) => ({ input, expression }));
  return { kind: 'check-added', check, inputs: asked, ...(note === undefined ? {} : { note }) };
}

const lid = add(
  'clearance',
  { opening: 'side hatch width - 2 * 4 mm', part: 'locker lid', gap: '1 mm' },
  'it swells',
);

test('a standing check tells why, every figure with its place and age, and since when it is so', () => {
  const story = new ToldStory()
    .hear(
      'I measured the side hatch, it is 560 millimetres wide.',
      'I ordered the locker lid. The locker lid is about 552 millimetres wide.',
    )
    .hand(lid);
  expect(
    checksText(checkViews(story.project.rows), 'metric', NOW),
  ).toBe(`clearance (side hatch, locker lid): breaks   [s8]
  why       29.6 mm short at worst (2 mm short as said)
  room left -29.6 mm to 25.6 mm, -2 mm as said
  opening   552 mm   side hatch width - 2 * 4 mm
            side hatch width 560 mm   memo 1, 4 days old, measured
  part      524.4 mm to 579.6 mm, 552 mm as said   locker lid width   memo 2, 3 days old, measured
  gap       1 mm
  gap on    both sides
  note      the gap is kept on both sides
  for       it swells
  since     2026-02-28 20:00   by hand
`);
  expect(findingsText(story.open())).toContain('clearance (side hatch, locker lid): breaks   [s8.c1]\n');
  expect(findingsText(story.open())).toContain('  on it    ordered: ');
});

test('no check is not called safe', () => {
  expect(checksText([], 'metric', NOW)).toBe(
    'No check stands. See what there is with: hearwright checks kinds\n',
  );
});

test('the journal tells what broke and what holds again, each on its day, and not among the clashes', () => {
  const story = new ToldStory()
    .hand(lid)
    .hear('The side hatch is 560 millimetres wide. The locker lid is 548 millimetres wide.')
    .hear('I changed my mind, the locker lid is now 558 millimetres wide.')
    .hear('I measured the side hatch again, it is 575 millimetres wide, so I had it wrong.');
  const page = (day: string) => {
    const view = dayView(story.project.rows, day);
    return view ? journalPage(view, projectInfo(story.project.rows)) : '';
  };
  expect(page('2026-02-01')).not.toContain('## Checks');
  expect(page('2026-02-02')).toContain(`## Checks

### Broke

- **clearance (side hatch, locker lid)**: breaks (m2.c2)
  - said: “558 millimetres wide”, memo 2 on 2026-02-02
  - why: 8 mm short at worst
  - settled on 2026-02-03: holds-again, it holds again: 7 mm left at worst
`);
  const clashes = /## Clashes\n([\s\S]*?)\n## /.exec(page('2026-02-02'))?.[1] ?? '';
  expect(clashes).not.toContain('clearance');
  expect(page('2026-02-03')).toContain(`### Hold again

- **clearance (side hatch, locker lid)**: it holds again: 7 mm left at worst
`);
});

test('next steps ask five questions in all, clashes first, then what checks miss', () => {
  const story = new ToldStory();
  for (let number = 1; number <= 7; number++)
    story.hand(add('clearance', { opening: `hatch ${number} width`, part: '40 mm' }));
  story.hear('The cabin table is 700 millimetres wide. The rail is 900 millimetres long.');
  const page = nextStepsPage(nextView(story.project.rows, NOW), projectInfo(story.project.rows));
  expect([...page.matchAll(/: not run \(s\d+\)/g)].length).toBe(5);
  expect(page).toContain('  - next: say it, or: hearwright figures set "hatch 1 width = … mm"');
});

test('in a project of mixed units each number is told in both systems', () => {
  const asked = {
    check: 'clearance',
    inputs: [
      { input: 'opening', expression: '28 in' },
      { input: 'part', expression: '27 1/2 in' },
    ],
  };
  const { run } = workOutCheck(new MemoryRows(), asked, { units: 'mixed' });
  expect(workedOutText(run, CLEARANCE, 'mixed', NOW)).toContain('  room left 1/2 in (12.7 mm)\n');
});

test('cautions of the topic stand beside, once each, with whoever decides', () => {
  const asked = { check: 'clearance', inputs: [{ input: 'opening', expression: 'busbar box width' }] };
  const { run } = workOutCheck(new MemoryRows(), asked, { units: 'metric' });
  const text = cautionsText(cautionsOfChecks([run, run]));
  expect([...text.matchAll(/^ {2}caution/gm)].length).toBe(1);
  expect(text).toContain('Who decides:');
  expect(cautionsText([])).toBe('');
});

test('a kind of check is told with its choices', () => {
  const check = {
    ...CLEARANCE,
    options: [{ name: 'kept', says: 'where the gap is kept', of: ['both sides', 'one side'] }],
  };
  expect(kindText(check, 'x')).toContain('  kept     where the gap is kept: both sides or one side\n');
});

test('nothing hostile in a name, an expression or a note reaches a terminal or a page', () => {
  const bad = 'hatch\u001b]52;c;aGk=\u0007 <script> **x**';
  const story = new ToldStory().hand(add('clearance', { opening: bad, part: '40 mm' }, bad));
  const text = checksText(checkViews(story.project.rows), 'metric', NOW);
  // biome-ignore lint/suspicious/noControlCharactersInRegex: it is what is looked for.
  expect(text).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u007f-\u009f]/);
  const page = nextStepsPage(nextView(story.project.rows, NOW), projectInfo(story.project.rows));
  expect(page).not.toMatch(/<script>|\*\*x\*\*/);
});
