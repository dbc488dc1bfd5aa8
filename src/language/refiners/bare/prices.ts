/** Bare numbers that are money: what was asked, given, paid, and what goods are priced by. */
import { each, PhraseTable } from '../../phrases.ts';
import { localMoney } from '../../rules/money.ts';
import { type Amount, type Room, tidy, wordAt } from '../../rules/rule.ts';
import { PRICED_BY } from './evidence.ts';
import type { Meaning } from './lengths.ts';
import { sizedAfter } from './sized-after.ts';

const DEALS = new PhraseTable<true>(
  each(
    true,
    'he asked, she asked, they asked, he wants, asking, i offered, i gave him, i gave her, i gave them, gave him, gave her, gave them, beat him down to, beat her down to, beat them down to, knocked him down to, knocked it down to, talked him down to, haggled it down to, got it for, got them for, had it for, let it go for, let them go for, went for, i owe him, i owe her',
  ),
);

/** "He asked 90, I gave him 70.": what two people settle on. */
function asDeal(room: Room, amount: Amount): Meaning | undefined {
  if (amount.value < 3 || amount.number.fraction || !DEALS.endingAt(room.tokens, amount.from))
    return undefined;
  if (!/^(?:|[.,;:!?]|for|and|but|so|i|he|she|they|we|all|cash)$/.test(wordAt(room, amount.to)))
    return undefined;
  return {
    value: amount.value,
    unit: localMoney(room.region),
    dimension: 'money',
    why: 'what was asked or given',
  };
}

const COST = /^(?:cost|costs|costing|spent|spend|spending|bill|invoice|damage|priced|pricing|quoted)$/;
const BOUGHT_FOR =
  /^(?:quote|quotes|estimate|bought|paid|cost|costs|priced|charged|charges|quoted|bill|invoice|spent)$/;
const WHOLE_SUM = new PhraseTable<true>(
  each(true, 'all told, altogether, in total, in all, all in, the lot, for the lot, all up'),
);

/** "He asked what it's costing. Three eighty on oak.", "bought and paid for, 2,180 all in": money told of a deal. */
function asCost(room: Room, amount: Amount): boolean {
  if (amount.value < 5 || amount.number.fraction || amount.group) return false;
  const sentence = room.tokens[amount.from]?.sentence ?? 0;
  const opens = room.tokens[amount.from - 1]?.sentence !== sentence;
  if (opens && !sizedAfter(room, amount)) {
    for (let at = amount.from - 1; room.tokens[at]?.sentence === sentence - 1 && at > amount.from - 9; at--)
      if (COST.test(wordAt(room, at))) return true;
  }
  return asWholeSum(room, amount);
}

/** "Bought and paid for, 2,180 all in", "three lengths bought, 21,000 altogether". */
function asWholeSum(room: Room, amount: Amount): boolean {
  const sentence = room.tokens[amount.from]?.sentence;
  if (
    amount.group ||
    amount.number.fraction ||
    amount.value < 20 ||
    !WHOLE_SUM.startingAt(room.tokens, amount.to)
  )
    return false;
  for (let at = amount.from - 1; room.tokens[at]?.sentence === sentence && at > amount.from - 14; at--)
    if (BOUGHT_FOR.test(wordAt(room, at))) return true;
  return false;
}

/** The price of all that was bought, wherever the number stands. */
export function asPaidInAll(room: Room, amount: Amount): Meaning | undefined {
  if (!asWholeSum(room, amount) && !withCarriage(room, amount)) return undefined;
  return {
    value: amount.value,
    unit: localMoney(room.region),
    dimension: 'money',
    why: 'what was paid in all',
  };
}

const CARRIAGE = /^(?:delivery|carriage|postage|shipping|haulage|tax|vat|gst)$/;
const WITH = /^(?:with|plus|including|inc|incl|before|after)$/;

/** "It came in at a hundred and forty with the delivery", "three eighty plus carriage". */
function withCarriage(room: Room, { value, number, group, to }: Amount): boolean {
  if (value < 5 || number.fraction || group || !WITH.test(wordAt(room, to))) return false;
  const at = /^(?:the|a)$/.test(wordAt(room, to + 1)) ? to + 2 : to + 1;
  return CARRIAGE.test(wordAt(room, at));
}

export function asPrice(room: Room, amount: Amount): Meaning | undefined {
  const deal = asDeal(room, amount);
  if (deal) return deal;
  if (asCost(room, amount))
    return {
      value: amount.value,
      unit: localMoney(room.region),
      dimension: 'money',
      why: 'what was asked or paid',
    };
  if (amount.number.fraction || !(PRICED_BY.startingAt(room.tokens, amount.to) || pricedApiece(room, amount)))
    return undefined;
  const why = 'what goods are priced by';
  return { value: inCoins(room, amount), unit: localMoney(room.region), dimension: 'money', why };
}

/** "Eleven fifty apiece", "the brackets were 4.20 apiece": said in coins too, where a size would be one number. */
const pricedApiece = (room: Room, { to, number }: Amount): boolean =>
  wordAt(room, to) === 'apiece' && (number.splitAfter === 2 || number.decimals === 2);

/** Goods that are bought one by one or by so much cost tens, where a day's work or a load may cost a thousand. */
const BY_THE_PIECE =
  /^(?:apiece|piece|bag|yard|tin|box|roll|bottle|length|board|plank|metre|meter|foot|litre|kilo|pop)$/;

/** Money of which a bracket costs tens; in Kenya or India it costs a thousand. */
const IN_COINS = /^(?:GBP|EUR|USD|AUD|NZD|CAD|CHF|SGD)$/;

/** "Eleven fifty a piece" is eleven and fifty hundredths of the money. */
function inCoins(room: Room, { value, number, to }: Amount): number {
  const isSplit = number.splitAfter === 2 && value >= 1000 && value < 10_000 && number.form === 'words';
  const by = /^(?:a|per|the)$/.test(wordAt(room, to)) ? wordAt(room, to + 1) : wordAt(room, to);
  return isSplit && BY_THE_PIECE.test(by) && IN_COINS.test(localMoney(room.region))
    ? tidy(value / 100)
    : value;
}
