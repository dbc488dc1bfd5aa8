/** What is behind panels, and talk of places that hides nothing. */
import { expect, test } from 'vitest';
import type { HiddenNote } from '../../../src/language/notes.ts';
import { readMemo } from '../../../src/language/pipeline.ts';
import { recordsIn } from '../../kit/records.ts';

const hidden = (text: string) => recordsIn(text).filter((note): note is HiddenNote => note.kind === 'hidden');
const shown = ({ panel, what, service, shot }: HiddenNote) =>
  `${panel}: ${what} (${service})${shot ? ` ${shot}` : ''}`;

test.each([
  [
    "Behind the galley panel there's the twelve volt feed for the pump. It runs 120 up from the floor.",
    'galley panel: twelve volt feed for the pump (cable)',
  ],
  [
    'I ran the cold pipe under the sole along the port side and took a photo.',
    'sole: cold pipe (pipe) took a photo',
  ],
  [
    "There's a stud behind the plasterboard 600 in from the corner, photo 214.",
    'plasterboard: stud (timber) photo 214',
  ],
  ['Behind the headlining over the galley is the mast cable.', 'headlining: mast cable (cable)'],
  ['The gas pipe runs behind the cooker panel.', 'cooker panel: gas pipe (pipe)'],
  [
    'There are two hot water pipes and a loom buried in the bulkhead.',
    'bulkhead: hot water pipes and loom (cable)',
  ],
  [
    'The mast wire is boxed in behind the headlining, I filmed it.',
    'headlining: mast wire (cable) filmed it',
  ],
  ['Screwed a backing pad behind the trim panel for the grab rail.', 'trim panel: backing pad (timber)'],
  ["I've put noggins behind the plasterboard at 900 for the radiator.", 'plasterboard: noggins (timber)'],
  ["The galley panel is on. Behind it there's a water hose.", 'galley panel: water hose (pipe)'],
  [
    "Before I close this up: behind the bath panel there's the trap, the pump and a junction box.",
    'bath panel: trap and pump and junction box (pipe)',
  ],
  [
    'The water main comes up through the floor behind the kitchen plinth.',
    'kitchen plinth: water main (pipe)',
  ],
  ['I found a cable behind the plaster when I drilled it.', 'plaster: cable (cable)'],
  ["Galley panel. Behind the panel there's the mains feed.", 'galley panel: mains feed (cable)'],
  ['The hot water pipe runs under the tiles.', 'tiles: hot water pipe (pipe)'],
  ["Don't drill there, the ring main's behind that wall.", 'wall: ring main (cable)'],
  ["There's a cable running up behind the second stud from the left.", 'second stud: cable (cable)'],
  ['The cold pipe runs behind the stringer.', 'stringer: cold pipe (pipe)'],
  [
    'I ordered eight boards behind the galley panel. There is the feed for the bilge pump. I took a photo of it.',
    'galley panel: feed for the bilge pump (cable) took a photo of it',
  ],
])('"%s" tells what is hidden', (said, expected) => {
  expect(hidden(said).map(shown)).toEqual([expected]);
});

test.each([
  "I'll run the cable behind the lining tomorrow.",
  'The cat is behind the panel.',
  "We're behind schedule with the panel.",
  "There's a leak behind the shower wall.",
  "There's a gap behind the second stud.",
  'I put a bolt behind the stringer.',
  "There's nothing behind that panel.",
  'I think there might be a cable behind the wall.',
  'Is there a pipe behind the ply?',
  'We left the cable behind in the shop.',
  'The pipe behind the house is frozen.',
  'I drilled the sink drain in the wrong joist bay, now there is a hole in my floor.',
  'If there is a cable behind the lining I will find it.',
  'The cable goes behind the solar panel.',
  'Nothing wrong behind the panel, the wiring is fine.',
  'I dropped a screw behind the panel.',
  'I pulled the old cable out from behind the lining.',
  'There used to be a pipe in that wall.',
  'The pump is in the locker.',
  'I swept behind the galley panel. There is a switch I need to order.',

  "There's a joist behind every board.",
  'We need a stud behind the wall there.',
  'There should be a noggin behind the board.',
  'I hid a note behind the panel for whoever opens it next.',

  'The floor is 18 mil ply.',
])('"%s" tells of nothing hidden', (said) => {
  expect(hidden(said).map(shown)).toEqual([]);
});

test('one sentence may tell of two places', () => {
  const said =
    "There's a gas line behind the kitchen wall, 400 up, and a copper pipe behind the shower panel.";
  expect(hidden(said).map(shown)).toEqual([
    'kitchen wall: gas line (pipe)',
    'shower panel: copper pipe (pipe)',
  ]);
});

test('what the next sentence says of the place belongs to the words', () => {
  const [note] = hidden(
    "Behind the bed panel there's the solar cable. It runs 300 up from the floor. Then tea.",
  );
  expect(note?.quote).toBe("Behind the bed panel there's the solar cable. It runs 300 up from the floor");
});

test.each([
  ["Behind the galley panel there's the twelve volt feed for the pump. I need to cut the shelf.", []],
  ['The gas pipe runs behind the wardrobe lining.', []],
  [
    "Behind the galley panel there's a hose that leaks.",
    ["Behind the galley panel there's a hose that leaks"],
  ],
])('"%s" tells where a service runs, and of no trouble: %j', (said, problems) => {
  const { notes } = readMemo(said, { units: 'metric', recordedAt: '2026-03-02T17:00:00Z' });
  expect(notes.problems.map(({ gist }) => gist)).toEqual(problems);
});
