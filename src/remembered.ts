/** What was found out for a text, kept for when it comes back. */

/**
 * `find` with its answers kept, for questions that come back: the same words are asked for with every memo. At `most`
 * answers all are forgotten, so that a long project takes no more memory than a short one. `find` must give the same answer
 * each time, and never undefined.
 */
export function remembered<A extends NonNullable<unknown>>(
  most: number,
  find: (text: string) => A,
): (text: string) => A {
  const kept = new Map<string, A>();
  return (text) => {
    const known = kept.get(text);
    if (known !== undefined) return known;
    const found = find(text);
    if (kept.size >= most) kept.clear();
    kept.set(text, found);
    return found;
  };
}
