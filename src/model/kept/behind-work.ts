/** Where work goes through a panel, what is known to be behind it. */
import { nameStems, shapeOf, wordsOf } from '../names.ts';
import { stemOf } from '../stems.ts';
import { sentencesOf } from '../talk.ts';
import type { Source } from '../views.ts';
import type { BehindWork, HiddenView } from './kept-views.ts';

/** Work that goes into or through a panel. */
const PIERCING =
  /\b(?:drill(?:s|ed|ing)?|screw(?:s|ed|ing)?|bor(?:e|ed|ing)|cut(?:s|ting)?|saw(?:n|ing)?|hole ?saw|holes?|nail(?:s|ed|ing)?|stapl(?:e|es|ed|ing)|pin(?:ned|ning)|rout(?:ed|ing)?|chas(?:e|ed|ing)|notch(?:ed|ing)?|punch(?:ed|ing)?|pierc(?:e|ed|ing)|rawlplugs?|wall ?plugs?|mount(?:ed|ing)?|hang(?:ing)?|hung)\b/i;
/** Before the panel's own word these tell nothing of which panel. */
const POINTING = /^(?:the|that|this|same|my|our|a|into|through|in|on|to|of)$/;

/** A stretch of talk or a task in which a panel may be worked through. */
export interface Spoken {
  readonly text: string;
  readonly source: Source;
}

/** What is behind the panels that the talk works through, each panel once for each stretch of talk. */
export function behindWork(hidden: readonly HiddenView[], talk: readonly Spoken[]): readonly BehindWork[] {
  if (hidden.length === 0) return [];
  return talk.flatMap(({ text, source }) =>
    sentencesOf(text).flatMap((sentence) => {
      if (!PIERCING.test(sentence.text)) return [];
      const there = hidden.filter(
        (one) => isNamedIn(sentence.text, one.panel, hidden) && !tellsOf(one, sentence.text, source),
      );
      const panels = [...new Set(there.map(({ panel }) => panel))];
      return panels.map((panel) => ({
        panel,
        there: there.filter((one) => one.panel === panel),
        work: { ...source, quote: sentence.text.trim() },
      }));
    }),
  );
}

/** The sentence that told what is behind the panel warns of nothing. */
function tellsOf({ source: told }: HiddenView, sentence: string, source: Source): boolean {
  const bare = sentence.replace(/[\s.!?…]+$/, '');
  return told.memoId === source.memoId && (told.quote.includes(bare) || bare.includes(told.quote));
}

/** Whether the words name this panel: with all that tells it apart, or alone where no other panel could be meant. */
export function isNamedIn(text: string, panel: string, all: readonly Pick<HiddenView, 'panel'>[]): boolean {
  const { head, stems } = shapeOf(panel);
  const words = wordsOf(text);
  const spoken = words.map(stemOf);
  const at = spoken.indexOf(head);
  if (at < 0) return false;
  const telling = stems.filter((stem) => stem !== head);
  const isBare = POINTING.test(words[at - 1] ?? 'the');
  if (telling.length === 0) return isBare;
  if (telling.every((stem) => spoken.includes(stem))) return true;
  const fellows = new Set(
    all.filter((one) => shapeOf(one.panel).head === head).map((one) => nameStems(one.panel).join(' ')),
  );
  return isBare && telling.length > 0 && fellows.size === 1 && !spoken.some((stem) => telling.includes(stem));
}
