/** Files what a memo, or a person, keeps on record, and checks it against what stands. */

import { timesSaid } from '../../language/kept/time-of-day.ts';
import type { RecordNote } from '../../language/notes.ts';
import { fileSpokenCheck } from '../checks/file-checks.ts';
import type { Kept } from '../views.ts';
import type { Working } from '../working.ts';
import { closeUncounted, fileDelivery } from './ordered-received.ts';
import { askOtherHands } from './other-hand.ts';
import type { RecordByHand, RecordRow } from './record-rows.ts';

/** Puts a memo's records, holds deliveries against their orders, and asks about the other hand of what was changed. */
export function fileRecords(work: Working, notes: readonly Kept<RecordNote>[]): void {
  for (const note of notes) {
    if (note.kind === 'check') fileSpokenCheck(work, note);
    else file(work, rowOf(work, note));
  }
  for (const { received, item, span } of work.memo.notes.arrivals) {
    const isTold = notes.some((note) => note.kind === 'delivery' && note.span.start === span.start);
    if (received && !isTold) closeUncounted(work, item);
  }
  askOtherHands(work);
}

/** Puts what a person keeps by hand; its id is that of the event. */
export function fileByHand(work: Working, record: RecordByHand): void {
  const source = work.source({ quote: '' });
  file(work, { ...record, id: work.memo.id, source } as RecordRow);
  if (record.kind === 'batch') file(work, clockOf(work, record));
}

/**
 * The clock that a batch kept by hand starts, as talk of it would: laid where it is said to have gone somewhere, else
 * mixed; at the time that "when" tells, else at the time of keeping it.
 */
function clockOf(work: Working, { product, facts }: Extract<RecordByHand, { kind: 'batch' }>): RecordRow {
  const { id, recordedAt } = work.memo;
  const words = (what: string) => facts.find((fact) => fact.what === what)?.words;
  const [said] = timesSaid(words('when') ?? '', recordedAt);
  return {
    id: `${id}.clock`,
    source: work.source({ quote: '' }),
    kind: 'clock',
    act: words('used') === undefined ? 'mixed' : 'laid',
    product,
    at: said?.at ?? recordedAt,
    isSaid: said !== undefined || words('when') === undefined,
  };
}

function file(work: Working, row: RecordRow): void {
  if (row.kind === 'delivery') fileDelivery(work, row);
  else work.draft.put({ table: 'records', row });
}

function rowOf(work: Working, note: Exclude<Kept<RecordNote>, { readonly kind: 'check' }>): RecordRow {
  const base = { id: note.id, source: work.source(note) };
  switch (note.kind) {
    case 'batch': {
      const facts = note.facts.map(({ what, quote, value, unit }) => ({
        what,
        words: quote,
        ...(value === undefined ? {} : { value }),
        ...(unit === undefined ? {} : { unit }),
      }));
      return { ...base, kind: 'batch', product: note.product, facts };
    }
    case 'hidden': {
      const { panel, what, service, shot } = note;
      return { ...base, kind: 'hidden', panel, what, service, ...(shot === undefined ? {} : { shot }) };
    }
    case 'hand':
      return { ...base, kind: 'pair', part: note.part, ...(note.sides ? { sides: note.sides } : {}) };
    case 'clock': {
      const { act, product, at, isSaid, isNext, on } = note;
      const more = { ...(isNext ? { isNext } : {}), ...(on === undefined ? {} : { on }) };
      return { ...base, kind: 'clock', act, product, at, isSaid, ...more };
    }
    case 'delivery': {
      const { act, item, count, outOf, short, shortOf, instead } = note;
      return {
        ...base,
        kind: 'delivery',
        act,
        item,
        ...(count === undefined ? {} : { count }),
        ...(outOf === undefined ? {} : { outOf }),
        ...(short === undefined ? {} : { short }),
        ...(shortOf === undefined ? {} : { shortOf }),
        sizes: note.sizes.map(({ quote: _quote, ...size }) => size),
        ...(instead === undefined ? {} : { instead }),
      };
    }
  }
}
