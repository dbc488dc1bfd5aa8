/** Says of each quantity in a memo which thing it belongs to and what of it. */
import { kindsOf, singular } from '../lexicon/trade-nouns.ts';
import type { Attribute, ChangeCue, FigureNote, Quantity, ReadContext, Span, TraceStep } from '../notes.ts';
import { anchorOf } from './anchor.ts';
import {
  type FilledIn,
  type FiredRule,
  filledInAttribute,
  firedRules,
  PLAIN_MEASURE,
  pairAttribute,
  pairedWith,
  SIZE_OF_ADJECTIVE,
  saidAttribute,
} from './attributes.ts';
import { type Chosen, chooseThing, type Weights } from './choice.ts';
import { CHOICE_WEIGHTS } from './choice-weights.ts';
import { completedName } from './completed-names.ts';
import { Discourse, type Name } from './discourse.ts';
import { inMillimetres, isPutAtHeight } from './fitness.ts';
import { FormulaFinder } from './formulas.ts';
import { KnownThings } from './naming.ts';
import { ahead, type Parse, parseMemo, tagAt, wordAt } from './parse.ts';
import type { Claim, Site } from './site.ts';
import { type ChosenSize, chooseSize, type SizeWeights } from './size-choice.ts';
import { type Evidence, sizeEvidence, type Vote } from './size-evidence.ts';
import { SIZE_WEIGHTS } from './size-weights.ts';
import { isSize } from './sizes.ts';
import {
  bindsItself,
  changeOf,
  conditionOf,
  datumOf,
  saidAround,
  sizeKindOf,
  stateOf,
} from './speech-acts.ts';

/** What is known of a quantity before its thing is found. */
export interface ItemQuantity extends Quantity {
  readonly span: Span;
  readonly quote: string;
  /** Number and unit alone, when it is known apart from the quote. */
  readonly core?: Span;
  /** The slip that it puts right, where the words about that one tell its thing. */
  readonly saidAt?: Span;
  readonly dimension: FigureNote['dimension'];
  readonly bound: FigureNote['bound'];
  readonly high?: number;
  readonly plusMinus?: number;
  readonly plusMinusUnit?: string;
  readonly assumed?: readonly string[];
  readonly alternatives?: readonly Quantity[];
  readonly change?: ChangeCue;
  readonly replaces?: Quantity;
  /** Sizes named beside the number, as the reader of quantities saw them. */
  readonly sizeWords?: readonly { readonly attribute: Attribute }[];
  /** True for an assumption made to talk about it: "call it 26". */
  readonly rough?: boolean;
}

export interface ItemsRead {
  readonly figures: readonly FigureNote[];
  readonly trace: readonly TraceStep[];
}

/** Names that a figure got when nothing in the talk says what it is of. */
const UNNAMED: Name = ['unnamed'];

/** What square millimetres are of when nothing else is said. */
const CABLE: Name = ['cable'];

/** Takes plain measures off the end: "bench height" is the bench, its height is the attribute. */
function bareName(name: Name): Name {
  let end = name.length;
  while (end > 1 && PLAIN_MEASURE.has(name[end - 1] as string)) end--;
  return name.slice(0, end);
}

/** For fitting: other weights, and a look at what was weighed. */
export interface Choice {
  readonly weights?: Weights;
  readonly observe?: (site: Site, quantity: number, chosen: Chosen | undefined) => void;
  readonly sizeWeights?: SizeWeights;
  readonly observeSize?: (site: Site, quantity: number, evidence: Evidence, name: Name) => void;
}

