/** A number as it was said. */
export interface NumberReading {
  /** Tokens, end exclusive. */
  readonly from: number;
  readonly to: number;
  readonly value: number;
  /** How it was said: matters for what it may mean. */
  readonly form: 'digits' | 'words';
  /** Has a fraction of the kind tapes carry: "18 and a half", "5/8". */
  readonly fraction?: boolean;
  /** Denominator of that fraction. */
  readonly denominator?: number;
  /** Number of decimals said: 2 in "3.04". */
  readonly decimals?: number;
  /** "three sixty five", "nine oh five": one figure and a two-figure rest, which may be metres and centimetres. */
  readonly splitAfter?: number;
  /** "a" or "an" stood for one: "a hundred" is no article, "an inch" is. */
  readonly article?: boolean;
  /** "a couple of": two, more or less. */
  readonly loose?: boolean;
  /** Other values that the words allow, best first: "1.200" is 1.2 or 1200. */
  readonly alternatives?: readonly number[];
}
