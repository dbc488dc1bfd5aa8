/** Work that was begun and not ended: what a person was in the middle of when the talk stopped. */
import type { Span } from '../notes.ts';
import { splitSentences } from '../sentences.ts';

/** The sentence that tells of it, verbatim, and its place. */
export interface BegunWork {
  readonly quote: string;
  readonly span: Span;
}

const I = "(?:i|we)(?:'ve|'d| have| had)?";
const SOON =
  '(?: (?:just|only|now|finally|also|at last|already|even|barely|quickly|today|this (?:morning|afternoon|evening)))*';
const NUMBER = '(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|a few|a couple|\\d+)';

/** Machines are started to run, not to be worked on. */
const MACHINE =
  '(?: up)? (?:the|my|our|his|her|a) (?:[\\w-]+ )?(?:engine|motor|generator|genny|heater|fire|stove|kettle|car|van|truck|tractor|pump|fan|machine|compressor|saw|timer|clock|recording|camera|recorder|day|morning|week|evening)\\b';
/** What the mind or the weather starts to do. */
const NO_WORK =
  ' (?:to |)(?:think|worry|wonder|feel|lik|love|hat|look|get|see|hear|notic|rain|snow|understand|realis|realiz|suspect|enjoy|hop|regret|believ|sweat|smell|talk|film|record)(?:e|ing|ting|y?ing)?\\b|(?: (?:at|around|about|early|late|off|out|again at|by|well|badly)\\b)|(?: (?:in|from) (?:the )?(?:morning|afternoon|evening|may|june|july|scratch|january|february|march|april|august|september|october|november|december|\\d))';
/** "Halfway through the week" tells of no work. */
const TIME_SPAN =
  '(?:(?:the|this|that|my|our) )?(?:(?:whole|working) )?(?:day|week|month|year|morning|afternoon|evening|night|winter|summer|spring|autumn|lunch|season|episode|video|film|nowhere|december|january|february|march|april|may|june|july|august|september|october|november)\\b';

const DONE_WORD =
  '(?:done|finished|complete|completed|built|cut|made|sanded|painted|primed|varnished|oiled|laid|fitted|glued|planked|wired|plumbed|assembled|stripped|welded|planed|insulated|boarded|panelled|plastered|tiled|framed|screwed|caulked|stitched|up|in|on|there)';
const WAITING_STATE =
  '(?:clamped(?: up)?|in (?:the |my |some )?clamps|under (?:the )?(?:weights?|cramps?)|taped(?: up| off)?|masked(?: up| off)?|propped(?: up)?|wedged|strapped(?: down| up)?|soaking|drying(?: out)?|curing|setting(?: up| off)?|going off|hardening|glued up|dry[- ]fitted|in pieces|in bits|apart|half[- ]\\w+|to (?:dry|cure|set|soak|go off|harden)|in the (?:steamer|steam box|jig|former|mould|mold)|on the (?:jig|former|mould|mold|sawhorses|trestles))';

