/** Inputs of a check as they were asked for, each resolved to an interval through the figures that stand. */
import type { Attribute, SpokenInput } from '../../language/notes.ts';
import { sharesOfFall } from '../falls.ts';
import { type Formula, readFormula, readsOf, withSlots, writeFormula } from '../formula.ts';
import { nameOfSlot } from '../formulas.ts';
import { usualDimension } from '../measures.ts';
import type { ModelReader } from '../rows.ts';
import type { Check, CheckInput, Range } from './check.ts';
import type { FigureRead } from './check-rows.ts';
import { doubtOf } from './doubts.ts';
import {
  type IntervalShape,
  intervalWords,
  type PartRange,
  rangeOfParts,
  writeInterval,
} from './interval-words.ts';
import { type Known, knownOf, rangeOfExpression } from './known-range.ts';
import { figureIn, figureNamed, itemAndAttribute, type Names, type ReadRow } from './named-figure.ts';
import { namedSince } from './said-sizes.ts';

/** One figure of an input, as far as it is known. */
export interface InputAtHand {
  readonly input: CheckInput;
  /** The expression with names that stand for a figure as slots. */
  readonly resolved: SpokenInput;
  /** In words. */
  readonly words: string;
  readonly read: readonly ReadRow[];
  /** In the base unit; absent where something is missing. */
  readonly range?: Range;
  /** The same with layers of known thickness that went on since it was measured; absent where there is none. */
  readonly layered?: Layered;
  /** Unit that it was written or said in. */
  readonly unit?: string;
  /** With what its bounds leave open pushed away by this factor. */
  readonly pushed: (factor: number) => Range | undefined;
  /** Names that stand for no figure yet. */
  readonly waitsFor: readonly string[];
  readonly trouble?: Trouble;
}

/** An input with the layers on that went on since: each once, and as often as it may be. */
export interface Layered {
  readonly once: Range;
  readonly most: Range;
  /** "6 mm of cork". */
  readonly words: string;
}

/** Why an input has no value: `missing` may come yet, `wrong` is badly worded or was left out. */
export interface Trouble {
  readonly kind: 'missing' | 'wrong';
  readonly why: string;
  /** What to do about it, a line. */
  readonly ask: string;
}

export interface Reading extends Names {
  readonly reader: ModelReader;
  readonly region?: string;
  /** "560 mm": a quantity of a kind as it is written. */
  readonly exampleOf: (kind: string) => string;
}

/** "1 in 40" of a fall, as it is told and set out. */
const asShare = (expression: string): string =>
  expression.replace(/\b(?:one|1) in (\d+(?:\.\d+)?)\b/gi, '1/$1');

/** Reads one input of a check. */
export function readInput(reading: Reading, input: CheckInput, asked: SpokenInput): InputAtHand {
  const expression = namedSince(reading.reader, asked.expression);
  const { shape, parts: texts } = intervalWords(input.isFall ? asShare(expression) : expression);
  const [first = '', second] = texts;
  const middle = readPart(reading, input, first);
  const parts =
    second === undefined ? [middle] : [middle, readPart(reading, input, inUnitOf(second, middle))];
  const base = {
    input,
    resolved: {
      ...asked,
      input: input.name,
      expression: writeInterval(
        shape,
        parts.map(({ expression }) => expression),
      ),
    },
    words: writeInterval(
      shape,
      parts.map(({ words }) => words),
    ),
    read: parts.flatMap(({ read }) => read),
    waitsFor: parts.flatMap(({ waitsFor }) => waitsFor),
  };
  const nothing = { pushed: () => undefined };
  const [trouble] = parts.flatMap((part) => part.trouble ?? []);
  if (trouble) return { ...base, ...nothing, trouble };
  const range = joined(reading, shape, parts, ({ range: own }) => own);
  const wrong = (why: string) => ({
    ...base,
    ...nothing,
    trouble: { kind: 'wrong', why: `${input.name}: ${why}`, ask: exampleLine(reading, input) } as const,
  });
  if (typeof range === 'string') return wrong(range);
  if (!range) return wrong('nothing is given');
  if (middle.kind !== input.kind)
    return wrong(kindWords(input, middle.kind ?? 'ratio', base.read.length === 0));
  const isOpen = parts.some(({ pushed }) => pushed(2) !== undefined);
  const side = BOUNDS.test(input.name) ? undefined : OPEN[shape];
  const pushed = (factor: number) => {
    if (side === 'above') return { ...range, high: range.high * factor };
    if (side === 'below') return { ...range, low: range.low / factor };
    const wide = joined(reading, shape, parts, (part) => part.pushed(factor) ?? part.range);
    return typeof wide === 'string' ? undefined : wide;
  };
  const unit = middle.unit === undefined ? {} : { unit: middle.unit };
  // Two ends that were written out are nobody's measure.
  const layered = parts.length === 1 && middle.layered ? { layered: middle.layered } : {};
  return { ...base, range, ...unit, ...layered, ...(isOpen || side ? { pushed } : nothing) };
}

