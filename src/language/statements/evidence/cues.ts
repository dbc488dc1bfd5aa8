/**
 * What is weighed for one statement: what the words of its clause and the clauses beside it say, which rule read it
 * and what the refiners made of that. Every cue has a name; `cue-weights.ts` holds what each of them weighs.
 */
import { remembered } from '../../../remembered.ts';
import { isFaultDenied, isJobDenied } from '../denied.ts';
import { type Draft, firstWord, isSubordinate, neighbour, type Scene } from '../draft.ts';
import { isNoJob, isTheirTime } from '../no-job.ts';
import { isFaultOver, isForgiven } from '../no-matter.ts';
import { isWondering } from '../not-told.ts';
import { tellsWhichAndSize } from '../which-and-size.ts';
import type { Said } from '../words.ts';
import { KINDS, type Kind } from './kinds.ts';
import { isOpeningDay } from './opening-day.ts';
import { isPlainSize } from './plain-size.ts';
import type { WordScores } from './word-scores.ts';

/** Name and size of a cue. */
export type Cue = readonly [string, number];

/** A statement that a rule read, or that may stand in a clause where no rule read its kind. */
export interface Candidate {
  readonly kind: Kind;
  /** The draft that is weighed; without one the clause itself may become a draft. */
  readonly draft?: Draft;
  /** The clause that speaks most for it. */
  readonly clause: number;
  readonly cues: readonly Cue[];
}

/** A clause whose words speak more against a kind than this is not weighed for it, where no rule reads it. */
export const HOPELESS = -3;

/** More than there are rules and cues. */
const MOST_NAMES = 4000;

/** Names of cues are put together once: text that was just made is slow to look up. */
const FULL_NAMES = {
  read: remembered(MOST_NAMES, (name) => `read ${name}`),
  unread: remembered(MOST_NAMES, (name) => `unread ${name}`),
} as const;
const WORDS_OF = KINDS.map((kind) => `words of ${kind}`);

const clip = (score: number): number => Math.max(-4, Math.min(4, score));

const FLAGS = [
  'weak',
  'leans',
  'intends',
  'finishes',
  'sure',
  'reason',
  'turnedDown',
  'item',
  'received',
] as const;

type ByClause = ReadonlyMap<number, readonly Draft[]>;
const NONE: readonly Draft[] = [];

function byClause(drafts: readonly Draft[]): ByClause {
  const found = new Map<number, Draft[]>();
  for (const draft of drafts)
    for (let clause = draft.from; clause <= draft.to; clause++) {
      const list = found.get(clause);
      if (list) list.push(draft);
      else found.set(clause, [draft]);
    }
  return found;
}

interface Around {
  readonly scene: Scene;
  readonly scores: WordScores;
  /** What the refiners kept. */
  readonly kept: ByClause;
  /** What the rules read. */
  readonly found: ByClause;
}

