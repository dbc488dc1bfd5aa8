import type { FigureState, Quantity } from '../language/notes.ts';
import type { Cue } from './cues.ts';
import type { Likeness } from './likeness.ts';
import { exactQuantity } from './units.ts';

/** What is known when two figures of one thing differ. */
export interface Difference {
  readonly was: Quantity & { readonly state?: FigureState };
  readonly now: Quantity & { readonly state?: FigureState };
  readonly cue: Cue;
  readonly likeness: Likeness | undefined;
  /** The older figure follows from others by a formula. */
  readonly isDerived: boolean;
  /** Something was made or ordered to the older figure. */
  readonly isMade: boolean;
  /** Another figure was said to be other than it was, just before. */
  readonly isAfterChange?: boolean;
  /** The older value is said beside the newer one. */
  readonly isOldSaid: boolean;
  readonly region?: string;
}

export interface ChangeKind {
  readonly kind: 'decided' | 'remeasured' | 'slip' | 'stale';
  readonly why: string;
  /** Something was made to another size than what was said, and no word was lost about it: the person is asked. */
  readonly isUnasked?: true;
}

/** A likeness this strong takes plain words of change to overrule. */
const STRONG_LIKENESS = 0.8;
const LIKENESS = 0.5;
/** Figures further apart than this, without a word of change, are of two things. */
const FURTHEST_RATIO = 1.8;
/** With plain words that it was changed on purpose: a battery of twice the size; lengths twice each other are of two things. */
const FURTHEST_CHANGE = 2.5;
const TOLD = 3;
/** In the figure's own clause and more: one battery made four. */
const FURTHEST_PLAIN_CHANGE = 5;
const TOLD_PLAINLY = 5;
/** Wear, play and run-out: they double and triple where sizes of things do not. */
const MOST_PLAY_METRES = 0.001;

const SURVEYED: ReadonlySet<FigureState> = new Set(['measured', 'received', 'made']);
const PLANNED: ReadonlySet<FigureState> = new Set(['target', 'assumed', 'quoted', 'copied', 'ordered']);

/**
 * Says why a figure differs from the one that stands; undefined when nothing says that they are of one thing.
 * In order: a likely slip without plain words of change; a made or derived thing that must follow; the speaker's own
 * word; then what the figures are (measured after planned is measured anew).
 */
export function changeKindOf(one: Difference): ChangeKind | undefined {
  const { cue, likeness, was, now } = one;
  const isPlain = cue.weight >= (likeness && likeness.weight >= STRONG_LIKENESS ? 3 : 2) && !cue.isRestated;
  if (likeness && likeness.weight >= LIKENESS && !isPlain && !(cue.isNeeded && one.isMade)) {
    return { kind: 'slip', why: `${likeness.words}, and nothing was said of a change` };
  }
  const size = exactQuantity(now, one.region);
  const isPlay = size?.kind === 'length' && size.base.valueOf() < MOST_PLAY_METRES;
  const isTold =
    cue.weight >= TOLD &&
    (isPlay || (cue.change === 'decided' && size !== undefined && size.kind !== 'length'));
  const furthest = cue.weight >= TOLD_PLAINLY ? FURTHEST_PLAIN_CHANGE : FURTHEST_CHANGE;
  const isFarOff = isFar(was, now, one.region, isTold ? furthest : FURTHEST_RATIO);
  if (isFarOff && !one.isOldSaid) {
    // Fourteen for forty is no change that anybody makes, whatever words stand around it.
    const isStrong = likeness !== undefined && likeness.weight >= STRONG_LIKENESS;
    return isStrong ? { kind: 'slip', why: `${likeness.words}, and the two are far apart` } : undefined;
  }
  if ((one.isDerived || one.isMade) && (cue.isNeeded || (one.isDerived && cue.change !== 'remeasured'))) {
    const how = one.isDerived
      ? 'was worked out from figures that have changed'
      : 'was made or ordered to the old size';
    return { kind: 'stale', why: `it ${how}` };
  }
  if (now.state === 'ordered' && cue.change !== 'corrected') {
    return { kind: 'decided', why: 'it was ordered in this size' };
  }
  if (cue.change === 'remeasured' || cue.change === 'corrected') {
    if (now.state === 'received') return { kind: 'remeasured', why: 'what came has this size' };
    return { kind: 'remeasured', why: 'it was measured anew' };
  }
  if (cue.change === 'decided' || cue.isNeeded) return { kind: 'decided', why: 'it was changed on purpose' };
  if (isFarOff) return undefined;
  // A sum is no second measuring: what was measured stands, and the sum is of more.
  if (now.state === 'calculated' && was.state !== undefined && SURVEYED.has(was.state))
    // "The opening's 506, so with the same five a side that's a 496": what it should have been made to.
    return one.isAfterChange
      ? { kind: 'stale', why: 'it was made before what it comes from was found to be other' }
      : undefined;
  if (likeness && likeness.weight > 0) {
    return { kind: 'slip', why: `${likeness.words}, and nothing was said of a change` };
  }
  // Sixteen hours for one coat and eight for the next are two coats: only a word of change makes them one.
  if (exactQuantity(now, one.region)?.kind === 'time') return undefined;
  return byState(was.state, now.state);
}

function byState(was: FigureState | undefined, now: FigureState | undefined): ChangeKind {
  if (now === 'received') return { kind: 'remeasured', why: 'what came has this size' };
  if (now === 'made') return { kind: 'remeasured', why: 'it was made to this size', isUnasked: true };
  if (now && SURVEYED.has(now) && (was === undefined || PLANNED.has(was) || SURVEYED.has(was))) {
    return { kind: 'remeasured', why: 'the later figure was measured' };
  }
  if (was && SURVEYED.has(was)) return { kind: 'remeasured', why: 'a measured figure was said anew' };
  return { kind: 'decided', why: 'the later figure was said without a word about the earlier one' };
}

function isFar(was: Quantity, now: Quantity, region?: string, furthest = FURTHEST_RATIO): boolean {
  const [a, b] = [exactQuantity(was, region)?.size, exactQuantity(now, region)?.size];
  if (a === undefined || b === undefined || a <= 0 || b <= 0) return true;
  return Math.max(a / b, b / a) > furthest;
}
