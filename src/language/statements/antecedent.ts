/** What "it", "those" and "a new one" stand for: the thing last spoken of that fits in number and weight. */
import { isTradeNoun } from '../lexicon/trade-nouns.ts';
import type { Scene } from './draft.ts';
import type { Said, Word } from './words.ts';

export interface Antecedent {
  /** As it was said, with its article. */
  readonly text: string;
  /** Index of the clause that it was said in. */
  readonly clause: number;
  /** Its last word: what "a new one" is a new one of. */
  readonly head: string;
}

type Role = 'topic' | 'subject' | 'object' | 'place';
interface Chunk {
  readonly words: readonly Word[];
  readonly role: Role;
  /** Plainly a thing where it stands, whatever its word. */
  readonly isSure?: boolean;
  /** Right behind the verb of the work: "scribed the top", "painted the front". */
  readonly isWorkedOn?: boolean;
}

const WEIGHT: Readonly<Record<Role, number>> = { topic: 3, subject: 3, object: 2.6, place: 1.2 };
/** How far back a clause may stand, and what each step costs. */
const REACH = 6;
const STEP = 0.55;
const OTHER_NUMBER = 2;
/** "A score on it where the bearing sits": the talk is not about what a clause beside it is said of. */
const BESIDE = /\b(?:where|which|who|because|since|while|until|till|before|after|if)\b/;
const SIDE = 1;
/** "It doesn't hold water" is not about water. */
const DENIED = 2;

const OPENS =
  /^(?:the|a|an|my|our|his|her|their|its|this|that|those|these|another|both|new|old|other|one|two|three|four|five|six|second|first|third|last)$/;
/** Never the thing meant, although they are nouns: time, talk, amounts, faults of no thing. */
const NO_THING =
  /^(?:time|times|day|days|week|weeks|hour|hours|minute|minutes|month|months|year|years|while|bit|lot|lots|problem|thing|things|way|moment|chance|look|mind|word|words|idea|job|jobs|point|end|half|rest|morning|afternoon|evening|night|news|mil|mm|inch|inches|foot|feet|metre|metres|meters|millimetre|millimetres|centimetres|degrees|amps|volts|litres|liters|kilos|kilo|pounds|percent|cent|quid|dollars|psi|bar|order|course|side|top|bottom|front|middle|right|left|lovely|fine|good|bad|better|worse|great|sure|true|wrong|short|long|wide|deep|high|tall|thick|heavy|ready|dry|wet|warm|cold|hot|fun|fault|reason|question|weather|rain|price|money|luck|head|hand|hands|back|knees|who|what|which|where|how|why|something|nothing|everything|anything|one|ones|ish|nope|yep|nah|thank|thanks|heavens|god|say|well|mark|see|look|look|trees|cheers|sake|hell|care|room|sense|use|work|fact|case|kind|sort|set|list|inspector|episode|inside|outside)$/;

/** No names of things, whatever stands before them: ranks and dates, thinking, where something got to. */
const NO_NOUN =
  /^(?:widest|longest|highest|tallest|deepest|thickest|thinnest|narrowest|shortest|lowest|biggest|smallest|\S*(?:fourth|fifth|sixth|seventh|eighth|ninth|tenth|eleventh|twelfth|teenth|tieth)|think|thinks|thought|reckon|guess|suppose|believe|hope|wish|wonder|mean|first|last|next|too|also|apart|together|alongside|aside|away|home|again|either|anyway|though|yet|else|instead|myself|ourselves|how|why|where|when|whose|somebody|someone|anybody|anyone|nobody|everybody|everyone)$/;
/** Who does the work, pays for it or brings the goods: "it" is none of them. */
const SOMEBODY =
  /^(?:customer|customers|client|clients|buyer|seller|dealer|guv|gaffer|foreman|inspector|wholesaler|postman|postie|tenant|tenants|council|insurer|insurers|chandler|yard|merchant|merchants|garage|idiot|eejit|muppet|fool|numpty|plonker|bugger|bollocks|genius)$/;

