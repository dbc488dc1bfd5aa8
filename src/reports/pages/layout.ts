/** What every page has around it. */
import { type Html, html, type Part } from './html.ts';
import type { Links } from './site-map.ts';
import type { SitePage } from './site-source.ts';

export type Section =
  | 'overview'
  | 'days'
  | 'things'
  | 'tasks'
  | 'clashes'
  | 'checks'
  | 'records'
  | 'episodes'
  | 'search';

const NAVIGATION: readonly (readonly [Section, path: string, words: string])[] = [
  ['overview', 'index.html', 'Overview'],
  ['days', 'days.html', 'Days'],
  ['things', 'things.html', 'Things'],
  ['tasks', 'tasks.html', 'Tasks'],
  ['clashes', 'clashes.html', 'Clashes'],
  ['checks', 'checks.html', 'Checks'],
  ['records', 'records.html', 'On record'],
  ['episodes', 'episodes.html', 'Episodes'],
  ['search', 'search.html', 'Search'],
];

/**
 * Nothing but the site's own files is ever loaded. "file:" stands beside 'self' because browsers do not agree on what
 * 'self' is for a page that is opened from a disk. Source: W3C Content Security Policy Level 3, section 6.
 */
const POLICY =
  "default-src 'none'; style-src 'self' file:; script-src 'self' file:; form-action 'self' file:; base-uri 'none'";

export interface PageParts {
  readonly path: string;
  readonly section: Section;
  /** The one h1. */
  readonly title: string;
  readonly project: string;
  readonly links: Links;
  readonly main: Part;
  /** Under the title. */
  readonly lead?: Part;
  /** Pages before and after this one. */
  readonly around?: Part;
  /** Scripts of ours, relative to the site's folder; the page is whole without them. */
  readonly scripts?: readonly string[];
  readonly foot: string;
}

function navigation({ section, path: own, links }: PageParts): Html {
  return html`<nav aria-label="Site"><ul>${NAVIGATION.map(([name, path, words]) => {
    const current = own === path ? 'page' : name === section ? 'true' : undefined;
    return html`<li><a href="${links.to(path)}"${current && html` aria-current="${current}"`}>${words}</a></li>`;
  })}</ul></nav>`;
}

/** A whole page. */
export function pageOf(parts: PageParts): SitePage {
  const { path, title, project, links, lead, around, foot } = parts;
  const main = html`${parts.main}`;
  const scripts = [
    ...(main.text.includes('<div class="wide"') ? ['tab-stops.js'] : []),
    ...(parts.scripts ?? []),
  ];
  const whole = html`<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${POLICY}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<title>${title === project ? project : html`${title} - ${project}`}</title>
<link rel="stylesheet" href="${links.to('style.css')}">
${scripts.map((script) => html`<script src="${links.to(script)}" defer></script>\n`)}</head>
<body>
<a class="skip" href="#main">Skip to the text</a>
<header class="top"><p class="project"><a href="${links.to('index.html')}">${project}</a></p>
${navigation(parts)}</header>
<main id="main" tabindex="-1">
<h1>${title}</h1>
${lead !== undefined && html`<div class="lead">${lead}</div>`}
${main}
${around !== undefined && html`<nav class="around" aria-label="Before and after">${around}</nav>`}
</main>
<footer><p>${foot}</p></footer>
</body>
</html>
`;
  return { path, text: whole.text };
}
