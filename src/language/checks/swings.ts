/**
 * Reads what has to swing clear of something: "the hatch has to clear the floor when it swings down", "the lid has to
 * open to ninety degrees without hitting the ceiling". Where its pivot is, only what was said tells; the rest is asked for.
 */

import { patternText } from '../../pattern-text.ts';
import type { Phrase } from '../items/noun-phrases.ts';
import { figuresIn, type Line, phrasesOf } from '../kept/scene.ts';
import { singular } from '../lexicon/trade-nouns.ts';
import type { Attribute, CheckNote, FigureNote, SpokenInput } from '../notes.ts';
import { wordSet } from '../word-table.ts';
import { MUST } from './demands.ts';
import {
  attributesOf,
  type CheckScene,
  checkNote,
  figuresOf,
  input,
  nameOf,
  thingBefore,
  wordOfFigure,
  written,
} from './spoken-check.ts';
import { swingAngles } from './swing-angles.ts';

const TURNS =
  '(?:swings?|swinging|tilts?|tilting|tips?|tipping|folds?|folding|hinges?|hinging|turns?|turning|rotates?|rotating|pivots?|pivoting|opens?|opening|drops?|dropping|lifts?|lifting|flips?|flipping|swivels?|kicks?|kicking|raises?|raised|comes|goes)';
/** It turns, and has to keep clear of something. */
const KEEPS_CLEAR = [
  new RegExp(
    ` (?:${MUST}|needs|wants|so it can) (?:\\S+ ){0,3}?${TURNS} (?:\\S+ ){0,10}?(?:without (?:hitting|touching|catching|fouling|clipping|scraping)|and (?:still )?(?:clear|miss|stay clear of|keep clear of)|clear of|past|and not (?:hit|touch|catch|foul)) `,
  ),
  new RegExp(
    ` (?:${MUST}) (?:\\S+ ){0,2}?(?:clear|miss|keep clear of|stay clear of|not (?:hit|touch|catch|foul)) (?:\\S+ ){1,6}?(?:when|as|while|where|once|if) (?:\\S+ ){1,3}?${TURNS} `,
  ),
  new RegExp(
    ` (?:must|should) not (?:hit|touch|catch|foul|clip|scrape) (?:\\S+ ){1,6}?(?:when|as|while|once) (?:\\S+ ){1,3}?${TURNS} `,
  ),
  new RegExp(
    ` (?:can't|mustn't|shouldn't|don't|won't|cannot) (?:hit|touch|catch|foul|clip|scrape) (?:\\S+ ){1,6}?(?:when|as|while|once) (?:\\S+ ){1,3}?${TURNS} `,
  ),
  // "The motor tilts to 70 degrees and it mustn't hit the transom".
  new RegExp(
    ` ${TURNS} (?:\\S+ ){0,10}?(?:and|so|but) (?:it |that |they )?(?:(?:has|have|'s got|got|needs|need|wants|ought) to|must|should) (?:still |just )?(?:clear|miss|keep clear of|stay clear of) `,
  ),
  new RegExp(
    ` ${TURNS} (?:\\S+ ){0,10}?(?:and|so|but) (?:it |that |they )?(?:can't|cannot|mustn't|must not|shouldn't|should not|is not to) (?:hit|touch|catch|foul|clip|scrape) `,
  ),
];

