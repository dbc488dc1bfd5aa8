/** Which verbs tell of finished work, and the clauses in which none is told. */
import { findDates } from '../dates.ts';
import { workPast } from '../lexicon/work-verbs.ts';
import { wordSet } from '../word-table.ts';
import { isReason, isSubordinate, type Scene } from './draft.ts';
import type { Said, Word } from './words.ts';

export const has = (words: readonly Word[], letter: string) =>
  words.some((word) => word.classes.includes(letter));
export const isOne = (words: readonly Word[], list: ReadonlySet<string>) =>
  words.some((word) => list.has(word.lower));
/** Participles that tell of a state, a plan or a feeling and not of finished work. */
export const NO_RESULT =
  wordSet(`left found lost broken bent burnt burned torn blown given meant made called stood held hit met
  stuck used planned drawn-to shown worn spoilt spoilt supported exposed separated told timed priced-in fired rounded
  related settled cursed pinned-down kept built-in allowed spoken seen spent concerned put hidden covered-in loved
  owed needed hoped sagged loaded pushed stretched squeezed sacked confused bothered brought worked figured costed
  priced wet counted stamped stiffened twitched earned got gotten had excepted squared curved arched domed vaulted tapered flared cambered`);
/** Verbs that, said of oneself, tell of looking, losing or saying rather than of work. */
export const NO_WORK =
  wordSet(`measured checked found lost left met hit stood showed gave given told used planned held kept spent
  paid called dropped got choose chose chosen reckoned guessed timed priced weighed bought ordered photographed modeled
  modelled costed ran leant stepped started stopped taped noticed figured read saw seen shown hoped drove driven
  pushed argued drank slept offered pictured sketched worked figured totted chewed counted carried earned wished mocked pitched`);
/** With nobody named, the same tell of an errand: "spoke to the engineer", "found the spanner". */
export const NO_ERRAND =
  wordSet(`left met hit stood showed gave given told used planned held kept spent paid called got choose chose
  reckoned guessed leant stepped started stopped noticed read saw felt knew looked`);
export const PERSONAL = wordSet('i we you he who me us everybody everyone nobody somebody something nothing');

