/** Adds to a name what its figure tells: square millimetres are of a cable, newton metres of a bolt. */
import { kindsOf } from '../lexicon/trade-nouns.ts';
import { wordTable } from '../word-table.ts';
import type { Name } from './discourse.ts';
import { areFellows, joinNames } from './naming.ts';
import { ahead, behind, lastPhraseBefore, tagAt, wordAt } from './parse.ts';
import type { Site } from './site.ts';

const BOLTED = wordTable<string>({
  bolted: 'bolts',
  bolts: 'bolts',
  bolt: 'bolts',
  screwed: 'screws',
  nuts: 'nuts',
  nutted: 'nuts',
  clamped: 'clamps',
  bolting: 'bolts',
});

/** The words of the sentence up to the figure. */
function* sentenceWords(site: Site): Generator<string> {
  const { parse, at } = site;
  const sentence = parse.sentenceOf[at];
  for (let k = at - 1; k >= 0 && parse.sentenceOf[k] === sentence; k--) yield wordAt(parse, k);
}

function withFastener(site: Site, name: Name): Name {
  const kinds = kindsOf(name);
  if (kinds.has('fastener')) {
    // "the frame's bolted up, M10s": whose bolts is told by what is bolted.
    const owner = /^m\d+s?$/.test(name.at(-1) ?? '') ? ownerOfThread(site) : undefined;
    return owner ? joinNames(owner, ['bolts']) : name;
  }
  for (const word of sentenceWords(site)) {
    const fastener = BOLTED[word];
    if (fastener) return joinNames(name, [fastener]);
  }
  return name;
}

function ownerOfThread(site: Site): Name | undefined {
  const { parse, at, discourse } = site;
  const sentence = parse.sentenceOf[at];
  for (let index = lastPhraseBefore(parse, at); index >= 0; index--) {
    const phrase = parse.phrases[index];
    if (!phrase || phrase.first >= at) continue;
    if (parse.sentenceOf[phrase.first] !== sentence) return undefined;
    const role = discourse.roleOf(phrase);
    if ((role !== 'subject' && role !== 'fronted') || /^m\d/.test(phrase.head)) continue;
    const name = discourse.nameOf(phrase, { dimension: 'mass' });
    if (name && !kindsOf(name).has('fastener')) return name;
  }
  return undefined;
}

const DAMP = /^(?:moisture|damp|dampness|dry|dries|dried|drying|wet|humidity|meter|soaking|seasoned)$/;

function withMoisture(site: Site, name: Name): Name {
  if (site.quantity.unit !== '%' || name.includes('moisture') || name.includes('humidity')) return name;
  const kinds = kindsOf(name);
  const takesDamp = ['joist', 'timber', 'sheet', 'material', 'assembly', 'part', 'space'] as const;
  if (!takesDamp.some((kind) => kinds.has(kind))) return name;
  const already = [...name, 'moisture'].join(' ');
  if (site.discourse.known.has(already)) return [...name, 'moisture'];
  for (let k = site.at - 30; k < site.at + 30; k++)
    if (DAMP.test(wordAt(site.parse, k)) && tagAt(site.parse, k) !== 'stop') return [...name, 'moisture'];
  return name;
}

/** "the membrane's lapped 115": the lap is what is 115. */
function withLap(site: Site, name: Name): Name {
  return /\b(?:lapp(?:ed|ing|s)|laps|overlaps|overlapped|overlapping)(?: \w+){0,2}$/.test(
    behind(site.parse, site.at, 4),
  ) && !name.includes('lap')
    ? joinNames(name, ['lap'])
    : name;
}

const SIDE =
  /\b(?:on|to|along|down|at) the (tall|low|high|short|long|port|starboard|left|right|east|west|north|south|front|back|near|off|left-hand|right-hand|driver|passenger|outside|inside|upper|lower) (?:hand )?(?:side|end|wall)\b/;

/** "on the starboard side it's 44": the side of the clause belongs to the name. */
function withSide(site: Site, name: Name): Name {
  const { parse, at } = site;
  let from = at;
  while (
    from > 0 &&
    from > at - 14 &&
    !/^(?:comma|stop|conjunction|quantity)$/.test(tagAt(parse, from - 1) ?? '')
  )
    from--;
  const clause = `${behind(parse, at, at - from)} # ${ahead(parse, at + 1, 6).split(/[,#]/)[0]}`;
  const side = SIDE.exec(clause)?.[1];
  if (!side || name.includes(side) || name.some((word) => areFellows(word, side))) return name;
  return kindsOf(name).has('space') || name.includes('wall') ? name : [side, ...name];
}

/** "Joists at 400 centres, spanning 3.6": only the spacing is of the centres, the span is the joists'. */
const withoutCentres = ({ parse, at }: Site, name: Name): Name =>
  name.length > 1 && /^cent(?:res|ers)$/.test(name.at(-1) ?? '') && !/^cent/.test(wordAt(parse, at + 1))
    ? name.slice(0, -1)
    : name;

/** The whole name of a figure's thing. Known gap: a fall in mm2 of a duct is no cable. */
export function completedName(site: Site, name: Name): Name {
  if (site.dimension === 'torque') return withFastener(site, name);
  if (site.quantity.unit === 'mm2' && !kindsOf(name).has('cable') && !kindsOf(name).has('opening'))
    return joinNames(name, ['cable']);
  if (site.dimension === 'length') return withSide(site, withLap(site, withoutCentres(site, name)));
  if (site.dimension === 'count') return withoutCentres(site, name);
  return withMoisture(site, name);
}
