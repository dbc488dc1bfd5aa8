import type { FigureNote, Span } from '../language/notes.ts';
import { blankedSequences } from '../plain-text.ts';
import type { Draft } from './draft.ts';
import type { Clash } from './finding.ts';
import { findingOf } from './finding.ts';
import type { ModelSettings, ReconcilableMemo } from './reconcile.ts';
import type { FindingRow } from './rows.ts';
import { type Piece, type Place, placeOf, sentenceAt, sentencesOf } from './talk.ts';
import type { Kept, Source } from './views.ts';

/** One memo while it is worked into the model: the draft, the talk, and what was found so far. */
export class Working {
  readonly draft: Draft;
  readonly memo: ReconcilableMemo;
  readonly settings: ModelSettings;
  readonly sentences: readonly Piece[];
  /** Items of this memo in order of speech, latest last. */
  readonly recent: string[] = [];
  readonly #findings: FindingRow[] = [];
  readonly #places = new Map<Span, Place>();
  readonly #figures: ReadonlyMap<string, Kept<FigureNote>>;

  constructor(draft: Draft, memo: ReconcilableMemo, settings: ModelSettings) {
    this.draft = draft;
    // What orders a terminal about is not talk; with blanks in its place every span stays.
    this.memo = { ...memo, text: blankedSequences(memo.text) };
    this.settings = settings;
    this.sentences = sentencesOf(this.memo.text);
    this.#figures = new Map(memo.notes.figures.map((note) => [note.id, note]));
  }

  /** Where a span stands, found once: a figure's place is asked for when it arrives, when it is filed and after. */
  place(span: Span): Place {
    let place = this.#places.get(span);
    if (!place) {
      place = placeOf(this.memo.text, this.sentences, span);
      this.#places.set(span, place);
    }
    return place;
  }

  /** The number of the sentence that a span begins in; to find its whole place costs more. */
  sentenceOf({ start }: Span): number {
    return sentenceAt(this.sentences, start);
  }

  /** A figure of this memo by its id, which is that of its claim; undefined for one of another memo. */
  figure(id: string | undefined): Kept<FigureNote> | undefined {
    return id === undefined ? undefined : this.#figures.get(id);
  }

  source(note: { readonly quote: string; readonly startSeconds?: number }): Source {
    const { id: memoId, recordedAt } = this.memo;
    const at = note.startSeconds === undefined ? {} : { startSeconds: note.startSeconds };
    return { memoId, recordedAt, quote: note.quote, ...at };
  }

  /** Findings that this memo has brought to light so far. */
  findings(): readonly FindingRow[] {
    return this.#findings;
  }

  find(clash: Clash): FindingRow {
    const finding = findingOf(this.draft, clash, this.memo, this.#findings.length + 1, this.settings.region);
    this.#findings.push(finding);
    this.draft.put({ table: 'findings', row: finding });
    return finding;
  }

  /** Puts a finding of this memo right in the light of what was said after it. */
  amend(finding: FindingRow): void {
    const at = this.#findings.findIndex((one) => one.id === finding.id);
    if (at >= 0) this.#findings[at] = finding;
    this.draft.put({ table: 'findings', row: finding });
  }
}
