/** Snags told without a verb: "orange peel all over the wing", "cracked, corner to corner", "Scuppers: blocked". */
import { WELL } from '../lexicon/harm-words.ts';
import { neighbour, phraseRule, type Scene, type StatementRule } from './draft.ts';
import { type Found, phrase } from './phrase.ts';
import { has, problem } from './snag.ts';
import type { Said } from './words.ts';

const verbless = (said: Said) => !said.words.some(({ classes }) => /[SHMV]/.test(classes));
/** Whether a thing was named just before, that a bare state can be said of. */
function follows(said: Said, scene: Scene): boolean {
  const before = scene.said[said.index - 1];
  return before !== undefined && (before.sentence === said.sentence || said.words.length <= 6);
}

const ILL_SCRAP = phrase(
  `^<lead>* (?: a | an | some | big | old | great | nasty | funny | strange | odd | weird | horrible | more | another | still | bit of a | bit of | lots of | loads of | <number> | slight | little | small | fresh | nice | damn )* (?: <plain> ){0,2}? (?: <fault> | <ill> | orange peel ) (?: again | still )? (?: in | on | at | from | along | across | by | under | behind | all | everywhere | again | through | over | round | around | down | between | somewhere | inside | near | up | where ) (?<rest> <any>+ )`,
);

export const SCRAP_RULES: readonly StatementRule[] = [
  problem('<ill> in <thing>, without a verb', ILL_SCRAP, (found, said) => {
    const first = said.words[0]?.lower ?? '';
    return (
      verbless(said) &&
      !has(found.words, 'N') &&
      !WELL.test(said.code) &&
      !said.words.some(({ classes }) => /[bG]/.test(classes) && !/[FfXx]/.test(classes)) &&
      !/ (?:my|your|me|his)\/\w* (?:hair|hands|eyes|head|back|ears|tea|boots|lungs|nose|neck|socks)\/| (?:mil|mill|mm|inch)\/\w* holes?\//.test(
        said.code,
      ) &&
      !/^(?:for|with|to|in|on|the|no|put|cut|drill|drilled|i|we|past|down|out|off)$/.test(first)
    );
  }),
  problem(
    'no <thing> where it belongs',
    phrase(
      `^<lead>* (?: still )? (?: no | zero | not a ) (?: earth | ground | power | spark | pressure | compression | continuity | reading | flow | water | charge | signal | light | heat | insulation | fall | clearance | voltage | oil | lintel | dpc | noggins | footings | foundations ) (?: on | in | at | to | from | under | behind | out of | anywhere | whatsoever | there | coming )`,
    ),
    (_, said) => verbless(said) && !WELL.test(said.code),
  ),
  phraseRule(
    'problem',
    '<faulty>, said alone',
    phrase(
      `^(?: <lead> | <adverb> | both | half | still | one | completely | clean | all | then | not humming )* (?<verb> <faulty> | too <size> | too <any> | not <any> enough | not enough | damp | soaking | sopping | leaking | dripping | done for | past it ) (?<rest> <any>{0,7} ) $`,
    ),
    (found: Found, said, scene) => {
      const verb = found.part('verb')[0]?.lower ?? '';
      const rest = found.part('rest');
      const next = rest[0];
      if (
        scene.unreal.has(said.index) ||
        said.asks ||
        said.opener.match(/if|until|till|once|before|when/) ||
        !verbless(said) ||
        WELL.test(said.code)
      )
        return false;
      // "lost count", "split the log": work or a name follows.
      if (
        next &&
        !/[RACNJQDE]/.test(next.classes) &&
        !/^(?:solid|clean|right|corner|again|like|both|every|end|along|through|at|from|all|me|and|two|one)$/.test(
          next.lower,
        )
      )
        return false;
      if (
        /^(?:lost|shot|loose|short|proud|hollow|wrong|lifting|scored|dead|gaps?)$/.test(verb) &&
        rest.length > 0
      )
        return false;
      if (
        /ing$/.test(verb) &&
        !/^(?:dripping|leaking|weeping|seeping|sopping|soaking|rubbing|binding|slipping)$/.test(verb)
      )
        return false;
      if (/^(?:bent|split)$/.test(verb) && next?.lower === 'in') return false;
      if (/^(?:short|loose|proud|hollow|soft|rough|scrap)$/.test(verb)) return false;
      if (/ (?:not|no)\/\w*/.test(said.code) && !/enough|humming/.test(said.code)) return false;
      if (
        /^too$/.test(verb) &&
        /(?:good|late|right|bad|easy|early|true|long\/\w* a)\b/.test(found.part('verb')[1]?.lower ?? '')
      )
        return false;
      return follows(said, scene) || rest.length > 0 ? blame(said, scene) : false;
    },
  ),
  problem(
    'nothing but <trouble>',
    phrase(
      `(?: <adverb> | a | an | some | this | that | very )* (?: strange | funny | odd | weird | horrible | nasty | awful | terrible | dreadful | unhealthy | worrying | ominous | almighty | god-awful ) (?: <plain> )? (?: sound | sounds | noise | noises | smell | whine | clunk | grinding | vibration | knock | rattle | hum | shudder | judder | wobble )`,
    ),
    (found, said) => !has(found.words, 'N') && !WELL.test(said.code),
  ),
];

/** Joins the thing named just before to its bare state: "Gas locker: rusted through". */
function blame(said: Said, scene: Scene): true | { readonly from: number; readonly start: number } {
  const before = neighbour(scene, said, -1);
  if (!before || before.words.length > 4 || before.words.some(({ classes }) => /[SHMV]/.test(classes)))
    return true;
  return { from: before.index, start: before.start };
}
