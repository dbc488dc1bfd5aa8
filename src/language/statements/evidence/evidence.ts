/**
 * Weighs what the rules read against what the words themselves say: drafts that the evidence speaks against are
 * dropped, and clauses that no rule read but the evidence speaks for become drafts. The weights are fitted on marked
 * talk by scripts/fit-evidence.ts.
 */
import type { TraceStep } from '../../notes.ts';
import { type Draft, draft, firstWord, type Scene } from '../draft.ts';
import type { Said } from '../words.ts';
import { CUE_WEIGHTS } from './cue-weights.ts';
import { type Candidate, candidatesOf } from './cues.ts';
import { fieldsOf } from './fields.ts';
import { joinAdded } from './join-added.ts';
import { KINDS, type Kind } from './kinds.ts';
import { RULE } from './rule-name.ts';
import { tableOf, tellWords, type WordScores, type WordWeights } from './word-scores.ts';
import { WORD_BIAS, WORD_TABLE } from './word-table.ts';

export interface KindWeights {
  readonly cues: Readonly<Record<string, number>>;
  /** A draft whose log odds are lower is dropped. */
  readonly drop: number;
  /** A clause whose log odds are higher becomes a draft. */
  readonly add: number;
}

export interface Evidence {
  readonly words: WordWeights;
  readonly kinds: Readonly<Record<Kind, KindWeights>>;
}

let fitted: Evidence | undefined;
/** The committed weights, unpacked when the first memo is read. */
export function fittedEvidence(): Evidence {
  fitted ??= { words: tableOf(WORD_BIAS, WORD_TABLE), kinds: CUE_WEIGHTS };
  return fitted;
}

/** Log odds that the candidate is stated. */
export function oddsOf({ cues }: Pick<Candidate, 'cues'>, weights: Readonly<Record<string, number>>): number {
  let sum = 0;
  for (const [name, size] of cues) sum += (weights[name] ?? 0) * size;
  return sum;
}

/** What a candidate becomes when it stands: the draft that a rule read, or one made of its clause. */
export function draftOf({ kind, clause, draft: read }: Candidate, scene: Scene): Draft {
  if (read) return read;
  const said = scene.said[clause] as Said;
  return { ...draft(kind, said, fieldsOf(kind, said, scene), firstWord(said)), rule: RULE };
}

/**
 * The drafts that stand after the evidence is weighed: of those that the refiners kept, and new ones by the rule
 * "evidence". `found` holds what the rules read before the refiners.
 */
export function weigh(
  scene: Scene,
  found: readonly Draft[],
  kept: readonly Draft[],
  scores: WordScores,
  trace: TraceStep[],
  evidence: Evidence = fittedEvidence(),
): readonly Draft[] {
  return settle(scene, candidatesOf(scene, found, kept, scores), kept, trace, evidence, scores);
}

function settle(
  scene: Scene,
  candidates: readonly Candidate[],
  kept: readonly Draft[],
  trace: TraceStep[],
  evidence: Evidence,
  scores: WordScores,
): readonly Draft[] {
  const gone = new Set<Draft>();
  const added: Draft[] = [];
  const tell = (candidate: Candidate, each: Draft, outcome: TraceStep['outcome'], odds: number) => {
    const span = { start: each.start, end: each.end };
    const why = reasonFor(candidate, scene, evidence, odds, scores);
    trace.push({
      stage: 'statements: evidence',
      rule: outcome === 'dropped' ? each.rule : RULE,
      span,
      outcome,
      why,
    });
  };
  for (const candidate of candidates) {
    const { cues, drop, add } = evidence.kinds[candidate.kind];
    const odds = oddsOf(candidate, cues);
    if (candidate.draft) {
      // Said to viewers in so many words, whatever the thing is that they are shown.
      if (odds >= drop || (candidate.kind === 'promise' && candidate.draft.sure)) continue;
      gone.add(candidate.draft);
      tell(candidate, candidate.draft, 'dropped', odds);
    } else if (odds > add) {
      const made = draftOf(candidate, scene);
      added.push(made);
      tell(candidate, made, 'read', odds);
    }
  }
  return joinAdded(
    kept.filter((each) => !gone.has(each)),
    added,
    scene,
    trace,
  );
}

function reasonFor(
  { kind, clause }: Candidate,
  scene: Scene,
  evidence: Evidence,
  odds: number,
  scores: WordScores,
): string {
  const k = KINDS.indexOf(kind);
  const { speaksFor, against } = tellWords(scene.said[clause] as Said, scene, k, evidence.words);
  const list = (name: string, words: readonly string[]) =>
    words.length === 0 ? '' : `; ${name} ${words.join(', ')}`;
  return `${kind} ${odds.toFixed(1)}, words ${scores.of(clause, k).toFixed(1)}${list('for', speaksFor)}${list('against', against)}`;
}
