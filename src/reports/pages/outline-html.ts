/**
 * Our own Markdown as HTML: the little that `markdown.ts` writes, and no more. Texts that are written once for all (the
 * outline of an episode, what is kept on record) come onto a page through it. What was escaped there is the plain words
 * again here, and escaped anew.
 */
import { type Html, html, type Part } from './html.ts';

/** How a stretch of plain words is shown: links to memos go in here. */
export type Words = (text: string) => Part;

interface Entry {
  readonly text: string;
  readonly under: string[];
}

type Block =
  | { readonly kind: 'heading'; readonly level: number; readonly text: string }
  | { readonly kind: 'list'; readonly numbered: boolean; readonly entries: Entry[] }
  | { readonly kind: 'words'; readonly text: string };

const HEADING = /^(#{1,4}) (.*)$/;
const ENTRY = /^(?:- |(\d+)\. )(.*)$/;
const UNDER = /^ {2,3}- (.*)$/;

function blocksOf(lines: readonly string[]): readonly Block[] {
  const blocks: Block[] = [];
  let list: Extract<Block, { kind: 'list' }> | undefined;
  for (const line of lines.flatMap((one) => one.split('\n'))) {
    const under = UNDER.exec(line);
    const entry = ENTRY.exec(line);
    if (under && list) list.entries.at(-1)?.under.push(under[1] ?? '');
    else if (entry) {
      const numbered = entry[1] !== undefined;
      if (list?.numbered !== numbered) {
        list = { kind: 'list', numbered, entries: [] };
        blocks.push(list);
      }
      list.entries.push({ text: entry[2] ?? '', under: [] });
    } else {
      list = undefined;
      const heading = HEADING.exec(line);
      if (heading) blocks.push({ kind: 'heading', level: heading[1]?.length ?? 2, text: heading[2] ?? '' });
      else if (line !== '') blocks.push({ kind: 'words', text: line });
    }
  }
  return blocks;
}

/** Runs of a line: strong words between unescaped pairs of asterisks, code between unescaped backquotes. */
const RUN = /((?:\\.|[^\\*`])+)|\*\*((?:\\.|[^\\*])+)\*\*|`([^`]*)`|(.)/gsu;
const bare = (text: string) => text.replace(/\\([!-/:-@[-`{-~])/g, '$1');

function inline(text: string, words: Words): Part {
  return [...text.matchAll(RUN)].map(([, plain, strong, code, other]) => {
    if (strong !== undefined) return html`<strong>${words(bare(strong))}</strong>`;
    if (code !== undefined) return html`<code>${code}</code>`;
    return words(bare(plain ?? other ?? ''));
  });
}

function heading(level: number, text: Part): Html {
  if (level <= 2) return html`<h2>${text}</h2>\n`;
  return level === 3 ? html`<h3>${text}</h3>\n` : html`<h4>${text}</h4>\n`;
}

function listHtml(entries: readonly Entry[], numbered: boolean, words: Words): Html {
  const rows = entries.map(({ text, under }) => {
    const more = under.map((line) => html`<li>${inline(line, words)}</li>\n`);
    return html`<li>${inline(text, words)}${more.length > 0 && html`\n<ul>\n${more}</ul>\n`}</li>\n`;
  });
  return numbered ? html`<ol>\n${rows}</ol>\n` : html`<ul>\n${rows}</ul>\n`;
}

/** Returns the lines as HTML. A heading of the first level is left out: the page has its own. */
export function outlineHtml(lines: readonly string[], words: Words): Part {
  return blocksOf(lines).map((one) => {
    if (one.kind === 'heading') return one.level > 1 && heading(one.level, inline(one.text, words));
    if (one.kind === 'list') return listHtml(one.entries, one.numbered, words);
    return html`<p>${inline(one.text, words)}</p>\n`;
  });
}
