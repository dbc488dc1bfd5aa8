import { kindsOf, singular } from '../../lexicon/trade-nouns.ts';
import type { Attribute } from '../../notes.ts';
import {
  anchorOf,
  clauseSubject,
  isReporter,
  linkedAfter,
  namePhrase,
  sentenceSubject,
  surrounding,
} from '../anchor.ts';
import { MEASURE_ATTRIBUTE, pairedWith } from '../attributes.ts';
import type { Name } from '../discourse.ts';
import { inMillimetres, isNoThing } from '../fitness.ts';
import { joinNames } from '../naming.ts';
import type { Phrase } from '../noun-phrases.ts';
import { isSpeaker, type Parse, phraseAt, phraseFrom, tagAt, wordAt } from '../parse.ts';
import type { Claim, Frame, Site } from '../site.ts';
import { claim } from './claim.ts';

/** Measures that are part of a thing's name: the loft headroom is not the loft. */
const KEPT_MEASURES = new Set([
  'headroom',
  'fall',
  'deflection',
  'overhang',
  'bearing',
  'rise',
  'run',
  'gap',
  'air',
  'lap',
  'moisture',
]);
const AROUND = /^(?:of|round|around|over|under|in|on|above|below|along|for|behind|between|beneath|at|to)$/;

/** "two mil clearance round every pane": the thing stands after the measure, or the clause's subject has it. */
export function measureOwner(site: Site, phrase: Phrase): Claim | undefined {
  const { parse } = site;
  const head = singular(phrase.head);
  const attribute = MEASURE_ATTRIBUTE[head];
  const own = phrase.name.slice(0, -1).filter((word) => word !== 'clear');
  let owner: Name | undefined;
  if (AROUND.test(wordAt(parse, phrase.last + 1))) {
    const after = phraseFrom(parse, phrase.last + 2);
    if (after && !isSpeaker(after) && !isNoThing(after.kinds) && !isSideWord(after))
      owner = namePhrase(site, after);
  }
  owner ??= surrounding(site, phrase.first);
  const parts = owner
    ? KEPT_MEASURES.has(head)
      ? joinNames(owner, [...own, phrase.head])
      : [...own, ...owner]
    : phrase.name;
  return claim(parts, attribute ? { attribute } : {});
}

const isSideWord = (phrase: Phrase): boolean =>
  /^(?:end|side|top|bottom|front|back|middle)$/.test(singular(phrase.head)) && phrase.bare;

const isStuff = (phrase: Phrase): boolean => {
  for (const kind of phrase.kinds)
    if (kind === 'material' || kind === 'sheet')
      return !/^(?:door|floor|wall|ceiling|worktop|counter|top)$/.test(phrase.head);
  return false;
};

/** A thing made of a stuff that carries the figure: "the tread, oak, 38 thick" is the tread. */
export function ownerOfStuff(site: Site, stuff: Phrase): Name | undefined {
  const subject = clauseSubject(site, stuff);
  if (!subject || isSpeaker(subject) || isReporter(subject)) return undefined;
  return namePhrase(site, subject);
}

/** "50 batten, 12 board and 3 skim": one of several stuffs in a row, each told with how thick it is. */
function isOneOfLayers({ parse, at }: Site, stuff: Phrase): boolean {
  if (wordAt(parse, at - 1) === 'plus') return true;
  const back = pastJoins(parse, at - 1, -1);
  const before = back < at - 1 ? phraseAt(parse, back) : undefined;
  if (before && isStuff(before) && hasOwnSize(parse, before)) return true;
  const next = pastJoins(parse, stuff.last + 1, 1);
  const after = phraseAt(parse, next) ?? phraseAt(parse, next + 1);
  const isNext = next > stuff.last + 1 && tagAt(parse, next) === 'quantity';
  return isNext && after !== undefined && isStuff(after);
}

/** "12 board", "an inch of foam board". */
const hasOwnSize = (parse: Parse, { first, quantity }: Phrase): boolean =>
  quantity !== undefined ||
  tagAt(parse, first - 1) === 'quantity' ||
  (wordAt(parse, first - 1) === 'of' && tagAt(parse, first - 2) === 'quantity');

