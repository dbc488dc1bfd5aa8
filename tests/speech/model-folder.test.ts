import { cpSync, mkdtempSync, readFileSync, realpathSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { checkedModelFiles, modelFolder } from '../../src/speech/model-folder.ts';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'models-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

test('the bundled files are found beside package.json and are whole', async () => {
  const files = await checkedModelFiles();
  expect(files).toMatchObject({
    ok: true,
    value: { encoder: join(modelFolder(), 'moonshine-tiny-encoder.onnx') },
  });
});

test('an empty models folder is said plainly, with the command that fills it', async () => {
  const files = await checkedModelFiles(folder);
  expect(files).toMatchObject({
    ok: false,
    problem: {
      code: 'models-missing',
      message: 'cannot hear recordings: models/moonshine-tiny-encoder.onnx is missing',
      next: 'in the package folder run: npm run prepare (it is left out by npm ci --ignore-scripts)',
    },
  });
});

test('one changed byte is found before the native runtime sees it', async () => {
  cpSync(realpathSync(modelFolder()), folder, { recursive: true });
  const path = join(folder, 'silero-vad.onnx');
  const bytes = readFileSync(path);
  bytes[1000] = (bytes[1000] ?? 0) ^ 1;
  writeFileSync(path, bytes);
  expect(await checkedModelFiles(folder)).toMatchObject({
    ok: false,
    problem: { code: 'models-damaged', message: 'cannot hear recordings: models/silero-vad.onnx is damaged' },
  });
});