/** The side that the words leave open. */
const OPEN: Readonly<Partial<Record<IntervalShape, 'above' | 'below'>>> = {
  'at-least': 'above',
  'at-most': 'below',
};

/** A bare tolerance is in the unit of its figure: "706 mm give or take 2". */
function inUnitOf(text: string, { unit }: Part): string {
  return /^[\d\s./]+$/.test(text) && unit !== undefined && unit !== '1' ? `${text} ${unit}` : text;
}

function joined(
  { region }: Reading,
  shape: IntervalShape,
  parts: readonly Part[],
  rangeOf: (part: Part) => Range | undefined,
): Range | string | undefined {
  const ranges = parts.flatMap((part): PartRange[] => {
    const range = rangeOf(part);
    return range ? [{ range, kind: part.kind ?? 'ratio', unit: part.unit ?? '1' }] : [];
  });
  return ranges.length === parts.length ? rangeOfParts(shape, ranges, region) : undefined;
}

/** One part of an input: an expression without words around it. */
interface Part
  extends Pick<
    InputAtHand,
    'words' | 'read' | 'range' | 'unit' | 'pushed' | 'waitsFor' | 'trouble' | 'layered'
  > {
  /** With names that stand for a figure as slots. */
  readonly expression: string;
  readonly kind?: string;
}

function readPart(reading: Reading, input: CheckInput, text: string): Part {
  const said = readFormula(text);
  const none = { read: [], waitsFor: [], pushed: () => undefined };
  if (!said.ok) {
    const why = `${input.name}: "${text}" cannot be read: ${said.why}`;
    const trouble = { kind: 'wrong', why, ask: exampleLine(reading, input) } as const;
    return { ...none, expression: text, words: text, trouble };
  }
  const unsaid: Trouble[] = [];
  const waitsFor: string[] = [];
  const formula = withSlots(said.formula, (name, of = input) => {
    const asked = figureNamed(reading, name, of.kind, of.name);
    // In a call, "run" may be the width that its check asks for, and as well the only size that a run has.
    const only = of === input || asked.kind === 'figure' ? asked : figureNamed(reading, name, of.kind, '');
    // "fridge current * 12 V" is a power, and no power was said of the fridge.
    const other = only.kind === 'unsaid' && of === input ? figureOfItsOwnKind(reading, name) : undefined;
    const named = other ?? (only.kind === 'unsaid' ? asked : only);
    if (named.kind === 'figure') return named.row.slot;
    waitsFor.push(name);
    unsaid.push(troubleOf(reading, { ...of, name: input.name }, named));
    return undefined;
  });
  const rows = new Map<string, ReadRow>();
  for (const { kind, text: ref } of readsOf(formula)) {
    const row = kind === 'slot' ? figureIn(reading, ref) : undefined;
    if (row) rows.set(ref, row);
    else if (kind === 'slot') unsaid.push(neverSaid(reading, input, nameOfSlot(reading.reader, ref)));
  }
  const base = {
    expression: writeFormula(formula),
    words: wordsOfFormula(reading.reader, formula),
    read: [...rows.values()],
    waitsFor,
  };
  const [trouble] = unsaid;
  if (trouble) return { ...base, pushed: () => undefined, trouble };
  return { ...base, ...worked(reading, input, formula, rows) };
}

