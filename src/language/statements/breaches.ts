/** Figures that break a limit said before, where the talk around them owns up to it: "And what did the man say?" */
import { REACH } from '../items/sizes.ts';
import type { FigureNote, KnownLimit, ReadContext } from '../notes.ts';
import { wordTable } from '../word-table.ts';
import { type Draft, firstWord, type Scene } from './draft.ts';
import type { Said } from './words.ts';

/** One of each unit in millimetres, kilograms and so on: enough to hold a figure against a limit. */
const PLAIN = wordTable<number>({
  mm: 1,
  cm: 10,
  m: 1000,
  in: 25.4,
  ft: 304.8,
  yd: 914.4,
  thou: 0.0254,
  g: 0.001,
  kg: 1,
  t: 1000,
  lb: 0.45359237,
  mA: 0.001,
  A: 1,
  W: 1,
  kW: 1000,
  VA: 1,
  kVA: 1000,
  m2: 1,
  ft2: 0.09290304,
  L: 1,
  gal: 3.785411784,
  Pa: 0.001,
  kPa: 1,
  bar: 100,
  psi: 6.894757293,
  rpm: 1,
  kn: 1,
  deg: 1,
});
/** Of these a memo says many that pass some limit or other, and nobody minds. */
const READINGS: ReadonlySet<string> = new Set(['temperature', 'ratio', 'count', 'money', 'time']);
/** A figure this much past a limit is held against it; one further off is of another thing. */
const NEAR = { over: 1.3, under: 0.7 };

/** Talk that points back at a rule: "you know what the number is", "look at the plate", "they told me". */
const ALLUDES =
  / (?:say|says|said|told|tell|know|knows|remember|remembers|recall|mentioned|promised|swore|asked|wanted|regards|shakes|shook|law|plate|rule|rules|limit|book|papers|label|regs|code|inspector|council|county|allowed|allows|allow|sign|permit|rating|rated|stood|stands)\//;
/** Talk that takes it as bad. */
const REGRETS =
  / (?:over|only|too|nope|scrape|scrapes|cook|sink|tip|bother|damn|blast|lap|trouble|marvellous|brilliant|great|typical|whoops|oops|ouch|yikes|hmm|sorry|short|shy|problem)\//;
/** Talk that takes it as good. */
const CONTENT =
  / (?:fine|well|proud|clears|plenty|like|lovely|perfect|happy|good|ok|okay|just|still|easy|easily|love|beauty|drawn)\//;
/** What the speaker draws from it. */
const FOLLOWS = /^(?:so|which|that means)\b/;

/** How the item of a limit on all that passes begins. */
const OF_ANYTHING = /^(?:anything|nothing|everything|any|all)\b/i;

/**
 * Problems that only arithmetic shows. Each quotes the clause of a figure that passes a limit of the project or of
 * this memo, where the words beside it point back at a rule, regret it, or draw the consequence. Clauses that `told`
 * speak of a problem are left to the rules that read them.
 */
export function readBreaches(
  scene: Scene,
  figures: readonly FigureNote[],
  { knownLimits: limits = [], knownFigures: known = [] }: Pick<ReadContext, 'knownLimits' | 'knownFigures'>,
  told: readonly Draft[],
): readonly Draft[] {
  const here = figures.filter((figure) => isSided(figure.bound)) as readonly (FigureNote & KnownLimit)[];
  if (limits.length + here.length === 0) return [];
  const taken = new Set(told.flatMap((draft) => clausesOf(draft)));
  const found: Draft[] = [];
  for (const figure of figures) {
    if (isSided(figure.bound) || figure.bound === 'between' || figure.limit || READINGS.has(figure.dimension))
      continue;
    // Said before and said again: it was no news then.
    if (known.some(({ value, unit }) => value === figure.value && unit === figure.unit)) continue;
    const clause = clauseAt(scene, figure.span.start);
    if (!clause || scene.unreal.has(clause.index)) continue;
    if ([clause.index, clause.index + 1, clause.index - 1].some((index) => taken.has(index))) continue;
    const broken = [...limits, ...here.filter(({ span }) => span.start < figure.span.start)].filter((limit) =>
      breaks(figure, limit),
    );
    if (!broken.some((limit) => isOwnedUp(scene, clause, figure, limit))) continue;
    taken.add(clause.index);
    found.push({
      kind: 'problem',
      rule: '<figure> breaks what was said',
      from: clause.index,
      to: clause.index,
      start: clause.words[firstWord(clause)]?.start ?? clause.start,
      end: clause.end,
    });
  }
  return found;
}

