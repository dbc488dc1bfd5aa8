/** Every size that stands, for the wall of the workshop: what is not settled comes first and is marked again below. */
import { ATTRIBUTES } from '../../language/notes.ts';
import type { FindingView, LimitView, ProjectInfo, StandingFigure } from '../../model/views.ts';
import { eachText } from '../figure-table.ts';
import { findingHeadline, measureOf, sideLabels, subjectOf } from '../finding-text.ts';
import { bullet, escapeMarkdown, page, quoted, section } from '../markdown.ts';
import { amountText, boundedText, counterpartText, ofThing, quantityText } from '../quantity-text.ts';
import { age, counted, dayName, dayOf, daysBetween, placeOf } from '../source-text.ts';
import { leftOutText } from '../tolerance-text.ts';
import { oneLine, sentence } from '../words.ts';
import { offText, tapeReading } from './length-words.ts';

export interface SheetContents {
  readonly project: ProjectInfo;
  readonly figures: readonly StandingFigure[];
  readonly findings: readonly FindingView[];
  readonly limits: readonly LimitView[];
  /** YYYY-MM-DD: ages are counted to it. */
  readonly date: string;
}

type Sized = Pick<StandingFigure, 'value' | 'unit' | 'bound' | 'high'>;

/** Both ends of a range, or the one value. */
const endsOf = ({ value, high, unit, bound }: Sized) =>
  (high === undefined ? [value] : [value, high]).map((one) => ({ value: one, unit, bound }));

/** "= 36 in" or "≈ 2370.1 mm": a text that says itself that it is rounded needs no other sign. */
const equals = (text: string) => (text === '' ? '' : text.startsWith('≈') ? ` ${text}` : ` = ${text}`);

/** `915 mm = 36 in, 0.6 mm under`: as it was said, and in the other system; nothing more for what has none. */
function sizeText(figure: Sized): string {
  const said = boundedText(figure);
  const ends = endsOf(figure);
  const tape = ends.flatMap((end) => tapeReading(end) ?? []);
  if (tape.length < ends.length)
    return `**${said}**${equals(ends.flatMap((end) => counterpartText(end) ?? []).join(' to '))}`;
  const metric = figure.unit === 'mm' ? '' : equals(tape.map((one) => one.metric).join(' to '));
  const marks = tape.map((one) => `${one.inches}, ${offText(one)}`).join(' to ');
  // Said in inches that a tape has marks for: they are not said twice.
  const isOnMark = figure.unit === 'in' && tape.every(({ offMm }) => offMm === 0);
  return `**${said}**${metric}${isOnMark ? '' : equals(marks)}`;
}

/** What stands before a size that is not to be cut to. */
function markOf(figure: StandingFigure, unsettled: ReadonlySet<string>): string {
  if (figure.status === 'stale') return '**STALE** ';
  return figure.status === 'in-doubt' || unsettled.has(keyOf(figure)) ? '**NOT SETTLED** ' : '';
}

/** State, tolerance, age and place: "decided, ± 1 mm, 3 days old, memo 4, 00:09". */
function standingText(figure: StandingFigure, date: string): string {
  const { state, source, tolerance, formula } = figure;
  const days = source ? daysBetween(source.recordedAt, date) : undefined;
  return [
    ...(state ? [state] : []),
    // That of how finely it was said tells nothing that the number does not.
    ...(tolerance && tolerance.from !== 'precision'
      ? [
          `± ${amountText(tolerance)} (${[tolerance.from, leftOutText(tolerance)].filter(Boolean).join(', ')})`,
        ]
      : []),
    ...(days === undefined
      ? []
      : [days === 0 ? 'today' : days < 0 ? `from ${dayOf(source?.recordedAt ?? '')}` : `${age(days)} old`]),
    source ? placeOf(source) : `worked out${formula ? `: ${oneLine(formula)}` : ''}`,
  ].join(', ');
}

function figureEntry(figure: StandingFigure, date: string, unsettled: ReadonlySet<string>): string {
  return bullet(
    `${markOf(figure, unsettled)}${measureOf(figure)}${escapeMarkdown(eachText(figure))} ${sizeText(figure)}; ${escapeMarkdown(standingText(figure, date))}`,
  );
}

