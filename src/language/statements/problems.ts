import { LIMIT_RULES } from './broken-limits.ts';
import { neighbour, type Scene, type StatementRule } from './draft.ts';
import { GAVE_OUT_RULES } from './gave-out.ts';
import { HARM_RULES } from './harm-done.ts';
import { MADE_IN_VAIN_RULES } from './made-in-vain.ts';
import { MISFIT_RULES } from './misfits.ts';
import { MISHAP_RULES } from './mishaps.ts';
import { matches, phrase } from './phrase.ts';
import { REFUSAL_RULES } from './refusals.ts';
import { SCRAP_RULES } from './scraps-of-trouble.ts';
import { has, isNothingOfOurs, problem, subjectIsThing } from './snag.ts';
import { COUNTED_TROUBLE, TROUBLE_FOUND_RULES } from './troubles-found.ts';
import { PASSING_TROUBLE_RULES } from './troubles-in-passing.ts';
import type { Said } from './words.ts';

/** A judgement that makes a snag of the words before it. */
const VERDICT = phrase(
  "^<lead>* (?: (?: that | which | it | this )? (?: 's | is ) (?: <adverb> | right )* (?: a | an | the )? (?: problem | snag | no good | not good | no use | trouble | nuisance | disaster | mess | pain | bummer | right mess | bit of a problem | miles out | not right | not great | not ideal | not on | not enough | not going to work ) | (?: that | it | which ) (?: will not | is not going to ) (?: do | work | wash ) | (?: that | which )? (?: 's | is ) <adverb>* (?: rubbish | poor | pathetic | hopeless | useless | dreadful | terrible | shocking | a joke ) (?: for <any>{1,6} )? | no good | over | nope | not good | not good enough (?: by <any>{1,4} | for <any>{1,4} )? | (?: too | way too | far too ) <any> | it 's (?: thin | short | tight | shy | narrow | undersize | proud | slack | loose ) | not enough | not even close | she 'd scrape | it 'd scrape | that 'll never <any> ) (?: at all | is it | then | either | now )* $",
);

const TOO = `(?: fat | wide | narrow | tall | short | long | high | low | heavy | light | tight | thick | thin | big | small | deep
  | shallow | close | far | hot | cold | slow | fast | weak | soft | loose | wet | damp | steep | bent | stiff | late | proud | slack | rich | lean )`;

/** Done to these it hurts nobody but the speaker. */
const BODY =
  / (?:neck|leg|arm|back|finger|thumb|heart|mind|temper|patience|hand|toe|nose|rule|record|sweat|fast)\//;
/** Verbs that are work on purpose as often as harm. */
const WORK_TOO =
  / (?:split|broke|cracked|stripped|burnt|burned|blew|ripped|tore|smashed|bent|snapped|dropped|scratched|cut)\//;
const MEANT =
  / (?:out|off|down|up|away|back|apart|open|loose|old|rusted|rotten|onto|into|over|round|level)\/| in\/\w* (?:half|two|three|quarters)\/| to\/\w* \S+\/\w*Q/;
const BY_ACCIDENT =
  / (?:nearly|managed|accidentally|accident|mistake|bloody|stupid|idiot|damn|another|last|brand)\//;
/** A thread, a head, a fuse: things that strip or blow by themselves. */
const STRIPS_OR_BLOWS =
  / (?:threads?|screws?|bolts?|nuts?|heads?|gears?|splines?|holes?|teeth|fuses?|bulbs?|breakers?|seals?|gaskets?|motor|tyre|tire|hose|rivets?|transistor|board|stud|one)\//;

