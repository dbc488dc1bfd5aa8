/** Stated limits, and the figures that break them. */

import { REACH } from '../language/items/sizes.ts';
import type { Attribute, FigureNote } from '../language/notes.ts';
import { changeKindOf } from './change-kind.ts';
import { type Arriving, accept, claimOf } from './claims.ts';
import { LIMIT_MARK } from './counterpart.ts';
import { sourced } from './finding.ts';
import { likenessOf } from './likeness.ts';
import { kinship, nameStems, shapeOf, wordsOf } from './names.ts';
import { isPassage } from './passages.ts';
import type { ClaimRow, FindingRow, ItemRow, LimitRow } from './rows.ts';
import { slotOf } from './rows.ts';
import { staysOut } from './stays-out.ts';
import { stemOf } from './stems.ts';
import { LONGEST, nearWords } from './talk.ts';
import { agree, toleranceBetween } from './tolerance.ts';
import { difference } from './units.ts';
import type { Working } from './working.ts';

/** Whether a figure is a limit: it has a side that must not be passed. */
export function isLimiting(note: Pick<FigureNote, 'bound' | 'limit'>): boolean {
  return note.limit !== undefined || (note.bound !== 'exact' && note.bound !== 'about');
}

const isSided = (bound: FigureNote['bound']): bound is LimitRow['bound'] =>
  bound === 'at-least' || bound === 'at-most' || bound === 'between';

/** States of a figure that tell what is asked for, and not what there is. */
const ASKED: ReadonlySet<string> = new Set(['quoted', 'copied', 'target']);

/**
 * "It's 31 from the panelling, and the sticker says 36": a limit that stands, told again by its number alone. Kept as said
 * beside it; nothing where the figure is none.
 */
export function fileLimitAgain(work: Working, arriving: Arriving): ClaimRow | undefined {
  const { note, item } = arriving;
  if (note.bound !== 'exact' || note.change !== undefined || !ASKED.has(note.state ?? '')) return undefined;
  const slot = `${slotOf(item.id, note.attribute, note.dimension)}${LIMIT_MARK}`;
  const old = work.draft.limitsIn(note.dimension).find((limit) => limit.active && limit.slot === slot);
  if (!old || old.high !== undefined || difference(note, old, work.settings.region) !== 0) return undefined;
  const claim = claimOf(work, arriving, slot, 'superseded');
  work.draft.put({ table: 'claims', row: claim });
  return claim;
}

/** Files a limit and holds it against the one that stood in its place. */
export function fileLimit(work: Working, arriving: Arriving): ClaimRow {
  const { note, item, place } = arriving;
  const { draft, settings } = work;
  const slot = `${slotOf(item.id, note.attribute, note.dimension)}${LIMIT_MARK}`;
  const claim = claimOf(work, arriving, slot, 'standing');
  const bound = isSided(note.bound) ? note.bound : 'at-most';
  const old = draft.limitsIn(note.dimension).find((limit) => limit.slot === slot && limit.bound === bound);
  if (old) {
    const tolerance = toleranceBetween(limitAsClaim(old), note, settings.tolerances, settings.region);
    if (agree(note, old, tolerance, settings.region) !== false) {
      draft.put({ table: 'claims', row: { ...claim, status: 'superseded' } });
      return claim;
    }
    // "It's 545 clear, everything comes through there, so nothing over 530": the second is what the first means.
    const isOfWay = old.said === old.about && old.source.memoId === work.memo.id;
    if (!isOfWay && differsInDoubt(work, arriving, claim, old)) return claim;
    draft.put({ table: 'limits', row: { ...old, active: false } });
  }
  accept(work, claim, old ? 'a later limit takes its place' : 'first said');
  const limit: LimitRow = {
    id: note.id,
    itemId: item.id,
    slot,
    said: note.item,
    attribute: note.attribute,
    dimension: note.dimension,
    about: note.limit?.about ?? '',
    sentence: `${nearWords(place)} ${place.after.slice(0, LONGEST)}`.trim(),
    bound,
    value: note.value,
    ...(note.high === undefined ? {} : { high: note.high }),
    unit: note.unit,
    source: claim.source,
    active: true,
  };
  draft.put({ table: 'limits', row: limit });
  holdAgainstOwn(work, limit, item, arriving.place);
  return claim;
}

