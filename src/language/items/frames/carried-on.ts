import { anchorOf, namePhrase, needOf, sentenceSubject, sumSubject } from '../anchor.ts';
import { isSpeaker, tagAt, wordAt } from '../parse.ts';
import type { Frame } from '../site.ts';
import { claim } from './claim.ts';

/** A number with no thing of its own stays with the one before it, or with what its sentence is about. */
export const carriedOn: Frame = {
  name: 'so <quantity>',
  examples: [
    ['the alcove is [1240] wide, and [600] deep', 'alcove, alcove'],
    ['Legs are that less the top, so [730]', 'legs'],
  ],
  leaves: [],
  read: (site) => {
    const { parse, at, discourse } = site;
    const sum = sumSubject(site);
    if (sum) return claim(sum);
    const last = discourse.last;
    if (last && parse.sentenceOf[at] === last.sentence) return claim(last.name);
    const subject = sentenceSubject(site);
    return subject ? claim(namePhrase(site, subject)) : undefined;
  },
};

/** "1210 by 1385": both are of one thing. */
export const pairSecond: Frame = {
  name: '<quantity> by <quantity>',
  examples: [['the room is [4] long by [3.6] wide', 'room, room']],
  leaves: ['move it [40] by Friday'],
  read: (site) => {
    const { parse, at, discourse } = site;
    if (!/^(?:by|x|×|times)$/.test(wordAt(parse, at - 1))) return undefined;
    const left = tagAt(parse, at - 2) === 'dimension' || tagAt(parse, at - 2) === 'comma' ? at - 3 : at - 2;
    if (tagAt(parse, left) !== 'quantity' || discourse.last?.word !== left) return undefined;
    return claim(discourse.last.name);
  },
};

/** A standing value said again with nothing to say whose it is: "so, for the record, 208". */
export const restated: Frame = {
  name: 'a known value again',
  examples: [],
  leaves: [],
  read: (site) => {
    const { value, unit } = site.quantity;
    // A round value is of too many things to tell whose it is.
    if (
      String(value)
        .replace('.', '')
        .replace(/^0+|0+$/g, '').length < 3
    )
      return undefined;
    const items = site.discourse.known.withValue(site.dimension, value, unit, site.said);
    const [only] = items;
    return items.size === 1 && only ? claim(only.split(' ')) : undefined;
  },
};

/** The speaker's own doing, or a fragment: what the talk is about. */
export const topic: Frame = {
  name: 'topic',
  examples: [["Loft. I'm going to [76 in] now", 'loft']],
  leaves: [],
  read: (site) => {
    const { parse, at, discourse } = site;
    const said = discourse.topicAt(at);
    const away = said ? (parse.sentenceOf[at] as number) - said.sentence : 9;
    if (said && away <= 1) return claim(said.name);
    return claim(discourse.antecedent(at, needOf(site)) ?? said?.name ?? discourse.last?.name);
  },
};

/** "I'm going up to 960": the doer is no thing, so what was last spoken of is. */
export const ownDoing: Frame = {
  name: "I'm going to <quantity>",
  examples: [['the bench is too low, so I am going up to [960]', 'bench']],
  leaves: ['I set the slide at [2 thou]'],
  read: (site) => {
    const anchor = anchorOf(site);
    if (anchor.verb === undefined || !anchor.subject || !isSpeaker(anchor.subject)) return undefined;
    const { parse, at, discourse } = site;
    const said = discourse.topicAt(at);
    if (said && parse.sentenceOf[at] === said.sentence) return claim(said.name);
    return claim(discourse.antecedent(anchor.subject.first, needOf(site)));
  },
};
