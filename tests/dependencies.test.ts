import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

type Named = Readonly<Record<string, string>>;
interface LockedPackage {
  readonly integrity?: string;
  readonly hasInstallScript?: boolean;
}

const read = <T>(file: string) => JSON.parse(readFileSync(file, 'utf8')) as T;
const ours = read<{
  dependencies: Named;
  devDependencies: Named;
  allowScripts: Readonly<Record<string, true>>;
}>('package.json');
const wanted = { ...ours.dependencies, ...ours.devDependencies };
const locked = Object.entries(
  read<{ packages: Readonly<Record<string, LockedPackage>> }>('package-lock.json').packages,
)
  .filter(([folder]) => folder !== '')
  .map(([folder, one]) => ({ name: folder.replace(/^.*node_modules\//, ''), ...one }));
const page = readFileSync('docs/dependencies.md', 'utf8');

/** By the name of the package: version, licence, size and reason. */
const rows = new Map(
  [...page.matchAll(/^\| `([^`]+)`\s*\|(.+)\|$/gm)].map(([, name = '', rest = '']) => [
    name,
    rest.split('|').map((cell) => cell.trim()),
  ]),
);

test('docs/dependencies.md has a row for every dependency of package.json, and no other', () => {
  expect([...rows.keys()].sort()).toEqual(Object.keys(wanted).sort());
});

test.each(Object.entries(wanted))(
  'the row of %s states the version and licence that are installed',
  (name, wantedVersion) => {
    // A package under another name: "npm:better-sqlite3@13.2.0".
    const version = wantedVersion.replace(/^npm:.+@/, '');
    const [stated, licence, size, reason = ''] = rows.get(name) ?? [];
    const installed = read<{ version: string; license: string }>(`node_modules/${name}/package.json`);
    expect(stated).toBe(version);
    expect(installed.version).toBe(version);
    expect(licence).toBe(installed.license);
    expect(size).toMatch(/^\d+(\.\d)? [kM]B$/);
    expect(reason).not.toBe('');
  },
);

test('the page names each install script, and those are the ones that are allowed', () => {
  const scripted = locked.filter((one) => one.hasInstallScript).map(({ name }) => name);
  expect(scripted.sort()).toEqual(Object.keys(ours.allowScripts).sort());
  for (const name of scripted) expect(page).toContain(`- **${name}**: `);
});

test('every locked package has the hash of what may be installed', () => {
  expect(locked.length).toBeGreaterThan(100);
  for (const { name, integrity } of locked) expect(integrity, name).toMatch(/^sha512-/);
});

const NETWORK = '(?:node:)?(?:https?|http2|net|tls|dgram|dns|dns/promises|inspector)';
/** How code comes to reach a network: by a part of Node, or by what a browser has too. */
const REACHES_OUT = new RegExp(
  String.raw`(?:\bfrom|\bimport|(?:\b|_)require\d*\(|\bimport\()\s*["'\`]${NETWORK}["'\`]|\bnew\s+(?:WebSocket|XMLHttpRequest|EventSource)\b`,
);
const FETCHES = /(?<![.\w$])(?:globalThis\.)?fetch\s*\(/;

const codeIn = (folder: string) =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.(?:tsx?|mjs|js)$/.test(name))
    .map((name) => `${folder}/${name}`);

test.each([
  ["import { get } from 'node:https';", true],
  ['import "http";', true],
  ["const net = await import('node:net');", true],
  ['var x = __require("tls");', true],
  ['const talk = new WebSocket(url);', true],
  ["import { now } from './net.ts';", false],
  ["import { join } from 'node:path';", false],
])('"%s" reaches out: %s', (code, reaches) => {
  expect(REACHES_OUT.test(code)).toBe(reaches);
});

test.each([
  ['await fetch(address)', true],
  ['globalThis.fetch(address)', true],
  ['await prefetch(page)', false],
  ['store.fetch(row)', false],
])('"%s" fetches: %s', (code, fetches) => {
  expect(FETCHES.test(code)).toBe(fetches);
});

test('no source file reaches a network', () => {
  const files = codeIn('src');
  expect(files.length).toBeGreaterThan(300);
  const reaching = files.filter((file) => {
    const code = readFileSync(file, 'utf8');
    return REACHES_OUT.test(code) || FETCHES.test(code);
  });
  expect(reaching).toEqual([]);
});

test('nor does what is built from it, packages and all', () => {
  expect(existsSync('dist/cli.js')).toBe(true);
  const reaching = codeIn('dist').filter((file) => REACHES_OUT.test(readFileSync(file, 'utf8')));
  expect(reaching).toEqual([]);
});
