/**
 * Measures how long the pages of a made-up build take to write, at several sizes.
 * Usage: npm run bench:pages -- [--processor] [SIZE...]      sizes are multiples of ten years; without any: 0.1 1
 * With --processor the time is that of the processor: on a busy machine the clock tells how busy it is.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { writeSite } from '../src/cli/site-files.ts';
import { siteSourceOf } from '../src/cli/site-source-of.ts';
import { openNearestProject } from '../src/project.ts';
import type { ProjectApi } from '../src/project-api.ts';
import { journalPage } from '../src/reports/journal.ts';
import { sitePages } from '../src/reports/pages/site.ts';
import { makeBuild } from './bench/made-builds.ts';
import { atMost, type Promised, tellPromises } from './bench/promises.ts';

/** Promised of a project of ten years. */
const LIMITS = { site: 60, again: 60, journal: 0.2 } as const;

const words = process.argv.slice(2);
const byProcessor = words.includes('--processor');

function seconds(): number {
  if (!byProcessor) return performance.now() / 1000;
  const { user, system } = process.cpuUsage();
  return (user + system) / 1e6;
}

function timed<T>(work: () => T): { readonly took: number; readonly value: T } {
  const started = seconds();
  const value = work();
  return { took: seconds() - started, value };
}

/** The middle of several days: the slowest of them may be the first, which reads what the others find held. */
function journalOf(project: ProjectApi): number {
  const days = project.days();
  const times = Array.from({ length: 9 }, (_, part) => {
    const date = days[Math.floor((days.length - 1) * (part / 8))] ?? '';
    return timed(() => {
      const day = project.day(date);
      return day && journalPage(day, project.info);
    }).took;
  });
  return times.sort((a, b) => a - b)[4] ?? 0;
}

/** What was measured; of other sizes than ten years nothing is promised. */
async function measure(size: number): Promise<readonly Promised[]> {
  const folder = mkdtempSync(join(tmpdir(), 'bench-pages-'));
  try {
    makeBuild(folder, size);
    const project = await openNearestProject(folder);
    let bytes = 0;
    const write = () => {
      const source = siteSourceOf(project);
      if (!source) throw new Error('nothing is on record');
      bytes = 0;
      const counted = function* () {
        for (const page of sitePages(source)) {
          bytes += page.text.length;
          yield page;
        }
      };
      return writeSite(join(folder, 'site'), counted(), join(folder, '.hearwright'));
    };
    const first = timed(write);
    const again = timed(write);
    const journal = journalOf(project);
    project.close();
    console.log(
      `${size} x ten years: ${first.value.pages.toLocaleString('en')} files, ${(bytes / 1e6).toFixed(0)} MB`,
    );
    const rows: readonly (readonly [what: string, took: number, limit: number])[] = [
      ['write the site', first.took, LIMITS.site],
      ['write it again, nothing changed', again.took, LIMITS.again],
      ["a day's journal, the middle of nine", journal, LIMITS.journal],
    ];
    return rows.map(([what, took, limit]) =>
      size === 1
        ? atMost(`${what}, ten years`, took, limit, 's')
        : { what: `${what}, ${size} of it`, measured: `${took.toFixed(2)} s` },
    );
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

const sizes = words.filter((word) => !word.startsWith('--')).map(Number);
const rows: Promised[] = [];
for (const size of sizes.length > 0 ? sizes : [0.1, 1]) rows.push(...(await measure(size)));
tellPromises(rows);
