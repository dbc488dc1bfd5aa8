import fc from 'fast-check';
import { expect, test } from 'vitest';
import { ItemIndex } from '../../src/model/item-index.ts';
import { isLike, itemStems, leastShared } from '../../src/model/items.ts';
import { nameStems } from '../../src/model/names.ts';
import type { ItemRow } from '../../src/model/rows.ts';

const WORDS = ['oak', 'bench', 'top', 'port', 'window', 'opening', 'rail'];
const name = fc
  .uniqueArray(fc.constantFrom(...WORDS), { minLength: 1, maxLength: 4 })
  .map((words) => words.join(' '));
const thing = (number: number, said: string, aliases: readonly string[] = []): ItemRow => ({
  ...{ id: `i${number}`, name: said, words: nameStems(said), aliases },
});
const ids = (rows: readonly ItemRow[]) => rows.map(({ id }) => id);

/** Things, some of which get another name later. */
const things = fc.array(fc.tuple(name, fc.option(name, { nil: undefined })), { minLength: 1, maxLength: 25 });

function told(said: readonly (readonly [string, string | undefined])[]): readonly ItemRow[] {
  return said.map(([first, other], at) => thing(at + 1, first, other === undefined ? [] : [other]));
}

function filed(said: readonly (readonly [string, string | undefined])[], index: ItemIndex): void {
  said.forEach(([first], at) => {
    index.put(thing(at + 1, first));
  });
  for (const row of told(said)) if (row.aliases.length > 0) index.put(row);
}

test('things are found by their words as if each of them were asked', () => {
  fc.assert(
    fc.property(things, name, (said, wanted) => {
      const index = new ItemIndex();
      filed(said, index);
      const stems = nameStems(wanted);
      const all = told(said);
      const shared = (item: ItemRow) => itemStems(item).filter((stem) => stems.includes(stem)).length;
      expect(ids(index.sharing(stems))).toEqual(ids(all.filter((item) => shared(item) > 0)));
      expect(ids(index.like(stems))).toEqual(ids(all.filter((item) => isLike(item, stems))));
      const near = all
        .filter((item) => shared(item) > 0)
        .sort((a, b) => shared(b) - shared(a) || all.indexOf(b) - all.indexOf(a))
        .slice(0, 3);
      expect(ids(index.near(stems, 3)).sort()).toEqual(ids(near).sort());
    }),
    { numRuns: 500, seed: 20261126 },
  );
});

test('with a shelf the same things are found, each word and each thing fetched once', () => {
  const all = ['oak bench top', 'port bench', 'port rail'].map((said, at) => thing(at + 1, said));
  const fetched: string[] = [];
  const index = new ItemIndex({
    row: (id) => {
      fetched.push(id);
      return all.find((item) => item.id === id);
    },
    holders: (word) => {
      fetched.push(word);
      return all
        .filter((item) => itemStems(item).includes(word))
        .map((item) => ({ id: item.id, least: leastShared(item) }));
    },
  });
  for (let time = 0; time < 3; time++) expect(ids(index.sharing(['bench']))).toEqual(['i1', 'i2']);
  expect(fetched).toEqual(['bench', 'i1', 'i2']);
  const put = (row: ItemRow) => {
    all[Number(row.id.slice(1)) - 1] = row;
    index.put(row);
  };
  put(thing(4, 'ash bench'));
  expect(ids(index.sharing(['bench']))).toEqual(['i1', 'i2', 'i4']);
  // Put again it is found once, and by its other name too.
  put(thing(2, 'port bench', ['rail bench']));
  expect(ids(index.near(['bench', 'rail'], 1))).toEqual(['i2']);
  // What is no thing's id is none, though it ends in the number of one.
  expect(index.row('+2')).toBeUndefined();
});