/** The figure that a name with its attribute stands for, whatever the input is one of. */
function figureOfItsOwnKind(reading: Reading, name: string) {
  const { attribute } = itemAndAttribute(name);
  const kind = attribute && usualDimension(attribute);
  const named = kind && figureNamed(reading, name, kind, '');
  return named?.kind === 'figure' ? named : undefined;
}

function worked(
  reading: Reading,
  input: CheckInput,
  formula: Formula,
  rows: ReadonlyMap<string, ReadRow>,
): Pick<Part, 'pushed' | 'range' | 'kind' | 'unit' | 'trouble' | 'layered'> {
  const known = new Map([...rows].map(([slot, row]) => [slot, knownHere(input, row)] as const));
  const result = rangeOfExpression(formula, known, reading.region);
  const nothing = () => undefined;
  if (!result.ok) {
    const why = `${input.name}: ${result.why}`;
    return { pushed: nothing, trouble: { kind: 'wrong', why, ask: exampleLine(reading, input) } };
  }
  const pushed = (factor: number) => {
    const away = new Map([...known].map(([slot, one]) => [slot, pushedAway(one, factor)] as const));
    const wide = rangeOfExpression(formula, away, reading.region);
    return wide.ok ? wide.range : undefined;
  };
  const isOpen = [...known.values()].some(({ open }) => open !== undefined);
  const { kind, unit } = result;
  // A number that was written: 40 is one in forty.
  const range = input.isFall && rows.size === 0 && unit === '1' ? sharesOfFall(result.range) : result.range;
  const layered = layeredOf(reading, formula, rows, known);
  return { range, kind, unit, pushed: isOpen ? pushed : nothing, ...(layered ? { layered } : {}) };
}

/** A figure as an input takes it: a fall as the share that it is. */
function knownHere(input: CheckInput, row: ReadRow): Known {
  const known = knownOf(row, isEdge(input, row));
  return input.isFall && known.unit === '1' ? sharesOfFall(known) : known;
}

/** The expression with the layers on that went on since its figures were measured. */
function layeredOf(
  { reader, region }: Reading,
  formula: Formula,
  rows: ReadonlyMap<string, ReadRow>,
  known: ReadonlyMap<string, Known>,
): Layered | undefined {
  const layers = new Map(
    [...rows].flatMap(([slot, row]) => {
      const layer = doubtOf(reader, row)?.layer;
      return layer ? [[slot, layer] as const] : [];
    }),
  );
  if (layers.size === 0) return undefined;
  const at = (times: (most: 1 | 2) => number) => {
    const moved = new Map(
      [...known].map(([slot, one]) => {
        const layer = layers.get(slot);
        return [slot, layer ? movedBy(one, layer.change * times(layer.most)) : one] as const;
      }),
    );
    const result = rangeOfExpression(formula, moved, region);
    return result.ok ? result.range : undefined;
  };
  const [once, most] = [at(() => 1), at((times) => times)];
  const words = [...new Set([...layers.values()].map((layer) => layer.words))].join(' and ');
  return once && most ? { once, most, words } : undefined;
}

const movedBy = (known: Known, by: number): Known => ({
  ...known,
  low: known.low + by,
  mid: known.mid + by,
  high: known.high + by,
});

/** Inputs that are themselves a bound: a limit goes in at its stated end. */
const BOUNDS = /\b(?:limit|allowed|most|least|max|maximum|minimum|limits)\b/;

/** Whether a stated bound is what the input asks for: what things are held to, and not how far a figure is known. */
function isEdge(input: CheckInput, { limit }: ReadRow): boolean {
  return limit !== undefined && (BOUNDS.test(input.name) || limit.about !== '');
}

