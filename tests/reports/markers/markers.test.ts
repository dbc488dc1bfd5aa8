import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { MemoView } from '../../../src/model/views.ts';
import { type ClipToMark, editMarkersOf } from '../../../src/reports/markers/edit-markers.ts';
import {
  type FrameRate,
  frameAt,
  measuredRate,
  rateOf,
  readRate,
  standardRate,
} from '../../../src/reports/markers/frame-rates.ts';
import { oneLine } from '../../../src/reports/words.ts';
import { framesPerSecond } from '../../../src/speech/media/frame-rate.ts';
import { MEMO_1, MEMO_2 } from '../../kit/bakery-wagon.ts';
import { hostileWords } from '../../kit/hostile-words.ts';

const RATES: readonly (readonly [string, FrameRate])[] = [
  ['23.976', { numerator: 24_000, denominator: 1001 }],
  ['25', { numerator: 25, denominator: 1 }],
  ['29.97', { numerator: 30_000, denominator: 1001 }],
  ['50', { numerator: 50, denominator: 1 }],
];

test.each(RATES)('%s frames a second is read exactly', (text, rate) => {
  expect(readRate(text)).toEqual(rate);
  expect(standardRate(rateOf(rate))).toEqual(rate);
});

test.each(['', 'x', '0', '-25', '1/0', '25fps', '1e3', '99999'])('"%s" is no rate', (text) => {
  expect(readRate(text)).toBeUndefined();
});

test('a rate near no usual one stays as it was measured', () => {
  expect(standardRate(29.4)).toBeUndefined();
  expect(measuredRate(29.4)).toEqual({ numerator: 29_400, denominator: 1000 });
  expect(measuredRate(23.98)).toEqual({ numerator: 24_000, denominator: 1001 });
});

// The frame's own time, worked out apart in floating point and rounded as the recogniser's times are.
test.each(RATES)(
  'at %s every frame of two hours is met at its edge, in its middle and at its end',
  (_text, rate) => {
    const perFrame = rate.denominator / rate.numerator;
    const missed: number[] = [];
    for (let frame = 0; frame < 7200 * rateOf(rate); frame += 1) {
      const edge = Math.round(frame * perFrame * 1e6) / 1e6;
      const others = [(frame + 0.5) * perFrame, (frame + 1) * perFrame - 0.00001];
      if ([edge, ...others].some((seconds) => frameAt(seconds, rate) !== frame)) missed.push(frame);
    }
    expect(missed).toEqual([]);
  },
);

test.each(RATES)('a recording of %s frames a second tells that rate', async (text, rate) => {
  const file = `tests/speech/fixtures/picture-${text.replace('.', '')}.mp4`;
  expect(measuredRate((await framesPerSecond(file)) ?? 0)).toEqual(rate);
});

test('a recording without a picture tells none', async () => {
  expect(await framesPerSecond('tests/speech/fixtures/memo.m4a')).toBeUndefined();
  expect(await framesPerSecond('tests/speech/fixtures/missing.mp4')).toBeUndefined();
});

/**
 * Fields of each schema by its name and version. Source: OpenTimelineIO documentation, "Serialized Data (Fields Only)".
 */
const FIELDS: Readonly<Record<string, readonly string[]>> = {
  'Timeline.1': ['global_start_time', 'metadata', 'name', 'tracks'],
  'Stack.1': ['children', 'effects', 'enabled', 'markers', 'metadata', 'name', 'source_range'],
  'Track.1': ['children', 'effects', 'enabled', 'kind', 'markers', 'metadata', 'name', 'source_range'],
  'Clip.2': [
    'active_media_reference_key',
    'effects',
    'enabled',
    'markers',
    'media_references',
    'metadata',
    'name',
    'source_range',
  ],
  'ExternalReference.1': ['available_image_bounds', 'available_range', 'metadata', 'name', 'target_url'],
  'Marker.2': ['color', 'comment', 'marked_range', 'metadata', 'name'],
  'TimeRange.1': ['duration', 'start_time'],
  'RationalTime.1': ['rate', 'value'],
};

interface Node {
  readonly OTIO_SCHEMA?: string;
  readonly [field: string]: unknown;
}

/** Every object of a file that names a schema. */
function objectsIn(value: unknown): readonly Node[] {
  if (Array.isArray(value)) return value.flatMap(objectsIn);
  if (typeof value !== 'object' || value === null) return [];
  const node = value as Node;
  return [...(node.OTIO_SCHEMA ? [node] : []), ...Object.values(node).flatMap(objectsIn)];
}

function checkedFile(text: string): readonly Node[] {
  const objects = objectsIn(JSON.parse(text));
  for (const { OTIO_SCHEMA = '', ...fields } of objects) {
    expect(Object.keys(fields).sort(), OTIO_SCHEMA).toEqual(FIELDS[OTIO_SCHEMA]);
  }
  return objects;
}
const ofSchema = (objects: readonly Node[], schema: string) =>
  objects.filter(({ OTIO_SCHEMA }) => OTIO_SCHEMA === schema);
/** The only object of a schema in a file. */
function onlyOf(objects: readonly Node[], schema: string): Node {
  const [first, ...more] = ofSchema(objects, schema);
  if (!first || more.length > 0) throw new Error(`expected one ${schema}`);
  return first;
}
type TimeRange = { start_time: { value: number; rate: number }; duration: { value: number; rate: number } };