/** Whether a word may name a thing: no verb, no little word, no rank. */
export const isNoun = (word: Word | undefined) =>
  word !== undefined &&
  !NO_NOUN.test(word.lower) &&
  !/[SHMVRLOIJEDNQ]/.test(word.classes) &&
  !(word.classes.startsWith('A') && word.classes.length === 1) &&
  !/^\d/.test(word.lower) &&
  !/ly$/.test(word.lower);
const isVerbHere = (words: readonly Word[], k: number) => {
  const word = words[k] as Word;
  const before = words[k - 1];
  // "There's rust in the sill": what there is.
  if (words[k - 2]?.lower === 'there' && /S/.test(before?.classes ?? '')) return false;
  if (/[INM]/.test(before?.classes ?? '') || /^(?:to|do|does|did|please|never)$/.test(before?.lower ?? ''))
    return true;
  // "that bumps the trailer up": a pronoun with its verb.
  if (
    /^(?:that|it|which|she|he|this|they)$/.test(before?.lower ?? '') &&
    /s$/.test(word.lower) &&
    /[TO]/.test(words[k + 1]?.classes ?? '')
  )
    return true;
  if (/[SH]/.test(before?.classes ?? '') && (/[PFG]/.test(word.classes) || /ing$/.test(word.lower)))
    return true;
  if (
    k > 1 &&
    /[Xx]/.test(word.classes) &&
    (k === words.length - 1 ||
      /[OTAR]/.test(words[k + 1]?.classes ?? '') ||
      // "The hatch leaks where the bolts sit"
      /^(?:where|when|whenever)$/.test(words[k + 1]?.lower ?? ''))
  )
    return true;
  // "Caught Bob at the gate", "welded brackets on": a past form that opens the clause names nothing.
  const isPast = (word.classes.includes('b') && !word.classes.includes('B')) || PAST_ONLY.test(word.lower);
  if (k === 0 && isPast && isNoun(words[1])) return true;
  if (k > 0 && /[gX]/.test(word.classes) && /[TO]/.test(words[k + 1]?.classes ?? '')) return true;
  return word.classes.includes('b') && /[TOC]/.test(words[k + 1]?.classes ?? '');
};

/** "Half nut", "driver bit": an amount or a person's word that belongs to the name of a thing. */
const isNamed = (words: readonly Word[], k: number) =>
  isNoun(words[k]) ||
  ((/^(?:half|quarter)$/.test(words[k]?.lower ?? '') ||
    (words[k]?.classes === 'J' && !NO_NOUN.test(words[k]?.lower ?? ''))) &&
    isNoun(words[k + 1]));

/** "One of the posts", "some of the slates": where the part begins that is spoken of. */
const partBefore = (words: readonly Word[], k: number): number =>
  words[k - 1]?.lower === 'of' &&
  /^(?:one|another|two|three|four|some|both|all|most|half|none|each|couple|few|rest)$/.test(
    words[k - 2]?.lower ?? '',
  )
    ? k - 2
    : k;

/** Verbs that take these words as particles: "put in the window"; else "rubbing on the duct" names a place. */
const PUTS =
  /^(?:put|putting|got|get|getting|fit|fitted|fitting|screw(?:ed|ing)?|bolt(?:ed|ing)?|glu(?:e|ed|ing)|clip(?:ped|ping)?|stuck|stick|sticking|nail(?:ed|ing)?|clamp(?:ed|ing)?|pour(?:ed|ing)?|drop(?:ped|ping)?|brought|bring|let|cut|tap(?:ped|ping)?)$/;

/** Past forms that are no names: "caught", and not "saw" or "felt". */
const PAST_ONLY =
  /^(?:caught|met|rang|told|asked|paid|sent|gave|lent|got|heard|lost|kept|held|bought|brought|found|took|spoke)$/;

/** What is done with a tool to see how a thing is. */
const PROBES = /^(?:put|pushed|stuck|poked|shoved|ran|run|laid|push|poke|stick)$/;

