import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { MemoNotes, ReadContext } from '../../src/language/notes.ts';
import { readMemo } from '../../src/language/pipeline.ts';
import { tokenise } from '../../src/language/tokens.ts';
import { hostileText, LONG_LINES, OTHER_LANGUAGES } from '../kit/hostile-text.ts';

const CONTEXT: ReadContext = { units: 'metric', region: 'GB', recordedAt: '2026-06-10T12:00:00+01:00' };
const notesOf = (notes: MemoNotes) => Object.values(notes).flat() as MemoNotes['figures'][number][];
const read = (text: string) => notesOf(readMemo(text, CONTEXT).notes);

// Twelve hundred texts take long where others use the machine as well.
test('no text makes the reader throw, and every quote is verbatim', { timeout: 120_000 }, () => {
  fc.assert(
    fc.property(hostileText, (text) => {
      for (const { quote, span } of read(text)) {
        expect(text.slice(span.start, span.end)).toBe(quote);
        expect(quote.length).toBeGreaterThan(0);
      }
    }),
    { numRuns: 1200, seed: 20261125 },
  );
});

test('figures of hostile text are finite', { timeout: 120_000 }, () => {
  fc.assert(
    fc.property(hostileText, (text) => {
      for (const { value, high } of readMemo(text, CONTEXT).notes.figures) {
        expect(Number.isFinite(value)).toBe(true);
        expect(high === undefined || Number.isFinite(high)).toBe(true);
      }
    }),
    { numRuns: 300, seed: 7 },
  );
});

test.each(['constructor', '__proto__', 'toString', 'hasOwnProperty', 'valueOf', 'prototype'])(
  '"%s" is a word like any other',
  (word) => {
    const said = `The ${word} is 40 mm wide. I need to paint the ${word} before ${word} ${word}s. It's a ${word} by 30.`;
    expect(
      readMemo(said, { ...CONTEXT, knownItems: [word], openTasks: [`paint the ${word}`] }).notes.figures,
    ).toMatchObject([{ value: 40, unit: 'mm' }, { value: 30 }]);
  },
);

test.each(OTHER_LANGUAGES)('no figure is made of "%s"', (said) => {
  expect(readMemo(said, CONTEXT).notes.figures).toEqual([]);
});

test('no figure is made of bytes that are no text', () => {
  const bytes = Uint8Array.from({ length: 20_000 }, (_, k) => (k * 7919 + (k >> 3)) % 256).filter(
    // Digits among letters are a part number at best, but bytes may stand alone.
    (byte) => byte < 0x30 || byte > 0x39,
  );
  expect(readMemo(new TextDecoder('latin1').decode(bytes), CONTEXT).notes.figures).toEqual([]);
});

test.each(LONG_LINES)('a line of nothing but %s is read in seconds', (_, text) => {
  const started = performance.now();
  read(text.slice(0, 30_000));
  expect(performance.now() - started).toBeLessThan(15_000);
});

test.each(['a', 'x', 'ing', 'er', 'est', 'teen', 's', "'s", "n't", "'ve", '-a', '_', 'é'])(
  'one word of nothing but "%s" is read in proportion to its letters, wherever it stands',
  (letters) => {
    const word = letters.repeat(200_000 / letters.length);
    const started = process.cpuUsage();
    for (const said of [word, `I'm ${word}ing the shelf.`, `The ${word} is 40 mm wide.`]) read(said);
    const { user, system } = process.cpuUsage(started);
    // Quadratic work on so many letters takes half a minute at the least.
    expect(user + system).toBeLessThan(20e6);
  },
  120_000,
);

test('digits and letters without a space between them are cut in one pass', () => {
  const started = process.cpuUsage();
  const tokens = tokenise('1a'.repeat(500_000));
  expect(tokens.length).toBe(1e6);
  const { user, system } = process.cpuUsage(started);
  expect(user + system).toBeLessThan(15e6);
}, 60_000);

test.each([
  ['2x4', ['2', 'x', '4']],
  ['5m2', ['5', 'm2']],
  ['5m22', ['5', 'm', '22']],
  ['3M²x', ['3', 'M²x']],
  ['12mm', ['12', 'mm']],
  ['12mm by 3', ['12', 'mm', 'by', '3']],
  ["5o'clock", ['5', "o'clock"]],
])('%s is cut into %j', (said, pieces) => {
  expect(tokenise(said).map(({ text }) => text)).toEqual(pieces);
});

test.each([
  ['\u001b]0;evil\u0007', 'a title'],
  ['\u001b]0;evil\u001b\\', 'a title with its own end'],
  ['\u009d0;evil\u009c', 'a title in one character'],
  ['\u001bPevil\u001b\\', 'a device string'],
  ['\u001b_evil\u001b\\', 'an application string'],
  ['\u001b[31m', 'a colour'],
  ['\u001b]0;evil 12 mm wide\n', 'a title that nobody ended'],
])('%j is %s, and no word of it is read', (sequence) => {
  const said = `The shelf${sequence} is 742 mm wide.`;
  const { notes, trace } = readMemo(said, CONTEXT);
  expect(notes.figures).toMatchObject([{ item: 'shelf', attribute: 'width', value: 742, unit: 'mm' }]);
  for (const { quote, span } of notesOf(notes)) expect(said.slice(span.start, span.end)).toBe(quote);
  expect(JSON.stringify(notesOf(notes).map((note) => ({ ...note, quote: '' })))).not.toContain('evil');
  expect(trace).toContainEqual(expect.objectContaining({ rule: 'escape sequence', outcome: 'dropped' }));
});

test('a word with a colour in its middle is one word', () => {
  const said = 'The she\u001b[1mlf is 742 mm\u001b[0m wide.';
  const [figure] = readMemo(said, CONTEXT).notes.figures;
  expect(figure).toMatchObject({ item: 'shelf', value: 742 });
  expect(said.slice(figure?.span.start, figure?.span.end)).toBe(figure?.quote);
});

test.each(['scratch 12 mm ', 'alpha beta ', 'the shelf minus 12 mm '])(
  'nothing but "%s" is read in linear time, however many figures one thing has',
  (words) => {
    const time = (characters: number) => {
      const text = words.repeat(characters / words.length);
      const before = process.cpuUsage();
      readMemo(text, CONTEXT);
      const { user, system } = process.cpuUsage(before);
      return user + system;
    };
    time(10_000);
    // Four times the text: quadratic work would take sixteen times as long.
    expect(time(160_000) / time(40_000)).toBeLessThan(9);
  },
  60_000,
);

test.each([
  '6" ',
  '3/8, ',
  '2, ',
  '1e9/',
  '⅜',
  '7\'4"/shelf/',
  'length the 1 ',
  '40 mm wide high ',
  'twelve by 40 ',
])(
  'hundreds of "%s" in one sentence are read in proportion to how many they are',
  (figure) => {
    const time = (count: number) => {
      const text = figure.repeat(count);
      const once = () => {
        const before = process.cpuUsage();
        readMemo(text, CONTEXT);
        const { user, system } = process.cpuUsage(before);
        return user + system;
      };
      // The quickest of a few: garbage of other readings is swept now and then.
      return Math.min(...Array.from({ length: 5 }, once));
    };
    time(400);
    // Four times as many: work that looks at each beside every other would take sixteen times as long.
    expect(time(1600) / time(400)).toBeLessThan(9);
  },
  60_000,
);
