/**
 * Reads what tapers: "the leg tapers from 60 down to 40 over 700", "60 at the top, 40 at the bottom, 700 long and tapered
 * on the one side". What was tapered already, and what does not taper, attaches nothing.
 */
import { figuresIn, type Line, phrasesOf } from '../kept/scene.ts';
import type { CheckNote, HouseUnits, Quantity, SpokenInput } from '../notes.ts';
import { lengthSaid } from './said-amounts.ts';
import { type CheckScene, checkNote, input, isThing, nameOf, written } from './spoken-check.ts';

const TAPERS =
  /\b(?:tapers?|tapering|tapered (?:from|on|both|one|all|down)|taper of|wedges?|wedge-shaped|narrows|narrowing|thins|thinning|feathers?|feathering|goes (?:away|down) (?:from|to)|runs? (?:out|down) (?:from|to))\b/i;
/** A part of a word of each. A number may have it in its own words: `#`. */
export const tellsTaper = (word: string): boolean => /taper|wedge|narrow|thin|feather|goes|run|#/.test(word);
const LEFT =
  /\b(?:if|unless|was|were|had|have tapered|[a-z]+n't|not|never|no|used to|would|could|might|instead|i tapered|we tapered|yesterday|river|road)\b/i;
const AT_END =
  '(?:,? (?:at|on|by) (?:the |one |its |that )?(?:\\w+ )?(?:end|top|bottom|head|foot|tip|base|root|front|back|butt|heel|toe|thick|thin|wide|narrow|hinge|keel|deck|one|other)(?: end)?)?';
/** A size in few words; what it may not run over. */
const SIZE = '((?:(?!\\b(?:from|to|over|and it|tapers?|tapering|down)\\b)[^,;:.]|\\.\\d){1,48}?)';
const OVER = '(?:over|in|along|across|through|for|and)(?: (?:a |its |the )?(?:length|run|distance|span) of)?';
const LONG = `(?:${OVER} |and it(?:'s| is) |it's |it is |, )${SIZE}`;
const ENDS_HERE =
  '(?=\\s*(?:[,;:]|\\.(?!\\d)|$|\\b(?:long|and|on|so|both|one|at|with|but|straight|tall|high|overall)\\b))';

/** Ways to tell of two ends and how far apart they are: 1 large, 2 small, 3 length. */
const WAYS: readonly RegExp[] = [
  new RegExp(
    `\\bfrom (?:about )?${SIZE}${AT_END}(?: wide| thick| deep| square)?,?(?: and)? (?:down )?to ${SIZE}${AT_END}(?: wide| thick| deep| square)?,? ${LONG}${ENDS_HERE}`,
    'i',
  ),
  new RegExp(
    `\\b(?:tapers?|tapering|narrows|thins) (?:down )?${SIZE} (?:down )?to ${SIZE}${AT_END},? ${LONG}${ENDS_HERE}`,
    'i',
  ),
  new RegExp(
    `\\b(?:is|'s|are|starts? at|,) ?${SIZE}${AT_END},? (?:and )?(?:it )?(?:tapers?|tapering|narrows|narrowing|thins|thinning|goes) (?:down |away |off )?to ${SIZE}${AT_END},? ${LONG}${ENDS_HERE}`,
    'i',
  ),
];
/** "The leg's 700 long and tapers from 60 to 40". */
const LENGTH_FIRST = new RegExp(
  `(?:is|'s|are|,|^)\\s*${SIZE} (?:long|tall|high)\\b.*?\\bfrom ${SIZE}${AT_END} (?:down )?to ${SIZE}${AT_END}${ENDS_HERE}`,
  'i',
);
/** Sizes of two ends told apart: "60 at the top". */
const END_TOLD =
  /(?:^|[\s,])((?:[^\s,;:.]|\.\d){1,14}(?: [^\s,;:.]{1,14}){0,5}?) (?:wide |thick |deep |square )?(?:at|on) (?:the|one|its) (?:\w+ end|end|top|bottom|head|foot|tip|base|root|front|back|butt|heel|toe|other)\b/gi;
const ONE_SIDE =
  /\b(?:one (?:side|face|edge)|the one side|straight on the other|other (?:side|face|edge)(?:'s| is| stays)? straight|single taper|inside (?:face|edge)s? only)\b/i;

interface Ends {
  readonly large: Quantity;
  readonly small: Quantity;
  readonly length: Quantity;
}

/** The taper that one sentence tells of. */
export function taperIn(scene: CheckScene, line: Line): readonly CheckNote[] {
  const said = scene.text.slice(line.start, line.end).replaceAll('’', "'");
  if (line.asks || !TAPERS.test(said) || LEFT.test(said)) return [];
  const units = unitsOf(scene, line);
  const ends = endsIn(said, units) ?? endsApart(said, units);
  if (!ends) return [];
  const thing = phrasesOf(scene, line).find(isThing);
  const of = thing && nameOf(thing);
  const inputs: readonly SpokenInput[] = [
    input('large end', written(ends.large), of),
    input('small end', written(ends.small), of),
    input('length', written(ends.length), of),
  ];
  const options = ONE_SIDE.test(said) ? { options: { 'tapered on': 'one side' } } : {};
  return [checkNote(scene, line, { check: 'taper', inputs, ...options })];
}

/** For what was said without a unit: that of the other lengths of the sentence, else that of the house. */
function unitsOf(scene: CheckScene, line: Line): HouseUnits {
  const own = figuresIn(scene, line).filter(({ dimension }) => dimension === 'length');
  if (own.length === 0) return scene.units;
  return own.some(({ unit }) => unit === 'in' || unit === 'ft') ? 'us' : 'metric';
}

function endsIn(said: string, units: HouseUnits): Ends | undefined {
  for (const way of WAYS) {
    const [, large, small, length] = way.exec(said) ?? [];
    const ends = endsOf([large, small, length], units);
    if (ends) return ends;
  }
  const [, length, large, small] = LENGTH_FIRST.exec(said) ?? [];
  return endsOf([large, small, length], units);
}

/** "60 at the top and 40 at the bottom and it's 700 long": the larger of the two is the large end. */
function endsApart(said: string, units: HouseUnits): Ends | undefined {
  const ends = [...said.matchAll(END_TOLD)].map((found) => lastLength(found[1] ?? '', units));
  const long = /((?:[^\s,;:]+ ){1,6})(?:long|tall|high|overall)\b/i.exec(said)?.[1];
  const [first, second] = ends;
  const length = long === undefined ? undefined : lastLength(long, units);
  if (ends.length !== 2 || !first || !second || !length) return undefined;
  const isLess = first.unit === second.unit && first.value < second.value;
  return isLess ? { large: second, small: first, length } : { large: first, small: second, length };
}

/** The length that the last of some words say: "and it's 700". */
function lastLength(words: string, units: HouseUnits): Quantity | undefined {
  const all = words.trim().split(/\s+/);
  for (let from = Math.max(0, all.length - 6); from < all.length; from++) {
    const size = lengthSaid(all.slice(from).join(' '), units);
    // The check refuses what is less than nothing, and says so.
    if (size) return /^(?:minus|negative)$/i.test(all[from] ?? '') ? { ...size, value: -size.value } : size;
  }
  return undefined;
}

/** All three as lengths; one without a unit of its own has that of the others. */
function endsOf(words: readonly (string | undefined)[], units: HouseUnits): Ends | undefined {
  const isUs = words.some((one) =>
    /\b(?:inch(?:es)?|foot|feet|ft|in|eighths?|sixteenths?|quarters?)\b/i.test(one ?? ''),
  );
  const [large, small, length] = words.map((one) =>
    one === undefined ? undefined : lastLength(one, isUs ? 'us' : units),
  );
  return large && small && length ? { large, small, length } : undefined;
}
