import { readNumber } from '../numbers/read-number.ts';
import { readUnit } from '../units/read-unit.ts';
import type { AmountRule, Room } from './rule.ts';
import { wordAt } from './rule.ts';

const skip = (to: number, why: string) => ({ skip: { to, why } });

/** Words that number what follows: "part two", "day thirteen", "number eight". */
const NUMBERED = new Set(
  'part parts episode episodes chapter step day phase stage number numbers season series video take week page option plan round lesson junction version mark mk channel gear drawing lot plot model type class grade gauge route attempt lap area zone platform rev revision serial sku bin photo photos photograph picture snap image slide sketch receipt invoice ticket tag'.split(
    ' ',
  ),
);
/** Things that are numbered when a small number stands directly behind them: "frame six", "coat two". */
const NUMBERED_THINGS = new Set(
  'pile pier stump frame bay rib station bulkhead joist rafter stud panel board plank door window room house coat layer row circuit cylinder wall leg post bolt bench job item task unit tank side section pass'.split(
    ' ',
  ),
);
/** Places and marks that go by a number however big: "bridge 114", "lock 42", "RAL 7016". */
const NUMBERED_PLACES = new Set(
  'bridge lock interstate highway motorway freeway exit buoy mooring pontoon berth apartment signal milepost ral iso din sae'.split(
    ' ',
  ),
);
/** Marks that are said to be so: "the paint code's 2041". */
const MARKS = /^(?:code|postcode|pin|serial|reference|ref)$/;
/** Words that a grade number stands before: "80 grit", "12 gauge". */
const GRADE =
  /^(?:grit|gauge|awg|aught|aughts|swg|tpi|mesh|denier|ohm|ohms|meg|megs|megohm|megohms|kilohm|kilohms|lumen|lumens|lux|db|decibel|decibels|tog|thread|threads|tooth|teeth|series)$/;
/** Of these that cannot be a thing as well. */
const GRADE_ALONE = /^(?:grit|awg|swg|tpi|ohm|ohms|lumen|lumens|lux|db|decibel|decibels)$/;
/** Words that make a kind of thing with a small number: "three phase", "two pack". */
const MADE_OF =
  /^(?:phase|pack|part|stroke|way|wheel|wheeled|storey|story|bed|bedroom|speed|pole|gang|core|ply|pin|wire|piece|man|person|sided|legged|burner|leaf|seater|seat|handed|flute|blade|bladed|berth|pane|sided|star|digit|letter|minded|fold)$/;

function follows(room: Room, at: number): number | undefined {
  const number = readNumber(room.tokens, at);
  return number?.to;
}

/** Of a film there are seldom so many takes. */
const LEAST_CARRIED = 20;

