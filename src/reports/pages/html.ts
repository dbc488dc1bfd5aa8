/**
 * A tagged template that writes HTML (and SVG inside it). Whatever is put in is escaped; only what the template itself
 * made goes in as it is. The class is not exported, so that nothing else can make it.
 */
import { plainText } from '../../plain-text.ts';

class Markup {
  readonly text: string;
  constructor(text: string) {
    this.text = text;
  }
}

/** Text that came out of the template. */
export type Html = Markup;

/** What may be put into the template. Nothing comes of `undefined` and `false`; a list is put in piece by piece. */
export type Part = Html | string | number | false | undefined | readonly Part[];

const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Most words hold nothing to escape or to clean away; of the others most hold only signs of our own beside ASCII. */
const HARMLESS = /^[ !#-%(-;=?-~≈±→×°²³·“”’…]*$/;
const PRINTABLE = /^[ -~≈±→×°²³·“”’…]*$/;
const ACTIVE = /[&<>"']/g;

/** Words as they are shown, on one line and without control characters, safe between tags and in quoted attributes. */
export function escapeHtml(words: string): string {
  if (HARMLESS.test(words)) return words;
  const plain = PRINTABLE.test(words) ? words : plainText(words);
  return plain.replace(ACTIVE, (mark) => ENTITIES[mark] as string);
}

function written(part: Part): string {
  if (part === undefined || part === false) return '';
  if (part instanceof Markup) return part.text;
  if (typeof part === 'string') return escapeHtml(part);
  if (typeof part === 'number') return String(part);
  return part.map(written).join('');
}

/** Writes markup. Put attributes between double quotes. */
export function html(marks: TemplateStringsArray, ...parts: readonly Part[]): Html {
  let text = marks[0] ?? '';
  parts.forEach((part, index) => {
    text += written(part) + (marks[index + 1] ?? '');
  });
  return new Markup(text);
}

/** Pieces with something between each two of them. */
export function joinedBy(parts: readonly Part[], between: Part): Part {
  return parts.flatMap((part, index) => (index === 0 ? [part] : [between, part]));
}
