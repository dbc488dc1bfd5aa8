import { kindsOf, singular } from '../../lexicon/trade-nouns.ts';
import {
  anchorOf,
  clauseSubject,
  isHolder,
  isReported,
  isReporter,
  isVerbal,
  namePhrase,
  needOf,
  objectBefore,
  sentenceSubject,
  subjectBefore,
  sumSubject,
  tells,
} from '../anchor.ts';
import { MEASURE_ATTRIBUTE } from '../attributes.ts';
import { isNoThing } from '../fitness.ts';
import type { Phrase } from '../noun-phrases.ts';
import { ahead, behind, isSpeaker, phraseAt, phraseFrom, tagAt, wordAt } from '../parse.ts';
import type { Claim, Frame, Site } from '../site.ts';
import { claim } from './claim.ts';
import { ownerOfStuff } from './premodifiers.ts';

/** The thing of a measure phrase: "headroom over the stair", "bench height". */
function claimOfMeasure(site: Site, phrase: Phrase): Claim | undefined {
  if (singular(phrase.head) === 'distance') return claimOfDistance(site, phrase);
  const attribute = MEASURE_ATTRIBUTE[singular(phrase.head)];
  return claim(namePhrase(site, phrase), attribute && site.dimension === 'length' ? { attribute } : {});
}

/** "Deck to the ground is 22": how far one thing is above another. */
function downTo(site: Site, subject: Phrase): Claim | undefined {
  if (site.dimension !== 'length' || wordAt(site.parse, subject.last + 1) !== 'to') return undefined;
  if (subject.pronoun || subject.kinds.has('cable') || subject.kinds.has('pipe')) return undefined;
  const level = phraseFrom(site.parse, subject.last + 2);
  const name = namePhrase(site, subject);
  if (!level || level.name.length === 0 || !name) return undefined;
  const vertical =
    level.kinds.has('ground') ||
    /^(?:floor|ceiling|deck|sole|roof|slab|beam|joist)$/.test(singular(level.head));
  return claim([...name, vertical ? 'above' : 'from', ...level.name], {
    attribute: vertical ? 'height' : 'offset',
    datum: `${vertical ? 'above' : 'from'} the ${level.name.join(' ')}`,
  });
}

/** "the distance from the sink to the wall", "the distance between the posts". */
function claimOfDistance(site: Site, phrase: Phrase): Claim | undefined {
  const link = wordAt(site.parse, phrase.last + 1);
  if (link !== 'from' && link !== 'between') return undefined;
  const thing = phraseFrom(site.parse, phrase.last + 2);
  if (!thing || isSpeaker(thing) || thing.name.length === 0) return undefined;
  return claim(namePhrase(site, thing), { attribute: link === 'from' ? 'offset' : 'gap' });
}

const claimOf = (site: Site, phrase: Phrase): Claim | undefined =>
  MEASURE_ATTRIBUTE[singular(phrase.head)] || phrase.head === 'distance'
    ? claimOfMeasure(site, phrase)
    : claim(namePhrase(site, phrase));

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
    ['the roof box weighs [18 kg]', 'roof box'],
    ["The bench is in. The gap behind the bench that's [50 mm]", 'bench gap'],
  ],
  leaves: ['I want [740]'],
  read: (site) => {
    const anchor = anchorOf(site);
    const subject = anchor.subject;
    if (anchor.verb === undefined || !subject || isSpeaker(subject)) return undefined;
    if (isReporter(subject) && tells(site, anchor.verb)) return reported(site, subject);
    // "Motor plate's 0.55 kilowatts": the plate tells, the motor has it.
    const isOwnWeight = isHolder(subject) && (site.dimension === 'mass' || site.dimension === 'volume');
    if (isReporter(subject) && site.dimension !== 'length' && subject.name.length > 1 && !isOwnWeight)
      return reported(site, subject);
    const found = downTo(site, subject) ?? claimOf(site, subject);
    return found && !subject.pronoun ? { ...found, isNamed: true } : found;
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
    const isMine = anchor.subject ? isSpeaker(anchor.subject) : anchor.verb !== undefined;
    if (!isMine && !isReported(site, anchor)) return undefined;
    const k = tagAt(parse, at + 1) === 'dimension' ? at + 2 : at + 1;
    if (!/^(?:for|on)$/.test(wordAt(parse, k))) return undefined;
    const phrase = phraseFrom(parse, k + 1);
    if (!phrase || isSpeaker(phrase) || isNoThing(phrase.kinds) || phrase.kinds.has('tool')) return undefined;
    return claim(namePhrase(site, phrase));
  },
};

