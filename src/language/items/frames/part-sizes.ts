import { namePhrase } from '../anchor.ts';
import { partInSum } from '../part-in-sum.ts';
import type { Frame } from '../site.ts';
import { claim } from './claim.ts';

/** "862, that's the bench less the top, 38": the last figure is the part's, and the first one what the sum comes to. */
export const sizeOfPart: Frame = {
  name: '<quantity>, that is <thing> less <part>, <quantity>',
  examples: [
    ["I've cut the bench legs, [862], that's the bench less the top, [38]", 'bench legs, top'],
    [
      "The bench is high. The fridge is in. I've cut the bench legs, [862], that's the bench less the top, [38]",
      'bench legs, bench top',
    ],
    ['The panel is [2240], which is the height less the plinth, [60]', 'panel, plinth'],
  ],
  leaves: [
    'The legs are the bench less the top, [862]',
    "The bench is 900 high, and the legs, that's the bench less the top, [862]",
  ],
  read: (site) => {
    const sum = partInSum(site.parse, site.at);
    if (!sum) return undefined;
    const name = namePhrase(site, sum.part);
    const whole = namePhrase(site, sum.whole);
    // "The top" alone is that of the bench it is taken from, whatever was spoken of last.
    const isCompleted = name !== undefined && name.length > sum.part.name.length;
    if (!isCompleted || !whole) return claim(name, { isSettled: true });
    const own = [...whole, ...sum.part.name];
    site.discourse.rename(sum.part, own);
    return claim(own, { isSettled: true });
  },
};
