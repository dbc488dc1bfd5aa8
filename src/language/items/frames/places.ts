import { anchorOf } from '../anchor.ts';
import type { Name } from '../discourse.ts';
import {
  ahead,
  behind,
  type Parse,
  phraseAt,
  phraseFrom,
  phrasesOfSentence,
  tagAt,
  wordAt,
} from '../parse.ts';
import type { Frame, Site } from '../site.ts';
import { claim } from './claim.ts';

const WHEN =
  /^(?:this morning|last night|tonight|today|overnight|outside|right now|by noon|by lunch|by dinner|at dawn|at dusk|at noon|at midnight|first thing|all night|all day|in the shade|this evening|this afternoon|now)\b/;

/** "it was six in here": the weather of a place. Known gap: "we got up to 31 on the foredeck". */
export const placeTemperature: Frame = {
  name: 'it was <quantity> in here',
  examples: [
    ['it was [6 degC] in here this morning', 'inside'],
    ['my workshop leaks, and it was [6 degC] in here', 'in the workshop'],
    ["it's [51 degF] right now under this tarp", 'under tarp'],
    ['it was [14 degC] outside and damp', 'outside'],
    ['it hit [64 degF] in the shed', 'in shed'],
    ['in the wheelhouse it was [31 degC] at noon', 'in wheelhouse'],
  ],
  leaves: ['the primer wants [8 degC]', "it won't cure below [10 degC]"],
  read: (site) => {
    if (site.dimension !== 'temperature') return undefined;
    const { parse, at } = site;
    const anchor = anchorOf(site);
    const first = anchor.subject ?? anchor.direct;
    if (
      first?.pronoun !== 'it' &&
      first !== undefined &&
      !/^(?:air|temperature|workshop|shed|room|outside|inside)$/.test(first.head)
    )
      return undefined;
    let k = at + 1;
    while (isAside(parse, k)) k++;
    const after = ahead(parse, k, 4);
    if (/^(?:out (?:here|there)|outside|outdoors)\b/.test(after)) return claim(['outside']);
    if (/^(?:in|up|down) (?:here|there)\b|^(?:inside|indoors)(?! (?:the|a|this|my|our|that)\b)/.test(after))
      return claim(workplace(site));
    const named = /^(?:under|in|inside|on) (?:the|this|my|our)\b/.test(after)
      ? phraseFrom(parse, k + 1)
      : undefined;
    if (named && named.name.length > 0) return claim([wordAt(parse, k), ...named.name]);
    // "in the loft it was 31": the place stands in front.
    const front = first?.pronoun === 'it' ? phraseAt(parse, first.first - 1) : undefined;
    const into = front ? wordAt(parse, front.first - 1) : '';
    if (front && front.name.length > 0 && /^(?:in|under|inside|on)$/.test(into) && hasPast(parse, at))
      return claim([into, ...front.name]);
    // "it got up to 31", said of no coating: weather too.
    if (first?.pronoun === 'it' && GOT.test(behind(parse, at, 4)) && !ownedByCoating(site))
      return claim(workplace(site));
    const when = ahead(parse, at + 1, 3);
    if (first?.pronoun === 'it' && WHEN.test(when) && hasPast(parse, at))
      return claim(/^outside/.test(when) ? ['outside'] : workplace(site));
    return undefined;
  },
};

/** Air that a day may have, in degrees Celsius. */
const AIR = { least: -40, most: 45 };

/** "It's minus four and the lime won't go off": an "it" before anything was named means the air. */
export const openAir: Frame = {
  name: "it's <temperature> and",
  examples: [
    ["It's [-4 degC] and the lime is in the shed", 'outside'],
    ["It's [31 degC], so the resin stays in the tin", 'inside'],
  ],
  leaves: ["The lime's mixed. It's [14 degC] and the bucket is full", "It's [80 degC] and the pan is hot"],
  read: (site) => {
    const { parse, at, dimension, quantity } = site;
    if (dimension !== 'temperature') return undefined;
    const first = anchorOf(site).subject;
    if (first?.pronoun !== 'it' || first.index !== 0) return undefined;
    const celsius = quantity.unit === 'degF' ? ((quantity.value - 32) * 5) / 9 : quantity.value;
    if (celsius < AIR.least || celsius > AIR.most) return undefined;
    if (tagAt(parse, at + 1) !== 'comma' && !/^(?:and|but|so)$/.test(wordAt(parse, at + 1))) return undefined;
    return claim(celsius <= 0 ? ['outside'] : workplace(site), { isSettled: true });
  },
};

/** "It was 14 degrees right now in here": words before the place that are none of it. */
const isAside = (parse: Parse, at: number): boolean =>
  !/^(?:outside|inside|outdoors|indoors)$/.test(wordAt(parse, at)) &&
  (tagAt(parse, at) === 'adverb' || /^(?:right|degrees|celsius|fahrenheit)$/.test(wordAt(parse, at)));

/** "it was seven this morning": weather, where "it wants 8 degrees" would be of a thing. */
function hasPast(parse: Parse, at: number): boolean {
  for (let k = at - 1; k > at - 5 && k >= 0; k--)
    if (/^(?:was|got|hit|is|'s|dropped|went)$/.test(wordAt(parse, k))) return true;
  return false;
}

const WORKPLACES: ReadonlySet<string> = new Set(
  'workshop shop shed garage barn boatyard studio hangar yard tent container greenhouse cabin bus van boat house'.split(
    ' ',
  ),
);

const GOT =
  /\b(?:it (?:was|hit|got|reached|dropped|went|gets|got up|went up|came up|got down)|it 's (?:been|only))(?: \w+){0,3}$/;

/** True when glue or paint is spoken of in the sentence: its own heat may be meant. */
function ownedByCoating(site: Site): boolean {
  const { parse, at } = site;
  return phrasesOfSentence(parse, at).some(
    (phrase) =>
      phrase.first < at &&
      (phrase.kinds.has('coating') || phrase.kinds.has('liquid') || phrase.kinds.has('appliance')),
  );
}

/** The place of work by the name it goes by in the talk so far, else plain "inside". */
function workplace(site: Site): Name {
  const place = site.discourse.placeAmong(WORKPLACES);
  return place ? ['in', 'the', place] : ['inside'];
}
