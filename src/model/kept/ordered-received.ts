/** Holds what came against what was ordered: how many, of what size, and whether it is the same goods at all. */
import type { Attribute, Dimension, Quantity } from '../../language/notes.ts';
import { actsOn, sourced, tidy } from '../finding.ts';
import { nameKey, nameStems, shapeOf } from '../names.ts';
import { bestItem } from '../naming.ts';
import type { FindingRow } from '../rows.ts';
import { stemOf } from '../stems.ts';
import { toleranceBetween } from '../tolerance.ts';
import { convert, difference } from '../units.ts';
import type { Consequence, Source, Tolerance } from '../views.ts';
import type { Working } from '../working.ts';
import type { DeliveryRow, DeliverySizeRow } from './record-rows.ts';
import { areSameGoods } from './same-goods.ts';

/** Marks the slot of such a finding, so that it is never taken for one about the figure itself. */
const MARK = '|received';

/** Puts a delivery; what came is held against its order and gives a finding for each thing that differs. */
export function fileDelivery(work: Working, delivery: DeliveryRow): void {
  if (delivery.act === 'ordered') {
    work.draft.put({ table: 'records', row: delivery });
    return;
  }
  const order = orderOf(work, delivery);
  const came: Came = { work, row: delivery, order, name: order?.item || delivery.item || 'delivery' };
  const count = checkCount(came);
  for (const size of delivery.sizes) if (!isPairedSize(came, size)) checkSize(came, size);
  checkGoods(came);
  const counted = count === undefined ? delivery : { ...delivery, count };
  work.draft.put({ table: 'records', row: order ? { ...counted, answers: order.id } : counted });
}

interface Came {
  readonly work: Working;
  readonly row: DeliveryRow;
  readonly order: DeliveryRow | undefined;
  readonly name: string;
}

/**
 * The open order of these goods: of several, the one of the number that came, else the latest; none where they are
 * of other names. Where only a number was said ("six of the eight"), the only order of that number.
 */
function orderOf(work: Working, { item, count, outOf }: DeliveryRow): DeliveryRow | undefined {
  const orders = work.draft.records('delivery').filter(({ act }) => act === 'ordered');
  if (item === '') {
    const fitting = orders.filter((order) => outOf !== undefined && order.count === outOf);
    return fitting.length === 1 ? fitting[0] : undefined;
  }
  const same = orders.filter((order) => areSameGoods(item, order.item));
  const numbered = outOf === undefined ? undefined : same.findLast((order) => order.count === outOf);
  if (numbered) return numbered;
  const open = same.filter((order) => isOpen(work, order));
  const exact = open.findLast((order) => count !== undefined && order.count === count);
  if (exact) return exact;
  return new Set(open.map((order) => nameKey(order.item))).size === 1 ? open.at(-1) : undefined;
}

const receiptsOf = (work: Working, order: DeliveryRow) =>
  work.draft.records('delivery').filter(({ answers }) => answers === order.id);

/** An order is open until as many came as were ordered, or until it came and nobody counted. */
function isOpen(work: Working, order: DeliveryRow): boolean {
  if (order.cameUncounted) return false;
  const receipts = receiptsOf(work, order);
  if (receipts.some((one) => one.count === undefined && one.source.memoId !== work.memo.id)) return false;
  return order.count === undefined || cameSoFar(receipts) < order.count;
}

const cameSoFar = (receipts: readonly DeliveryRow[]) =>
  receipts.reduce((sum, { count }) => sum + (count ?? 0), 0);

/** What came without a word of its number: orders of these goods from earlier memos are open no more. */
export function closeUncounted(work: Working, item: string): void {
  for (const order of work.draft.records('delivery')) {
    if (order.act !== 'ordered' || order.source.memoId === work.memo.id) continue;
    if (!areSameGoods(item, order.item) || !isOpen(work, order)) continue;
    if (receiptsOf(work, order).length > 0) continue;
    work.draft.put({ table: 'records', row: { ...order, cameUncounted: true } });
  }
}

/**
 * Holds the number that came, with what came before of the same order, against what was ordered. Gives the number
 * that came now.
 */
