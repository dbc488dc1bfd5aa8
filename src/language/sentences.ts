import { workBase, workPast } from './lexicon/work-verbs.ts';
import type { Span } from './notes.ts';
import { NUMBER_WORDS } from './statements/vocabulary.ts';

/** A stretch of a memo that holds one or more clauses. */
export interface Sentence extends Span {
  readonly clauses: readonly Clause[];
  /** True when it ends in a question mark. */
  readonly asks: boolean;
}

/** A stretch of a sentence between commas, conjunctions or fresh subjects. */
export interface Clause extends Span {
  /** The conjunctions that open it, in lower case and joined by one space ("but because"); empty when none does. */
  readonly opener: string;
  /** Offset of the first character after the opener. Equal to `start` without one. */
  readonly bodyStart: number;
  /** True when a comma, colon, semicolon, dash or pause stands between it and the clause before. */
  readonly afterPause: boolean;
}

/** Written with a full stop that ends no sentence. */
const ABBREVIATIONS = new Set(
  'approx cf dept dia dr e.g ed est etc ext fig i.e incl jr mr mrs ms mt no nos nr prof ref sr st vs'.split(
    ' ',
  ),
);
/** These are words of their own as well ("bring it in."), so only a following small letter or digit joins them. */
const UNIT_ABBREVIATIONS = new Set(
  'cm ft gal hr hrs in kg lb lbs m min mins mm oz sec secs sq yd yds'.split(' '),
);

const WORD_BEFORE = /([\p{L}\p{N}.]+)$/u;

/** Whether the full stop at `at` belongs to a number, an abbreviation or a pause and not to a sentence's end. */
function staysTogether(text: string, at: number): boolean {
  const next = text[at + 1] ?? '';
  if (/[\p{L}\p{N}]/u.test(next)) return true;
  const after = /^["'’”)\]]*\s*(\S?)/.exec(text.slice(at + 1, at + 12))?.[1] ?? '';
  if (text[at - 1] === '.' && /\p{Ll}/u.test(after)) return true;
  const word = WORD_BEFORE.exec(text.slice(Math.max(0, at - 12), at))?.[1]?.toLowerCase() ?? '';
  if (word === 'no' || word === 'nos' || word === 'nr') return /\d/.test(after);
  if (ABBREVIATIONS.has(word)) return after !== '';
  // "The lintel's in. the bearing is short": without a number before it no unit, but a word of its own.
  return UNIT_ABBREVIATIONS.has(word) && /[\p{Ll}\d]/u.test(after) && followsNumber(text, at - word.length);
}

/** Whether a number, in figures or in words, ends at `at` or a space before it. */
function followsNumber(text: string, at: number): boolean {
  const before = WORD_BEFORE.exec(text.slice(Math.max(0, at - 16), at).trimEnd())?.[1]?.toLowerCase() ?? '';
  return /\d$/.test(before) || NUMBER_WORDS.has(before);
}

/** Offsets where a sentence ends, exclusive, found by punctuation and line breaks. */
function sentenceEnds(text: string): readonly number[] {
  const ends: number[] = [];
  const mark = /[.!?…]+["'’”)\]]*|\n+/g;
  for (let found = mark.exec(text); found; found = mark.exec(text)) {
    const end = found.index + found[0].length;
    if (found[0].startsWith('\n')) {
      if (breaksLine(text, found.index, end)) ends.push(found.index);
    } else if (found[0].startsWith('…')) {
      if (!/^\s*\p{Ll}/u.test(text.slice(end, end + 4))) ends.push(end);
    } else if (/[!?]/.test(found[0]) || !staysTogether(text, found.index + found[0].lastIndexOf('.'))) {
      ends.push(end);
    }
  }
  return ends;
}

/** A blank line, a list entry, or a short line before a capital breaks; a wrapped line of prose does not. */
function breaksLine(text: string, at: number, end: number): boolean {
  if (end - at > 1) return true;
  const next = text.slice(end, end + 8);
  if (/^\s*([-*•]|\d+[.)])\s/.test(next)) return true;
  const lineStart = text.lastIndexOf('\n', at - 1) + 1;
  return (
    at - lineStart < 60 && /^\s*\p{Lu}/u.test(next) && !/[,;]$/.test(text.slice(lineStart, at).trimEnd())
  );
}

const PRONOUNS = new Set(
  'i we you he she it they that this there these those somebody someone everybody nobody'.split(' '),
);
const DETERMINERS = new Set(
  'the a an my our your his her its their another every each both all no'.split(' '),
);
const FINITE = new Set(
  (
    'is are was were am be been has have had do does did will would can could shall should may might must need needs ' +
    'want wants get gets got gonna gotta goes go went comes come came takes take took makes make made weighs sits stays ' +
    'runs ran fits looks says said gives gave leaves holds held measures turned turns arrived arrives lands put cut ' +
    "cannot can't won't don't didn't doesn't isn't aren't wasn't weren't hasn't haven't couldn't wouldn't shouldn't ain't"
  ).split(' '),
);
/** Opens a clause wherever it stands. */
const ALWAYS_OPEN = new Set(
  "because cause 'cause cos since but until till til 'til unless once before after when whenever while if which although though whereas except".split(
    ' ',
  ),
);
/** Opens a clause only when a subject with a verb follows; otherwise it joins words. */
const MAY_OPEN = new Set(['and', 'or', 'so', 'then', 'plus', 'as']);

interface RawWord extends Span {
  readonly lower: string;
  /** Characters between the word before and this one hold a pause mark. */
  readonly afterPause: boolean;
}

const straighten = (word: string) =>
  word
    .replace(/[’ʼ]/g, "'")
    .toLowerCase()
    // As recognisers spell them now and then.
    .replace(/^to-(?=morrow$|day$|night$)/, 'to');

function wordsOf(text: string, from: number, to: number): readonly RawWord[] {
  const words: RawWord[] = [];
  const pattern = /[\p{L}\p{N}$£€#][^\s,;:—–!?…]*(?:[,:](?=\d)[^\s,;:—–!?…]*)*/gu;
  pattern.lastIndex = from;
  let last = from;
  for (let found = pattern.exec(text); found && found.index < to; found = pattern.exec(text)) {
    const trimmed = found[0].replace(/[.)\]”]+$/, '');
    const end = Math.min(to, found.index + trimmed.length);
    words.push({
      start: found.index,
      end,
      lower: straighten(trimmed),
      afterPause: /[,;:—–…]|\s-+\s|\.\.|[!?]/.test(text.slice(last, found.index)),
    });
    last = end;
  }
  return words;
}

