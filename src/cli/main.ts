#!/usr/bin/env node
process.exitCode = 0;
