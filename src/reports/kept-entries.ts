/** What is kept on record, as entries of a page. */
import type { KeptForNext, KeptOfDay } from '../model/kept/kept-views.ts';
import type { Source } from '../model/views.ts';
import {
  BATCH_CAUTION,
  BEHIND_CAUTION,
  batchFacts,
  batchGaps,
  deliveryWords,
  dewWords,
  hiddenWords,
  missingWords,
  pairWords,
} from './kept-words.ts';
import { bullet, escapeMarkdown, quoted, section } from './markdown.ts';
import { dayOf, placeOf } from './source-text.ts';
import { sentence } from './words.ts';

const place = (source: Source) => `(${escapeMarkdown(placeOf(source))})`;
const said = ({ quote }: Source) => quote !== '' && quoted(quote);

/** Batches, what was closed in, pairs, what came, and warnings, each under its heading; nothing where there is none. */
export function keptSections(kept: KeptOfDay | undefined, level: 2 | 3 = 2): string[] {
  if (!kept) return [];
  const batches = kept.batches.map((batch) =>
    bullet(
      `${escapeMarkdown(sentence(batch.product))} ${place(batch.source)}`,
      batch.facts.length > 0 && escapeMarkdown(batchFacts(batch)),
      dewWords(batch) !== '' && dewWords(batch),
      batchGaps(batch) !== '' && batchGaps(batch),
      said(batch.source),
    ),
  );
  const hidden = kept.hidden.map((one) =>
    bullet(
      `${escapeMarkdown(sentence(one.panel))}: ${escapeMarkdown(hiddenWords(one))} ${place(one.source)}`,
      said(one.source),
    ),
  );
  const pairs = kept.pairs.map((pair) =>
    bullet(`${escapeMarkdown(sentence(pairWords(pair)))} ${place(pair.source)}`, said(pair.source)),
  );
  const deliveries = kept.deliveries.map((one) =>
    bullet(
      `${escapeMarkdown(sentence(one.item || 'goods not named'))}, ${one.act}: ${escapeMarkdown(deliveryWords(one))} ${place(one.source)}`,
    ),
  );
  return [
    ...section(level, 'Batches', batches.length > 0 ? [BATCH_CAUTION, '', ...batches] : []),
    ...section(level, 'Behind panels', hidden),
    ...section(level, 'Pairs of hands', pairs),
    ...section(level, 'Ordered and received', deliveries),
    ...section(level, 'Behind where work goes through', warnings(kept.behindWork)),
  ];
}

function warnings(work: KeptOfDay['behindWork']): string[] {
  if (work.length === 0) return [];
  const entries = work.map(({ panel, there, work: source }) =>
    bullet(
      `${escapeMarkdown(sentence(panel))}: ${quoted(source.quote)} ${place(source)}`,
      ...there.map(
        (one) =>
          `behind it: ${escapeMarkdown(hiddenWords(one))}, told on ${dayOf(one.source.recordedAt)} ${place(one.source)}${one.source.quote ? `, ${quoted(one.source.quote)}` : ''}`,
      ),
    ),
  );
  return [BEHIND_CAUTION, '', ...entries];
}

/** Sizes still missing: more would not be answered in a morning. Common practice, no source. */
const MOST_MISSING = 5;

/** What is behind the panels that open work goes through, and the sizes that ready work lacks. */
export function keptNextSections(kept: KeptForNext | undefined): string[] {
  if (!kept) return [];
  const missing = kept.missingSizes
    .slice(0, MOST_MISSING)
    .map((one) =>
      bullet(
        `${escapeMarkdown(sentence(missingWords(one)))} ${place(one.source)}`,
        `for: ${escapeMarkdown(one.gist)}`,
      ),
    );
  return [
    ...section(2, 'Sizes not said yet', missing),
    ...section(2, 'Behind where work will go through', warnings(kept.behindWork)),
  ];
}
