/** Whether one rectangle goes into another, turned any way. */

/** A nanometre, in metres: floating noise keeps nothing out that is exactly as large as its opening. */
const NOISE = 1e-9;

export interface Rectangle {
  readonly width: number;
  readonly height: number;
}

/**
 * Whether a rectangle p x q fits into one of a x b, turned in its plane, touching allowed (p >= q, a >= b):
 * p <= a and q <= b, or p > a, q <= b and b >= (2pqa + (p^2 - q^2) sqrt(p^2 + q^2 - a^2)) / (p^2 + q^2).
 * Source: the condition of Carver, 1957, as given by J. E. Wetzel, Rectangles in Rectangles, Mathematics Magazine
 * 73(3), 2000, DOI 10.2307/2691523. It has no division by p - q, so that squares are no case apart.
 */
export function fitsInto(part: Rectangle, opening: Rectangle): boolean {
  const [p, q] = largerFirst(part);
  const [a, b] = largerFirst(opening).map((side) => side + NOISE) as [number, number];
  if (q > b) return false;
  if (p <= a) return true;
  const square = p * p + q * q;
  const needed = (2 * p * q * a + (p * p - q * q) * Math.sqrt(square - a * a)) / square;
  return b >= needed;
}

const largerFirst = ({ width, height }: Rectangle): [number, number] =>
  width >= height ? [width, height] : [height, width];

/**
 * The largest size up to `most` for which `passes` is true, where a smaller one passes whenever a larger does; 0 when
 * none does. Found by halving, to a hundredth of a micrometre.
 */
export function largest(passes: (size: number) => boolean, most: number): number {
  if (passes(most)) return most;
  let [low, high] = [0, most];
  while (high - low > 1e-8) {
    const middle = (low + high) / 2;
    if (passes(middle)) low = middle;
    else high = middle;
  }
  return low;
}
