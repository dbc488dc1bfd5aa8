/** What all rules for problems share: who may be faulty, when nothing is wrong, and the suspected cause. */
import { isFaultDenied } from './denied.ts';
import { type Draft, isSubordinate, neighbour, phraseRule, type Scene, type StatementRule } from './draft.ts';
import { isFaultOver } from './no-matter.ts';
import type { Found, Phrase } from './phrase.ts';
import type { Said, Word } from './words.ts';

export const has = (words: readonly Word[], letter: string) =>
  words.some((word) => word.classes.includes(letter));

/** Suppositions, orders, things mended and things denied are no snags. */
function silent(said: Said, scene: Scene): boolean {
  return (
    scene.unreal.has(said.index) ||
    said.asks ||
    /\b(?:if|until|till|unless|once|before|rather than|instead of|while|whether)\b/.test(said.opener) ||
    (isSubordinate(said) && /\bwhen\b/.test(said.opener))
  );
}

type Guard = (found: Found, said: Said, scene: Scene) => boolean | Partial<Omit<Draft, 'kind' | 'rule'>>;

/** A rule for one way of telling what is wrong; the suspected cause is looked for beside it. */
export const problem = (name: string, pattern: Phrase | string, guard: Guard = () => true): StatementRule =>
  phraseRule('problem', name, pattern, (found, said, scene) => {
    if (
      silent(said, scene) ||
      OF_BODY.test(said.code) ||
      PAST_DOING.test(said.code) ||
      COULD_NOT_OF.test(said.code) ||
      isFaultOver(said) ||
      isFaultDenied(said) ||
      SUPPOSED.test(
        found.words
          .slice(0, found.words.length - found.part('rest').length)
          .map((word) => ` ${word.lower}/`)
          .join(''),
      )
    )
      return false;
    const fields = guard(found, said, scene);
    if (!fields) return false;
    const cause = causeOf(said, scene);
    return { ...(fields === true ? {} : fields), ...(cause ? { cause } : {}) };
  });

/** "My back is shot": no part of the build. */
const OF_BODY =
  / (?:my|his|her|me|your)\/\w* (?:old\/\w* |poor\/\w* )?(?:back|knees|lungs|hands|feet|shoulders|neck|head|eyes|ears|nerves|temper|wrists|heart|brain|elbow|fingers|thumbs|teeth|hair|nose|throat|lungs|muscles)\//;
/** "Tape was sagging": how it was, before or while something was done about it. */
const PAST_DOING = / (?:was|were)\/\w* (?:\S+\/\w*A\w* )*\S+ing\//;
/** "A lorry that couldn't get down the lane": told beside the matter. */
const COULD_NOT_OF = / (?:that|which|who)\/\w* could\/\w* not\//;
// "I couldn't shift the nut" is told of what was; "couldn't be better" is not. The look behind is asked at every letter, so
// it goes no further back than the classes of a word are long.
const SUPPOSED =
  /(?<! you\/[A-Za-z]{0,20}) (?:(?:would|might|may|used)\/(?!\w* not\/\w*$)|could\/(?! not\/(?! (?:be|ask|have|wish|care)\/)))/;

/** "..., because there's an earth fault", "..., I reckon it's the bearing": what the speaker suspects. */
function causeOf(said: Said, scene: Scene): string | undefined {
  const next = neighbour(scene, said, 1);
  if (!next) return undefined;
  const suspects = / (?:reckon|think|suspect|guess|bet|must|probably|maybe)\//.test(next.code);
  if (!/\b(?:because|since|cos|cause)\b/.test(next.opener) && !suspects) return undefined;
  return scene.text.slice(next.start, next.end);
}

/** Said of these, a bad state is no snag of the work. */
export const NOT_MINE = /^(?:i|we|you|he|she|us|everything|everyone|nobody|life|weather|today|world)$/;
/** The words of a thing without the clause that tells whose work it is: "the bracket (that) I welded last week". */
function ownWords(subject: readonly Word[]): readonly Word[] {
  const at = subject.findIndex(
    (word, k) =>
      k > 0 &&
      (/^(?:i|we|he|she|they)$/.test(word.lower) || (k > 1 && /^(?:that|which|who)$/.test(word.lower))),
  );
  return at > 0 ? subject.slice(0, at) : subject;
}

/** Of a person's life and body, and no part of the build. */
const OF_LIFE =
  /^(?:wrist|wrists|thumb|hair|boots|trousers|jumper|gloves|phone|kettle|telly|sofa|dinner|lunch|tea|laptop|camera|tripod|memo|weekend|mosquitoes|midges|skeeters|flies|weather)$/;

/** Whether the words name a thing and no person, nobody and no day of the speaker's life. */
export const isNothingOfOurs = (subject: readonly Word[]): boolean => {
  const own = ownWords(subject);
  return (
    !own.some((word) => NOT_MINE.test(word.lower) || OF_LIFE.test(word.lower)) &&
    !has(own, 'N') &&
    !has(own, 'J')
  );
};

export const subjectIsThing = (found: Found) => {
  const subject = ownWords(found.part('subject'));
  // "780 is too high", "that height's wrong": said of a size, it leads to a choice and is no snag of its own.
  if (/^\d|^(?:height|width|size|hundred|spacing|idea|number|figure)$/.test(subject.at(-1)?.lower ?? ''))
    return false;
  return isNothingOfOurs(subject);
};
