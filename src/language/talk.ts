/** Tells talk from bytes that were taken for text. */

/** Control characters other than blanks, and marks of bytes that could not be decoded. */
const NO_TEXT = /(?!\s)\p{Cc}|[\ufffd-\uffff]/gu;
/** Share of such characters beyond which a text was never spoken or typed. Random bytes have about a quarter. */
const MOST = 0.15;

/** True where `text` is no talk at all: a picture or a program that was opened as text. */
export function isNoTalk(text: string): boolean {
  return (text.match(NO_TEXT)?.length ?? 0) > text.length * MOST;
}
