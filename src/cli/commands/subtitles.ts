import { Command } from 'commander';
import type { MemoView, Utterance } from '../../model/views.ts';
import { EXIT, Problem } from '../../problem.ts';
import { counted } from '../../reports/source-text.ts';
import { givePage } from '../give-page.ts';
import { tell } from '../print.ts';
import { withProject } from '../project-of.ts';
import { oneOf } from '../values.ts';
import { memoOf } from './memos.ts';

const FORMATS = ['vtt', 'srt'] as const;
type Format = (typeof FORMATS)[number];

interface Options {
  readonly as: Format;
  readonly chapters?: boolean;
  readonly out?: string;
}

/** `subtitles`: the words of one recording as WebVTT or SubRip, or its chapters. */
export function subtitlesCommand(): Command {
  return new Command('subtitles')
    .description('write the subtitles of a recording as WebVTT or SubRip')
    .argument('<memo>', 'its number, as memos shows it')
    .option('--as <format>', 'vtt or srt', (value) => oneOf('--as', FORMATS, value), 'vtt' as Format)
    .option('--chapters', 'chapters of the clip instead of its words, as WebVTT')
    .option('--out <file>', 'write a file instead of printing')
    .action((number: string, options: Options, command: Command) =>
      withProject(command, async (project) => {
        if (options.chapters && options.as === 'srt') throw noSuchChapters();
        const memo = memoOf(project, number);
        if (!memo.utterances) throw noRecording(number);
        const text = options.chapters
          ? await chaptersText(memo)
          : await wordsText(memo.utterances, options.as);
        await givePage(project, text, options.out);
      }),
    );
}

async function wordsText(utterances: readonly Utterance[], format: Format): Promise<string> {
  const { CHARACTERS_PER_SECOND, cuesOf, tooFast } = await import('../../reports/subtitles/cues.ts');
  const cues = cuesOf(utterances);
  const fast = tooFast(cues).length;
  if (fast > 0)
    tell(
      `${counted(fast, 'cue')} of ${cues.length}: spoken faster than ${CHARACTERS_PER_SECOND} characters a second; no word was cut`,
    );
  if (format === 'srt') return (await import('../../reports/subtitles/subrip.ts')).subRipOf(cues);
  return (await import('../../reports/subtitles/webvtt.ts')).webVttOf(cues);
}

async function chaptersText(memo: MemoView): Promise<string> {
  const { clipChaptersOf } = await import('../../reports/subtitles/clip-chapters.ts');
  const { vttChaptersOf } = await import('../../reports/subtitles/webvtt.ts');
  return vttChaptersOf(clipChaptersOf(memo));
}

function noSuchChapters(): Problem {
  return new Problem('SubRip has no chapters', {
    code: 'chapters-as-srt',
    exitCode: EXIT.usage,
    next: 'leave --as srt out: chapters are written as WebVTT',
  });
}

function noRecording(number: string): Problem {
  return new Problem(`memo ${number} has no times: it was written, or not heard yet`, {
    code: 'memo-without-times',
    exitCode: EXIT.usage,
    next: 'name a memo that was heard; see: hearwright memos',
  });
}
