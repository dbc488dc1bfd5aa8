/** Which files of a watched folder are told of when they cannot be taken. Pure. */
import type { Problem } from '../problem.ts';

/** What is said of pictures and papers that lie beside memos. They are passed over without a word. */
const NO_MEMO: ReadonlySet<string> = new Set([
  'not-media',
  'file-text',
  'no-audio',
  'sound-empty',
  'sound-damaged',
  'codec-unknown',
  'file-cut-off',
]);
/** Endings that promise a memo: one that cannot be taken is told. */
const MEMO_ENDING = /\.(?:txt|md|wav|mp3|m4a|aac|flac|ogg|oga|opus|mp4|mov|mkv|webm|amr|3gp|wma|aiff?)$/i;

/** Whether it is told that this file could not be taken. */
export function isToldOf(file: string, { code }: Pick<Problem, 'code'>): boolean {
  return MEMO_ENDING.test(file) || !NO_MEMO.has(code);
}
