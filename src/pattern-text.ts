/** Words that come from talk or from data, as a part of a pattern: each character stands for itself. */

/** Returns `text` such that `new RegExp(text)` finds it as it is written. */
export const patternText = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
