/** Checks in words: those that stand, what one came to, and what there is to check. */
import type { HouseUnits, Quantity } from '../language/notes.ts';
import type { Check } from '../model/checks/check.ts';
import type { CheckRun, CheckState, FigureRead, InputRead, ResultRead } from '../model/checks/check-rows.ts';
import type { CheckView } from '../model/checks/check-views.ts';
import type { Caution } from '../model/views.ts';
import { stateText } from './check-words.ts';
import { NO_CAUTION_IS_NOT_SAFE } from './page-notes.ts';
import { boundedText, counterpartText, quantityText } from './quantity-text.ts';
import { age, clock, daysBetween, placeOf } from './source-text.ts';
import { textTable } from './text-table.ts';
import { productWords } from './window-words.ts';
import { oneLine } from './words.ts';

type Row = readonly [label: string, text: string];

/** Standing checks as blocks, those that break first; ages are counted to `now`. */
export function checksText(checks: readonly CheckView[], units: HouseUnits, now: string): string {
  if (checks.length === 0) return 'No check stands. See what there is with: hearwright checks kinds\n';
  return `${inOrder(checks)
    .map((check) => checkText(check, units, now))
    .join('\n\n')}\n`;
}

const URGENCY: readonly CheckState[] = ['broken', 'stale', 'refused', 'not-run', 'holds', 'told'];

/** Those that break first, then those that say nothing, then those that hold. */
export function inOrder(checks: readonly CheckView[]): readonly CheckView[] {
  return [...checks].sort((a, b) => URGENCY.indexOf(a.state) - URGENCY.indexOf(b.state));
}

/** One standing check as a block of lines. */
export function checkText(check: CheckView, units: HouseUnits, now: string): string {
  const head = `${oneLine(check.subject)}: ${stateText(check.state)}   [${oneLine(check.id)}]`;
  const from = check.source.quote
    ? `${placeOf(check.source)}   "${oneLine(check.source.quote)}"`
    : placeOf(check.source);
  return blockOf(head, [
    ...runRows(check, units, now),
    ...(check.note === undefined ? [] : [['for', oneLine(check.note)] as const]),
    ['since', `${clock(check.since)}   ${from}`],
  ]);
}

/** What was worked out, with its formula and where that comes from. */
export function workedOutText(run: CheckRun, check: Check, units: HouseUnits, now: string): string {
  return `${blockOf(`${run.check}: ${stateText(run.state)}`, [
    ...runRows(run, units, now),
    ['formula', check.formula],
    ['source', check.source],
  ])}\n`;
}

function blockOf(head: string, rows: readonly Row[]): string {
  const width = Math.max(8, ...rows.map(([label]) => label.length));
  return [head, ...rows.map(([label, text]) => `  ${label.padEnd(width)} ${text}`)].join('\n');
}

function runRows(run: CheckRun, units: HouseUnits, now: string): readonly Row[] {
  return [
    ['why', oneLine(run.why)],
    ...windowRows(run),
    ...run.results.map((result): Row => [oneLine(result.name), rangeText(result, units)]),
    ...run.inputs.flatMap((input) => inputRows(input, now)),
    ...Object.entries(run.options).map(([name, choice]): Row => [name, oneLine(choice)]),
    ...run.notes.map((note): Row => ['note', oneLine(note)]),
    ...run.ask.map((line): Row => ['next', oneLine(line)]),
  ];
}

/** When its clocks were started, and when their times begin and end, on the clock of the memo's own place. */
function windowRows({ window, alsoRunning = [] }: CheckRun): readonly Row[] {
  return (window ? [window, ...alsoRunning] : []).flatMap((one): readonly Row[] => {
    const { act, startedAt, source, opens, closes } = one;
    // Kept by hand, nobody said it.
    const said = source.quote === '' ? '' : `   "${oneLine(source.quote)}"`;
    const what = `${oneLine(productWords(one)) || 'coat'} ${act}`;
    return [
      ['started', `${clock(startedAt)}   ${what}   ${placeOf(source)}${said}`],
      ...(opens === undefined ? [] : [['opens', clock(opens)] as const]),
      ...(closes === undefined ? [] : [['closes', clock(closes)] as const]),
    ];
  });
}

