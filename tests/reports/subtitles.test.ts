import fc from 'fast-check';
import { expect, test } from 'vitest';
import { subtitlesOf } from '../../src/reports/subtitles.ts';

test('one cue for a short utterance, two lines at most, hours always, three decimals', () => {
  expect(
    subtitlesOf([
      {
        startSeconds: 2,
        endSeconds: 7.5,
        text: 'The proving shelf is 640 deep, and the oven ledge is at 905.',
      },
      { startSeconds: 3661.25, endSeconds: 3663, text: 'Tom & <Anna> --> say so.' },
    ]),
  ).toBe(`WEBVTT

00:00:02.000 --> 00:00:07.500
The proving shelf is 640 deep, and the
oven ledge is at 905.

01:01:01.250 --> 01:01:03.000
Tom &amp; &lt;Anna&gt; --&gt; say so.
`);
});

test('a long utterance is cut into cues that share its time by their characters', () => {
  const text = 'twenty letters in all '.repeat(8).trim();
  const cues = subtitlesOf([{ startSeconds: 0, endSeconds: 12, text }])
    .split('\n\n')
    .slice(1);
  expect(cues).toHaveLength(3);
  expect(cues[0]).toMatch(/^00:00:00\.000 --> /);
  expect(cues[2]).toContain(' --> 00:00:12.000\n');
});

test('no recording, no cue', () => {
  expect(subtitlesOf([])).toBe('WEBVTT\n');
  expect(subtitlesOf([{ startSeconds: 1, endSeconds: 2, text: ' ' }])).toBe('WEBVTT\n');
});

// Rules of W3C WebVTT, section 4.1: one header line, cues end after they start, starts never go back, no "-->" and no
// bare "<" or "&" in the text.
test('whatever was heard, the file keeps the rules of the format', () => {
  const utterance = fc.record({ gap: fc.nat(5), length: fc.nat(15), text: fc.string({ maxLength: 200 }) });
  fc.assert(
    fc.property(fc.array(utterance, { maxLength: 6 }), (heard) => {
      let clock = 0;
      const file = subtitlesOf(
        heard.map(({ gap, length, text }) => {
          const startSeconds = clock + gap / 3;
          clock = startSeconds + length / 3;
          return { startSeconds, endSeconds: clock, text };
        }),
      );
      const [head, ...cues] = file.split('\n\n');
      expect(head?.trim()).toBe('WEBVTT');
      let last = '';
      for (const cue of cues) {
        const [times = '', ...lines] = cue.trimEnd().split('\n');
        const [, start = '', end = ''] =
          /^(\d\d:\d\d:\d\d\.\d{3}) --> (\d\d:\d\d:\d\d\.\d{3})$/.exec(times) ?? [];
        expect(start < end && start >= last).toBe(true);
        last = start;
        expect(lines.length).toBeGreaterThan(0);
        for (const line of lines) expect(line).not.toMatch(/-->|<|&(?!amp;|lt;|gt;)/);
      }
    }),
  );
});
