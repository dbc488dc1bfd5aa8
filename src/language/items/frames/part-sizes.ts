import { namePhrase } from '../anchor.ts';
import { partInSum } from '../part-in-sum.ts';
import type { Frame } from '../site.ts';
import { claim } from './claim.ts';

/** "862, that's the bench less the top, 38": the last figure is the part's, and the first one what the sum comes to. */
export const sizeOfPart: Frame = {
  name: '<quantity>, that is <thing> less <part>, <quantity>',
  examples: [
    ["I've cut the bench legs, [862], that's the bench less the top, [38]", 'bench legs, top'],
    ['The panel is [2240], which is the height less the plinth, [60]', 'panel, plinth'],
  ],
  leaves: [
    'The legs are the bench less the top, [862]',
    "The bench is 900 high, and the legs, that's the bench less the top, [862]",
  ],
  read: (site) => {
    const part = partInSum(site.parse, site.at);
    return part && claim(namePhrase(site, part), { isSettled: true });
  },
};
