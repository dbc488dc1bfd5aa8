/**
 * What speaks for a deed being the end of an open task, and what against it. Each sign has a name and a size; what it
 * weighs stands in `closing-weights.ts`.
 */
import type { Described } from './described.ts';
import { wordsOf } from './names.ts';
import { stemOf } from './stems.ts';
import { isCompound } from './telling-words.ts';

/** One sign: its name and how much of it there is. */
export type Sign = readonly [name: string, size: number];

/** How well the words of a pair match, taken apart. */
export interface Match {
  readonly things: number;
  readonly nearby: number;
  readonly acts: number;
  readonly isAnchored: boolean;
  readonly sameRank: boolean;
  readonly common: number;
  readonly clash: boolean;
  readonly isGot: boolean;
}

/** Of a pair, beside its words: how it stands among the other pairs. */
export interface Standing {
  /** Share of the best match that this deed has with any open task, and the same of the task. */
  readonly ofDeed: number;
  readonly ofTask: number;
  /** Open tasks that name one of the things shared; none where nothing is shared. */
  readonly sharers: number;
  /** Open tasks that share a word with what the memo tells. */
  readonly asked: number;
  readonly waits: boolean;
  /** Days since the task was told. */
  readonly days: number;
  /** Whether its day has come. */
  readonly isDue: boolean | undefined;
}

/** A deed told by its state: "the beams are in", "it's bolted down", "got the trench dug". */
const STATE = /(?:['’](?:s|re|ve)|\b(?:is|are|was|were|has|have|had|been|got)\b)/i;
const BEGUN =
  /\b(?:start(?:ed)? on|a start|begun|began|half|part(?:ly)?|most of|some of|one of|first of|so far)\b/i;
const WHOLE = /\b(?:all|every|whole|last|finished|finally|done|at last|complete(?:d|ly)?|both)\b/i;
const DENIED = /(?:\b(?:not|never|no)|n['’]t)\b/i;

const capped = (size: number, most: number) => Math.min(size, most);
function shareOf(of: ReadonlySet<string>, other: ReadonlySet<string>): number {
  if (of.size === 0) return 0;
  let shared = 0;
  for (const stem of of) if (holds(other, stem)) shared++;
  return shared / of.size;
}
function holds(set: ReadonlySet<string>, stem: string): boolean {
  if (set.has(stem)) return true;
  for (const other of set) if (isCompound(stem, other)) return true;
  return false;
}

/** A deed or a task as it is held against another, with its gist. */
export interface Gisted extends Described {
  readonly gist: string;
}

/** The signs of one pair. */
export function signsOf(deed: Gisted, task: Gisted, match: Match, standing: Standing): readonly Sign[] {
  const signs: Sign[] = [['any', 1]];
  const put = (name: string, size: number | boolean) => {
    const value = Number(size);
    if (value !== 0) signs.push([name, value]);
  };
  const { things, nearby, acts, isAnchored, sameRank, common, clash, isGot } = match;
  put('things', capped(things, 2));
  put('things enough', things >= 0.6);
  put('things plenty', things >= 1.2);
  put('nearby', capped(nearby, 1));
  put('acts', capped(acts, 1));
  put('anchored', isAnchored);
  put('same rank', sameRank);
  put('same way', common > 0);
  put('other way', clash);
  put('goods got', isGot);
  put('way of deed unknown', deed.actions.size === 0);
  put('way of task unknown', task.actions.size === 0);
  put('same direction', deed.goes !== undefined && deed.goes === task.goes);
  put('deed moves', deed.goes !== undefined);
  const first = firstThing(deed);
  put('first thing shared', first !== undefined && holds(task.named, first));
  put('first thing another', first !== undefined && !holds(task.named, first));
  const last = lastThing(task);
  put('last thing shared', last !== undefined && holds(deed.named, last));
  put('last thing another', last !== undefined && deed.named.size > 0 && !holds(deed.named, last));
  put('of the deed', shareOf(deed.named, task.named));
  put('of the task', shareOf(task.named, deed.named));
  put('deed points', deed.named.size === 0);
  put('task points', task.named.size === 0);
  // Where there is only one task to ask about, being the best says nothing.
  const among = 1 - 1 / Math.max(1, standing.asked);
  put('best of deed', standing.ofDeed >= 1 ? among : 0);
  put('worse of deed', 1 - standing.ofDeed);
  put('best of task', standing.ofTask >= 1 ? among : 0);
  put('worse of task', 1 - standing.ofTask);
  put('only sharer', standing.sharers === 1);
  put('sharers', capped(Math.max(0, standing.sharers - 1), 4));
  put('waits', standing.waits);
  put('days', capped(standing.days, 14) / 7);
  put('day has come', standing.isDue === true);
  put('day to come', standing.isDue === false);
  put('told as a state', STATE.test(deed.gist));
  put('begun', BEGUN.test(deed.gist));
  put('whole', WHOLE.test(deed.gist));
  put('denied', DENIED.test(deed.gist));
  put('task begun', BEGUN.test(task.gist));
  put('anchored, only sharer', isAnchored && standing.sharers === 1);
  put('anchored, same way', isAnchored && common > 0);
  put('anchored, other way', isAnchored && clash);
  put('anchored, way unknown', isAnchored && (deed.actions.size === 0 || task.actions.size === 0));
  put('not anchored, same way', !isAnchored && common > 0);
  return signs;
}

const thingsOf = new WeakMap<Gisted, readonly string[]>();

/** The things that a gist names, in order; found once for all that it is held against. */
function thingsIn(told: Gisted): readonly string[] {
  const known = thingsOf.get(told);
  if (known) return known;
  const things = wordsOf(told.gist)
    .map(stemOf)
    .filter((stem) => told.named.has(stem));
  thingsOf.set(told, things);
  return things;
}
const firstThing = (told: Gisted) => thingsIn(told)[0];
const lastThing = (told: Gisted) => thingsIn(told).at(-1);
