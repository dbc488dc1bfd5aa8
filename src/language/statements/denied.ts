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
  | collapsed | sagging | fouling | overheating | smoking | rattling | squealing | noisy | damp | wet | swollen | distorted | pitted | porous | out )`;

const HEARD_OR_SEEN =
  '(?: knock | knocking | squeal | whine | clunk | creak | creaks | grinding | rubbing | bow | hump | puncture | holes | tears | blemish | kinks | breakage | mismatch )';

const SIZES = `(?: wide | narrow | tall | short | long | high | low | heavy | light | tight | thick | thin | big | small | deep | shallow | hot | cold | steep | stiff
  | slack | bad | badly | shabby | far out | far off )`;

/** Any other word for a fault; what glue, a brake or a jack should do is no fault to them. */
const FAULTY = `(?: ${BAD} | !sticking !stuck !binding !lifting !slipping !dead !lost !wrong <faulty> | back to front | inside out | upside down | full of (?: water | sludge | muck | rust | dust | holes | rubbish ) | like (?: cake | butter | a sponge | a banana | toffee | glass | a bath ) | <number>+ <unit> (?: out | off | short | long | over | under ) )`;

const NONE =
  '(?: no | any ) (?: real | visible | obvious | serious | great | big | more | other | such | signs of | sign of | trace of | hint of | sort of | dry | wet )*';
const IS_NOT =
  "(?: is | 's | are | 're | was | were | looks | feels | seems | do | does | did | has | have | 've ) not";
const QUITE =
  '(?: <adverb> | at all | actually | all | that | look | feel | seem | be | looking | gone | going | got | come | in | on | cut | fitted | made )*';

const FAULTS: readonly Phrase[] = [
  // "There's no play in the bearing", "I can't find any rot", "no leaks at the gland"
  phrase(
    `(?: there 's | there is | there are | there was | there were | has | have | 've | got | had | found | find | see | seen | shows | showed | showing | with | without | 's | is | are ) ${NONE} ${UNWISHED}`,
  ),
  phrase(`^ <lead>*? no (?: real | visible | obvious | more | other | sign of | signs of )* ${UNWISHED}`),
  // "No horrible grinding noise", "there's no knock from the gearbox"
  phrase(`^ <lead>*? no <plain>{1,2} ${UNWISHED} $`),
  phrase(`(?: there 's | there is | there are | there was | there were ) no <adverb>* ${HEARD_OR_SEEN}`),
  // "The drawer isn't stuck", where foam that has not stuck is a snag
  phrase("(?: is | 's | are | 're | was | were ) not <adverb>* stuck"),
  // "They didn't send the wrong hinges"
  phrase(
    '(?: did | do | does | have | has | had ) not (?: <plain> !that !what ){1,4}? (?: the | a | any ) wrong',
  ),
  // "You can't push a thumb into the frame", "it has never shut better"
  phrase(
    'can not <adverb>* (?: push | get | stick | poke | put | press ) (?: a | my | your ) (?: thumb | finger | nail | fingernail | knife | blade | screwdriver | spike | bradawl ) (?: in | into | through )',
  ),
  phrase("(?: (?: has | have | 's | 've ) never <plain>{1,4}? better | could not be better ) $"),
  // "There isn't any damp behind it"
  phrase(
    `(?: not | never ) (?: find | found | see | seen | got | have | had | a | <adverb> )* (?: any | a ) (?: bit of | sign of | trace of | hint of | sort of )? ${UNWISHED}`,
  ),
  // "The rail is not too long"
  phrase(`${IS_NOT} ${QUITE} too ${SIZES}`),
  phrase(`^ <lead>* not too ${SIZES}`),
  // "The tap's not dripping", "it isn't out of plumb"
  phrase(`${IS_NOT} ${QUITE} (?: ${FAULTY} | wrong | off (?: square | level | centre | center ) )`),
  phrase(
    `(?: none | nothing | neither ) (?: of <plain>{1,3} )? (?: is | 's | are | 're | was | were | looks | has | have ) (?: <adverb> | been | gone | come )* (?: ${FAULTY} | (?: wrong | amiss ) | come off )`,
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
  // "I'm not going to plane the sill", "we won't paint it", "the mast won't be stepped on Monday", "I must not order it"
  phrase(
    "^<lead>* (?: i | we )? (?: <adverb> | 'm | am | are | 're | is | 's )* not (?: <adverb> )* (?: going to | gonna | about to | planning to | allowed to | meant to | supposed to )",
  ),
  phrase(
    "^<lead>* <plain>{0,6} (?: will | 'll | shall | should | must | ought ) not (?: <adverb> | to | be | get | go | come )* (?: <do> | <done> | out | up | on | in | off | down )",
  ),
  phrase('^<lead>* (?: i | we ) can not (?: <adverb> )* <do>'),
  // "Don't order the glass", "not painting the hull is the plan", "it's not time to paint"
  phrase('^<lead>* (?: do | please do ) not (?: <do> | get | go | buy )'),
  phrase('^<lead>* not (?: <doing> | getting | going )'),
  phrase("(?: is | are | 's | 're | was ) not <adverb>* (?: time to | on (?: the | my ) <plain>{0,2} list )"),
  // "None of the tiles have come off"
  phrase(
    "^<lead>* (?: none | neither | nobody ) (?: of <plain>{1,4} )? (?: have | has | 've | 's ) (?: <adverb> | been )* (?: <done> | come | gone )",
  ),
  // "The slates won't be here till Friday": when goods come, and no job.
  phrase(
    "^<lead>* (?! i | we ) <plain>{1,6} (?: will | 'll | is | are | 's | 're ) not (?: be )? (?: here | coming | arriving | come | arrive ) (?! <particle> )",
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
  / (?:until|till|before|unless|without|except|but|bar|only|just|yet|forget|forgetting|miss|missing|risk|lose|otherwise|now|put\/\w* (?:it\/\w* |this\/\w* )?off|leave|delay|hang\/\w* about)\/| (?:under|below|above)\/\w* \S+\/\w*Q/;

/** Whether a clause says that there is nothing to do. "I can't glue it" is no word of that where "until ..." follows. */
export const isJobDenied = (said: Said, next?: Said): boolean =>
  DENIES.test(said.code) &&
  !(next?.sentence === said.sentence && HELD_UP.test(next.opener)) &&
  JOBS.some((way) => matches(way, said)) &&
  !JOB_AFTER_ALL.test(said.code);
const HELD_UP = /\b(?:until|till|'til|unless|before|once|without|while|as)\b/;