/** Names every quantity of one memo, in order of speech. Linear in the memo's length. */
export function readItems(
  text: string,
  quantities: readonly ItemQuantity[],
  context: ReadContext,
  choice: Choice = {},
): ItemsRead {
  const weights = choice.weights ?? CHOICE_WEIGHTS;
  const sizeWeights = choice.sizeWeights ?? SIZE_WEIGHTS;
  const parse = parseMemo(
    text,
    quantities.map(({ span, core, saidAt }) => ({ ...(saidAt ?? core ?? span), isCore: core !== undefined })),
  );
  const known = new KnownThings(context.knownItems ?? [], context.knownFigures ?? []);
  const discourse = new Discourse(parse, known);
  const trace: TraceStep[] = [];
  const figures = quantities.map((quantity, k): FigureNote => {
    const at = parse.wordOfQuantity[k] as number;
    const fired = at >= 0 && quantity.dimension === 'length' ? firedRules(parse, at, quantity.bound) : [];
    const said =
      at < 0
        ? undefined
        : (fired[0]?.attribute ??
          (quantity.dimension === 'length'
            ? undefined
            : saidAttribute(parse, at, quantity.dimension, quantity.bound)) ??
          sizeWordOf(quantity));
    const site: Site = {
      parse,
      discourse,
      at,
      dimension: quantity.dimension,
      quantity,
      ...(said ? { said } : {}),
    };
    const found = at < 0 ? undefined : chooseThing(site, weights, bareName, choice.observe !== undefined);
    choice.observe?.(site, k, found);
    const claim = found?.proposal?.claim;
    const name = found ? completedName(site, found.name) : quantity.unit === 'mm2' ? CABLE : UNNAMED;
    // What is no length is told by its unit: "a fall of one in forty" is no offset.
    const byUnit = quantity.dimension !== 'length' && said !== undefined;
    const spoken = roundOf(site, name, said === 'offset' || byUnit ? said : (claim?.attribute ?? said));
    const likely: FilledIn = spoken ? { attribute: spoken, by: 'said' } : bareAttribute(site, name);
    const evidence =
      at >= 0 &&
      quantity.dimension === 'length' &&
      isSize(likely.attribute) &&
      !fired[0]?.settles &&
      !isSettled(site, likely)
        ? evidenceOf(site, quantity, name, fired, found, likely)
        : undefined;
    if (evidence) choice.observeSize?.(site, k, evidence, name);
    const chosen = evidence && chooseSize(evidence, sizeWeights);
    const taken = chosen && sizeOfNext(parse, at, parse.wordOfQuantity[k + 1] ?? -1);
    const attribute = (chosen?.size === taken ? chosen?.second : chosen?.size) ?? likely.attribute;
    const filled = [
      ...(quantity.assumed ?? []),
      ...(found?.proposal === undefined || found.proposal.isGuess ? ['item'] : []),
      ...(spoken === attribute || saysSo(evidence, attribute) ? [] : ['attribute']),
    ];
    const item = name.join(' ');
    if (at >= 0 && found) {
      discourse.last = { name, word: at, sentence: parse.sentenceOf[at] as number, attribute };
      known.keep({ item, attribute, value: quantity.value, unit: quantity.unit });
    }
    trace.push({
      stage: 'item',
      rule: found ? (found.proposal?.frame ?? 'the likeliest thing') : 'none',
      span: quantity.span,
      outcome: found ? 'read' : 'lost',
      why: `${item}: ${attribute}`,
    });
    if (chosen) trace.push(sizeStep(quantity, chosen));
    return {
      kind: 'figure',
      quote: quantity.quote,
      span: quantity.span,
      item,
      attribute,
      value: quantity.value,
      unit: quantity.unit,
      dimension: quantity.dimension,
      bound: quantity.bound,
      ...(quantity.high !== undefined ? { high: quantity.high } : {}),
      ...(quantity.plusMinus !== undefined ? { plusMinus: quantity.plusMinus } : {}),
      ...(quantity.plusMinusUnit !== undefined ? { plusMinusUnit: quantity.plusMinusUnit } : {}),
      ...(at < 0 ? {} : spokenOf(site, quantity, claim)),
      ...(quantity.replaces ? { replaces: quantity.replaces } : {}),
      ...(filled.length > 0 ? { assumed: filled } : {}),
      ...(quantity.alternatives ? { alternatives: quantity.alternatives } : {}),
    };
  });
  const placed = figures.map((figure, k) => ({ figure, word: parse.wordOfQuantity[k] as number }));
  const formulas = new FormulaFinder(parse, discourse, placed, context.knownFigures ?? []).find();
  return {
    figures: figures.map((figure, k) => {
      const formula = formulas.get(k);
      return formula ? { ...figure, formula } : figure;
    }),
    trace,
  };
}

/**
 * What a size was filled in by that leaves nothing to weigh. A thing whose like size is known keeps it, so that the
 * later figure meets the earlier one; "900 by 600" does not say which is which; "860 clear" is the room there.
 */
