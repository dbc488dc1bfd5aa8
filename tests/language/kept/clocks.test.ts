import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readMemo } from '../../../src/language/pipeline.ts';

const read = (said: string) =>
  readMemo(said, { units: 'metric', recordedAt: '2026-03-03T14:20:00+01:00' }).notes;
/** `laid varnish 14:20 next`; a time that nobody said has a mark. */
const clocks = (said: string) =>
  read(said).records.flatMap((note) =>
    note.kind === 'clock'
      ? [
          `${note.act} ${note.product} ${note.at.slice(5, 16)}${note.isSaid ? '' : '?'}${note.isNext ? ' next' : ''}`,
        ]
      : [],
  );

test.each([
  ['Mixed the epoxy at ten past nine.', ['mixed epoxy 03-03T09:10']],
  [
    'Mixed the epoxy at ten past nine, it went on at quarter to ten.',
    ['mixed epoxy 03-03T09:10', 'laid epoxy 03-03T09:45'],
  ],
  ['The first coat went on at two.', ['laid  03-03T14:00']],
  ['First coat of primer went on at half eleven this morning.', ['laid primer 03-03T11:30']],
  ['Second coat on now.', ['laid  03-03T14:20 next']],
  ["I've just put the second coat of varnish on.", ['laid varnish 03-03T14:20 next']],
  ['At half past one I rolled the first coat of undercoat on.', ['laid undercoat 03-03T13:30']],
  ['Knocked up a batch of thickened epoxy twenty minutes ago.', ['mixed epoxy 03-03T14:00']],
  ['Primed the chassis rails last night at ten.', ['laid primer 03-02T22:00']],
  ['Varnished the tiller at noon.', ['laid varnish 03-03T12:00']],
  ['Glued the lining up at twenty past eleven.', ['laid glue 03-03T11:20']],
  ['Laid the screed at eight am.', ['laid screed 03-03T08:00']],
  ['Got the first layer of gelcoat on at 10:40.', ['laid gelcoat 03-03T10:40']],
  [
    'The primer went on at one. Recoated it just now.',
    ['laid primer 03-03T13:00', 'laid primer 03-03T14:20 next'],
  ],
  ["Still brushing the epoxy out, it's twenty to two.", ['used epoxy 03-03T13:40']],
  [
    'Mixed the resin at one. Still wetting out the cloth at half one.',
    ['mixed resin 03-03T13:00', 'used resin 03-03T13:30'],
  ],
  ['Sprayed two coats of primer on the bulkhead.', ['laid primer 03-03T14:20?']],
])('"%s" starts %j', (said, expected) => {
  expect(clocks(said)).toEqual(expected);
});

test.each([
  'The second coat goes on tomorrow at nine.',
  "We'll put the first coat on at four.",
  'The tin says recoat within four hours.',
  "I haven't put the second coat on yet.",
  'If the first coat went on at two we could recoat tonight.',
  'Did you put the first coat on at two?',
  'The shelf went on at two.',
  'Put the kettle on at two.',
  'The painted boards are at two metres.',
  'Need to mix the epoxy at four.',
  'He mixed up the two cables.',
  'The varnish should go on at ten degrees.',
  'The dog went on the deck at two.',
])('"%s" starts none', (said) => {
  expect(clocks(said)).toEqual([]);
});

test('a time of a clock is no size', () => {
  expect(read('Mixed the resin at nine oh five.').figures).toEqual([]);
  expect(read('Glued the lining up at twenty past eleven.').figures).toEqual([]);
  expect(read("The shelf is 300 wide, it's twenty to ten.").figures).toMatchObject([{ value: 300 }]);
});

test('every quote is in its text, and no text breaks it', () => {
  const piece = fc.constantFrom(
    'first coat',
    'of primer',
    'went on',
    'at two',
    'mixed',
    'the epoxy',
    'second coat',
    'now',
    'not',
    '.',
    ',',
    'ten past',
    '300',
  );
  fc.assert(
    fc.property(fc.array(piece, { maxLength: 14 }), (pieces) => {
      const text = pieces.join(' ');
      for (const { quote, span, kind } of read(text).records)
        if (kind === 'clock') expect(text.slice(span.start, span.end)).toBe(quote);
    }),
    { numRuns: 200, seed: 5 },
  );
});

/** What each act was done to; a dash where nobody said. */
const things = (said: string) =>
  read(said).records.flatMap((note) => (note.kind === 'clock' ? [note.on ?? '-'] : []));

test.each([
  ['First coat of primer went on the hull at two.', 'hull'],
  ["The second coat's on the deck now.", 'deck'],
  ['Painted the port bulkhead at ten.', 'port bulkhead'],
  ["The hull's had its second coat.", 'hull'],
  ['Gave the cupboard doors another coat at noon.', 'cupboard doors'],
  ["I've put a coat of varnish on the tiller.", 'tiller'],
  ['Primed the inside of the locker at nine.', 'locker'],
  ['Glued up the second carcass at noon.', 'second carcass'],
  ['Spread the adhesive on the sole at noon.', 'sole'],
  ['Still brushing the varnish out on the mast.', 'mast'],
  ['Took the clamps off the rib.', 'rib'],
  ['Struck the formwork off the lintel.', 'lintel'],
  ['The rib is unclamped.', 'rib'],
  ['The first coat went on at two.', '-'],
  ['Second coat on now.', '-'],
  ["I've just put the second coat of varnish on.", '-'],
  ['Mixed the epoxy at noon for the keel.', '-'],
])('"%s" was done to %s', (said, thing) => {
  expect(things(said)).toEqual([thing]);
});
