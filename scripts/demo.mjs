// Takes the sample memos in, from sound to pages, through the real command line.
//   node scripts/demo.mjs [FOLDER]     FOLDER: ./demo-out without it
import { spawnSync } from 'node:child_process';
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, relative, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const cli = join(root, 'dist', 'cli.js');
const samples = join(root, 'samples');
const build = JSON.parse(readFileSync(join(samples, 'memos.json'), 'utf8'));

/** Marks a folder that an earlier demo made, and that the next one may empty. */
const MARK = '.made-by-the-demo';
/** Next steps are asked for the morning after the last memo, not for the day of the demo. */
const MORNING_AFTER = '2026-04-14';

const started = performance.now();
const seconds = () => `${((performance.now() - started) / 1000).toFixed(0)} s`;
const say = (text = '') => process.stdout.write(`${text}\n`);

/** Runs one command. What it prints to standard error goes to this terminal when `shown`. A failure ends the demo. */
function hearwright(folder, words, shown = false) {
  const run = spawnSync(process.execPath, [cli, '--project', folder, ...words], {
    cwd: samples,
    encoding: 'utf8',
    stdio: ['ignore', 'pipe', shown ? 'inherit' : 'pipe'],
    maxBuffer: 64 * 1024 * 1024,
  });
  if (run.error) throw run.error;
  if (run.status !== 0) {
    process.stdout.write(run.stdout);
    process.stderr.write(
      `${run.stderr ?? ''}the demo stops: hearwright ${words.join(' ')} ended with ${run.status}\n`,
    );
    process.exit(1);
  }
  return run.stdout;
}

/** An empty folder: the one asked for when it is new or an earlier demo's, else one of the system's own. */
function emptyFolder(asked) {
  const wanted = resolve(asked);
  const isTaken = existsSync(wanted) && !existsSync(join(wanted, MARK)) && readdirSync(wanted).length > 0;
  if (isTaken) say(`${asked} is not the demo's own: it stays as it is`);
  const folder = isTaken ? mkdtempSync(join(tmpdir(), 'hearwright-demo-')) : wanted;
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, MARK), 'Made by npm run demo, which empties this folder when it runs again.\n');
  return folder;
}

function heading(text) {
  say(`\n${text}\n${'='.repeat(text.length)}\n`);
}

if (!existsSync(cli)) {
  process.stderr.write('the command line is not built\n  next   npm run build\n');
  process.exit(1);
}
const folder = emptyFolder(process.argv[2] ?? 'demo-out');
const project = join(folder, 'floating-workshop');
const pages = join(folder, 'pages');
mkdirSync(project);
mkdirSync(pages);

say(`${build.about}\n`);
hearwright(project, [
  'init',
  '--name',
  'Floating workshop',
  '--units',
  build.units,
  '--region',
  build.region,
]);
// The bench top would come through the hatch on its diagonal; its thickness is only said in the first memo.
hearwright(project, ['checks', 'add', build.check.name, ...build.check.inputs, '--note', build.check.note]);
build.memos.forEach(({ file, recordedAt }, index) => {
  const lines = hearwright(project, ['take', file, '--at', recordedAt], true).split('\n');
  say(`${index + 1}/${build.memos.length}  ${lines[0]}`);
});
say(`\nheard, read and compared in ${seconds()}`);

heading('What clashes, and why');
say(hearwright(project, ['findings']).trimEnd());

heading('Checks that run by themselves');
say(hearwright(project, ['checks']).trimEnd());

heading('Next steps');
say(hearwright(project, ['next', '--on', MORNING_AFTER]).trimEnd());

const days = [...new Set(build.memos.map(({ recordedAt }) => recordedAt.slice(0, 10)))];
const write = (name, ...words) => hearwright(project, [...words, '--out', join(pages, name)]);
for (const day of days) write(`journal-${day}.md`, 'journal', day);
write('next-steps.md', 'next', '--on', MORNING_AFTER);
write('episode.md', 'episode', days[0], days.at(-1));
write('figure-sheet.md', 'sheet', '--on', MORNING_AFTER);
write('calendar.ics', 'calendar', '--on', MORNING_AFTER);
write('markers.otio', 'markers', days[0], days.at(-1));
write('figures.csv', 'table', 'figures');
write('camera-clip.srt', 'subtitles', '5', '--as', 'srt');

heading('Pages');
const here = relative(process.cwd(), pages);
say(`in ${here.startsWith('..') ? pages : here}:`);
for (const name of readdirSync(pages).sort()) say(`  ${name}`);
hearwright(project, ['pages', '--out', join(folder, 'site'), '--on', MORNING_AFTER]);
say(`to read in a browser: ${relative(process.cwd(), join(folder, 'site', 'index.html'))}`);
say(`\n${seconds()} in all. To look around: node dist/cli.js --project ${relative(process.cwd(), project)}`);
