/** Goods that have come or are on their way, and people, noises and parts that only come. */
import { describe, expect, test } from 'vitest';
import { readMemo } from '../../src/language/pipeline.ts';

const CONTEXT = { units: 'metric', region: 'GB', recordedAt: '2026-06-10T18:00:00+01:00' } as const;
const notesOf = (text: string) => readMemo(text, CONTEXT).notes;

describe('goods', () => {
  test.each([
    ['The hinges are here.', ['hinges: come']],
    ['The hinges are here now.', ['hinges: come']],
    ['The hinges are here on Friday.', ['hinges: 2026-06-12']],
    ['The hinges arrived.', ['hinges: come']],
    ['The hinges came.', ['hinges: come']],
    ["The legs came from the galvaniser's.", ['legs: come']],
    ['The hinges came in on Tuesday.', ['hinges: come']],
    ['The foam kit come too.', ['foam kit: come']],
    ['Skin come on the truck.', ['Skin: come']],
    ['The new spring arrived.', ['spring: come']],
    ['Only six of the eight turned up.', ['Only six of the eight: come']],
    ['They dropped the boards off.', ['boards: come']],
    ['I picked up the boards from the yard.', ['boards: come']],
    ['I collected the glass.', ['glass: come']],
    ['The glass is coming on Friday.', ['glass: 2026-06-12']],
    ['The glass is due Friday.', ['glass: 2026-06-12']],
    ['The glass will be in on Friday.', ['glass: 2026-06-12']],
    ['The glass is shipped.', ['glass: awaited']],
    ['The glass has been posted.', ['glass: awaited']],
    ['I have the glass coming on Friday.', ['glass: 2026-06-12']],
    ['I have two boards on order.', ['two boards: awaited']],
    ["There's a pallet of slates coming on Friday.", ['pallet of slates: 2026-06-12']],
    ['The yard is dropping the gravel off on Friday.', ['gravel: 2026-06-12']],
    ["I'm waiting on the glass, two weeks.", ['glass: 2026-06-24']],
    ["I'm waiting on the glass.", ['glass: awaited']],
    ['Received the glass.', ['glass: come']],
    ['I unpacked the glass.', ['glass: come']],
    ['The postman brought the hinges.', ['hinges: come']],
    ['Jan dropped off the hinges.', ['hinges: come']],
    ['Jan dropped off the ladder.', ['ladder: come']],
    ['Jan brought the saw round this morning.', ['saw: come']],
    ['The glass is back ordered.', ['glass: awaited']],
    ['I ordered the glass.', ['glass: awaited']],
  ])('"%s" is read', (text, read) =>
    expect(
      notesOf(text).arrivals.map(
        ({ item, received, expected }) => `${item}: ${received ? 'come' : (expected ?? 'awaited')}`,
      ),
    ).toEqual(read),
  );

  test.each([
    'My brother is here.',
    'The video is here.',
    'The hinges came off.',
    'The hinges came loose.',
    'The hinges came undone.',
    'The noise came from the galley.',
    'Skin come off the truck.',
    'My brother came.',
    'This spring came early.',
    'Only six of the lads turned up.',
    'Turned up the heat.',
    'I picked up boards from the floor.',
    'I collected my thoughts.',
    'The glass is due its second wash.',
    'I have a mate coming on Friday.',
    'I have two boards in order.',
    'The yard is closed on Friday.',
    "I'm waiting for a mate, two weeks.",
    "I'm waiting for my brother on Friday.",
    'I unpacked my film.',
    'Jan dropped off.',
    'Jan brought the saw.',
    'Did the glass arrive?',
    'I might order the glass.',
    "I'll order the glass.",
  ])('"%s" tells none', (text) => expect(notesOf(text).arrivals).toEqual([]));
});
