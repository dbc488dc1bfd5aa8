import { namePhrase } from '../anchor.ts';
import { isNoThing } from '../fitness.ts';
import { isSpeaker, phraseAt, tagAt, wordAt } from '../parse.ts';
import type { Frame } from '../site.ts';
import { claim } from './claim.ts';

/**
 * "The old lintel's out, the new one's oak, 200 by 150": the stuff and the size are told of the fellow that takes its
 * place. Settled: otherwise the old one weighs as much, being the only one that has a noun.
 */
export const newOne: Frame = {
  name: "the new one's <stuff>, <quantity>",
  examples: [
    ["Got the old lintel out, the new one's oak, [200] by [150]", 'new lintel, new lintel'],
    ["The old bearer is off, the new one's greenheart, [60] thick", 'new bearer'],
    ['The old posts are out, the new ones are in larch and [150] square', 'new posts'],
  ],
  leaves: [
    'The old lintel is out, oak, [200] thick',
    "The new one's in, [200] off the wall",
    "The new one's ready, the shelf is ash, [25] thick",
  ],
  read: (site) => {
    const { parse } = site;
    // The second of a pair goes where its first went.
    const isSecond = /^(?:by|x|×)$/.test(wordAt(parse, site.at - 1));
    const at = isSecond && tagAt(parse, site.at - 2) === 'quantity' ? site.at - 2 : site.at;
    const joint = tagAt(parse, at - 1) === 'comma' || wordAt(parse, at - 1) === 'and';
    const stuff = joint ? phraseAt(parse, at - 2) : undefined;
    if (!stuff || stuff.last !== at - 2 || stuff.determiner || stuff.pronoun) return undefined;
    if (isSpeaker(stuff) || isNoThing(stuff.kinds)) return undefined;
    let verb = stuff.first - 1;
    if (/^(?:in|of|made|all)$/.test(wordAt(parse, verb))) verb--;
    if (tagAt(parse, verb) !== 'be' && wordAt(parse, verb) !== "'s") return undefined;
    const one = phraseAt(parse, verb - 1);
    if (!one?.age || !/^ones?$/.test(one.pronoun ?? '')) return undefined;
    const name = namePhrase(site, one);
    return claim(name, { isSettled: true });
  },
};