/** Contractions as recognisers write them, without their apostrophe. */
const BARE_CONTRACTION =
  /^(?:im|ive|hes|shes|youre|heres|wheres|whos|weve|youve|theyve|theyre|thats|theres|itll|theyll|youll|dont|doesnt|didnt|isnt|arent|wasnt|werent|hasnt|havent|cant|wont|couldnt|wouldnt)$/;
const hasVerb = (word: string) =>
  FINITE.has(word) || /(n't|'s|'re|'ve|'ll|'d|'m)$/.test(word) || BARE_CONTRACTION.test(word);

/** Whether a subject and its verb start at `i`, within the next few words and before a pause. */
function startsClause(words: readonly RawWord[], i: number): boolean {
  const first = words[i];
  if (!first) return false;
  if (PRONOUNS.has(first.lower.replace(/'.*$/, '')) || /^(?:let's|lemme|lets)$/.test(first.lower))
    return true;
  if (BARE_CONTRACTION.test(first.lower)) return true;
  const reach = DETERMINERS.has(first.lower) ? 7 : 5;
  for (let k = i; k < Math.min(words.length, i + reach); k++) {
    const word = words[k] as RawWord;
    if (k > i && (word.afterPause || ALWAYS_OPEN.has(word.lower) || MAY_OPEN.has(word.lower))) return false;
    if (hasVerb(word.lower)) return k > i || /'/.test(word.lower);
    if (k > i + 1 && DETERMINERS.has(first.lower) && isToldPast(words, k)) return true;
  }
  return false;
}

/** "a mouse chewed through the wire": a past form with an object or a particle after it. */
function isToldPast(words: readonly RawWord[], k: number): boolean {
  const { lower } = words[k] as RawWord;
  const after = words[k + 1];
  return (
    workPast(lower) !== undefined &&
    workBase(lower) === undefined &&
    !/^(?:did|had|got|was|done)$/.test(lower) &&
    after !== undefined &&
    !after.afterPause &&
    (DETERMINERS.has(after.lower) ||
      /^(?:it|them|up|down|off|out|through|back|away|together)$/.test(after.lower))
  );
}

const IRREGULAR_PAST = new Set(
  'cut put got hung ran built took gave had laid made did set fit fitted let went'.split(' '),
);
const TELLS_ON = new Set(
  'the a an it them that those these my our its his her all both each every in on up down off out back over some two three four another'.split(
    ' ',
  ),
);

/** "... and painted the floor": the same speaker goes on with the next piece of work. */
function goesOnTelling(words: readonly RawWord[], i: number): boolean {
  const [join, verb, object] = [words[i]?.lower, words[i + 1]?.lower, words[i + 2]];
  if (!verb || !object || (join !== 'and' && join !== 'then') || object.afterPause) return false;
  // "I went ahead and cut the hole" is one deed.
  if (words[i - 1]?.lower === 'ahead') return false;
  // "The stove came Tuesday and is now bolted down": the same thing goes on.
  if (/^(?:is|are|has|have|went)$/.test(verb)) {
    return /^(?:now|all|already|been|both|back|on|in|up|fitted|bolted|finally)$/.test(object.lower);
  }
  const past = IRREGULAR_PAST.has(verb) || (workPast(verb) !== undefined && workBase(verb) === undefined);
  return past && TELLS_ON.has(object.lower);
}

const PLANNED = /^(?:get|find|go|ask|sort|have|make|ring|order)$/;
const NEW_OBJECT =
  /^(?:the|a|an|my|our|his|her|some|two|three|four|another|all|both|round|about|those|these)$/;

/** "... and ring Dave", "... and order screws": whom to call, or goods, without an article. */
const isErrand = (verb: string, object: string): boolean =>
  /^(?:ring|phone|call|email|text|message|chase|order|buy|book|collect|fetch|clean|sand|paint|prime|cut)$/.test(
    verb,
  ) &&
  !/^(?:it|them|that|this|up|in|on|off|out|back|down|about|around|round|at|for|to|from|with|by|of|and|or|again|me|us|him|her|you)$/.test(
    object,
  );

/** "I need to paint the welds and get the zincs ordered": a second job with a thing of its own. */
function goesOnPlanning(words: readonly RawWord[], i: number): boolean {
  const [join, verb, object] = [words[i]?.lower, words[i + 1]?.lower, words[i + 2]];
  if (!verb || !object || (join !== 'and' && join !== 'then') || object.afterPause) return false;
  if (
    !(workBase(verb) || PLANNED.test(verb)) ||
    !(NEW_OBJECT.test(object.lower) || isErrand(verb, object.lower))
  )
    return false;
  for (let k = i - 1; k >= Math.max(0, i - 12); k--) {
    const word = words[k] as RawWord;
    const base = workBase(word.lower) !== undefined || PLANNED.test(word.lower);
    // "Grout the tiles and paint the door": an order to oneself, and the next.
    if (k === 0 || word.afterPause) return base && i - k > 2 && NEW_OBJECT.test(words[k + 1]?.lower ?? '');
    // "go and get the ladder" is one errand: the first job has a thing as well.
    if (base && i - k > 2 && /^(?:to|must|gotta|should)$/.test(words[k - 1]?.lower ?? '')) return true;
  }
  return false;
}

/** "... so pick some up tomorrow": what follows from it is a job. */
function goesOnOrdering(words: readonly RawWord[], i: number): boolean {
  const [join, verb, object] = [words[i]?.lower, words[i + 1]?.lower, words[i + 2]];
  if (join !== 'so' || i === 0 || !verb || !object || object.afterPause) return false;
  return (
    (workBase(verb) !== undefined || PLANNED.test(verb)) &&
    /^(?:the|a|an|my|some|it|them|that|those|another|more|two|three|four|all|both|out|up|off|down)$/.test(
      object.lower,
    )
  );
}

/** "After" that leads no other time in: what has just been done, what is looked for, "the week after next". */
function tellsNoTime(words: readonly RawWord[], i: number): boolean {
  const [before, next] = [words[i - 1]?.lower ?? '', words[i + 1]?.lower ?? ''];
  // "I'm after stripping the wall"
  if (/(?:'m|'re|'s|^am|^is|^are)$/.test(before) && /ing$/.test(next)) return true;
  // "I'm after a new pump", "we're after two more sheets"
  if (/^(?:i'm|im|we're|am|are|still)$/.test(before) && LOOKED_FOR.test(next)) return true;
  return /^(?:day|week|month|year|weekend)$/.test(before) && /^(?:next|tomorrow|that)$/.test(next);
}
const LOOKED_FOR =
  /^(?:a|an|some|another|more|new|something|someone|somebody|two|three|four|five|six|eight|ten|twelve)$/;

/** "It goes in Monday, provided the paint's dry"; "they provided the bolts" opens nothing. */
const CONDITION = /^(?:provided|providing|supposing)$/;

function opensAt(words: readonly RawWord[], i: number): boolean {
  const word = words[i] as RawWord;
  // "do it once, so", "I've done it before.", "it's on order though, so": with nothing after it to open.
  const ends = i === words.length - 1 || words[i + 1]?.afterPause === true;
  if (ends && i > 0 && /^(?:once|before|after|since|though)$/.test(word.lower) && !word.afterPause)
    return false;
  if (word.lower === 'after' && tellsNoTime(words, i)) return false;
  // "Tongue and groove's on the port side": one stuff.
  if (word.lower === 'and' && words[i - 1]?.lower === 'tongue' && /^groove/.test(words[i + 1]?.lower ?? ''))
    return false;
  // "It has to be up by then I need eighty": a time, and no next step.
  if (word.lower === 'then' && /^(?:by|since|until|till|before)$/.test(words[i - 1]?.lower ?? ''))
    return false;
  if (ALWAYS_OPEN.has(word.lower)) return true;
  if (word.lower === 'soon' && words[i + 1]?.lower === 'as') return true;
  if (word.lower === 'rather' && words[i + 1]?.lower === 'than') return true;
  if (word.lower === 'instead' && words[i + 1]?.lower === 'of') return true;
  if (CONDITION.test(word.lower)) return startsClause(words, i + (words[i + 1]?.lower === 'that' ? 2 : 1));
  if (word.lower === 'as') return words[i + 1]?.lower === 'soon' && words[i + 2]?.lower === 'as';
  return (
    MAY_OPEN.has(word.lower) &&
    (goesOnOrdering(words, i) ||
      startsClause(words, i + 1) ||
      goesOnTelling(words, i) ||
      goesOnPlanning(words, i))
  );
}

/** Words after which a pronoun goes on with the clause ("what I told you", "the legs I cut"): no fresh subject. */
const LEADS_ON = new Set(
  'what that where how why who whose than as like of to for with by in on at from if the when which and or but so because since until till once before after while'.split(
    ' ',
  ),
);
/** Subjects that start a clause without a comma where a recogniser wrote none. */
const FRESH =
  /^(i'm|i've|i'll|we've|we're|we'll|it's|that's|there's|they're|they've|he's|she's|you've|i|we|there|he'll|she'll|they'll|it'll|that'll|im|ive|hes|shes|weve|thats|theres|theyre|theyve|itll|theyll)$/;

/** With commas about, only those that no relative clause starts with ("the one I've made"). */
const FRESH_ANYWHERE = /^(it's|that's|there's|they're|we're|i'm)$/;

const DAY = /^(?:today|tomorrow|yesterday|tonight|(?:mon|tues|wednes|thurs|fri|satur|sun)day)$/;

/** Whether a clause starts at word `i` although no mark or conjunction says so. */
function startsUnmarked(words: readonly RawWord[], from: number, i: number, marked: boolean): boolean {
  const word = words[i] as RawWord;
  const follows =
    !marked && /^(?:they|it|he|she|you|that|this)$/.test(word.lower) && hasVerb(words[i + 1]?.lower ?? '');
  // "... on the can its 58": recognisers drop the apostrophe.
  const its =
    !marked &&
    word.lower === 'its' &&
    /^(?:\d|a$|an$|the$|not$|been$|in$|on$|gonna$|going$|too$)/.test(words[i + 1]?.lower ?? '');
  // "It's coming tomorrow I have to scrape the floor": a day ends its clause, whatever marks stand elsewhere.
  const afterDay =
    i - from > 2 && DAY.test(words[i - 1]?.lower ?? '') && FRESH.test(word.lower) && !words[i]?.afterPause;
  if (afterDay && words.slice(from, i).some((each) => hasVerb(each.lower))) return true;
  const fresh = (marked ? FRESH_ANYWHERE : FRESH).test(word.lower) || follows || its;
  if (i - from < (marked ? 5 : 2) || !fresh) return false;
  const before = words[i - 1] as RawWord;
  // "the ridge is on I dropped a line": a particle after the verb ends its clause.
  const ended = words[i - 2]?.lower ?? '';
  const particle = PARTICLES.has(before.lower) && (hasVerb(ended) || PARTICIPLE.test(ended));
  if ((LEADS_ON.has(before.lower) && !particle && !pointsAtThat(words, i - 1)) || hasVerb(before.lower))
    return false;
  // "Once the epoxy kicks I'll trim it": after a time clause the main one may start with no verb known before it.
  if (!marked && leadsMain(words, from) && i - from > 3) return true;
  // "the legs I cut are short": a relative clause has its main verb still to come.
  return words.slice(Math.max(from, i - 30), i).some((each) => hasVerb(each.lower));
}

/** "Before I do any of that I ...": the word stands for what was named, and leads nothing on. */
const pointsAtThat = (words: readonly RawWord[], k: number) =>
  words[k]?.lower === 'that' &&
  /^(?:of|do|did|done|all|after|with|like|for)$/.test(words[k - 1]?.lower ?? '');

/** "Before it's closed in I ...", "once she's bolted down we ...". */
const PARTICIPLE = /ed$|^(?:put|cut|shut|built|torn|laid|gone|hung|screwed|set|tied)$/;
const PARTICLES = new Set('in on up down off out through over back away together done here'.split(' '));
/** Verb forms that need a subject of their own. */
const NEEDS_SUBJECT =
  /^(?:is|are|was|were|has|have|had|will|can|must|needs?|wants?|gets|goes|comes|came|went|takes|sits|stays|arrived|landed|turned|made|got|took|fits|leaves|holds|weighs|reads|says|said|makes|gives|looks|runs|measures|hangs|shows|leaks|isn't|aren't|hasn't|haven't|won't|can't|doesn't|don't|didn't|im|ive|hes|shes|thats|theres|weve|theyve|theyre|showed|come|gotta|dont|didnt|isnt|arent|hasnt|havent|wont|cant)$|(?:'s|'re|'ve|'ll|'d|'m)$/;
/** Words that no plain subject reaches back over. */
const STOPS = new Set(
  (
    'in on up down off out through over under back away together to of for with at from by into onto across against about round around ' +
    'now then yesterday today tomorrow tonight monday tuesday wednesday thursday friday saturday sunday morning afternoon evening night week ' +
    'mil mm inch inches foot feet metres meters centimetres degrees amps volts litres kilos pounds psi bar hours minutes days weeks quid ' +
    'it that them this those there here me him us you i we he she they and or but so too already again also well fine as not only just'
  ).split(' '),
);

/** "Figure out where the windows are leaking from": what is to be found out belongs to the finding out. */
const ASKS = /^(?:where|why|how|whether|which|what|who)$/;

/**
 * Where the subject of the verb at `v` starts, when it is a plain noun with no mark before it: "... is on the ridge
 * is up". Returns -1 where the words before the verb are no subject.
 */
function subjectStart(words: readonly RawWord[], from: number, v: number): number {
  const verb = words[v] as RawWord;
  const joined = /'/.test(verb.lower) && !/n't$/.test(verb.lower);
  const last = joined ? v : v - 1;
  if (last <= from || (!joined && STOPS.has(words[last]?.lower ?? ''))) return -1;
  if (
    joined &&
    /^(?:what|who|where|how|let|that|which|here|there|it|he|she|they|we|you|i|one)'/.test(verb.lower)
  )
    return -1;
  let k = last;
  while (k > from + 1 && last - k < 4) {
    const before = (words[k - 1] as RawWord).lower;
    if (ASKS.test(before)) return -1;
    if (DETERMINERS.has(before)) {
      const lead = words[k - 2]?.lower ?? '';
      if (ASKS.test(lead)) return -1;
      const afterVerb = PARTICLES.has(lead) && hasVerb(words[k - 3]?.lower ?? '');
      // "bolted to the frame wheels are on": the determiner belongs to the words before.
      return LEADS_ON.has(lead) && !afterVerb ? last : k - 1;
    }
    if (STOPS.has(before) || hasVerb(before) || /(?:ed|ly|ing)$/.test(before) || /^\d/.test(before)) break;
    k--;
  }
  return k;
}

function opensWithVerb(words: readonly RawWord[], start: number): boolean {
  const at = /^(?:and|then|so|but)$/.test(words[start]?.lower ?? '') ? start + 1 : start;
  const first = words[at]?.lower ?? '';
  return workPast(first) !== undefined || /^(?:i|we|they|he|she)$/.test(first);
}

/** "16 gallons need to strap it", "9 amps gotta cut a hole": after an amount, a job with nobody named. */
const startsDuty = (words: readonly RawWord[], v: number) =>
  /^(?:gotta|need|hafta)$/.test(words[v]?.lower ?? '') &&
  (words[v]?.lower !== 'need' || words[v + 1]?.lower === 'to') &&
  (STOPS.has(words[v - 1]?.lower ?? '') || /^\d/.test(words[v - 1]?.lower ?? '')) &&
  !PRONOUNS.has(words[v - 1]?.lower ?? '');

/** "... with a shield sawed the posts": with no mark before it, a past verb with its object tells the next deed. */
function startsDeed(words: readonly RawWord[], v: number): boolean {
  const before = words[v - 1]?.lower ?? '';
  if (!isToldPast(words, v) || !DETERMINERS.has(words[v + 1]?.lower ?? '')) return false;
  return (
    !PRONOUNS.has(before.replace(/'.*$/, '')) &&
    !hasVerb(before) &&
    !DETERMINERS.has(before) &&
    !LEADS_ON.has(before) &&
    !/(?:ly|who|which|just|now|then|already|finally|even|only|also|not)$/.test(before)
  );
}

/** Cuts unmarked clauses once more, so that each verb that needs a subject has its own. */
function cutAtSubjects(
  words: readonly RawWord[],
  starts: readonly number[],
  wanted: (start: number) => boolean,
): readonly number[] {
  const cuts: number[] = [];
  starts.forEach((start, n) => {
    const end = starts[n + 1] ?? words.length;
    let from = start;
    let verbs = opensWithVerb(words, start) ? 1 : 0;
    cuts.push(start);
    if (!wanted(start)) return;
    for (let v = start; v < end; v++) {
      const lower = (words[v] as RawWord).lower;
      if (v > from + 1 && ((verbs > 0 && startsDeed(words, v)) || startsDuty(words, v))) {
        cuts.push(v);
        from = v;
      }
      if (!NEEDS_SUBJECT.test(lower)) continue;
      const before = words[v - 1]?.lower ?? '';
      const chained =
        v > start && (hasVerb(before) || before === 'to' || before === 'not' || LEADS_ON.has(before));
      if (verbs > 0 && !chained) {
        const cut = subjectStart(words, from, v);
        if (cut > from + 1) {
          cuts.push(cut);
          from = cut;
        }
      }
      verbs++;
    }
  });
  return cuts;
}

function clausesOf(words: readonly RawWord[], end: number, marked: boolean): readonly Clause[] {
  const starts: number[] = [];
  for (let i = 0; i < words.length; i++) {
    const word = words[i] as RawWord;
    const from = starts.at(-1) ?? 0;
    // Conjunctions in a row ("but because") open one clause.
    if (i === 0 || word.afterPause || (opensAt(words, i) && !(from === i - 1 && isOpener(words, from)))) {
      starts.push(i);
    } else if (startsUnmarked(words, from, i, marked && !leadsMain(words, from))) starts.push(i);
  }
  const all = cutAtSubjects(words, starts, (at) => !marked || leadsMain(words, at));
  // "So, buy glue": a conjunction that stands alone opens the clause after it.
  const cuts = all.filter((at, k) => k === 0 || !isOnlyOpener(words, all[k - 1] as number, at));
  return cuts.map((at, k) => clauseFrom(words, at, cuts[k + 1] ?? words.length, end));
}

/** "Once the paint's dry the handles have to go on": its main clause may follow without a comma. */
const leadsMain = (words: readonly RawWord[], at: number) =>
  /^(?:once|when|after|soon|before|until|till)$/.test(words[at]?.lower ?? '') ||
  (words[at]?.lower === 'as' && words[at + 1]?.lower === 'soon') ||
  (/^(?:so|and|but)$/.test(words[at]?.lower ?? '') &&
    /^(?:once|when|after|soon|before|until|till)$/.test(words[at + 1]?.lower ?? ''));

function isOnlyOpener(words: readonly RawWord[], from: number, to: number): boolean {
  let at = from;
  while (at < to && openerLength(words, at) > 0) at += openerLength(words, at);
  return at >= to;
}

const isOpener = (words: readonly RawWord[], i: number) => {
  const word = words[i]?.lower ?? '';
  return ALWAYS_OPEN.has(word) || MAY_OPEN.has(word);
};

function clauseFrom(words: readonly RawWord[], at: number, to: number, sentenceEnd: number): Clause {
  const first = words[at] as RawWord;
  const last = words[to - 1] as RawWord;
  let body = at;
  const opener: string[] = [];
  while (body < to && openerLength(words, body) > 0) {
    const length = openerLength(words, body);
    for (let k = 0; k < length; k++) opener.push(words[body + k]?.lower ?? '');
    body += length;
  }
  return {
    start: first.start,
    end: Math.min(last.end, sentenceEnd),
    opener: opener.join(' '),
    bodyStart: (words[body] ?? last).start,
    afterPause: first.afterPause,
  };
}

/** How many words from `i` on are one conjunction: 0 when none. */
function openerLength(words: readonly RawWord[], i: number): number {
  const [a, b, c] = [words[i]?.lower, words[i + 1]?.lower, words[i + 2]?.lower];
  if (a === 'as' && b === 'soon' && c === 'as') return 3;
  if (a !== undefined && CONDITION.test(a) && b === 'that' && startsClause(words, i + 2)) return 2;
  if (a !== undefined && CONDITION.test(a) && startsClause(words, i + 1)) return 1;
  if ((a === 'soon' && b === 'as') || (a === 'rather' && b === 'than') || (a === 'instead' && b === 'of'))
    return 2;
  return a !== undefined && a !== 'as' && (ALWAYS_OPEN.has(a) || MAY_OPEN.has(a)) ? 1 : 0;
}

/** Words at which a long stretch without marks starts a new sentence, when a clause follows. */
const TURNS = new Set('so okay ok right anyway anyways now alright next also then'.split(' '));
/** A stretch of more words than this without a mark is taken for unpunctuated recogniser text. */
const LONG = 24;

/** Cuts a long unmarked stretch at turns of speech and at fresh subjects. */
function cutUnmarked(words: readonly RawWord[]): readonly (readonly RawWord[])[] {
  const parts: RawWord[][] = [[]];
  words.forEach((word, i) => {
    const part = parts.at(-1) as RawWord[];
    const turns = TURNS.has(word.lower) && part.length >= 4 && startsClause(words, i + 1);
    if (turns && !hasVerb(words[i - 1]?.lower ?? '')) parts.push([word]);
    else part.push(word);
  });
  return parts.filter((part) => part.length > 0);
}

/** Whether the whole memo goes nearly without commas, as some recognisers write. */
function isSparse(text: string): boolean {
  const words = text.match(/\s+/g)?.length ?? 0;
  const commas = text.match(/[,;:](?=\s)/g)?.length ?? 0;
  if (words > 30) return commas * 45 < words;
  // A short memo without any mark at all.
  return words > 12 && !/[,;:.!?](?=\s)/.test(text);
}

function isUnmarked(words: readonly RawWord[]): boolean {
  return words.length > LONG && words.filter((word) => word.afterPause).length * LONG < words.length;
}

/**
 * Splits a memo into sentences and clauses with offsets into `text`. Full stops of decimals, abbreviations and
 * numbered parts ("no. 8") end nothing, a comma inside a number splits nothing. Text without punctuation, as some
 * recognisers write it, is cut at conjunctions, turns of speech and fresh subjects. Linear in the length of the text.
 *
 * Known gap: unpunctuated text whose sentences start with a plain noun ("... is on the ridge is up") runs together.
 */
export function splitSentences(text: string): readonly Sentence[] {
  const sentences: Sentence[] = [];
  const sparse = isSparse(text);
  let from = 0;
  for (const end of [...sentenceEnds(text), text.length]) {
    const words = wordsOf(text, from, end);
    const unmarked = isUnmarked(words);
    const parts = unmarked ? cutUnmarked(words) : [words];
    parts.forEach((part, k) => {
      const first = part[0];
      const last = part.at(-1);
      if (!first || !last) return;
      const whole =
        parts.length === 1 || k === parts.length - 1 ? text.slice(last.end, end).trimEnd().length : 0;
      sentences.push({
        start: first.start,
        end: last.end + whole,
        clauses: clausesOf(part, end, !unmarked && !sparse),
        asks: text.slice(last.end, end).includes('?'),
      });
    });
    from = end;
  }
  return sentences;
}
