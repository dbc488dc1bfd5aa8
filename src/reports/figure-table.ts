/** The standing figures and the limits, for the terminal. */
import type { HouseUnits } from '../language/notes.ts';
import type { ClaimView, LimitView, StandingFigure } from '../model/views.ts';
import { subjectOf } from './finding-text.ts';
import { boundedText, figureText } from './quantity-text.ts';
import { dayOf, placeOf } from './source-text.ts';
import { textTable } from './text-table.ts';
import { leftOutText, rootSumSquareText, worstCaseText } from './tolerance-text.ts';
import { oneLine } from './words.ts';

const STATUS: Readonly<Record<StandingFigure['status'], string>> = {
  stands: '',
  'in-doubt': 'in doubt',
  stale: 'stale',
  series: 'series',
};

/** " each of 4": the figure is that of one of several. */
export function eachText({ each }: Pick<StandingFigure, 'each'>): string {
  if (each === undefined) return '';
  if (each.per !== undefined) return ` per ${each.per}`;
  if (each.count === 1) return ' together';
  return each.count === undefined ? ' each' : ` each of ${each.count}`;
}

/** One row each: item and attribute, value, state, place, doubt. */
export function figureTable(figures: readonly StandingFigure[], units: HouseUnits): string {
  if (figures.length === 0) return 'No figure stands yet.\n';
  return textTable(
    figures.map((figure) => [
      subjectOf(figure),
      `${figureText(figure, units)}${eachText(figure)}`,
      figure.state ?? '',
      figure.source ? `${placeOf(figure.source)}, ${dayOf(figure.source.recordedAt)}` : 'worked out',
      STATUS[figure.status],
    ]),
  );
}

function claimLine(claim: ClaimView): string {
  const when = claim.source ? `${dayOf(claim.source.recordedAt)}  ${placeOf(claim.source)}` : 'not spoken';
  const words = claim.source?.quote ? `  "${oneLine(claim.source.quote)}"` : '';
  const state = claim.state ? `  ${claim.state}` : '';
  return `  ${when}  ${boundedText(claim)}${state}  ${claim.status}${words}  [${oneLine(claim.id)}]`;
}

/** One figure with everything known of it: why it stands, its tolerance, formula, history and dependents. */
export function figureHistory(figure: StandingFigure, units: HouseUnits): string {
  const lines = [`${subjectOf(figure)}: ${figureText(figure, units)}${eachText(figure)}`];
  const doubt = STATUS[figure.status];
  lines.push(`  rule      ${figure.rule}${doubt ? ` (${doubt})` : ''}`);
  if (figure.tolerance) {
    lines.push(`  tolerance ${worstCaseText(figure.tolerance)}`);
    for (const more of [rootSumSquareText(figure.tolerance), leftOutText(figure.tolerance)])
      if (more !== undefined) lines.push(`            ${more}`);
  }
  if (figure.formula) lines.push(`  formula   ${oneLine(figure.formula)}`);
  if (figure.dependents.length > 0) lines.push(`  feeds     ${figure.dependents.map(oneLine).join(', ')}`);
  if (figure.history.length > 0)
    lines.push('  history', ...figure.history.map((claim) => `  ${claimLine(claim)}`));
  return `${lines.join('\n')}\n`;
}

/** The figures of one item at length. */
export function figuresOfItem(figures: readonly StandingFigure[], units: HouseUnits): string {
  return figures.map((figure) => figureHistory(figure, units)).join('\n');
}

/** Limits that figures must respect. */
export function limitTable(limits: readonly LimitView[], units: HouseUnits): string {
  if (limits.length === 0) return 'No limit has been stated yet.\n';
  return textTable(
    limits.map((limit) => [
      subjectOf(limit),
      figureText(limit, units),
      limit.about,
      `${placeOf(limit.source)}, ${dayOf(limit.source.recordedAt)}`,
      `[${oneLine(limit.id)}]`,
    ]),
  );
}
