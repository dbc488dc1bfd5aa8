import { Parser } from 'commonmark';
import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { WebVTTParser } from 'webvtt-parser';
import type { MemoView } from '../../../src/model/views.ts';
import { clipMs, readCutList } from '../../../src/reports/cut/cut-list.ts';
import {
  chapterFaults,
  chapterLines,
  chapterSpans,
  type FilmChapter,
  filmChaptersOf,
} from '../../../src/reports/cut/film-chapters.ts';
import { filmCorrectionsPage } from '../../../src/reports/cut/film-corrections.ts';
import {
  heardAtMs,
  isHeardIn,
  meantBy,
  type Programme,
  programmeOf,
  programmeTime,
} from '../../../src/reports/cut/programme.ts';
import { readDelimited } from '../../../src/reports/delimited.ts';
import { vttChaptersOf } from '../../../src/reports/subtitles/webvtt.ts';
import { DECIDED, FIGURES, MEMO_1, MEMO_2, PROJECT } from '../../kit/bakery-wagon.ts';
import { hostileWords } from '../../kit/hostile-words.ts';

const MEMOS: readonly MemoView[] = [MEMO_1, MEMO_2];

function filmOf(list: string, memos = MEMOS): Programme {
  const read = readCutList(list);
  if (!read.ok) throw new Error(read.faults.join('\n'));
  const laid = programmeOf(read.cuts, memos);
  if (!laid.ok) throw new Error(laid.faults.join('\n'));
  return laid.programme;
}
const chaptersOf = (list: string) => {
  const film = filmOf(list);
  const found = filmChaptersOf(film);
  return found.ok ? chapterLines(found.chapters) : found.faults;
};

test.each([
  ['0:12.5', 12_500],
  ['1:02:17', 3_737_000],
  ['75.25', 75_250],
  [' 0:00 ', 0],
  ['100:00', undefined],
  ['0:7', undefined],
  ['0:61', undefined],
  ['1:2:03', undefined],
  ['00:00:10:12', undefined],
  ['-3', undefined],
  ['', undefined],
  ['1e3', undefined],
])('"%s" is %s ms into a clip', (text, ms) => {
  expect(clipMs(text)).toBe(ms);
});

test('columns stand in any order, a title may hold commas and marks, line ends are of either kind', () => {
  expect(
    readCutList('\uFEFFin,out,clip,title\r\n0:01,0:02.5,a.mp4,"The ""old"" sill, out"\r\n\r\n3,4,b.mp4\n'),
  ).toEqual({
    ok: true,
    cuts: [
      { clip: 'a.mp4', inMs: 1000, outMs: 2500, title: 'The "old" sill, out', line: 2 },
      { clip: 'b.mp4', inMs: 3000, outMs: 4000, line: 4 },
    ],
  });
});

test('every fault is told with its line', () => {
  expect(readCutList('clip,in,out\n,0,1\na.mp4,5,2\nb.mp4,00:00:10:12,soon\n')).toEqual({
    ok: false,
    faults: [
      'line 2: clip: no name',
      'line 3: out is not after in',
      'line 4: in: expected a time in the clip such as 0:12.5 or 1:02:17, got "00:00:10:12"; frames have no rate here',
      'line 4: out: expected a time in the clip such as 0:12.5 or 1:02:17, got "soon"',
    ],
  });
  expect(readCutList('file,from\n')).toMatchObject({
    ok: false,
    faults: [expect.stringContaining('clip, in, out')],
  });
  expect(readCutList('')).toMatchObject({ ok: false });
  expect(readCutList('clip,in,out\n')).toEqual({ ok: false, faults: ['it holds no cut'] });
});

// csv-parse is a strict reader of RFC 4180 that is not ours.
test('what another program writes is read as another reader reads it', () => {
  const cell = fc.oneof(fc.string(), hostileWords);
  const quoted = (text: string) => `"${text.replaceAll('"', '""')}"`;
  fc.assert(
    fc.property(fc.array(fc.array(cell, { minLength: 2, maxLength: 4 }), { minLength: 1 }), (rows) => {
      const text = rows.map((row) => row.map(quoted).join(',')).join('\r\n');
      expect(readDelimited(text).map(({ cells }) => cells)).toEqual(parse(text, { relaxColumnCount: true }));
    }),
  );
});

