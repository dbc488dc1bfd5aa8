/** Coats that are spoken of and were not laid: what they are like, and what waits for them. */
import { expect, test } from 'vitest';
import { readMemo } from '../../../src/language/pipeline.ts';

const clocks = (text: string) =>
  readMemo(text, {
    units: 'metric',
    region: 'GB',
    recordedAt: '2026-06-10T12:00:00+01:00',
  }).notes.records.filter(({ kind }) => kind === 'clock').length;

test.each([
  "The full bill when it's painted.",
  "Once the hull's painted we can launch.",
  'The coat on the rail is 2 mil thick.',
  'The first coat of primer is 60 microns thick.',
])('starts no clock: %s', (text) => expect(clocks(text)).toBe(0));

test.each([
  "The hull's painted.",
  'When I painted the hull it was warm.',
  "Second coat's on the rail.",
  'The first coat of primer is on the door.',
])('starts a clock: %s', (text) => expect(clocks(text)).toBe(1));
