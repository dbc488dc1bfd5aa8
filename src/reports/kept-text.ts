/** What is kept on record, for the terminal. */
import type {
  BatchView,
  BehindWork,
  DeliveryView,
  HiddenView,
  KeptAnswer,
  OrderView,
  PairView,
} from '../model/kept/kept-views.ts';
import type { Source } from '../model/views.ts';
import {
  BATCH_CAUTION,
  BEHIND_CAUTION,
  batchFacts,
  batchGaps,
  behindWords,
  deliveryWords,
  dewWords,
  hiddenWords,
  missingWords,
  orderHead,
  pairWords,
} from './kept-words.ts';
import { quantityText } from './quantity-text.ts';
import { dayOf, placeOf } from './source-text.ts';
import { oneLine } from './words.ts';

const where = (source: Source) => `${dayOf(source.recordedAt)}  ${placeOf(source)}`;
const quote = ({ quote: words }: Source) => (words === '' ? [] : [`  "${oneLine(words)}"`]);
const block = (lines: readonly string[]) => `${lines.join('\n')}\n`;

/** Batches, each with its facts, what was not said, and its words. */
export function batchesText(batches: readonly BatchView[]): string {
  if (batches.length === 0) return 'No batch is on record.\n';
  const blocks = batches.map((batch) =>
    block([
      `${oneLine(batch.product)}   ${where(batch.source)}   [${oneLine(batch.id)}]`,
      ...(batch.facts.length > 0 ? [`  ${batchFacts(batch)}`] : []),
      ...(dewWords(batch) ? [`  ${dewWords(batch)}`] : []),
      ...(batchGaps(batch) ? [`  ${batchGaps(batch)}`] : []),
      ...quote(batch.source),
    ]),
  );
  return `${blocks.join('\n')}\n${BATCH_CAUTION}\n`;
}

/** What is behind panels, panel by panel. */
export function hiddenText(hidden: readonly HiddenView[], asked?: string): string {
  if (hidden.length === 0) {
    const what = asked === undefined ? 'any panel' : `"${oneLine(asked)}"`;
    return `Nothing is on record of what is behind ${what}. That means only that nobody told.\n`;
  }
  const panels = [...new Set(hidden.map(({ panel }) => panel))];
  const blocks = panels.map((panel) =>
    block([
      `behind the ${oneLine(panel)}`,
      ...hidden
        .filter((one) => one.panel === panel)
        .flatMap((one) => [
          `  ${hiddenWords(one)}   ${where(one.source)}   [${oneLine(one.id)}]`,
          ...quote(one.source).map((line) => `  ${line}`),
        ]),
    ]),
  );
  return `${blocks.join('\n')}\n${BEHIND_CAUTION}\n`;
}

/** Pairs with the figures of each side. */
export function pairsText(pairs: readonly PairView[]): string {
  if (pairs.length === 0) return 'No pair of hands is on record.\n';
  return pairs
    .map((pair) =>
      block([
        `${pairWords(pair)}   ${where(pair.source)}   [${oneLine(pair.id)}]`,
        ...pair.figures.map((one) => `  ${one.side}: ${one.attribute} ${quantityText(one)}`),
        ...quote(pair.source),
      ]),
    )
    .join('\n');
}

/** Orders and what came of them. */
export function ordersText(orders: readonly OrderView[]): string {
  if (orders.length === 0) return 'No order with its number or size is on record.\n';
  return orders
    .map((one) =>
      block([
        orderHead(one),
        ...(one.order ? [line('ordered', one.order)] : ['  ordered   not on record']),
        ...one.received.map((came) => line('came', came)),
      ]),
    )
    .join('\n');
}

function line(label: string, one: DeliveryView): string {
  const words = one.source.quote === '' ? '' : `   "${oneLine(one.source.quote)}"`;
  return `  ${label.padEnd(8)}  ${deliveryWords(one)}   ${where(one.source)}${words}   [${oneLine(one.id)}]`;
}

/** What is behind the panels that the talk goes through; empty where there is nothing. */
export function behindWorkText(work: readonly BehindWork[]): string {
  if (work.length === 0) return '';
  return `Behind where you work\n${work.map((one) => `  ${behindWords(one)}\n`).join('')}  ${BEHIND_CAUTION}\n`;
}

/** The parts of an answer that come from what is on record; none where there is nothing. */
export function keptAnswerParts(kept: KeptAnswer | undefined): readonly string[] {
  if (!kept) return [];
  const indent = (text: string) => text.replace(/^(?=.)/gm, '  ');
  return [
    ...(kept.hidden.length > 0 ? [`Behind panels\n${indent(hiddenText(kept.hidden))}`] : []),
    ...(kept.batches.length > 0 ? [`Batches\n${indent(batchesText(kept.batches))}`] : []),
    ...(kept.pairs.length > 0 ? [`Pairs of hands\n${indent(pairsText(kept.pairs))}`] : []),
    ...(kept.orders.length > 0 ? [`Ordered and received\n${indent(ordersText(kept.orders))}`] : []),
    ...(kept.missingSizes.length > 0
      ? [`Sizes not said yet\n${kept.missingSizes.map((one) => `  ${missingWords(one)}\n`).join('')}`]
      : []),
  ];
}
