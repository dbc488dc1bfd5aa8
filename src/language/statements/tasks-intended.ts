/** Work told as an intention, a need said of no one, or a duty in another word order ("the glass must I still order"). */
import { workBase, workThird } from '../lexicon/work-verbs.ts';
import { code, IDLE_THINGS } from './deed-fragments.ts';
import { has } from './deed-words.ts';
import { type Draft, isReason, neighbour, phraseRule, type Scene, type StatementRule } from './draft.ts';
import { type Found, phrase } from './phrase.ts';
import { dayIn, hasDay, isTaskVerb, subjectOf, tellsNoTask } from './tasks.ts';
import type { Said } from './words.ts';

type Guard = (found: Found, said: Said, scene: Scene) => boolean | Partial<Omit<Draft, 'kind' | 'rule'>>;
const task = (name: string, source: string, guard: Guard): StatementRule =>
  phraseRule('task', name, phrase(source), (found, said, scene) => {
    if (tellsNoTask(said, scene) || isReason(said) || has(found.words, 'E')) return false;
    return guard(found, said, scene);
  });

/** "Got the engine to fire", "got the door to close at last": it does now what it would not, and nothing is left to do. */
function isBroughtTo(said: Said, verb: string): boolean {
  if (/ (?:'ve|have|still|yet|left)\//.test(said.code)) return false;
  return (
    /^(?:run|start|fire|sit|prime|latch|bite|behave|budge|seal|fit|seat|settle|work|spin|flow|drain)$/.test(
      verb,
    ) || / (?:finally|eventually|last|end)\//.test(said.code)
  );
}

const lower = (found: Found, part: string) => found.part(part)[0]?.lower ?? '';
const isWork = (found: Found) => isTaskVerb(found.part('verb')[0], found.part('object')[0]);
/** Verbs of talk and film after "I intend to", "let's": nothing to build. */
const NO_WORK =
  /^(?:show|film|see|tell|post|share|say|talk|use|leave|keep|let|hope|call|know|think|have|be|go)$/;

export const INTENDED_RULES: readonly StatementRule[] = [
  task(
    'it is necessary to <do>',
    "^<lead>* (?: it | that ) (?: 's | is | will be | 'll be | remains | will ) (?: <adverb> | be )* (?: necessary | essential | time | high time | left | my turn | needful )? (?: only | just )? to (?<verb> <do> | find | get ) (?<object> <any>+ )",
    (found) =>
      / (?:necessary|essential|time|remains|left)\//.test(code(found.words)) &&
      !has(found.words, 'N') &&
      isWork(found),
  ),
  task(
    'I intend to <do>',
    "^<lead>* (?: (?: i | we ) (?: do | 'm | am | are | 're )? )? <adverb>* (?<how> intend | intending | propose | proposing | plan | planning | mean | aim | aiming | hope | hoping | 'd like | would like | 'd love | would love | 'll try | will try ) to (?: <adverb> | try to )* (?<verb> <any> ) (?<object> <any>+ )",
    (found, said, scene) =>
      !has(found.words.slice(0, 6), 'N') &&
      !NO_WORK.test(lower(found, 'verb')) &&
      isWork(found) &&
      (/^(?:intend|propose|mean)$/.test(lower(found, 'how')) || hasDay(said, scene)),
  ),
  task(
    'I shall <do>',
    '^<lead>* <plain>{0,4}? (?: i | we ) shall (?: <adverb> | be )* (?<verb> <do> | <doing> ) (?<object> <any>+ )',
    (found) => !has(found.words, 'N') && !NO_WORK.test(lower(found, 'verb')),
  ),
  task(
    'might as well <do>',
    "^<lead>* (?: (?: i | we ) )? (?: might as well | may as well | 'd best | had best | best | gotta | got ta | time to ) (?<verb> <do> | get | find ) (?<object> <any>+ )",
    (found) =>
      !NO_WORK.test(lower(found, 'verb')) &&
      isWork(found) &&
      (found.words[0]?.lower !== 'best' || has(found.part('object').slice(0, 1), 'T')),
  ),
  task(
    "don't let me forget <thing>",
    '^<lead>* (?: do not let me forget | let me not forget | must not forget | do not forget | not to forget ) (?<object> (?: <det> | about | to ) <any>+ )',
    (found) => !/^(?:you|that i|your)$/.test(lower(found, 'object')),
  ),
  task(
    "let's <do> <thing> <day>",
    '^<lead>* let us (?<verb> <do> | get ) (?<object> <any>+ )',
    (found, said, scene) => !NO_WORK.test(lower(found, 'verb')) && hasDay(said, scene),
  ),
  // "I still have the sluice to repair", "we've two runs left to hang"
  task(
    'I have <thing> to <do>',
    "^<lead>* (?: (?: i | we ) (?: <adverb> | still )* (?: 've | have ) | still got | still have | got ) (?: got | still | yet | only | just )* (?<thing> (?: <det> | <number> | some ) <plain>{0,5}? ) (?: still | yet | left )* to (?<verb> <do> ) (?<object> <any>{0,7} )$",
    (found, said) =>
      !has(found.part('thing'), 'N') &&
      !isBroughtTo(said, found.part('verb')[0]?.lower ?? '') &&
      !IDLE_THINGS.test(code(found.part('thing').slice(-1))) &&
      !/^(?:use|play|spare|show|film|cover|drive|stand|hold|lose|work|store|sell)$/.test(
        lower(found, 'verb'),
      ) &&
      isTaskVerb(found.part('verb')[0], found.part('object')[0]),
  ),
  // "The ventilators should be regreased": a duty, where no size stands beside it.
  task(
    '<thing> should be <done>',
    '^<lead>* (?<subject> <plain>{1,8}? ) (?: should | shall | ought to ) (?: <adverb> | also | really )* be (?: <adverb> )* (?<verb> <done> ) (?<rest> <any>* )',
    (found, said) =>
      subjectOf(found) === 'thing' &&
      !has(found.words, 'N') &&
      !has(said.words, 'U') &&
      !/^(?:it|that|this|you|done|finished)$/.test(found.part('subject').at(-1)?.lower ?? '') &&
      workBase(lower(found, 'verb')) !== lower(found, 'verb') &&
      !/^(?:done|finished|made|called|used|given|left|seen|kept|set|held|used|built|delivered|fixed|placed|found|shipped|sorted|covered|supported|sent|allowed)$/.test(
        lower(found, 'verb'),
      ),
  ),
  // "I must until Friday the drawing send", "I will on Saturday the frames paint": the verb at the end.
  task(
    'I must <thing> <do>',
    "^<lead>* (?: <day> | then | now | so )? (?: (?: i | we ) (?: must | will | shall | have to | 'll ) | (?: must | will ) (?: i | we ) ) (?<object> <any>{1,9}? ) (?<verb> <do> ) $",
    (found) => {
      const object = found.part('object');
      // "I must sand the deck" has its verb in its place.
      return (
        object.length > 1 &&
        !has(found.words, 'N') &&
        !/[BVSM]/.test((object[0]?.classes ?? '').replace('T', '')) &&
        object.some((word) => /^(?:the|a|an|my|that|those|these|them|it)$/.test(word.lower)) &&
        !/^(?:be|the|a|to|my|that|this|and|of|in|on)$/.test(object.at(-1)?.lower ?? '') &&
        !/^(?:have|be|get|go|do|make|take|say|put|find|need|see)$/.test(
          object.find((word) => !/[AL]/.test(word.classes))?.lower ?? '',
        )
      );
    },
  ),
  // "The cable must through the wall", "he must still to the welder", "the beams must out"
  task(
    '<thing> must <where>',
    '^<lead>* (?<subject> <plain>{1,6}? ) must (?: <adverb> | still | yet | first | also )* (?: out | off | away | up | down | in | back | through | to | under | over | into | on ) (?<rest> <any>{0,6} )$',
    (found) => subjectOf(found) !== 'viewer' && !has(found.words, 'N'),
  ),
  task(
    '<person> must come',
    "^<lead>* (?<subject> (?: the | my | a ) <plain>{0,2}? <person> ) (?: must | has to | needs to | has got to | 's got to | needs ) (?: <adverb> | still | first )* (?: come | look | see | sign | check | be | in | out | round )",
    (found, said, scene) =>
      !has(found.words, 'N') &&
      (hasDay(said, scene) ||
        /\b(?:before|first|so)\b/.test(`${neighbour(scene, said, 1)?.opener ?? ''} ${said.opener}`) ||
        / first\//.test(said.code)),
  ),
  task(
    '<thing> wants <thing> yet',
    '^<lead>* (?<subject> <plain>{1,6}? ) (?: want | wants | need | needs ) (?<object> <any>{1,6}? ) (?: yet | still ) $',
    (found) => subjectOf(found) === 'thing' && !has(found.words, 'N') && !has(found.part('object'), 'U'),
  ),
  task(
    '<thing> is next on <where>',
    "^<lead>* (?<subject> <plain>{1,5}? ) (?: 's | is | are ) (?: up )? next (?: on | for | in | at | to ) <any>{1,5} $",
    (found) =>
      subjectOf(found) === 'thing' &&
      !has(found.part('subject'), 'E') &&
      !/^(?:it|that|who|what)$/.test(lower(found, 'subject')),
  ),
  task(
    'all that is left is <thing>',
    "^<lead>* (?: all | everything | what | the only thing | the last thing ) (?: that )? (?: 's | is )? (?: left | remains | remaining | outstanding | missing ) (?: to do )? (?: <prep> <any>{1,3}? )? (?: 's | is | are ) (?<object> <any>{1,6} )$",
    (found) => !has(found.words.slice(1), 'N') && !IDLE_THINGS.test(code(found.part('object'))),
  ),
  task(
    'going to <place> for <thing> <day>',
    "^<lead>* (?: (?: i | we ) (?: 'm | 're | am | are ) )? (?: going | off | heading | driving | nipping | popping | running ) (?: back | over | down | up | into | to | round )+ <plain>{1,4}? (?: <day> <any>{0,2}? )? (?: for | to (?= get | fetch | collect | pick | buy ) ) (?<object> <any>+ )$",
    (_, said, scene) => dayIn(said, scene) !== undefined,
  ),
  // "The crane lifts the roof on Friday": the plain present with a day ahead.
  task(
    '<somebody> <does> <thing> <day>',
    '^<lead>* (?<subject> (?: the | my | a | our )? <plain>{1,3}? ) (?<verb> <does> ) (?<object> (?: the | both | all | my | our | that | those | them | it ) <any>+ )$',
    (found, said, scene) =>
      workThird(lower(found, 'verb')) !== undefined &&
      !/^(?:covers|clears|supports|fits|holds|meets|leaves|costs|brings|sends|ships|delivers|posts|drops|hits|faces|carries|houses|sells|lends|opens|closes|tells|shows)$/.test(
        lower(found, 'verb'),
      ) &&
      !has(found.part('subject'), 'I') &&
      dayIn(said, scene) !== undefined,
  ),
  task(
    'then <thing> can go <back>',
    '^<lead>* (?<subject> <plain>{1,6}? ) (?: can | could ) (?: <adverb> | then | finally )* (?: go | come | be (?<verb> <done> ) ) (?<place> back | in | on | up | off | out | down | together | over )? (?<rest> <any>{0,6} )$',
    (found, said) =>
      /\bthen\b/.test(`${said.opener} ${said.words[0]?.lower}`) &&
      subjectOf(found) === 'thing' &&
      (found.part('place').length > 0 || found.part('verb').length > 0) &&
      !has(found.words, 'N'),
  ),
];
