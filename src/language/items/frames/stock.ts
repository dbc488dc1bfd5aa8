import { namePhrase } from '../anchor.ts';
import type { Name } from '../discourse.ts';
import { isNoThing } from '../fitness.ts';
import type { Phrase } from '../noun-phrases.ts';
import { behind, isSpeaker, phraseAt, phraseFrom, phrasesOfSentence, tagAt, wordAt } from '../parse.ts';
import type { Frame, Site } from '../site.ts';
import { claim } from './claim.ts';

/** What is made of the pieces: "the header is two lengths of 195 by 45". */
function wholeOf(site: Site, pieces: Phrase): Name | undefined {
  const { parse } = site;
  if (!/ (?:is|'s|are|'re|be|makes) (?:\S+ )?$/.test(`${behind(parse, pieces.first, 4)} `)) return undefined;
  const subject = phrasesOfSentence(parse, pieces.first).find(({ first }) => first < pieces.first);
  if (!subject || subject.name.length === 0 || isSpeaker(subject) || isNoThing(subject.kinds))
    return undefined;
  return namePhrase(site, subject);
}

/** Words for stock that is told by its section. */
const STOCK = /^(?:length|bit|piece|stick|run|offcut|strip|bar|batten)s?$/;

/**
 * "Six lengths of 100 by 75": a number of pieces and their section. Settled as a size of the pieces, or of what they
 * are for: "lengths of 100" by itself is how long they are.
 */
export const sectionOf: Frame = {
  name: '<count> lengths of <quantity> by <quantity>',
  examples: [
    ["I've ordered [6] lengths of [100] by [75]", 'lengths, lengths, lengths'],
    ['[5] bits of [45] by [45] for the legs', 'bits, legs, legs'],
    ['The header is going to be [2] lengths of [195] by [45]', 'header, header, header'],
  ],
  leaves: [
    'I have [6] lengths of [100] by [75] larch',
    'cut them to lengths of [100]',
    'the rebate runs in lengths of [1200] by [90]',
  ],
  read: (site) => {
    const { parse, at } = site;
    if (wordAt(parse, at - 1) !== 'of' || !/^(?:by|x|×)$/.test(wordAt(parse, at + 1))) return undefined;
    if (tagAt(parse, at + 2) !== 'quantity' || site.dimension !== 'length') return undefined;
    const pieces = phraseAt(parse, at - 2);
    if (!pieces || !STOCK.test(pieces.head)) return undefined;
    const before = tagAt(parse, pieces.first - 1);
    const isCounted = pieces.quantity !== undefined || before === 'quantity' || before === 'number';
    if (!isCounted && !/^(?:a|an|some|another|few|more)$/.test(pieces.determiner ?? '')) return undefined;
    const after = at + 3;
    // "of 47 by 100 oak": the stuff is named, and carries them.
    if (phraseAt(parse, after)?.first === after) return undefined;
    const use = wordAt(parse, after) === 'for' ? phraseFrom(parse, after + 1) : undefined;
    const isUsed = use && !isSpeaker(use) && !isNoThing(use.kinds) && use.name.length > 0;
    const whole = isUsed ? undefined : wholeOf(site, pieces);
    const name = isUsed ? namePhrase(site, use) : (whole ?? namePhrase(site, pieces) ?? pieces.name);
    return claim(name, { attribute: 'size', isSettled: true });
  },
};