/** The first word from `at` on that joins no two things of a list. */
function pastJoins(parse: Parse, at: number, step: 1 | -1): number {
  let k = at;
  while (tagAt(parse, k) === 'comma' || /^(?:and|plus|then)$/.test(wordAt(parse, k))) k += step;
  return k;
}

/** Shapes that a thing is made from: "the leg's a 60 tube". */
const SHAPES = new Set([
  'tube',
  'bar',
  'rod',
  'plate',
  'board',
  'angle',
  'section',
  'sheet',
  'strip',
  'batten',
  'flat',
  'pipe',
  'box',
]);

/** "the tank's steel, 3 mm plate": what the sentence is about, else the thing of the figure before in it. */
function ownerBeforeComma(site: Site, at: number): Name | undefined {
  const { parse, discourse } = site;
  const last = discourse.last;
  if (last && last.sentence === parse.sentenceOf[at]) return last.name;
  const subject = sentenceSubject(site);
  return subject && !isSpeaker(subject) ? namePhrase(site, subject) : undefined;
}

const ROUND_SHAPES = new Set(['tube', 'bar', 'rod', 'pipe', 'dowel']);

/** A bare small length before a stuff: "18 ply" is thick, "a 60 tube" is across. */
function sizeOfStuff(site: Site, stuff: Phrase): { readonly attribute?: Attribute } {
  if (site.dimension !== 'length' || site.said) return {};
  if (ROUND_SHAPES.has(singular(stuff.head))) return { attribute: 'diameter' };
  return inMillimetres(site.quantity.value, site.quantity.unit) <= 160 ? { attribute: 'thickness' } : {};
}

/** Nouns that only round off a number: "eight footers", "three psi tops". */
const ROUNDING =
  /^(?:tops|footers?|inchers?|pounders?|tonners?|model|job|version|type|kind|affair|effort|max|maximum|minimum|total|spot|mark|nose|dot|button)$/;

export const premodifier: Frame = {
  name: '<quantity> <thing>',
  examples: [
    ['I need a [40 A] supply', 'supply'],
    ['the berth gets [6] ply', 'berth ply'],
    ['the duct needs a [104] hole', 'duct hole'],
    ['there is [20] clearance over the hatch', 'hatch'],
    ['with [1 in] of foam board, [0.5 in] ply and the lino', 'foam board, ply'],
    ['the ceiling is foam plus [0.25 in] cedar', 'cedar'],
    ['it sits on a ring of [12] ply', 'ring ply'],
  ],
  leaves: ['the deck is [20 ft] long', 'the drain is [18 in] off the wall'],
  read: (site) => {
    const { parse, at } = site;
    const next = tagAt(parse, at + 1);
    const phrase =
      phraseAt(parse, at) ?? (next === 'noun' || next === 'adjective' ? phraseAt(parse, at + 1) : undefined);
    if (!phrase || phrase.name.length === 0 || phrase.last <= at || phrase.kinds.has('person'))
      return undefined;
    if (isNoThing(phrase.kinds) || phrase.kinds.has('region') || ROUNDING.test(phrase.head)) return undefined;
    // "2310 wall to wall", "six foot seven floor to ceiling": a stretch, not a wall of 2310.
    if (wordAt(parse, phrase.last + 1) === 'to' && tagAt(parse, phrase.last + 2) === 'noun') return undefined;
    const head = singular(phrase.head);
    if (MEASURE_ATTRIBUTE[head] && (site.dimension === 'length' || MEASURE_ATTRIBUTE[head] === site.said))
      return measureOwner(site, phrase);
    if (phrase.kinds.has('hole')) return holeOf(site, phrase);
    const own = namePhrase(site, phrase);
    if (isStuff(phrase) || (SHAPES.has(head) && phrase.bare)) {
      // Each layer of a build-up is of its own stuff, and of no other layer.
      if (isOneOfLayers(site, phrase)) return claim(own, { isNamed: true, isSettled: true });
      const made = madeOf(site, phrase);
      if (made && own) return claim(joinNames(made, own), sizeOfStuff(site, phrase));
      const owner =
        ownerOfStuff(site, phrase) ??
        (phrase.bare && tagAt(parse, at - 1) === 'comma' ? ownerBeforeComma(site, at) : undefined);
      // "the blade's 18 ply" is the blade's thickness; "the floor gets 25 foam" is the floor foam's.
      if (owner && (tagAt(parse, at - 1) === 'be' || tagAt(parse, at - 2) === 'be'))
        return claim(owner, sizeOfStuff(site, phrase));
      if (owner && own && !kindsOf(owner).has('person')) {
        const name = joinNames(owner, own);
        site.discourse.rename(phrase, name);
        return claim(name);
      }
    }
    return claim(own, {
      isNamed: true,
      ...(opensPhrase(site) && !isStuff(phrase) ? { isSettled: true as const } : {}),
    });
  },
};

