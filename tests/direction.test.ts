import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

/** Files of the core: pure, so that the same talk gives the same findings on any day. */
const coreFiles = ['language', 'model', 'reports'].flatMap((folder) =>
  readdirSync(`src/${folder}`, { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.tsx?$/.test(name))
    .map((name) => `src/${folder}/${name}`),
);

test('the core has files to look at', () => {
  expect(coreFiles.length).toBeGreaterThan(5);
});

test.each(coreFiles)('%s asks no clock and rolls no dice', (file) => {
  const code = readFileSync(file, 'utf8').replace(/\/\*[\s\S]*?\*\/|\/\/.*$/gm, '');
  expect(code).not.toMatch(/Date\.now|new Date\(\)|Math\.random|performance\.now|randomUUID/);
});
