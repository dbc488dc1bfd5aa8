import type { Amount, Refiner, Room } from '../rules/rule.ts';
import { wordAt } from '../rules/rule.ts';
import { EACH_AFTER, SIZE_AFTER } from '../rules/size-words.ts';
import { isSetAgainst } from './bare/asked-and-had.ts';
import { SHEET_STUFF } from './bare/evidence.ts';

/** Words in -s that count nothing. */
const NO_PLURAL =
  /^(?:across|is|was|has|plus|minus|this|thus|as|less|its|us|yes|does|goes|always|towards|afterwards|upwards|perhaps|inches|centres|centers|comes|gets|makes|gives|looks|wants|needs|works|sits|takes|leaves|means|says|puts|lets|seems|feels|stays|stands|runs|brass|glass|gross|bass|truss|ours|theirs|yours|hers|sideways|lengthways|besides|sometimes|cos|wins|fits|suits|does|ends|starts|stops|matches|clears|straddles|allows|includes|sounds|beats|plus|minus|covers|drops|goes|does|downstairs|upstairs|indoors|outdoors|overhangs|afters)$/;
const ODD_PLURALS =
  /^(?:people|men|women|teeth|children|mice|geese|halves|shelves|leaves|knives|folk|staff|sheep|more|others|left|spare|pieces|off|lots|kids|mates|guys|ones)$/;
/** Adjectives that may stand before the thing counted. */
const ADJECTIVE =
  /^(?:new|old|more|other|extra|different|good|bad|spare|big|small|little|whole|full|empty|separate|loose|odd|fresh|long|short|wide|thin|thick|flat|heavy|light|stainless|steel|brass|wooden|oak|pine|ply|plywood|black|white|red|green|blue|grey|gray|bare|broken|cracked|rotten|rusty|lovely|lousy|bloody|damn|tiny|great|last|first|final|outside|inside|bottom|top|barrow|bent|dead|solid|wet|dry|cut|half|massive|decent|round|finished|sawn|planed|painted|split|glued|square|curved|straight)$/;
