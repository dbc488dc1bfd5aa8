import { isReason, isSubordinate, phraseRule, type Scene, type StatementRule } from './draft.ts';
import { type Found, phrase } from './phrase.ts';
import type { Said, Word } from './words.ts';

const has = (words: readonly Word[], letter: string) => words.some((word) => word.classes.includes(letter));
const isOne = (words: readonly Word[], list: ReadonlySet<string>) =>
  words.some((word) => list.has(word.lower));
const set = (words: string) => new Set(words.trim().split(/\s+/));

/** Participles that tell of a state or a plan and not of finished work. */
const NO_RESULT =
  set(`left found lost broken bent burnt burned torn blown given meant made called stood held hit met
  stuck used planned drawn shown worn spoilt spoilt supported exposed separated told timed priced-in
  fired worked rounded squared related`);
/** Verbs that, said of oneself, tell of looking, losing or saying rather than of work. */
const NO_WORK =
  set(`measured checked found lost left met hit stood showed gave told used planned held kept spent paid
  figured called dropped got choose chose reckoned guessed timed priced weighed bought ordered photographed modeled
  modelled costed quoted worked ran leant stepped started stopped`);
const PERSONAL = set('i we you he she who me us everybody everyone nobody somebody they');
const FAULTY = /\b(?:wrong|mistake|accident|accidentally|twice|too)\//;

/** Clauses in which no work is reported, whatever their verbs. */
function silent(said: Said, scene: Scene): boolean {
  return (
    scene.unreal.has(said.index) ||
    scene.listed.has(said.index) ||
    isSubordinate(said) ||
    isReason(said) ||
    said.asks ||
    FAULTY.test(said.code)
  );
}

const saidOfMedia = (found: Found) => has(found.part('subject'), 'E');
const negated = (found: Found) => has(found.words, 'N') || has(found.words, 'K');

const report = (
  name: string,
  pattern: RegExp,
  guard: (found: Found, said: Said, scene: Scene) => boolean,
): StatementRule =>
  phraseRule(
    'done',
    name,
    pattern,
    (found, said, scene) => !silent(said, scene) && !negated(found) && guard(found, said, scene),
  );

/** Words after "is in", "is on", "is off" that make it a place or a property. */
function isPlacing(found: Found): boolean {
  const verb = found.part('verb')[0]?.lower ?? '';
  const rest = found.part('rest');
  const next = rest[0];
  if (!next) return true;
  if (/^(gone|done|finished|complete|completed|sorted|fixed|away|together|apart|home)$/.test(verb))
    return true;
  if (next.classes.includes('Q') || next.lower === 'a' || next.lower === 'an') return false;
  if (isOne(rest.slice(0, 3), UNSETTLED)) return false;
  if (/^(to|for|of|by|against|with)$/.test(next.lower)) return verb === 'in' && next.lower === 'for';
  // "in the alcove", "on there", "up and level", "off at last"; but not "in oak" or "on rubber feet".
  return /[TRCADO]/.test(next.classes) || /^(and|there|where|at|em|position|place|too)$/.test(next.lower);
}
const UNSETTLED =
  set(`order way offer hold list own love post mail shop metric stock progress mind mess state trouble danger
  two line square plumb true level centre center sale half-price monday tuesday wednesday thursday friday saturday
  sunday tonight tomorrow truck van lorry`);

const COAT = /\b(?:coats?|first|second|third|final|last|primer|undercoat|oil|paint|varnish|soak|wash)\//;

