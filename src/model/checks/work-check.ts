/** Works a check out on the project's figures: names resolved, intervals in and out, the verdict in words. */
import type { HouseUnits, SpokenInput } from '../../language/notes.ts';
import { unitKind } from '../units.ts';
import { checkNamed } from './all-checks.ts';
import { agedAir, assumedInputs } from './assumed-inputs.ts';
import { clocked, clocksOf, doubted, noneGiven, type Outcome, watchesOfTime } from './at-a-time.ts';
import type { Check, CheckInput, Given, Range } from './check.ts';
import type { AskedCheck, CheckRun, InputRead, ResultRead } from './check-rows.ts';
import { everyInput, isNamed, ofAllPieces, uncounted } from './every-input.ts';
import { groupWords } from './group-words.ts';
import type { Names } from './named-figure.ts';
import { figureRead, type InputAtHand, type Reading, readInput, type Trouble } from './read-inputs.ts';
import { runCheck } from './run-check.ts';
import {
  exampleOf,
  readable,
  type Systems,
  sayingIn,
  systemFor,
  systemOf,
  systemOfWarmth,
  unitToRead,
} from './say.ts';
import { watchesOf } from './watches.ts';

export interface CheckSettings {
  readonly units: HouseUnits;
  readonly region?: string;
  /** The time that a check that stands is run for: its clocks are read, and the air that was told last. ISO 8601. */
  readonly now?: string;
}

export interface WorkedCheck {
  readonly run: CheckRun;
  /** Inputs with names that stand for a figure as slots. */
  readonly inputs: readonly SpokenInput[];
  readonly watches: readonly string[];
  /** Whether the asking itself is at fault: words that cannot be read, units that do not fit. */
  readonly isWrong: boolean;
}

/** Works a check out. Never throws on what a person asked for: what is wrong with it is said. */
export function workCheck(
  names: Names & Pick<Reading, 'reader'>,
  asked: AskedCheck,
  settings: CheckSettings,
): WorkedCheck {
  const { units, region, now } = settings;
  const check = checkNamed(asked.check);
  if (!check) return unworked(asked, `no check is called "${asked.check}"`, ['see: hearwright checks kinds']);
  const strange = strangeInput(check, asked);
  if (strange) return unworked(asked, strange, [`inputs of ${check.name}: ${inputNames(check)}`]);
  const house = systemOf(units, []);
  const base: Reading = {
    ...names,
    ...(region === undefined ? {} : { region }),
    exampleOf: (kind) => exampleOf(kind, house),
  };
  const clocks = clocksOf(base, check, asked, now);
  const assumed =
    now === undefined ? undefined : assumedInputs(base.reader, check, asked, clocks.at(-1)?.start.at ?? now);
  const wanted = [...asked.inputs, ...(assumed?.inputs ?? [])];
  const every = check.inputs.flatMap((input) => everyInput(base, input, asked));
  const atHand = check.inputs.flatMap((input) => [
    ...every.filter((one) => one.input === input).flatMap((one) => one.atHand),
    ...wanted
      .filter((one) => isNamed(one, input.name) && !isGroup(input, one))
      .map((one) => ofAllPieces(base, readInput(base, input, one))),
  ]);
  const said = atHand.flatMap(({ unit }) => unit ?? []);
  const system: Systems = { all: systemOf(units, said), ...systemOfWarmth(said) };
  const say = sayingIn(system, region);
  const given = givenOf(atHand, asked, say);
  const troubles = [
    ...atHand.flatMap(({ trouble }) => trouble ?? []),
    ...check.inputs
      .filter(({ name, optional }) => !optional && !atHand.some(({ input }) => input.name === name))
      .map((input) => noneGiven(base, check, input)),
  ];
  const ran = troubles.length > 0 ? notRun(troubles) : judged(check, given, atHand);
  const outcome = clocked(check, ran, clocks, now);
  const when = now === undefined ? undefined : (clocks.at(-1)?.start.at ?? now);
  const inputs = inputsRead(base, check, atHand, system)
    .map((one) => doubted(one, assumed?.doubt))
    .map((one) => doubted(one, agedAir(check, one, when)));
  return {
    run: {
      check: check.name,
      ...withDoubts(outcome, inputs, layersOn(check, given, atHand), isOfAir(check)),
      results: resultsOf(outcome, system, region),
      notes: [
        ...outcome.notes,
        ...every.flatMap(({ note }) => note ?? []),
        ...uncounted(base, atHand),
        ...(outcome.state === 'not-run' ? [] : (assumed?.notes ?? [])),
      ],
      ...(outcome.window ? { window: outcome.window } : {}),
      ...(outcome.alsoRunning ? { alsoRunning: outcome.alsoRunning } : {}),
      inputs,
      options: Object.fromEntries(given.options),
    },
    inputs: keptInputs(asked, atHand, assumed?.inputs ?? []),
    watches: [
      ...(assumed?.watches ?? []),
      ...watchesOfTime(check, outcome, now, assumed?.takesAir === true),
      ...every.flatMap(({ watches }) => watches),
      ...watchesOf(
        names.reader,
        atHand.flatMap(({ read }) => read),
        atHand.flatMap(({ waitsFor }) => waitsFor),
      ),
    ],
    isWrong: troubles.some(({ kind }) => kind === 'wrong') || outcome.isWrong === true,
  };
}

