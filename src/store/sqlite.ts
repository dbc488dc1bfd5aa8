/**
 * The binding to SQLite that fits this Node. Version 12 is compiled against Node's own C++ headers, and those of Node 24.19
 * and later make it abort when a statement is thrown away (an assertion on an environment that is gone). Version 13 goes
 * through Node-API and has no such fault, but needs Node-API 10, which Node 20 has not. Both read and write the same files,
 * and their calls are the same.
 */
import { createRequire } from 'node:module';
import type SqliteDatabase from 'better-sqlite3';
import { EXIT, Problem } from '../problem.ts';

/** Node-API that version 13 was built for: Node 22.14 and later. */
const NEEDED = 10;

const load = createRequire(import.meta.url);

/** The name of the package that is loaded under a Node of this Node-API. */
export const bindingFor = (nodeApi: string | undefined): 'better-sqlite3' | 'better-sqlite3-node-api' =>
  Number(nodeApi ?? 0) >= NEEDED ? 'better-sqlite3-node-api' : 'better-sqlite3';

/** Whether what was thrown says that a compiled part is absent, or was compiled for another Node. */
export const isNotBuilt = (error: unknown): boolean =>
  error instanceof Error &&
  ((error as NodeJS.ErrnoException).code === 'ERR_DLOPEN_FAILED' ||
    /^Could not locate the bindings file/.test(error.message));

const notBuilt = (error: unknown): Problem =>
  new Problem(`the part that reads the database is not built for this Node, ${process.version}`, {
    code: 'binding-not-built',
    exitCode: EXIT.unexpected,
    kept: 'the database was not touched',
    next: "in the program's own folder, under this Node: npm ci",
    cause: error,
  });

/**
 * Opens databases, and makes the errors that SQLite throws. The compiled part is loaded with the first database: where it
 * is absent a Problem says what to do.
 */
export const Sqlite: typeof SqliteDatabase = new Proxy(
  load(bindingFor(process.versions.napi)) as typeof SqliteDatabase,
  {
    construct(made, args) {
      try {
        return Reflect.construct(made, args) as object;
      } catch (error) {
        throw isNotBuilt(error) ? notBuilt(error) : error;
      }
    },
  },
);
