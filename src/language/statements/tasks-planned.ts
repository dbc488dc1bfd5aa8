/** Looser ways of saying that work is still to do: what is next, what a thing asks for, what somebody waits for. */
import { grammarOf } from './clause-grammar.ts';
import { has } from './deed-words.ts';
import { isReason, neighbour, phraseRule, type Scene, type StatementRule } from './draft.ts';
import { type Found, phrase } from './phrase.ts';
import { dayIn, hasDay, isTaskVerb, subjectOf, tellsNoTask } from './tasks.ts';
import type { Said, Word } from './words.ts';

type Guard = (
  found: Found,
  said: Said,
  scene: Scene,
) => boolean | { readonly weak: true } | { readonly plain: true };
const task = (name: string, source: string, guard: Guard): StatementRule =>
  phraseRule('task', name, phrase(source), (found, said, scene) => {
    if (tellsNoTask(said, scene) || isReason(said)) return false;
    return !has(found.words, 'E') && guard(found, said, scene);
  });

const first = (found: Found, part: string) => found.part(part)[0]?.lower ?? '';
const isThing = (words: readonly Word[]) =>
  words.length > 0 && !words.some((word) => /[JE]/.test(word.classes));
/** Time, rest and talk: no work, whatever stands about them. */
const IDLE =
  / (?:day|days|week|weeks|hour|hours|minute|minutes|month|months|year|time|drink|beer|tea|coffee|bed|sleep|bath|beach|holiday|dinner|lunch|breakfast|supper|home|rest|nap|weather|rain|snow|news|question|questions|birthday|match|game|party|pub|church|school|money|price|prices|luck|patience|help|word|words|part|thing|things|man|hand|hands|parade)\//;
const isIdle = (words: readonly Word[]) => IDLE.test(words.map(({ lower }) => ` ${lower}/`).join(''));
const isNumbered = (words: readonly Word[]) => has(words, 'Q');

/** "Vapour barrier next, once I've got the tape": work that waits, and no heading of the talk to come. */
function isHeldUp(said: Said, scene: Scene): boolean {
  const behind = neighbour(scene, said, 1);
  return behind !== undefined && /\b(?:once|as soon as|soon as|when|after|provided)\b/.test(behind.opener);
}

/** Nouns that name a piece of work. */
const isWorkNoun = (word: Word | undefined) =>
  word !== undefined &&
  (/[BG]/.test(word.classes) ||
    /(?:tion|ment|ing|topcoat|undercoat|coat|coats|primer|assembly|glue-up|launch|pour|fit-out|rewire|rebuild)$/.test(
      word.lower,
    ));

