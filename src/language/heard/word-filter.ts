/**
 * A set of words in few bytes, after Bloom (1970): a word that is in it is always found, and one in fifty that is not is
 * found too. Good enough to tell "exals" from a word.
 */

/** Places that each word marks. */
const MARKS = 5;

/** Two hashes of a word (FNV-1a, 32 bits, and the same with another start); the places are mixed from them. */
function* placesOf(word: string, bits: number): Generator<number> {
  let [a, b] = [0x811c9dc5, 0x9747b28c];
  for (let at = 0; at < word.length; at++) {
    const code = word.charCodeAt(at);
    a = Math.imul(a ^ code, 0x01000193);
    b = Math.imul(b ^ code, 0x01000193);
  }
  b = (b ^ (b >>> 15)) | 1;
  for (let k = 0; k < MARKS; k++) yield ((a + Math.imul(k, b)) >>> 0) % bits;
}

/** The set as base64. `bitsPerWord` of 7.3 lets one stranger in 33 through. */
export function packWords(words: readonly string[], bitsPerWord: number): string {
  const bytes = new Uint8Array(Math.ceil((words.length * bitsPerWord) / 8));
  for (const word of words)
    for (const place of placesOf(word, bytes.length * 8))
      bytes[place >> 3] = (bytes[place >> 3] as number) | (1 << (place & 7));
  let text = '';
  for (const byte of bytes) text += String.fromCharCode(byte);
  return btoa(text);
}

/** Looks words up in a packed set. */
export function packedWords(packed: string): (word: string) => boolean {
  const text = atob(packed.replace(/\s/g, ''));
  return (word) => {
    for (const place of placesOf(word, text.length * 8))
      if ((text.charCodeAt(place >> 3) & (1 << (place & 7))) === 0) return false;
    return true;
  };
}
