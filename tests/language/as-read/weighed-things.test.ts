/**
 * What speaks for each thing that a figure may be said of, and for each measure that it may be. The weights are fitted to
 * these; one that is counted otherwise is seen here, also where the same thing comes out.
 */
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { readItems } from '../../../src/language/items/assign-items.ts';
import { bracketed } from '../../kit/bracketed.ts';
import { LEARNED, UNSEEN } from '../../kit/said-of.ts';
import { SIZES_LEARNED, SIZES_UNSEEN } from '../../kit/sizes-said.ts';

const at = (path: string) => fileURLToPath(new URL(path, import.meta.url));
const CONTEXT = { units: 'metric', recordedAt: '2026-05-01T12:00:00Z' } as const;

const told = (features: readonly (readonly [string, number])[]) =>
  features.map(([name, size]) => (size === 1 ? name : `${name} ${Number(size.toFixed(3))}`)).join(', ');

test('what speaks for a thing', async () => {
  const lines = [...UNSEEN, ...LEARNED].flatMap(([said]) => {
    const { text, quantities } = bracketed(said);
    const all: string[] = [`> ${said}`];
    readItems(text, quantities, CONTEXT, {
      observe: (_site, quantity, chosen) => {
        for (const { candidate, features } of chosen?.weighed ?? [])
          all.push(`  ${quantity + 1} ${candidate.name.join(' ')}: ${told(features)}`);
      },
    });
    return all;
  });
  await expect(`${lines.join('\n')}\n`).toMatchFileSnapshot(at('./weighed-things.txt'));
});

test('what speaks for a measure', async () => {
  const lines = [...SIZES_UNSEEN, ...SIZES_LEARNED.filter((_, at) => at % 5 === 0)].flatMap(([said]) => {
    const { text, quantities } = bracketed(said);
    const all: string[] = [`> ${said}`];
    readItems(text, quantities, CONTEXT, {
      observeSize: (_site, quantity, { votes, signs }, name) => {
        const by = votes.map(([source, size]) => `${source} ${size}`).join(', ');
        all.push(`  ${quantity + 1} ${name.join(' ')}: ${by}; ${signs.join(', ')}`);
      },
    });
    return all;
  });
  await expect(`${lines.join('\n')}\n`).toMatchFileSnapshot(at('./weighed-measures.txt'));
});
