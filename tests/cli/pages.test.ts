import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { faultsOf, look, NO_BROWSER, openBrowser } from '../kit/browser.ts';
import { openWorkplace, type Workplace } from '../kit/command-line.ts';

/** Invented: a signal box becomes a potter's workshop. */
const MEMOS: readonly (readonly [at: string, text: string])[] = [
  [
    '2026-03-02T08:10:00+01:00',
    'The floor batten is 18 millimetres thick, give or take half a mil. The cork layer is 30 millimetres thick, give or take one. The deck board is 21 millimetres thick, plus or minus one. I measured the doorway height at 1905. I need to order cork sheets before Friday.',
  ],
  [
    '2026-03-03T17:40:00+01:00',
    'The cork layer is 32 millimetres thick now, I measured it again. I decided to use larch because it stays flat. The kiln lid is 690 wide. I cannot fit the lid until the hinges arrive. The glaze shelf is 50 millimetres deep.',
  ],
  [
    '2026-03-11T12:00:00+01:00',
    'The hinges have arrived. I glued the deck boards. The glaze shelf is 15 millimetres deep. The flue leaks at the roof. Next week I will show you the kiln, promise.',
  ],
  [
    '2026-03-12T12:00:00+01:00',
    'I need to paint the <script>alert(1)</script> "rail" & post --> before the *varnish* [arrives](http://example.org). \u001b[31mThe red\u202e shelf is 40 wide.',
  ],
];

let place: Workplace;
let browser: Browser | undefined;
const url = (path: string) => pathToFileURL(join(place.folder, 'site', path)).href;
const pathsOf = () =>
  readdirSync(join(place.folder, 'site'), { recursive: true, encoding: 'utf8' })
    .filter((path) => path.endsWith('.html'))
    .sort();
const write = () => place.call(['pages', '--out', 'site']);

beforeAll(async () => {
  place = openWorkplace();
  place.call(['init', '--name', 'Signal box', '--units', 'mixed', '--region', 'GB']);
  MEMOS.forEach(([at, text], index) => {
    place.call(['take', place.file(`${index}.txt`, text), '--at', at]);
  });
  for (const figure of [
    'floor build-up thickness = floor batten thickness + cork layer thickness + deck board thickness',
    'headroom height = doorway height - floor build-up thickness - 12 mm',
  ])
    place.call(['figures', 'set', figure]);
  place.call(['limits', 'set', 'cork layer thickness at most 31.5 mm']);
  place.call([
    'checks',
    'add',
    'panel through opening',
    'panel length=900 mm',
    'panel width=kiln lid width',
    'thickness=40 mm',
    'opening width=560 mm',
    'opening height=420 mm',
  ]);
  place.call([
    'behind',
    'add',
    'kiln panel',
    '12 V feed, 120 up from the floor',
    '--service',
    'cable',
    '--shot',
    'photo 4',
  ]);
  place.call(['orders', 'add', 'larch boards', '--count', '8', '--size', 'thickness=21 mm']);
  place.call(['orders', 'came', 'larch boards', '--count', '6']);
  place.call(['batches', 'add', 'lime plaster', '--ratio', '3 to 1', '--air', '14 degC']);
  place.call(['hands', 'add', 'shelf bracket', '--side', 'left']);
  write();
  browser = NO_BROWSER === undefined ? await openBrowser() : undefined;
}, 60_000);
afterAll(async () => {
  await browser?.close();
  place.remove();
});

test('says where it went; a second time nothing is written anew', () => {
  const { out, err, code } = write();
  expect([out, code]).toEqual(['', 0]);
  expect(err).toMatch(
    /^written: DIR\/site\/index\.html \(\d+ files: 0 new or changed, \d+ as they were, 0 removed\)\n$/,
  );
});

test('a page that was changed is left, and told', () => {
  const file = join(place.folder, 'site', 'tasks.html');
  const before = readFileSync(file, 'utf8');
  writeFileSync(file, 'mine');
  expect(write().err).toContain(
    'tasks.html was changed since it was written and was left as it is; the new page is tasks.1.html\n',
  );
  expect(readFileSync(file, 'utf8')).toBe('mine');
  writeFileSync(file, before);
  expect(write().err).toContain('1 removed');
});

test('ages are counted to the latest day on record, or to the one that is asked for', () => {
  const call = place.call(['pages', '--out', 'later', '--on', '2027-01-01']);
  expect(call.code).toBe(0);
  expect(readFileSync(join(place.folder, 'later', 'index.html'), 'utf8')).toContain('Friday 2027-01-01');
});

test('an empty project has no pages', () => {
  const other = openWorkplace();
  try {
    other.call(['init']);
    expect(other.call(['pages', '--out', 'site'])).toEqual({
      out: '',
      err: 'hearwright: nothing has been taken yet\n  next   take a memo in: hearwright take FILE\n',
      code: 2,
    });
  } finally {
    other.remove();
  }
});