/** "Every battery weight": what is in it is looked up at every run. */
const isGroup = (input: CheckInput, { expression }: SpokenInput): boolean =>
  input.many === true && groupWords(expression) !== undefined;

/** What a check keeps of its inputs: as they were asked for, names as the slots that they were found to mean. */
function keptInputs(
  asked: AskedCheck,
  atHand: readonly InputAtHand[],
  assumed: readonly SpokenInput[],
): readonly SpokenInput[] {
  const own = atHand.filter(
    ({ input }) =>
      asked.inputs.some((one) => isNamed(one, input.name)) &&
      !assumed.some((one) => one.input === input.name),
  );
  const groups = new Set<string>();
  return own.flatMap(({ input, resolved }) => {
    if (!isGroup(input, resolved)) return resolved;
    // A group stands once, however many are in it.
    const key = `${input.name}=${resolved.expression}`;
    if (groups.has(key)) return [];
    groups.add(key);
    return resolved;
  });
}

const inputNames = (check: Check) => check.inputs.map(({ name }) => name).join(', ');

/** An input that the check has not, or one too many of an input that takes one. */
function strangeInput(check: Check, { inputs, options = {} }: AskedCheck): string | undefined {
  const unknown = inputs.find((one) => !check.inputs.some(({ name }) => isNamed(one, name)));
  if (unknown) return `"${unknown.input}" is no input of ${check.name}`;
  const twice = check.inputs.find(
    ({ name, many }) => !many && inputs.filter((one) => isNamed(one, name)).length > 1,
  );
  if (twice) return `${twice.name} was given more than once`;
  for (const [name, choice] of Object.entries(options)) {
    const option = check.options?.find((one) => one.name === name);
    if (!option) return `"${name}" is no choice of ${check.name}`;
    if (!option.of.includes(choice)) return `${name} is one of ${option.of.join(', ')}, and not "${choice}"`;
  }
  return undefined;
}

function unworked(asked: AskedCheck, why: string, ask: readonly string[]): WorkedCheck {
  const run = { check: asked.check, state: 'not-run', why, results: [], notes: [], inputs: [] } as const;
  return {
    run: { ...run, options: asked.options ?? {}, ask },
    inputs: asked.inputs,
    watches: [],
    isWrong: true,
  };
}