/** All that may be stated in the memo: each kept draft, and each clause that is not hopeless for a kind. */
export function candidatesOf(
  scene: Scene,
  found: readonly Draft[],
  kept: readonly Draft[],
  scores: WordScores,
): readonly Candidate[] {
  const around: Around = { scene, scores, kept: byClause(kept), found: byClause(found) };
  const candidates: Candidate[] = [];
  for (const draft of kept)
    if (draft.kind !== 'correction' && !draft.measured && !draft.plain)
      candidates.push(candidateFor(draft.kind, draft, draft, around));
  const daysOf = new Set(kept.map(({ dayIn }) => dayIn));
  for (const said of scene.said) {
    const { index } = said;
    if (isPlainSize(said) || isOpeningDay(said, scene.said)) continue;
    const isAside = isSubordinate(said);
    KINDS.forEach((kind, k) => {
      if (scores.of(index, k) < HOPELESS) return;
      const standing = around.kept.get(index) ?? NONE;
      // What viewers were promised is no fault, however sorry the words are.
      if (
        kind === 'problem' &&
        (isForgiven(scene, index) ||
          isWondering(said) ||
          isFaultOver(said) ||
          isFaultDenied(said) ||
          standing.some((draft) => draft.kind === 'promise'))
      )
        return;
      if ((kind === 'task' || kind === 'arrival') && daysOf.has(index)) return;
      // "Three weeks" tells how long the goods named before take; "keep it wet for a week" is an order.
      if (kind === 'arrival' && isOnlyHowLong(said)) return;
      if (
        kind === 'arrival' &&
        /^(?:keep|leave|let|give|put|hold|call|allow)$/.test(said.words[firstWord(said)]?.lower ?? '')
      )
        return;
      if (kind === 'arrival' && HOURS_OF_TRADE.test(said.code)) return;
      if (kind === 'done' && STATE.test(said.code)) return;
      if (
        kind === 'task' &&
        (isNoJob(said) || isJobDenied(said, scene.said[index + 1]) || tellsWhichAndSize(said, scene))
      )
        return;
      if (kind === 'task' && isTheirTime(said, neighbour(scene, said, 1))) return;
      // "Fit the tap on the 3rd of July": an order, whatever the day sounds like.
      if (kind !== 'task' && standing.some((each) => each.kind === 'task' && each.plain)) return;
      // "I'll clean it tomorrow": a job, and no word to viewers.
      if (
        kind === 'promise' &&
        PLAIN_PLAN.test(said.code) &&
        standing.some((each) => each.kind === 'task' && isOnlyOn(each, said))
      )
        return;
      // "Broke four of them", a snag in so many words, is no work finished.
      if (kind === 'done' && standing.some((each) => each.kind === 'problem' && each.plain)) return;
      // "... before the lining goes in" tells when, and is neither work to do nor work done.
      if (isAside && (kind === 'task' || kind === 'done')) return;
      if (standing.some((draft) => draft.kind === kind)) return;
      candidates.push(candidateFor(kind, { from: index, to: index }, undefined, around));
    });
  }
  return candidates;
}

/** Stands on this clause alone, and as more than a hint. */
const isOnlyOn = ({ from, to, weak }: Draft, { index }: Said): boolean =>
  !weak && from === index && to === index;
