/** The day of a job that is told in a clause of its own behind it. */
import { expect, test } from 'vitest';
import { readMemo } from '../../src/language/pipeline.ts';

/** A Wednesday. */
const notes = (text: string) =>
  readMemo(text, { units: 'metric', region: 'GB', recordedAt: '2026-06-10T18:00:00+01:00' }).notes;
const tasks = (text: string) => notes(text).tasks.map(({ gist, due }) => `${gist}${due ? ` by ${due}` : ''}`);

test.each([
  [
    "The ridge beam has to go up, it needs three people so it's Sunday.",
    'The ridge beam has to go up by 2026-06-14',
  ],
  ["I have to lift the stove in. That's a two man job so it's Saturday.", 'Lift the stove in by 2026-06-13'],
  [
    "The engine wants lifting, it'll be Thursday, the hoist's free then.",
    'The engine wants lifting by 2026-06-11',
  ],
  ["Need to hang the gate, that's for Friday.", 'Hang the gate by 2026-06-12'],
  ["I must plumb the sink in. That'll have to be Tuesday now.", 'Plumb the sink in by 2026-06-16'],
  [
    "The keel needs fairing and the lads are off so it's Monday then.",
    'The keel needs fairing by 2026-06-15',
  ],
])('"%s" tells when: %s', (text, task) => {
  expect(tasks(text)).toEqual([task]);
  expect(notes(text).arrivals).toEqual([]);
});

test.each([
  ["The tank has to come out. It's Sunday today.", 'The tank has to come out'],
  ["I need to paint the deck. It's Wednesday already and I'm tired.", 'Paint the deck'],
  ["The tank has to come out. It's Sunday.", 'The tank has to come out'],
  [
    "The tank has to come out but not before the crane's here, that's coming Friday.",
    'The tank has to come out',
  ],
  ['The tank has to come out. They were here Sunday.', 'The tank has to come out'],
])('"%s" tells no day of the job', (text, task) => {
  expect(tasks(text)).toEqual([task]);
});
