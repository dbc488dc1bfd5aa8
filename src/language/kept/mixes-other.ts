/** "Mixed feelings", "mixed the two cables up", "mixed his own": words of mixing that tell of no batch of ours. */
import { phraseAt, wordAt } from '../items/parse.ts';
import { isProduct, PORTIONS } from '../lexicon/batch-products.ts';
import { singular } from '../lexicon/trade-nouns.ts';
import type { RecordScene } from './scene.ts';

/** Whether what stands right after the verb of mixing is no product and no part of one. */
export function mixesOther({ parse }: RecordScene, verb: number): boolean {
  const at = /^(?:up|out)$/.test(wordAt(parse, verb + 1)) ? verb + 2 : verb + 1;
  const object = phraseAt(parse, at);
  if (!object || object.first !== at || object.pronoun !== undefined || object.quantity !== undefined)
    return false;
  const head = singular(object.head);
  return (
    !isProduct(object.name) &&
    !PORTIONS.has(head) &&
    !/^(?:part|bit|bucketful|material)$/.test(head) &&
    !object.kinds.has('material')
  );
}

/** "Tom mixed his own epoxy": a batch of somebody else's. */
export const mixesTheirOwn = ({ parse }: RecordScene, verb: number): boolean =>
  [1, 2].some(
    (step) =>
      /^(?:his|her|their)$/.test(wordAt(parse, verb + step)) && wordAt(parse, verb + step + 1) === 'own',
  );
