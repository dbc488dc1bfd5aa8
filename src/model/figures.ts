import type { Bound, FigureNote, Quantity } from '../language/notes.ts';
import { isAltered } from './altered.ts';
import {
  isAmountOfStuff,
  isDeviation,
  isOfMore,
  isOrElse,
  isTried,
  oldValueBehind,
  partThere,
} from './asides.ts';
import { changeKindOf } from './change-kind.ts';
import { type Arriving, accept, claimOf, putClaim, standingOf } from './claims.ts';
import { counterpartOf } from './counterpart.ts';
import { type Cue, cueOf, isToldMade } from './cues.ts';
import { actsOn, sourced } from './finding.ts';
import { isOfAnother, likeliestChange } from './likeliest-change.ts';
import { likenessOf } from './likeness.ts';
import { breachOf, fileLimit, fileLimitAgain, isLimiting } from './limits.ts';
import { fileLimitOfWay } from './limits-of-ways.ts';
import { itemFor } from './naming.ts';
import { meantInstead, nearCounterpart, oldValueWeight } from './near-counterpart.ts';
import { tellOldSize } from './old-size.ts';
import { otherRating } from './ratings.ts';
import { recompute } from './recompute.ts';
import type { ClaimRow, FindingRow, Slot, StandingRow } from './rows.ts';
import { isSeries } from './series.ts';
import type { Place } from './talk.ts';
import { agree, toleranceBetween } from './tolerance.ts';
import type { Kept, Tolerance } from './views.ts';
import type { Working } from './working.ts';

/** Files one figure: names its item, holds it against what stands, and says what clashed. */
export function fileFigure(work: Working, note: Kept<FigureNote>): ClaimRow {
  const arriving = arrivingOf(work, note);
  const { place } = arriving;
  if (isSeries(note, place.clause)) return fileReading(work, arriving);
  if (isOrElse(note.quote, place)) return fileAside(work, arriving, 'what does under a condition');
  if (isLimiting(note)) return fileLimit(work, arriving);
  if (isDeviation(note.quote, place)) return fileAside(work, arriving, 'by how much it is out');
  if (isTried(note, place)) return fileAside(work, arriving, 'what it did while it was tried');
  const again = fileLimitAgain(work, arriving);
  if (again) return again;
  const claim = fileClaim(work, arriving);
  fileLimitOfWay(work, arriving, claim);
  return claim;
}

/** A figure with the thing that its name stands for, its place in the talk, and the words of change around it. */
export function arrivingOf(work: Working, note: Kept<FigureNote>): Arriving {
  const place = work.place(note.span);
  const item = itemFor(work.draft, note.item, work.recent);
  work.recent.push(item.id);
  const isInDecision = work.memo.notes.decisions.some(
    (decision) => decision.span.start < note.span.end && decision.span.end > note.span.start,
  );
  return { note, item, place, cue: cueOf(note, place, isInDecision) };
}

/** Kept as said; it takes no other figure's place. */
function fileAside(work: Working, arriving: Arriving, rule: string): ClaimRow {
  const { note, item } = arriving;
  const slot = `${item.id}|${note.attribute}|${note.dimension}`;
  const free = work.draft.standing(slot) === undefined ? slot : besideSlot(work, slot);
  const claim = claimOf(work, arriving, free, 'standing');
  accept(work, claim, rule);
  return claim;
}

/** Readings that change by themselves: the latest stands, and nothing clashes. */
function fileReading(work: Working, arriving: Arriving): ClaimRow {
  const { note, item } = arriving;
  const own = `${item.id}|${note.attribute}|${note.dimension}`;
  const slot = note.bound === 'exact' || note.bound === 'about' ? own : `${own}|limit`;
  const claim = claimOf(work, arriving, slot, 'series');
  putClaim(work, claim);
  work.draft.put({
    table: 'standing',
    row: { ...standingOf(claim, 'latest of a series'), status: 'series' },
  });
  return claim;
}

