import { stemOf } from './stems.ts';

/** Words of a name that do not tell one thing from another. */
const FILLER = new Set(
  'a an the this that these those my our your his her their its of for on in at to from with and by one ones bit bits thing things own whole actual said same'.split(
    ' ',
  ),
);

/** Splits words: letters, digits and marks inside them; a possessive's `'s` goes. */
export function wordsOf(text: string): readonly string[] {
  return (text.toLowerCase().match(/[\p{L}\p{N}]+(?:['’.][\p{L}\p{N}]+)*/gu) ?? [])
    .map((word) => word.replace(/['’]s$/, ''))
    .filter((word) => word !== '');
}

/** Stems that make a name's identity, sorted, each once. A name of nothing but filler keeps its words. */
export function nameStems(name: string): readonly string[] {
  const words = wordsOf(name);
  const telling = words.filter((word) => !FILLER.has(word));
  return [...new Set((telling.length > 0 ? telling : words).map(stemOf))].sort();
}

/** One string per identity: "top of the bench" and "the bench top" have the same. */
export function nameKey(name: string): string {
  return nameStems(name).join(' ');
}
