/** What was mixed, laid, or lies behind a panel; and talk of products and panels that is no record. */
import { expect, test } from 'vitest';
import { recordsIn } from '../../kit/records.ts';

const shown = (text: string) =>
  recordsIn(text).flatMap((note) => {
    if (note.kind === 'batch') {
      const facts = note.facts.map(({ what, quote, unit }) => `${what} ${quote}${unit ? ` [${unit}]` : ''}`);
      return [`${note.product}: ${facts.join('; ')}`];
    }
    if (note.kind === 'clock')
      return [`${note.act} ${note.product} ${note.isSaid ? note.at.slice(11, 16) : 'now'}`];
    return note.kind === 'hidden' ? [`${note.what} (${note.service}) behind ${note.panel}`] : [];
  });

test.each([
  [
    'Mixed epoxy five to one, 57 degrees fahrenheit in the shed, laminate at 52.',
    ['epoxy: ratio five to one [1]; air 57 degrees fahrenheit [degF]; surface 52 [degF]', 'mixed epoxy now'],
  ],
  ['Mixed epoxy five to one, by eye.', ['epoxy: ratio five to one; metered by eye', 'mixed epoxy now']],
  [
    'Mixed epoxy five to one with the pumps.',
    ['epoxy: ratio five to one [1]; metered with the pumps', 'mixed epoxy now'],
  ],
  ['Mixed a batch, five to one.', ['batch: ratio five to one [1]', 'mixed  now']],
  ['Mixed a batch of epoxy. Five to one by weight.', ['epoxy: metered by weight', 'mixed epoxy now']],
  ['The gelcoat batch was two per cent.', ['gelcoat: ratio two per cent [%]']],
  ['The mix of mortar was four to one.', ['mortar: ratio four to one [1]']],
  [
    'Poured the slab, it was twelve degrees.',
    ['concrete: used the slab; air twelve degrees [degC]', 'laid  now'],
  ],
  [
    'Varnished the tiller, eighteen degrees in the shed.',
    ['varnish: used the tiller; air eighteen degrees [degC]', 'laid varnish now'],
  ],
  ['Varnished the tiller.', ['laid varnish now']],
  ['I put the paint on the shed, twelve degrees.', ['paint: air twelve degrees [degC]', 'laid paint now']],
  [
    'I put a coat of oil on the table, twelve degrees.',
    ['oil: used on the table; air twelve degrees [degC]', 'laid oil now'],
  ],
  ['The resin was warm, I mixed it five to one.', ['resin: ratio five to one [1]', 'mixed resin now']],
  [
    'Mixed mortar, one part cement, two sand and three gravel.',
    ['mortar: ratio one part cement, two sand and three gravel', 'mixed mortar now'],
  ],
  ['Put the first coat of varnish on at two.', ['laid varnish 14:00']],
  ['Mixed the glue at two.', ['glue: ', 'mixed glue 14:00']],
  ['Mixed the glue at two and put it on at three.', ['glue: ', 'mixed glue 14:00', 'laid glue 15:00']],
  ['I took the clamps off the glue at two.', ['freed glue 14:00']],
  ['Sprayed two coats of primer at nine.', ['laid primer 09:00']],
  ['Laid the screed at eight.', ['laid screed 08:00']],
  ['Glued the rail at eight.', ['laid glue 08:00']],
  ["There's a cable behind the galley panel.", ['cable (cable) behind galley panel']],
  ["There's a cable under the floor.", ['cable (cable) behind floor']],
  ["There's a cable above the ceiling.", ['cable (cable) behind ceiling']],
  ["There's a tank behind the panel.", ['tank (other) behind panel']],
  ["There's a screw behind the panel.", ['screw (fixing) behind panel']],
  ["There's a bracket behind the panel.", ['bracket (fixing) behind panel']],
  ['The galley panel is on. The cable runs behind it.', ['cable (cable) behind galley panel']],
  ['A stud sits behind the lining.', ['stud (timber) behind lining']],
])('"%s" is kept', (text, read) => expect(shown(text)).toEqual(read));

test.each([
  'Last year I mixed epoxy five to one.',
  'Did I mix epoxy five to one?',
  'Mixed the two cables up.',
  'The gelcoat batch is two per cent.',
  'The mix of people was four to one.',
  'Poured the tea, it was twelve degrees.',
  'The varnished tiller is eighteen degrees.',
  'I put oil in the engine, twelve degrees.',
  'One part cement, two sand and three gravel in the mix.',
  'One part cement and two parts luck.',
  'The varnish can be recoated at two.',
  'I have to put the varnish on at two.',
  'Sprayed the hose at nine.',
  'Laid the table at eight.',
  'The painted boards are at eight.',
  "There's a cable behind the solar panel.",
  "There's a cable above the floor.",
  "There's a cable below the ceiling.",
  "There's a tank under the floor.",
  "There's a lamp behind the panel.",
  "There's rot in the pipe behind the panel.",
  "There's a pipe behind the panel leaking.",
  'Is there a cable behind the panel?',
  "There's a cable behind every panel.",
  'I dropped a screw behind the panel.',
  "There's a bracket under the floor.",
  'The cable runs behind it.',
  'The panel is on. The cable runs behind it.',
  'I pulled the old pipe out from behind the panel.',
  'A stud sits in the lining.',
  "If there's a cable behind the panel I'll stop.",
  "We'll run a cable behind the panel.",
])('"%s" tells none', (text) => expect(shown(text)).toEqual([]));
