/** Words for what is being rebuilt as a whole: the boat, the bus, the barn that parts are parts of. */
import { kindsOf } from '../lexicon/trade-nouns.ts';

const BUILDINGS: ReadonlySet<string> = new Set(
  `barn house cottage cabin chapel church hangar shed studio workshop mill greenhouse farmhouse boathouse schoolhouse
  bungalow lodge hut garage outbuilding stable forge smithy foundry loft attic tower windmill watermill croft shack
  bothy conservatory sauna`.split(/\s+/),
);

const known = new Map<string, boolean>();

/** Whether a word, in the singular, names a whole that is built or rebuilt: a vessel, a vehicle, a building. */
export function isWhole(word: string): boolean {
  let found = known.get(word);
  if (found === undefined) {
    found = BUILDINGS.has(word) || kindsOf([word]).has('vessel');
    if (known.size < 5000) known.set(word, found);
  }
  return found;
}