/** Ways of saying that work is finished. Ordered from the plainest to the loosest. */
export const DONE_RULES: readonly StatementRule[] = [
  report(
    '<thing> is <participle>',
    phrase(
      "^<lead>* (?<subject> <plain>{1,9}?) (?: <is> | (?: has | have | 's | 've ) been ) (?: <adverb> | back )* (?<verb> <done> ) (?<rest> <any>* )",
    ),
    (found) => {
      const [verb] = found.part('verb');
      const next = found.part('rest')[0]?.lower;
      if (!verb || NO_RESULT.has(verb.lower) || /[FZ]/.test(verb.classes)) return false;
      if (isOne(found.part('subject'), PERSONAL) || has(found.part('subject'), 'E')) return false;
      if (/^(set|cut|built|laid|run|rated|priced)$/.test(verb.lower) && /^(at|from|of)$/.test(next ?? ''))
        return false;
      return true;
    },
  ),
  report(
    '<thing> is bought',
    phrase(
      '^<lead>* (?<subject> <plain>{1,9}?) <is> (?: <adverb> )* (?: bought | booked | reserved | purchased )',
    ),
    (found) => !isOne(found.part('subject'), PERSONAL),
  ),
  report(
    '<thing> is <place>',
    phrase(
      '^<lead>* (?<subject> <plain>{1,9}?) (?: <is> | (?: has | have ) been ) (?: <adverb> | back | well )* (?<verb> <settled> ) (?<rest> <any>* )',
    ),
    (found) =>
      !isOne(found.part('subject'), PERSONAL) &&
      !has(found.part('subject'), 'J') &&
      !saidOfMedia(found) &&
      isPlacing(found),
  ),
  report(
    '<thing> is full',
    phrase(
      '^<lead>* (?<subject> <plain>{1,6}?) <is> (?: <adverb> )* (?: full | dry | level | straight | square ) (?: again | now | at )',
    ),
    (found) => !isOne(found.part('subject'), PERSONAL),
  ),
  report(
    'I have <participle> <thing>',
    phrase("^<lead>* (?: i | we ) (?: 've | have ) <adverb>* (?<verb> <done> ) (?<object> <any>+ )"),
    isWork,
  ),
  report(
    'I <past> <thing>',
    phrase(
      '^<lead>* (?: <day> )? (?: <lead> )* (?: i | we ) (?: <adverb> | went ahead and | managed to )* (?<verb> <did> ) (?<object> <any>+ )',
    ),
    isWork,
  ),
  report(
    '<past> <thing>',
    phrase('^<lead>* (?: <adverb> )* (?<verb> <did> ) (?<object> (?: <det> | <pronoun> ) <any>+ )'),
    (found, said) => {
      const [verb] = found.part('verb');
      // "cut the legs" may be an order to oneself: only a past time settles it.
      if (verb?.classes.includes('B') && !/ (?:this|yesterday|last|today)\//.test(said.code)) return false;
      return said.afterPause === false && isWork(found);
    },
  ),
  report(
    '<person> <past> <thing>',
    phrase(
      "^<lead>* <det>? <plain>{0,3}? (?<subject> <person> ) (?: 's | has | have | 've )? (?: came and | been and | came round and )? <adverb>* (?<verb> <did> | <done> ) (?<object> (?: <det> | <pronoun> ) <any>* )",
    ),
    (found) =>
      isWork(found) && !/^(came|told|reckoned|brought|dropped)$/.test(found.part('verb')[0]?.lower ?? ''),
  ),
  report(
    'got <thing> <participle>',
    phrase(
      "^<lead>* (?: (?: i | we ) (?: 've | have )? )? <adverb>* got (?<object> <any>{1,6}? ) (?<verb> <done> | <settled> | back | together | working | running ) (?<rest> <any>* )",
    ),
    (found) => {
      const [first] = found.part('object');
      if (!first || /^(to|a|an|that|no|my)$/.test(first.lower)) return false;
      return !isOne(found.part('object'), set('to')) && !has(found.part('object'), 'Y');
    },
  ),
  report(
    'got <person> on the phone',
    phrase("^<lead>* (?: i | we )? (?: 've | have )? got <any>{1,5} on the phone"),
    () => true,
  ),
  report(
    'let <person> know',
    phrase("^<lead>* (?: i | we ) (?: 've | have )? <adverb>* let <any>{1,4} know"),
    () => true,
  ),
  report(
    '<thing> went <place>',
    phrase(
      "^<lead>* (?<subject> <plain>{1,8}?) (?: (?: has | have | 've | 's ) <adverb>* gone | went | came ) (?: <adverb> | back )* (?<verb> in | on | up | down | off | out | back | through | together | fine | well | smoothly | perfectly ) (?<rest> <any>* )",
    ),
    (found) => {
      const next = found.part('rest')[0]?.lower ?? '';
      if (isOne(found.part('subject'), PERSONAL) || has(found.part('subject'), 'J') || saidOfMedia(found))
        return false;
      return !/^(to|at|of|my|price|loose)$/.test(next);
    },
  ),
  report(
    '<thing> has had its <coat>',
    phrase(
      "^<lead>* (?<subject> <plain>{1,8}?) (?: has | have | 've | 's ) <adverb>* (?<verb> had | got ) (?: its | their | her | his | a | the ) (?<rest> <any>+ )",
    ),
    (found, said) => {
      if (isOne(found.part('subject'), PERSONAL)) return false;
      return found.part('verb')[0]?.lower === 'had' || (COAT.test(said.code) && !/ own\//.test(said.code));
    },
  ),
  report(
    '<thing> held <pressure>',
    phrase('^<lead>* (?<subject> <plain>{0,6}?) <adverb>* (?: held | passed ) (?<rest> <any>+ )'),
    (found, said) =>
      !isOne(found.part('subject'), PERSONAL) &&
      / (?:psi|bar|pressure|test|tests|inspection|air|water|vacuum|overnight)\//.test(said.code),
  ),
  report(
    'could finish <thing>',
    phrase('(?: i | we ) (?: could | managed to | was able to | were able to ) <adverb>* finish'),
    () => true,
  ),
  report(
    "that's <thing> <participle>",
    phrase("^<lead>* that 's <det> (?<object> <any>{1,5}? ) (?<verb> <done> | <settled> )$"),
    (found) => {
      const [verb] = found.part('verb');
      return (
        !!verb && !NO_RESULT.has(verb.lower) && !verb.classes.includes('F') && !verb.classes.includes('Z')
      );
    },
  ),
  report(
    '<thing> let go',
    phrase('^<lead>* (?<subject> <plain>{1,6}?) <adverb>* (?: let go | gave way | came free | came loose )'),
    (found) => !isOne(found.part('subject'), PERSONAL) && !/^(way)$/.test(found.words.at(-1)?.lower ?? ''),
  ),
];

const BARE_SUMS = set('math maths sums numbers arithmetic that it this calculation calculations dry-run');
const TAKEN = / (?:off|out|down|up|apart|away|back)\//;

/** Whether a verb said of oneself, with its object, is work on a thing. */
function isWork(found: Found): boolean {
  const [verb] = found.part('verb');
  const object = found.part('object');
  if (!verb || has(object.slice(0, 4), 'Y') || verb.classes.includes('F')) return false;
  const rest = object.map((word) => ` ${word.lower}/`).join('');
  const first = object[0]?.lower ?? '';
  switch (verb.lower) {
    case 'did':
    case 'done':
      return !isOne(object.slice(0, 3), BARE_SUMS);
    case 'took':
    case 'taken':
      return TAKEN.test(rest) && !/ from\//.test(rest);
    case 'put':
      return (
        / (?:in|on|up|down|back|together|through|over|under|into)\//.test(rest) &&
        first !== 'it' &&
        !/^\d/.test(first)
      );
    case 'made':
      return (
        !/^(it|that|sure|do|mistake|mess)$/.test(first) &&
        !/ (?:mistake|mess|call|decision|promise|sense)\//.test(rest)
      );
    case 'let':
      return / know\//.test(rest);
    case 'ran':
    case 'run':
      return !/^(it|into|out|past|over)$/.test(first);
    case 'called':
      return first !== 'it' && first !== 'that';
    case 'worked':
    case 'figured':
      return / out\//.test(rest) || first === 'it';
    case 'set':
      return !/ (?:at|to)\/ (?:\d|one|two|three|four|five|six|seven|eight|nine|ten)/.test(rest);
    case 'dropped':
      return / in\/| back\//.test(rest) && first !== 'a';
    default:
      return !NO_WORK.has(verb.lower);
  }
}