/** "6 mm", "4 mm to 10 mm (7 mm as said)"; in a project of mixed units the other system beside it. */
export function rangeText({ low, mid, high, unit }: Omit<ResultRead, 'name'>, units: HouseUnits): string {
  const text = (value: number) => bothSystems({ value, unit }, units);
  if (low === high) return text(mid);
  return `${text(low)} to ${text(high)}, ${text(mid)} as said`;
}

function bothSystems(quantity: Quantity, units: HouseUnits): string {
  const other = units === 'mixed' ? counterpartText(quantity) : undefined;
  return other === undefined ? quantityText(quantity) : `${quantityText(quantity)} (${other})`;
}

/** What was given of an input; a fall as one in so many, as it is set out and as it is told. */
export function amountText({ range, isFall }: InputRead, units: HouseUnits): string {
  if (range === undefined) return '';
  if (!isFall || !(range.low > 0)) return rangeText(range, units);
  const oneIn = (share: number) =>
    `1 in ${quantityText({ value: Number((1 / share).toPrecision(3)), unit: '1' })}`;
  return range.low === range.high ? oneIn(range.mid) : `${oneIn(range.low)} to ${oneIn(range.high)}`;
}

function inputRows(input: InputRead, now: string): readonly Row[] {
  const { name, expression, missing, reads } = input;
  if (missing !== undefined) return [[name, `missing: ${oneLine(missing)}`]];
  const amount = amountText(input, 'metric');
  const open = input.open ? `, open ${input.open}` : '';
  // A plain number says itself; so does a single figure.
  const isPlain = reads.length === 0;
  const words = isPlain || oneLine(expression) === '' ? '' : `   ${oneLine(expression)}`;
  const [only] = reads;
  if (reads.length === 1 && only && only.name === expression)
    return [[name, `${amount}${open}${words}   ${originText(only, now)}`]];
  return [
    [name, `${amount}${open}${words}`],
    ...reads.map(
      (read): Row => ['', `${oneLine(read.name)} ${figureWords(read)}   ${originText(read, now)}`],
    ),
  ];
}

function figureWords(read: FigureRead): string {
  const spread = read.tolerance === undefined ? {} : { plusMinus: read.tolerance };
  // A figure is named here with its measure: "wet room fall ratio".
  const attribute = / ratio$/.test(read.name) ? 'ratio' : undefined;
  return boundedText({ ...read, ...spread, item: read.name, attribute });
}

/** Where a figure comes from, how old it is, and what is to be said against it. */
function originText({ source, state, doubt }: FigureRead, now: string): string {
  const parts = source
    ? [placeOf(source), ageText(source.recordedAt, now), ...(state ? [state] : [])]
    : ['worked out'];
  return [...parts, ...(doubt === undefined ? [] : [`doubtful: ${oneLine(doubt)}`])].join(', ');
}

function ageText(recordedAt: string, now: string): string {
  const days = daysBetween(recordedAt, now);
  return days <= 0 ? 'today' : `${age(days)} old`;
}

/** Cautions beside results, with whoever decides. They block nothing and permit nothing. */
export function cautionsText(cautions: readonly Caution[]): string {
  if (cautions.length === 0) return '';
  const lines = cautions.map(
    ({ caution, defer }) => `  caution  ${oneLine(caution)} Who decides: ${oneLine(defer)}`,
  );
  return `${lines.join('\n')}\n  ${' '.repeat(9)}${NO_CAUTION_IS_NOT_SAFE}\n`;
}

/** What there is to check, a line each. */
export function kindsTable(checks: readonly Check[]): string {
  return textTable(checks.map(({ name, says }) => [name, says]));
}

/** One check with its inputs, choices, formula, source, and a call that shows how it is asked for. */
export function kindText(check: Check, example: string): string {
  const inputs = check.inputs.map(({ name, says, kind, many, optional }): Row => {
    const how = [
      kind === 'ratio' ? 'number' : kind,
      ...(many ? ['as many as there are'] : []),
      ...(optional ? ['may be left out'] : []),
    ];
    return [name, `${says} (${how.join(', ')})`];
  });
  const choices = (check.options ?? []).map(
    ({ name, says, of }): Row => [name, `${says}: ${of.join(' or ')}`],
  );
  return `${blockOf(`${check.name}: ${check.says}`, [
    ...inputs,
    ...choices,
    ['formula', check.formula],
    ['source', check.source],
    ...(check.gives === undefined ? [] : [['gives', check.gives] as const]),
    ['example', example],
  ])}\n`;
}
