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

/** "The tap's stopped dripping", "it no longer rattles": a fault that is over. */
const FAULT_ENDED =
  / (?:stopped|quit|ceased)\/\w* (?:leak|drip|weep|seep|rattl|squeak|squeal|vibrat|smok|bind|stick|rubb|tripp|flicker|wobbl|spitt|knock|whin|overheat|pull|jump|slipp|rock|sagg|foul|jamm|catch|hunt|surg|crack|peel|creak|groan)\w*ing\/| no\/\w* (?:longer|more)\/\w* (?:\w+\/\w* )?(?:leak|drip|weep|seep|rattl|squeak|squeal|vibrat|smok|bind|stick|rub|trip|flicker|wobbl|knock|whin|overheat|slip|rock|sag|foul|jam|creak|play|noise)\w*\//;
export const isFaultOver = (said: Said): boolean => FAULT_ENDED.test(said.code);
