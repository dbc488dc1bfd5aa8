import type { ChangeCue } from '../notes.ts';
import { each, PhraseTable } from '../phrases.ts';
import type { Amount, Refiner, Room } from '../rules/rule.ts';
import { tidy, wordAt } from '../rules/rule.ts';
import { SIZE_AFTER } from '../rules/size-words.ts';
import { withUnitOf } from './lists.ts';

/** Words directly before a number that turn it down. */
const TURNED_DOWN = new PhraseTable<string>([
  ...each(
    'turned down',
    "scratch the, forget the, forget about the, never mind the, not, not the, not a, not an, not that, no longer, no longer the, never, and not, and not the, isn't, wasn't, aren't, weren't, ain't, is not, was not, ain't no, isn't no, wasn't no, never no, it 's no, that 's no, she 's no, they 're no",
  ),
  ...each(
    'given up for another',
    'instead of, instead of the, instead of a, rather than, rather than the, rather than a, in place of, in place of the, as opposed to, in lieu of, replaces the, replacing the',
  ),
  ...each(
    'no longer so',
    "quit on, quit on the, gave up on, gave up on the, given up on the, went off the, figured on, figured on a, 'd figured on, planned on, planned on a, had planned on, had planned, had thought, i thought, i 'd thought, thought it was, had them down as, had it down as, had it down at, had it as, had her down as, paid for, sketched, had sketched, used to be, used to be a, used to be at, used to say, used to have, was originally, originally, started out at, had been, had been at, before it was, was meant to be, was supposed to be",
  ),
  ...each(
    'a figure of speech',
    "would ’ve been, would have been, would've been, could have been, could've been, might have been",
  ),
]);

/** "I ain't stretching it to two foot", "we're not going to 900": a deed denied, and the value with it. */
function notGoingTo(room: Room, amount: Amount): string | undefined {
  if (!/^(?:to|with|for)$/.test(wordAt(room, amount.from - 1))) return undefined;
  const verb = /^(?:it|that|them|this|up|down|back|out)$/.test(wordAt(room, amount.from - 2))
    ? amount.from - 3
    : amount.from - 2;
  const denied = /^(?:not|never|ain't|isn't|aren't|\p{L}+n't)$/u.test(wordAt(room, verb - 1));
  return denied && /ing$/.test(wordAt(room, verb)) ? 'turned down' : undefined;
}

const INTENDED = new PhraseTable<true>(
  each(
    true,
    'was going to, were going to, was gonna, were gonna, was thinking, were thinking, was minded to, had meant to, meant to',
  ),
);

/** "I was going to give her forty horsepower, but", "I was thinking 100 gallon but it won't fit". */
function thenBut(room: Room, amount: Amount): boolean {
  const sentence = room.tokens[amount.from]?.sentence;
  const intended = [0, 1, 2, 3, 4, 5].some(
    (back) =>
      room.tokens[amount.from - back - 1]?.sentence === sentence &&
      INTENDED.endingAt(room.tokens, amount.from - back),
  );
  const at = wordAt(room, amount.to) === ',' ? amount.to + 1 : amount.to;
  return intended && wordAt(room, at) === 'but';
}

function turnedDown(room: Room, amount: Amount): string | undefined {
  if (thenBut(room, amount)) return 'meant once, and not done';
  return TURNED_DOWN.endingAt(room.tokens, amount.from)?.meaning ?? notGoingTo(room, amount);
}

/** Behind the number, its word of size and "of foam". */
function afterItsWords(room: Room, amount: Amount): number {
  const at = SIZE_AFTER.startingAt(room.tokens, amount.to)?.to ?? amount.to;
  return wordAt(room, at) === 'of' && room.tokens[at + 1]?.kind === 'word' ? at + 2 : at;
}

