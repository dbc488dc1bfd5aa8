import {
  type Draft,
  draft,
  firstWord,
  isReason,
  isSubordinate,
  neighbour,
  phraseRule,
  type Scene,
  type StatementRule,
} from './draft.ts';
import { type Found, find, matches, phrase } from './phrase.ts';
import { dayAfter, dayIn } from './tasks.ts';
import type { Said } from './words.ts';

type Fields = Partial<Omit<Draft, 'kind' | 'rule'>>;

const silent = (said: Said, scene: Scene) =>
  scene.unreal.has(said.index) ||
  said.asks ||
  isSubordinate(said) ||
  isReason(said) ||
  /\bwhich\b/.test(said.opener);

/** "because it comes out again", "since ...", "so that ...", "on the grounds that": why. */
const GIVES_REASON = phrase("^ (?: so that | on the grounds | in order to | that way | 'cos )");
const CONTRAST_WORDS = phrase(
  '(?: rather than | instead of | not (?: the | a | an | in | on | with | boards | <plain> ) | and not <any> | over <plain> $ )',
);
const STARTS_CONTRAST = phrase(
  '^ <lead>* (?: not <any> | rather than | instead of | no longer | over <any> )',
);
const PURPOSE = phrase(
  '(?: to (?: keep | save | get | make | stop | let | clear | give | allow | avoid | match | suit | miss | fit | leave | take | free | stiffen | lighten ) | so (?: the | it | that | they | i | we | there | you | my | nobody ) | for (?: the | more | extra | better | less ) (?: extra | <plain> )* (?: strength | stiffness | headroom | clearance | room | view | weight | look | sake | support | access | light ) | that way | because of | on account of | which (?: beats | saves | means | keeps | gives ) )',
);

