/** The temperature that a data sheet gives is the product's; the air's own keeps its name. */
import { expect, test } from 'vitest';
import { readMemo } from '../../../src/language/pipeline.ts';

const CONTEXT = { units: 'metric', region: 'GB', recordedAt: '2026-06-10T18:00:00+01:00' } as const;
const itemsOf = (text: string) =>
  readMemo(text, CONTEXT).notes.figures.map(({ item, dimension }) => `${item}: ${dimension}`);

test.each([
  ['Pot life of the epoxy is thirty minutes at twenty degrees.', ['epoxy: time', 'epoxy: temperature']],
  [
    'I mixed the epoxy. Pot life is thirty minutes at twenty degrees. The shed is at twenty degrees.',
    ['epoxy: time', 'epoxy: temperature', 'shed: temperature'],
  ],
  [
    'The epoxy is on the shelf. It cures in seven days at twenty degrees.',
    ['epoxy: time', 'epoxy: temperature'],
  ],
  [
    'The varnish is open. The recoat window is four to twelve hours at twenty degrees.',
    ['recoat window: time', 'varnish: temperature'],
  ],
  ['The shed is at twenty degrees.', ['shed: temperature']],
])('"%s"', (text, items) => expect(itemsOf(text)).toEqual(items));
