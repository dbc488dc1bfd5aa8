/**
 * The binding to SQLite that fits this Node. Version 12 is compiled against Node's own C++ headers, and those of Node 24.19
 * and later make it abort when a statement is thrown away (an assertion on an environment that is gone). Version 13 goes
 * through Node-API and has no such fault, but needs Node-API 10, which Node 20 has not. Both read and write the same files,
 * and their calls are the same.
 */
import { createRequire } from 'node:module';
import type SqliteDatabase from 'better-sqlite3';

/** Node-API that version 13 was built for: Node 22.14 and later. */
const NEEDED = 10;

const load = createRequire(import.meta.url);

/** The name of the package that is loaded under a Node of this Node-API. */
export const bindingFor = (nodeApi: string | undefined): 'better-sqlite3' | 'better-sqlite3-node-api' =>
  Number(nodeApi ?? 0) >= NEEDED ? 'better-sqlite3-node-api' : 'better-sqlite3';

/** Opens databases, and makes the errors that SQLite throws. */
export const Sqlite: typeof SqliteDatabase = load(bindingFor(process.versions.napi));