/** "I'll paint the hull on Friday": work, where "I'll show you the hull" is none. */
const PLAIN_PLAN =
  / (?:i|we)\/\S* (?:'ll|will)\/\S* (?!(?:show|film|record|share|upload|post|put|do|get|let|tell)\/)\S*\/\S*B/;

/** "The yard shuts on the 20th": when somebody is there, and nothing that comes. */
const HOURS_OF_TRADE = /^(?: \S+){1,6}? (?:shuts?|shutting|closes?|closing|reopens?)\/\S*(?: |$)/;
/** "The sill is wet": how it was found. */
const STATE =
  / (?:is|'s|are|'re|was|were)\/\S*(?: \S+?\/\S*A\S*)* (?:wet|damp|soaked|soaking|sodden|sopping|rotten|manky)\/\S*(?: \w+\/\S*)? ?$/;

function candidateFor(
  kind: Kind,
  { from, to }: { readonly from: number; readonly to: number },
  draft: Draft | undefined,
  around: Around,
): Candidate {
  const cues: Cue[] = [];
  const fullName = FULL_NAMES[draft ? 'read' : 'unread'];
  const add = (name: string, size = 1) => {
    cues.push([fullName(name), size]);
  };
  const clause = wordCues(KINDS.indexOf(kind), from, to, around, add);
  besideCues(kind, from, to, draft, around, add);
  if (draft) ruleCues(draft, kind, around, add);
  return { kind, ...(draft ? { draft } : {}), clause, cues };
}

type Add = (name: string, size?: number) => void;

/** What the words say; returns the clause that says most. */
function wordCues(k: number, from: number, to: number, around: Around, add: Add): number {
  const { scene, scores } = around;
  let best = from;
  for (let clause = from; clause <= to; clause++)
    if (scores.of(clause, k) > scores.of(best, k)) best = clause;
  const score = clip(scores.of(best, k));
  add('here');
  add('words', score);
  add('words well above', Math.max(0, score + 1));
  let other = Number.NEGATIVE_INFINITY;
  WORDS_OF.forEach((name, j) => {
    if (j === k) return;
    const rival = scores.of(best, j);
    other = Math.max(other, rival);
    add(name, clip(rival) / 2);
  });
  add('words over the next kind', clip(score - other) / 2);
  for (const [name, beside] of [
    ['before', besideIn(scene, from, -1)],
    ['after', besideIn(scene, to, 1)],
  ] as const) {
    if (beside === undefined) continue;
    const said = clip(scores.of(beside, k));
    add(`words ${name}`, Math.max(0, said + 1));
    if (said > score) add(`more ${name}`);
  }
  talkBeside(from, -1, 'back', around, add);
  talkBeside(to, 1, 'on', around, add);
  return best;
}

/** Words that do not speak clearly against a kind come to more than this. */
const QUIET = -1.5;
const nameFor = (way: 'back' | 'on', place: string): readonly string[] =>
  KINDS.map((kind) => `${kind} ${way} ${place}`);
const TALK = {
  back: { same: nameFor('back', 'in the sentence'), far: nameFor('back', 'in another') },
  on: { same: nameFor('on', 'in the sentence'), far: nameFor('on', 'in another') },
} as const;

/** What the clause before or after tells of, be it in another sentence: a snag is followed by what is done about it. */
function talkBeside(
  clause: number,
  step: number,
  way: 'back' | 'on',
  { scene, scores }: Around,
  add: Add,
): void {
  const other = scene.said[clause + step];
  if (!other) return;
  const names = TALK[way][other.sentence === scene.said[clause]?.sentence ? 'same' : 'far'];
  for (let j = 0; j < names.length; j++) {
    const score = clip(scores.of(other.index, j));
    if (score > QUIET) add(names[j] as string, score - QUIET);
  }
}

/** The clause beside one in the same sentence. */
function besideIn(scene: Scene, clause: number, step: number): number | undefined {
  const other = scene.said[clause + step];
  return other && other.sentence === scene.said[clause]?.sentence ? other.index : undefined;
}

/** What the rules read in the same clause and beside it. */
function besideCues(
  kind: Kind,
  from: number,
  to: number,
  draft: Draft | undefined,
  { scene, kept, found }: Around,
  add: Add,
): void {
  for (const [name, beside] of [
    ['before', besideIn(scene, from, -1)],
    ['after', besideIn(scene, to, 1)],
  ] as const)
    for (const other of (beside === undefined ? undefined : kept.get(beside)) ?? NONE)
      if (other !== draft) add(`${other.kind === kind ? 'the same' : 'another'} ${name}`);
  for (let clause = from; clause <= to; clause++) {
    for (const other of kept.get(clause) ?? NONE) if (other !== draft) add(`with ${other.kind}`);
    if (draft) continue;
    for (const other of found.get(clause) ?? NONE)
      if (other.kind === kind) add(other.weak ? 'hinted and let go' : 'read and let go');
  }
}

function ruleCues(draft: Draft, kind: Kind, { kept }: Around, add: Add): void {
  add(`by ${draft.rule}`);
  for (const flag of FLAGS) if (draft[flag]) add(flag);
  if (draft.waitsFor?.length) add('waits');
  if (draft.to > draft.from) add('in many clauses');
  for (let clause = draft.from; clause <= draft.to; clause++)
    if ((kept.get(clause) ?? NONE).some((other) => other !== draft && other.kind === kind)) {
      add('beside its like');
      break;
    }
}

/** "Three weeks", "about a fortnight": a stretch of time and no other word. */
const isOnlyHowLong = ({ words }: Said): boolean =>
  words.length <= 4 &&
  /^(?:days?|weeks?|fortnights?|months?)$/.test(words.at(-1)?.lower ?? '') &&
  words
    .slice(0, -1)
    .every(
      ({ lower, classes }) =>
        /[QTLA]/.test(classes) || /^(?:about|around|or|so|couple|of|maybe|of)$/.test(lower),
    );
