/**
 * Reads what a product was put on, or what clamps came off: "the second coat on the hull", "glued the rib", "the deck's
 * had its first coat". A coat on one thing says nothing of when the other may have its next.
 */
import type { Phrase } from '../items/noun-phrases.ts';
import { isSpeaker, tagAt, wordAt } from '../items/parse.ts';
import { isProduct, productOfVerb } from '../lexicon/batch-products.ts';
import type { NounKind } from '../lexicon/trade-nouns.ts';
import { clauseStart, type Line, phrasesOf, type RecordScene } from './scene.ts';

/** Before what a coat goes on, and what clamps come off. */
const ONTO = /^(?:on|onto|over|round|around|to|in|into|inside|along|across|under|down|off|from|of)$/;
/** "The inside of the locker" is in the locker; "one side of it" says nothing. */
const PART_OF =
  /^(?:inside|outside|underside|back|front|rest|top|bottom|side|face|edge|end|half|lot|first|last)s?$/;
const COATS =
  /^(?:coats?|layers?|primer|batch|mix|pot|brush|roller|gun|bit|clamps?|cramps?|formwork|shuttering|props?)$/;
const NO_SURFACE: ReadonlySet<NounKind> = new Set([
  'person',
  'time',
  'abstract',
  'measure',
  'air',
  'tool',
  'liquid',
]);

/** Whether a phrase names what a coat may be on. */
const isSurface = (phrase: Phrase): boolean =>
  phrase.name.length > 0 &&
  phrase.pronoun === undefined &&
  !isSpeaker(phrase) &&
  !isProduct(phrase.name) &&
  !COATS.test(phrase.head) &&
  ![...phrase.kinds].some((kind) => NO_SURFACE.has(kind));

/**
 * What the act at word `at` was done to, in words as they name it; undefined where nobody said. `until` is where the next
 * act of the sentence begins.
 */
export function thingDoneTo(scene: RecordScene, line: Line, at: number, until: number): string | undefined {
  const phrases = phrasesOf(scene, line).filter(isSurface);
  const after = phrases.filter(({ first }) => first > at && first < until);
  const own =
    after.find((phrase) => isObject(scene, at, phrase)) ?? after.find((phrase) => isOn(scene, phrase));
  const said = own && (PART_OF.test(own.head) ? (partOf(scene, own, after) ?? own) : own);
  const named = said ?? subjectOf(scene, line, at, phrases);
  return named?.name.join(' ');
}

/** "Painted the bulkhead", "glued up the carcass", "unclamped the rib", "recoated the deck". */
function isObject({ parse }: RecordScene, at: number, phrase: Phrase): boolean {
  const verb = wordAt(parse, at);
  if (
    productOfVerb(verb) === undefined &&
    !/^(?:re-?coated|over-?coated|unclamped|uncramped|gave|giving)$/.test(verb)
  )
    return false;
  return (
    phrase.first === at + 1 ||
    (phrase.first === at + 2 && /^(?:up|down|in|together|over)$/.test(wordAt(parse, at + 1)))
  );
}

/** "On the hull", "off the rib": the words between may tell which. */
function isOn({ parse }: RecordScene, phrase: Phrase): boolean {
  for (let k = phrase.first - 1; k >= phrase.first - 3; k--) {
    if (ONTO.test(wordAt(parse, k))) return true;
    if (!/^(?:determiner|possessive|adjective|adverb)$/.test(tagAt(parse, k) ?? '')) return false;
  }
  return false;
}

/** "The inside of the locker": the locker. */
const partOf = ({ parse }: RecordScene, own: Phrase, after: readonly Phrase[]): Phrase | undefined =>
  wordAt(parse, own.last + 1) === 'of' ? after.find(({ first }) => first === own.last + 2) : undefined;

/** "The deck's had its second coat", "the rib is unclamped": what stands before the verb of its clause. */
function subjectOf(
  scene: RecordScene,
  line: Line,
  at: number,
  phrases: readonly Phrase[],
): Phrase | undefined {
  const from = clauseStart(scene, line, at);
  const before = phrases.findLast(({ first, last }) => first >= from && last < at);
  return before && /^(?:'s|is|are|'ve|has|have|had|got|was|were)$/.test(wordAt(scene.parse, before.last + 1))
    ? before
    : undefined;
}
