import { isPlural } from '../lexicon/trade-nouns.ts';
import { antecedentOf, isNoun, lastNamed, spokenOfAgain } from './antecedent.ts';
import { bareWork } from './bare-work.ts';
import type { Draft, Scene } from './draft.ts';

/** Words that lead a statement in and say nothing of the matter. */
const LEAD_IN =
  /^(?:(?:so|and|but|or|then|well|right|okay|ok|now|oh|um|er|yeah|anyway|luckily|that's|next(?! (?:time|week|weekend|month|year|episode|video|one|film|part|monday|tuesday|wednesday|thursday|friday|saturday|sunday)\b)(?: up| job)?(?: is|'s)?)[,\s]+)*(?:(?:i promise|promise)(?: that| you)*,? )?(?:(?:i|we)\b(?: can't| cannot| can not| couldn't)?(?:'ve| have|'ll| will|'m| am|'re| are)?(?: still| also| just| really| already)*(?:(?: got| going| have| need| gotta| ought)\b)* ?(?:to |gotta )?)?/i;

const TIME_OR_TALK =
  /\b(?:time|times|day|days|week|weeks|hour|hours|minute|minutes|while|bit|lot|problem|thing|things|way|moment|chance|look|mind|episode|video|word)$/i;

/** A short line about the statement: the quote without its lead-in, with "it" and "that" named where it is clear. */
export function gistOf(draft: Draft, scene: Scene): string {
  const own = ownWords(draft, scene);
  const named =
    draft.kind === 'task' && LACKS_SUBJECT.test(own)
      ? withSubject(own, draft, scene)
      : nameThings(own, draft, scene);
  const short = withoutLead(draft, named).replace(ASIDE_AT_END, '').replace(/\s+/g, ' ').trim();
  const text = short.length > 1 ? short : own.trim();
  return text.slice(0, 1).toUpperCase() + text.slice(1);
}