function pushedAway(known: Known, factor: number): Known {
  if (known.open === 'above') return { ...known, high: known.high * factor };
  return known.open === 'below' ? { ...known, low: known.low / factor } : known;
}

function kindWords({ kind, says }: CheckInput, got: string, isBare: boolean): string {
  if (got === 'ratio' && isBare) return 'a number alone has no unit';
  const shown = got === 'ratio' ? 'a plain number' : withArticle(got);
  return `it is ${shown}, and ${withArticle(kind)} is wanted: ${says}`;
}

const withArticle = (kind: string): string => `${/^[aeiou]/.test(kind) ? 'an' : 'a'} ${kind}`;

function troubleOf(
  reading: Reading,
  input: CheckInput,
  named: Exclude<ReturnType<typeof figureNamed>, { readonly kind: 'figure' }>,
): Trouble {
  if (named.kind === 'unsaid') return neverSaid(reading, input, named.words);
  const which = named.which.join(', ');
  return {
    kind: 'missing',
    why: `"${named.words}" has several figures: ${which}`,
    ask: `name one of them: ${input.name}=${named.which[0] ?? ''}`,
  };
}

function neverSaid(reading: Reading, input: CheckInput, words: string): Trouble {
  return {
    kind: 'missing',
    why: `the ${words} was never said`,
    ask: `say it, or: hearwright figures set "${words} = ${blankOf(reading, input.kind)}"`,
  };
}

/** "… mm": where a size goes. No size of ours, which a tired hand would take over as it stands. */
const blankOf = (reading: Reading, kind: string): string => reading.exampleOf(kind).replace(/^[\d.]+/, '…');

function exampleLine(reading: Reading, { name, kind }: CheckInput): string {
  return `write it with its unit: "${name}=${reading.exampleOf(kind)}"`;
}

/** An input that is needed and was not given. */
export function notGiven(reading: Reading, check: Check, input: CheckInput): Trouble {
  const example = `${input.name}=${blankOf(reading, input.kind)}`;
  return {
    kind: 'wrong',
    why: `${input.name} was not given (${input.says})`,
    ask: `say it, or: hearwright checks add ${check.name} … "${example}"`,
  };
}

/** An input that takes the warmth of the air, of which nobody has said anything. */
export function airUnsaid(reading: Reading, input: CheckInput): Trouble {
  return {
    kind: 'missing',
    why: `nobody has said how warm the air is (${input.says})`,
    ask: `say it, or: hearwright figures set "air temperature = ${blankOf(reading, input.kind)}"`,
  };
}

/** An input that takes every figure of a measure, of which none stands. */
export function noneSaid(reading: Reading, input: CheckInput, attribute: Attribute): Trouble {
  return {
    kind: 'missing',
    why: `no ${attribute} was ever said`,
    ask: `say one, or: hearwright figures set "… ${attribute} = ${blankOf(reading, input.kind)}"`,
  };
}

function wordsOfFormula(reader: ModelReader, formula: Formula): string {
  return writeFormula(formula, (slot) => nameOfSlot(reader, slot));
}

/** What a standing figure brings into a check, with its age and its doubts. */
export function figureRead(reader: ModelReader, row: ReadRow): FigureRead {
  const claim = row.claimId === undefined ? undefined : reader.claim(row.claimId);
  const source = claim?.source ?? row.limit?.source;
  const { spread } = knownOf(row, false);
  const doubt = doubtOf(reader, row);
  return {
    name: nameOfSlot(reader, row.slot),
    value: row.value,
    unit: row.unit,
    bound: row.bound,
    ...(row.high === undefined ? {} : { high: row.high }),
    ...(spread === undefined ? {} : { tolerance: spread }),
    ...(row.state === undefined ? {} : { state: row.state }),
    ...(source ? { source } : {}),
    ...(doubt === undefined ? {} : { doubt: doubt.why }),
  };
}
