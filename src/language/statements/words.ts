import { remembered } from '../../remembered.ts';
import { allMatches } from '../all-matches.ts';
import type { Span } from '../notes.ts';
import type { Clause, Sentence } from '../sentences.ts';
import { wordTable } from '../word-table.ts';
import { NeedsMet } from './phrase.ts';
import { classesOf, meaningsOf } from './vocabulary.ts';

/** A word as the rules see it: contractions are taken apart ("can't" is "can" and "not"), small letters only. */
export interface Word extends Span {
  readonly lower: string;
  /** Letters of the classes in vocabulary.ts. */
  readonly classes: string;
  /** Letters of its classes of meaning. */
  readonly meanings: string;
  /** All three as they stand in the code of a clause: " word/CLASSES". */
  readonly code: string;
}

/** A clause with its words; `code` is what phrases are matched against. */
export interface Said extends Span {
  readonly index: number;
  readonly sentence: number;
  readonly opener: string;
  readonly afterPause: boolean;
  readonly words: readonly Word[];
  /** Every word as " word/CLASSES", its classes of meaning behind those of grammar. */
  readonly code: string;
  /** What phrases may be looked for in it. */
  readonly met: NeedsMet;
  /** Offset in `code` of each word. */
  readonly codeStarts: readonly number[];
  readonly asks: boolean;
}

const SPLIT = wordTable<readonly string[]>({
  gotta: ['got', 'to'],
  gonna: ['going', 'to'],
  imma: ['i', "'m", 'going', 'to'],
  wanna: ['want', 'to'],
  hafta: ['have', 'to'],
  lemme: ['let', 'me'],
  gimme: ['give', 'me'],
  oughta: ['ought', 'to'],
  "can't": ['can', 'not'],
  cannot: ['can', 'not'],
  "won't": ['will', 'not'],
  "shan't": ['shall', 'not'],
  "let's": ['let', 'us'],
  dunno: ['do', 'not', 'know'],
  "ain't": ['is', 'not'],
  aint: ['is', 'not'],
  outta: ['out', 'of'],
  "y'all": ['you'],
  yall: ['you'],
  ye: ['you'],
  yous: ['you'],
  "s'posed": ['supposed'],
  sposed: ['supposed'],
  "fixin'": ['going'],
  fixing_to: ['going', 'to'],
  // As recognisers spell them now and then.
  'to-morrow': ['tomorrow'],
  'to-day': ['today'],
  'to-night': ['tonight'],
  shoulda: ['should', 'have'],
  coulda: ['could', 'have'],
  woulda: ['would', 'have'],
  // Recognisers drop apostrophes; "its", "well" and "were" stay as they are.
  im: ['i', "'m"],
  ive: ['i', "'ve"],
  weve: ['we', "'ve"],
  youve: ['you', "'ve"],
  theyve: ['they', "'ve"],
  theyre: ['they', "'re"],
  thats: ['that', "'s"],
  theres: ['there', "'s"],
  whats: ['what', "'s"],
  youll: ['you', "'ll"],
  theyll: ['they', "'ll"],
  itll: ['it', "'ll"],
  hes: ['he', "'s"],
  shes: ['she', "'s"],
  youre: ['you', "'re"],
  heres: ['here', "'s"],
  wheres: ['where', "'s"],
  em: ['them'],
  // Scots, as it is written down.
  wi: ['with'],
  tae: ['to'],
  oot: ['out'],
  doon: ['down'],
  aff: ['off'],
  ower: ['over'],
  intae: ['into'],
  mair: ['more'],
  cannae: ['can', 'not'],
  didnae: ['did', 'not'],
  dinnae: ['do', 'not'],
  isnae: ['is', 'not'],
  wasnae: ['was', 'not'],
  havenae: ['have', 'not'],
  wouldnae: ['would', 'not'],
  gonnae: ['going', 'to'],
  dont: ['do', 'not'],
  doesnt: ['does', 'not'],
  didnt: ['did', 'not'],
  isnt: ['is', 'not'],
  arent: ['are', 'not'],
  wasnt: ['was', 'not'],
  havent: ['have', 'not'],
  hasnt: ['has', 'not'],
  cant: ['can', 'not'],
  wont: ['will', 'not'],
  couldnt: ['could', 'not'],
  wouldnt: ['would', 'not'],
});
const CONTRACTED = ["n't", "'s", "'re", "'ve", "'ll", "'d", "'m"];
/** A longer word is no contraction of the list: it is not looked up, which costs a look at each of its letters. */
const LONGEST_SPLIT = Math.max(...Object.keys(SPLIT).map((word) => word.length));

/** "Shouldn't've" has two, and nobody runs more than a few together; a word of nothing but contractions is no talk. */
const MOST_CONTRACTED = 4;

