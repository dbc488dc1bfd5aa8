import { describe, expect, test } from 'vitest';
import type { FigureNote } from '../../src/language/notes.ts';
import { beforeWhat } from '../../src/model/before.ts';
import { answersGate, gateWords } from '../../src/model/gate-words.ts';
import { gateOf, isEarliest, thingOf } from '../../src/model/gates.ts';
import type { TaskRow } from '../../src/model/rows.ts';
import { isSaidAgain } from '../../src/model/said-again.ts';

const figure = (
  quote: string,
  dimension: FigureNote['dimension'],
  value: number,
  unit: string,
  bound = 'exact',
) =>
  ({
    kind: 'figure',
    quote,
    span: { start: 0, end: 1 },
    item: 'x',
    attribute: 'other',
    dimension,
    value,
    unit,
    bound,
  }) as FigureNote;
// 2026-05-05 is a Tuesday.
const kindOf = (words: string, figures: readonly FigureNote[] = []) => {
  const { words: _words, ...gate } = gateOf(words, { recordedAt: '2026-05-05T18:00:00+02:00', figures });
  return gate;
};

describe('what a gate is', () => {
  test.each([
    ['the gutters arrive', { kind: 'arrival' }],
    ['copper nails have been delivered', { kind: 'arrival' }],
    ['the lath is here', { kind: 'arrival' }],
    ['the loft hatch is trimmed', { kind: 'event' }],
    ['electrician has been', { kind: 'event' }],
    ['the nephew', { kind: 'event' }],
    ['Monday', { kind: 'date', date: '2026-05-11' }],
    ['next Tuesday', { kind: 'date', date: '2026-05-12' }],
    ['tomorrow', { kind: 'date', date: '2026-05-06' }],
    ['the weekend', { kind: 'date', date: '2026-05-09' }],
    ['2026-06-01', { kind: 'date', date: '2026-06-01' }],
    ['the glue has cured', { kind: 'hours' }],
    ['the slab has cured a week', { kind: 'hours', hours: 168 }],
    ['the hull has soaked overnight', { kind: 'hours', hours: 12 }],
  ])('"%s" is %j', (words, gate) => expect(kindOf(words)).toEqual(gate));

  test('a figure in it makes it a reading or a time', () => {
    expect(
      kindOf('workshop is above 15 degrees', [
        figure('above 15 degrees', 'temperature', 15, 'degC', 'at-least'),
      ]),
    ).toEqual({
      kind: 'reading',
      reading: { dimension: 'temperature', bound: 'at-least', value: 15, unit: 'degC' },
    });
    expect(kindOf('larch down to 16 percent', [figure('16 percent', 'ratio', 16, '%')]).reading?.bound).toBe(
      'at-most',
    );
    expect(kindOf('first coat dry 36 hours', [figure('36 hours', 'time', 36, 'h')])).toEqual({
      kind: 'hours',
      hours: 36,
    });
    expect(kindOf('two days of drying', [figure('two days', 'time', 2, 'd')])).toEqual({
      kind: 'hours',
      hours: 48,
    });
    // A figure of another part of the sentence binds nothing.
    expect(kindOf('the beam is in', [figure('4 metres', 'length', 4, 'm')])).toEqual({ kind: 'event' });
  });

  test.each([
    ['resin has cured for 24 hours', 'resin has'],
    ['first coat dry 36 hours', 'first coat'],
    ['the gutters arrive', 'the gutters'],
  ])('the thing in "%s" is "%s"', (words, thing) => expect(thingOf(words)).toBe(thing));
});

test.each([
  ["I'll hang the door, but not before Monday", true],
  ["We can't pour till Friday", true],
  ['No plastering until tomorrow', true],
  ['I have to pour before Friday', false],
  ["I can't pour until the forms are in, so do that by Friday", false],
])('"%s": a day to begin with is %s', (sentence, earliest) => expect(isEarliest(sentence)).toBe(earliest));

describe('what answers a gate', () => {
  test.each([
    ["the foam's down", 'foam laid'],
    ['Laid the foam on Tuesday', 'foam laid'],
    ["the board's in", 'board in'],
    ['the inspector signed the wiring off', 'wiring signed off'],
    ['the stair trimmer is up', 'stair trimmer in'],
    ['rang the mill', 'sawmill called'],
    ['I plastered the west wall', 'the west wall is closed in'],
    ['Board over the bathroom wall', 'this wall is closed in'],
  ])('"%s" answers "%s"', (said, gate) => expect(answersGate(gateWords(said), gateWords(gate))).toBe(true));
  test.each([
    ["the deck's swept", 'deck dry'],
    ['the board is cut', 'board in'],
    ['the first coat is on', 'second coat on'],
    ['the left post is up', 'right post up'],
    ['the props came', 'props under the stone'],
    ['the wall is painted', 'floor laid'],
    ['I swept up', 'that behind me'],
  ])('"%s" does not answer "%s"', (said, gate) =>
    expect(answersGate(gateWords(said), gateWords(gate))).toBe(false),
  );
});

describe('what must not be done until a task is', () => {
  const told = (sentence: string, quote: string, waitsFor: readonly string[] = []) =>
    beforeWhat(sentence, { quote, gist: '', waitsFor, span: { start: 0, end: 0 } });
  test.each([
    ['Photograph the pipes before this wall is closed in.', 'Photograph the pipes', 'this wall is closed in'],
    ['Before the ceiling goes up, the wires want labels.', 'the wires want labels', 'the ceiling goes up'],
    ['Before I board the ends I need to oil the rails', 'oil the rails', 'I board the ends'],
    ['I have to test the joints before we plaster.', 'test the joints', 'we plaster'],
  ])('"%s": before %s', (sentence, quote, clause) => expect(told(sentence, quote)).toBe(clause));
  test.each([
    ['I need to call him before Friday.', 'call him'],
    ['I have to sweep up before lunch.', 'sweep up'],
    ["I can't drop the chain before the diver has had a look.", "I can't drop the chain"],
  ])('"%s": before nothing', (sentence, quote) => expect(told(sentence, quote)).toBeUndefined());
  test('what it waits for is not what waits for it', () => {
    const sentence = 'Drip tray goes in, but the engine gets lined up before the tray goes in';
    expect(told(sentence, 'Drip tray goes in', ['tray goes in'])).toBeUndefined();
  });
});

describe('a task said again', () => {
  const task = (gist: string, waitsFor: readonly string[] = []) => ({ gist, waitsFor }) as unknown as TaskRow;
  test.each([
    ['Order the hinges', 'Get the hinges ordered'],
    ['Paint the larder door', 'Paint the larder door'],
    ['Buy copper nails', 'Order copper nails'],
    ['Treat the joists by Friday', 'Treat the joists'],
  ])('"%s" and "%s" are one', (a, b) => expect(isSaidAgain(task(a), task(b))).toBe(true));
  test.each([
    ['Order the hinges', 'Fit the hinges'],
    ['Paint the larder door', 'Paint the larder window'],
    ['First coat on the mast', 'Second coat on the mast'],
    ['Order another hinge', 'Order a hinge'],
    ['Hang the left door', 'Hang the right door'],
    ['Cut 2 posts', 'Cut 4 posts'],
    ['Do it tomorrow', 'Do that'],
  ])('"%s" and "%s" are two', (a, b) => expect(isSaidAgain(task(a), task(b))).toBe(false));
});
