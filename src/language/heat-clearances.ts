/**
 * How far what gets hot stays from what burns or melts: "the stove leaves 255 to the ply", "a hundred off the brake hose"
 * are clearances, as data sheets and codes have them (common practice, no source).
 */
import type { Attribute, FigureNote } from './notes.ts';

const HOT =
  /\b(?:stoves?|woodburners?|wood burners?|burners?|flues?|flue ?pipes?|chimneys?|exhausts?|heaters?|boilers?|ovens?|hobs?|ranges?|firebox|stovepipe|silencers?|mufflers?|manifold|lamps?|twin ?wall)\b/i;
const BURNS =
  'wood|timbers?|ply|plywood|panell?ing|lining|cedar|pine|oak|boards?|boarding|joists?|rafters?|beams?|studs?|framing|cladding|curtains?|cushions?|foam|upholstery|hoses?|cables?|wires?|wiring|tanks?|thatch|insulation|tongue and groove|anything (?:that|which) (?:burns|melts|catches)|anything (?:soft|wooden|flammable|combustible)|combustibles?';
const TO_IT = new RegExp(
  `^[^.;!?]{0,40}?\\b(?:to|off|from|clear of|away from|short of)(?: [a-z]+){0,3}? (?:${BURNS})\\b`,
  'i',
);
const TAKEN: ReadonlySet<Attribute> = new Set([
  'offset',
  'width',
  'length',
  'diameter',
  'depth',
  'thickness',
  'size',
  'gap',
]);
/** The sentence of the figure and what was said just before it. */
const BEFORE = 160;
const REACH = 60;

/** Figures of a memo in the order of speech, distances from heat as clearances; values stay in their units. Pure, in one pass. */
export function withHeatClearances(text: string, figures: readonly FigureNote[]): readonly FigureNote[] {
  return figures.map((figure, at) => {
    // What stands behind the next figure is told of that one.
    const end = Math.min(figure.span.end + REACH, figures[at + 1]?.span.start ?? text.length);
    const told = text.slice(figure.span.start, end);
    if (!isFromHeat(text, figure, told)) return figure;
    const isLeast = figure.bound === 'exact' && isDemanded(text, figure, told);
    return { ...figure, attribute: 'clearance' as const, ...(isLeast ? { bound: 'at-least' as const } : {}) };
  });
}

const ALL_THAT_BURNS =
  /\b(?:any(?:thing)?|all|every) (?:timber|wood|woodwork|ply|joists?|framing|cables?|wires?|wiring|soft|wooden|flammable|combustible|(?:that|which) (?:burns|melts|catches))\b|\bcombustibles?\b/i;
const DEMANDS =
  /\b(?:says?|said|wants?|needs?|asks? for|calls? for|requires?|must|has to|have to|got to|gotta|keep|kept|leave|allow|give it|should|ought to|rule|regs?|regulations?|code|minimum)\b[^.;!?]*$/i;

/** "Book says 12 inches to anything that burns": what a sheet asks for all that burns is the least, and a measured gap is not. */
function isDemanded(text: string, { span, state }: FigureNote, told: string): boolean {
  if (state === 'measured' || state === 'made') return false;
  return ALL_THAT_BURNS.test(told) && DEMANDS.test(text.slice(Math.max(0, span.start - BEFORE), span.start));
}

function isFromHeat(text: string, { dimension, attribute, span, item }: FigureNote, told: string): boolean {
  if (dimension !== 'length' || !(TAKEN.has(attribute) || attribute === 'clearance')) return false;
  // The quote may go on to the thing: "a hundred mil off anything that melts".
  if (!TO_IT.test(told)) return false;
  return HOT.test(item) || HOT.test(text.slice(Math.max(0, span.start - BEFORE), span.start));
}
