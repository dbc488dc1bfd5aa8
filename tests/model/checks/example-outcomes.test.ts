/**
 * What a person reads for the example of every check: the outcome, its numbers and its notes. The lines stand in
 * example-outcomes.txt and were gone through with a pocket calculator; a change there is a change of what is told.
 */
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { CHECKS } from '../../../src/model/checks/all-checks.ts';
import type { Check } from '../../../src/model/checks/check.ts';
import { workOutCheck } from '../../../src/model/checks/check-views.ts';
import { exampleCall, readWrittenCheck } from '../../../src/model/checks/written-check.ts';
import { MemoryRows } from '../../../src/model/memory-rows.ts';

const TOLD = readFileSync(new URL('./example-outcomes.txt', import.meta.url), 'utf8')
  .trimEnd()
  .split('\n\n');

function told(check: Check): string {
  const call = exampleCall(check, 'work out').replace('hearwright work out ', '').replaceAll('"', '');
  const read = readWrittenCheck(call);
  if (!read.ok) throw new Error(read.why);
  const { run } = workOutCheck(new MemoryRows(), read.value, { units: 'metric' });
  const numbers = run.results.map(({ name, low, mid, high, unit }) => {
    const ends = low === high ? '' : `, ${low} to ${high}`;
    return `  ${name}: ${mid} ${unit}${ends}`;
  });
  return [call, `  ${run.state}: ${run.why}`, ...numbers, ...run.notes.map((note) => `  note: ${note}`)].join(
    '\n',
  );
}

test.each(CHECKS.map((check, place) => [check.name, check, TOLD[place]] as const))(
  '%s',
  (_, check, lines) => {
    expect(told(check)).toBe(lines);
  },
);
