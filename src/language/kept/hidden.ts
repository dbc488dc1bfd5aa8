/**
 * Reads what is behind a closed panel: "behind the galley panel there's the feed for the pump", "I ran the hose under
 * the sole". What is only planned, supposed, asked or denied is none, and so is what stands behind furniture.
 */
import type { Phrase } from '../items/noun-phrases.ts';
import { phraseAt, tagAt, wordAt } from '../items/parse.ts';
import { type NounKind, singular } from '../lexicon/trade-nouns.ts';
import type { HiddenNote, Service } from '../notes.ts';
import { wordSet } from '../word-table.ts';
import { clauseEnd, isReported, type Line, phrasesOf, type RecordScene, textOfWords } from './scene.ts';

/** What closes things in. Singular heads; common practice, no source. */
const PANELS =
  wordSet(`panel lining wall ceiling floor sole soleboard floorboard bulkhead boxing cladding plasterboard
  drywall headlining headliner skirting baseboard splashback backsplash tile tiling panelling paneling dado partition
  soffit fascia kickboard plinth toe-kick dashboard board sheet ply liner cover backboard wainscot deck plate trim card
  lid hatch plank planking skin boarding beadboard wallboard moulding pelmet screed render plaster`);
/** After these a thing is closed in only where the words say so. */
const WALLS =
  wordSet(`wall ceiling floor sole bulkhead boxing lining headlining headliner partition soffit cladding deck
  panelling paneling skirting plinth screed plaster dashboard panel floorboard plasterboard plank boarding tile tiling`);

const SERVICE_HEADS: Readonly<Record<Exclude<Service, 'other'>, ReadonlySet<string>>> = {
  cable:
    wordSet(`cable wire wiring flex cord harness loom feed supply lead socket box isolator fuse junction connector main
    mains spur conductor switch light antenna coax ethernet earth bus-bar circuit`),
  pipe: wordSet(`pipe pipework hose duct ducting conduit waste drain flue valve stopcock union tee manifold tube tubing plumbing
    line vent seacock trap`),
  fixing: wordSet(
    'bolt screw nail fixing bracket anchor hinge plate backing-plate chainplate rivet strap clip hanger',
  ),
  timber: wordSet(
    'stud batten noggin nogging noggins backing pad doubler blocking joist rafter frame stringer beam bearer rib dwang',
  ),
};
const KIND_SERVICES: readonly (readonly [NounKind, Service])[] = [
  ['cable', 'cable'],
  ['electric', 'cable'],
  ['pipe', 'pipe'],
  ['fastener', 'fixing'],
  ['joist', 'timber'],
];
/** Kept in, on their own, and no service. */
const OTHERS = wordSet(
  'tank pump insulation membrane heater regulator accumulator filter void cavity sensor antenna camera',
);
const NO_SERVICE = wordSet(
  'door window lamp speaker radio stereo battery charger step ladder ring stove fridge',
);

