import { actionsOf } from './actions.ts';
import { describe } from './described.ts';
import { wordsOf } from './names.ts';
import { stemOf } from './stems.ts';
import { EMPTY } from './telling-words.ts';

/** What a short line tells of: its things, the ways of doing, and what its first name is a name of. */
export interface Telling {
  readonly plain: ReadonlySet<string>;
  readonly things: ReadonlySet<string>;
  readonly ways: ReadonlySet<string>;
  /** What the first name in it is a name of: the "bolts" of "the hinge bolts". */
  readonly head: string | undefined;
  /** That name as stems: "hing bolt". */
  readonly name: readonly string[];
}

/** Takes a note apart by its gist and its quote. */
export function telling(gist: string, quote: string): Telling {
  const text = `${gist} ${quote}`;
  const plain = wordsOf(text);
  const stems = plain.map(stemOf).filter((stem) => !EMPTY.has(stem));
  const { actions, named } = describe(gist, quote, '');
  const things = new Set(stems.filter((stem) => actionsOf(stem).size === 0 || named.has(stem)));
  const own = wordsOf(gist).map(stemOf);
  const first = own.findIndex((stem) => things.has(stem));
  let last = first;
  while (last >= 0 && things.has(own[last + 1] ?? '')) last++;
  return {
    plain: new Set(plain),
    things,
    ways: actions,
    head: own[last],
    name: first < 0 ? [] : own.slice(first, last + 1),
  };
}
