/** Known names that are near to a mistyped one. */

/** So many are offered. Common practice, no source. */
const MOST = 3;

/** The nearest known names by their spelling, nearest first; where none is near, those that share a telling word. */
export function nearNames(said: string, known: readonly string[]): readonly string[] {
  const near = spelledNear(said, known);
  return near.length > 0 ? near : sharingWords(said, known);
}

/** Names that a slip of the finger or two may have meant, nearest first. */
export function spelledNear(said: string, known: readonly string[]): readonly string[] {
  const wanted = said.toLowerCase().trim();
  return known
    .map((name) => ({ name, far: distanceOf(wanted, name) }))
    .filter(({ name, far }) => far <= Math.max(2, Math.min(wanted.length, name.length) / 3))
    .sort((a, b) => a.far - b.far)
    .slice(0, MOST)
    .map(({ name }) => name);
}

const LEAST_LETTERS = 3;

/** "door" is near "panel through door": one has a telling word of the other. */
export function sharingWords(said: string, known: readonly string[]): readonly string[] {
  const words = new Set(
    said
      .toLowerCase()
      .split(/\s+/)
      .filter((word) => word.length > LEAST_LETTERS),
  );
  return known.filter((name) => name.split(/\s+/).some((word) => words.has(word))).slice(0, MOST);
}

/** Letters to change, add, drop or swap with the next one. Source: Damerau 1964, in its optimal string alignment form. */
function distanceOf(a: string, b: string): number {
  let older: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, index) => index);
  for (let row = 1; row <= a.length; row++) {
    const next = [row];
    for (let column = 1; column <= b.length; column++) {
      const change = (last[column - 1] as number) + (a[row - 1] === b[column - 1] ? 0 : 1);
      const swap =
        row > 1 && column > 1 && a[row - 1] === b[column - 2] && a[row - 2] === b[column - 1]
          ? (older[column - 2] as number) + 1
          : Number.POSITIVE_INFINITY;
      next.push(Math.min(change, swap, (last[column] as number) + 1, (next[column - 1] as number) + 1));
    }
    [older, last] = [last, next];
  }
  return last[b.length] as number;
}
