import { readFileSync, statSync } from 'node:fs';
import { basename } from 'node:path';
import { Command } from 'commander';
import { now } from '../../instant.ts';
import type { HouseUnits } from '../../language/notes.ts';
import { Problem } from '../../problem.ts';
import { refuseLongText } from '../../text-file.ts';
import { print, printBlocks, printJson } from '../print.ts';
import { instantValue, regionValue, unitsValue } from '../values.ts';

interface Options {
  readonly units?: HouseUnits;
  readonly region?: string;
  readonly at?: string;
  readonly json?: boolean;
  readonly trace?: boolean;
}

/** `read`: reads one text without a project. */
export function readCommand(): Command {
  return new Command('read')
    .description('read one text without a project and show its notes')
    .argument('<file>', 'a text file, or - for standard input')
    .option('--units <system>', 'which system bare numbers belong to: metric, us or mixed', unitsValue)
    .option('--region <cc>', 'country code: settles gallon, ton, dollar and the order of dates', regionValue)
    .option('--at <instant>', 'when it was said, ISO 8601', instantValue)
    .option('--json', 'print one memo object')
    .option('--trace', 'show for each note which rule read it, what changed it, and what was dropped or lost')
    .action(async (file: string, options: Options) => {
      const { notesText } = await import('../../reports/memo-list.ts');
      const { traceText } = await import('../../reports/trace-text.ts');
      const { decodeText, readProblem } = await import('../../text-file.ts');
      const { readMemo } = await import('../../language/pipeline.ts');
      const { memoObject } = await import('../../model/export.ts');
      const name = file === '-' ? 'standard input' : file;
      const bytes = bytesOf(file, (error) => readProblem(error, file, 'read'));
      const text = decodeText(bytes, name, 'read');
      const recordedAt = options.at ?? now();
      const { notes, trace } = readMemo(text, {
        units: options.units ?? 'metric',
        ...(options.region ? { region: options.region } : {}),
        recordedAt,
        ...(options.trace ? { explain: true } : {}),
      });
      if (options.json) {
        const memo = memoObject({ id: 'm1', recordedAt, source: basename(name), text, notes });
        printJson(options.trace ? { ...memo, trace } : memo);
      } else if (options.trace) printBlocks(traceText(notes, trace, text));
      else print(notesText(notes));
    });
}

function bytesOf(file: string, problemOf: (error: unknown) => Error): Buffer {
  try {
    if (file !== '-') refuseLongText(statSync(file).size, file, 'read');
    return readFileSync(file === '-' ? 0 : file);
  } catch (error) {
    throw error instanceof Problem ? error : problemOf(error);
  }
}
