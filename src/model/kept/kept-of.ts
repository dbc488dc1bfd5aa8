/** What is on record of a day, for next steps, and for a question. */
import { nameStems } from '../names.ts';
import type { ProjectRows } from '../rows.ts';
import type { MemoView, TaskView } from '../views.ts';
import { behindWork, type Spoken } from './behind-work.ts';
import {
  batchViews,
  hiddenViews,
  type KeptAnswer,
  type KeptForNext,
  type KeptOfDay,
  orderViews,
  pairViews,
} from './kept-views.ts';
import { missingSizes } from './missing-sizes.ts';

/** What the memos of a day put on record, and what is behind the panels that they worked through. */
export function keptOfDay(rows: ProjectRows, memos: readonly MemoView[]): KeptOfDay {
  const ids = new Set(memos.map(({ id }) => id));
  const ofDay = <R extends { readonly source: { readonly memoId: string } }>(list: readonly R[]) =>
    list.filter(({ source }) => ids.has(source.memoId));
  const last = memos.at(-1)?.recordedAt ?? '';
  const known = hiddenViews(rows).filter(({ source }) => Date.parse(source.recordedAt) <= Date.parse(last));
  const talk = memos.map(({ id, recordedAt, text }): Spoken => {
    return { text, source: { memoId: id, recordedAt, quote: text } };
  });
  return {
    batches: ofDay(batchViews(rows)),
    hidden: ofDay(hiddenViews(rows)),
    pairs: ofDay(pairViews(rows)),
    deliveries: ofDay(rows.records('delivery').map(({ kind: _kind, ...row }) => row)),
    behindWork: behindWork(known, talk),
  };
}

/** What is behind the panels that open work goes through, and the sizes that ready work lacks. */
export function keptForNext(rows: ProjectRows, open: readonly TaskView[]): KeptForNext {
  const talk = open.map(({ gist, source }): Spoken => ({ text: gist, source }));
  return { behindWork: behindWork(hiddenViews(rows), talk), missingSizes: missingSizes(rows, open) };
}

/** What a question names of what is on record. `telling` are its words without those that only ask. */
export function keptAnswer(rows: ProjectRows, question: string, telling: readonly string[]): KeptAnswer {
  const asked = new Set(nameStems(telling.join(' ')));
  const names = (name: string) => {
    const own = nameStems(name);
    const shared = own.filter((stem) => asked.has(stem)).length;
    return shared > 0 && (shared === own.length || shared === asked.size || shared * 2 > own.length);
  };
  const batches = batchViews(rows);
  const wantsBatches = asked.has('batch') || asked.has('mix');
  return {
    batches: batches.filter(
      ({ product, facts }) =>
        wantsBatches || names(product) || facts.some(({ what, words }) => what === 'used' && names(words)),
    ),
    hidden: hiddenViews(rows, question),
    pairs: pairViews(rows).filter(({ part }) => names(part)),
    orders: orderViews(rows).filter(({ item }) => item !== '' && names(item)),
    missingSizes: missingFor(rows, names, asked),
  };
}

/** Sizes missing for open tasks that have a word of the question, whether they wait or not: it was asked for. */
function missingFor(
  rows: ProjectRows,
  names: (name: string) => boolean,
  asked: ReadonlySet<string>,
): KeptAnswer['missingSizes'] {
  const near = rows
    .openTasks()
    .filter(({ gist }) => nameStems(gist).some((stem) => asked.has(stem)))
    .map(({ id, gist, source }) => ({ id, gist, source, status: 'ready' as const }));
  return missingSizes(rows, near).filter(({ thing }) => names(thing));
}
