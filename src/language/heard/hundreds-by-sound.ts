/**
 * Hundreds that a recogniser wrote as words that are none: "sebenhundered and ten", "well-tuntered and ten". Where one
 * number is clearly nearest by its sound it is read so; where several are, what follows is only the end of a number, and no
 * figure of its own.
 */
import { DIGIT_WORDS, TEEN_WORDS } from '../numbers/number-words.ts';
import { isKnownWord } from './known-words.ts';
import { digitsOf, isEnd, isNumber } from './number-places.ts';
import { type Heard, heardWords, type RepairRule } from './repair.ts';
import { soundDistance, soundsOf } from './sounds.ts';

/** Farther apart they do not sound alike. */
const FARTHEST = 0.35;
/** So near it must be to be read so, and so much nearer than the next. */
const NEAR_ENOUGH = 0.22;
const APART = 0.05;
const SHORTEST = 6;

interface Nearest {
  /** Place of the first word. */
  readonly from: number;
  readonly means: string;
  readonly isClear: boolean;
}

/** Hundreds by their sound before "and ten": shown as a repair where only one can be meant. Heard talk only. */
export const hundredsBySound: RepairRule = (words, { isHeard }) => {
  if (!isHeard) return [];
  return words.flatMap((word, at) => {
    if (word.lower !== 'and' || word.opens || !isRest(words[at + 1]) || isEnd(words, at + 1)) return [];
    const nearest = nearestBefore(words, at);
    if (!nearest?.isClear) return [];
    const [first, last] = [words[nearest.from] as Heard, words[at - 1] as Heard];
    const why = `no words, before "and ${words[at + 1]?.lower}" they sound like "${nearest.means}"`;
    return [{ start: first.start, end: last.end, means: nearest.means, why }];
  });
};

/** Whether a number that begins at this place is only the end of a larger one, whose beginning was misheard. */
export function isEndOfNumber(text: string, start: number): boolean {
  const words = heardWords(text.slice(Math.max(0, start - 60), start));
  const at = words.length - 1;
  return words[at]?.lower === 'and' && !isEnd(words, at) && nearestBefore(words, at) !== undefined;
}

/** What follows hundreds: below a hundred. */
const isRest = (word: Heard | undefined): boolean => isNumber(word) && (digitsOf(word) ?? 0) < 100;

/** The hundreds that one or two words before a place sound like; undefined where they are words. */
function nearestBefore(words: readonly Heard[], at: number): Nearest | undefined {
  const last = words[at - 1];
  if (!last || !isNoWord(last)) return undefined;
  const spans = [1, isEnd(words, at - 1) ? 1 : 2].map((size) => at - size);
  const found = spans.flatMap((from) => {
    const heard = words.slice(from, at).map(({ lower }) => lower);
    return from < 0 || heard.join('').length < SHORTEST
      ? []
      : hundredsLike(heard.join('')).map((one) => ({ from, ...one }));
  });
  const [first, ...others] = found.sort((a, b) => a.distance - b.distance);
  if (!first || first.distance > FARTHEST) return undefined;
  const next = others.find(({ means }) => means !== first.means)?.distance ?? 1;
  return { ...first, isClear: first.distance <= NEAR_ENOUGH && next >= first.distance + APART };
}

const isNoWord = ({ lower }: Heard): boolean => /^[a-z]+$/.test(lower) && !isKnownWord(lower);

function hundredsLike(heard: string): readonly { readonly means: string; readonly distance: number }[] {
  const sounds = soundsOf(heard);
  return hundreds().map(({ means, sounds: theirs }) => ({ means, distance: soundDistance(sounds, theirs) }));
}

let spoken: readonly { readonly means: string; readonly sounds: string }[] | undefined;

/** One hundred to nineteen hundred, and so many thousand. */
function hundreds() {
  spoken ??= [...DIGIT_WORDS, ...TEEN_WORDS]
    .filter(([, value]) => value > 0)
    .flatMap(([word]) => [`${word} hundred`, `${word} thousand`])
    .map((means) => ({ means, sounds: soundsOf(means) }));
  return spoken;
}
