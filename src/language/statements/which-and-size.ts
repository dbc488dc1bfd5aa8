import type { Scene } from './draft.ts';
import type { Said } from './words.ts';

/** "The panel that has to come in through the door is 760 wide": what it has to do only says which panel is measured. */
export function tellsWhichAndSize(said: Said, scene: Scene): boolean {
  const sentence = scene.said.filter(({ sentence }) => sentence === said.sentence && sentence >= 0);
  const goesOn = sentence.filter(({ index, afterPause }) => index === said.index + 1 && !afterPause);
  const named = said.opener === 'which' ? scene.said[said.index - 1] : undefined;
  const first = named ? `${named.code} which/` : '';
  const code = [first, said.code, ...goesOn.map((one) => one.code)].join('');
  return WHICH_AND_SIZE.test(code);
}
const WHICH_AND_SIZE =
  /^(?: (?:so|and|but|right|okay|now)\/\w*)* (?:the|this|that|our|my)\/\w*(?: \S+){1,3} (?:that|which|(?:i|we)\/\w* (?:have|need|must|'ve))\/.* (?:is|are|'s|measures?|weighs|was)\/\w*(?: (?:about|only|just|exactly|roughly|nearly|over|under)\/\w*)* \S+\/\w*Q/;
