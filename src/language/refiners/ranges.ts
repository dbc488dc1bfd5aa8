import { each, PhraseTable } from '../phrases.ts';
import type { Amount, Refiner, Room } from '../rules/rule.ts';
import { tidy, wordAt } from '../rules/rule.ts';
import { SIZE_AFTER } from '../rules/size-words.ts';

const BETWEEN = new PhraseTable<true>(
  each(true, 'between, anywhere between, somewhere between, anything between'),
);
const FROM = new PhraseTable<true>(
  each(true, 'from, anything from, anywhere from, from the, from a, from an, somewhere from'),
);

/** Verbs of change: "going from the 70 to an 84" names an old and a new value, no range. */
const CHANGE =
  /^(?:go|goes|going|gone|went|change|changed|changes|changing|switch|switched|switching|drop|dropped|dropping|drops|bump|bumped|bumping|raise|raised|raising|move|moved|moving|swap|swapped|swapping|reduce|reduced|increase|increased|cut|came|come|comes|coming|brought|bring|bringing|took|take|taking|stretch|stretched|stretching|up|down|upgraded|revised|fell|crept|shrunk|grown|grew|opened|deeper|wider|longer|shorter|lower|higher|taller|thicker|thinner|narrower|heavier|lighter|bigger|smaller|deepen|widen|lengthen|shorten)$/;

function changesBefore(room: Room, at: number): boolean {
  const sentence = room.tokens[at]?.sentence;
  for (let index = at - 1; index >= Math.max(0, at - 8); index--) {
    const token = room.tokens[index];
    if (token?.sentence !== sentence) return false;
    if (token && CHANGE.test(token.word)) return true;
  }
  return false;
}

function tapersBefore(room: Room, at: number): boolean {
  return [1, 2, 3, 4].some((back) => /^(?:taper|tapers|tapered|tapering)$/.test(wordAt(room, at - back)));
}

/** Gives both ends of a range one unit. */
function sameUnit(low: Amount, high: Amount): readonly [Amount, Amount] | undefined {
  const withUnitOf = (bare: Amount, from: Amount): Amount => ({
    ...bare,
    value: tidy(bare.value * (from.factor ?? 1)),
    ...(from.unit ? { unit: from.unit } : {}),
    ...(from.dimension ? { dimension: from.dimension } : {}),
  });
  if (low.unit && high.unit && low.unit !== high.unit) return undefined;
  if (!low.unit) return [withUnitOf(low, high), high];
  if (!high.unit) return [low, withUnitOf(high, low)];
  return [low, high];
}

function rangeOf(low: Amount, high: Amount, quoteFrom: number): Amount | undefined {
  const pair = sameUnit(low, high);
  if (!pair || pair[0].value >= pair[1].value) return undefined;
  return {
    ...pair[1],
    ...pair[0],
    from: low.from,
    to: high.to,
    quoteFrom,
    quoteTo: high.to,
    value: pair[0].value,
    high: pair[1].value,
    bound: 'between',
    boundSaid: true,
  };
}

/** Index of the amount's first token with its article: "to | an 84". */
function fromArticle(room: Room, amount: Amount): number {
  return /^(?:a|an|the|that)$/.test(wordAt(room, amount.from - 1)) ? amount.from - 1 : amount.from;
}

/** "two or three mil", "thirty or forty": next to each other in ones or in tens, so that both ends are loose. */
function neighbours(low: Amount, high: Amount): boolean {
  if (!Number.isInteger(low.value) || low.unit || !high.unit || high.article) return false;
  const step = high.value - low.value;
  return step === 1 ? low.value < 12 : step === 10 && low.value % 10 === 0 && low.value < 100;
}

interface Joint {
  readonly kind: 'range' | 'change';
  readonly quoteFrom: number;
}

function jointOf(room: Room, low: Amount, high: Amount): Joint | undefined {
  const next = SIZE_AFTER.startingAt(room.tokens, low.to)?.to ?? low.to;
  const word = wordAt(room, next);
  const start = fromArticle(room, high);
  if (word === 'and' && next + 1 === high.from) {
    const lead = BETWEEN.endingAt(room.tokens, low.from);
    return lead ? { kind: 'range', quoteFrom: lead.from } : undefined;
  }
  if (word === 'or' && next + 1 === high.from && neighbours(low, high)) {
    return { kind: 'range', quoteFrom: low.from };
  }
  if (word === '-' && next + 1 === high.from && room.tokens[high.from]?.kind === 'number') {
    return { kind: 'range', quoteFrom: low.from };
  }
  if (!/^(?:to|up|down|through)$/.test(word)) return undefined;
  const direct = /^(?:to|through)$/.test(word) ? next + 1 : wordAt(room, next + 1) === 'to' ? next + 2 : -1;
  if (direct !== start) return undefined;
  const lead = FROM.endingAt(room.tokens, low.from);
  if (!lead) return word === 'to' && start === high.from ? { kind: 'range', quoteFrom: low.from } : undefined;
  // "The leg tapers from 60 to 35": two sizes of one thing.
  if (tapersBefore(room, lead.from)) return undefined;
  const changes = word !== 'to' || changesBefore(room, lead.from) || start !== high.from;
  return { kind: changes ? 'change' : 'range', quoteFrom: lead.from };
}

/** "between 10 and 15 mil", "four to ten hours", "10-15 mm"; and "from the 70 to an 84", which is a change. */
export const ranges: Refiner = {
  name: 'a range, or a change from one value to another',
  refine(amounts, room) {
    const out: Amount[] = [];
    for (let index = 0; index < amounts.length; index++) {
      const [low, high] = [amounts[index], amounts[index + 1]];
      if (!low) continue;
      const joint = high && !low.group ? jointOf(room, low, high) : undefined;
      if (!joint || !high) {
        out.push(low);
        continue;
      }
      const pair = sameUnit(low, high);
      const range = joint.kind === 'range' ? rangeOf(low, high, joint.quoteFrom) : undefined;
      if (range) {
        out.push(range);
        room.note({
          ...range,
          stage: 'refine',
          rule: ranges.name,
          outcome: 'merged',
          why: 'two ends of one range',
        });
      } else if (pair && (joint.kind === 'change' || FROM.endingAt(room.tokens, low.from))) {
        const [was, now] = pair;
        out.push({
          ...now,
          change: 'decided',
          ...(was.unit
            ? { replaces: { value: was.value, unit: was.unit } }
            : { replaces: { value: was.value, unit: '' } }),
        });
        room.note({
          ...low,
          stage: 'refine',
          rule: ranges.name,
          outcome: 'dropped',
          why: 'the old value of a change',
        });
      } else {
        out.push(low);
        continue;
      }
      index++;
    }
    return out;
  },
};
