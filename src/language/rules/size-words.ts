import type { Attribute } from '../notes.ts';
import { each, type PhraseHit, PhraseTable } from '../phrases.ts';
import type { Token } from '../tokens.ts';

const SIZE_PHRASES = new PhraseTable<Attribute>([
  ...each<Attribute>(
    'width',
    'wide, in width, in the width, of width, in breadth, in the breadth, breadth, width, across, across the top, broad, at the widest, in the beam, of beam, wall - to - wall, side - to - side',
  ),
  ...each<Attribute>(
    'height',
    'of freeboard, high, tall, in height, in the height, of height, height, floor to floor, to the top, to the underside, to the ceiling, up the wall, floor - to - floor, floor - to - ceiling, top - to - bottom',
  ),
  ...each<Attribute>(
    'length',
    'long, in length, in the length, of length, length, stroke, of stroke, stem to stern, stem - to - stern, bumper to bumper, bumper - to - bumper, end - to - end',
  ),
  ...each<Attribute>(
    'depth',
    'deep, in depth, in the depth, of depth, depth, front to back, front - to - back, of draft, of draught',
  ),
  ...each<Attribute>('thickness', 'thick, in thickness, in the thickness, of thickness, thickness'),
  ...each<Attribute>(
    'diameter',
    'in diameter, in the diameter, of diameter, diameter, dia, diam, round, bore, od, id',
  ),
  ...each<Attribute>('radius', 'radius, in radius'),
  ...each<Attribute>(
    'clearance',
    'clear, of clearance, clearance, headroom, of headroom, of headspace, of daylight, clear air, of clear air, legroom, of legroom',
  ),
  ...each<Attribute>('gap', 'gap, of gap, of air, expansion gap, all round, all the way round, all around'),
  ...each<Attribute>(
    'offset',
    'proud, overhang, of overhang, of overlap, of lap, of drop, hanging over, lower, higher, to spare, of fall, fall, out of level, out of true, out of plumb, out of square, of deflection, of play, of lift, of travel, in from, back from, up from, down from, off the, away from, from the, above the, below the, off center, off centre, short, too long, too short, too wide, too narrow, too thick, too thin, too deep, too high, too low, too big, too small, over, under, out',
  ),
  ...each<Attribute>(
    'other',
    'centres, centers, on center, on centers, on centre, on centres, centre to centre, center to center, oc, o . c, apart, heart to heart, hart to hart, spacing, spacings, pitch, between centres, between centers',
  ),
  ...each<Attribute>(
    'size',
    'square, overall, over all, all up, all told, all in, finished, nominal, sawn, planed, par',
  ),
]);

/** What pieces are cut out of, and what tells that one of them is meant. */
const STOCK =
  /^(?:sheet|sheets|board|boards|length|lengths|plank|planks|panel|panels|slab|bar|bars|stick|sticks|pole|poles|roll|rolls|piece|stock|offcut|offcuts)$/;
const ONE_OF = /^(?:an?|one|each|every|it|them|these|those)$/;

/** "Four out of a sheet", "610 out of the last board": `at` is where "out" stands that tells what a piece comes from. */
export function comesOutOf(tokens: readonly Token[], at: number): boolean {
  if (tokens[at]?.word !== 'out' || tokens[at + 1]?.word !== 'of') return false;
  if (ONE_OF.test(tokens[at + 2]?.word ?? '')) return true;
  return [3, 4, 5].some((step) => STOCK.test(tokens[at + step]?.word ?? ''));
}

/** "The hull is 2100 beam", "each board's ninety five cover": how wide; "a 200 beam" and "the 600 cover" are things. */
function toldAsWidth(tokens: readonly Token[], at: number): boolean {
  if (!/^(?:beam|cover)$/.test(tokens[at]?.word ?? '')) return false;
  if (!/^(?:|[.,;:!?]|and|but|so)$/.test(tokens[at + 1]?.word ?? '')) return false;
  let from = at - 1;
  while (from > at - MOST_NUMBER_WORDS && IN_NUMBER.test(tokens[from]?.word ?? '')) from--;
  return from < at - 1 && /^(?:is|'s|are|'re|was|were|,|gives|about|only)$/.test(tokens[from]?.word ?? '');
}
const MOST_NUMBER_WORDS = 7;
const IN_NUMBER =
  /^(?:[\d.,]*\d|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|\p{L}+teen|(?:twen|thir|for|fif|six|seven|eigh|nine)ty|hundred|thousand|point|oh|mm|mils?|metres?|foot|feet|inch|inches)$/u;

/** Words behind a number that say which size it is. */
export const SIZE_AFTER = {
  startingAt(tokens: readonly Token[], at: number): PhraseHit<Attribute> | undefined {
    const hit = SIZE_PHRASES.startingAt(tokens, at);
    if (!hit && toldAsWidth(tokens, at)) return { from: at, to: at + 1, meaning: 'width' };
    // "It's only six out there": a place.
    const there =
      tokens[hit ? hit.to - 1 : 0]?.word === 'out' &&
      /^(?:there|here)$/.test(tokens[hit?.to ?? 0]?.word ?? '');
    return hit && (there || comesOutOf(tokens, hit.to - 1)) ? undefined : hit;
  },
};

/** Words for "of each": they follow a size and say nothing of which. */
export const EACH_AFTER = new PhraseTable<true>(
  each(
    true,
    'each, apiece, aside, each side, each end, each way, a side, an end, either side, either end, either way, per side, per end, both sides, both ends, both ways, on each side, at each end, on either side, on both sides, at either end, a piece, a riser, a step, a tread, a metre, a meter, per metre, per meter, a foot, per foot, a bay, a corner, a face, a cut, a pass, a leg, on top, top and bottom',
  ),
);

/** Sizes that stand before the number: "headroom 41", "a gap of five". */
export const SIZE_NOUNS: ReadonlyMap<string, Attribute> = new Map<string, Attribute>([
  ...['height', 'heights', 'rise', 'freeboard'].map((word) => [word, 'height'] as const),
  ...['width', 'beam', 'span'].map((word) => [word, 'width'] as const),
  ...['length', 'reach', 'run'].map((word) => [word, 'length'] as const),
  ...['depth', 'draft', 'draught'].map((word) => [word, 'depth'] as const),
  ...['thickness'].map((word) => [word, 'thickness'] as const),
  ...['diameter', 'bore', 'dia'].map((word) => [word, 'diameter'] as const),
  ...['radius'].map((word) => [word, 'radius'] as const),
  ...['clearance', 'headroom', 'clear'].map((word) => [word, 'clearance'] as const),
  ...['gap', 'gaps', 'reveal', 'kerf'].map((word) => [word, 'gap'] as const),
  ...['overhang', 'offset', 'fall', 'setback', 'lip', 'lap', 'overlap'].map(
    (word) => [word, 'offset'] as const,
  ),
  ...['spacing', 'centres', 'centers', 'pitch'].map((word) => [word, 'other'] as const),
]);