const SETTLED: ReadonlySet<FilledIn['by']> = new Set(['before', 'pair', 'fellow', 'clear', 'spacing']);

/**
 * Whether the size is beyond doubt: beside what it was filled in by, an adjective right behind the number settles it, and
 * so does a pair that is told as a section ("lengths of 100 by 75").
 */
const isSettled = ({ parse, at }: Site, { attribute, by }: FilledIn): boolean =>
  SETTLED.has(by) ||
  (by === 'said' && SIZE_OF_ADJECTIVE[wordAt(parse, at + 1)] === attribute) ||
  (by === 'said' && attribute === 'offset' && COMPARED.test(ahead(parse, at + 1, 3))) ||
  (attribute === 'size' && pairedWith(parse, at) !== undefined);

/**
 * "Eleven metres over the platforms and two metres wide": the size that words give the next figure, which is of the same
 * thing where no other verb stands between. This one is another size.
 */
function sizeOfNext(parse: Parse, at: number, next: number): Attribute | undefined {
  if (next <= at || next - at > MOST_TO_NEXT || parse.sentenceOf[at] !== parse.sentenceOf[next])
    return undefined;
  const between = Array.from({ length: next - at - 1 }, (_, k) => at + 1 + k);
  if (between.some((word) => /^(?:verb|be|pronoun|stop)$/.test(tagAt(parse, word) ?? ''))) return undefined;
  const joint = wordAt(parse, next - 1);
  return joint === 'and' || joint === 'by' ? SIZE_OF_ADJECTIVE[wordAt(parse, next + 1)] : undefined;
}
const MOST_TO_NEXT = 6;

/** "Four smaller", "an eighth under each way": how much one differs from the other, and no size of its own. */
const COMPARED =
  /^(?:smaller|bigger|larger|taller|longer|shorter|wider|narrower|thicker|thinner|deeper|shallower)\b|^(?:under|over|smaller|bigger) (?:each|all|both|either)\b/;

/** What speaks for the sizes that a length may be. */
function evidenceOf(
  site: Site,
  quantity: ItemQuantity,
  name: Name,
  fired: readonly FiredRule[],
  found: Chosen | undefined,
  likely: FilledIn,
): Evidence {
  const { discourse } = site;
  const { known, last } = discourse;
  const item = name.join(' ');
  const sizeWord = quantity.sizeWords?.[0]?.attribute;
  const claim = found?.proposal?.claim.attribute;
  const told: Vote[] = fired.map(({ rule, attribute }): Vote => [`rule ${rule}`, attribute]);
  if (fired[0]) told.push(['first rule', fired[0].attribute]);
  if (sizeWord) told.push(['size word', sizeWord]);
  if (claim) told.push(['frame', claim], [`frame ${found?.proposal?.frame}`, claim]);
  told.push(['likely', likely.attribute], [`likely by ${likely.by}`, likely.attribute]);
  const { value, unit } = quantity;
  const millimetres = inMillimetres(value, unit);
  const sameValue = [...known.withValue('length', value, unit)]
    .flatMap((thing) => known.lengthsOf(thing))
    .filter((length) => Math.abs(length.millimetres / millimetres - 1) < 1e-6);
  const replaces = quantity.replaces && inMillimetres(quantity.replaces.value, quantity.replaces.unit);
  return sizeEvidence({
    site,
    name,
    anchor: anchorOf(site),
    told,
    known: known.lengthsOf(item),
    sameValue,
    bound: quantity.bound,
    isRange: quantity.high !== undefined,
    isToleranced: quantity.plusMinus !== undefined,
    ...(replaces ? { replaces } : {}),
    ...(last ? { last } : {}),
  });
}

/** Whether words beside the number name the size, so that nothing was filled in. */
const saysSo = (evidence: Evidence | undefined, attribute: Attribute): boolean =>
  evidence?.votes.some(
    ([source, size]) => size === attribute && /^(?:rule|size word|frame|word next|word prev)\b/.test(source),
  ) ?? false;