/** "part one of", "day thirteen", "episode 9", "frame six", "number eight". */
export const numberedThings: AmountRule = {
  name: 'a numbered thing',
  read(room, at) {
    const word = wordAt(room, at);
    const { tokens } = room;
    if (word === '#' && tokens[at + 1]?.kind === 'number') return skip(at + 2, 'a number after #');
    // "give or take five" is a spread.
    if (word === 'take' && wordAt(room, at - 1) === 'or') return undefined;
    // "The hoist will take 500": what it carries.
    const isCarried = (readNumber(tokens, at + 1)?.value ?? 0) >= LEAST_CARRIED;
    if (word === 'take' && isCarried && /^(?:will|'ll|can|could|may|only|not|to)$/.test(wordAt(room, at - 1)))
      return undefined;
    // "Take ten off the rail": work, and no take of a film.
    if (word === 'take' && /^(?:off|out|from|away)$/.test(wordAt(room, follows(room, at + 1) ?? at)))
      return undefined;
    const marked = MARKS.test(word) && /^(?:'s|is|was|ends)$/.test(wordAt(room, at + 1));
    const always = NUMBERED.has(word) || NUMBERED_PLACES.has(word) || marked;
    if (!always && !NUMBERED_THINGS.has(word)) return undefined;
    // "she's drawing 790" is a deed.
    if (word === 'drawing' && /^(?:'s|is|are|be|was|'re|still|now)$/.test(wordAt(room, at - 1)))
      return undefined;
    const number = readNumber(tokens, marked ? at + 2 : at + 1);
    if (!number || number.fraction || number.decimals || readUnit(tokens, number.to)) return undefined;
    // "the day one sixty five was cut" does not happen; "the frame 905 high" does.
    if (!always && (number.value >= 60 || !Number.isInteger(number.value))) return undefined;
    if (/^(?:wide|high|long|deep|thick|tall|by|x|across)$/.test(wordAt(room, number.to))) return undefined;
    // A bunk is a berth too.
    if (word === 'berth' && number.value >= 200) return undefined;
    return skip(number.to, `"${word}" numbers it`);
  },
};

/** "80 grit", "12 gauge", "three phase", "two pack", "number eight screws". */
export const grades: AmountRule = {
  name: 'a grade or a kind',
  read(room, at) {
    const to = follows(room, at);
    if (to === undefined) return undefined;
    const next = room.tokens[to]?.word === '-' ? to + 1 : to;
    const word = wordAt(room, next);
    // "a two ten gauge" is the spacing of battens; sheet and wire stop at forty.
    const spacing = word === 'gauge' && (readNumber(room.tokens, at)?.value ?? 0) > 50;
    if (isStainless(room, at, to)) return skip(to, 'a grade of stainless steel');
    if (GRADE.test(word) && !spacing) return skip(next + 1, `"${word}" makes it a grade`);
    const number = readNumber(room.tokens, at);
    // "from 62 to 41 decibels": one grade and another.
    const second = /^(?:to|and|or)$/.test(word) ? readNumber(room.tokens, next + 1)?.to : undefined;
    if (second !== undefined && GRADE_ALONE.test(wordAt(room, second)))
      return skip(second + 1, `"${wordAt(room, second)}" makes both a grade`);
    const kind = number && number.value <= 12 && Number.isInteger(number.value) && MADE_OF.test(word);
    return kind ? skip(next + 1, `"${word}" makes it a kind of thing`) : undefined;
  },
};

/** "304 for the screws and 316 for the bolts", "316 stainless": EN 10088 calls them 1.4301 and 1.4401. From memory. */
function isStainless(room: Room, at: number, to: number): boolean {
  if (!/^(?:304|316)$/.test(room.tokens[at]?.text ?? '') || readUnit(room.tokens, to)) return false;
  const sentence = room.tokens[at]?.sentence;
  for (let index = at - 8; index < to + 6; index++) {
    const token = room.tokens[index];
    if (token?.sentence === sentence && /^(?:stainless|grade|inox|a4|a2)$/.test(token?.word ?? ''))
      return true;
  }
  return false;
}

const FASTENER =
  /^(?:screw|screws|bolt|bolts|nail|nails|woodscrew|woodscrews|coach|pin|pins|studding|rawlplug|rawlplugs|plug|plugs)$/;

const NUMBERS_IT = /^(?:number|numbers|no|gauge)$/;

/** Where "by inch and a quarter" or "by an inch" ends: a length that is told without a number before its unit. */
function inchAndPart(room: Room, at: number): number | undefined {
  if (!/^(?:by|x|×)$/.test(wordAt(room, at))) return undefined;
  const from = /^an?$/.test(wordAt(room, at + 1)) ? at + 2 : at + 1;
  if (!/^inch(?:es)?$/.test(wordAt(room, from))) return undefined;
  if (wordAt(room, from + 1) !== 'and') return from + 1;
  const part = /^an?$/.test(wordAt(room, from + 2)) ? from + 3 : from + 2;
  return /^(?:half|quarter|quarters|eighth|eighths|sixteenth|sixteenths)$/.test(wordAt(room, part))
    ? part + 1
    : (readNumber(room.tokens, from + 2)?.to ?? from + 1);
}

/** "M twelve", "M 6 by 30", "5 by 70 screws": names of fasteners. */
export const fastenerNames: AmountRule = {
  name: 'a name of a fastener',
  read(room, at) {
    const word = wordAt(room, at);
    const from = word === 'm' ? at + 1 : at;
    const metricName = /^m\d{1,3}s?$/.test(word);
    const first = metricName ? undefined : readNumber(room.tokens, from);
    if (!first && !metricName) return undefined;
    if (word === 'm' && first && first.value > 64) return undefined;
    const firstTo = first?.to ?? at + 1;
    const second = /^(?:by|x|×)$/.test(wordAt(room, firstTo))
      ? readNumber(room.tokens, firstTo + 1)
      : undefined;
    if (word === 'm' || metricName) {
      const unit = second ? readUnit(room.tokens, second.to) : undefined;
      return skip(unit?.to ?? second?.to ?? firstTo, 'a metric thread and its length');
    }
    const inch = second || (first?.value ?? 99) > 24 ? undefined : inchAndPart(room, firstTo);
    if (inch !== undefined && NUMBERS_IT.test(wordAt(room, at - 1)))
      return skip(inch, 'gauge and length name a screw');
    if (!second || readUnit(room.tokens, firstTo)) return undefined;
    // "Number eight by two inch": wood screws are numbered by their gauge.
    if (NUMBERS_IT.test(wordAt(room, at - 1)) && (first?.value ?? 99) <= 24) {
      return skip(readUnit(room.tokens, second.to)?.to ?? second.to, 'gauge and length name a screw');
    }
    const unit = readUnit(room.tokens, second.to);
    const noun = unit?.to ?? second.to;
    const named = FASTENER.test(wordAt(room, noun)) || FASTENER.test(wordAt(room, noun + 1));
    return named ? skip(noun, 'gauge and length name a fastener') : undefined;
  },
};