const PATTERNS: readonly RegExp[] = [
  // "We've started planking the port side".
  `\\b${I}${SOON} (?:started|begun|began)(?!${MACHINE}|${NO_WORK})(?: (?:on|with|in on|work on|to \\w+|\\w+ing)| (?:the|a|an|my|our|that|those|these))\\b`,
  // "Made a start on the lining", "got stuck into the wiring".
  `\\b(?:made|making|got) (?:a|some) (?:[\\w-]+ )?(?:start|headway|inroads|progress) (?:on|with|into)\\b`,
  `\\b${I}${SOON} (?:got going|got stuck in|got stuck into|set to work|set about|got cracking)(?: (?:on|with|at|into))? \\w+`,
  // "I'm halfway through the caulking".
  `\\b(?:in the middle of|midway through|half ?-?way (?:through|along|up|down|round)|part ?-?way (?:through|along|up|down|round)|most of the way (?:through|along|round)|not quite through|(?:a (?:third|quarter)|three quarters|two thirds) of the way (?:through|along|round)) (?!${TIME_SPAN})\\w+`,
  // "The lining is half done", "the bunk's nearly finished".
  `(?:\\b(?:is|are|was|were|it|they)|'s|'re)(?: (?:only|about|roughly|maybe|still|now|all))* (?:half|part|partly|partially|three quarters|two thirds|a third)[- ]${DONE_WORD}\\b`,
  `(?:\\b(?:is|are|it|they)|'s|'re)(?: (?:only|still|now|all))* (?:not quite|not yet|nearly|almost|very nearly|just about) (?:done|finished|complete|completed|there)\\b`,
  // "I didn't get it finished", "haven't finished the ramp".
  `\\b(?:i|we)(?:'ve not| have not|'d not| had not| haven't| hadn't| did not| didn't| could not| couldn't| never)(?: (?:quite|manage to|get to|yet|even|actually))* (?:finish(?:ed)?|complete(?:d)?|(?:get|got) (?:it|them|that|the [\\w -]{2,30}?|all of [\\w ]{2,20}?)(?: all)? (?:done|finished))\\b`,
  `\\b(?:is|are|it|still|lies|stands|'s)(?: \\w+)? unfinished\\b`,
  // "Two more to go", "still four boards to fit".
  `\\b${NUMBER} (?:more |of them )?(?:[\\w-]+ ){0,2}(?:to go|left to (?:do|go|fit|cut|lay|paint|make))\\b`,
  `\\b${NUMBER} (?:out )?of (?:the |them |those )?${NUMBER}? ?(?:[\\w-]+ ){0,2}(?:are|is|'re|'s) (?:now |already )?${DONE_WORD}\\b`,
  // "I've left the frame in clamps", "it's still curing".
  `\\b${I}(?: (?:just|now))* left (?:it|them|that|those|everything|all of it|(?:the|a|an|my|our|both|all) (?:[\\w-]+ ){1,5}?)(?: (?:all|just|still|there))* ?${WAITING_STATE}\\b`,
  `(?:\\b(?:is|are)|'s|'re) (?:still |now |just )*(?:in (?:the |my )?clamps|clamped up|glued up|under weights|soaking|drying|curing|setting off|going off|in the (?:steamer|steam box|jig|former))\\b(?! room| time| rack| oil)`,
  // "We got as far as the third frame", "ran out of daylight".
  `\\b${I}(?: only)? (?:got|made it) (?:as far as|up to|down to|round to|through to) (?!me\\b|you\\b|something\\b|much\\b|anything\\b)\\w+`,
  `\\b${I}(?: (?:just|then))? (?:ran|run) out of (?:day ?light|light|time|day|evening)\\b`,
  `\\b${I}(?: (?:had to|have to|just))* (?:stopp?(?:ed)?|broke off|left off|packed up|knocked off) (?:there|halfway|half way|in the middle|before (?:i|we|the)|with (?:the|one|two|half))\\b`,
].map((source) => new RegExp(source, 'i'));

/** Said of another time or of none: a wish, a condition, a plan, a refusal. */
const UNREAL =
  /\b(?:if|unless|once|whenever|imagine|suppose|will|would|wouldn't|could|should|might|may|going to|gonna|want to|hope to|plan to|used to|last (?:year|summer|winter|spring|autumn|month|time)|years? ago|months? ago)\b|\b(?:i|we|it|they|you|he|she)'ll\b/i;
const WHEN_BEFORE = /\b(?:when|before|after|until|till|since|as soon as|by the time)\b[^,;]*$/i;
const NOT_BEGUN =
  /\b(?:not|haven't|hadn't|didn't|don't|never)(?: \w+){0,3} (?:start|started|begun|begin|begun)\b/i;

/** Sentences of `text` that tell of work begun and not ended, in the order of speech. Pure and linear in its length. */
export function readBegun(text: string): readonly BegunWork[] {
  return splitSentences(text).flatMap((sentence) => {
    const quote = text.slice(sentence.start, sentence.end).trim();
    if (sentence.asks || quote.length > LONGEST || !tellsBegun(quote)) return [];
    const start = text.indexOf(quote, sentence.start);
    return [{ quote, span: { start, end: start + quote.length } }];
  });
}

/** A run of words without a stop is no sentence, and would only be looked through for long. */
const LONGEST = 600;

function tellsBegun(quote: string): boolean {
  const words = quote.replace(/[’]/g, "'").replace(/\s+/g, ' ');
  if (NOT_BEGUN.test(words)) return false;
  return PATTERNS.some((pattern) => {
    const found = pattern.exec(words);
    if (!found) return false;
    const before = words.slice(0, found.index);
    // What stands behind the words may be a plan: "I've started the lining and will go on tomorrow".
    return !UNREAL.test(before) && !UNREAL.test(found[0]) && !WHEN_BEFORE.test(before);
  });
}
