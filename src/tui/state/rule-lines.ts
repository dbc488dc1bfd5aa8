/** The lines of all limits and checks, each with its state. */
import { breachesOf, checkLines, limitWords } from './figure-lines.ts';
import type { TextLine } from './page-lines.ts';
import type { ScreenState } from './screen-state.ts';

/** Limits that are broken first, then the others; then the checks likewise. None until they are read. */
export function ruleLines({ rules, data }: ScreenState): readonly TextLine[] {
  if (!rules) return [];
  const limits = rules.limits.map((limit) => ({ limit, breaches: breachesOf(limit, data.findings) }));
  const broken = limits.filter(({ breaches }) => breaches.length > 0);
  const kept = limits.filter(({ breaches }) => breaches.length === 0);
  return [
    { text: 'limits', heading: true },
    ...(limits.length === 0
      ? [{ text: '  none was told: "nothing wider than 740 comes through the door"' }]
      : []),
    ...[...broken, ...kept]
      .flatMap(({ limit, breaches }) => limitWords(limit, breaches, data.next.date))
      .map((text) => ({ text: `  ${text}` })),
    { text: '' },
    { text: 'checks', heading: true },
    ...(rules.checks.length === 0
      ? [{ text: '  none is attached: hearwright checks add, or "it has to go through the side hatch"' }]
      : []),
    ...checkLines(rules.checks).map((text) => ({ text: `  ${text}` })),
  ];
}
