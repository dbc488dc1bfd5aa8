/** What the project knows that helps to read a memo's words: the things it may name, their figures, the open tasks. */
import { DIMENSIONS, type KnownFigure, type KnownLimit, type ReadContext } from './language/notes.ts';
import { nameStems } from './model/names.ts';
import type { ClaimRow, ProjectRows } from './model/rows.ts';

/**
 * How many things of the project a memo is read with: those whose names share most with its words. A memo of an hour
 * names fewer; more would make the reading of one memo cost as much as the project is big.
 */
const MOST_KNOWN_ITEMS = 400;

/** What a memo of these words is read with. Costs by the words of the text, not by the size of the project. */
export function whatIsKnown(
  rows: ProjectRows,
  text: string,
): Required<Pick<ReadContext, 'knownItems' | 'knownFigures' | 'knownLimits' | 'openTasks'>> {
  const items = rows.itemsNear(nameStems(text), MOST_KNOWN_ITEMS);
  return {
    knownItems: items.flatMap((item) => [item.name, ...item.aliases]),
    knownFigures: knownFrom(items.flatMap((item) => rows.claimsOf(item.id))),
    knownLimits: limitsKnown(rows),
    openTasks: rows.openTasks().map((task) => task.gist),
  };
}

/** Figures said so far by the name they were said under, oldest first. */
function knownFrom(claims: readonly ClaimRow[]): readonly KnownFigure[] {
  return claims
    .filter((claim) => claim.status !== 'rejected')
    .map((claim) => ({ claim, at: Date.parse(claim.source.recordedAt) }))
    .sort((a, b) => a.at - b.at)
    .map(({ claim: { said, attribute, value, unit } }) => ({ item: said, attribute, value, unit }));
}

/** Limits that stand, of every dimension. */
export function limitsKnown(rows: Pick<ProjectRows, 'limitsIn'>): readonly KnownLimit[] {
  return DIMENSIONS.flatMap((dimension) => rows.limitsIn(dimension)).map(
    ({ said, attribute, dimension, bound, value, unit }) => ({
      item: said,
      attribute,
      dimension,
      bound,
      value,
      unit,
    }),
  );
}
