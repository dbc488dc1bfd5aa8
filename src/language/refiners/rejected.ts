import { each, PhraseTable } from '../phrases.ts';
import type { Amount, Refiner, Room } from '../rules/rule.ts';
import { wordAt } from '../rules/rule.ts';

/** Words directly before a number that turn it down. */
const TURNED_DOWN = new PhraseTable<string>([
  ...each(
    'turned down',
    "not, not the, not a, not an, not that, no longer, no longer the, never, and not, and not the, isn't, wasn't, ain't, is not, was not",
  ),
  ...each(
    'given up for another',
    'instead of, instead of the, instead of a, rather than, rather than the, rather than a, in place of, in place of the, as opposed to, in lieu of, replaces the, replacing the',
  ),
  ...each(
    'no longer so',
    'used to be, used to be a, used to be at, used to say, used to have, was originally, originally, started out at, had been, had been at, before it was, was meant to be, was supposed to be',
  ),
  ...each(
    'a figure of speech',
    "would ’ve been, would have been, would've been, could have been, could've been, might have been, should have been",
  ),
]);

function turnedDown(room: Room, amount: Amount): string | undefined {
  return TURNED_DOWN.endingAt(room.tokens, amount.from)?.meaning;
}

/** "780 is too high", "905 was wrong": said only to be turned down. */
function foundWrong(room: Room, amount: Amount): boolean {
  const at = amount.to;
  const verb = /^(?:'s|is|was|felt|feels|looked|looks|turned|'d|would)$/.test(wordAt(room, at));
  if (!verb) return false;
  for (let index = at + 1; index < at + 4; index++) {
    if (/^(?:too|wrong)$/.test(wordAt(room, index))) return true;
    if (/^(?:no|not)$/.test(wordAt(room, index)) && /^(?:good|enough|right)$/.test(wordAt(room, index + 1)))
      return true;
    if (!/^(?:be|been|out|just|way|far|a|bit|still|plainly|clearly|simply|really)$/.test(wordAt(room, index)))
      return false;
  }
  return false;
}

/** A sentence after the value that takes it back: "That was wrong.", "Well, that's not right." */
const TAKEN_BACK =
  /^(?:(?:well|but|and|now|which|so) )*(?:that|it|this|which|i)(?: 's| was| is|'s)(?: all| plain| just)? (?:wrong|rubbish|nonsense|not right|a mistake|not so)\b(?! (?:of|to|one|way|side|place|end|day))/;

/** "I told you it's nine metres. That was wrong.": the sentence right after takes the value back. */
function takenBack(room: Room, amount: Amount): boolean {
  const { tokens } = room;
  const sentence = tokens[amount.from]?.sentence;
  let at = amount.to;
  while (tokens[at] && tokens[at]?.sentence === sentence) {
    // Only what ends the sentence: a later value in it would be meant instead.
    if (tokens[at]?.kind === 'number' || at > amount.to + 4) return false;
    at++;
  }
  const words = tokens.slice(at, at + 7).filter((token) => token.word !== ',');
  return TAKEN_BACK.test(words.map((token) => token.word).join(' '));
}

/** The value given in place of a rejected one: "not 905, 915"; "915, not 905"; "905 instead of 18". */
function standsInFor(room: Room, rejected: Amount, other: Amount | undefined): boolean {
  if (!other) return false;
  if (room.tokens[other.from]?.sentence !== room.tokens[rejected.from]?.sentence) return false;
  const near = Math.min(Math.abs(other.from - rejected.to), Math.abs(rejected.from - other.to)) <= 8;
  const same = !other.unit || !rejected.unit || other.dimension === rejected.dimension;
  return near && same;
}

/** "not 905, 915", "instead of 18", "used to be", "780 is too high": what was turned down is no figure. */
export const rejected: Refiner = {
  name: 'a value turned down',
  refine(amounts, room) {
    const out = [...amounts] as (Amount | undefined)[];
    amounts.forEach((amount, index) => {
      const wrong = foundWrong(room, amount) || takenBack(room, amount);
      const why = turnedDown(room, amount) ?? (wrong ? 'found wrong' : undefined);
      if (!why || amount.bound === 'between') return;
      out[index] = undefined;
      room.note({ ...amount, stage: 'refine', rule: rejected.name, outcome: 'dropped', why });
      if (why === 'found wrong' || why === 'a figure of speech') return;
      for (const at of [index + 1, index - 1]) {
        const other = out[at];
        if (!other || !standsInFor(room, amount, other)) continue;
        const unit = amount.unit ?? other.unit ?? '';
        out[at] = {
          ...other,
          change: why === 'turned down' ? 'corrected' : 'decided',
          replaces: { value: amount.value, unit },
        };
        break;
      }
    });
    return out.filter((amount): amount is Amount => amount !== undefined);
  },
};
