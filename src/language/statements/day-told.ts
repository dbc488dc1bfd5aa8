/** "... it needs three people, so it's Sunday": a clause that only tells the day of the job before it. */
import { type Draft, neighbour, type Scene } from './draft.ts';
import { matches, phrase } from './phrase.ts';
import { dayIn } from './tasks.ts';
import type { Said } from './words.ts';

const DAY =
  '(?: this | next | the | <day> | <number> | first thing | weekend | morning | afternoon | evening )+';
const LATER =
  '(?: then | now | instead | <adverb> | i think | i reckon | at the earliest | at best | most like )*';
const IT = '(?: it | that | this | they | she | those )';

const TOLD_AHEAD = phrase(
  `^<lead>* ${IT} (?: 'll be | will be | 'll have to be | will have to be | has to be | 's got to be | 's going to be | 's gonna be | 'll go | 'll wait | can wait | is for | 's for | 's a job for | waits | goes | has to wait ) (?: on | for | till | until | <adverb> )* ${DAY} ${LATER} $`,
);
const TOLD_PLAINLY = phrase(`^<lead>* ${IT} (?: is | 's | are ) <adverb>* ${DAY} ${LATER} $`);
/** "It's Sunday today", "it's Wednesday already" tell what day it is. */
const TODAY = / (?:today|already|again|was|still|too)\//;
/** Clauses that may stand between a job and its day: "it needs three people". */
const BETWEEN = 3;

/** Whether a clause tells the day of what was spoken of, and nothing else. */
export function tellsDay(said: Said, scene: Scene): boolean {
  if (TODAY.test(said.code) || dayIn(said, scene) === undefined) return false;
  if (matches(TOLD_AHEAD, said)) return true;
  if (!matches(TOLD_PLAINLY, said)) return false;
  // "The tank has to come out. It's Sunday.": so it is.
  const drawsOn = /\bso\b/.test(said.opener) || /^(?:so|then|that)$/.test(said.words[0]?.lower ?? '');
  return drawsOn && neighbour(scene, said, -1) !== undefined;
}

/** Gives a job the day that a clause behind it tells; other notes on that clause are none of their own. */
export const dayOfJob = {
  name: 'the day of a job is told behind it',
  refine: (
    drafts: readonly Draft[],
    scene: Scene,
    drop: (draft: Draft, why: string, merged?: boolean) => void,
  ): readonly Draft[] => {
    const tasks = drafts.filter(({ kind }) => kind === 'task').sort((a, b) => a.from - b.from);
    const grown = new Map<Draft, Draft>();
    const days = new Set<number>();
    tasks.forEach((each, k) => {
      const day = dayBehind(each, tasks[k + 1], scene);
      if (day === undefined) return;
      days.add(day);
      grown.set(each, { ...each, dayIn: day });
    });
    return drafts.flatMap((each) => {
      const isDay = days.has(each.from) && each.from === each.to && /^(?:task|arrival)$/.test(each.kind);
      if (isDay) drop(each, 'it tells the day of the job before it', true);
      return isDay ? [] : [grown.get(each) ?? each];
    });
  },
};

/** The clause that tells the day of a task, before any other task is told. */
function dayBehind(task: Draft, next: Draft | undefined, scene: Scene): number | undefined {
  const own = scene.said[task.to];
  if (!own || task.dayIn !== undefined) return undefined;
  for (let k = task.to + 1; k <= task.to + BETWEEN; k++) {
    const said = scene.said[k];
    if (!said || said.sentence > own.sentence + 1) return undefined;
    if (tellsDay(said, scene)) return k;
    if (next && next.from <= k) return undefined;
  }
  return undefined;
}
