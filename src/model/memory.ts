import type { NewEvent, ProjectEvent } from './events.ts';
import { MemoryRows } from './memory-rows.ts';
import { changesNow, reachesBack, replay } from './replay.ts';

/** A project without a disk: the same log and the same model, kept in memory. */
export class MemoryProject {
  #rows = new MemoryRows();
  readonly #log: ProjectEvent[] = [];

  get rows(): MemoryRows {
    return this.#rows;
  }

  append(events: readonly NewEvent[]): readonly ProjectEvent[] {
    return events.map((event) => {
      const written = { ...event, seq: this.#log.length + 1 } as ProjectEvent;
      this.#log.push(written);
      if (reachesBack(this.#rows, written)) {
        this.#rows = new MemoryRows();
        replay(this.#rows, this.#log, this.#rows);
        return written;
      }
      this.#rows.begin(written.seq);
      for (const change of changesNow(this.#rows, written)) this.#rows.put(change);
      return written;
    });
  }

  log(): readonly ProjectEvent[] {
    return this.#log;
  }
}
