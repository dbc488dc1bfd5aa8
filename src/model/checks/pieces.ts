/** Weights that were said of one of several: "four batteries at 26 kilos each" weigh four times that. */
import type { ClaimRow, ModelReader, StandingRow } from '../rows.ts';
import { slotOf } from '../rows.ts';

/** How many pieces a weight stands for: a number, or the figure that counts them; `unsaid` where nobody said. */
export type Pieces = { readonly kind: 'counted'; readonly factor: string } | { readonly kind: 'unsaid' };

type Reader = Pick<ModelReader, 'claim' | 'claimsOf' | 'standing'>;

/** How many pieces the weight in a row stands for; undefined where it is that of the whole, or of one thing. */
export function piecesOf(reader: Reader, row: StandingRow): Pieces | undefined {
  const claim = row.claimId === undefined ? undefined : reader.claim(row.claimId);
  const told = claim?.each ? withCount(reader, claim) : claim && toldBefore(reader, claim);
  // Said of them all together.
  if (!told?.each || told.each.count === 1 || told.each.per !== undefined) return undefined;
  const counted = reader.standing(slotOf(row.itemId, 'count', 'count'));
  // A count that was said later than the weight is how many there are now.
  if (counted) return { kind: 'counted', factor: `[${counted.slot}]` };
  const { count } = told.each;
  return count === undefined ? { kind: 'unsaid' } : { kind: 'counted', factor: String(count) };
}

/** "Cabinets came in at 55 each" after "four cabinets at 45 each": there are still four. */
function withCount(reader: Reader, claim: ClaimRow): ClaimRow {
  if (claim.each?.count !== undefined || claim.each?.per !== undefined) return claim;
  const before = reader
    .claimsOf(claim.itemId)
    .findLast(({ slot, id, each }) => slot === claim.slot && id !== claim.id && each?.count !== undefined);
  return before ?? claim;
}

/** "A battery is 27 kilos" after "four at 26 each": nearer to the weight of one than to that of them all. */
function toldBefore(reader: Reader, { id, itemId, slot, value, unit }: ClaimRow): ClaimRow | undefined {
  const before = reader
    .claimsOf(itemId)
    .filter((one) => one.slot === slot && one.id !== id)
    .findLast(({ each }) => each !== undefined);
  const count = before?.each?.count;
  if (!before || count === undefined || before.unit !== unit) return undefined;
  const [ofOne, ofAll] = [before.value, before.value * count].map((one) => Math.abs(Math.log(value / one)));
  return (ofOne ?? 0) < (ofAll ?? 0) ? before : undefined;
}
