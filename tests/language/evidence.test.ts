import { readFileSync, statSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { splitSentences } from '../../src/language/sentences.ts';
import { fittedEvidence } from '../../src/language/statements/evidence/evidence.ts';
import { KINDS } from '../../src/language/statements/evidence/kinds.ts';
import { readTable, STEP, writeTable } from '../../src/language/statements/evidence/table-text.ts';
import { WORD_TABLE } from '../../src/language/statements/evidence/word-table.ts';
import { readStatements } from '../../src/language/statements/read-statements.ts';
import { hostileText } from '../kit/hostile-text.ts';

/** A Wednesday. */
const CONTEXT = { units: 'metric', region: 'GB', recordedAt: '2026-06-10T18:00:00+01:00' } as const;
const LISTS = ['decisions', 'tasks', 'done', 'arrivals', 'problems', 'promises'] as const;
type List = (typeof LISTS)[number];

function quotes(said: string, evidence: boolean) {
  const text = `Right. ${said} Lovely.`;
  const { notes, trace } = readStatements(text, splitSentences(text), CONTEXT, [], { evidence });
  const of = (list: List) => notes[list].map(({ quote }) => quote);
  return { of, trace };
}

const ADDED: readonly (readonly [List, string, string])[] = [
  [
    'done',
    'The organ bellows got their new leather this morning, four hours of hide glue and swearing.',
    'The organ bellows got their new leather this morning',
  ],
  [
    'done',
    'The clavichord soundboard has its ribs on, all seven.',
    'The clavichord soundboard has its ribs on',
  ],
  ['done', 'Then the new leathers went into the pump head.', 'the new leathers went into the pump head'],
  ['done', 'Water wheel buckets, two dozen, riveted and hung.', 'riveted and hung'],
  ['tasks', 'What the roof wants now is a coat of tar.', 'What the roof wants now is a coat of tar'],
  [
    'problems',
    "There's play in the crank that wasn't there before.",
    "There's play in the crank that wasn't there before",
  ],
  ['problems', 'One of the cogs has a tooth missing.', 'One of the cogs has a tooth missing'],
  [
    'promises',
    'We will look at the gearing together next time.',
    'We will look at the gearing together next time',
  ],
  [
    'decisions',
    "I'm going to hang the bell from steel after all, timber moves too much.",
    "I'm going to hang the bell from steel",
  ],
];
const DROPPED: readonly (readonly [List, string])[] = [
  ['problems', 'The light went and I went home.'],
  ['problems', 'The dog keeps barking at the postman.'],
  ['done', 'The old plans showed a second door, long gone.'],
];
const SILENT = [
  'Wednesday the fourteenth.',
  "It's going to be the nineteenth instead of the twelfth.",
  'I was tired and went home early.',
  'I made the mistake of asking.',
  'The radio was on all day.',
  'I was going to write a book about it.',
  'I should have been a baker.',
  'Somebody once told me the mill burnt down twice.',
  'The whole street heard it.',
  'When I was a boy my uncle had a wagon just like this.',
  'The old boys at the club told me I was mad.',
];

describe('what no rule reads is added where the words speak for it', () => {
  test.each(ADDED)('%s: "%s"', (list, said, quote) => {
    expect(quotes(said, false).of(list)).toEqual([]);
    const { of, trace } = quotes(said, true);
    expect(of(list)).toEqual([quote]);
    const step = trace.find(({ stage, rule }) => stage === 'statements: evidence' && rule === 'evidence');
    expect(step?.why).toMatch(/; for \S/);
  });
});

describe('what a rule reads is dropped where the words speak against it', () => {
  test.each(DROPPED)('%s: "%s"', (list, said) => {
    expect(quotes(said, false).of(list)).toHaveLength(1);
    const { of, trace } = quotes(said, true);
    expect(of(list)).toEqual([]);
    const step = trace.find(
      ({ stage, outcome }) => stage === 'statements: evidence' && outcome === 'dropped',
    );
    expect(step?.why).toMatch(/words -\d/);
  });
});

describe('what states nothing is left alone', () => {
  test.each(SILENT)('"%s"', (said) => {
    const { of } = quotes(said, true);
    expect(LISTS.flatMap(of)).toEqual([]);
  });
});

test('most of our own sentences read as before with the evidence weighed', () => {
  const json = (name: string) =>
    JSON.parse(readFileSync(new URL(`./talk/${name}.json`, import.meta.url), 'utf8')) as Record<
      'read' | 'leave',
      readonly string[]
    >;
  for (const list of ['problems', 'decisions', 'arrivals', 'promises'] as const) {
    const { read, leave } = json(list);
    const right = [
      ...read.map((said) => quotes(`${said}.`, true).of(list).length > 0),
      ...leave.map((said) => quotes(`${said}.`, true).of(list).length === 0),
    ];
    expect(right.filter(Boolean).length / right.length, list).toBeGreaterThan(0.92);
  }
});

test('evidence of any text is the same each time and quotes it word for word', () => {
  fc.assert(
    fc.property(hostileText, (text) => {
      const read = () => readStatements(text, splitSentences(text), CONTEXT);
      const first = read();
      expect(read()).toEqual(first);
      for (const list of LISTS)
        for (const { quote, span } of first.notes[list]) expect(text.slice(span.start, span.end)).toBe(quote);
    }),
    { numRuns: 150, seed: 20261125 },
  );
});

test('the table is read whole and stays small', () => {
  const rows = readTable(WORD_TABLE, KINDS.length);
  expect(rows.length).toBeGreaterThan(5000);
  expect(new Set(rows.map(([number]) => number)).size).toBe(rows.length);
  for (const [number, weights] of rows) {
    expect(number).toBeGreaterThan(0);
    expect(weights.every((weight) => Math.abs(weight) <= 32 * STEP)).toBe(true);
  }
  expect(Object.keys(fittedEvidence().kinds)).toEqual([...KINDS]);
  const size = (name: string) =>
    statSync(new URL(`../../src/language/statements/evidence/${name}.ts`, import.meta.url)).size;
  expect(size('word-table') + size('cue-weights')).toBeLessThan(256_000);
});

test('a table that was cut is refused', () => {
  expect(() => readTable(WORD_TABLE.slice(1), KINDS.length)).toThrow(/rows of 11 letters/);
});

test('a table is read as it was written, to half a step', () => {
  const row = fc.tuple(
    fc.integer({ min: 1, max: 2 ** 30 - 1 }),
    fc.array(fc.double({ min: -1.2, max: 1.2, noNaN: true }), { minLength: 6, maxLength: 6 }),
  );
  fc.assert(
    fc.property(fc.uniqueArray(row, { selector: ([number]) => number }), (rows) => {
      const back = readTable(writeTable(rows), 6);
      const sorted = [...rows].sort(([a], [b]) => a - b);
      expect(back.map(([number]) => number)).toEqual(sorted.map(([number]) => number));
      back.forEach(([, weights], k) => {
        weights.forEach((weight, n) => {
          expect(Math.abs(weight - (sorted[k]?.[1][n] ?? 9))).toBeLessThanOrEqual(STEP / 2 + 1e-9);
        });
      });
    }),
  );
});
