/** Sizes that nobody has said yet of a thing that is about to be made. */
import { isHole, type Making, makingOf } from '../../language/kept/making.ts';
import { mirroredName, withoutSide } from '../../language/lexicon/sides.ts';
import { nameStems } from '../names.ts';
import { bestItem } from '../naming.ts';
import type { ClaimRow, ProjectRows } from '../rows.ts';
import type { TaskView } from '../views.ts';
import type { MissingSizes } from './kept-views.ts';

/** For each ready task that makes a thing, the sizes it needs and lacks; tasks that lack none are left out. */
export function missingSizes(
  rows: ProjectRows,
  tasks: readonly Pick<TaskView, 'id' | 'gist' | 'status' | 'source'>[],
): readonly MissingSizes[] {
  return (
    tasks
      // A part that is made already is only looked over.
      .filter(({ id, status }) => status === 'ready' && !rows.get('tasks', id)?.looksOver)
      .flatMap((task) => {
        const making = makingOf(task.gist);
        if (!making) return [];
        const known = claimsOn(rows, making.thing);
        const missing = lacking(making, known);
        if (missing.length === 0) return [];
        return [{ taskId: task.id, gist: task.gist, thing: making.thing, missing, source: task.source }];
      })
  );
}

/** Figures of the thing, of its other hand, and of the part that both are. */
function claimsOn(rows: ProjectRows, thing: string): readonly ClaimRow[] {
  const names = [thing, mirroredName(thing), withoutSide(thing)].filter(
    (name) => name !== undefined && name !== '',
  );
  const ids = new Set(
    names.flatMap(
      (name) => bestItem(name as string, rows.itemsLike(nameStems(name as string)), [])?.id ?? [],
    ),
  );
  return [...ids].flatMap((id) => rows.claimsOf(id)).filter(({ status }) => status !== 'rejected');
}

/** Outer sizes, in the order in which they are asked for. */
const SIDES = ['width', 'length', 'height', 'depth'] as const;

function lacking(making: Making, claims: readonly ClaimRow[]): readonly string[] {
  const lengths = claims.filter(
    ({ dimension, attribute }) => dimension === 'length' && attribute !== 'offset',
  );
  const said = new Set<string>(lengths.map(({ attribute }) => attribute));
  const others = making.others
    .filter(({ anyOf }) => !anyOf.some((one) => said.has(one)))
    .map(({ words }) => words);
  if (isHole(making) && (said.has('diameter') || said.has('radius'))) return [];
  const sides = SIDES.filter((side) => said.has(side)).length + pairs(lengths);
  if (sides >= making.sides) return others;
  return [...sidesMissing(making, said, sides), ...others];
}

/** "400 by 320" names no side: each size counts for one. */
function pairs(claims: readonly ClaimRow[]): number {
  const sizes = claims.filter(({ attribute }) => attribute === 'size');
  return new Set(sizes.map(({ memoId, value, unit }) => `${memoId} ${value} ${unit}`)).size;
}

function sidesMissing(making: Making, said: ReadonlySet<string>, have: number): readonly string[] {
  if (have === 0 && isHole(making)) return ['diameter, or width and height'];
  if (have === 0 && making.sides === 3) return ['width', 'height', 'depth'];
  if (have === 0) return ['width', 'length or height'];
  const left = SIDES.filter((side) => !said.has(side));
  const wanted = making.sides - have;
  if (wanted === 1)
    return [making.sides === 2 && said.has('width') ? 'length or height' : left.slice(0, 2).join(' or ')];
  return left.slice(0, wanted);
}
