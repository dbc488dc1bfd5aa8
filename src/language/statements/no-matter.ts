/** A snag that the speaker takes back in the same breath. */
import { neighbour, type Scene } from './draft.ts';
import { matches, phrase } from './phrase.ts';
import type { Said } from './words.ts';

const SUBJECT = '(?: it | they | that | this | she | all | everything | the (?: rest | inside ) )';
/** "It's fine", "it's all right otherwise", "it'll do", "it won't show", "that doesn't matter". */
const NO_MATTER = phrase(
  `^ ${SUBJECT}? (?: (?: is | 's | are | 're | was | were | seems | looks ) (?: all | otherwise | still | perfectly | absolutely | only | just )* (?: fine | ok | okay | alright | right | good | sound | usable | cosmetic | undamaged | intact | perfect ) (?: inside | though | otherwise | enough | so )* | (?: 'll | will ) do | (?: will | 'll ) (?: not | never ) (?: show | matter | notice ) | (?: does | do ) not matter ) $`,
);

/** Whether what a clause complains of is taken back by the next one, which "but" or "though" opens. */
export function isForgiven(scene: Scene, clause: number): boolean {
  const next = neighbour(scene, scene.said[clause] as Said, 1);
  return next !== undefined && /^(?:but|though)\b/.test(next.opener) && matches(NO_MATTER, next);
}

/** What only a fault does. A latch that does not catch any more, or a motor that does not pull, has one. */
const FAULTY =
  '(?:leak|drip|weep|seep|rattl|squeak|squeal|vibrat|smok|bind|stick|rub|trip|flicker|wobbl|knock|whin|overheat|slip|rock|sag|foul|jam|creak|groan)';
/** "The tap's stopped dripping", "it no longer rattles", "the door does not stick any more": a fault that is over. */
const FAULT_ENDED = new RegExp(
  [
    ` (?:stopped|quit|ceased)/\\w* (?:${FAULTY}|spitt|pull|jump|catch|hunt|surg|crack|peel)\\w*ing/`,
    ` no/\\w* (?:longer|more)/\\w* (?:\\w+/\\w* )?(?:${FAULTY}|play|noise)\\w*/`,
    // "The drip's gone", "the leak at the elbow's cured": the fault went, and not the thing.
    ` (?:leak|drip|weep|rattle|squeak|squeal|knock|whine|wobble|noise|smell|damp|vibration|crack|bow|hump|twist|bulge)/\\w* (?:(?:at|in|from|on|by|under)/\\w* (?:the|my)/\\w* (?:\\w+/\\w* ){1,2})?(?:'s|is|has)/\\w* (?:\\w+/\\w*A\\w* )*(?:gone|stopped|cured|fixed|out|no/\\w* more)/\\w*(?! (?:right|all|back|from|worse|through|into|bad)/)`,
    ` not/\\w* (?:\\w+/\\w* )?${FAULTY}\\w*/\\w* (?:any/\\w* more|anymore|since|at/\\w* all)/`,
  ].join('|'),
);
export const isFaultOver = (said: Said): boolean => FAULT_ENDED.test(said.code);
