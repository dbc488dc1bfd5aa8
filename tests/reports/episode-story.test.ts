import { expect, test } from 'vitest';
import { spanView } from '../../src/model/day-views.ts';
import { findingViews, projectInfo, standingFigures } from '../../src/model/project-views.ts';
import type { MemoSource, ProblemView, SpanView } from '../../src/model/views.ts';
import type { Programme, PublishedFilm } from '../../src/reports/cut/programme.ts';
import { episodePage } from '../../src/reports/episode.ts';
import { shownBy, titleWords } from '../../src/reports/episode-beats.ts';
import { beforeAfterEntries, correctionEntries } from '../../src/reports/episode-figures.ts';
import { findingsText } from '../../src/reports/finding-text.ts';
import { isErrand } from '../../src/reports/next-steps.ts';
import { DAY_1, DECIDED, FIGURES, MEMO_1, PROJECT, WEEK } from '../kit/bakery-wagon.ts';
import { ToldStory } from '../kit/told-story.ts';

test.each([
  ['I decided to leave the trim off, because it gives us room', 'leave the trim off'],
  ["We've decided to go with the two pack rather than the oil", 'go with the two pack rather than the oil'],
  ['Second coat of varnish on at half past eight this morning', 'Second coat of varnish on'],
  ['Stripped out the old floor today', 'Stripped out the old floor'],
  ['Larch cladding', 'Larch cladding'],
  ['The flue runs since Monday', 'The flue runs'],
  // Nothing else would be left.
  ['Today', 'Today'],
  ['Because', 'Because'],
])('a title of "%s" is "%s"', (gist, title) => {
  expect(titleWords(gist)).toBe(title);
});

test.each([
  'Buy a sheet of ply',
  'Order the glass',
  'Need to get some more clamps',
  'Pick up the gutters from the yard',
  'get two new fuses',
  'Re-order the hinges',
])('"%s" is an errand', (gist) => expect(isErrand({ gist })).toBe(true));
test.each([
  'Get the heater going',
  'Get the floor in',
  'Put the shelves in order',
  'Ring about the order',
  'Pick the best board',
  'Get a window cut in the end wall',
])('"%s" is work', (gist) => expect(isErrand({ gist })).toBe(false));

test.each([
  ['bench.m4a', 'recording', 'sound'],
  ['BENCH.WAV', 'recording', 'sound'],
  ['bench.mp4', 'recording', 'picture'],
  ['bench.mov', 'recording', 'picture'],
  ['mp3.txt', 'text', 'text'],
] as const)('%s, a %s, is shown by %s', (name, kind, by) => {
  expect(shownBy({ source: { ...MEMO_1.source, name, kind } })).toBe(by);
});

test('what was next when the talk stopped is the goal of the days after it', () => {
  const story = new ToldStory().hear(
    'I need to fit the hatch. I need to sand the ledge. Sanded the step today.',
    'Fitted the hatch this morning.',
  );
  const { rows } = story.project;
  const page = episodePage(
    spanView(rows, '2026-02-02', '2026-02-02'),
    projectInfo(rows),
    standingFigures(rows),
  );
  expect(page).toContain(
    '## Goal, and whether it was reached\n\n- Fit the hatch (memo 1): reached (memo 2)\n- Sand the ledge (memo 1): not reached\n',
  );
  expect(page).toContain('- last time, on Sunday 2026-02-01: Sanded the step today (memo 1)\n');
  expect(page).toContain('- next was to be: Fit the hatch (memo 1); Sand the ledge (memo 1)\n');
});

test('a slip that nobody settled tells what stands by now, where that is neither side of it', () => {
  const story = new ToldStory().hear(
    'The ledge is 905 millimetres high.',
    'The ledge is 950 millimetres high.',
    'The ledge is 912 millimetres high, I measured it again.',
  );
  const page = () => findingsText(findingViews(story.project.rows, { status: 'open' }));
  expect(page()).toMatch(/said {5}950 mm .*\n {2}stood {4}905 mm .*\n {2}stands {3}912 mm {3}memo 3/);
  const early = new ToldStory().hear(
    'The ledge is 905 millimetres high.',
    'The ledge is 950 millimetres high.',
  );
  expect(findingsText(findingViews(early.project.rows))).toMatch(/said {5}950 mm .*\n {2}stands {3}905 mm/);
});

