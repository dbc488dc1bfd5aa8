/**
 * Reads from the words of a task what is about to be made, and which sizes such a thing needs before it can be. Things
 * that need no size, that are made to fit, and names that no list knows give nothing.
 */
import type { Phrase } from '../items/noun-phrases.ts';
import { type Parse, parseMemo, phraseAt, tagAt, wordAt } from '../items/parse.ts';
import { singular } from '../lexicon/trade-nouns.ts';
import { wordSet } from '../word-table.ts';

/** A size that is needed: any one of the attributes gives it. */
export interface NeededSize {
  readonly words: string;
  readonly anyOf: readonly string[];
}

export interface Making {
  /** The thing, as the words name it. */
  readonly thing: string;
  /** How many of its outer sizes are needed: two of a flat panel, three of a box. */
  readonly sides: 0 | 1 | 2 | 3;
  /** What else is needed. */
  readonly others: readonly NeededSize[];
}

/** Own lists, common practice, no source. */
const FLAT =
  wordSet(`lid panel door shelf board hatch top worktop benchtop tabletop countertop bulkhead plate front pane
  splashback washboard dropboard gusset shutter flap partition headboard kickboard backplate bench-top bunk-board soleboard
  doubler backboard fascia cover`);
const LONG =
  wordSet(`batten rail beam post stud joist bearer rafter stringer leg brace slip tube pipe bar stanchion handrail
  mullion stile rung tread purlin lintel noggin slat strip upright spacer sill capping moulding`);
const BOX = wordSet('box drawer cabinet tank tray carcass crate locker bin cupboard drawer-box battery-box');
const ROUND = wordSet('dowel peg pin shaft bush disc wheel roller spindle knob');
const SOFT = wordSet('cushion curtain blind mattress');
const HOLE = wordSet('hole cutout cut-out aperture mortise mortice slot recess notch opening');

/** Verbs that make a thing to a size; with "drill" and "bore" only a hole is made. */
const MAKING =
  /^(?:cut|make|build|saw|mill|turn|rout|fabricate|machine|laminate|weld|rip|rebuild|remake|recut|sew|knock|glue)$/;
const CUTTING =
  /^(?:cutting|making|building|sawing|milling|turning|routing|machining|sewing|remaking|rebuilding|cut|made|built|milled|sawn|turned|machined)$/;
const DRILLING = /^(?:drill|bore)$/;
/** After these the work is on a thing that is there, or fits what is there. */
const NOT_NEW =
  / (?:off|away|back|down|through|open|apart|template|templates|pattern|patterns|scribe|scribed|fit|match|rest|finish|trim|shorten|by eye|offcut|offcuts|leftover|as is|like the|as the|from the old|off the old|same as|for that|to that|to the line|to the mark|to length|to size|rotten|broken|first cut|grass|new end) /;

/** What a task makes, and the sizes it needs. */
export function makingOf(gist: string): Making | undefined {
  const parse = parseMemo(gist, []);
  const words = ` ${parse.words.map(({ lower }) => lower).join(' ')} `;
  if (NOT_NEW.test(words)) return undefined;
  const found = objectOfMaking(parse);
  return found && needsOf(found.phrase, found.verb);
}

function objectOfMaking(parse: Parse): { readonly phrase: Phrase; readonly verb: string } | undefined {
  for (let k = 0; k < parse.words.length; k++) {
    const verb = wordAt(parse, k);
    if (MAKING.test(verb) || DRILLING.test(verb)) {
      const at = /^(?:out|up)$/.test(wordAt(parse, k + 1)) ? k + 2 : k + 1;
      const phrase = phraseAt(parse, at);
      if (phrase && phrase.first === at && isNew(parse, phrase) && opensTask(parse, k))
        return { phrase, verb };
    }
    // "The lid needs cutting", "the lid has to be cut".
    if (CUTTING.test(verb) && /^(?:needs|need|wants|want|be)$/.test(wordAt(parse, k - 1))) {
      const subject = parse.phrases.findLast((phrase) => phrase.last < k && phrase.name.length > 0);
      if (subject && isNew(parse, subject)) return { phrase: subject, verb };
    }
  }
  return undefined;
}

/** Stock that is cut to what the job wants, where no word tells which piece. */
const STOCK = wordSet('board plank beam batten post strip bar tube pipe plate strut rail');

/** "Cut a board out", "another board": what is there already, and stock without a name, need no size of their own. */
function isNew(parse: Parse, phrase: Phrase): boolean {
  if (phrase.name.length === 0) return false;
  if (/^(?:out|off|away|back|down|up|loose|free|short)$/.test(wordAt(parse, phrase.last + 1))) return false;
  return !(phrase.bare && STOCK.has(singular(phrase.head)));
}

/** "Cut the lid", "I'll cut the lid", "need to cut": the verb is the task, and no noun ("the first cut"). */
function opensTask(parse: Parse, at: number): boolean {
  const before = tagAt(parse, at - 1);
  return (
    at === 0 ||
    before === undefined ||
    before === 'modal' ||
    before === 'comma' ||
    before === 'conjunction' ||
    before === 'adverb' ||
    before === 'filler' ||
    /^(?:to|i|we|tomorrow|today|monday|tuesday|wednesday|thursday|friday|saturday|sunday|then|and|morning|next)$/.test(
      wordAt(parse, at - 1),
    )
  );
}

const THICKNESS: NeededSize = { words: 'thickness', anyOf: ['thickness'] };
const DIAMETER: NeededSize = { words: 'diameter', anyOf: ['diameter', 'radius'] };
const LENGTH: NeededSize = { words: 'length', anyOf: ['length', 'height', 'width', 'depth', 'size'] };

function needsOf(phrase: Phrase, verb: string): Making | undefined {
  const head = singular(phrase.head);
  const thing = phrase.name.join(' ');
  if (HOLE.has(head))
    return phrase.plural || DRILLING.test(verb) ? undefined : { thing, sides: 2, others: [] };
  if (DRILLING.test(verb)) return undefined;
  if (FLAT.has(head)) return { thing, sides: 2, others: [THICKNESS] };
  if (BOX.has(head)) return { thing, sides: 3, others: [] };
  if (ROUND.has(head)) return { thing, sides: 0, others: [DIAMETER] };
  if (LONG.has(head)) return { thing, sides: 0, others: [LENGTH] };
  if (SOFT.has(head)) return { thing, sides: 2, others: [] };
  return undefined;
}

/** A hole is given by its diameter alone. */
export const isHole = ({ thing }: Making): boolean => HOLE.has(singular(thing.split(' ').at(-1) ?? ''));
