import type { Amount, Refiner, Room } from '../rules/rule.ts';
import { wordAt } from '../rules/rule.ts';
import { SIZE_AFTER } from '../rules/size-words.ts';

const WHO =
  /^(?:i|he|she|we|you|they|who|me|wife|husband|brother|sister|dad|mum|mom|son|daughter|mate|neighbour|neighbor|kid|girlfriend|boyfriend|partner|aunt|auntie|uncle|cousin|niece|nephew|mother|father|grandad|granddad|granddaddy|grandma|nan|gran|lad|girl|boy|missus|sister-in-law|dog)$/;
const BE = /^(?:'m|am|being|'s|is|was|'re|are|turned|turning|turns|weigh|weighs|weighed)$/;

/** Words behind a number that make it a distance or a shortfall of the work: "I'm 40 mil short". */
const OF_THE_WORK =
  /^(?:short|longer|shorter|wider|narrower|taller|lower|higher|deeper|heavier|lighter|thicker|thinner|bigger|smaller|off|out|over|under|away|shy|down|up|above|below|into|from|too|proud|past|inside|on)$/;

/** Words that may stand between the person and the number: "I'm about five eleven". */
const BETWEEN =
  /^(?:about|already|only|just|around|nearly|almost|,|like|what|er|um|over|under|exactly|still|now|barely|not|no|a)$/;

/** "my son at fifteen is already one eighty three", "the boy at nineteen": how old somebody is. */
function atAnAge(room: Room, amount: Amount): boolean {
  const young =
    Number.isInteger(amount.value) && amount.value <= 99 && !amount.unit && !amount.number.fraction;
  return young && wordAt(room, amount.from - 1) === 'at' && KIN.test(wordAt(room, amount.from - 2));
}
const TRADES =
  /^(?:\p{L}{2,}(?:wright|smith|man|woman|master)|lady|fella|fellow|chap|bloke|guy|builder|joiner|surveyor|mason|carpenter|plumber|electrician|apprentice|engineer|everybody|anybody|anyone|everyone|people|folk|folks)$/u;

/** "A wheelwright of thirty one", "which at sixty is not what it was", "everybody over seventy": how old. */
function ofAnAge(room: Room, amount: Amount): boolean {
  const { value, unit, number } = amount;
  if (unit || number.fraction || number.decimals || value < 12 || value > 99) return false;
  const [first, second] = [1, 2].map((back) => wordAt(room, amount.from - back));
  if (
    first === 'at' &&
    /^(?:which|who)$/.test(second ?? '') &&
    /^(?:is|isn't|was)$/.test(wordAt(room, amount.to))
  )
    return true;
  return (
    /^(?:of|over|under|about)$/.test(first ?? '') &&
    TRADES.test(second ?? '') &&
    /^(?:|[.,;!?]|and|or|who)$/.test(wordAt(room, amount.to))
  );
}
const KIN =
  /^(?:wife|husband|brother|sister|dad|mum|mom|son|daughter|kid|girlfriend|boyfriend|aunt|auntie|uncle|cousin|niece|nephew|mother|father|grandad|granddad|grandma|nan|gran|lad|girl|boy|child)$/;

function personBefore(room: Room, amount: Amount): boolean {
  // A fraction of an inch is no age and no height of a body: "she's thirty three and a quarter".
  if (amount.number.fraction && (amount.number.denominator ?? 0) >= 4 && !amount.unit) return false;
  let at = amount.from - 1;
  for (let steps = 0; steps < 3 && BETWEEN.test(wordAt(room, at)); steps++) at--;
  if (!BE.test(wordAt(room, at))) return false;
  const who = wordAt(room, at - 1);
  return WHO.test(who) && !(who === 'they' && /^(?:'re|are)$/.test(wordAt(room, at)));
}

/** Sizes that people come in: "she's eleven metres" is a boat. */
function bodily({ unit, value, dimension }: Amount): boolean {
  if (unit === 'm') return value >= 0.8 && value <= 2.2;
  if (unit === 'cm') return value >= 80 && value <= 220;
  if (unit === 'ft') return value >= 3 && value <= 7;
  if (unit === 'in') return value >= 36 && value <= 84;
  if (dimension === 'mass' || unit === 'pounds') return value <= 400;
  // "five eleven" is feet and inches.
  const feet = value >= 400 && value < 700 && value % 100 < 12;
  return value <= 250 || feet;
}

const pluralPerson = /^(?:we|you|they)$/;

/** "I'm six foot two", "I'm 34", "he's five eleven", "I'll be eighty": people, not the build. */
export const people: Refiner = {
  name: 'a person, not the build',
  refine(amounts, room) {
    return amounts.filter((amount) => {
      const why = personal(room, amount);
      if (!why) return true;
      room.note({ ...amount, stage: 'refine', rule: people.name, outcome: 'dropped', why });
      return false;
    });
  },
};

function personal(room: Room, amount: Amount): string | undefined {
  if (/^(?:year|month)$/.test(amount.unit ?? '')) return 'years and months are no working times';
  const after = wordAt(room, amount.to);
  if (after === 'old' || (after === '-' && wordAt(room, amount.to + 1) === 'old')) return 'an age';
  if (atAnAge(room, amount) || ofAnAge(room, amount)) return 'an age';
  if (!personBefore(room, amount) || OF_THE_WORK.test(after)) return undefined;
  if (SIZE_AFTER.startingAt(room.tokens, amount.to) && after !== 'tall') return undefined;
  const length =
    !amount.unit ||
    amount.unit === 'in' ||
    amount.unit === 'ft' ||
    amount.unit === 'm' ||
    amount.unit === 'cm';
  const mass = amount.dimension === 'mass' || amount.unit === 'pounds';
  const who = wordAt(room, amount.from - 2);
  if (!length && !mass) return undefined;
  if (!bodily(amount)) return undefined;
  return pluralPerson.test(who) && !amount.unit ? undefined : "a person's age, height or weight";
}

/** "when I'm eighty" and "I'll be forty" are ages too. */
export const ages: Refiner = {
  name: 'an age to come',
  refine(amounts, room) {
    return amounts.filter((amount) => {
      const be =
        wordAt(room, amount.from - 1) === 'be' && /^(?:'ll|will)$/.test(wordAt(room, amount.from - 2));
      const turn = /^(?:turn|turned|turns|turning)$/.test(wordAt(room, amount.from - 1));
      const who = wordAt(room, amount.from - (be ? 3 : 2));
      const age = !amount.unit && Number.isInteger(amount.value) && amount.value < 110;
      if (!age || !(be || turn) || !/^(?:i|he|we)$/.test(who)) return true;
      room.note({ ...amount, stage: 'refine', rule: ages.name, outcome: 'dropped', why: 'an age' });
      return false;
    });
  },
};
