import { kindsOf, singular } from '../../lexicon/trade-nouns.ts';
import type { Attribute } from '../../notes.ts';
import { sentenceSubject } from '../anchor.ts';
import { MEASURE_ATTRIBUTE } from '../attributes.ts';
import { inMillimetres, isNoThing, usualSize } from '../fitness.ts';
import { behind, phraseFrom, tagAt, wordAt } from '../parse.ts';
import type { Frame, Site } from '../site.ts';

const OVER =
  /\b(no|nothing|anything|not one|never)\b((?: (?!(?:more|less|can|may|must|should|will|be|run|runs) )\w+){0,3}?)((?: (?:through|in|on|into) (?:\w+ ){0,3}\w+)?)(?: (?:'s|is|are|to|can|may|must|should|shall|'ll|will|be|carry|take|hold|weigh|go|goes|stand|run|runs|ever))* (?:over|wider|taller|longer|heavier|bigger|deeper|thicker|higher|larger|above|more)(?: than)?$/;
const MODAL = /^(?:can|may|will|'ll|should|must|to|is|be|allowed|ever)$/;
/** Where a bound holds, without a word of passing: "next to the road", "on that side". */
const WHERE = /^(?:near|next|beside|alongside|against|by|on|in|under|above|within|behind|at|to)$/;
/** Places that hold no things: "nothing over 40 on the drawing". */
const NO_PLACE =
  /^(?:drawing|drawings|plan|plans|list|paper|sheet|book|chart|tape|scale|moment|time|day|way)$/;
const PASSES =
  /^(?:comes?|go|goes|going|fits?|gets?|sits?|hangs?|mounted|stowed|bolted|fixed|passes|passing|coming|stood|stands|up|in|through|on|into|under|past|between|beneath|onto|over|out|down)$/;

/** What a thing does to meet the bound, and where: "comes in through the side hatch", "goes through that door". */
function passage(site: Site, first: number): string {
  const { parse } = site;
  let start = first;
  while (MODAL.test(wordAt(parse, start))) start++;
  let k = start;
  while (PASSES.test(wordAt(parse, k))) k++;
  if (k === start) {
    if (start !== first || !WHERE.test(wordAt(parse, k))) return '';
    while (WHERE.test(wordAt(parse, k))) k++;
    const spot = phraseFrom(parse, k);
    if (!spot || spot.pronoun || spot.name.length === 0) return '';
  }
  const way = phraseFrom(parse, k);
  if (way && NO_PLACE.test(way.name.at(-1) ?? '')) return '';
  const place = way?.pronoun ?? way?.name.join(' ') ?? '';
  const words = Array.from({ length: k - start }, (_, at) => wordAt(parse, start + at));
  return [...words, place || (/^(?:here|there)$/.test(wordAt(parse, k)) ? wordAt(parse, k) : '')]
    .join(' ')
    .trim();
}

/** The thing that "it" means: the one this sentence began with, else what was spoken of before. */
const said = (site: Site) => {
  const { parse, at, discourse } = site;
  const start = parse.sentenceStart[parse.sentenceOf[at] as number] as number;
  const subject = sentenceSubject(site);
  const named = subject && !subject.pronoun && subject.last < at ? discourse.meaningOf(subject) : undefined;
  return (named ?? discourse.antecedent(start, { dimension: 'length' }))?.join(' ') ?? 'it';
};

/** What may pass is measured as the way itself was: a hatch said to be 710 wide takes nothing over 690 wide. */
function measureOfWay(site: Site, where: string): Attribute | undefined {
  if (/\b(?:under|beneath)\b/.test(where)) return 'height';
  const way = where.replace(/^.*\b(?:through|into|in|between|past|down|up)\b ?(?:the |a |an )?/, '');
  if (way === '' || !kindsOf(way.split(' ')).has('opening')) return undefined;
  const limit = inMillimetres(site.quantity.value, site.quantity.unit);
  const near = site.discourse.known
    .lengthsOf(way)
    .map((length) => ({ ...length, off: Math.abs(Math.log(length.millimetres / limit)) }))
    .sort((a, b) => a.off - b.off)[0];
  // A way far bigger than the bound was measured the other way round.
  return near && near.off < NEAR_WAY ? near.attribute : 'width';
}
const NEAR_WAY = 0.25;

/** A bound on whatever meets it, not on a thing of its own. Known gap: "if it's over 740 it stays outside". */
export const limitOnAnything: Frame = {
  name: 'nothing over <quantity>',
  examples: [
    ['so nothing wider than [740] comes in', 'anything comes in'],
    ['nothing over [690] wide goes through the hatch', 'anything goes through hatch'],
    ['he says no machine over [400 kg]', 'any machine'],
    ["I don't want anything over [82 in] going through the door", 'anything going through door'],
    ['nothing over [800] comes through that door', 'anything comes through door'],
    ['nothing wider than [780] goes through the side hatch', 'anything goes through side hatch'],
    ['nothing over [100 kg] can go on that side', 'anything go on side'],
    ['the council says nothing over [1 m] next to the road', 'anything next to road'],
    ['she wants nothing taller than [2 m] near the boundary', 'anything near boundary'],
    [
      'The side gate is 940 wide, so nothing over [900] comes in through it',
      'anything comes in through side gate',
    ],
  ],
  leaves: [
    'nothing over [40] on the drawing',
    'no more than [8 in] from the box',
    'the bench is no wider than [600]',
  ],
  read: (site) => {
    const { parse, at } = site;
    const match = OVER.exec(behind(parse, at, 12));
    if (!match) return undefined;
    const any = match[1] === 'nothing' || match[1] === 'anything';
    const noun = any ? '' : (match[2] ?? '').trim();
    if (!any && (noun === '' || isNoThing(kindsOf(noun.split(' '))))) return undefined;
    const tail = passage(site, tagAt(parse, at + 1) === 'dimension' ? at + 2 : at + 1);
    const place = (match[3] ?? '').trim().replace(/\b(?:any of )?(?:them|those|these)\b/, () => said(site));
    const where = (place || tail).replace(/\b(?:it|that)\b/, () => said(site));
    // "anything over 85 degrees and it skins": no place and no passing, so the talk is of one thing.
    if (any && where === '') return undefined;
    const name = `${noun ? `any ${noun}` : 'anything'} ${where}`
      .replace(/\b(?:the|a|an) /g, '')
      .trim()
      .split(/\s+/);
    const head = singular(noun.split(' ').at(-1) ?? '');
    const length = inMillimetres(site.quantity.value, site.quantity.unit);
    const usual = noun
      ? (MEASURE_ATTRIBUTE[head] ?? usualSize([head], head, kindsOf([head]), length))
      : measureOfWay(site, where);
    return {
      name,
      binds: name.join(' '),
      ...(usual && site.dimension === 'length' && !site.said ? { attribute: usual } : {}),
    };
  },
};

const NOT_MORE =
  /\b(?:no|not|never|won't|don't|can't|cannot|mustn't|nobody|wouldn't|doesn't)\b(?: \w+){0,3} (?:have|allow|take|want|put|carry|stand|hang|load|bear|see)(?: \w+){0,2} (?:more than|over|above)$/;

/** "she won't have more than 300 kilos in any one spot": what a place may carry. */
export const limitOfLoad: Frame = {
  name: "won't have more than <quantity> in <place>",
  examples: [["she won't have more than [300 kg] in any one spot", 'load in spot']],
  leaves: ["the tank doesn't hold more than [40 L]"],
  read: (site) => {
    const { parse, at } = site;
    if (site.dimension !== 'mass' || !NOT_MORE.test(behind(parse, at, 9))) return undefined;
    let k = at + 1;
    while (/^(?:\w+ed|stood|sat|put|hung|standing|sitting)$/.test(wordAt(parse, k))) k++;
    if (!/^(?:in|on|at|off|over|under|from)$/.test(wordAt(parse, k))) return undefined;
    const place = phraseFrom(parse, k + 1);
    if (!place || place.name.length === 0) return undefined;
    const name = ['load', wordAt(parse, k), ...place.name];
    return { name, binds: name.join(' ') };
  },
};

const EVERYTHING =
  /(?:^| )(?:everything|all of (?:it|this)|it all|the (?:whole )?lot)(?: (?!and|but|so|which|that 's)\w+){0,3}? (?:has to|have to|'s got to|has got to|got to|needs to|must|should|can only|mustn't|can't|cannot|is to) (?:all )?(?:stay|be|keep|come in|come|weigh|total|go|be kept|not go)(?: (?:in|at|to))?(?: (?:under|below|over|above|within|less than|more than|no more than|not more than|at most|up to))?$/;

/** "All of it has to stay under 400 kilos": a bound on the sum, and on no thing that was named before. */
export const limitOnEverything: Frame = {
  name: 'everything has to stay under <quantity>',
  examples: [
    ['the sealer is on, and everything on board has to stay under [350 kg]', 'everything'],
    ['all of it has to stay under [400 kg]', 'everything'],
    ['The stove is in. The whole lot must weigh less than [900 kg]', 'everything'],
  ],
  leaves: [
    'everything behind the stove is [40 mm] thick',
    'the lot came on one lorry, and the beam is [90 kg]',
  ],
  read: ({ parse, at, dimension }) =>
    dimension === 'mass' && EVERYTHING.test(behind(parse, at, 14))
      ? { name: ['everything'], binds: 'everything', isSettled: true }
      : undefined,
};
