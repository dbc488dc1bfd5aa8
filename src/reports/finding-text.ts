/** Findings in words. Findings are data everywhere else; these are the only sentences made of them. */
import { isMadeOtherwise } from '../model/questions.ts';
import type { Consequence, FindingKind, FindingView, SourcedQuantity } from '../model/views.ts';
import { amountText, boundedText, ofThing, quantityText } from './quantity-text.ts';
import { age, daysBetween, placeOf } from './source-text.ts';
import { worstCaseText } from './tolerance-text.ts';
import { oneLine } from './words.ts';

const HEADLINES: Readonly<Record<FindingKind, string>> = {
  decided: 'changed on purpose',
  remeasured: 'measured anew',
  slip: 'a slip is likely',
  stale: 'no longer agrees with what it came from',
  limit: 'breaks a stated limit',
  cycle: 'its formulas go round in a circle',
  'unit-clash': 'two kinds of quantity',
  'not-run': 'could not be checked',
  received: 'what came is not what was ordered',
  hand: 'its other hand has another size',
  'task-cycle': 'tasks wait for each other',
  check: 'breaks',
};

/** What a finding says of its item, in a few words: "a slip is likely". */
export function findingHeadline({ kind, now }: Pick<FindingView, 'kind' | 'now'>): string {
  return isMadeOtherwise({ kind, now }) ? 'made to another size' : HEADLINES[kind];
}

/** "heddle gap", or the item alone where the attribute says nothing more. */
export function subjectOf({
  item,
  attribute,
}: {
  readonly item: string;
  readonly attribute: string;
}): string {
  const name = oneLine(item);
  return attribute === 'other' || name.toLowerCase().split(/\s+/).includes(attribute)
    ? name
    : `${name} ${attribute}`;
}

const ACTS: Readonly<Record<Consequence['act'], string>> = {
  ordered: 'ordered',
  made: 'made',
  'closed-in': 'closed in',
  filmed: 'filmed',
  promised: 'promised',
  derived: 'derived',
  planned: 'to do',
};

/** One thing that was done on the strength of the older value: "ordered: glass lens (memo 3, 00:41)". */
export function consequenceText(consequence: Consequence): string {
  const change =
    consequence.before && consequence.after
      ? ` ${quantityText(consequence.before)} → ${quantityText(consequence.after)}`
      : '';
  const place = consequence.source ? ` (${placeOf(consequence.source)})` : '';
  return `${ACTS[consequence.act]}: ${oneLine(consequence.what)}${change}${place}`;
}

/** What the two values of a finding are to each other: a limit did not stand before, a stale size was what it no longer should be. */
export function valueLabels(kind: FindingKind): { readonly now: string; readonly was: string } {
  switch (kind) {
    case 'limit':
      return { now: 'said', was: 'limit' };
    case 'stale':
      return { now: 'should', was: 'was' };
    case 'received':
      return { now: 'came', was: 'ordered' };
    case 'hand':
      return { now: 'its pair', was: 'stands' };
    case 'decided':
    case 'remeasured':
      return { now: 'now', was: 'before' };
    default:
      return { now: 'said', was: 'stands' };
  }
}

/** The same, where later talk has told neither of the two: the older one stood then. */
export function sideLabels({ kind, standsNow }: Pick<FindingView, 'kind' | 'standsNow'>) {
  const labels = valueLabels(kind);
  return standsNow && labels.was === 'stands' ? { ...labels, was: 'stood' } : labels;
}

/** What is measured, in a word: what has no name of its own goes by its dimension. */
export const measureOf = ({
  attribute,
  dimension,
}: {
  readonly attribute: string;
  readonly dimension: string;
}): string => (attribute !== 'other' ? attribute : dimension === 'length' ? 'size' : dimension);

