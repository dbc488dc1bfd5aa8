/** Brings a project that an older program wrote up to date: its format, and the model in it. */
import type { Database } from 'better-sqlite3';
import { copyBefore } from './copy-before.ts';
import { readLog } from './log.ts';
import { isOurModel, signModel } from './made-by.ts';
import { rebuild } from './rebuild.ts';
import { SqliteRows } from './rows.ts';
import { BESIDE_THE_LOG, FORMAT, LOG_INDEX, layOutAnew } from './schema.ts';

/**
 * One step from the format before. `change` works on what is beside the projections; these are laid out and built anew
 * from the log behind the last step, so a step that only changes them needs none. The log itself is never rewritten:
 * an event that older programs wrote otherwise is understood where it is read.
 */
interface Step {
  readonly to: number;
  readonly brings: string;
  readonly change?: (db: Database) => void;
}

/** In order and without a gap, from the format after the first to this program's. */
export const STEPS: readonly Step[] = [
  { to: 2, brings: 'batches, panels, pairs and deliveries on record' },
  { to: 3, brings: 'the way back to any event' },
  { to: 4, brings: 'what was done by hand found by an index', change: (db) => db.exec(LOG_INDEX) },
  { to: 5, brings: 'days with talk found by the day' },
  { to: 6, brings: 'checks that run by themselves' },
  {
    to: 7,
    brings:
      'which program worked the model out, which originals an import left behind, several transcripts of one memo, and words put right by hand',
    change: (db) => db.exec(BESIDE_THE_LOG),
  },
];

/** What opening a project changed in it. */
export interface Upgraded {
  /** The format that it had. */
  readonly fromFormat: number;
  /** Where its database stands as it was before; absent where no copy was asked for. */
  readonly copy?: string;
}

/**
 * Brings a database of an older format up to date, all or nothing, and says what it was. Before anything is changed a
 * copy of it is written beside it, unless `withCopy` is false. A model that another program worked out is built anew
 * from the log. Throws a Problem when the copy cannot be written.
 */
export function upgrade(db: Database, file: string, withCopy = true): Upgraded | undefined {
  if (formatOf(db) >= FORMAT && isOurModel(db)) return undefined;
  return db
    .transaction((): Upgraded | undefined => {
      // Another process may have done it while this one waited.
      const fromFormat = formatOf(db);
      const isOlder = fromFormat < FORMAT;
      if (!isOlder && isOurModel(db)) return undefined;
      const copy = isOlder && withCopy ? { copy: copyBefore(file, fromFormat) } : {};
      for (const step of STEPS) if (step.to > fromFormat) step.change?.(db);
      if (isOlder) layOutAnew(db);
      rebuild(db, new SqliteRows(db), readLog(db));
      signModel(db);
      db.pragma(`user_version = ${FORMAT}`);
      return isOlder ? { fromFormat, ...copy } : undefined;
    })
    .immediate();
}

const formatOf = (db: Database) => db.pragma('user_version', { simple: true }) as number;
