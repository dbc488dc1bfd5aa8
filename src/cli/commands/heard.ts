import { Command } from 'commander';
import type { WordCorrection } from '../../language/notes.ts';
import type { MemoView } from '../../model/views.ts';
import { EXIT, Problem } from '../../problem.ts';
import type { ProjectApi } from '../../project-api.ts';
import { print, printBlocks, printJson } from '../print.ts';
import { withProject } from '../project-of.ts';
import { memoOf } from './memos.ts';

interface Options {
  readonly is?: string;
  readonly right?: boolean;
  readonly memo?: string;
  readonly json?: boolean;
}

/** `heard`: what a recogniser wrote, what it was read as, and the person's word on it. */
export function heardCommand(): Command {
  return new Command('heard')
    .description(
      'show what was heard and what it was read as; put heard words right for this and later memos',
    )
    .argument('[what]', 'a memo (3), a repair in it (m3.h1), or words as they were heard')
    .option('--is <words>', 'what was said: read so here and in every memo heard from now on')
    .option('--right', 'the words were heard right: read as they stand')
    .option('--memo <memo>', 'with words: read this memo again too')
    .option('--json', 'print JSON')
    .action((what: string | undefined, options: Options, command: Command) =>
      withProject(command, async (project) => {
        if (options.is === undefined && !options.right) return show(project, what, options);
        await correct(project, what, options);
      }),
    );
}

async function show(project: ProjectApi, what: string | undefined, { json }: Options): Promise<void> {
  const { correctionsText, markedTalk, repairsText } = await import('../../reports/heard-text.ts');
  if (what === undefined) {
    const corrections = project.corrections();
    return json ? printJson(corrections) : printBlocks(correctionsText(corrections));
  }
  const memo = memoOf(project, what);
  if (json) return printJson({ text: memo.text, repairs: memo.repairs ?? [] });
  const repairs = repairsText(memo);
  printBlocks(`${markedTalk(memo)}\n${repairs || 'Everything was read as it was heard.\n'}`);
}

async function correct(project: ProjectApi, what: string | undefined, options: Options): Promise<void> {
  if (what === undefined || (options.is !== undefined) === (options.right === true)) throw wordMismatch();
  const { heard, memo } = subjectOf(project, what, options.memo);
  const means = options.right ? heard : wordsOf(options.is ?? '');
  if (heard === '' || means === '') throw wordMismatch();
  const correction: WordCorrection = { heard, means };
  const done = await project.correctWords(correction, memo?.id);
  if (!done.ok) throw done.problem;
  const learned = heard === means ? `"${heard}" stays as it is heard` : `"${heard}" is read as "${means}"`;
  print(
    memo ? `${learned}; memo ${memo.id.slice(1)} was read again.` : `${learned} in memos heard from now on.`,
  );
}

interface Subject {
  readonly heard: string;
  /** The memo that is read again. */
  readonly memo?: MemoView;
}

function subjectOf(project: ProjectApi, what: string, memoNumber: string | undefined): Subject {
  const place = /^(m\d+)\.h\d+$/.exec(what);
  if (!place) {
    const heard = wordsOf(what);
    return memoNumber === undefined ? { heard } : { heard, memo: memoOf(project, memoNumber) };
  }
  const memo = memoOf(project, place[1] as string);
  const repair = memo.repairs?.find(({ id }) => id === what);
  if (!repair) throw unknownRepair(what, memo);
  return { heard: wordsOf(repair.quote), memo };
}

/** Lower case, words parted by one blank: as heard words are compared. */
const wordsOf = (text: string) =>
  (
    text
      .toLowerCase()
      .replaceAll('’', "'")
      .match(/[\p{L}\d][\p{L}\p{M}\d']*/gu) ?? []
  ).join(' ');

function unknownRepair(id: string, memo: MemoView): Problem {
  return new Problem(`no words of memo ${memo.id.slice(1)} were read otherwise under the id "${id}"`, {
    code: 'repair-unknown',
    exitCode: EXIT.usage,
    next: `see the ids with: hearwright heard ${memo.id.slice(1)}`,
  });
}

function wordMismatch(): Problem {
  return new Problem('heard takes words, or the id of a repair, with either --is or --right', {
    code: 'heard-words-off',
    exitCode: EXIT.usage,
    next: 'for example: hearwright heard "play them" --is ply, or: hearwright heard m3.h1 --right',
  });
}
