import { isTradeNoun } from '../lexicon/trade-nouns.ts';
import { wordSet } from '../word-table.ts';
import { grammarOf } from './clause-grammar.ts';
import {
  has,
  isLately,
  isMishap,
  isOne,
  isWorkOn,
  NO_ERRAND,
  NO_RESULT,
  NO_WORK,
  PERSONAL,
  silent,
} from './deed-words.ts';
import { goesOn, isSameBreath } from './done-by-grammar.ts';
import {
  type Draft,
  draft,
  firstWord,
  isReason,
  isSubordinate,
  neighbour,
  phraseRule,
  type Scene,
  type StatementRule,
} from './draft.ts';
import { type Found, find, matches, phrase } from './phrase.ts';
import type { Said, Word } from './words.ts';

const isWork = (found: Found) => isWorkOn(found.part('verb')[0], found.part('object'));

/** Parts of the speaker, the weather: their states are no work. */
const NO_PIECES =
  wordSet(`knees back hands hand fingers feet arms eyes head hair wrist wrists shoulder shoulders voice battery-life rain sun wind snow
  coffee tea mosquitoes midges pigeons frost tide stars moon clouds weather forecast bugs stars birds tide kettle heating telly music dog radio`);
/** "The rain's stopped", "the shop was shut", "the ticket's expired": what comes to be so by itself. */
const isNobodysWork = (found: Found) => {
  const last = found.part('subject').at(-1)?.lower ?? '';
  const verb = found.part('verb')[0]?.lower ?? '';
  if (verb === 'expired' || /^(?:rain|wind|snow|weather|frost|tide|sun|radio|coffee|tea)$/.test(last))
    return true;
  return (
    /^(?:shut|closed)$/.test(verb) &&
    /^(?:shop|yard|merchants?|chandlery|office|mill|road|bank|store|tip)$/.test(last)
  );
};
/** "I'm done with the wiring" is work; with words such as "people" or "that" it is a mood. */
const isRidOf = (found: Found) => {
  const thing = found.words.slice(-2).map(({ lower }) => lower);
  return !/^(?:people|job|day|boat|forum|internet|comments|talking|that|it|you|this|winter|weather)$/.test(
    thing.at(-1) ?? '',
  );
};

/** "My knees are finished": the speaker wears out, and nothing is done. A boat's knees and a chair's back are work. */
const BODY = /^(?:knees?|hands?|fingers?|feet|foot|arms?|eyes?|wrists?|shoulders?|back|head|voice)$/;
const saidOfBody = (found: Found) => {
  const subject = found.part('subject').map((word) => word.lower);
  return BODY.test(subject.at(-1) ?? '') && subject.includes('my');
};
const saidOfMedia = (found: Found) => has(found.part('subject'), 'E');
const saidOfPerson = (found: Found) =>
  isOne(found.part('subject'), PERSONAL) || has(found.part('subject').slice(-1), 'J');
const negated = (found: Found) => {
  const tail = Math.max(found.part('rest').length, found.part('object').length);
  const head = found.words.slice(0, found.words.length - tail);
  // "half done" is not done; "half the roof is on" tells of that half.
  const subject = found.part('subject');
  return (
    has(head, 'N') ||
    has(
      head.filter((word) => !subject.includes(word)),
      'K',
    )
  );
};

type Guard = (found: Found, said: Said, scene: Scene) => boolean | Partial<Omit<Draft, 'kind' | 'rule'>>;
const report = (name: string, source: string, guard: Guard): StatementRule =>
  phraseRule(
    'done',
    name,
    phrase(source),
    (found, said, scene) => !silent(said, scene) && !negated(found) && guard(found, said, scene),
  );

const CARRIERS = wordSet('van truck lorry courier sun rain moon dog cat post tide');
/** "On the twentieth", "on the 3rd". */
const isDayOfMonth = (rest: readonly Word[]) =>
  rest[0]?.lower === 'the' &&
  /^(?:first|second|third|\d+(?:st|nd|rd|th)|[a-z-]*(?:fourth|fifth|sixth|seventh|eighth|ninth|tenth|eleventh|twelfth|teenth|tieth|-first|-second|-third))$/.test(
    rest[1]?.lower ?? '',
  ) &&
  (rest.length === 2 || /^(?:of|at|in)$/.test(rest[2]?.lower ?? ''));

/** "That's finished to finished": between which faces a size was taken. */
function isBetweenFaces(found: Found): boolean {
  const [to, face] = found.part('rest');
  return to?.lower === 'to' && face?.lower === found.part('verb')[0]?.lower;
}

