/** What part of speech a word is given by its neighbours: a thing is named only where a noun stands. */
import { expect, test } from 'vitest';
import { parseMemo } from '../../src/language/items/parse.ts';

/** The tag of the word in brackets. */
function tagIn(marked: string): string | undefined {
  const at = marked.indexOf('[');
  const { words } = parseMemo(marked.replace(/[[\]]/g, ''), []);
  return words.find(({ span }) => span.start === at)?.tag;
}

test.each([
  ['It [skins] in an hour and cures by the morning.', 'verb'],
  ['She [ribs] on the way up.', 'verb'],
  ['He [boards] over the hatch.', 'verb'],
  ['The [skins] in the rack are for the doors.', 'noun'],
  ['Its [ribs] on the port side are sound.', 'noun'],
  ["I'm [splurging] on the thick maple.", 'verb'],
  ['That leaves a bit for [fettling] it in.', 'verb'],
  ['The [planking] on the port side is sound.', 'noun'],
  ['The other rail is [thicker] at the foot.', 'adjective'],
  ['A [drier] board would do.', 'adjective'],
  ['It wants a [hotter] iron.', 'adjective'],
  ['The [lintel] has a crack.', 'noun'],
  ['The [rafter] has a crack.', 'noun'],
  ['The [planer] has a nick in its blade.', 'noun'],
  ['She [cannae] float.', 'auxiliary'],
])('%s', (marked, tag) => {
  expect(tagIn(marked)).toBe(tag);
});
