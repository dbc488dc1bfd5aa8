/** Words for what is kept on record, shared by the terminal and the pages. Plain text; pages escape it. */
import type { BatchFactKind } from '../language/notes.ts';
import type {
  BatchView,
  BehindWork,
  DeliveryView,
  HiddenView,
  MissingSizes,
  OrderView,
  PairView,
} from '../model/kept/kept-views.ts';
import { quantityText, unitSign } from './quantity-text.ts';
import { placeOf } from './source-text.ts';
import { oneLine } from './words.ts';

/** Said with every list of batches: what a product needs stands on its data sheet and nowhere here. */
export const BATCH_CAUTION =
  "Mix ratio, pot life, temperature and humidity limits are those of the product's own data sheet. Nothing here says that a batch is sound, and too little hardener, cold or damp may leave it uncured.";

/** Said with what is behind a panel: what nobody told is not on record. */
export const BEHIND_CAUTION =
  'Only what was told is on record. Look, and test with a detector, before drilling or cutting; switch off what may be live.';

const FACTS: Readonly<Record<BatchFactKind, string>> = {
  ratio: 'ratio',
  metered: 'metered',
  amount: 'amount',
  air: 'air',
  surface: 'surface',
  material: 'product at',
  humidity: 'humidity',
  used: 'used',
  when: 'when',
};

/** Facts that are asked of every batch; what is missing is said to be. */
const ASKED: readonly BatchFactKind[] = ['ratio', 'metered', 'air', 'surface', 'humidity', 'used'];

/** "ratio five to one; air 14 degrees". The words as they were said. */
export function batchFacts({ facts }: BatchView): string {
  return facts.map((fact) => `${FACTS[fact.what]} ${factWords(fact)}`).join('; ');
}

/** The words as said; a bare number gets the unit that was said beside another one. */
function factWords({ words, unit }: BatchView['facts'][number]): string {
  const sign = unit === undefined || unit === '1' ? '' : unitSign(unit);
  const isBare =
    /^(?:about )?[\d.]+$/i.test(words) ||
    !/[\d%°]|degree|cent|gram|kilo|lit|ounce|pound|pint|gal|mil|cup/i.test(words);
  return `${oneLine(words)}${sign !== '' && isBare ? ` ${sign}` : ''}`;
}

/** "dew point 7.5 °C; the surface was 3.5 above it"; empty where it was not worked out. */
export function dewWords({ dewPoint }: BatchView): string {
  if (!dewPoint) return '';
  const { surfaceAbove, isClose } = dewPoint;
  const dew = `dew point ${quantityText(dewPoint)}`;
  if (surfaceAbove === undefined) return `${dew}; the surface was not said`;
  const side = surfaceAbove < 0 ? `${-surfaceAbove} below` : `${surfaceAbove} above`;
  const close = isClose ? ': charts for coatings want 3 °C (5 °F) at least, see the data sheet' : '';
  return `${dew}; the surface was ${side} it${close}`;
}

/** "not said: surface, humidity"; nothing when all was said. */
export function batchGaps({ facts }: BatchView): string {
  const missing = ASKED.filter((what) => !facts.some((fact) => fact.what === what));
  return missing.length === 0
    ? ''
    : `not said: ${missing.map((what) => (what === 'used' ? 'where it was used' : FACTS[what])).join(', ')}`;
}

/** What is there, and the photo or clip that shows it. */
export function hiddenWords({ what, service, shot, clip }: HiddenView): string {
  const kind = service === 'other' || what.toLowerCase().includes(service) ? '' : ` (${service})`;
  return `${oneLine(what)}${kind}${shot ? `; ${oneLine(shot)}` : ''}${clip ? `; clip ${oneLine(clip)}` : ''}`;
}

/** "locker lid: one port, one starboard". */
export function pairWords({ part, sides }: PairView): string {
  return `${oneLine(part)}: ${sides ? `one ${sides[0]}, one ${sides[1]}` : 'one for each hand'}`;
}

/** "8, thickness 21 mm". */
export function deliveryWords({
  count,
  outOf,
  short,
  sizes,
  instead,
}: Pick<DeliveryView, 'count' | 'outOf' | 'short' | 'sizes' | 'instead'>): string {
  return [
    ...(count === undefined ? [] : [outOf === undefined ? String(count) : `${count} of ${outOf}`]),
    ...(short === undefined ? [] : [`${short} short`]),
    ...sizes.map((size) => `${size.attribute} ${quantityText(size)}`),
    ...(instead ? [`${oneLine(instead.came)} instead of ${oneLine(instead.ordered)}`] : []),
  ].join(', ');
}

/** One line for an order: goods, status. */
export function orderHead({ item, status }: OrderView): string {
  return `${oneLine(item) || 'goods not named'}: ${status}`;
}

/** "behind the galley panel: twelve volt feed (cable) (memo 3, 02:17)". */
export function behindWords({ panel, there }: BehindWork): string {
  const list = there.map((one) => `${hiddenWords(one)}, ${placeOf(one.source)}`).join('; ');
  return `behind the ${oneLine(panel)}: ${list}`;
}

/** "locker lid: thickness". */
export function missingWords({ thing, missing }: MissingSizes): string {
  return `${oneLine(thing)}: ${missing.join(', ')}`;
}
