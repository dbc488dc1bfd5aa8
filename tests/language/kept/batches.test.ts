/** Batches that are told, and talk of products that is none. The sentences are our own, from several trades. */
import { expect, test } from 'vitest';
import type { BatchNote } from '../../../src/language/notes.ts';
import { recordsIn } from '../../kit/records.ts';

const batches = (text: string) => recordsIn(text).filter((note): note is BatchNote => note.kind === 'batch');
const shown = ({ product, facts }: BatchNote) => [
  product,
  ...facts.map(({ what, quote }) => `${what}: ${quote}`),
];

test.each([
  [
    'Mixed a batch of the slow hardener epoxy, five to one by weight on the scales, workshop was 14 degrees, the laminate was at 11 degrees, sixty five per cent humidity, and it went on the keel floors.',
    [
      'slow hardener epoxy',
      'ratio: five to one',
      'metered: by weight on the scales',
      'air: 14 degrees',
      'surface: 11 degrees',
      'humidity: sixty five per cent',
      'used: on the keel floors',
    ],
  ],
  [
    'Mixed up two hundred grams of filler with the pumps, three to one, about eighteen degrees in the shed.',
    [
      'filler',
      'amount: two hundred grams',
      'metered: with the pumps',
      'ratio: three to one',
      'air: about eighteen degrees',
    ],
  ],
  [
    'I mixed two parts resin to one part hardener for the bunk fillets.',
    ['resin', 'ratio: two parts resin to one part', 'used: for the bunk fillets'],
  ],
  ['Mixed epoxy, 100 to 45 by weight.', ['epoxy', 'ratio: 100 to 45', 'metered: by weight']],
  [
    'First coat of varnish on the tiller at about eighteen degrees, humidity fifty.',
    ['varnish', 'used: on the tiller', 'air: about eighteen degrees', 'humidity: fifty'],
  ],
  [
    'Varnished the handrail this morning. It was twelve degrees in the shed and the humidity was seventy percent.',
    [
      'varnish',
      'used: the handrail',
      'when: this morning',
      'air: twelve degrees',
      'humidity: seventy percent',
    ],
  ],
  [
    'Glued the scarf with the polyurethane glue, 8 degrees, a bit cold.',
    ['polyurethane glue', 'used: the scarf', 'air: 8 degrees'],
  ],
  [
    'Poured the slab, it was four degrees overnight so I covered it.',
    ['concrete', 'used: the slab', 'air: four degrees'],
  ],
  [
    'Laid up two layers of biax with polyester, two percent catalyst, twenty one degrees.',
    ['polyester', 'ratio: two percent', 'air: twenty one degrees'],
  ],
  [
    'Rolled the second coat of primer on the topsides at half past nine, sixteen degrees, eighty per cent humidity.',
    [
      'primer',
      'used: on the topsides',
      'when: at half past nine',
      'air: sixteen degrees',
      'humidity: eighty per cent',
    ],
  ],
  [
    'The resin was warm, I mixed it five to one and it kicked in ten minutes.',
    ['resin', 'ratio: five to one'],
  ],
  [
    'Made up some polyester filler, two percent catalyst. Filled the wheel arch.',
    ['polyester filler', 'ratio: two percent', 'used: the wheel arch'],
  ],
  [
    'Bonded the windows with the black polyurethane, surface was at twenty two, sixty per cent humidity.',
    ['black polyurethane', 'used: the windows', 'surface: twenty two', 'humidity: sixty per cent'],
  ],
  [
    'The gelcoat batch from this morning was two per cent and it was eighteen degrees.',
    ['gelcoat', 'when: this morning', 'ratio: two per cent', 'air: eighteen degrees'],
  ],
  ['Gave the deck a coat of oil, twenty five degrees.', ['oil', 'air: twenty five degrees']],
  [
    'Mixed the concrete by the bucket, one part cement two sand and three gravel, nine degrees.',
    [
      'concrete',
      'metered: by the bucket',
      'ratio: one part cement two sand and three gravel',
      'air: nine degrees',
    ],
  ],
  [
    'Sealed the worktop with two coats of tung oil, twenty degrees, and glued the splines with wood glue.',
    ['tung oil', 'used: the worktop', 'air: twenty degrees'],
  ],
  ["I've made up the putty for the panes.", ['putty', 'used: for the panes']],
])('"%s" tells of a batch', (said, expected) => {
  expect(batches(said).map(shown)).toEqual([expected]);
});

test.each([
  'The tin says mix it five to one and not below ten degrees.',
  "Tomorrow I'll mix the resin five to one.",
  'I need to mix the epoxy four to one.',
  "If I'd mixed the epoxy four to one it would never have gone off.",
  "I haven't mixed the filler yet.",
  'Did I mix the epoxy five to one?',
  "I've mixed feelings about the paint.",
  'I mixed up the port and starboard cables.',
  'Painted the topsides.',
  "The primer's a two to one mix, and it wants sixteen hours between coats.",
  'Paint is ordered, five litres.',
  'The glue says at least ten degrees.',
  'He mixed the mortar far too wet.',
  'The epoxy is in the cupboard at eighteen degrees because it hates the cold, so I should keep it there.',
  'I was going to mix the epoxy but it was eight degrees so I did not.',
  'They recommend mixing the epoxy two to one.',
  'Poured the keel lead at four hundred degrees.',
  'The concrete mixer was sixty quid.',
  'Used up the last of the grout.',
  'It was fourteen degrees in the workshop.',
  'My neighbour mixed his own concrete and it cracked.',
  "I put the paint in the shed where it's five degrees.",
  'I left the resin in the van overnight at two degrees and it crystallised.',
  'Painted the back room last year when it was thirty degrees.',
  'The sealant tube says five degrees minimum but it was four so I waited.',
  'The plaster was damp, humidity was eighty percent.',
  'The painted boards are 90 wide.',
])('"%s" tells of none', (said) => {
  expect(batches(said).map(shown)).toEqual([]);
});

test('every fact is a verbatim stretch of the memo', () => {
  const text = 'Right. Mixed the epoxy, five to one, at 16 degrees, for the floors. Then tea.';
  for (const { quote, span, facts } of batches(text)) {
    for (const one of [{ quote, span }, ...facts]) {
      expect(text.slice(one.span.start, one.span.end)).toBe(one.quote);
    }
  }
  expect(batches(text)).toHaveLength(1);
});