/** Words after "is in", "is on", "is off" that make it a place or a property. */
function isPlacing(found: Found): boolean {
  const verb = found.part('verb')[0]?.lower ?? '';
  const rest = found.part('rest');
  const next = rest[0];
  if (!next) return true;
  if (isBetweenFaces(found)) return false;
  // "Gone cold", "gone flat", "done for": what became of a thing by itself.
  if (
    verb === 'gone' &&
    /^(?:cold|hard|soft|off|flat|green|rusty|dead|wrong|missing|mad|quiet|dark|solid|mouldy|brittle|up|down|again)$/.test(
      next.lower,
    )
  )
    return false;
  if (verb === 'done' && next.lower === 'for') return false;
  if (/^(gone|done|finished|complete|completed|sorted|fixed|away|together|apart|home)$/.test(verb))
    return true;
  // "Up to the sills", "down to bare metal": how far the work has come.
  if (/^(?:up|down)$/.test(verb) && next.lower === 'to' && rest[1])
    return /^(?:the|my|its|bare|clean|sound|ground)$/.test(rest[1].lower) && !isOne(rest, NO_MEASURE);
  // "On four mil", "in two halves" tell how a thing is; after "down" or "through" a size may follow without a comma.
  if (
    (has([next], 'Q') && /^(?:on|in|off|out|up)$/.test(verb)) ||
    isDayOfMonth(rest) ||
    next.lower === 'a' ||
    next.lower === 'an'
  )
    return false;
  if (isOne(rest.slice(0, 3), UNSETTLED)) return false;
  // "The galley is on the driver's side", "on the left": where it will always be.
  if (verb === 'on' && next.lower === 'the' && isSide(rest)) return false;
  if (/^(to|for|of|by|against|with|from)$/.test(next.lower))
    return (
      (verb === 'in' && next.lower !== 'of') ||
      (next.lower === 'of' &&
        verb === 'out' &&
        rest[1]?.lower === 'the' &&
        !/^(?:question|way|window|ordinary|woods|blue)$/.test(rest[2]?.lower ?? ''))
    );
  // "in the alcove", "on there", "up and level", "off at last"; but not "in oak" or "on rubber feet".
  return (
    /[TRCADOQ]/.test(next.classes) ||
    /^(and|there|here|where|at|em|position|place|too|bar|except|apart|so)$/.test(next.lower)
  );
}
/** "The van is in the yard", "the bench is in the shed": where it is kept. What was brought there is told with "now" or "back". */
function isKept(found: Found): boolean {
  const rest = found.part('rest').map(({ lower }) => lower);
  return (
    /^(?:in|on|at)$/.test(found.part('verb')[0]?.lower ?? '') &&
    /^(?:the|my|a|our|his)$/.test(rest[0] ?? '') &&
    /^(?:shed|yard|barn|garage|workshop|drive|driveway|street|road|car|field|marina|boatyard|lockup|lock-up|carport)$/.test(
      rest[1] ?? '',
    ) &&
    rest.length === 2 &&
    !found.words.some(({ lower }) => /^(?:back|now|finally|safely|already)$/.test(lower))
  );
}
const isSide = (rest: readonly Word[]) =>
  rest.slice(1, 5).some(({ lower }) => /^(?:side|left|right|outside|inside)$/.test(lower)) &&
  !rest.some(({ lower }) => /^(?:now|finally|already|again|too|at last)$/.test(lower));
const NO_MEASURE = wordSet(
  'task job challenge minute point limit neck eyeballs luck weather council driver customer',
);
const UNSETTLED =
  wordSet(`order way offer hold list own love post mail shop metric stock progress mind mess state trouble
  danger two line square plumb true level centre center sale half-price truck van lorry backorder fire cards
  monday tuesday wednesday thursday friday saturday sunday tonight tomorrow tail estimation`);

const COAT =
  / (?:coats?|first|second|third|final|last|primer|undercoat|oil|paint|varnish|soak|wash|sealer|sealant|grease|service)\//;
const THING = '(?<subject> <plain>{1,9}? )';
const BE = "(?: <is> | (?: has | have | 's | 've | had ) (?: all | now | both )? been | <is> being )";
const ADVERBS =
  '(?: <adverb> | back | well | up | dead | at last | good and | pressure | stop | pilot | wire | rough | cross | edge | grit | bead | water | steam | vacuum | flood | spot | shot | sand | soda | powder | hot | tack | wet | machine | leak | load | bench | spray )*';

