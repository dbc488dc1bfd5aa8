import { wordSet } from '../word-table.ts';
import { CHOICE_RULES } from './choices.ts';
import { CHANGE_OF_MIND_RULES, CHANGED_RULES } from './choices-changed.ts';
import { SHORT_CHOICE_RULES } from './choices-short.ts';
import { chosen, chosenHere as decision, silent } from './decision-rule.ts';
import { draft, firstWord, neighbour, type Scene, type StatementRule } from './draft.ts';
import { type Found, matches, phrase } from './phrase.ts';
import { supportOf } from './support.ts';
import { dayAfter, dayIn } from './tasks.ts';
import type { Said, Word } from './words.ts';

const has = (words: readonly Word[], letter: string) => words.some((word) => word.classes.includes(letter));

/** Doing these is choosing, even without a reason. */
const CHOOSING =
  wordSet(`switching flipping dropping raising lowering swapping ditching scrapping stretching widening narrowing
  upgrading downgrading sticking plumping opting skipping shrinking shortening lengthening thickening keeping having
  moving turning reversing binning abandoning doubling halving changing leaving blanking going`);
/** Doing these is telling about oneself or the film. */
const NO_CHOICE =
  wordSet(`filming recording talking sitting standing looking thinking saying telling trying wondering hoping
  waiting kidding joking guessing starting getting losing living feeling wearing being doing calling reading asking
  showing working running fighting learning measuring checking hunting finding seeing hearing holding leaving-me
  drinking eating sweating freezing dreading enjoying loving winning aiming planning expecting getting-there pulling`);

const notYet = (said: Said, scene: Scene) =>
  dayIn(said, scene) !== undefined || dayAfter(said, scene) !== undefined;

/** "I'm making it bigger", "I'm taking it to 6 and 1/4", "I'm making new ones". */
const CHANGE = phrase(
  '(?: bigger | smaller | wider | narrower | taller | shorter | longer | deeper | thicker | thinner | higher | lower | heavier | lighter | stronger | new (?: one | ones ) | up to | down to | out to | back to | to <number> | <number> <any>{0,3}? (?: higher | lower | wider | longer | shorter | deeper | taller ) | another way | the other way | instead )',
);
function changesSize(said: Said, scene: Scene): boolean {
  const next = neighbour(scene, said, 1);
  return (
    matches(CHANGE, said) ||
    (next !== undefined && !next.opener && next.words.length < 8 && matches(CHANGE, next))
  );
}

const THING = '(?<subject> <plain>{1,8}? )';
const isThing = (found: Found) => {
  const subject = found.part('subject');
  return (
    !has(subject, 'E') &&
    !has(subject.slice(-1), 'J') &&
    !/^(?:you|i|we|he|what|who|nothing)$/.test(subject[0]?.lower ?? '')
  );
};
const negated = (found: Found, name = 'object') =>
  has(found.words.slice(0, found.words.length - found.part(name).length), 'N');

