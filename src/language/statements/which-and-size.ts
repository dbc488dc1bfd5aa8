import type { Scene } from './draft.ts';
import type { Said } from './words.ts';

/** "The panel that has to come in through the door is 760 wide": what it has to do only says which panel is measured. */
export function tellsWhichAndSize(said: Said, scene: Scene): boolean {
  const next = scene.said[said.index + 1];
  const goesOn = next && next.sentence === said.sentence && !next.afterPause ? next.code : '';
  const named = said.opener === 'which' ? scene.said[said.index - 1] : undefined;
  const first = named ? `${named.code} which/` : '';
  return WHICH_AND_SIZE.test(`${first}${said.code}${goesOn}`);
}
const WHICH_AND_SIZE =
  /^(?: (?:so|and|but|right|okay|now)\/\w*)* (?:the|this|that|our|my)\/\w*(?: \S+){1,3} (?:that|which|(?:i|we)\/\w* (?:have|need|must|'ve))\/.* (?:is|are|'s|measures?|weighs|was)\/\w*(?: (?:about|only|just|exactly|roughly|nearly|over|under)\/\w*)* \S+\/\w*Q/;
