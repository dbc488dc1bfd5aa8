import { Command } from 'commander';
import { EXIT, Problem } from '../../problem.ts';
import { givePage } from '../give-page.ts';
import { withProject } from '../project-of.ts';
import { memoOf } from './memos.ts';

/** `subtitles`: the words of one recording as WebVTT. */
export function subtitlesCommand(): Command {
  return new Command('subtitles')
    .description('write the subtitles of a recording as WebVTT')
    .argument('<memo>', 'its number, as memos shows it')
    .option('--out <file>', 'write a file instead of printing')
    .action((number: string, options: { out?: string }, command: Command) =>
      withProject(command, async (project) => {
        const memo = memoOf(project, number);
        if (!memo.utterances) throw noRecording(number);
        const { subtitlesOf } = await import('../../reports/subtitles.ts');
        await givePage(project, subtitlesOf(memo.utterances), options.out);
      }),
    );
}

function noRecording(number: string): Problem {
  return new Problem(`memo ${number} has no times: it was written, or not heard yet`, {
    code: 'memo-without-times',
    exitCode: EXIT.usage,
    next: 'name a memo that was heard; see: hearwright memos',
  });
}