function checkCount({ work, row, order, name }: Came): number | undefined {
  const wanted = order?.count ?? row.outOf;
  if (wanted === undefined) return row.count;
  const now =
    row.count ?? (row.short === undefined || !isCountedAs(row, name) ? undefined : wanted - row.short);
  if (now === undefined || now < 0) return row.count;
  const earlier = order ? cameSoFar(receiptsOf(work, order)) : 0;
  // "Six of the eight" is the state of the whole order, and may be said again.
  const total = row.outOf === undefined ? earlier + now : now;
  // More than ordered with what came before: the same delivery is spoken of once more.
  if (earlier > 0 && total > wanted) return 0;
  const slot = `${order?.id ?? placeOf(work, name)}|count|count${MARK}`;
  const open = work.draft.findingsOn(slot);
  const cameNow = Math.max(0, total - earlier);
  if (open.some((finding) => finding.now.value === total)) return cameNow;
  for (const finding of open)
    settleBySaid(work, finding, total === wanted ? 'the rest came' : 'counted again');
  if (total === wanted) return cameNow;
  const all = earlier > 0 ? `${total} in all` : String(total);
  find(
    { work, row, order, name },
    {
      slot,
      attribute: 'count',
      was: { value: wanted, unit: '1' },
      now: { value: total, unit: '1' },
      orderedAt: order?.source ?? row.source,
      why: `${wanted} were ordered and ${all} came`,
    },
  );
  return cameNow;
}

/** "Two boxes short" of tiles that were ordered by the tile tells no number of tiles. */
function isCountedAs({ shortOf }: DeliveryRow, name: string): boolean {
  return shortOf === undefined || nameStems(name).includes(stemOf(shortOf));
}

function settleBySaid(work: Working, finding: FindingRow, reason: string): void {
  const settledBy = { choice: 'take-new', at: work.memo.recordedAt, reason };
  work.draft.put({ table: 'findings', row: { ...finding, status: 'settled', settledBy } });
}

function checkSize(came: Came, size: DeliverySizeRow): void {
  const { work } = came;
  const ordered = orderedSize(came, size);
  if (!ordered) return;
  const { region, tolerances } = work.settings;
  const apart = difference(size, ordered.size, region);
  const tolerance = toleranceBetween(ordered.size, size, tolerances, region);
  if (apart === undefined || Math.abs(apart) <= tolerance.value) return;
  find(came, {
    slot: `${placeOf(work, came.name)}|${size.attribute}|${size.dimension}${MARK}`,
    attribute: size.attribute,
    was: ordered.size,
    now: size,
    orderedAt: ordered.source,
    tolerance,
    why: 'what came has another size than what was ordered',
  });
}

/** "600 by 1000" names no side: it is as ordered when each of its sizes is one of the order's. */
function isPairedSize({ work, order }: Came, size: DeliverySizeRow): boolean {
  if (size.attribute !== 'size') return false;
  const sizes = order?.sizes.filter(({ dimension }) => dimension === size.dimension) ?? [];
  const { region, tolerances } = work.settings;
  return sizes.some((one) => {
    const apart = difference(size, one, region);
    return apart !== undefined && Math.abs(apart) <= toleranceBetween(one, size, tolerances, region).value;
  });
}

interface OrderedSize {
  readonly size: Quantity & { readonly dimension: Dimension };
  readonly source: Source;
}

/** The size as ordered: by the order itself, by a figure that was said to be ordered, else as said beside what came. */
function orderedSize({ work, row, order, name }: Came, size: DeliverySizeRow): OrderedSize | undefined {
  const fits = (one: { readonly attribute: Attribute; readonly dimension: Dimension }) =>
    one.attribute === size.attribute && one.dimension === size.dimension;
  const own = order?.sizes.filter(fits) ?? [];
  // Of two sizes without a side the one that is left over is meant.
  const left =
    own.length > 1 ? own.find((one) => !row.sizes.some((came) => came.value === one.value)) : own[0];
  const inOrder = order && (left ?? onlyOne(order, row, size));
  if (order && inOrder) return { size: inOrder, source: order.source };
  const item = bestItem(name, work.draft.itemsLike(nameStems(name)), []);
  const ordered = item
    ? work.draft
        .claimsOf(item.id)
        .filter((one) => one.state === 'ordered' && fits(one) && one.status !== 'rejected')
    : [];
  const last = ordered.at(-1);
  if (last) {
    // "An 800 by 760" is two sizes of one order: what came as ordered answers its own, the other is what is left.
    const sides = ordered.filter(({ memoId }) => memoId === last.memoId);
    const isAs = (a: Quantity, b: Quantity) => difference(a, b, work.settings.region) === 0;
    if (sides.some((side) => isAs(size, side))) return undefined;
    const claim = sides.find((side) => !row.sizes.some((came) => isAs(came, side))) ?? last;
    return { size: claim, source: claim.source };
  }
  if (size.shouldBe === undefined) return undefined;
  return { size: { value: size.shouldBe, unit: size.unit, dimension: size.dimension }, source: row.source };
}