function valueText(quantity: SourcedQuantity, other: SourcedQuantity): string {
  const words = [boundedText(quantity)];
  const { source } = quantity;
  words.push(source ? placeOf(source) : 'worked out');
  if (quantity.state) words.push(quantity.state);
  if (source && other.source) {
    const days = daysBetween(source.recordedAt, other.source.recordedAt);
    if (days > 0) words.push(`${age(days)} earlier`);
  }
  if (source?.quote) words.push(`"${oneLine(source.quote)}"`);
  return words.join('   ');
}

function isShown({ now, was }: FindingView, isNow: boolean): boolean {
  if (was.unit === '') return false;
  return !isNow || now.value !== was.value || now.unit !== was.unit;
}

function rows(finding: FindingView): readonly (readonly [string, string])[] {
  const label = sideLabels(finding);
  const list: [string, string][] = [
    [label.now, valueText(ofThing(finding.now, finding), finding.was)],
    [label.was, valueText(ofThing(finding.was, finding), finding.now)],
    // A formula that does not run may have no value on either side, or the same on both.
  ].filter((row, side): row is [string, string] => row.length === 2 && isShown(finding, side === 0));
  if (finding.standsNow)
    list.push(['stands', valueText(ofThing(finding.standsNow, finding), finding.standsNow)]);
  if (finding.now.unit === '') list.push(...sayings(finding));
  else if (finding.difference) {
    const { tolerance } = finding;
    const allowed = tolerance ? `   tolerance ${worstCaseText(tolerance)}` : '';
    list.push(['differs', `${amountText(finding.difference)}${allowed}`]);
  }
  list.push(['why', oneLine(finding.why)]);
  for (const consequence of finding.consequences) list.push(['on it', consequenceText(consequence)]);
  if (finding.settledBy) {
    const { choice, at, reason, value } = finding.settledBy;
    const chosen = value ? `${choice} ${amountText(ofThing(value, finding))}` : choice;
    list.push(['settled', `${chosen}, ${at.slice(0, 10)}${reason ? `: ${oneLine(reason)}` : ''}`]);
  } else if (finding.next) list.push(['next', oneLine(finding.next)]);
  return list;
}

/** The words of both sides, where there is no number to show; once where one sentence told both. */
function sayings({ kind, now, was }: FindingView): readonly [string, string][] {
  const label = valueLabels(kind);
  const line = ({ source }: SourcedQuantity) => `${placeOf(source)}   "${oneLine(source?.quote ?? '')}"`;
  if (!now.source?.quote) return [];
  const told = was.source?.quote && was.source.quote !== now.source.quote;
  return [[label.now, line(now)], ...(told ? ([[label.was, line(was)]] as [string, string][]) : [])];
}

/**
 * One finding as a block of lines: what is said, what stands, how far apart, why, what was done on the older
 * value, what to do next. Plain text without control characters, no line feed at the end.
 */
export function findingText(finding: FindingView): string {
  const head = `${subjectOf(finding)}: ${findingHeadline(finding)}   [${oneLine(finding.id)}]`;
  return [head, ...rows(finding).map(([label, text]) => `  ${label.padEnd(8)} ${text}`)].join('\n');
}

/** One line: "heddle gap 50 mm → 15 mm: a slip is likely [f3]". */
export function findingLine(finding: FindingView): string {
  const change =
    finding.was.unit === ''
      ? ''
      : ` ${quantityText(ofThing(finding.was, finding))} → ${quantityText(ofThing(finding.now, finding))}`;
  return `${subjectOf(finding)}${change}: ${findingHeadline(finding)} [${oneLine(finding.id)}]`;
}

/** All findings, open ones first and dearest first among them; a sentence when there are none. */
export function findingsText(findings: readonly FindingView[]): string {
  if (findings.length === 0) return 'No clash is on record. That means only that nothing was found.\n';
  const order = (finding: FindingView) => (finding.status === 'open' ? 0 : 1);
  const sorted = [...findings].sort((a, b) => order(a) - order(b) || b.cost - a.cost);
  return `${sorted.map(findingText).join('\n\n')}\n`;
}
