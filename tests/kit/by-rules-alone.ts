import { splitSentences } from '../../src/language/sentences.ts';
import { readStatements } from '../../src/language/statements/read-statements.ts';

/** A Wednesday. */
const WEDNESDAY = {
  units: 'metric',
  region: 'GB',
  recordedAt: '2026-06-10T18:00:00+01:00',
} as const;

/** What the rules read of a text on a Wednesday, with the fitted evidence left out: that has tests of its own. */
export const byRulesAlone = (text: string, openTasks: readonly string[] = []) =>
  readStatements(text, splitSentences(text), { ...WEDNESDAY, openTasks }, [], { evidence: false });
