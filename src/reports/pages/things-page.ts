/** Every thing with the figures that stand of it, by name; of many, by their first letter. */
import type { StandingFigure } from '../../model/views.ts';
import { measureOf } from '../finding-text.ts';
import { oneLine } from '../words.ts';
import { MOST_ON_A_PAGE } from './division.ts';
import { anchorOf } from './file-names.ts';
import { ageWords, block, bothSystems, type Desk, linked, listOf, standing, subject } from './fragments.ts';
import { grouped } from './grouped.ts';
import { type Html, html, type Part } from './html.ts';
import type { SiteSource } from './site-source.ts';

/** Names as a reader looks them up. Code points of lower case: the same order on every machine. */
const keyOf = (name: string) => name.toLowerCase();
const byName = (a: string, b: string) =>
  keyOf(a) < keyOf(b) ? -1 : keyOf(a) > keyOf(b) ? 1 : a < b ? -1 : 1;

/** How a thing is called; one whose name holds nothing that can be shown still has a page. */
export const thingName = (name: string) => oneLine(name) || 'without a name';

/** Things by name, also those of which a limit alone is known. */
export function thingsOf({ figures, limits }: SiteSource): ReadonlyMap<string, readonly StandingFigure[]> {
  const of = grouped(figures, ({ item }) => item);
  const names = [...new Set([...of.keys(), ...limits.map(({ item }) => item)])].sort(byName);
  return new Map(names.map((name) => [name, of.get(name) ?? []]));
}

const letterOf = (name: string) => {
  const first = [...name.normalize('NFKD').toLowerCase()].find((mark) => /[\p{L}\p{N}]/u.test(mark));
  return first !== undefined && /[a-z]/.test(first) ? first : 'other';
};

type Things = readonly (readonly [string, readonly StandingFigure[]])[];

/** Of many things, those of each letter. */
export function thingsByLetter(
  things: ReadonlyMap<string, readonly StandingFigure[]>,
): ReadonlyMap<string, Things> {
  return things.size <= MOST_ON_A_PAGE ? new Map() : grouped([...things], ([name]) => letterOf(name));
}
export const letterPath = (letter: string) => `things-${anchorOf(letter)}.html`;
export const letterTitle = (letter: string) =>
  letter === 'other' ? 'Things by other signs' : `Things in ${letter.toUpperCase()}`;

/** A table of things and their figures. */
export function thingsTable(desk: Desk, things: Things, caption: string): Part {
  if (things.length === 0) return undefined;
  return html`<div class="wide" tabindex="0" role="group" aria-label="${caption}"><table>
<caption>${caption}</caption>
<thead><tr><th scope="col">Thing</th><th scope="col">Measure</th><th scope="col">Stands at</th><th scope="col">State</th><th scope="col">Age</th></tr></thead>
<tbody>
${things.map(([name, figures]) => thingRows(desk, name, figures))}</tbody></table></div>
`;
}

function thingRows(desk: Desk, name: string, figures: readonly StandingFigure[]): Part {
  const head = (rows: number) =>
    html`<th scope="rowgroup" rowspan="${rows}">${linked(thingName(name), desk.links.item(name))}</th>`;
  if (figures.length === 0) return html`<tr>${head(1)}<td colspan="4">a limit alone</td></tr>\n`;
  return figures.map(
    (figure, index): Html =>
      html`<tr>${index === 0 && head(figures.length)}<td>${measureOf(figure)}</td><td>${bothSystems(figure)}</td><td>${standing(figure)}</td><td>${
        figure.source ? ageWords(desk, figure.source) : 'worked out'
      }</td></tr>\n`,
  );
}

/** Figures that somebody has to look at. */
export function unsettled(figures: readonly StandingFigure[]): readonly StandingFigure[] {
  return figures.filter(({ status }) => status === 'in-doubt' || status === 'stale');
}

export function unsettledBlock(desk: Desk, figures: readonly StandingFigure[]): Part {
  return block(2, 'In doubt or stale', [
    listOf(
      unsettled(figures).map(
        (figure) => html`${subject(desk, figure)}: ${bothSystems(figure)}, ${standing(figure)}`,
      ),
    ),
  ]);
}

export function thingsMain(
  desk: Desk,
  source: SiteSource,
  things: ReadonlyMap<string, readonly StandingFigure[]>,
): Part {
  const letters = thingsByLetter(things);
  if (things.size === 0) return html`<p>No figure stands yet.</p>\n`;
  return [
    unsettledBlock(desk, source.figures),
    letters.size === 0
      ? block(2, 'By name', [thingsTable(desk, [...things], 'Things and their figures')])
      : block(2, 'By letter', [
          listOf(
            [...letters].map(
              ([letter, some]) =>
                html`<a href="${desk.links.to(letterPath(letter))}">${letterTitle(letter)}</a>: ${some.length}`,
            ),
          ),
        ]),
  ];
}
