import { expect, test } from 'vitest';
import { cautionsFor } from '../../../src/model/cautions.ts';
import { CHECKS } from '../../../src/model/checks/all-checks.ts';

const touching = CHECKS.flatMap((check) => (check.touches ?? []).map((word) => [check.name, word] as const));

test.each(touching)('%s touches on "%s", which has a caution', (_check, word) => {
  expect(cautionsFor([word])).not.toEqual([]);
});

test('every check has a name of its own, a formula and a source', () => {
  for (const { name, formula, source, says } of CHECKS) {
    expect(name).toBe(name.toLowerCase());
    for (const words of [formula, source, says]) expect(words).not.toBe('');
  }
  expect(new Set(CHECKS.map(({ name }) => name)).size).toBe(CHECKS.length);
});
