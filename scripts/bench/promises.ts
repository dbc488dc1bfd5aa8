/** The common form of what a bench measures: a promise, its limit, what was measured, and whether it is kept. */
import { writeFileSync } from 'node:fs';

export interface Promised {
  readonly what: string;
  /** As it is shown, such as `<= 30 ms`; absent where nothing is promised. */
  readonly limit?: string;
  readonly measured: string;
  /** Absent where nothing is promised. */
  readonly kept?: boolean;
}

/** The file that `npm run bench` asks a part to leave its rows in. */
const ROWS_FILE = 'HEARWRIGHT_BENCH_ROWS';

/** A promise of at most `limit`, both in `unit`. */
export function atMost(what: string, value: number, limit: number, unit: string, beside = ''): Promised {
  const shown = `${value.toFixed(value < 10 ? 2 : value < 100 ? 1 : 0)} ${unit}`;
  return {
    what,
    limit: `<= ${limit} ${unit}`,
    measured: beside === '' ? shown : `${shown} (${beside})`,
    kept: value <= limit,
  };
}

/** Lines of a table for the terminal. */
export function promiseLines(rows: readonly Promised[]): string {
  const wide = (of: (row: Promised) => string) => Math.max(0, ...rows.map((row) => of(row).length));
  const [what, limit] = [wide((row) => row.what), wide((row) => row.limit ?? '')];
  return rows
    .map((row) => {
      const missed = row.kept === false ? '   MISSED' : '';
      return `${row.what.padEnd(what)}  ${(row.limit ?? '').padEnd(limit)}  ${row.measured}${missed}`;
    })
    .join('\n');
}

/** Prints the rows, leaves them for `npm run bench` where that runs this part, and fails where one is missed. */
export function tellPromises(rows: readonly Promised[]): void {
  console.log(promiseLines(rows));
  const file = process.env[ROWS_FILE];
  if (file) writeFileSync(file, JSON.stringify(rows));
  if (rows.some(({ kept }) => kept === false)) process.exitCode = 1;
}