function fileClaim(work: Working, arriving: Arriving): ClaimRow {
  const { note, item, place } = arriving;
  const before = arriving.cue.change === undefined ? toldBefore(work, note, place) : [];
  const { slot, standing } = counterpartOf(
    work.draft,
    item,
    note,
    work.settings,
    (row) => isSaidTogether(work, row, arriving, before),
    sideBeside(work, note),
  );
  const near = likelyOther(work, arriving, standing);
  if (near) {
    const tolerance = toleranceBetween(near.row, note, work.settings.tolerances, work.settings.region);
    return contradict(work, { ...arriving, item: near.item }, near.row, tolerance);
  }
  const rated = standing ? undefined : otherRating(work, arriving);
  if (rated) {
    const { row, likeness } = rated;
    const tolerance = toleranceBetween(row, note, work.settings.tolerances, work.settings.region);
    const why = `${likeness.words}, and both tell how it is rated`;
    return doubt(work, claimOf(work, arriving, row.slot, 'doubted'), row, tolerance, why, likeness.words);
  }
  if (!standing) {
    const claim = claimOf(work, arriving, slot, 'standing');
    accept(work, claim, 'first said');
    breachOf(work, claim, arriving);
    tellOldSize(work, arriving, claim);
    // A formula may have waited for it.
    recompute(work, slot);
    return claim;
  }
  const { tolerances, region } = work.settings;
  const tolerance = isToldChanged(arriving.cue)
    ? toleranceBetween(asExact(standing), asExact(note), tolerances, region)
    : toleranceBetween(standing, note, tolerances, region);
  const values = [standing, ...(standing.also ?? [])];
  if (values.some((value) => agree(note, value, tolerance, work.settings.region) === true)) {
    return confirm(work, arriving, standing, tolerance);
  }
  if (isPartlyGuessed(note) && !sideBeside(work, note) && isOfAnother(work, arriving, standing)) {
    const aside = fileAside(work, arriving, 'said of another thing of the same name');
    tellOldSize(work, arriving, aside);
    return aside;
  }
  return contradict(work, arriving, standing, tolerance);
}

/** Whether the thing or its measure was not told in so many words. */
const isPartlyGuessed = ({ assumed, review }: Kept<FigureNote>): boolean =>
  review !== 'amended' && (assumed?.includes('item') || assumed?.includes('attribute')) === true;

/** The figure of another name that this one takes the place of. What a person put right is of the thing they said. */
function likelyOther(work: Working, arriving: Arriving, standing: StandingRow | undefined) {
  if (arriving.note.review === 'amended') return undefined;
  return standing
    ? meantInstead(work, arriving, standing)
    : (nearCounterpart(work, arriving) ?? likeliestChange(work, arriving));
}

/** "It's going up to about 940": what is said to change does not agree, however roughly it is said. */
const isToldChanged = ({ change, weight, isRestated }: Cue): boolean =>
  change === 'decided' && weight >= 3 && !isRestated;

/** A figure as if it had been said without "about", which lets a twentieth pass. */
const asExact = <F extends { readonly bound: Bound }>(figure: F): F =>
  figure.bound === 'about' ? { ...figure, bound: 'exact' } : figure;

/** The other side of a size told by two: "24" of "24 by 75". */
function sideBeside(work: Working, note: Kept<FigureNote>): Quantity | undefined {
  if (note.attribute !== 'size') return undefined;
  const { text, notes } = work.memo;
  const joins = (left: FigureNote, right: FigureNote) =>
    left.span.end <= right.span.start && BY.test(text.slice(left.span.end, right.span.start));
  return notes.figures.find(
    (other) =>
      other.item === note.item && other.attribute === 'size' && (joins(other, note) || joins(note, other)),
  );
}
const BY = /^\s*(?:by|x|×)\s*$/i;

