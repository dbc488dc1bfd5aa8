import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { byRulesAlone } from '../kit/by-rules-alone.ts';

const { told } = JSON.parse(readFileSync(new URL('./work-voices.json', import.meta.url), 'utf8')) as {
  readonly told: readonly string[];
};

const KINDS = { '[': 'done', '{': 'tasks', '<': 'arrivals' } as const;
type Kind = (typeof KINDS)[keyof typeof KINDS];
interface Mark {
  readonly kind: Kind;
  readonly start: number;
  readonly end: number;
}

/** Takes the marks out of a line and says where they stood. */
function unmarked(line: string): { readonly text: string; readonly marks: readonly Mark[] } {
  const marks: Mark[] = [];
  let text = '';
  let open: { readonly kind: Kind; readonly start: number } | undefined;
  for (const letter of line) {
    if (letter === '[' || letter === '{' || letter === '<')
      open = { kind: KINDS[letter], start: text.length };
    else if (/[\]}>]/.test(letter)) {
      if (open) marks.push({ ...open, end: text.length });
      open = undefined;
    } else text += letter;
  }
  return { text, marks };
}

/** Whether two stretches share half of the shorter one at least. */
const isSame = (a: { start: number; end: number }, b: { start: number; end: number }) =>
  Math.min(a.end, b.end) - Math.max(a.start, b.start) >= 0.5 * Math.min(a.end - a.start, b.end - b.start);

describe('ten voices tell what is done, to do and on its way', () => {
  test.each(told)('%s', (line) => {
    const { text, marks } = unmarked(line);
    const { notes } = byRulesAlone(text);
    for (const kind of Object.values(KINDS)) {
      const left = [...notes[kind]];
      for (const mark of marks.filter((each) => each.kind === kind)) {
        const at = left.findIndex(({ span }) => isSame(span, mark));
        const words = text.slice(mark.start, mark.end);
        expect([words, at >= 0 ? kind : `no ${kind}`]).toEqual([words, kind]);
        left.splice(at, 1);
      }
      expect(left.map(({ quote }) => `${kind}: ${quote}`)).toEqual([]);
    }
  });
});
