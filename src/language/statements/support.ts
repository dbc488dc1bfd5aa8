/** What a speaker gives a choice to stand on: a reason, a purpose, or the thing turned down. */
import { isReason, neighbour, type Scene } from './draft.ts';
import { find, matches, phrase } from './phrase.ts';
import type { Said } from './words.ts';

/** "on the grounds that", "that way", "so that": a clause that gives a reason without "because". */
const GIVES_REASON = phrase(
  "^<lead>* (?: so that | on the grounds | that 's on the grounds | in order to | that way | because of | on account of | for the sake | purely | simply because | the reason | on the basis | otherwise | or else | or it 'd | or they 'd | that 's why )",
);
const WITHIN = phrase(
  '(?: rather than | instead of | in place of | as opposed to | and not <any> | not (?! quite | bad | sure | yet | much | too | so | very | really | even | going | to | been ) (?: the | a | an | in | on | with | <plain> ) )',
);
const STARTS = phrase(
  '^<lead>* (?: not (?! a scratch | a drop | a bubble | a moment | bad | sure | yet | too | quite | even | one | really | much | <number> | to mention | that | literally | exactly | pretty | gorgeous | going | my | the <any>{0,2} <number> | been | an inch | a mark | <adverb> ) <any> | rather than | instead of | no longer | no <material> | over <any> | no more <any> | never mind )',
);
const PURPOSE = phrase(
  '(?: to (?: keep | save | get | make | stop | let | clear | give | allow | avoid | match | suit | miss | fit | leave | take | free | stiffen | lighten | trim | lower | balance | carry | hold | spread | shed | drain | cut | reduce | help | bring | win | gain | protect | hide | cover | catch ) | so (?: the | it | that | they | i | we | there | you | my | nobody ) | for (?: the | more | extra | better | less | my ) (?: extra | <plain> )* (?: strength | stiffness | headroom | clearance | room | view | weight | look | looks | sake | support | access | light | back | knees | money ) | that way | because of | on account of | which (?: beats | saves | means | keeps | gives ) )',
);
/** "..., so the flue goes straight up": a purpose. "..., so 39 and a half", "so I need ...": only what follows. */
const SO_PURPOSE = phrase(
  "^<lead>* (?: (?: i | you | we | he | she | anyone | water | nobody ) (?: can | do not | does not | will not | never | could | 'll | 'm not | gets | have not ) | (?: it | that | they | the <any>{1,3}? | nobody | nothing | my <plain> ) (?: does not | do not | will not | can not | can | 'll | 's less | 's no | 's not | 's off | stays | stay | sits | sit | drains | carries | carry | fits | clears | keeps | gets | goes | go | falls | slides | slide | runs | charges | charge | lands | matches | lasts | breathes | closes | opens | comes | works | is not | are not | has | sheds | misses | never ) | nobody | there 's | water | everything )",
);
/** "..., that evens them out", "it saves a weld": what comes of the choice. */
const DOES_GOOD = phrase(
  "^<lead>* (?: that | it | they | this | which ) (?: <adverb> | 'll | will )* (?: evens | even | gives | give | saves | save | leaves | keeps | keep | makes (?: it | the | for | room ) | lets | let | gets | puts | clears | clear | buys | spreads | frees | suits | suit | beats | stops | stiffens | lightens | balances | spares | weighs less | costs less | looks better | looks right | drains | sheds | breathes | lasts | matches )",
);
const NOT_PURPOSE = / (?:need|have|got|'ve|must|want|going|gotta|order)\//;

export interface Support {
  readonly reason?: string;
  readonly turnedDown?: string;
  /** The last clause that belongs to the choice. */
  readonly last: Said;
  /** True when any ground at all is given. */
  readonly strong: boolean;
}

/** Looks in the clause and up to three clauses after it for what the choice stands on. */
export function supportOf(said: Said, scene: Scene): Support {
  let last = said;
  let reason: string | undefined;
  let turnedDown: string | undefined;
  const cut = (words: readonly { start: number; end: number }[]) =>
    words.length ? scene.text.slice(words[0]?.start, words.at(-1)?.end) : undefined;
  const within = find(WITHIN, said);
  if (within && within.from > 0) {
    const skip = /^(?:rather|instead|and|as|in)$/.test(within.words[0]?.lower ?? '') ? 2 : 1;
    turnedDown = cut(said.words.slice(within.from + skip));
  }
  for (let step = 1; step <= 3; step++) {
    const next = neighbour(scene, said, step);
    if (!next) break;
    if (isReason(next) || givesReason(next, step)) {
      reason = cut(next.words);
      last = next;
      break;
    }
    if (/\b(?:rather than|instead of)\b/.test(next.opener) || matches(STARTS, next)) {
      if (next.words.length > 9) break;
      turnedDown = cut(next.words);
      last = next;
      continue;
    }
    // A scrap between the choice and its reason ("16 on center, because") is part of the choice.
    const scrap =
      !next.opener && next.words.length <= 7 && !next.words.some((word) => /[SHM]/.test(word.classes));
    if (!scrap && next.words[0]?.lower !== 'then') break;
  }
  return {
    ...(reason ? { reason } : {}),
    ...(turnedDown ? { turnedDown } : {}),
    last,
    strong: reason !== undefined || turnedDown !== undefined || matches(PURPOSE, said),
  };
}

function givesReason(next: Said, step: number): boolean {
  if (matches(GIVES_REASON, next)) return true;
  if (next.opener === '' && step === 1 && matches(DOES_GOOD, next)) return true;
  if (/\bwhich\b/.test(next.opener)) return / (?:beats|saves|spares)\//.test(next.code);
  return (
    next.opener === 'so' &&
    step <= 2 &&
    next.words.length < 12 &&
    matches(SO_PURPOSE, next) &&
    !NOT_PURPOSE.test(next.code)
  );
}