/** Two figures of one attribute in one sentence, without a word of change or need, are two sides of a thing. */
function isSaidTogether(
  work: Working,
  row: StandingRow,
  { note, place, cue }: Arriving,
  before: readonly FigureNote[],
): boolean {
  const side = work.figure(row.claimId);
  if (side && BY.test(work.memo.text.slice(side.span.end, note.span.start))) return true;
  if (cue.isNeeded || (cue.change !== undefined && cue.weight >= 3)) return false;
  const { tolerances, region } = work.settings;
  const isTold = (other: FigureNote) =>
    agree(other, row, toleranceBetween(row, other, tolerances, region), region) === true;
  if (before.some(isTold)) return true;
  const claim = row.claimId === undefined ? undefined : work.draft.claim(row.claimId);
  if (claim?.memoId !== work.memo.id) return false;
  return place.sentence.includes(claim.source.quote) && place.until.includes(claim.source.quote);
}

/**
 * "She comes on at thirty and cuts out at fifteen": the thirty of old is told, so that fifteen is the other one. The last
 * few of the sentence that are of the same size of the thing.
 */
function toldBefore(work: Working, note: Kept<FigureNote>, place: Place): readonly FigureNote[] {
  if (note.attribute === 'size') return [];
  const { figures } = work.memo.notes;
  const found: FigureNote[] = [];
  for (let at = figures.indexOf(note) - 1; at >= 0 && found.length < MOST_BEFORE; at--) {
    const other = figures[at] as FigureNote;
    if (work.sentenceOf(other.span) !== place.index) break;
    if (other.item === note.item && other.attribute === note.attribute && other.dimension === note.dimension)
      found.push(other);
  }
  return found;
}
const MOST_BEFORE = 4;

/** How much a state says: measured beats assumed. */
const RANK: Readonly<Record<string, number>> = {
  made: 6,
  received: 6,
  measured: 5,
  decided: 4,
  calculated: 3,
  ordered: 3,
  target: 2,
  quoted: 2,
  copied: 1,
  assumed: 0,
};

function confirm(work: Working, arriving: Arriving, standing: StandingRow, tolerance: Tolerance): ClaimRow {
  const claim = claimOf(work, arriving, standing.slot, 'superseded');
  const better = (RANK[claim.state ?? ''] ?? 2) > (RANK[standing.state ?? ''] ?? 2);
  const isFiner = standing.bound === 'about' && claim.bound === 'exact';
  const wasWorkedOut = standing.claimId === undefined;
  if (better || isFiner || wasWorkedOut) {
    const rule = better
      ? `${claim.state ?? 'said'} beats ${standing.state ?? 'said'}`
      : 'said again, more exactly';
    // What was let pass for the sake of the rougher one holds no longer, unless it was said.
    const kept = isFiner && tolerance.from === 'precision' ? undefined : tolerance;
    accept(work, { ...claim, status: 'standing' }, wasWorkedOut ? 'said as worked out' : rule, kept);
  } else putClaim(work, claim);
  if (claim.plusMinus !== undefined) tellTolerance(work, standing.slot, tolerance);
  settleDoubts(work, standing);
  if (isMadeAnew(work, claim, arriving.place)) settleStale(work, standing);
  breachOf(work, claim, arriving);
  return claim;
}

/** A tolerance told when a figure is said again holds from then on, also in what follows from the figure. */
function tellTolerance(work: Working, slot: string, tolerance: Tolerance): void {
  const row = work.draft.standing(slot);
  if (!row || tolerance.from !== 'said') return;
  if (row.tolerance?.from !== 'said') work.draft.put({ table: 'standing', row: { ...row, tolerance } });
  recompute(work, slot);
}

/** What was said again after a likely slip is what holds. */
function settleDoubts(work: Working, standing: StandingRow): void {
  for (const finding of work.draft.findingsOn(standing.slot)) {
    if (finding.kind !== 'slip' || finding.memoId === work.memo.id) continue;
    settleByTalk(work, finding, 'keep-old', `said again in ${work.memo.id}`);
    const row = work.draft.standing(standing.slot);
    if (row?.status === 'in-doubt') work.draft.put({ table: 'standing', row: { ...row, status: 'stands' } });
  }
}

