/** A line that is being typed: the cursor stands so many characters from its end. Pure. */
import type { KeyPress, Typing } from './screen-state.ts';

const graphemes = new Intl.Segmenter();

/** Characters as they are seen: an accent or a part of an emoji is none by itself. */
const charactersOf = (text: string) => [...graphemes.segment(text)].map(({ segment }) => segment);

/** The text before the cursor, and the text behind it. */
export function aroundCursor({ text, back = 0 }: Typing): readonly [before: string, behind: string] {
  const characters = charactersOf(text);
  const at = Math.max(0, characters.length - back);
  return [characters.slice(0, at).join(''), characters.slice(at).join('')];
}

/** The line after one key; keys that mean nothing in a line leave it. */
export function lineAfter(typing: Typing, key: KeyPress): Typing {
  const [before, behind] = aroundCursor(typing);
  const back = charactersOf(behind).length;
  switch (key.name) {
    case 'left':
      return { ...typing, back: Math.min(back + 1, charactersOf(typing.text).length) };
    case 'right':
      return { ...typing, back: Math.max(0, back - 1) };
    case 'home':
      return { ...typing, back: charactersOf(typing.text).length };
    case 'end':
      return { ...typing, back: 0 };
    case 'clear':
      return { ...typing, text: behind, back };
    case 'erase':
      return { ...typing, text: charactersOf(before).slice(0, -1).join('') + behind, back };
    default:
      return { ...typing, text: before + key.text + behind, back };
  }
}
