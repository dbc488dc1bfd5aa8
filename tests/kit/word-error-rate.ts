/**
 * Word error rate as NIST's sclite counts it: words are aligned at least cost, where an insertion or a deletion
 * costs 3 and a substitution 4, and errors are divided by the words of the reference.
 * Source: SCTK, doc/sclite.htm ("Step 2: Text Alignments").
 */
export interface WordErrors {
  readonly correct: number;
  readonly substitutions: number;
  readonly deletions: number;
  readonly insertions: number;
  /** Errors for each word of the reference; above 1 when much was put in. */
  readonly rate: number;
}

const GAP = 3;
const SUBSTITUTION = 4;

export function wordErrors(reference: readonly string[], heard: readonly string[]): WordErrors {
  const width = heard.length + 1;
  const costs = new Int32Array((reference.length + 1) * width);
  const at = (r: number, h: number) => costs[r * width + h] ?? 0;
  const paired = (r: number, h: number) => at(r - 1, h - 1) + (same(r, h) ? 0 : SUBSTITUTION);
  const same = (r: number, h: number) => reference[r - 1] === heard[h - 1];
  for (let r = 0; r <= reference.length; r++) {
    for (let h = 0; h <= heard.length; h++) {
      const ways = [r * GAP + h * GAP];
      if (r > 0) ways.push(at(r - 1, h) + GAP);
      if (h > 0) ways.push(at(r, h - 1) + GAP);
      if (r > 0 && h > 0) ways.push(paired(r, h));
      costs[r * width + h] = Math.min(...ways);
    }
  }
  const counts = { correct: 0, substitutions: 0, deletions: 0, insertions: 0 };
  let r = reference.length;
  let h = heard.length;
  while (r > 0 || h > 0) {
    if (r > 0 && h > 0 && at(r, h) === paired(r, h)) {
      counts[same(r, h) ? 'correct' : 'substitutions']++;
      r--;
      h--;
    } else if (r > 0 && at(r, h) === at(r - 1, h) + GAP) {
      counts.deletions++;
      r--;
    } else {
      counts.insertions++;
      h--;
    }
  }
  const errors = counts.substitutions + counts.deletions + counts.insertions;
  return { ...counts, rate: errors / Math.max(1, reference.length) };
}

/** Adds counts of several texts; the rate is that of the whole. */
export function sumErrors(parts: readonly WordErrors[]): WordErrors {
  const total = (key: Exclude<keyof WordErrors, 'rate'>) => parts.reduce((sum, part) => sum + part[key], 0);
  const [correct, substitutions, deletions, insertions] = [
    total('correct'),
    total('substitutions'),
    total('deletions'),
    total('insertions'),
  ];
  const words = correct + substitutions + deletions;
  return {
    correct,
    substitutions,
    deletions,
    insertions,
    rate: (substitutions + deletions + insertions) / Math.max(1, words),
  };
}
