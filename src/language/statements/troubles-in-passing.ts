/**
 * Snags told in passing, by what the speaker sees, has to do or has lost by them: "the starter only clicks", "you can
 * push a thumb into it", "that's another sheet in the skip".
 */
import { neighbour, type Scene, type StatementRule } from './draft.ts';
import { type Found, matches, phrase } from './phrase.ts';
import { has, problem, subjectIsThing } from './snag.ts';
import type { Said } from './words.ts';

type Guard = (found: Found, said: Said, scene: Scene) => boolean;
/** Said in words that mean nothing else, and so not weighed. */
const plainly = (name: string, pattern: string, guard: Guard = () => true): StatementRule =>
  problem(name, phrase(pattern), (found, said, scene) => guard(found, said, scene) && { plain: true });

const ofThing: Guard = (found) => subjectIsThing(found) && !has(found.words, 'N');
/** Whether the next words of the sentence open with one of these. */
const leadsTo = (said: Said, scene: Scene, opener: RegExp) =>
  opener.test(neighbour(scene, said, 1)?.opener ?? '');
const says = (said: Said, pattern: RegExp) => pattern.test(said.code);

const THING = '(?<subject> <plain>{1,7}? )';
const IS = "(?: 's | is | are | 're | was | were )";
const HAS = "(?: 's | has | have | 've )";

