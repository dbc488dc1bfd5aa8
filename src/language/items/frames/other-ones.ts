/** Fellows of the thing that was measured last: "the other one", "the one by the stern". */
import { singular } from '../../lexicon/trade-nouns.ts';
import type { Attribute } from '../../notes.ts';
import { anchorOf, namePhrase } from '../anchor.ts';
import { inMillimetres, isNoThing } from '../fitness.ts';
import { nameOfOther } from '../naming.ts';
import type { Phrase } from '../noun-phrases.ts';
import { behind, isSpeaker, phraseFrom, wordAt } from '../parse.ts';
import type { Frame, Site } from '../site.ts';
import { claim } from './claim.ts';

/** The thing of the figure before, where that stands in the same sentence or in the one before it. */
function lastThing(site: Site): readonly string[] | undefined {
  const { parse, at, discourse } = site;
  const last = discourse.last;
  if (!last || last.word >= at || last.name[0] === 'unnamed') return undefined;
  return (parse.sentenceOf[at] as number) - last.sentence <= 1 ? last.name : undefined;
}

/** Sizes further apart than this, as a ratio, are of two kinds. */
const ALIKE = 3;

/** What is measured of a fellow where no word says so: the same as of the thing before it. */
function sameSize({ said, discourse, quantity, dimension }: Site): { readonly attribute?: Attribute } {
  const { last, known } = discourse;
  if (said || !last || dimension !== 'length') return {};
  const before = known.lengthsOf(last.name.join(' ')).find(({ attribute }) => attribute === last.attribute);
  const here = inMillimetres(quantity.value, quantity.unit);
  const isLike = before && Math.max(before.millimetres / here, here / before.millimetres) <= ALIKE;
  return isLike ? { attribute: last.attribute } : {};
}

const OTHER = /\bthe other(?: one)? (?:'s|is|was)(?: only| just| about| still)?$/;
/** "One side is 900, the other is 905": of one thing. */
const OF_ONE = /\b(?:one|this|that|each) (?:side|end|edge|corner|face|way|diagonal|hand|half)\b/;
const FAR = 24;

/** "The east window is 900 wide. The other one is 1200." */
export const otherOne: Frame = {
  name: 'the other one is <quantity>',
  examples: [
    ['The east window is [900] wide. The other one is [1200]', 'east window, west window'],
    ['The locker is [400] deep. The other one is [300]', 'locker, other locker'],
    ["The port rail is [1800] long and the other's [1790]", 'port rail, starboard rail'],
  ],
  leaves: [
    'The locker is [400] deep. The other shelf is [300]',
    'The shelf is [400] on one side and the other is [410]',
    'The other one is [300]',
  ],
  read: (site) => {
    if (!OTHER.test(behind(site.parse, site.at, 5))) return undefined;
    if (OF_ONE.test(behind(site.parse, site.at, FAR))) return undefined;
    const base = lastThing(site);
    return base && claim(nameOfOther(base), { isSettled: true, ...sameSize(site) });
  },
};

const BESIDE = /^(?:by|beside|near|opposite|next)$/;
const ABOUT = /^(?:over|above|under|below|behind)$/;

/** "The hatch by the mast is 500 wide. The one by the stern is 550." */
export const oneBeside: Frame = {
  name: 'the one by <place> is <quantity>',
  examples: [
    ['The hatch by the mast is [500] wide. The one by the stern is [550]', 'mast hatch, stern hatch'],
    ['The trough is [300] deep, the one by the gate is [250]', 'trough, gate trough'],
    ['The locker under the berth is [400] deep. The one over it is [300]', 'locker, locker over berth'],
  ],
  leaves: ['The hatch is [500] wide. The one I want is [550]', 'The one by the door is [900] high'],
  read: (site) => {
    const { parse } = site;
    const one = anchorOf(site).subject;
    const link = one ? wordAt(parse, one.last + 1) : '';
    const isOne = one?.pronoun === 'one' && one.name.length === 0;
    if (!one || !(isOne ? BESIDE.test(link) || ABOUT.test(link) : false)) return undefined;
    const place = phraseFrom(parse, one.last + (wordAt(parse, one.last + 2) === 'to' ? 3 : 2));
    const base = lastThing(site);
    if (!place || !base || place.first >= site.at || isSpeaker(place) || isNoThing(place.kinds))
      return undefined;
    const head = base.at(-1) as string;
    const at = place.pronoun === 'it' ? placeBefore(site, one, head) : namePhrase(site, place);
    if (!at || at.some((word) => singular(word) === singular(head))) return undefined;
    return claim(BESIDE.test(link) ? [...at, head] : [...base, link, ...at], {
      isSettled: true,
      ...sameSize(site),
    });
  },
};

/** Where the first of them stands: "it" of the one over it. */
function placeBefore({ parse }: Site, one: Phrase, head: string): readonly string[] | undefined {
  for (let index = one.index - 1; index > 0 && index > one.index - 8; index--) {
    const [place, thing] = [parse.phrases[index], parse.phrases[index - 1]];
    if (!place || !thing || place.pronoun || singular(thing.head) !== singular(head)) continue;
    const link = wordAt(parse, thing.last + 1);
    if (place.first === thing.last + 2 && (BESIDE.test(link) || ABOUT.test(link))) return place.name;
  }
  return undefined;
}
