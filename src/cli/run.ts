/** Runs one call of the command line and sets the exit code. */
import { EXIT } from '../problem.ts';
import { buildProgram } from './program.ts';
import { reportProblem } from './report-problem.ts';

/**
 * A reader that has seen enough (`| head`) is no error. Nor is a terminal that was closed: what is under way is brought to
 * its end without it.
 */
function stopQuietlyWhenNobodyReads(): void {
  for (const stream of [process.stdout, process.stderr]) {
    stream.on('error', (error: NodeJS.ErrnoException) => {
      if (error.code === 'EPIPE') process.exit(EXIT.done);
      if (error.code === 'EIO') return;
      throw error;
    });
  }
}

/** Runs the words of one call; every failure ends here, is printed once and becomes an exit code. */
export async function runCommandLine(words: readonly string[]): Promise<void> {
  stopQuietlyWhenNobodyReads();
  process.exitCode = EXIT.done;
  try {
    const program = buildProgram();
    const { operands, unknown } = program.parseOptions([...words]);
    const plain = operands.length === 0 && unknown.length === 0;
    await program.parseAsync(plain ? [...words, 'screen'] : [...words], { from: 'user' });
  } catch (error) {
    process.exitCode = reportProblem(error, words.includes('--verbose'));
  }
}
