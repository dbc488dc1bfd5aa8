/** Sizes said before of a thing that the sentence names: what its bare numbers are told in. */
import { singular } from '../../lexicon/trade-nouns.ts';
import type { Amount, Room } from '../../rules/rule.ts';

/** Two sizes of one kind: a plating of 4 and of 3.2, and no plating of 3.2 metres. */
const ALIKE = 2;

/** Whether a thing of the sentence is known by a like number of millimetres: "ultrasound says 3.2 on the plating". */
export function knownInMillimetres(room: Room, amount: Amount): boolean {
  const known = (room.context.knownFigures ?? []).filter(
    ({ unit, value }) => unit === 'mm' && value / amount.value <= ALIKE && amount.value / value <= ALIKE,
  );
  if (known.length === 0) return false;
  const sentence = room.tokens[amount.from]?.sentence;
  const words = new Set<string>();
  for (let at = amount.from - 1; room.tokens[at]?.sentence === sentence && at >= amount.from - 16; at--)
    words.add(singular(room.tokens[at]?.word ?? ''));
  for (let at = amount.to; room.tokens[at]?.sentence === sentence && at < amount.to + 8; at++)
    words.add(singular(room.tokens[at]?.word ?? ''));
  return known.some(({ item }) => words.has(singular(item.split(' ').at(-1) ?? '')));
}
