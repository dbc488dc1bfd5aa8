import {
  type Draft,
  draft,
  firstWord,
  isReason,
  isSubordinate,
  neighbour,
  phraseRule,
  type Scene,
  type StatementRule,
} from './draft.ts';
import { type Found, matches, type Phrase, phrase } from './phrase.ts';
import { supportOf } from './support.ts';
import { dayAfter, dayIn } from './tasks.ts';
import type { Said, Word } from './words.ts';

type Fields = Partial<Omit<Draft, 'kind' | 'rule'>>;

const silent = (said: Said, scene: Scene) =>
  scene.unreal.has(said.index) ||
  said.asks ||
  isSubordinate(said) ||
  isReason(said) ||
  /\bwhich\b/.test(said.opener);

/** The choice with its reason in one quote. */
function chosen(said: Said, scene: Scene): Fields {
  const { reason, turnedDown, last } = supportOf(said, scene);
  return {
    end: last.end,
    to: last.index,
    ...(reason ? { reason } : {}),
    ...(turnedDown ? { turnedDown } : {}),
  };
}

/** Says only that something is settled; what, is said just before or just after. */
const ANNOUNCES = phrase(
  "^<lead>* (?: (?: i | we ) (?: 've | have )? <adverb>* (?: decided | changed my mind <any>{0,6}? | made up my mind | made my mind up | come round to it | come around to it | said yes | settled | been talked down | backed down ) | final answer | final | change of plan | decision made | that 's (?: decided | settled | final ) | executive decision | new plan | decided on the spot | it 's settled | no more emails | my back voted | end of discussion | vote is in ) (?: then | now | so )* $",
);

/** Widens a bare announcement over the clauses that say what was settled. */
function announced(said: Said, scene: Scene): Fields {
  if (!matches(ANNOUNCES, said)) return {};
  const before = neighbour(scene, said, -1);
  const after = neighbour(scene, said, 1);
  const named =
    before && before.words.length > 2 && !before.words.every((word) => word.classes.includes('L'));
  if (named && !/ mind\/| plan\/| answer\//.test(said.code)) {
    const further = before.words.length < 5 ? neighbour(scene, before, -1) : undefined;
    const from = further && !further.words.every((word) => word.classes.includes('L')) ? further : before;
    return { from: from.index, start: from.words[firstWord(from)]?.start ?? from.start };
  }
  if (!after) return {};
  const last = neighbour(scene, after, 1) ?? after;
  return { to: last.index, end: last.end };
}

const decision = (
  name: string,
  pattern: Phrase | string,
  guard: (found: Found, said: Said, scene: Scene) => boolean,
): StatementRule =>
  phraseRule(
    'decision',
    name,
    pattern,
    (found, said, scene) =>
      !silent(said, scene) &&
      guard(found, said, scene) && { ...chosen(said, scene), ...announced(said, scene) },
  );

const set = (words: string) => new Set(words.trim().split(/\s+/));
const has = (words: readonly Word[], letter: string) => words.some((word) => word.classes.includes(letter));

/** Doing these is choosing, even without a reason. */
const CHOOSING =
  set(`switching flipping dropping raising lowering swapping ditching scrapping stretching widening narrowing
  upgrading downgrading sticking plumping opting skipping shrinking shortening lengthening thickening keeping having
  moving turning reversing binning abandoning doubling halving changing leaving blanking going`);
/** Doing these is telling about oneself or the film. */
const NO_CHOICE =
  set(`filming recording talking sitting standing looking thinking saying telling trying wondering hoping
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

export const DECISION_RULES: readonly StatementRule[] = [
  decision(
    "I've decided",
    "(?: i | we ) (?: 've | have | had )? (?: <adverb> | as good as )* (?: decided | settled on | settled for | settle on | settle for | plumped for | opted | chosen | chose | picked (?! up | out ) | resolved to | landed on | come down on | come round to | come around to | came round to | gone for | gone with | gone up to | gone down to | gone over to | gone back to | gone off | gone to | went for | went with | went up to | went down to | changed my mind | made up my mind | made my mind up | said yes | said no to | agreed to | agreed on | agreed | ruled out | committed to | switched to | switched over to | swapped to | swapped over to | changed to | changed over to | moved to | stuck with | ended up with | dropped the idea | ditched | binned off | scrapped | abandoned | shelved | backed off on | given up on | talked myself | been talked | let myself be talked | backed down )",
    (found) => !has(found.words, 'N'),
  ),
  decision(
    'went with <thing>',
    '^<lead>* (?: <adverb> )* (?: went for | went with | going with | going for | gone with | gone for | plumped for | settled on | settled for | opted for | sticking with | stuck with | sticking to | switched to | switching to | decided on | decided to | chose | picked ) (?<object> <any>+ )',
    (found, said) =>
      !said.opener.includes('which') &&
      !/^(?:a walk|a run)/.test(
        found
          .part('object')
          .map((word) => word.lower)
          .join(' '),
      ),
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
    "^<lead>* (?: i | we ) (?: 'm | 're | am | are ) not (?<verb> <any> ) (?<object> <any>+ )",
    (found, said, scene) => {
      const verb = found.part('verb')[0]?.lower ?? '';
      const next = neighbour(scene, said, 1);
      return (
        /ing$/.test(verb) &&
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
    `^<lead>* ${THING} (?: (?: 'll | will )? <adverb>* (?<verb> goes | go | gets | get | takes | sits | moves | move | stays | stay | becomes | open | opens | hang | hangs | run | runs | comes | drops | drop | rises | shifts | ends up ) ) (?<object> <any>+ )`,
    (found, said, scene) => {
      if (!isThing(found) || negated(found)) return false;
      const why = supportOf(said, scene);
      if (why.reason !== undefined || why.turnedDown !== undefined) return true;
      if (notYet(said, scene)) return false;
      const verb = found.part('verb')[0]?.lower ?? '';
      const object = found.part('object').map((word) => word.lower);
      if (/^(?:moves?|shifts)$/.test(verb)) return true;
      if (/^(?:stays?)$/.test(verb))
        return !/^(?:put|up|on|off|here|in|at|where|dry|wet|warm|within|under|below|above)$/.test(
          object[0] ?? '',
        );
      if (/^(?:drops?|rises|comes|goes|go)$/.test(verb)) {
        if (/^(?:to|up|down)$/.test(object[0] ?? '') && / to /.test(` ${object.join(' ')} `)) {
          return !/(?:headroom|moisture|temperature|price|pressure|humidity|dial|needle|lead)$/.test(
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
      !/^(?:what|how|like|that|as|where|whatever|whoever|which|and|here|there)$/.test(
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
  {
    // "22 mil chipboard and not boards, because boards squeak": the thing alone, its contrast and its reason.
    name: '<this> and not <that>, because',
    read: (said, scene) => {
      if (
        silent(said, scene) ||
        said.words.some((word) => /[SM]/.test(word.classes)) ||
        /^(?:i|we|you|give|take)$/.test(said.words[0]?.lower ?? '')
      )
        return undefined;
      if (said.words.length > 12 || said.words.length < 2) return undefined;
      const why = supportOf(said, scene);
      if (!why.reason) return undefined;
      const before = neighbour(scene, said, -1);
      const about = before && !before.words.some((word) => word.lower === 'i');
      if (!why.turnedDown && (!about || REPORTS.test(before.code))) return undefined;
      return draft('decision', said, { ...chosen(said, scene), weak: !why.turnedDown }, firstWord(said));
    },
  },
];