/** The work that a figure is said with is done: made or measured so, or a deed told in the same sentence. */
function isMadeAnew(work: Working, { state }: Pick<ClaimRow, 'state'>, place: Place): boolean {
  if (state !== undefined && SURVEYED.has(state)) return true;
  return work.memo.notes.done.some((note) => place.sentence.includes(note.quote));
}
const SURVEYED: ReadonlySet<string> = new Set(['made', 'measured', 'received']);

/** A part made anew to what it should be answers the finding that it no longer agreed. */
function settleStale(work: Working, standing: StandingRow): void {
  for (const finding of work.draft.findingsOn(standing.slot)) {
    if (finding.kind !== 'stale' || finding.status !== 'open' || finding.memoId === work.memo.id) continue;
    settleByTalk(work, finding, 'take-new', `made anew in ${work.memo.id}`);
  }
}

function settleByTalk(work: Working, finding: FindingRow, choice: string, reason: string): void {
  const settledBy = { choice, at: work.memo.recordedAt, reason };
  work.draft.put({ table: 'findings', row: { ...finding, status: 'settled', settledBy } });
}

function contradict(
  work: Working,
  arriving: Arriving,
  standing: StandingRow,
  tolerance: Tolerance,
): ClaimRow {
  const { note, item, cue, place } = arriving;
  const { draft } = work;
  const earlier = work
    .findings()
    .find((finding) => finding.kind === 'stale' && finding.slot === standing.slot);
  if (earlier) {
    if (agree(note, earlier.was, tolerance, work.settings.region) === true)
      return restate(work, arriving, standing);
    if (earlier.now.source === undefined) return followUp(work, arriving, standing, earlier.id);
    // It was told in so many words how it is now: another number is of something beside it.
    if (!note.replaces && cue.weight < TOLD_ANEW)
      return fileAside(work, arriving, 'said of a thing of the same name');
  }
  if (isOldAgain(work, arriving, standing, tolerance)) return restate(work, arriving, standing);
  const old = oldBehind(work, arriving, standing);
  if (old) return tellOld(work, arriving, standing, tolerance, old);
  if (isBeside(work, arriving, standing)) {
    const aside = fileAside(work, arriving, 'said of more or less than the thing');
    // What hangs on the hook altogether may be too much for the crane.
    if (SUMMED.has(note.dimension)) breachOf(work, aside, arriving);
    return aside;
  }
  if (isAltered(work, arriving, standing) || isAsItShould(work, arriving, standing, tolerance)) {
    const altered = claimOf(work, arriving, standing.slot, 'standing');
    accept(work, altered, 'altered, as was to be done', tolerance);
    settleStale(work, standing);
    breachOf(work, altered, arriving);
    recompute(work, standing.slot);
    return altered;
  }
  const isOldSaid = oldValueWeight(work, arriving, standing) > 0;
  const change = changeKindOf({
    was: standing,
    now: note,
    cue,
    likeness: likenessOf(standing, note, work.settings.region),
    isDerived: draft.formula(standing.slot) !== undefined,
    isMade: isMade(work, arriving, standing),
    isOldSaid,
    // "That's the doorway less a quarter" is told of the doorway, and is none.
    isAfterChange: !/\b(?:less|minus|plus)\b/i.test(place.until) && isAfterChange(work, note),
    ...(work.settings.region === undefined ? {} : { region: work.settings.region }),
  });
  const isAnother = !isOldSaid && (note.dimension === 'count' || isFurtherUp(work, arriving, standing));
  const likeness = likenessOf(standing, note, work.settings.region)?.words;
  const asLimit = cue.change === undefined || cue.weight < 2;
  const claim = claimOf(work, arriving, standing.slot, 'standing');
  const breach = change?.kind === 'slip' ? undefined : breachOf(work, claim, arriving);
  const isAside =
    change?.kind === 'remeasured' && !isOldSaid && isOfThisMemo(work, standing) && !isAgain(place);
  if (change === undefined || isAnother || isAside || (breach && asLimit && change.kind !== 'stale')) {
    const aside = claimOf(work, arriving, besideSlot(work, standing.slot), 'standing');
    accept(work, aside, 'said of a thing of the same name');
    return aside;
  }
  if (change.kind === 'slip') return doubt(work, claim, standing, tolerance, change.why, likeness);
  const before = standing.claimId === undefined ? undefined : draft.claim(standing.claimId);
  if (before) draft.put({ table: 'claims', row: { ...before, status: 'superseded' } });
  accept(work, claim, change.why);
  work.find({
    kind: change.kind,
    item: item.name,
    itemId: item.id,
    attribute: standing.attribute,
    slot: standing.slot,
    was: sourced(standing, { ...stateOf(standing), ...(before ? { source: before.source } : {}) }),
    now: sourced(note, { bound: note.bound, ...stateOf(note), source: claim.source }),
    tolerance,
    why: change.why,
    ...(change.isUnasked ? { isUnasked: true } : {}),
  });
  recompute(work, standing.slot);
  return claim;
}

