/** What the rules for choices share: daily life that settles nothing, and the grounds that a choice stands on. */
import { neighbour, type Scene } from './draft.ts';
import type { Found } from './phrase.ts';
import { supportOf } from './support.ts';
import type { Said } from './words.ts';

export const DET = '(?: a | an | the | my | our | all | two | three | four | some | no | <number> )';
/** Whether what is chosen is daily life: "having lunch". */
export const daily = (found: Found, name = 'object') =>
  found
    .part(name)
    .slice(0, 4)
    .some(({ meanings }) => meanings.includes('d'));
export const first = (found: Found, name = 'object') => found.part(name)[0]?.lower ?? '';
export const code = (found: Found) => found.words.map(({ lower }) => ` ${lower}/`).join('');
/** The clause after gives what the chosen thing does, or what the other would have done. */
const GROUNDS =
  / (?:would|'d|looked|looks|costs|cost|gives|gave|saves|saved|clears|keeps|lets|suits|suited|wants|steals|stains|rots|rusts|bends|weighs|too|lighter|cheaper|stronger|thinner|better|quieter|warmer|simpler|quicker|easier|nicer|less|more|half|fewer|enough|opens|holds|drains|swings|stays|lasts|sheds|fits|got|need|needs)\//;
/** Whether the words after give the choice its grounds. */
export const grounded = (said: Said, scene: Scene) => {
  const next = neighbour(scene, said, 1);
  return (
    supportOf(said, scene).strong ||
    (next !== undefined && !/\b(?:and|but|when|then|if)\b/.test(next.opener) && GROUNDS.test(next.code))
  );
};
