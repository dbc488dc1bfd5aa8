/**
 * Reads the gap that something has to keep beside it: "the fridge needs 25 mil clear either side", "five mil all round the
 * door". A gap that is there is only a figure.
 */
import type { Phrase } from '../items/noun-phrases.ts';
import { isSpeaker } from '../items/parse.ts';
import { clauseStart, figuresIn, type Line, phrasesOf } from '../kept/scene.ts';
import type { Attribute, CheckNote, FigureNote, SpokenInput } from '../notes.ts';
import { isBox, isPipe, isVoid, keepsClear } from './spaces.ts';
import {
  attributesOf,
  type CheckScene,
  checkNote,
  figuresOf,
  input,
  nameOf,
  thingBefore,
  wordOfFigure,
  wordsOf,
  written,
} from './spoken-check.ts';

const WANTED =
  / (?:needs?|wants?|must|has to|have to|has got to|'s got to|'ve got to|got to|should|ought to|leave|leaving|give|giving|allow|allowing|keep|keeping|at least|minimum|no less than|calls? for|asks? for|says) /;
/** Where the gap is wanted, by the words behind it. */
const SIDES: readonly (readonly [
  words: string,
  sides: readonly Attribute[],
  on: 'both sides' | 'one side',
])[] = [
  [
    '(?:either|each|both|every|all) (?:side|sides|end|ends)|a side|per side|side to side',
    ['width'],
    'both sides',
  ],
  [
    'all (?:the way )?(?:round|around)|right round|the whole way round|round it|around it',
    ['width', 'height'],
    'both sides',
  ],
  ['behind|at the back|at the rear|off the back', ['depth'], 'one side'],
  ['above|on top|over the top|at the top|over it', ['height'], 'one side'],
  [
    '(?:on )?(?:one|the (?:left|right|hinge|other|port|starboard|far|near)(?: hand)?) side',
    ['width'],
    'one side',
  ],
];
const STUFF =
  '(?:of )?(?:(?:clear|clearance|gap|air|airspace|air gap|space|room|play|free|slack|daylight|breathing|packing|expansion|fitting|working|finger|cooling|ventilation|gaps?) )*';
