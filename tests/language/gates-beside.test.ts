/** What holds a task up, told in the words beside it, and what is told there that holds nothing up. */
import { expect, test } from 'vitest';
import { notesTold } from '../kit/told.ts';

const tasks = (text: string) =>
  notesTold(text).tasks.map(({ gist, waitsFor }) => [gist, ...waitsFor].join(' < '));

test.each([
  ['Weld up the four legs once the gas has been swapped.', 'Weld up the four legs < gas has been swapped'],
  ["Next job, lay the ply once the foam's down.", 'Lay the ply < foam down'],
  [
    "The south side's to be stripped once the scaffold's over.",
    "The south side's to be stripped < scaffold over",
  ],
  ['Once the gas has been swapped, weld up the legs.', 'Weld up the legs < gas has been swapped'],
  ["Paint the sills once it's dry.", 'Paint the sills < dry'],
  [
    "I'll be welding up a new one, quarter inch plate, soon as I swap out my gas bottle.",
    'Weld up a new one < I swap out my gas bottle',
  ],
  ["The panels go up when the rack's had its paint.", 'The panels go up < rack had its paint'],
  [
    "I'll knock the leg up when I've scrounged some box section.",
    "Knock the leg up < I've scrounged some box section",
  ],
  [
    "The frame gets its zinc on Monday provided it's above five degrees.",
    'The frame gets its zinc on Monday < above five degrees',
  ],
  [
    'It will be sawn on Monday, provided that the mill gets its current back.',
    'It will be sawn on Monday < mill gets its current back',
  ],
  ["It'll sit there Saturday, if the tops are rebuilt.", "It'll sit there Saturday < tops are rebuilt"],
  [
    "They'll get their second coat Sunday if it's above 10.",
    "They'll get their second coat Sunday < above 10",
  ],
  ["I can't cut the worktop for it while the oil's still tacky.", 'Cut the worktop for it < oil still tacky'],
  [
    'Varnish the bench once the legs have been sanded, first dry day we get.',
    'Varnish the bench < legs have been sanded < dry day',
  ],
  [
    'I can roll another when I get the rolls back off college.',
    'Roll another < I get the rolls back off college',
  ],
  [
    "The underside gets painted, but obviously not till that hole's gone.",
    'The underside gets painted < hole gone',
  ],
  ["Hang the north gutter, that's waiting on the brackets.", 'Hang the north gutter < brackets'],
  [
    'Rear brakes can’t be bled without the hand pump.',
    'Rear brakes can’t be bled without the hand pump < hand pump',
  ],
  [
    "The roof gets cut the first dry day we've got.",
    "The roof gets cut the first dry day we've got < dry day",
  ],
  ['That has to come off, first dry day we get.', 'That has to come off < dry day'],
])('"%s"', (text, task) => {
  expect(tasks(text)).toEqual([task]);
});

test.each([
  ["I'll swap it when I'm in town.", 'where the speaker will be'],
  ["Pour the pads Friday if I'm spared.", 'whether, and no state'],
  ["The lid's to be planed once my temper's cooled.", 'a mood'],
  ["I'll swap the pump when I get home.", 'where the speaker will be'],
  ['They get their primer tomorrow while I have the gun out.', 'at the same time'],
  ["I'm buying them Tuesday when I get paid.", 'nothing of the build'],
  ['I have to sand the deck, but not the hatches.', 'what is left out'],
  ['The deck has to be sanded, it was a dry day and it never got done.', 'a day that was'],
  ['I have to seal the lid, and it has to be done without swearing.', 'how it is done'],
])('"%s" waits for nothing: %s', (text) => {
  const { tasks: read } = notesTold(text);
  expect(read.length).toBeGreaterThan(0);
  expect(read.flatMap(({ waitsFor }) => waitsFor)).toEqual([]);
});

test.each(["The signwriter's waiting on artwork off me.", "The glass man's waiting on a drawing from me."])(
  '"%s": somebody waits for this work, and it waits for nothing',
  (text) => {
    expect(notesTold(text).tasks.map(({ waitsFor }) => waitsFor)).toEqual([[]]);
  },
);

test('"they provided the bolts" is no condition', () => {
  expect(tasks('They provided the bolts and the nuts, so I have to fit them.')).toEqual([
    expect.not.stringContaining('<'),
  ]);
});
