/** A promise told of afterwards: "told the viewers I'd show how", "I did say on camera that I'd weigh the door". */
import { draft, firstWord, neighbour, type Scene, type StatementRule } from './draft.ts';
import { find, type Phrase, phrase } from './phrase.ts';
import { KEPT } from './promise-rule.ts';
import type { Said } from './words.ts';

const SAYING =
  "^<lead>* <plain>{0,3}? (?: i | we )? (?: 've | have | had | did | already )* (?: told | tell | promised | promise | said | say | mentioned | mention | swore )";
const WILL =
  "(?: that )? (?: i | we ) (?: 'd | would | will | 'll | was going to | were going to | shall | should )";

const SAID_WHOLE = phrase(`${SAYING} (?<to> <any>{0,7}? ) ${WILL} (?<what> <any>+ ) $`);
const SAID_FIRST = phrase(`${SAYING} (?<to> <any>{1,7} ) $`);
const THEN_WILL = phrase(`^${WILL} (?<what> <any>+ ) $`);
const PROMISED_THING = phrase(
  "^<lead>* <plain>{0,3}? (?: i | we ) (?: 've | have | had | did | already )* (?: promised | promise ) (?<to> <any>{1,5}? ) (?: a | an | the | some | another | more ) (?<what> <any>+ ) $",
);

const VIEWERS =
  / (?:you|ye|viewers?|folks|everyone|everybody|people|subscribers|audience|channel|comments?|camera|film|screen|video|episode)\/| \S+\/\w*E/;
/** What is done for those who watch, whatever it is of. */
const SHOWS = /^ (?:show|film|explain|demonstrate|answer|share)\//;
/** Kept in the same breath: "I said I'd show you the hinge, and here it is". */
const KEPT_HERE = / (?:here\/\S* (?:it|they|we|you|he|she)|here\/\S* 's|done|did)(?:\/| )/;

const codeOf = (words: readonly { lower: string; classes: string }[]) =>
  `${words.map(({ lower, classes }) => ` ${lower}/${classes}`).join('')}`;

/** Whether viewers are spoken to, and nothing is asked, denied or already kept. */
function counts(clauses: readonly Said[], to: string, scene: Scene): boolean {
  if (clauses.some((said) => /\b(?:if|unless)\b/.test(said.opener) || said.asks || KEPT.test(said.code)))
    return false;
  if (clauses.some((said) => / (?:not|never)\//.test(said.code))) return false;
  const last = clauses.at(-1);
  const next = last && scene.said[last.index + 1];
  if (next && next.sentence - last.sentence <= 1 && KEPT_HERE.test(next.code)) return false;
  return VIEWERS.test(to);
}

function inOneClause(pattern: Phrase, wide: boolean): StatementRule['read'] {
  return (said, scene) => {
    const found = find(pattern, said);
    if (!found) return undefined;
    // "Somebody in the comments asked for the list and I said I'd put it up": viewers stand before it.
    const before = wide ? (neighbour(scene, said, -1)?.code ?? '') : '';
    const to = `${before}${codeOf([...found.part('to'), ...found.part('what')])}`;
    if (!counts([said], to, scene)) return undefined;
    const sure = SHOWS.test(codeOf(found.part('what')));
    return draft('promise', said, sure ? { sure } : {}, firstWord(said));
  };
}

export const PROMISES_TOLD: readonly StatementRule[] = [
  { name: "told <viewers> I'd <do>", read: inOneClause(SAID_WHOLE, true) },
  {
    name: "said <to viewers>, that I'd <do>",
    read: (said, scene) => {
      const found = find(SAID_FIRST, said);
      const next = found && neighbour(scene, said, 1);
      if (!found || !next || !find(THEN_WILL, next)) return undefined;
      if (!counts([said, next], codeOf(found.part('to')), scene)) return undefined;
      return { ...draft('promise', said, {}, firstWord(said)), to: next.index, end: next.end };
    },
  },
  { name: 'promised <viewers> <thing>', read: inOneClause(PROMISED_THING, false) },
];
