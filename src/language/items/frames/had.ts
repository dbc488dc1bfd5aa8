import { ahead, behind, wordAt } from '../parse.ts';
import type { Frame } from '../site.ts';
import { claim } from './claim.ts';

const ASKED =
  /\b(?:needs?|wants?|requires?|(?:calls?|asks?) for|(?:says?|said|to|you|must|should) (?:leave|allow|have))(?: (?:at least|a|an|about|all of|the))*$/;
const HAD =
  /\b(?:there's|there (?:is|'s|was)|(?:i|we|you)(?:'ve| 've| have| had)?(?: only| just)*(?: got| have| had| find| found| get)?|(?:it|that|he|she)(?:'s| 's| has| is)(?: only)? (?:got|getting))(?: (?:only|just|about|barely|maybe|a|bare|good|not quite|around))*$/;
const HERE =
  /^(?:$|(?:there|here|now|free|left|spare|of it|of them|to (?:play|spare)|at (?:best|most|the moment)|and|but|so|because|which|behind it|above it|below it|under it|round it|either side|each side|in front)\b)/;

/** What there is beside what is asked for: of the same thing, and the same of it. */
export const hadBesideAsked: Frame = {
  name: 'needs <quantity>, there is <quantity>',
  examples: [
    ['the inverter needs [150] clear above it and there is about [120] there', 'inverter, inverter'],
    ['the boiler needs [600] in front of it, there is [480]', 'boiler, boiler'],
    ['The pump wants [12 V] and it is getting [10.8 V]', 'pump, pump'],
  ],
  leaves: [
    'the shower needs [1.5 bar] and the house gives [1.2 bar]',
    'the stove needs [300] and there is [250] of oak left',
  ],
  read: (site) => {
    const { parse, at, discourse } = site;
    const { last } = discourse;
    if (!last || parse.sentenceOf[at] !== parse.sentenceOf[last.word] || last.word >= at) return undefined;
    if (!ASKED.test(behind(parse, last.word, 6)) || !HAD.test(behind(parse, at, 6))) return undefined;
    if (!HERE.test(ahead(parse, wordAt(parse, at + 1) === ',' ? at + 2 : at + 1, 3))) return undefined;
    return claim(last.name, { attribute: last.attribute, isSettled: true });
  },
};
