/** The stems of stretches of talk, found once for each: the figures of a memo stand in its sentences and near others. */
import { remembered } from '../remembered.ts';
import { wordsOf } from './names.ts';
import { stemOf } from './stems.ts';

const MOST_KEPT = 2000;

/** The stems of a text, each once, in order of speech. */
export const talkStems: (text: string) => ReadonlySet<string> = remembered(
  MOST_KEPT,
  (text) => new Set(wordsOf(text).map(stemOf)),
);
