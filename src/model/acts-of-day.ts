/** What was ordered, made or closed in on a day, and the sizes that stood for it then. Reads rows, changes nothing. */
import { aloneIn } from './checks/doubts.ts';
import { shapeOf, wordsOf } from './names.ts';
import type { ActRow, ClaimRow, ItemRow, ProjectRows } from './rows.ts';
import { stemOf } from './stems.ts';
import type { ActOfDay, MemoView } from './views.ts';

const TOLD: ReadonlySet<string> = new Set<ActOfDay['act']>(['ordered', 'made', 'closed-in']);

/** What nobody cuts or orders by. */
const NO_SIZE: ReadonlySet<string> = new Set(['count', 'money', 'time', 'temperature']);

/** In each act of these memos that figures hang on: the figures that stood when it was told. None without figures. */
export function actsOfDay(rows: ProjectRows, memos: readonly MemoView[]): readonly ActOfDay[] {
  const isAlone = aloneIn(rows);
  return memos.flatMap((memo) => {
    const seen = new Set<string>();
    return [...memo.notes.done, ...memo.notes.arrivals]
      .filter((note) => note.review !== 'rejected')
      .sort((a, b) => a.span.start - b.span.start)
      .flatMap((note): ActOfDay[] => {
        const row = rows.get('acts', note.id);
        if (!row || !TOLD.has(row.act)) return [];
        const against = doneTo(row, rows, isAlone)
          .flatMap((item) => stoodFor(rows, item, memo.recordedAt))
          .filter(({ id }) => !seen.has(id));
        for (const { id } of against) seen.add(id);
        if (against.length === 0) return [];
        const { act, what, source } = row as ActRow & Pick<ActOfDay, 'act'>;
        return [{ act, what, source, against: against.map((claim) => viewOf(rows, claim)) }];
      });
  });
}

/** Words that may stand before the name of a thing and tell no two things apart. */
const LOOSE =
  /^(?:the|an?|my|our|your|its?|that|this|those|these|both|all|every|each|last|next|new|old|other|same|first|second|third|\d+|one|two|three|four|five|six|seven|eight|nine|ten|twelve|of|for|from|to|and|with|in|up|over|off|out|down|on|\w+ed|\w+ing|cut|cuts|made|built|bent|cast|hung|set|laid|sewn|bought|put|got)$/;

/** Words that may follow the name of a thing without being part of it: "sole panels" are none of the sole. */
const BEHIND =
  /^(?:the|an?|my|our|its?|it|i|we|they|this|that|which|who|in|up|over|off|out|down|on|to|at|of|for|from|with|by|and|or|but|so|as|because|cos|since|then|too|now|again|today|yesterday|tonight|last|is|are|was|were|has|have|had|s|\d+|\w+ed|\w+ly|cut|made|built|bent|cast|hung|set|laid|done|behind|under|before|after|while)$/;

/**
 * The things that the words of an act name as what it was done to: "cut the sole panels" is done to the sole panels, and
 * neither to the sole nor to the hatch panels.
 */
function doneTo(
  { what, source, words: actWords }: ActRow,
  rows: ProjectRows,
  isAlone: (item: ItemRow) => boolean,
): readonly ItemRow[] {
  const words = wordsOf(source.quote.length > what.length ? source.quote : what);
  const stems = words.map(stemOf);
  const mayEnd = (index: number) => words[index + 1] === undefined || BEHIND.test(words[index + 1] ?? '');
  // Whatever is named ends in one of these, and thousands of things may share any other word.
  const heads = [...new Set(stems.filter((_, index) => mayEnd(index)))];
  return rows.itemsSharing(heads).filter((item) => {
    const { head, stems: own } = shapeOf(item.name);
    if (!heads.includes(head) || !own.some((stem) => actWords.includes(stem))) return false;
    const isWhole = own.every((stem) => stems.includes(stem));
    if (!isWhole && !isAlone(item)) return false;
    return stems.some((stem, index) => {
      const before = words[index - 1];
      if (stem !== head || !mayEnd(index)) return false;
      return before === undefined || LOOSE.test(before) || own.includes(stemOf(before));
    });
  });
}

/** The last size of each attribute that was told of a thing up to an instant, and was no likely slip. */
function stoodFor(rows: ProjectRows, item: ItemRow, at: string): readonly ClaimRow[] {
  const latest = new Map<string, ClaimRow>();
  for (const claim of rows.claimsOf(item.id)) {
    const { status, dimension, slot, source } = claim;
    if (NO_SIZE.has(dimension) || status === 'series' || status === 'rejected' || status === 'doubted')
      continue;
    if (Date.parse(source.recordedAt) <= Date.parse(at)) latest.set(slot, claim);
  }
  return [...latest.values()];
}

function viewOf(rows: ProjectRows, claim: ClaimRow): ActOfDay['against'][number] {
  const { id, itemId, said, attribute, dimension, value, unit, bound, high, state, source } = claim;
  return {
    id,
    item: rows.item(itemId)?.name ?? said,
    attribute,
    dimension,
    value,
    unit,
    bound,
    ...(high === undefined ? {} : { high }),
    ...(state === undefined ? {} : { state }),
    source,
  };
}