/**
 * "Backlash is twelve thou, anything over ten is worn out": a limit said in the same breath as what passes it. Older
 * figures were told when there was no such limit, and a person looks at them when they are said again.
 */
function holdAgainstOwn(work: Working, limit: LimitRow, item: ItemRow, place: Arriving['place']): void {
  for (const row of work.draft.standingOf(item.id)) {
    if (row.slot.includes(LIMIT_MARK) || row.status !== 'stands' || row.dimension !== limit.dimension)
      continue;
    if (row.attribute !== limit.attribute || row.bound !== 'exact') continue;
    const claim = row.claimId === undefined ? undefined : work.draft.claim(row.claimId);
    if (claim?.memoId !== work.memo.id || !place.until.includes(claim.source.quote)) continue;
    // "The door is 2.95 high, so nothing over 2.9": the limit follows from the figure.
    const between = place.until.slice(
      place.until.lastIndexOf(claim.source.quote) + claim.source.quote.length,
    );
    if (FIT_FOR.has(claim.state ?? '') || /\b(?:so|then|which means|that means|hence)\b/i.test(between))
      continue;
    if (Math.abs(difference(claim, limit, work.settings.region) ?? 0) > Math.abs(claim.value) / 2) continue;
    breachAmong(work, claim, wordlessly(work, item, claim), [limit]);
  }
}
/** What is only meant to be is no breach yet. */
const FIT_FOR: ReadonlySet<string> = new Set(['target', 'assumed', 'quoted']);

const limitAsClaim = (limit: LimitRow) => ({ ...limit, bound: limit.bound as string });

/** Says why a limit differs from its earlier self; true when the earlier one stands. */
function differsInDoubt(work: Working, arriving: Arriving, claim: ClaimRow, old: LimitRow): boolean {
  const { note, item, cue } = arriving;
  const likeness = likenessOf(old, note, work.settings.region);
  const change = changeKindOf({
    was: old,
    now: note,
    cue,
    likeness,
    isDerived: false,
    isMade: false,
    isOldSaid: true,
  });
  if (!change) return false;
  const isSlip = change.kind === 'slip';
  work.find({
    kind: change.kind === 'stale' ? 'decided' : change.kind,
    item: item.name,
    itemId: item.id,
    attribute: note.attribute,
    slot: claim.slot,
    was: sourced(old, { bound: old.bound, source: old.source }),
    now: sourced(note, { bound: note.bound, source: claim.source }),
    ...(isSlip && likeness ? { likeness: likeness.words } : {}),
    why: change.why,
  });
  if (isSlip) work.draft.put({ table: 'claims', row: { ...claim, status: 'doubted' } });
  return isSlip;
}

/** Evidence enough that a limit binds a figure. */
const BINDS = 0.6;
/** Dimensions whose readings pass limits all day long; time that has gone by so far breaks no least time. */
const READINGS: ReadonlySet<string> = new Set(['temperature', 'ratio', 'count', 'money', 'time']);

/** Checks a figure against the limits that bind it; the first one that it breaks becomes a finding. */
export function breachOf(work: Working, claim: ClaimRow, arriving: Arriving): FindingRow | undefined {
  return breachAmong(work, claim, arriving, work.draft.limitsIn(claim.dimension));
}

function breachAmong(
  work: Working,
  claim: ClaimRow,
  arriving: Arriving,
  limits: readonly LimitRow[],
): FindingRow | undefined {
  if (READINGS.has(claim.dimension)) return undefined;
  const { settings } = work;
  const isOwned = isOwnedUp(work, arriving);
  const broken = limits
    .filter((limit) => limit.id !== claim.id)
    .filter(
      (limit) =>
        goesTogether(limit.attribute, claim.attribute) ||
        (isOwned && claim.dimension === 'length') ||
        (claim.dimension === 'length' && isDistanceFrom(limit, arriving)),
    )
    .filter((limit) => !isLetPass(limit, claim, settings.region))
    .flatMap((limit) => {
      const edge = brokenEdge(limit, claim, settings);
      if (edge === undefined) return [];
      const binding = Math.max(
        bindingOf(limit, edge, arriving, work),
        isOwned && !needNotPass(limit, arriving) ? ownedBinding(limit, edge, arriving) : 0,
      );
      return [{ limit, edge, binding }];
    })
    .filter((one) => one.binding >= BINDS)
    .sort((a, b) => b.binding - a.binding)[0];
  if (!broken || alreadyFound(work, broken.limit, claim)) return undefined;
  return report(work, claim, arriving, broken.limit, broken.edge);
}

