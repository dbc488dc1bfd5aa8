/**
 * Files of short stories with all that a project tells at their end. Lines that begin with `> ` are memos, one a day; what
 * stands beneath them is what was told, and is written anew by `npx vitest run tests/model/as-kept -u`.
 */
import { stateLines } from './state-lines.ts';
import { AT, ToldStory } from './told-story.ts';

/** The memos of each story: a run of lines that begin with `> `. */
function storiesIn(file: string): readonly (readonly string[])[] {
  const stories: string[][] = [];
  let isWithin = false;
  for (const line of file.split('\n')) {
    const isMemo = line.startsWith('> ');
    if (isMemo && !isWithin) stories.push([]);
    if (isMemo) stories.at(-1)?.push(line.slice(2));
    isWithin = isMemo;
  }
  return stories;
}

/** A figure that was said once and that nothing came of: what the story turns on stands in other lines. */
const isPlain = (line: string) =>
  /^figure .*from: precision\)/.test(line) && !/ (?:rule|status|formula|dependents|each): /.test(line);

/** The file with what each story tells now. */
export function toldAnew(file: string): string {
  const blocks = storiesIn(file).map((memos) => {
    const { rows } = new ToldStory('metric', 'GB').hear(...memos).project;
    const all = stateLines(rows, AT).filter((line) => !isPlain(line));
    // The next story's memos would be taken for more of this one's.
    const told = all.length > 0 ? all : ['nothing more'];
    return [...memos.map((memo) => `> ${memo}`), ...told.map((line) => `  ${line}`)].join('\n');
  });
  return `${blocks.join('\n')}\n`;
}
