import { Command } from 'commander';
import type { TranscriptView } from '../../model/transcripts.ts';
import { EXIT, Problem } from '../../problem.ts';
import type { ProjectApi } from '../../project-api.ts';
import { print, printJson } from '../print.ts';
import { withProject } from '../project-of.ts';
import { memoOf } from './memos.ts';

interface Choices {
  readonly use?: boolean;
  readonly json?: boolean;
}

/** `transcripts`: what each engine heard in a memo, and which of them counts. */
export function transcriptsCommand(): Command {
  return new Command('transcripts')
    .description('show what each engine heard in a memo; choose the one that counts')
    .argument('<memo>', 'its number')
    .argument('[transcript]', 'the number of one of them: its words with their times')
    .option('--use', 'let this transcript count from now on')
    .option('--json', 'print JSON')
    .action((memo: string, transcript: string | undefined, choices: Choices, command: Command) =>
      withProject(command, (project) => showTranscripts(project, memo, transcript, choices)),
    );
}

async function showTranscripts(
  project: ProjectApi,
  memoNumber: string,
  number: string | undefined,
  { use, json }: Choices,
): Promise<void> {
  const memo = memoOf(project, memoNumber);
  const all = project.transcripts(memo.id);
  const { transcriptTable, transcriptText } = await import('../../reports/transcript-list.ts');
  if (number === undefined) {
    if (use) throw unknownTranscript('', all);
    return json ? printJson(all) : print(transcriptTable(memo.id, all));
  }
  const chosen = all.find(({ version }) => String(version) === number);
  if (!chosen) throw unknownTranscript(number, all);
  if (!use) return json ? printJson(chosen) : print(transcriptText(chosen));
  project.setByHand({ kind: 'transcript-chosen', memoId: memo.id, version: chosen.version, by: 'person' });
  const now = project.transcripts(memo.id);
  return json ? printJson(now) : print(transcriptTable(memo.id, now));
}

function unknownTranscript(number: string, all: readonly TranscriptView[]): Problem {
  const there = all.map(({ version }) => version).join(', ');
  return new Problem(
    number === '' ? 'say which transcript is to count' : `the memo has no transcript ${number}`,
    {
      code: 'transcript-unknown',
      exitCode: EXIT.usage,
      next: all.length > 0 ? `there are: ${there}` : 'it was written, or is not heard yet',
    },
  );
}
