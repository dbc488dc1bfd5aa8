/**
 * Inputs that a standing check takes from other talk where none was said with it: the warmth of the air as it was told
 * last, and the least that the same product takes. What it took is told beside the result.
 */
import type { SpokenInput } from '../../language/notes.ts';
import { LIMIT_MARK } from '../counterpart.ts';
import { secondsBetween } from '../instants.ts';
import { shapeOf, wordsOf } from '../names.ts';
import type { ClaimRow, ModelReader, StandingRow } from '../rows.ts';
import { stemOf } from '../stems.ts';
import type { Check } from './check.ts';
import type { AskedCheck, InputRead } from './check-rows.ts';
import { mayBeSame, productOfCheck } from './products.ts';

/** What the air is told of: itself, or the place that it is in. */
const AIR = new Set(
  `air ambient room shed workshop shop garage barn tent tunnel cabin saloon hull hold bilge van truck bus camper caravan boat house
  attic loft cellar basement kitchen bathroom bedroom hall hallway lounge office studio yard hangar boatshed unit indoors inside site
  greenhouse polytunnel container bothy hut steading byre croft chapel mill outhouse wagon yurt shack lodge cottage
  outbuilding lean-to porch conservatory unnamed weather everything wheelhouse cockpit forepeak`
    .split(/\s+/)
    .map(stemOf),
);
/** Air that is not that of the work. */
const ELSEWHERE = /\b(?:outside|outdoors|forecast|water|sea|fridge|freezer|engine|oven)\b/i;

export interface Assumed {
  readonly inputs: readonly SpokenInput[];
  readonly notes: readonly string[];
  /** Why the air may be another by now; for the input of that name. */
  readonly doubt?: { readonly input: string; readonly why: string };
  /** Whether it goes by the air, also where none was told that may be gone by. */
  readonly takesAir: boolean;
  /** Keys that bring the check up again. */
  readonly watches: readonly string[];
}

type Reader = Pick<ModelReader, 'standingIn' | 'item' | 'claim' | 'claimsOf' | 'checksWatching'>;

/** Air is another every day. */
const KEEPS = 24 * 3600;

/** Inputs that a check of a project takes from elsewhere. `when` is the time that the air is wanted for. */
export function assumedInputs(reader: Reader, check: Check, asked: AskedCheck, when: string): Assumed {
  const wants = (name: string) =>
    check.inputs.some((input) => input.name === name) &&
    !asked.inputs.some(({ input }) => input.trim() === name);
  const name = check.inputs.find(({ ofAir }) => ofAir)?.name ?? 'temperature';
  const [air, least] = [wants(name) ? airOf(reader, when) : undefined, wants('least temperature')];
  const floor = least ? leastOf(reader, productOfCheck(asked)) : undefined;
  const age = air && secondsBetween(air.saidAt, when);
  const isOld = age !== undefined && Math.abs(age) > KEEPS;
  const isNeeded = check.inputs.some((input) => input.name === name && !input.optional);
  const taken = air && (!isOld || isNeeded) ? air : undefined;
  const said = air && `the air as it was told on ${air.saidAt.slice(0, 10)}`;
  return {
    inputs: [
      ...(taken ? [{ input: name, expression: taken.expression }] : []),
      ...(floor ? [{ input: 'least temperature', expression: floor.expression }] : []),
    ],
    notes: [
      ...(taken ? [`${name}: ${said}`] : []),
      ...(air && !taken ? [`${said} is too long ago to go by`] : []),
      ...(floor ? ['least temperature: as it was said of the product'] : []),
    ],
    ...(taken && isOld
      ? {
          doubt: {
            input: name,
            why: `the air was told on ${taken.saidAt.slice(0, 10)}, and may be another by now`,
          },
        }
      : {}),
    takesAir: wants(name),
    watches: [...(wants(name) ? ['*temperature'] : []), ...(least ? ['@least'] : [])],
  };
}

/** Why air that was given with the check may be another by now: it was told on another day. */
export function agedAir(
  check: Check,
  { name, reads }: InputRead,
  when: string | undefined,
): Assumed['doubt'] | undefined {
  if (when === undefined || !check.inputs.some((input) => input.name === name && input.ofAir))
    return undefined;
  const told = reads.find(({ source }) => source && secondsBetween(source.recordedAt, when) > KEEPS)?.source;
  return (
    told && { input: name, why: `it was told on ${told.recordedAt.slice(0, 10)}, and may be another by now` }
  );
}

interface Air {
  readonly expression: string;
  readonly saidAt: string;
}

/** The air as it was told nearest before a time or within a day of it, else as it was told last. */
function airOf(reader: Reader, when: string): Air | undefined {
  return reader
    .standingIn('temperature')
    .flatMap((row): Air[] => {
      const claim = row.claimId === undefined ? undefined : reader.claim(row.claimId);
      const name = reader.item(row.itemId)?.name ?? '';
      const isTold = row.bound === 'exact' || row.bound === 'about' || row.bound === 'between';
      if (!claim || !isTold || row.slot.includes(LIMIT_MARK) || claim.state === 'target' || !isAir(name))
        return [];
      return [airAt(reader, row, claim, when)];
    })
    .sort((a, b) => secondsBetween(b.saidAt, a.saidAt))
    .at(-1);
}

/** Of a series the reading of that day; the one that stands goes by its name, so that its age is shown. */
function airAt(reader: Reader, row: StandingRow, last: ClaimRow, when: string): Air {
  const standing = { expression: `[${row.slot}]`, saidAt: last.source.recordedAt };
  if (Math.abs(secondsBetween(standing.saidAt, when)) <= KEEPS) return standing;
  const ofDay = reader
    .claimsOf(row.itemId)
    .filter(
      (claim) =>
        claim.slot === row.slot &&
        (claim.status === 'series' || claim.status === 'superseded' || claim.status === 'standing') &&
        Math.abs(secondsBetween(claim.source.recordedAt, when)) <= KEEPS,
    )
    .at(-1);
  return ofDay ? { expression: `${ofDay.value} ${ofDay.unit}`, saidAt: ofDay.source.recordedAt } : standing;
}

function isAir(name: string): boolean {
  if (ELSEWHERE.test(name)) return false;
  const words = wordsOf(name);
  return (
    AIR.has(shapeOf(name).head) ||
    (words[0] === 'in' && words.some((word) => AIR.has(stemOf(word)))) ||
    words[0] === 'air'
  );
}

/** The least that a product takes, by a check of its temperature that stands. */
function leastOf(reader: Reader, product: string | undefined): SpokenInput | undefined {
  const rows = reader.checksWatching(['=product temperature']);
  // Of two products nobody knows which one is meant without a name.
  if (product === undefined && rows.length > 1) return undefined;
  return rows
    .filter((row) => mayBeSame(product ?? '', productOfCheck(row) ?? ''))
    .flatMap(({ inputs }) => inputs.find(({ input }) => input === 'least') ?? [])
    .at(-1);
}