/** "I cut the slate again at 900": the size that a part should have had when it was made before. */
const isAsItShould = (
  work: Working,
  { note, place }: Arriving,
  { slot }: StandingRow,
  tolerance: Tolerance,
): boolean =>
  isMadeAnew(work, note, place) &&
  work.draft
    .findingsOn(slot)
    .some(
      ({ kind, status, now }) =>
        kind === 'stale' && status === 'open' && agree(note, now, tolerance, work.settings.region) === true,
    );

/** What a figure is told with that makes it no new size: a load, a use of what was ordered, a place. */
function isBeside(work: Working, { note, item, place, cue }: Arriving, standing: StandingRow): boolean {
  if (note.replaces) return false;
  if (isSumOfMore(note, place)) return true;
  if (note.change) return false;
  if (cue.isNeeded && wasJustSettled(work, standing)) return true;
  if (isAmountOfStuff(item.name, note, standing)) return true;
  if (partThere(place)) return true;
  if (note.dimension !== 'mass' || !isOfMore(place.clause)) return false;
  const claim = standing.claimId === undefined ? undefined : work.draft.claim(standing.claimId);
  return claim !== undefined && !isOfMore(claim.source.quote) && cue.weight < TOLD_ANEW;
}
/** "I totted up what's going on the hook, shaper, vice, the lot, and it's 268 kilos": worked out, of several together. */
const isSumOfMore = ({ state, dimension }: Kept<FigureNote>, { until }: Place): boolean =>
  state === 'calculated' && SUMMED.has(dimension) && isOfMore(until);
const SUMMED: ReadonlySet<string> = new Set(['mass', 'charge', 'volume', 'current', 'power']);

/** "The bed's going down to twelve hundred. … Must come down to eleven eighty": of the slats, and not of the bed. */
function wasJustSettled(work: Working, standing: StandingRow): boolean {
  const claim = standing.claimId === undefined ? undefined : work.draft.claim(standing.claimId);
  if (claim?.memoId !== work.memo.id) return false;
  const isFound = work
    .findings()
    .some(({ slot, kind }) => slot === standing.slot && (kind === 'decided' || kind === 'remeasured'));
  return isFound || standing.state === 'decided';
}

/** Plain words that the thing itself was weighed or changed anew. */
const TOLD_ANEW = 6;

/** Whether a figure is the old value told behind the new one: "down to sixteen, from twenty". */
function oldBehind(work: Working, { note }: Arriving, standing: StandingRow) {
  const fresh = work.figure(standing.claimId);
  if (!fresh || fresh.span.end > note.span.start) return undefined;
  return oldValueBehind(work.memo.text.slice(fresh.span.end, note.span.start));
}

