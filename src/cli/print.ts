/** Results go to standard output, everything else to standard error. */
import { plainText } from '../plain-text.ts';

/** Prints a result as it is. Whatever comes from outside must be plain by now. */
export function print(text: string): void {
  process.stdout.write(text.endsWith('\n') ? text : `${text}\n`);
}

/** Prints one JSON document. JSON writes control characters as escapes, so nothing acts on a terminal. */
export function printJson(value: unknown): void {
  print(escapedControls(JSON.stringify(value, null, 2)));
}

/** Prints one JSON document on one line, for those that come one after the other. */
export function printJsonLine(value: unknown): void {
  print(escapedControls(JSON.stringify(value)));
}

/** JSON leaves DEL, C1 controls and direction marks bare; as escapes they mean the same and do nothing. */
function escapedControls(json: string): string {
  return json.replace(
    /[\u007f-\u009f\u061c\u200e\u200f\u2028-\u202e\u2066-\u2069]/g,
    (control) => `\\u${control.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );
}

/** Tells the person something that is no result. */
export function tell(text: string): void {
  process.stderr.write(`${text.split('\n').map(plainText).join('\n')}\n`);
}

/** Whether colour may be used on this stream. Source of NO_COLOR: https://no-color.org, from memory. */
function hasColour(stream: { readonly isTTY?: boolean }): boolean {
  return Boolean(stream.isTTY) && !process.env.NO_COLOR && process.env.TERM !== 'dumb';
}

/** Prints blocks of lines; on a terminal with colour, lines that start at the margin stand out. */
export function printBlocks(text: string): void {
  const shown = hasColour(process.stdout)
    ? text.replace(/^(?=\S).*$/gm, (line) => `\u001b[1m${line}\u001b[22m`)
    : text;
  print(shown);
}