/** So much of a stuff, and no thing that is made of it. */
const PART =
  /^(?:sheet|bit|piece|length|offcut|scrap|couple|pair|lot|load|stack|layer|pack|roll|pile|run|metre|foot|board|skin|coat|amount|rest|kind|sort|inch)$/;

/** "A ring of 12 ply", "a frame of 40 tube": what is made of the stuff. Other things of that stuff have sizes of their own. */
function madeOf(site: Site, stuff: Phrase): Name | undefined {
  const { parse, at } = site;
  if (!isStuff(stuff) || wordAt(parse, at - 1) !== 'of') return undefined;
  const made = phraseAt(parse, at - 2);
  if (!made || made.last !== at - 2 || made.pronoun || isSpeaker(made) || isNoThing(made.kinds))
    return undefined;
  const head = singular(made.head);
  return PART.test(head) || MEASURE_ATTRIBUTE[head] ? undefined : made.name;
}

/** "A thirty mil strip", "the two hundred deep bearer": article, figure and thing are one phrase. */
const opensPhrase = ({ parse, at }: Site): boolean => /^(?:a|an|the|another)$/.test(wordAt(parse, at - 1));

function holeOf(site: Site, phrase: Phrase): Claim | undefined {
  const owner = phrase.bare
    ? (linkedAfter(site, phrase.last + 1, /^(?:for)$/) ?? surrounding(site, phrase.first))
    : undefined;
  const name = owner ? joinNames(owner, phrase.name) : namePhrase(site, phrase);
  const hole = singular(phrase.head) === 'hole' || singular(phrase.head) === 'bore';
  return claim(name, site.dimension === 'length' && !site.said && hole ? { attribute: 'diameter' } : {});
}

/** "90 by 45 rails", "a 12 by 18 window": the thing follows the pair. */
export const pairedPremodifier: Frame = {
  name: '<quantity> by <quantity> <thing>',
  examples: [['I need four [90] by [45] rails', 'rails, rails']],
  leaves: ['the room is [4.8 m] by [3.6 m]'],
  read: (site) => {
    const { parse, at } = site;
    const pair = pairedWith(parse, at);
    if (!pair) return undefined;
    const second = pair.isFirst ? pair.word : at;
    const next = tagAt(parse, second + 1);
    if (next !== 'noun' && next !== 'adjective') return undefined;
    const phrase = phraseAt(parse, second) ?? phraseAt(parse, second + 1);
    if (!phrase || phrase.name.length === 0 || phrase.last <= second || isSpeaker(phrase)) return undefined;
    if (isNoThing(phrase.kinds) || MEASURE_ATTRIBUTE[singular(phrase.head)] || ROUNDING.test(phrase.head))
      return undefined;
    // "the rails are 40 by 40 aluminium": of the rails.
    const subject = isStuff(phrase) ? anchorOf(site).subject : undefined;
    if (subject && subject.name.length > 0 && !isSpeaker(subject)) return claim(namePhrase(site, subject));
    return claim(namePhrase(site, phrase));
  },
};

