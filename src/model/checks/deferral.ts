/** Said with every number about electricity: no number here tells that a circuit may be used. */
export const ARITHMETIC_ONLY = 'arithmetic only; local code and a licensed person decide';
