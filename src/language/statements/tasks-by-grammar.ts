/** Work still to do, read from the grammar of its clause: no helper verb, no "need", often no subject at all. */
import { workBase } from '../lexicon/work-verbs.ts';
import { code, IDLE_THINGS } from './deed-fragments.ts';
import { has } from './deed-words.ts';
import { type Draft, isReason, neighbour, phraseRule, type Scene, type StatementRule } from './draft.ts';
import { NOUNS_AS_WELL } from './job-lists.ts';
import { type Found, phrase } from './phrase.ts';
import { dayIn, isTaskVerb, subjectOf, tellsNoTask } from './tasks.ts';
import type { Said, Word } from './words.ts';

type Guard = (found: Found, said: Said, scene: Scene) => boolean | Partial<Omit<Draft, 'kind' | 'rule'>>;
const task = (name: string, source: string, guard: Guard): StatementRule =>
  phraseRule('task', name, phrase(source), (found, said, scene) => {
    if (tellsNoTask(said, scene) || isReason(said) || has(found.words, 'E')) return false;
    return guard(found, said, scene);
  });

const lower = (found: Found, part: string) => found.part(part)[0]?.lower ?? '';
const isIdle = (words: readonly Word[]) => IDLE_THINGS.test(code(words));

/** A verb that may stand after "to" as a job; nouns and idle verbs are none. */
const isJob = (verb: Word | undefined, next: Word | undefined) =>
  verb !== undefined &&
  (workBase(verb.lower) !== undefined ||
    /^(?:find|get|make|sort|buy|ask|ring|see to|finish|start)$/.test(verb.lower)) &&
  !/^(?:show|spare|match|suit|play|hold|use|burn|cover|support|run|stand|face|house|last|power|fit|test|weigh|film|post|work|charge|start|stop|size|drop|turn|reach|clear|seat|carry|store)$/.test(
    verb.lower,
  ) &&
  isTaskVerb(verb, next);
const NO_JOB_HEAD =
  /^(?:start|better|door|wall|end|side|floor|still|top|bottom|nothing|easy|hard|ready|time|place|room|enough|way|how|what|where|when|which|want|need|going|able|about|supposed|used|got|have|had|has|is|are|due|like|down|up|next|first|tempted|trying|good|best|nice|happy|free|back|close|try|someone|somebody|him|her|me|you|us|money|chance|reason|it|that|this|them|sure|tool|tools|far|long|day|days|hours|weeks|more|plan|plans|idea|job|sorry|want|went|came|here|there|safe|cheap|bit|end)$/;

