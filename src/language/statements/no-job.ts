/** Clauses that sound like work to do and leave nothing to do: what a product takes, idioms of talk, headings. */

import type { Draft, Scene } from './draft.ts';
import { matches, type Phrase, phrase } from './phrase.ts';
import type { Said } from './words.ts';

const TIME =
  '(?: second | seconds | minute | minutes | hour | hours | day | days | week | weeks | month | months )';
const AMOUNT = `(?: for | another | at least | about | around | up to | a good | roughly | nearly | over | some )* (?: (?: a | an | the | <number> | half | couple | few | whole | full | or | to | and )+ ${TIME} | overnight )`;

const NO_JOBS: readonly Phrase[] = [
  // "Each coat takes sixteen hours to dry", "the screed has to cure for a week", "they've got to sit seven days"
  phrase(
    `^<lead>* (?! i | we | you | he | she | somebody | someone ) (?: <plain> )+ (?: takes | take | took | 'll take | will take ) ${AMOUNT}`,
  ),
  phrase(
    `^<lead>* (?! i | we | you | he | she | somebody | someone ) (?: <plain> )+ (?: need | needs | want | wants | has to have | gets ) ${AMOUNT} to (?: dry | cure | set | harden | go off | settle | cool | rest | stand )`,
  ),
  phrase(
    `^<lead>* (?! i | we | you | he | she | somebody | someone ) (?: <plain> )+ (?: need | needs | want | wants | has | have | 's | 've | must | should | is | are | got | supposed | will | 'll )* to? (?: sit | wait | stand | cure | dry | set | harden | rest | cool | settle | go off | dry out | be left | be left to (?: dry | cure | set | stand | harden ) ) ${AMOUNT}`,
  ),
  // "I'll have to wait for the glass", "I need to sit down"
  phrase(
    "^<lead>* (?: what | all )? (?: i | we ) (?: 'll | will | can | must | 've | have | need | had | got | just | only | do | is | 's | gotta | going | 'm | to )+ (?: wait | sit | rest | sleep | eat | lie | sit | stand | breathe | calm | relax ) (?: on | for | down | back | till | until | there | still | here | it | a | an | my )",
  ),
  // "I've a bone to pick with you", "I got to talking", "I owe the shop an apology"
  phrase('(?: bone | bones | crow ) to pick'),
  phrase('(?: axe | axes ) to grind'),
  phrase('(?: fish | fishes ) to fry'),
  phrase('(?: hell | devil ) to pay'),
  phrase(
    '^<lead>* (?: i | we | he | she | they | us )* (?: got | get | gets ) to (?: talking | thinking | wondering | chatting | arguing | laughing | dreaming | looking | poking | digging about | know | like | see | say )',
  ),
  phrase(
    '(?: owe | owes | owed ) <any>{0,5} (?: apology | apologies | thanks | pint | pints | beer | beers | drink | drinks | favour | favor | favours | favors | explanation | life | dinner | lunch | coffee | cake | money )',
  ),
  phrase('(?: owe | owes | owed ) (?: you | him | her | them | me | us ) (?: one | big time ) $'),
  // "Not sending it back, can't be bothered"
  phrase('(?: can | could ) not be <adverb>* (?: bothered | arsed | fussed | asked | dealing | doing )'),
  // "So that's rings or valve seals": what it may be
  phrase(
    "^<lead>* (?: that | it | which ) (?: 's | is | 'll be | must be ) (?: either )? (?: the | a | an )? (?: !<day> <plain> ){1,4} or !<day> !thereabouts !so !more !less (?: the | a | an )? <plain>{1,4} $",
  ),
  // "So call it the first of July", "call it ten": a guess, where "call it in" and "call it off" are work
  phrase("^<lead>* (?: we 'll | i 'll )? call it !<particle> <any>"),
  // "I need to have lunch", "I need to clear my head", "I'll have to laugh", "I used to have to sand it"
  phrase(
    "^<lead>* (?: i | we ) (?: 'll | will | can | must | 've | have | need | had | got | just | only | do | gotta | going | 'm | to | <adverb> )* (?: be (?: honest | careful | quick | patient | fair | realistic | thankful | grateful ) | have (?: my | our | some | a )? (?: lunch | dinner | tea | breakfast | rest | nap | brew | cuppa | drink | bath | shower ) | come home | go home | (?: clear | get | rest ) my (?: head | breath | feet | back | legs ) | make sense of | laugh | cry | breathe ) (?: now | first | then | about it | it | this | at it | again | straight )* $",
  ),
  phrase('^<lead>* (?: i | we | you | they ) used to have to'),
  // "Jobs for the weekend": a heading.
  phrase(
    "^<lead>* (?: <day> 's | tomorrow 's_ | today 's_ | <day> 's_ | the | my | more | some | and )* (?: jobs | job list | to-do list | jobs list ) (?: for | on | of | then | this | the | next | <day> | weekend | week | tomorrow | morning | now )* $",
  ),
  // "Scratch that": what was just said.
  phrase('^<lead>* (?: scratch | strike | scrub | forget | ignore | delete ) (?: that | this ) $'),
  // "Number eight by two inch": a screw.
  phrase('^<lead>* number <number>+ by <number>'),
  // "Glass guy wants a week": his time, and no work of one's own.
  phrase(
    `^<lead>* (?: the | my | our )? <plain>{0,2}? <person> (?: wants | needs | reckons | says ) (?: about | another | at least | a good )* (?: a | an | <number> | couple of )+ (?: day | days | week | weeks | fortnight | month | months ) $`,
  ),
  // "Point six of a cube": a number, and no wall to point.
  phrase('^<lead>* point <number>'),
  // "What wants doing", "here's what's left", "what is still to do"
  phrase(
    "^<lead>* (?: here 's | that 's | this is | now )? what (?: is | 's | still | really | <adverb> )* (?: wants | want | needs | need | left | remains | outstanding | to | do | be | doing | done | now | next | is | still )+ $",
  ),
  // "She hasn't turned since the war"
  phrase("(?: have | has | had | is | 's | 've ) not <any>{0,2} <done> <any>{0,4} since"),
  // "Still to do:", "left to do": what follows is told next
  phrase(
    '^<lead>* (?: still | also | left | next | now | yet | what )* to do (?: still | yet | now | today )* $',
  ),
  // "That's a two man job": of what kind it is.
  phrase(
    "^<lead>* (?: that | it | this | they ) (?: 's | is | are | 'll be | will be ) (?: a | an )? <adverb>* (?: <number> | full ) (?: man | person | people | handed | hands | hand | day | days | hour | hours | minute | week | weekend ) (?: job | jobs | lift | task )? $",
  ),
  // How, and not what: "the oil is to be applied hot"
  phrase(
    '(?: is | are | was | were | has | have | needs | need | ought )? to be <done> (?: <adverb> )? (?: hot | warm | cold | wet | dry | thin | thick | thinly | neat | sparingly | slowly | quickly | upright | flat | fresh | by hand | with care | generously )+ $',
  ),
  // "Either I move the trimmer or lose a riser": not chosen yet.
  phrase(
    "^<lead>* (?: (?: i | we ) (?: 'll | can | could | must | have to | 've got to | need to )? either | either (?: i | we ) ) <any>* or <any>+",
  ),
  // "The rest can wait", "that'll have to wait": nothing is named.
  phrase(
    "^<lead>* (?: the )? (?: rest | others | that | it | this | they | those | these | everything | everything else | anything else | all | all that | all this ) (?: can | could | may | will | 'll | must | has | have | just | got | 've | had | to | better | have to )* wait (?: now | then | too | anyway | though | a bit | a while )* $",
  ),
];