test('a clip is known by its file or by its memo; what cannot be is told', () => {
  const film = filmOf('clip,in,out\nWAGON-1.m4a,0,5\nm1,6,8\nmemo 1,10,12\nother.mp4,0,3\n');
  expect(film.stretches.map(({ memo, startMs }) => [memo?.id, startMs])).toEqual([
    ['m1', 0],
    ['m1', 5000],
    ['m1', 7000],
    [undefined, 9000],
  ]);
  expect([film.lengthMs, film.unknown]).toEqual([12_000, ['other.mp4']]);
  const faults = (list: string, memos = MEMOS) => {
    const read = readCutList(list);
    const laid = read.ok ? programmeOf(read.cuts, memos) : read;
    return laid.ok ? [] : laid.faults;
  };
  expect(faults('clip,in,out\nwagon-1.m4a,0,200\n')).toEqual([
    'line 2: wagon-1.m4a ends at 02:14, before the out point',
  ]);
  expect(faults('clip,in,out\nwednesday.txt,0,2\n')).toEqual([
    'line 2: wednesday.txt was written, it is no clip',
  ]);
  expect(faults('clip,in,out\nwagon-1.m4a,0,2\n', [MEMO_1, { ...MEMO_1, id: 'm9' }])).toEqual([
    'line 2: wagon-1.m4a is the name of m1 and m9: write one of these',
  ]);
});

test('only the recordings that a list names are asked for', () => {
  const read = readCutList('clip,in,out\nWAGON-1.m4a,0,5\nother.mp4,0,1\n');
  if (!read.ok) throw new Error('it can be read');
  expect(meantBy(read.cuts, [MEMO_2, MEMO_1]).map(({ id }) => id)).toEqual(['m1']);
});

test('clip time becomes programme time only where a stretch holds it', () => {
  const [first, second] = filmOf('clip,in,out\nm1,0:30,0:40\nm1,0:10,0:25\n').stretches;
  if (!first || !second) throw new Error('two stretches');
  const said = { startSeconds: 14, endSeconds: 19 };
  expect([isHeardIn(first, said), isHeardIn(second, said)]).toEqual([false, true]);
  expect(programmeTime(heardAtMs(second, said))).toBe('0:14');
  expect(heardAtMs(second, { startSeconds: 8, endSeconds: 13 })).toBe(10_000);
  expect(isHeardIn(second, {})).toBe(false);
  expect([0, 59_999, 3_599_000, 3_600_000].map(programmeTime)).toEqual(['0:00', '0:59', '59:59', '1:00:00']);
});

test('chapters are called after what is told in their stretches, or as the person says', () => {
  expect(
    chaptersOf(
      'clip,in,out,title\nm1,0:13,0:19\nm1,1:00,1:20\nm1,0:00,0:12,Measuring\nm1,0:26,0:36,"Roof, at last"\n',
    ),
  ).toBe('0:00 Old floor taken out\n0:26 Measuring\n0:38 Roof, at last\n');
});

test('a proposed chapter that is too short goes with its neighbour; one that a person named is refused', () => {
  const list = (title: string) =>
    `clip,in,out,title\nm1,0:14,0:18,\nm1,0:00,0:12,Measuring\nother.mp4,0,3,${title}\nm1,1:00,1:20,Roof\nm1,0:26,0:46,Flue\n`;
  expect(chaptersOf(list(''))).toBe('0:00 Measuring\n0:19 Roof\n0:39 Flue\n');
  expect(chaptersOf(list('Blink'))).toEqual(['“Blink” at 0:16 lasts 3 s, less than 10 s']);
});

test('fewer than three are refused', () => {
  expect(chaptersOf('clip,in,out\nm1,0,60\n')).toEqual([
    '1 of at least 3 chapters come of it: name more in a column title',
  ]);
});

test.each<[string, readonly FilmChapter[], string]>([
  [
    'a late first one',
    [0, 20, 40].map((s) => ({ startMs: s * 1000 + 1000, title: 'x' })),
    'the first chapter is not at 0:00',
  ],
  ['one of nine seconds', [0, 20, 29].map((s) => ({ startMs: s * 1000, title: 'x' })), 'lasts 9 s'],
  ['one that goes back', [0, 40, 20].map((s) => ({ startMs: s * 1000, title: 'x' })), 'lasts -20 s'],
  ['a last one too near the end', [0, 20, 55].map((s) => ({ startMs: s * 1000, title: 'x' })), 'lasts 5 s'],
])('the rules refuse %s', (_name, chapters, fault) => {
  expect(chapterFaults(chapters, 60_000).join('\n')).toContain(fault);
});

