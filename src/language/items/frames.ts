/**
 * Ways of saying what a quantity belongs to, in the order they are tried. The first that answers with a thing that
 * can carry the figure wins.
 */
import { kindsOf, singular } from '../lexicon/trade-nouns.ts';
import { MEASURE_ATTRIBUTE } from './attributes.ts';
import type { Name, Need } from './discourse.ts';
import { isNoThing } from './fitness.ts';
import { joinNames } from './naming.ts';
import type { Phrase } from './noun-phrases.ts';
import { ahead, behind, isSpeaker, phraseAt, phraseFrom, tagAt, wordAt } from './parse.ts';
import type { Claim, Frame, Site } from './site.ts';

const needOf = (site: Site): Need =>
  site.said ? { dimension: site.dimension, attribute: site.said } : { dimension: site.dimension };

/** Finds the words before the number: its verb, the subject of that, and a phrase that stands between. */
interface Anchor {
  readonly verb?: number;
  readonly subject?: Phrase;
  /** Phrase between verb and number, or with no verb at all. */
  readonly direct?: Phrase;
  readonly comma: boolean;
  /** Preposition right before the number's phrase: "at", "to". */
  readonly preposition?: string;
  /** The walk ended at "and" or "so": the clause has no subject of its own. */
  readonly bare: boolean;
}

const BOUND_WORDS =
  /^(?:least|most|more|than|less|max|maximum|minimum|about|of|to|at|up|down|for|by|in|over|under|within|a|an|the|another|only|just|only|same|what|no|not|call|say|like|some)$/;

function anchorOf(site: Site): Anchor {
  const { parse, at } = site;
  const sentence = parse.sentenceOf[at];
  let comma = false;
  let preposition: string | undefined;
  for (let k = at - 1; k >= 0 && parse.sentenceOf[k] === sentence; k--) {
    const tag = tagAt(parse, k);
    const word = wordAt(parse, k);
    if (tag === 'stop') break;
    if (tag === 'comma') {
      comma = true;
      continue;
    }
    if (tag === 'adverb' || tag === 'filler' || tag === 'number' || tag === 'unit' || tag === 'dimension')
      continue;
    if (tag === 'preposition') {
      preposition ??= comma ? undefined : word;
      continue;
    }
    if (tag === 'quantity') {
      const inside = phraseAt(parse, k);
      if (inside && inside.last < at) return { direct: inside, comma, bare: false };
      continue;
    }
    if (tag === 'conjunction') {
      // "560 deep and 480 high" goes on; "and measures 40" has no subject of its own.
      if (tagAt(parse, k - 1) === 'quantity' || tagAt(parse, k - 1) === 'dimension') continue;
      return { comma, bare: true, ...(preposition ? { preposition } : {}) };
    }
    if (BOUND_WORDS.test(word) && tag !== 'noun' && tag !== 'pronoun') continue;
    const phrase = phraseAt(parse, k);
    if (phrase) {
      if (isNoThing(phrase.kinds) && !isSpeaker(phrase)) {
        k = phrase.first;
        continue;
      }
      return { direct: phrase, comma, bare: false, ...(preposition ? { preposition } : {}) };
    }
    if (tag === 'adjective' || tag === 'determiner' || tag === 'possessive' || tag === 'genitive') continue;
    const subject = subjectBefore(site, k);
    return {
      verb: k,
      comma,
      bare: subject === undefined,
      ...(subject ? { subject } : {}),
      ...(preposition ? { preposition } : {}),
    };
  }
  return { comma, bare: true, ...(preposition ? { preposition } : {}) };
}

/** The subject of the verb at `verb`: the nearest phrase before it that is no object of a preposition. */
function subjectBefore(site: Site, verb: number): Phrase | undefined {
  const { parse } = site;
  const sentence = parse.sentenceOf[verb];
  let oblique: Phrase | undefined;
  for (let k = verb - 1; k >= 0 && parse.sentenceOf[k] === sentence; k--) {
    const tag = tagAt(parse, k);
    const phrase = phraseAt(parse, k);
    if (phrase) {
      if (tagAt(parse, phrase.first - 1) !== 'preposition') {
        return phrase;
      }
      oblique ??= phrase;
      k = phrase.first - 1;
      continue;
    }
    if (tag === 'conjunction' || tag === 'stop') break;
    if (tag === 'comma' && oblique === undefined && k < verb - 1) {
      // "the west one is, er, eleven ninety": a comma inside the verb group.
      const inside = tagAt(parse, k + 1);
      if (inside === 'verb' || inside === 'participle') break;
    }
  }
  return oblique;
}

