import type { Said, Word } from '../words.ts';

/** "wide", "across", "by 450 deep": what goes on about the size itself. */
const OF_SIZE =
  /^(?:wide|high|deep|long|thick|tall|across|square|round|clear|rated|plated|good|for|to|by|and|a|an|half|quarter|quarters|of|between|at|least|most|under|over|about|each|all|overall)$/;
const isOfSize = ({ lower, classes }: Word): boolean => /[QU]/.test(classes) || OF_SIZE.test(lower);

/**
 * Whether the clause says that a thing has a size, and no more: "The hatch is eighteen and a half inches deep". That is
 * a figure; rules read limits and faults from such words, the words themselves speak for no statement.
 */
export function isPlainSize({ words }: Said): boolean {
  const verb = words.findIndex(({ classes }) => classes.includes('S'));
  const size = words.slice(verb + 1);
  if (verb < 1 || !words[0]?.classes.includes('T') || !size.some(({ classes }) => classes.includes('Q')))
    return false;
  return size.every(isOfSize) && words.slice(0, verb).every(({ classes }) => !/[NH]/.test(classes));
}
