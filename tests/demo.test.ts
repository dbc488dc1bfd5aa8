/**
 * The sample memos end to end: from sound through the demo, and from their texts. What is planted in them, and why,
 * is written in samples/README.md.
 */
import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { FindingView, NextView, TaskView } from '../src/model/views.ts';
import { parseMarkdown } from './kit/markdown.ts';

interface Build {
  readonly units: string;
  readonly region: string;
  readonly memos: readonly { readonly file: string; readonly text: string; readonly recordedAt: string }[];
}

const build = JSON.parse(readFileSync('samples/memos.json', 'utf8')) as Build;
const MORNING_AFTER = '2026-04-14';
/** The one slow test: eight minutes of sound, on a machine that may be busy. */
const SOUND_TIMEOUT = 180_000;

const work = mkdtempSync(join(tmpdir(), 'hearwright-demo-test-'));
afterAll(() => rmSync(work, { recursive: true, force: true }));

function hearwright(project: string, ...words: string[]): string {
  return execFileSync(process.execPath, ['dist/cli.js', '--project', project, ...words], {
    encoding: 'utf8',
    maxBuffer: 64 * 1024 * 1024,
    stdio: ['ignore', 'pipe', 'pipe'],
  });
}

/** The plants, one line each: `decided bench height: 940 mm, then 775 mm`. */
function plantsOf(project: string): string[] {
  const findings = JSON.parse(hearwright(project, 'findings', '--json')) as FindingView[];
  return findings.map(
    ({ kind, item, attribute, was, now }) =>
      `${kind} ${item} ${attribute}: ${was.value} ${was.unit}, then ${now.value} ${now.unit}`,
  );
}
