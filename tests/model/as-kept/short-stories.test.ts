/**
 * What a project tells at the end of short stories, each of which turns on one thing: a slip, a gate, a sum, a limit, a
 * name. A change in these files is a change of what is told: look the diff over before it is kept (DEVELOPERS.md).
 */
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { toldAnew } from '../../kit/short-stories.ts';

const folder = fileURLToPath(new URL('./short/', import.meta.url));

test.each(readdirSync(folder).sort())('%s', { timeout: 60_000 }, async (name) => {
  const file = `${folder}${name}`;
  await expect(toldAnew(readFileSync(file, 'utf8'))).toMatchFileSnapshot(file);
});