/** Whether the talk tells of trouble at the figure, or right after it: "there's thirteen inches. Remember what the book says?" */
function isOwnedUp(work: Working, { note, place }: Arriving): boolean {
  if (note.span.end === 0) return false;
  return work.memo.notes.problems.some(({ span }) => {
    if (span.start <= note.span.start && span.end >= note.span.end) return true;
    return span.start >= note.span.end && work.sentenceOf(span) - place.index <= 1;
  });
}

/** A little past a limit, where the talk takes it as trouble: the less the names share, the nearer it has to be. */
function ownedBinding(limit: LimitRow, edge: number, { note, item, place }: Arriving): number {
  const past = difference(note, { value: edge, unit: limit.unit });
  if (past === undefined || note.value - past <= 0) return 0;
  const share = Math.abs(past) / (note.value - past);
  if (share > OWNED.furthest) return 0;
  const tied = stemsOf(`${note.item} ${item.name} ${place.before} ${place.sentence} ${place.after}`);
  const shared = [...stemsOf(`${limit.said} ${limit.about}`)].filter((stem) => tied.has(stem));
  const isReach = REACH.has(limit.attribute) && REACH.has(note.attribute);
  // A measure that was only guessed may be any, of the thing itself.
  if (shared.length === 0 && (share > OWNED.nameless || (note.dimension === 'length' && !isReach))) return 0;
  return BINDS + 0.1 * (shared.length + 1 - share);
}
/** Shares of the limit: further past it the figure is of another thing, the sooner where no name ties the two. */
const OWNED = { furthest: 0.35, nameless: 0.1 };

/** A person let this thing pass this limit at this size. */
function isLetPass(limit: LimitRow, claim: ClaimRow, region?: string): boolean {
  return (limit.letPass ?? []).some(
    (one) =>
      one.itemId === claim.itemId && agree(claim, one, { value: 0, unit: claim.unit }, region) === true,
  );
}

/** Holds a limit that is set now against the figures that stand already. */
export function holdAgainstStanding(work: Working, limit: LimitRow): void {
  for (const row of work.draft.standingIn(limit.dimension)) {
    if (row.slot.includes(LIMIT_MARK) || row.status === 'series') continue;
    const item = work.draft.item(row.itemId);
    if (!item) continue;
    const known = row.claimId === undefined ? undefined : work.draft.claim(row.claimId);
    const { slot, itemId, attribute, dimension, bound, value, unit } = row;
    const place = { slot, itemId, attribute, dimension, bound, value, unit, said: item.name };
    const source = known?.source ?? work.source({ quote: '' });
    const claim = known ?? {
      ...place,
      id: `${slot} worked out`,
      memoId: work.memo.id,
      source,
      status: 'standing' as const,
    };
    breachAmong(work, claim, wordlessly(work, item, claim), [limit]);
  }
}

/** A claim as if it arrived without any talk around it but its own words. */
export function wordlessly(work: Working, item: ItemRow, claim: ClaimRow): Arriving {
  const { id, attribute, bound, dimension, value, unit } = claim;
  const { quote } = claim.source;
  const span = { start: 0, end: 0 };
  return {
    note: { kind: 'figure', id, quote, span, item: item.name, attribute, bound, dimension, value, unit },
    item,
    place: { ...work.place(span), clause: quote, sentence: quote, until: quote, before: '', after: '' },
    cue: { change: undefined, weight: 0, isNeeded: false, isRestated: false },
  };
}

