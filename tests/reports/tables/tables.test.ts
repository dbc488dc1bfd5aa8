import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { TaskView } from '../../../src/model/views.ts';
import { type Cell, readDelimited, writeDelimited } from '../../../src/reports/delimited.ts';
import {
  claimsTable,
  figuresTable,
  findingsTable,
  type Table,
  tableAsCsv,
  tableAsJson,
  tasksTable,
} from '../../../src/reports/tables/tables.ts';
import { oneLine } from '../../../src/reports/words.ts';
import { DECIDED, FIGURES, READY_TASK, STALE, TASK } from '../../kit/bakery-wagon.ts';
import { hostileWords } from '../../kit/hostile-words.ts';

/** What csv-parse, a strict reader that is not ours, makes of a table. */
const read = (table: Table): readonly Record<string, string>[] => parse(tableAsCsv(table), { columns: true });
const DONE: TaskView = { ...TASK, id: 'm1.t2', status: 'done', closedBy: READY_TASK.source };

test('figures as a table: values, doubt, what a tape reads, where it was said', () => {
  const [ledge, frame] = read(figuresTable(FIGURES));
  expect(ledge).toMatchObject({
    item: 'oven ledge',
    attribute: 'height',
    value: '915',
    unit: 'mm',
    status: 'stands',
    'nearest sixteenth': '36 in (3 ft 0 in)',
    'off by mm': '-0.6',
    memo: 'm2',
    'said at': '2026-02-04T18:05:00+01:00',
    quote: 'The oven ledge is 915 now',
  });
  expect(frame).toMatchObject({ status: 'stale', formula: 'oven glass width + 50 mm', memo: '', quote: '' });
});

test('claims are everything that was said of them', () => {
  expect(read(claimsTable(FIGURES)).map(({ id, value, status }) => [id, value, status])).toEqual([
    ['m1.f2', '905', 'superseded'],
    ['m2.f1', '915', 'standing'],
  ]);
});

test('tasks and findings with both sides', () => {
  expect(
    read(tasksTable([READY_TASK, TASK, DONE])).map((row) => [
      row.id,
      row.status,
      row.due,
      row['waits for'],
      row['carried days'],
      row['closed on'],
    ]),
  ).toEqual([
    ['m2.t1', 'ready', '2026-02-06', '', '0', ''],
    ['m1.t1', 'waiting', '', 'waits for primer is dry', '2', ''],
    ['m1.t2', 'done', '', '', '', '2026-02-04'],
  ]);
  expect(read(findingsTable([DECIDED, STALE]))).toMatchObject([
    { id: 'm2.k1', 'was value': '905', 'now value': '915', difference: '10', 'settled by': 'take-new' },
    { id: 'm2.k2', 'was value': '560', 'now value': '570', 'now memo': '', 'settled by': '' },
  ]);
});

test('as JSON the same records under the same names, numbers as numbers, nothing empty', () => {
  const [ledge] = JSON.parse(tableAsJson(figuresTable(FIGURES)));
  expect(ledge).toMatchObject({ item: 'oven ledge', value: 915, 'off by mm': -0.6 });
  expect(Object.values(ledge)).not.toContain('');
});

test('lines end in CRLF, marks are doubled, a negative number stays a number', () => {
  expect(
    writeDelimited([
      ['a', 'b'],
      ['the "old" sill, out', -5],
      [undefined, 0.1 + 0.2],
    ]),
  ).toBe('a,b\r\n"the ""old"" sill, out",-5\r\n,0.30000000000000004\r\n');
});

// What spreadsheets run: OWASP, "CSV Injection".
test.each(['=1+1', '+2', '-3 mm', '@SUM(A1)', '=cmd|x', "'=1", '\t=1', '＝1', ' =1'])(
  'words that would start a formula are harmless: %j',
  (words) => {
    expect(writeDelimited([[words]])).toBe(`'${oneLine(words)}\r\n`);
  },
);

const hostile = fc.oneof(
  hostileWords,
  fc.string(),
  fc.constantFrom('=', '-', "'", '"', '@', '\r\n=1', '","=1'),
);

test('hostile words come out of another reader as the plain words they were, none a formula', () => {
  fc.assert(
    fc.property(fc.array(fc.array(hostile, { minLength: 2, maxLength: 5 }), { minLength: 1 }), (rows) => {
      const text = writeDelimited(rows);
      expect(text).not.toMatch(/[^\P{Cc}\r\n]|\r(?!\n)|(?<!\r)\n/u);
      const cells: readonly string[][] = parse(text, { relaxColumnCount: true });
      expect(cells.map((row) => row.map((cell) => cell.replace(/^'/, '')))).toEqual(
        rows
          .map((row) => row.map((words) => oneLine(words).replace(/^'/, '')))
          .map((row, at) =>
            row.map((words, place) => (/^'/.test(oneLine(rows[at]?.[place] ?? '')) ? `'${words}` : words)),
          ),
      );
      for (const cell of cells.flat()) expect(cell).not.toMatch(/^[=+\-@\t\r＝＋－＠]/);
      expect(readDelimited(text).map(({ cells: own }) => own)).toEqual(cells);
    }),
    { numRuns: 300 },
  );
});

test('every table keeps its columns, whatever the words', () => {
  fc.assert(
    fc.property(hostileWords, (words) => {
      const source = { ...READY_TASK.source, quote: words };
      const figures = FIGURES.map((figure) => ({ ...figure, item: words, source, formula: words }));
      const tables = [
        figuresTable(figures),
        claimsTable(figures),
        tasksTable([{ ...READY_TASK, gist: words, source, before: words }]),
        findingsTable([{ ...STALE, item: words, why: words, was: { ...STALE.was, source } }]),
      ];
      for (const table of tables) {
        const rows: readonly Cell[][] = parse(tableAsCsv(table));
        expect(rows).toHaveLength(table.records.length + 1);
        for (const row of rows) expect(row).toHaveLength(table.columns.length);
        expect(JSON.parse(tableAsJson(table))).toHaveLength(table.records.length);
      }
    }),
    { numRuns: 200 },
  );
});
