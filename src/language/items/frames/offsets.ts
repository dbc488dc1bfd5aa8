import { anchorOf, namePhrase } from '../anchor.ts';
import { ahead, isSpeaker, phraseFrom } from '../parse.ts';
import type { Frame } from '../site.ts';
import { claim } from './claim.ts';

const FROM = /^(?:\w+ )?(?:(?:in|up|down|back|clear|away|out|over|short|shy) )?(off|from|above|below)\b/;

/** "300 off the floor and 150 in from the door": the thing, without the place that was told before. */
function withoutPlace(name: readonly string[]): readonly string[] {
  const place = name.findIndex((word) => word === 'above' || word === 'from');
  return place > 0 ? name.slice(0, place) : name;
}

/** Where a thing is, counted from another. */
export const offsetFrom: Frame = {
  name: '<quantity> from <thing>',
  examples: [
    ["the drain's [14 in] off the back wall", 'drain from back wall'],
    ['the deck is [22 in] above the ground', 'deck above ground'],
    ['the cable is clipped [200] from the box', 'cable from box'],
    [
      'the stopcock is [300] off the floor and [150] in from the door',
      'stopcock above floor, stopcock from door',
    ],
  ],
  leaves: ['the bench is [960] to the top'],
  read: (site) => {
    const { parse, at, discourse } = site;
    if (site.said !== 'offset' && site.said !== 'height') return undefined;
    const match = FROM.exec(ahead(parse, at + 1, 4));
    if (!match) return undefined;
    const datum = phraseFrom(parse, at + 1 + match[0].split(' ').length);
    if (!datum || datum.pronoun || datum.name.length === 0 || isSpeaker(datum)) return undefined;
    const anchor = anchorOf(site);
    const phrase = anchor.subject && !isSpeaker(anchor.subject) ? anchor.subject : anchor.direct;
    const named = phrase && !isSpeaker(phrase) ? namePhrase(site, phrase) : undefined;
    const subject = named ?? discourse.topicAt(at)?.name ?? discourse.last?.name;
    if (!subject) return undefined;
    const vertical = site.said === 'height';
    const link = vertical ? 'above' : 'from';
    const where = { datum: `${vertical ? 'above' : match[1]} the ${datum.name.join(' ')}` };
    return claim([...withoutPlace(subject), link, ...datum.name], where);
  },
};
