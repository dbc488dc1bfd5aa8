import { expect, test } from 'vitest';
import { readItems } from '../../src/language/items/assign-items.ts';
import type { Attribute, KnownFigure } from '../../src/language/notes.ts';
import { bracketed } from '../kit/bracketed.ts';
import { SIZES_LEARNED, SIZES_UNSEEN } from '../kit/sizes-said.ts';

const read = (marked: string) => {
  const { text, quantities } = bracketed(marked);
  return readItems(text, quantities, { units: 'metric', recordedAt: '2026-05-01T12:00:00Z' });
};

test.each(SIZES_UNSEEN)('"%s" tells of the %s', (said, wanted) => {
  const { figures, trace } = read(said);
  expect(figures.map(({ attribute }) => attribute).join(', '), trace.map(({ why }) => why).join('; ')).toBe(
    wanted,
  );
});

test('nearly all that was learnt from is read', () => {
  const missed = SIZES_LEARNED.filter(
    ([said, wanted]) =>
      read(said)
        .figures.map(({ attribute }) => attribute)
        .join(', ') !== wanted,
  );
  expect(missed.length, missed.join('\n')).toBeLessThan(0.06 * SIZES_LEARNED.length);
});

test('a weighed size comes with what speaks for it', () => {
  const step = read('The bench stands [920].').trace.find(({ stage }) => stage === 'size');
  expect(step?.why).toMatch(/^height rather than \w+: \S/);
});

test.each([
  // An adjective behind the number, two numbers of one face, the room in a place: nothing to weigh.
  ['The bench is [920] high.', 'height'],
  ['The bore is [300] deep.', 'depth'],
  ['The hole for the flue is [900] long.', 'length'],
  ['The hatch is [610] by [560].', 'size, size'],
  ['The oven opening is [560] deep by [580].', 'depth, width'],
  ['The coach screws are [10] by [120].', 'diameter, length'],
  ['The serving hatch is [640] clear.', 'width'],
])('"%s" leaves nothing to weigh: %s', (said, wanted) => {
  const { figures, trace } = read(said);
  expect(figures.map(({ attribute }) => attribute).join(', ')).toBe(wanted);
  expect(trace.filter(({ stage }) => stage === 'size')).toEqual([]);
});

const know = (item: string, attribute: Attribute, value: number): KnownFigure => ({
  item,
  attribute,
  value,
  unit: 'mm',
});
test.each([
  // What is said of a thing again is the size that it had, though the talk does not name it.
  ['The kingpost goes to [160].', know('kingpost', 'width', 140), 'width'],
  ['The drip tray should be [1380].', know('drip tray', 'length', 1050), 'length'],
  ['The treads come back to [754].', know('treads', 'length', 770), 'length'],
  ['The loom bench is [735] now.', know('loom bench', 'height', 780), 'height'],
  ['I put the tape on the trough again, [413].', know('trough', 'depth', 405), 'depth'],
  // Unless the words name another, or the number is of another order.
  ['The kingpost is [160] thick.', know('kingpost', 'width', 140), 'thickness'],
  ['The loom bench is [735] wide.', know('loom bench', 'height', 780), 'width'],
  ['The treads are [32].', know('treads', 'length', 770), 'thickness'],
])('"%s" of a thing with %o tells of the %3$s', (said, known, wanted) => {
  const { text, quantities } = bracketed(said);
  const { figures } = readItems(text, quantities, {
    units: 'metric',
    recordedAt: '2026-05-01T12:00:00Z',
    knownItems: [known.item],
    knownFigures: [known],
  });
  expect(figures.map(({ item, attribute }) => [item, attribute])).toEqual([[known.item, wanted]]);
});

test('words beside the number leave nothing to be filled in; a bare number is filled in', () => {
  expect(read('The bench is [920] high.').figures[0]?.assumed ?? []).not.toContain('attribute');
  expect(read('The bench is [920].').figures[0]?.assumed).toContain('attribute');
});
