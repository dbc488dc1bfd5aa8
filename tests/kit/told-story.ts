/** A project that hears a story, one memo a day, and says in one line each what it found. */
import { whatIsKnown } from '../../src/known.ts';
import type { HouseUnits } from '../../src/language/notes.ts';
import type { NewEvent, ProjectEvent } from '../../src/model/events.ts';
import { MemoryProject } from '../../src/model/memory.ts';
import { findingViews, limitViews, standingFigures } from '../../src/model/project-views.ts';
import { taskViews } from '../../src/model/task-views.ts';
import type { FindingView, TaskView } from '../../src/model/views.ts';
import { readOnce } from './read-once.ts';

export const AT = '2026-02-28T20:00:00+01:00';

type Told<E> = E extends ProjectEvent ? Omit<E, 'seq' | 'at'> : never;
/** What a person does by hand, without its time. */
export type ByHand = Told<ProjectEvent>;

export class ToldStory {
  readonly project = new MemoryProject();
  readonly #units: HouseUnits;
  #days = 0;

  constructor(units: HouseUnits = 'metric', region?: string) {
    this.#units = units;
    this.hand({ kind: 'project-made', name: 'Shed', units, ...(region ? { region } : {}) });
  }

  /** One memo for each text, each on the day after the one before it. */
  hear(...texts: readonly string[]): this {
    for (const text of texts) this.#hearOne(text);
    return this;
  }

  /** One memo of a day and time of its own: `hearAt('2026-02-03T14:20', '…')`. */
  hearAt(time: string, text: string): this {
    this.#hearOne(text, `${time}:00+01:00`);
    return this;
  }

  #hearOne(text: string, time?: string): void {
    this.#days++;
    const memoId = `m${this.#days}`;
    const recordedAt = time ?? `2026-02-${String(this.#days).padStart(2, '0')}T17:00:00+01:00`;
    const source = { name: `${memoId}.txt`, kind: 'text', sha256: memoId, bytes: text.length } as const;
    const known = whatIsKnown(this.project.rows, text);
    const { notes } = readOnce(text, { units: this.#units, recordedAt, ...known });
    this.hand(
      { kind: 'recording-kept', memoId, source, file: 'x', recordedAt, recordedAtFrom: 'given' },
      { kind: 'transcript-made', memoId, transcript: { text } },
      { kind: 'notes-read', memoId, notes, reader: 'test' },
    );
  }

  hand(...events: readonly ByHand[]): this {
    this.project.append(events.map((event) => ({ ...event, at: AT }) as NewEvent));
    return this;
  }

  /** Sets the plain figures of a story by hand: `['bench top height', 900, 'mm']`. */
  set(
    item: string,
    attribute: 'height' | 'width' | 'length' | 'depth' | 'weight',
    value: number,
    unit = 'mm',
  ) {
    return this.hand({ kind: 'figure-set', item, attribute, quantity: { value, unit } });
  }

  formula(
    item: string,
    attribute: 'height' | 'width' | 'length' | 'weight' | 'angle',
    formula: string,
  ): this {
    return this.hand({ kind: 'formula-set', item, attribute, formula });
  }

  /** Settles the only open finding. */
  settle(choice: 'keep-old' | 'take-new' | 'both-right', kind?: FindingView['kind']): this {
    const open = this.open().filter((finding) => kind === undefined || finding.kind === kind);
    const [finding] = open;
    if (open.length !== 1 || !finding) throw new Error(`not one open finding but ${open.length}`);
    return this.hand({ kind: 'finding-settled', findingId: finding.id, choice });
  }

  /** Tasks as of the evening of a day of February, in working order: `waiting Lay the floor [m1.t2]`. */
  tasks(day: number): readonly string[] {
    return this.tasksOn(day).map(({ id, gist, status }) => `${status} ${gist} [${id}]`);
  }

  tasksOn(day: number): readonly TaskView[] {
    return taskViews(this.project.rows, `2026-02-${String(day).padStart(2, '0')}T20:00:00+01:00`);
  }

  /** What the task of this id waits for or waited for on that day, each with its kind. */
  waits(id: string, day: number): readonly string[] {
    const waits = this.tasksOn(day).find((task) => task.id === id)?.waits ?? [];
    return waits.map(({ kind, words, isMet, why, on }) =>
      [isMet ? 'met' : 'open', kind, words, ...(on ? [`on ${on}`] : []), ...(why ? [`(${why})`] : [])].join(
        ' ',
      ),
    );
  }

  findings(): readonly FindingView[] {
    return findingViews(this.project.rows);
  }

  open(): readonly FindingView[] {
    return findingViews(this.project.rows, { status: 'open' });
  }

  /** `slip: bench top height 915 mm -> 951 mm` for each finding. */
  found(findings: readonly FindingView[] = this.findings()): readonly string[] {
    return findings.map(
      ({ kind, item, attribute, was, now }) =>
        `${kind}: ${item} ${attribute} ${was.value} ${was.unit} -> ${now.value} ${now.unit}`,
    );
  }

  /** `bench top height 915 mm` with `= formula` and a status other than "stands". */
  figures(item?: string): readonly string[] {
    return standingFigures(this.project.rows, item).map((row) => {
      const formula = row.formula ? ` = ${row.formula}` : '';
      return `${row.item} ${row.attribute} ${row.value} ${row.unit}${formula}${row.status === 'stands' ? '' : ` (${row.status})`}`;
    });
  }

  /** What follows from what: `legs length = bench top height - 38 mm`. */
  formulas(): readonly string[] {
    return standingFigures(this.project.rows)
      .filter((row) => row.formula !== undefined)
      .map((row) => `${row.item} ${row.attribute} = ${row.formula}`);
  }

  limits(): readonly string[] {
    return limitViews(this.project.rows).map(
      ({ item, attribute, bound, value, unit, about }) =>
        `${item} ${attribute} ${bound} ${value} ${unit}${about ? ` for ${about}` : ''}`,
    );
  }
}