const isSided = (bound: string) => bound === 'at-least' || bound === 'at-most';

function clausesOf(draft: Draft): readonly number[] {
  return Array.from({ length: draft.to - draft.from + 1 }, (_, k) => draft.from + k);
}

function clauseAt(scene: Scene, offset: number): Said | undefined {
  let low = 0;
  let high = scene.said.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((scene.said[middle] as Said).end <= offset) low = middle + 1;
    else high = middle;
  }
  const clause = scene.said[low];
  return clause && clause.start <= offset ? clause : undefined;
}

/** Whether a figure is so little past a limit that it can hardly be of another thing. */
function isClose(figure: FigureNote, limit: KnownLimit): boolean {
  const share = shareOf(figure, limit);
  return share !== undefined && share > 0.9 && share < 1.1;
}

/** How much of a limit a figure is; undefined for units that do not compare. */
function shareOf(figure: FigureNote, limit: KnownLimit): number | undefined {
  const one = PLAIN[figure.unit];
  const other = PLAIN[limit.unit];
  return one === undefined || other === undefined || limit.value === 0
    ? undefined
    : (figure.value * one) / (limit.value * other);
}

function breaks(figure: FigureNote, limit: KnownLimit): boolean {
  if (limit.dimension !== figure.dimension || limit === (figure as unknown)) return false;
  const share = shareOf(figure, limit);
  if (share === undefined) return false;
  return limit.bound === 'at-most' ? share > 1.002 && share < NEAR.over : share < 0.998 && share > NEAR.under;
}

/** How the talk around a figure ties it to the limit: the nearer the names, the less has to be said. */
function isOwnedUp(scene: Scene, clause: Said, figure: FigureNote, limit: KnownLimit): boolean {
  const same = limit.attribute === figure.attribute;
  // A limit on all that passes is of no one thing: the door itself shares its name and is not bound by it.
  const kin = !OF_ANYTHING.test(limit.item) && shared(limit.item, figure.item);
  if (!same && !(REACH.has(limit.attribute) && REACH.has(figure.attribute))) return false;
  const after = restOf(scene, clause);
  if (CONTENT.test(clause.code) || after.some((next) => CONTENT.test(next.code))) return false;
  const alludes = after.some((next) => ALLUDES.test(next.code)) || alludesAfter(clause, figure);
  if (!same && !kin && !alludes && !isClose(figure, limit)) return false;
  const regrets = after.some((next) => REGRETS.test(next.code)) || REGRETS.test(clause.code);
  const gasps = after.some((next) => next.sentence > clause.sentence && isGasp(scene, next));
  // Something follows from many a figure: alone that tells only of the limit's own size or thing.
  const draws = (same || kin) && after.some((next) => FOLLOWS.test(next.opener));
  return alludes || regrets || draws || gasps;
}

const alludesAfter = (clause: Said, figure: FigureNote) =>
  ALLUDES.test(
    clause.words
      .filter((word) => word.start >= figure.span.end)
      .map((word) => ` ${word.lower}/`)
      .join(''),
  );

/** The clauses after, to the end of the sentence and, where that is near, the first of the next. */
function restOf(scene: Scene, clause: Said): readonly Said[] {
  const after: Said[] = [];
  for (let step = 1; step <= 4; step++) {
    const next = scene.said[clause.index + step];
    if (!next || next.sentence > clause.sentence + 1) break;
    if (next.sentence > clause.sentence && next.words.length > 14) break;
    after.push(next);
    if (next.sentence > clause.sentence) break;
  }
  return after;
}

/** "Ach.", "Madonna!": a sentence of a word or two that is nothing but a reaction. */
const isGasp = (scene: Scene, next: Said) =>
  next.words.length <= 2 &&
  scene.said[next.index + 1]?.sentence !== next.sentence &&
  !next.words.some(({ classes }) => /[SHMVQUD]/.test(classes));

const PLAIN_WORD =
  /^(?:the|a|an|of|my|our|its|for|in|on|at|with|from|to|any|every|all|new|old|whole|thing|anything|nothing)$/;
function shared(a: string, b: string): boolean {
  const words = new Set(a.toLowerCase().split(/[^a-z]+/));
  return b
    .toLowerCase()
    .split(/[^a-z]+/)
    .some((word) => word.length > 2 && !PLAIN_WORD.test(word) && words.has(word));
}
