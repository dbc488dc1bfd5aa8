/** A size told against the limit that it breaks, and room that is not there. */
import { WELL } from '../lexicon/harm-words.ts';
import type { StatementRule } from './draft.ts';
import { phrase } from './phrase.ts';
import { has, problem } from './snag.ts';

/** "more than", "over", "heavier than". */
const BEYOND = `(?: more than | less than | over | under | above | below | beyond | past | outside | wider than | narrower than | taller than
  | longer than | shorter than | higher than | lower than | deeper than | heavier than | thicker than | thinner than | bigger than | smaller than )`;
/** What a limit lets pass: "what the davit likes", "than the book puts up with". */
const LETS = `(?: will | can | could | 'll | likes | like | allows | allow | takes | take | gives | says | say | said | stands | wants | want | permits | permit | lets | let
  | puts up with | is good for | 's good for | is rated | 's rated | 's plated | is plated | was built for | was made for | is meant | 's meant | told | said | has room | swallows | holds | carries | bears | lifts )`;

export const LIMIT_RULES: readonly StatementRule[] = [
  problem(
    '<much> over the <limit>',
    phrase(
      `(?: 's | is | are | 're | was | were | comes | come | came | at | <number> | <unit> | well | way | just | weighs | makes | measures | stands | runs | sits | and | half )
       (?: <number> | <unit> | a | an | half | as | again | bit | touch | hair | <adverb> | euro | dollars | percent | pounds | kilos | tonne )* ${BEYOND}
       (?: the | my | our | its | their | any | his | her ) (?: <plain> ){0,4}? (?: <ruler> | rules | limits | max | maximum | minimum | budget | allowance | headroom | own | book's | line | tolerance )`,
    ),
    (found, said) => !has(found.words, 'N') && !WELL.test(said.code) && !/\bso\b/.test(said.opener),
  ),
  problem(
    '<more> than <it> will take',
    phrase(
      `(?: ${BEYOND} | (?: as much | as heavy | as long | as wide | as big ) again as | twice | double ) (?: what | as | than )* (?: the | my | our | its | their | any | i | you | we | he | they | it ) <plain>{0,4}? ${LETS}`,
    ),
    (found, said) =>
      !has(found.words, 'N') &&
      !WELL.test(said.code) &&
      / (?:'s|is|are|'re|was|weighs|drawing|draws|at|makes|comes|needs|wants|takes|pulls|over|more|you)\//.test(
        said.code,
      ),
  ),
  problem(
    '<much> on a <thing> good for <less>',
    phrase(
      `<number> <any>{0,3}? (?: on | through | into | for | in | against | off | behind | under ) (?: a | an | my | the | one ) <any>{1,4}? (?: that 's | which is | good for | rated for | rated at | rated to | plated for | meant for | only )`,
    ),
    (found, said) => has(said.words.slice(found.to), 'Q') && !has(found.words, 'N') && !WELL.test(said.code),
  ),
  problem(
    '<much> on a <much> <thing>',
    phrase(
      `(?: draws | pulls | takes | drawing | pulling | weighs | puts | putting | needs | wants | carries | carrying | running ) <number> <any>{0,2}? (?: on | through | over ) (?: a | an | my | the ) <number> <unit> `,
    ),
  ),
  problem(
    'that leaves nothing',
    phrase(
      `(?: leaves | leave | left | leaving | gives | gave | giving | which is | that 's ) (?: me | us | you | it | them | him )? (?: with )? (?: <adverb> )* (?: nothing | no (?: room | space | clearance | gap | slack | headroom | height | way | fall | lap | overlap | margin ) | barely | hardly | nowhere | not enough | too little | precious little | next to nothing | all of <number> ) (?: for | to | between | over | under | at | on | in | <any> )`,
    ),
    (found, said) => !/ nothing\/\w* (?:left|more|else)\//.test(said.code) && found.to > 0,
  ),
  problem(
    'that leaves <much> for <more>',
    phrase(
      "(?: leaves | leave | left | gives ) (?: me | us | you | it | them )? <number> <any>{0,3}? (?: for | to take | where ) (?: a | an | the | my | something ) <any>{1,4}? (?: 's | is | needs | wants | measures | that takes )",
    ),
  ),
  {
    // "The drop's eight metres and the hose is only six": two sizes that ought to go together.
    name: '<this> is <much> and <that> is only <less>',
    read: (said, scene) => {
      const before = scene.said[said.index - 1];
      if (!before || before.sentence !== said.sentence || scene.unreal.has(said.index) || said.asks)
        return undefined;
      if (
        !/\b(?:and|but|only)\b/.test(said.opener) ||
        !has(before.words, 'Q') ||
        scene.unreal.has(before.index)
      )
        return undefined;
      const short =
        / (?:'s|is|are|'re|reaches|comes|goes|gives|stops|takes|opens|allows|says|ends|does|was)\/\w* (?:\S+ ){0,2}?(?:only|just|barely|at|up)\/\w* (?:\S+ ){0,3}?\S+\/\w*Q/;
      const stops = / (?:only|barely|stops|'s\/\w* good|is\/\w* good)\//;
      if (!short.test(said.code) || !stops.test(said.code) || WELL.test(said.code)) return undefined;
      return { kind: 'problem', from: before.index, to: said.index, start: before.start, end: said.end };
    },
  },
  problem(
    'I have lost <much>',
    phrase(
      `^<lead>* (?: (?: i | we | it | that | this ) (?: 's | 've | has | have | has )? )? (?: lost | costs | cost | losing | robs | robbed | eats | eaten | ate ) (?: me | us | you )? <number> <any>{0,3}? of (?: <plain> )* (?: headroom | height | width | length | floor | clearance | space | depth | travel | fall | legroom )`,
    ),
    (found) => !has(found.words, 'N'),
  ),
  problem(
    '<much> too much',
    phrase(
      "(?: 's | is | are | 've | have | got | by | has | 're ) (?: <number> | a | <unit> | half | an | bit | far | way )* (?: too much | too many | too little | too few | not enough | short ) (?<rest> <plain>{1,3} )$",
    ),
    (found, said) =>
      !has(found.words, 'N') &&
      !/ (?:work|time|do|ask|tea|coffee|fun|talk|of|on|to|for|in|money|worry|noise\/\w* about)\//.test(
        found
          .part('rest')
          .map(({ lower }) => ` ${lower}/`)
          .join(''),
      ) &&
      !/ (?:too|not)\/\w* \S+\/\w* (?:bad|shabby|long\/\w* now)\//.test(said.code),
  ),
  problem(
    'no way that goes through',
    phrase(
      `^<lead>* (?: <plain>{1,6}? (?: 's | is | has | have | had )? )? (?: not | no | never | zero | <lead> )* (?: (?: way | hope | chance | a chance | a hope | a prayer | prayer | earthly | question ) (?: in hell | on earth | at all | of <any>{1,6}? (?: ing )? | <any>{0,3}? ) ) (?: that | it | they | this | those | the | of | any | <plain> )+ (?: go | goes | going | fit | fits | fitting | get | gets | getting | lining | line | clear | clears | reach | reaching | meets | closing | turn | turning | close | come | coming | lift | lifting )`,
    ),
    (found) => has(found.words, 'N') || found.words.some(({ lower }) => lower === 'no' || lower === 'zero'),
  ),
];
