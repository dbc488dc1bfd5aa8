import fc from 'fast-check';
import { parseText } from 'media-captions';
import { expect, test } from 'vitest';
import { WebVTTParser } from 'webvtt-parser';
import ENTITIES from 'webvtt-parser/html-entities.json' with { type: 'json' };
import type { Utterance } from '../../../src/model/views.ts';
import { clipChaptersOf } from '../../../src/reports/subtitles/clip-chapters.ts';
import { CHARACTERS_PER_SECOND, cuesOf, readingSpeed, tooFast } from '../../../src/reports/subtitles/cues.ts';
import { LINE_LENGTH, lengthOf } from '../../../src/reports/subtitles/lines.ts';
import { subRipOf } from '../../../src/reports/subtitles/subrip.ts';
import { vttChaptersOf, webVttOf } from '../../../src/reports/subtitles/webvtt.ts';
import { oneLine } from '../../../src/reports/words.ts';
import { MEMO_1 } from '../../kit/bakery-wagon.ts';
import { hostileWords } from '../../kit/hostile-words.ts';

const said = (startSeconds: number, endSeconds: number, text: string): Utterance => ({
  startSeconds,
  endSeconds,
  text,
});
/** What the W3C's own validator finds wrong, and what it reads. */
function validated(file: string, mode?: 'chapters') {
  const { cues, errors } = new WebVTTParser(ENTITIES).parse(file, mode);
  return { cues, errors: errors.map(({ message, line }) => `${line}: ${message}`) };
}

test('one cue for a short utterance, two lines at most, hours always, three decimals', () => {
  expect(
    webVttOf(
      cuesOf([
        said(2, 7.5, 'The proving shelf is 640 deep, and the oven ledge is at 905.'),
        said(3661.25, 3663, 'Tom & <Anna> --> say so.'),
      ]),
    ),
  ).toBe(`WEBVTT

00:00:02.000 --> 00:00:07.500
The proving shelf is 640 deep,
and the oven ledge is at 905.

01:01:01.250 --> 01:01:03.000
Tom &amp; &lt;Anna&gt; --&gt; say so.
`);
});

test('the same as SubRip: counters, commas, and nothing that a player takes for a tag', () => {
  expect(subRipOf(cuesOf([said(0, 2, 'It is 12 wide.'), said(3, 5, 'Fit <b> at {x} --> here.')]))).toBe(`1
00:00:00,000 --> 00:00:02,000
It is 12 wide.

2
00:00:03,000 --> 00:00:05,000
Fit <\u2060b> at {\u2060x} --\u2060> here.
`);
});

test('a long utterance is cut at its sentences, then evenly, and its time is shared out by characters', () => {
  const cues = cuesOf([
    said(
      10,
      25,
      'The sill came out in one piece. I scarfed a new end on with a slope of one in eight, glued it and put four clamps on.',
    ),
  ]);
  expect(cues.map(({ lines }) => lines)).toEqual([
    ['The sill came out in one piece.'],
    ['I scarfed a new end', 'on with a slope of one in eight,'],
    ['glued it and put four clamps on.'],
  ]);
  expect(cues[0]?.startMs).toBe(10_000);
  expect(cues.at(-1)?.endMs).toBe(25_000);
});

test('a word on its own stands for a second, and hangs on for no more than that', () => {
  expect(cuesOf([said(4, 4.3, 'Right.'), said(9, 11, 'Now the other one.')])).toEqual([
    { startMs: 4000, endMs: 5000, lines: ['Right.'] },
    { startMs: 9000, endMs: 11_000, lines: ['Now the other one.'] },
  ]);
});

test('a word without a second of its own is shown with the words beside it', () => {
  expect(cuesOf([said(4, 4.3, 'Right.'), said(4.4, 7, 'Now the other one.')])).toEqual([
    { startMs: 4000, endMs: 7000, lines: ['Right. Now the other one.'] },
  ]);
});

test('fast words hang on so that they can be read; what cannot be is told and not cut', () => {
  const text = 'seventeen at the front and seventy at the back';
  const [slow] = cuesOf([said(0, 1.6, text)]);
  expect(slow && readingSpeed(slow)).toBeLessThanOrEqual(CHARACTERS_PER_SECOND);
  const rushed = cuesOf([said(0, 1, text.repeat(3)), said(1.1, 3, 'and so on')]);
  expect(tooFast(rushed).length).toBeGreaterThan(0);
  expect(rushed.flatMap(({ lines }) => lines).join(' ')).toBe(`${text.repeat(3)} and so on`);
});