const anyCut = fc.record({
  clip: fc.constantFrom('wagon-1.m4a', 'm1', 'other.mp4'),
  from: fc.integer({ min: 0, max: 100_000 }),
  length: fc.integer({ min: 1, max: 30_000 }),
  title: fc.option(hostileWords, { nil: undefined }),
});

test('whatever is cut, a list either keeps every rule or is refused with a reason', () => {
  fc.assert(
    fc.property(fc.array(anyCut, { minLength: 1, maxLength: 12 }), (cuts) => {
      const film = filmOf(
        `clip,in,out,title\n${cuts
          .map(
            ({ clip, from, length, title = '' }) =>
              `${clip},${from / 1000},${(from + length) / 1000},"${title.replaceAll('"', '""')}"`,
          )
          .join('\n')}`,
      );
      const found = filmChaptersOf(film);
      if (!found.ok) {
        expect(found.faults.join()).not.toBe('');
        return;
      }
      const text = chapterLines(found.chapters);
      const stamps = text
        .trimEnd()
        .split('\n')
        .map((line) => /^(\d+):(\d\d) \S/.exec(line));
      const seconds = stamps.map((parts) => Number(parts?.[1]) * 60 + Number(parts?.[2]));
      expect(seconds.length).toBeGreaterThanOrEqual(3);
      expect(seconds[0]).toBe(0);
      [...seconds.slice(1), Math.floor(film.lengthMs / 1000)].forEach((end, index) => {
        expect(end - (seconds[index] ?? 0)).toBeGreaterThanOrEqual(10);
      });
      const vtt = new WebVTTParser().parse(vttChaptersOf(chapterSpans(found.chapters, film)), 'chapters');
      expect(vtt.errors).toEqual([]);
      expect(vtt.cues).toHaveLength(seconds.length);
    }),
    { numRuns: 300 },
  );
});

test('a published film is put right at its own times, with the clip beside them', () => {
  const film = filmOf('clip,in,out\nother.mp4,0,100\nm1,0:02,0:20\nm1,0:00,0:05\n');
  expect(
    filmCorrectionsPage(film, FIGURES, [DECIDED], PROJECT),
  ).toBe(`# Corrections to a published film: Bakery wagon

2:03 long. Times are those of the film.

## No longer so

- at 1:40, 2:00: **oven ledge height**, heard “the oven ledge is at 905”, now 915 mm (≈ 36 in), said on 2026-02-04 (memo 2)
  - to write under the film: At 1:40, 2:00 I say 905 mm (≈ 35 5/8 in) for the oven ledge height; it is 915 mm (≈ 36 in).
  - why: the speaker says that it was changed because the floor is thicker
  - clip: wagon-1.m4a, memo 1, 00:02
`);
});

test('a figure that was cut out of the film needs no correction', () => {
  const page = filmCorrectionsPage(filmOf('clip,in,out\nm1,0:14,0:20\n'), FIGURES, [DECIDED], PROJECT);
  expect(page).toContain('Every figure that is heard in it still holds');
});

test('no hostile word changes the structure of the corrections', () => {
  const film = filmOf('clip,in,out\nm1,0:02,0:20\n');
  const pageWith = (words: string) => {
    const source = { ...DECIDED.was.source, memoId: 'm1', recordedAt: MEMO_1.recordedAt, quote: words };
    const memo: MemoView = {
      ...MEMO_1,
      source: { ...MEMO_1.source, name: words },
      notes: { ...MEMO_1.notes, figures: MEMO_1.notes.figures.map((note) => ({ ...note, quote: words })) },
    };
    return filmCorrectionsPage(
      { ...film, stretches: film.stretches.map((stretch) => ({ ...stretch, memo })) },
      FIGURES.map((figure) => ({ ...figure, item: words })),
      [{ ...DECIDED, item: words, why: words, was: { ...DECIDED.was, source } }],
      { ...PROJECT, name: words },
    );
  };
  const shapeOf = (markdown: string) => {
    const walker = new Parser().parse(markdown).walker();
    const shape: string[] = [];
    for (let step = walker.next(); step; step = walker.next())
      if (!['text', 'softbreak'].includes(step.node.type))
        shape.push(`${step.entering ? '+' : '-'}${step.node.type}`);
    return shape.join(' ');
  };
  const plain = pageWith('plain');
  expect(plain).toContain('to write under the film');
  fc.assert(
    fc.property(hostileWords, (words) => {
      expect(shapeOf(pageWith(words))).toBe(shapeOf(plain));
      expect(pageWith(words)).not.toMatch(/[^\P{Cc}\n]|[\u202a-\u202e]/u);
    }),
    { numRuns: 200 },
  );
});
