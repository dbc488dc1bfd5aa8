import { parse } from 'node:path';
import { Command } from 'commander';
import type { ProjectApi } from '../../project-api.ts';
import type { PublishedFilm } from '../../reports/cut/programme.ts';
import { daysAsked } from '../days-asked.ts';
import { givePage } from '../give-page.ts';
import { withProject } from '../project-of.ts';
import { oneOf } from '../values.ts';

/** `episode`: the outline of the days from FROM to TO. */
export function episodeCommand(): Command {
  return new Command('episode')
    .description('write the outline of an episode')
    .argument('[from]', 'first day, YYYY-MM-DD; without it the week up to the latest talk')
    .argument('[to]', 'last day; without it the latest day with talk')
    .option('--film <file>', 'cut list of a film that is out, as often as there are some', collected, [])
    .option('--out <file>', 'write a file instead of printing')
    .addCommand(chaptersCommand())
    .addCommand(correctionsCommand())
    .action((from: string | undefined, to: string | undefined, options: OutlineOptions, command: Command) =>
      withProject(command, async (project) => {
        const { episodePage } = await import('../../reports/episode.ts');
        const [first, last] = daysAsked(project, 'episode', from, to);
        const films = await filmsFrom(project, options.film);
        const page = episodePage(project.span(first, last), project.info, project.figures(), films);
        await givePage(project, page, options.out);
      }),
    );
}

interface OutlineOptions {
  readonly out?: string;
  readonly film: readonly string[];
}

const collected = (file: string, before: readonly string[]): readonly string[] => [...before, file];

/** Films that are out, each by the name of its cut list. */
async function filmsFrom(project: ProjectApi, files: readonly string[]): Promise<readonly PublishedFilm[]> {
  if (files.length === 0) return [];
  const { programmeFrom } = await import('../cut-file.ts');
  return files.map((file) => ({ name: parse(file).name, programme: programmeFrom(project, file) }));
}

const CHAPTER_FORMATS = ['list', 'vtt'] as const;
type ChapterFormat = (typeof CHAPTER_FORMATS)[number];

interface CutOptions {
  readonly cut: string;
  readonly out?: string;
}

/** `episode chapters`: chapters of the finished film, from its cut list. */
function chaptersCommand(): Command {
  return new Command('chapters')
    .description('write the chapters of a finished film from its cut list')
    .requiredOption('--cut <file>', 'the cut list: clip, in and out of each stretch, in programme order')
    .option(
      '--as <format>',
      'list or vtt',
      (value) => oneOf('--as', CHAPTER_FORMATS, value),
      'list' as ChapterFormat,
    )
    .option('--out <file>', 'write a file instead of printing')
    .action((_options: object, command: Command) =>
      withProject(command, async (project) => {
        // The outline has an --out of its own: what is said behind the second word counts too.
        const options: CutOptions & { readonly as: ChapterFormat } = command.optsWithGlobals();
        const { chapterRulesBroken, programmeFrom } = await import('../cut-file.ts');
        const { chapterLines, chapterSpans, filmChaptersOf } = await import(
          '../../reports/cut/film-chapters.ts'
        );
        const programme = programmeFrom(project, options.cut);
        const found = filmChaptersOf(programme);
        if (!found.ok) throw chapterRulesBroken(found.faults);
        const { vttChaptersOf } = await import('../../reports/subtitles/webvtt.ts');
        const text =
          options.as === 'vtt'
            ? vttChaptersOf(chapterSpans(found.chapters, programme))
            : chapterLines(found.chapters);
        await givePage(project, text, options.out);
      }),
    );
}

/** `episode corrections`: what a published film says and no longer holds. */
function correctionsCommand(): Command {
  return new Command('corrections')
    .description('write what a published film says and no longer holds, with its time there')
    .requiredOption('--cut <file>', 'the cut list of that film')
    .option('--out <file>', 'write a file instead of printing')
    .action((_options: object, command: Command) =>
      withProject(command, async (project) => {
        const options: CutOptions = command.optsWithGlobals();
        const { programmeFrom } = await import('../cut-file.ts');
        const { filmCorrectionsPage } = await import('../../reports/cut/film-corrections.ts');
        const programme = programmeFrom(project, options.cut);
        const page = filmCorrectionsPage(programme, project.figures(), project.findings(), project.info);
        await givePage(project, page, options.out);
      }),
    );
}