function parts(lower: string): readonly string[] {
  const behind: string[] = [];
  let rest = lower;
  for (;;) {
    const fixed = rest.length <= LONGEST_SPLIT ? SPLIT[rest] : undefined;
    if (fixed) return [...fixed, ...behind.reverse()];
    const ending =
      behind.length < MOST_CONTRACTED &&
      CONTRACTED.find((each) => rest.length > each.length && rest.endsWith(each));
    if (!ending) return [rest, ...behind.reverse()];
    behind.push(ending === "n't" ? 'not' : ending);
    rest = rest.slice(0, -ending.length);
  }
}

/** More words than any memo has. */
const MOST_WORDS = 20_000;
/** What a word stands for, with its classes. The same words come back in any talk. */
const partsOf = remembered(MOST_WORDS, (lower): readonly Omit<Word, keyof Span>[] =>
  parts(lower).map((part) => coded(part, classesOf(part), meaningsOf(part))),
);

const coded = (lower: string, classes: string, meanings: string): Omit<Word, keyof Span> => ({
  lower,
  classes,
  meanings,
  code: ` ${lower}/${classes}${meanings}`,
});

/** A word that its neighbours show to be another, or of other classes, than it would be alone. */
const settledAs = ({ start, end }: Word, lower: string, classes: string, meanings: string): Word => ({
  start,
  end,
  ...coded(lower, classes, meanings),
});