export const PLANNED_RULES: readonly StatementRule[] = [
  task(
    '<thing> next',
    "^<lead>* (?<thing> (?: <det> | <plain> ) <plain>{0,4}? ) (?: is | are | 's )? (?: up | all )? next (?: in line | in the queue | on the list | on the bench | up | then | job )* (?: to be <done> | to <do> )? (?<rest> <any>{0,2} )$",
    (found, said, scene) =>
      isThing(found.part('thing')) &&
      !isIdle(found.part('thing')) &&
      !/^(?:the|what|who|that|it|this|and|week)$/.test(found.part('thing').at(-1)?.lower ?? '') &&
      !has(found.part('thing'), 'R') &&
      !has(found.part('rest'), 'D')
        ? isHeldUp(said, scene)
          ? { plain: true }
          : { weak: true }
        : false,
  ),
  task(
    '<work> <day>',
    '^<lead>* (?<thing> <plain>{1,4}? ) (?: then )? (?<when> (?: on | first thing | for )? (?: tomorrow | tonight | <day> ) (?: morning | afternoon | evening | night | then | if )? ) (?<rest> <any>{0,4} )$',
    (found, said, scene) =>
      (isWorkNoun(found.part('thing').at(-1)) || neighbour(scene, said, -1) === undefined) &&
      !/^(?:delivery|expecting|hoping|waiting|starting|courier|timber|inspector|inspection|see|same|more|forecast|until|till)$/.test(
        first(found, 'thing'),
      ) &&
      grammarOf(said)?.form === 'verbless' &&
      !found.part('thing').some((word) => /[RJDNb]/.test(word.classes)) &&
      !isIdle(found.part('thing')) &&
      / (?:tomorrow|tonight)\//.test(said.code) &&
      dayIn(said, scene) !== undefined,
  ),
  task('<thing> first, then <thing>', '^<lead>* (?<thing> <plain>{1,4}? ) first $', (found, said, scene) => {
    const after = scene.said[said.index + 1];
    if (!after || !/\bthen\b/.test(`${after.opener} ${after.words[0]?.lower}`)) return false;
    return (
      isThing(found.part('thing')) &&
      !has(found.part('thing'), 'R') &&
      neighbour(scene, said, -1) === undefined
    );
  }),
  task(
    'then <thing>',
    '^ (?: then | and | after that )* (?<thing> (?: the | a | another | my ) <plain>{1,4}? | <plain>{1,3}? ) $',
    (found, said, scene) => {
      const before = scene.said[said.index - 1];
      const opens = /\bthen\b/.test(said.opener) || said.words[0]?.lower === 'then';
      if (!opens || !before || !/ (?:next|first|tomorrow)\//.test(before.code) || has(found.words, 'Q'))
        return false;
      return !found.part('thing').some((word) => /[RJDNSHMVIOX]/.test(word.classes.replace('T', ''))) &&
        !isIdle(found.part('thing'))
        ? { weak: true }
        : false;
    },
  ),
  task(
    '<work> starts <day>',
    "^<lead>* (?<thing> <plain>{1,5}? ) (?: 'll | will )? (?: starts | start | begins | begin | happens | resumes | kicks off | goes ahead ) (?: again | back up )? (?<when> <any>{1,4} )$",
    (found, said, scene) =>
      isWorkNoun(found.part('thing').at(-1)) &&
      isThing(found.part('thing')) &&
      dayIn(said, scene) !== undefined,
  ),
  task(
    'then I can <do> <thing>',
    '^<lead>* (?: i | we ) can (?: <adverb> | get on with | go ahead and )* (?<verb> <do> | <doing> | get | start ) (?<object> <any>+ )$',
    (found, said) =>
      /\bthen\b/.test(said.opener) &&
      !has(found.words, 'N') &&
      !/^(?:see|show|tell|use|live|film|look|leave)$/.test(first(found, 'verb')) &&
      isTaskVerb(found.part('verb')[0], found.part('object')[0]),
  ),
  task(
    'I will <do> the <thing>',
    "^<lead>* (?: i | we ) (?: 'll | will | shall ) (?: <adverb> | just )* (?<verb> <do> ) (?<object> (?: the | that | those | them | it | a | an | my | another | these | both ) <any>* )$",
    (found, said) =>
      said.opener !== 'and' &&
      !/[bC]/.test(
        (found.part('verb')[0]?.classes ?? '').replace(
          'b',
          found.part('verb')[0]?.lower === 'cut' ? '' : 'b',
        ),
      ) &&
      !has(found.words, 'N') &&
      !isIdle(found.part('object')) &&
      !/^(?:take|show|use|leave|keep|let|call|give|put|say|hold|wait|film|post|tell|stop|get|go|see|run|try|pass|pick|share|skip|make|do|finish|start|answer|model|mark|cover|add|address|face|order|feature|photograph|upload|bin|place|stick|drop|support|weigh|record|post|link|credit|season|price|write|speak)$/.test(
        first(found, 'verb'),
      ),
  ),
  task(
    'I will ask <somebody>',
    "^<lead>* (?: i | we ) (?: 'll | will | shall ) (?: <adverb> | just | have to )* (?<verb> check with | ask | ring | phone | email | text | chase | look up | look into | find out ) (?<object> (?: the | my | his | him | her | them | about | if | whether | what | how | a ) <any>* )$",
    (found) => !has(found.words, 'N') && subjectOf(found) !== 'viewer',
  ),
  task(
    'still need the <thing>',
    '^<lead>* (?: (?: i | we ) )? still (?: need | want | missing | short of | after ) (?<object> (?: the | my | a | an | some | <plain> ) <any>{1,5} )$',
    (found) => !isIdle(found.part('object')) && first(found, 'object') !== 'to',
  ),
  task(
    '<thing> will need a <thing>',
    "^<lead>* (?<subject> <plain>{1,7}? ) (?: 'll | will | is going to | 's going to ) (?: <adverb> | be )* (?: need | want | needing | wanting ) (?<object> (?: a | an | its | another | some | new ) <any>{1,7} )$",
    (found) =>
      subjectOf(found) === 'thing' &&
      !isIdle(found.part('object')) &&
      !isNumbered(found.part('object').slice(0, 3)),
  ),
  task(
    'now for <thing>',
    '^<lead>* (?: on to | back to | so to | now for | now to | then on to ) (?<object> (?: the | that | my ) <plain>{1,5} )$',
    (found) => (isIdle(found.part('object')) || has(found.part('object'), 'f') ? false : { weak: true }),
  ),
  task(
    'that means <doing>',
    "^<lead>* (?: that | which | this | it | so that )? (?: means | meant | will mean | is | 'll mean ) (?: <adverb> | more )* (?<verb> <doing> ) (?<object> <any>{0,8} )$",
    (found) =>
      / (?:means|mean)\//.test(found.words.map(({ lower }) => ` ${lower}/`).join('')) &&
      !has(found.words, 'N'),
  ),
  task(
    'must <off>',
    '^<lead>* (?<subject> <plain>{0,6}? ) (?: must | has got to | have got to | gotta ) (?: <adverb> | still )* (?: (?<place> off | out | away | down | up | back ) | to the <any> | come (?: down | off | out | up | back ) )',
    (found) =>
      subjectOf(found) !== 'speaker' &&
      subjectOf(found) !== 'viewer' &&
      !has(found.words, 'N') &&
      !has(found.words, 'J'),
  ),
  task(
    '<person> wants <thing> by <day>',
    "^<lead>* (?<subject> <plain>{1,6}? ) (?: want | wants | expects | expect | needs | need | is expecting | 's expecting | is after | 's after | is waiting for | wanting ) (?<object> (?: photos | photographs | pictures | drawings | money | paying | his | her | their | the | a | an | some | my | our | me to | us to | to see | it | that | them ) <any>{1,9} )$",
    (found, said, scene) => {
      const who = subjectOf(found);
      if (
        who === 'speaker' ||
        who === 'viewer' ||
        has(found.words, 'N') ||
        has(found.part('object').slice(0, 2), 'E')
      )
        return false;
      return (
        / (?:by|before|latest|later)\//.test(`${said.code} ${neighbour(scene, said, 1)?.code ?? ''}`) &&
        hasDay(said, scene)
      );
    },
  ),
  task(
    '<thing> is needed',
    "^<lead>* (?<subject> <plain>{1,8}? ) (?: is | are | 's | 're | will be | 'll be ) (?: <adverb> )* (?: needed | required | called for | wanted | missing still | overdue | outstanding | pending | due for <any>+ ) (?<rest> <any>{0,4} )$",
    (found) =>
      subjectOf(found) === 'thing' &&
      !isIdle(found.part('subject')) &&
      !/^(?:to|for|by|if)$/.test(first(found, 'rest')),
  ),
  task(
    '<thing> is crying out for <thing>',
    "^<lead>* (?<subject> <plain>{1,8}? ) (?: (?: is | are | 's | 're ) <adverb>* (?: thirsty | crying out | begging | screaming | asking | hungry | crying | shouting | ready ) for | deserves | deserve | could use | could do with | can do with | would like ) (?<object> <any>{1,6} )$",
    (found, said) =>
      subjectOf(found) !== 'speaker' &&
      subjectOf(found) !== 'viewer' &&
      !isIdle(found.part('object').slice(0, 3)) &&
      !has(found.part('subject'), 'J') &&
      !/ ready\/\w* for\/\w* (?!paint|primer|varnish|oil|glass|grout|filler|sanding|its|a|the)/.test(
        said.code,
      ) &&
      !has(found.part('object'), 'Q'),
  ),
  task(
    '<back> it goes',
    '^<lead>* (?: so )? (?<place> back | out | off | up | in | down | on | away ) (?: it | they | she | he | that | those ) (?: goes | go | comes | come ) (?<rest> <any>{0,5} )$',
    (found) => !has(found.part('rest'), 'b'),
  ),
  task(
    'gets <participle> <day>',
    '^<lead>* (?: gets | get | getting ) (?<verb> <done> ) (?<rest> <any>* )$',
    (_, said, scene) => neighbour(scene, said, -1) !== undefined && dayIn(said, scene) !== undefined,
  ),
  task(
    'so <thing> waits',
    '^<lead>* (?<subject> <plain>{1,5}? ) (?: wait | waits | can wait | must wait | has to wait | have to wait | will have to wait ) $',
    (found, said) => (subjectOf(found) === 'thing' && /\bso\b/.test(said.opener) ? { weak: true } : false),
  ),
  task(
    '<thing> to be <participle>',
    '^<lead>* (?<thing> <plain>{1,5}? ) (?: still )? to be (?<verb> <done> ) (?<rest> <any>{0,5} )$',
    (found) =>
      isThing(
        found
          .part('thing')
          .slice(0, -1)
          .concat(
            found
              .part('thing')
              .slice(-1)
              .filter(({ lower }) => lower !== 'man'),
          ),
      ) &&
      !/^(?:seems|need|have|has|got|used|going|said|is|are|not)$/.test(
        found.part('thing').at(-1)?.lower ?? '',
      ),
  ),
  task(
    "that is <day>'s <noun>",
    "^<lead>* (?<subject> <any>{0,9}? ) (?: 's | is | are | will be | 'll be )? (?<when> (?: tomorrow | tonight | <day> ) (?: morning | evening | afternoon | night )? ) 's_? (?: job | jobs | fun | treat | shopping | work | errand | errands | task | problem | entertainment | game | adventure | project | chore | mission | worry | misery | pleasure | delight | business )",
    (_, said) => !/ (?:was|were)\//.test(said.code),
  ),
  task(
    '<thing> is getting <participle>',
    "^<lead>* (?<subject> <any>{1,8}? ) (?: is | are | 's | 're ) <adverb>* (?: getting | having ) <adverb>* (?<verb> <done> ) (?<rest> <any>* )",
    (found, said) =>
      subjectOf(found) === 'thing' &&
      !has(found.words, 'N') &&
      !/ (?:delivered|dropped\/\w* (?:off|round|over)|sent|shipped|posted)\//.test(said.code) &&
      !/^(?:used|worn|lost|stuck|tired|carried|made)$/.test(first(found, 'verb')) &&
      !/[FX]/.test(found.part('verb')[0]?.classes ?? ''),
  ),
  task(
    'going to <do> <thing>',
    '^<lead>* going to (?: have to | need to | get to )? (?: <adverb> )* (?<verb> <any> ) (?<object> <any>+ )',
    (found) =>
      !has(found.words, 'N') &&
      (found.part('verb')[0]?.classes.includes('B') ?? false) &&
      isTaskVerb(found.part('verb')[0], found.part('object')[0]) &&
      !/^(?:show|film|leave|use|call|let|take|keep|stop)$/.test(first(found, 'verb')),
  ),
  task(
    '<thing> wants its <part> <doing>',
    "^<lead>* (?<subject> <plain>{1,7}? ) (?: want | wants | need | needs | is needing | 's needing | is wanting | 's wanting ) (?: its | their | her | his | the | all | some | a | an ) <plain>{1,4}? (?<verb> <doing> | <done> ) (?: out | off | up | down | in | again | to it | <adverb> )* $",
    (found) => subjectOf(found) === 'thing' && !has(found.words, 'N') && !has(found.words, 'J'),
  ),
  task(
    'that is a job for <when>',
    '(?: job | jobs | one | task | something ) for (?: when | after | tomorrow | another day | the weekend | next | monday | tuesday | wednesday | thursday | friday | saturday | sunday )',
    (found) => !has(found.words, 'N'),
  ),
];
