/**
 * A table looked up by spoken words. It inherits nothing: the words "constructor" and "toString", which any plain
 * object answers to, are in it only when they were put there.
 */
export function wordTable<T>(entries: Readonly<Record<string, T>>): Readonly<Record<string, T>> {
  return Object.assign(Object.create(null), entries);
}

/** The words of a list, parted by white space. */
export const wordSet = (words: string): ReadonlySet<string> => new Set(words.split(/\s+/).filter(Boolean));
