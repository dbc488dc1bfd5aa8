import { expect, test } from 'vitest';
import { bestItem } from '../../src/model/naming.ts';
import type { ItemRow } from '../../src/model/rows.ts';

const item = (id: string, name: string, isApart = false) =>
  ({ id, name, aliases: [], ...(isApart ? { apart: true } : {}) }) as unknown as ItemRow;
const best = (name: string, known: readonly ItemRow[], recent: readonly string[] = []) =>
  bestItem(name, known, recent)?.id;

test('a shorter or a longer name is the thing, where only one goes by it', () => {
  expect(best('top', [item('i1', 'bench top'), item('i2', 'shelf')])).toBe('i1');
  expect(best('oak bench top', [item('i1', 'bench top')])).toBe('i1');
});

test('the same name goes before one that is near', () => {
  expect(best('bench top', [item('i1', 'top'), item('i2', 'bench top')])).toBe('i2');
});

test('of two that are near, the one that the talk was about last is meant, else neither', () => {
  const known = [item('i1', 'bench top'), item('i2', 'table top')];
  expect(best('top', known, ['i1', 'i2'])).toBe('i2');
  expect(best('top', known, ['i2', 'i1'])).toBe('i1');
  expect(best('top', known)).toBeUndefined();
});

test('a thing that a person set apart goes by its own name alone', () => {
  expect(best('top', [item('i1', 'bench top', true)])).toBeUndefined();
  expect(best('Bench Top', [item('i1', 'bench top', true)])).toBe('i1');
});
