/** When the times of a product begin and end, in words. Plain text; pages escape it. */
import type { CheckWindow } from '../model/checks/check-rows.ts';
import type { CheckView } from '../model/checks/check-views.ts';
import type { Source } from '../model/views.ts';
import { oneLine } from './words.ts';

/** What begins when a check's time is up, by the check. */
const OPENS: Readonly<Record<string, string>> = {
  'recoat window': 'the window for the next coat opens',
  'cure time': "the data sheet's cure time is over",
  'drying time': "the data sheet's drying time is over",
};
const CLOSES: Readonly<Record<string, string>> = {
  'recoat window': 'the window for the next coat closes',
  'pot life': 'the pot life ends',
};

export interface WindowEnd {
  /** ISO 8601. */
  readonly at: string;
  /** "topcoat: the window for the next coat opens". */
  readonly words: string;
  /** Where the start was told. */
  readonly source: Source;
}

/** Both ends of a check's time; none where it has no clock or the check names no end. */
export function windowEnds({ check, window, alsoRunning = [], inputs }: CheckView): readonly WindowEnd[] {
  if (!window) return [];
  return [window, ...alsoRunning].flatMap((one) => {
    const { opens, closes, source } = one;
    const of = oneLine(productWords(one, inputs));
    const end = (at: string | undefined, words: string | undefined): WindowEnd[] =>
      at === undefined || words === undefined
        ? []
        : [{ at, words: `${of === '' ? '' : `${of}: `}${words}`, source }];
    return [...end(opens, OPENS[check]), ...end(closes, CLOSES[check])];
  });
}

/** "Primer (deck)": what a clock runs for. "Second coat on now": the product is that of the check. */
export function productWords(
  { product, on }: Pick<CheckWindow, 'product' | 'on'>,
  inputs: CheckView['inputs'] = [],
): string {
  const name = product || (inputs.find(({ of }) => of !== undefined)?.of ?? '');
  return on === undefined ? name : `${name === '' ? 'coat' : name} (${on})`;
}