test('the first days of all have no last time', () => {
  const { rows } = new ToldStory().hear('Sanded the step today.').project;
  expect(spanView(rows, '2026-02-01', '2026-02-01').last).toBeUndefined();
});

const recording: MemoSource = { ...MEMO_1.source, name: 'leak.mp4' };
const leak: ProblemView = {
  id: 'm0.p1',
  gist: 'the roof leaks',
  status: 'solved',
  source: { memoId: 'm0', recordedAt: MEMO_1.recordedAt, quote: 'it drips', startSeconds: 5 },
  solvedBy: { memoId: 'm1', recordedAt: MEMO_1.recordedAt, quote: 'dry now', startSeconds: 14 },
};
const span: SpanView = { ...WEEK, days: [DAY_1], problems: [leak], earlier: { m0: recording } };

test('a snag and its mending are a pair where both are on a recording, each with its file', () => {
  expect(beforeAfterEntries(span)).toEqual([
    '- The roof leaks: “it drips” [leak.mp4 at 00:05], then “dry now” [wagon-1.m4a at 00:14]',
  ]);
  const { startSeconds: _start, ...written } = leak.source;
  expect(beforeAfterEntries({ ...span, problems: [{ ...leak, source: written }] })).toEqual([]);
});

test('a correction names the films in which the older figure is heard, with its time there', () => {
  const was = {
    ...DECIDED.was,
    source: { ...leak.source, memoId: 'm0', quote: 'it is 905', startSeconds: 5 },
  };
  const corrected = { ...span, from: '2026-02-04', days: [{ ...DAY_1, findings: [{ ...DECIDED, was }] }] };
  const memo = { ...MEMO_1, id: 'm0', source: recording };
  const programme: Programme = {
    stretches: [
      { cut: { line: 2, clip: 'b.mp4', inMs: 0, outMs: 60_000 }, startMs: 0 },
      { cut: { line: 3, clip: 'leak.mp4', inMs: 2000, outMs: 9000 }, startMs: 60_000, memo },
    ],
    lengthMs: 67_000,
    unknown: [],
  };
  const linesWith = (films: readonly PublishedFilm[]) => correctionEntries(corrected, 'metric', films)[0];
  expect(linesWith([{ name: 'harbour-week', programme }])).toContain(
    '\n  - in the film: harbour-week at 1:03\n',
  );
  expect(linesWith([{ name: 'x', programme: { ...programme, stretches: [] } }])).toContain(
    '\n  - heard in none of the films that were named\n',
  );
  expect(linesWith([])).not.toContain('film');
});

test('what was only written is no correction of a film', () => {
  const { startSeconds: _none, ...written } = leak.source;
  const was = { ...DECIDED.was, source: written };
  const days = [{ ...DAY_1, memos: [], findings: [{ ...DECIDED, was }] }];
  expect(correctionEntries({ ...span, from: '2026-02-04', days }, 'metric')).toEqual([]);
});

test('the setback tells how it ended', () => {
  const [day] = [DAY_1];
  const told = {
    kind: 'problem' as const,
    id: 'm1.p1',
    quote: 'The old floor is out',
    span: { start: 0, end: 5 },
    startSeconds: 14,
    gist: 'a joist is rotten',
  };
  const memo = { ...MEMO_1, notes: { ...MEMO_1.notes, problems: [told] } };
  const problem: ProblemView = { ...leak, id: 'm1.p1', gist: told.gist };
  const pageWith = (one: ProblemView) =>
    episodePage({ ...span, days: [{ ...day, memos: [memo] }], problems: [one] }, PROJECT, FIGURES);
  expect(pageWith(problem)).toContain(
    '## The setback\n\n- A joist is rotten (memo 1, 00:14) [wagon-1.m4a at 00:14]\n  - as said: “The old floor is out”\n  - put right on 2026-02-02 (memo 1, 00:14)\n',
  );
});
