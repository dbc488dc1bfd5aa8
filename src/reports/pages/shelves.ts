/** What pages of things look up, gathered once. */
import type { CheckView } from '../../model/checks/check-views.ts';
import { nameStems } from '../../model/names.ts';
import type { LimitView, StandingFigure } from '../../model/views.ts';
import { grouped } from './grouped.ts';
import { relationsOf } from './relations.ts';
import type { SiteSource } from './site-source.ts';
import type { Shelves } from './thing-page.ts';

export function shelvesOf({ figures, limits, findings, checks }: SiteSource): Shelves {
  const limitsOn = grouped(limits, ({ item }) => item);
  const findingsOn = grouped(findings, ({ item }) => item);
  const stated = limits.map((limit) => ({ limit, kinds: new Set(nameStems(limit.about)) }));
  return {
    limitsOn: (item) => limitsOn.get(item) ?? [],
    limitsOf: (figure) => limitsOf(figure, stated),
    findingsOn: (item) => findingsOn.get(item) ?? [],
    checksReading: checksByFigure(checks),
    relations: relationsOf(figures),
  };
}

/** Limits of the figure itself, and those stated for things of its kind: "tanks" are stated for the fresh water tank. */
function limitsOf(
  figure: StandingFigure,
  stated: readonly { readonly limit: LimitView; readonly kinds: ReadonlySet<string> }[],
): readonly LimitView[] {
  const same = stated.filter(({ limit }) => limit.attribute === figure.attribute);
  if (same.length === 0) return [];
  const stems = nameStems(figure.item);
  return same
    .filter(({ limit, kinds }) => limit.item === figure.item || stems.some((stem) => kinds.has(stem)))
    .map(({ limit }) => limit);
}

function checksByFigure(checks: readonly CheckView[]): Shelves['checksReading'] {
  const reading = new Map<string, CheckView[]>();
  for (const check of checks)
    for (const name of new Set(check.inputs.flatMap(({ reads }) => reads.map((read) => read.name))))
      reading.set(name, [...(reading.get(name) ?? []), check]);
  return (name) => reading.get(name) ?? [];
}