const clip = (rate: FrameRate, memo: MemoView = MEMO_1, hasPicture = true): ClipToMark => ({
  memo,
  rate,
  hasPicture,
});

test.each(RATES)('at %s every note has its marker at the frame where its words begin', (_text, rate) => {
  const objects = checkedFile(editMarkersOf('Wagon', [clip(rate)]));
  const markers = ofSchema(objects, 'Marker.2').map(({ name, comment, color, marked_range }) => {
    const { start_time, duration } = marked_range as TimeRange;
    expect([start_time.rate, duration.rate]).toEqual([rateOf(rate), rateOf(rate)]);
    return [name, comment, color, start_time.value, start_time.value + duration.value];
  });
  const frame = (seconds: number) => Math.floor((seconds * rate.numerator) / rate.denominator + 1e-4);
  expect(markers).toEqual([
    ['figure: Proving shelf depth: 640 mm', '640 deep', 'CYAN', frame(2), frame(7.5)],
    ['figure: Oven ledge height: 905 mm', 'the oven ledge is at 905', 'CYAN', frame(2), frame(7.5)],
    ['figure: Oven glass width: 560 mm', 'the oven glass at 560 wide', 'CYAN', frame(8), frame(13)],
    ['done: Old floor taken out', 'The old floor is out', 'BLUE', frame(14), frame(19)],
    ['promise: Show the flue', 'I will show you the flue', 'PURPLE', frame(20), frame(26)],
    ['task: Seal the roof', 'I need to seal the roof once the primer is dry', 'YELLOW', frame(27), frame(31)],
  ]);
  const reference = onlyOf(objects, 'ExternalReference.1');
  expect(reference.target_url).toBe('./wagon-1.m4a');
  expect((reference.available_range as TimeRange).duration.value).toBe(frame(134));
});

test('one clip for each recording: those with a picture on a track of their own, each at its own rate', () => {
  const film = [clip(RATES[0]?.[1] as FrameRate), clip(RATES[3]?.[1] as FrameRate, { ...MEMO_1, id: 'm3' })];
  const objects = checkedFile(
    editMarkersOf('Wagon', [...film, clip(RATES[1]?.[1] as FrameRate, { ...MEMO_1, id: 'm4' }, false)]),
  );
  expect(
    ofSchema(objects, 'Track.1').map(({ kind, children }) => [kind, (children as unknown[]).length]),
  ).toEqual([
    ['Video', 2],
    ['Audio', 1],
  ]);
  expect(
    ofSchema(objects, 'Clip.2').map(({ source_range }) =>
      (source_range as TimeRange).start_time.rate.toFixed(3),
    ),
  ).toEqual(['23.976', '50.000', '25.000']);
});

test('whole times are written with their point, as numbers of the format are', () => {
  const text = editMarkersOf('Wagon', [clip({ numerator: 25, denominator: 1 })]);
  expect(text).toContain('"rate": 25.0,\n');
  expect(text).not.toMatch(/"(?:rate|value)": \d+,?$/m);
});

test('what was written has no clip time and no marker', () => {
  const written = { ...MEMO_2, source: { ...MEMO_2.source, kind: 'recording', durationSeconds: 3 } } as const;
  expect(
    ofSchema(checkedFile(editMarkersOf('x', [clip(RATES[1]?.[1] as FrameRate, written)])), 'Marker.2'),
  ).toEqual([]);
});

test('hostile words stay words: no other field, no path out of the folder, every marker inside its clip', () => {
  fc.assert(
    fc.property(
      hostileWords,
      fc.constantFrom(...RATES),
      fc.double({ min: 0, max: 300, noNaN: true }),
      (words, [, rate], at) => {
        const { notes } = MEMO_1;
        const memo: MemoView = {
          ...MEMO_1,
          source: { ...MEMO_1.source, name: words },
          notes: {
            ...notes,
            figures: notes.figures.map((note) => ({
              ...note,
              item: words,
              quote: words,
              startSeconds: at,
              endSeconds: at,
            })),
            tasks: notes.tasks.map((note) => ({ ...note, gist: words, quote: words })),
          },
        };
        const text = editMarkersOf(words, [clip(rate, memo)]);
        expect(text).not.toMatch(/[^\P{Cc}\n]/u);
        const objects = checkedFile(text);
        const reference = onlyOf(objects, 'ExternalReference.1');
        const folder = 'file:///footage/';
        const address = new URL(String(reference.target_url), folder).href;
        expect(address.startsWith(folder) && !address.slice(folder.length).includes('/')).toBe(true);
        expect(decodeURIComponent(address.slice(folder.length))).toBe(
          /^\.*$/.test(oneLine(words)) ? 'm1' : oneLine(words),
        );
        const total = (reference.available_range as TimeRange).duration.value;
        for (const { marked_range, comment } of ofSchema(objects, 'Marker.2')) {
          const { start_time, duration } = marked_range as TimeRange;
          expect(duration.value).toBeGreaterThanOrEqual(1);
          expect(start_time.value + duration.value).toBeLessThanOrEqual(total);
          expect(comment).toBe(oneLine(String(comment)));
        }
      },
    ),
    { numRuns: 200 },
  );
});