function givenOf(atHand: readonly InputAtHand[], asked: AskedCheck, say: Given['say']): Given {
  const inputs = new Map<string, Range[]>();
  const labels = new Map<string, string[]>();
  for (const { input, range, words, read, resolved } of atHand) {
    if (!range) continue;
    inputs.set(input.name, [...(inputs.get(input.name) ?? []), range]);
    // A size that was said of a thing without a name is called by the thing, a plain number by its place in the check.
    const label = resolved.of ?? (read.length > 0 ? words : '');
    labels.set(input.name, [...(labels.get(input.name) ?? []), label]);
  }
  const options = checkNamed(asked.check)?.options ?? [];
  const usual = options.map(({ name, of }) => [name, of[0] ?? ''] as const);
  return { inputs, labels, options: new Map([...usual, ...Object.entries(asked.options ?? {})]), say };
}

function notRun(troubles: readonly Trouble[]): Outcome {
  const why = troubles.map((one) => one.why).join('; ');
  return { state: 'not-run', why, results: [], notes: [], ask: [...new Set(troubles.map(({ ask }) => ask))] };
}

function judged(check: Check, given: Given, atHand: readonly InputAtHand[]): Outcome {
  const ran = runCheck(check, given);
  if (ran.verdict === 'not-run')
    return { state: 'not-run', why: ran.why, results: [], notes: [], ask: [], isWrong: true };
  if (ran.verdict === 'refused') return { state: 'refused', why: ran.why, results: [], notes: [], ask: [] };
  const open = openSides(atHand);
  const outcome = { state: ran.verdict, why: ran.why, results: ran.results, notes: ran.notes, ask: [] };
  if (open.length === 0) return outcome;
  const names = open.map((one) => `${one.input.name} (${one.words})`).join(', ');
  if (ran.verdict === 'holds' && breaksBeyond(check, given, atHand)) {
    return {
      ...outcome,
      state: 'not-run',
      why: `it holds only as far as was said: ${names} has an open end, and beyond it this breaks`,
      results: [],
      ask: [`say how far it may go: ${names}`],
    };
  }
  const note = `${names}: an end is open; the number is for the end that was said`;
  return { ...outcome, notes: [...outcome.notes, note] };
}

/** How far beyond its stated end an open figure is tried, farthest first: what is absurd is tried nearer. */
const BEYOND = [10, 3, 1.5, 1.1] as const;

const openSides = (atHand: readonly InputAtHand[]) => atHand.filter((one) => one.pushed(2) !== undefined);

/** Whether a check that holds at the stated ends breaks on the open side of one. */
function breaksBeyond(check: Check, given: Given, atHand: readonly InputAtHand[]): boolean {
  for (const factor of BEYOND) {
    const inputs = new Map<string, Range[]>();
    for (const { input, range, pushed } of atHand) {
      const wide = pushed(factor) ?? range;
      if (wide) inputs.set(input.name, [...(inputs.get(input.name) ?? []), wide]);
    }
    const ran = runCheck(check, { ...given, inputs });
    if (ran.verdict !== 'refused') return ran.verdict === 'broken';
  }
  return false;
}

interface LayersOn {
  readonly words: string;
  /** With the layers as often as they may be. */
  readonly why: string;
  /** Whether it breaks with each layer on once. */
  readonly isBroken: boolean;
}

/** What a check comes to with the layers on that went on since its figures were measured. */
function layersOn(check: Check, given: Given, atHand: readonly InputAtHand[]): LayersOn | undefined {
  const layers = atHand.flatMap(({ layered }) => layered ?? []);
  if (layers.length === 0) return undefined;
  const at = (of: 'once' | 'most') => {
    const inputs = new Map<string, Range[]>();
    for (const { input, range, layered } of atHand) {
      const one = layered?.[of] ?? range;
      if (one) inputs.set(input.name, [...(inputs.get(input.name) ?? []), one]);
    }
    return runCheck(check, { ...given, inputs });
  };
  const [once, most] = [at('once'), at('most')];
  const words = [...new Set(layers.map((layer) => layer.words))].join(' and ');
  const isTwice = once.why !== most.why;
  return {
    words,
    why: isTwice ? `${once.why}, or on both sides: ${most.why}` : once.why,
    isBroken: once.verdict === 'broken',
  };
}

