import { anchorOf, namePhrase } from '../anchor.ts';
import { isNoThing } from '../fitness.ts';
import { ahead, behind, isSpeaker, phraseFrom, tagAt, wordAt } from '../parse.ts';
import type { Frame } from '../site.ts';
import { claim } from './claim.ts';

/** Room that is left or wanted about a thing. */
export const roomAbout: Frame = {
  name: 'leaves <quantity> under <thing>',
  examples: [
    ['that leaves [55] under the drawer', 'drawer'],
    ['there is [40] behind the fridge', 'fridge'],
  ],
  leaves: ['the drawer is [55] under the top', 'I need [40] of the oak'],
  read: (site) => {
    const { parse, at } = site;
    if (site.dimension !== 'length') return undefined;
    const match =
      /^(?:clear )?(?:under|above|behind|over|around|round|beside|below|in front of|beneath)\b/.exec(
        ahead(parse, at + 1, 4),
      );
    if (!match) return undefined;
    const anchor = anchorOf(site);
    const subject = anchor.subject ?? anchor.direct;
    const own = anchor.subject !== undefined && isSpeaker(anchor.subject);
    if (
      !own &&
      !/\b(?:leav(?:e|es|ing)|left|there (?:is|'s|was)|there's|need|want|wants|got|have|has)(?: \w+){0,3}$/.test(
        behind(parse, at, 6),
      )
    )
      return undefined;
    if (subject && subject.name.length > 0 && !isSpeaker(subject)) return undefined;
    const phrase = phraseFrom(parse, at + 1 + match[0].split(' ').length);
    if (!phrase || isSpeaker(phrase) || isNoThing(phrase.kinds)) return undefined;
    return claim(namePhrase(site, phrase), { attribute: 'clearance' });
  },
};

const GAP = /^(?:gap|gaps|space|distance|joint|clearance)$/;
const GAP_BETWEEN =
  /\b(?:gap|space|clearance) between (?:the |my |our |any |each )?(?:\w+ ){1,3}(?:has|needs|wants|ought|is|must|should|can|may|will|'s)\b/;

/** The room between two things, or across one thing between its own parts. */
export const between: Frame = {
  name: '<quantity> between <things>',
  examples: [
    ['you need at least [600] between the bunks', 'bunks'],
    ['between the frames there is [500]', 'frames'],
    ['the engine bed is [420] between the rails', 'engine bed'],
    ['Gap between the balusters has to be under [100]', 'balusters'],
    ["I've left a gap of [10] between the boards", 'boards'],
  ],
  leaves: ['it cures in [4 h] between coats'],
  read: (site) => {
    const { parse, at } = site;
    if (site.dimension !== 'length') return undefined;
    if (site.said !== 'gap' && !GAP_BETWEEN.test(behind(parse, at, 11))) return undefined;
    const behindIt = /^(?:clear )?between\b/.exec(ahead(parse, at + 1, 2));
    if (behindIt) {
      const anchor = anchorOf(site);
      const subject = anchor.subject ?? anchor.direct;
      // "it's 406 between the rails": of the engine bed whose width was said before.
      const meant = subject?.pronoun ? namePhrase(site, subject) : undefined;
      if (meant && site.discourse.known.attributesOf(meant.join(' ')).has('width'))
        return claim(meant, { attribute: 'width' });
      // "A gap of 10 between the boards" is of the boards.
      if (subject && !isSpeaker(subject) && subject.name.length > 0 && !GAP.test(subject.head))
        return claim(namePhrase(site, subject), { attribute: 'width' });
      const phrase = phraseFrom(parse, at + 1 + behindIt[0].split(' ').length);
      return phrase && phrase.name.length > 0 && !isSpeaker(phrase)
        ? claim(namePhrase(site, phrase))
        : undefined;
    }
    for (let k = at - 1; k > at - 9 && k >= 0 && tagAt(parse, k) !== 'stop'; k--) {
      if (wordAt(parse, k) !== 'between') continue;
      const phrase = phraseFrom(parse, k + 1);
      return phrase && phrase.name.length > 0 && !isSpeaker(phrase)
        ? claim(namePhrase(site, phrase))
        : undefined;
    }
    return undefined;
  },
};