describe.skipIf(NO_BROWSER !== undefined)(
  `in Chromium${NO_BROWSER === undefined ? '' : ` (${NO_BROWSER})`}`,
  () => {
    const opened = () => browser as Browser;

    /** Every list, and of pages that are alike the first of each folder and those with pictures. */
    const sample = () => {
      const seen = new Map<string, number>();
      return pathsOf().filter((path) => {
        const pictures = readFileSync(join(place.folder, 'site', path), 'utf8').split('<svg').length - 1;
        const kind = `${path.includes('/') ? path.replace(/\/.*/, '') : path} ${pictures}`;
        seen.set(kind, (seen.get(kind) ?? 0) + 1);
        return seen.get(kind) === 1;
      });
    };

    test('no page complains or asks for anything but its own files, and each kind is sound by axe-core', async () => {
      const own = url('');
      for (const path of pathsOf()) {
        const { page, complaints, asked } = await look(opened(), url(path));
        expect(complaints, path).toEqual([]);
        expect(
          asked.filter((one) => !one.startsWith(own)),
          path,
        ).toEqual([]);
        if (sample().includes(path)) expect(await faultsOf(page), path).toEqual([]);
        await page.context().close();
      }
    }, 120_000);

    test.each([
      ['dark', 1200],
      ['light', 360],
      ['dark', 360],
    ] as const)(
      '%s at %d wide: contrast holds and nothing sticks out',
      async (scheme, width) => {
        const things = pathsOf().filter((path) => path.startsWith('things/'));
        const days = pathsOf().filter((path) => path.startsWith('days/'));
        for (const path of ['index.html', 'clashes.html', 'tasks.html', things[0], days[0]] as string[]) {
          const { page } = await look(opened(), url(path), { scheme, width });
          expect(await faultsOf(page), path).toEqual([]);
          const wide = await page.evaluate(() => document.documentElement.scrollWidth);
          expect(wide, path).toBeLessThanOrEqual(width);
          await page.context().close();
        }
      },
      60_000,
    );

    test('words of a memo stay words', async () => {
      const { page, complaints } = await look(opened(), url('days/2026-03-12.html'));
      const text = await page.locator('.memo').textContent();
      expect(text).toContain('paint the <script>alert(1)</script> "rail" & post --> before the *varnish*');
      expect(text).toContain('The red shelf is 40 wide.');
      expect(complaints).toEqual([]);
      await page.context().close();
    });

    test('the first key leads past the navigation, and what has the focus is seen', async () => {
      const { page } = await look(opened(), url('index.html'));
      await page.keyboard.press('Tab');
      expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Skip to the text');
      const style = await page.evaluate(() => {
        const { outlineStyle, outlineWidth } = getComputedStyle(document.activeElement as Element);
        return [outlineStyle, Number.parseFloat(outlineWidth) >= 2];
      });
      expect(style).toEqual(['solid', true]);
      await page.keyboard.press('Enter');
      expect(await page.evaluate(() => document.activeElement?.id)).toBe('main');
      await page.context().close();
    });

    test('a box that can be scrolled is a stop of the Tab key, and one that cannot is none', async () => {
      const stopsAt = async (width: number) => {
        const { page, complaints } = await look(opened(), url('things.html'), { width });
        const stops = await page.evaluate(() =>
          [...document.querySelectorAll<HTMLElement>('.wide')].map((box) => [
            box.scrollWidth > box.clientWidth,
            box.tabIndex === 0,
          ]),
        );
        expect(complaints).toEqual([]);
        await page.context().close();
        return stops;
      };
      expect(await stopsAt(1200)).toEqual([[false, false]]);
      expect(await stopsAt(320)).toEqual([[true, true]]);
    });

    test('words are found from a disk, and every result leads somewhere', async () => {
      const { page, complaints } = await look(opened(), `${url('search.html')}?words=cork%20layer`);
      await page.locator('#results li').first().waitFor();
      expect(await page.locator('#found').textContent()).toMatch(/^\d+ found\.$/);
      expect(await page.locator('#results li').first().textContent()).toContain('cork layer');
      await page.fill('#words', 'no such words anywhere');
      await page.waitForFunction(() => document.getElementById('found')?.textContent === 'Nothing found.');
      await page.fill('#words', 'glaze 15');
      await page.locator('#results a').first().click();
      expect(page.url()).toMatch(/\/(?:things|days|clashes|tasks)/);
      expect(complaints).toEqual([]);
      await page.context().close();
    });

    test('without scripts the search page says where else to look', async () => {
      const { page } = await look(opened(), url('search.html'), { scripts: false });
      expect(await page.locator('#without').isVisible()).toBe(true);
      expect(await page.locator('form').isVisible()).toBe(false);
      await page.context().close();
    });

    test('a page prints', async () => {
      const { page } = await look(opened(), url('days/2026-03-02.html'));
      const pdf = await page.pdf({
        format: 'A4',
        margin: { top: '15mm', bottom: '15mm', left: '15mm', right: '15mm' },
      });
      expect(pdf.subarray(0, 5).toString()).toBe('%PDF-');
      expect(pdf.length).toBeGreaterThan(5000);
      await page.emulateMedia({ media: 'print' });
      expect(await page.locator('header nav').isVisible()).toBe(false);
      await page.context().close();
    });
  },
);