/** What it may not touch, by the input of the check that is its distance. */
const SIDES: readonly (readonly [input: string, heads: ReadonlySet<string>])[] = [
  ['floor', wordSet('floor sole ground deck step kerb road bench worktop')],
  [
    'ceiling',
    wordSet('ceiling roof beam headlining headliner deckhead rafter joist shelf cupboard locker lintel'),
  ],
  [
    'wall ahead',
    wordSet('wall bulkhead transom partition door seat pillar post panel splashback window cooker'),
  ],
];
const SWUNG = wordSet(
  'lid door hatch flap bed table leaf seat panel ramp tailgate drawer box motor engine window ladder bunk cover gate top rudder leg',
);
/** The edge that it hangs on stands for its back: what is ahead is away from the hinge. */
const HINGED =
  / (?:hinged|hinges|pivots?|pivoted|hung) (?:at|on|along|from|by|to|off) (?:the |its |it 's |that )?(?:back|rear|top|bottom|lower|upper|front|one|inside|outside|inboard|outboard|port|starboard|left|right|far|near|wall|bulkhead|frame|bench|carcass|cabin|hull|transom) ?(?:edge|side|end|corner)? /;
const LEVEL =
  / (?:from (?:flat|level|shut|closed|horizontal)|lies flat|lying flat|when (?:it 's )?(?:shut|closed|flat)) /;
/** They lie level until they are opened. */
const LIES_LEVEL = wordSet('lid bed table leaf flap seat bunk cover top bonnet');
/** So many sentences on either side may tell of its sizes and its pivot. */
const NEAR = 3;

/** Every way names the turning. */
const TURNING_WORD = new RegExp(`^(?:${TURNS}|goes)$`);
export const namesTurning = (word: string): boolean => TURNING_WORD.test(word);

/** What one sentence wants to swing clear. */
export function swingIn(scene: CheckScene, line: Line): readonly CheckNote[] {
  if (line.asks || / (?:if|unless|whether|had) (?!it |they )/.test(line.words)) return [];
  const found = KEEPS_CLEAR.map((way) => way.exec(line.words)).find((one) => one !== null);
  if (!found) return [];
  const swung = swungThing(scene, line, found.index, found[0].length);
  const kept = swung && keptClearOf(scene, line, swung);
  if (!swung || !kept) return [];
  const name = nameOf(swung);
  const near = scene.lines.slice(Math.max(0, line.index - NEAR), line.index + NEAR + 1);
  const [from, to] = anglesOf(scene, line, near, swung);
  const inputs = [
    input('box length', `${name} ${longOf(scene, name)}`),
    input('box depth', `${name} ${attributesOf(scene, name).has('height') ? 'height' : 'thickness'}`),
    ...pivotOf(scene, near),
    ...(from === undefined ? [] : [input('from angle', from)]),
    ...(to === undefined ? [] : [input('to angle', to)]),
    distanceTo(scene, near, name, kept),
  ];
  return [checkNote(scene, line, { check: 'swing clearance', inputs })];
}

function swungThing(scene: CheckScene, line: Line, offset: number, length: number): Phrase | undefined {
  const wordsTo = (until: number) => line.words.slice(0, until).trim().split(' ').filter(Boolean).length;
  const isIt = (phrase: Phrase) =>
    phrase.pronoun === undefined && phrase.name.length > 0 && SWUNG.has(singular(phrase.head));
  // "I need the table to fold down": named within the demand.
  const within = phrasesOf(scene, line).find(
    (phrase) =>
      phrase.first >= line.first + wordsTo(offset + 1) &&
      phrase.first < line.first + wordsTo(offset + length) &&
      isIt(phrase),
  );
  const before = phrasesOf(scene, line).findLast(
    (phrase) => phrase.last < line.first + wordsTo(offset + 1) && isIt(phrase),
  );
  return (
    before ??
    (/ (?:it|that|they) /.test(line.words.slice(0, offset + 1)) ? undefined : within) ??
    thingBefore(scene, line, line.first, isIt)
  );
}

interface KeptClear {
  readonly input: string;
  readonly of: string;
}

function keptClearOf(scene: CheckScene, line: Line, swung: Phrase): KeptClear | undefined {
  for (const phrase of phrasesOf(scene, line)) {
    if (phrase === swung || phrase.first <= swung.last) continue;
    const side = SIDES.find(([, heads]) => heads.has(singular(phrase.head)));
    if (side) return { input: side[0], of: nameOf(phrase) };
  }
  return undefined;
}

function longOf(scene: CheckScene, name: string): Attribute {
  const sizes = attributesOf(scene, name);
  return (['length', 'depth', 'width'] as const).find((one) => sizes.has(one)) ?? 'length';
}

/** Where the pivot is: told from an end of the box, or that it is hinged at an edge. */
function pivotOf(scene: CheckScene, near: readonly Line[]): readonly SpokenInput[] {
  if (near.some(({ words }) => HINGED.test(words)))
    return [input('pivot from back', '0 mm'), input('pivot from bottom', '0 mm')];
  const told = near.flatMap((one) => figuresIn(scene, one)).filter((figure) => figure.dimension === 'length');
  // The figure with what stands behind it: its quote may hold "from the back" itself.
  const words = ({ span }: FigureNote) =>
    scene.text.slice(span.start, span.end + 28).split(/[,.;](?!\d)| and (?!a )/)[0] ?? '';
  const isPivot = ({ item, span }: FigureNote) =>
    /\b(?:pivot|hinge|axle|trunnion|pin)\b/i.test(
      `${item} ${scene.text.slice(Math.max(0, span.start - 40), span.start)}`,
    );
  const back = told.find((one) => isPivot(one) && FROM_BACK.test(words(one)));
  const bottom = told.find((one) => isPivot(one) && one !== back && FROM_BOTTOM.test(words(one)));
  return [
    ...(back ? [input('pivot from back', written(back))] : []),
    ...(bottom ? [input('pivot from bottom', written(bottom))] : []),
  ];
}

const FROM_BACK = /\b(?:ahead of|forward of|from|off) (?:the |its )?(?:back|rear|end|hinged? edge)\b/i;
const FROM_BOTTOM =
  /\b(?:up|above|off|from)(?: (?:from |off )?(?:the |its )?(?:bottom|base|underside)\b|\s*$)/i;

/** Where the swing begins and ends, as far as it was said: as angles, or in the words of the swing. */
function anglesOf(
  scene: CheckScene,
  line: Line,
  near: readonly Line[],
  swung: Phrase,
): readonly [from: string | undefined, to: string | undefined] {
  // Nought is an angle too.
  const [first, second] = near
    .flatMap((one) => figuresIn(scene, one))
    .filter(({ dimension }) => dimension === 'angle');
  const said = [line, ...near]
    .filter(({ words }) => words.split(' ').some(namesTurning))
    .map(({ start, end }) => swingAngles(scene.text.slice(start, end).replaceAll('’', "'")));
  const found =
    said.find(([from, to]) => from !== undefined && to !== undefined) ??
    said.find(([, to]) => to !== undefined);
  const begins = near.some(({ words }) => LEVEL.test(words)) || LIES_LEVEL.has(singular(swung.head));
  const level = begins ? '0 deg' : undefined;
  if (first && second) return [written(first), written(second)];
  if (first?.bound === 'between' && first.high !== undefined)
    return [written(first), `${first.high} ${first.unit}`];
  if (found?.[1] !== undefined)
    return [found[0] === undefined ? level : `${found[0]} deg`, `${found[1]} deg`];
  return [level, first && written(first)];
}

/** How far what it may not touch is from the pivot. Its own height is another figure, and so it goes by a name of its own. */
function distanceTo(
  scene: CheckScene,
  near: readonly Line[],
  name: string,
  { input: side, of }: KeptClear,
): SpokenInput {
  const told = near
    .flatMap((one) => figuresOf(scene, one, 'length'))
    .find((figure) => {
      const around = scene.text.slice(Math.max(0, figure.span.start - 50), figure.span.end + 40);
      return isFromPivot(around, of.split(' ').at(-1) ?? '') && wordOfFigure(scene, figure) >= 0;
    });
  if (told) return input(side, written(told), of);
  return input(side, `${name} hinge to ${of} clearance`);
}

const TOWARDS = '\\b(?:above|below|over|under|from|to|off|away from|beyond|ahead of|behind)\\b[^.;]*';
const PIVOT = '\\b(?:pivot|hinge|axle|trunnion)s?\\b';

/** "The hinge is 650 above the floor", "the shelf is 480 above the hinge". */
const isFromPivot = (words: string, head: string): boolean =>
  new RegExp(`${PIVOT}[^.;]*${TOWARDS}${whole(head)}|${whole(head)}[^.;]*${TOWARDS}${PIVOT}`, 'iu').test(
    words,
  );

/** A word by itself, whatever stands in it. */
const whole = (word: string): string => `(?<![\\p{L}\\p{N}])${patternText(word)}(?![\\p{L}\\p{N}])`;