const OF_THEM = /^(?:them|em|'em|these|those|us|you)$/;

const TAKES_OFF =
  /^(?:another|take|takes|took|taking|needs|need|wants|want|plane|planed|planing|shave|shaved|trim|trimmed|cut|saw|sand|sanded|mill|milled|skim|skimmed|get|got)$/;

const SIZE_ADJECTIVE = /^(?:long|wide|deep|thick|tall|high|short|narrow|round|square|finished)$/;

/** More things than this are seldom told with their size; a bigger number is the size. */
const MOST_SIZED = 24;

/** "two long sill logs", "three deep drawers": the size is told of the things that are counted. */
function sizedThings(room: Room, amount: Amount): boolean {
  if (amount.value > MOST_SIZED || !SIZE_ADJECTIVE.test(wordAt(room, amount.to))) return false;
  return (
    isPlural(room, amount.to + 1) ||
    (isPlural(room, amount.to + 2) && /^\p{L}{3,}$/u.test(wordAt(room, amount.to + 1)))
  );
}

/** "there's eighteen to be bent in", "I've 64 and I want seventy": things that were counted go on being counted. */
function goesOnCounting(room: Room, amount: Amount, before: Amount | undefined): boolean {
  const toDo = wordAt(room, amount.to) === 'to' && wordAt(room, amount.to + 1) === 'be';
  if (toDo && /^(?:there|there's|'s|'re|are|left|another|have|'ve|got)$/.test(wordAt(room, amount.from - 1)))
    return true;
  if (before?.role !== 'count' || !/^(?:|[.,;!?]|so)$/.test(wordAt(room, amount.to))) return false;
  if (room.tokens[before.from]?.sentence !== room.tokens[amount.from]?.sentence) return false;
  const wants =
    /^(?:want|wants|need|needs|wanted|needed)$/.test(wordAt(room, amount.from - 1)) ||
    (wordAt(room, amount.from - 1) === 'been' && wordAt(room, amount.from - 2) === 'have');
  return wants && amount.value / before.value < 3 && before.value / amount.value < 3;
}

function countsThings(room: Room, amount: Amount): string | undefined {
  const word = wordAt(room, amount.to);
  if (sizedThings(room, amount)) return 'a number of things of a size';
  // "It carries 750 tops": at the most.
  if (word === 'tops' && /^(?:|[.,;:!?]|and|but|so)$/.test(wordAt(room, amount.to + 1))) return undefined;
  if (word === 'of' && OF_THEM.test(wordAt(room, amount.to + 1))) return 'so many of them';
  if (SIZE_AFTER.startingAt(room.tokens, amount.to) || EACH_AFTER.startingAt(room.tokens, amount.to))
    return undefined;
  // "She needs another fifteen off": so much is taken away.
  if (word === 'off' && TAKES_OFF.test(wordAt(room, amount.from - 1))) return undefined;
  // "a 22 feeding cylinders": an article before the number makes it a size.
  if (/^an?$/.test(wordAt(room, amount.from - 1))) return undefined;
  // "There's forty left above the door": room is left at a place, and nothing is counted.
  if (
    amount.value >= 10 &&
    /^(?:left|spare)$/.test(word) &&
    /^(?:above|below|behind|beneath|underneath|beside|between|either|each|both)$/.test(
      wordAt(room, amount.to + 1),
    )
  )
    return undefined;
  const next = ADJECTIVE.test(word) ? amount.to + 1 : amount.to;
  const second = ADJECTIVE.test(word) && ADJECTIVE.test(wordAt(room, next)) ? next + 1 : next;
  const noun = wordAt(room, second);
  if (isPlural(room, second)) return `a number of ${noun}`;
  if (word === 'to' && /^(?:go|do)$/.test(wordAt(room, amount.to + 1))) return 'so many to go';
  if (/^(?:odd|or)$/.test(word) && isPlural(room, amount.to + (word === 'or' ? 2 : 1)))
    return 'so many things';
  // "joists, nine hundred odd": without a unit "odd" counts.
  if (word === 'odd' && /^[,.;]?$/.test(wordAt(room, amount.to + 1))) return 'so many, roughly';
  // "three barrow loads", "five fence posts": a noun before the plural.
  const noun2 = wordAt(room, amount.to + 1);
  const small =
    amount.value <= 24 &&
    /^\p{L}{3,}$/u.test(noun) &&
    !/^(?:and|but|the|for|with|from|then|that|are|were|not|off|out|per)$/.test(noun);
  if (small && isPlural(room, amount.to + 1) && !/'/.test(noun2)) return `a number of ${noun} ${noun2}`;
  return undefined;
}

function isPlural(room: Room, at: number): boolean {
  const word = wordAt(room, at);
  if (room.tokens[at]?.kind !== 'word') return false;
  // "225 off any ply" is a distance, "twelve off" a number of things.
  if (word === 'off' && /^(?:the|a|an|any|my|its|it|that|this|each|both|one)$/.test(wordAt(room, at + 1)))
    return false;
  // "twenty more." and "twenty more than" compare.
  if (word === 'more' && /^(?:|[.,;]|than|then)$/.test(wordAt(room, at + 1))) return false;
  if (ODD_PLURALS.test(word)) return true;
  return /^\p{L}{2,}[^s'’\W]s$/u.test(word) && !NO_PLURAL.test(word);
}

/** "I counted the panes, it's 61". */
function counted(room: Room, amount: Amount): boolean {
  const sentence = room.tokens[amount.from]?.sentence;
  // "I counted the tiles. A hundred and four.": told in the sentence behind it.
  const opens =
    room.tokens[amount.from - 1]?.sentence !== sentence && /^(?:|[.,!?])$/.test(wordAt(room, amount.to));
  const within = opens ? (sentence ?? 0) - 1 : sentence;
  return [1, 2, 3, 4, 5, 6].some((back) => {
    const token = room.tokens[amount.from - back];
    return token?.sentence === within && /^(?:counted|counting|headcount)$/.test(token?.word ?? '');
  });
}

/** "Two 200 amp hour batteries", "six 90 mm screws", "four 90 by 45 rails": how many of the size that follows. */
const isBeforeSize = (amount: Amount, next: Amount | undefined): boolean =>
  next !== undefined &&
  (next.unit !== undefined || next.group?.position === 0) &&
  next.from === amount.to &&
  amount.value >= 2 &&
  amount.value <= (!next.unit || next.unit === 'mil' || next.dimension === 'length' ? MOST_OF_SIZE : 24);
const MOST_OF_SIZE = 500;

/** "Two eighteen ply sheets": how many sheets of the gauge that follows without its unit. */
const isBeforeGauge = (room: Room, amount: Amount, next: Amount | undefined): boolean =>
  next !== undefined &&
  !next.unit &&
  next.from === amount.to &&
  next.number.form === 'words' &&
  amount.value >= 2 &&
  amount.value < 10 &&
  SHEET_STUFF.test(wordAt(room, next.to));

const HAVE = /^(?:'ve|have|has|had|got|there|there's|'s|are|only)$/;

/** More are seldom counted as they go up: forty in is a measure. */
const MOST_PLACED = 30;

/** "I've got two", "there's four", said at the end of a sentence: so many of something named before. */
function leftOpen(room: Room, amount: Amount): boolean {
  if (amount.value > MOST_PLACED || !Number.isInteger(amount.value)) return false;
  // "I've got fourteen up and there's four to go": so many are in their place.
  const isPlaced =
    /^(?:up|in|down|done|to)$/.test(wordAt(room, amount.to)) &&
    /^(?:|[.,;!?]|and|so|but|go|do)$/.test(wordAt(room, amount.to + 1));
  if (amount.value > 12 && !isPlaced) return false;
  const last = wordAt(room, amount.from - 1);
  const before = wordAt(room, amount.from - 2);
  const have = /^(?:got|have|'ve|has|had)$/.test(last) || (HAVE.test(last) && before === 'there');
  return have && (isPlaced || /^[.,;!?]?$/.test(wordAt(room, amount.to)));
}

/** "Balusters, I need thirty one": the things stand first, and how many of them is wanted or had. */
function countsNamedFirst(room: Room, amount: Amount): boolean {
  let at = amount.from - 1;
  if (!/^(?:need|want|have|had|got|counted|bought|ordered|make)$/.test(wordAt(room, at--))) return false;
  while (/^(?:'ve|have|'d|'ll|still|only|just|will)$/.test(wordAt(room, at))) at--;
  if (!/^(?:i|we)$/.test(wordAt(room, at)) || wordAt(room, at - 1) !== ',') return false;
  const sentence = room.tokens[at]?.sentence;
  const opens = [3, 4, 5].some((back) => room.tokens[at - back]?.sentence !== sentence);
  return opens && isPlural(room, at - 2) && /^[,.;!?]?$/.test(wordAt(room, amount.to));
}

/** "Order more washers, I'm six short": so many are missing. */
const isShortOf = (room: Room, amount: Amount): boolean =>
  amount.value <= 24 &&
  wordAt(room, amount.to) === 'short' &&
  /^(?:'m|am|'re|are)$/.test(wordAt(room, amount.from - 1)) &&
  /^(?:i|we)$/.test(wordAt(room, amount.from - 2));

/** "five jobs", "nine of them", "sixty odd nails": how many, not how much. */
export const counts: Refiner = {
  name: 'a count of things',
  refine(amounts, room) {
    let last: Amount | undefined;
    const read = (amount: Amount, next: Amount | undefined): Amount => {
      // "Two eighteen ply sheets": the gauge of those that were counted.
      if (last?.role === 'count' && last.to === amount.from && SHEET_STUFF.test(wordAt(room, amount.to)))
        return amount;
      if (amount.unit || amount.group || !Number.isInteger(amount.value) || amount.number.fraction)
        return amount;
      // "It wants 14 metres, the yard's only got 12": of that measure, and no number of things.
      const isMeasured = last !== undefined && isSetAgainst(room, amount, last);
      const why =
        countsThings(room, amount) ??
        (isBeforeSize(amount, next) || isBeforeGauge(room, amount, next)
          ? 'so many of that size'
          : undefined) ??
        ((!isMeasured && leftOpen(room, amount)) ||
        counted(room, amount) ||
        countsNamedFirst(room, amount) ||
        isShortOf(room, amount) ||
        goesOnCounting(room, amount, last)
          ? 'so many of them'
          : undefined);
      if (!why) return amount;
      room.note({ ...amount, stage: 'refine', rule: counts.name, outcome: 'merged', why });
      return { ...amount, role: 'count' as const, unit: '1', dimension: 'count' as const };
    };
    return amounts.map((amount, index) => {
      last = read(amount, amounts[index + 1]);
      return last;
    });
  },
};
