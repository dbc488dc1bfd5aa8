import { expect, test } from 'vitest';
import { readMemo } from '../../src/language/pipeline.ts';
import { traceText } from '../../src/reports/trace-text.ts';

function traceOf(said: string): string {
  const context = {
    units: 'metric',
    region: 'GB',
    recordedAt: '2026-06-10T12:00:00Z',
    explain: true,
  } as const;
  const { notes, trace } = readMemo(said, context);
  return traceText(notes, trace, said);
}

test('a figure is told from its number to its thing, with what lost', () => {
  expect(traceOf('The kiln shelf is twelve mil thick.')).toBe(
    `figure: kiln shelf thickness: 12 mm, measured, from "twelve mil thick"
  lost    <number>                    12      "<number> <unit>" comes first
  read    <number> <unit>             12 mil  as spoken
  merged  a unit of several meanings  12 mil  mm: mil is a millimetre here
  read    <thing> is <quantity>               kiln shelf: thickness
`,
  );
});

test.each([
  [
    'The mast step is seventy, no sorry, seventy five mil.',
    'no note: "seventy"',
    'put right by what follows',
  ],
  ["I'm six foot two.", 'no note: "six foot two"', "a person's age, height or weight"],
  ['If it was 600 wide we would lose it.', 'no note: "600', 'supposed'],
  ['Fit the four by two studs.', 'no note: "four by two"', 'name a timber or a sheet'],
])('"%s" tells of words that became no figure', (said, heading, why) => {
  const block = traceOf(said)
    .split(/\n(?=\S)/)
    .find((each) => each.startsWith(heading));
  expect(block).toContain('dropped');
  expect(block).toContain(why);
});

test('a statement is told with its rule', () => {
  expect(traceOf('I need to order the hinges.')).toMatch(/^task: .*\n {2}read {2}.+ {2}task\n$/);
});

test('hostile words in a memo stay on their line', () => {
  const text = traceOf('The \u001b[31mshelf is\u0007 12 mm\u202e thick.');
  expect(text).not.toMatch(/(?!\n)\p{Cc}|\u202e/u);
});

test('a text without any rule says so', () => {
  expect(traceOf('Hello there.')).toBe('No rule left a trace.\n');
});

test('explaining changes no note', () => {
  const said =
    "The bench is 900 high and 1.2 by 600, six foot two doors at 2 3/8. It's two metres ten, half an inch proud.";
  const context = { units: 'metric', recordedAt: '2026-06-10T12:00:00Z' } as const;
  expect(readMemo(said, { ...context, explain: true }).notes).toEqual(readMemo(said, context).notes);
});
