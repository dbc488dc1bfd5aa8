/**
 * Inputs that take every figure of a measure: all weights that stand, or those of a group ("every weight in aft
 * locker"). A weight of one of several goes in as often as there are.
 */
import type { SpokenInput } from '../../language/notes.ts';
import { usualDimension } from '../measures.ts';
import { quantityText } from '../quantity-words.ts';
import type { StandingRow } from '../rows.ts';
import type { CheckInput } from './check.ts';
import type { AskedCheck } from './check-rows.ts';
import { everyFigure, everyFluid, type Fluid } from './every-figure.ts';
import { type GroupWords, groupWords, isInGroup } from './group-words.ts';
import { piecesOf } from './pieces.ts';
import { figureRead, type InputAtHand, type Reading, readInput, type Trouble } from './read-inputs.ts';

/** What an input takes where it takes every figure. */
export interface EveryInput {
  readonly input: CheckInput;
  readonly atHand: readonly InputAtHand[];
  readonly watches: readonly string[];
  readonly note?: string;
}

/** Whether an input was asked for by this name. */
export const isNamed = ({ input }: SpokenInput, name: string): boolean => input.trim().toLowerCase() === name;

/** Everything that the inputs of a check take of a measure or of a group. */
export function everyInput(reading: Reading, input: CheckInput, asked: AskedCheck): readonly EveryInput[] {
  const given = asked.inputs.filter((one) => isNamed(one, input.name));
  if (given.length === 0) return input.everyOf ? [wholeOf(reading, input, { attribute: input.everyOf })] : [];
  if (!input.many) return [];
  return given.flatMap((one) => {
    const group = groupWords(one.expression);
    return group ? [groupOf(reading, input, group, one)] : [];
  });
}

/** Every standing figure of a measure, with fluids by their volume. */
function wholeOf(reading: Reading, input: CheckInput, group: GroupWords): EveryInput {
  const { attribute } = group;
  const { rows, wholes, byMeasure } = everyFigure(reading.reader, attribute);
  const left = byMeasure.length > 0 ? `; by measure, and so not counted: ${byMeasure.join(', ')}` : '';
  const fluids = attribute === 'weight' ? everyFluid(reading.reader) : [];
  const poured = fluids.map((fluid) => fluidPart(reading, input, fluid));
  const dense = [...new Set(fluids.flatMap(({ density }) => density?.source ?? []))];
  const byVolume = fluids.some(({ density }) => density)
    ? `; fluids by their volume (${dense.join('; ')})`
    : '';
  const note = `every ${attribute} that stands is counted${wholes.length > 0 ? `, but not of what holds the others: ${wholes.join(', ')}` : ''}${left}${byVolume}`;
  const atHand = [...rows.map((row) => partOf(reading, input, row)), ...poured];
  return {
    input,
    atHand,
    watches: watchesOfMeasure(group),
    ...(atHand.length > 0 ? { note } : {}),
  };
}

/** The figures of a group; where none stands, the input waits for the first. */
function groupOf(reading: Reading, input: CheckInput, group: GroupWords, asked: SpokenInput): EveryInput {
  const { reader } = reading;
  const { rows } = everyFigure(reader, group.attribute, (row) => {
    const claim = row.claimId === undefined ? undefined : reader.claim(row.claimId);
    const name = reader.item(row.itemId)?.name ?? '';
    return isInGroup(group, { name, ...(claim?.place === undefined ? {} : { place: claim.place }) });
  });
  const fluids =
    group.attribute === 'weight' ? everyFluid(reader).filter(({ name }) => isInGroup(group, { name })) : [];
  const parts = [
    ...rows.map((row) => partOf(reading, input, row)),
    ...fluids.map((fluid) => fluidPart(reading, input, fluid)),
  ].map((part) => ({ ...part, resolved: { ...asked, input: input.name } }));
  const words = wordsOfGroup(group);
  if (parts.length === 0)
    return { input, atHand: [waiting(input, asked, group)], watches: watchesOfMeasure(group) };
  const where =
    group.place === undefined
      ? ''
      : '; what was never said to be there, and is not named after it, is not in it';
  const note = `${words}: ${parts.map((part) => part.words).join(', ')}${where}`;
  return { input, atHand: parts, watches: watchesOfMeasure(group), note };
}

