import { behind } from '../parse.ts';
import type { Frame } from '../site.ts';
import { claim } from './claim.ts';

/** How deep a vessel sits. */
export const draught: Frame = {
  name: 'she draws <quantity>',
  examples: [["she's not to draw over [760]", 'draught']],
  leaves: ['the fridge draws [4 A]', 'I drew it at [40]'],
  read: (site) =>
    site.said === 'depth' && /\bdraw(?:s|ing)?(?: \w+){0,2}$/.test(behind(site.parse, site.at, 4))
      ? claim(['draught'])
      : undefined,
};