/** A thing in a bad state, or one that behaves badly. */
const FAULT_RULES: readonly StatementRule[] = [
  problem(
    '<thing> is <faulty>',
    phrase(
      "^<lead>* (?<subject> <plain>{1,10}?) (?: 's | is | are | 're | has | have | 've | 's gone | has gone | went | came | turned up | arrived | looks | feels | seems | was | sits | stands | hangs | gets | got | turned out | came out | ended up ) (?: been | gone | got | come | <adverb> | a bit | so | all | completely | totally | rusted | clean )* (?<verb> <faulty> ) (?<rest> <any>* )",
    ),
    (found) => {
      const verb = found.part('verb')[0]?.lower ?? '';
      const next = found.part('rest')[0];
      if (!subjectIsThing(found) || has(found.words, 'N')) return false;
      // "short of breath", "dead level", "proud of", "soft close", "shot blasted", "lost count"
      if (
        /^(level|straight|centre|center|flat|plumb|square|simple|easy|right|on|chuffed|count)$/.test(
          next?.lower ?? '',
        ) &&
        /^(dead|lost)$/.test(verb)
      )
        return false;
      if (
        /^(hollow|grinding|sticking|lifting|slipping|shot|soft|loose|porous|pitted|proud|short|rubbing|binding|peeling|smoking|split|live-wire)$/.test(
          verb,
        )
      ) {
        if (next && /[BGP]/.test(next.classes) && !/[RTC]/.test(next.classes)) return false;
        if (verb === 'proud' && next?.lower === 'of') return false;
      }
      if (
        /^(?:out|up|off|down|back|away)$/.test(next?.lower ?? '') &&
        /^(?:ripped|torn|split|broken|bent|stripped|lifting)$/.test(verb)
      )
        return false;
      if (verb === 'stuck' && /^(on|to|down|up)$/.test(next?.lower ?? '')) return false;
      if (verb === 'missing' && next?.lower === 'out' && found.part('rest')[1]?.lower === 'on') return false;
      if (verb === 'proud') return false;
      return true;
    },
  ),
  problem(
    'the <thing> I <did> is <faulty>',
    "^<lead>* (?<subject> (?: <det> | that ) <plain>{1,4}? (?: that | which )? (?: i | we ) (?: 've | have | 'd | had )? <any>{1,5}? ) (?: is | are | 's | was ) <adverb>* (?: (?<verb> <faulty> ) | too <any> | <number> <any>{0,3}? (?: short | long | out | over | under ) | no good | not <any> | all wrong )",
    (found) => !/^(?:level|good|lovely)$/.test(found.words.at(-1)?.lower ?? ''),
  ),
  problem(
    '<thing> is too <much>',
    phrase(
      `^<lead>* (?<subject> <plain>{1,10}?) (?: 's | is | are | 're | was | were | came out | came up | comes out | ended up | runs | turned out | looks | feels | sits ) <adverb>* (?: too ${TOO} | (?: painfully | way too | miles | far too | much too ) <any> )`,
    ),
    (found) => subjectIsThing(found) && !has(found.words, 'N'),
  ),
  problem(
    '<much> too <much>',
    phrase(`(?<subject> <number> <any>{0,4}? | <any> ) too ${TOO}`),
    (found, said) =>
      !has(found.words, 'N') &&
      !/ (?:it|that|which)\/\w* (?:'s|is)\/\w* too\//.test(said.code) &&
      !/ (?:not|never|make|get|go|put|be|that's|way)\//.test(said.code),
  ),
  problem(
    "<thing> won't <fit>",
    phrase(
      "(?<subject> <any>{0,6}? ) (?: will not | do not | does not | did not | 's not | is not | are not | can not | would not | has not | have not ) (?: <adverb> | quite | even )* (?<verb> fit | fits | fitting | clear | clearing | go | close | closing | open | opening | reach | reaching | turn | turning | start | starting | run | running | line | lining | seal | sealing | hold | holding | match | meet | work | working | come | budge | move | spin | drain | draining | latch | lock | seat | stick | grip | charge | charging | fire | pump | light | stay | staying | switch | fire up | come on | cure | set | dry | take | bond | bite | level | square | true | straight | plumb | budge | getting | kick | kicked | kicking | biting | gripping | sticking | firing | charging | pumping | shut | shutting | flow | prime | mesh | engage | disengage | release | tighten | undo | loosen | slide | swing | retract | fill | empty | flush | fold | track | feed | cool | heat | boil | idle | rev | respond | read | cut out | steer | brake | stop | putting <any>{1,2} out ) (?<rest> <any>* )",
    ),
    (found, said, scene) => {
      const subject = found.part('subject');
      // "Three eighths won't hold a screw": a size weighed, and no thing that fails.
      const weighed = has(subject.slice(0, 1), 'Q') && has(subject.slice(-1), 'U');
      // "Slates can't go lower than 25 degrees": a bound, and nothing that fails.
      if (BOUNDED.test(said.code)) return false;
      if (!isNothingOfOurs(subject) || has(subject.slice(-1), 'Q') || weighed) return false;
      if (/ (?:without|close\/\w*$|when)\/?/.test(said.code)) return false;
      // "can't work in metres": people, unless a thing is named.
      const scrap = scene.said[said.index - 1];
      const named =
        said.afterPause &&
        scrap?.sentence === said.sentence &&
        !/[SHMVI]/.test(scrap.words.map((word) => word.classes).join(''));
      if (
        subject.length === 0 &&
        !named &&
        !/^(?:fit|fits|clear|close|reach|line|match|meet|budge|start|fire|open)$/.test(
          found.part('verb')[0]?.lower ?? '',
        )
      )
        return false;
      const next = neighbour(scene, said, 1);
      // "won't go in until ..." is a gate, "doesn't come with one" is a remark.
      if (next && /\b(?:until|till|unless|before|once)\b/.test(next.opener)) return false;
      const verb = found.part('verb')[0]?.lower ?? '';
      const rest = found
        .part('rest')
        .map((word) => word.lower)
        .join(' ');
      if (/^(go|come|run|work|start)$/.test(verb) && /^(to|ahead|with|for|on without|a |any)/.test(rest))
        return false;
      if (verb === 'hold' && /water$/.test(rest)) return false;
      // "won't cure below ten degrees": what it is like.
      if (
        /^(?:kick|cure|set|dry|stick|take)$/.test(verb) &&
        /\b(?:below|under|above|in the cold|in damp)\b/.test(rest)
      )
        return false;
      const before = neighbour(scene, said, -1);
      // "..., so it doesn't rub": a purpose, where somebody did or chose something for it.
      if (
        /\bso\b/.test(said.opener) &&
        before &&
        / (?:i|we|having|going|getting|goes|gets)\//.test(before.code)
      )
        return false;
      return !/ (?:because|since|so)$/.test(said.opener) || /^(fit|clear|close|reach)/.test(verb);
    },
  ),
  problem(
    '<thing> <fails>',
    phrase(
      "^<lead>* (?<subject> <plain>{1,8}?) (?: has | have | 's | had )? (?: <adverb> )* (?<verb> <fails> ) (?<rest> <any>* )",
    ),
    (found, said) => {
      const subject = found.part('subject');
      const verb = found.part('verb')[0]?.lower ?? '';
      const last = subject.at(-1);
      // "The hoist lifts 500 kilos": what it can do.
      if (verb === 'lifts' && has(found.part('rest').slice(0, 1), 'Q')) return false;
      if (
        !subjectIsThing(found) ||
        has(found.words, 'N') ||
        !last ||
        /^(to|and|of|with|for|the|a|that|i|we)$/.test(last.lower) ||
        /[VS]/.test(found.part('rest')[0]?.classes ?? '')
      )
        return false;
      if (
        /^(it|that|they|this|these|those)$/.test(subject[0]?.lower ?? '') &&
        subject.length === 1 &&
        /^(trips|trip|catches|blew|fell|bent|popped|died|broke)$/.test(verb) &&
        said.opener === 'so'
      )
        return false;
      if (verb === 'stripped' && !STRIPS_OR_BLOWS.test(said.code)) return false;
      // "The old rusted tank", "cheap ply delaminates": a word of the name, or what such things do.
      if (
        found.words.some((word) => /^(?:old|cheap)$/.test(word.lower)) &&
        / (?:rusted|rotted|cracked|split|cheap)\//.test(said.code) &&
        found.part('rest').length > 0 &&
        !/[RAN]/.test(found.part('rest')[0]?.classes ?? '')
      )
        return false;
      // The same form finishes work: "I stripped the wax", said without "I".
      return !(
        /^(stripped|split|bent|broke|popped|ripped|tore|blew|lifted)$/.test(verb) &&
        (/T/.test(found.part('rest')[0]?.classes ?? '') ||
          (/C/.test(found.part('rest')[0]?.classes ?? '') && found.part('rest')[1]?.lower !== 'me'))
      );
    },
  ),
  problem(
    '<things> <fail>',
    '^<lead>* (?<subject> <plain>{1,6}? ) <adverb>* (?<verb> <fail> ) (?<rest> <any>* )',
    (found) => {
      const last = found.part('subject').at(-1);
      return (
        subjectIsThing(found) &&
        !has(found.words, 'N') &&
        last !== undefined &&
        /[^s]s$/.test(last.lower) &&
        // "Screws rust": what such things do, not what these did.
        found.part('subject').length > 1 &&
        !has(found.part('rest').slice(0, 1), 'T')
      );
    },
  ),
  problem(
    '<thing> keeps <doing>',
    '^<lead>* (?<subject> <plain>{1,6}? ) (?: keeps | keep | kept ) (?: on )? (?<verb> <any> )',
    (found) =>
      subjectIsThing(found) &&
      /ing$/.test(found.part('verb')[0]?.lower ?? '') &&
      !/^(?:going|running|working|coming|growing|giving)$/.test(found.part('verb')[0]?.lower ?? ''),
  ),
  problem(
    'there is <water> coming <in>',
    "there (?: 's | is | are | was ) <adverb>* (?<object> <plain>{1,4}? ) (?: coming | pouring | dripping | seeping | leaking | getting | weeping | running ) (?: in | out | through | from | down | past )",
  ),
  problem(
    'there is <thing> <gone>',
    "there (?: 's | is | are | 're | was ) <adverb>* (?<object> (?: <det> | <number> ) <plain>{1,4}? ) (?<verb> gone | slipped | loose | adrift | off | out | <faulty> ) (?<rest> <any>{0,6} )$",
    (found) =>
      !has(found.words, 'N') && !/^(?:of|on|in)$/.test(found.part('rest')[0]?.lower === 'of' ? 'of' : ''),
  ),
  problem(
    '<thing> has not <set>',
    "^<lead>* (?<subject> <plain>{1,6}? ) (?: has | have | is | are | 's | 've | did | 're ) not <adverb>* (?<verb> set | cured | dried | taken | stuck | bonded | bitten | worked | seated | sealed | fired | cure | take | stick | bond | set up | gone off | go off | hardened | dry ) (?: properly | right | evenly | all the way | everywhere | <any> )*",
    (found, said, scene) =>
      subjectIsThing(found) &&
      !/ yet\//.test(said.code) &&
      !/until|till|before/.test(neighbour(scene, said, 1)?.opener ?? ''),
  ),
  problem(
    'I am <much> short',
    "(?: i | we ) (?: 'm | 're | am | are | was | were | 've come up | came up | ended up ) (?: <number> | a | about )+ <plain>{0,3}? (?: short | shy | down ) (?: on | of )? (?<rest> <any>{0,4} )$",
  ),
  problem(
    '<much> short',
    '^<lead>* <number> <plain>{0,2}? short (?: of <any>+ )? $',
    (_, said) => said.words.length <= 6,
  ),
  problem(
    '<person> failed <thing>',
    '(?<subject> <plain>{1,4}? ) (?: failed | rejected | condemned | knocked back | turned down ) (?: the | it | my | our | its | them ) ',
    (found) => !has(found.words, 'N') && !/^(?:i|we)$/.test(found.part('subject').at(-1)?.lower ?? ''),
  ),
  problem(
    'they sent the wrong <thing>',
    '(?: sent | delivered | given | brought | got | ordered | bought | posted | shipped | supplied | has | have ) (?: me | us | through )? (?: the wrong | one short | too few | too many | only half | two left )',
    (found) => !has(found.words, 'N'),
  ),
  problem(
    'I forgot to <do>',
    "^<lead>* (?: i | we ) (?: 've | have | 'd )? <adverb>* (?: forgot to | forgotten to | failed to | neglected to | managed to (?: snap | break | crack | drop | split | bend | strip | lose | scratch | shear | dent | spill | drill through | cut through ) ) (?<object> <any>+ )",
    (found, said) =>
      !/ (?:say|mention|tell|film|show|press|subscribe)\//.test(said.code) && !has(found.words, 'N'),
  ),
  problem(
    '<thing> had a <fault>',
    "(?: has | have | had | got | 's got | developed | sprung | 's sprung | picked up | found ) (?: a | an | some | another | this )? <adverb>* (?<kind> <plain>{0,2}? ) (?<verb> <fault> )",
    (found, said) =>
      !/^(?: \S+\/\w*L\w*)* (?:i|we|he|she)\//.test(said.code) &&
      !has(said.words.slice(0, found.from), 'J') &&
      !has(found.words, 'N') &&
      // "Found the fault", "found where it leaks": it was looked for.
      !/^ (?:\S+ )*?found\/\w* (?:the|that|this|my|our)\//.test(said.code) &&
      !/ (?:no|not|without|fix|fixed|would|could)\//.test(said.code) &&
      !/^(?:hole|bow|short|mould|play|shake|rock|split|splits|tear|rip|chips|chip|noise|hump|ridge|twist|problem)$/.test(
        found.part('verb')[0]?.lower ?? '',
      ),
  ),
  problem(
    'there is <harm>',
    "there (?: 's | is | are | was | were | 're ) (?: <adverb> | still | a | an | some | no )* (?: bit of | lot of | load of )? (?<verb> osmosis | rot | rust | woodworm | damp | mould | mold | corrosion | water | daylight | air | movement | slop | backlash | wobble | condensation | moisture | asbestos | ants | mice | rats | wasps | termites | dry rot | wet rot | subsidence | delamination | no earth | no ground | no power | no spark | no pressure | no compression ) (?<rest> <any>{0,8} )",
    (_, said) =>
      !/ (?:power|tank|for|tea|supply|connected|enough)\//.test(said.code.replace(/ no\/\w* power/, '')),
  ),
  problem(
    'there is no <thing> where there should be',
    "there (?: 's | is | are ) no (?: earth | ground | power | spark | pressure | compression | insulation | vapour | lintel | dpc | damp | noggin | support | fall | room | clearance | access ) ",
  ),
  problem(
    '<pest> has eaten <thing>',
    "(?<subject> <plain>{1,4}? ) (?: 's | has | have | 've | had )? <adverb>* (?: eaten | chewed | gnawed | cut through | drilled through | dug through | crushed | squashed | smashed | nicked | stolen | knocked <any>{1,3} off | burnt through | eaten through | eaten into | torn up )",
    (found) => !has(found.words, 'N') && !/^(?:i|we)$/.test(found.part('subject').at(-1)?.lower ?? ''),
  ),
  problem(
    '<water> got <in>',
    "(?<subject> rain | water | damp | moisture | oil | dust | mice | frost | snow | sand | salt | air | sawdust ) (?: has | have | 's )? <adverb>* (?: got | gotten | come | came | crept | blown | soaked | seeped | run | leaked ) (?: in | under | through | into | past | behind )",
  ),
  problem(
    '<thing> slopes <away>',
    '^<lead>* (?<subject> <plain>{1,6}? ) <adverb>* (?: slopes | leans | tilts | bows | dips | rocks | sits proud | bellies | runs off | runs out | wanders | drops away | pulls to | falls away | tapers | bulges | gapes ) (?<rest> <any>* )',
    (found) =>
      subjectIsThing(found) &&
      !has(found.words, 'N') &&
      found.part('rest').length < 6 &&
      found.part('subject')[0]?.lower !== 'it',
  ),
  problem(
    '<thing> <fails> over time',
    "^<lead>* (?<subject> <plain>{1,6}? ) (?: 's | is | are | has | have | 've )? <adverb>* (?: opened up | opening up | came apart | coming apart | fell apart | falling apart | gave out | gave up | packed up | packed in | conked out | died on me | let me down | backing up | taking on water | letting in | letting water | letting rain | coming away | come away | coming loose | come loose | come adrift | worked loose | working loose | burning | blowing | eating | chewing | losing | dropping out | cutting out | playing up | acting up | on its last legs | past saving | beyond saving | had it $ | seen better days | in bits | in pieces | in tatters | falling to bits | rock hard | like rock | mush | like mush | punky | pulp | mashed | condemned | ruined | a mess | like a banana | nowhere near | all over the place | all over the shop | not happy | not having it | grinding | squealing | knocking | banging | hunting | racing | overheating | fogging | sweating )",
    (found, said) =>
      subjectIsThing(found) &&
      !has(found.words, 'N') &&
      !/ (?:me|us)\/\w* (?:alive|up)\/| up\/\w* to\/\w* \S+\/\w*Q| nearly\//.test(said.code),
  ),
  problem(
    '<thing> went off in <pot>',
    '^<lead>* (?<subject> <plain>{1,7}? ) (?: went off | kicked off | cured | set | gelled ) (?: in the pot | in the bucket | in the tray | too soon | too fast | before i | on me )',
  ),
  problem(
    '<thing> does not sit <flat>',
    "(?<subject> <plain>{1,6}? ) (?: does not | do not | will not | did not | is not | are not | 's not | 're not ) <adverb>* (?: sit | sitting | lie | lying | hang | hanging | stand | run | running | be | quite | anywhere near | close to )* (?: flat | flush | square | level | plumb | straight | right | true | true to | parallel | tight | even | centred | centered | properly | happily | within ) ",
    (found, said) => subjectIsThing(found) && !/ close\/\w*$/.test(said.code),
  ),
  problem(
    'they sent me the <wrong> one',
    '(?: sent | delivered | given | brought | posted | shipped | supplied | gave ) (?: me | us ) (?: the | a ) (?: left | right | wrong | other | old | bigger | smaller | short | metric | imperial | us | uk ) <any>*',
    (found) => !has(found.words, 'N'),
  ),
  {
    name: 'a verdict on what was just said',
    read: (said, scene) => {
      if (scene.unreal.has(said.index) || said.asks || !matches(VERDICT, said) || said.words.length > 9)
        return undefined;
      const before = scene.said[said.index - 1];
      if (!before || scene.unreal.has(before.index)) return undefined;
      if (/^(?: \S+\/\w*L\w*)* nope\//.test(said.code) && !has(before.words, 'Q')) return undefined;
      const from = before.sentence === said.sentence ? before : (openingNear(before, scene) ?? before);
      return { kind: 'problem', from: from.index, to: said.index, start: from.start, end: said.end };
    },
  },
  problem(
    'there is a <fault>',
    phrase(
      "(?: there 's | there is | there are | there 're | there was | got | 've got | has | have | 's got | found | with | is | 's ) (?: already | still | now | also | this | these | three | two | four | <adverb> )* (?: a | an | some | the | another | more )? (?<kind> <plain>{0,3}? ) (?<verb> <fault> | soft spot | hairline ) (?<rest> <any>{0,8} )",
    ),
    (found, said) => {
      const kind = found.part('kind');
      const noun = found.part('verb').at(-1)?.lower ?? '';
      if (
        has(found.words.slice(0, found.words.length - found.part('rest').length), 'N') ||
        / (?:not|no|without|fix|fixed|check|test)\//.test(said.code) ||
        // "Found the fault": it was looked for.
        / found\/\w* (?:the|that|my|our)\//.test(said.code)
      )
        return false;
      if (/ (?:i|we)\/\w* (?:have|'ve)\//.test(said.code) && noun === 'problem') return true;
      // "they have complained over the noise": not theirs.
      if (kind.some((word) => /[PbR]/.test(word.classes) && !/[F]/.test(word.classes))) return false;
      if (/^holes?$/.test(noun))
        return (
          / (?:wrong|reason|extra|wrongly|pin|rust|big|size|through|behind|nasty|great|where|as)\//.test(
            said.code,
          ) && !/ (?:for|drill|cut|cutting)\//.test(said.code)
        );
      if (/^(?:gaps?|dips?|wear|runs)$/.test(noun) && / (?:for|between|budget)\//.test(said.code))
        return (
          / (?:between|at|under|behind)\//.test(said.code) &&
          / (?:nasty|great|big|still|daylight|wide|you)\//.test(said.code)
        );
      if (
        /^(short|bow|rock|play|shake|splits?|twist|mess|void|mould|shakes|split)$/.test(noun) &&
        !/ there\//.test(said.code)
      )
        return false;
      if (/^(problem|trouble|issue|problems)$/.test(noun))
        return / there\//.test(said.code) || kind.length > 0;
      return !/^(mini|banana)$/.test(kind.at(-1)?.lower ?? '');
    },
  ),
  problem(
    'a <fault> in <thing>',
    '^<lead>* (?: a | an | another | big | great | nasty | little | small | huge | long | hairline | old | few | some | couple | of | bit | whole )* (?<verb> <fault> ) (?: in | across | down | along | behind | under | through | on | right ) (?: the | my | one | both | its | it | that | through | across )',
    (found, said, scene) =>
      neighbour(scene, said, -1) === undefined &&
      !/^(?:short|twist|mistake|problem|knock|noise|chip|chips|bow)$/.test(
        found.part('verb')[0]?.lower ?? '',
      ),
  ),
  problem(
    ', are <useless>',
    '^ (?: are | is | was | were ) <adverb>* (?: firewood | scrap | toast | useless | junk | rubbish | for the bin | <faulty> | too <any> | wrong )',
    (_, said) => said.afterPause,
  ),
  problem(
    '<thing> went',
    "^<lead>* (?<subject> (?: <det> | <plain> ) <plain>{1,5}? ) (?: went | 's gone | has gone | gave out | packed up | let go of me ) (?: on me | again )? $",
    (found) =>
      subjectIsThing(found) &&
      !has(found.part('subject'), 'D') &&
      !/[RC]/.test(found.part('subject')[0]?.classes ?? '') &&
      !/^(?:lot|last|rest|gutters|screws|bolts|boards)$/.test(found.part('subject').at(-1)?.lower ?? ''),
  ),
  problem(
    '<thing> went bang',
    phrase(
      "^<lead>* (?<subject> <plain>{1,6}?) <adverb>* (?: went | 's gone | has gone | gone ) (?: bang | pop | pop-pop | phut | crack | wrong | off with a bang | up in smoke | snap | dead | missing | walkabout | soft | rusty | through $ )",
    ),
    subjectIsThing,
  ),
  problem(
    'I <did> it wrong',
    phrase(
      "^<lead>* (?<subject> i | we | <det>? <person> ) (?: 've | have | 's | had )? <adverb>* (?<verb> <did> | <done> | got | ran ) (?<object> <any>{0,6}? ) (?: wrong | upside | backwards | inside out | back to front | the wrong | too short | too long | too deep | too far | short | by mistake | by accident | twice )",
    ),
    (found) => !has(found.words, 'N') && found.part('verb')[0]?.lower !== 'measured',
  ),
  problem(
    'I <spoilt> <thing>',
    phrase(
      "^<lead>* (?: i | we ) (?: 've | have )? <adverb>* (?: dropped | snapped | broke | cracked | split | stripped | sheared | scratched | dented | chipped | ruined | spoiled | spoilt | spilled | spilt | burnt | burned | blew | bent | lost | smashed | botched | ripped | tore | mangled | drilled through | cut through | wrecked | forgot | missed | messed up | cocked up | screwed up ) (?<object> (?: the | a | my | an | one | it | two | another | through | both | that | its | his | her | their | me | those | this ) <any>* )",
    ),
    (found, said) => {
      const object = found.part('object');
      if (has(found.words, 'N') || BODY.test(said.code)) return false;
      // "I split the log in two", "I burnt the old paint off": meant that way.
      if (MEANT.test(said.code) && WORK_TOO.test(said.code) && !BY_ACCIDENT.test(said.code)) return false;
      if (/ (?:stripped|blew)\//.test(said.code) && !STRIPS_OR_BLOWS.test(said.code)) return false;
      if (/ bent\//.test(said.code) && !BY_ACCIDENT.test(said.code)) return false;
      return !/^(plumb|bit|line|ball|clanger|hint)$/.test(object[1]?.lower ?? '');
    },
  ),
  problem(
    'ran <finish> down <thing>',
    phrase(
      "^<lead>* (?: i | we ) (?: 've | have )? <adverb>* (?: ran | dripped | spilled | got | dribbled ) (?: epoxy | paint | glue | varnish | resin | oil | primer | stain | solder | sealant | <plain> ) (?: down | on | over | all over | across ) <any>+",
    ),
    (found, said) =>
      / (?:epoxy|paint|glue|varnish|resin|oil|primer|stain|solder|sealant|lacquer|foam)\//.test(said.code) &&
      !has(found.words, 'N'),
  ),
  problem(
    '<thing> is out of <true>',
    phrase(
      "(?<subject> <any>{1,8}? ) (?: 's | is | are | 're | was | runs | sits ) <adverb>* (?: <number> <any>{0,3}? )? (?: out of (?: square | true | level | plumb | line | parallel | round | wind | alignment | tolerance ) | miles out | way out | off square | miles off | way off | on the huh | on the piss | out by | off by | short by | over by | (?: degrees | mil | inch | millimetres | eighth | quarter ) out )",
    ),
    (found) => !has(found.words, 'N'),
  ),
  problem(
    '<much> <over>',
    phrase(
      "^<lead>* (?<subject> <number> <any>{0,5}? | <any>{1,6}? (?: 's | is | are | comes out | came out ) <number> <any>{0,4}? ) (?: too much | over | short | shy | under | adrift | out ) $",
    ),
    (_, said) =>
      / (?:short|adrift|too|'s|is)\//.test(said.code) &&
      !/ (?:(?:'s|is)\/\w* out|left\/\w* over|that\/\w* (?:came|comes|went)\/\w* out)\//.test(said.code) &&
      !/ (?:call|say)\//.test(said.code),
  ),
  problem(
    'it fouls <thing>',
    phrase(
      "(?<subject> <any>{1,8}? ) (?: hits | clashes with | fouls | bumps into | runs into | catches on | catches | overlaps | misses | blocks | 's in the way | is in the way | are in the way | lands on | land on | lines up with ) (?<rest> <any>* )",
    ),
    (found, said) => {
      if (!subjectIsThing(found) || has(found.words, 'N')) return false;
      return / (?:fouls|clashes|hits|way|bumps|catches)\//.test(said.code) && !/ misses\//.test(said.code);
    },
  ),
  problem(
    '<thing> is already <useless>',
    phrase(
      "^<lead>* (?<subject> <plain>{1,10}?) (?: 's | is | are ) <adverb>* (?: firewood | scrap | toast | a write-off | a paperweight | an expensive <any> | useless | junk | rubbish | for the bin )",
    ),
    (found) => !has(found.words, 'N'),
  ),
];

/** "Can't go lower than 25": a bound that is told. */
const BOUNDED =
  / not\/\S* (?:go|be|come|take|open|run|work)\/\S* (?:any\/\S* )?(?:lower|higher|wider|taller|longer|deeper|closer|nearer|steeper|shallower|over|under|above|below|more|less|past|beyond)\/\S*(?: than\/\S*)?(?: \S+){0,2} \S+\/\S*Q/;

/** What a verdict says is wrong begins no further back than this, in clauses. */
const MOST_BEFORE_VERDICT = 2;

/** The clause that opens the sentence of another, where it stands near. */
function openingNear({ index, sentence }: Said, { said }: Scene): Said | undefined {
  let first = index;
  while (said[first - 1]?.sentence === sentence && index - first <= MOST_BEFORE_VERDICT) first--;
  return index - first <= MOST_BEFORE_VERDICT ? said[first] : undefined;
}

/** Plain faults first: the looser readings of sizes and mishaps come after. */
export const PROBLEM_RULES: readonly StatementRule[] = [
  ...GAVE_OUT_RULES,
  ...COUNTED_TROUBLE,
  ...FAULT_RULES,
  ...MISFIT_RULES,
  ...MISHAP_RULES,
  ...LIMIT_RULES,
  ...MADE_IN_VAIN_RULES,
  ...REFUSAL_RULES,
  ...TROUBLE_FOUND_RULES,
  ...PASSING_TROUBLE_RULES,
  ...HARM_RULES,
  ...SCRAP_RULES,
];