/** Verbs of being in a place. "Lives" and "goes" are said of cables as well. */
const LOCATED =
  / (?:is|are|'s|'re|run|runs|running|ran|goes|go|going|sits|sit|sitting|lives|live|comes|come|coming|passes|pass|crosses|cross|buried|hidden|tucked|routed|clipped|clip|boxed|drops|drop|rises|got|have|has|'ve|been|there|found|behind it|left|put|took|taken|fixed|screwed|fed|threaded|laid|lies|hid|fished|pulled|dropped) /;
/** For what lies under or in a thing: verbs of running and burying, and "there is". */
const BURIED =
  / (?:there 's|there is|there are|there 're|theres|run|runs|running|ran|goes|buried|hidden|routed|clipped|boxed|passes|crosses|drops|fed|threaded|laid|lies|comes|fished|pulled) /;
/** What is wrong behind it is a problem and not a service; what is loose or left there is neither. */
const FAULTY =
  / (?:leaking|leaks|leaked|mouse|mice|rot|rotten|mould|mold|damp|missing|schedule|lost|used to be|(?:pulled|took|taken|removed|ripped|cut|hauled|fished) (?:\S+ ){0,6}out) /;

const OVERHEAD = wordSet('ceiling headlining headliner soffit');
const UNDERFOOT = wordSet(
  'floor sole soleboard floorboard deck plank planking boarding hatch cover lid screed',
);

/** What a wall is framed with: cables and pipes run behind it before anything is closed in. */
const FRAMING = wordSet('stud batten joist noggin nogging dwang rafter rib stringer beam frame');
const STRONG = /^(?:behind)$/;
const WEAK = /^(?:under|underneath|beneath|inside|in|within|above|below)$/;

/** Reads what is behind things in one memo, in order of speech. */
export function readHidden(scene: RecordScene): readonly HiddenNote[] {
  return scene.lines.flatMap((line) => hiddenIn(scene, line));
}

function hiddenIn(scene: RecordScene, line: Line): readonly HiddenNote[] {
  if (line.asks || !/ (?:behind|under|underneath|beneath|inside|in|within|above|below) /.test(line.words))
    return [];
  const phrases = phrasesOf(scene, line);
  const notes: HiddenNote[] = [];
  for (let k = line.first; k < line.endWord; k++) {
    const side = wordAt(scene.parse, k);
    if (!STRONG.test(side) && !WEAK.test(side)) continue;
    const place = placeAfter(scene, line, k);
    if (!place) continue;
    const note = noteOf(scene, line, phrases, place, STRONG.test(side));
    if (note && notes.every((one) => one.panel !== note.panel || one.what !== note.what)) notes.push(note);
  }
  return notes;
}

interface PanelPlace {
  readonly panel: string;
  /** Preposition, and last word of the place. */
  readonly at: number;
  readonly last: number;
  readonly head: string;
}

/** The panel that a preposition leads to; "it" and "there" stand for the panel named before. */
function placeAfter(scene: RecordScene, line: Line, at: number): PanelPlace | undefined {
  const phrase = phraseAt(scene.parse, at + 1);
  const isBehindFraming = phrase !== undefined && wordAt(scene.parse, at) === 'behind' && isFraming(phrase);
  if (
    phrase &&
    phrase.first === at + 1 &&
    phrase.pronoun === undefined &&
    (isPanel(phrase) || isBehindFraming)
  ) {
    if (/^(?:every|each|any|no|some|another)$/.test(phrase.determiner ?? '')) return undefined;
    if (!closesIn(wordAt(scene.parse, at), singular(phrase.head))) return undefined;
    const known = fullerName(scene, line, phrase) ?? phrase;
    return { panel: known.name.join(' '), at, last: phrase.last, head: singular(phrase.head) };
  }
  if (!/^(?:it|that|there|here|this|them)$/.test(wordAt(scene.parse, at + 1))) return undefined;
  if (wordAt(scene.parse, at) !== 'behind') return undefined;
  const known = panelBefore(scene, line, at);
  return known && { panel: known.name.join(' '), at, last: at + 1, head: singular(known.head) };
}

/** What is above the floor or below the ceiling is in the room. */
const closesIn = (side: string, head: string): boolean =>
  side === 'above' ? OVERHEAD.has(head) : side === 'below' ? UNDERFOOT.has(head) : true;

/** "Galley panel. Behind the panel there's ...": the panel that was just called by its full name. */
function fullerName(scene: RecordScene, line: Line, phrase: Phrase): Phrase | undefined {
  if (phrase.name.length > 1 || !/^(?:the|that|this)$/.test(phrase.determiner ?? '')) return undefined;
  return scene.lines
    .slice(Math.max(0, line.index - 2), line.index + 1)
    .flatMap((one) => phrasesOf(scene, one))
    .findLast(
      (one) => one.last < phrase.first && one.head === phrase.head && one.name.length > 1 && isPanel(one),
    );
}

function panelBefore(scene: RecordScene, line: Line, at: number): Phrase | undefined {
  const from = line.index;
  const near = scene.lines.slice(Math.max(0, from - 1), from + 1).flatMap((one) => phrasesOf(scene, one));
  return near.findLast((phrase) => phrase.last < at && isPanel(phrase) && phrase.name.length > 1);
}

const isFraming = ({ head }: Phrase): boolean => FRAMING.has(singular(head));

function isPanel({ name, head }: Phrase): boolean {
  // A solar or a switch panel closes nothing in; a work floor is a place.
  if (
    /^(?:solar|switch|breaker|control|pv|electrical|electric|fuse|distribution|work|shop|hard|skate|circuit|chop|bread)$/.test(
      name.at(-2) ?? '',
    )
  )
    return false;
  return PANELS.has(singular(head)) || PANELS.has(head);
}

function noteOf(
  scene: RecordScene,
  line: Line,
  phrases: readonly Phrase[],
  place: PanelPlace,
  strong: boolean,
): HiddenNote | undefined {
  const verbs = strong ? LOCATED : BURIED;
  if (!strong && !WALLS.has(place.head)) return undefined;
  if (FAULTY.test(line.words)) return undefined;
  const service = serviceBeside(scene, line, phrases, place);
  if (!service) return strong ? toldNext(scene, line, place) : undefined;
  const [phrase, kind] = service;
  if ((!strong || FRAMING.has(place.head)) && kind !== 'cable' && kind !== 'pipe') return undefined;
  // "I dropped a screw behind the panel" fixes nothing.
  if (kind === 'fixing' && / dropped /.test(line.words)) return undefined;
  // The verb stands beside the thing or beside the place.
  const [from, to] = [Math.min(phrase.first, place.at), Math.max(phrase.last, place.last)];
  const stretch = wordsBetween(scene, Math.max(line.first, from - 4), Math.min(line.endWord, to + 5));
  // "There's a gas line behind the wall, and a pipe behind the panel": said once for both.
  const isListed =
    strong &&
    / (?:there 's|there is|there are|there 're|theres) /.test(wordsBetween(scene, line.first, from));
  if (!verbs.test(stretch) && !isListed) return undefined;
  if (!isReported(scene, line, place.at) || !isReported(scene, line, phrase.first)) return undefined;
  const end = endOfDetails(scene, line);
  const span = { start: line.start, end };
  const shot = shotIn(scene, line);
  return {
    kind: 'hidden',
    quote: scene.text.slice(span.start, span.end),
    span,
    panel: place.panel,
    what: [phrase, ...withIt(scene, phrases, phrase, place)]
      .sort((a, b) => a.first - b.first)
      .map((one) => whatIsThere(scene, line, one, place))
      .join(' and '),
    service: kind,
    ...(shot ? { shot } : {}),
  };
}

/** "... behind the galley panel. There is the feed for the pump": a recogniser put a full stop in the middle. */
function toldNext(scene: RecordScene, line: Line, place: PanelPlace): HiddenNote | undefined {
  const next = scene.lines[line.index + 1];
  const isLast = tagAt(scene.parse, place.last + 1) === 'stop';
  if (
    !next ||
    next.asks ||
    !isLast ||
    !/^ (?:there 's|there is|there are|there 're|theres) /.test(next.words)
  )
    return undefined;
  const phrases = phrasesOf(scene, next);
  const [phrase] = phrases.filter(({ name }) => name.length > 0);
  const service = phrase && !isLedTo(scene, phrase) ? serviceOf(phrase) : undefined;
  if (!phrase || !service || FAULTY.test(next.words) || !isReported(scene, next, phrase.first))
    return undefined;
  // "There is a switch I need to order" is about something else.
  if (!/^(?:stop|preposition|comma)$/.test(tagAt(scene.parse, phrase.last + 1) ?? 'stop')) return undefined;
  if (!isReported(scene, line, place.at)) return undefined;
  const span = {
    start: scene.parse.words[place.at]?.span.start ?? line.start,
    end: endOfDetails(scene, next),
  };
  const shot = shotIn(scene, next);
  return {
    kind: 'hidden',
    quote: scene.text.slice(span.start, span.end),
    span,
    panel: place.panel,
    what: whatIsThere(scene, next, phrase, place),
    service,
    ...(shot ? { shot } : {}),
  };
}

function wordsBetween({ parse }: RecordScene, from: number, to: number): string {
  let words = ' ';
  for (let k = from; k < to; k++) words += `${wordAt(parse, k)} `;
  return words;
}

/** The thing nearest to the place, after it first: "behind the panel there's the feed", "the feed runs behind the panel". */
function serviceBeside(
  scene: RecordScene,
  line: Line,
  phrases: readonly Phrase[],
  place: PanelPlace,
): readonly [Phrase, Service] | undefined {
  const after = phrases.filter((phrase) => phrase.first > place.last);
  const before = phrases.filter((phrase) => phrase.last < place.at).reverse();
  const opens =
    place.at === line.first || tagAt(scene.parse, place.at - 1) === 'comma' || before.length === 0;
  for (const phrase of opens ? [...after, ...before] : [...before, ...after]) {
    const kind = serviceOf(phrase);
    if (!kind || phrase.pronoun !== undefined || isLedTo(scene, phrase)) continue;
    return standsBetween(scene, phrases, phrase, place) ? undefined : [phrase, kind];
  }
  return undefined;
}

/** "The drain in the wrong bay, now there's a hole in my floor": another thing is what is in the floor. */
function standsBetween(
  scene: RecordScene,
  phrases: readonly Phrase[],
  phrase: Phrase,
  place: PanelPlace,
): boolean {
  const [from, to] = phrase.first > place.last ? [place.last, phrase.first] : [phrase.last, place.at];
  return phrases.some(
    (one) =>
      one.first > from &&
      one.last < to &&
      one.name.length > 0 &&
      one.pronoun === undefined &&
      serviceOf(one) === undefined &&
      !isLedTo(scene, one),
  );
}

/** Other things that the sentence puts in the same place: "two pipes and a loom", "the hose, and there are two cables". */
function withIt(
  scene: RecordScene,
  phrases: readonly Phrase[],
  phrase: Phrase,
  place: PanelPlace,
): readonly Phrase[] {
  return phrases.filter((one) => {
    if (one === phrase || one.pronoun !== undefined || serviceOf(one) === undefined || isLedTo(scene, one))
      return false;
    if (phrase.first > place.last !== one.first > place.last) return false;
    const [first, second] = one.first < phrase.first ? [one, phrase] : [phrase, one];
    const between = wordsBetween(scene, first.last + 1, second.first);
    if (/ (?:behind|under|underneath|beneath|inside) /.test(between)) return false;
    return between.includes(' and ') || between.trim() === ',';
  });
}

/** "To the pump", "for the tap": where a thing leads, not the thing. */
function isLedTo({ parse }: RecordScene, phrase: Phrase): boolean {
  return /^(?:to|for|from|into|by|of|at|on|beside|near|past|under|over|above|below|against|behind|with|through)$/.test(
    wordAt(parse, phrase.first - 1),
  );
}

/** What runs in it tells a pipe from a cable: a water main, a gas supply. */
const FLUIDS = /^(?:water|gas|fuel|diesel|cold|hot|waste|drain|heating|coolant|oil|air|sewage|soil)$/;

function serviceOf({ head, kinds, name }: Phrase): Service | undefined {
  const word = singular(head);
  if (/^(?:main|supply|feed|line|run)$/.test(word) && name.slice(0, -1).some((one) => FLUIDS.test(one)))
    return 'pipe';
  if (NO_SERVICE.has(word)) return undefined;
  for (const [service, heads] of Object.entries(SERVICE_HEADS) as [
    Exclude<Service, 'other'>,
    ReadonlySet<string>,
  ][])
    if (heads.has(word) || heads.has(head)) return service;
  const found = KIND_SERVICES.find(([kind]) => kinds.has(kind));
  if (found) return found[1];
  return OTHERS.has(word) ? 'other' : undefined;
}

/** From the thing to the end of what is said of it, without the place itself. */
function whatIsThere(scene: RecordScene, line: Line, phrase: Phrase, place: PanelPlace): string {
  const { parse } = scene;
  let first = phrase.first;
  if (/^(?:the|a|an|my|our|that|this)$/.test(wordAt(parse, first)) && first < phrase.last) first++;
  let end = phrase.last + 1;
  const limit = phrase.first < place.at ? place.at : clauseEnd(scene, line, phrase.last);
  // "The feed for the pump", "a hose to the tap and the cold pipe"; not the verb that says where it runs.
  while (
    end < limit &&
    wordAt(parse, end) !== 'and' &&
    !/^(?:be|auxiliary|modal|verb|participle|comma|stop)$/.test(tagAt(parse, end) ?? 'stop') &&
    end - first < 14
  )
    end++;
  while (
    end > phrase.last + 1 &&
    /^(?:preposition|conjunction|adverb|determiner|pronoun)$/.test(tagAt(parse, end - 1) ?? '')
  )
    end--;
  const words = textOfWords(scene, first, end - 1).replace(/\s+/g, ' ');
  // "The wires for the light run behind": the verb may pass for a noun.
  return words.replace(/ (?:run|runs|ran|goes|go|comes|sits|drops|lives)$/i, '');
}

/** "It runs 120 up from the floor": what the next sentence says of it belongs to it. */
function endOfDetails(scene: RecordScene, line: Line): number {
  let last = line;
  for (const next of scene.lines.slice(line.index + 1, line.index + 3)) {
    const details =
      / ?^ (?:it|they|that|those|both|one) (?:'s|is|are|'re|runs|run|goes|go|sits|comes|come|drops|rises|crosses|turns) /.test(
        next.words,
      ) && / # /.test(next.words);
    if (!details || next.asks) break;
    last = next;
  }
  const trailing = /[\s.!?…,;]*$/.exec(scene.text.slice(line.start, last.end))?.[0].length ?? 0;
  return last.end - trailing;
}

const SHOT =
  /\b(?:(?:photo|picture|pic|clip|shot|film|video)s?(?: (?:number|no\.?))? (?:#?\d[\d-]*|[a-z]?\d+)|(?:took|got|have|'ve|there's|there are) (?:(?:a|some|two|three|my|the) )?(?:photo|picture|pic|clip|shot|video)s?(?: of (?:it|that|them|this))?|(?:it|that|this)(?:'s| is) (?:on|in) (?:the )?(?:camera|film|video|footage|clip)|(?:filmed|photographed) (?:it|that|them|this))\b/i;

/** Words for the photo or clip, in the sentence or right after it. */
function shotIn(scene: RecordScene, line: Line): string | undefined {
  const next = scene.lines[line.index + 1];
  for (const one of next ? [line, next] : [line]) {
    const found = SHOT.exec(scene.text.slice(one.start, one.end));
    if (found && !one.asks) return found[0];
  }
  return undefined;
}
