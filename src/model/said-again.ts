/** Whether a task is only said again: the same things, the same way of doing, no number or rank that differs. */
import { remembered } from '../remembered.ts';
import { actionsOf } from './actions.ts';
import { wordsOf } from './names.ts';
import type { TaskRow } from './rows.ts';
import { stemOf } from './stems.ts';
import { areRivalWords, EMPTY } from './telling-words.ts';

interface Words {
  readonly plain: ReadonlySet<string>;
  readonly things: ReadonlySet<string>;
  readonly ways: ReadonlySet<string>;
}

const wordsOfTask = ({ gist, waitsFor }: TaskRow): Words =>
  takenApart(waitsFor.reduce((left, wait) => left.replace(wait, ' '), gist));

const takenApart = remembered(20_000, (text): Words => {
  const plain = wordsOf(text);
  const stems = [...new Set(plain.map(stemOf))].filter((stem) => !EMPTY.has(stem));
  return {
    plain: new Set(plain),
    things: new Set(stems.filter((stem) => actionsOf(stem).size === 0)),
    ways: new Set(stems.flatMap((stem) => [...actionsOf(stem)])),
  };
});

/** "The charger has to wait", "so the stove waits": a piece of work that is put off, without its verb. */
const PUT_OFF =
  /^(?:.{0,40}?)\b(?:has|have|had|must|can|could|will|['’]ll|needs?|is|are|going|got|to|just|simply|still| )*\bwaits?(?: (?:now|then|too|a bit|a while|for now|for it|for that))?$/i;

/** Whether a task that was said now only puts off one that is open already: all its things are in that one. */
export function isPutOff(said: TaskRow, open: TaskRow): boolean {
  if (!PUT_OFF.test(said.gist.replace(/[.,;]+$/, ''))) return false;
  const own = said.waitsFor.reduce((left, wait) => left.replace(wait, ' '), said.gist);
  const things = wordsOf(own)
    .map(stemOf)
    .filter((stem) => !EMPTY.has(stem) && stem !== WAIT);
  if (things.length === 0) return false;
  const { plain } = wordsOfTask(open);
  const stems = new Set([...plain].map(stemOf));
  return !areRivalWords(new Set(wordsOf(own)), plain) && things.every((stem) => stems.has(stem));
}
const WAIT = stemOf('wait');

/** Words that say that it is another one, however alike the rest is. */
const ANOTHER = /\b(?:another|other|more|again|second|next|extra|spare|rest)\b/i;

/** Whether a task that was said now is one that is open already. */
export function isSaidAgain(said: TaskRow, open: TaskRow): boolean {
  if (ANOTHER.test(said.gist) !== ANOTHER.test(open.gist)) return false;
  const [a, b] = [wordsOfTask(said), wordsOfTask(open)];
  if (a.things.size === 0 || b.things.size === 0 || areRivalWords(a.plain, b.plain)) return false;
  if (numbersOf(a.plain) !== numbersOf(b.plain)) return false;
  if (a.ways.size > 0 !== b.ways.size > 0) return false;
  if (a.ways.size > 0 && ![...a.ways].some((way) => b.ways.has(way))) return false;
  const [less, more] = a.things.size <= b.things.size ? [a.things, b.things] : [b.things, a.things];
  const shared = [...less].filter((stem) => more.has(stem)).length;
  return shared === less.size && shared >= more.size * MOSTLY;
}
/** Of the fuller wording's things, how many must be in the shorter one. */
const MOSTLY = 0.75;

const numbersOf = (words: ReadonlySet<string>) =>
  [...words]
    .filter((word) => /\d/.test(word))
    .sort()
    .join(' ');
