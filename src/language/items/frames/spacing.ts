import { wordTable } from '../../word-table.ts';
import {
  anchorOf,
  isReported,
  isVerbal,
  linkedAfter,
  namePhrase,
  sentenceSubject,
  spokenOf,
  subjectBefore,
} from '../anchor.ts';
import { joinNames } from '../naming.ts';
import { isSpeaker, phraseFrom, tagAt, wordAt } from '../parse.ts';
import type { Frame, Site } from '../site.ts';
import { claim } from './claim.ts';

/** What holds a thing, by the word for holding it. */
const FIXED_WITH = wordTable<string>({
  screwed: 'screws',
  screw: 'screws',
  clipped: 'clips',
  clip: 'clips',
  bolted: 'bolts',
  nailed: 'nails',
  stapled: 'staples',
  riveted: 'rivets',
  pinned: 'pins',
  tacked: 'tacks',
  stitched: 'stitches',
  welded: 'welds',
  strapped: 'straps',
  bracketed: 'brackets',
  supported: 'supports',
  fixed: 'fixings',
  dowelled: 'dowels',
  doweled: 'dowels',
  pegged: 'pegs',
  notched: 'notches',
  drilled: 'holes',
  fastened: 'fasteners',
});

/** The word for holding in the same sentence, at most a dozen words back and with no other subject between. */
function fixedAt(site: Site): number {
  const { parse, at } = site;
  for (let k = at - 1; k >= 0 && k > at - 14 && parse.sentenceOf[k] === parse.sentenceOf[at]; k--) {
    if (FIXED_WITH[wordAt(parse, k)] && tagAt(parse, k) !== 'noun') return k;
    if (tagAt(parse, k) === 'noun') return -1;
  }
  return -1;
}

/**
 * "Points every six inches", "number fourteens through the cladding, every 75": a fragment without a verb, and what is
 * spaced is named first, whatever else the word may mean.
 */
function spacedFragment(site: Site): readonly string[] | undefined {
  const { parse, at } = site;
  if (wordAt(parse, at - 1) !== 'every') return undefined;
  const first = phraseFrom(parse, parse.sentenceStart[parse.sentenceOf[at] as number] as number);
  if (!first || first.pronoun || !first.plural || isSpeaker(first) || first.last >= at) return undefined;
  for (let k = first.last + 1; k < at; k++)
    if (isVerbal(tagAt(parse, k)) || tagAt(parse, k) === 'quantity') return undefined;
  return first.name.length > 0 ? first.name : undefined;
}

/** Known gap: "one every 250" without any word for what there is one of. */
export const spacing: Frame = {
  name: 'at <quantity> centres',
  examples: [
    ['the floor joists are at [400] centres', 'floor joists'],
    ['the deck is down, screwed every [150]', 'deck screws'],
    ['it wants M12 bolts, at [300] centres', 'm12 bolts'],
    ['Number fourteens through the cladding, every [75]', 'number fourteens'],
    ['Points every [6 in]', 'points'],
    ['The tile sheet says [330] gauge on the battens', 'battens'],
  ],
  leaves: ['it wants oil every [20 h]', 'the centre bearing is [40] across'],
  read: (site) => {
    const { parse, at } = site;
    if (site.dimension !== 'length' || site.said !== 'other') return undefined;
    if (/^between\b/.test(wordAt(parse, at + 1))) return undefined;
    const fixed = fixedAt(site);
    const fixing = fixed < 0 ? undefined : FIXED_WITH[wordAt(parse, fixed)];
    if (fixing) {
      const subject = subjectBefore(site, fixed);
      const named = subject && !isSpeaker(subject) ? namePhrase(site, subject) : undefined;
      const thing = named ?? spokenOf(site);
      return claim(thing ? joinNames(thing, [fixing]) : [fixing], { attribute: 'other' });
    }
    const named = spacedFragment(site);
    if (named) return claim(named, { attribute: 'other' });
    const anchor = anchorOf(site);
    // "The tile sheet says 330 gauge on the battens": of what it is told for.
    const toldFor = isReported(site, anchor) ? linkedAfter(site, at + 2, /^(?:on|for)$/) : undefined;
    if (toldFor) return claim(toldFor, { attribute: 'other' });
    // "frames are fine, white oak, twelve inches on center": the oak is what they are made of.
    const stuff = anchor.direct?.kinds.size === 1 && anchor.direct.kinds.has('material');
    const subject = stuff ? sentenceSubject(site) : (anchor.direct ?? anchor.subject);
    if (!subject || isSpeaker(subject)) return claim(spokenOf(site), { attribute: 'other' });
    return claim(namePhrase(site, subject), { attribute: 'other' });
  },
};