/** "nine kilowatts won't carry this place", "three eighths won't hold a screw". */
function failsToDo(room: Room, at: number): boolean {
  const word = wordAt(room, at);
  const verb = /^(?:won't|wouldn't|doesn't|didn't|don't|can't|couldn't)$/.test(word) ? at + 1 : -1;
  return (
    verb > 0 &&
    /^(?:do|hold|fit|carry|work|reach|clear|go|take|cover|heat|lift|start|run|pull|cope|stand|cut|suit|quite|even)$/.test(
      wordAt(room, verb),
    )
  );
}

/** "quarter inch ply's what I'd sketched", "forty was the plan": thought of once. */
function plannedOnce(room: Room, at: number): boolean {
  for (let index = at; index < at + 3; index++) {
    if (!/^(?:'s|is|was)$/.test(wordAt(room, index))) continue;
    const [first, second, third] = [1, 2, 3].map((step) => wordAt(room, index + step));
    // "Because 850 is the old rule".
    if (wordAt(room, index) !== 'was' && first === 'the' && second === 'old') return true;
    if (first === 'what' && /^(?:i|we)$/.test(second ?? '') && /^(?:'d|had)$/.test(third ?? '')) return true;
    return (
      /^(?:was)$/.test(wordAt(room, index)) &&
      first === 'the' &&
      /^(?:plan|idea|thought|dream)$/.test(second ?? '')
    );
  }
  return false;
}

/** "780 is too high", "905 was wrong": said only to be turned down. */
function foundWrong(room: Room, amount: Amount): boolean {
  const at = afterItsWords(room, amount);
  if (failsToDo(room, at) || plannedOnce(room, at)) return true;
  const verb = /^(?:'s|is|was|felt|feels|looked|looks|turned|'d|would)$/.test(wordAt(room, at));
  if (!verb) return false;
  for (let index = at + 1; index < at + 4; index++) {
    if (
      /^(?:too|wrong|stingy|mean|daft|silly|stupid|overkill|nonsense|rubbish|hopeless|useless|mad|greedy|optimistic)$/.test(
        wordAt(room, index),
      )
    )
      return true;
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
  if (!isSameBreath(room, rejected, other)) return false;
  const near = Math.min(Math.abs(other.from - rejected.to), Math.abs(rejected.from - other.to)) <= 8;
  const same = !other.unit || !rejected.unit || other.dimension === rejected.dimension;
  return near && same;
}

/** One sentence, or "It's no sixteen foot. It's fifteen ten.": the next one, which begins with what is spoken of. */
function isSameBreath(room: Room, rejected: Amount, other: Amount): boolean {
  const [first, second] = [rejected, other].map(({ from }) => room.tokens[from]?.sentence ?? 0);
  if (first === second) return true;
  if (first === undefined || second !== first + 1) return false;
  let opens = other.from;
  while (room.tokens[opens - 1]?.sentence === second) opens--;
  return (
    /^(?:it|that|this|she|he|they|those|these)$/.test(wordAt(room, opens)) &&
    /^(?:'s|'re|is|are|was|were|measures?|comes?|reads?)$/.test(wordAt(room, opens + 1)) &&
    other.from - opens <= 5
  );
}

/** "Nine hundred's wrong, I'm going nine thirty", "I'm making it sixty, seventy-five is too open": what is chosen beside a value that was found wrong. */
function isChosenFor(room: Room, wrong: Amount, other: Amount | undefined): boolean {
  if (!other || room.tokens[other.from]?.sentence !== room.tokens[wrong.from]?.sentence) return false;
  const between = other.from < wrong.from ? 2 * (wrong.from - other.to) : other.from - wrong.to;
  if (between > MOST_BETWEEN) return false;
  if (other.unit && wrong.unit && other.dimension !== wrong.dimension) return false;
  const isFar = Math.max(other.value / wrong.value, wrong.value / other.value) > 3;
  if (isFar && other.unit === wrong.unit) return false;
  return [1, 2, 3, 4].some((back) => CHOSEN.test(wordAt(room, other.from - back)));
}
const MOST_BETWEEN = 16;
const CHOSEN =
  /^(?:going|go|gone|goes|make|making|made|have|having|taking|take|call|calling|answer|set|setting|settled|say|become|becomes|getting|gets|instead)$/;

/** "Nine hundred's too low with the sink that deep, so it's nine thirty": where the sentence comes to its new value. */
function concludedAt(
  room: Room,
  wrong: Amount,
  amounts: readonly (Amount | undefined)[],
): number | undefined {
  const at = amounts.findIndex((other) => {
    if (!other || other.from < wrong.to || other.unit || wrong.unit) return false;
    if (room.tokens[other.from]?.sentence !== room.tokens[wrong.from]?.sentence) return false;
    const [so, it, is] = [3, 2, 1].map((back) => wordAt(room, other.from - back));
    const concludes =
      so === 'so' &&
      /^(?:it|they|that|i)$/.test(it ?? '') &&
      /^(?:'s|is|'re|are|'m|'ll|want)$/.test(is ?? '');
    return concludes && Math.max(other.value / wrong.value, wrong.value / other.value) <= 2;
  });
  return at < 0 ? undefined : at;
}

/** "I told you eighteen foot": what was said of it once. */
function toldBefore(room: Room, amount: Amount): boolean {
  return [1, 2, 3, 4].some((back) => {
    const [said, whom] = [wordAt(room, amount.from - back - 1), wordAt(room, amount.from - back)];
    if (
      /^(?:told|gave)$/.test(said) &&
      /^(?:you|y'all|everybody|everyone|them|him|her|people|folks)$/.test(whom)
    )
      return /^(?:i|i'd|'d|we|had|'ve)$/.test(wordAt(room, amount.from - back - 2));
    // "I'd written 48 on the sheet in March, it's 46."
    if (/^(?:written|wrote)$/.test(whom)) return /^(?:i|'d|we|had)$/.test(said);
    return whom === 'said' && /^(?:i|i'd|'d|we|had)$/.test(said);
  });
}

/** "A good bit more than the 500 I'd told him": what was told before, to compare. */
function comparedWith(room: Room, amount: Amount): boolean {
  const than = wordAt(room, amount.from - 1) === 'the' ? amount.from - 2 : amount.from - 1;
  if (wordAt(room, than) !== 'than') return false;
  let at = afterItsWords(room, amount);
  if (/^(?:that|what|as)$/.test(wordAt(room, at))) at++;
  if (!/^(?:i|we|he|she|they|you)$/.test(wordAt(room, at))) return false;
  at++;
  while (/^(?:'d|had|'ve|have|'s|has|was|were|originally|first|once)$/.test(wordAt(room, at))) at++;
  return TOLD_ONCE.test(wordAt(room, at));
}
const TOLD_ONCE =
  /^(?:told|said|reckoned|drew|drawn|thought|planned|planning|allowed|quoted|ordered|guessed|expected|expecting|figured|asked|gave|given|wrote|written|booked|promised|started|sketched|estimated|budgeted)$/;

/** "It was going to be at eighteen hundred": what was meant once. */
const plannedBefore = (room: Room, amount: Amount): boolean =>
  [1, 2, 3].some(
    (back) =>
      wordAt(room, amount.from - back) === 'be' &&
      (/^(?:gonna)$/.test(wordAt(room, amount.from - back - 1))
        ? /^(?:was|were)$/.test(wordAt(room, amount.from - back - 2))
        : wordAt(room, amount.from - back - 2) === 'going' &&
          /^(?:was|were)$/.test(wordAt(room, amount.from - back - 3))),
  );

/** "..., it's seventeen ten", "I said twelve mil. They're nine.": where the talk puts right what was told before. */
function putRight(room: Room, told: Amount, amounts: readonly (Amount | undefined)[]): number | undefined {
  const at = amounts.findIndex((other) => {
    if (!other || other.from <= told.to || other.from - told.to > MOST_BETWEEN) return false;
    if (other.unit && told.unit && other.dimension !== told.dimension) return false;
    const light = /^(?:actually|really|only|more|just|in)$/.test(wordAt(room, other.from - 1)) ? 2 : 1;
    const [it, is] = [light + 1, light].map((back) => wordAt(room, other.from - back));
    if (room.tokens[other.from]?.sentence !== room.tokens[told.from]?.sentence)
      return opensWithIt(room, other.from - light - 1) && isNow(is) && isLike(told, other);
    if (/^(?:call|calling|make|making)$/.test(it ?? '')) return /^(?:it|that|them)$/.test(is ?? '');
    return /^(?:it|they|she|that)$/.test(it ?? '') && /^(?:'s|is|'re|are|was)$/.test(is ?? '');
  });
  return at < 0 ? undefined : at;
}

const isNow = (word: string | undefined): boolean => /^(?:'s|is|'re|are)$/.test(word ?? '');

/** "It" or "they" at the head of the sentence that this token stands in. */
const opensWithIt = (room: Room, at: number): boolean =>
  /^(?:it|they|she)$/.test(wordAt(room, at)) && room.tokens[at - 1]?.sentence !== room.tokens[at]?.sentence;

const isLike = (a: Amount, b: Amount): boolean =>
  Math.max(a.value / b.value, b.value / a.value) <= ONE_SIZE && (a.unit === b.unit || !b.unit);
/** A size and the one that puts it right are seldom further apart. */
const ONE_SIZE = 2.5;

/** "Not seven forty, the seven forty was to the bead", "cut for the nine hundred": the value given up, as a name. */
function isOldOneAgain(room: Room, old: Amount, amount: Amount): boolean {
  if (amount.value !== old.value || amount.unit || wordAt(room, amount.from - 1) !== 'the') return false;
  const [first, second] = [old, amount].map(({ from }) => room.tokens[from]?.sentence ?? 0);
  if (first === undefined || second === undefined || second - first > 2) return false;
  return /^(?:|[.,;:!?]|was|were|is|'s|so|but|and|because|i|that|they)$/.test(wordAt(room, amount.to));
}

/** "810 by 900, not 800": of a list before it the size that was mistaken for it, which is the one most like it. */
function nearestOfList(amounts: readonly (Amount | undefined)[], last: number, value: number): number {
  const group = amounts[last]?.group?.id;
  if (group === undefined) return last;
  const off = (at: number) => Math.abs(Math.log((amounts[at]?.value ?? 0) / value));
  let best = last;
  for (let at = last - 1; amounts[at]?.group?.id === group; at--) if (off(at) < off(best)) best = at;
  return best;
}

/** Values farther apart than this, as a ratio, are of two measures. */
const MOST_APART = 5;

/** "It's no sixteen foot. It's fifteen ten.": feet and inches run together, where feet were turned down. */
function inFeet(old: Amount, amount: Amount): Amount | undefined {
  const split = amount.number.splitAfter;
  if (old.unit !== 'ft' || amount.unit || !split || amount.number.form !== 'words') return undefined;
  const digits = String(amount.value);
  const [feet, inches] = [Number(digits.slice(0, split)), Number(digits.slice(split))];
  const isClose = Math.max(feet / old.value, old.value / feet) <= ONE_SIZE;
  if (!isClose || inches >= 12) return undefined;
  return { ...amount, value: feet * 12 + inches, unit: 'in', dimension: 'length' };
}

/** "Nineteen hundred ... so it's two metres ten": so many metres or inches nobody builds. */
const isBareMillimetres = ({ value }: Amount, { unit }: Amount): boolean =>
  (unit === 'm' && value >= 100) || (unit === 'in' && value >= 480) || (unit === 'ft' && value >= 100);

/** "It's 21 and 3/8, not five eighths": only the part of the inch is told, of the same whole. */
const withItsWhole = (old: Amount, amount: Amount): number =>
  old.number.fraction && old.value < 1 && amount.number.fraction && amount.value > 1
    ? tidy(Math.floor(amount.value) + old.value)
    : old.value;

/** The value that holds instead, measured as the one given up was where it has no unit: "it isn't 900 litres, it's 600". */
function inPlaceOf(old: Amount, amount: Amount, change: ChangeCue): Amount {
  const lent = inFeet(old, amount) ?? (amount.unit ? amount : withUnitOf(amount, old));
  const isNear = Math.max(old.value / lent.value, lent.value / old.value) <= MOST_APART;
  return {
    ...((isNear && lent.unit === old.unit) || lent.unit === 'in' ? lent : amount),
    change,
    replaces: {
      value: withItsWhole(old, amount),
      unit: old.unit ?? (isBareMillimetres(old, amount) ? 'mm' : amount.unit) ?? '',
    },
  };
}

/** Words that lead up to what holds instead of a thing once meant: "but it's", "so I've gone for". */
const HOLDS_NOW = /^(?:it|it's|that|that's|they|i|i'm|we|we're|now|so|make|just|only|then|'ll|have)$/;

/** "I was going to make it 700, but Jo is six foot two, so it's 760": where the sentence comes to what it is instead. */
function concludedInstead(
  room: Room,
  meant: Amount,
  amounts: readonly (Amount | undefined)[],
  index: number,
): number | undefined {
  for (let at = index + 1; at < index + 4; at++) {
    const other = amounts[at];
    if (!other || other.from - meant.to > MOST_BETWEEN + 4) return undefined;
    if (room.tokens[other.from]?.sentence !== room.tokens[meant.from]?.sentence) return undefined;
    const isKind = !other.unit || !meant.unit || other.dimension === meant.dimension;
    const before = [1, 2, 3, 4].map((back) => wordAt(room, other.from - back));
    const end = before.findIndex((word) => /^[,;]$/.test(word) || word === 'but');
    const own = end < 0 ? before : before.slice(0, end);
    if (isKind && (own.length === 0 || own.some((word) => HOLDS_NOW.test(word)))) return at;
  }
  return undefined;
}

/** The thing of a value that stands in another clause is that of the one it replaces. */
const ofSlip = (amount: Amount, slip: Amount): Amount => ({
  ...amount,
  saidAt: { from: slip.from, to: slip.to },
});

/** "not 905, 915", "instead of 18", "used to be", "780 is too high": what was turned down is no figure. */
export const rejected: Refiner = {
  name: 'a value turned down',
  refine(amounts, room) {
    const out = [...amounts] as (Amount | undefined)[];
    const gone: Amount[] = [];
    amounts.forEach((amount, index) => {
      const wrong = foundWrong(room, amount) || takenBack(room, amount);
      const again = gone.some((old) => isOldOneAgain(room, old, amount));
      const isPlan = plannedBefore(room, amount);
      const after = isPlan || toldBefore(room, amount) ? putRight(room, amount, out) : undefined;
      const now = after === undefined ? undefined : out[after];
      if (after !== undefined && now) {
        out[index] = undefined;
        gone.push(amount);
        room.note({
          ...amount,
          stage: 'refine',
          rule: rejected.name,
          outcome: 'dropped',
          why: 'told before',
        });
        const right = inPlaceOf(amount, now, isPlan ? 'decided' : 'corrected');
        out[after] = isPlan ? ofSlip(right, amount) : right;
        return;
      }
      const why =
        turnedDown(room, amount) ??
        (comparedWith(room, amount) ? 'told before' : undefined) ??
        (wrong ? 'found wrong' : again ? 'an old value spoken of again' : undefined);
      if (!why || amount.bound === 'between') return;
      out[index] = undefined;
      gone.push(amount);
      room.note({ ...amount, stage: 'refine', rule: rejected.name, outcome: 'dropped', why });
      if (why === 'a figure of speech' || again) return;
      if (why === 'found wrong') {
        const at =
          [index + 1, index - 1].find((one) => isChosenFor(room, amount, out[one])) ??
          concludedAt(room, amount, out);
        const chosen = at === undefined ? undefined : out[at];
        if (at === undefined || !chosen) return;
        out[at] = inPlaceOf(amount, chosen, 'decided');
        return;
      }
      if (why === 'meant once, and not done') {
        const at = concludedInstead(room, amount, out, index);
        const chosen = at === undefined ? undefined : out[at];
        // Of a list the nearest value was put right before.
        if (at !== undefined && chosen && !chosen.replaces)
          out[at] = ofSlip(inPlaceOf(amount, chosen, 'decided'), amount);
        return;
      }
      for (const at of [index + 1, nearestOfList(out, index - 1, amount.value)]) {
        const other = out[at];
        if (!other || !standsInFor(room, amount, other)) continue;
        const isCorrected = why === 'turned down' || why === 'told before';
        out[at] = inPlaceOf(amount, other, isCorrected ? 'corrected' : 'decided');
        break;
      }
    });
    return out.filter((amount): amount is Amount => amount !== undefined);
  },
};
