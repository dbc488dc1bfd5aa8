import { anchorOf, namePhrase, needOf, sentenceSubject, sumSubject } from '../anchor.ts';
import { fitness, isNoThing } from '../fitness.ts';
import type { Phrase } from '../noun-phrases.ts';
import { behind, isSpeaker, lastPhraseBefore, phraseAt, phrasesOfSentence, tagAt, wordAt } from '../parse.ts';
import type { Frame, Site } from '../site.ts';
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

/** "Posts are 200 square, tie beams 200 by 250": the thing right before its number in a list of them. */
function isListed({ parse, at }: Site): boolean {
  const beside = phraseAt(parse, at - 1);
  if (!beside || beside.last !== at - 1 || beside.name.length === 0 || isNoThing(beside.kinds)) return false;
  return tagAt(parse, beside.first - 1) === 'comma' && beside.kinds.size > 0;
}

/** "Washer's in its niche, 26 wide": of the things named in the sentence, the one that has this value already. */
export const restatedOf: Frame = {
  name: 'a known value of a thing in the sentence',
  examples: [],
  leaves: [],
  read: (site) => {
    const { parse, at, discourse } = site;
    const { value, unit } = site.quantity;
    const items = discourse.known.withValue(site.dimension, value, unit, site.said);
    if (items.size === 0) return undefined;
    // "the mortise is 12" is of the mortise, though a tenon is 12 as well.
    const subject = anchorOf(site).subject;
    if (subject && subject.name.length > 0 && !isSpeaker(subject)) return undefined;
    if (isListed(site)) return undefined;
    const sentence = parse.sentenceOf[at];
    const before = lastPhraseBefore(parse, at + 1);
    for (let index = before; index >= 0; index--) {
      const phrase = parse.phrases[index] as Phrase;
      if (parse.sentenceOf[phrase.first] !== sentence) return undefined;
      if (phrase.name.length === 0 || phrase.pronoun || isSpeaker(phrase)) continue;
      const name = namePhrase(site, phrase);
      if (name && items.has(name.join(' '))) return claim(name);
    }
    return undefined;
  },
};

/** "Comes to 2137 pounds, all in": a sum of what was said, and no one thing's. */
export const total: Frame = {
  name: 'comes to <quantity>',
  examples: [['Hull, [1180 lb]. Motor, [610 lb]. Comes to [1790 lb]', 'hull, motor, total']],
  leaves: ['the boat comes to [1790 lb]', 'the top comes out at [1220]'],
  read: (site) => {
    if (!/^(?:mass|money|charge|energy|power|current|volume)$/.test(site.dimension)) return undefined;
    const before = behind(site.parse, site.at, 8);
    return /^(?:so |and |which |that |it |all |in |total |, )*(?:comes|came|adds up|totals?|totalled|makes)(?: out)?(?: to| at)?$/.test(
      before,
    ) && !/^(?:it|that) comes/.test(before)
      ? claim(['total'], { isSettled: true })
      : undefined;
  },
};

/** "thirteen risers, so 190 each": each of the things counted last. */
export const eachOf: Frame = {
  name: '<quantity> each',
  examples: [['it has thirteen risers, so [190] each', 'risers']],
  leaves: ['the cabinet has [5] each side'],
  read: (site) => {
    const { parse, at } = site;
    if (!/^(?:each|apiece)$/.test(wordAt(parse, at + 1))) return undefined;
    const next = tagAt(parse, at + 2);
    if (next === 'noun' || /^(?:side|end|way|of)$/.test(wordAt(parse, at + 2))) return undefined;
    const sentence = parse.sentenceOf[at];
    for (let k = at - 1; k >= 0 && parse.sentenceOf[k] === sentence; k--) {
      const phrase = phraseAt(parse, k);
      if (!phrase) continue;
      k = phrase.first;
      const counted =
        tagAt(parse, phrase.first - 1) === 'number' || tagAt(parse, phrase.first) === 'quantity';
      if (phrase.plural && counted && phrase.name.length > 0 && !isSpeaker(phrase))
        return claim(namePhrase(site, phrase));
    }
    return undefined;
  },
};

const NAMES_IT =
  /\b(?:that|that 's|that is|which|which is|it 's|gives|gives me|gives you|makes|made|makes up|to get|to make|to keep|to give|back to|up to) (?:the|my|our|your) $/;

/** "So with the 38 top that's the 910": a figure spoken of as the known one that it is. */
export const figureMeant: Frame = {
  name: 'that is the <known quantity>',
  examples: [
    [
      "Worktop height is [910]. Sides are [872] so with the [38] top that's the [910]",
      'worktop, sides, worktop, worktop',
    ],
  ],
  leaves: [],
  read: (site) => {
    const { parse, at, discourse } = site;
    if (!NAMES_IT.test(`${behind(parse, at, 5)} `) || tagAt(parse, at + 1) === 'noun') return undefined;
    const known = discourse.known.figuresOf(site.quantity.value, site.quantity.unit);
    const [only] = known;
    return known.length === 1 && only
      ? claim(only.item.split(' '), { attribute: only.attribute, isSettled: true })
      : undefined;
  },
};

/** A standing value said again with nothing to say whose it is: "so, for the record, 208". */
export const restated: Frame = {
  name: 'a known value again',
  isGuess: true,
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
  isGuess: true,
  examples: [['Loft. [76 in] now', 'loft']],
  leaves: [],
  read: (site) => {
    const { parse, at, discourse } = site;
    const said = discourse.topicAt(at);
    const away = said ? (parse.sentenceOf[at] as number) - said.sentence : 9;
    if (said && away <= 1) return claim(said.name);
    return claim(discourse.antecedent(at, needOf(site)) ?? said?.name ?? discourse.last?.name);
  },
};

/** Nothing says whose it is: the nearest thing before it, else the nearest behind it in the sentence. */
export const nearest: Frame = {
  name: 'the nearest thing',
  isGuess: true,
  examples: [['Today [2400 kg], says the crane', 'crane']],
  leaves: ['the crane lifts [2400 kg]'],
  read: (site) => {
    const { parse, at } = site;
    const fits = (phrase: Phrase) =>
      phrase.name.length > 0 &&
      !phrase.pronoun &&
      !isSpeaker(phrase) &&
      !isNoThing(phrase.kinds) &&
      fitness(phrase.kinds, site.dimension) > -0.6;
    let before: Phrase | undefined;
    for (let index = lastPhraseBefore(parse, at); index >= 0 && before === undefined; index--) {
      const phrase = parse.phrases[index] as Phrase;
      if (phrase.last <= at - 40) break;
      if (phrase.last < at && fits(phrase)) before = phrase;
    }
    const behind = phrasesOfSentence(parse, at).find((phrase) => phrase.first > at && fits(phrase));
    const phrase = before ?? behind;
    return phrase ? claim(namePhrase(site, phrase)) : undefined;
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
