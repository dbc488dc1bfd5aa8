/**
 * The bundled way to a microphone, for systems without recording programs: the sound library that decodes files here
 * opens devices too. It runs in a process of its own, because native code prints, and may crash.
 */
import { createRequire } from 'node:module';
import { fileURLToPath, pathToFileURL } from 'node:url';
import type { MicrophoneDevice, MicrophoneSource } from './microphone.ts';
import { openRawCommand, outputOf, type RawCommand } from './raw-command.ts';

export const bundledSource: MicrophoneSource = {
  name: 'bundled recorder',
  async devices() {
    // The library's own lines may stand before it.
    const listed = (await outputOf(childCommand(['list']))).split('\n').at(-1) ?? '';
    return listed === '' ? [] : (JSON.parse(listed) as readonly MicrophoneDevice[]);
  },
  open: (device) =>
    openRawCommand(
      childCommand(device === undefined ? ['record'] : ['record', device]),
      device ?? 'the default microphone',
    ),
};

/** The built child lies beside the built command line; from source it runs through tsx. */
function childCommand(words: readonly string[]): RawCommand {
  if (!import.meta.url.endsWith('.ts')) {
    const file = fileURLToPath(new URL('./microphone-child.js', import.meta.url));
    return { program: process.execPath, words: [file, ...words], soundOn: 3 };
  }
  const loader = pathToFileURL(createRequire(import.meta.url).resolve('tsx')).href;
  const file = fileURLToPath(new URL('../microphone-child.ts', import.meta.url));
  return { program: process.execPath, words: ['--import', loader, file, ...words], soundOn: 3 };
}
