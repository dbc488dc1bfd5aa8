/** The thread that works for the screen: it holds the project, so that no reading or writing keeps a key waiting. */
import { join } from 'node:path';
import { parentPort, workerData } from 'node:worker_threads';
import { now } from '../instant.ts';
import { EXIT, Problem } from '../problem.ts';
import { openNearestProject } from '../project.ts';
import { openingOf, ScreenHost } from '../tui/screen-host.ts';
import { pageRecordOf, writePage } from './page-file.ts';
import { type FromWorker, messagesOf, type ToWorker } from './screen-messages.ts';

const port = parentPort;
if (!port) throw new Error('this file runs as a thread of the screen');
const tell = (message: FromWorker) => port.postMessage(message);

function problemTold(error: unknown): FromWorker {
  if (!(error instanceof Problem))
    return {
      kind: 'problem',
      problem: {
        message: error instanceof Error ? error.message : String(error),
        code: 'unexpected',
        exitCode: EXIT.unexpected,
      },
    };
  const { message, code, exitCode, kept, next } = error;
  return {
    kind: 'problem',
    problem: { message, code, exitCode, ...(kept ? { kept } : {}), ...(next ? { next } : {}) },
  };
}

try {
  const { folder } = workerData as { readonly folder: string };
  const project = await openNearestProject(folder);
  const host = new ScreenHost({
    project,
    now,
    save: (file, text) => writePage(join(folder, file), text, pageRecordOf(folder)),
    emit: (event) => {
      for (const message of messagesOf(event)) tell(message);
    },
  });
  tell({ kind: 'opened', json: JSON.stringify(openingOf(project, now())) });
  port.on('message', (message: ToWorker) => {
    if (message.kind === 'perform') {
      host.perform(message.effect);
      return;
    }
    project.close();
    tell({ kind: 'closed' });
    port.close();
  });
} catch (error) {
  tell(problemTold(error));
}
