/** Views in which everything that came from outside is the same words, for tests of hostile text. */

/** Fields that hold words of a memo, of a person, or of a file's name. */
const SPOKEN: ReadonlySet<string> = new Set([
  ...['gist', 'quote', 'item', 'said', 'what', 'why', 'cause', 'reason', 'turnedDown', 'product', 'panel'],
  ...['shot', 'clip', 'part', 'name', 'words', 'subject', 'text', 'condition', 'datum', 'before', 'thing'],
  ...['about', 'formula'],
]);

/** The same view with `words` wherever somebody's words stand; shapes, ids, dates and numbers stay. */
export function toldIn<T>(view: T, words: string): T {
  const walk = (value: unknown, key: string): unknown => {
    if (typeof value === 'string') return SPOKEN.has(key) ? words : value;
    if (Array.isArray(value)) return value.map((one) => walk(one, key));
    if (value === null || typeof value !== 'object') return value;
    return Object.fromEntries(Object.entries(value).map(([name, one]) => [name, walk(one, name)]));
  };
  return walk(view, '') as T;
}
