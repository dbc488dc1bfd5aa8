import { kindsOf, singular } from '../../lexicon/trade-nouns.ts';
import { anchorOf, clauseSubject, isReporter, namePhrase, needOf, objectBefore, tells } from '../anchor.ts';
import { MEASURE_ATTRIBUTE } from '../attributes.ts';
import { isNoThing } from '../fitness.ts';
import type { Phrase } from '../noun-phrases.ts';
import { ahead, isSpeaker, phraseFrom, tagAt, wordAt } from '../parse.ts';
import type { Claim, Frame, Site } from '../site.ts';
import { claim } from './claim.ts';
import { ownerOfStuff } from './premodifiers.ts';

/** The thing of a measure phrase: "headroom over the stair", "bench height". */
function claimOfMeasure(site: Site, phrase: Phrase): Claim | undefined {
  const attribute = MEASURE_ATTRIBUTE[singular(phrase.head)];
  return claim(namePhrase(site, phrase), attribute && site.dimension === 'length' ? { attribute } : {});
}

const claimOf = (site: Site, phrase: Phrase): Claim | undefined =>
  MEASURE_ATTRIBUTE[singular(phrase.head)] ? claimOfMeasure(site, phrase) : claim(namePhrase(site, phrase));

/** "Plate on the trailer says 2000 pounds": the thing the paper is on, else what was spoken of. */
function reported(site: Site, reporter: Phrase): Claim | undefined {
  const { parse, discourse } = site;
  if (/^(?:on|of|for)$/.test(wordAt(parse, reporter.last + 1))) {
    const thing = phraseFrom(parse, reporter.last + 2);
    if (thing && !isSpeaker(thing) && !isNoThing(thing.kinds)) return claim(namePhrase(site, thing));
  }
  const own = reporter.name.slice(0, -1).filter((word) => {
    const kinds = kindsOf([word]);
    return kinds.size > 0 && !kinds.has('tool') && !isNoThing(kinds);
  });
  if (own.length > 0) return claim(own);
  return claim(discourse.antecedent(reporter.first, needOf(site)));
}

export const verbSubject: Frame = {
  name: '<thing> is <quantity>',
  examples: [
    ['the bench is [920] high', 'bench'],
    ['the gearbox takes [1.2 L]', 'gearbox'],
    ['the lathe weighs [430 kg]', 'lathe'],
    ['the legs I cut on Sunday have to be [902]', 'legs'],
    ['the plate on the trailer says [2000 lb]', 'trailer'],
  ],
  leaves: ['I want [740]'],
  read: (site) => {
    const anchor = anchorOf(site);
    const subject = anchor.subject;
    if (anchor.verb === undefined || !subject || isSpeaker(subject)) return undefined;
    if (isReporter(subject) && tells(site, anchor.verb)) return reported(site, subject);
    return claimOf(site, subject);
  },
};

/** "it's 20 per cent still, the gable": the thing is named behind. */
export const namedBehind: Frame = {
  name: "it's <quantity>, the <thing>",
  examples: [["it's [20 %] still, the gable, sulking", 'gable']],
  leaves: ["it's [430 kg], the lads helped"],
  read: (site) => {
    const { parse, at } = site;
    const anchor = anchorOf(site);
    if (!/^(?:it|they|she)$/.test(anchor.subject?.pronoun ?? anchor.direct?.pronoun ?? '')) return undefined;
    let k = at + 1;
    while (tagAt(parse, k) === 'adverb' || tagAt(parse, k) === 'dimension') k++;
    if (tagAt(parse, k) !== 'comma' || !/^(?:the|that|this|my)$/.test(wordAt(parse, k + 1))) return undefined;
    const phrase = phraseFrom(parse, k + 1);
    if (!phrase || phrase.pronoun || isSpeaker(phrase) || isNoThing(phrase.kinds)) return undefined;
    const end = tagAt(parse, phrase.last + 1);
    return end === 'comma' || end === 'stop' || end === undefined
      ? claim(namePhrase(site, phrase))
      : undefined;
  },
};

export const forThing: Frame = {
  name: 'I want <quantity> for <thing>',
  examples: [["I've gone down to [170] for the rafters", 'rafters']],
  leaves: ['I want [40] for now', 'I held it at [3 bar] for an hour'],
  read: (site) => {
    const { parse, at } = site;
    const anchor = anchorOf(site);
    if (!anchor.subject || !isSpeaker(anchor.subject)) return undefined;
    const k = tagAt(parse, at + 1) === 'dimension' ? at + 2 : at + 1;
    if (!/^(?:for|on)$/.test(wordAt(parse, k))) return undefined;
    const phrase = phraseFrom(parse, k + 1);
    if (!phrase || isSpeaker(phrase) || isNoThing(phrase.kinds) || phrase.kinds.has('tool')) return undefined;
    return claim(namePhrase(site, phrase));
  },
};

export const apposition: Frame = {
  name: '<thing>, <quantity>',
  examples: [
    ['Battery, [55 kg]', 'battery'],
    ['I bought a bandsaw, [210 kg]', 'bandsaw'],
    ['the bench stands in the alcove, [740] to the top', 'bench'],
    ['I set the slide at [2 thou]', 'slide'],
  ],
  leaves: ['so [730]'],
  read: (site) => {
    const { discourse } = site;
    const anchor = anchorOf(site);
    const direct = anchor.direct;
    if (!direct || isSpeaker(direct)) return undefined;
    if (isReporter(direct) && /^(?:says?|reads?)$/.test(ahead(site.parse, direct.last + 1, 1)))
      return reported(site, direct);
    const oblique = discourse.roleOf(direct) === 'oblique';
    const subject = clauseSubject(site, direct);
    if (subject && !isSpeaker(subject) && !isReporter(subject) && (oblique || anchor.preposition)) {
      const found = claimOf(site, subject);
      if (found) return found;
    }
    if (oblique) {
      const object = objectBefore(site, direct);
      if (object) return claimOf(site, object);
    }
    if (isBareStuff(direct) && (anchor.comma || oblique)) {
      const owner = ownerOfStuff(site, direct) ?? beforeStuff(site, direct);
      if (owner) return claim(owner);
    }
    return claimOf(site, direct);
  },
};

const isBareStuff = (phrase: Phrase): boolean => {
  if (phrase.kinds.size === 0) return false;
  for (const kind of phrase.kinds) if (kind !== 'material') return false;
  return true;
};

/** "so 3.1 metres long, in beech, 70 thick", "a new tread, oak, 38 thick": what the stuff is put to. */
function beforeStuff(site: Site, stuff: Phrase) {
  const { parse, discourse } = site;
  const last = discourse.last;
  if (last && last.sentence === parse.sentenceOf[stuff.first]) return last.name;
  return discourse.antecedent(stuff.first, needOf(site));
}