/** "Plaster to plaster", "bead to bead": a stretch from one to another, and no plastering. */
const STRETCH = /^ ?(\S+?)\/\S* to\/\S* \1\/\S* ?$/;

/** "Each coat takes a day before I sand it" has work in it. */
const BEGINS_WORK = / (?:before|until|till|then)\/\S* (?:i|we|you|they|it|the)\//;

/** Whether a clause leaves nothing to do, whatever its verbs. */
export const isNoJob = (said: Said): boolean =>
  (NO_JOBS.some((none) => matches(none, said)) && !BEGINS_WORK.test(said.code)) || STRETCH.test(said.code);

const MINE = '(?: it | us | them | her | him | me | that | this | these | those )';
const BOOKED_UP: readonly Phrase[] = [
  phrase(`^<lead>* (?: they | he | she )? (?: can | could | 'll | will ) not take ${MINE} <particle>? $`),
  phrase(
    `^<lead>* (?! i | we | you | it ) (?: <plain>{1,5} ) (?: can | could | 'll | will ) not (?: take | do | lift | fit | see | have | start | look at | get to | fit ${MINE} in ) ${MINE} <particle>? $`,
  ),
];

/** "The platers can't take it till the 20th": other people's time, in which nothing comes and no work of one's own is told. */
export const isBookedUp = (said: Said): boolean => BOOKED_UP.some((way) => matches(way, said));

