/** Deeds that only look: measuring, weighing and trying a thing ends no other work on it. */
import { remembered } from '../remembered.ts';
import { thingsToMeasure } from './measured-tasks.ts';

/** The verb that a deed begins with, where it is one of looking. */
const LOOKED =
  /^(?:(?:i|we|he|she|they)(?:['’]ve| have| had)? )?(?:just |also |finally |only )*(?:re-?)?(?<verb>measured|taped|weighed|gauged|checked|tested|tried|inspected|surveyed)\b(?! (?:in|out|off)\b)/i;
const MEASURED = /^(?:measured|taped|weighed|gauged|surveyed)$/i;
/** Work that is done by looking, or by what was found out. */
const DONE_BY_LOOKING: ReadonlySet<string> = new Set(['measure', 'test', 'think', 'ask', 'show']);
const LOOKING = /\b(?:look|see|find out|go over|make sure|service|read)\b/i;

/** The verb of looking that a deed begins with, else nothing; the deed is held against one open task after another. */
const lookingVerb = remembered(1000, (gist) => LOOKED.exec(gist)?.groups?.verb ?? '');

interface Work {
  readonly gist: string;
  readonly actions: ReadonlySet<string>;
}

/**
 * Whether a deed that only looks leaves a task open: "I measured the side hatch again" ends neither "fit the side hatch"
 * nor "measure the side hatch coaming".
 */
export function leavesOpen(deed: { readonly gist: string }, task: Work): boolean {
  const verb = lookingVerb(deed.gist);
  if (verb === '' || LOOKING.test(task.gist)) return false;
  const isByLooking = [...task.actions].some((way) => DONE_BY_LOOKING.has(way));
  if (!MEASURED.test(verb)) return !isByLooking && task.actions.size > 0;
  if (!isByLooking) return true;
  if (!task.actions.has('measure')) return false;
  const told = thingsToMeasure(deed.gist);
  return told.size > 0 && [...thingsToMeasure(askedFor(task.gist))].some((thing) => !told.has(thing));
}

/** What is to be measured, without what for: "measure the pintle | for a bush". */
const askedFor = (gist: string): string =>
  /\b(?:re-?)?(?:measur|weigh|gaug|tap)\w*\b(.*?)(?:\b(?:for|so|before|because|once|when|in case|and)\b|$)/i.exec(
    gist,
  )?.[1] ?? gist;