export const quantityOf: Frame = {
  name: '<quantity> of <thing>',
  examples: [
    ['a hole through [330] of brick', 'brick'],
    ['it takes [5 L] of oil', 'oil'],
    ['leave [50] of air behind the insulation', 'insulation air'],
  ],
  leaves: ['the deck is [4] of the way there'],
  read: (site) => {
    const { parse, at } = site;
    if (wordAt(parse, at + 1) !== 'of') return undefined;
    const phrase = phraseFrom(parse, at + 2);
    if (!phrase || isSpeaker(phrase)) return undefined;
    if (phrase.pronoun) return claim(namePhrase(site, phrase));
    if (isNoThing(phrase.kinds) || phrase.name.length === 0) return undefined;
    if (MEASURE_ATTRIBUTE[singular(phrase.head)] && site.dimension === 'length')
      return measureOwner(site, phrase);
    const thick =
      site.dimension === 'length' &&
      /^(?:mm|cm|in|thou)$/.test(site.quantity.unit) &&
      (phrase.kinds.has('material') || phrase.kinds.has('sheet'));
    const more = thick && !site.said ? { attribute: 'thickness' as const } : {};
    // "the top's 60 of beech": the top is what is 60.
    const subject = thick && tagAt(parse, at - 1) === 'be' ? anchorOf(site).subject : undefined;
    if (subject && subject.name.length > 0 && !isSpeaker(subject))
      return claim(namePhrase(site, subject), more);
    return claim(stuffIn(site, phrase) ?? namePhrase(site, phrase), more);
  },
};

/** "the gearbox takes 1.2 litres of oil" is gearbox oil; "five litres of the grey" is the grey. */
function stuffIn(site: Site, phrase: Phrase): Name | undefined {
  if (!phrase.kinds.has('liquid') || !phrase.bare) return undefined;
  const anchor = anchorOf(site);
  if (!anchor.subject || isSpeaker(anchor.subject) || anchor.subject.pronoun === 'which') return undefined;
  const owner = namePhrase(site, anchor.subject);
  return owner ? joinNames(owner, phrase.name) : undefined;
}

export const measureNounOf: Frame = {
  name: '<measure> of <quantity>',
  examples: [
    ['the gutter wants a fall of [12]', 'gutter fall'],
    ['the duct wants a hole of [104]', 'duct hole'],
  ],
  leaves: ['the top of the bench is [920]'],
  read: (site) => {
    const anchor = anchorOf(site);
    if (anchor.preposition !== 'of' || !anchor.direct || anchor.comma) return undefined;
    // "a gap behind it of 50": of the gap, not of what it is behind.
    const host =
      tagAt(site.parse, anchor.direct.first - 1) === 'preposition'
        ? phraseAt(site.parse, anchor.direct.first - 2)
        : undefined;
    const phrase = host && MEASURE_ATTRIBUTE[singular(host.head)] ? host : anchor.direct;
    if (MEASURE_ATTRIBUTE[singular(phrase.head)]) return measureOwner(site, phrase);
    if (phrase.kinds.has('hole')) return holeOf(site, phrase);
    return claim(namePhrase(site, phrase));
  },
};

/** "a 70 mil pulley on the motor and a 210 on the countershaft": the second is a pulley too. */
export const ellipsis: Frame = {
  name: 'a <quantity> on <thing>',
  examples: [
    ['a [70] pulley on the motor and a [210] on the countershaft', 'pulley, countershaft pulley'],
    ['the pipes are [15], with a [22] feeding the cylinder', 'pipes, cylinder pipe'],
  ],
  leaves: ['it takes a [40] hole', "it's the [18] on the nose"],
  read: (site) => {
    const { parse, at, discourse } = site;
    if (!/^(?:a|an|the|another|same)$/.test(wordAt(parse, at - 1))) return undefined;
    if (!/^(?:on|for|to|at|in|under|over|feeding|through)$/.test(wordAt(parse, at + 1))) return undefined;
    const phrase = phraseFrom(parse, at + 2);
    if (!phrase || isSpeaker(phrase) || isNoThing(phrase.kinds) || phrase.pronoun || phrase.kinds.has('tool'))
      return undefined;
    const place = namePhrase(site, phrase);
    const last = discourse.last;
    if (!place || !last || (parse.sentenceOf[at] as number) - last.sentence > 1) return undefined;
    const head = singular(last.name.at(-1) ?? '');
    const joined = joinNames(place, [head]);
    return claim(discourse.known.settle(joined, site.said) ?? joined);
  },
};
