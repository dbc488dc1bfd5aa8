import { readNumber } from '../numbers/read-number.ts';
import { MONEY_SIGNS } from '../units/unit-table.ts';
import { wordTable } from '../word-table.ts';
import type { AmountRule, Room } from './rule.ts';
import { amountOf, wordAt } from './rule.ts';

/** "£31.50", "$640", "€ 20". */
export const moneySigns: AmountRule = {
  name: '<money sign> <number>',
  read(room, at) {
    const key = MONEY_SIGNS.get(room.tokens[at]?.text ?? '');
    const number = key && readNumber(room.tokens, at + 1, room.decimalComma);
    if (!key || !number) return undefined;
    const span = { from: at, to: number.to };
    return { amount: amountOf(this.name, number, span, number.value, { key, dimension: 'money' }) };
  },
};

/** "R4,200", "R450" in South Africa: the letter touches its number. */
export const rands: AmountRule = {
  name: 'R<number>',
  read(room, at) {
    const [token, ...rest] = room.tokens.slice(at, at + 5);
    if (room.region !== 'ZA' || !token || !/^R\d+$/.test(token.text)) return undefined;
    let digits = token.text.slice(1);
    let to = at + 1;
    for (const [comma, part] of [rest.slice(0, 2), rest.slice(2, 4)]) {
      if (comma?.word !== ',' || comma.spaced || !/^\d{3}$/.test(part?.text ?? '') || part?.spaced) break;
      digits += part?.text ?? '';
      to += 2;
    }
    const number = { from: at, to, value: Number(digits), form: 'digits' as const };
    return {
      amount: amountOf(this.name, number, { from: at, to }, number.value, { key: 'ZAR', dimension: 'money' }),
    };
  },
};

const WORTH = wordTable<number>({ tenner: 10, tenners: 10, fiver: 5, fivers: 5 });

/** "a tenner", "two fivers": notes by their name. */
export const notesByName: AmountRule = {
  name: 'a tenner',
  read(room, at) {
    const before = /^(?:a|an)$/.test(wordAt(room, at)) ? undefined : readNumber(room.tokens, at);
    const named = /^(?:tenner|fiver)s?$/.test(wordAt(room, at));
    const noun = named ? at : (before?.to ?? at + 1);
    const worth = WORTH[wordAt(room, noun)];
    if (!worth || !Number.isInteger(before?.value ?? 1)) return undefined;
    const number = { from: at, to: noun, value: named ? 1 : (before?.value ?? 1), form: 'words' as const };
    const key = localMoney(room.region);
    const span = { from: at, to: noun + 1 };
    return { amount: amountOf(this.name, number, span, number.value * worth, { key, dimension: 'money' }) };
  },
};

/** "two grand four hundred": what is left over a whole number of thousands. */
function overThousands(room: Room, at: number): { readonly to: number; readonly value: number } | undefined {
  const rest = readNumber(room.tokens, at);
  if (!rest || rest.fraction || rest.decimals || rest.value < 10 || rest.value >= 1000) return undefined;
  return /^(?:|[.,;:!?]|for|and|but|so|all|plus|on|to|with|in|delivered|cash|the|it|that|i|he|she)$/.test(
    wordAt(room, rest.to),
  )
    ? rest
    : undefined;
}

/** "three grand", "two grand four hundred": thousands of the money of the region. */
export const grand: AmountRule = {
  name: '<number> grand',
  atNumber: true,
  read(room, at) {
    const article = wordAt(room, at) === 'a';
    if (article && wordAt(room, at + 1) !== 'grand') return undefined;
    const number = article
      ? { from: at, to: at + 1, value: 1, form: 'words' as const }
      : readNumber(room.tokens, at);
    if (!number || wordAt(room, number.to) !== 'grand') return undefined;
    const key = localMoney(room.region);
    const rest = overThousands(room, number.to + 1);
    const span = { from: at, to: rest?.to ?? number.to + 1 };
    const value = number.value * 1000 + (rest?.value ?? 0);
    return { amount: amountOf(this.name, number, span, value, { key, dimension: 'money' }) };
  },
};

const EURO = new Set('AT BE DE EE ES FI FR GR HR IE IT LT LU LV MT NL PT SI SK CY'.split(' '));
const MONEY: Readonly<Record<string, string>> = {
  GB: 'GBP',
  US: 'USD',
  AU: 'AUD',
  NZ: 'NZD',
  CA: 'CAD',
  SE: 'SEK',
  NO: 'NOK',
  DK: 'DKK',
  CH: 'CHF',
  PL: 'PLN',
  CZ: 'CZK',
  JP: 'JPY',
  ZA: 'ZAR',
  SG: 'SGD',
  HK: 'HKD',
  IN: 'INR',
  KE: 'KES',
  UG: 'UGX',
  TZ: 'TZS',
  MX: 'MXN',
  BR: 'BRL',
  HU: 'HUF',
  RO: 'RON',
  TR: 'TRY',
  IS: 'ISK',
  MY: 'MYR',
  TH: 'THB',
  NG: 'NGN',
  GH: 'GHS',
  PH: 'PHP',
};

/** Currency code of a region (ISO 4217); US dollars where the region is unknown. */
export function localMoney(region: string): string {
  return EURO.has(region) ? 'EUR' : (MONEY[region] ?? 'USD');
}

/** What a plain "dollar" is there. */
export function localDollar(region: string): string {
  const money = localMoney(region);
  return money.endsWith('D') ? money : 'USD';
}
