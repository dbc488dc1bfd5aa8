/**
 * Hazards that a memo touches on. A caution is printed beside the work as it stands, with whoever decides after it:
 * it never blocks, never says that a job is safe, and its absence means nothing.
 *
 * The data names the public authority or standard behind each caution. Entries with `fromMemory: true` hold at least
 * one number in `source` that was not checked against the page: check it before quoting it. Ambiguous words are left
 * out on purpose ("lead" is also a cable, "mould" also a tool, "torch" also a flashlight).
 */

import { patternText } from '../pattern-text.ts';
import data from './cautions-data.json' with { type: 'json' };
import type { Caution } from './views.ts';

interface CautionEntry extends Caution {
  readonly triggers: readonly string[];
  /** Part of `source` was written from memory and not seen on the page. */
  readonly fromMemory: boolean;
}

export const CAUTIONS: readonly CautionEntry[] = data;

/** Whole words only, in any case, with any space or hyphen between the words of a phrase. */
function wholeWords(triggers: readonly string[]): RegExp {
  const phrases = triggers.map((trigger) =>
    trigger
      .split(/[\s-]+/)
      .map(patternText)
      .join('[\\s-]+'),
  );
  return new RegExp(`(?<![\\p{L}\\p{N}])(?:${phrases.join('|')})(?![\\p{L}\\p{N}])`, 'iu');
}

const PIECE = /[\p{L}\p{N}]+/gu;
const piecesOf = (text: string) => text.toLowerCase().match(PIECE) ?? [];

/** First words of an entry's triggers; a text without any of them holds none, which is quicker told than by a pattern. */
function firstWords({ triggers: all }: CautionEntry): readonly string[] {
  return all.map((trigger) => piecesOf(trigger)[0] ?? '');
}

/** Made at first use: most calls ask for no cautions. */
const triggers = new Map<string, RegExp>();

function triggerOf(entry: CautionEntry): RegExp {
  const made = triggers.get(entry.id) ?? wholeWords(entry.triggers);
  triggers.set(entry.id, made);
  return made;
}

/**
 * Returns the cautions that the texts of one day touch on, each hazard once, in the order of the data.
 * Matches whole words: "mains" does not fire on "remains".
 */
export function cautionsFor(texts: readonly string[]): readonly Caution[] {
  const said = new Set(texts.flatMap(piecesOf));
  return CAUTIONS.filter((entry) => {
    if (!firstWords(entry).some((word) => word === '' || said.has(word))) return false;
    const trigger = triggerOf(entry);
    return texts.some((text) => trigger.test(text));
  }).map(({ id, caution, defer, source }) => ({ id, caution, defer, source }));
}