const REACHES =
  /\b(?:goes|go|runs|run|reaches|spans|stretches|comes|went|ran)\b.*\bfrom\b.*\bto\b.*\b(?:that|which)(?: 's| is| was| makes it| comes to| comes out at| works out at)$/;

const LONGEST_REACH = 24;

/** "The splashback goes from the worktop to the cill so that's 160": as far as it was said to go. */
export const reachOf: Frame = {
  name: '<thing> goes from here to there, <quantity>',
  examples: [["The splashback goes from the worktop to the window cill so that's [160] now", 'splashback']],
  leaves: ['The window is [900] from the corner'],
  read: (site) => {
    const { parse, at } = site;
    if (!REACHES.test(behind(parse, at, LONGEST_REACH))) return undefined;
    const subject = sentenceSubject(site);
    return subject && !subject.pronoun ? claim(namePhrase(site, subject), { isSettled: true }) : undefined;
  },
};

export const apposition: Frame = {
  name: '<thing>, <quantity>',
  examples: [
    ['Battery, [55 kg]', 'battery'],
    ['I bought a bandsaw, [210 kg]', 'bandsaw'],
    ['the bench stands in the alcove, [740] to the top', 'bench'],
    ['I set the slide at [2 thou]', 'slide'],
    ["The tank is leaking. It's stainless, [900] by [400]", 'tank, tank'],
    ['the bench top has to go through the side hatch, [710] by [540]', 'side hatch, side hatch'],
  ],
  leaves: ['so [730]'],
  read: (site) => {
    const { discourse } = site;
    const anchor = anchorOf(site);
    const direct = anchor.direct;
    if (!direct || isSpeaker(direct)) return undefined;
    if (isReporter(direct) && /^(?:says?|reads?)$/.test(ahead(site.parse, direct.last + 1, 1)))
      return reported(site, direct);
    const { parse } = site;
    // "the floor less the beam, 2050": a part of the sum, not its result.
    if (/^(?:less|minus|plus)$/.test(wordAt(parse, direct.first - 1))) return claim(sumSubject(site));
    // "the ridge beam is a glulam, 90 by 315": what is called something else is still what is measured.
    const called = anchor.comma ? calledSo(site, direct) : undefined;
    const told = called && claimOf(site, called);
    if (told) return told;
    const oblique = discourse.roleOf(direct) === 'oblique';
    // "The top has to go through the side hatch, 710 by 540": how large the way is.
    const isWay = wordAt(parse, direct.first - 1) === 'through' && direct.kinds.has('opening');
    const way = anchor.comma && isWay ? claimOf(site, direct) : undefined;
    if (way) return { ...way, isSettled: true };
    // "775 across the table, 210 kilos": the place belongs to the figure before.
    const last = discourse.last;
    if (
      oblique &&
      anchor.comma &&
      last &&
      last.sentence === parse.sentenceOf[direct.first] &&
      last.word < direct.first &&
      !betweenHasVerb(site, last.word, direct.first)
    )
      return claim(last.name);
    const subject = clauseSubject(site, direct);
    if (subject && !isSpeaker(subject) && !isReporter(subject) && (oblique || anchor.preposition === 'by')) {
      const found = claimOf(site, subject);
      if (found) return found;
    }
    // "Headroom in the forepeak, 1620": the place only says whose headroom.
    const holder = oblique ? phraseAt(parse, direct.first - 2) : undefined;
    if (
      holder &&
      holder.last === direct.first - 2 &&
      holder.name.length > 0 &&
      !isSpeaker(holder) &&
      !isNoThing(holder.kinds) &&
      !subject
    )
      return claimOf(site, holder);
    if (oblique) {
      const object = objectBefore(site, direct);
      if (object) return claimOf(site, object);
    }
    if (isBareStuff(direct) && (anchor.comma || oblique)) {
      const owner = beforeStuff(site, direct) ?? ownerOfStuff(site, direct);
      if (owner) return claim(owner);
    }
    return claimOf(site, direct);
  },
};

/** The subject of "X is a Y" when Y is the phrase. */
function calledSo(site: Site, complement: Phrase): Phrase | undefined {
  const { parse } = site;
  let k = complement.first - 1;
  while (tagAt(parse, k) === 'adverb') k--;
  if (tagAt(parse, k) !== 'be') return undefined;
  const subject = subjectBefore(site, k);
  // "The lintel cracked when the props came out. It's got to be oak, 200 by 250": what is called so may be an "it".
  const isThing = subject && (subject.name.length > 0 || /^(?:it|she)$/.test(subject.pronoun ?? ''));
  return isThing && !isSpeaker(subject) && !isReporter(subject) ? subject : undefined;
}

const isBareStuff = (phrase: Phrase): boolean => {
  if (phrase.kinds.size === 0) return false;
  for (const kind of phrase.kinds) if (kind !== 'material') return false;
  return true;
};

/** "so 3.1 metres long, in beech, 70 thick", "a new tread, oak, 38 thick": what the stuff is put to. */
function beforeStuff(site: Site, stuff: Phrase) {
  const { parse, discourse } = site;
  const beside = phraseAt(parse, stuff.first - 2);
  if (tagAt(parse, stuff.first - 1) === 'comma' && beside && !isSpeaker(beside) && !isNoThing(beside.kinds))
    return namePhrase(site, beside);
  const sentence = parse.sentenceOf[stuff.first];
  const topic = discourse.topicAt(stuff.first);
  if (topic && topic.sentence === sentence) return topic.name;
  const last = discourse.last;
  if (last && last.sentence === sentence) return last.name;
  return discourse.antecedent(stuff.first, needOf(site));
}

function betweenHasVerb(site: Site, from: number, to: number): boolean {
  for (let k = from + 1; k < to; k++) if (isVerbal(tagAt(site.parse, k))) return true;
  return false;
}

/** "so 754 the treads should be", "ninety it'll be": the thing stands behind its figure, before the verb. */
export const saidBehind: Frame = {
  name: '<quantity> the <thing> should be',
  examples: [
    ['the floor went up, so [754] the treads should be', 'treads'],
    ["the legs are short, it's [902] they should be", 'legs'],
  ],
  leaves: ['it is [900], the bench is too low'],
  read: (site) => {
    const { parse, at } = site;
    const phrase = phraseFrom(parse, at + 1);
    if (!phrase || isSpeaker(phrase) || isNoThing(phrase.kinds) || phrase.first > at + 1) return undefined;
    if (
      /^(?:it|that)$/.test(phrase.head) &&
      wordAt(parse, phrase.last + 1) === 'is' &&
      !/^(?:\w|#)/.test(ahead(parse, phrase.last + 2, 1))
    )
      return claim(namePhrase(site, phrase));
    if (
      !/^(?:should|ought|will|'ll|would|'d|wants?|has|have|needs?|must|oughta)$/.test(
        wordAt(parse, phrase.last + 1),
      )
    )
      return undefined;
    const rest = /^(?:\w+ )?(?:be|become|to be|have been)(?: now)?\b(.*)$/.exec(
      ahead(parse, phrase.last + 2, 4),
    );
    if (!rest || /^ (?:\w|#)/.test(rest[1] ?? '')) return undefined;
    return claim(namePhrase(site, phrase));
  },
};

const TAKEN_OFF =
  /\b(?:take|taking|took|plane|planing|planed|shave|shaving|trim|trimming|cut|cutting|skim|skimming|sand|sanding|saw|grind|grinding|knock|knocking|lose|loses|losing|lost|gain|gains)(?: about| another| only| just)?(?: a)?$/;

/** "plane a couple of mil off the meeting edge". */
export const takenOff: Frame = {
  name: 'take <quantity> off <thing>',
  examples: [['I have to plane [2] off the meeting edge', 'meeting edge']],
  leaves: ['the drain is [14 in] off the wall'],
  read: (site) => {
    const { parse, at } = site;
    if (site.dimension !== 'length' || wordAt(parse, at + 1) !== 'off') return undefined;
    const before = behind(parse, at, 4);
    if (!TAKEN_OFF.test(before)) return undefined;
    const phrase = phraseFrom(parse, at + 2);
    if (!phrase || isSpeaker(phrase) || isNoThing(phrase.kinds)) return undefined;
    return claim(namePhrase(site, phrase), {
      attribute: /plan|shav|skim|sand/.test(before) ? 'thickness' : 'offset',
    });
  },
};
