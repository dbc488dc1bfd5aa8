/** The rule that drafts made by evidence alone stand under. */
export const RULE = 'evidence';