/** The phrase that a clause to the left of a comma is about. */
function clauseSubject(site: Site, before: Phrase): Phrase | undefined {
  const { parse } = site;
  const sentence = parse.sentenceOf[before.first];
  for (let k = before.first - 1; k >= 0 && parse.sentenceOf[k] === sentence; k--) {
    const tag = tagAt(parse, k);
    if (tag === 'stop') return undefined;
    if (tag === 'be' || tag === 'verb' || tag === 'participle' || tag === 'modal' || tag === 'auxiliary')
      return subjectBefore(site, k + 1) ?? undefined;
    if (tag === 'comma' || tag === 'conjunction') return undefined;
  }
  return undefined;
}

const claim = (name: Name | undefined, more: Omit<Claim, 'name'> = {}): Claim | undefined =>
  name && name.length > 0 ? { name, ...more } : undefined;

/** The thing of a measure phrase: "headroom over the stair", "bench height", "a fall along the gutter". */
function claimOfMeasure(site: Site, phrase: Phrase): Claim | undefined {
  const attribute = MEASURE_ATTRIBUTE[singular(phrase.head)];
  const name = site.discourse.nameOf(phrase, needOf(site));
  return claim(name, attribute && site.dimension === 'length' ? { attribute } : {});
}

function namePhrase(site: Site, phrase: Phrase): Name | undefined {
  return site.discourse.nameOf(phrase, needOf(site));
}

/** What the clause's subject or the talk before gives, for quantities whose own phrase names only a part or hole. */
function surrounding(site: Site, before: number): Name | undefined {
  const { parse, discourse } = site;
  const inner: Site = { ...site, at: before };
  const anchor = anchorOf(inner);
  const phrase = anchor.subject ?? anchor.direct;
  if (phrase && !isSpeaker(phrase)) {
    const name = namePhrase(site, phrase);
    if (name) return name;
  }
  const topic = discourse.topicAt(before);
  if (topic && (parse.sentenceOf[before] as number) - topic.sentence <= 1) return topic.name;
  return discourse.last?.name;
}

const SIDE_WORDS =
  /^(?:clear |clearance |gap |of clearance |bearing |of bearing )?(?:(?:on |at )?(?:each|either|both) (side|end|way)s?|a (side|end)|per (side|end)|all (?:a)?round|side)\b/;

const spacing: Frame = {
  name: 'spacing',
  examples: [
    ['the joists are at 400 centres', 'joists'],
    ['the deck is down, screwed every 150 mm', 'deck screws'],
    ['M12 bolts, at 300 centres', 'bolts'],
  ],
  leaves: ['it wants oil every 20 hours', 'the centre bearing is 40 across'],
  read: (site) => {
    const { parse, at, discourse } = site;
    if (site.dimension !== 'length' || site.said !== 'other') return undefined;
    let k = at - 1;
    while (
      tagAt(parse, k) === 'adverb' ||
      tagAt(parse, k) === 'preposition' ||
      wordAt(parse, k) === 'every' ||
      tagAt(parse, k) === 'comma'
    )
      k--;
    const fixing = FIXED_WITH[wordAt(parse, k)];
    if (fixing) {
      const subject = subjectBefore(site, k);
      const thing =
        subject && !isSpeaker(subject)
          ? namePhrase(site, subject)
          : (discourse.last?.name ?? discourse.topicAt(at)?.name);
      return claim(thing ? [...joinNames(thing, [fixing])] : [fixing], { attribute: 'other' });
    }
    const anchor = anchorOf(site);
    const phrase = anchor.direct && !isSpeaker(anchor.direct) ? anchor.direct : anchor.subject;
    if (!phrase || isSpeaker(phrase)) return claim(discourse.last?.name, { attribute: 'other' });
    return claim(namePhrase(site, phrase), { attribute: 'other' });
  },
};
const FIXED_WITH: Readonly<Record<string, string>> = {
  screwed: 'screws',
  clipped: 'clips',
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
};