/** "50 clear of timber all round": what it is kept from. */
const KEPT_FROM = '(?:(?:of|from) (?:the |any |all )?[a-z]+ )?';
const BEHIND = SIDES.map(([words, sides, on]) => ({
  pattern: new RegExp(`^#? ?${STUFF}${KEPT_FROM}(?:on |at |to |down |up )?(?:${words}) `),
  sides,
  on,
}));
/** What the gap is kept from: "either side of the battery box", "all round the door". */
const OF = /^(?:#? ?[a-z ]*?(?:side|sides|end|ends|round|around|behind|above|back|top|rear)) (?:of )?$/;

/** Words of room: "six foot above the cap" is a height. */
const ROOM = / (?:clear|clearance|gap|air|airspace|space|room|play|free) /;
const LEFT = / (?:leave|leaving|keep|keeping|allow|allowing|give|giving) /;
/** Words before a gap that want it, in its clause. */
const DENIED = / (?:n't|[a-z]+n't|not|never|no) (?!less )/;
const TOLD_OF = / (?:if|unless|whether|had|was|were) /;

/** The gaps that one sentence wants kept. */
export function gapsIn(scene: CheckScene, line: Line): readonly CheckNote[] {
  if (line.asks || TOLD_OF.test(line.words)) return [];
  for (const gap of figuresOf(scene, line, 'length')) {
    const beside = gap.bound === 'at-most' ? undefined : besideOf(scene, line, gap);
    const thing = beside && thingBeside(scene, line, gap);
    const inputs = thing && inputsOf(scene, line, gap, nameOf(thing), beside);
    if (!inputs) continue;
    const options = beside.on === 'one side' ? { options: { 'gap on': beside.on } } : {};
    return [checkNote(scene, line, { check: 'clearance', inputs, ...options })];
  }
  return [];
}

/** Words from a figure on, which stands as `#` before them. */
const wordsFrom = (scene: CheckScene, line: Line, figure: FigureNote): string =>
  line.words.slice(line.starts[wordOfFigure(scene, figure) - line.first]);

/** Where a gap is wanted; undefined for a figure that is no gap, or that nobody wants. */
function besideOf(scene: CheckScene, line: Line, gap: FigureNote) {
  const at = wordOfFigure(scene, gap);
  const before = ` ${wordsOf(scene, clauseStart(scene, line, at), at)} `;
  const words = wordsFrom(scene, line, gap);
  if (!(WANTED.test(before) || isBareDemand(scene, line, gap, words)) || DENIED.test(before))
    return undefined;
  for (const { pattern, sides, on } of BEHIND) {
    const found = pattern.exec(words);
    const isRoom =
      on === 'both sides' ||
      ROOM.test(found?.[0] ?? '') ||
      LEFT.test(before) ||
      (sides[0] === 'depth' && / (?:needs?|wants?) $/.test(wordsUpTo(scene, line, gap)));
    if (found) return isRoom ? { sides, on } : undefined;
  }
  return undefined;
}

/** "The stove flue, 50 clear all round": a gap with no verb before it is wanted, unless something is told of it. */
function isBareDemand(scene: CheckScene, line: Line, gap: FigureNote, words: string): boolean {
  if (!/^#? ?clear(?:ance)? (?:all|either|each|both|every|right) /.test(words)) return false;
  const at = wordOfFigure(scene, gap);
  const before = wordsOf(scene, clauseStart(scene, line, at), at);
  const behind = words.slice(0, words.search(/[,.;:]|$/));
  return (
    /^(?:and |so |with |that 's )?$/.test(`${before} `.trimStart()) &&
    !/ (?:is|was|are|were|left|got|there) /.test(behind)
  );
}

/** The words of a line before a figure. */
const wordsUpTo = (scene: CheckScene, line: Line, figure: FigureNote): string =>
  line.words.slice(0, line.starts[wordOfFigure(scene, figure) - line.first]);

/** What the gap is beside: named behind it, else what its clause is about. "740 above the floor" is no gap. */
function thingBeside(scene: CheckScene, line: Line, gap: FigureNote): Phrase | undefined {
  const at = wordOfFigure(scene, gap);
  const words = wordsFrom(scene, line, gap);
  const startOf = (word: number) => line.starts[word - line.first] ?? 0;
  const phrases = phrasesOf(scene, line);
  const behind = phrases.find(
    (one) => one.first > at && keepsClear(one) && OF.test(words.slice(0, startOf(one.first) - startOf(at))),
  );
  const subject = behind ?? phrases.findLast((one) => one.last < at && !one.kinds.has('measure'));
  if (!subject || isSpeaker(subject)) return undefined;
  if (POINTS.test(subject.pronoun ?? '')) return thingBefore(scene, line, subject.first, keepsClear);
  return keepsClear(subject) ? subject : undefined;
}
const POINTS = /^(?:it|that|this|they|them)$/;

/** Opening, part and gap, each direction that is known; undefined where nothing is known and little was said. */
function inputsOf(
  scene: CheckScene,
  line: Line,
  gap: FigureNote,
  name: string,
  beside: { readonly sides: readonly Attribute[]; readonly on: string },
): readonly SpokenInput[] | undefined {
  const partOf = (side: Attribute) => nameAsTold(scene, name, side);
  const told = beside.sides.filter((side) => attributesOf(scene, partOf(side)).has(side));
  const round = roundSide(scene, name, beside.sides);
  const sides =
    told.length > 0 ? told : round ? [round] : [pipeSide(scene, line, name) ?? beside.sides[0] ?? 'width'];
  const openings = sides.map((side) => openingSize(scene, line, name, side));
  // "Twelve inches clear on top": of what has no size, nobody will say how high its opening is.
  if (beside.on === 'one side' && told.length === 0 && !openings.some(({ isTold }) => isTold))
    return undefined;
  return [
    ...openings.map(({ expression }) => input('opening', expression)),
    ...sides.map((side) => input('part', `${partOf(side)} ${side}`)),
    input('gap', written(gap)),
  ];
}

/** What a pipe is measured by, where nobody has measured it yet. */
function pipeSide(scene: CheckScene, line: Line, name: string): Attribute | undefined {
  const near = scene.lines.slice(Math.max(0, line.index - 2), line.index + 1);
  const isNamed = near
    .flatMap((one) => phrasesOf(scene, one))
    .some((one) => isPipe(one) && nameOf(one) === name);
  return isNamed ? 'diameter' : undefined;
}

/** A flue has one size across, and what lies in a slot is as wide as it is thick. */
function roundSide(scene: CheckScene, name: string, sides: readonly Attribute[]): Attribute | undefined {
  if (!sides.includes('width')) return undefined;
  return (['diameter', 'thickness'] as const).find((side) => attributesOf(scene, name).has(side));
}

/** The name that a size of a thing goes by: "fridge each side" beside its gap, "drawer box" of the drawer. */
function nameAsTold({ ofItem }: CheckScene, name: string, side: Attribute): string {
  const isSized = (one: string) => (ofItem.get(one) ?? []).some(({ attribute }) => attribute === side);
  if (isSized(name)) return name;
  return [...ofItem.keys()].find((one) => one.startsWith(`${name} `) && !isVoid(one) && isSized(one)) ?? name;
}

interface OpeningSize {
  readonly expression: string;
  readonly isTold: boolean;
}

/** The size of what a thing goes into: told near it, or known of it by name; else by name, so that the check waits. */
function openingSize(scene: CheckScene, line: Line, thing: string, side: Attribute): OpeningSize {
  const near = scene.lines
    .slice(Math.max(0, line.index - 2), line.index + 3)
    .flatMap((one) => figuresIn(scene, one))
    .filter(({ attribute, limit, dimension }) => {
      const fits =
        attribute === side ||
        (side === 'width' && /^(?:gap|clearance|size)$/.test(attribute)) ||
        (side === 'thickness' && attribute === 'width') ||
        (side === 'diameter' && /^(?:width|size)$/.test(attribute));
      return dimension === 'length' && !limit && fits;
    })
    .map((figure) => ({ ...figure, item: figure.item.toLowerCase() }));
  const isOwn = (name: string) => name === thing || name.startsWith(`${thing} `);
  const found =
    near.find(({ item }) => isOwn(item) && isVoid(item)) ??
    near.find(({ item }) => isVoid(item)) ??
    near.find(({ item }) => !isOwn(item) && isBox(item));
  if (found) return { expression: `${found.item} ${found.attribute}`, isTold: true };
  const known = [...scene.ofItem.keys()].find(
    (name) => isOwn(name) && isVoid(name) && attributesOf(scene, name).has(side),
  );
  return { expression: `${known ?? `${thing} opening`} ${side}`, isTold: known !== undefined };
}
