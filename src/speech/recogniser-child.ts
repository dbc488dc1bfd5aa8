/**
 * The recogniser's own process. Native code that prints, grows or crashes does so here: the parent only loses
 * this child. Reads samples on standard input until its end, answers over the message channel.
 */
import { floatsFrom } from './float-stream.ts';
import { Listener } from './recogniser/listener.ts';
import type { RecogniserMessage, RecogniserSetup } from './recogniser/messages.ts';
import { SAMPLE_RATE } from './recogniser/sample-rate.ts';

async function main(): Promise<void> {
  const setup = JSON.parse(process.argv[2] ?? '') as RecogniserSetup;
  const listener = await Listener.load(setup);
  // What the models were read from is not needed any more.
  globalThis.gc?.();
  await tell({ kind: 'ready' });
  let samplesHeard = 0;
  const progress = () => {
    const { spokenUntil } = listener;
    return {
      kind: 'progress',
      secondsHeard: samplesHeard / SAMPLE_RATE,
      ...(spokenUntil === undefined ? {} : { spokenUntil: spokenUntil / SAMPLE_RATE }),
    } as const;
  };
  for await (const samples of floatsFrom(process.stdin)) {
    samplesHeard += samples.length;
    for await (const heard of listener.accept(samples)) {
      await tell({ ...progress(), ...heard });
      if (listener.leavesMemory) globalThis.gc?.();
    }
    await tell(progress());
  }
  for await (const heard of listener.finish()) await tell({ ...progress(), ...heard });
  await tell({ kind: 'done' });
}

function tell(message: RecogniserMessage): Promise<void> {
  return new Promise((resolve, reject) => {
    process.send?.(message, (error: Error | null) => (error ? reject(error) : resolve()));
  });
}

// Control-C on the terminal, or its end, is for the parent, which may still want the last words.
for (const name of ['SIGINT', 'SIGHUP'] as const) process.on(name, () => {});
// A program that was started from here ends first: see `whisperRecogniser`.
process.on('SIGTERM', () => process.exit(143));
// A parent that is gone needs no answer.
process.on('disconnect', () => process.exit(0));
try {
  await main();
  process.disconnect();
} catch (error) {
  await tell({ kind: 'failed', reason: String(error) }).catch(() => {});
  process.exit(1);
}