const limitOnAnything: Frame = {
  name: 'nothing over <quantity>',
  examples: [
    ['so nothing wider than 740 comes in', 'anything that comes in'],
    ['no machine over 400 kilos', 'any machine'],
    ["I don't want anything over 6'10\" going through it", 'anything going through shop door'],
  ],
  leaves: ['no more than 8 inches from the box', 'the bench is no wider than 600'],
  read: (site) => {
    const { parse, at } = site;
    const before = behind(parse, at, 9);
    const match =
      /(?:\b(no|nothing|anything|not one|never)\b)((?: \w+){0,3}?)((?: (?:through|in|on|into) (?:\w+ ){0,3}\w+)?) (?:over|wider|taller|longer|heavier|bigger|deeper|thicker|higher|larger|above|more)(?: than)?$/.exec(
        before,
      );
    if (!match) return undefined;
    const noun =
      match[1] === 'no' || match[1] === 'not one' || match[1] === 'never' ? (match[2] ?? '').trim() : '';
    if (match[1] === 'no' && noun === '') return undefined;
    const after = ahead(parse, at + 1, 8);
    const tail =
      /^(?:(?:comes?|goes|going|fits?|gets?|passes|passing|coming|up|in|through|on|stood|into) ?)+(?:(?:it|that|the \w+|here|there)\b)?/.exec(
        after,
      )?.[0] ?? '';
    const place = (match[3] ?? '')
      .trim()
      .replace(
        /\bany of them\b|\bany of those\b|\bthem\b/,
        () => site.discourse.last?.name.join(' ') ?? 'it',
      );
    const where = (place || tail).replace(
      /\b(?:it|that)\b/,
      () => site.discourse.antecedent(at, { dimension: 'length' })?.join(' ') ?? 'it',
    );
    const about = noun ? `any ${noun}` : 'anything';
    const name = `${about} ${where}`
      .replace(/\b(?:the|a|an) /g, '')
      .trim()
      .split(/\s+/);
    return { name, binds: name.join(' ') };
  },
};

const eachSide: Frame = {
  name: '<quantity> each side',
  examples: [
    ['the runners want 12.7 a side', 'runners each side'],
    ['the cabinet is 850 wide, five a side', 'cabinet each side'],
  ],
  leaves: ['a hundred and ninety two a riser', 'the bench is 40 from the side'],
  read: (site) => {
    const { parse, at, discourse } = site;
    const match = SIDE_WORDS.exec(ahead(parse, at + 1, 6));
    if (!match || site.dimension !== 'length') return undefined;
    const side = match[1] ?? match[2] ?? match[3];
    const anchor = anchorOf(site);
    const phrase = anchor.subject && !isSpeaker(anchor.subject) ? anchor.subject : anchor.direct;
    const name =
      (phrase && !isSpeaker(phrase) ? namePhrase(site, phrase) : undefined) ??
      discourse.last?.name ??
      discourse.topicAt(at)?.name;
    if (!name) return undefined;
    const bearing = /bearing/.exec(match[0]);
    return claim(
      [...name, ...(bearing ? ['bearing'] : []), ...(side ? ['each', side] : ['all', 'round'])].filter(
        (word, k, all) => all.indexOf(word) === k,
      ),
      {
        attribute: bearing ? 'length' : /clearance/.test(match[0]) ? 'clearance' : 'gap',
      },
    );
  },
};

const perPart: Frame = {
  name: '<quantity> a <part>',
  examples: [
    ['a hundred and ninety two a riser', 'riser'],
    ['31 quid a board', 'board'],
  ],
  leaves: ['between 18 and 44 mil a metre', '60 miles an hour', 'twice a day'],
  read: (site) => {
    const { parse, at } = site;
    if (!/^(?:a|an|per|each)$/.test(wordAt(parse, at + 1))) return undefined;
    if (tagAt(parse, at + 2) !== 'noun') return undefined;
    const phrase = phraseAt(parse, at + 2);
    if (
      !phrase ||
      isNoThing(phrase.kinds) ||
      /^(?:side|end|way|metre|meter|foot|coat)$/.test(singular(phrase.head))
    )
      return undefined;
    return claim(namePhrase(site, phrase));
  },
};