/** What a machine does, or shows, that should run. */
const MACHINE_RULES: readonly StatementRule[] = [
  plainly(
    '<thing> throws an error',
    `^<lead>* ${THING} (?: throws | threw | throwing | shows | showing | showed | gives | gave | flashes | flashing | comes up with | came up with | reports )+ (?: up | me | us )* (?: an | a | some | the same | that )? (?: error | errors | fault | alarm | error code | fault code | low voltage warning )`,
    ofThing,
  ),
  plainly(
    '<thing> only <clicks>',
    `^<lead>* ${THING} (?: only | just ) (?: clicks | hums | ticks | spins | whirs | whirrs | coughs | groans | grunts | turns over | sits there | beeps | slips ) (?: at me | and | when <any>+ | away | round )* $`,
    ofThing,
  ),
  plainly(
    '<fuse> goes every time',
    '^<lead>* (?<subject> <plain>{0,4}? (?: breaker | fuse | trip | rcd | rcbo | mcb | isolator | inverter ) ) (?: goes | pops | blows | went | blew | popped | drops ) (?: out | off )* (?: every time | each time | whenever | the moment | the second | as soon | again | when ) (?<rest> <any>* )',
    ofThing,
  ),
  plainly(
    '<pressure> is dropping',
    `^<lead>* (?<subject> <plain>{0,4}? (?: pressure | gauge | voltage | vacuum | battery | batteries | level ) ) (?: ${IS} (?: dropping | falling | creeping down | going down ) | (?: ${HAS} )? (?: dropped | fallen | sunk | gone down | crept down ) (?: back )? to ) (?<rest> <any>* )`,
    (found, said, scene) =>
      ofThing(found, said, scene) && !says(said, / (?:good|nicely|fine|slowly\/\w* like)\//),
  ),
  plainly(
    'it lost <much> of <pressure>',
    `^<lead>* (?<subject> (?: it | she | the <plain>{1,3}? ) ) (?: 's | has )? lost <adverb>* (?: a | about | nearly | over )* (?: <number> | half | quarter )+ (?: of )? (?: a | an )? (?: bar | psi | volts | volt | inch of <any> | pound | pounds | millibar ) (?<rest> <any>* )`,
  ),
  plainly(
    '<thing> jumps out of <gear>',
    `^<lead>* ${THING} (?: jumps | jumped | pops | popped | slips | slipped | hops | hopped | kicks | keeps jumping | keeps popping | keeps slipping ) (?: out of | off ) (?: gear | reverse | first | second | third | top | neutral | forward | its | the | their ) (?<rest> <any>* )`,
    ofThing,
  ),
  problem(
    '<thing> runs all night',
    phrase(
      `^<lead>* ${THING} (?: ${IS} )? <adverb>* (?: on | running | runs | cycling | cycles | clicking | clicks | ticking | ticks | humming | hums | cutting in and out | cuts in and out ) (?: all the time | all night | non stop | nonstop | constantly | by itself | on its own | for no reason | day and night )`,
    ),
    ofThing,
  ),
  problem(
    '<lights> dim when <that>',
    phrase(
      `^<lead>* (?<subject> (?: the | my | all the | both ) <plain>{0,3}? ) (?: dim | dims | drop | drops | flicker | flickers | cut out | cuts out | stall | stalls | surges | surge | die | dies | dips | dip ) (?<rest> (?: (?: every time | each time | the moment | the second | under load ) <any>* )? ) $`,
    ),
    (found, said, scene) =>
      ofThing(found, said, scene) &&
      (found.part('rest').length > 0 || leadsTo(said, scene, /^(?:when|whenever|as soon as|once|if)$/)) && {
        plain: true,
      },
  ),
];

/** What a hand finds. */
const FELT_RULES: readonly StatementRule[] = [
  plainly(
    'you can push <tool> into <thing>',
    '^<lead>* (?: you | i | we ) (?: can | could ) <adverb>* (?: push | poke | stick | put | shove | get | fit | slide | slip | press | drive ) <adverb>* (?: a | my | your | the | an )? (?: whole | entire | <plain> )? (?: finger | fingers | thumb | thumbnail | fingernail | screwdriver | knife | penknife | hand | fist | pencil | bradawl | spike | awl | coin | key | chisel | biro | ruler ) <adverb>* (?: straight | right | clean )* (?: through | into | in | between ) (?<rest> <any>* )',
    (found) => !has(found.words, 'N'),
  ),
  problem(
    '<thing> is as stiff as <a board>',
    phrase(
      `^<lead>* ${THING} (?: ${IS} | feels | feel ) <adverb>* (?: as )? (?: stiff | slack | loose | rough | crooked | bent | soft | rotten | weak | useless | wobbly | wet | damp | thin | leaky | sloppy ) as (?: a | an | <plain> | old ) (?<rest> <any>* )`,
    ),
    (found, said, scene) =>
      ofThing(found, said, scene) && !says(said, / as\/\w* (?:it|they|i|you|we|planned|drawn)\//),
  ),
  plainly(
    '<thing> is like a bag of <gravel>',
    `^<lead>* ${THING} (?: ${IS} | feels | feel | sounds | sound | turns | runs | looks | came out | gone on | went on | ${HAS} <any> on | ${HAS} come out )+ <adverb>* like (?: a | an | the )? (?: bag of | bucket of | box of | tin of | sack of | ploughed field | orange peel | sandpaper | gravel | surface of the moon | barn door | cement mixer | coffee grinder | bouncy castle | trampoline | washboard | banana | dog 's dinner )`,
    ofThing,
  ),
  plainly(
    '<thing> is soaking',
    `^<lead>* ${THING} (?: ${IS} ) <adverb>* (?: soaking | sopping | dripping | wringing | wet ) (?: wet | through | under | behind | below | round | where ) (?<rest> <any>* )`,
    (found, said, scene) =>
      ofThing(found, said, scene) &&
      !says(said, / (?:brush|brushes|rag|cloth|slips|timber\/\w* soaking\/\w* in)\//),
  ),
  plainly(
    'a puddle under <thing>',
    "(?: woke up to | came back to | came in to | come in to | come back to | got in to | found | there 's | there is | there was ) (?: <adverb> | a | an | another | big | the | nice )* (?: puddle | puddles | pool | lake | inch of water ) (?: of <plain>{1,2} )? (?: under | on | in | round | around | behind | by | below | at ) (?<rest> <any>* )",
    (found) => !has(found.words, 'N'),
  ),
  plainly(
    '<thing> is off the scale',
    `^<lead>* ${THING} (?: ${IS} )? <adverb>* (?: going | went | gone | goes | shot | reading )? (?: off the (?: scale | clock | end of the scale ) )`,
    ofThing,
  ),
  plainly(
    '<thing> sprang',
    `^<lead>* ${THING} (?: ${HAS} )? (?: sprang | sprung | pinged | moved | pulled | crept | walked ) (?: back | apart | out of square | out of line | out of true | out of shape | with the heat | as soon as | the moment ) (?<rest> <any>* )`,
    ofThing,
  ),
  plainly(
    '<thing> moved when <that>',
    `^<lead>* ${THING} (?: ${HAS} )? <adverb>* (?: sprang | sprung | pinged | shifted | slumped | opened up | closed up ) $`,
    (found, said, scene) => ofThing(found, said, scene) && leadsTo(said, scene, /^(?:when|as|once|after)$/),
  ),
  plainly(
    'there is <wire> hanging',
    "^<lead>* (?: there (?: 's | is | are ) | i found | found ) (?: a | an | some | two | one )+ (?: <plain>{0,3}? ) (?: wire | wires | cable | cables | pipe | nail | nails | screw | bolt | bar | rebar | end | ends | edge ) (?: just | simply | still )* (?: hanging | sticking out | poking out | poking through | dangling | flapping | coming through ) (?<rest> <any>* )",
    (found) => !has(found.words, 'N'),
  ),
  problem(
    '<thing> is not fixed to anything',
    phrase(
      `^<lead>* ${THING} (?: ${IS} not | was never | were never ) <adverb>* (?: connected | attached | fixed | bolted | earthed | wired | joined | screwed | glued | nailed | tied | pinned | held ) (?: to | into | by | up to ) (?: anything | a thing | the | much | any )`,
    ),
    (found, said) => subjectIsThing(found) && !says(said, / yet\//),
  ),
  plainly(
    '<thing> is <loose> to nothing',
    `^<lead>* ${THING} (?: ${IS} | goes | runs | connects ) <adverb>* (?: connected | attached | fixed | bolted | earthed | wired | joined | screwed | tied )? (?: to | into ) (?: nothing | fresh air | thin air )`,
    (found) => subjectIsThing(found),
  ),
];

/** What is left, lost or done over. */
const LOST_RULES: readonly StatementRule[] = [
  plainly(
    "that's another <sheet> in the skip",
    "^<lead>* (?: that | there )? (?: 's | is | was )? <adverb>* (?: another | a whole | half a | half the | the whole | my whole | all <any> | two | three | four | <number> | a )+ <plain>{1,4}? (?: gone | wasted | lost | in the skip | for the skip | in the bin | for the bin | in the scrap | on the scrap pile | on the scrap heap | for the fire | on the fire | down the drain | down the pan | up in smoke | out of the window | out the window | for nothing ) (?: then | already | so far | on that )* $",
    (found) => !has(found.words, 'N') && !has(found.words, 'I'),
  ),
  plainly(
    'no <thing> to speak of',
    '(?: no | not any | hardly any | next to no | not much | precious little ) <plain>{1,4}? (?: to speak of | to talk of | worth the name | worth mentioning | left (?: on | in | to | at | under ) <any>+ )',
    (_, said) => !says(said, / (?:time|day|daylight|work|jobs|tasks|money|budget)\//),
  ),
  plainly(
    'nothing left to <screw> into',
    '(?: nothing | not a lot | not much | little ) (?: left | there | solid | sound )+ (?: to <any> | under it | behind it | for <any>+ to ) (?<rest> <any>* )',
    (_, said) => !says(said, / to\/\w* (?:do|say|report|show|worry|buy|order|lose|add|tell)\//),
  ),
  plainly(
    'I am out of <goods>',
    "^<lead>* (?: i | we ) (?: 'm | 're | am | are ) <adverb>* out of (?<goods> <plain>{1,3}? ) (?: again | now | already | too | altogether )* $",
    (found) =>
      !has(found.part('goods'), 'C') &&
      !/^(?:time|day|daylight|light|steam|puff|road|patience|energy|ideas|excuses|words|breath|hours|here|it|them|work|shape|practice|bed|bounds|luck|money)$/.test(
        found.part('goods').at(-1)?.lower ?? '',
      ),
  ),
  plainly(
    '<glue> went off too soon',
    `(?<subject> (?: <det> )? <plain>{0,3}? (?: glue | mix | plaster | resin | epoxy | filler | mortar | concrete | putty | batch | screed | grout | it | adhesive | render | pot | lot | cement | sealant | compound ) ) (?: ${HAS} )? (?: went off | gone off | set | kicked | kicked off | skinned | skinned over | cured | went hard ) <adverb>* (?: (?<why> in the <any> | too quick | too quickly | too fast | too soon | on me | half way <any>+ | halfway <any>+ ) | $ )`,
    (found, said, scene) =>
      !has(found.words, 'N') &&
      !has(found.words, 'M') &&
      (found.part('why').length > 0 || leadsTo(said, scene, /^(?:before|while|as)$/)),
  ),
  problem(
    '<thing> has never <set>',
    phrase(
      `^<lead>* ${THING} ${HAS} never <adverb>* (?: gone off | set | cured | dried | hardened | stuck | taken | fitted | worked | sealed | closed | bonded | turned | started | held | seated | shut ) (?<rest> <any>* )`,
    ),
    (found, said) => subjectIsThing(found) && !says(said, / (?:better|smoother|nicer)\//),
  ),
  plainly(
    'I rounded <the head> off',
    "^<lead>* (?: (?: i | we ) (?: 've | have )? )? <adverb>* (?: managed to )? (?: rounded | round | chewed | mangled | cammed | stripped | chewed up ) (?: off | out | up )? (?: the | a | another | two | one )+ (?: <plain>{0,2}? ) (?: head | heads | slot | slots | corners | flats | hex | nut | bolt | screw head | screw heads | thread | threads ) (?<rest> <any>* )",
    (found, said) => !has(found.words, 'N') && !says(said, / (?:router|plane|sand|sanded|edge|edges|over)\//),
  ),
  plainly(
    'I <crossed> the thread',
    "^<lead>* (?: (?: i | we ) (?: 've | have )? )? <adverb>* (?: managed to )? (?: kinked | nicked | creased | crossthreaded | cross-threaded | cross threaded | crushed | dinged | gouged | pinched | punctured | scorched | singed ) (?: the | a | an | my | it | one | another | two ) (?<rest> <any>* )",
    (found) => !has(found.words, 'N'),
  ),
  plainly(
    'I drilled it <much> off',
    "^<lead>* (?: (?: i | we ) (?: 've | have | had )? )? <adverb>* (?: drilled | cut | fitted | marked | screwed | fixed | bolted | laid | hung | welded | set | bored ) (?: it | them | one | both | mine | that | (?: the | a | this | that | my ) <plain>{1,3}? ) (?: <adverb> | a | an | about | nearly | half )* (?: <number> | <unit> | half | inch | bit | touch )+ (?: off | out | short | shy | adrift | undersize | too <any> ) (?<rest> <any>{0,3} ) $",
    (found, said) => !has(found.words, 'N') && !says(said, / (?:purpose|so|for|to\/\w* (?:allow|leave))\//),
  ),
  plainly(
    'still cut it short',
    "^<lead>* (?: (?: i | we ) (?: 've | have | had )? )? (?: still | managed to | went and | gone and | only )+ (?: cut | drilled | made | ordered | bought | measured ) (?: it | them | one | the <plain>{1,3}? ) <adverb>* (?: short | wrong | small | too <any> | undersize | backwards | upside down | back to front )",
    (found) => !has(found.words, 'N'),
  ),
];

/** Where a thing lies, and what is there. */
const PLACE_RULES: readonly StatementRule[] = [
  plainly(
    'there is <thing> right in the middle',
    "^<lead>* (?: there (?: 's | is | are ) | i found | found ) (?: a | an | another | the | some | two | one of the )+ (?<thing> <plain>{1,5}? ) <adverb>* (?: running | going | sitting | stuck )? (?: smack | bang | slap | plumb | dead | clean | right | straight )+ (?: in the middle | in the way | across | through | behind | under | over | where | in line | on the line )",
    (found, said) => !has(found.words, 'N') && !says(said, / (?:drew|planned|wanted\/\w* it)\//),
  ),
  plainly(
    '<corner> is low',
    `^<lead>* (?<subject> <plain>{1,5} ) ${IS} <adverb>* (?: a | bit | touch | hair | shade | fraction | way | well )* (?: low | high | proud | shy | lower | higher ) (?: by <any>{1,4} | at <any>{1,4} | on <any>{1,4} )? $`,
    (found, said, scene) =>
      ofThing(found, said, scene) &&
      /^(?:corner|end|edge|pad|joist|joists|beam|post|pier|foot|leg|bearer|floor|side|sill|slab|lintel|wallplate|stringer|step|tread|landing|threshold)$/.test(
        found.part('subject').at(-1)?.lower ?? '',
      ) &&
      !says(said, / (?:enough|so|deliberately|purpose|nice|level)\//),
  ),
  plainly(
    '<thing> is <much> lower at <one end>',
    `^<lead>* ${THING} ${IS} <adverb>* (?: a | an | about | nearly | good | <number> | <unit> | half | inch )+ (?: lower | higher | wider | narrower | thicker | thinner | down ) (?: at | on | along | over | towards ) (?: one | the other | the far | the near | this | that | the back | the front | the left | the right | the top | the bottom | the port | the starboard ) (?<rest> <any>* )`,
    (found, said, scene) =>
      ofThing(found, said, scene) && !says(said, / (?:so|fall|falls|taper|drain|drains|design|purpose)\//),
  ),
  plainly(
    '<thing> is down at <place> by <much>',
    `^<lead>* ${THING} ${IS} <adverb>* (?: down | up | out | in | over ) (?: at | on | in ) (?: the | one ) <plain>{1,3}? by (?: a | an | about | nearly | <number> | half )+ (?<rest> <any>* )`,
    ofThing,
  ),
  plainly(
    '<things> are out with each other',
    `^<lead>* ${THING} (?: are | 're | is | 's ) <adverb>* (?: (?: out | off | all over ) with (?: each other | one another | the other | the rest ) | in wind | out of wind | in winding | out of flat )`,
    ofThing,
  ),
];

const SOMEBODY_WENT = phrase(
  "^<lead>* (?: somebody | someone | some <plain>{1,2} | whoever <any>{0,3}? | (?: the )? (?: last | previous | old | former ) (?: owner | owners | builder | builders | bloke | fella | lot ) ) (?: 's | has | have | 've | had )? (?: gone | been | went ) $",
);

/** "Someone's gone and siliconed the lot to the roof": told of others it is no work that was wanted. */
const somebodyWentAndDid = problem(
  'somebody went and <did> <thing>',
  phrase('^<lead>* <adverb>* (?<verb> <did> | siliconed | painted | bodged | glued ) (?<rest> <any>+ )'),
  (found, said, scene) => {
    const before = neighbour(scene, said, -1);
    if (said.opener !== 'and' || !before || has(found.words, 'N') || !matches(SOMEBODY_WENT, before))
      return false;
    return { plain: true, from: before.index, start: before.start };
  },
);

export const PASSING_TROUBLE_RULES: readonly StatementRule[] = [
  somebodyWentAndDid,
  ...MACHINE_RULES,
  ...FELT_RULES,
  ...LOST_RULES,
  ...PLACE_RULES,
  plainly(
    'somebody is not having it',
    '^<lead>* (?: <det> )? (?<subject> <plain>{1,4}? ) (?: is | was | were | are ) not having (?: it | any of it | that )',
  ),
  plainly(
    '<person> does not like <that>',
    '^<lead>* (?: <det> )? (?<subject> (?: <plain>{0,3}? <person> | he | she | they ) ) (?: does not | do not | did not | will not pass | would not pass | is not happy with | is not happy about | was not happy with | was not happy about | will not sign off | would not sign off ) (?: like | fancy | the | my )+ (?<rest> <any>+ )',
    (_, said) => !says(said, / (?:coffee|tea|music|talk|camera|film|idea)\//),
  ),
];