/** One side of a clash: its size, where it was said, its words. */
function sideText(label: string, side: FindingView['was']): string | false {
  if (side.unit === '') return false;
  const place = side.source ? `, ${escapeMarkdown(placeOf(side.source))}` : ', worked out';
  return `${label}: ${quantityText(side)}${place}${side.source?.quote ? `, ${quoted(side.source.quote)}` : ''}`;
}

/** A clash that nobody settled, with what to call. */
function unsettledEntry(finding: FindingView): string {
  const label = sideLabels(finding);
  return bullet(
    `**${escapeMarkdown(subjectOf(finding))}**: ${findingHeadline(finding)}`,
    sideText(label.now, ofThing(finding.now, finding)),
    sideText(label.was, ofThing(finding.was, finding)),
    finding.standsNow && sideText('stands now', ofThing(finding.standsNow, finding)),
    `why: ${escapeMarkdown(finding.why)}`,
    `settle it: \`hearwright settle ${oneLine(finding.id).replaceAll('`', '')} keep-old\` (or \`take-new\`, \`both-right\`)`,
  );
}

/** Figures in doubt or stale that no open clash tells of. */
function doubtEntry(figure: StandingFigure): string {
  return bullet(
    `**${escapeMarkdown(subjectOf(figure))}**: ${figure.status === 'stale' ? 'something it rests on has changed; measure it again' : 'in doubt'}`,
    `stands: ${boundedText(figure)}`,
  );
}

const keyOf = ({ item, attribute }: Pick<StandingFigure, 'item' | 'attribute'>) => `${item}\n${attribute}`;

/** Clashes that nobody settled, dearest first. */
const openOf = ({ findings }: SheetContents) =>
  findings.filter(({ status }) => status === 'open').sort((a, b) => b.cost - a.cost);

function unsettledEntries(contents: SheetContents): string[] {
  const { figures } = contents;
  const open = openOf(contents);
  const told = new Set(open.map(keyOf));
  const others = figures.filter(
    (figure) => (figure.status === 'in-doubt' || figure.status === 'stale') && !told.has(keyOf(figure)),
  );
  return [...open.map(unsettledEntry), ...others.map(doubtEntry)];
}

const byName = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);

/** A heading for each thing, by name, with its sizes in the usual order of attributes. */
function itemSections({ figures, date, ...contents }: SheetContents): string[] {
  const unsettled = new Set(openOf({ figures, date, ...contents }).map(keyOf));
  const things = [...new Set(figures.map(({ item }) => item))].sort(byName);
  return things.flatMap((thing) =>
    section(
      2,
      escapeMarkdown(sentence(oneLine(thing))),
      figures
        .filter(({ item }) => item === thing)
        .sort((a, b) => ATTRIBUTES.indexOf(a.attribute) - ATTRIBUTES.indexOf(b.attribute))
        .map((figure) => figureEntry(figure, date, unsettled)),
    ),
  );
}

function limitEntry(limit: LimitView): string {
  const about = limit.about ? `, for ${escapeMarkdown(limit.about)}` : '';
  return bullet(
    `${escapeMarkdown(subjectOf(limit))}: ${sizeText(limit)}${about}; ${escapeMarkdown(placeOf(limit.source))}`,
  );
}

/** Returns the sheet as CommonMark. Counts and series of readings are no sizes and are left out. */
export function figureSheet(contents: SheetContents): string {
  const { project, date, limits } = contents;
  const sizes = contents.figures.filter(
    ({ dimension, status }) => dimension !== 'count' && status !== 'series',
  );
  const unsettled = unsettledEntries({ ...contents, figures: sizes });
  const things = new Set(sizes.map(({ item }) => item)).size;
  return page([
    `# Figures: ${escapeMarkdown(project.name)}, ${dayName(date)}`,
    '',
    sizes.length === 0
      ? 'No figure stands yet.'
      : `${counted(sizes.length, 'figure')} of ${counted(things, 'thing')}; ${unsettled.length === 0 ? 'no clash is on record' : `**${unsettled.length} not settled**`}. Inches are the nearest sixteenth, then how far that mark is off.`,
    '',
    ...section(2, 'Not settled: ask before you cut', unsettled),
    ...section(2, 'Limits', limits.map(limitEntry)),
    ...itemSections({ ...contents, figures: sizes }),
  ]);
}
