/** Parts already made that a change has spoilt: "so the legs I cut are twenty short now". */
import { WELL } from '../lexicon/harm-words.ts';
import type { StatementRule } from './draft.ts';
import { phrase } from './phrase.ts';
import { has, problem, subjectIsThing } from './snag.ts';

const WRECK =
  '(?: scrap | firewood | nonsense | a nonsense | liars | a liar | fools | a fool | rubbish | waste | a mess | mincemeat | kindling | junk | ornaments | a joke | an orphan | redundant | wrong | useless | pointless | obsolete | history | worthless )';
const MADE =
  '(?: made | cut | sawed | sawn | welded | glued | built | ripped | milled | turned | bored | drilled | ordered | bought | bent | cast | poured | hung | fitted | laid | nailed | framed | machined | <did> | <done> | got | saved | printed | painted | sewed | wired | dug | put )';
const OF_MY_MAKING = `(?: the | that | those | these | all the | every | each | my | both | which ) (?: <plain> ){1,5}? (?: that | which )? (?: i | we | he ) (?: 've | have | 'd | had )? (?: <adverb> )* ${MADE} (?: <plain> ){0,5}?`;

export const MADE_IN_VAIN_RULES: readonly StatementRule[] = [
  problem(
    'so much for <thing>',
    phrase(
      `^<lead>* <adverb>* (?: so much for | much for | there goes | there go | that does for | that did for | that puts paid to | that 's done for | that 's put paid to | that 's the end of | that finishes | that kills | that sinks | that scuppers | bang goes | bye bye | back to square one with | back to the drawing board for ) (?: the | my | our | all | those | that | his | her | both ) (?<object> <any>+ )`,
    ),
    (found, said) =>
      (found.words[0]?.lower !== 'much' || said.opener === 'so') &&
      !has(found.words, 'N') &&
      !/ (?:plan|idea|dream|peace|quiet|rumour)\//.test(said.code),
  ),
  problem(
    'makes scrap of <thing>',
    phrase(
      `(?: makes | make | made | making | turns | turned | renders | leaves ) (?: ${WRECK} (?: of | out of ) | (?: the | my | our | all | every | those | these | both | that ) (?: <any> ){1,7}? (?: into )? (?: ${WRECK} | <faulty> | too <any> | (?: <number> | <unit> | a | an | half | by | bit )+ (?: too )? <size> | too <size> ) )`,
    ),
    (found) => !has(found.words, 'N'),
  ),
  problem(
    'that puts <thing> out',
    phrase(
      `(?: puts | put | throws | threw | knocks | knocked | sends | leaves | pushes ) (?: the | my | our | all | every | each | those | these | both | everything ) (?: <plain> | i | we | <any> ){0,6}? (?: out (?: by | of | again | too | a | <number> | everywhere ) | <number> <any>{0,2}? (?: out | short | over | long | low | high | proud ) | off (?: by | centre | line ) | in the wrong <any> | hanging | stranded )`,
    ),
    (found, said) =>
      !has(found.words, 'N') &&
      !/ (?:i|we|he)\/\w* (?:\S+ )?(?:put|knocked|threw|pushed|sent|left)\//.test(said.code),
  ),
  problem(
    'the <thing> I <made> is <off>',
    phrase(
      `^<lead>* (?<subject> ${OF_MY_MAKING} ) (?: is | are | 's | was | were | will be | 'll be ) (?: now | all | still | just | every one | <adverb> )* (?: <number> | <unit> | a | an | half | and | by | bit | about )* (?: (?: too )? <size> | made | bored | cut | drilled | for | on the wrong | in the wrong | no use | no good | not <any> | <faulty> | waste | wasted | ${WRECK} | an expensive | a very | surplus )`,
    ),
    (found, said) =>
      !WELL.test(said.code) &&
      // "The door I cut is 34 wide by 82" is its size.
      !/ by\/\w* \S+\/\w*Q\w*(?: |$)/.test(said.code) &&
      !/ (?:for\/\w* (?:the|you|this|my)|over\/|out\/\w* (?:of\/\w* the\/\w* (?:clamps|mould)))/.test(
        said.code.slice(-40),
      ) &&
      found.to > 0,
  ),
  problem(
    'the <thing> I <made> should be <size>',
    phrase(
      `^<lead>* (?<subject> ${OF_MY_MAKING} | (?: i | we ) (?: 've | have )? got <any>{2,5}? (?: that )? | (?: my | all my | those | every one of my | them ) (?: <plain> ){1,4}? ) (?: (?: should | ought to | oughta | has to | have to | want to | wants to | needs to | need to | must | had better | was meant to | were supposed to ) (?: have )? (?: be | been | come down | come up | grow | shrink | lose | gain ) (?: down | up | to | by | about | nearer )* <number> )`,
    ),
    (found, said) => !WELL.test(said.code) && !has(found.words, 'N'),
  ),
  problem(
    'now <thing> is <much> <off>',
    phrase(
      "^(?: <lead> )* (?<subject> (?: the | my | all the | every | those | both | each | <det> ) (?: <plain> ){1,5}? | (?: they | it ) ) (?: 's | is | are | 're | will be | 'll be ) (?: now )? (?: <adverb> | every one | all | each )* (?: <number> | <unit> | a | an | half | and )+ (?: too )? (?: long | short | wide | narrow | tall | high | low | deep | shallow | thick | thin | fat | over | under | out | proud | shy | adrift | skinny ) (?: now | too | again )* $",
    ),
    (found, said) =>
      (/\bnow\b/.test(said.opener) || / (?:now|fat|adrift|short|out|low|skinny|shy)\//.test(said.code)) &&
      !/ (?:i|we)\//.test(said.code) &&
      !WELL.test(said.code) &&
      !has(found.words, 'N'),
  ),
  problem(
    '<thing> is <off> by <much>',
    phrase(
      "^<lead>* (?<subject> <plain>{1,7}? ) (?: 's | is | are | 're | was | were | comes | came | sits | stands | hangs | leans | leaning | leans | runs | ended up | finished up ) (?: leaning | sitting | standing | hanging | running | <adverb> )* (?: out | over | too | up | down | off | in )* (?: wide | narrow | tall | short | long | high | low | deep | shallow | thick | thin | heavy | light | out | over | under | undersize | oversize | adrift | crooked | fat | leaning | off | proud | shy ) (?: at <any>{1,3}? )? by (?: a | an | about | nearly | <number> | half )",
    ),
    (found, said) =>
      (subjectIsThing(found) || /^(?:one|some|two)$/.test(found.part('subject')[0]?.lower ?? '')) &&
      // "300 wide by 450 deep" is a pair of sizes.
      !/ \S+\/\S*Q\S* (?:(?:wide|tall|long|high|deep|thick)\/\S* )?by\//.test(said.code) &&
      !has(found.words, 'N') &&
      !WELL.test(said.code) &&
      !/ proud\/\w* by\/.* (?:so|to|for)\//.test(said.code),
  ),
  problem(
    '<much> <low>, said of its place',
    phrase(
      "^<lead>* (?<subject> <plain>{1,6}? ) (?: 's | is | are | 're | was ) (?: sitting | standing | hanging | riding | lying | leaning | running ) (?: <adverb> | a | an | out | good )* (?: <number> | by | <unit> | hundredths | tenths | half | and | a | an )+ (?: low | high | proud | out | over | under | short | shy | off | forward | aft )",
    ),
    (found) => subjectIsThing(found) && !has(found.words, 'N'),
  ),
  problem(
    '<thing> is bigger than <its place>',
    phrase(
      "^<lead>* (?<subject> (?: the | my | that | this | it | <det> ) <any>{0,7}? ) (?: 's | is | are | 're | was | were | came out | comes out ) (?: <adverb> | <number> | <unit> | a | bit )* (?: wider | taller | longer | thicker | deeper | bigger | fatter | higher | broader | shorter | narrower | smaller | thinner | shallower ) than (?: it | she | he | they | the | its | my | his | their | where | any | what ) (?: <plain> )* (?: needs | need | should | ought | has any | wants | supposed | hole | opening | doorway | door | gap | space | slot | frame | hatch | recess | bay | place | home | mortise | groove | aperture | goes | was | locker | tray | trailer | road | case | bed | one )",
    ),
    (found, said) => !has(found.words, 'N') && !/ (?:before|last|purpose|so)\//.test(said.code),
  ),
];
