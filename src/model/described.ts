/** A piece of work in words that can be held against another: its things, how they weigh, the way of doing. */
import { isPlural, isTradeNoun } from '../language/lexicon/trade-nouns.ts';
import { actionsOf } from './actions.ts';
import { wordsOf } from './names.ts';
import { stemOf } from './stems.ts';
import { EMPTY } from './telling-words.ts';

/** Stems of a text with what they weigh. */
export type Weights = ReadonlyMap<string, number>;

export interface Described {
  readonly weights: Weights;
  readonly words: ReadonlySet<string>;
  readonly actions: ReadonlySet<string>;
  /** Stems that name things, also words for doing that stand for one ("the frame"). */
  readonly named: ReadonlySet<string>;
  /** The things that its quote names for certain; none where it points with a word such as "it" or "those". */
  readonly things: ReadonlySet<string>;
  /** Things that only tell which one another thing is: the "sink" of "the sink hole". */
  readonly telling: ReadonlySet<string>;
  /** Where it goes to or has got to, where no other verb says how: "in", "out", "up". */
  readonly goes: string | undefined;
}

const GIST = 1;
/** What a word of the quote weighs. */
export const QUOTE = 0.9;
/** What a word of the talk around weighs. */
export const AROUND = 0.35;
const AMOUNT = 0.2;

/** After these stands where a deed was done, and not what was done: "the second coat is on the floor". */
const PLACE = new Set(
  'on in at under behind beside by near round around into onto through inside outside'.split(' '),
);
/** A place says less of a deed than the thing itself. */
export const PLACED = 0.5;

/** Describes a deed: as `describe`, with the words for its place weighing less. */
export function describeDeed(gist: string, quote: string, around: string): Described {
  const described = describe(gist, quote, around);
  const weights = new Map(described.weights);
  const words = wordsOf(quote);
  const at = words.findIndex((word, index) => index > 0 && PLACE.has(word) && index < words.length - 1);
  if (at < 0) return described;
  const things = new Set(words.slice(0, at).map(stemOf));
  for (const word of words.slice(at + 1)) {
    const stem = stemOf(word);
    const weight = weights.get(stem);
    if (weight !== undefined && !things.has(stem)) weights.set(stem, weight * PLACED);
  }
  return { ...described, weights };
}

/** Describes a task or a deed by its gist, its quote and the talk around it. */
export function describe(saidGist: string, saidQuote: string, around: string): Described {
  const [gist, quote] = [groundOff(saidGist), groundOff(saidQuote)];
  const weights = new Map<string, number>();
  const put = (text: string, weight: number) => {
    for (const word of wordsOf(text)) {
      const stem = stemOf(word);
      if (EMPTY.has(stem)) continue;
      weights.set(stem, Math.max(weights.get(stem) ?? 0, isNumber(stem) ? Math.min(weight, AMOUNT) : weight));
    }
  };
  put(around, AROUND);
  if (quote !== gist) put(quote, QUOTE);
  put(gist, GIST);
  const ofGist = usesOf(gist);
  const uses = [...ofGist, ...(quote === gist ? ofGist : usesOf(quote))];
  const actions = new Set(uses.flatMap(({ ways, isThing }) => (isThing ? ways.filter(isCoat) : ways)));
  const telling = uses.filter(({ stem }) => !EMPTY.has(stem) && !isNumber(stem));
  const named = new Set(
    telling.filter(({ ways, isThing }) => isThing || ways.length === 0).map(({ stem }) => stem),
  );
  const said = new Set(wordsOf(quote).map(stemOf));
  const things = isPointing(quote)
    ? []
    : telling.filter(({ stem, ways }) => ways.length === 0 && said.has(stem)).map(({ stem }) => stem);
  const words = new Set(wordsOf(`${gist} ${quote}`));
  return {
    weights,
    words,
    actions,
    named,
    things: new Set(things),
    telling: tellers(gist, ofGist),
    goes: whereTo(gist),
  };
}

