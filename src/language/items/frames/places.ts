import { anchorOf } from '../anchor.ts';
import type { Name } from '../discourse.ts';
import { ahead, type Parse, phraseFrom, tagAt, wordAt } from '../parse.ts';
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
    ['it hit [64 degF] in the shed', 'in shed'],
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
      !/^(?:air|temperature|workshop|shed|room)$/.test(first.head)
    )
      return undefined;
    let k = at + 1;
    while (tagAt(parse, k) === 'adverb' || /^(?:right|degrees)$/.test(wordAt(parse, k))) k++;
    const after = ahead(parse, k, 4);
    if (/^(?:in|out|up|down) (?:here|there)\b/.test(after)) return claim(workplace(site));
    const named = /^(?:under|in|inside|on) (?:the|this|my|our)\b/.test(after)
      ? phraseFrom(parse, k + 1)
      : undefined;
    if (named && named.name.length > 0) return claim([wordAt(parse, k), ...named.name]);
    const when = ahead(parse, at + 1, 3);
    if (first?.pronoun === 'it' && WHEN.test(when) && hasPast(parse, at))
      return claim(/^outside/.test(when) ? ['outside'] : workplace(site));
    return undefined;
  },
};

/** "it was seven this morning": weather, where "it wants 8 degrees" would be of a thing. */
function hasPast(parse: Parse, at: number): boolean {
  for (let k = at - 1; k > at - 5 && k >= 0; k--)
    if (/^(?:was|got|hit|is|'s|dropped|went)$/.test(wordAt(parse, k))) return true;
  return false;
}

const WORKPLACES: ReadonlySet<string> = new Set([
  'workshop',
  'shop',
  'shed',
  'garage',
  'barn',
  'boatyard',
  'studio',
]);

/** The place of work by the name it goes by in the talk so far, else plain "inside". */
function workplace(site: Site): Name {
  for (const phrase of site.parse.phrases) if (WORKPLACES.has(phrase.head)) return ['in', 'the', phrase.head];
  const known = site.discourse.known.wordIn(WORKPLACES);
  return known ? ['in', 'the', known] : ['inside'];
}
