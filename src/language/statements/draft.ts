import type { DateContext } from '../dates.ts';
import type { Span } from '../notes.ts';
import type { OpenWork } from './finished-tasks.ts';
import { type Found, find, type Phrase, phrase } from './phrase.ts';
import type { Said } from './words.ts';

export type StatementKind = 'decision' | 'task' | 'done' | 'arrival' | 'problem' | 'promise' | 'correction';

/** What one rule read, before the refiners have settled who keeps what. */
export interface Draft extends Span {
  readonly kind: StatementKind;
  readonly rule: string;
  /** First and last clause that it stands on. */
  readonly from: number;
  readonly to: number;
  /** Only a hint by itself: kept when nothing stronger stands on the same words. */
  readonly weak?: boolean;
  /** Stands for work named before it ("but not until ..."): joins that task where there is one. */
  readonly leans?: boolean;
  /** Words of the thing spoken of, when a rule knows them. */
  readonly item?: string;
  readonly waitsFor?: readonly string[];
  /** Clauses that hold a gate or a reason: dates in them are not this task's. */
  readonly aside?: readonly number[];
  /** A later clause that says when it is to be done. */
  readonly dayIn?: number;
  readonly reason?: string;
  readonly turnedDown?: string;
  readonly received?: boolean;
  /** Told as an intention ("I'm going to ...") and not as something that must be done. */
  readonly intends?: boolean;
  /** Ends a task that was open before this memo. */
  readonly finishes?: boolean;
  /** Plain enough to stand against a delivery or a snag read from the same words. */
  readonly sure?: boolean;
  readonly cause?: string;
  /** Stands on figures and limits: its words need not speak for it. */
  readonly measured?: boolean;
  /** Said in so many words, by a rule whose words mean nothing else: not weighed. */
  readonly plain?: boolean;
}

/** What the rules may look at beside the clause itself. */
export interface Scene {
  readonly text: string;
  readonly said: readonly Said[];
  readonly dates: DateContext;
  /** Whether the talk is of a house where "fit" is a past as well. */
  readonly isAmerican: boolean;
  /** Clauses that only suppose, ask or joke: nothing is read from them. */
  readonly unreal: ReadonlySet<number>;
  /** What was still to do before this memo. */
  readonly open: readonly OpenWork[];
  /** Clauses of a list of jobs. */
  readonly listed: ReadonlySet<number>;
}

export interface StatementRule {
  readonly name: string;
  /** Without what this needs the rule reads nothing: it is not asked. */
  readonly pattern?: Phrase;
  readonly read: (said: Said, scene: Scene) => Omit<Draft, 'rule'> | undefined;
}

/** The clause before or after in the same sentence. */
export function neighbour(scene: Scene, said: Said, step: number): Said | undefined {
  const other = scene.said[said.index + step];
  return other?.sentence === said.sentence ? other : undefined;
}

/** A draft that quotes from a word of the clause to the clause's end. */
export function draft(
  kind: StatementKind,
  said: Said,
  fields: Partial<Omit<Draft, 'kind' | 'rule'>> = {},
  fromWord = 0,
): Omit<Draft, 'rule'> {
  return {
    kind,
    from: said.index,
    to: said.index,
    start: said.words[fromWord]?.start ?? said.start,
    end: said.end,
    ...fields,
  };
}

/** Index of the first word that is no filler ("so, um, yeah"). "Hang on" is one; "hang the door" is work. */
export function firstWord(said: Said): number {
  // "Before that I've got to lay the membrane": when, and then the job.
  const points = /(?:before|after)$/.test(said.opener) && /^(?:that|this)$/.test(said.words[0]?.lower ?? '');
  let k = points && /^(?:i|we|the)$/.test(said.words[1]?.lower ?? '') ? 1 : 0;
  while (k < said.words.length - 1 && leadsIn(said, k)) k++;
  return k;
}

function leadsIn({ words }: Said, k: number): boolean {
  const classes = words[k]?.classes ?? '';
  // "No sign of the sink": what there is none of.
  if (words[k]?.lower === 'no' && words[k + 1] && !/[OILSHMTVJA]/.test(words[k + 1]?.classes ?? ''))
    return false;
  return classes.includes('L') && !(classes.includes('B') && words[k + 1]?.classes.includes('T'));
}

/** A rule that one phrase decides, with a guard over what it found. */
export function phraseRule(
  kind: StatementKind,
  name: string,
  source: Phrase | string,
  guard: (found: Found, said: Said, scene: Scene) => boolean | Partial<Omit<Draft, 'kind' | 'rule'>> = () =>
    true,
): StatementRule {
  const pattern = typeof source === 'string' ? phrase(source) : source;
  return {
    name,
    pattern,
    read: (said, scene) => {
      const found = find(pattern, said);
      if (!found) return undefined;
      const fields = guard(found, said, scene);
      if (!fields) return undefined;
      return draft(kind, said, fields === true ? {} : fields, firstWord(said));
    },
  };
}

const SUBORDINATE =
  /\b(?:if|until|till|'til|once|unless|before|after|when|whenever|while|though|although|whereas|soon as|provided|providing|supposing)\b/;

/** Whether the clause only says when or whether another holds. */
export const isSubordinate = (said: Said): boolean =>
  SUBORDINATE.test(said.opener) &&
  !AFTERWARDS.test(`${said.opener} ${said.words[0]?.lower ?? ''} ${said.words[1]?.lower ?? ''}`);
/** "Before that I need to ...", "after this we ...": a time, and then a clause of its own. */
const AFTERWARDS =
  /^(?:and |but |so )?(?:before|after) (?:that|this|then|lunch|dinner|tea|breakfast) (?:i|we|the|it|that|there|they|comes|goes|need|,)?$/;
/** Whether the clause gives a reason for another. */
export const isReason = (said: Said): boolean => {
  // "since Saturday" is a time.
  if (
    /\bsince\b/.test(said.opener) &&
    (/[DQ]/.test(said.words[0]?.classes ?? '') || /^(?:then|last)$/.test(said.words[0]?.lower ?? ''))
  )
    return false;
  return /\b(?:because|since|cos|cause|'cause)\b/.test(said.opener);
};
