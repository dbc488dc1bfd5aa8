/** The largest parts of a sum, by the name of what stands behind each. */
import type { Given, Range } from './check.ts';
import { all, sumOf } from './ranges.ts';

export interface Contributor {
  readonly name: string;
  readonly range: Range;
}

/**
 * The named parts of a sum, largest first by the figure as said, at most `most` of them. Parts of one name are taken
 * together; a part without a name is called by its place: "part 3".
 */
export function largestOf(
  given: Given,
  input: string,
  ranges = all(given, input),
  most = 3,
): readonly Contributor[] {
  const labels = given.labels?.get(input) ?? [];
  const byName = new Map<string, Range[]>();
  ranges.forEach((range, place) => {
    const name = labels[place] || `${input} ${place + 1}`;
    byName.set(name, [...(byName.get(name) ?? []), range]);
  });
  return [...byName]
    .map(([name, parts]) => ({ name, range: sumOf(parts) }))
    .sort((left, right) => right.range.mid - left.range.mid)
    .slice(0, most);
}
