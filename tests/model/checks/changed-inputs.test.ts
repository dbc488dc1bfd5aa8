/**
 * What becomes of the example of every check when one of its inputs is left out, grows, shrinks, comes to nought or is
 * known only roughly, with another convention, and in the units of another house. The lines stand in changed-inputs.txt; a
 * change there is a change of what is told: look the diff over before it is kept with `-u`.
 */
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { CHECKS } from '../../../src/model/checks/all-checks.ts';
import type { Check } from '../../../src/model/checks/check.ts';
import { workOutCheck } from '../../../src/model/checks/check-views.ts';
import { exampleCall, readWrittenCheck } from '../../../src/model/checks/written-check.ts';
import { MemoryRows } from '../../../src/model/memory-rows.ts';

type Parts = readonly string[];

const partsOf = (check: Check): Parts =>
  [...exampleCall(check, 'work out').matchAll(/"([^"]+)"/g)].map(([, part = '']) => part);

const scaled = (part: string, by: number) =>
  part.replace(/(?<==)[\d.]+/, (size) => String(Number((Number(size) * by).toPrecision(6))));

const OF_KIND: Readonly<Record<string, string>> = {
  temperature: '12 degC',
  ratio: '0.8',
  count: '3',
  density: '700 kg/m3',
  length: '900 mm',
  mass: '40 kg',
  volume: '100 L',
  time: '20 h',
  charge: '100 Ah',
};

/** Each change of the parts of a call, with what it is called. */
function changesOf(check: Check, parts: Parts): readonly (readonly [name: string, parts: Parts])[] {
  const withPart = (at: number, part: string) => parts.map((one, k) => (k === at ? part : one));
  const ofInputs = parts.flatMap((part, at) => {
    const [name = '', value = ''] = part.split('=');
    if (!/^\d/.test(value)) return [[`no ${name}`, parts.filter((_, k) => k !== at)] as const];
    const spread = /^[\d.]+ [a-zA-Z]+2?$/.test(value) ? [`${name} ± 10 %`] : [];
    return [
      [`no ${name}`, parts.filter((_, k) => k !== at)] as const,
      ...[1.5, 0.6, 0].map((by) => [`${name} x ${by}`, withPart(at, scaled(part, by))] as const),
      ...spread.map((told) => {
        const [size = '', unit = ''] = value.split(' ');
        return [
          told,
          withPart(at, `${part} +- ${Number((Number(size) / 10).toPrecision(6))} ${unit}`),
        ] as const;
      }),
    ];
  });
  // What the example leaves out, with the size of another input of its kind.
  const kindOf = (name: string | undefined) => check.inputs.find((input) => input.name === name)?.kind;
  const ofOthers = check.inputs.flatMap(({ name, kind }) => {
    if (parts.some((part) => part.startsWith(`${name}=`))) return [];
    const like = parts.find((part) => kindOf(part.split('=')[0]) === kind && /=\d/.test(part));
    const value = like?.split('=')[1] ?? OF_KIND[kind];
    if (value === undefined) return [];
    return [1, 1.5, 0.6].map(
      (by) => [`with ${name} x ${by}`, [...parts, scaled(`${name}=${value}`, by)]] as const,
    );
  });
  const ofOptions = (check.options ?? []).flatMap(({ name, of }) => {
    const others = parts.filter((part) => !part.startsWith(`${name}=`));
    return of.map((choice) => [`${name}=${choice}`, [...others, `${name}=${choice}`]] as const);
  });
  return [['as it stands', parts], ...ofInputs, ...ofOthers, ...ofOptions];
}

function told(check: Check, parts: Parts, units: 'metric' | 'us'): string {
  const read = readWrittenCheck([check.name, ...parts].join(' '));
  if (!read.ok) return `not read: ${read.why}`;
  const { run } = workOutCheck(new MemoryRows(), read.value, { units });
  const numbers = run.results.map(({ name, low, mid, high, unit }) =>
    low === high ? `${name} ${mid} ${unit}` : `${name} ${mid} ${unit}, ${low} to ${high}`,
  );
  return [`${run.state}: ${run.why}`, ...numbers].join('; ');
}

test('what changed inputs come to', async () => {
  const lines = CHECKS.flatMap((check) => {
    const parts = partsOf(check);
    return [
      `${check.name} ${parts.join(' ')}`,
      ...changesOf(check, parts).map(([name, changed]) => `  ${name}: ${told(check, changed, 'metric')}`),
      `  in us units: ${told(check, parts, 'us')}`,
    ];
  });
  const file = fileURLToPath(new URL('./changed-inputs.txt', import.meta.url));
  await expect(`${lines.join('\n')}\n`).toMatchFileSnapshot(file);
});