/** Ways of saying that work is finished. Ordered from the plainest to the loosest. */
export const DONE_RULES: readonly StatementRule[] = [
  report(
    '<thing> is <participle>',
    `^<lead>* ${THING} ${BE} ${ADVERBS} (?<verb> <done> ) (?<rest> <any>* )`,
    (found) =>
      !isOne(found.part('subject'), PERSONAL) &&
      !saidOfBody(found) &&
      !saidOfMedia(found) &&
      !isNobodysWork(found) &&
      isResult(found) && { sure: mends(found) || has(found.part('verb'), 'F') },
  ),
  report(
    '<thing> got <participle>',
    `^<lead>* ${THING} (?: got | was | were ) ${ADVERBS} (?<verb> <done> ) (?<rest> <any>* )`,
    (found) => !saidOfPerson(found) && !saidOfMedia(found) && !isNobodysWork(found) && isResult(found),
  ),
  report(
    '<thing> is bought',
    `^<lead>* ${THING} <is> ${ADVERBS} (?: bought | booked | reserved | purchased | arranged | organised | organized | shipped | posted | sent )`,
    (found) => !isOne(found.part('subject'), PERSONAL),
  ),
  report(
    '<thing> is <place>',
    `^<lead>* ${THING} (?: <is> | (?: has | have ) been ) (?: <adverb> | back | well )* (?<verb> <settled> ) (?<rest> <any>* )`,
    (found) =>
      !saidOfPerson(found) &&
      !saidOfMedia(found) &&
      !isOne(found.part('subject').slice(-1), NO_PIECES) &&
      !(
        /^(?:on|off|out)$/.test(found.part('verb')[0]?.lower ?? '') &&
        / lights?\//.test(
          found
            .part('subject')
            .slice(-1)
            .map(({ lower }) => ` ${lower}/`)
            .join(''),
        )
      ) &&
      !isKept(found) &&
      isPlacing(found),
  ),
  report(
    '<thing> is there and <participle>',
    `^<lead>* ${THING} (?: <is> | (?: has | have ) been ) ${ADVERBS} (?: <prep> <det>? <plain>{1,3} | <doing> <plain>{0,3} | <settled> <plain>{0,4} ) and <adverb>* <plain>? (?<verb> <done> )`,
    (found) =>
      !saidOfPerson(found) &&
      !saidOfMedia(found) &&
      !NO_RESULT.has(found.part('verb')[0]?.lower ?? '') &&
      !/[FXZ]/.test(found.part('verb')[0]?.classes ?? ''),
  ),
  report(
    '<thing> is full',
    `^<lead>* ${THING} <is> (?: <adverb> | dead | back )* (?: full | level | straight | tight | watertight | weathertight | bare | clear ) (?: again | now | at last | too )* $`,
    (found) =>
      !saidOfPerson(found) && !/^(?:it|that|she|this|they)$/.test(found.part('subject')[0]?.lower ?? ''),
  ),
  report(
    '<thing> is in its place',
    `^<lead>* ${THING} (?: <is> | was | were ) ${ADVERBS} (?: in | on | under | over | at | behind ) (?: its | their | her | his ) (?<rest> <any>* )`,
    (found) => !saidOfPerson(found) && !isOne(found.part('rest'), wordSet('own way tail')),
  ),
  report(
    'I have <participle> <thing>',
    "^<lead>* <plain>{0,4}? (?: i | we ) (?: 've | have ) (?: <adverb> | since )* (?<verb> <done> ) (?<object> <any>+ )",
    (found) => isWork(found),
  ),
  report(
    'I have <thing> <participle>',
    "^<lead>* (?: i | we ) (?: 've | have | had ) (?: <adverb> | got )* (?<object> (?: <det> | <number> | <plain> ) <any>{0,5}? ) (?<verb> <done> | up | in | down | off | out | on ) (?<rest> <any>{0,4} )$",
    (found) => {
      const [first] = found.part('object');
      const [verb] = found.part('verb');
      if (!first || /^(to|no|a|an|been|had|just)$/.test(first.lower) || has(found.part('object'), 'Y'))
        return false;
      // "I've run out of twine": nothing was done.
      if (first.lower === 'run' && found.words.some(({ lower }) => lower === 'out')) return false;
      if (first.lower === 'it' && (found.part('object').length > 1 || !verb?.classes.includes('P')))
        return false;
      return !!verb && !NO_RESULT.has(verb.lower) && !/^(left|over)$/.test(verb.lower);
    },
  ),
  report(
    'I <past> <thing>',
    '^<lead>* (?: <day> <lead>* )? <plain>{0,3}? (?: i | we | (?: me and | i and ) <plain>{1,3} | <plain>{1,3} and (?: i | me ) ) (?: <adverb> | went ahead and | went and | went out and | been and | went up and | finally | <did> and | bit the bullet and | since | then )* (?<verb> <did> ) (?<object> <any>+ )',
    (found) => isWork(found),
  ),
  report(
    '<thing> I <past>',
    "^<lead>* (?<object> <det> <plain>{1,6}? ) (?: i | we ) (?: 've | have )? <adverb>* (?<verb> <did> ) (?: <day> | this <day> | this <plain> | <adverb> )* $",
    (found) => !has(found.part('object'), 'E') && isWork(found) && { plain: true },
  ),
  report(
    'I managed to <do> <thing>',
    "^<lead>* (?: (?: i | we ) (?: 've | have )? )? <adverb>* (?: (?: managed to | got round to | got around to | was able to | were able to ) (?<verb> <do> | get | find | go ) | (?: finished | spent <any>{1,5}? ) (?<doing> <doing> ) ) (?<object> <any>* )",
    (found) =>
      !/^(?:film|filming|wait|waiting|sit|sitting|look|looking|think|thinking|show)$/.test(
        (found.part('verb')[0] ?? found.part('doing')[0])?.lower ?? '',
      ),
  ),
  report(
    'spent <time> <doing>',
    '^<lead>* spent <any>{1,5}? (?<verb> <doing> ) (?<object> <any>+ )',
    (found) => !/^(?:filming|waiting|sitting|looking|thinking)$/.test(found.part('verb')[0]?.lower ?? ''),
  ),
  report(
    '<person> helped <do> <thing>',
    "^<lead>* (?<subject> <plain>{1,5}? ) (?: 's | has | have )? <adverb>* helped (?: me | us )? (?: to )? (?<verb> <do> | get | with ) (?<object> <any>+ )",
    () => true,
  ),
  report(
    'had <thing> <out>',
    "^<lead>* (?: i | we )? (?: 've | have )? had (?<object> (?: (?: the | both | all | my | every | that | those ) <plain>{1,4}? | it | them | her | all of it ) ) (?<verb> out | off | apart | in | up | down | <done> ) (?<rest> <any>* )",
    (found, said, scene) =>
      !has(found.part('object'), 'Y') &&
      (isLately(said, scene) ||
        found.part('rest').length === 0 ||
        /^(?:by|before|in)$/.test(found.part('rest')[0]?.lower ?? '')),
  ),
  report(
    '<past> and <past> <thing>',
    '^<lead>* (?<verb> <did> ) and <adverb>* <did> (?<object> (?: <det> | <pronoun> ) <any>* )',
    (found, said) => !said.afterPause && isWork(found),
  ),
  report(
    '<past> <thing>',
    '^<lead>* (?: <adverb> | <day> )* (?<verb> <did> | spoke | wrote | asked | found ) (?<object> (?: <det> | <pronoun> | <particle> | to | about | with | round | <number> ) <any>* )',
    (found, said, scene) => {
      const [verb] = found.part('verb');
      if (!verb || NO_ERRAND.has(verb.lower) || said.opener === 'which') return false;
      // "Bolted every two hundred", "plated, no arguments": how a thing is made.
      if (
        /^(?:every|each|no)$/.test(found.part('object')[0]?.lower ?? '') &&
        found
          .part('object')
          .slice(0, 2)
          .some(({ classes }) => /[QN]/.test(classes))
      )
        return false;
      if (said.opener && (!goesOn(said, scene) || isSameBreath(said, found.part('object'), scene)))
        return false;
      // "cut the legs" may be an order to oneself: only a past time settles it.
      if (verb.classes.includes('B') && !isLately(said, scene) && !/ already\//.test(said.code)) return false;
      if (
        /^(?:turned(?! up)|came|showed|arrived|landed|weighed|said|received|collected|picked|expected)$/.test(
          verb.lower,
        )
      )
        return false;
      return (
        !said.afterPause &&
        (NO_WORK.has(verb.lower)
          ? /^(found|ordered|checked)$/.test(verb.lower) && verb.lower === 'found'
          : isWork(found))
      );
    },
  ),
  report(
    '<person> <past> <thing>',
    "^<lead>* <det>? <plain>{0,3}? (?<subject> <person> ) (?: 's | has | have | 've )? (?: came and | been and | came round and | popped in and )? <adverb>* (?<verb> <did> | <done> ) (?<object> (?: <det> | <pronoun> ) <any>* )",
    (found) =>
      isWork(found) &&
      !/^(came|told|reckoned|brought|dropped|rang|called|emailed|marked|sent|texted|messaged|caught|wanted|offered)$/.test(
        found.part('verb')[0]?.lower ?? '',
      ),
  ),
  report(
    '<person> has been',
    "^<lead>* <det>? <plain>{0,3}? (?<subject> <person> ) (?: 's | has | have ) (?: <adverb> )* been (?: and gone | out | round | and done )? $",
    // Somebody who was to come: a visit alone is no work.
    (found, _, scene) =>
      scene.open.some(({ things }) => found.part('subject').some(({ lower }) => things.has(lower))),
  ),
  report(
    "I'm after <doing> <thing>",
    "^<lead>* (?: i | we ) (?: 'm | 're | am | are ) after (?<verb> <doing> ) (?<object> <any>+ )",
    (found) => !/^(?:putting|taking|having|looking|using)$/.test(found.part('verb')[0]?.lower ?? ''),
  ),
  report(
    'got <thing> <participle>',
    "^<lead>* (?: (?: i | we | me and <plain>{1,2} | <plain>{1,3} and (?: i | me ) ) (?: 've | have )? )? (?: <adverb> | finally )* got (?<object> <any>{1,6}? ) (?<verb> <done> | <settled> | back | together | working | running | fitted | under ) (?<rest> <any>* )",
    (found) => {
      const [first] = found.part('object');
      if (
        /^(?:bid|quote|price|call|letter|message|email|offer|bill|shock|look|laugh|idea|word)$/.test(
          found.part('object').slice(0, 2).at(-1)?.lower ?? '',
        )
      )
        return false;
      if (!first || /^(to|an|no|my|its|their|up|there|out|talked|stuck)$/.test(first.lower)) return false;
      return (
        !isOne(found.part('object'), wordSet('to own')) &&
        !has(found.part('object'), 'Y') &&
        // "Got the floor patched with sheet": only a particle may name a mere place.
        (isPlacing(found) ||
          (/P/.test(found.part('verb')[0]?.classes ?? '') &&
            !NO_RESULT.has(found.part('verb')[0]?.lower ?? '') &&
            !/^(?:by|to)$/.test(found.part('rest')[0]?.lower ?? '')))
      );
    },
  ),
  report(
    'got <person> on the phone',
    "^<lead>* (?: (?: i | we ) (?: 've | have )? )? <adverb>* got (?<object> (?: hold of )? (?: the | my | that ) <plain>{1,4}? ) (?: on the phone | on the blower | $ )",
    (found) =>
      (has(found.part('object').slice(-1), 'J') ||
        found.words.at(-1)?.lower === 'phone' ||
        found.part('object')[0]?.lower === 'hold') && { sure: true },
  ),
  report(
    'let <person> know',
    "^<lead>* (?: i | we ) (?: 've | have )? <adverb>* let <any>{1,4} know",
    () => true,
  ),
  report(
    '<thing> went <place>',
    `^<lead>* ${THING} (?: (?: has | have | 've | 's ) <adverb>* gone | went | came ) (?: <adverb> | back | off )* (?<verb> in | on | up | down | off | out | back | through | together | apart | fine | well | smoothly | perfectly | great | sweetly | lovely | over | under ) (?<rest> <any>* )`,
    (found, said) => {
      const next = found.part('rest')[0]?.lower ?? '';
      const verb = found.part('verb')[0]?.lower ?? '';
      if (saidOfPerson(found) || saidOfMedia(found)) return false;
      if (
        /^(it|that|this)$/.test(found.part('subject')[0]?.lower ?? '') &&
        /^(fine|well|great|off|in|down)$/.test(verb) &&
        next !== 'with'
      )
        return next === 'now';
      // "The rails came in from the mill": goods.
      if (next === 'from' && /^(?:in|back|over)$/.test(verb) && / came\//.test(said.code)) return false;
      if (next === 'at') return !/^(?:out|up|in|down)$/.test(verb) || has(found.part('rest').slice(-1), 'D');
      if (next === 'to' && has(found.part('rest').slice(1, 2), 'Q')) return false;
      if (next === 'with') return /^(?:off|out|up|away|in)$/.test(verb);
      if (has(found.part('rest').slice(0, 1), 'Q'))
        return !has(found.part('rest').slice(1, 3), 'U') && found.part('rest').length > 1 && verb !== 'up';
      return !/^(of|my|price|loose|by|a)$/.test(next);
    },
  ),
  report(
    '<thing> went off to <person>',
    `^<lead>* ${THING} (?: has gone | 's gone | went | have gone ) (?: back | off | out | over )* to (?<rest> <any>+ )`,
    (found, said) =>
      !saidOfPerson(found) &&
      !saidOfMedia(found) &&
      !has(found.part('rest').slice(0, 2), 'Q') &&
      !/ (?:metal|plan|hell|pot|waste)\//.test(said.code),
  ),
  report(
    '<thing> has had its <coat>',
    `^<lead>* ${THING} (?: has | have | 've | 's | got | had | took | drank ) <adverb>* (?<verb> had | got | has | have )? (?: its | their | her | his | a | the | two | three ) (?<rest> <any>+ )`,
    (found, said) => {
      if (saidOfPerson(found) || has(found.part('rest').slice(0, 1), 'f')) return false;
      const verb = found.part('verb')[0]?.lower;
      if (
        / (?:has|have|'s|'ve)\/\w* (?:now|all|finally|got)?/.test(said.code) &&
        / (?:its|their|her)\/\w* new\//.test(said.code)
      )
        return true;
      if (/ (?:own|wait|hour|hours|between)\//.test(said.code)) return false;
      // "The sternpost's got its bolts", "the well has its grate": a part that it was to have.
      const part = found.part('rest').map(({ lower }) => lower);
      if (
        / (?:its|their)\//.test(said.code) &&
        part.length <= 3 &&
        isTradeNoun(part.at(-1) ?? '') &&
        !has(found.part('rest'), 'Q')
      )
        return true;
      return (
        verb === 'had' ||
        COAT.test(said.code) ||
        /^(?:every|each|all|both)$/.test(found.part('subject')[0]?.lower ?? '')
      );
    },
  ),
  report(
    '<thing> held <pressure>',
    '^<lead>* (?<subject> <plain>{0,6}? ) <adverb>* (?: held | passed ) (?<rest> <any>+ )',
    (found, said) =>
      !saidOfPerson(found) &&
      / (?:psi|bar|millibar|mbar|kpa|pressure|test|tests|inspection|air|water|vacuum|overnight)\//.test(
        said.code,
      ),
  ),
  report(
    'could finish <thing>',
    '(?: i | we ) (?: could | managed to | was able to | were able to | got to ) <adverb>* finish',
    () => true,
  ),
  report(
    "that's <thing> <participle>",
    `^<lead>* (?: that | there ) (?: 's | is ) (?<object> (?: <det> | <number> | all | my | <plain> ) <any>{0,5}? ) (?<verb> <done> | <settled> ) (?<rest> <any>{0,3} )$`,
    (found) => {
      const [verb] = found.part('verb');
      const [first] = found.part('object');
      // "There's the lights wired", but "there's a lean on the gable".
      if (
        found.words.some(({ lower }) => lower === 'there') &&
        (first?.lower !== 'the' || !verb?.classes.includes('P'))
      )
        return false;
      if (
        !verb ||
        NO_RESULT.has(verb.lower) ||
        /[FZ]/.test(verb.classes) ||
        isOne(found.part('rest'), wordSet('for top record')) ||
        (first?.lower === 'me' && !/^(?:done|finished|through)$/.test(verb.lower)) ||
        has(found.part('rest'), 'D')
      )
        return false;
      return !!first && (!/[BP]/.test(first.classes) || has([first], 'T'));
    },
  ),
  report(
    '<thing> let go',
    `^<lead>* ${THING} <adverb>* (?: let go | came free | came away | came apart | came good )`,
    (found) => !saidOfPerson(found),
  ),
  report(
    'done with <thing>',
    "(?: i | we ) (?: 'm | 're | am | are | 've | have ) <adverb>* (?: done with | finished with | through with | finished ) <any>+",
    (found, said) => !/ (?:by|be|until|till|before)\//.test(said.code) && isRidOf(found) && { plain: true },
  ),
  report(
    '<thing> is behind me',
    `^<lead>* ${THING} <is> <adverb>* (?: behind (?: me | us ) | out of the way | ticked off | crossed off | off the list | in the bag | in the can )`,
    (found) => {
      if (saidOfPerson(found) || saidOfMedia(found)) return false;
      const isNamed = !/^(?:that|it|this|what|which|all)$/.test(found.part('subject').at(-1)?.lower ?? '');
      return isNamed ? { plain: true } : true;
    },
  ),
  report(
    'there is <thing> <participle>',
    "^<lead>* there (?: 's | are | is | 're ) (?: now | already | a | an | the )* (?<object> <plain>{1,5}? ) (?<verb> <done> | up | in | on | down ) (?<rest> <any>{0,3} )$",
    (found) => {
      const [verb] = found.part('verb');
      return (
        !!verb &&
        !NO_RESULT.has(verb.lower) &&
        !/[FX]/.test(verb.classes) &&
        has(found.part('object').slice(0, 2), 'Q')
      );
    },
  ),
  {
    // "The stove came Tuesday and is now bolted down": the same thing goes on.
    name: '... and is <participle>',
    read: (said, scene) => {
      if (!/^(?:and|then|and then)$/.test(said.opener) || silent(said, scene) || !neighbour(scene, said, -1))
        return undefined;
      const found = find(GOES_ON_THING, said);
      const verb = found?.part('verb')[0];
      if (!found || !verb || NO_RESULT.has(verb.lower) || /[FZ]/.test(verb.classes) || has(found.words, 'N'))
        return undefined;
      return draft('done', said, {}, firstWord(said));
    },
  },
  {
    // "I stripped the seats out, bolted the rail down and painted the floor": the same speaker goes on.
    name: '..., <past> <thing>',
    read: (said, scene) => {
      const before = neighbour(scene, said, -1);
      if (!before || silent(said, scene) || !/^(?:and|then|and then|but)?$/.test(said.opener))
        return undefined;
      const found = find(GOES_ON, said);
      if (!found || !isWork(found) || !tells(before, scene)) return undefined;
      if (isSameBreath(said, found.part('object'), scene)) return undefined;
      return draft('done', said, {}, firstWord(said));
    },
  },
  report(
    '<thing> came up <lovely>',
    `^<lead>* ${THING} <adverb>* (?: cleaned | came | scrubbed | polished | planed | glued | turned | went | finished | sanded | buffed | painted ) (?: up | out | in | on | together | down )? <adverb>* (?: lovely | nice | nicely | a treat | beautifully | beautiful | great | sweet | like new | a dream )`,
    (found) =>
      !saidOfPerson(found) &&
      found.part('subject').length > 0 &&
      !/^(?:it|that|this|all)$/.test(found.part('subject')[0]?.lower ?? ''),
  ),
  report(
    'got <thing> to <run>',
    "^<lead>* (?: (?: i | we ) (?: 've | have )? )? (?: <adverb> | finally )* got (?<object> (?: the | it | her | them | both | all | my | that ) <any>{0,4}? ) to (?: work | run | start | fit | seal | turn | hold | line up | sit | fire | close | shut | open | stop | move | go | prime | latch | bite | lie | behave | budge | shift | drain | flow | light | spin | slide | settle | seat | come )",
    // "I've got the pump to prime" is still to do.
    (_, said) => / (?:'ve|have)\//.test(said.code) || { plain: true },
  ),
  report(
    'I did <manage> <thing>',
    '^<lead>* (?: i | we ) did <adverb>* (?: get | manage to | finish | fit | sort | clean | cut | paint ) (?<object> <any>+ )',
    (found) => !has(found.words.slice(0, 5), 'N'),
  ),
  report(
    '<off> came <thing>',
    '^<lead>* (?<verb> off | out | in | up | down | on | back | over | away ) (?: came | went | goes | go ) (?<subject> (?: <det> | all ) <any>+ )',
    (found) => !has(found.part('subject'), 'J') && !isOne(found.part('subject'), CARRIERS) && { sure: true },
  ),
  report(
    '<off> with <thing>',
    '^<lead>* (?: off | out | in | up | down | on ) with (?: the | that | those ) <any>+',
    () => true,
  ),
  report(
    '<somebody> <past> <thing>',
    "^<lead>* (?<subject> <plain>{1,3}? ) (?: 's | has | have )? <adverb>* (?<verb> <did> ) (?<object> (?: the | both | all | my | our | those | that | them | it | every | each ) <any>* )",
    (found) => {
      const [verb] = found.part('verb');
      if (!verb || verb.classes.includes('B') || verb.classes.includes('X') || !isWork(found)) return false;
      if (
        /^(?:it|that|they|this|these|those|which|who|he|she|you|what|cat|dog|gull|mouse|mice|bees|hens|birds|bird|rat|rats|fox|cow|cows|sheep|horse|pony|engineer|inspector|spec|book|somebody|someone)$/.test(
          found.part('subject').at(-1)?.lower ?? '',
        )
      )
        return false;
      return (
        !/^(?:cleared|covered|filled|marked|showed|caught|fouled|touched|passed|saved|brought|supported|sent|dropped|offered)$/.test(
          verb.lower,
        ) && !has(found.part('subject'), 'E')
      );
    },
  ),
  report(
    'done <doing>',
    '^<lead>* (?: <adverb> )* (?: done | finished | sorted | completed ) (?: with )? (?<object> (?: <det> | <doing> | up | off | all ) <any>* )',
    (_, said) => !said.afterPause,
  ),
  report(
    'we now have <thing>',
    "^<lead>* (?: i | we ) (?: (?: now | finally ) (?: have | 've got | got ) | (?: 've | have ) (?: now | finally ) got ) (?<object> <any>+ )",
    (found) =>
      !/^(?:to)$/.test(found.part('object')[0]?.lower ?? '') && !has(found.part('object').slice(0, 3), 'f'),
  ),
  report(
    'gave <thing> a <coat>',
    "^<lead>* (?: (?: i | we ) (?: 've | have )? )? <adverb>* (?: gave | given ) (?<object> (?: the | it | them | that | those | my | everything | both | all ) <any>{0,4}? ) (?: a | an | its | another | one | two | their | some ) (?<rest> <any>+ )",
    (found, said) =>
      / (?:coats?|wipe|sand|wash|clean|scrub|rub|polish|seal|oiling|grease|service|skim|lick|second|third|first|brush|going-over|once-over|undercoat|primer|flush)\//.test(
        said.code,
      ) && !has(found.words, 'E'),
  ),
  report(
    '<engine> fired up',
    `^<lead>* ${THING} (?: fired up | started | starts | runs | run | ran | fired | lit | kicked in | came alive | powered up | sparked up | works | work | worked | (?: turns | turn | shuts | shut | closes | opens | drains | drain | charges | latches | swings | swing | slides | slide | seals | holds ) (?= again ) ) (?: <adverb> | all )* (?: again | first (?: go | time | turn | pull | kick ) | like a (?: dream | charm | sewing machine | treat ) | a treat | perfectly | beautifully | sweetly | at last | now )`,
    (found) => !saidOfPerson(found),
  ),
  report(
    'went over <thing> with <tool>',
    "^<lead>* (?: i | we ) (?: 've | have )? <adverb>* (?: went | gone | been ) (?: over | round | around | along | through ) (?: the | it | all | every | them ) <any>{0,5}? with <any>+",
    (found) => !has(found.words, 'Y'),
  ),
  report(
    'she has had <thing> <participle>',
    "^<lead>* <plain>{1,6}? (?: has | have | 's | 've ) <adverb>* had (?: her | its | their | his | the ) <any>{1,4}? (?<verb> <done> )",
    (found) => !NO_RESULT.has(found.part('verb')[0]?.lower ?? ''),
  ),
  report(
    'I ended up <doing> <thing>',
    "^<lead>* (?: i | we ) (?: 've | have )? <adverb>* (?: ended up | finished up | wound up | spent <any>{1,5}? ) (?<verb> <doing> ) (?<object> <any>+ )",
    () => true,
  ),
  report(
    '<time> was spent <doing>',
    '(?: was | were ) spent (?<verb> <doing> ) (?<object> <any>+ )',
    () => true,
  ),
  report(
    'which I did',
    '^ (?: which | and | so ) (?: so )? (?: i | we ) (?: did | have done ) $',
    (_found, said) => said.opener.includes('which'),
  ),
  report(
    '<thing> stands <where it should>',
    `^<lead>* ${THING} (?: is | 's | are | 're ) (?: <adverb> )* (?: sitting | standing | hanging | running | humming | purring | ticking over | breathing | floating ) (?: on | in | under | up | now | nicely | sweet | like ) (?<rest> <any>* )`,
    (found) =>
      !saidOfPerson(found) &&
      / (?:own|place|now|nicely|sweet|feet|wheels|where)\//.test(
        found.words.map((word) => ` ${word.lower}/`).join(''),
      ),
  ),
  report(
    '<past> it <level>',
    '^<lead>* (?: <adverb> )* (?<verb> <did> ) (?<object> (?: it | them | that | those ) (?: level | flat | square | plumb | flush | straight | smooth | back | down | up | in | out | off | clean | to <any>+ ) <any>{0,4} )$',
    (found) => !/^(?:weighed|measured|turned)$/.test(found.part('verb')[0]?.lower ?? ''),
  ),
  {
    // "Windows in, all six of them": a headline without a verb.
    name: '<thing> <in>',
    read: (said, scene) => {
      if (neighbour(scene, said, -1) || silent(said, scene) || said.opener) return undefined;
      const found = find(HEADLINE, said);
      const verb = found?.part('verb')[0];
      if (
        !found ||
        !verb ||
        NO_RESULT.has(verb.lower) ||
        /[FZB]/.test(verb.classes) ||
        found.words
          .slice(0, -1)
          .some((word) => word.classes === 'b' || /^(?:ran|went|came|left|turned)$/.test(word.lower)) ||
        /^(?:wrote|next|come|all|right|way|back|on|hang|well|so|part|half|over|straight)$/.test(
          said.words[0]?.lower ?? '',
        )
      )
        return undefined;
      return draft('done', said, {}, firstWord(said));
    },
  },
  {
    // "Seat rails, ground off", "brackets, all bent in": the thing first, what was done to it after a pause.
    name: '<thing>, <participle>',
    read: (said, scene) => {
      const before = neighbour(scene, said, -1);
      if (!before || said.opener || !said.afterPause || silent(said, scene) || before.words.length > 6)
        return undefined;
      if (
        before.words.some((word) => /[SHMVN]/.test(word.classes)) ||
        grammarOf(before)?.form !== 'verbless' ||
        before.words.every((word) => /L/.test(word.classes)) ||
        neighbour(scene, before, -1)?.words.some((word) => !/[L]/.test(word.classes))
      )
        return undefined;
      const found = find(AFTER_TOPIC, said);
      const verb = found?.part('verb')[0];
      if (!found || !verb || verb.classes.includes('Z') || isMishap(verb, found.part('rest')))
        return undefined;
      // "Slates, counted": of a thing named before its pause these are results.
      const isResultHere = /^(?:counted|made)$/.test(verb.lower) && found.part('rest').length === 0;
      if (NO_RESULT.has(verb.lower) && !verb.classes.includes('F') && !isResultHere) return undefined;
      if (/^(?:give|take|more|plus|no)$/.test(before.words[0]?.lower ?? '') || has(before.words, 'E'))
        return undefined;
      return {
        kind: 'done',
        from: before.index,
        to: said.index,
        start: before.words[0]?.start ?? before.start,
        end: said.end,
      };
    },
  },
];