export const TASKS_BY_GRAMMAR: readonly StatementRule[] = [
  // "Slats to cut.", "Just the vents to hang", "ropes to borrow from the farm"
  task(
    '<thing>, to <do>',
    '^<lead>* (?: just | only | also | still )* (?<thing> (?! to ) <plain>{1,5}? ) (?: still | yet | left )? to (?: be (?<done> <done> ) | (?<verb> <any> ) ) (?<rest> <any>{0,5} )$',
    (found) => {
      const thing = found.part('thing');
      const rest = found.part('rest');
      if (thing.some((word) => /[ONVJbCE]/.test(word.classes) && !/T/.test(word.classes))) return false;
      if (NO_JOB_HEAD.test(thing.at(-1)?.lower ?? '') || isIdle(thing) || has(thing.slice(-1), 'Q'))
        return false;
      if (has(rest, 'S') || has(rest, 'H') || has(rest, 'M') || has(thing.slice(-1), 'R')) return false;
      if (found.part('done').length > 0) return true;
      const verb = found.part('verb')[0];
      // "Plaster to plaster", "sill to plate", "floor to roof" are stretches.
      if (thing.at(-1)?.lower === verb?.lower) return false;
      if (
        thing.length === 1 &&
        !/[^s]s$/.test(thing[0]?.lower ?? '') &&
        NOUNS_AS_WELL.test(verb?.lower ?? '')
      )
        return false;
      return thing.some((word) => !/[APCRLN]/.test(word.classes)) && isJob(verb, rest[0]);
    },
  ),
  // "The main fuse I haven't bought yet", "the other end I'll tackle when it's warmer", "the glass must I still order"
  task(
    '<thing> I <have yet to do>',
    "^<lead>* (?<thing> (?: <det> | <number> | <plain> ) <plain>{0,4}? ) (?: i | we ) (?: 'll | will | can | must | shall | still have to | have to | 've to | need to | still need to | want to | 'm going to | 've yet to | have yet to ) (?: <adverb> | still )* (?<verb> <any> ) (?<rest> <any>{0,7} )$",
    (found) => {
      const thing = found.part('thing');
      if (
        thing.length === 0 ||
        thing.some((word) => /[JDNV]/.test(word.classes) || /^[OR]+$/.test(word.classes))
      )
        return false;
      if (
        /^(?:and|what|how|all|only|because|once|before|after|now|the way|which|where|when|first|then|something|anything|time|thing)$/.test(
          thing.at(-1)?.lower ?? '',
        )
      )
        return false;
      const verb = found.part('verb')[0];
      return (
        !!verb &&
        (verb.classes.includes('B') || /^(?:do|sort|finish|tackle|find|get|buy)$/.test(verb.lower)) &&
        !/^(?:use|leave|keep|show|see|live|put|take|let|call|need|have|hold|film|tell|cut-back)$/.test(
          verb.lower,
        ) &&
        !has(found.part('rest').slice(0, 1), 'T')
      );
    },
  ),
  task(
    '<thing> I have not <done>',
    "^<lead>* (?: (?<thing> <plain>{1,5}? ) (?: i | we ) | (?: i | we )? ) (?: still )? (?: 've | have | has ) (?: still )? not (?: <adverb> | even | got round to | got around to )* (?<verb> <done> | <doing> | got | had ) (?<rest> <any>{0,5} )$",
    (found, said) =>
      (/ (?:yet|still|either|round)\//.test(said.code) ||
        (found.part('thing').length > 0 && found.part('rest').length === 0)) &&
      !/^(?:decided|heard|worked|promised|got|had|seen|told|found|figured|finished)$/.test(
        lower(found, 'verb'),
      ),
  ),
  task(
    'must I <do>',
    '^<lead>* (?<thing> <plain>{1,5}? ) (?: must | have | need | can | will | shall ) (?: i | we ) (?: <adverb> | still | yet | first )* (?<verb> <do> ) (?<rest> <any>{0,3} )$',
    (found) => !has(found.part('thing'), 'N'),
  ),
  task(
    'yet to <do>',
    '^<lead>* (?: i | we ) (?: must | need | have | shall ) (?: yet | still ) (?<thing> (?: the | a | my | those | two | some ) <plain>{1,4}? ) (?: to )? (?<verb> <do> ) (?<rest> <any>{0,3} )$',
    () => true,
  ),
  // "They'll want two coats of oil", "this gets another coat"
  task(
    '<thing> wants <number> <coats>',
    '^<lead>* (?<subject> <plain>{0,7}? ) <modal>? <adverb>* (?: want | wants | need | needs | gets | get | awaits | await ) (?: <adverb> )* (?<object> (?: <number> | its | their | more ) (?: more )? <any>{1,5} )$',
    (found, said) => {
      const who = subjectOf(found);
      if (who === 'speaker' || who === 'viewer' || who === 'person' || has(found.words, 'N')) return false;
      const object = code(found.part('object'));
      if (/ awaits?\//.test(said.code)) return true;
      return (
        /^ [\w-]+\/(?: \w+\/){0,2} (?:coats?|goes|passes|rubs?|undercoats?|washes|lifts|skims|courses)\//.test(
          object,
        ) && !/ (?:between|hours?|days?|minutes?)\//.test(object)
      );
    },
  ),
  // "The keep needs let in", "the handle needs put on"
  task(
    '<thing> needs <done>',
    '^<lead>* (?<subject> (?: the | that | this | my | those | both | all | <plain> ) <plain>{0,5}? ) (?: needs | need ) (?: <adverb> )* (?<verb> put | let | cut | set | shut | fit | hit | spread | cast | split ) (?: (?: in | on | up | down | off | out | back | through | over ) <any>{0,3} )? $',
    (found) => subjectOf(found) === 'thing' && !has(found.words, 'N'),
  ),
  task(
    '<person> must be <rung>',
    '^<lead>* (?<subject> (?: the | my | a )? <plain>{0,2}? <person> ) (?: must | has to | have to | needs to | need to | still has to | is | are ) (?: to )? (?: <adverb> | still )* be (?<verb> <done> | told | asked | paid | given ) ',
    (found) => !has(found.words, 'N'),
  ),
  // "Fixing to deck it tomorrow", "planning to lift the engine Saturday"
  task(
    '<planning> to <do> <thing> <day>',
    '^<lead>* (?: fixing | planning | aiming | hoping | meaning | looking | intending ) to (?<verb> <do> ) (?<object> <any>+ )$',
    (_, said, scene) => dayIn(said, scene) !== undefined && neighbour(scene, said, -1) === undefined,
  ),
  // "The slab's got to be kept wet": tending it is work.
  task(
    '<thing> must be kept <wet>',
    "^<lead>* (?<subject> <plain>{1,6}? ) (?: 's | is | are | has | have | must | needs | need | 've )? (?: got )? (?: to )? (?: be kept | stay | keep ) (?: <adverb> )* (?: wet | damp | covered | warm | moist | propped | clamped | shaded | watered )",
    (found) =>
      subjectOf(found) === 'thing' &&
      !has(found.words, 'N') &&
      / (?:got|to|must|needs?)\//.test(code(found.words)),
  ),
  // "So the flue gets a hinge", "the locker's getting a new floor"
  task(
    'so <thing> gets a <thing>',
    "^<lead>* (?<subject> <plain>{1,6}? ) (?: gets | get | will get | 'll get ) (?<object> (?: a | an | another | its | their | two | three | new ) <any>{1,6} )$",
    (found, said, scene) => {
      if (subjectOf(found) !== 'thing' || has(found.words, 'N') || isIdle(found.part('object'))) return false;
      const object = found.part('object');
      if (has(object, 'f') || has(object.slice(1, 3), 'U') || has(found.part('subject'), 'J')) return false;
      return (
        /\b(?:so|then|once)\b/.test(said.opener) ||
        / (?:new|coats?|second|third|final)\//.test(code(object)) ||
        dayIn(said, scene) !== undefined
      );
    },
  ),
  // "Nothing left but the skirting", "just the skirting to go", "only the skirting left"
  task(
    'only <thing> left',
    "^<lead>* (?: (?: there 's | it 's | that 's )? (?: just | only ) (?<thing> (?: the | a | those | my | two | three | one ) <plain>{1,5}? ) (?: left | to go | remaining | now ) | nothing (?: left )? but (?<other> <plain>{1,5}? ) ) (?: to do | now )* $",
    (found) => !isIdle(found.part('thing')) && !has(found.part('thing'), 'U'),
  ),
];