/** Said in passing, behind the matter. */
const ASIDE_AT_END =
  /(?:[,\s]+(?:by the way|mind you|of course|thank god|thank goodness|i think|i reckon|i guess|i suppose|to be fair|to be honest|for what it['’]s worth|incidentally|would you believe|believe it or not|touch wood|fingers crossed))+$/i;

function withoutLead({ kind }: Draft, words: string): string {
  // "I've to ring the yard".
  if (kind === 'task')
    return bareWork(words.replace(OPENERS, ''))
      .replace(/^to (?=\p{L})/iu, '')
      .replace(/(?<=\S) yet$/i, '');
  if (kind === 'promise') return vowed(words).replace(LEAD_IN, '');
  if (kind === 'done') {
    const bare = words.replace(LEAD_IN, '');
    // "I got the price" is what was done: "got" stays where a thing follows it.
    return /\bgot\s*$/i.test(words.slice(0, words.length - bare.length)) && GOT_THING.test(bare)
      ? `got ${bare}`
      : bare;
  }
  return words.replace(OPENERS, '');
}
const GOT_THING =
  /^(?:the|a|an|my|our|some|another|both|all|two|three|four|his|her|their|that|those|it|them)\b/i;
/** "I promised Ruth I'd show her the meter" is "show Ruth the meter". */
function vowed(words: string): string {
  const [, whom = '', rest] = PROMISED.exec(words) ?? [];
  if (rest === undefined) return (SAID_WHERE.exec(words) ?? PROMISED_TO.exec(words))?.[1] ?? words;
  return /^(?:you|them|him|her|it|viewers?|everyone|everybody|people)$/i.test(whom)
    ? rest
    : rest.replace(/\b(?:her|him|them)\b/i, whom);
}
const PROMISED =
  /^(?:(?:and|so|but|also|oh)[,\s]+)*(?:(?:i|we)(?:['’]ve| have)?\s+)?(?:also\s+)?(?:promised|told|assured|swore to|said to)\s+((?:the|my|our)\s+\w+|\w+)(?:\s+that)?\s+(?:i|we)(?:['’]d|['’]ll| would| will)\s+(.+)$/is;

/** "I said on the last film I'd show how the brake works" is "show how the brake works". */
const SAID_WHERE =
  /^(?:(?:and|so|but|also|oh)[,\s]+)*(?:i|we)(?:['’]d| had)?\s+said\s+(?:(?:in|on|at|last|back in|a)\s+[^,.;]{1,40}?\s+)?(?:that\s+)?(?:i|we)(?:['’]d|['’]ll| would| will)\s+(.+)$/is;
/** "I promised to show you the lock", "promised you to show the lock". */
const PROMISED_TO =
  /^(?:(?:and|so|but|also|oh)[,\s]+)*(?:(?:i|we)(?:['’]ve| have)?\s+)?(?:also\s+)?promised(?:\s+(?:you|them|viewers?|everyone|everybody|people))?\s+to\s+(.+)$/is;

const OPENERS = /^(?:(?:so|and|but|then|well|right)[,\s]+)+/i;

/** "Needs swapping", "must come down": the thing was named before. "Must remember to" has the speaker for it. */
const LACKS_SUBJECT =
  /^(?:still |also |just |so )?(?:needs|wants|gets|could do with|has to|has got to|must (?:be|come|go|stay|sit|match|clear|line up))\b/i;

function withSubject(words: string, draft: Draft, scene: Scene): string {
  const thing = antecedentOf(draft.from, scene, false)?.text;
  if (!thing || TIME_OR_TALK.test(thing)) return words;
  const bare = words.replace(/^(?:just|so) /i, '');
  return `${spokenOfAgain(thing)} ${bare.slice(0, 1).toLowerCase()}${bare.slice(1)}`;
}

/** The quote without the gates and reasons that have their own fields. */
function ownWords(draft: Draft, scene: Scene): string {
  const cut = draft.aside?.filter((k) => k > draft.from).map((k) => scene.said[k]?.start ?? draft.end) ?? [];
  const end = Math.min(draft.end, ...cut);
  // "Once the resin has cured I need to sand": what it waits for stands before the work.
  const after =
    draft.aside?.includes(draft.from) && draft.to > draft.from ? scene.said[draft.from + 1] : undefined;
  const start = after && after.start < end ? after.start : draft.start;
  const words = scene.text
    .slice(start, end)
    .replace(/[,;]?\s+but not (?:before|until|till)\b.*$/is, '')
    .replace(
      /[,;\s]+(?:but|and)?\s*(?:(?:i )?can't|not|only)?\s*(?:until|till|before|once|unless|soon as|as soon as|after|when)?\s*$/i,
      '',
    );
  if (words.length <= 3) return scene.text.slice(draft.start, draft.end);
  return draft.kind === 'task' && draft.waitsFor?.length
    ? words
        .replace(HELD, '')
        .replace(NOTHING_GOES, 'whatever ')
        .replace(
          NOT_YET,
          (_, who: string, will: string) => `${who}${MEANT[will.toLowerCase().replace('’', "'")] ?? ''}`,
        )
    : words;
}
/** "Nothing goes down till the pipes are tested": what goes down then. */
const NOTHING_GOES = /^nothing (?:else )?(?=(?:goes|gets|comes) (?:down|up|in|on|back|near|over)\b)/i;
/** "I won't coat it until ...", "I'm not sealing that until ...": the work itself is meant to be done. */
const NOT_YET =
  /^((?:(?:and|so|but)[,\s]+)*(?:(?:i|we)(?= |['’]))?)( won['’]t| will not|['’]ll not|['’]m not| am not|['’]re not| are not)(?= )/i;
const MEANT: Readonly<Record<string, string>> = {
  " won't": ' will',
  ' will not': ' will',
  "'ll not": "'ll",
  "'m not": "'m",
  ' am not': ' am',
  "'re not": "'re",
  ' are not': ' are',
};
/** "Don't board the wall until ...": the work that is held up is the boarding. */
const HELD =
  /^(?:(?:and|so|but)[,\s]+)*(?:(?:do not|don['’]?t|never)(?: (?:you|let (?:me|anyone|anybody|us)))? |no (?=\w+ing\b))/i;

/** "that pipe" names itself; a lone "that" ends its phrase or has its verb on it. */
const LONE =
  /\b(?:(?:it|them|they)(?=$|[\s,.]|'s\b|'re\b|'ve\b|'ll\b)|(?:that|those|these)(?=$|[,.]|'s\b(?! (?:a|an|one|the|just|it|two|three|four|five|six|eight|ten|me|my)\b)|'re\b|'ll\b| (?:out|off|up|down|in|on|back|apart|again|by|before|tomorrow|tonight|to|too|as|wants|needs|gets|has|have|goes|will|must|can|won['’]t|can['’]t|cannot|doesn['’]t|isn['’]t|wouldn['’]t)\b))(?! (?:is |[a-z]+ing))/i;
/** "a new one", "the other one": another of what was spoken of. */
const NEW_ONE =
  /\b(?:new|another|other|second|third|last|bigger|smaller|longer|better|proper|fresh|thicker|heavier) (ones?)\b|\banother (one)\b|\b(?:a|the) (one)$/i;

/** "It's only eleven in here", "it's raining", "it turns out": an "it" that stands for no thing. */
const NO_ANTECEDENT =
  /\bit(?: is|'s| was|'ll be| will be| gets?| got| has been|'s been)? (?:(?:only|just|too|so|still|about|getting|down to|up to|been|a bit|bloody|very|really|minus|at least|barely|not|quite) )*(?:\S+ ){0,3}?(?:degrees|in here|out here|out there|outside|in there|cold|colder|warmer|freezing|frosty|dark|raining|rains|rain|rained|snow\w*|blowing|windy|muggy|humid|late|early|(?:mon|tues|wednes|thurs|fri|satur|sun)day|winter|summer|ages|hours)\b|^(?:(?:and|so|then|but) )?(?:to-?morrow|tonight|(?:on )?(?:mon|tues|wednes|thurs|fri|satur|sun)day|next(?: week| up)?|after that|first thing),? it(?: is|'s|['’]ll be|['’]s) (?:the|a|an|my|our|time|on to|back to)\b|\bit (?:turns? out|turned out|seems?|looks? like|takes?|took|means|depends|occurred|struck|dawned)\b/i;

/** "I'll order one tonight", "have to get some": of what was spoken of. */
const LONE_ONE =
  /\b(?:get|getting|buy|buying|order|ordering|fetch|make|making|borrow|borrowing|find|hire|cut|fit|need|want|pick up) (one|some|some more|a few more|another)(?= (?:from|off|at|in|for|on|tonight|tomorrow|today|next|this|before|when|once|up|down|now|later|out|over|as|by|of those|monday|tuesday|wednesday|thursday|friday|saturday|sunday)\b|[,.;]|$)/i;

/** Somebody, and no thing: "rang them", "they collected the basin"; nor in "the floor's had it". */
const OF_PEOPLE =
  /\b(?:['’]s|['’]ve|has|have) had it\b|\b(?:call|ring|phon|tell|ask|email|text|messag|chas|let|show|pay|thank|meet|help|owe|warn|remind)(?:s|e|ed|ing)? (?:him|her|them|it)\b|\b(?:rang|rung|told|paid|met|shown) (?:him|her|them|it)\b|\bthey (?:\S+ )?(?:short|collect|pick|say|said|sen[dt]|swap|bring|brought|deliver|(?:need|want) (?:a|an|the|some|us|me|my|it|more|paying|two|\d)\b|quot|charg|promis|c[ao]me round|rang|told|gave|reckon|think|thought|know|kn[eo]w)/i;

/** Puts the thing last spoken of in the place of a lone pronoun or of "one". */
function nameThings(words: string, draft: Draft, scene: Scene): string {
  if (draft.kind === 'decision') return words;
  const one = NEW_ONE.exec(words);
  if (one) {
    const meant = antecedentOf(draft.from, scene, /ones$/i.test(one[0]));
    return meant ? words.replace(NEW_ONE, (found) => found.replace(/ones?$/i, meant.head)) : words;
  }
  const lacking = LONE_ONE.exec(words);
  if (lacking?.[1]) return withKind(words, lacking[1], draft, scene);
  if (OF_PEOPLE.test(words) || OF_ITS_OWN.test(words)) return words;
  const deed = DO_THAT.test(words) ? deedBefore(draft.from, scene) : undefined;
  if (deed) return words.replace(DO_THAT, deed);
  const lone = LONE.exec(words);
  if (!lone || (/^it/i.test(lone[0]) && NO_ANTECEDENT.test(words))) return words;
  if (NAMED_WITHIN.test(words.slice(0, lone.index))) return words;
  const at = clauseAt(words, lone.index, draft, scene);
  if (isThemThings(words, lone.index, draft, scene, at)) return words;
  // "A bit of rot in a purlin that needs treating": no stop stands before "that".
  const isRelative =
    /^that/i.test(lone[0]) &&
    lone.index === 0 &&
    /[\p{L}\p{N}]\s+$/u.test(scene.text.slice(0, draft.start)) &&
    !scene.said[at]?.opener;
  const meant = isRelative
    ? lastNamed(at - 1, scene)
    : antecedentOf(at, scene, /^(?:them|they|those|these)/i.test(lone[0]));
  // "The fan's noisy, it's rubbing": the words before name it already.
  if (!meant || meant.clause >= draft.from || TIME_OR_TALK.test(meant.text)) return words;
  const rest = words.slice(lone.index + lone[0].length);
  const verb = SHORT_VERBS.find(([short]) => short.test(rest));
  const thing = spokenOfAgain(meant.text);
  return verb
    ? `${words.slice(0, lone.index)}${thing} ${verb[1]}${rest.replace(verb[0], '')}`
    : `${words.slice(0, lone.index)}${thing}${rest}`;
}

/** "One of the treads has a shake in it": of the thing that the words begin with. */
const OF_ITS_OWN =
  /^(?:(?:one|two|three|some|all|both|each) of )?(?:the|a|an|my|our|that|this)?\b[^,;]{3,40}?(?: (?:has|have|had|has got|have got)|['’](?:s|ve) got) [^,;]{2,40} (?:in|on|through|along|across|round|at) (?:it|them)$/i;

/** "Notch the rafter and header it off": named in the job before. */
const NAMED_WITHIN =
  /^\S+(?: \S+){0,3}? (?:the|a|an|my|our|that|those|this) [^,;]{2,30} and (?:then )?\p{L}+ (?:the (?:end|top|side|rest|back|face) (?:of|off) )?$/iu;

const DO_THAT = /\bdo (?:that|this)\b/i;

/** "I said I'd show how the brake works, need to do that": the work that was named just before. */
function deedBefore(from: number, scene: Scene): string | undefined {
  const before = scene.said[from - 1];
  if (!before || before.sentence !== scene.said[from]?.sentence) return undefined;
  const at = before.words.findIndex(
    ({ lower }, k) =>
      /^(?:'d|'ll|would|will|to)$/.test(lower) && /B/.test(before.words[k + 1]?.classes ?? ''),
  );
  const first = before.words[at + 1];
  return at < 0 || !first ? undefined : scene.text.slice(first.start, before.end);
}

/** "Three of them posts are up", "them planks are bought": "them" for "those", with the things behind it. */
function isThemThings(words: string, offset: number, draft: Draft, scene: Scene, clause: number): boolean {
  if (!/^them\b/i.test(words.slice(offset))) return false;
  if (offset > 0 && !/\b(?:of|on|in|for|with|to|at|and|all|both|half)\s+$/i.test(words.slice(0, offset)))
    return false;
  const start = scene.text.indexOf(words, draft.start) + offset;
  const said = scene.said[clause]?.words ?? [];
  const at = said.findIndex((word) => word.start === start);
  if (at < 0) return false;
  const name = said.slice(at + 1, at + 4);
  const end = name.findIndex((word) => isNoun(word) && isPlural(word.lower));
  return end >= 0 && name.slice(0, end).every((word) => isNoun(word) || /[QJ]/.test(word.classes));
}

/** On a name these are spelt out: "the core will need drying". */
const SHORT_VERBS: readonly (readonly [RegExp, string])[] = [
  [/^['’]ll\b/, 'will'],
  [/^['’]re\b/, 'are'],
  [/^['’]ve\b/, 'have'],
  [/^['’]d\b/, 'would'],
];

/** "Order one" of an oil seal is "order an oil seal". */
function withKind(words: string, one: string, draft: Draft, scene: Scene): string {
  // "Some" is of sand as it is of screws.
  const isMany = /^(?:one|another)$/i.test(one) ? false : undefined;
  const meant = antecedentOf(draft.from, scene, isMany);
  if (!meant || TIME_OR_TALK.test(meant.text)) return words;
  const kind = spokenOfAgain(meant.text).replace(
    /^(?:the|my|our|his|her|their|its|this|that|these|those|both|all|another|each|every|other) /i,
    '',
  );
  const article = one.toLowerCase() === 'one' ? (/^[aeiou]/i.test(kind) ? 'an' : 'a') : one;
  return words.replace(LONE_ONE, (found) => `${found.slice(0, -one.length)}${article} ${kind}`);
}

/** The clause in which a word of the statement stands. */
function clauseAt(words: string, offset: number, draft: Draft, scene: Scene): number {
  const start = scene.text.indexOf(words, draft.start);
  if (start < 0) return draft.from;
  let at = draft.from;
  while (at < draft.to && (scene.said[at + 1]?.start ?? Number.POSITIVE_INFINITY) <= start + offset) at++;
  return at;
}

/** A gate as a short phrase: "the wiring's signed off" is "wiring signed off". */
export function waitOf(words: string): string {
  return (
    words
      .replace(/^(?:so|and|but|only|the|a|an|my|our|those|these|that|there(?:'s| is| are))\s+/i, '')
      // "It's above twelve": the weather has no name.
      .replace(/^it(?:['’]?s| is) (?=(?:above|below|over|under|past|dry|warm|warmer|not raining)\b)/i, '')
      .replace(/['’](?:s|re)\b/, '')
      .replace(/,?\s+(?:obviously|anyway|though|of course|I suppose)$/i, '')
      .replace(/\s+/g, ' ')
      .trim()
  );
}
