/** Bare numbers that what follows, or who has them, makes a measure, and like words that do not. */
import { describe, expect, test } from 'vitest';
import { figuresTold as figuresOf, notesTold as notesOf } from '../../kit/told.ts';

describe('of stuff, of room', () => {
  test.each([
    ["There's 330 of brick behind it.", ['330 mm']],
    ["There's fifty of clear air over the stove.", ['50 mm']],
    ["There's 120 of it.", ['120 mm']],
    ["There's 1.2 of it.", ['1.2 m']],
    ['One point nine of room behind it.', ['1.9 m']],
    ['One point nine of rope behind it.', ['1.9 m']],
  ])('"%s" is read', (text, read) => expect(figuresOf(text)).toEqual(read));

  test.each(['I bought five of nine.', "There's 80 of it.", 'I have fifty of the bricks.'])(
    '"%s" tells none',
    (text) => expect(notesOf(text).figures).toEqual([]),
  );
});

describe('prices', () => {
  test.each([
    ['The boards are 165 a yard.', ['165 GBP']],
    ["It's sixty for the lot.", ['60 GBP']],
  ])('"%s" is read', (text, read) => expect(figuresOf(text)).toEqual(read));
});

describe('so much taken off or compared', () => {
  test.each([
    ['Another fifteen off.', ['15 mm']],
    ['Take six off it.', ['6 mm']],
    ['Take six off the end.', ['6 mm']],
    ['Took six off each.', ['6 mm']],
    ['I planed six off.', ['6 mm']],
    ['The stile is twenty more.', ['20 mm']],
    ["It's twenty less than the bed.", ['20 mm']],
    ["It's five longer.", ['5 mm']],
    ['The rail is thirty lower.', ['30 mm']],
  ])('"%s" is read', (text, read) => expect(figuresOf(text)).toEqual(read));

  test.each(['He took six off work.', 'The stile is five more.', 'I have twenty more to do.'])(
    '"%s" tells none',
    (text) => expect(notesOf(text).figures).toEqual([]),
  );
});

describe('the value said first', () => {
  test.each([
    ['Four fifty it is.', ['450 mm']],
    ['1772 must he be.', ['1772 mm']],
    ["Thirty two's what the old builder had.", ['32 mm']],
    ['Seven fifty four the treads should be.', ['754 mm']],
    ['Three the treads should be.', ['3 mm']],
  ])('"%s" is read', (text, read) => expect(figuresOf(text)).toEqual(read));

  test.each([
    'Four fifty it seems.',
    "Three's what the old builder had.",
    'Seven fifty four the treads are.',
  ])('"%s" tells none', (text) => expect(notesOf(text).figures).toEqual([]));
});

describe('room that is had', () => {
  test.each([
    ["I've only got 250 behind it.", ['250 mm']],
    ["There's 40 left above the door.", ['40 mm']],
    ["There's 40 over the door.", ['40 mm']],
    ["There's 70 to spare.", ['70 mm']],
    ["There's 70 to play with.", ['70 mm']],
    ['I need 250 underneath.', ['250 mm']],
  ])('"%s" is read', (text, read) => expect(figuresOf(text)).toEqual(read));

  test.each(["I've only got 9 behind it.", "I've only got 250 behind me.", 'I saw 250 underneath.'])(
    '"%s" tells none',
    (text) => expect(notesOf(text).figures).toEqual([]),
  );
});

describe('room to do something', () => {
  test.each([
    ['Nine hundred to walk through.', ['900 mm']],
    ['Nine hundred to squeeze past.', ['900 mm']],
    ['Nine hundred to squeeze.', ['900 mm']],
    ['A hundred to walk through.', ['100 mm']],
  ])('"%s" is read', (text, read) => expect(figuresOf(text)).toEqual(read));

  test.each([
    'Nine hundred to walk home.',
    'Forty to get through.',
    'Seven to walk through.',
    'Ninety nine to walk through.',
  ])('"%s" tells none', (text) => expect(notesOf(text).figures).toEqual([]));
});

describe('places that are measured from', () => {
  test.each([
    ['We buried the duct 450 down.', ['450 mm']],
    ['The duct is 450 down.', ['450 mm']],
    ['Four shelves at 610 out of a sheet.', ['4 1', '610 mm']],
    ['The lamp is 300 in front.', ['300 mm']],
    ['The hook is 300 below the beam.', ['300 mm']],
    ['The hook is 300 beneath the beam.', ['300 mm']],
    ['The pipe is 600 in the ground.', ['600 mm']],
    ['The pipe is 600 in the grounds.', ['600 mm']],
    ['Two hundred at the widest.', ['200 mm']],
    ["It's 45 on the damp meter.", ['45 %']],
    ["It's 45 on the bathroom scales.", ['45 kg']],
    ["It's 2100 floor to ceiling.", ['2100 mm']],
  ])('"%s" is read', (text, read) => expect(figuresOf(text)).toEqual(read));

  test.each(['We buried the duct 450 downstream.', "It's 2100 floor and ceiling."])(
    '"%s" tells none',
    (text) => expect(notesOf(text).figures).toEqual([]),
  );
});

describe('sheets, pressures and currents', () => {
  test.each([
    ['I need eighteen ply.', ['18 mm']],
    ['I need thirty polystyrene.', ['30 mm']],
    ['I need thirty bolts.', ['30 1']],
    ['The compressor cuts in at 90 and out at 120.', ['90 psi', '120 psi']],
    ['The compressor cuts in at 6.', ['6 bar']],
    ['The compressor cuts in at 15 and out at 16.', ['15 bar', '16 bar']],
    ['Three fuses.', ['3 1']],
    ['Ten breakers.', ['10 1']],
    ['A sixteen breaker for the oven.', ['16 A']],
    ["The heater's on a sixteen.", ['16 A']],
  ])('"%s" is read', (text, read) => expect(figuresOf(text)).toEqual(read));
});
