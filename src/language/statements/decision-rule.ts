/** What all rules for decisions share: when nothing is settled, what a choice stands on, and bare announcements of one. */
import {
  type Draft,
  firstWord,
  isReason,
  isSubordinate,
  neighbour,
  phraseRule,
  type Scene,
  type StatementRule,
} from './draft.ts';
import { type Found, matches, type Phrase, phrase } from './phrase.ts';
import { supportOf } from './support.ts';
import type { Said } from './words.ts';

type Fields = Partial<Omit<Draft, 'kind' | 'rule'>>;

/** "It's going to be the nineteenth instead of the twelfth": when it comes, and no choice of the speaker's. */
function tellsOnlyADay({ words }: Said): boolean {
  const verb = words.findIndex(({ classes }) => /[SM]/.test(classes));
  const rest = words.slice(verb + 1);
  return (
    verb >= 0 &&
    rest.some(({ lower }) => /(?:day|th|first|second|third)$/.test(lower)) &&
    rest.every(
      ({ lower, classes }) =>
        /[DRTQ]/.test(classes) ||
        /^(?:going|gonna|to|be|instead|now|not|then|\w+th|first|second|third|rather|than)$/.test(lower),
    )
  );
}

export const silent = (said: Said, scene: Scene) =>
  scene.unreal.has(said.index) ||
  / (?:maybe|perhaps|possibly|tempted|dunno)\//.test(said.code) ||
  said.asks ||
  isSubordinate(said) ||
  isReason(said) ||
  tellsOnlyADay(said) ||
  /\bwhich\b/.test(said.opener);

/** The choice with its reason in one quote. */
export function chosen(said: Said, scene: Scene): Fields {
  const { reason, turnedDown, last } = supportOf(said, scene);
  return {
    end: last.end,
    to: last.index,
    ...(reason ? { reason } : {}),
    ...(turnedDown ? { turnedDown } : {}),
  };
}

/** Says only that something is settled; what, is said just before or just after. */
const ANNOUNCES = phrase(
  "^<lead>* (?: (?: i | we ) (?: 've | have )? <adverb>* (?: decided | changed my mind <any>{0,6}? | made up my mind | made my mind up | come round to it | come around to it | said yes | settled | been talked down | backed down ) | final answer | final | change of plan | decision made | that 's (?: decided | settled | final ) | executive decision | done deal | deal done | settled it | (?: i | we ) (?: 've )? (?: talked it over | slept on it | thought it through | thought it over | weighed it up ) | new plan | decided on the spot | it 's settled | no more emails | my back voted | end of discussion | vote is in ) (?: then | now | so )* $",
);

/** Widens a bare announcement over the clauses that say what was settled. */
function announced(said: Said, scene: Scene): Fields {
  if (!matches(ANNOUNCES, said)) return {};
  const before = neighbour(scene, said, -1);
  const after = neighbour(scene, said, 1);
  const named =
    before && before.words.length > 2 && !before.words.every((word) => word.classes.includes('L'));
  if (named && !/ mind\/| plan\/| answer\//.test(said.code)) {
    const further = before.words.length < 5 ? neighbour(scene, before, -1) : undefined;
    const from = further && !further.words.every((word) => word.classes.includes('L')) ? further : before;
    return { from: from.index, start: from.words[firstWord(from)]?.start ?? from.start };
  }
  if (!after) return {};
  const last = neighbour(scene, after, 1) ?? after;
  return { to: last.index, end: last.end };
}

/** A rule for one way of choosing; the reason and what was turned down are looked for beside it. */
export const chosenHere = (
  name: string,
  pattern: Phrase | string,
  guard: (found: Found, said: Said, scene: Scene) => boolean | Fields,
): StatementRule =>
  phraseRule('decision', name, pattern, (found, said, scene) => {
    const own = !silent(said, scene) && guard(found, said, scene);
    if (!own) return false;
    return { ...chosen(said, scene), ...announced(said, scene), ...(own === true ? {} : own) };
  });