const GOES_ON_THING = phrase(
  '^ (?: is | are | has been | have been | went ) (?: <adverb> | back )* (?<verb> <done> | in | on | up | down | off | out | together ) ',
);
const GOES_ON = phrase('^<lead>* (?: <adverb> | then )* (?<verb> <did> | <done> ) (?<object> <any>+ )$');
/** "The leak's cured", "the crack is welded up": a fault that was put right is no fault any more. */
const mends = (found: Found) =>
  has(found.part('subject').slice(-3), 'f') &&
  /^(?:cured|fixed|sorted|mended|stopped|plugged|sealed|repaired|patched|filled|welded|glued|soldered|ground|cut|sanded|straightened|pulled|knocked|dealt|found|closed|bunged|caulked|taken|planed|faired|treated)$/.test(
    found.part('verb')[0]?.lower ?? '',
  );

const TELLS = phrase(
  "^<lead>* (?: <day> <lead>* )? <plain>{0,5}? (?: i | we ) (?: 've | have )? (?: <adverb> )* (?: <did> | <done> ) ",
);
const TELLS_BARE = phrase(
  '^<lead>* (?: <adverb> | then )* (?: <did> | got ) (?: <det> | <pronoun> | <particle> )',
);

/** Whether the clause, or one before it in the sentence, tells of the speaker's own work. */
function tells(said: Said, scene: Scene): boolean {
  let clause: Said | undefined = said;
  for (let k = 0; clause && k < 4; k++) {
    if (isSubordinate(clause) || isReason(clause)) return false;
    if (matches(TELLS, clause) || (k === 0 && matches(TELLS_BARE, clause))) return true;
    if (clause.words.some((word) => /[SHM]/.test(word.classes))) return false;
    clause = neighbour(scene, clause, -1);
  }
  return false;
}

