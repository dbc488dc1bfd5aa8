/** Sizes, counts and ratings that are wrong for their place, and things that are not what they should be. */
import { neighbour, type Scene, type StatementRule } from './draft.ts';
import { isWondering } from './not-told.ts';
import { find, matches, phrase } from './phrase.ts';
import { has, problem, subjectIsThing } from './snag.ts';
import type { Said } from './words.ts';

const IS =
  "(?: 's | is | are | 're | was | were | comes | came | has come | have come | 's come | coming | 's coming out | stands | sits | (?: 's | is | are | 're | was | were ) (?: sitting | standing | hanging | reading | showing | measuring | running | coming (?: out | up )? | riding | lying ) | ends up | ended up | works out | worked out | turned out | measures | measured | runs | finished up | finishes | shows | is showing | goes | went | hangs )";
/** "out", "too long": the way in which a size is off. */
const OFF =
  '(?: out | over | under | short | shy | adrift | oversize | undersize | oversized | undersized | proud | low | high | tight | slack | off )';
const SMALL =
  / (?:mil|mils|mm|millimetres?|millimeters?|thou|eighths?|sixteenths?|quarter|half|inch|hair|degrees?|hundredths|tenths)\//;
const saying = (said: Said, words: RegExp) => words.test(said.code);

/** What the clause right after says, in the same sentence or as the next short one. */
function following(said: Said, scene: Scene): Said | undefined {
  const next = scene.said[said.index + 1];
  return next && next.sentence - said.sentence <= 1 ? next : undefined;
}

/** "It's at 45 degrees, as it should be": nothing differs. */
const AS_IT_SHOULD =
  / (?:as|like|where|how|what)\/\w* (?:it|they|that|this|she|he|everything|all)\/\w* (?:should|ought)\//;
/** "should be", "supposed to be", "I wanted": what the thing ought to be. */
const OUGHT = phrase(
  '(?: (?: should | ought to | was to | were to | has to | have to ) (?: have )? (?: be | been ) | (?: supposed | meant | designed ) to (?: be | have | take | go | fit | do | sit | come | line | hold | give | run | read ) | <any>? (?: drawing | drawings | plan | plans | label | box | carton | sheet | spec | plate | catalogue | catalog | website | site | manual | book | listing | ticket | sticker | advert | ad | tag | packet | tin | datasheet | paper | papers | invoice | template | kit ) (?: says | said | say | shows | showed | has | had | gives | gave | calls for | called for | reads | claims | claimed | promised ) | (?: i | we ) (?: ordered | asked for | paid for | specified | drew | allowed | measured | wrote down ) | (?: it | they ) (?: says | say | said ) <any>{0,2}? <number> )',
);
/** "but it is 55", "and the gap's only 430", "mine's 19": what it turns out to be. */
const TURNS_OUT = phrase(
  "^<lead>* <any>{0,6}? (?: 's | is | are | 're | was | were | measures | measured | came | comes | reads | shows | read | sits | stands | got | sent | delivered | weighs | weighed | makes | runs | gives | gave | takes | holds ) <adverb>* (?: <number> | only <any> | about <number> | nearer <number> | more like <any> | a | an | barely <any> | nowhere <any> | not | half | double | twice | nothing )",
);

