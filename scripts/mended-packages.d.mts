import type { Plugin } from 'esbuild';

export const mendedPackages: Plugin;
