/** How two names stand to each other, and what makes the identity of a name. */
import { describe, expect, test } from 'vitest';
import {
  isOwnerOf,
  isRoomFor,
  kinship,
  nameKey,
  nameStems,
  otherWay,
  plainKey,
  setsApart,
  shapeOf,
  wordsOf,
} from '../../src/model/names.ts';

describe('how the said name stands to the known one', () => {
  test.each([
    ['bench top', 'bench top', 'same'],
    ['top of the bench', 'bench top', 'same'],
    ['the bench tops', 'bench top', 'same'],
    ['benchtop', 'bench top', 'same'],
    ['top', 'bench top', 'shorter'],
    ['bench', 'bench top', 'apart'],
    ['oak bench top', 'bench top', 'longer'],
    ['west bench top', 'bench top', 'sort'],
    ['bench top 2', 'bench top', 'apart'],
    ['2 bench top', 'bench top', 'sort'],
    ['b bench top', 'bench top', 'sort'],
    ['desk top', 'bench top', 'rival'],
    ['bench leg', 'bench top', 'apart'],
    ['west window', 'west window opening', 'same'],
    ['west window opening', 'west window', 'same'],
    ['window opening', 'west window', 'shorter'],
    ['west window opening', 'window', 'sort'],
    ['oak window opening', 'window', 'longer'],
    ['east window opening', 'west window', 'rival'],
    ['door opening', 'doorway', 'same'],
    ['front door opening', 'front doorway', 'same'],
    ['front door', 'front doorway', 'apart'],
    ['washer opening', 'washer', 'apart'],
    ['hatch opening', 'hatchway', 'same'],
  ] as const)('"%s" to "%s": %s', (said, known, kin) => {
    expect(kinship(said, known)).toBe(kin);
  });
});

describe('what makes a name', () => {
  test.each([
    ['top of the bench', 'top', ['bench', 'top']],
    ['the drain from the back wall', 'drain', ['back', 'drain', 'wall']],
    ['brackets, as bent', 'bracket', ['bracket']],
    ['brackets as they should be', 'bracket', ['bracket']],
    ['bench, the old one', 'bench', ['bench', 'old']],
    ['the whole thing', 'thing', ['the', 'thing', 'whole']],
    ['of the bench', 'bench', ['bench']],
    ['worktop', 'top', ['top', 'work']],
    ['handrail post', 'post', ['hand', 'post', 'rail']],
    ['rail rail', 'rail', ['rail']],
    ["Tom's bench", 'bench', ['bench', 'tom']],
    ['', '', []],
  ])('"%s": its head and its stems', (name, head, stems) => {
    const shape = shapeOf(name);
    expect({ head: shape.head, stems: shape.stems }).toEqual({
      head: nameStems(head)[0] ?? '',
      stems: [...stems].flatMap((word) => nameStems(word)).sort(),
    });
  });

  test('of a window and its opening is one key without the hole', () => {
    expect([plainKey('window opening'), plainKey('window')]).toEqual(['window', 'window']);
    expect([nameKey('window opening'), nameKey('window')]).toEqual(['open window', 'window']);
  });

  test.each([
    ["it's Tom's 2.5 mm, don't", ['it', 'tom', '2.5', 'mm', "don't"]],
    ['Große Tür', ['große', 'tür']],
    ["they're I'll we've I'm he'd", ['they', 'i', 'we', 'i', 'he']],
    ['…', []],
  ])('words of "%s"', (text, words) => {
    expect(wordsOf(text)).toEqual(words);
  });
});

test.each([
  ['front doorway', 'front door opening'],
  ['front door opening', 'front doorway'],
  ['front door-opening', 'front doorway'],
  ['hatchway', 'hatch opening'],
  ['gate aperture', 'gateway'],
  ['front door', undefined],
  ['window opening', undefined],
])('"%s" goes by "%s" as well', (name, other) => {
  expect(otherWay(name)).toBe(other);
});

test.each([
  ['fridge cavity', 'fridge', true],
  ['fridge', 'fridge cavity', true],
  ['cavity', 'fridge', false],
  ['fridge cavity', 'fridge opening', false],
  ['fridge', 'washer', false],
  ['window opening', 'window', false],
  ['shelf slot', 'shelf', true],
  ['side shelf slot', 'shelf', true],
])('"%s" and "%s": one is made for the other to go into: %s', (one, other, answer) => {
  expect(isRoomFor(one, other)).toBe(answer);
});

test.each([
  ['upper', true],
  ['port', true],
  ['2', true],
  ['2nd', true],
  ['b', true],
  ['ab', false],
  ['oak', false],
])('"%s" sets two things apart: %s', (word, answer) => {
  expect(setsApart(nameStems(word)[0] ?? word)).toBe(answer);
});

test.each([
  ['bench', 'bench legs', true],
  ['garden bench', 'garden bench legs', true],
  ['garden bench', 'bench legs', false],
  ['bench', 'garden bench', false],
  ['bench', 'bench', false],
  ['bench legs', 'bench', false],
  ['shed', 'bench legs', false],
  ['kitchen window', 'kitchen window opening', false],
])('"%s" is the owner of "%s": %s', (whole, part, answer) => {
  expect(isOwnerOf(whole, part)).toBe(answer);
});