/** The noun phrases of a clause, in order, with what they do in it. */
function chunksOf(said: Said): readonly Chunk[] {
  const { words } = said;
  const chunks: Chunk[] = [];
  let verbSeen = false;
  let k = 0;
  while (k < words.length) {
    const word = words[k] as Word;
    if (/[SHMV]/.test(word.classes) || (isNoun(word) && isVerbHere(words, k))) verbSeen = true;
    let to = k;
    while (to < words.length && to - k < 3 && OPENS.test(words[to]?.lower ?? '')) to++;
    const noun = to;
    while (
      to < words.length &&
      to - noun < 4 &&
      isNamed(words, to) &&
      (to === noun || !isVerbHere(words, to))
    )
      to++;
    const starts = noun > k || !isVerbHere(words, k);
    if (to > noun && starts && !(noun === k && isVerbHere(words, k))) {
      const part = partBefore(words, k);
      const before = words[part - 1];
      const chosen =
        /^(?:with|for|on)$/.test(before?.lower ?? '') &&
        /^(?:went|go|going|gone|settled|plumped|opted|decided)$/.test(words[part - 2]?.lower ?? '');
      const verb = words[part - 2];
      // "Run out of twine", "down to the last box": what there is too little of.
      const lacking =
        /^(?:of|on|to)$/.test(before?.lower ?? '') && /^(?:out|short|low|down)$/.test(verb?.lower ?? '');
      const particle =
        /C/.test(before?.classes ?? '') &&
        (/^(?:in|on|over|through|round|around|under)$/.test(before?.lower ?? '')
          ? PUTS.test(verb?.lower ?? '')
          : /[bBPG]/.test(verb?.classes ?? ''));
      const placed = /R/.test(before?.classes ?? '') && !chosen && !lacking && !particle;
      // "As for the rods, I priced them": what the talk turns to.
      const turnedTo = before?.lower === 'for' && verb?.lower === 'as';
      const compared = /^(?:like|as|than)$/.test(before?.lower ?? '');
      // "I put a screwdriver through it": the tool is not what is spoken of.
      const isTool =
        PROBES.test(before?.lower ?? '') && /^(?:through|in|into|on|under)$/.test(words[to]?.lower ?? '');
      const counted = noun === k && /Q/.test(before?.classes ?? '');
      if (!compared && !counted && !isTool)
        chunks.push({
          words: words.slice(part, to),
          role: turnedTo ? 'topic' : placed ? 'place' : verbSeen ? 'object' : 'subject',
          isSure: lacking,
          isWorkedOn: !placed && /[bP]/.test(before?.classes ?? '') && words[k]?.lower === 'the',
        });
      k = to;
    } else k = Math.max(k + 1, to > k && to <= noun ? to : k + 1);
  }
  return verbSeen || chunks.length !== 1 || chunks[0]?.role === 'place'
    ? chunks
    : chunks.map((chunk) => ({ ...chunk, role: 'topic' as const }));
}

const isPlural = (words: readonly Word[]) => {
  const head = words.at(-1)?.lower ?? '';
  if (/^(?:one|another|each)$/.test(words[0]?.lower ?? '') && words[1]?.lower === 'of') return false;
  return (
    /^(?:those|these|both|two|three|four|five|six)$/.test(words[0]?.lower ?? '') ||
    (/[^su]s$/.test(head) && head.length > 3)
  );
};

/** Parts that are a thing where they are worked on. */
const SIDES = /^(?:top|bottom|front|back|side)$/;
/** Parts that are a thing once it is said of what: "the beam end", "the port side". */
const PART =
  /^(?:end|side|top|bottom|front|back|inside|outside|half|middle|head|hand|room|work|bit|set|point)$/;

function isCandidate({ words, isSure = false, isWorkedOn = false }: Chunk): boolean {
  const head = words.at(-1) as Word;
  if (isWorkedOn && words.length === 2 && SIDES.test(head.lower)) return true;
  const before = words.at(-2);
  if (
    PART.test(head.lower) &&
    before &&
    (isNoun(before) || before.classes === 'J') &&
    !OPENS.test(before.lower)
  )
    return true;
  // A bare word is a thing only where it is known as one: "it's lighter", "I'm pleased", "knocked together".
  const known = isSure || OPENS.test(words[0]?.lower ?? '') || isTradeNoun(head.lower);
  return (
    known &&
    !NO_THING.test(head.lower) &&
    !SOMEBODY.test(head.lower) &&
    head.lower.length > 2 &&
    !/[b]/.test(head.classes.replace(/[Bb]+P?/, (letters) => (letters.includes('B') ? '' : letters)))
  );
}

