/**
 * Every match of a global pattern that never matches nothing, in order. Unlike `matchAll` it makes no copy of the pattern
 * for each text: there are many patterns, and most of them are tried on a few words at a time.
 */
export function allMatches(pattern: RegExp, text: string): readonly RegExpExecArray[] {
  const found: RegExpExecArray[] = [];
  pattern.lastIndex = 0;
  for (let match = pattern.exec(text); match; match = pattern.exec(text)) found.push(match);
  return found;
}
