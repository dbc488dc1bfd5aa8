/** Inputs of a check, written as a person writes them: `{ 'panel length': '1220 mm', opening: ['1 m ± 5 mm'] }`. */
import type { Check, Given, Range, Say, Worked } from '../../src/model/checks/check.ts';
import { rangeAbout } from '../../src/model/checks/ranges.ts';
import { type NotRun, runCheck } from '../../src/model/checks/run-check.ts';
import { exactly, exactQuantity, inUnit } from '../../src/model/units.ts';

export type Written = string | Range | readonly (string | Range)[];

/** "1220 mm", "4 in ± 1 mm", "-3 degC" in the base unit of its kind. Throws on an unknown unit: a slip in a test. */
export function quantity(text: string): Range {
  const [size = '', spread] = text.split('±').map((part) => part.trim());
  const base = baseOf(size);
  return rangeAbout(base, spread === undefined ? 0 : baseOf(spread));
}

function baseOf(text: string): number {
  const [, value, unit] = /^(-?[\d.]+)\s*(.*)$/.exec(text) ?? [];
  const exact = exactQuantity({ value: Number(value), unit: unit === '' || unit === undefined ? '1' : unit });
  if (!exact) throw new Error(`"${text}" is no quantity`);
  return exact.base.valueOf();
}

/** Lengths in millimetres, as a person in a metric shop reads them; other kinds as plain numbers; a unit where asked. */
export const sayPlain: Say = (base, kind, unit) => {
  if (unit !== undefined) {
    const value = inUnit({ kind, base: exactly(base) }, unit).valueOf();
    return `${Math.round(value * 100) / 100}${unit === '1' ? '' : ` ${unit}`}`;
  }
  const [scale, suffix] = kind === 'length' ? ([1000, ' mm'] as const) : ([1, ''] as const);
  return `${Math.round(base * scale * 10) / 10}${suffix}`;
};

export function given(
  inputs: Readonly<Record<string, Written>>,
  options: Readonly<Record<string, string>> = {},
  say: Say = sayPlain,
): Given {
  const ranges = Object.entries(inputs).map(([name, written]) => {
    const list = Array.isArray(written)
      ? (written as readonly (string | Range)[])
      : [written as string | Range];
    return [name, list.map((one) => (typeof one === 'string' ? quantity(one) : one))] as const;
  });
  return { inputs: new Map(ranges), options: new Map(Object.entries(options)), say };
}

/** Runs a check on written inputs. */
export const ran = (
  check: Check,
  inputs: Readonly<Record<string, Written>>,
  options?: Readonly<Record<string, string>>,
): Worked | NotRun => runCheck(check, given(inputs, options));

/** The range of a named result, in base units. Throws when the check gave none. */
export function resultOf(worked: Worked | NotRun, name: string): Range {
  const results = 'results' in worked ? worked.results : [];
  const found = results.find((result) => result.name === name);
  if (!found) throw new Error(`no result ${name}: ${worked.why}`);
  return found.range;
}
