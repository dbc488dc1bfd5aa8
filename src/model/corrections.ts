/** What a person said of words that a recogniser wrote. */
import type { WordCorrection } from '../language/notes.ts';
import type { ProjectEvent } from './events.ts';
import { eventsThatCount } from './replay.ts';

/** The corrections that count, oldest first. `events` need hold only what people did by hand. */
export function correctionsIn(events: readonly ProjectEvent[]): readonly WordCorrection[] {
  return eventsThatCount(events).flatMap((event) =>
    event.kind === 'words-learned' ? [{ heard: event.heard, means: event.means }] : [],
  );
}

/** Ids of notes, tasks and clashes of a memo that a person named in what they did by hand. */
export function idsNamedByHand(events: readonly ProjectEvent[], memoId: string): ReadonlySet<string> {
  const ids = new Set<string>();
  for (const event of eventsThatCount(events)) {
    if (event.kind === 'words-learned') continue;
    for (const value of Object.values(event))
      if (typeof value === 'string' && value.startsWith(`${memoId}.`)) ids.add(value);
  }
  return ids;
}
