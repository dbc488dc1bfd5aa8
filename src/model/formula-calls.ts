/**
 * Checks as functions in a formula: "diagonal(rise; run)". A function has the name of its check, of the one number that
 * only this check gives, or of any of its numbers with the check behind it: "percent of slope(rise; run)".
 */
import { CHECKS, checkNamed } from './checks/all-checks.ts';
import type { Check, CheckInput, CheckOption } from './checks/check.ts';
import type { CallPart } from './formula.ts';

export interface Called {
  readonly check: Check;
  /** Which of its numbers the call stands for. */
  readonly gives: string;
}

/** The check that a function's name stands for, with the number that it gives; undefined when there is none. */
export function calledBy(name: string): Called | undefined {
  const plain = name.toLowerCase();
  const whole = checkNamed(plain);
  if (whole?.gives !== undefined) return { check: whole, gives: whole.gives };
  const giving = CHECKS.filter(({ gives }) => gives === plain);
  if (giving.length === 1) return { check: giving[0] as Check, gives: plain };
  const [, gives, of] = /^(.+?) of (.+)$/.exec(plain) ?? [];
  const check = of === undefined ? undefined : checkNamed(of);
  return check && gives !== undefined ? { check, gives } : undefined;
}

/** The choice between conventions that a label in a call names: "gap on". */
export const optionOf = (name: string, label: string): CheckOption | undefined =>
  calledBy(name)?.check.options?.find((option) => option.name === label.toLowerCase());

/** What is wrong with a call as it is written; undefined when it may be worked out. */
export function faultOfCall(name: string, given: readonly CallPart[]): string | undefined {
  const called = calledBy(name);
  if (!called) return `"${name}" is no check that gives a number`;
  const { check } = called;
  for (const part of given) {
    if (part.kind === 'choice' || part.input === undefined) continue;
    if (!check.inputs.some((input) => input.name === part.input)) {
      return `"${part.input}" is no input of ${check.name}: ${check.inputs.map((input) => input.name).join(', ')}`;
    }
  }
  const placed = inputsOfCall(check, given);
  if (!placed)
    return `more figures than ${check.name} takes in order: name them, as in "${exampleOf(check)}"`;
  const twice = check.inputs.find(
    (input) => !input.many && placed.filter((one) => one.input === input).length > 1,
  );
  return twice && `${twice.name} of ${check.name} is given more than once`;
}

const exampleOf = ({ inputs }: Check): string => `${inputs[inputs.length - 1]?.name}: ...`;

/**
 * Each figure of a call with the input that it is for. Without a name they go to the needed inputs in order, one each;
 * what is left over goes to the last of those when it takes many. Undefined when there are too many.
 */
export function inputsOfCall(
  check: Check,
  given: readonly CallPart[],
):
  | readonly { readonly input: CheckInput; readonly part: Extract<CallPart, { kind: 'figure' }> }[]
  | undefined {
  const named = new Set(given.flatMap((part) => (part.kind === 'figure' ? (part.input ?? []) : [])));
  const open = check.inputs.filter(({ name, optional }) => !optional && !named.has(name));
  const last = open[open.length - 1];
  const overflow = last?.many ? last : undefined;
  const placed: { input: CheckInput; part: Extract<CallPart, { kind: 'figure' }> }[] = [];
  let next = 0;
  for (const part of given) {
    if (part.kind === 'choice') continue;
    const input =
      part.input === undefined
        ? (open[next++] ?? overflow)
        : check.inputs.find(({ name }) => name === part.input);
    if (!input) return undefined;
    placed.push({ input, part });
  }
  return placed;
}

/** Which input of its check each figure of a call is for. */
export function inputsByPart(name: string, given: readonly CallPart[]): ReadonlyMap<CallPart, CheckInput> {
  const called = calledBy(name);
  const placed = (called && inputsOfCall(called.check, given)) ?? [];
  return new Map(placed.map(({ input, part }) => [part, input]));
}