/** The same figure said again breaks the same limit, and was found before. */
function alreadyFound(work: Working, limit: LimitRow, claim: ClaimRow): boolean {
  return work.draft
    .findingsOn(limit.slot)
    .some(
      (finding) =>
        finding.kind === 'limit' && agree(claim, finding.now, { value: 0, unit: claim.unit }) === true,
    );
}

function report(
  work: Working,
  claim: ClaimRow,
  { item }: Arriving,
  limit: LimitRow,
  edge: number,
): FindingRow {
  const was = { value: edge, unit: limit.unit };
  const likeness = likenessOf(was, claim, work.settings.region);
  const own = bindsOwn(limit, item);
  const isDecimal = likeness?.kind === 'decimal' && claim.dimension !== 'length';
  const isSlip = own && likeness !== undefined && (likeness.kind === 'unit' || isDecimal);
  const side =
    limit.bound === 'at-least' || (limit.bound === 'between' && edge === limit.value) ? 'under' : 'over';
  if (isSlip) work.draft.put({ table: 'claims', row: { ...claim, status: 'doubted' } });
  // "There's thirteen inches to the bunk front" is the room that the stove must have.
  const isRoom = ROOM.includes(limit.attribute);
  const owner = own || !isRoom ? item : (work.draft.item(limit.itemId) ?? item);
  return work.find({
    kind: isSlip ? 'slip' : 'limit',
    item: owner.name,
    itemId: owner.id,
    attribute: isRoom ? limit.attribute : claim.attribute,
    slot: limit.slot,
    was: sourced(was, { bound: limit.bound, source: limit.source }),
    now: sourced(claim, { bound: claim.bound, source: claim.source }),
    ...(isSlip ? { likeness: likeness.words } : {}),
    why: isSlip ? `${likeness.words}, and nothing was said of a change` : `it is ${side} the stated limit`,
  });
}

/** The end of the limit that a figure passes, in the limit's unit. */
function brokenEdge(limit: LimitRow, claim: ClaimRow, settings: Working['settings']): number | undefined {
  const slack = toleranceBetween(
    { ...limit, bound: 'exact' },
    { ...claim, bound: 'exact' },
    {},
    settings.region,
  );
  const over = (edge: number) => difference(claim, { value: edge, unit: limit.unit }, settings.region);
  // A limit is a limit: only the noise of a conversion is let pass.
  const noise = claim.unit === limit.unit ? 1e-9 : slack.value / 2;
  const most = limit.bound === 'at-most' ? limit.value : limit.bound === 'between' ? limit.high : undefined;
  const least = limit.bound === 'at-most' ? undefined : limit.value;
  if (most !== undefined && (over(most) ?? 0) > noise) return most;
  if (least !== undefined && (over(least) ?? 0) < -noise) return least;
  return undefined;
}

const SIZES: readonly Attribute[] = ['size', 'other'];
const KIN: readonly (readonly Attribute[])[] = [
  ['clearance', 'gap', 'offset'],
  ['height', 'clearance', 'length'],
  ['width', 'diameter'],
];

/** Room that must stay free says nothing of how big a thing is. */
const ROOM: readonly Attribute[] = ['clearance', 'gap'];

function goesTogether(limit: Attribute, claim: Attribute): boolean {
  if (ROOM.includes(limit) && SIZES.includes(claim)) return false;
  if (limit === claim || SIZES.includes(limit) || SIZES.includes(claim)) return true;
  return KIN.some((group) => group.includes(limit) && group.includes(claim));
}

/** What a limit keeps its thing away from, as a stem: "at least 150 from any timber". */
const keptFrom = ({ sentence, source }: LimitRow): string => {
  const behind = sentence.slice(sentence.indexOf(source.quote) + source.quote.length);
  return stemOf(
    /^[^.,;]{0,20}?\b(?:from|of|off|to) (?:any|all|every|anything|the) (?:bit of )?(\p{L}+)/iu.exec(
      behind,
    )?.[1] ?? '',
  );
};

