/** Machines, joints and goods that fail in set turns of speech, and like turns that tell of nothing wrong. */
import { describe, expect, test } from 'vitest';
import { notesTold as notesOf } from '../kit/told.ts';

describe('a trouble', () => {
  test.each([
    ['The breaker trips every time.', ['The breaker trips every time']],
    ['The pressure is dropping.', ['The pressure is dropping']],
    ['It lost two bar overnight.', ['It lost two bar overnight']],
    ['The gearbox jumps out of third.', ['The gearbox jumps out of third']],
    ['The pump runs all night.', ['The pump runs all night']],
    ['The lights dim when the pump starts.', ['The lights dim']],
    ['You can push a screwdriver into the sill.', ['You can push a screwdriver into the sill']],
    ['The steering is as stiff as a board.', ['The steering is as stiff as a board']],
    ["There's a puddle under the sink.", ["There's a puddle under the sink"]],
    ["There's a wire hanging down.", ["There's a wire hanging down"]],
    ["The post isn't fixed to anything.", ["The post isn't fixed to anything"]],
    ["That's another sheet in the skip.", ["That's another sheet in the skip"]],
    ["I'm out of screws.", ["I'm out of screws"]],
    ['The glue went off too soon.', ['The glue went off too soon']],
    ['The paint has never dried.', ['The paint has never dried']],
    ['I rounded off the head.', ['I rounded off the head']],
    ['I kinked the pipe.', ['I kinked the pipe']],
    ['I drilled it two mil off.', ['I drilled it two mil off']],
    ['The wind took the cover off.', ['The wind took the cover off']],
    ['The hinges are back ordered.', ['The hinges are back ordered']],
    ['The hinge is stuck.', ['The hinge is stuck']],
    ['The pump went in the wrong way round.', ['The pump went in the wrong way round']],
    ["There's rust at the joint.", ["There's rust at the joint"]],
    ['The hatch lets water in.', ['The hatch lets water in']],
    ['I hit a pipe.', ['I hit a pipe']],
    ['The sill is like cake.', ['The sill is like cake']],
    ['The label lies.', ['The label lies']],
    ['I broke it.', ['I broke it']],
    ['They sent 3 mil, not 5.', ['They sent 3 mil, not 5']],
    ['The joint has come apart.', ['The joint has come apart']],
    ['The window is fitted upside down.', ['The window is fitted upside down']],
  ])('"%s" is read', (text, read) => expect(notesOf(text).problems.map(({ quote }) => quote)).toEqual(read));

  test.each([
    'The breaker goes in the box.',
    'The pressure is fine.',
    'The dog jumps out of bed.',
    'The lights dim with a switch.',
    'You can push a door.',
    'The beans are soaking.',
    'The post is fixed to the floor.',
    "I'm out of here.",
    'The glue went off nicely.',
    'I rounded off the corner.',
    'The wind was lovely.',
    'I took the cover off.',
    'The hatch lets light in.',
    'I hit the pub.',
    'The sill is like the other.',
    'The joint has come together.',
    'The window is fitted.',
  ])('"%s" tells none', (text) => expect(notesOf(text).problems).toEqual([]));
});
