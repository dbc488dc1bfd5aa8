import fc from 'fast-check';
import { expect, test } from 'vitest';
import { RowIndex } from '../../src/model/row-index.ts';

interface Board {
  readonly id: string;
  readonly woods: readonly string[];
}
const entry = (ord: number, row: Board) => ({ key: row.id, ord, since: 0, row });

test('rows are found by each of their values, in the order of first writing, and counted', () => {
  const index = new RowIndex<Board>(({ woods }) => woods);
  const [first, second] = [
    entry(1, { id: 'a', woods: ['oak', 'ash'] }),
    entry(2, { id: 'b', woods: ['oak'] }),
  ];
  index.put(second, undefined);
  index.put(first, undefined);
  expect([index.count('oak'), index.count('ash'), index.count('elm')]).toEqual([2, 1, 0]);
  expect(index.findAny(['ash', 'oak']).map(({ id }) => id)).toEqual(['a', 'b']);
  expect(index.findAny(['ash']).map(({ id }) => id)).toEqual(['a']);
});

test('a row that gave way is found no longer by what it had', () => {
  const index = new RowIndex<Board>(({ woods }) => woods);
  const one = entry(1, { id: 'a', woods: ['oak'] });
  index.put(one, undefined);
  const before = one.row;
  one.row = { id: 'a', woods: ['elm'] };
  index.put(one, before);
  expect([index.count('oak'), index.count('elm')]).toEqual([0, 1]);
});

test('the latest rows of a value are those of any order of asking and putting', () => {
  const index = new RowIndex<Board>(({ woods }) => woods);
  const latest = (limit: number) => index.latest('oak', limit).map(({ id }) => id);
  expect(latest(2)).toEqual([]);
  const boards = ['a', 'b', 'c', 'd'].map((id, at) => entry(at + 1, { id, woods: ['oak'] }));
  for (const board of boards.slice(0, 3)) index.put(board, undefined);
  expect([latest(1), latest(2), latest(9)]).toEqual([['c'], ['b', 'c'], ['a', 'b', 'c']]);
  index.put(boards[3] as (typeof boards)[0], undefined);
  expect(latest(2)).toEqual(['c', 'd']);
  // One goes, and comes back to its old place.
  const gone = boards[1] as (typeof boards)[0];
  const [oak, ash] = [gone.row, { id: 'b', woods: ['ash'] }];
  gone.row = ash;
  index.put(gone, oak);
  expect(latest(9)).toEqual(['a', 'c', 'd']);
  gone.row = oak;
  index.put(gone, ash);
  expect(latest(9)).toEqual(['a', 'b', 'c', 'd']);
});

test('what was found by a value is another list once a row of it changed, and the same one until then', () => {
  const index = new RowIndex<Board>(({ woods }) => woods);
  const one = entry(1, { id: 'a', woods: ['oak'] });
  index.put(one, undefined);
  index.put(entry(2, { id: 'b', woods: ['elm'] }), undefined);
  const found = index.find('oak');
  expect(index.find('oak')).toBe(found);
  const before = one.row;
  one.row = { id: 'a', woods: ['oak', 'elm'] };
  index.put(one, before);
  expect(index.find('oak')).toEqual([one.row]);
  expect(index.find('elm').map(({ id }) => id)).toEqual(['a', 'b']);
  expect(found).toEqual([before]);
});

test('rows with one value and so many of some others are those that a search through all of them finds', () => {
  const wood = fc.constantFrom('oak', 'ash', 'elm', 'fir');
  const boards = fc.array(fc.uniqueArray(wood), { maxLength: 20 });
  fc.assert(
    fc.property(
      boards,
      wood,
      fc.uniqueArray(wood),
      fc.integer({ min: 0, max: 3 }),
      (all, own, more, least) => {
        const index = new RowIndex<Board>(({ woods }) => woods);
        const others = more.filter((one) => one !== own);
        const rows = all.map((woods, at): Board => ({ id: `b${at}`, woods }));
        rows.forEach((row, at) => {
          index.put(entry(at + 1, row), undefined);
        });
        const wanted = rows.filter(
          ({ woods }) => woods.includes(own) && others.filter((one) => woods.includes(one)).length >= least,
        );
        expect(index.findWith(own, others, least)).toEqual(wanted);
      },
    ),
    { numRuns: 500, seed: 20261126 },
  );
});