/** "The box says 13, I laid a tape across it and it's 13 and 3/4": measured anew further on in the sentence. */
function turnsOutLater(said: Said, scene: Scene): Said | undefined {
  if (!has(said.words, 'Q') || !/ (?:says|said|say|shows|claims|claimed)\//.test(said.code)) return undefined;
  for (let step = 2; step <= 4; step++) {
    const next = neighbour(scene, said, step);
    if (!next) return undefined;
    if (/^(?:and|but|)$/.test(next.opener) && matches(MEASURED_ANEW, next)) return next;
  }
  return undefined;
}
const MEASURED_ANEW = phrase(
  "^<lead>* (?: it | they | mine | that | this | the <plain>{1,2} ) (?: 's | is | are | 're | was | were | came to | comes to | came out at | comes out at | measures | measured | reads | read | weighs | weighed ) <adverb>* (?: only | nearer | more like | a | just )* <number>",
);

export const MISFIT_RULES: readonly StatementRule[] = [
  problem(
    '<thing> is <much> <off>',
    `^<lead>* (?<subject> <plain>{1,9}? ) ${IS} <adverb>* (?: a | an | about | good | full | fat | nearly | almost | over | by | up | in | on | still | just | all )* <number> (?: <number> | and | a | point )* (?: <unit> | of | an | a | <adverb> )* ${OFF} (?: (?: at | across | along | on | over | by | end | one | in | round | around | corner | both | down | between | when | again | now | somewhere ) <any>* )? $`,
    (found, said) => {
      if (!subjectIsThing(found) || has(found.words, 'N')) return false;
      // "it's six foot high" is a size and "six foot off" a place: only a small amount is a misfit that way.
      const last = found.words.at(-1)?.lower ?? '';
      const isBare = /^(?:off|over|under|high|low|tight|slack|proud|out)$/.test(last);
      const isSmall =
        SMALL.test(said.code) &&
        !saying(said, / (?:feet|foot|metre|metres|purpose|hundred|thousand|\d{3,})\//);
      // "200 kilos over one axle": where it bears, not how much too much it is.
      if (
        / over\/\w* \S+\/\w*[TQO]\w* \S+\/\w*[^\s/]*$/.test(said.code) &&
        !saying(said, / (?:too|out|off)\//)
      )
        return false;
      // What is high is a size as well: it must be said where it is high.
      if (saying(said, / high\//)) return isSmall && !isBare;
      return !isBare || isSmall;
    },
  ),
  problem(
    '<much> of <play>',
    '(?<much> <number> <plain>{0,3}? <unit>? ) of (?: <adverb> | a | some )* (?: hollow | wear | play | slop | twist | bow | runout | run-out | rust | sag | wind | backlash | flex | belly | movement | float | slack | droop | lean | error | wobble | rock | misalignment | drop | hump | cup | dip )',
    (found, said) =>
      has(found.part('much'), 'Q') &&
      !saying(
        said,
        / (?:no|need|allow|allows|want|wants|leave|left|within|max|maximum|under|least|purpose|so)\//,
      ),
  ),
  problem(
    '<thing I made> should be <that>',
    "^<lead>* (?<subject> (?: <det> ) <plain>{1,4}? ) (?: that | which )? (?: i | we ) (?: 've | have | 'd | had )? <adverb>* (?: already )? <any> <any>{0,4}? (?: should | ought to | need to | needs to | has to | have to | wants to | want to | was supposed to | were supposed to | was meant to | were meant to | must ) (?: have )? (?: be | been | come | go | lose | gain | shrink | grow ) (?<rest> <any>* )",
    (found, said) =>
      has(found.part('rest'), 'Q') ||
      saying(said, / (?:shorter|longer|wider|narrower|thicker|thinner|bigger|smaller|deeper)\//),
  ),
  problem(
    '<thing I made> is <that size>',
    "(?: <det> ) <plain>{1,3}? (?: that | which )? (?: i | we ) (?: 've | have | 'd | had )? <adverb>* (?: <did> | saved | bought | got | kept | had | ordered | found ) <any>{0,3}? (?: 's | is | are | was | were ) (?: <adverb> | only )* (?: for | bored | drilled | tapped | threaded | cut | made | set up | built | sized | drawn | punched | slotted | wound | rated | good for ) <any>{0,2}? <number>",
    (found) => !has(found.words, 'N'),
  ),
  problem(
    'made to the old <size>',
    '(?: made | cut | built | drilled | drawn | bent | welded | ordered | bored | sewn | priced | planned | sized | done | cast | rolled | folded | glazed | set | routed | punched ) <any>{0,2}? (?: to | on | for | from | at | with ) (?: the | my )? (?: old | wrong | first | previous | original ) (?: <plain> )? (?: size | sizes | measure | measurement | measurements | figure | figures | number | numbers | width | height | length | depth | spacing | drawing | drawings | template | pattern | layout | list | dimension | dimensions | one | floor | line | plan )',
    (found, said) => !has(found.words, 'N') && !saying(said, / (?:again|back|copy|copied)\//),
  ),
  problem(
    '<much> on a <thing> rated for <less>',
    "(?: on | into | in | through | over | under | from ) (?: a | an | the | my ) <plain>{1,3}? (?: that 's | that is | which is | that | rated | good | made | meant ) (?: <adverb> | only | good | rated | built | made | meant | takes | carries | holds | does | stops )* (?: for | to | at | up to )? <number>",
    (_, said, scene) => {
      const before = scene.said[said.index - 1];
      return (
        saying(said, / (?:only|good|rated|stops)\//) &&
        before !== undefined &&
        before.sentence >= said.sentence - 1 &&
        (has(before.words, 'Q') || has(said.words.slice(0, 4), 'Q'))
      );
    },
  ),
  problem(
    'would it <go>',
    "(?: would | did | will | does ) (?: it | they | she | that ) <any>{1,3} (?: (?: would | did | will | does ) (?: it | they | she | that ) )? (?: heck | hell | 'eck | buggery | my eye | no chance | not a chance )",
  ),
  problem(
    '<thing> is sold out',
    '(?: out of stock | sold out | none in stock | no stock | discontinued | no longer made | no longer make | stopped making | got none | have none | has none | obsolete | gone bust | lost my order | lost the order | never heard of it | do not make | does not make )',
    (_, said) => !saying(said, / (?:if|luckily)\//),
  ),
  problem(
    '<things> have gone off <thing>',
    "^<lead>* (?<subject> (?: <det> | <number> ) <plain>{1,4}? ) (?: have | has | 's | 've | are | is ) <adverb>* (?: gone | missing | broken | snapped | sheared | worn | lost | dropped | chipped ) (?: off | from | out of ) (?: the | its | my | one | that | each | both )",
    (found, said) =>
      subjectIsThing(found) &&
      !has(found.words, 'N') &&
      !saying(said, / (?:old|rust|paint|weight)\/\w* (?:'s|is|has|have|are)\//),
  ),
  problem(
    '<there> sits a <fault>',
    "^<lead>* (?: in | on | at | under | behind | along | across | by | near | inside | between | round | over ) <plain>{1,6}? (?: is | are | 's | sits | was | were | runs | goes | hangs | are | stands ) (?: already | still | also )? (?: a | an | another | some | two | three | one ) <plain>{0,2}? <fault>",
    (found, said) => !has(found.words, 'N') && !saying(said, / (?:hole|gap)\/\w* (?:for|to)\//),
  ),
  problem(
    '<thing> misses <thing>',
    '^<lead>* (?<subject> <plain>{1,6}? ) (?: misses | missed | miss ) (?: the | its | their | every ) (?: keep | hole | holes | slot | mark | joist | stud | studs | rafter | socket | mortise | mortice | bolt | bolts | line | target | thread | groove | strike | pin | catch | drain | tray )',
    subjectIsThing,
  ),
  problem(
    '<thing> is down <much>',
    "^<lead>* (?<subject> <plain>{1,6}? ) (?: 's | is | are | has | have ) <adverb>* (?: down | dropped | sunk | sagged | out | settled | lifted | risen | crept | moved | shifted | spread | opened | closed | dipped ) (?: <adverb> | about | nearly | almost | by | a | good )* <number> (?: <number> | <unit> | and | a | point )* (?: (?: at | across | along | on | over | end | one | in | from | since | overnight | towards | corner | both | between | to <any> ) <any>* )? $",
    (found, said) =>
      subjectIsThing(found) &&
      !has(found.words, 'N') &&
      !saying(said, / (?:percent|degrees|quid|dollars|budget|pounds|euro|euros)\//),
  ),
  problem(
    '<thing> <drops> <much> over the length',
    '^<lead>* (?<subject> <plain>{1,6}? ) (?: drops | drops off | rises | runs out | dips | falls | leans | slopes | sags | bows | bulges | varies | wanders | twists | tapers ) (?: <adverb> | off | out | away | in | by | about | nearly | almost | a | good )* <number> (?: <number> | <unit> | and | a | point )* (?: over | across | along | from | between | towards | to the | in the | end | at | in <any> | by | corner )',
    (found, said) =>
      subjectIsThing(found) && !saying(said, / (?:fall|gutter|drain|waste|pipe|temperature|degrees|so)\//),
  ),
  problem(
    '<thing> came up short',
    `^<lead>* (?<subject> <plain>{1,8}? ) (?: 's | is | are | has | have | 've )? (?: came | come | comes | coming | ended | ends | fell | falls | finishes | finished | fallen ) (?: up | out | in )? (?: <adverb> | <number> | <unit> | a | about | bit | touch | hair | whisker | fraction )* (?: short | shy | undersize | oversize | small | skinny | fat | thick | thin | narrow | heavy | wrong )`,
    (found) => subjectIsThing(found) && !has(found.words, 'N'),
  ),
  problem(
    '<thing> is <much> short of <that>',
    "^<lead>* (?<subject> <plain>{1,8}? ) (?: 's | is | are | 're | was | were ) <adverb>* (?: <number> | one | a | an ) <plain>{0,3}? (?: short | shy | missing | light )",
    (found) => subjectIsThing(found) && !has(found.words, 'N') && found.part('subject').length < 6,
  ),
  problem(
    '<thing> is not <big> enough',
    "^<lead>* (?<subject> <plain>{0,7}? ) (?: 's | is | are | 're | was | were | does | do | will | has | have ) not <adverb>* (?: nearly | anywhere near | quite )* (?: <any> enough | enough <any> | got enough | go far enough | give enough | leave enough | carry enough )",
    (found, said) => subjectIsThing(found) && !saying(said, / (?:sure|good|brave|daft|stupid)\/\w* enough/),
  ),
  problem(
    'not enough <thing>',
    '(?: not enough | nowhere near enough | not nearly enough | too little | too few | no room for | no space for | no clearance | no way to get | no way of getting | nowhere to | nowhere for | no room to | no access to | not much left to | not a lot left to | hardly enough | hardly any ) (?<rest> <any>* )',
    (_, said) => !saying(said, / (?:hours|day|time|coffee|tea|hands|sleep|money|words|worry|complain)\//),
  ),
  problem(
    'that does not leave room',
    '(?: does not | do not | will not | did not | only ) (?: leave | leaves | left | give | gives | gave ) (?: me | us | you | it | them | the <any> )? (?: <adverb> | only )* (?: room | space | enough | any | anywhere | much | clearance | <number> )',
    (found, said, scene) => {
      if (found.words[0]?.lower !== 'only') return true;
      const next = following(said, scene);
      return next !== undefined && saying(next, / (?:need|needs|want|wants|should|but|supposed)\//);
    },
  ),
  problem(
    '<this> leaves only <much>, <that> needs <more>',
    "(?: leaves | leave | left | only got | 've only <any>? | has only | have only | there 's only | there are only | is only | 's only ) (?: me | us )? (?: only )? <number>",
    (_, said, scene) => {
      const next = following(said, scene);
      return (
        next !== undefined &&
        matches(WANTS_MORE, next) &&
        (has(next.words, 'Q') || saying(next, / (?:enough|more|least|twice|double)\//)) &&
        !/\b(?:so|because|if)\b/.test(next.opener)
      );
    },
  ),
  problem(
    '<thing> is only good for <so much>',
    "^<lead>* (?<subject> <plain>{1,9}? ) (?: 's | is | are | 're | was | were )? <adverb>* (?: only | just | merely )+ (?: 's | is | are )? <adverb>* (?: rated | good | made | built | meant | designed | sized | certified | specced | specified | fit | up | takes | take | holds | hold | carries | carry | goes | go | reaches | reach | gives | pulls | does | manages | opens | comes | runs | lifts | puts ) (?: to | for | up | at | out | down | in | about )* <number>",
    (found, said) => subjectIsThing(found) && !saying(said, / (?:so|thankfully|need|needs)\//),
  ),
  problem(
    '<thing> gives no <power>',
    "(?: (?: i | we ) (?: 'm | 're | am | are )? (?: getting | get | got ) | shows | showing | reads | reading | gives | giving | puts out | putting out | makes | making | has | 's got ) (?: no | zero | nothing | not a | sod all | bugger all | next to no | hardly any ) (?: reading | power | voltage | spark | pressure | signal | water | flow | output | charge | current | continuity | earth | heat | light | response | suction | compression | out | at | on )",
  ),
  problem(
    '<thing> does nothing',
    '(?: nothing happens | nothing happened | nothing doing | nothing at all comes | none of (?: the | my | them | it | these | those ) <plain>{0,4}? <adverb>* (?: work | works | worked | fit | fits | fitted | match | matches | line | lines | close | closes | open | light | start | run | are | is ) | neither of (?: the | my | them | these ) <plain>{0,3}? (?: works | work | fits | fit | match | matches | closes | opens | is | are ) | neither (?: fits | works | fit | work | matches | closes ) )',
    (found, said) => !saying(said, / (?:urgent|mine|finished|done|cheap|free)\//) && found.words.length > 0,
  ),
  problem(
    '<thing> is not the same <size>',
    "^<lead>* (?<subject> <plain>{1,7}? ) (?: 's not | is not | are not | 're not | was not | were not ) <adverb>* (?: the same (?: height | length | width | size | thickness | depth | pitch | colour | color | shade | diameter | angle | thread | radius | spacing ) | identical | a pair | a match | equal | symmetrical | concentric | in line | to size | to drawing | to spec | to gauge | up to (?: it | size | the job | much | spec ) | fit for | as (?: deep | wide | long | thick | high | straight | square | level | drawn | ordered | thick | strong | described ) )",
    subjectIsThing,
  ),
  problem(
    '<things> differ by <much>',
    "^<lead>* (?<subject> <plain>{1,7}? ) (?: 's | is | are | 're | were ) <adverb>* (?: <number> <any>{0,2}? (?: different | apart | out of step | unequal ) $ | (?: different | uneven | unequal | odd ) (?: heights | lengths | widths | sizes | thicknesses | colours | colors | threads | shades ) )",
    (found) => subjectIsThing(found) && has(found.part('subject').slice(-1), '') && !has(found.words, 'N'),
  ),
  problem(
    '<one> is <shorter> than <the other>',
    `^<lead>* (?<subject> <plain>{1,6}? ) ${IS} <adverb>* (?: a | bit | <number> | <unit> | lot | touch | hair | good | way | far | much | slightly )* (?: shorter | longer | wider | narrower | thicker | thinner | taller | lower | higher | deeper | shallower | bigger | smaller | heavier | tighter | looser | fatter | further | closer ) (?: <any>{0,2} )? than (?: the other | the others | the rest | its | it should | it ought | i thought | i reckoned | i measured | i figured | i allowed | they should | they said | advertised | planned | the drawing | the plan | the opening | the hole | the gap | the slot | the doorway | the door | the space | the cooker | the old | what | i ordered | i drew )`,
    (found) => subjectIsThing(found) && !has(found.words, 'N'),
  ),
  problem(
    '<thing> does not match',
    "^<lead>* (?<subject> <plain>{1,8}? ) (?: does not | do not | did not | will not | 'll not | is not | are not ) <adverb>* (?: quite | even | actually )* (?: match | add up | tally | agree | correspond | cover | overlap | reach | meet | suit | accept | come within | make it | clear | register | mesh | engage )",
    (found) => subjectIsThing(found),
  ),
  problem(
    '<thing> no longer <fits>',
    "^<lead>* (?<subject> <plain>{1,10}? ) (?: (?: 's | is | are | 're | will )? no longer | (?: 's | is | are ) <adverb>* (?: no use | no good | useless | worthless | redundant | pointless | scrap | wasted | obsolete | the wrong <any> | wrong | undersize | oversize ) ) <adverb>* (?: fit | fits | fitting | big | reach | reaches | match | matches | clear | clears | close | closes | line | lines | long | wide | right | square | level | flush | straight | true | tall | meet | meets | work | works | enough | sit | sits | hold | holds | now | anymore | any )? (?<rest> <any>* ) $",
    (found, said) =>
      subjectIsThing(found) &&
      !saying(said, / no\/\w* longer\/\w* (?:leaks?|rattles?|needed|need|rubs?|binds?|sticks?)\//),
  ),
  problem(
    '<thing> is now too <short>',
    "^<lead>* (?<subject> <plain>{1,10}? ) (?: 's | is | are | 're | will be | 'll be ) (?: now )? (?: <adverb> )* (?: <number> | <unit> | a | bit | touch | hair )* (?: too | undersize | oversize | overlong | the wrong (?: size | length | width | height | hand | way | thread | pitch | shape | colour | color ) ) (?<rest> <any>* )",
    (found, said) =>
      subjectIsThing(found) &&
      !has(found.part('subject').slice(-1), 'Q') &&
      said.words.at(-1)?.lower !== 'too' &&
      !has(found.words, 'N') &&
      !saying(said, / too\/\w* (?:good|late|bad|early|busy|tired|nice|pretty|lovely|right|kind|much)\//),
  ),
  problem(
    'too <much> for <thing>',
    '(?: far | way | much | bit | little | just | miles )? too (?: much | many | wet | dry | hot | cold | rich | lean | coarse | fine | stiff | brittle | slack | rough | thick | thin | shallow | steep | noisy | loud | bright | dim | weak | heavy ) (?: to | for | in | on | current | weight | slop | play | movement | pressure | gap | runout | run-out | backlash | flex | water | air | resin | load | friction ) (?<rest> <any>* )',
    (found, said) =>
      !has(found.words, 'N') &&
      !saying(said, / too\/\w* much\/\w* (?:to|for|in|on)\/\w* (?:do|me|ask|say|money|one|my)\//),
  ),
  problem(
    '<thing> is the wrong <kind>',
    '(?<subject> <any>{0,9}? ) (?: the | a | on | in | to | its )? wrong (?<rest> <any>{0,6} )',
    (found, said) => {
      const { code } = said;
      if (NOT_WRONG.test(code) || AMENDS.test(code) || isWondering(said)) return false;
      const subject = found.part('subject');
      if (/^(?:number|height|width|size|idea|figure)$/.test(found.part('rest')[0]?.lower ?? '')) return false;
      // "I was wrong", "nine hundred's wrong": people err and sizes are chosen anew; a thing made wrong is a snag.
      if (/^(?:i|you|he|she|we)$/.test(subject[0]?.lower ?? '')) return subject.length > 2;
      const last = subject.at(-1);
      const size = subject.length === 0 || !/[S]/.test(last?.classes ?? '') ? last : subject.at(-2);
      return (
        !size ||
        !(size.classes.includes('Q') || /^(?:number|height|width|size|idea|figure)$/.test(size.lower))
      );
    },
  ),
  {
    name: 'it should be <this>, but it is <that>',
    read: (said, scene) => {
      const ought = find(OUGHT, said);
      if (!ought || scene.unreal.has(said.index) || said.asks || AS_IT_SHOULD.test(said.code))
        return undefined;
      const next = following(said, scene);
      if (!next || next.asks || scene.unreal.has(next.index)) return undefined;
      const found = turnsOutLater(said, scene);
      if (found)
        return { kind: 'problem', from: said.index, to: found.index, start: said.start, end: found.end };
      const turns =
        /^(?:but|and|when|only)$/.test(next.opener) || next.sentence !== said.sentence || next.afterPause;
      if (
        !turns ||
        !matches(TURNS_OUT, next) ||
        /\bso\b/.test(next.opener) ||
        saying(next, / to\/\w* \S+\/\w*B/)
      )
        return undefined;
      const differs =
        /^(?:but|when|only)$/.test(next.opener) ||
        (has(said.words, 'Q') && has(next.words, 'Q')) ||
        / (?:only|nowhere|not|more|nearer|barely|wrong)\//.test(next.code);
      if (!differs || / (?:bang|dead|spot|exactly|right|perfect|fine|within)\//.test(next.code))
        return undefined;
      if (/\bwhen\b/.test(next.opener) && !/ (?:ordered|wanted|asked|said)\//.test(next.code))
        return undefined;
      return { kind: 'problem', from: said.index, to: next.index, start: said.start, end: next.end };
    },
  },
  problem(
    'so <much> the <things> should be',
    '^<lead>* <number> (?: <number> | and | a | <unit> )* (?: the | my | those | that | they | it ) <plain>{0,3}? (?: should | ought to ) (?: have )? (?: be | been ) $',
  ),
  {
    name: 'they sent <this> when I ordered <that>',
    read: (said, scene) => {
      if (scene.unreal.has(said.index) || said.asks || !matches(SENT, said)) return undefined;
      const next = neighbour(scene, said, 1);
      if (!next) return undefined;
      const contrast =
        /\b(?:when|instead of|rather than|but|not)\b/.test(next.opener) ||
        / (?:instead|not|ordered|wanted|asked)\//.test(next.code);
      if (!contrast) return undefined;
      return { kind: 'problem', from: said.index, to: next.index, start: said.start, end: next.end };
    },
  },
  {
    name: 'the rule says <this>',
    read: (said, scene) => {
      // "The book wants at least eighteen" lays a rule down; "the book says eighteen" holds a size against it.
      if (
        scene.unreal.has(said.index) ||
        !matches(RULE_SAYS, said) ||
        saying(said, / (?:at\/\w* (?:least|most)|minimum|maximum)\//)
      )
        return undefined;
      const after = neighbour(scene, said, 1);
      if (after && has(after.words, 'Q') && saying(said, / what\/\w* (?:did|do)\//)) return undefined;
      const before = scene.said[said.index - 1];
      if (!before || before.sentence < said.sentence - 1 || scene.unreal.has(before.index)) return undefined;
      const sized = [before, scene.said[said.index - 2]].some(
        (each) => each !== undefined && has(each.words, 'Q'),
      );
      if (!sized) return undefined;
      let from = before;
      // The size may hang on a thing named just before it in the same sentence.
      while (from.index > before.index - 2 && scene.said[from.index - 1]?.sentence === before.sentence) {
        from = scene.said[from.index - 1] as Said;
      }
      return { kind: 'problem', from: from.index, to: said.index, start: from.start, end: said.end };
    },
  },
];

/** "Nothing wrong with it", "can't go wrong", "I was wrong there". */
const NOT_WRONG =
  / (?:not|never|nothing|no|nobody|hardly|get|go|goes|went|prove|proved|proven|correct|corrected)\/\w* (?:\S+ ){0,4}?wrong\/| wrong\/\w* (?:with|again|there|about)\/| (?:if|could|might|prove|what)\//;
/** The wrong thing goes back, or is dealt with. */
const AMENDS =
  / (?:sent|send|take|took|taking|taken|gone|go|going|goes)\/\w* (?:\S+ ){0,6}?back\/| in\/\w* the\/\w* post\/| wrong\/\w* (?:\S+ ){1,3}?(?:'s|is|are|has|been)\/\w* (?:\S+ ){0,2}?\S+\/\w*[Pc]/;
const WANTS_MORE = phrase(
  "^<lead>* (?: (?: i | we | you | it | they | he | she | <plain>{1,4}? ) (?: need | needs | want | wants | wanted | needed | should | must | asked for | ordered | has to | have to | called for | calls for | takes | would want ) | supposed | that 's not enough | not enough )",
);
const SENT = phrase(
  "(?: they | he | she | merchant | merchants | supplier | yard | mill | sawmill | shop | courier | lorry | glazier | maker | makers | factory | foundry | fabricator | warehouse | <plain> ) (?: 've | 's | has | have )? (?: sent | delivered | shipped | supplied | brought | posted | dropped off ) (?: me | us )? (?<object> <any>{1,6} )",
);
/** "Law says a hundred", "and the road says what?", "look at the crane's plate": the bound that was just overrun. */
const RULE_SAYS = phrase(
  "^<lead>* (?: (?: the | my | their )? (?: law | rule | rules | road | regs | regulations | code | standard | spec | plate | limit | book | inspector | surveyor | insurance | papers | manual | label | maker | makers | manufacturer ) (?: says | say | allows | allow | wants | want | permits | stops at | gives up at | draws the line at ) (?: no | <adverb> | no more than | a | only | at | most | <number> | what ) | what (?: did | does | do | stood | stands | was ) <any>{1,6} (?: say | said | papers | plate | rule | limit | book | law ) | (?: and )? (?: you | ye | we | i ) (?: all )? know what <any>{1,5} (?: said | says | say | told me ) | (?: i | we ) <adverb>* (?: said | told <any>{1,3} | wanted | asked for | promised | allowed | swore | ordered | drew | planned | reckoned on ) <any>{0,4}? <number> <any>{0,3} $ | look at <any>{1,4} (?: plate | label | rating | limit | papers | sheet | rule ) | (?: that 's | which is | it 's ) (?: over | under | past | above | below | more than | less than | beyond | outside | well over | <any> over ) (?: the | my | what | its | our ) (?: limit | rule | max | maximum | minimum | rating | tolerance | i | line | allowance | budget | own | plate | <any> ) )",
);
