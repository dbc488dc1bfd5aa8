/** The search page, its index and its script. Without the script the page says where else to look. */
import type { DayView, StandingFigure } from '../../model/views.ts';
import { plainText } from '../../plain-text.ts';
import { subjectOf } from '../finding-text.ts';
import { boundedText } from '../quantity-text.ts';
import { dayName, memoName } from '../source-text.ts';
import { sentence } from '../words.ts';
import { otherSystem } from './fragments.ts';
import { type Html, html } from './html.ts';
import { dayPath, type Links, type SiteMap } from './site-map.ts';
import type { SiteSource } from './site-source.ts';

/** Kind, title, path from the site's folder, words that it is found by. */
export type SearchEntry = readonly [kind: string, title: string, path: string, words: string];

export function searchMain(links: Links): Html {
  return html`<form role="search" id="search" action="search.html" method="get" hidden>
<label for="words">Words to find</label>
<input id="words" name="words" type="search" autocomplete="off" spellcheck="false">
<button type="submit">Find</button>
</form>
<p id="found" role="status"></p>
<ol id="results" class="results"></ol>
<p id="without">Finding words needs the small script that lies beside these pages. Without it, look among the <a href="${links.to('things.html')}">things by name</a>, the <a href="${links.to('days.html')}">days</a>, the <a href="${links.to('tasks.html')}">tasks</a> and the <a href="${links.to('clashes.html')}">clashes</a>.</p>
`;
}

/** What there is to find beside the talk. */
export function entriesOf(source: SiteSource, map: SiteMap): SearchEntry[] {
  const path = (paths: ReadonlyMap<string, string>, key: string) => paths.get(key) ?? '';
  const figure = (one: StandingFigure): SearchEntry => {
    const value = [boundedText(one), otherSystem(one)].filter(Boolean).join(', ');
    return [
      'figure',
      `${subjectOf(one)}: ${value}`,
      map.figures.get(one) ?? '',
      `${subjectOf(one)} ${one.source?.quote ?? ''}`,
    ];
  };
  return [
    ...source.figures.map(figure),
    ...source.tasks.map(
      ({ id, gist, status, source: at }): SearchEntry => [
        `task, ${status}`,
        sentence(gist),
        path(map.tasks, id),
        `${gist} ${at.quote}`,
      ],
    ),
    ...source.findings.map(
      ({ id, item, attribute, why, status }): SearchEntry => [
        `clash, ${status}`,
        `${subjectOf({ item, attribute })} (${id})`,
        path(map.findings, id),
        `${subjectOf({ item, attribute })} ${why}`,
      ],
    ),
  ];
}

/** The talk of a day, memo by memo. */
export function talkEntries({ date, memos }: DayView): readonly SearchEntry[] {
  return memos.map(({ id, text }): SearchEntry => {
    return ['talk', `${dayName(date)}, ${memoName(id)}`, `${dayPath(date)}#${id}`, text];
  });
}

/** The index as a script, so that it can be read from a disk without a server. No word in it can end a tag or a line. */
export function indexScript(entries: readonly SearchEntry[]): string {
  const lines = entries.map((entry) =>
    JSON.stringify(entry.map((words) => plainText(words))).replace(/</g, '\\u003c'),
  );
  return `'use strict';\nself.pagesToSearch = [\n${lines.join(',\n')}\n];\n`;
}

/** Runs in the reader's browser. Writes text nodes only, never markup. */
export const SEARCH_SCRIPT = `'use strict';
(() => {
  const most = 60;
  const form = document.getElementById('search');
  const field = document.getElementById('words');
  const found = document.getElementById('found');
  const results = document.getElementById('results');
  const fold = (text) => text.normalize('NFKD').replace(/\\p{M}+/gu, '').toLowerCase();
  const pages = self.pagesToSearch.map(([kind, title, path, words]) => ({ kind, title, path, words, folded: fold(title + ' ' + words), head: fold(title) }));

  const excerpt = (words, wanted) => {
    const at = Math.max(0, words.toLowerCase().indexOf(wanted[0]));
    const start = Math.max(0, at - 60);
    const from = start === 0 ? 0 : Math.min(at, words.indexOf(' ', start) + 1 || at);
    const space = words.indexOf(' ', at + 110);
    const to = space === -1 || space > at + 160 ? Math.min(words.length, at + 160) : space;
    return (from > 0 ? '… ' : '') + words.slice(from, to) + (to < words.length ? ' …' : '');
  };

  const entry = ({ kind, title, path, words }, wanted) => {
    const line = document.createElement('li');
    const link = document.createElement('a');
    link.href = path;
    link.textContent = title;
    const where = document.createElement('span');
    where.className = 'where';
    where.textContent = ' ' + kind;
    const detail = document.createElement('span');
    detail.className = 'detail';
    detail.textContent = excerpt(words, wanted);
    line.append(link, where, document.createElement('br'), detail);
    return line;
  };

  const show = () => {
    const wanted = fold(field.value).split(/\\s+/).filter(Boolean);
    if (wanted.length === 0) {
      results.replaceChildren();
      found.textContent = '';
      return;
    }
    const hits = pages.filter(({ folded }) => wanted.every((word) => folded.includes(word)));
    const inHead = ({ head }) => wanted.filter((word) => head.includes(word)).length;
    const shown = hits.map((page, index) => ({ page, index, worth: inHead(page) })).sort((a, b) => b.worth - a.worth || a.index - b.index).slice(0, most);
    results.replaceChildren(...shown.map(({ page }) => entry(page, wanted)));
    found.textContent = hits.length === 0 ? 'Nothing found.' : hits.length > most ? hits.length + ' found; the nearest ' + most + ' are shown.' : hits.length + ' found.';
  };

  let waiting;
  field.addEventListener('input', () => {
    clearTimeout(waiting);
    waiting = setTimeout(show, 120);
  });
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    show();
  });
  document.getElementById('without').hidden = true;
  form.hidden = false;
  field.value = new URLSearchParams(location.search).get('words') ?? '';
  show();
  if (field.value === '') field.focus();
})();
`;
