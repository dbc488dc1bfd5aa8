/** What a terminal sends, as keys of ours. Fast typing and a slow line bring several keys at once. */
import type { Key } from 'ink';
import type { KeyPress } from './state/screen-state.ts';

const graphemes = new Intl.Segmenter();

const CONTROLS: Readonly<Record<string, KeyPress['name']>> = {
  '\r': 'enter',
  '\n': 'enter',
  '\r\n': 'enter',
  '\u007f': 'erase',
  '\b': 'erase',
  '\u0001': 'home',
  '\u0005': 'end',
  '\u0015': 'clear',
  '\u0003': 'interrupt',
  '\u001a': 'suspend',
};

/** The keys of one piece of input, in their order. Control characters that mean nothing are dropped. */
export function pressesOf(input: string, key: Key, isTyping: boolean): readonly KeyPress[] {
  const name = nameOf(input, key);
  if (name) return [{ text: '', name }];
  if (key.ctrl || key.meta) return [];
  const paths = isTyping ? [] : droppedFiles(input);
  // Files that are dropped on a terminal come as their paths: they are offered for taking in, not read as keys.
  if (paths.length > 0) return [{ text: 't' }, { text: paths.join('\n') }];
  return [...graphemes.segment(input)].flatMap(({ segment }): KeyPress[] => {
    const control = CONTROLS[segment];
    if (control) return [{ text: '', name: control }];
    return /\p{Cc}/u.test(segment) ? [] : [{ text: segment }];
  });
}

function nameOf(input: string, key: Key): KeyPress['name'] {
  const names: readonly (readonly [boolean, KeyPress['name']])[] = [
    [key.upArrow, 'up'],
    [key.downArrow, 'down'],
    [key.leftArrow, 'left'],
    [key.rightArrow, 'right'],
    [key.pageUp, 'page-up'],
    [key.pageDown, 'page-down'],
    [key.return, 'enter'],
    [key.escape, 'back'],
    [key.backspace || key.delete, 'erase'],
    [key.ctrl && input === 'c', 'interrupt'],
    [key.ctrl && input === 'z', 'suspend'],
    [key.ctrl && input === 'a', 'home'],
    [key.ctrl && input === 'e', 'end'],
    [key.ctrl && input === 'u', 'clear'],
  ];
  return names.find(([is]) => is)?.[1];
}

const PATH_START = /^(?:'|")?(?:file:\/\/|~?\/|\.{1,2}\/|[A-Za-z]:\\)./;

/** A word as a shell would read it: in quotes, or with a backslash before what parts words. */
const SHELL_WORD = /'[^']*'|"[^"]*"|(?:\\.|[^\s\\])+/g;

/** The paths in what a terminal pastes for dropped files; none for anything else. */
export function droppedFiles(pasted: string): readonly string[] {
  const lines = pasted.split(/[\r\n]+/).filter((line) => line.trim() !== '');
  const words = lines.flatMap((line) => line.match(SHELL_WORD) ?? []);
  const several = words.map(droppedFile);
  if (words.length > 1 && several.every((path) => path !== undefined)) return several as string[];
  const [only, ...others] = lines;
  const path = only === undefined || others.length > 0 ? undefined : droppedFile(only);
  return path === undefined ? [] : [path];
}

/** The path in what a terminal pastes for a dropped file; undefined for anything else. */
export function droppedFile(pasted: string): string | undefined {
  const text = pasted.trim();
  if (!PATH_START.test(text) || /[\r\n]/.test(text)) return undefined;
  const quoted = /^(['"])(.*)\1$/.exec(text)?.[2];
  if (quoted !== undefined) return quoted;
  if (text.startsWith('file://')) return decodedPath(text);
  // Terminals put a backslash before blanks and brackets; on Windows it parts folders.
  return /^[A-Za-z]:\\/.test(text) ? text : text.replace(/\\(.)/g, '$1');
}

function decodedPath(url: string): string {
  try {
    return decodeURIComponent(url.replace(/^file:\/\/[^/]*/, ''));
  } catch {
    return url;
  }
}
