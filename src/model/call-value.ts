/** Works a check out as a function in a formula: one number, and how the tolerances of its inputs move it. */
import type { Range, Result } from './checks/check.ts';
import { exactRange } from './checks/ranges.ts';
import { runCheck } from './checks/run-check.ts';
import { sayingIn, systemOf } from './checks/say.ts';
import { sharesOfFall } from './falls.ts';
import type { CallPart } from './formula.ts';
import { calledBy, inputsOfCall } from './formula-calls.ts';

/** A figure of a call, in the base unit of its kind. */
export interface Worth {
  readonly base: number;
  readonly kind: string;
  readonly unit?: string;
  /** By input of the formula: how far its tolerance moves this figure, with the sign of the way. */
  readonly spread: ReadonlyMap<string, number>;
  /** A number without a unit. */
  readonly bare: boolean;
}

export type CallValue =
  | { readonly ok: true; readonly result: Result; readonly spread: ReadonlyMap<string, number> }
  | { readonly ok: false; readonly kind: 'unit-clash' | 'check'; readonly what: string };

/** A name that is called in a formula, on figures that are known. Never throws on the user's data. */
export function callValue(
  name: string,
  given: readonly CallPart[],
  worthOf: (part: Extract<CallPart, { kind: 'figure' }>) => Worth,
  region?: string,
): CallValue {
  const called = calledBy(name);
  const placed = called && inputsOfCall(called.check, given);
  if (!called || !placed) return { ok: false, kind: 'check', what: `"${name}" cannot be called like this` };
  const { check, gives } = called;
  const worths = placed.map(({ input, part }) => ({ input, worth: worthOf(part) }));
  const clash = worths.find(({ input, worth }) => worth.kind !== input.kind);
  if (clash) {
    const { input, worth } = clash;
    const got = worth.bare ? 'a number alone' : `a quantity of ${worth.kind}`;
    const what = `${input.name} of ${check.name} is a quantity of ${input.kind}, and ${got} is none`;
    return { ok: false, kind: 'unit-clash', what };
  }
  const units = worths.flatMap(({ worth }) => worth.unit ?? []);
  const options = new Map(
    given.flatMap((part) => (part.kind === 'choice' ? [[part.option, part.choice] as const] : [])),
  );
  const at = (rangeOf: (worth: Worth) => Range): Result | string => {
    const inputs = new Map<string, Range[]>();
    for (const { input, worth } of worths) {
      const range = rangeOf(worth);
      const isFall = input.isFall && worth.unit !== '%';
      inputs.set(input.name, [...(inputs.get(input.name) ?? []), isFall ? sharesOfFall(range) : range]);
    }
    const ran = runCheck(check, { inputs, options, say: sayingIn(systemOf('mixed', units), region) });
    if (!('results' in ran)) return `${check.name}: ${ran.why}`;
    const found = ran.results.find((result) => result.name === gives);
    const names = ran.results.map((result) => result.name).join(', ');
    return found ?? `${check.name} gives no "${gives}" here${names === '' ? '' : `, but ${names}`}`;
  };
  const result = at(({ base }) => exactRange(base));
  if (typeof result === 'string') return { ok: false, kind: 'check', what: result };
  return {
    ok: true,
    result,
    spread: spreadOf(
      worths.map(({ worth }) => worth),
      result.range.mid,
      at,
    ),
  };
}

/**
 * How far the tolerance of each input of the formula moves the number, the others as said: an input that is read twice
 * moves both places at once. Where no input is read twice, the moves are stretched to the whole range that the check
 * gives for the ranges of its figures, which may be wider than their sum.
 */
function spreadOf(
  worths: readonly Worth[],
  mid: number,
  at: (rangeOf: (worth: Worth) => Range) => Result | string,
): ReadonlyMap<string, number> {
  const spread = new Map<string, number>();
  for (const ref of new Set(worths.flatMap((worth) => [...worth.spread.keys()]))) {
    const moved = ([1, -1] as const).map((way) => {
      const result = at((worth) => exactRange(worth.base + way * (worth.spread.get(ref) ?? 0)));
      return typeof result === 'string' ? 0 : result.range.mid - mid;
    });
    const [up = 0, down = 0] = moved;
    const size = Math.max(Math.abs(up), Math.abs(down));
    if (size > 0)
      spread.set(ref, Math.abs(up) >= Math.abs(down) ? Math.sign(up) * size : -Math.sign(down) * size);
  }
  const reads = worths.reduce((sum, worth) => sum + worth.spread.size, 0);
  const refs = new Set(worths.flatMap((worth) => [...worth.spread.keys()])).size;
  return reads > refs || refs === 0 ? spread : stretched(spread, mid, at);
}

function stretched(
  spread: ReadonlyMap<string, number>,
  mid: number,
  at: (rangeOf: (worth: Worth) => Range) => Result | string,
): ReadonlyMap<string, number> {
  const half = (worth: Worth) => [...worth.spread.values()].reduce((sum, one) => sum + Math.abs(one), 0);
  const whole = at((worth) => ({
    low: worth.base - half(worth),
    mid: worth.base,
    high: worth.base + half(worth),
  }));
  const sum = [...spread.values()].reduce((total, one) => total + Math.abs(one), 0);
  if (typeof whole === 'string' || sum === 0) return spread;
  const widest = Math.max(whole.range.high - mid, mid - whole.range.low);
  return widest <= sum ? spread : new Map([...spread].map(([ref, one]) => [ref, (one * widest) / sum]));
}