/** "At least 150 from any timber, and I've got a joist at 120 from it": how far off a member of the class is. */
function isDistanceFrom(
  { attribute, dimension }: LimitRow,
  { note, place }: Pick<Arriving, 'note' | 'place'>,
): boolean {
  if (dimension !== 'length' || !DISTANCES.has(attribute)) return false;
  // A quote may reach up to what it is measured from: "35 from the".
  const behind = `${note.quote}${place.sentence.slice(place.until.length)}`;
  return /^[^,;]{0,24}? (?:away )?(?:from|off)\b/i.test(behind);
}
const DISTANCES: ReadonlySet<Attribute> = new Set(['clearance', 'gap', 'offset']);

/** Of two things, only plain measures compare: another thing's gap or spacing is its own affair. */
function isSameMeasure(limit: Attribute, claim: Attribute): boolean {
  if (limit === claim) return limit !== 'other' && limit !== 'offset' && limit !== 'gap';
  return ROUND.includes(limit) && ROUND.includes(claim);
}
const ROUND: readonly Attribute[] = ['width', 'diameter', 'size'];

const ANYTHING =
  /\b(?:any|anything|nothing|everything|whatever|no|none|any one|maximum|max|limit|load|rules?|law)\b/i;
const TOTAL =
  /\b(?:total|totted|tot up|adds? up|added up|all up|all in|all told|altogether|everything|the lot|the whole|whole (?:thing|lot)|comes to|loaded|laden|full|on the (?:scale|hook|scales)|over the scale|by the time)\b/i;
