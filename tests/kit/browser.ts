/** A real browser for tests of pages: Debian's Chromium, driven by playwright-core. Nothing is downloaded for it. */
import { existsSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { type Browser, chromium, type Page } from 'playwright-core';

const FOUND = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'].find((file) =>
  existsSync(file),
);

/** Why tests in a browser are skipped, or nothing where they run. */
export const NO_BROWSER =
  FOUND === undefined ? 'no chromium in /usr/bin: apt-get install chromium' : undefined;

export function openBrowser(): Promise<Browser> {
  return chromium.launch({ executablePath: FOUND ?? '', args: ['--no-sandbox', '--disable-gpu'] });
}

export interface Looked {
  readonly page: Page;
  /** Console messages above the level of information, and errors of scripts. */
  readonly complaints: string[];
  /** Everything that was asked for. */
  readonly asked: string[];
}

export interface Look {
  readonly scheme?: 'light' | 'dark';
  readonly width?: number;
  readonly scripts?: boolean;
}

/** Opens a page of its own, and writes down what the browser says of it. */
export async function look(browser: Browser, url: string, how: Look = {}): Promise<Looked> {
  const context = await browser.newContext({
    colorScheme: how.scheme ?? 'light',
    viewport: { width: how.width ?? 1200, height: 900 },
    javaScriptEnabled: how.scripts ?? true,
  });
  const page = await context.newPage();
  const complaints: string[] = [];
  const asked: string[] = [];
  page.on('console', (message) => {
    if (message.type() !== 'log' && message.type() !== 'info') complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(error.message));
  page.on('request', (request) => asked.push(request.url()));
  await page.goto(url);
  return { page, complaints, asked };
}

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** Faults that axe-core finds, one line each: rule, then the element. Contrast, headings, landmarks, names and more. */
export async function faultsOf(page: Page): Promise<readonly string[]> {
  await page.evaluate(AXE);
  return await page.evaluate(async () => {
    const axe = (globalThis as unknown as { axe: { run: (on: unknown, how: unknown) => Promise<AxeResult> } })
      .axe;
    interface AxeResult {
      violations: { id: string; nodes: { html: string }[] }[];
    }
    // Stylesheets are read already; the pages' own policy lets nothing be fetched.
    const { violations } = await axe.run('html', {
      preload: false,
      runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
    });
    return violations.flatMap(({ id, nodes }) => nodes.map((node) => `${id}: ${node.html}`));
  });
}