/** Clauses right after the choice that say why, or what was turned down. */
function support(
  said: Said,
  scene: Scene,
): { readonly reason?: string; readonly turnedDown?: string; readonly last: Said; readonly strong: boolean } {
  let last = said;
  let reason: string | undefined;
  let turnedDown: string | undefined;
  const cut = (words: readonly { start: number; end: number }[]) =>
    words.length ? scene.text.slice(words[0]?.start, words.at(-1)?.end) : undefined;
  const within = find(CONTRAST_WORDS, said);
  if (within && within.from > 1)
    turnedDown = cut(
      said.words.slice(within.from + (/^(rather|instead|and)$/.test(within.words[0]?.lower ?? '') ? 2 : 1)),
    );
  for (let step = 1; step <= 3; step++) {
    const next = neighbour(scene, said, step);
    if (!next) break;
    if (isReason(next)) {
      reason = cut(next.words);
      last = next;
      break;
    }
    if (/\b(?:rather than|instead of)\b/.test(next.opener) || matches(STARTS_CONTRAST, next)) {
      if (next.words.length > 9) break;
      turnedDown = cut(next.words);
      last = next;
      continue;
    }
    if (
      matches(GIVES_REASON, next) ||
      (next.opener === 'so' &&
        / (?:can|don't|will|would|'ll|does|do|nobody|sits|carry|carries|fits|clears|keeps|drains)\//.test(
          next.code,
        ) &&
        step === 1 &&
        next.words.length < 10 &&
        !/ (?:need|have|got|'ve)\//.test(next.code))
    ) {
      reason = cut(next.words);
      last = next;
      break;
    }
    if (/\bwhich\b/.test(next.opener) && / (?:beats|saves)\//.test(next.code)) {
      reason = cut(next.words);
      last = next;
      break;
    }
    // A scrap between the choice and its reason ("16 on center, because") is part of the choice.
    const scrap =
      !next.opener && next.words.length <= 7 && !next.words.some((word) => /[S]/.test(word.classes));
    if (!scrap && !/^(that way|the wall)/.test(next.words[0]?.lower ?? '')) break;
  }
  return {
    ...(reason ? { reason } : {}),
    ...(turnedDown ? { turnedDown } : {}),
    last,
    strong: reason !== undefined || turnedDown !== undefined || matches(PURPOSE, said),
  };
}

/** The choice with its reason in one quote. */
function chosen(said: Said, scene: Scene): Fields {
  const { reason, turnedDown, last } = support(said, scene);
  return {
    end: last.end,
    to: last.index,
    ...(reason ? { reason } : {}),
    ...(turnedDown ? { turnedDown } : {}),
  };
}

const decision = (
  name: string,
  pattern: RegExp | string,
  guard: (found: Found, said: Said, scene: Scene) => boolean,
): StatementRule =>
  phraseRule(
    'decision',
    name,
    pattern,
    (found, said, scene) => !silent(said, scene) && guard(found, said, scene) && chosen(said, scene),
  );

const set = (words: string) => new Set(words.trim().split(/\s+/));
/** Doing these is choosing, even without a reason. */
const CHOOSING =
  set(`switching flipping dropping raising lowering swapping ditching scrapping stretching widening narrowing upgrading
  downgrading sticking plumping opting skipping shrinking shortening lengthening thickening keeping having moving turning
  reversing binning abandoning`);
/** Doing these is choosing when a reason or a thing turned down is with it. */
const FILMING =
  / (?:filming|recording|talking|sitting|standing|looking|thinking|saying|telling|trying|wondering|hoping|waiting|kidding|joking|guessing|starting|getting|losing|living|feeling|wearing)\//;

const notYet = (said: Said, scene: Scene) =>
  dayIn(said, scene) !== undefined || dayAfter(said, scene) !== undefined;

export const DECISION_RULES: readonly StatementRule[] = [
  decision(
    "I've decided",
    phrase(
      "(?: i | we ) (?: 've | have | had )? <adverb>* (?: decided | settled on | settled for | plumped for | opted | chosen | picked | resolved | landed on | come down on | come round to | come around to | gone for | gone with | gone up to | gone down to | gone over to | gone back to | went for | went with | went up to | went down to | changed my mind | made up my mind | said yes to | said no to | agreed to | agreed on | ruled out | committed to )",
    ),
    (found) => !found.words.some((word) => word.classes.includes('N')),
  ),
  decision(
    'it was decided',
    phrase(
      "(?: final answer | change of plan | decision made | that 's (?: decided | settled | final | that decided ) | executive decision | is decided | it 's settled | call it settled | my mind 's made up | new plan | plan b )",
    ),
    (found, said) => found.to - found.from < said.words.length || said.index > 0,
  ),
  decision(
    'I went <this> over <that>',
    phrase(
      "^<lead>* <plain>{0,4}? (?: i | we ) (?: 've | have )? <adverb>* (?: gone | went ) (?! in | out | up | down | back | off | home | to | through | over | round ) (?<object> <any>+ )",
    ),
    (_, said, scene) => support(said, scene).strong || / over\//.test(said.code),
  ),
  decision(
    'I am choosing <thing>',
    phrase(
      "^<lead>* (?: i | we ) (?: 'm | 're | am | are ) (?: now | <adverb> )* (?<verb> <any> ) (?<object> <any>* )",
    ),
    (found, said, scene) => {
      const verb = found.part('verb')[0]?.lower ?? '';
      const next = found.part('object')[0]?.lower ?? '';
      if (found.words.some((word) => word.classes.includes('E'))) return false;
      if (FILMING.test(` ${verb}/`) && !(verb === 'getting' && support(said, scene).strong)) return false;
      if (verb === 'going') {
        if (/^(with|for|up|down|back|over|from|metal|to)$/.test(next)) {
          const to = found.part('object')[1];
          // "going to fit" is a plan, "going to metal siding" and "going up to 960" are choices.
          if (next === 'to' && to?.classes.includes('B') && !to.classes.includes('T'))
            return support(said, scene).strong;
          return true;
        }
        return support(said, scene).strong;
      }
      if (!/ing$/.test(verb) || notYet(said, scene)) return false;
      return CHOOSING.has(verb) || support(said, scene).strong || changesSize(said, scene);
    },
  ),
  decision(
    "I'm not doing <this>, I'm doing <that>",
    phrase("^<lead>* (?: i | we ) (?: 'm | 're | am | are ) not (?<verb> <any> ) (?<object> <any>+ )"),
    (found, said, scene) => {
      const verb = found.part('verb')[0]?.lower ?? '';
      const next = neighbour(scene, said, 1);
      return (
        /ing$/.test(verb) &&
        next !== undefined &&
        !/because|since/.test(next.opener) &&
        / (?:i|we|it)\/\w* (?:'m|'re|'ve|am|have|'s|went)\//.test(next.code)
      );
    },
  ),
  decision(
    '<thing> is going <this way>, because',
    phrase(
      "^<lead>* (?<subject> <plain>{1,8}?) (?: 's | is | are | 're | 'll be ) (?: <adverb> )* (?: going | getting | having | staying | being | to be | stopping | coming ) (?<object> <any>+ )",
    ),
    (found, said, scene) => {
      const subject = found.part('subject');
      if (
        subject.some((word) => /[EJI]/.test(word.classes)) ||
        found.words.some((word) => word.classes.includes('N') && word !== found.words.at(-1))
      ) {
        if (!matches(CONTRAST_WORDS, said)) return false;
      }
      if (/^(you|i|we|he)$/.test(subject[0]?.lower ?? '')) return false;
      const getting = / (?:getting|having)\/\w* (?:a|an|its|their|the)\//.test(said.code);
      return support(said, scene).strong || (getting && !notYet(said, scene)) || / staying\//.test(said.code);
    },
  ),
  decision(
    '<thing> goes <place>, because',
    phrase(
      "^<lead>* (?<subject> <plain>{1,8}?) (?: (?: 'll | will )? <adverb>* (?: goes | go | gets | get | takes | sits | moves | stays | stay | becomes | open | opens | hang | run | runs ) ) (?<object> <any>+ )",
    ),
    (found, said, scene) => {
      const subject = found.part('subject');
      if (subject.some((word) => /[EJI]/.test(word.classes) && word.lower !== 'they')) return false;
      if (found.words.some((word) => word.classes.includes('N')) && !matches(CONTRAST_WORDS, said))
        return false;
      const why = support(said, scene);
      return why.reason !== undefined || why.turnedDown !== undefined;
    },
  ),
  decision(
    '<thing> is <one>, not <other>, because',
    phrase("^<lead>* (?<subject> <plain>{1,6}? ) (?: 's | is | are | 're | 'll | will ) (?<object> <any>+ )"),
    (_, said, scene) => {
      const why = support(said, scene);
      return why.reason !== undefined && why.turnedDown !== undefined;
    },
  ),
  decision(
    'I will <do> <this>, because',
    phrase(
      "^<lead>* (?: i | we ) (?: 'll | will | 'd rather ) <adverb>* (?<verb> <do> | go | have | stick | keep ) (?<object> <any>+ )",
    ),
    (found, said, scene) => {
      if (found.words.some((word) => /[NE]/.test(word.classes))) return false;
      const why = support(said, scene);
      return why.reason !== undefined || why.turnedDown !== undefined;
    },
  ),
  decision(
    "what I'll do is <this> rather than <that>",
    phrase("^<lead>* what (?: i | we ) (?: 'll | will | 'm going to ) do is"),
    () => true,
  ),
  decision(
    '<thing> is off',
    phrase(
      "^<lead>* (?: that one | that | the <plain>{1,3}? | <plain>{1,2}? idea ) (?: 's | is ) <adverb>* (?: off | out | off the table | out the window )$",
    ),
    (_found, said, scene) => {
      const next = neighbour(scene, said, 1);
      return (
        next !== undefined && / (?:'m|instead|having|going|it)\//.test(next.code) && /and/.test(next.opener)
      );
    },
  ),
  {
    // "22 mil chipboard and not boards, because boards squeak": the thing alone, its contrast and its reason.
    name: '<this> and not <that>, because',
    read: (said, scene) => {
      if (
        silent(said, scene) ||
        said.words.some((word) => /[SM]/.test(word.classes)) ||
        /^(i|we|you)$/.test(said.words[0]?.lower ?? '')
      )
        return undefined;
      if (said.words.length > 12) return undefined;
      const why = support(said, scene);
      if (!why.reason) return undefined;
      const before = neighbour(scene, said, -1);
      const about = before && !before.words.some((word) => word.lower === 'i');
      if (!why.turnedDown && !about) return undefined;
      return draft('decision', said, { ...chosen(said, scene), weak: !why.turnedDown }, firstWord(said));
    },
  },
];

/** "I'm making it bigger", "I'm taking it to 6 and 1/4", "I'm making new ones". */
const CHANGE = phrase(
  '(?: bigger | smaller | wider | narrower | taller | shorter | longer | deeper | thicker | thinner | higher | lower | heavier | lighter | stronger | new (?: one | ones ) | up to | down to | out to | to <number> | <number> <any>{0,2}? (?: higher | lower | wider ) | another way | the other way | instead )',
);
function changesSize(said: Said, scene: Scene): boolean {
  const next = neighbour(scene, said, 1);
  return (
    matches(CHANGE, said) ||
    (next !== undefined && !next.opener && next.words.length < 8 && matches(CHANGE, next))
  );
}
