/**
 * What a project tells after each memo of whole stories, line by line as it changes: figures with their rule and claims,
 * findings with their words, tasks with what they wait for, what is on record. A change in these files is a change of what
 * is told: look the diff over before it is kept (DEVELOPERS.md).
 */
import { fileURLToPath } from 'node:url';
import { beforeAll, describe, expect, test } from 'vitest';
import type { MemoNotes } from '../../../src/language/notes.ts';
import { MemoryProject } from '../../../src/model/memory.ts';
import { standingFigures } from '../../../src/model/project-views.ts';
import { readInTurn } from '../../kit/in-turn.ts';
import { answerLines, changedLines, stateLines, viewLines } from '../../kit/state-lines.ts';
import type { Story } from '../../kit/story.ts';
import { readStoryFile } from '../../kit/story-file.ts';

const at = (path: string) => fileURLToPath(new URL(path, import.meta.url));

/** Asked of every story, beside a question for some of its own figures. */
const QUESTIONS = [
  'what did I order and what came',
  'what is behind the panel',
  'how heavy is it all',
  'which mix did I use and when',
  'is there anything wrong with the stove',
];

function told(story: Story, notes: readonly MemoNotes[]): string {
  const project = new MemoryProject();
  const { story: name, units, region, memos } = story;
  const first = memos[0]?.recordedAt ?? '';
  project.append([{ kind: 'project-made', name, units, ...(region ? { region } : {}), at: first }]);
  let before: readonly string[] = [];
  const all = memos.flatMap(({ id: memoId, recordedAt, text }, k) => {
    const source = { name: `${memoId}.txt`, kind: 'text', sha256: memoId, bytes: text.length } as const;
    const kept = { memoId, source, file: source.name, recordedAt, recordedAtFrom: 'given' } as const;
    project.append([
      { kind: 'recording-kept', at: recordedAt, ...kept },
      { kind: 'transcript-made', at: recordedAt, memoId, transcript: { text } },
      { kind: 'notes-read', at: recordedAt, memoId, notes: notes[k] as MemoNotes, reader: 'test' },
    ]);
    const now = stateLines(project.rows, recordedAt);
    const changed = changedLines(before, now);
    before = now;
    return [`== ${memoId}`, ...changed];
  });
  const asked = standingFigures(project.rows)
    .filter((_, k) => k % 9 === 4)
    .map(({ item, attribute }) => `what is the ${attribute} of the ${item}`);
  const last = memos.at(-1)?.recordedAt ?? '';
  return `${[
    ...all,
    '== views',
    ...viewLines(project.rows, last),
    '== answers',
    ...[...QUESTIONS, ...asked].flatMap((question) => answerLines(project.rows, question)),
  ].join('\n')}\n`;
}

const STORIES = [
  'work-1.json',
  'work-5.json',
  'work-16.json',
  'work-19.json',
  'drill/drill-1.talk',
  'drill/drill-8.talk',
  'drill/drill-17.talk',
  'drill/drill-47.talk',
  'drill/drill-61.talk',
  'drill/drill-77.talk',
];

describe.each(STORIES)('%s', (name) => {
  const story = readStoryFile(at(`../../stories/${name}`));
  let notes: readonly MemoNotes[] = [];
  beforeAll(() => {
    notes = readInTurn(story);
    // A busy machine takes longer than the ten seconds that are usual.
  }, 60_000);

  test('is told as it was looked over', { timeout: 60_000 }, async () => {
    await expect(told(story, notes)).toMatchFileSnapshot(at(`./stories/${story.story}.txt`));
  });
});