/** The thing that a pronoun in clause `index` most likely stands for; `plural` as the pronoun has it, if it has a number. */
export function antecedentOf(
  index: number,
  scene: Scene,
  plural: boolean | undefined,
): Antecedent | undefined {
  let best: { readonly chunk: Chunk; readonly score: number; readonly clause: number } | undefined;
  for (let k = index - 1; k >= Math.max(0, index - REACH); k--) {
    const said = scene.said[k] as Said;
    const { words } = said;
    for (const chunk of chunksOf(said)) {
      if (!isCandidate(chunk)) continue;
      const beside = chunk.role === 'subject' && BESIDE.test(said.opener) ? SIDE : 0;
      const number = plural === undefined || isPlural(chunk.words) === plural ? 0 : OTHER_NUMBER;
      const denied =
        words.some(({ classes }) => classes.includes('N')) &&
        chunk.role === 'object' &&
        // "There's no trap with it": what is lacking is the talk's thing.
        !words.some(({ lower }) => lower === 'there')
          ? DENIED
          : 0;
      const score = WEIGHT[chunk.role] - (index - k) * STEP - number - denied - beside;
      if (!best || score > best.score) best = { chunk, score, clause: k };
    }
  }
  if (!best) return undefined;
  const { words } = best.chunk;
  const last = words.at(-1) as Word;
  const { start } = words[0] as Word;
  const text = scene.text.slice(start, last.end).replace(/['’](?:s|re|ve|ll|d|m)$/i, '');
  return {
    text: withoutCapital(text, start, scene),
    // "The springs broke. I need a new one": one of them.
    head:
      plural === false && isTradeNoun(last.lower) && isPlural(words)
        ? singular(last.lower)
        : headOf(text, last),
    clause: best.clause,
  };
}

const headOf = (text: string, { lower }: Word): string =>
  /^(?:one|another|each) of\b/i.test(text) ? singular(lower) : lower;

/** The capital of a sentence's first word is the sentence's, and not the name's. */
function withoutCapital(text: string, start: number, scene: Scene): string {
  const opens = /(?:^|[.!?:\n]["'”’)]*\s+)$/.test(scene.text.slice(Math.max(0, start - 4), start));
  const [word = ''] = text.split(' ');
  return opens && /^[A-Z][a-z]+$/.test(word) ? text.slice(0, 1).toLowerCase() + text.slice(1) : text;
}

/** "A new one" of several springs is a spring. */
const singular = (word: string) =>
  /[^aeiou]ies$/.test(word)
    ? `${word.slice(0, -3)}y`
    : /(?:[sx]|ch|sh)es$/.test(word)
      ? word.slice(0, -2)
      : word.replace(/(?<=[^s])s$/, '');

/** The last thing named in a clause: what a relative "that" behind it is said of. */
export function lastNamed(index: number, scene: Scene): Antecedent | undefined {
  const said = scene.said[index];
  const chunk = said && chunksOf(said).filter(isCandidate).at(-1);
  if (!chunk) return undefined;
  const last = chunk.words.at(-1) as Word;
  const text = scene.text.slice((chunk.words[0] as Word).start, last.end);
  return { text, head: last.lower, clause: index };
}

/** How a thing is named when it is spoken of again: "a cracked joist" is "the cracked joist" then. */
export function spokenOfAgain(text: string): string {
  if (/^(?:one|another|each|some|both|all|most|half|two|three|four) of\b/i.test(text)) return text;
  const bare = text.replace(/^(?:a|an|some|one|the) /i, '');
  return /^(?:my|our|his|her|their|its|this|that|these|those|both|all|another|each|every|other)\b/i.test(bare)
    ? bare
    : `the ${bare}`;
}
