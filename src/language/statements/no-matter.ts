import { neighbour, type Scene } from './draft.ts';
import type { Said } from './words.ts';

/** What takes a snag back in the same breath: "but it's fine", "but it'll do", "no harm done". */
const NO_MATTER =
  /^(?: (?:it|they|that|all|she|everything|the|what|'s|inside)\/\S*)* (?:(?:is|'s|are|'re|was|were|seems|looks)\/\S* (?:(?:all|otherwise|still|perfectly|absolutely|only|just)\/\S* )*(?:fine|ok|okay|alright|right|good|sound|usable|cosmetic|undamaged|intact|perfect)\/\S*(?: (?:inside|though|otherwise|enough|so)\/\S*)*$|(?:'ll|will)\/\S* do\/\S*$|(?:wo|will|'ll|wont)\/\S* (?:n't|not|never)\/\S* (?:show|matter|notice)\/\S*$|(?:does|do)\/\S* (?:n't|not)\/\S* matter\/\S*$)/;

/** Whether what a clause complains of is taken back by the next one. */
export function isForgiven(scene: Scene, clause: number): boolean {
  const next = neighbour(scene, scene.said[clause] as Said, 1);
  return next !== undefined && /^(?:but|though)\b/.test(next.opener) && NO_MATTER.test(next.code);
}