const BROKEN =
  /\b(?:over|too (?:wide|tall|heavy|long|big|high|low|tight|close)|limit|law|allowed|won't (?:fit|go)|doesn't (?:fit|go)|not (?:allowed|fit|go)|nope|says what|miss(?:es)? the|short of|good for|never|what'd i say|what did i say|that door|rules?)\b/i;
const COMING =
  /\b(?:bought|buying|coming|came|arriv\w+|deliver\w+|collect\w+|picked up|found|ordered|shaken hands|bring\w*|brought|fetch\w*|on its way)\b/i;

/** Classes that limits are stated for, and things that belong to them. */
const CLASSES: ReadonlyMap<string, ReadonlySet<string>> = new Map(
  (
    [
      [
        'machine',
        'lathe bandsaw saw planer thicknesser jointer drill press mill grinder compressor shaper sander moulder spindle engine generator router welder bender guillotine shear mortiser kiln loom',
      ],
      [
        'appliance',
        'fridge freezer washer dishwasher oven stove hob cooker dryer heater boiler cooktop microwave',
      ],
      [
        'timber',
        'plank board beam joist post rafter sheet batten stud lintel purlin truss noggin bearer plate',
      ],
      [
        'combustible',
        'plank board beam joist post rafter sheet batten stud lintel purlin truss noggin bearer curtain ply lining shelf',
      ],
      ['panel', 'sheet board door plywood ply plasterboard drywall glass pane'],
      ['vehicle', 'van truck trailer car bus lorry caravan'],
      ['furniture', 'table bench bed sofa cabinet wardrobe chair desk bunk'],
    ] as const
  ).map(([name, members]) => [stemOf(name), new Set(members.split(' ').map(stemOf))]),
);

/** Things that are bought whole. */
const IS_BROUGHT = new Set(
  ['machine', 'appliance'].flatMap((name) => [...(CLASSES.get(stemOf(name)) ?? [])]),
);

/** Whether a limit is on all that goes through somewhere, and a thing stays out of the way of it. */
function needNotPass(limit: LimitRow, { item, place }: Pick<Arriving, 'item' | 'place'>): boolean {
  if (!isOfPassage(limit) || limit.bound !== 'at-most' || !isForAll(limit)) return false;
  const talk = `${place.before.slice(-LONGEST)} ${nearWords(place)} ${place.after.slice(0, LONGEST)}`;
  return staysOut(shapeOf(item.name).head, talk);
}

const isOfPassage = (limit: LimitRow): boolean =>
  /\bthrough\b|\b(?:in|comes|come|bring|brought|fits?)\b/i.test(limit.sentence) &&
  limit.dimension === 'length';

const BIGGEST_THING =
  /\bthe (?:biggest|widest|largest|tallest|longest|heaviest|deepest|thickest)(?: (?:thing|one|piece))? (?:(?:that|which|i|we|you) )?(?:can|could|will|'ll|comes|fits|goes|gets)\b/i;

/** Whether a limit is stated for whatever meets it. */
const isForAll = (limit: LimitRow): boolean =>
  ANYTHING.test(`${limit.said} ${limit.about}`) ||
  BIGGEST_THING.test(limit.sentence) ||
  /\b(?:nothing|anything|any)\b|\bno (?!\w+er\b|more\b|less\b|closer\b)/i.test(limit.source.quote);

/** Words too common to tie a figure to a limit. */
const WEAK = new Set(
  `i it he she they we you and or but so that this is be have do go get got can will would not no more than over under
  up down in out at on of to for from with as by just one two all what how wide tall high long deep heavy thick
  inch foot feet mil kilo pound pounds millimetre metre meter centimetre ton tonne right now well want need make come
  say let put take good first back new`
    .split(/\s+/)
    .map(stemOf),
);

const stemsOf = (text: string) =>
  new Set(
    wordsOf(text)
      .filter((word) => !/^\d/.test(word))
      .map(stemOf)
      .filter((stem) => stem.length > 2 && !WEAK.has(stem)),
  );

/** How surely a limit binds a figure: 0 is not at all, 0.6 is enough. */
function bindingOf(limit: LimitRow, edge: number, { note, item, place }: Arriving, work: Working): number {
  if (isFarPast(edge, limit.unit, note, work)) return 0;
  const known = [limit.said, work.draft.item(limit.itemId)?.name ?? ''];
  if (bindsOwn(limit, item) || isAbout(limit, item.name)) return 1;
  if (isBorneBy(limit, place)) return 1;
  if (known.some((name) => isOtherOfKind(item.name, name))) return 0;
  const through = isOfPassage(limit);
  const head = shapeOf(item.name).head;
  if (through && limit.bound === 'at-most' && isPassage(head)) return 0;
  const here = nearWords(place);
  const behind = place.after.slice(0, LONGEST);
  const talk = `${place.before.slice(-LONGEST)} ${here} ${behind}`;
  let evidence = 0;
  const scope = `${limit.said} ${limit.about} ${limit.sentence}`;
  const tied = stemsOf(`${note.item} ${here} ${behind}`);
  const shared = [...stemsOf(scope)].filter((stem) => tied.has(stem));
  evidence += Math.min(0.6, shared.length * 0.3);
  const isUniversal = isForAll(limit);
  if (isUniversal) evidence += 0.3;
  if (needNotPass(limit, { item, place })) return 0;
  const classes = [...stemsOf(`${limit.said} ${limit.about} ${limit.source.quote}`)];
  const isMember =
    classes.some((name) => CLASSES.get(name)?.has(head)) || CLASSES.get(keptFrom(limit))?.has(head) === true;
  if (isMember) evidence += 0.4;
  // A fridge or a lathe is not built where it stands: it has to come through.
  if (isUniversal && through && IS_BROUGHT.has(head)) evidence += 0.4;
  if (isUniversal && COMING.test(talk)) evidence += 0.2;
  const isTotal =
    limit.dimension === 'mass' && TOTAL.test(`${note.item} ${place.before.slice(-LONGEST)} ${here}`);
  if (isTotal) evidence += 0.3;
  // What is said of one thing binds another only where the words reach that far, and for the same measure of it.
  if (!isUniversal && !isMember && !isTotal) return 0;
  if (limit.dimension === 'time') return 0;
  const isKeptOff = isMember && limit.bound === 'at-least' && isDistanceFrom(limit, { note, place });
  if (!isKeptOff && !isSameMeasure(limit.attribute, note.attribute)) return 0;
  if (BROKEN.test(`${here} ${behind}`)) evidence += 0.2;
  return evidence + closeness(edge, limit.unit, note);
}

/** What a winch, a hook or a shelf carries binds what is told to hang from it or to stand on it: "I'll lift it with the winch". */
function isBorneBy(limit: LimitRow, place: Arriving['place']): boolean {
  if (limit.dimension !== 'mass' || limit.bound === 'at-least') return false;
  const next = /^(?:that|it|she|this)(?:'s|'ll| )/i.test(place.after) ? place.after.slice(0, LONGEST) : '';
  const behind = ON_IT.exec(place.sentence.slice(place.until.length));
  const bearers = [...(behind ? [behind] : []), ...`${nearWords(place)} ${next}`.matchAll(BORNE)].map(
    ([, bearer = '']) => bearer,
  );
  return bearers.some(
    (bearer) => kinship(bearer, limit.said) === 'same' || kinship(limit.said, bearer) === 'longer',
  );
}
/** "It's 318 pounds on that shelf": right behind the figure. */
const ON_IT =
  /^\s*(?:on|onto|off|from|hanging off|hanging from|sitting on|standing on)\s+(?:the|my|that|this|our|a|an)\s+((?:[\p{L}'-]+ ?){1,3})/iu;
const BORNE =
  /\b(?:lift|lifts|lifted|lifting|hoist|hoisted|hoisting|raise|raised|raising|jack|jacked|jacking|carry|carried|carrying|hang|hangs|hung|hanging|sit|sits|sat|sitting|stand|stands|stood|standing|put|puts|load|loaded|loading|pull|pulled|haul|hauled|swing|swung|lower|lowered|pick|picked|goes|going|move|moved)\b[^.,;!?]{0,40}?\b(?:with|on|onto|off|from|by|using)\s+(?:the|my|that|this|our|a|an)\s+((?:[\p{L}'-]+ ?){1,3})/giu;

/** Nobody misses a limit by this many times: it is another measure of the thing, unless the unit went wrong. */
const FURTHEST_PAST = 3;

function isFarPast(edge: number, unit: string, note: Arriving['note'], work: Working): boolean {
  const past = difference(note, { value: edge, unit }, work.settings.region);
  if (past === undefined || edge <= 0 || note.value <= 0) return false;
  const limit = note.value - past;
  if (Math.max(note.value / limit, limit / note.value) <= FURTHEST_PAST) return false;
  // A rating of ten tonnes told as a hundred is a slip; sizes of one thing are often ten times another.
  const likeness = likenessOf({ value: edge, unit }, note, work.settings.region)?.kind;
  return !(likeness === 'unit' || (likeness === 'decimal' && note.dimension !== 'length'));
}

/** A figure a little past a limit is likely to be held to it; one far past is likely another matter. */
function closeness(edge: number, unit: string, note: Arriving['note']): number {
  const past = difference(note, { value: edge, unit });
  if (past === undefined || note.value === 0) return 0;
  const share = Math.abs(past) / Math.abs(note.value - past);
  if (share < 0.25) return 0.2;
  return share > 2 ? -0.5 : share > 1 ? -0.2 : 0;
}

/** A limit binds its own thing, unless it is stated of a passage for what goes through. */
function bindsOwn(limit: LimitRow, item: ItemRow): boolean {
  if (limit.itemId !== item.id && !isOwn(limit, item.name)) return false;
  return limit.about === '' || isAbout(limit, item.name) || !isPassage(shapeOf(item.name).head);
}

/** Whether a thing is one of those that a limit is stated for: "fresh water tank" of "tanks and panels". */
function isAbout(limit: LimitRow, name: string): boolean {
  return limit.about
    .split(/[,;/]|\b(?:and|or)\b/)
    .map((one) => one.trim())
    .filter((one) => one !== '')
    .some((one) => ['same', 'longer', 'sort', 'shorter'].includes(kinship(name, one)));
}

/** The limit's own thing, or one that is said more closely. */
function isOwn(limit: LimitRow, name: string): boolean {
  const kin = kinship(name, limit.said);
  return kin === 'same' || kin === 'longer' || kin === 'sort' || kin === 'shorter';
}

/** Another thing of the same kind: a table slide is not bound by what the book says of the ram slide. */
function isOtherOfKind(name: string, limit: string): boolean {
  return kinship(name, limit) === 'rival' && nameStems(limit).length <= 3;
}