/** Keeps an old value as given up; told as a change that nobody noticed, it is a finding of its own. */
function tellOld(
  work: Working,
  arriving: Arriving,
  standing: StandingRow,
  tolerance: Tolerance,
  how: 'changed' | 'recalled',
): ClaimRow {
  const { note, item } = arriving;
  const claim = restate(work, arriving, standing);
  const isFound = work.findings().some(({ slot }) => slot === standing.slot);
  if (how === 'recalled' || isFound) return claim;
  const fresh = standing.claimId === undefined ? undefined : work.draft.claim(standing.claimId);
  work.find({
    kind: 'decided',
    item: item.name,
    itemId: item.id,
    attribute: standing.attribute,
    slot: standing.slot,
    was: sourced(note, { bound: note.bound, source: claim.source }),
    now: sourced(standing, { ...stateOf(standing), ...(fresh ? { source: fresh.source } : {}) }),
    tolerance,
    why: 'its old size was told with the new one',
  });
  return claim;
}

/** "I went to the nine kilowatt, they were out of the eight": the old value again, right after it was given up. */
function isOldAgain(
  work: Working,
  { note, place }: Arriving,
  standing: StandingRow,
  tolerance: Tolerance,
): boolean {
  if (note.replaces || note.change === 'corrected' || GONE_BACK.test(place.clause)) return false;
  return work
    .findings()
    .some(
      (finding) =>
        finding.slot === standing.slot &&
        (finding.kind === 'decided' || finding.kind === 'remeasured') &&
        finding.now.source !== undefined &&
        place.until.includes(finding.now.source.quote) &&
        agree(note, finding.was, tolerance, work.settings.region) === true,
    );
}

const GONE_BACK = /\b(?:back|again|after all|instead|scratch|no|staying|stays?|keep(?:ing)?)\b/i;

/** Two sizes told in one breath are of two things, unless it was plainly measured a second time. */
function isOfThisMemo(work: Working, standing: StandingRow): boolean {
  const claim = standing.claimId === undefined ? undefined : work.draft.claim(standing.claimId);
  return claim?.memoId === work.memo.id;
}
const isAgain = ({ sentence, before }: Place) =>
  /\b(?:again|re-?measured|second time|twice|wrong|misread|mistake|turn(?:s|ed) out|actually|(?:put|laid|ran|held|stuck|got|had|took) (?:a|the|my) (?:tape|rule|ruler|stick|square|laser|level|gauge|calipers?|callipers?|micrometer|scale))\b/i.test(
    `${before} ${sentence}`,
  );

/** The older figure was said in this memo, and nothing in the newer one's own words says that it takes its place. */
function isFurtherUp(work: Working, { note, cue }: Arriving, standing: StandingRow): boolean {
  const claim = standing.claimId === undefined ? undefined : work.draft.claim(standing.claimId);
  if (claim?.memoId !== work.memo.id) return false;
  if (note.change !== undefined || cue.isNeeded || cue.weight >= CLAUSE_CUE) return false;
  const older = work.figure(claim.id);
  return !(older && isRecalled(work.place(older.span)) && isSoonAfter(work, older, note));
}

/** "I had drawn the flange at 120": what is told of is what was meant before today. */
const isRecalled = ({ until }: Place) => RECALLED.test(until);
const RECALLED =
  /\b(?:(?:i|we)(?:'d| had|'ve)(?: \w+)? (?:drawn|written|put|noted|planned|specced|sketched|marked|pencilled|penciled|called|figured|said|told you|had)|(?:i|we) (?:wrote|drew|sketched|pencilled|penciled)|(?:i|we) had .{1,40} (?:down (?:as|for|at)|in (?:my|the) (?:notes|book|plan|drawing)|on (?:the|my) (?:plan|drawing|list|sketch)))\b/i;

