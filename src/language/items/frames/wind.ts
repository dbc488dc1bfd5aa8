import { behind, phrasesOfSentence } from '../parse.ts';
import type { Frame } from '../site.ts';
import { claim } from './claim.ts';

const WIND = /^(?:winds?|breezes?|gusts?|gale|gales)$/;

/** How hard it blows: "until the wind drops under 15 knots" is no speed of what is launched then. */
export const windSpeed: Frame = {
  name: 'the wind at <quantity>',
  examples: [
    ["I can't launch until the wind drops under [15 kn]", 'wind'],
    ["the wind's [22 kn] today", 'wind'],
    ['the gusts are up to [38 mph]', 'gusts'],
  ],
  leaves: ['she made [6 kn] against the wind', 'the fan does [4 m/s]'],
  read: (site) => {
    const { parse, at, dimension } = site;
    if (dimension !== 'speed' || site.quantity.unit === 'rpm') return undefined;
    const wind = phrasesOfSentence(parse, at).findLast(({ first, head }) => first < at && WIND.test(head));
    if (!wind || at - wind.last > NEAR || AGAINST.test(behind(parse, wind.first, 2))) return undefined;
    return claim([wind.head], { attribute: 'speed', isSettled: true });
  },
};
/** Words between the wind and its speed. */
const NEAR = 8;
const AGAINST = /\b(?:into|against|with|off|across|up|down)$/;
