/** Ways of speaking whose words are those of a note, and that tell nothing of the kind. */
import type { TraceStep } from '../notes.ts';
import { type Draft, neighbour, type Scene, type StatementKind } from './draft.ts';
import { DUE_MONEY } from './due-money.ts';
import { matches, type Phrase, phrase } from './phrase.ts';
import type { Said } from './words.ts';

interface Look {
  readonly kind: StatementKind;
  readonly why: string;
  readonly pattern: Phrase;
  readonly unless?: RegExp;
}

const BE = "(?: is | 's | are | 're | was | were )";
const FIGURE = '(?: about | around | at | roughly )* <number>';

const BEYOND =
  '(?: (?: wider | bigger | longer | taller | deeper | heavier | thicker | higher | larger | fatter | more | hotter | lower | narrower | smaller | shorter | less ) than | over | above | under | below ) <any>{0,3}? <number>';

const LOOKS: readonly Look[] = [
  {
    kind: 'done',
    why: 'it is not done, or not quite',
    pattern: phrase(
      "(?: is | are | 's | 're | was | were | have | has | 've | did ) (?: <adverb> )* (?: not | never | nearly | almost ) (?: <adverb> | been | got | quite | yet | even )* (?: <done> | <did> )",
    ),
    unless: / (?:but|only|just)\//,
  },
  {
    kind: 'done',
    why: 'it is done to none',
    pattern: phrase(
      "^<lead>* (?: none | neither | nobody | nothing ) (?: of <plain>{1,4} )? (?: is | 's | are | was | were | has | have | got ) (?: <adverb> | been )* (?: <done> | <did> )",
    ),
    unless: / (?:but|except|bar|until|till)\//,
  },
  {
    kind: 'arrival',
    why: 'it does not come',
    pattern: phrase(
      "(?: is | are | 's | 're | will | 'll | can ) not (?: <adverb> | be | get | getting )* (?: coming | come | bringing | bring | delivering | deliver | delivered | land | landing | here | arrive | arriving | due | sending | send | shipping | ship )",
    ),
    unless: / (?:until|till|before|yet|least|only|just|but)\//,
  },
  {
    kind: 'arrival',
    why: 'none of it came',
    pattern: phrase(
      '^<lead>* no (?: !sign !word !news <plain> ){1,3}? (?: arrived | came | come | turned up | landed | delivered | due | today | tomorrow | <day> )',
    ),
    unless: / (?:until|till|before|yet|but)\//,
  },
  {
    kind: 'arrival',
    why: 'it brings people, and no goods',
    pattern: phrase(
      '(?: came | turned up | showed up | arrived | comes ) <any>{0,3}? with (?: the | my | his | two | three ) <person> $',
    ),
  },
  {
    kind: 'arrival',
    why: 'it is not wished for, and does not come by van',
    pattern: phrase(
      'no (?: sign | signs ) of <adverb>* (?: any | the )? (?: leak | leaks | crack | cracks | rot | rust | corrosion | woodworm | worm | damp | mould | wear | damage | movement | life | rain )',
    ),
  },
  {
    kind: 'task',
    why: 'it tells how much room there is',
    pattern: phrase('<number> <any>{0,5}? to (?: play | work | spare ) (?: with | in )?'),
  },
  {
    kind: 'decision',
    why: 'it tells where the speaker works now',
    pattern: phrase(
      "^<lead>* (?: i | we ) (?: 've | have )? (?: <adverb> )* (?: moved | shifted | switched | gone | changed ) (?: over | on | across | back | up | down )? to (?: the | my ) (?: <plain>{0,2}? (?: stairs | stair | roof | loft | hull | deck | cabin | galley | kitchen | bathroom | floor | walls | ceiling | outside | inside | shed | workshop | garden | windows | doors | porch | bedroom | bow | stern | bilge | engine | wiring | plumbing | plastering | tiling | painting ) ) $",
    ),
    unless: / (?:instead|from|because|cause|since)\//,
  },
  {
    kind: 'decision',
    why: 'it tells what the speaker thinks, and no work',
    pattern: phrase(
      '(?: stop | quit | keep | start | stopped | give up ) (?: on )? (?: telling | pretending | thinking | saying | kidding | believing | worrying | wondering | hoping | dreaming | moaning | complaining | arguing | asking )',
    ),
  },
  {
    kind: 'done',
    why: 'it tells of the day, and of no work',
    pattern: phrase(
      '(?: picked up (?: a | the | some ) (?: cold | bug | flu | habit | signal ) | (?: swapped | traded | exchanged ) (?: numbers | stories | emails | notes | jokes | names ) | ^<lead>* (?: i | we )? (?: <adverb> )* (?: came | drove | walked | cycled | went ) (?: the long way | straight | all the way )? home | ^<lead>* (?: i | we )? (?: <adverb> )* (?: drove | cycled | walked ) <number>+ (?: miles | mile | hours | kilometres ) | dropped (?: the | my | our ) (?: kids | children | boys | girls | wife | son | daughter | brother | sister | mum | dad | dog ) off )',
    ),
  },
  {
    kind: 'problem',
    why: 'the hole is wanted',
    pattern: phrase(
      "(?: there 's | there is | i | we | i 've | we 've ) (?: have | 've | <adverb> )* (?: drilled | cut | bored | made | left )? (?: a | an | the | some | <number> )? <plain>{0,2}? (?: hole | holes | slot | slots | notch | notches | gap | water | hot water ) (?: there | in it )? for (?: the | my | a | its ) <plain>{1,4} $",
    ),
    unless: / (?:no|not|wrong|too|only|never|missing|already|extra|big|bigger|small|smaller|second|spare)\//,
  },
  {
    kind: 'problem',
    why: 'it tells how far apart they are',
    pattern: phrase(
      '(?: is | are | sit | stand | go | at ) (?: <adverb> | about )* <number>+ <unit>? apart $',
    ),
    unless: / (?:only|too|should|supposed|not|but)\//,
  },
  ...(['problem', 'decision', 'done'] as const).map((kind) => ({
    kind,
    why: 'it tells what is hidden where',
    pattern: phrase(
      "^<lead>* (?! i | we | it | that ) <plain>{1,7}? (?: runs | run | passes | pass | sits | drops | is | are | 's ) (?: down | along | up )? (?: behind | beneath | under | underneath | within ) (?: the | every | that | my ) <plain>{0,2}? (?: lining | headlining | panel | panels | boarding | boxing | tiles | plaster | deck | sole | hatch | floor | floorboards | ceiling | plate | cladding | skirting ) $",
    ),
    unless:
      / (?:because|since|so|instead|rather|not|stuck|trapped|lost|wet|water|leak|rot|damp|rust|stud|crack|hole|gap|done|finished|now|all|both)\//,
  })),
  {
    kind: 'done',
    why: 'it failed, which nobody did',
    pattern: phrase(
      "^<lead>* (?! i | we ) <plain>{1,6}? (?: has | have | 's | 've )? <adverb>* (?: (?: stopped | quit | ceased ) (?: <doing> | working | going | turning ) | (?: dropped | fallen | fell | broken | broke | snapped | sheared ) (?: clean )? off | packed (?: up | in ) | conked out | given up ) (?: again | on me | altogether | now | today | yesterday | completely )* $",
    ),
    unless: /\/\S*J/,
  },
  {
    kind: 'done',
    why: 'it stays as it is',
    pattern: phrase(
      '(?: stay | stays | remain | remains | are staying | is staying ) (?: just | exactly )? (?: the same | put | as (?: they | it ) | where | unchanged )',
    ),
  },
  {
    kind: 'done',
    why: 'it tells how a place is',
    pattern: phrase(
      "^<lead>* (?: it | that | this | everything | she ) (?: 's | is | was ) (?: <adverb> | so | a bit )* (?: cramped | crowded | cluttered | packed | rammed | deserted )",
    ),
  },
  {
    kind: 'promise',
    why: 'it is promised to nobody',
    pattern: phrase(
      "(?: (?: you | ye | yous ) (?: will | 'll | are going to | 're going to ) not | (?: you | ye | yous ) (?: are | 're ) not | ^<lead>* (?: i | we )? (?: 'm | am | are | 're ) not (?: <adverb> )* (?: happy | pleased | sure | proud ) ) <any>",
    ),
    unless: / (?:forget|forgot|forgotten|forgetting|only|just|until|till|before|miss|believe|but)\//,
  },
  {
    kind: 'decision',
    why: 'it was not changed',
    pattern: phrase(
      "(?: have | 've | has ) not <adverb>* (?: swapped | changed | moved | switched | settled | chosen | shifted | picked | made )",
    ),
    unless: / (?:because|but|until|till|just|only)\//,
  },
  {
    kind: 'problem',
    why: 'the fault is denied',
    pattern: phrase(
      `${BE} not <adverb>* (?: as bad | cracked | rotten | rotted | rusted | rusty | broken | bent | split | leaking | warped | twisted | damaged | worn | seized | perished | torn | loose | blocked | frozen | punky )`,
    ),
    // "It isn't cracked, it's snapped in two", "not leaking there but at the flange"
    unless: / (?:just|only|but|too)\//,
  },
  {
    kind: 'problem',
    why: 'it tells a limit',
    pattern: phrase(
      '(?: will | does | do | can | must | should ) not (?: take | carry | hold | bear | stand | lift | go | pull ) (?: any )? (?: more | over | above | much more | past ) (?: than )? <number>',
    ),
  },
  {
    kind: 'problem',
    why: 'it tells a limit on whatever comes',
    pattern: phrase(
      `^<lead>* (?: (?: nothing | anything | no <plain>{1,3} | any <plain>{1,3} ) ${BEYOND} | <plain>{0,4}? (?: can | could | will | do | does | must | should ) not (?: get | fit | bring | put | pass | have | take | run | hang | lift | carry | let ) (?: anything | any <plain>{1,3} ) ${BEYOND} )`,
    ),
    // "Nothing wider than 740 went in, so the cooker's stuck outside."
    unless: / (?:went|came|got|was|were|did|had|stuck|broke|snapped)\//,
  },
  {
    kind: 'problem',
    why: 'it tells of somebody weighing it up',
    pattern: phrase(
      "(?: i | we ) (?: went | go | have gone | 've gone ) (?: back and forth | round and round | to and fro )",
    ),
  },
  {
    kind: 'problem',
    why: 'it tells what people keep asking',
    pattern: phrase(
      '^<lead>* (?: people | folk | folks | everybody | everyone | they | you ) (?: all )? (?: keep | keeps | kept ) (?: on )? (?: asking | telling | saying | writing | wondering )',
    ),
  },
  {
    kind: 'problem',
    why: 'it was put there, and did not get stuck',
    pattern: phrase(
      "^<lead>* (?: i | we ) (?: 've | have | just | then | also | <adverb> )* stuck (?: <det> | it | them | one | two | that | some | another ) <any>{0,5}? (?: in | into | on | onto | to | behind | under | over | up | down | at | round )",
    ),
    unless: / (?:not|out|fast|won|can)\//,
  },
  {
    kind: 'problem',
    why: 'it tells how much is over a thing, and not too much',
    pattern: phrase(
      "(?: there 's | there is | that 's | it 's | leaves ) <any>{0,2}? <number> <unit>? (?: over | above ) (?: them | it | (?: the | my | each | that ) <plain>{0,2}? (?: wheel | wheels | axle | axles | door | doors | window | sink | bed | bench | stove | keel | engine | tank | hatch | line ) )",
    ),
    unless: / (?:too|only|limit|weight|shy|short|should|not|supposed|wrong|allowed|rated)\//,
  },
  {
    kind: 'problem',
    why: 'the gap is meant',
    pattern: phrase('with (?: a | an ) <any>{0,4}? (?: gap | gaps | reveal | step | overlap ) $'),
    unless: / (?:too|should|bad|wrong|huge|big|great|up|left|got)\//,
  },
  {
    kind: 'problem',
    why: 'it tells where a thing is fixed',
    pattern: phrase(
      '^<lead>* <plain>{1,5} at <any>{1,5}? (?: above | over | below ) (?: the | my ) <plain>{0,2}? (?: line | floor | deck | nosing | nosings | worktop | sill | tread | treads | ground | sole )',
    ),
    unless: / (?:too|only|should|limit|allowed|supposed|wrong|says|said)\//,
  },
  {
    kind: 'done',
    why: 'it tells a size on paper or a sum',
    pattern: phrase(
      "(?: (?: was | were ) drawn (?: at | as | in | out ) | (?: i | we ) (?: had | 'd )? worked <any>{0,3}? out at )",
    ),
  },
  {
    kind: 'done',
    why: 'it tells where a thing is',
    pattern: phrase(
      "(?: is | are | 's ) <adverb>* (?: offset | set back | pitched ) (?: <adverb> | by )* <number>",
    ),
  },
  {
    kind: 'arrival',
    why: 'somebody looks at it, and brings nothing',
    pattern: phrase(
      "(?: he | she | they | <person> ) (?: can | could | 'll | will | is going to | 's going to | 's coming to ) (?: come and | come to | <adverb> )* (?: look at | have a look | take a look | see to | see about | look over | look into )",
    ),
  },
  {
    kind: 'promise',
    why: 'it tells when the work is',
    pattern: phrase(
      "^<lead>* <plain>{0,4}? (?: casting | raising | pour | pouring | launch | survey | inspection | lift | glue-up | fitting | testing | craning | blessing ) (?: is | 's ) (?: on | for )? <day>",
    ),
    unless: / (?:show|film|video|episode|see|watch)\//,
  },
  ...(['arrival', 'promise'] as const).map((kind) => ({
    kind,
    why: 'it is to be paid, and brings nothing',
    pattern: phrase(`${DUE_MONEY} (?: is | 's | are | was )? (?: due | owed | payable | overdue )`),
  })),
  {
    kind: 'arrival',
    why: 'it tells how old a thing is',
    pattern: phrase(
      '(?: <number> | a | few | couple of | hundred )+ (?: day | days | week | weeks | month | months | year | years ) old',
    ),
    unless: / (?:came|come|arrived|turned|ordered|bought|delivered|due|here)\//,
  },
  {
    kind: 'arrival',
    why: 'it tells what the day is about',
    pattern: phrase(
      "^<lead>* it (?: 's | is ) (?: <det> | more )? <plain>{1,4}? (?: today | tonight | this morning | this afternoon | this week )+ $",
    ),
    unless: / (?:finally|here|due|last)\//,
  },
  {
    kind: 'arrival',
    why: 'somebody comes, who was just named',
    pattern: phrase(
      "^<lead>* (?: <det>? <plain>{0,2}? <person> (?: reckons | reckoned | says | said | thinks | hopes ) (?: he | she ) | he ) (?: (?: 'll be | will be | is | 's | can be ) (?: here | round | back | over | out ) | comes | is coming | 's coming | 'll come | will come ) (?: <adverb> | <day> | on | at | the | this | next | first thing | morning | afternoon | week | <number> | nineteenth | for a look | to look | again )* $",
    ),
    unless: / (?:with|it|them)\//,
  },
  {
    kind: 'promise',
    why: 'somebody comes to the work',
    pattern: phrase(
      "^<lead>* (?: i | we )? (?: 've | have )? (?: got | have | had ) <det>? <plain>{0,2}? (?: <person> | bloke | man | woman | guy | fella ) coming",
    ),
  },
  {
    kind: 'arrival',
    why: 'somebody is to come, and no goods',
    pattern: phrase(
      "^<lead>* (?: i | we )? (?: 've | have )? (?: got | have | had ) <det>? <plain>{0,2}? (?: <person> | bloke | man | woman | guy | fella ) coming",
    ),
    unless: / (?:with|bringing|dropping|delivering)\//,
  },
  {
    kind: 'problem',
    why: 'it was opened up on purpose',
    pattern: phrase(
      "(?: i | we ) (?: have | 've )? <adverb>* opened <any>{0,3}? (?: up | out ) (?: from | to ) (?: an | a | <number> )",
    ),
  },
  {
    kind: 'decision',
    why: 'it tells when',
    pattern: phrase(
      "(?: that | it | which | they ) (?: 'll | will | 'd | would ) be (?: <adverb> | mid | early | late | the | end | middle | start | beginning | of | about | around | next | sometime | in | on )* (?: <day> | january | february | march | april | may | june | july | august | september | october | november | december | summer | autumn | winter | christmas | easter ) $",
    ),
  },
  {
    kind: 'decision',
    why: 'it tells how high or how deep a thing goes',
    pattern: phrase(
      '^<lead>* (?! i | we | it | that ) <plain>{1,5}? (?: goes | go | runs | comes ) (?: up | down )? (?: to )? <number> <unit>? (?: above | below | under | over )',
    ),
    unless: / (?:instead|rather|because|not|now|cause|since|so)\//,
  },
  {
    kind: 'decision',
    why: 'it tells how much comes',
    pattern: phrase('(?: getting | gets ) <adverb>* <number>+ <unit> (?: a | per | an )'),
  },
  {
    kind: 'decision',
    why: 'it tells how a thing runs',
    pattern: phrase(
      '(?: run | runs | taper | tapers | go | goes ) from <number> <unit>? (?: down | up )? to',
    ),
  },
  {
    kind: 'problem',
    why: 'it opens on something',
    pattern: phrase(
      '^<lead>* <plain>{1,4}? (?: lifts | lift ) (?: up )? (?: on | with ) <any>{0,3} (?: strut | struts | hinge | hinges | ram | rams | pulley | pulleys | winch | hoist | rope )',
    ),
  },
  {
    kind: 'task',
    why: 'it tells where a thing must be',
    pattern: phrase(
      "^<lead>* (?! i | we ) <plain>{1,8}? (?: needs | need | has | have | wants | want | must | ought | got | 's )+ to (?: sit | stand | be | stay | go | come | finish | hang ) <number> <unit>? (?: back | off | from | above | below | up | down | in | out | proud | clear )",
    ),
    unless: / (?:come|moved?|raised?|lowered|take|cut|trim|before|until|till|by)\//,
  },
  {
    kind: 'decision',
    why: 'it tells of a delivery',
    pattern: phrase(
      '(?: getting | being ) (?: delivered | dropped off | dropped round | sent | shipped | posted | collected )',
    ),
    unless: / (?:because|instead|rather|since|so)\//,
  },
  {
    kind: 'decision',
    why: 'it tells of work that was begun',
    pattern: phrase(
      "^<lead>* (?: i | we ) (?: 've | 'd | have | had )? <adverb>* (?: started | begun | began | made a start | got going ) (?: on | with | to )? <any>* $",
    ),
    // "I've started using oil instead, because the varnish lifts."
    unless: / (?:instead|rather|because|since|cause|using|buying|not)\//,
  },
  {
    kind: 'done',
    why: 'it tells how much',
    pattern: phrase(`${BE} (?: up | down | still | only )+ at ${FIGURE}`),
  },
  {
    kind: 'done',
    why: 'it tells how a thing is',
    pattern: phrase('(?: all over the (?: place | shop ) | (?: left | right | cack ) handed )'),
  },
  {
    kind: 'done',
    why: 'the thing leans; nobody did it',
    pattern: phrase(
      `^<lead>* (?! i | we | he | she ) <plain>{1,6} ${BE} <adverb>* (?: leaning | listing | tilting | sinking | bowing | bulging )`,
    ),
  },
  {
    kind: 'done',
    why: 'the day was over',
    pattern: phrase(
      "^<lead>* (?: i | we )? (?: <adverb> | have | 've )* knocked off (?: early | late | at | for | about | around | <day> | then | $ )",
    ),
  },
  {
    kind: 'done',
    why: 'it tells of a state that is a fault',
    pattern: phrase(
      `${BE} (?: all | both | <adverb> )* (?: (?: shot | perished | seized | cracked | worn | torn | burst | blown | scored | pitted | rotted | damaged | ruined | wrecked | knackered | buggered ) (?: $ | and | in | at | through | on | to ) | <done> (?: bad | badly | wrong | crooked ) $ )`,
    ),
  },
  {
    kind: 'done',
    why: 'an idiom',
    pattern: phrase(
      '(?: (?: came | come | comes ) in (?: handy | useful | for (?: a | some ) (?: bit | lot )? ) | mixed (?: feelings | results | luck | reviews | blessing | bag ) )',
    ),
  },
  {
    kind: 'done',
    why: 'it is still to come',
    pattern: phrase(`${BE} <adverb>* (?: delayed | held up )`),
  },
  {
    kind: 'arrival',
    why: 'somebody comes, and no goods',
    pattern: phrase(
      `^<lead>* <det>? <plain>{0,2}? <person> (?: with <det> <plain>{1,2} )? (?: is | 's | are | 're | will be | 'll be ) <adverb>* (?: coming | here | round | back | due | over | out ) (?: back | over | round | out | down | up )? (?: <adverb> | <day> | on | at | the | this | next | first thing | morning | afternoon | evening | week | <number> | for a look | to look | to look at it | then | again )* $`,
    ),
    unless: / (?:he|they|she)\//,
  },
  {
    kind: 'arrival',
    why: 'it tells how long the goods named before take',
    pattern: phrase(
      "^<lead>* (?: they | he | she | it ) (?: said | say | says | reckon | reckons | reckoned | quoted | told me | takes | will be | 'll be | 's ) (?: about | around | maybe | up to | it 's | it 'll be | two to )* (?: a | an | <number> | couple of | few ) <any>{0,3}? (?: day | days | week | weeks | fortnight | month | months ) $",
    ),
  },
  {
    kind: 'promise',
    why: 'it was shown, and is promised no longer',
    pattern: phrase(
      "(?: i | we ) <adverb>* (?: did <adverb>* (?: show | tell | film | explain to | give | let ) | showed | told | (?: 've | have ) <adverb>* shown ) (?: you | ye | yous | y'all | everyone | everybody | viewers )",
    ),
    unless: / (?:'d|'ll|will|would|owe|promise|promised|not|going)\//,
  },
  {
    kind: 'task',
    why: 'an idiom',
    pattern: phrase("something (?: 's | has ) (?: got )? to give"),
  },
  {
    kind: 'task',
    why: 'it tells how much room a thing must have, or the way it must come',
    pattern: phrase(
      '^<lead>* (?! i | we ) <plain>{1,8} (?: needs | need | has | have | wants | want | must | ought | got )+ to (?: clear <any>{1,6} by | (?: come | go | fit | get | pass ) (?: in | up | down )* (?: through | past | under | between ) )',
    ),
  },
  {
    kind: 'task',
    why: 'it tells to what, and the work is another clause',
    pattern: phrase(
      "^<lead>* (?: that | which | this ) (?: 's | is ) (?: what | how | where | why ) (?: i | we )",
    ),
  },
  {
    kind: 'task',
    why: 'it tells what there is enough for',
    pattern: phrase(`${BE} (?: not | just | barely | only | hardly )? (?: enough | plenty ) <plain>{0,3} to`),
  },
  {
    kind: 'task',
    why: 'it had to be done, and was',
    pattern: phrase('^<lead>* (?: i | we )? (?: <adverb> | then )* had to (?! have | be ) <any>'),
    unless: / (?:tomorrow|tonight|yet|still)\//,
  },
];

