import { describe, expect, test } from 'vitest';
import { readItems } from '../../src/language/items/assign-items.ts';
import { FRAMES } from '../../src/language/items/frames/index.ts';
import { bracketed } from '../kit/bracketed.ts';

const read = (marked: string) => {
  const { text, quantities } = bracketed(marked);
  const { figures, trace } = readItems(text, quantities, {
    units: 'metric',
    recordedAt: '2026-05-01T12:00:00Z',
  });
  return { items: figures.map((figure) => figure.item), rules: trace.map((step) => step.rule) };
};

test('every frame has a name of its own', () => {
  expect(new Set(FRAMES.map((frame) => frame.name)).size).toBe(FRAMES.length);
});

for (const frame of FRAMES.filter(({ examples }) => examples.length > 0)) {
  describe(frame.name, () => {
    test.each(frame.examples)('"%s" is about %s', (said, item) => {
      const { items, rules } = read(said);
      expect({ items: items.join(', '), fired: rules.includes(frame.name) }, rules.join(', ')).toEqual({
        items: item,
        fired: true,
      });
    });
    test.each(frame.leaves.filter((said) => said.includes('[')))('"%s" is left to others', (said) => {
      expect(read(said).rules).not.toContain(frame.name);
    });
  });
}
