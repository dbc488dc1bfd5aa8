import type { Said } from '../words.ts';

const OF_A_DAY =
  /^(?:(?:mon|tues|wednes|thurs|fri|satur|sun)day|day|morning|afternoon|evening|night|tonight|yesterday|today|noon|midday|january|february|march|april|may|june|july|august|september|october|november|december|the|of|and|on|it|is|'s|right|so|well|okay|then|early|late|first|second|third|(?:four|fif|six|seven|eigh|nin|ten|eleven|twelf|\w+teen|twentie|thirtie)th|twenty|thirty|\d+(?:st|nd|rd|th)?)$/;

/** "Right. Wednesday the fourteenth." before anything else: when a memo was spoken, and nothing that is stated. */
export function isOpeningDay({ words, code, index }: Said, said: readonly Said[]): boolean {
  return (
    index < 3 &&
    / (?:\w+day|\w+th|\d+(?:st|nd|rd|th))\//.test(code) &&
    words.every(({ lower }) => OF_A_DAY.test(lower)) &&
    said.slice(0, index).every((before) => before.words.every(({ lower }) => OF_A_DAY.test(lower)))
  );
}
