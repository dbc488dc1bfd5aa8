/**
 * Reads parts that are made once for each hand: "the knees are handed", "the port lid is a mirror of the starboard one",
 * "one of each hand". The same on both sides is no hand; a mirror on the wall, a left-handed thread and "on the other
 * hand" are none.
 */
import type { Phrase } from '../items/noun-phrases.ts';
import { phraseAt, wordAt } from '../items/parse.ts';
import { sidesOf, withoutSide } from '../lexicon/sides.ts';
import type { NounKind } from '../lexicon/trade-nouns.ts';
import type { HandNote } from '../notes.ts';
import { clauseStart, type Line, phrasesOf, type RecordScene, wordAtOffset } from './scene.ts';

const SIDE = '(?:port|starboard|left|right|left-hand|right-hand|nearside|offside|lh|rh)';

/** Ways to say that two parts are mirrored; the match begins where the words about the hand begin. */
const WAYS: readonly RegExp[] = [
  / (?:is|are|'s|'re|was|were|be) (?:just |only |exactly |all |simply )?(?:a |an |the |exact )*(?:mirror|mirrored|mirror-image|opposite hand)(?: (?:image|images|copy|copies|version|versions|pair))? (?:of|to|from) (?!me |us |him |her )/,
  / (?:is|are|'s|'re|was|were|be|being|come|comes) (?:all |both |obviously |of course )?(?:handed|mirrored|mirror images?(?: of (?:each other|one another))?)(?= (?:\.|,|!|;|and|so|but|remember|not|of|port|left|one|#|each|obviously|because) )/,
  / (?:a|the|two|one|both|another|my|these|those) (?:handed|mirrored|mirror) (?:pair|pairs|set|sets)(?: of)? /,
  / (?:one|#|two|pair|some|couple) (?:of|for|off|to|in) each (?:hand|handed) /,
  new RegExp(` handed (?:to|from) (?:the |its )?(?:${SIDE}|other) `),
  / (?:is|'s|are|'re) (?:its|their|the other's) mirror /,
  new RegExp(` ${SIDE} and ${SIDE} hand(?:ed|s)? `),
  / one each hand /,
  new RegExp(
    ` (?:one|a) ${SIDE}(?: hand| handed| one| side)? (?:and|,|, and|one for|plus|) ?(?:one|a|the) ${SIDE} `,
  ),
  / (?:is|are|'s|'re|to be|as|be|make|makes|cut|needs|with) (?:a |an |the )?(?:opposite|other|reverse|opposing) hand(?:ed|s)?(?= (?:\.|,|!|;|and|so|of|to) )/,
  new RegExp(` ${SIDE}(?: \\S+){0,3} mirrors? (?:the )?(?:\\S+ ){0,2}?(?:${SIDE}|other) `),
];

/** What takes a hand back again: denied, supposed, or the same on both sides. */
const DENIED =
  / (?:not|[a-z]+n't|never|no longer|if|whether|unless|could|might|maybe|perhaps|wish|thread|threaded|second-hand|single-handed|left-handed|right-handed|two-handed) /;
const SAME =
  / (?:same both sides|same (?:on|for) both|same each side|both sides the same|no hand|unhanded|symmetrical|either way round) /;

const NO_PART: ReadonlySet<NounKind> = new Set([
  'person',
  'time',
  'abstract',
  'measure',
  'air',
  'tool',
  'liquid',
  'coating',
  'region',
]);

/** Reads the handed parts of one memo, in order of speech. */
export function readHands(scene: RecordScene): readonly HandNote[] {
  return scene.lines.flatMap((line) => handIn(scene, line) ?? []);
}

function handIn(scene: RecordScene, line: Line): HandNote | undefined {
  if (
    line.asks ||
    !/ (?:mirror|mirrors|mirrored|mirror-image|hand|hands|handed|port|left|nearside|lh|left-hand|opposite|right|starboard|offside) /.test(
      line.words,
    )
  )
    return undefined;
  for (const way of WAYS) {
    const found = way.exec(line.words);
    if (!found) continue;
    const at = wordAtOffset(line, found.index + 1);
    const last = wordAtOffset(line, found.index + found[0].trimEnd().length - 1);
    if (isDenied(scene, line, at, last)) continue;
    const part = partOf(scene, line, at, last);
    if (!part) continue;
    const { start } = line;
    const end = start + scene.text.slice(start, line.end).replace(/[\s.!?…,;]*$/, '').length;
    const sides = sidesIn(line);
    return {
      kind: 'hand',
      quote: scene.text.slice(start, end),
      span: { start, end },
      part,
      ...(sides ? { sides } : {}),
    };
  }
  return undefined;
}

function isDenied(scene: RecordScene, line: Line, at: number, last: number): boolean {
  if (SAME.test(line.words)) return true;
  let clause = ' ';
  for (let k = clauseStart(scene, line, at); k <= Math.min(last + 1, line.endWord - 1); k++)
    clause += `${wordAt(scene.parse, k)} `;
  return DENIED.test(clause) || / (?:on|to) (?:the |one )?other hand /.test(clause);
}

function sidesIn(line: Line): readonly [string, string] | undefined {
  for (const word of line.words.trim().split(' ')) {
    const sides = sidesOf(word);
    if (sides) return sides;
  }
  return undefined;
}

/** The part without its side: in the sentence, nearest before the words about the hand, then after; else just before. */
function partOf(scene: RecordScene, line: Line, at: number, last: number): string | undefined {
  const here = phrasesOf(scene, line);
  const before = here.filter((phrase) => phrase.first < at).reverse();
  const after = here.filter((phrase) => phrase.first >= at && phrase.first <= last + 3);
  const own = [
    ...after.filter((phrase) => wordAt(scene.parse, phrase.first - 1) === 'of'),
    ...before,
    ...after,
  ]
    .map((phrase) => partName(scene, phrase))
    .find((name) => name !== undefined);
  if (own) return own;
  const index = line.index;
  return scene.lines
    .slice(Math.max(0, index - 2), index)
    .flatMap((one) => phrasesOf(scene, one))
    .reverse()
    .map((phrase) => partName(scene, phrase))
    .find((name) => name !== undefined);
}

function partName(scene: RecordScene, phrase: Phrase): string | undefined {
  if (phrase.pronoun !== undefined || phrase.name.length === 0) return undefined;
  const said =
    phrase.name.length > 1 ? phrase.name.join(' ').replace(/ mirrors?$/, '') : phrase.name.join(' ');
  const name = withoutSide(said).replace(/^(?:handed|mirrored|mirror)\s+/, '');
  const head = name.split(' ').at(-1) ?? '';
  if (
    name === '' ||
    /^(?:mirror|mirrors|image|images|hand|hands|handed|pair|pairs|side|sides|one|ones|copy|set|left|right|port|starboard|version)$/.test(
      head,
    )
  )
    return undefined;
  if ([...phrase.kinds].some((kind) => NO_PART.has(kind))) return undefined;
  // "In the saloon", "for the van": where it is.
  const kinds = phrase.kinds;
  if ((kinds.has('space') || kinds.has('vessel')) && phraseAt(scene.parse, phrase.first) === phrase)
    return undefined;
  return name;
}