/** Clauses in which no work is reported, whatever their verbs. */
export function silent(said: Said, scene: Scene): boolean {
  if (scene.unreal.has(said.index) || scene.listed.has(said.index) || said.asks) return true;
  if (isSubordinate(said) || isReason(said)) return true;
  if (RELATIVE.test(said.code) || AS_TEST.test(said.code)) return true;
  if (isDuty(said) || LONG_AGO.test(said.code)) return true;
  if (/ (?:i|we)\/\w* .* mind\//.test(said.code)) return true;
  return / (?:mistake|accident|accidentally|nearly|almost)\/| in\/\w* the\/\w* wrong\/| the\/\w* way\/\w* (?:i|we)\//.test(
    said.code,
  );
}
/** Whether the clause says what must be. */
export const isDuty = (said: Said): boolean => DUTY.test(said.code);
/** "That's where I came unstuck", "that's what I had my tape on": about a deed, and no deed. */
const RELATIVE = / (?:that|this|which|it)\/\w* (?:'s|is|was)\/\w* (?:what|where|how|why|when|because)\//;
/** "Filled it to the brim as a test". */
const AS_TEST =
  / (?:as|for)\/\w* a\/\w* (?:test|trial|laugh|look|joke|dare)\/| where\/\w* (?:i|we)\/\w* wanted\//;
/** "The wall's got to breathe", "it has to be number four": what must be is not done yet. */
const DUTY = / (?:got|have|has|'ve|need|needs|ought|want|wants)\/\w* to\//;
/** "My grandfather raised it in 1952": told of another time. */
const LONG_AGO =
  / (?:in|since|back)\/\w* (?:the\/\w* )?1[5-9]\d\ds?\/| (?:years|decades|generations)\/\w* ago\/| last\/\w* (?:year|century)\//;

/** A time just past in the clause: the same form without one may be a state or an order. */
export function isLately(said: Said, scene: Scene): boolean {
  if (/ (?:this|yesterday|last|today|earlier|just|finally|already)\//.test(said.code)) return true;
  const back = { ...scene.dates, lean: 'back' as const };
  return findDates(scene.text.slice(said.start, said.end), back).length > 0;
}

const BARE_SUMS = wordSet(
  'math maths sum sums numbers arithmetic that it this calculation calculations dry-run dry run',
);
const TAKEN = / (?:off|out|down|up|apart|away|back)\//;

const REMOVES = /^(?:out|off|up|down|away|apart|back|open|loose|free|in|over|round)$/;
/** Faults when they befall a thing, work when somebody does them. */
const DONE_BY_HAND = /^(?:lifted|stripped|peeled|popped|scraped|rubbed|ground|blew|shorted|slipped)$/;

/** "I cracked the pane" is a mishap; "I cracked the mounts loose", "bent the tabs in" and "lifted her" are work. */
export function isMishap(verb: Word, object: readonly Word[]): boolean {
  if (!/[FX]/.test(verb.classes) || DONE_BY_HAND.test(verb.lower)) return false;
  return !object.slice(0, 6).some(({ lower }) => REMOVES.test(lower));
}

/** Whether a verb said of oneself, with its object, is work on a thing. */
export function isWorkOn(verb: Word | undefined, object: readonly Word[]): boolean {
  if (!verb || has(object.slice(0, 4), 'Y') || isMishap(verb, object)) return false;
  if (has(object.slice(0, 3), 'E')) return false;
  const rest = object.map((word) => ` ${word.lower}/`).join('');
  const first = object[0]?.lower ?? '';
  if (/^(?:how|myself)$/.test(first) || (first === 'what' && !/ (?:could|left|remains)\//.test(rest)))
    return false;
  switch (verb.lower) {
    case 'did':
    case 'done':
      return !isOne(object.slice(0, 3), BARE_SUMS) && !/ not\//.test(rest);
    case 'took':
    case 'taken':
      return (
        (TAKEN.test(rest) && !/ from\/| floor\/ to\//.test(rest)) ||
        /^ an?\/ (?:\w+\/ )?(?:cut|skim|pass|shaving|sliver)\//.test(rest)
      );
    case 'put':
      return (
        / (?:in|on|up|down|back|together|through|over|under|into)\//.test(rest) &&
        !/^\d+$/.test(first) &&
        (first !== 'it' || / (?:back|together|in)\//.test(rest)) &&
        !/ (?:to|up)\/ (?:\d|the\/ fuse)/.test(rest) &&
        !/ (?:camber|offer|show|stop)\//.test(rest)
      );
    case 'stood':
      return / up\//.test(rest);
    case 'made':
      return (
        !/^(?:it|that|sure|do|mistake|mess)$/.test(first) &&
        !/ (?:mistake|mess|call|decision|promise|sense|mind)\//.test(rest)
      );
    case 'let':
      return / know\//.test(rest) || /^ in\/ (?!on|for)/.test(rest);
    case 'hit':
      return / with\//.test(rest) && !/ with\/ (?:a|an|it|that|the)\//.test(rest);
    case 'slid':
    case 'squeezed':
    case 'rolled':
    case 'stepped':
    case 'slipped':
    case 'crawled':
    case 'climbed':
      // "I slid under the floor": the speaker moves.
      return /[TOQ]/.test(object[0]?.classes ?? '') || object[0]?.classes === '';
    case 'changed':
      return !/ (?:idea|mind|tack|plan|plans|clothes)\//.test(rest);
    case 'drove':
    case 'driven':
      return / (?:nails?|spikes?|screws?|wedges?|pins?|pegs?|trenails?|piles?|posts?|stakes?|home|in)\//.test(
        rest,
      );
    case 'taped':
      return / (?:over|up|off|down|round)\//.test(rest);
    case 'ran':
    case 'run':
      return (
        !/^(?:it|into|out|past|over|epoxy|paint)$/.test(first) &&
        (first !== 'a' ||
          / (?:cable|pipe|wire|hose|bead|line|duct|conduit|weld|lead|seam|earth|feed|supply|circuit|ring|drain|main|tail|loom|batten|chain)\//.test(
            rest,
          ))
      );
    case 'called':
      return !/^(?:it|that|this)$/.test(first);
    case 'set':
      return (
        !/ (?:at|to)\/ (?:\d|one|two|three|four|five|six|seven|eight|nine|ten)/.test(rest) &&
        !/ pole| level\//.test(rest)
      );
    case 'dropped':
      return / (?:in|back|off)\//.test(rest) && !/^(?:a|it)$/.test(first);
    case 'cut':
      return !/^(?:it|that)$/.test(first) || object.length > 1;
    case 'got':
      return false;
    default:
      // "I chewed on that", "I danced on the beams": a verb of no trade with no object of its own.
      if (!workPast(verb.lower) && /^(?:on|at|about|for|with|to|of|like|into)$/.test(first)) return false;
      return !NO_WORK.has(verb.lower);
  }
}

/** Particles that make work of a verb which alone may be a fault: "ripped out the old cooker". */
const TAKES_OFF = /^(?:out|off|up|down|away|apart|back)$/;

/** A participle that says what was done: "rotted" is a fault, "ripped out" is none. */
export function isWorkVerb(verb: Word, rest: readonly Word[]): boolean {
  if (!verb.classes.includes('P') || NO_RESULT.has(verb.lower) || verb.classes.includes('Z')) return false;
  return !/[FX]/.test(verb.classes) || rest.slice(0, 4).some(({ lower }) => TAKES_OFF.test(lower));
}