/** Something else was found to be other than it was, in this sentence or the one before. */
function isAfterChange(work: Working, note: FigureNote): boolean {
  const here = work.place(note.span).index;
  return work.findings().some(({ kind, now }) => {
    if (kind === 'slip' || kind === 'stale' || now.source === undefined) return false;
    const other = work.memo.notes.figures.find(
      ({ quote, value }) => quote === now.source?.quote && value === now.value,
    );
    return (
      other !== undefined &&
      Math.abs(here - work.place(other.span).index) <= 1 &&
      other.span.start < note.span.start
    );
  });
}

/** In the next sentence or two. */
const isSoonAfter = (work: Working, older: FigureNote, note: FigureNote): boolean =>
  work.place(note.span).index - work.place(older.span).index <= 2;
/** A word of change in the figure's own clause, and something around it that says the same. */
const CLAUSE_CUE = 4.5;

/** Something was done to the older size: an act that is on record, or work that the talk tells of beside a need. */
function isMade(work: Working, { item, cue, place }: Arriving, standing: StandingRow): boolean {
  if (standing.state === 'made' || actsOn(work.draft, item.name).length > 0) return true;
  const claim = standing.claimId === undefined ? undefined : work.draft.claim(standing.claimId);
  if (!cue.isNeeded) return false;
  return claim?.memoId === work.memo.id || isToldMade(place);
}

const stateOf = (row: Pick<ClaimRow, 'state'> | { readonly state?: ClaimRow['state'] }) =>
  row.state === undefined ? {} : { state: row.state };

/** The size as made, said once more after it was found to be stale: nothing new. */
function restate(work: Working, arriving: Arriving, standing: StandingRow): ClaimRow {
  const claim = claimOf(work, arriving, standing.slot, 'superseded');
  putClaim(work, claim);
  return claim;
}

/** A figure said of a thing that was just worked out anew: the speaker's own word stands. */
function followUp(work: Working, arriving: Arriving, standing: StandingRow, findingId: string): ClaimRow {
  const claim = claimOf(work, arriving, standing.slot, 'standing');
  const finding = work.findings().find((one) => one.id === findingId);
  accept(work, claim, 'said after it was worked out');
  if (finding) {
    const now = sourced(arriving.note, { bound: arriving.note.bound, source: claim.source });
    work.amend({ ...finding, now });
  }
  recompute(work, standing.slot);
  return claim;
}

/** A likely slip takes nothing over: the claim is kept in doubt until a person settles it. */
function doubt(
  work: Working,
  claim: ClaimRow,
  standing: StandingRow,
  tolerance: Tolerance,
  why: string,
  likeness: string | undefined,
): ClaimRow {
  const doubted: ClaimRow = { ...claim, status: 'doubted' };
  putClaim(work, doubted);
  work.draft.put({ table: 'standing', row: { ...standing, status: 'in-doubt' } });
  const asked = work.draft
    .findingsOn(standing.slot)
    .some((finding) => finding.kind === 'slip' && agree(claim, finding.now, tolerance) === true);
  if (asked) return doubted;
  const old = standing.claimId === undefined ? undefined : work.draft.claim(standing.claimId);
  work.find({
    kind: 'slip',
    item: work.draft.item(standing.itemId)?.name ?? claim.said,
    itemId: standing.itemId,
    attribute: standing.attribute,
    slot: standing.slot,
    was: sourced(standing, { ...stateOf(standing), ...(old ? { source: old.source } : {}) }),
    now: sourced(claim, { bound: claim.bound, ...stateOf(claim), source: claim.source }),
    tolerance,
    ...(likeness === undefined ? {} : { likeness }),
    why,
  });
  return doubted;
}

function besideSlot(work: Working, slot: Slot): Slot {
  const own = slot.replace(/#\d+$/, '');
  for (let number = 2; ; number++) {
    const beside = `${own}#${number}`;
    if (!work.draft.standing(beside)) return beside;
  }
}
