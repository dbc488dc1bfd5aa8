/**
 * What the speaker was doing when a figure was said: measuring, working out, deciding, quoting. Read from the words of
 * the clause and, for changes, of the sentence before. The habits are those of workshops; common practice, no source.
 */
import type { Bound, ChangeCue, Dimension, FigureState, SizeKind } from '../notes.ts';
import { ahead, behind, type Parse } from './parse.ts';

export interface Said {
  /** Words of the sentence before the figure, at most a dozen. */
  readonly before: string;
  /** Words of the sentence after it. */
  readonly after: string;
  /** Words of the sentence before that. */
  readonly earlier: string;
}

/** The words around the figure at word `at`. */
export function saidAround(parse: Parse, at: number): Said {
  const start = parse.sentenceStart[parse.sentenceOf[at] as number] as number;
  return {
    before: joined(behind(parse, at, 28)),
    after: joined(ahead(parse, at + 1, 14)),
    earlier: start > 1 ? joined(behind(parse, start - 1, 26)) : '',
  };
}

/** Puts the clitics back on their words: "i 'm" is "i'm". */
const joined = (words: string): string => words.replace(/ '(?=(?:m|s|re|ve|ll|d)\b)/g, "'");

interface StateRule {
  readonly name: string;
  readonly state: FigureState;
  readonly before?: RegExp;
  readonly after?: RegExp;
  /** Only figures of these kinds. */
  readonly of?: ReadonlySet<Dimension>;
}

/** What is waited for until it reads so. A wall that goes up until it is 1.75 is told by how far it has got. */
const READINGS: ReadonlySet<Dimension> = new Set([
  'temperature',
  'ratio',
  'speed',
  'pressure',
  'voltage',
  'charge',
]);

const STATE_RULES: readonly StateRule[] = [
  {
    name: 'say, call it',
    state: 'assumed',
    before:
      /(?:^|, |so |let's |well )(?:say|call it|suppose|supposing|what if|let's say|if it (?:was|were|is)|assume|assuming|for the sake of argument)(?: about| roughly)?(?: a)?$/,
  },
  {
    name: 'the book says',
    state: 'quoted',
    before:
      /\b(?:book|manual|drawing|plan|plans|spec|specs|sheet|plate|sidewall|packet|label|box|tin|bucket|website|sticker|law|rules?|regs|regulations|engineer|surveyor|inspector|maker|makers|supplier|merchant|leaflet|data|rating) (?:says?|said|wants?|gives?|reckons?|specs?|quotes?|insists?|calls? for|allows?)\b(?: [\w']+){0,6}$/,
    after:
      /^(?:according to|on the plate|says the|by the book|on the label|on the drawing|on the tin|off the drawing)\b/,
  },
  {
    name: 'rated',
    state: 'quoted',
    before: /\b(?:rated|plated|quoted|listed|specced|sold)(?: at| for| as)?(?: a)?$/,
  },
  {
    name: 'ordered',
    state: 'ordered',
    before:
      /\b(?:ordered|on order|ordering|rang it through|sent (?:them )?the sizes|they're making|told them|told him)\b/,
    after: /^(?:\w+ ){0,3}(?:is|'s|are) (?:ordered|on order)\b/,
  },
  {
    name: 'same as',
    state: 'copied',
    before: /\b(?:same|ditto|copied|traced|mirrored|mirror|as before|like the other|identical)(?: \w+){0,4}$/,
    after: /^(?:again|same as|like (?:the|last|before)|as before|as ever|no change)\b/,
  },
  {
    name: 'wants to be',
    state: 'target',
    before:
      /\b(?:wants?|needs?|has|have|had|got|ought|supposed|meant|going|(?:it|that|she|they) (?:was|were)) to (?:be|come|go|sit|stand|end|measure|read)(?: \w+){0,3}$|\b(?:should|must|oughta|gotta|wanna|gonna|'ll|will|shall)(?: be| come| go| sit| need| want| have)?(?: \w+){0,2}$|\b(?:wants?|needs?|requires?|after|aiming (?:for|at))(?: a| about| another| only)*$/,
    after: /^(?:is what I need|the \w+ should be|they should be|it should be|it'll be|it will be)\b/,
  },
  {
    name: 'until it is',
    state: 'target',
    of: READINGS,
    before:
      /\b(?:until|till|'til|til|unless)\b(?!.*\b(?:was|were|had|did)\b)[^,]{0,60}$|\b(?:once|when|soon as) (?:it|that|they|(?:the|my) \w+(?: \w+)?) ?(?:'s|is|are|gets?|reach(?:es)?|drops?|hits?|falls?)(?: (?:at|above|over|below|under|to|down|up|about|least|around|past))*$/,
  },
  {
    name: 'worked out',
    state: 'calculated',
    before:
      /\b(?:works? out|worked out|comes? to|came to|(?:that|which|this|all|together|total|lot|weight|bill) (?:comes?|came) out (?:at|to)|leaves|leaving|makes|making (?:it )?|adds? up to|totals?|totted|all told|i make it|divided|less \w+|minus \w+|plus \w+|into that|sum|sums|maths?|arithmetic)\b[^.]*$|\b(?:so|which is)(?: ,)?$/,
    after: /^(?:all told|all up|in total|altogether|by my (?:sums|maths?|reckoning))\b/,
  },
  {
    name: 'going with',
    state: 'decided',
    before:
      /\b(?:going|gone|go|went|settled|decided|plumped|landed|sticking|stick|changed|switching|swapping|chosen|opted|taking|dropping|stretching|bringing|making)(?: \w+){0,3} ?(?:up|down|back|out)? ?(?:to|with|on|for|at|it|them)(?: a| about| \w+)?$|\b(?:i'm|we're) having(?: a| the)?$|\b(?:coming|moving|goes|moves|raising|lowering|lifting|shortening|widening)(?: \w+){0,2} (?:up|down|back|out|in|over) to(?: a| about)?$/,
    after:
      /^(?:(?:high|wide|long|deep|thick|tall|across) )?(?:now )?(?:, )?(?:because |since )?(?:i|we)(?:'ve)? (?:changed|dropped|raised|lowered|moved|lengthened|shortened) (?:it|them|that)\b/,
  },
  {
    name: 'cut at',
    state: 'made',
    before:
      /\b(?:cut|trimmed|docked|ripped|bored|drilled|planed|built|glued|made|welded|fitted|hung|bolted|torqued|tightened|screwed|clipped|riveted|framed|poured|laid|routed|sawn|sawed|turned|sanded|ground|set|set up|lapped|spaced|packed)(?: \w+){0,4}(?: at| to| down to| back to| it| them| every)?$/,
    after: /^(?:\w+ ){0,2}(?:and|,) (?:it's|that's|they're|i've) (?:cut|made|built|docked)\b/,
  },
  {
    name: 'measured',
    state: 'measured',
    before:
      /\b(?:measured|measures|measure|tape|laser|calipers?|callipers|scale|scales|gauge|meter|reads?|reading|weighs?|weighed|checked|get|getting|pulls|pulling|draws|drawing|comes? up|comes? out|came out|stands|turns out|turned out|showed|shows|it was|it hit)\b[^.]*$|(?:\bis|'s|\bare|'re|\bwas|\bwere)(?: \w+){0,3}$/,
    after: /^(?:by the tape|on the (?:scale|tape|meter|gauge|dot|nose)|bang on|exactly)\b/,
  },
];

const WEATHER_WENT = /\bit(?: has| had| 's)? (?:went|gone|goes|dropped|fell|came|got|was)\b[^.]*$/;

/**
 * The state of a figure, or undefined when the words tell nothing. `rough` is an assumption made to talk about it: "call it
 * 26".
 */
export function stateOf(
  said: Said,
  { rough = false, dimension }: { readonly rough?: boolean; readonly dimension: Dimension },
): FigureState | undefined {
  if (rough) return 'assumed';
  const rule = STATE_RULES.find(
    ({ before, after, of }) =>
      (of?.has(dimension) ?? true) && (before?.test(said.before) || after?.test(said.after)),
  );
  // "It went down to minus two": nobody decided the weather.
  const isWeather = dimension === 'temperature' && WEATHER_WENT.test(said.before);
  return rule?.state === 'decided' && isWeather ? 'measured' : rule?.state;
}

const REMEASURED =
  /\b(?:(?:put|stuck|laid|ran|held|got|had) (?:a|the|my) (?:tape|laser|calipers?|callipers|stick|rule|ruler|level|gauge|scale|line|meter|square|feelers?|micrometer|straightedge)|(?:calipers?|callipers) (?:on|say|says)|measured (?:it|them|that|the \w+(?: \w+)?|again|up) ?(?:again|properly|twice)?|re-?measured|taped (?:it|the \w+)(?: \w+)? again|turns? out|turned out|(?:had|'d|was|were|been) measur(?:ing|ed)|took the [\w-]+ off|pulled the \w+ off|popped the|hacked the|held the (?:other )?end of the tape|offered (?:it|them|up)|calipers? say|weighed (?:it|them|the)|(?:isn't|wasn't|not|ain't) (?:what|the) (?:i|we|it)|believed the|trusted the|(?:spec sheet|packet|label|drawing|catalogue|book) (?:lies|lied|was wrong|is wrong)|is(?:n't| not) .{2,20} is it|proper(?:ly)? (?:this time|go)|plumb bob|checked (?:it|them|the \w+|again)|actually (?:measures|comes|is)|really|dropped a \w+ ?\w* (?:line|bob))\b/;
const DECIDED =
  /\b(?:(?:going|gone|go|went|goes|moving|move|moved|come|coming|bringing|taken?|taking|drop(?:ping|ped)?|stretch(?:ing|ed)?|lift(?:ing|ed)|rais(?:ing|ed)|lower(?:ing|ed)?|cutting|back(?:ed|ing)?) (?:\w+ ){0,4}?(?:up|down|back|out|off|over)? ?(?:to(?! (?:be|have|need|get|make|take|put|want|come|go|sit|stand|run|cut|fit)\b)|for|with)|change of (?:plan|heart|mind)|chang(?:ed|ing) my mind|(?:one|big) (?:change|rethink)|rethink|instead|(?:i'm|we're|i am) (?:making|having|taking|stretching|dropping|raising|lowering|flipping|switching|swapping|cutting|moving|bringing|going)|i've (?:gone|backed|landed|come)|backed off|mak(?:ing|e) (?:it|them|that) (?:bigger|smaller|longer|shorter|wider|deeper|higher|taller|lower|thicker|thinner)|decided|i've (?:bought|settled|plumped|decided|put)|bought a new|that one's off|the cure|argued|voted|wrong , it's for|i'd sooner|he'd sooner|'d sooner see|switch(?:ed|ing)? to|swapp(?:ed|ing)|final answer|rather than|talked (?:me )?down|no longer|not the \w+s? any ?more|sooner see|it'll be|gets? (?:a )?(?:bigger|smaller|heavier)|heavier|bumps?|flipping|so that one's off)\b/;
const CORRECTED =
  /\b(?:i (?:said|told you|called it)|i meant|correction|misspoke|for (?:the|anyone)|comments?,? (?:section|thank)|wrote in|before anybody writes|like i said)\b/;

/**
 * Whether the speaker says why this differs from before. The figure's own clause counts first; a tape in the sentence
 * before counts too, since "I put a tape on it. It's 815." is one thought.
 */
export function changeOf(said: Said, state: FigureState | undefined): ChangeCue | undefined {
  if (state === 'quoted' || state === 'assumed') return undefined;
  if (REMEASURED.test(said.before) || REMEASURED_AFTER.test(said.after)) return 'remeasured';
  const worked = /\b(?:leaves|leaving|works? out|makes)(?: [\w']+){0,3}$/.test(said.before);
  if (state === 'target' && FOLLOWS.test(said.before)) return undefined;
  if (DECIDED.test(said.before)) return worked ? undefined : 'decided';
  if (DECIDED_AFTER.test(said.after) && state !== 'target') return 'decided';
  if (REMEASURED.test(said.earlier) && state !== 'target' && state !== 'calculated') return 'remeasured';
  if (
    DECIDED.test(said.earlier) &&
    /^(?:it's|that's|they're|it'll be|that'll be)(?: [\w']+){0,2}$/.test(said.before)
  )
    return 'decided';
  if (CORRECTED.test(said.before)) return 'corrected';
  return undefined;
}

const REMEASURED_AFTER =
  /^(?:\w+ )?,? ?(?:not what i|i'd been measuring|i'd measured|i had my tape|that's what i had|it bellies|by the tape|on the tape|measured properly)\b/;
const DECIDED_AFTER =
  /^(?:wide |high |deep |long |thick )?(?:now|instead|it'll be|it is then|is going in|it's going to be|rather than|not the|from now on)\b/;
/** A size that has to follow another: what changed is elsewhere. */
const FOLLOWS =
  /\b(?:so|which makes|that means|that makes|which means)\b.*\b(?:short|long|fat|wrong|firewood|back|down|up|to be|should|'ve)\b/;

const SIZE_KIND_RULES: readonly {
  readonly kind: SizeKind;
  readonly before?: RegExp;
  readonly after?: RegExp;
}[] = [
  {
    kind: 'clear',
    before: /\b(?:clear|daylight|opening|inside|net)(?: \w+){0,2}$/,
    after: /^(?:clear|of clear|in the clear|daylight|inside)\b/,
  },
  {
    kind: 'finished',
    before: /\bfinished(?: \w+){0,3}$/,
    after: /^(?:finished|net|when (?:it's )?finished)\b/,
  },
  {
    kind: 'oversize',
    before: /\boversize(?: by)?$/,
    after: /^(?:oversize|over size|for trimming|to trim)\b/,
  },
  { kind: 'nominal', before: /\bnominal(?:ly)?(?: \w+){0,2}$/, after: /^nominal\b/ },
  {
    kind: 'envelope',
    before: /\bover(?: |-)?all(?: \w+){0,2}$/,
    after:
      /^(?:over ?all|all up|over the|with (?:the |its )?(?:handles?|castors|bezel|door|fittings)|castors and all|all in)\b/,
  },
];

export function sizeKindOf(said: Said): SizeKind | undefined {
  return SIZE_KIND_RULES.find((rule) => rule.before?.test(said.before) || rule.after?.test(said.after))?.kind;
}

const CONDITION =
  /^(?:wide|high|deep|long|thick|clear|,)? ?,? ?((?:with|without|before|after|once|until|till|bare|empty|full|loaded|light|under load|when|while|at rest|at tickover|flat out|this morning|last night|overnight|in here|between coats|at dawn)\b[^,#]*)/;

/** The circumstance said right after a figure: "empty", "with the door bezel", "this morning". */
export function conditionOf(said: Said): string | undefined {
  const found = CONDITION.exec(said.after)?.[1]?.trim();
  if (!found || found.split(' ').length > 9 || / (?:a|an|the|of|with|and)$/.test(found)) return undefined;
  return found.replace(/ (?:and|so|but|because|since|which|that)$/, '').replace(/ '/g, "'");
}

const DATUM =
  /^(?:wide|high|deep|long|thick|up|down)? ?((?:off|from|above|below|to the (?:top|underside|outside|inside)|over) (?:of )?(?:the |my |its |our )?(?:finished |bare |rough |back |front |top |bottom )?\w+)/;

/** What a length is counted from, as said: "off the back wall", "to the top". */
export function datumOf(said: Said): string | undefined {
  return DATUM.exec(said.after)?.[1];
}

/** True when a bound is said to hold for the thing itself: "no more than", "has to clear". */
export function bindsItself(bound: Bound, said: Said): boolean {
  if (bound !== 'at-most' && bound !== 'at-least') return false;
  return /\b(?:can't|cannot|mustn't|must|has to|have to|no more than|not (?:more|less|over|under)|at (?:least|most)|no less|never|wants|won't|needs?|max|maximum|minimum|limit|law|rule|rules|good for|takes?|carry|allowed)\b/.test(
    `${said.before} ${said.after}`,
  );
}
