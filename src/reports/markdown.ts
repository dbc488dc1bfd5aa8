/** The little Markdown that the pages are made of. Source: CommonMark 0.31.2, section 2.4 (backslash escapes). */
import { oneLine } from './words.ts';

/** Characters that start or end something anywhere in a line. */
const ACTIVE = /[\\`*_[\]<>|~#]/g;
/** A setext underline, a thematic break or a list marker, at the start of a line only; "-5" and "4.8" are none. */
const LINE_START = /^(?:[-+=](?!\d)|\d{1,9}(?=[.)](?:\s|$)))/;

/**
 * Returns `text` on one line, escaped so that a CommonMark reader shows exactly these words: no emphasis, link,
 * image, code, heading, list, entity or HTML can come of it.
 */
export function escapeMarkdown(text: string): string {
  return (
    oneLine(text)
      .replace(ACTIVE, '\\$&')
      .replace(/&(?=#|[a-z])/gi, '\\&')
      // Not CommonMark, but many readers make links of bare addresses.
      .replace(/:(?=\/\/)/g, '\\:')
      .replace(/\bwww\./gi, (www) => `${www.slice(0, -1)}\\.`)
      .replace(/@(?=\w)/g, '\\@')
      .replace(LINE_START, (mark) => (/\d/.test(mark) ? `${mark}\\` : `\\${mark}`))
  );
}

/** Spoken words between quotation marks, escaped. */
export function quoted(words: string): string {
  return `“${escapeMarkdown(words)}”`;
}

/** A heading with its lines, or nothing when there are no lines. */
export function section(level: 1 | 2 | 3 | 4, title: string, lines: readonly string[]): string[] {
  if (lines.length === 0) return [];
  return [`${'#'.repeat(level)} ${title}`, '', ...lines, ''];
}

/** A list entry; further parts go on indented lines beneath it. */
export function bullet(first: string, ...more: readonly (string | false | undefined)[]): string {
  return [`- ${first}`, ...more.filter((line) => line).map((line) => `  - ${line}`)].join('\n');
}

/** A page from its lines: no blank line twice, one line feed at the end. */
export function page(lines: readonly string[]): string {
  return `${lines
    .join('\n')
    .replace(/\n{3,}/g, '\n\n')
    .trim()}\n`;
}
