/** The work itself, without the words that say that it is still to do: "I've still got to prime it" is "prime it". */

import { workIng, workParticiple } from '../lexicon/work-verbs.ts';
import { NO_GERUNDS } from './vocabulary.ts';

/** "First coat tomorrow": which of a row, and no lead-in. */
const NOT_OF_A_ROW =
  '(?! (?:coats?|fix|layer|lift|lot|half|batch|pair|one|two|three|side|row|course|floor|frame|run|pass)\\b)';
const ADVERB = `(?:still|also|just|really|then|now|first${NOT_OF_A_ROW}|probably|definitely|certainly|only|maybe|actually|obviously|soon|at least|kind of|sort of|finally|even|best|at some point|sooner or later)`;
/** Being bound to it, being able to, meaning to. Each ends where the verb of the work begins. */
const BOUND_TO =
  "(?:(?:need|needs|have|has|had|got|ought|go|going|supposed|meant|about|due|hoping|hope|plan|planning|intend|aim|aiming|want|wanting|wanted|like|love|trying|try|looking|remember|remembering|able|sure|bound|ready|prepared|get round|getting round|make sure|be sure)(?: (?:really|still|also|just|first))? to\\b|gotta\\b|gonna\\b|wanna\\b|hafta\\b|oughta\\b|try and\\b|(?:(?:do not|don['’]t)(?: let me)?|mustn['’]t|must not|not) forget to\\b|remind me to\\b|had better\\b|['’]d better\\b|better\\b|make sure (?:i|we|that i|that we)\\b|(?:can['’]t|cannot|can not|couldn['’]t|won['’]t be able to)(?! (?:see|find|think|remember|say|believe|tell|stand|get (?:it|that|this|them)))|(?:will|shall|would|should|must|could|can|might|may|['’]ll|['’]d)(?! not\\b)\\b|(?:am|are|be|been|['’]m|['’]re|['’]ve)\\b)";
const SOMEBODY = '(?:i|we)';
/** "First thing is", "next up's", "the last job is to". */
const ANNOUNCED = `(?:(?:the |my |our |one )?(?:(?:first|next|last|other|main|big|only|final|one)(?: (?:big|real|other|main))? (?:thing|job|task|step|bit|one|up)s?|next|first${NOT_OF_A_ROW}|jobs?|(?:the |my )?plan)(?: (?:up|on the list|left|to do|for (?:tomorrow|today|tonight|me|monday|tuesday|wednesday|thursday|friday|saturday|sunday)|tomorrow|now|then))*(?:['’]s|,? is|,? are| will be|['’]ll be)(?: going to be)?(?: to)?)`;

const LEADS = new RegExp(
  `^(?:(?:so|and|but|or|well|right|okay|ok|oh|um|er|yeah|anyway|also|plus|though),? +)*(?:${ANNOUNCED} +)?(?:${ADVERB},? +)*(?:${SOMEBODY}\\b ?)?(?:(?:${ADVERB} +)*${BOUND_TO} +)*(?:${ADVERB} +)*`,
  'i',
);
const OPENS_ANNOUNCED = new RegExp(`^(?:(?:so|and|but|then|well|right|also),? +)*${ANNOUNCED}`, 'i');
/** "I need a new hinge", "we want more screws": what there has to be is to be got. */
const LACKS = new RegExp(
  `^(?:(?:so|and|but|then|well|right|also),? +)*(?:${ADVERB},? +)*(?:${SOMEBODY}\\b ?)?(?:(?:${ADVERB}|will|['’]ll|do|am|are|['’]m|['’]re|going to|gonna) +)*(?:need|want|could do with|could use|am after|are after|['’]m after|['’]re after|after) +(?=(?:a|an|some|the|another|more|my|our|all|both|it|them|that|this|those|these|everything|new|better|bigger|smaller|longer|one|two|three|four|five|six|seven|eight|nine|ten|\\d+)\\b)`,
  'i',
);

/** "I still haven't painted the door": what was not done is to do. */
const NOT_DONE = new RegExp(
  `^(?:(?:so|and|but|well|right|also),? +)*(?:${ADVERB},? +)*(?:${SOMEBODY}\\b ?)?(?:${ADVERB} +)*(?:haven['’]t|have not|['’]ve not|not) +(?:(?:yet|even|actually|really|properly) +)*(\\w+)(?= )`,
  'i',
);
const BASES: Readonly<Record<string, string>> = {
  done: 'do',
  got: 'get',
  gotten: 'get',
  been: 'go',
  had: 'have',
};

/** What a task is about, beginning with its verb wherever the words have one. */
export function bareWork(words: string): string {
  const lacks = LACKS.exec(words)?.[0];
  if (lacks) return `Get ${words.slice(lacks.length)}`;
  const undone = NOT_DONE.exec(words);
  const verb = undone?.[1]?.toLowerCase() ?? '';
  const base = BASES[verb] ?? workParticiple(verb);
  if (undone && base) return `${base}${words.slice(undone[0].length).replace(/ yet$/i, '')}`;
  const lead = LEADS.exec(words)?.[0] ?? '';
  const rest = words.slice(lead.length);
  if (rest.trim().length < 2) return words;
  const isGerund = OPENS_ANNOUNCED.test(lead) || /(?:\b(?:am|are|be)|['’](?:m|re)) +(?:\S+ +)*$/i.test(lead);
  return isGerund ? withBase(rest) : rest;
}

const RELATIVE_DAY =
  '(?:,? (?:by|for|until|before|from))?,? ?\\b(?:first thing )?(?:to-?morrow|to-?day|to-?night|this (?:morning|afternoon|evening))(?: (?:first thing|morning|afternoon|evening|night|lunchtime))?(?:,? (?:ideally|hopefully|latest|at the latest|if (?:i|we) can|then|please))?(?=$|[\\s,.;])';
const DAY_WORDS = new RegExp(RELATIVE_DAY, 'i');
const DAY_AT_HEAD = new RegExp(`^${RELATIVE_DAY},? *(?:it(?:['’]s| is) )?`, 'i');

/** A gist whose day is known, without the words that only hold on the day they were said: "cut the legs tonight". */
export function withoutDay(gist: string): string {
  const rest = DAY_AT_HEAD.test(gist) ? bareWork(gist.replace(DAY_AT_HEAD, '')) : gist.replace(DAY_WORDS, '');
  const text = rest.replace(/\s+/g, ' ').replace(/^[\s,]+|[\s,;]+$/g, '');
  return text.length > 3 ? text.slice(0, 1).toUpperCase() + text.slice(1) : gist;
}

/** "Getting all the seats out" is "get all the seats out"; "wiring" alone may be a thing. */
function withBase(words: string): string {
  const [, first = '', next = ''] = /^(\S+) +(\S+)/.exec(words) ?? [];
  const base = workIng(first.toLowerCase()) ?? (/^getting$/i.test(first) ? 'get' : undefined);
  if (!base || next === '') return words;
  const isThing = NO_GERUNDS.has(first.toLowerCase()) && !/^(?:getting|going)$/i.test(first);
  if (isThing && !/^(?:the|a|an|my|our|up|in|on|off|out|down|it|them|those|these|that|all|some)$/i.test(next))
    return words;
  return `${base}${words.slice(first.length)}`;
}
