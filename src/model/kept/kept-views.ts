/** What is kept on record, as the command line and the pages show it. Nothing here changes anything. */
import { mirroredName, sidesOf, withoutSide } from '../../language/lexicon/sides.ts';
import type { Attribute, Quantity } from '../../language/notes.ts';
import { nameKey, nameStems } from '../names.ts';
import type { ProjectRows } from '../rows.ts';
import type { Source } from '../views.ts';
import { isNamedIn } from './behind-work.ts';
import { type DewPoint, dewPointFrom } from './dew-point.ts';
import { isPart } from './other-hand.ts';
import type { BatchRow, DeliveryRow, HiddenRow, PairRow } from './record-rows.ts';

type Without<R> = Omit<R, 'kind'>;
export interface BatchView extends Without<BatchRow> {
  /** Worked out where air and humidity were told in numbers. */
  readonly dewPoint?: DewPoint;
}
export interface HiddenView extends Without<HiddenRow> {
  /** File name of the recording that told it: the clip to look at. */
  readonly clip?: string;
}

/** Two mirrored parts and the figures that each side has. */
export interface PairView extends Without<PairRow> {
  readonly figures: readonly {
    readonly side: string;
    readonly attribute: Attribute;
    readonly value: number;
    readonly unit: string;
  }[];
}

export type DeliveryView = Without<DeliveryRow>;

/** An order with what came of it; what came without an order that is known stands alone. */
export interface OrderView {
  readonly item: string;
  readonly order?: DeliveryView;
  readonly received: readonly DeliveryView[];
  readonly status: 'expected' | 'short' | 'complete' | 'came' | 'more than ordered';
}

/** What is behind a panel that is about to be, or was, worked through. */
export interface BehindWork {
  readonly panel: string;
  readonly there: readonly HiddenView[];
  /** The work, in the speaker's words. */
  readonly work: Source;
}

/** Sizes nobody has said of a thing that is about to be made. */
export interface MissingSizes {
  readonly taskId: string;
  readonly gist: string;
  readonly thing: string;
  readonly missing: readonly string[];
  readonly source: Source;
}

/** What a day's talk put on record. */
export interface KeptOfDay {
  readonly batches: readonly BatchView[];
  readonly hidden: readonly HiddenView[];
  readonly pairs: readonly PairView[];
  readonly deliveries: readonly DeliveryView[];
  readonly behindWork: readonly BehindWork[];
}

/** What next steps need of it. */
export interface KeptForNext {
  readonly behindWork: readonly BehindWork[];
  readonly missingSizes: readonly MissingSizes[];
}

/** What a question is about, of what is on record. */
export interface KeptAnswer {
  readonly batches: readonly BatchView[];
  readonly hidden: readonly HiddenView[];
  readonly pairs: readonly PairView[];
  readonly orders: readonly OrderView[];
  readonly missingSizes: readonly MissingSizes[];
}

function bare<R extends { readonly kind: string }>({ kind: _kind, ...row }: R): Omit<R, 'kind'> {
  return row;
}

/** Batches, oldest first. */
export function batchViews(rows: ProjectRows): readonly BatchView[] {
  return rows.records('batch').map((row) => {
    const dewPoint = dewPointFrom(row.facts);
    return { ...bare(row), ...(dewPoint ? { dewPoint } : {}) };
  });
}

/** What is behind panels; with words, behind the panels that they name. */
export function hiddenViews(rows: ProjectRows, panel?: string): readonly HiddenView[] {
  const all = rows.records('hidden').map((row) => ({ ...bare(row), ...clipOf(rows, row) }));
  if (panel === undefined) return all;
  const named = all.filter((one) => isAskedFor(panel, one.panel, all));
  // "the boards by the pantry": the panel goes by "boards", the place stands only in what was said.
  return named.length > 0 ? named : all.filter(({ source }) => holdsAll(source.quote, panel));
}

function holdsAll(text: string, words: string): boolean {
  const own = new Set(nameStems(text));
  const asked = nameStems(words);
  return asked.length > 0 && asked.every((stem) => own.has(stem));
}

function clipOf(rows: ProjectRows, { source }: HiddenRow): Pick<HiddenView, 'clip'> {
  const memo = rows.get('memos', source.memoId);
  return memo?.source.kind === 'recording' ? { clip: memo.source.name } : {};
}

/** A panel is asked for by all its words, by some that no other panel has, or as part of a longer sentence. */
function isAskedFor(words: string, panel: string, all: readonly HiddenView[]): boolean {
  if (isNamedIn(words, panel, all)) return true;
  const [asked, own] = [nameStems(words), nameStems(panel)];
  return asked.length > 0 && asked.every((stem) => own.includes(stem));
}

export function pairViews(rows: ProjectRows): readonly PairView[] {
  return rows.records('pair').map((row) => ({ ...bare(row), figures: figuresOfPair(rows, row) }));
}

function figuresOfPair(rows: ProjectRows, pair: PairRow): PairView['figures'] {
  const part = nameKey(pair.part);
  return rows
    .itemsSharing(nameStems(pair.part))
    .filter(({ name }) => {
      if (nameKey(name) === part) return true;
      return mirroredName(name) !== undefined && isPart(withoutSide(name), pair.part);
    })
    .flatMap((item) =>
      rows
        .standingOf(item.id)
        .filter(({ dimension }) => dimension === 'length' || dimension === 'angle' || dimension === 'area')
        .map(({ attribute, value, unit }) => ({
          side: item.name.split(/\s+/).find((word) => sidesOf(word) !== undefined) ?? 'both',
          attribute,
          value,
          unit,
        })),
    );
}

/** Orders with what came of them, then what came without one. */
export function orderViews(rows: ProjectRows): readonly OrderView[] {
  const all = rows.records('delivery').map(bare);
  const orders = all
    .filter(({ act }) => act === 'ordered')
    .map((order): OrderView => {
      const received = all.filter(({ answers }) => answers === order.id);
      return { item: order.item, order, received, status: statusOf(order, received) };
    });
  const alone = all
    .filter(({ act, answers }) => act === 'received' && answers === undefined)
    .map(
      (one): OrderView => ({
        item: one.item,
        received: [one],
        status: one.outOf === undefined ? 'came' : 'short',
      }),
    );
  return [...orders, ...alone];
}

function statusOf(
  { count, cameUncounted }: DeliveryView,
  received: readonly DeliveryView[],
): OrderView['status'] {
  if (received.length === 0) return cameUncounted ? 'came' : 'expected';
  if (count === undefined) return 'came';
  const came = received.reduce(
    (sum, one) => sum + (one.count ?? (one.short === undefined ? 0 : count - one.short)),
    0,
  );
  const isCounted = received.some((one) => one.count !== undefined || one.short !== undefined);
  if (!isCounted) return 'came';
  return came < count ? 'short' : came > count ? 'more than ordered' : 'complete';
}

/** A quantity of a fact, where it has one. */
export function quantityOf(fact: { readonly value?: number; readonly unit?: string }): Quantity | undefined {
  return fact.value === undefined || fact.unit === undefined
    ? undefined
    : { value: fact.value, unit: fact.unit };
}