const THEIR_TIME = phrase(
  `^<lead>* (?: they | he | she | (?: the | my | our )? <plain>{0,2}? <person> ) (?: reckon | reckons | said | say | says )? (?: they | he | she )? (?: can | could | will | 'll | is | are | do | does ) not (?: <adverb> | be | got | have | going to | free | able to )* (?: <any>{0,5} )$`,
);

/** "They can't pour till the week after next": when others have time, which leaves no work of one's own. */
export const isTheirTime = (said: Said, next: Said | undefined): boolean =>
  /^(?:till|until|before)$/.test(next?.opener ?? '') &&
  !/ (?:i|we|my|our|us)\//.test(said.code) &&
  !/ (?:i|we|it|is|'s|are|has|have)\//.test(next?.code ?? '') &&
  matches(THEIR_TIME, said);

const POINTS = '(?: that | it | those | them | this | these | which | they )';
const TO_BACK: readonly Phrase[] = [
  // "I'll do that tomorrow night"
  phrase(
    `^<lead>* (?: i | we ) (?: 'll | will | can | shall | must | 'm | 're | am | are | going | have | 've | need | to | just | probably | hopefully | got )* (?: do | doing | finish | tackle | sort | see to | get to | get on to | crack on with ) ${POINTS} (?: all | both | lot )* (?: on | in | the | this | first | thing | morning | afternoon | evening | night | next | week | weekend | <day> | myself | with | by | after | then | later | now | soon | too | as | well )* $`,
  ),
  // "Put that on the list", "that goes on my list"
  phrase(
    `^<lead>* (?: (?: i | we ) (?: 'll | 've | have )? )? (?: put | stick | add | write | bung | chuck | pop | stuck | added | get | wrote ) ${POINTS} (?: all | both | down )* (?: on | onto | to | in ) (?: the | my | our )? <any>{0,2}? list $`,
  ),
  phrase(
    `^<lead>* ${POINTS} (?: 's | is | are | 're | goes | go | can | will | 'll | be | has | to | going )+ on (?: the | my | our )? <any>{0,2}? list (?: now | too | as | well | then )* $`,
  ),
  // "That's for Saturday", "that's a job for the weekend", "that's tomorrow's treat"
  phrase(
    `^<lead>* ${POINTS} (?: 's | is | are | 're | will | 'll | be | can )+ (?: (?: a | one | job | jobs | something )* for )? (?: the | next | this | on | first | thing | <day> | week | weekend | morning | afternoon | evening | night | when | i | we | 've | have | got | time | later | another )+ (?: 's <any>{1,2} )? $`,
  ),
];

/** "I'll do that tomorrow", "put it on the list": says when, or that it is to do, of work that was named just before. */
export const pointsBack = (said: Said): boolean => TO_BACK.some((way) => matches(way, said));

const BARE_TOPIC = phrase(
  "^<lead>* (?: (?: next | first | now | then | so )* (?: up | job )? (?: is | 's | it is | it 's | for )? (?<thing> (?: the | my | our | a )? <plain>{1,3} ) | (?: the | my | our )? <plain>{1,3} (?: is | 's | are )? next )$",
);
const LITTLE = /^(?:the|my|our|a|an|is|'s|it|next|first|now|then|so|up|job|for|are)$/;

/** "Next is the lathe. I'm putting it, the lathe, on the left": a heading of what is told in the sentence after it. */
export function isHeading(draft: Draft, scene: Scene): boolean {
  const said = scene.said[draft.from];
  if (!said || draft.from !== draft.to || draft.waitsFor?.length || !matches(BARE_TOPIC, said)) return false;
  if (said.words.some(({ classes }) => /[DBG]/.test(classes))) return false;
  const things = said.words.filter(({ lower, classes }) => !LITTLE.test(lower) && !/[LAR]/.test(classes));
  const thing = things.at(-1)?.lower;
  if (!thing) return false;
  for (let k = said.index + 1; k < scene.said.length; k++) {
    const { sentence, words } = scene.said[k] as Said;
    if (sentence > said.sentence + 1) return false;
    if (sentence > said.sentence && words.some(({ lower }) => lower === thing)) return true;
  }
  return false;
}