const premodifier: Frame = {
  name: '<quantity> <thing>',
  examples: [
    ['I need a 40 amp supply', 'supply'],
    ['quarter inch ply inside', 'ply'],
    ['it takes a 104 mil hole', 'hole'],
  ],
  leaves: ['the deck is 20 foot', 'the drain is 18 inches off the wall'],
  read: (site) => {
    const { parse, at } = site;
    const phrase =
      phraseAt(parse, at) ??
      (/^(?:noun|adjective)$/.test(tagAt(parse, at + 1) ?? '') ? phraseAt(parse, at + 1) : undefined);
    if (!phrase || phrase.name.length === 0 || phrase.last < at || phrase.kinds.has('person'))
      return undefined;
    if (isNoThing(phrase.kinds) || phrase.kinds.has('region')) return undefined;
    const head = singular(phrase.head);
    if (MEASURE_ATTRIBUTE[head] && site.dimension === 'length') {
      const inner = claimOfMeasure(site, phrase);
      return measureOwner(site, phrase) ?? inner;
    }
    if (head === 'hole' || phrase.kinds.has('hole')) {
      const owner = phrase.bare
        ? (forPhrase(site, phrase.last + 1) ?? surrounding(site, phrase.first))
        : undefined;
      const name = owner ? joinNames(owner, phrase.name) : namePhrase(site, phrase);
      return claim(
        name,
        site.dimension === 'length' && !site.said
          ? { attribute: head === 'hole' ? 'diameter' : 'width' }
          : {},
      );
    }
    return claim(namePhrase(site, phrase));
  },
};

/** "for the tap", "to the cylinder" right after a phrase. */
function forPhrase(site: Site, from: number): Name | undefined {
  if (!/^(?:for|to|through|in)$/.test(wordAt(site.parse, from))) return undefined;
  const phrase = phraseFrom(site.parse, from + 1);
  return phrase && !isSpeaker(phrase) && phrase.name.length > 0 ? namePhrase(site, phrase) : undefined;
}

/** "two mil clearance round every pane": the thing stands after the measure, or the clause's subject has it. */
function measureOwner(site: Site, phrase: Phrase): Claim | undefined {
  const { parse } = site;
  const head = singular(phrase.head);
  const attribute = MEASURE_ATTRIBUTE[head];
  const keep =
    head === 'headroom' ||
    head === 'fall' ||
    head === 'deflection' ||
    head === 'overhang' ||
    head === 'bearing';
  const own = phrase.name.slice(0, -1);
  let owner: Name | undefined;
  if (
    /^(?:of|round|around|over|under|in|on|above|below|along|for|behind|between|beneath|at)$/.test(
      wordAt(parse, phrase.last + 1),
    )
  ) {
    const after = phraseFrom(parse, phrase.last + 2);
    if (after && !isSpeaker(after) && !isNoThing(after.kinds)) owner = namePhrase(site, after);
  }
  owner ??= surrounding(site, phrase.first);
  const name = owner ? (keep ? joinNames(owner, [...own, phrase.head]) : [...own, ...owner]) : phrase.name;
  return claim(name, attribute ? { attribute } : {});
}

const quantityOf: Frame = {
  name: '<quantity> of <thing>',
  examples: [
    ['a hole through 330 of brick', 'brick'],
    ['five litres of the grey', 'grey'],
    ['fifty of clear air behind the insulation', 'insulation'],
  ],
  leaves: ['the deck is four of them', '40 of the boards'],
  read: (site) => {
    const { parse, at } = site;
    if (wordAt(parse, at + 1) !== 'of') return undefined;
    const phrase = phraseFrom(parse, at + 2);
    if (!phrase || isSpeaker(phrase)) return undefined;
    if (phrase.pronoun) return claim(namePhrase(site, phrase));
    if (isNoThing(phrase.kinds) || phrase.name.length === 0) return undefined;
    const head = singular(phrase.head);
    if (MEASURE_ATTRIBUTE[head] && site.dimension === 'length') return measureOwner(site, phrase);
    return claim(namePhrase(site, phrase));
  },
};

