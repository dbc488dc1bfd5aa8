/**
 * Finished work told in passing: "up it went", "the hump's no more", "the uprights are down to 150", "that's the skim
 * coat off the list", "I'm done with the wiring".
 */
import { has, isOne, silent } from './deed-words.ts';
import { type Draft, phraseRule, type Scene, type StatementRule } from './draft.ts';
import { type Found, phrase } from './phrase.ts';
import type { Said } from './words.ts';

type Guard = (found: Found, said: Said, scene: Scene) => boolean | Partial<Omit<Draft, 'kind' | 'rule'>>;
const deed = (name: string, pattern: string, guard: Guard = () => true): StatementRule =>
  phraseRule(
    'done',
    name,
    phrase(pattern),
    (found, said, scene) => !silent(said, scene) && guard(found, said, scene),
  );
/** Said in words that mean nothing else, and so not weighed. */
const plainly = (name: string, pattern: string, guard: (found: Found, said: Said) => boolean = () => true) =>
  deed(name, pattern, (found, said) => guard(found, said) && { plain: true });

const IS = "(?: 's | is | are | 're | was | were )";
const says = (said: Said, pattern: RegExp) => pattern.test(said.code);

/** What goes down by being used up, cooling or drying, and by nobody's work. */
const READINGS = new Set(
  'temperature moisture humidity pressure battery batteries voltage price level reading stock fuel gauge bill list time speed wind rain heat it that we i they weight total budget count cost runout run-out play backlash flow level'.split(
    ' ',
  ),
);

/** "The ribs are down to seventeen": a small number with nothing behind it counts or reads, and is hardly a size. */
const isBareCount = (found: Found) =>
  found.part('rest').length === 0 &&
  /^(?:\d|1\d|2[0-4]|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|\w+teen|twenty)$/.test(
    found.part('size')[0]?.lower ?? '',
  );

export const PASSING_DEED_RULES: readonly StatementRule[] = [
  plainly(
    '<up> it went',
    '^<lead>* (?<verb> in | up | on | down | over | back | together | off | out ) (?: it | they | she | he | we ) (?: went | came | slid | dropped | popped | all went ) (?<rest> <any>* )',
    // "Off she went": somebody left.
    (found, said) =>
      !says(said, / (?:wrong|bang|pop|pear)\//) &&
      !(
        /^(?:off|back|out|in)$/.test(found.part('verb')[0]?.lower ?? '') &&
        says(said, / (?:she|he|we|they)\/\w* went\//)
      ),
  ),
  plainly(
    '<thing> is down to <size>',
    `^<lead>* (?<subject> (?: <det> | both | all <any>? )? <plain>{1,5}? ) ${IS} (?: <adverb> | all | now )* down to (?<size> <number> ) (?<rest> <any>{0,5} ) $`,
    (found, said) =>
      !has(found.words, 'N') &&
      !isOne(found.part('subject'), READINGS) &&
      !isBareCount(found) &&
      !says(
        said,
        / (?:per|percent|degrees|volts|amps|bar|psi|quid|pounds|dollars|boards|left|litres|days|weeks)\//,
      ),
  ),
  plainly(
    '<fault> is no more',
    `^<lead>* (?: the | that | my | our )+ (?<subject> <plain>{1,4}? ) ${IS} (?: <adverb> | now )* (?: no more | history | a thing of the past | behind me | behind us | off the list | off my list | crossed off | ticked off ) (?<rest> <any>{0,3} ) $`,
    (found) =>
      !/^(?:worst|trouble|fun|days|weekend|week|winter|summer)$/.test(
        found.part('subject').at(-1)?.lower ?? '',
      ),
  ),
  plainly(
    "that's <thing> off the list",
    "^<lead>* (?: that | there ) (?: 's | is ) (?<subject> (?: the | my | both | all )+ <plain>{1,5}? ) (?: off the list | off my list | ticked off | crossed off | put to bed | out of the way | behind me | behind us )",
    (found) => !has(found.words, 'N'),
  ),
  deed(
    'no more <leak>',
    '^<lead>* no more (?<subject> (?: leak | leaks | drip | drips | dripping | weep | weeping | rattle | rattling | squeak | squeaking | wobble | play | knock | knocking | draught | draughts ) ) (?: (?: at | from | in | under | on | by | round ) <any>{1,4} )? $',
    // "No" is of the matter here, and no lead-in.
    (_, said) => ({ plain: true, start: said.start }),
  ),
  plainly(
    'we are <weathertight>',
    "^<lead>* (?: we | she ) (?: 's | 're | are | is ) (?: <adverb> | now )* (?: weathertight | watertight | in the dry | roofed | closed in | boarded out | plumbed in | wired | afloat )",
  ),
  deed(
    '<test> held',
    '^<lead>* (?<subject> (?: <det> )? <plain>{0,3}? (?: test | vacuum | pressure ) ) (?: held | passed | came good ) (?<rest> <any>* )',
    (found) => !has(found.words, 'N'),
  ),
  deed(
    'it passed',
    '^<lead>* (?: it | she | they | we ) (?: all )? passed (?: first time | first go | with <any>+ | the <any>{0,3} (?: test | inspection | check ) | inspection ) ?',
    (found) => found.words.length > 2,
  ),
  deed(
    'paid <the deposit>',
    "^<lead>* (?: (?: i | we ) (?: 've | have )? )? <adverb>* paid (?<object> (?: the | my | a | his | her | their | for the | up on the ) (?: <plain> )? (?: deposit | balance | invoice | bill | fee | fees | licence | license | permit | insurance | mooring ) )",
  ),
  deed(
    'took <thing> to <place>',
    "^<lead>* (?: (?: i | we ) (?: 've | have )? )? <adverb>* (?: took | taken | dropped | carted | hauled | drove | ran | delivered | carried | walked ) (?<object> (?: the | my | both | all | that | those | a | four | three | two | it | them ) (?: <plain> ){0,4}? ) <adverb>* (?: down | up | over | across | round | off | in )? (?: to | at | into ) (?: the | a | my | our | his ) (?: <plain> ){0,2}? (?: tip | dump | skip | welder | welders | galvaniser | galvanizer | platers | plater | place | shop | sharpener | doctor | machinist | foundry | mill | upholsterer | glazier | weighbridge | scrapyard | sandblaster | blaster | laser | engineer | engineers | yard | post | courier )",
    (found) => !has(found.part('object'), 'I') && !has(found.words, 'N'),
  ),
  deed(
    'let <thing> in',
    "^<lead>* (?: (?: i | we ) (?: 've | have )? )? <adverb>* let (?<object> (?: the | a | an | both | two | three | my | new | that )+ (?: <plain> ){1,4}? ) in (?<rest> (?: (?: to | at | under | on | along | this | yesterday | with | flush | where | today | last | where ) <any>* )? ) $",
    (found, said) =>
      !has(found.part('object'), 'J') &&
      !says(said, / (?:light|air|rain|water|cat|dog|heat|draught|weather)\//),
  ),
];