const sizeStep = (quantity: ItemQuantity, { size, second, reasons }: ChosenSize): TraceStep => ({
  stage: 'size',
  rule: 'the likeliest size',
  span: quantity.span,
  outcome: 'read',
  why: `${size} rather than ${second}: ${reasons().join(', ') || 'nothing speaks against it'}`,
});

/** The size named beside the number; "clear" alone is left to the thing: a door's width, a gap, a clearance. */
function sizeWordOf(quantity: ItemQuantity): Attribute | undefined {
  const size = quantity.sizeWords?.[0]?.attribute;
  // "12 running feet of skirting": told along its length.
  if (!size && /\b(?:running|lineal|linear) \p{L}+$/iu.test(quantity.quote)) return 'length';
  return size === 'clearance' && /\bclear$/i.test(quantity.quote) ? undefined : size;
}

/** Round things are as wide as their diameter: "the drum is 560 across". */
function roundOf(site: Site, name: Name, attribute: Attribute | undefined): Attribute | undefined {
  if (attribute !== 'width') return attribute;
  const kinds = kindsOf(name);
  const isRound = kinds.has('round') || kinds.has('pipe') || kinds.has('hole') || name.includes('round');
  const across =
    wordAt(site.parse, site.at + 1) === 'across' || /\bacross$/i.test((site.quantity as ItemQuantity).quote);
  return isRound && across ? 'diameter' : attribute;
}

/** What the words around a figure tell beside its thing and size. */
function spokenOf(
  site: Site,
  quantity: ItemQuantity,
  claim: Claim | undefined,
): Pick<FigureNote, 'state' | 'change' | 'sizeKind' | 'condition' | 'datum' | 'limit'> {
  const around = saidAround(site.parse, site.at);
  const state = stateOf(around, quantity);
  const change = quantity.change ?? changeOf(around, state);
  const sizeKind = quantity.dimension === 'length' ? sizeKindOf(around) : undefined;
  const condition = conditionOf(around);
  const datum = claim?.datum ?? (quantity.dimension === 'length' ? datumOf(around) : undefined);
  const binds = claim?.binds ?? (bindsItself(quantity.bound, around) ? '' : undefined);
  return {
    ...(state ? { state } : {}),
    ...(change ? { change } : {}),
    ...(sizeKind ? { sizeKind } : {}),
    ...(condition ? { condition } : {}),
    ...(datum ? { datum } : {}),
    ...(binds === undefined ? {} : { limit: { about: binds } }),
  };
}

function bareAttribute(site: Site, name: Name): FilledIn {
  const { parse, at, discourse } = site;
  if (at < 0) return { attribute: 'other', by: 'nothing' };
  const pair = pairedWith(parse, at);
  if (pair) {
    if (kindsOf(name).has('fastener')) return { attribute: pair.isFirst ? 'diameter' : 'length', by: 'pair' };
    const other = saidAttribute(parse, pair.word, 'length', 'exact');
    return { attribute: pairAttribute(other, kindsOf(name).has('opening')), by: other ? 'fellow' : 'pair' };
  }
  if (wordAt(parse, at - 1) === 'at') {
    // "joists at 16": how far apart, though nobody says centres.
    const mm = inMillimetres(site.quantity.value, site.quantity.unit);
    if (kindsOf(name).has('joist') && mm >= 250 && mm <= 900) return { attribute: 'other', by: 'spacing' };
    // "Outlets at eighteen inches": as high, and no spacing.
    if (isPutAtHeight(singular(name.at(-1) ?? ''), inMillimetres(site.quantity.value, site.quantity.unit)))
      return { attribute: 'height', by: 'fellow' };
    // "the outlet is 180 above the floor and the pipe's at 230": the same kind of place.
    const before = discourse.last;
    if (
      before &&
      before.sentence === parse.sentenceOf[at] &&
      before.name.includes('above') &&
      before.attribute === 'height'
    )
      return { attribute: 'height', by: 'fellow' };
  }
  const clear =
    /\bclear$/i.test((site.quantity as ItemQuantity).quote) ||
    wordAt(parse, at + 1) === 'clear' ||
    /^\w+ clear\b/.test(ahead(parse, at + 1, 2));
  return filledInAttribute(
    name,
    clear,
    discourse.known.lengthsOf(name.join(' ')),
    inMillimetres(site.quantity.value, site.quantity.unit),
  );
}
