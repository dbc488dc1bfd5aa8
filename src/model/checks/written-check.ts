/** Reads what a person writes to ask for a check: `clearance opening=side hatch width part=40 mm gap=2 mm`. */
import type { SpokenInput } from '../../language/notes.ts';
import { patternText } from '../../pattern-text.ts';
import type { Written } from '../written.ts';
import { CHECKS } from './all-checks.ts';
import type { Check } from './check.ts';
import type { AskedCheck } from './check-rows.ts';
import { EXAMPLES } from './examples.ts';
import { nearNames, sharingWords, spelledNear } from './near-names.ts';
import { exampleOf } from './say.ts';

const wrong = (why: string) => ({ ok: false, why }) as const;

/**
 * The name of a check, then its inputs, each with an equals sign and an expression. Names have spaces; quotation marks
 * are not needed, and inputs that take many are written once for each, or once with commas between.
 */
export function readWrittenCheck(text: string): Written<AskedCheck> {
  const line = text.trim().replace(/\s+/g, ' ');
  const check = CHECKS.filter(({ name }) => startsWith(line, name)).sort(byLength)[0];
  if (!check) return wrong(unknownCheck(line));
  const given = givenIn(line.slice(check.name.length), check);
  if (!given.ok) return given;
  const options: Record<string, string> = {};
  const inputs: SpokenInput[] = [];
  for (const { name, value } of given.value) {
    const option = check.options?.find((one) => one.name === name);
    if (option) {
      const choice = option.of.find((one) => one.toLowerCase() === value.toLowerCase());
      if (!choice) return wrong(`${name}: expected ${option.of.join(' or ')}, got "${value}"`);
      options[name] = choice;
      continue;
    }
    const isMany = check.inputs.some((input) => input.name === name && input.many);
    for (const expression of isMany ? value.split(/,\s+|,(?=\D)/) : [value]) {
      const trouble = commaTrouble(expression);
      if (trouble) return wrong(`${name}: ${trouble}`);
      inputs.push({ input: name, expression: expression.trim().replace(/(\d) ?x ?(?=\d)/g, '$1 * ') });
    }
  }
  const chosen = Object.keys(options).length > 0 ? { options } : {};
  return { ok: true, value: { check: check.name, inputs, ...chosen } };
}

const startsWith = (line: string, name: string) =>
  line.toLowerCase().startsWith(name) && /^(?:\s|$)/.test(line.slice(name.length));
const byLength = (a: Check, b: Check) => b.name.length - a.name.length;

function unknownCheck(line: string): string {
  const before = (line.split('=')[0] ?? '').trim().toLowerCase();
  if (before === '') return 'no check is named';
  const names = CHECKS.map(({ name }) => name);
  // The last words before the first sign may be those of an input.
  const words = before.split(' ');
  const starts = words.map((_, index) => words.slice(0, words.length - index).join(' '));
  // A word of an input is no word of a name: what is spelled nearly so comes first.
  const spelled = starts.map((start) => spelledNear(start, names)).find((found) => found.length > 0);
  const near = spelled ?? sharingWords(before, names);
  const offer = near.length > 0 ? `: did you mean ${near.join(' or ')}?` : '';
  return `no check is called "${line.includes('=') ? (starts[1] ?? before) : before}"${offer}`;
}

interface GivenInput {
  readonly name: string;
  readonly value: string;
}

/** Every "name=" of the check, and what stands between it and the next one. */
function givenIn(rest: string, check: Check): Written<readonly GivenInput[]> {
  const names = [...check.inputs, ...(check.options ?? [])].map(({ name }) => name);
  const pattern = [...names]
    .sort((a, b) => b.length - a.length)
    .map(spelled)
    .join('|');
  // A plural is the same input: "parts=".
  const signs = [...rest.matchAll(new RegExp(`(?<=^|[\\s,])(${pattern})s?\\s*=`, 'gi'))];
  const first = signs[0]?.index ?? rest.length;
  const stray = rest.slice(0, first).trim();
  if (stray !== '') return wrong(strayWords(stray, check, names));
  const given: GivenInput[] = [];
  for (const [index, sign] of signs.entries()) {
    const name = (sign[1] ?? '').toLowerCase();
    const value = rest
      .slice(sign.index + sign[0].length, signs[index + 1]?.index)
      .replace(/,\s*$/, '')
      .trim();
    if (value.includes('=')) return wrong(strayWords(value, check, names));
    if (value === '') return wrong(`${name} has no value`);
    given.push({ name, value });
  }
  return { ok: true, value: given };
}

const spelled = (name: string) => patternText(name).replace(/ /g, '\\s+');

function strayWords(stray: string, check: Check, names: readonly string[]): string {
  const before = (/([^=]*)=/.exec(stray)?.[1] ?? stray).trim();
  const words = before.split(' ');
  const ends = words.map((_, index) => words.slice(index).join(' '));
  const near = ends.map((end) => nearNames(end, names)).find((found) => found.length > 0) ?? [];
  const said = stray.includes('=') ? (words.at(-1) ?? before) : stray;
  const offer = near.length > 0 ? `: did you mean ${near.join(' or ')}?` : `: it takes ${names.join(', ')}`;
  return `"${said}" is no input of ${check.name}${offer}`;
}

/** "1,200" is one thing in one country and another in the next. */
function commaTrouble(expression: string): string | undefined {
  const number = /\d+,\d+/.exec(expression)?.[0];
  if (number === undefined) return undefined;
  const [whole, point] = [number.replace(',', ''), number.replace(',', '.')];
  return `"${number}" may be ${whole} or ${point}: write it without the comma`;
}

/** A whole call that shows how a check is asked for. */
export function exampleCall(check: Check, verb: 'work out' | 'checks add'): string {
  const needed = check.inputs.filter(({ optional }) => !optional);
  const plain = needed.map(({ name, kind }) => `${name}=${exampleOf(kind, 'metric')}`);
  const inputs = (EXAMPLES[check.name] ?? plain).map((input) => `"${input}"`);
  return `hearwright ${verb} ${[check.name, ...inputs].join(' ')}`;
}
