#!/usr/bin/env node
import { runCommandLine } from './run.ts';

await runCommandLine(process.argv.slice(2));