const measureNounOf: Frame = {
  name: '<measure> of <quantity>',
  examples: [
    ['the gutter wants a fall of 12 mil', 'gutter fall'],
    ['the duct wants a hole of not less than 104', 'duct hole'],
    ['headroom down there is 2.1 metres', 'headroom'],
  ],
  leaves: ['the top of the bench is 920', 'two coats of 40'],
  read: (site) => {
    const { at } = site;
    const anchor = anchorOf(site);
    if (anchor.preposition !== 'of' || !anchor.direct) return undefined;
    const phrase = anchor.direct;
    const head = singular(phrase.head);
    if (MEASURE_ATTRIBUTE[head]) return measureOwner({ ...site, at }, phrase);
    if (head === 'hole' || phrase.kinds.has('hole')) {
      const owner = surrounding(site, phrase.first);
      return claim(owner && phrase.bare ? joinNames(owner, phrase.name) : phrase.name, {
        attribute: 'diameter',
      });
    }
    return claim(namePhrase(site, phrase));
  },
};

const OFFSET =
  /^(?:(?:in|up|down|back|clear|away|out|over|short|shy) )?(off|from|above|below|to|of|between)\b/;

const offsetFrom: Frame = {
  name: '<quantity> from <thing>',
  examples: [
    ["the drain's 14 inches off the back wall", 'drain from back wall'],
    ['the deck is 22 inches above the ground', 'deck above ground'],
  ],
  leaves: ['the bench is 960 to the top', 'it is 40 off square'],
  read: (site) => {
    const { parse, at } = site;
    if (site.said !== 'offset' && site.said !== 'height') return undefined;
    let k = at + 1;
    if (tagAt(parse, k) === 'adverb' && !OFFSET.test(ahead(parse, k, 3))) k++;
    const match = OFFSET.exec(ahead(parse, k, 4));
    if (!match || match[1] === 'to' || match[1] === 'of') return undefined;
    const skip = match[0].split(' ').length;
    const datum = phraseFrom(parse, k + skip);
    if (!datum || datum.pronoun || datum.name.length === 0) return undefined;
    const anchor = anchorOf(site);
    const phrase = anchor.subject && !isSpeaker(anchor.subject) ? anchor.subject : anchor.direct;
    const subject =
      (phrase && !isSpeaker(phrase) ? namePhrase(site, phrase) : undefined) ??
      site.discourse.last?.name ??
      site.discourse.topicAt(at)?.name;
    if (!subject) return undefined;
    const vertical = site.said === 'height';
    const link = vertical ? 'above' : 'from';
    return claim(subject.includes(link) ? subject : [...subject, link, ...datum.name], {
      datum: `${vertical ? 'above' : match[1]} the ${datum.name.join(' ')}`,
    });
  },
};

const placeTemperature: Frame = {
  name: '<quantity> in here',
  examples: [
    ['it was six in here this morning', 'workshop'],
    ["it's 51 right now under this tarp", 'tarp'],
  ],
  leaves: ['the primer wants eight degrees'],
  read: (site) => {
    if (site.dimension !== 'temperature') return undefined;
    const { parse, at } = site;
    const after = ahead(parse, at + 1, 7);
    const anchor = anchorOf(site);
    const impersonal = anchor.subject?.pronoun === 'it' || anchor.direct?.pronoun === 'it';
    if (
      /^(?:\w+ ){0,3}(?:in|out) (?:here|there)\b/.test(after) ||
      (impersonal && /\b(?:this morning|last night|outside|tonight|today|right now|overnight)\b/.test(after))
    ) {
      const place = /\b(?:under|in|inside) (?:the|this|my) (\w+)/.exec(after);
      if (place?.[1] && kindsOf([place[1]]).size > 0 && !isNoThing(kindsOf([place[1]])))
        return claim([place[1]]);
      return claim(/outside/.test(after) ? ['outside'] : ['inside']);
    }
    return undefined;
  },
};

const forThing: Frame = {
  name: '<quantity> for <thing>',
  examples: [["I've gone down to 170 for the new ones", 'new ones']],
  leaves: ['it is 40 for now', 'held at three bar for an hour'],
  read: (site) => {
    const { parse, at } = site;
    const anchor = anchorOf(site);
    if (!anchor.subject || !isSpeaker(anchor.subject)) return undefined;
    const k = tagAt(parse, at + 1) === 'dimension' ? at + 2 : at + 1;
    if (!/^(?:for|on)$/.test(wordAt(parse, k))) return undefined;
    const phrase = phraseFrom(parse, k + 1);
    if (!phrase || isSpeaker(phrase) || isNoThing(phrase.kinds)) return undefined;
    return claim(namePhrase(site, phrase));
  },
};

