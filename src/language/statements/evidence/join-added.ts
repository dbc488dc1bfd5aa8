/**
 * "So the film is out Sunday, with the whole launch in it": a promise, and a clause that evidence alone takes for another
 * one. Told in clauses side by side, they are one note, as the refiners make it of what rules read.
 */
import type { TraceStep } from '../../notes.ts';
import type { Draft, Scene, StatementKind } from '../draft.ts';
import { RULE } from './rule-name.ts';

/** Jobs and deeds told side by side are each their own: "cut the rails, glue the ends". */
const TOLD_ON: ReadonlySet<StatementKind> = new Set(['decision', 'arrival', 'problem', 'promise']);

/** Drafts that stand, with those that evidence added beside one of their kind made one with it. Linear but for sorting. */
export function joinAdded(
  standing: readonly Draft[],
  added: readonly Draft[],
  scene: Scene,
  trace: TraceStep[],
): readonly Draft[] {
  if (added.length === 0) return standing;
  const out: Draft[] = [];
  const latest = new Map<StatementKind, number>();
  for (const each of [...standing, ...added].sort((a, b) => a.start - b.start || a.end - b.end)) {
    const at = TOLD_ON.has(each.kind) ? latest.get(each.kind) : undefined;
    const before = at === undefined ? undefined : out[at];
    if (at !== undefined && before && isOne(before, each, scene)) {
      out[at] = joined(before, each);
      trace.push(joining(before.rule === RULE ? before : each));
      continue;
    }
    latest.set(each.kind, out.length);
    out.push(each);
  }
  return out;
}

const isOne = (first: Draft, second: Draft, { said }: Scene): boolean =>
  (first.rule === RULE || second.rule === RULE) &&
  second.from - first.to <= 1 &&
  said[first.to]?.sentence === said[second.from]?.sentence &&
  first.received === second.received;

/** What a rule read knows more of the note than its words; both keep their stretch of talk. */
function joined(first: Draft, second: Draft): Draft {
  const [read, other] = first.rule === RULE ? [second, first] : [first, second];
  return {
    ...other,
    ...read,
    start: Math.min(first.start, second.start),
    from: Math.min(first.from, second.from),
    end: Math.max(first.end, second.end),
    to: Math.max(first.to, second.to),
  };
}

const joining = ({ start, end, kind }: Draft): TraceStep => ({
  stage: 'statements: evidence',
  rule: RULE,
  span: { start, end },
  outcome: 'merged',
  why: `the same ${kind}, told in clauses side by side`,
});
