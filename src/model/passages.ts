/** Ways through, up and in: they are not what goes through them. */
import { stemOf } from './stems.ts';

const PASSAGES = new Set(
  'door doorway opening hatch hatchway companionway gangway trapdoor manhole corridor hallway stairwell tunnel chute window gap gate alcove hole aperture room wall floor entrance frame arch passage stair staircase'
    .split(' ')
    .map(stemOf),
);

/** Whether the last word of a name, as a stem, is that of a way through. */
export const isPassage = (head: string): boolean => PASSAGES.has(head);
