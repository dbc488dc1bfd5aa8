import { readFileSync, statSync } from 'node:fs';
import { Command } from 'commander';
import { EXIT, Problem } from '../../problem.ts';
import { readProblem } from '../../text-file.ts';
import { absentText } from '../absent-text.ts';
import { print } from '../print.ts';

/** A longer text fits in no string; the export of ten years of talk has less than a quarter of it. */
const MOST_BYTES = 500_000_000;

/** `import`: an export becomes a project again. */
export function importCommand(): Command {
  return new Command('import')
    .description('make a project again from an export')
    .argument('<file>', 'what export --json printed; - for standard input')
    .requiredOption('--into <dir>', 'a folder that is empty or not there yet')
    .action(async (file: string, { into }: { readonly into: string }) => {
      const { importProject } = await import('../../importing/import-project.ts');
      const { counted } = await import('../../reports/source-text.ts');
      const { oneLine } = await import('../../reports/words.ts');
      const name = file === '-' ? 'standard input' : file;
      const { events, memos, originals, absent, differs } = importProject(textOf(file), name, into);
      print(
        `Imported into ${oneLine(into)}: ${counted(events, 'event')}, ${counted(memos, 'memo')}, ${counted(originals, 'original')}.`,
      );
      if (absent.length > 0) print(absentText(absent));
      if (differs.length > 0)
        print(
          `Worked out from the log, these parts differ from the document: ${differs.join(', ')}. It was changed by hand, or another version wrote it.`,
        );
    });
}

function textOf(file: string): string {
  try {
    const size = file === '-' ? 0 : statSync(file).size;
    if (size > MOST_BYTES) throw tooLong(file, size);
    return new TextDecoder('utf-8', { fatal: true }).decode(readFileSync(file === '-' ? 0 : file));
  } catch (error) {
    if (error instanceof Problem) throw error;
    if (error instanceof TypeError) throw notText(file);
    throw readProblem(error, file, 'import');
  }
}

function tooLong(file: string, bytes: number): Problem {
  return new Problem(`cannot import ${file}: ${bytes} bytes are more than an export can have`, {
    code: 'import-unread',
    exitCode: EXIT.partly,
    kept: 'the document was left as it was, and nothing was written',
    next: 'name a file that hearwright export --json wrote',
  });
}

function notText(file: string): Problem {
  return new Problem(`cannot import ${file}: it is not UTF-8 text`, {
    code: 'text-not-utf8',
    exitCode: EXIT.partly,
    kept: 'the document was left as it was, and nothing was written',
    next: 'name a file that hearwright export --json wrote',
  });
}