/** The clause before reports work: a scrap after it with a reason is no choice. */
const REPORTS = / (?:'s|is|are|was)\/\w* (?:\w+\/A\w* )*\w+\/\w*[cP]/;

/** What was meant before: "I was going to bolt it", "I'd been planning on carpet", "originally pine". */
const HAD_PLANNED = phrase(
  "(?: (?: i | we ) (?: was | were | 'd | had ) (?: <adverb> | been )* (?: going to | planning | planned | meaning | thinking | set on | hoping | wanted | drawn | meant ) | (?: was | were ) (?: <adverb> )* (?: going to be | meant to be | supposed to be | to be ) | originally | (?: i | we ) (?: wanted | planned | meant | thought about | looked at | started out with | fancied ) | the (?: first | old | original ) (?: plan | idea ) was )",
);
/** Talk that starts with "no" and settles nothing. */
const NO_PHRASE =
  / no\/\w* (?:problem|problems|worries|doubt|wonder|matter|idea|chance|way|rush|need|joy|luck|sorry|one|thanks|leaks?|drips?|signs?|harm|kidding|surprise|excuses?|complaints?|time|hurry|sweat|fuss|drama|dramas|shims?)\//;

export const DECISION_RULES: readonly StatementRule[] = [
  ...CHANGE_OF_MIND_RULES,
  decision(
    "I've decided",
    "(?: i | we ) (?: 've | have | had )? (?: <adverb> | as good as )* (?: decided | settled on | settled for | settle on | settle for | plumped for | opted | chosen | chose | picked (?! up | out | <any>{1,4} up ) | resolved to | landed on | come down on | come round to | come around to | came round to | gone for | gone with | gone up to | gone down to | gone over to | gone back to | gone off | gone to | went for | went with | went up to | went down to | changed my mind | made up my mind | made my mind up | said yes | said no to | agreed to | agreed on | agreed | ruled out | committed to | switched to | switched over to | swapped to | swapped over to | changed to | changed over to | moved to | stuck with | ended up with | dropped the idea | ditched | binned off | scrapped | abandoned | shelved | backed off on | given up on | talked myself | been talked | let myself be talked | backed down )",
    (found, said) =>
      !has(found.words, 'N') &&
      !/ for\/\w* (?:a|the|an|my)\/\w* (?:\S+ ){0,2}?\S+\/\w*d\w*(?: |$)/.test(said.code),
  ),
  decision(
    'went with <thing>',
    '^<lead>* (?: <adverb> )* (?: went for | went with | going with | going for | gone with | gone for | plumped for | settled on | settled for | opted for | sticking with | stuck with | sticking to | switched to | switching to | decided on | decided to | chose | picked !up ) (?<object> <any>+ )',
    (found, said) =>
      !said.opener.includes('which') &&
      !/^(?:a walk|a run|the right)/.test(
        found
          .part('object')
          .map((word) => word.lower)
          .join(' '),
      ),
  ),
  decision(
    'making it <size>',
    '^<lead>* (?: <adverb> )* (?: making | keeping | leaving | taking | setting | dropping | bringing | moving ) (?: it | that | this | them | those | these | all ) (?<object> <any>{0,3}? <number> <any>* )',
    (_, said, scene) => supportOf(said, scene).strong,
  ),
  decision(
    'it was decided',
    "(?: final answer | change of plan | decision made | that 's (?: decided | settled | final | that decided ) | executive decision | is decided | it 's settled | mind 's made up | new plan | decided on the spot | no more emails | vote is in | end of discussion | end of story | my back voted )",
    (found, said) => found.to - found.from < said.words.length || said.index > 0,
  ),
  decision(
    'I went <this> over <that>',
    "^<lead>* <plain>{0,4}? (?: i | we ) (?: 've | have )? <adverb>* (?: gone | went | go ) (?! in | out | up | down | back | off | home | to | through | over | round | and | there | ahead | on | at | for ) (?<object> <any>+ )",
    (found, said, scene) =>
      supportOf(said, scene).strong || found.part('object').some((word, k) => k > 0 && word.lower === 'over'),
  ),
  decision(
    'I am choosing <thing>',
    "^<lead>* <plain>{0,5}? (?: i | we ) (?: 'm | 're | am | are ) (?: now | <adverb> )* (?<verb> <any> ) (?<object> <any>* )",
    (found, said, scene) => {
      const verb = found.part('verb')[0]?.lower ?? '';
      const object = found.part('object');
      const next = object[0]?.lower ?? '';
      if (has(found.words, 'E') || negated(found) || !/ing$/.test(verb)) return false;
      const { strong } = supportOf(said, scene);
      if (verb === 'going') {
        // "going to town for bolts"
        if (next === 'to' && object.slice(1, 4).some(({ meanings }) => meanings.includes('d'))) return false;
        const to = object[1];
        // "going to fit" is a plan, "going to metal siding" and "going up to 960" are choices.
        if (next === 'to' && to && to.classes.includes('B') && !/[TQ]/.test(to.classes)) return strong;
        if (
          next === 'to' &&
          to &&
          /^(?:be|have|need|get|go|do|say|see|tell|try|look|start|miss|regret|want)$/.test(to.lower)
        )
          return strong && to.lower === 'have';
        if (/^(?:home|mad|out|insane|nowhere|there|through|grey-haired|slowly|on|well|in)$/.test(next))
          return strong;
        return next !== '' && !notYet(said, scene);
      }
      if (
        /^(?:having|making|keeping|going|moving|leaving|taking|getting)$/.test(verb) &&
        object.slice(0, 4).some(({ meanings }) => meanings.includes('d'))
      )
        return false;
      if (NO_CHOICE.has(verb))
        return strong && /^(?:getting|doing|running|pulling)$/.test(verb) && !notYet(said, scene);
      if (notYet(said, scene)) return false;
      if (verb === 'leaving') return strong || !has(object.slice(0, 2), 'Q');
      return (
        CHOOSING.has(verb) ||
        strong ||
        changesSize(said, scene) ||
        (found.part('verb')[0]?.classes.includes('G') ?? false)
      );
    },
  ),
  decision(
    "I'm not doing <this>, I'm doing <that>",
    "^<lead>* (?: i | we ) (?: 'm | 're | am | are | is ) not (?: about to | going to | <adverb> )* (?<verb> <any> ) (?<object> <any>+ )",
    (found, said, scene) => {
      const verb = found.part('verb')[0]?.lower ?? '';
      const next = neighbour(scene, said, 1);
      return (
        (/ing$/.test(verb) || / (?:going|about)\/\w* to\//.test(said.code)) &&
        next !== undefined &&
        !/because|since/.test(next.opener) &&
        / (?:i|we|it)\/\w* (?:'m|'re|'ve|am|have|'s|went|'ll|will)\//.test(next.code)
      );
    },
  ),
  decision(
    '<thing> is going <this way>, because',
    `^<lead>* ${THING} (?: 's | is | are | 're | 'll be | was ) (?: <adverb> )* (?<verb> going | getting | having | staying | being | to be | stopping | coming | moving | gonna ) (?<object> <any>+ )`,
    (found, said, scene) => {
      const object = found.part('object');
      const verb = found.part('verb')[0]?.lower ?? '';
      const next = object[0];
      if (!isThing(found) || negated(found)) return false;
      if (
        object.slice(0, 3).some(({ meanings }) => meanings.includes('d')) ||
        has(found.part('subject'), 'J')
      )
        return false;
      if (verb === 'going' && / (?:nicely|lovely|well|fine|great|sweet|slowly)\//.test(said.code))
        return false;
      const { reason, turnedDown, strong } = supportOf(said, scene);
      if (reason !== undefined || turnedDown !== undefined) return true;
      if (notYet(said, scene) || has(object, 'E')) return false;
      switch (verb) {
        case 'staying':
        case 'stopping':
          return !/^(?:put|up|on|off|here)$/.test(next?.lower ?? '') || object.length === 1;
        case 'having':
        case 'getting':
          // "it's getting late", "the gap's getting bigger": no choice.
          return (
            /^(?:a|an|its|their|the|new|two|three|four|some|his|her|\d+)$/.test(next?.lower ?? '') ||
            has(object.slice(0, 1), 'Q')
          );
        case 'moving':
          return true;
        case 'going':
          if (next?.meanings.includes('m')) return true;
          if (next?.lower === 'to')
            return strong && has(object.slice(1, 2), 'B') === false && object[1]?.lower !== 'be';
          return /^(?:in|on|under|over|behind|across|by|ahead|up|down|against|between|inside|outside|beside|next|athwart|along|above|below|at|into|where|aft|forward|port|starboard|left|right|back)$/.test(
            next?.lower ?? '',
          ) && object.length > 1
            ? !/^(?:strong|well|fine|great|about)$/.test(object[1]?.lower ?? '')
            : strong;
        case 'coming':
          return / (?:down|up) (?:to)/.test(object.map((word) => ` ${word.lower}`).join('')) || strong;
        case 'being':
          return strong;
        default:
          return strong;
      }
    },
  ),
  decision(
    '<thing> is going to be <this>',
    `^<lead>* ${THING} (?: 's | is | are | 're ) (?: <adverb> )* going to be (?<object> (?! <number> | ok | okay | fine | fun | great | a (?: while | nightmare | pain | laugh | joy | problem | long | good | bit | struggle | squeeze ) | tight | hard | tricky | easy | late | about | more | no | at | in | up | too | my | our | interesting | close ) <any>+ )`,
    (found, said, scene) =>
      isThing(found) &&
      !notYet(said, scene) &&
      !has(found.part('object').slice(0, 1), 'A') &&
      !has(found.part('object').slice(0, 1), 'P'),
  ),
  decision(
    '<thing> goes <place>, because',
    `^<lead>* ${THING} (?: (?: 'll | will )? <adverb>* (?<verb> goes | go | gets | get | moves | move | stays | stay | becomes | open | opens | hang | hangs | run | runs | comes | drops | drop | rises | shifts | ends up ) ) (?<object> <any>+ )`,
    (found, said, scene) => {
      if (!isThing(found) || negated(found)) return false;
      const why = supportOf(said, scene);
      if (why.reason !== undefined || why.turnedDown !== undefined) return true;
      if (notYet(said, scene)) return false;
      const verb = found.part('verb')[0]?.lower ?? '';
      const object = found.part('object').map((word) => word.lower);
      if (/^(?:moves?|shifts)$/.test(verb))
        return /^(?:to|over|aft|forward|up|down|back|across|out|in|under|behind|from|one|along)$/.test(
          object[0] ?? '',
        );
      if (/^(?:stays?)$/.test(verb))
        return !/^(?:put|up|on|off|here|in|at|where|dry|wet|warm|within|under|below|above)$/.test(
          object[0] ?? '',
        );
      if (/^(?:drops?|rises|comes|goes|go)$/.test(verb)) {
        if (/^(?:to|up|down)$/.test(object[0] ?? '') && / to /.test(` ${object.join(' ')} `)) {
          return !/(?:meter|gauge|whack|speed|total|bill|headroom|moisture|temperature|price|pressure|humidity|dial|needle|lead)$/.test(
            found.part('subject').at(-1)?.lower ?? '',
          );
        }
        return (
          /^goe?s?$/.test(verb) &&
          /^(?:across|athwartships|aft|forward|portside|sideways|lengthways|vertical|upright|under|behind|beside|between|over|below|above)$/.test(
            object[0] ?? '',
          ) &&
          !/^(?:budget|time|water)$/.test(object[1] ?? '')
        );
      }
      return false;
    },
  ),
  decision(
    '<thing> is <one>, not <other>',
    `^<lead>* ${THING} (?: 's | is | are | 're | 'll | will | 'll be | will be ) (?<object> <any>+ )`,
    (found, said, scene) => {
      const why = supportOf(said, scene);
      if (!isThing(found) || why.turnedDown === undefined || negated(found)) return false;
      // "it's the wrong one, lead, not lithium", "there's a crack I don't like"
      if (
        found.words.some(
          ({ lower, classes, meanings }) =>
            lower === 'wrong' ||
            lower === 'there' ||
            lower === 'why' ||
            /f/.test(classes) ||
            meanings.includes('i'),
        )
      )
        return false;
      const first = found.part('object')[0];
      // "it's 915, not 905" mends a number, "the ram, not the table, is" picks one out.
      if (has(found.part('object').slice(0, 2), 'Q') && why.reason === undefined) return false;
      return why.reason !== undefined || !/[AN]/.test(first?.classes ?? 'N');
    },
  ),
  decision(
    'I will <do> <this>, because',
    "^<lead>* <plain>{0,4}? (?: i | we ) (?: 'll | will | 'd rather | 'd sooner | would rather | prefer ) (?: <adverb> | be )* (?<verb> <do> | <doing> | go | have | stick | keep | use | do ) (?<object> <any>+ )",
    (found, said, scene) => {
      if (has(found.words, 'N') || has(found.words, 'E')) return false;
      const why = supportOf(said, scene);
      return (
        why.reason !== undefined ||
        why.turnedDown !== undefined ||
        / rather\/| sooner\/| prefer\//.test(said.code)
      );
    },
  ),
  decision(
    'I <change> <thing> to <that>',
    "^<lead>* (?: i | we ) (?: 've | have )? (?: <adverb> )* (?: changed | switched | moved | dropped | raised | bumped | upped | lowered | knocked | brought | shifted | stretched | shortened | widened | narrowed | increased | reduced | doubled | halved | thickened | gone | upgraded | put (?= the <any>{1,3}? up | the <any>{1,3}? down ) | taken (?= the <any>{1,4}? to | it to | it up | it down ) | cut (?= it back to | the <any>{1,3} back to ) ) (?<object> <any>*? (?: to | from | for ) <any>+ )",
    (found, said, scene) =>
      !has(found.words, 'N') &&
      (has(found.part('object'), 'Q') ||
        supportOf(said, scene).strong ||
        / (?:to|for)\/\w* (?:a|an|the)?/.test(said.code)) &&
      !/ (?:wall|frame|plate|other side|shed|bench)\//.test(said.code),
  ),
  decision(
    'I <change> <thing>, because',
    "^<lead>* <plain>{0,4}? (?: i | we ) (?: 've | have )? (?: <adverb> )* (?<verb> changed | switched | moved | dropped | raised | swapped | doubled | halved | gone | went | used | bought | ordered | picked | made | left | kept | put | taken | added ) (?<object> <any>+ )",
    (found, said, scene) => {
      if (has(found.words, 'N') || has(found.words, 'E')) return false;
      const { reason, turnedDown } = supportOf(said, scene);
      return (
        (reason !== undefined &&
          !/^(?:made|put|added|went|gone)$/.test(found.part('verb')[0]?.lower ?? '')) ||
        turnedDown !== undefined
      );
    },
  ),
  decision(
    '<thing> it is',
    "^<lead>* (?: so )? (?<object> <plain>{1,7}? ) it (?: is | 'll be | will be ) (?: then )? $",
    (found) =>
      !/^(?:what|how|like|that|as|where|wherever|whenever|however|whichever|whatever|whoever|which|and|here|there)$/.test(
        found.part('object').at(-1)?.lower ?? 'what',
      ) &&
      !/^(?:what|how|here|there|as)$/.test(found.part('object')[0]?.lower ?? '') &&
      !has(found.part('object'), 'D'),
  ),
  decision(
    "it's <thing> I'm <doing>",
    "it 's (?<object> <plain>{1,4}? ) (?: i | we ) (?: 'm | 're | 'll | 've ) (?: going | gone | laying | using | fitting | having | putting | running | <doing> )",
    () => true,
  ),
  decision(
    "let's go with <thing>",
    'let us (?: go with | go for | make it | go | stick with | do it in | do them in ) (?<object> <any>+ )',
    (found) =>
      !has(found.words, 'N') &&
      !/^(?:and|to|through|back|over|see|on)$/.test(found.part('object')[0]?.lower ?? ''),
  ),
  decision(
    'we <go> <this way>',
    '^<lead>* (?: i | we ) (?: go all | go with | go for | stick with | stay with | make (?= <any>{1,4} (?: bigger | wider | longer | narrower | shorter | taller | deeper | thicker | thinner | lower | higher ) ) | keep (?= the | it | that | my ) | leave (?= the | it | that ) ) (?<object> <any>* )',
    (found) => !has(found.words, 'N'),
  ),
  decision(
    "what I'll do is <this> rather than <that>",
    "^<lead>* what (?: i | we ) (?: 'll | will | 'm going to ) do is",
    () => true,
  ),
  decision(
    '<thing> is off, <thing> goes in',
    "^<lead>* (?: that one | that | the <plain>{1,4}? | <plain>{1,2}? idea ) (?: 's | is | are ) <adverb>* (?: off | out | off the table | out the window | gone ) $",
    (_found, said, scene) => {
      for (const step of [1, 2]) {
        const next = neighbour(scene, said, step);
        if (
          next &&
          / (?:'m|instead|having|going in|going|one)\//.test(next.code) &&
          !/ (?:'s|is)\/\w* (?:dry|in|up|on)\/\w*$/.test(next.code)
        )
          return / (?:i|we|it|a|an)\//.test(next.code);
      }
      return false;
    },
  ),
  decision(
    '<thing> has been <dropped>',
    `^<lead>* ${THING} (?: 's been | has been | have been | got | 's being | is being ) <adverb>* (?: swapped for | swapped out for | changed to | changed for | voted out | dropped | ditched | binned | scrapped | shelved | moved to | moved up | moved down | moved back | replaced by | demoted | promoted ) (?<object> <any>* )`,
    (found, said, scene) =>
      isThing(found) &&
      (supportOf(said, scene).strong ||
        found.words.some(({ lower }) => /^(?:for|voted|ditched|scrapped|shelved)$/.test(lower))),
  ),
  decision(
    'not <doing> <thing>',
    "^<lead>* (?: (?: i | we ) (?: 'm | 're | am | are | is | will | 'll ) )? not (?: going to | be | gonna | about to )* (?<verb> doing | having | fitting | putting | using | building | making | painting | buying | bothering | bother | touching | spending | adding | keeping | paying | risking | wasting | messing | welding | gluing | cutting | replacing | ordering | running | hanging | laying | learn | fit | paint | use | put | build | buy | have | do | add | repair | repairing | mending ) (?<object> <any>+ )",
    (found, said, scene) =>
      !notYet(said, scene) &&
      !/^(?:it|that|this|anything|much|well|any|too|badly|for|on|there|home|to)$/.test(
        found.part('object').length === 1 ? (found.part('object')[0]?.lower ?? '') : '',
      ) &&
      !/ (?:today|tonight|yet|until|till|mad|crazy|anywhere|getting|any\/\w* more|sure|great|enough|fun|power)\//.test(
        said.code,
      ) &&
      (/ (?:i|we)\//.test(said.code) ||
        / (?:bother|bothering)\//.test(said.code) ||
        / (?:i|we)\/\w* (?:'ll|'m|'re)\//.test(neighbour(scene, said, 1)?.code ?? '')),
  ),
  decision(
    'there will be no <thing>',
    "^<lead>* (?: (?: there (?: 'll | will | 's | is ) (?: going to )? (?: be )? (?: not going to be | no ) ) | no more | no (?= <plain>{1,4} (?: on | in | for ) (?: this | the | my ) <plain>{1,2} $ ) ) (?<object> <any>+ )",
    (found, said) =>
      !has(found.part('object').slice(0, 2), 'f') &&
      !has(found.part('object'), 'E') &&
      (/ (?:'ll|will|going)\//.test(said.code) ||
        / no\/\w* more\//.test(said.code) ||
        said.words[0]?.lower === 'no') &&
      !/ (?:yet|stories|doubt|way|time|need|point|problem|trouble|sign|room|space|getting|stopping|excuses|holding|leaks|chance|rush|power|water|than|wind|rain|filming|sleep)\//.test(
        said.code,
      ),
  ),
  decision(
    '<thing> stays',
    `^<lead>* ${THING} (?: stays | stay | 's staying | is staying | are staying | remains | will stay | 'll stay ) (?: (?: exactly )? (?: where | as | how | the way | like ) (?: it | they | he | she | that ) (?: is | are | 's | 're | was | were )? | put | then | in | on | at <number> <any>{0,3} | the same )? $`,
    (found, said, scene) =>
      isThing(found) &&
      !negated(found, 'none') &&
      !notYet(said, scene) &&
      !/ (?:on|clamps?|tarp|weather|dog|brother|kids)\//.test(said.code),
  ),
  decision(
    'scrap the <thing>',
    '^<lead>* (?: scrap | forget | ditch | bin | never mind | lose | shelve ) (?: the | that | those | my | all the ) (?<object> <plain>{1,6} ) $',
    (_, said, scene) => {
      const next = neighbour(scene, said, 1);
      const isPlain = /^(?: \S+\/\S*L\S*)* (?:scrap|ditch|shelve)\//.test(said.code);
      if (isPlain) return neighbour(scene, said, -1) ? true : { plain: true };
      return (
        / (?:scrap|ditch|shelve)\//.test(said.code) ||
        (next !== undefined && !/ (?:off|into|away)\//.test(said.code))
      );
    },
  ),
  decision(
    '<this> beats <that>',
    "^<lead>* (?<object> <plain>{1,5}? ) (?: beats | beat | wins | won | wins out | makes more sense | makes most sense | is the better <any> | 's the better <any> | is the answer | 's the answer | is the way to go | 's the way to go | is the way forward | gets the job | gets the nod | gets my vote | it shall be ) (?<rest> <any>* ) $",
    (found, said) =>
      !/^(?:it|that|what|nothing|this|i|we|you|heart|nobody)$/.test(found.part('object')[0]?.lower ?? '') &&
      !/ (?:me|out|down|working|race|prize|game)\//.test(said.code) &&
      !has(found.words, 'N'),
  ),
  decision(
    'the plan is <this>',
    "(?: ^<lead>* (?: so | and )? (?: the | my )? (?: new )? (?: plan | answer | solution | compromise | fix | verdict | ruling | rule ) (?: now )? (?: 's | is | was ) (?: now | to | that | : )? <any> | that 's (?: the plan | what i 'm doing | what we 're doing | how i 'm doing it | how we 're doing it | what 's going in | going in | my decision | the one | the way it 's going | how it 's going to be | what it 's getting | the end of it ) | that settles it | that settled it | that 's that then | from now on | from here on | new rule | rule one | rule number <any> | house rule | lock that in | locked in | call it <number> and be done | that way it is )",
    (_, said, scene) =>
      !notYet(said, scene) && !/ (?:tomorrow|today|cutting|plan\/\w* (?:is|'s)\/\w* to\/)/.test(said.code),
  ),
  decision(
    "let's do <thing>",
    '^<lead>* let us (?: do | have | use | make | try | paint | put | fit | run | build | lay | hang | keep | leave | call it | say ) (?<object> (?: <det> | it | them | <number> | <plain> ) <any>+ )',
    (found, said, scene) =>
      !has(found.words, 'N') &&
      !notYet(said, scene) &&
      !/ (?:look|see|chat|talk|say|think|go|moving|simple|video|episode|tea|real|honest|that\/\w* (?:there|aside)|start|start|list|sums?|maths?|count|coffee|break)\//.test(
        said.code,
      ) &&
      !/ say\//.test(said.code),
  ),
  decision(
    '<person> chose <thing>',
    "^<lead>* (?: (?: my | the | our | me and <any>{1,2} | <plain> and (?: i | me ) ) )? (?: <person> | client | customer | owner | wife | missus | boss | designer | architect | missus | herself | himself | committee | family | kids | partner | me | crew | budget | inspector | engineer ) (?: and (?: i | me ) )? (?: 've | have | 's | has )? <adverb>* (?: picked | chosen | chose | settled on | agreed on | agreed | decided | gone for | went for | plumped for | voted for | voted | opted for | talked me into | talked me out of | said no to ) (?<object> <any>* )",
    (found, said) =>
      !has(found.words, 'N') &&
      !/ (?:me|us)\/\w* (?:up|to)\//.test(said.code) &&
      !/ (?:decided|agreed)\/\w* to\/\w* (?:come|help|call|visit)\//.test(said.code) &&
      !/ picked\/\w* (?:up|it\/\w* up|me)\//.test(said.code),
  ),
  decision(
    'I slept on it',
    '^<lead>* (?: (?: i | we | having | after )? (?: slept on it | sleeping on it | thought it over | thinking it over | weighed it up | run the numbers | ran the numbers | priced it up | done the sums ) | on balance | on reflection | all things considered | all in all | after all that | when all is said )',
    (_, said, scene) => {
      const next = neighbour(scene, said, 1);
      return (
        next !== undefined &&
        / (?:'m|'re|'s|is|are|went|going|it|prefer|'ll|will)\//.test(next.code) &&
        next.words.length > 2
      );
    },
  ),
  decision(
    'it was going to be <that>, now it is <this>',
    "^<lead>* (?: (?: now | so | but )* (?: it | they | that | she )? (?: 's | is | are | 're | 'll be | will be ) (?: now | going to be | instead )* | now it 's | now they 're | (?: i | we ) (?: 'm | 're | 've | am | are ) <any> ) (?<object> <any>+ )",
    (found, said, scene) => {
      const before = neighbour(scene, said, -1);
      return (
        before !== undefined &&
        !notYet(said, scene) &&
        !has(found.words, 'N') &&
        matches(HAD_PLANNED, before) &&
        (/\bbut\b/.test(said.opener) || / (?:now|instead|i|we)\//.test(said.code))
      );
    },
  ),
  decision(
    "I'll go <size>",
    "^<lead>* (?: so )? (?: (?: i | we ) (?: 'll | will | 'm | 're ) (?: go | going | make it | making it | call it | calling it | have it at | set it at | stick at ) (?: with | for | at | to )? (?<object> <number> <any>{0,5} ) $ | so it 's (?<second> <number> <any>{0,3} ) (?: then | centres | centers | deep | wide | high | thick | long | instead ) $ )",
    (found, said, scene) => !has(found.words, 'N') && !notYet(said, scene),
  ),
  decision(
    'I can live with <that>',
    "^<lead>* (?: i | we ) (?: 'll | will ) (?: live with | put up with | make do with | settle for | stick with | stick to | leave (?: it | that | them ) (?: as | at | be | alone | there | like ) ) (?<rest> <any>* )",
    (found, said) => !has(found.words, 'N') && !/ could\//.test(said.code),
  ),
  decision(
    'I prefer <this>',
    "^<lead>* <plain>{0,3}? (?: i | we ) (?: prefer | want it | like it better | 'm happy with | am happy with ) (?<object> <any>+ )",
    (found, said, scene) => {
      const next = neighbour(scene, said, 1);
      return (
        next !== undefined &&
        /\bso\b/.test(next.opener) &&
        / (?:going|stays|it|that|'m|goes|having)\//.test(next.code) &&
        !has(found.words, 'N')
      );
    },
  ),
  decision(
    '<size> goes from <this> to <that>',
    `^<lead>* ${THING} (?: 's | is | are | has | have | 's been | has been )? <adverb>* (?: going | goes | went | gone | come | comes | coming | moved | moves | up | down | dropped | drops | raised | cut )+ (?: up | down | back | out | in )? from <any>{1,4}? to (?<object> <number> <any>* )`,
    (found, said, scene) =>
      isThing(found) &&
      !negated(found) &&
      !notYet(said, scene) &&
      !/ (?:temperature|moisture|pressure|humidity|voltage|needle|headroom|price|dial|reading|bill|total|cost|clamp|torqued?|it|that|which)\//.test(
        said.code,
      ),
  ),
  {
    // "push catches rather than handles", "two coats and not three": no verb, only the choice and what it is not.
    name: '<this> rather than <that>, said alone',
    read: (said, scene) => {
      if (silent(said, scene) || said.words.length > 10 || said.words.length < 1) return undefined;
      if (
        said.words.some((word) => /[SHMV]/.test(word.classes)) ||
        /^(?:put|got|took|i|we|you|they|he|she|it|that)$/.test(said.words[0]?.lower ?? '')
      )
        return undefined;
      const why = supportOf(said, scene);
      if (!why.turnedDown || /^(?:not )?(?:\d|\w+ (?:hundred|thousand)|an? |one )/.test(why.turnedDown))
        return undefined;
      // "Fitted the stops, no glass yet": it is to come, and nobody turned it down.
      if (/\b(?:yet|left|so far|today|either)$/.test(why.turnedDown)) return undefined;
      // "No coal, no plasterboard": nothing is chosen; "no plastic windows, not in this house" is.
      if (
        /^ no\//.test(said.code) &&
        !/ (?:just|but|only)\//.test(said.code) &&
        !/^not\b/.test(why.turnedDown)
      )
        return undefined;
      // "905, not 950" mends a number.
      if (said.words.every((word) => /[QUL]/.test(word.classes))) return undefined;
      return draft('decision', said, { ...chosen(said, scene) }, firstWord(said));
    },
  },
  {
    // "no handles, push catches"
    name: 'no <this>, <that>',
    read: (said, scene) => {
      if (
        silent(said, scene) ||
        said.words.length > 5 ||
        said.words.length < 2 ||
        said.words[0]?.lower !== 'no'
      )
        return undefined;
      if (said.words.some((word) => /[SHMVfFXL]/.test(word.classes)) || NO_PHRASE.test(said.code))
        return undefined;
      const next = neighbour(scene, said, 1);
      if (!next || next.words[0]?.lower === 'no' || next.words.length > 8) return undefined;
      const chooses =
        / (?:i|we)\/\w* (?:'m|'re|am|are|'ll)\//.test(next.code) ||
        !next.words.some((word) => /[SHMVPb]/.test(word.classes));
      return chooses
        ? { kind: 'decision', from: said.index, to: next.index, start: said.words[0].start, end: next.end }
        : undefined;
    },
  },
  {
    // "22 mil chipboard and not boards, because boards squeak": the thing alone, its contrast and its reason.
    name: '<this> and not <that>, because',
    read: (said, scene) => {
      if (
        silent(said, scene) ||
        said.words.some((word) => /[SM]/.test(word.classes)) ||
        /^(?:i|we|you|give|take)$/.test(said.words[0]?.lower ?? '') ||
        / hang\/\S* on\//.test(said.code)
      )
        return undefined;
      if (said.words.length > 12 || said.words.length < 2) return undefined;
      const why = supportOf(said, scene);
      if (!why.reason) return undefined;
      // "Ordered from the mill, six weeks they said, so that'll be July": told of goods, and nothing is chosen.
      if (!why.turnedDown && / (?:said|says|ordered|quoted|reckoned|weeks|months)\//.test(said.code))
        return undefined;
      const before = neighbour(scene, said, -1);
      const about = before && !before.words.some((word) => word.lower === 'i');
      if (!why.turnedDown && (!about || REPORTS.test(before.code))) return undefined;
      return draft('decision', said, { ...chosen(said, scene), weak: !why.turnedDown }, firstWord(said));
    },
  },
  ...CHOICE_RULES,
  ...CHANGED_RULES,
  ...SHORT_CHOICE_RULES,
];
