#!/usr/bin/env node
import { setFlagsFromString } from 'node:v8';
import { runCommandLine } from './run.ts';

// On Windows a program that is called by its name is looked for in the current folder first: whatever lies among the
// memos under the name of a recorder or a decoder would be run. Elsewhere nobody reads this.
process.env.NoDefaultCurrentDirectoryInExePath ??= '1';

// Reading a memo runs some hundred patterns a few times each. V8 interprets a pattern first and compiles it when it
// comes back; compiled at once, one memo is read in two thirds of the time.
setFlagsFromString('--no-regexp-tier-up');

await runCommandLine(process.argv.slice(2));