/** "The crack's ground and filled": a helper before it makes a deed of the word, and no soil. */
const groundOff = (text: string) =>
  text.replace(
    /(?<=(?:\b(?:is|are|been|was|were|got|all|had|have|i|we)|['’](?:s|re|ve)) )ground\b/gi,
    'grinded',
  );

const ENDS =
  '(?=$|[,.;]| (?:in|on|at|from|of|to|again|now|today|tomorrow|tonight|this|and|before|so|then|first|by|for|until|till|once|all|too)\\b)';
const PARTICLE = `(?:back )?(up|down|in|out|on|off)${ENDS}`;
/** "The sink's in", "both of them are finally out". */
const IS_THERE = new RegExp(
  `(?:['’](?:s|re)|\\b(?:is|are|was|were|been|be)) (?:(?:all|both|now|finally|already|just|properly) )*${PARTICLE}`,
  'i',
);
/** "Get the boards up", "the tank needs to come out". */
const TO_MOVE = new RegExp(
  `\\b(?:get|take|put|pull|lift|bring|have|go|goes|come|comes)\\b(?: (?!and\\b|or\\b|is\\b|are\\b)[\\w'’-]+){0,5}? ${PARTICLE}`,
  'i',
);

/** The particle of a plain move, where no other verb says what is done. */
function whereTo(gist: string): string | undefined {
  return (IS_THERE.exec(gist) ?? TO_MOVE.exec(gist))?.[1]?.toLowerCase();
}

/** "The sink hole": of two names side by side the first only tells which one; "the stairs sit", "the vent came off" tell none. */
function tellers(gist: string, uses: readonly Use[]): ReadonlySet<string> {
  const words = wordsOf(gist);
  const isName = (at: number) => {
    const use = uses[at];
    return use !== undefined && (use.ways.length === 0 || use.isThing) && !EMPTY.has(use.stem);
  };
  const isHead = (at: number) => isName(at) && isThingName(words[at] as string);
  const tells = (at: number) =>
    isName(at) && isHead(at + 1) && !isPlural(words[at] as string) && !DEALERS.test(words[at + 1] as string);
  const before = uses.filter(({ stem }, at) => tells(at) && !isNumber(stem)).map(({ stem }) => stem);
  const heads = new Set(uses.filter((_, at) => isHead(at) && !tells(at)).map(({ stem }) => stem));
  return new Set(before.filter((stem) => !heads.has(stem)));
}
/** "The foam people", "the crane man": whoever deals in a thing is spoken to about that thing. */
const DEALERS =
  /^(?:people|man|men|bloke|blokes|fella|fellas|guy|guys|lad|lads|chap|chaps|firm|house|place|shop|merchant|supplier|lot|folk|folks)$/;
const isThingName = (word: string) => isTradeNoun(word) || word === 'hole' || word === 'holes';

/** Words that point at a thing which was named elsewhere. */
const POINTING = /^(?:it|them|em|they|he|him|she|her|one|ones|pair|lot|same)$/;
/** These point unless the thing stands behind them: "those", "those boards". */
const POINTING_ALONE = /^(?:that|this|those|these|both|all|each|every|another)$/;

function isPointing(quote: string): boolean {
  const words = wordsOf(quote);
  return words.some((word, index) => {
    if (POINTING.test(word)) return true;
    if (!POINTING_ALONE.test(word)) return false;
    const next = stemOf(words[index + 1] ?? '');
    return next === '' || EMPTY.has(next) || actionsOf(next).size > 0;
  });
}

interface Use {
  readonly stem: string;
  readonly ways: readonly string[];
  /** Whether a word for doing stands for a thing. */
  readonly isThing: boolean;
}

/** Words before a name. */
const BEFORE_NAMES = new Set(
  'the a an my our his her their your its this these those some any no both all each every new old first second third last other two three four of'.split(
    ' ',
  ),
);

/** "The frames", "a new saw": a word for doing after an article, or in the plural at the head, is a thing. */
function usesOf(text: string): readonly Use[] {
  const words = wordsOf(text);
  let isInName = false;
  return words.map((word, index) => {
    const stem = stemOf(word);
    const before = words[index - 1] ?? '';
    const ways = stem === GET && !isGetting(words, index) ? [] : [...actionsOf(stem)];
    const isPlural = /[^s]s$/.test(word);
    // "The hinge bolts": the name goes on up to its plural; "the boards cut" tells what was done to them.
    const goesOn = isInName && isPlural && !/[^s]s$/.test(before);
    const isThing =
      (isPlural && index === 0) || goesOn || (BEFORE_NAMES.has(before) && !word.endsWith('ing'));
    isInName = BEFORE_NAMES.has(word) || (isInName && !ENDS_NAME.test(word) && !isPlural);
    return { stem, ways, isThing: ways.length > 0 && isThing };
  });
}
const GET = stemOf('get');
/** "Get a pump" buys one; "get the pump fitted", "the springs get lashed", "get the boards up" do not. */
function isGetting(words: readonly string[], index: number): boolean {
  const before = words[index - 1];
  const last = words.at(-1) ?? '';
  return (before === undefined || SPEAKER.test(before)) && !(words.length > index + 2 && DONE_TO.test(last));
}
const SPEAKER =
  /^(?:i|we|to|and|then|must|should|will|have|just|also|finally|gotta|please|ve|ll|still|now|so|but)$/;
const DONE_TO =
  /(?:ed|[^e]en)$|^(?:done|cut|hung|built|made|laid|up|down|in|out|off|on|back|apart|together|started|going|working|running)$/;
/** Behind these no name goes on. */
const ENDS_NAME =
  /^(?:is|are|was|were|be|been|has|have|had|in|on|at|to|for|from|with|by|up|down|off|out|over|back|and|or|but|so|then|that|which|it|them|s)$|(?:ed|ing)$/;

/** A coat of paint is named after the painting. */
const isCoat = (way: string) => way === 'coat';

const NUMBERS = new Set(
  'two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen twenty thirty forty fifty sixty seventy eighty ninety hundred thousand half quarter'.split(
    ' ',
  ),
);
/** Amounts say little of which task is meant. */
const isNumber = (stem: string) => /^[\d.,/]+$/.test(stem) || NUMBERS.has(stem);
