/** What is kept on record beside figures: what is behind panels, batches, orders with what came of them, pairs of hands. */
import type { BatchView, HiddenView, OrderView, PairView } from '../../model/kept/kept-views.ts';
import type { Source } from '../../model/views.ts';
import {
  BATCH_CAUTION,
  BEHIND_CAUTION,
  batchFacts,
  batchGaps,
  deliveryWords,
  dewWords,
  hiddenWords,
  orderHead,
  pairWords,
} from '../kept-words.ts';
import { dayOf } from '../source-text.ts';
import { sentence } from '../words.ts';
import { block, bothSystems, type Desk, listOf, place, quote } from './fragments.ts';
import { grouped } from './grouped.ts';
import { html, type Part } from './html.ts';

export interface Records {
  readonly behind: readonly HiddenView[];
  readonly batches: readonly BatchView[];
  readonly orders: readonly OrderView[];
  readonly hands: readonly PairView[];
}

export function recordsMain(desk: Desk, { behind, batches, orders, hands }: Records): Part {
  const none = [behind, batches, orders, hands].every((list) => list.length === 0);
  if (none)
    return html`<p>No panel, order, batch or pair is on record. That means only that nobody told.</p>\n`;
  return [
    behind.length > 0 && behindBlock(desk, behind),
    block(2, 'Orders', [listOf(orders.map((order) => orderEntry(desk, order)))]),
    batches.length > 0 &&
      block(2, 'Batches', [
        html`<p>${BATCH_CAUTION}</p>\n`,
        listOf([...batches].reverse().map((batch) => batchEntry(desk, batch))),
      ]),
    block(2, 'One for each hand', [listOf(hands.map((pair) => pairEntry(desk, pair)))]),
  ];
}

const said = (desk: Desk, source: Source): Part =>
  html` <span class="where">${place(desk, source)}, ${dayOf(source.recordedAt)}</span>${source.quote !== '' && html` ${quote(source.quote)}`}`;

function behindBlock(desk: Desk, behind: readonly HiddenView[]): Part {
  return block(2, 'Behind panels', [
    html`<p>${BEHIND_CAUTION}</p>\n`,
    [...grouped(behind, ({ panel }) => panel)].map(([panel, there]) =>
      block(3, sentence(panel), [
        listOf(there.map((one) => html`${sentence(hiddenWords(one))}${said(desk, one.source)}`)),
      ]),
    ),
  ]);
}

function orderEntry(desk: Desk, order: OrderView): Part {
  const acts = [order.order, ...order.received].filter((one) => one !== undefined);
  return html`${sentence(orderHead(order))}${acts.map((one) => {
    const words = deliveryWords(one);
    return html`<br><span class="detail">${one.act}${words !== '' && `: ${words}`}</span>${said(desk, one.source)}`;
  })}`;
}

function batchEntry(desk: Desk, batch: BatchView): Part {
  const details = [batchFacts(batch), dewWords(batch), batchGaps(batch)].filter((words) => words !== '');
  return html`${sentence(batch.product)}${said(desk, batch.source)}${details.map(
    (words) => html`<br><span class="detail">${words}</span>`,
  )}`;
}

function pairEntry(desk: Desk, pair: PairView): Part {
  return html`${sentence(pairWords(pair))}${said(desk, pair.source)}${pair.figures.map(
    ({ side, attribute, value, unit }) =>
      html`<br><span class="detail">${side} ${attribute}: ${bothSystems({ value, unit })}</span>`,
  )}`;
}
