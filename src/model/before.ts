/** What must not be done until a task is: "photograph the pipes before this wall is closed in". */
import type { Span } from '../language/notes.ts';
import { gateWords } from './gate-words.ts';

/** A clause after "before", up to a comma, a new subject that needs something, or the end. */
const BEFORE =
  /\bbefore\s+((?:(?!\b(?:i|we|you)(?:'ve| have)? (?:need|must|have to|got to|gotta|want|should|ought)\b)[^,.;:!?])+)/gi;
/** "Can't drop it before the diver has looked": the clause is what is waited for. */
const REFUSED = /(?:\bnot?\b|n't\b|\bcannot\b|\bnever\b|\bnothing\b|\bnobody\b)[^,.;:!?]*$/i;
/** Work is under way in the clause: "before the ceiling goes up", "before I close this in". */
const PASSIVE = /\b(?:is|are|gets?|goes|go|get|'s|'re|comes?)\b/i;

/** The words of what must wait for this task, if its sentence has them outside the task's own gates. */
export function beforeWhat(
  sentence: string,
  task: {
    readonly quote: string;
    readonly gist: string;
    readonly waitsFor: readonly string[];
    readonly span: Span;
  },
): string | undefined {
  const own = sentence.indexOf(task.quote);
  for (const match of sentence.matchAll(BEFORE)) {
    const start = match.index + match[0].length - (match[1] as string).length;
    let clause = match[1] as string;
    // The task's own words end the clause: "before this is closed in photograph the pipes".
    if (own > start && own < start + clause.length) clause = clause.slice(0, own - start);
    clause = clause.trim();
    if (REFUSED.test(sentence.slice(0, match.index))) continue;
    if (task.waitsFor.some((wait) => sameWords(wait, clause))) continue;
    // "It has to be dry before I glue the planks" is the task of glueing them.
    if (isOwn(task, clause)) continue;
    if (isWork(clause)) return clause;
  }
  return undefined;
}

const isOwn = (
  { gist, waitsFor }: { readonly gist: string; readonly waitsFor: readonly string[] },
  clause: string,
) => waitsFor.length > 0 && gist !== '' && sameWords(gist, clause) && sameWords(clause, gist);

function isWork(clause: string): boolean {
  const telling = gateWords(clause).words;
  if (telling.length === 0) return false;
  const hasWay = telling.some(({ stem, ways }) => stem !== '' && ways.size > 0);
  return (hasWay || PASSIVE.test(clause)) && telling.length <= MOST_WORDS;
}
/** More telling words than a clause of work has: talk without full stops. */
const MOST_WORDS = 7;

function sameWords(a: string, b: string): boolean {
  const [left, right] = [gateWords(a).stems, gateWords(b).stems];
  return [...left].filter((stem) => right.has(stem)).length * 2 > left.size;
}
