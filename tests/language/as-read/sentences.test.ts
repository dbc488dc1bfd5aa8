/**
 * What is read from sentences of many trades, with every field and the reasons. A change in these files is a change of
 * what is read: look the diff over before it is kept (DEVELOPERS.md).
 */
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { readAnew } from '../../kit/as-read.ts';

const folder = fileURLToPath(new URL('./said/', import.meta.url));

test.each(readdirSync(folder).sort())('%s', { timeout: 60_000 }, async (name) => {
  const file = `${folder}${name}`;
  await expect(readAnew(readFileSync(file, 'utf8'))).toMatchFileSnapshot(file);
});
