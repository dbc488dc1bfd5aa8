/** Snags told by what a thing did: it quit, it pulled out, it leans, there is not enough of it. */
import { type Draft, phraseRule, type StatementRule } from './draft.ts';
import { type Found, phrase } from './phrase.ts';
import { has, problem, subjectIsThing } from './snag.ts';

type Guard = (found: Found) => boolean;
/** These words mean nothing else. */
const plainly =
  (guard: Guard) =>
  (found: Found): false | Partial<Omit<Draft, 'kind' | 'rule'>> =>
    guard(found) && { plain: true };

export const GAVE_OUT_RULES: readonly StatementRule[] = [
  phraseRule(
    'problem',
    '<thing> quit on me',
    // Told of a time as well: "I got five done before the planer quit on me".
    phrase(
      "^<lead>* (?<subject> <plain>{1,7}? ) (?: 's | has | have | 've )? <adverb>* (?: quit | quits | died | packed up | packed in | gave up | gave out | jammed | jams | stalled | cut out | tripped | seized | seized up | burst | blew | let go | conked out | stopped dead | froze ) (?: on (?: me | us | him ) | halfway | half way | part way | mid way )",
    ),
    (found, said, scene) =>
      !scene.unreal.has(said.index) &&
      !said.asks &&
      !/\b(?:if|until|till|unless|in case)\b/.test(said.opener) &&
      subjectIsThing(found) &&
      !has(found.words, 'N') && { plain: true },
  ),
  problem(
    '<thing> pulled right out',
    phrase(
      "^<lead>* (?<subject> <plain>{1,7}? ) (?: 's | has | have | 've )? <adverb>* (?: pulled | pulls | popped | tore | torn | ripped | snapped | sheared | broke | broken | fell | fallen | rotted | rusted | cracked | worn | wore ) (?: right | clean | straight | clear ) (?: out | off | through | away | apart | across | down ) (?<rest> <any>* )",
    ),
    plainly((found) => subjectIsThing(found) && !has(found.words, 'N')),
  ),
  problem(
    '<thing> is leaning',
    phrase(
      "^<lead>* (?<subject> <plain>{1,7}? ) (?: 's | is | are | 're ) <adverb>* (?: leaning | listing | tilting | bulging | subsiding | sinking | sagging | bellying | spreading ) (?<rest> <any>* )",
    ),
    (found) =>
      subjectIsThing(found) &&
      !has(found.words, 'N') &&
      // "It's leaning against the bench": put there.
      !/^(?:against|on|up|over|by|there|beside)$/.test(found.part('rest')[0]?.lower ?? ''),
  ),
  problem(
    '<that> is not enough to <do>',
    phrase(
      "(?<subject> that | it | this | which | there | they | <plain>{1,4} ) (?: 's | is | are | 're | was ) not (?: quite | nearly | anywhere near )? enough <plain>{0,4}? to (?<verb> <any> )",
    ),
    plainly((found) => !/^(?:i|we|you|he|she)$/.test(found.part('subject').at(-1)?.lower ?? '')),
  ),
  problem(
    'they only sent <number>',
    phrase(
      "^<lead>* (?! i | we | you ) (?: they | he | she | <det>? <plain>{1,3}? ) (?: 've | have | has | 's )? (?: only | just ) (?: sent | gave | given | brought | delivered | posted | shipped | dropped off | supplied ) (?: me | us )? <number> ",
    ),
    plainly((found) => !has(found.words, 'N')),
  ),
];
