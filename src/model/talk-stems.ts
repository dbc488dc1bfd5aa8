/** The stems of stretches of talk, found once for each: the figures of a memo stand in its sentences and near others. */
import { wordsOf } from './names.ts';
import { stemOf } from './stems.ts';

const MOST_KEPT = 2000;
const kept = new Map<string, ReadonlySet<string>>();

/** The stems of a text, each once, in order of speech. */
export function talkStems(text: string): ReadonlySet<string> {
  const known = kept.get(text);
  if (known) return known;
  const stems = new Set(wordsOf(text).map(stemOf));
  if (kept.size >= MOST_KEPT) kept.clear();
  kept.set(text, stems);
  return stems;
}