const TOKEN = /[\p{L}\p{N}$£€][^\s,;:—–!?…()"“”]*/gu;

function wordsIn(text: string, from: number, to: number): readonly Word[] {
  const words: Word[] = [];
  for (const found of allMatches(TOKEN, text.slice(from, to))) {
    const dropped = /[a-z]in['’]$/i.test(found[0]) && found[0].length > 4;
    const token = found[0].replace(/[.'’]+$/, '');
    const start = from + found.index;
    const bare = token.replace(/[’ʼ]/g, "'").toLowerCase().replace(/[/ ]/g, '_');
    // "holdin'" is "holding".
    const end = start + token.length;
    for (const part of partsOf(dropped ? `${bare}g` : bare)) words.push({ start, end, ...part });
  }
  return words;
}

/** Ways to lead a report in that are no part of it: "I'm happy to say the tank is plumbed". */
const PREAMBLE = new RegExp(
  [
    "i 'm (?:happy|pleased|glad|proud|delighted|sorry|sad|relieved) to (?:say|report|announce|tell you)(?: that)?",
    "(?:i|we) (?:can|have to|must|'ve to|should) (?:now )?(?:report|say|tell you|admit|confess)(?: that)?",
    "(?:as )?you (?:can|may|might|will|'ll) (?:now )?(?:see|notice|hear|have noticed)(?: that| from this)?",
    '(?:i|we) (?:think|reckon|guess|suppose|believe|hope|see|find|notice|noticed|found|discovered|realised|realized)(?: that| out)?',
    '(?:the )?(?:good|bad|big|other|best|worst|happy|sad|only)? ?(?:news|thing|trouble|problem|point|snag|upshot|result|plan|idea|question|truth) (?:is|was|being)(?: that)?',
    '(?:it )?turns out(?: that)?|it turned out(?: that)?|turned out',
    'looks like|it looks like|sounds like|seems(?: like)?|it seems(?: that)?|apparently|unfortunately|sadly|annoyingly|luckily|thankfully|happily|amazingly|meanwhile|otherwise|elsewhere|also|remember|look|listen|lads|folks|guys|everyone|people',
    'for (?:the record|those asking|whoever asked|anyone asking|starters|once|now)|in other news|since last time|since then|at last|at long last|in the end|on top of that|after all that|to be fair|to be honest|of course|by the way|mind you|last but not least|first (?:off|up|of all)|first thing first|long story short|what else|guess what|fun fact|bit by bit|in the meantime',
    'one (?:thing|change|problem|snag|ugly thing|more thing|last thing)|another thing|big news|small victory|job one|job two',
  ]
    .map((part) => `(?:${part})`)
    .join('|')
    .replace(/^/, '^(?:')
    .replace(/$/, ')(?= |$)'),
);

/** Makes the words of a preamble mere lead-in, where something follows them. */
function markPreamble(words: readonly Word[]): readonly Word[] {
  let from = 0;
  while (from < words.length && words[from]?.classes.includes('L')) from++;
  const said = words
    .slice(from, from + 9)
    .map((word) => word.lower)
    .join(' ');
  const found = PREAMBLE.exec(said)?.[0];
  if (!found) return words;
  const to = from + found.split(' ').length;
  if (to >= words.length - 1) return words;
  return words.map((word, k) =>
    k >= from && k < to ? settledAs(word, word.lower, 'L', word.meanings) : word,
  );
}

/** Settles words that only their neighbours explain: whose "'s", "done cut", "before and after". */
function settleWords(words: readonly Word[]): readonly Word[] {
  return words.map((word, k) => {
    const next = words[k + 1];
    const lost = lostVerb(words, k);
    if (lost) return lost;
    if (word.lower === "'s" && isPossessive(words, k)) return settledAs(word, "'s_", '', word.meanings);
    // "I done cut the boards", "my back done voted"
    if (
      word.lower === 'done' &&
      k > 0 &&
      next &&
      /P/.test(next.classes) &&
      !/[SHM]/.test(words[k - 1]?.classes ?? '')
    ) {
      return settledAs(word, "'ve", classesOf("'ve"), word.meanings);
    }
    if (word.lower === 'after' && words[k - 1]?.lower === 'and' && words[k - 2]?.lower === 'before') {
      return settledAs(word, word.lower, 'E', word.meanings);
    }
    return word;
  });
}

/** Recognisers drop apostrophes: "its a 60 gallon tank", "so were going with foam". */
function lostVerb(words: readonly Word[], k: number): Word | undefined {
  const word = words[k] as Word;
  const next = words[k + 1];
  if (!next) return undefined;
  const be = (lower: string): Word => settledAs(word, lower, classesOf(lower), '');
  if (
    word.lower === 'its' &&
    (/^(?:a|an|the|gonna|going|not|been|too|only|just|now|getting|gone|got|like|all|my|our|no)$/.test(
      next.lower,
    ) ||
      (/Q/.test(next.classes) && /Q|U/.test(words[k + 2]?.classes ?? 'U')))
  )
    return be("'s");
  const opens =
    k === 0 || /^(?:so|and|but|now|because|then|that|anyway|okay|ok)$/.test(words[k - 1]?.lower ?? '');
  if (
    word.lower === 'were' &&
    opens &&
    (/^(?:going|gonna|not|having|getting|doing|making|putting|keeping|at|all|over|still)$/.test(next.lower) ||
      /G/.test(next.classes))
  )
    return be("'re");
  return undefined;
}

/** "the sheep's wool came": an owner's mark stands before a plain noun that has a verb of its own. */
function isPossessive(words: readonly Word[], k: number): boolean {
  const next = words[k + 1];
  if (!next || k === 0 || next.lower === 'going' || /[PCATNQDGFOJRSHMLZ]/.test(next.classes)) return false;
  if (/[OE]/.test(words[k - 1]?.classes ?? '')) return false;
  return words
    .slice(k + 2, k + 5)
    .some(
      (word) =>
        /[SHM]/.test(word.classes) ||
        /^(?:came|come|arrived|went|fits|needs|wants|landed|turned)$/.test(word.lower),
    );
}

/** A sentence that is a question from its first word on. */
const ASKING =
  /^(?:(?:so|and|but|now|well|right|okay|anyway)[, ]+)*(?:who|what|where|when|why|how|which|whose|is|are|was|were|do|does|did|can|could|will|would|should|shall|have|has|am|any|guess|you|remember)\b/i;

/** Nobody says a clause of more words; cutting there keeps the phrases quick on any text. */
const LONGEST = 80;

function saidOf(
  words: readonly Word[],
  clause: Clause,
  place: Pick<Said, 'index' | 'sentence' | 'asks'>,
): Said {
  const codeStarts: number[] = [];
  let length = 0;
  for (const word of words) {
    codeStarts.push(length);
    length += word.code.length;
  }
  return {
    index: place.index,
    sentence: place.sentence,
    asks: place.asks,
    start: words[0]?.start ?? clause.bodyStart,
    end: words.at(-1)?.end ?? clause.end,
    opener: clause.opener,
    afterPause: clause.afterPause,
    words,
    code: words.map(({ code }) => code).join(''),
    codeStarts,
    met: new NeedsMet(words),
  };
}

/** The clauses of all sentences with their words, numbered through the memo. */
export function wordClauses(text: string, sentences: readonly Sentence[]): readonly Said[] {
  const said: Said[] = [];
  sentences.forEach((sentence, k) => {
    const questions = ASKING.test(text.slice(sentence.start, sentence.start + 24));
    sentence.clauses.forEach((clause, position) => {
      // "The deck's glassed, did I mention?" reports first and asks last.
      const asks = sentence.asks && (questions || position === sentence.clauses.length - 1);
      const words = markPreamble(settleWords(wordsIn(text, clause.bodyStart, clause.end)));
      for (let from = 0; from < words.length; from += LONGEST) {
        said.push(
          saidOf(words.slice(from, from + LONGEST), clause, { index: said.length, sentence: k, asks }),
        );
      }
    });
  });
  return said;
}
