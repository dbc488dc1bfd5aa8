/**
 * Measures how long the pages of a made-up build take to write, at several sizes.
 * Usage: npm run bench:pages -- [--processor] [SIZE...]      sizes are multiples of ten years; without any: 0.1 1
 * With --processor the time is that of the processor: on a busy machine the clock tells how busy it is.
 */
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { writeSite } from '../src/cli/site-files.ts';
import { siteSourceOf } from '../src/cli/site-source-of.ts';
import { openNearestProject } from '../src/project.ts';
import type { ProjectApi } from '../src/project-api.ts';
import { journalPage } from '../src/reports/journal.ts';
import { sitePages } from '../src/reports/pages/site.ts';
import { createStore } from '../src/store/store.ts';
import { tenYearBuild } from '../tests/kit/ten-year-build.ts';

/** Promised of a project of ten years. */
const LIMITS = { site: 60, again: 60, journal: 0.2 } as const;
const AT_ONCE = 100;

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

function build(folder: string, size: number): void {
  mkdirSync(join(folder, '.hearwright'));
  const store = createStore(join(folder, '.hearwright', 'project.db'), {
    name: 'ten years',
    units: 'mixed',
    at: '2017-01-01T08:00:00Z',
  });
  let left = [];
  for (const { events } of tenYearBuild(size)) {
    left.push(...events);
    if (left.length < AT_ONCE) continue;
    store.append(left);
    left = [];
  }
  store.append(left);
  store.close();
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

async function measure(size: number): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'bench-pages-'));
  try {
    build(folder, size);
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
    const line = (what: string, took: number, limit: number) => {
      const missed = size === 1 && took > limit ? '  missed' : '';
      console.log(`  ${what.padEnd(34)} ${took.toFixed(2).padStart(8)} s   limit ${limit} s${missed}`);
    };
    line('write the site', first.took, LIMITS.site);
    line('write it again, nothing changed', again.took, LIMITS.again);
    line("a day's journal, the middle of nine", journal, LIMITS.journal);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

const sizes = words.filter((word) => !word.startsWith('--')).map(Number);
for (const size of sizes.length > 0 ? sizes : [0.1, 1]) await measure(size);