test('no recording, no cue', () => {
  expect(webVttOf(cuesOf([]))).toBe('WEBVTT\n');
  expect(subRipOf(cuesOf([said(1, 2, ' ')]))).toBe('');
});

const heard = fc
  .array(
    fc.record({
      gap: fc.nat(30),
      length: fc.nat(150),
      text: fc.oneof(hostileWords, fc.lorem({ maxCount: 30 })),
    }),
    { maxLength: 7 },
  )
  .map((parts) => {
    let clock = 0;
    return parts.map(({ gap, length, text }) => {
      const startSeconds = clock + gap / 10;
      clock = startSeconds + length / 10;
      return said(startSeconds, clock, text);
    });
  });
const msOf = (seconds: number) => Math.round(seconds * 1000);
const letters = (text: string) => oneLine(text).replace(/\s/g, '');

test('whatever was heard: 1 to 7 seconds, none over another, two lines of 42 characters, and every word', () => {
  fc.assert(
    fc.property(heard, (utterances) => {
      const cues = cuesOf(utterances);
      let free = 0;
      for (const { startMs, endMs, lines } of cues) {
        expect(startMs).toBeGreaterThanOrEqual(free);
        expect(endMs - startMs).toBeGreaterThanOrEqual(1000);
        expect(endMs - startMs).toBeLessThanOrEqual(7000);
        expect([1, 2]).toContain(lines.length);
        for (const line of lines) expect(lengthOf(line)).toBeLessThanOrEqual(LINE_LENGTH);
        free = endMs;
      }
      const shown = cues.flatMap(({ lines }) => lines).join('');
      // Each by itself: what an unended escape sequence swallows ends with its utterance.
      expect(letters(shown)).toBe(utterances.map(({ text }) => letters(text)).join(''));
    }),
    { numRuns: 300 },
  );
});

// The validator is the one that the W3C's group keeps: it names each breach of the specification.
test('whatever was heard, a WebVTT validator finds no fault and reads the same words', () => {
  fc.assert(
    fc.property(heard, (utterances) => {
      const cues = cuesOf(utterances);
      const { cues: read, errors } = validated(webVttOf(cues));
      expect(errors).toEqual([]);
      expect(read.map(({ startTime, endTime }) => [startTime, endTime].map(msOf))).toEqual(
        cues.map(({ startMs, endMs }) => [startMs, endMs]),
      );
      expect(
        read.map(({ tree }) =>
          tree.children.map(({ type, value }) => (type === 'text' ? value : '?')).join(''),
        ),
      ).toEqual(cues.map(({ lines }) => lines.join('\n')));
    }),
    { numRuns: 200 },
  );
});

test('whatever was heard, a SubRip parser reads the same times and the same words', async () => {
  await fc.assert(
    fc.asyncProperty(heard, async (utterances) => {
      const cues = cuesOf(utterances);
      const { cues: read, errors } = await parseText(subRipOf(cues), {
        type: 'srt',
        strict: false,
        errors: true,
      });
      expect(errors).toEqual([]);
      expect(read.map(({ startTime, endTime }) => [startTime, endTime].map(msOf))).toEqual(
        cues.map(({ startMs, endMs }) => [startMs, endMs]),
      );
      expect(read.map(({ text }) => letters(text.replaceAll('\u2060', '')))).toEqual(
        cues.map(({ lines }) => letters(lines.join('').replaceAll('\u2060', ''))),
      );
    }),
    { numRuns: 100 },
  );
});

test('chapters of a clip run from its start to its end and are called after what was told there', () => {
  const chapters = clipChaptersOf(MEMO_1);
  expect(chapters).toEqual([
    { startMs: 0, endMs: 20_000, title: 'Old floor taken out' },
    { startMs: 20_000, endMs: 134_000, title: 'Show the flue' },
  ]);
  const { cues, errors } = validated(vttChaptersOf(chapters), 'chapters');
  expect(errors).toEqual([]);
  expect(cues.map(({ text }) => text)).toEqual(['Old floor taken out', 'Show the flue']);
});

test('hostile titles stay titles', () => {
  fc.assert(
    fc.property(hostileWords, (words) => {
      const [done] = MEMO_1.notes.done;
      if (!done) throw new Error('the memo has something done');
      const memo = { ...MEMO_1, notes: { ...MEMO_1.notes, done: [{ ...done, gist: words }] } };
      const { cues, errors } = validated(vttChaptersOf(clipChaptersOf(memo)), 'chapters');
      expect(errors).toEqual([]);
      expect(cues).toHaveLength(2);
    }),
    { numRuns: 200 },
  );
});
