import fc from 'fast-check';
import { expect, test } from 'vitest';
import { sitePages } from '../../../src/reports/pages/site.ts';
import type { SiteSource } from '../../../src/reports/pages/site-source.ts';
import { oneLine } from '../../../src/reports/words.ts';
import { hostileMarkup } from '../../kit/hostile-markup.ts';
import { WAGON_SITE, wagonSiteSaying } from '../../kit/wagon-site.ts';

const pagesOf = (source: SiteSource) => [...sitePages(source)];
const htmlPages = (source: SiteSource) => pagesOf(source).filter(({ path }) => path.endsWith('.html'));

/** Tags in order, with the names of their attributes: whatever words could change if they were not escaped. */
const shapeOf = (page: string) =>
  [...page.matchAll(/<(\/?[a-z0-9!]+)((?:\s+[a-z-]+(?:="[^"]*")?)*)\s*>/gi)]
    .map(([, tag, attributes = '']) => `${tag} ${attributes.replace(/="[^"]*"/g, '')}`)
    .concat(`${page.split('<').length} opening signs`)
    .join('|');

test('every page has one h1, a language, a title, landmarks and a policy', () => {
  for (const { path, text } of htmlPages(WAGON_SITE)) {
    expect(text.match(/<h1>/g), path).toHaveLength(1);
    expect(text, path).toMatch(/<html lang="en">/);
    expect(text, path).toMatch(/<title>[^<]+<\/title>/);
    expect(text, path).toMatch(
      /Content-Security-Policy" content="default-src 'none'|default-src &#39;none&#39;/,
    );
    for (const mark of ['<main id="main"', '<header', '<nav', '<footer', 'class="skip" href="#main"'])
      expect(text, path).toContain(mark);
  }
});

test('headings go down one level at a time', () => {
  for (const { path, text } of htmlPages(WAGON_SITE)) {
    const levels = [...text.matchAll(/<h([1-6])>/g)].map(([, level]) => Number(level));
    levels.forEach((level, index) => {
      expect(level - (levels[index - 1] ?? 0), `${path}: ${levels}`).toBeLessThanOrEqual(1);
    });
  }
});

test('ids are used once on a page, and every link leads to a page and a place of the site', () => {
  const pages = new Map(pagesOf(WAGON_SITE).map(({ path, text }) => [path, text]));
  const idsOf = (text: string) => [...text.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id);
  let links = 0;
  for (const [path, text] of pages) {
    if (!path.endsWith('.html')) continue;
    const ids = idsOf(text);
    expect(ids.length, path).toBe(new Set(ids).size);
    for (const [, href = ''] of text.matchAll(/<a [^>]*href="([^"]*)"/g)) {
      const { pathname, hash } = new URL(href, `file:///${path}`);
      const target = pages.get(pathname.slice(1));
      expect(target, `${path} -> ${href}`).toBeDefined();
      if (hash !== '') expect(idsOf(target ?? ''), `${path} -> ${href}`).toContain(hash.slice(1));
      links++;
    }
  }
  expect(links).toBeGreaterThan(100);
});

test('the same project gives the same bytes', () => {
  const { span, ...views } = WAGON_SITE;
  expect(pagesOf({ ...structuredClone(views), span })).toEqual(pagesOf(WAGON_SITE));
});

test('a figure shows its state, its age, both systems, its words and its place', () => {
  const page = htmlPages(WAGON_SITE).find(({ path }) => path.startsWith('things/oven-ledge-'))?.text ?? '';
  const words = page.replace(/<[^>]*>/g, '').replace(/\s+/g, ' ');
  for (const told of [
    '915 mm',
    '≈ 36 in',
    'memo 2 on 2026-02-04, of this day',
    'stands, decided',
    'superseded',
  ])
    expect(words).toContain(told);
  expect(page).toMatch(/<q>[^<]+<\/q>/);
  expect(page).toMatch(/<a href="\.\.\/days\/2026-02-0\d\.html#m\d">memo \d/);
});

// Line ends of a memo make its paragraphs, and "memo 3" a link: both are meant.
test('no word changes the structure of a page, and no control character comes through', () => {
  const plain = htmlPages(wagonSiteSaying('plain words')).map(({ text }) => shapeOf(text));
  fc.assert(
    fc.property(
      hostileMarkup.map((words) => `${words.replaceAll('\n', ' ')} x`.replaceAll('memo', 'talk')),
      (words) => {
        const pages = htmlPages(wagonSiteSaying(words));
        pages.forEach(({ path, text }, index) => {
          expect(shapeOf(text), path).toBe(plain[index]);
          expect(text, path).not.toMatch(/[^\P{Cc}\n]|[\u202a-\u202e]/u);
        });
      },
    ),
    { numRuns: 60 },
  );
});

test('the search index is plain data, whatever the words', () => {
  fc.assert(
    fc.property(hostileMarkup, (words) => {
      const script =
        pagesOf(wagonSiteSaying(words)).find(({ path }) => path === 'search-index.js')?.text ?? '';
      expect(script).not.toMatch(/<|[^\P{Cc}\n]|[\u2028\u2029]/u);
      const list = script.slice(script.indexOf('['), script.lastIndexOf(']') + 1);
      const entries = JSON.parse(list) as string[][];
      expect(entries.length).toBeGreaterThan(3);
      expect(entries.every((entry) => entry.length === 4)).toBe(true);
      expect(entries.some(([, , , told = '']) => oneLine(told).includes(oneLine(words)))).toBe(true);
    }),
    { numRuns: 60 },
  );
});

test('a project without talk still has its pages', () => {
  const bare: SiteSource = {
    ...WAGON_SITE,
    info: { name: '', units: 'metric', tolerances: {} },
    memos: [],
    days: [],
    figures: [],
    limits: [],
    tasks: [],
    problems: [],
    promises: [],
    findings: [],
    checks: [],
    records: { behind: [], batches: [], orders: [], hands: [] },
    next: {
      ...WAGON_SITE.next,
      ready: [],
      waiting: [],
      questions: [],
      promises: [],
      arrivals: [],
      cautions: [],
    },
  };
  expect(htmlPages(bare).map(({ path }) => path)).toEqual([
    'things.html',
    'tasks.html',
    'clashes.html',
    'checks.html',
    'records.html',
    'days.html',
    'episodes.html',
    'index.html',
    'search.html',
  ]);
});

test('what has no name that can be shown still has a heading and a link', () => {
  for (const words of ['', ' ', '\u0000', '\u202e\u001b[31m']) {
    for (const { path, text } of htmlPages(wagonSiteSaying(words))) {
      expect(text, path).not.toMatch(/<h1>\s*<\/h1>|<title>\s*<\/title>/);
      if (path.startsWith('things')) expect(text, path).not.toMatch(/<a [^>]*>\s*<\/a>/);
    }
  }
});
