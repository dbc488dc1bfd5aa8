/** Whether two names are said of the same goods. */
import { kinship, nameStems } from '../names.ts';
import { stemOf } from '../stems.ts';

/** Words for a portion of goods: a sheet of ply is ply. Common practice, no source. */
const PORTIONS: ReadonlySet<string> = new Set(
  'sheet board length roll bag tin pack piece plank bar slab box pot tub bundle reel coil lot batch order bottle can'
    .split(' ')
    .map(stemOf),
);

/** The same thing said shorter or longer, or the same stuff by another portion; other goods of one head are not. */
export function areSameGoods(a: string, b: string): boolean {
  const kin = kinship(a, b);
  if (kin === 'same' || kin === 'shorter' || kin === 'longer' || kin === 'sort') return true;
  const [left, right] = [stuffOf(a), stuffOf(b)];
  return left !== '' && left === right;
}

function stuffOf(name: string): string {
  return nameStems(name)
    .filter((stem) => !PORTIONS.has(stem))
    .join(' ');
}