const isOfAir =
  (check: Check) =>
  ({ name }: InputRead): boolean =>
    check.inputs.some((input) => input.name === name && input.ofAir === true);

/** "tank width and tank length: it was said on …": each doubt once, behind the figures that it is about. */
function toldOnce(reads: InputRead['reads']): string {
  const byDoubt = new Map<string, Set<string>>();
  for (const { name, doubt } of reads) {
    if (doubt !== undefined) byDoubt.set(doubt, (byDoubt.get(doubt) ?? new Set()).add(name));
  }
  return [...byDoubt].map(([doubt, names]) => `${[...names].join(' and ')}: ${doubt}`).join('; ');
}

/**
 * A verdict on figures that may not be so any more is none to go by. What breaks is told all the same, but not by the air
 * of another day: that is gone.
 */
function withDoubts(
  { state, why, ask }: Outcome,
  inputs: readonly InputRead[],
  layers: LayersOn | undefined,
  isAir: (input: InputRead) => boolean,
): Pick<CheckRun, 'state' | 'why' | 'ask'> {
  const told = toldOnce(inputs.flatMap(({ reads }) => reads));
  if (told === '' || state === 'not-run' || state === 'refused') return { state, why, ask };
  const again = ['measure again, or say that it still holds'];
  const isGone = inputs.some((one) => isAir(one) && one.reads.some(({ doubt }) => doubt !== undefined));
  if (state === 'broken' && !isGone) return { state, why: `${why}; besides, ${told}`, ask: again };
  const less = layers ? `; with ${layers.words} on it: ${layers.why}` : '';
  // One layer alone breaks it: there is nothing left to hope for from measuring.
  const isSure = layers?.isBroken === true;
  return {
    state: isSure ? 'broken' : 'stale',
    why: `${told}; by the old figures: ${why}${less}`,
    ask: again,
  };
}

function resultsOf({ results }: Outcome, system: Systems, region?: string): readonly ResultRead[] {
  return results.map(({ name, kind, range, unit: own }) => {
    const unit = own ?? unitToRead(range.mid, kind, systemFor(kind, system));
    const inUnit = (base: number) => readable(base, unit, region).value;
    return { name, low: inUnit(range.low), mid: inUnit(range.mid), high: inUnit(range.high), unit };
  });
}

/** Every input of the check, given or not, in its order. */
function inputsRead(
  { reader, region }: Reading,
  check: Check,
  atHand: readonly InputAtHand[],
  system: Systems,
): readonly InputRead[] {
  return check.inputs.flatMap((input): InputRead[] => {
    const own = atHand.filter((one) => one.input.name === input.name);
    if (own.length === 0) {
      if (input.optional) return [];
      return [{ name: input.name, expression: '', reads: [], missing: `${input.says}: not given` }];
    }
    return own.map(({ words, read, range, unit: said, trouble, pushed, resolved }): InputRead => {
      const unit =
        range &&
        (fits(said, input.kind)
          ? (said as string)
          : unitToRead(range.mid, input.kind, systemFor(input.kind, system)));
      const wide = range && pushed(2);
      const open =
        wide && range
          ? wide.high > range.high
            ? 'above'
            : wide.low < range.low
              ? 'below'
              : undefined
          : undefined;
      return {
        name: input.name,
        expression: words,
        ...(resolved.of === undefined ? {} : { of: resolved.of }),
        ...(range && unit
          ? {
              ...(input.isFall && unit === '1' ? { isFall: true } : {}),
              range: {
                low: readable(range.low, unit, region).value,
                mid: readable(range.mid, unit, region).value,
                high: readable(range.high, unit, region).value,
                unit,
              },
            }
          : {}),
        ...(open ? { open } : {}),
        reads: read.map((row) => figureRead(reader, row)),
        ...(trouble ? { missing: trouble.why } : {}),
      };
    });
  });
}

/** Whether a unit is one to print a quantity of this kind in. */
function fits(unit: string | undefined, kind: string): boolean {
  return unit !== undefined && unitKind(unit)?.kind === kind;
}
