/**
 * Reads what has to swing clear of something: "the hatch has to clear the floor when it swings down", "the lid has to
 * open to ninety degrees without hitting the ceiling". Where its pivot is, only what was said tells; the rest is asked for.
 */
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
  isThing,
  nameOf,
  thingBefore,
  wordOfFigure,
  written,
} from './spoken-check.ts';

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
  'lid door hatch flap bed table leaf seat panel ramp tailgate drawer box motor engine window ladder bunk cover gate top',
);
const HINGED =
  / (?:hinged|hinges|pivots?|pivoted) (?:at|on|along|from|by) (?:the |its |it 's )?(?:back|rear|top|bottom|lower|upper|front|one|inside|outside|port|starboard|left|right|far|near) ?(?:edge|side|end|corner)? /;
const LEVEL =
  / (?:from (?:flat|level|shut|closed|horizontal)|lies flat|lying flat|when (?:it 's )?(?:shut|closed|flat)) /;
/** So many sentences on either side may tell of its sizes and its pivot. */
const NEAR = 2;

/** What one sentence wants to swing clear. */
export function swingIn(scene: CheckScene, line: Line): readonly CheckNote[] {
  if (line.asks || / (?:if|unless|whether|had) (?!it |they )/.test(line.words)) return [];
  const found = KEEPS_CLEAR.map((way) => way.exec(line.words)).find((one) => one !== null);
  if (!found) return [];
  const swung = swungThing(scene, line, found.index);
  const kept = swung && keptClearOf(scene, line, swung);
  if (!swung || !kept) return [];
  const name = nameOf(swung);
  const near = scene.lines.slice(Math.max(0, line.index - NEAR), line.index + NEAR + 1);
  // Nought is an angle too.
  const angles = near
    .flatMap((one) => figuresIn(scene, one))
    .filter(({ dimension }) => dimension === 'angle');
  const [from, to] = anglesOf(near, angles);
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

const isSwung = (phrase: Phrase): boolean =>
  phrase.pronoun === undefined && (isThing(phrase) || SWUNG.has(singular(phrase.head)));

function swungThing(scene: CheckScene, line: Line, offset: number): Phrase | undefined {
  const at =
    line.first +
    line.words
      .slice(0, offset + 1)
      .trim()
      .split(' ')
      .filter(Boolean).length;
  const thing = thingBefore(scene, line, at, (phrase) => isSwung(phrase) && phrase.name.length > 0);
  return thing && SWUNG.has(singular(thing.head)) ? thing : undefined;
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
  const after = (figure: FigureNote) => scene.text.slice(figure.span.end, figure.span.end + 24);
  const isPivot = (figure: FigureNote) =>
    /\b(?:pivot|hinge|axle|trunnion|pin)\b/i.test(
      `${figure.item} ${scene.text.slice(Math.max(0, figure.span.start - 40), figure.span.start)}`,
    );
  const back = told.find(
    (one) =>
      isPivot(one) &&
      /^\s*(?:ahead of|forward of|from|off|in from) (?:the |its )?(?:back|rear|end)/i.test(after(one)),
  );
  const bottom = told.find(
    (one) =>
      isPivot(one) &&
      one !== back &&
      /^\s*(?:up|above|off|from) ?(?:from )?(?:the |its )?(?:bottom|base|underside|$|[.,;])/i.test(
        after(one),
      ),
  );
  return [
    ...(back ? [input('pivot from back', written(back))] : []),
    ...(bottom ? [input('pivot from bottom', written(bottom))] : []),
  ];
}

/** Where the swing begins and ends, as far as it was said. */
function anglesOf(
  near: readonly Line[],
  angles: readonly FigureNote[],
): readonly [from: string | undefined, to: string | undefined] {
  const [first, second] = angles;
  if (first && second) return [written(first), written(second)];
  const isLevel = near.some(({ words }) => LEVEL.test(words));
  const ends =
    first?.bound === 'between' && first.high !== undefined ? `${first.high} ${first.unit}` : undefined;
  if (first && ends !== undefined) return [written(first), ends];
  return [isLevel ? '0 deg' : undefined, first && written(first)];
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
      return (
        /\b(?:pivot|hinge)s?\b/i.test(around) &&
        new RegExp(
          `\\b(?:above|below|over|under|from|to|off)\\b[^.;]*\\b${of.split(' ').at(-1)}\\b`,
          'i',
        ).test(around) &&
        wordOfFigure(scene, figure) >= 0
      );
    });
  if (told) return input(side, written(told), of);
  return input(side, `${name} hinge to ${of} clearance`);
}