const wordsOfGroup = ({ attribute, name, place }: GroupWords): string =>
  ['every', name, attribute, ...(place === undefined ? [] : ['in', place])].filter(Boolean).join(' ');

/** A group of which no figure was told yet. */
function waiting(input: CheckInput, asked: SpokenInput, group: GroupWords): InputAtHand {
  const { attribute, name, place } = group;
  const what = name ?? 'thing';
  const where = place === undefined ? '' : ` in the ${place}`;
  const trouble: Trouble = {
    kind: 'missing',
    why: `no ${attribute} of any ${what}${where} was ever said`,
    ask: `say it with what it is of${place === undefined ? '' : ` and that it is in the ${place}`}, or name the parts one by one`,
  };
  const resolved = { ...asked, input: input.name };
  return {
    input,
    resolved,
    words: wordsOfGroup(group),
    read: [],
    waitsFor: [],
    pushed: () => undefined,
    trouble,
  };
}

const watchesOfMeasure = ({ attribute }: GroupWords): readonly string[] =>
  [usualDimension(attribute), ...(attribute === 'weight' ? ['volume', 'count'] : [])].map(
    (dimension) => `*${dimension}`,
  );

const partOf = (reading: Reading, input: CheckInput, { slot }: StandingRow): InputAtHand =>
  ofAllPieces(reading, readInput(reading, input, { input: input.name, expression: `[${slot}]` }));

/** A fluid as a part of a sum of weights: by its volume, else what keeps it from being counted. */
function fluidPart(reading: Reading, input: CheckInput, { name, row, density }: Fluid): InputAtHand {
  const asked = (expression: string) => readInput(reading, input, { input: input.name, expression });
  if (density) {
    const dense = density.low === density.high ? [density.low] : [density.low, density.high];
    const ends = dense.map((heavy) => `[${row.slot}] / (1 L) * ${heavy / 1000} kg`);
    return { ...asked(ends.join(' to ')), words: `${name} ${saidAmount(row)}` };
  }
  const amount = saidAmount(row);
  const why =
    row.dimension === 'count'
      ? `the ${name} was told as ${amount}, and not in what: kilos or litres`
      : `the ${name} is ${amount}, and what a litre of it weighs was never said`;
  const trouble: Trouble = {
    kind: 'missing',
    why,
    ask: `say it, or: hearwright figures set "${name} weight = … kg"`,
  };
  return { ...asked(`[${row.slot}]`), trouble, waitsFor: [] };
}

const saidAmount = ({ value, unit }: StandingRow): string => quantityText({ value, unit });

/** A weight of one of several goes into a sum as often as there are pieces; a product that was written is left. */
export function ofAllPieces(reading: Reading, atHand: InputAtHand): InputAtHand {
  const { input, resolved, read } = atHand;
  const [row] = read;
  if (!input.everyOf || !row || resolved.expression !== `[${row.slot}]`) return atHand;
  const pieces = piecesOf(reading.reader, row);
  if (pieces?.kind !== 'counted') return atHand;
  const all = readInput(reading, input, {
    input: input.name,
    expression: `${pieces.factor} * ${resolved.expression}`,
  });
  if (!all.range) return atHand;
  const count = all.read.find(({ attribute }) => attribute === 'count')?.value ?? pieces.factor;
  return { ...all, resolved, words: `${count} x ${atHand.words}` };
}

/** Weights of one of several, of which nobody said how many there are. */
export function uncounted(reading: Reading, atHand: readonly InputAtHand[]): readonly string[] {
  const names = atHand.flatMap(({ input, read }) =>
    input.everyOf === undefined
      ? []
      : read.flatMap((row) =>
          piecesOf(reading.reader, row)?.kind === 'unsaid' ? [figureRead(reading.reader, row).name] : [],
        ),
  );
  if (names.length === 0) return [];
  return [`how many there are was never said, and so counted once: ${[...new Set(names)].join(', ')}`];
}