/** "At 21 millimetres" names no side: where each of the two tells one size of this kind, it is the same one. */
function onlyOne(order: DeliveryRow, row: DeliveryRow, size: DeliverySizeRow): DeliverySizeRow | undefined {
  const alike = (one: DeliverySizeRow) => one.dimension === size.dimension;
  const [ordered, came] = [order.sizes.filter(alike), row.sizes.filter(alike)];
  const [only] = ordered;
  if (ordered.length !== 1 || came.length !== 1 || !only) return undefined;
  return only.attribute === 'size' || size.attribute === 'size' ? only : undefined;
}

/** Other goods than those ordered: nothing to count or to measure, so the finding says it in words. */
function checkGoods(came: Came): void {
  const { row, order } = came;
  if (!row.instead) return;
  find(came, {
    slot: `${placeOf(came.work, came.name)}|other|count${MARK}`,
    attribute: 'other',
    was: { value: 0, unit: '' },
    now: { value: 0, unit: '' },
    orderedAt: order?.source ?? row.source,
    why: `${row.instead.ordered} was ordered and ${row.instead.came} came`,
  });
}

const placeOf = (work: Working, name: string) =>
  bestItem(name, work.draft.itemsLike(nameStems(name)), [])?.id ?? nameStems(name).join(' ');

interface Differs {
  readonly slot: string;
  readonly attribute: Attribute;
  readonly was: Quantity;
  readonly now: Quantity;
  readonly orderedAt: Source;
  readonly tolerance?: Tolerance;
  readonly why: string;
}

function find({ work, row, order, name }: Came, differs: Differs): void {
  const { slot, attribute, was, now, orderedAt, why } = differs;
  const known = sameClash(work, name, attribute, was, now);
  const item = bestItem(name, work.draft.itemsLike(nameStems(name)), []);
  const hangs = hangingOn(work, name, [row.id, order?.id, orderedAt.quote]);
  if (known) {
    // The figures clash already: the finding learns that one side is an order.
    const acts = new Set(known.consequences.map(({ what }) => what));
    work.amend({
      ...known,
      // "It was measured anew" is a guess beside what is known: what came differs from its order.
      why: known.kind === 'remeasured' || known.kind === 'decided' ? why : `${known.why}; ${why}`,
      consequences: [...known.consequences, ...hangs.filter(({ what }) => !acts.has(what))],
    });
    return;
  }
  const finding = work.find({
    kind: 'received',
    item: item?.name ?? name,
    itemId: item?.id ?? '',
    attribute,
    slot,
    was: sourced(was, { state: 'ordered', source: orderedAt }),
    now: sourced(now, { state: 'received', source: row.source }),
    ...(differs.tolerance ? { tolerance: differs.tolerance } : {}),
    why,
  });
  work.amend({ ...finding, consequences: hangs });
}

/** A finding of this memo that holds the same two values against each other. */
function sameClash(
  work: Working,
  name: string,
  attribute: Attribute,
  was: Quantity,
  now: Quantity,
): FindingRow | undefined {
  const same = (a: Quantity, b: Quantity) => {
    const there = convert(a, b.unit, work.settings.region);
    return there !== undefined && tidy(there.value) === tidy(b.value);
  };
  return work
    .findings()
    .find(
      (one) =>
        one.kind !== 'received' &&
        one.attribute === attribute &&
        areSameGoods(name, one.item) &&
        was.unit !== '' &&
        same(one.was, was) &&
        same(one.now, now),
    );
}

/** What was made or filmed on the strength of the order, and what is still to do with the goods. */
function hangingOn(
  work: Working,
  name: string,
  own: readonly (string | undefined)[],
): readonly Consequence[] {
  const acts = actsOn(work.draft, name)
    .filter((act) => act.act !== 'ordered' && !own.includes(act.id) && !own.includes(act.source.quote))
    .map(({ act, what, source }): Consequence => ({ act, what, source }));
  const { head, stems } = shapeOf(name);
  const tasks = work.draft
    .openTasks()
    .filter(({ gist }) => {
      const words = nameStems(gist);
      const shared = stems.filter((stem) => words.includes(stem)).length;
      return words.includes(head) && shared * 2 >= stems.length;
    })
    .map(({ gist, source }): Consequence => ({ act: 'planned', what: gist, source }));
  return [...acts, ...tasks];
}
