import { singular } from '../../lexicon/trade-nouns.ts';
import { anchorOf, namePhrase, spokenOf } from '../anchor.ts';
import { isNoThing } from '../fitness.ts';
import { ahead, behind, isSpeaker, phraseAt, phraseFrom, tagAt, wordAt } from '../parse.ts';
import type { Frame } from '../site.ts';
import { claim } from './claim.ts';

const SIDES =
  /^(?:of )?(?:clear |clearance |gap |bearing |overhang |hanging over )?(?:(?:on |at )?(?:each|either|both) (side|end|way)s?|(?:a|an|per) (side|end)|(?:all )?(?:a)?round)\b/;

/** Room or bearing that is the same on every side of a thing. */
export const eachSide: Frame = {
  name: '<quantity> each side',
  examples: [
    ['the runners want [12.7] a side', 'runners each side'],
    ['the cabinet is [850] wide, [5] a side', 'cabinet, cabinet each side'],
  ],
  leaves: ['that makes [192] a riser', 'the bench is [40] from the side'],
  read: (site) => {
    const { parse, at } = site;
    const match = SIDES.exec(ahead(parse, at + 1, 6));
    if (!match || site.dimension !== 'length' || site.said === 'diameter') return undefined;
    const side = match[1] ?? match[2];
    // "3 all round the hatch": the thing follows.
    const around = side ? undefined : phraseFrom(parse, at + 1 + match[0].split(' ').length);
    if (around && !isSpeaker(around) && (around.name.length > 0 || around.pronoun))
      return claim(namePhrase(site, around), { attribute: /clear/.test(match[0]) ? 'clearance' : 'gap' });
    const anchor = anchorOf(site);
    const phrase = anchor.subject && !isSpeaker(anchor.subject) ? anchor.subject : anchor.direct;
    const named = phrase && !isSpeaker(phrase) ? namePhrase(site, phrase) : undefined;
    const name = named ?? spokenOf(site);
    if (!name) return undefined;
    const bearing = /bearing/.test(match[0]);
    const overhang =
      /overhang|hanging/.test(match[0]) ||
      /\b(?:overlaps?|laps?|overhangs?|oversails?) by(?: \w+)?$/.test(behind(parse, at, 4));
    const extra = [
      ...(bearing ? ['bearing'] : overhang ? ['overhang'] : []),
      ...(side ? ['each', side] : ['all', 'round']),
    ];
    return claim([...name, ...extra.filter((word) => !name.includes(word))], {
      attribute: bearing ? 'length' : overhang ? 'offset' : /clear/.test(match[0]) ? 'clearance' : 'gap',
    });
  },
};

export const perPart: Frame = {
  name: '<quantity> a <part>',
  examples: [
    ['so that makes [192] a riser', 'riser'],
    ['they want [31 GBP] a board', 'board'],
  ],
  leaves: ['a fall of [18] a metre', 'it takes [24 h] a coat'],
  read: (site) => {
    const { parse, at } = site;
    if (!/^(?:a|an|per|each)$/.test(wordAt(parse, at + 1)) || tagAt(parse, at + 2) !== 'noun')
      return undefined;
    const phrase = phraseAt(parse, at + 2);
    if (!phrase || isNoThing(phrase.kinds)) return undefined;
    if (/^(?:side|end|way|metre|meter|foot|coat|run)$/.test(singular(phrase.head))) return undefined;
    return claim(namePhrase(site, phrase));
  },
};
