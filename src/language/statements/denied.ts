/** Faults and jobs that are told of only to say that there is none: "there's no play in it", "I don't need to glue it". */
import { matches, type Phrase, phrase } from './phrase.ts';
import type { Said } from './words.ts';

/** Things that nobody wishes for: to have none of them is well. "No gap" and "no movement" may be what is wrong. */
const UNWISHED = `(?: leak | leaks | crack | cracks | cracking | rot | rust | corrosion | woodworm | worm | damp | mould | mold | mildew | condensation | moisture
  | play | slop | backlash | wobble | wear | pitting | scoring | osmosis | delamination | noise | noises | rattle | rattles | squeak | squeaks | vibration
  | drips | drip | weeps | weep | weeping | splits | split | dents | scratches | blisters | voids | fault | faults | snags | problem | problems | trouble | issue | issues
  | damage | distortion | softness | stains | airlocks | draughts | drafts | shakes | subsidence | settlement | lifting | bubbles | pinholes )`;

/** States that are a fault; what glue, a brake or a jack should do ("not sticking", "not binding", "not lifting") is left out. */
const BAD = `(?: cracked | rotten | rotted | rusted | rusty | corroded | seized | frozen | bent | warped | twisted | cupped | buckled | chipped | scratched | dented | snapped
  | sheared | broken | burst | perished | frayed | chafed | delaminated | blistered | punctured | leaky | leaking | weeping | dripping | seeping | split | torn | worn
  | jammed | blocked | clogged | wonky | misaligned | soggy | mouldy | spongy | brittle | crumbly | flaking | loose | wobbly | faulty | damaged | missing | crushed
  | collapsed | sagging | fouling | overheating | smoking | rattling | squealing | noisy | damp | wet | swollen | distorted | pitted | porous | stuck | out )`;

const SIZES = `(?: wide | narrow | tall | short | long | high | low | heavy | light | tight | thick | thin | big | small | deep | shallow | hot | cold | steep | stiff
  | slack | bad | badly | shabby | far out | far off )`;

const NONE =
  '(?: no | any ) (?: real | visible | obvious | serious | great | big | more | other | such | signs of | sign of | trace of | hint of | sort of | dry | wet )*';
const IS_NOT = "(?: is | 's | are | 're | was | were | looks | feels | seems | do | does | did ) not";
const QUITE = '(?: <adverb> | at all | actually | all | that | look | feel | seem | be | looking )*';

const FAULTS: readonly Phrase[] = [
  // "There's no play in the bearing", "I can't find any rot", "no leaks at the gland"
  phrase(
    `(?: there 's | there is | there are | there was | there were | has | have | 've | got | had | found | find | see | seen | shows | showed | showing | with | without | 's | is | are ) ${NONE} ${UNWISHED}`,
  ),
  phrase(`^ <lead>*? no (?: real | visible | obvious | more | other | sign of | signs of )* ${UNWISHED}`),
  // "There isn't any damp behind it"
  phrase(
    `(?: not | never ) (?: find | found | see | seen | got | have | had | a | <adverb> )* (?: any | a ) (?: bit of | sign of | trace of | hint of | sort of )? ${UNWISHED}`,
  ),
  // "The rail is not too long"
  phrase(`${IS_NOT} ${QUITE} too ${SIZES}`),
  phrase(`^ <lead>* not too ${SIZES}`),
  // "The tap's not dripping", "it isn't out of plumb"
  phrase(`${IS_NOT} ${QUITE} (?: ${BAD} | off (?: square | level | centre | center ) )`),
  phrase(
    `(?: none | nothing | neither ) (?: of <plain>{1,3} )? (?: is | 's | are | 're | was | were | looks | has | have ) (?: <adverb> | been )* ${BAD}`,
  ),
  // "Nothing wrong with the impeller"
  phrase(
    '(?: nothing | not anything ) <adverb>* (?: wrong | amiss | untoward ) (?: with | in | at | on | about | there )',
  ),
];
/** "No rot but at the heel", "not just cracked", "not loose enough", "no wear left in it": the fault is in these words after all. */
const FAULT_AFTER_ALL =
  / (?:except|but|bar|apart|besides|only|just|merely|beyond|enough|yet|other\/\w* than|left|and|until|till)\//;

/** "The scarf came out beautiful" */
const CAME_OUT_WELL = phrase(
  '(?: came | come | comes | turned | went | gone | looks | look | looking | going ) (?: out | on | in | up | together | down | back )? (?: <adverb> | so | an absolute )* (?: beautiful | beautifully | lovely | perfect | perfectly | great | grand | treat | a treat | sweet | sweetly | spot on | nice | nicely | mint | like a dream | like a glove ) $',
);
const DENIES = / (?:no|not|none|nothing|neither|never|without)\//;

/** Whether a clause says that there is no fault. */
export const isFaultDenied = (said: Said): boolean =>
  matches(CAME_OUT_WELL, said) ||
  (DENIES.test(said.code) && FAULTS.some((way) => matches(way, said)) && !FAULT_AFTER_ALL.test(said.code));

const WHO_NOT = '(?: do | does | did | will | would | should | shall | need | have | has ) not';

const JOBS: readonly Phrase[] = [
  // "I don't need to glue the rail", "we won't have to lift it", "I haven't got to paint it"
  phrase(`${WHO_NOT} (?: <adverb> | even )* (?: need | have | want | got | be having | be needing ) to`),
  phrase('(?: i | we | you | they | he | it | that ) need not'),
  // "The hull doesn't need sanding", "it won't want another coat"
  phrase(
    `(?: do | does | did | will | would | should ) not (?: <adverb> | even )* (?: need | want | require ) (?! telling | asking | reminding ) (?: <doing> | <done> | any | a | an | another | <number> | more | its | the )`,
  ),
  // "There's no need to prime it", "no point sanding it"
  phrase(
    '(?: no | any ) (?: real | great | earthly )? (?: need | call | reason | point | sense | cause ) (?: to | in | for | of | now | <doing> )',
  ),
  // "No more holes to drill"
  phrase(
    '^ <lead>*? no (?! i | we | going | gonna | just | now | then ) (?: <plain> !to ){0,3} <plain> to <do>',
  ),
  phrase(
    "(?: there 's | there is | there are | have | 've | has | got ) (?: got )? no (?: <plain> !to ){0,3} <plain> to <do>",
  ),
  // "Nothing left to paint"
  phrase('nothing (?: left | else | more | much | now | there )* to <do>'),
];
/** "I don't need to start until Monday", "nothing to do but paint it": something is left to do. */
const JOB_AFTER_ALL =
  / (?:until|till|before|unless|without|except|but|bar|only|just|yet|forget|forgetting|miss|risk|lose|otherwise|now)\//;

/** Whether a clause says that there is nothing to do. */
export const isJobDenied = (said: Said): boolean =>
  DENIES.test(said.code) && JOBS.some((way) => matches(way, said)) && !JOB_AFTER_ALL.test(said.code);