/** "I'm going to make a cushion, no I'm not": taken back in the next breath. */
const TAKEN_BACK = phrase(
  "^<lead>* (?: i | we ) (?: 'm | 're | am | are | will | 'll | do | did | have | 've ) not $",
);

/** Drafts that stand; what only sounds like a note is told to the trace. Pure, one look at each draft. */
const WONDERS =
  /^(?: \S+\/\S*L\S*)* (?:did|have|has|was|were|could|would)\/\S* (?:i|we|he|she|it|they|that|the|somebody|someone)\//;

/** "Did I read the tape wrong": asked of oneself, and not known. */
export const isWondering = ({ code }: Said): boolean => WONDERS.test(code);

export function withoutLookalikes(
  drafts: readonly Draft[],
  scene: Scene,
  trace: TraceStep[],
): readonly Draft[] {
  return drafts.filter((each) => {
    const said = scene.said[each.from];
    const why = said && (lookOf(each, said, scene.said[each.to + 1]) ?? takenBack(each, scene));
    if (!why) return true;
    trace.push({
      stage: 'statements: only sounds like it',
      rule: each.rule,
      span: { start: each.start, end: each.end },
      outcome: 'dropped',
      why,
    });
    return false;
  });
}

function lookOf({ kind, from, to, measured }: Draft, said: Said, next: Said | undefined): string | undefined {
  if (from !== to || measured) return undefined;
  // "It won't be here | till Friday" comes on Friday.
  if (kind === 'arrival' && /^(?:until|till)$/.test(next?.opener ?? '')) return undefined;
  return LOOKS.find(
    (look) => look.kind === kind && !look.unless?.test(said.code) && matches(look.pattern, said),
  )?.why;
}

function takenBack({ kind, to }: Draft, scene: Scene): string | undefined {
  if (!/^(?:task|decision|promise|done)$/.test(kind)) return undefined;
  const said = scene.said[to] as Said;
  const next = neighbour(scene, said, 1) ?? scene.said[to + 1];
  return next && next.words.length <= 5 && matches(TAKEN_BACK, next)
    ? 'the next words take it back'
    : undefined;
}
