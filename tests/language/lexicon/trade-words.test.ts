import { expect, test } from 'vitest';
import { pluralOf, thingWords, tradeWords } from '../../../src/language/lexicon/trade-words.ts';

test('several thousand words and phrases are known', () => {
  expect(tradeWords().size).toBeGreaterThan(8000);
  expect(thingWords().length).toBeGreaterThan(5000);
  expect([...tradeWords()].filter((word) => word.includes(' ')).length).toBeGreaterThan(1500);
});

// One or two of each trade: boat, van, house, timber, metal, resin, electrics, plumbing, stone, workshop.
test.each([
  [
    'garboard plank',
    'futtocks',
    'wheel arches',
    'leaf spring',
    'noggins',
    'hip rafter',
    'birch ply',
    'mortises',
  ],
  [
    'fillet weld',
    'gib strip',
    'peel ply',
    'gelcoat',
    'busbars',
    'heat shrink',
    'stopcock',
    'p trap',
    'voussoirs',
  ],
  ['lime putty', 'spokeshaves', 'marking gauge', 'chamfered', 'planed', 'caulking'],
])('%s, %s, %s, %s and so on', (...words) => {
  for (const word of words) expect(tradeWords().has(word), word).toBe(true);
});

test('every entry is lower case, its words parted by one blank', () => {
  for (const word of tradeWords()) expect(word).toMatch(/^[\p{Ll}\d']+(?: [\p{Ll}\d']+)*$/u);
});

test.each([
  ['sash', 'sashes'],
  ['gully', 'gullies'],
  ['bay', 'bays'],
  ['book shelf', 'book shelves'],
  ['axle box', 'axle boxes'],
  ['mains', 'mains'],
])('more than one %s: %s', (one, many) => expect(pluralOf(one)).toBe(many));
