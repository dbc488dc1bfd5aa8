import { expect, test } from 'vitest';
import { readMemo } from '../../../src/language/pipeline.ts';
import { checksIn } from '../../kit/records.ts';

test.each([
  ['The leg tapers from 60 down to 40 over 700.', '60 mm', '40 mm', '700 mm'],
  ['The leg tapers from 60 at the top to 40 at the bottom over 700.', '60 mm', '40 mm', '700 mm'],
  ['The rudder stock’s 700 long and tapers from 60 to 40.', '60 mm', '40 mm', '700 mm'],
  [
    'The post is 40 at the top and 60 at the bottom and it’s 700 long, tapered both sides.',
    '60 mm',
    '40 mm',
    '700 mm',
  ],
  ['The wedge goes from 40 to nothing over 300.', '40 mm', '0 mm', '300 mm'],
  ['The mast is 120 at the base tapering to 80 over 4 metres.', '120 mm', '80 mm', '4 m'],
  ['The oar tapers 55 to 38 over 2.2 metres.', '55 mm', '38 mm', '2.2 m'],
  [
    'The bracket tapers from two and a half inches down to one and a half over twenty eight.',
    '2.5 in',
    '1.5 in',
    '28 in',
  ],
  ['The leg tapers from minus 60 to 40 over 700.', '-60 mm', '40 mm', '700 mm'],
])('"%s" is a taper', (said, large, small, length) => {
  expect(checksIn(said)).toEqual([`taper: large end=${large}; small end=${small}; length=${length}`]);
});

test('a length without a unit has that of the project, whatever else the memo measures', () => {
  const said = 'The gap under the door is half an inch. The leg tapers from 60 down to 40 over 700.';
  const inInches = 'The door is 30 mil thick. The leg tapers from 3 to 2 over 28.';
  const tapers = (text: string, units: 'metric' | 'us') =>
    readMemo(text, { units, recordedAt: '2026-03-02T18:00:00+00:00' }).notes.records.flatMap((note) =>
      note.kind === 'check' ? [note.inputs.map(({ expression }) => expression).join(', ')] : [],
    );
  expect(tapers(said, 'metric')).toEqual(['60 mm, 40 mm, 700 mm']);
  expect(tapers(inInches, 'us')).toEqual(['3 in, 2 in, 28 in']);
});

test('one side that is tapered is said', () => {
  const said = 'The fin tapers from 60 to 40 over 700, straight on the other side.';
  const { notes } = readMemo(said, { units: 'metric', recordedAt: '2026-03-02T18:00:00+00:00' });
  expect(notes.records).toMatchObject([{ check: 'taper', options: { 'tapered on': 'one side' } }]);
});

test.each([
  'I tapered the legs from 60 to 40 over 700.',
  'Does the leg taper from 60 to 40 over 700?',
  'The leg doesn’t taper from 60 to 40 over 700.',
  'The leg tapers.',
  'The road narrows from 4 metres to 3 over the bridge.',
  'Went from 60 to 40 grit over the whole top.',
])('"%s" attaches none', (said) => {
  expect(checksIn(said)).toEqual([]);
});