const HEADLINE = phrase(
  '^ (?! <prep> | <pronoun> ) <plain>{1,4}? (?<verb> in | on | up | off | out | done | finished | sorted ) (?: at last | now | finally | then )* $',
);
const AFTER_TOPIC = phrase(
  '^ (?: <adverb> | both )* (?<verb> <done> | gone | done | sorted | finished | off | out | in | up | down | on | back | counted | made | through | together ) (?<rest> <any>{0,4} )$',
);

/** "... and hung": a second participle that is work. */
const isJoined = (rest: readonly Word[]) =>
  rest[0]?.lower === 'and' &&
  rest
    .slice(1, 3)
    .some((word) => word.classes.includes('P') && !/[FX]/.test(word.classes) && !NO_RESULT.has(word.lower));

/** Whether a participle tells of finished work, by what it is and by what follows. */
function isResult(found: Found): boolean {
  const [verb] = found.part('verb');
  const next = found.part('rest')[0]?.lower ?? '';
  const gone = /^(?:out|up|off|down|away|apart)$/.test(next);
  if (isBetweenFaces(found)) return false;
  if (!verb || verb.classes.includes('Z')) return false;
  const also = isJoined(found.part('rest'));
  // "is made", "stuck down", "bent and hung": what alone is a state or a fault is work with these beside it.
  if (
    also ||
    (verb.lower === 'made' && (next === '' || /^(?:up|already|now|again|too|for|from|out|to)$/.test(next)))
  )
    return true;
  if (verb.lower === 'stuck' && /^(?:together|down|on|back|in)$/.test(next)) return true;
  if (verb.lower === 'dropped' && !/^(?:in|back|into|off|down)$/.test(next)) return false;
  // "is bored 22": a size, and not a deed.
  const cut = /^(?:bored|cut|sawn|milled|turned|planed|machined|made|built)$/.test(verb.lower);
  if (cut && has(found.part('rest').slice(0, 1), 'Q') && !/^(?:one|two|three|four|twice)$/.test(next))
    return false;
  if (NO_RESULT.has(verb.lower)) return false;
  // "ripped" is a fault, "ripped up" is work.
  if (verb.classes.includes('F') && !gone) return false;
  if (/^(?:made|built|framed|pitched|spaced|sized|carved|lapped|cut|laid|run|set)$/.test(verb.lower)) {
    // "pitched at forty-seven degrees", "carved in stone": how a thing is, not what was done.
    if (/^(?:at|of|by|from|up)$/.test(next) || (verb.lower === 'carved' && next === 'in')) return false;
    if (verb.lower === 'lapped') return next === '';
  }
  return true;
}
