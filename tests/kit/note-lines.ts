/**
 * What was read of a memo in plain lines, one a note, for a person to look over: each starts with the letter of its kind,
 * then what was made of the words, then the words in quotes. What was filled in and not said is marked with `?`.
 */
import type {
  ArrivalNote,
  DecisionNote,
  FigureNote,
  MemoNotes,
  ProblemNote,
  PromiseNote,
  Quantity,
  Reading,
  RecordNote,
  TaskNote,
} from '../../src/language/notes.ts';

const SIGNS = { exact: '=', about: '~', 'at-least': '>=', 'at-most': '<=', between: '..' } as const;

const amount = ({ value, unit }: Quantity) => `${Number(value.toPrecision(12))} ${unit}`;
/** Each part that is there, behind its word. */
const parts = (...all: readonly (readonly [word: string, part: string | undefined])[]) =>
  all.flatMap(([word, part]) => (part === undefined ? [] : [word === '' ? part : `${word} ${part}`]));

function figureLine(note: FigureNote): string {
  const { item, attribute, bound, high, plusMinus, plusMinusUnit, limit, each, alternatives } = note;
  const has = (name: string) => (note.assumed?.includes(name) ? '?' : '');
  const size = `${SIGNS[bound]} ${amount(note)}${has('unit')}${high === undefined ? '' : ` to ${high}`}`;
  const spread = plusMinus === undefined ? '' : ` +- ${plusMinus} ${plusMinusUnit}`;
  const said = parts(
    ['', note.state],
    ['', note.sizeKind],
    ['', note.change],
    ['replaces', note.replaces && amount(note.replaces)],
    ['binds', limit && (limit.about || 'itself')],
    ['from', note.datum],
    ['when', note.condition],
    ['in', note.place],
    ['each of', each && `${each.count ?? 'some'}${each.per ? ` per ${each.per}` : ''}`],
    ['=', note.formula],
    ['or', alternatives?.map(amount).join(' or ')],
  );
  const dimension = note.dimension === attribute ? [] : [note.dimension];
  return [
    `${item}${has('item')} / ${attribute}${has('attribute')} ${size}${spread}`,
    ...dimension,
    ...said,
  ].join('; ');
}

const decisionLine = ({ gist, reason, turnedDown }: DecisionNote) =>
  [gist, ...parts(['because', reason], ['not', turnedDown])].join('; ');
const taskLine = ({ gist, due, waitsFor }: TaskNote) =>
  [gist, ...parts(['due', due]), ...waitsFor.map((wait) => `after ${wait}`)].join('; ');
const arrivalLine = ({ item, expected, received }: ArrivalNote) =>
  [item, ...parts(['expected', expected]), ...(received ? ['here'] : [])].join('; ');
const problemLine = ({ gist, cause }: ProblemNote) => [gist, ...parts(['from', cause])].join('; ');
const promiseLine = ({ gist, due }: PromiseNote) => [gist, ...parts(['due', due])].join('; ');

function recordLine(note: RecordNote): string {
  switch (note.kind) {
    case 'batch':
      return [
        note.product,
        ...note.facts.map(
          ({ what, quote, value, unit }) =>
            `${what} "${quote}"${value === undefined ? '' : ` ${amount({ value, unit: unit ?? '' })}`}`,
        ),
      ].join('; ');
    case 'hidden':
      return [`behind ${note.panel}: ${note.what} (${note.service})`, ...parts(['shown by', note.shot])].join(
        '; ',
      );
    case 'hand':
      return `${note.part}${note.sides ? `: ${note.sides.join(' and ')}` : ''}`;
    case 'delivery':
      return [
        `${note.act} ${note.item}`,
        ...parts(
          ['', note.count?.toString()],
          ['out of', note.outOf?.toString()],
          ['short', note.short?.toString()],
          ['short of', note.shortOf],
        ),
        ...note.sizes.map(
          (size) =>
            `${size.attribute} ${amount(size)} ${size.dimension} "${size.quote}"${size.shouldBe === undefined ? '' : ` not ${size.shouldBe}`}`,
        ),
        ...(note.instead ? [`${note.instead.came} for ${note.instead.ordered}`] : []),
      ].join('; ');
    case 'check':
      return [
        note.check,
        ...note.inputs.map(
          ({ input, expression, of }) => `${input}=${expression}${of === undefined ? '' : ` of ${of}`}`,
        ),
        ...Object.entries(note.options ?? {}).map(([name, choice]) => `${name}: ${choice}`),
      ].join('; ');
    case 'clock':
      return [
        `${note.act} ${note.product} ${note.at}${note.isSaid ? '' : '?'}`,
        ...parts(['on', note.on]),
        ...(note.isNext ? ['next coat'] : []),
      ].join('; ');
  }
}

/** Every note in the order of kinds and, within one kind, of speech. */
export function noteLines(notes: MemoNotes): readonly string[] {
  const lines = <N extends { readonly quote: string }>(
    word: string,
    list: readonly N[],
    told: (note: N) => string,
  ) => list.map((note) => `${word} ${told(note)} "${note.quote}"`);
  const gist = (note: { readonly gist: string }) => note.gist;
  return [
    ...lines('fig', notes.figures, figureLine),
    ...lines('dec', notes.decisions, decisionLine),
    ...lines('task', notes.tasks, taskLine),
    ...lines('done', notes.done, gist),
    ...lines('come', notes.arrivals, arrivalLine),
    ...lines('snag', notes.problems, problemLine),
    ...lines('vow', notes.promises, promiseLine),
    ...lines('corr', notes.corrections, gist),
    ...notes.records.map((note) => `${note.kind} ${recordLine(note)} "${note.quote}"`),
  ];
}

/**
 * What was read otherwise than it stands, why each amount was read, dropped or changed, and why a statement was dropped or
 * changed. What a line of its own tells (the name of a thing, a statement that was read) is left out, and what was weighed
 * (which size, how likely a statement is): those numbers change whenever the weights are fitted anew.
 */
export function traceLines(text: string, { repairs = [], trace }: Reading): readonly string[] {
  return [
    ...repairs.map(({ quote, means, why }) => `"${quote}" means "${means}": ${why}`),
    ...trace
      .filter(({ stage }) => stage !== 'size' && stage !== 'item' && !stage.endsWith('evidence'))
      .filter(({ stage, outcome }) => !stage.startsWith('statements') || outcome !== 'read')
      .map(({ stage, rule, outcome, why, span, value, unit }) => {
        const amount = value === undefined ? '' : ` (${value}${unit ? ` ${unit}` : ''})`;
        return `${stage}: ${outcome} "${text.slice(span.start, span.end)}" by ${rule}: ${why}${amount}`;
      }),
  ];
}

/** What was weighed and left out of `traceLines`: which thing, which size, how likely a statement is. */
export function weighedLines(text: string, { trace }: Reading): readonly string[] {
  return trace
    .filter(({ stage }) => stage === 'size' || stage === 'item' || stage.endsWith('evidence'))
    .map(
      ({ stage, rule, outcome, why, span }) =>
        `${stage}: ${outcome} "${text.slice(span.start, span.end)}" by ${rule}: ${why}`,
    );
}
