/** "If it's dry tomorrow I'm doing the gutters": a job that only the weather may put off. */

import { draft, neighbour, type Scene, type StatementRule } from './draft.ts';
import { type Found, find, matches, phrase } from './phrase.ts';
import { dayIn, isTaskVerb } from './tasks.ts';
import type { Said } from './words.ts';

const FAIR =
  '(?: dry | fine | sunny | warm | mild | still | calm | clear | nice | decent | bright | above | good | not (?: raining | windy | wet | freezing | blowing | too <any> ) | dry enough | warm enough )';
const WEATHER = `(?: (?: it | the (?: weather | forecast | day | morning | weekend ) | tomorrow | <day> | that ) (?: 's | is | stays | 'll be | keeps | turns out | looks ) <adverb>* ${FAIR}
  | it (?: stops | quits | gives over ) raining | it (?: holds | brightens | clears | warms | dries ) (?: off | up | out )?
  | (?: the | this )? (?: weather | rain | wind | sun | forecast | frost | snow ) (?: holds | stops | eases | drops | clears | lets up | comes out | stays | plays | gives over | behaves | goes | keeps ) (?: off | up | out | away | ball | dry )? )`;
const WHEN =
  '(?: on | at | for | by | the | this | next | first | thing | <day> | morning | afternoon | evening | weekend | then | enough | long | and | tonight )*';
const WILL =
  "(?<subject> i | we ) (?: 'm | 're | 'll | am | are | will | can | shall | might ) (?: going to | gonna | <adverb> | finally | be | then | try and | try to )* (?<verb> <do> | <doing> | get | getting | have | having | do | doing | go | going | start | starting ) (?<object> <any>+ )";

const ONLY_WEATHER = phrase(`^ <lead>* ${WEATHER} ${WHEN} $`);
const WEATHER_FIRST = phrase(`^ <lead>* ${WEATHER} ${WHEN} (?: then )? ${WILL}`);
const JOB = phrase(`^ <lead>* (?: then )? ${WILL}`);

const isIf = ({ opener }: Said): boolean =>
  /^(?:(?:and|but|so) )?(?:if|assuming|provided|as long as)$/.test(opener);

/** Talk, film and rest are no jobs. */
const IDLE =
  /^(?:show|film|see|tell|post|share|say|talk|know|think|hope|let|leave|keep|use|call|be|have|having)$/;

function isJob(found: Found): boolean {
  const verb = found.part('verb')[0];
  const object = found.part('object');
  if (!verb || IDLE.test(verb.lower) || object.some(({ classes }) => classes.includes('E'))) return false;
  if (/^(?:home|out|away|sailing|fishing|swimming|camping|to)$/.test(object[0]?.lower ?? '')) return false;
  return /ing$/.test(verb.lower) || /^(?:do|go|start|get)$/.test(verb.lower) || isTaskVerb(verb, object[0]);
}

/** The clause of the weather that stands right before, and where the job begins. */
function weatherBefore(said: Said, scene: Scene): { readonly at: Said; readonly found: Found } | undefined {
  if (isIf(said)) {
    const found = find(WEATHER_FIRST, said);
    return found && { at: said, found };
  }
  const before = neighbour(scene, said, -1);
  if (!before || !isIf(before) || !matches(ONLY_WEATHER, before)) return undefined;
  const found = find(JOB, said);
  return found && { at: before, found };
}

/** Reads the job; its day may be told with the weather. */
export const WEATHER_JOBS: readonly StatementRule[] = [
  {
    name: 'if <weather> I <do> <thing>',
    read: (said, scene) => {
      if (said.asks || said.words.length > 24) return undefined;
      const read = weatherBefore(said, scene);
      if (!read || !isJob(read.found)) return undefined;
      const from = said.words.indexOf(read.found.part('subject')[0] as Said['words'][number]);
      const day = dayIn(read.at, scene) === undefined ? {} : { dayIn: read.at.index };
      return draft('task', said, { plain: true, ...day }, from);
    },
  },
];