const REPORTERS =
  /^(?:book|manual|spec|sheet|plate|sticker|label|packet|box|bucket|tin|drawing|plan|sidewall|website|datasheet|instructions|leaflet|tape|calipers|callipers|scale|scales|gauge|meter|thermometer|law|rules?|docket|invoice|paperwork|bag|page|says?)$/;

const verbSubject: Frame = {
  name: '<thing> is <quantity>',
  examples: [
    ['the bench is 920 high', 'bench'],
    ['the gearbox takes 1.2 litres', 'gearbox'],
    ['the lathe weighs 430 kilos', 'lathe'],
  ],
  leaves: ['I want 740', 'the book says 40'],
  read: (site) => {
    const anchor = anchorOf(site);
    const subject = anchor.subject;
    if (anchor.verb === undefined || !subject || isSpeaker(subject)) return undefined;
    if (REPORTERS.test(singular(subject.head)) || REPORTERS.test(subject.head))
      return reported(site, subject);
    if (MEASURE_ATTRIBUTE[singular(subject.head)]) return claimOfMeasure(site, subject);
    return claim(namePhrase(site, subject));
  },
};

/** "Plate on the trailer says 2000 pounds": the thing the paper is on, else what was spoken of. */
function reported(site: Site, reporter: Phrase): Claim | undefined {
  const { parse, discourse } = site;
  if (/^(?:on|of|for)$/.test(wordAt(parse, reporter.last + 1))) {
    const thing = phraseFrom(parse, reporter.last + 2);
    if (thing && !isSpeaker(thing)) return claim(namePhrase(site, thing));
  }
  const own = reporter.name
    .slice(0, -1)
    .filter(
      (word) => !isNoThing(kindsOf([word])) && kindsOf([word]).size > 0 && !kindsOf([word]).has('tool'),
    );
  if (own.length > 0) return claim(own);
  return claim(discourse.antecedent(reporter.first, needOf(site)));
}

const apposition: Frame = {
  name: '<thing>, <quantity>',
  examples: [
    ['Battery, 55 pounds', 'battery'],
    ['I bought a bandsaw, 210 kilos', 'bandsaw'],
    ['the bench stands in the alcove, 740 to the top', 'bench'],
    ['I set the slide at two thou', 'slide'],
  ],
  leaves: ['so 730'],
  read: (site) => {
    const { discourse } = site;
    const anchor = anchorOf(site);
    const direct = anchor.direct;
    if (!direct) return undefined;
    if (isSpeaker(direct)) return undefined;
    if (REPORTERS.test(singular(direct.head))) return reported(site, direct);
    const oblique = discourse.roleOf(direct) === 'oblique';
    const subject = clauseSubject(site, direct);
    if (subject && !isSpeaker(subject) && (oblique || anchor.preposition)) {
      const name = namePhrase(site, subject);
      if (name && !REPORTERS.test(subject.head)) return claim(name);
    }
    if (MEASURE_ATTRIBUTE[singular(direct.head)]) return claimOfMeasure(site, direct);
    return claim(namePhrase(site, direct));
  },
};

const carriedOn: Frame = {
  name: 'so <quantity>',
  examples: [['the legs are the height less the top, so 730', 'legs']],
  leaves: [],
  read: (site) => {
    const { parse, at, discourse } = site;
    const last = discourse.last;
    if (last && parse.sentenceOf[at] === last.sentence) return claim(last.name);
    return undefined;
  },
};

const topic: Frame = {
  name: 'topic',
  examples: [['Loft. I am dropping it, so 76 now', 'loft']],
  leaves: [],
  read: (site) => {
    const { parse, at, discourse } = site;
    const said = discourse.topicAt(at);
    const away = said ? (parse.sentenceOf[at] as number) - said.sentence : 9;
    if (said && away <= 1) return claim(said.name);
    return claim(discourse.antecedent(at, needOf(site)) ?? said?.name ?? discourse.last?.name);
  },
};

export const FRAMES: readonly Frame[] = [
  limitOnAnything,
  spacing,
  eachSide,
  perPart,
  quantityOf,
  premodifier,
  measureNounOf,
  offsetFrom,
  placeTemperature,
  forThing,
  verbSubject,
  apposition,
  carriedOn,
  topic,
];
