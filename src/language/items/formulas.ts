/**
 * Finds how a figure was worked out from others: "the room less 1700", "the opening with thirty a side", "that leaves".
 * A sum that is said gives its formula when its parts are known; a sum that is only implied ("so 1220") must also come
 * out at the value that was said, to within a two-hundredth.
 */
import { singular } from '../lexicon/trade-nouns.ts';
import type { Attribute, Dimension, FigureNote, KnownFigure, Quantity } from '../notes.ts';
import { MEASURE_ATTRIBUTE } from './attributes.ts';
import type { Discourse } from './discourse.ts';
import { inMillimetres } from './fitness.ts';
import { isSpeaker, type Parse, phraseAt, phraseFrom, tagAt, wordAt } from './parse.ts';
import { partInSum } from './part-in-sum.ts';

/** A named figure with its place among the words. */
export interface PlacedFigure {
  readonly figure: FigureNote;
  readonly word: number;
}

/** One part of a sum: how it is written, what it is worth in base units, and a formula's text for it. */
interface Part {
  readonly text: string;
  readonly worth: number;
  readonly item?: string;
}

const WORTH: Readonly<Record<string, number>> = { g: 1, kg: 1000, t: 1e6, lb: 453.59237, oz: 28.349523125 };

/** A length in millimetres or a mass in grams; undefined for what is never summed here. */
function worthOf(quantity: Quantity, dimension: Dimension): number | undefined {
  const worth =
    dimension === 'length'
      ? inMillimetres(quantity.value, quantity.unit)
      : dimension === 'mass'
        ? quantity.value * (WORTH[quantity.unit] ?? Number.NaN)
        : Number.NaN;
  return Number.isNaN(worth) ? undefined : worth;
}

const near = (a: number, b: number): boolean =>
  Math.abs(a - b) <= 0.005 * Math.max(Math.abs(a), Math.abs(b)) + 0.26;

/** Names that a formula can hold: letters, spaces and hyphens inside words. */
const isWritable = (name: string): boolean => /^\p{L}[\p{L}\d' -]*$/u.test(name) && !/ - /.test(name);

const written = (quantity: Quantity): string => `${Number(quantity.value.toPrecision(12))} ${quantity.unit}`;

export class FormulaFinder {
  readonly #parse: Parse;
  readonly #discourse: Discourse;
  readonly #figures: readonly PlacedFigure[];
  readonly #known: readonly KnownFigure[];
  /** Places in the list of the figures that are no part of a sum, in the order of speech; found where a sum asks. */
  #results: readonly number[] | undefined;

  constructor(
    parse: Parse,
    discourse: Discourse,
    figures: readonly PlacedFigure[],
    known: readonly KnownFigure[],
  ) {
    this.#parse = parse;
    this.#discourse = discourse;
    this.#figures = figures;
    this.#known = known;
  }

  /** Formulas by index of the figure that they give. */
  find(): ReadonlyMap<number, string> {
    const found = new Map<number, string>();
    this.#figures.forEach(({ figure, word }, index) => {
      if (word < 0 || (figure.dimension !== 'length' && figure.dimension !== 'mass')) return;
      const formula = this.#said(index) ?? this.#same(index) ?? this.#implied(index);
      if (formula) found.set(index, formula);
    });
    return found;
  }

  /** "X less Y, so Q" and "Q, that's X less Y" in one sentence. */
  #said(index: number): string | undefined {
    const { word } = this.#figures[index] as PlacedFigure;
    const sum = this.#sumNear(word);
    if (sum === undefined) return undefined;
    const last = this.#figures.length - 1;
    // The result is the figure after the sum; parts of it are not.
    const after = this.#resultAfter(sum);
    if (word > sum && after !== index) return undefined;
    if (
      word < sum &&
      index < last &&
      after >= 0 &&
      this.#sentence((this.#figures[after] as PlacedFigure).word) === this.#sentence(sum)
    )
      return undefined;
    if (this.#isOperand(word)) return undefined;
    return this.#formulaAt(sum, index);
  }

  /** The first figure behind a word that is no part of a sum; -1 where there is none. */
  #resultAfter(sum: number): number {
    this.#results ??= this.#figures.flatMap(({ word }, index) =>
      word >= 0 && !this.#isOperand(word) ? [index] : [],
    );
    const results = this.#results;
    const wordOf = (place: number) => this.#figures[results[place] as number]?.word ?? 0;
    let [low, high] = [0, results.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if (wordOf(middle) > sum) high = middle;
      else low = middle + 1;
    }
    return results[low] ?? -1;
  }

  #sentence(word: number): number {
    return this.#parse.sentenceOf[word] as number;
  }

  /** The word of a sum ("less", "plus", "with … a side") in the sentence of a figure. */
  #sumNear(word: number): number | undefined {
    const sentence = this.#sentence(word);
    for (let k = word - 1; k >= 0 && this.#sentence(k) === sentence && k > word - 24; k--)
      if (this.#isSum(k)) return k;
    for (
      let k = word + 1;
      k < this.#parse.words.length && this.#sentence(k) === sentence && k < word + 10;
      k++
    )
      if (this.#isSum(k)) return k;
    return undefined;
  }

  #isSum(k: number): boolean {
    const word = wordAt(this.#parse, k);
    if (word === 'less' || word === 'minus' || word === 'plus') return wordAt(this.#parse, k + 1) !== 'than';
    if (word !== 'with' && word !== 'and') return false;
    const quantity =
      tagAt(this.#parse, k + 1) === 'quantity'
        ? k + 1
        : tagAt(this.#parse, k + 2) === 'quantity'
          ? k + 2
          : -1;
    return quantity > 0 && word === 'with' && this.#eachSide(quantity) === 2;
  }

  /** True for a quantity that is itself added or taken away. */
  #isOperand(word: number): boolean {
    if (partInSum(this.#parse, word)) return true;
    let k = word - 1;
    while (
      /^(?:a|an|the|about|another|two|only)$/.test(wordAt(this.#parse, k)) ||
      tagAt(this.#parse, k) === 'number'
    )
      k--;
    return this.#isSum(k);
  }

  /** 2 when a quantity is said to stand on both sides, else 1. */
  #eachSide(word: number): 1 | 2 {
    for (let k = word + 1; k < word + 7; k++) {
      const said = wordAt(this.#parse, k);
      if (
        tagAt(this.#parse, k) === 'comma' ||
        tagAt(this.#parse, k) === 'stop' ||
        tagAt(this.#parse, k) === 'quantity'
      )
        return 1;
      const next = wordAt(this.#parse, k + 1);
      if (/^(?:each|either|both|a|per)$/.test(said) && /^(?:side|end|way|sides|ends)$/.test(next)) return 2;
      if (said === 'all' && /^(?:round|around)$/.test(next)) return 2;
    }
    return 1;
  }

  #formulaAt(sum: number, index: number): string | undefined {
    const { figure } = this.#figures[index] as PlacedFigure;
    const target = worthOf(figure, figure.dimension);
    if (target === undefined) return undefined;
    const minus = /^(?:less|minus)$/.test(wordAt(this.#parse, sum));
    const lefts = this.#partsLeft(sum, figure);
    const rights = this.#partsRight(sum, figure);
    for (const left of lefts)
      for (const right of rights)
        if (near(minus ? left.worth - right.worth : left.worth + right.worth, target))
          return `${left.text} ${minus ? '-' : '+'} ${right.text}`;
    const [left] = lefts;
    const [right] = rights;
    // Said outright and each part can mean but one thing: kept though it does not come out, since that is the news.
    if (lefts.length !== 1 || rights.length !== 1 || !left || !right) return undefined;
    return `${left.text} ${minus ? '-' : '+'} ${right.text}`;
  }

  #partsLeft(sum: number, result: FigureNote): Part[] {
    let k = sum - 1;
    while (
      tagAt(this.#parse, k) === 'dimension' ||
      tagAt(this.#parse, k) === 'comma' ||
      tagAt(this.#parse, k) === 'adverb'
    )
      k--;
    return this.#partsAt(k, result, 1);
  }

  #partsRight(sum: number, result: FigureNote): Part[] {
    let k = sum + 1;
    let times = 1;
    while (
      tagAt(this.#parse, k) === 'adverb' ||
      tagAt(this.#parse, k) === 'determiner' ||
      tagAt(this.#parse, k) === 'number'
    ) {
      if (wordAt(this.#parse, k) === 'two' || wordAt(this.#parse, k) === 'twice') times = 2;
      k++;
    }
    if (tagAt(this.#parse, k) === 'quantity') times = Math.max(times, this.#eachSide(k));
    return this.#partsAt(k, result, times);
  }

  #partsAt(word: number, result: FigureNote, times: number): Part[] {
    const said = this.#figures.find((figure) => figure.word === word);
    const prefix = times === 1 ? '' : `${times} * `;
    if (said) {
      const worth = worthOf(said.figure, said.figure.dimension);
      return worth === undefined ? [] : [{ text: `${prefix}${written(said.figure)}`, worth: worth * times }];
    }
    const phrase = phraseAt(this.#parse, word) ?? phraseFrom(this.#parse, word);
    if (!phrase || isSpeaker(phrase)) return [];
    const measure = MEASURE_ATTRIBUTE[singular(phrase.head)];
    const name =
      measure && phrase.bare ? undefined : this.#discourse.nameOf(phrase, { dimension: result.dimension });
    const bare = name && measure ? name.slice(0, -1).join(' ') : name?.join(' ');
    // "the height less the top": the height of whatever the part belongs to.
    const fits = (figure: KnownFigure) =>
      (measure === undefined || figure.attribute === measure) &&
      (bare === undefined
        ? this.#isRelated(figure.item, result.item)
        : figure.item === bare || endsWith(figure.item, bare));
    return this.#partsOf(fits, result, prefix, times);
  }

  /** True when two names share a word: the bench and the bench legs. */
  #isRelated(item: string, other: string): boolean {
    const words = new Set(other.split(' ').map(singular));
    return item !== other && item.split(' ').some((word) => words.has(singular(word)));
  }

  #partsOf(
    fits: (figure: KnownFigure) => boolean,
    result: FigureNote,
    prefix: string,
    times: number,
  ): Part[] {
    const latest = new Map<string, Part>();
    const add = (figure: KnownFigure, dimension: Dimension) => {
      if (figure.item === result.item && figure.attribute === result.attribute) return;
      if (!isWritable(figure.item) || !fits(figure)) return;
      const worth = worthOf(figure, dimension);
      const text = reference(figure.item, figure.attribute);
      if (worth !== undefined)
        latest.set(text, { text: `${prefix}${text}`, worth: worth * times, item: figure.item });
    };
    for (const figure of this.#known) add(figure, result.dimension);
    for (const { figure } of this.#figures)
      if (figure.dimension === result.dimension) add(figure, figure.dimension);
    return [...latest.values()].reverse();
  }

  /** "as deep as the bottom is thick", "the same as the door". */
  #same(index: number): string | undefined {
    const { figure, word } = this.#figures[index] as PlacedFigure;
    const sentence = this.#sentence(word);
    const target = worthOf(figure, figure.dimension);
    for (let k = word - 1; k > word - 14 && k >= 0 && this.#sentence(k) === sentence; k--) {
      if (wordAt(this.#parse, k) !== 'as' || wordAt(this.#parse, k - 1) === 'well') continue;
      const phrase = phraseFrom(this.#parse, k + 1);
      if (!phrase || phrase.pronoun || isSpeaker(phrase)) continue;
      const name = this.#discourse.nameOf(phrase, { dimension: figure.dimension })?.join(' ');
      if (!name) continue;
      const parts = this.#partsOf(
        (known) => known.item === name || endsWith(known.item, name),
        figure,
        '',
        1,
      );
      const equal = parts.find((part) => target !== undefined && near(part.worth, target));
      if (equal) return equal.text;
    }
    return undefined;
  }

  /** "…, so 1220", "that leaves 38": figures just said that come to the value. */
  #implied(index: number): string | undefined {
    const { figure, word } = this.#figures[index] as PlacedFigure;
    const target = worthOf(figure, figure.dimension);
    if (target === undefined || this.#isOperand(word) || !this.#isResult(word)) return undefined;
    const before = this.#figures
      .slice(Math.max(0, index - 8), index)
      .filter((other) => other.figure.dimension === figure.dimension && other.word >= 0)
      .filter(
        (other) => this.#sentence(word) - this.#sentence(other.word) <= (figure.dimension === 'mass' ? 8 : 2),
      );
    const parts = before.flatMap((other) => this.#partOf(other, figure));
    const total = figure.dimension === 'mass' ? totalOf(parts, target) : undefined;
    return total ?? pairOf(parts, target);
  }

  #partOf(placed: PlacedFigure, result: FigureNote): Part[] {
    const { figure, word } = placed;
    const worth = worthOf(figure, figure.dimension);
    if (worth === undefined || worth === 0) return [];
    if (figure.item === result.item && figure.attribute === result.attribute) return [];
    const times = this.#eachSide(word);
    const isAllowance =
      / (?:each|bearing|overhang|lap)\b/.test(figure.item) ||
      figure.attribute === 'gap' ||
      figure.attribute === 'offset' ||
      figure.attribute === 'clearance';
    const named =
      isAllowance || !isWritable(figure.item) ? written(figure) : reference(figure.item, figure.attribute);
    return [{ text: times === 1 ? named : `${times} * ${named}`, worth: worth * times }];
  }

  #isResult(word: number): boolean {
    const { words } = this.#parse;
    for (let k = word - 1; k > word - 9 && k >= 0 && words[k]?.tag !== 'stop'; k--) {
      const said = words[k]?.lower ?? '';
      if (
        /^(?:so|leaves|leaving|makes|making|means|totals|altogether|comes|came|works|that's|hence)$/.test(
          said,
        )
      )
        return true;
      if (words[k]?.tag === 'quantity') return false;
    }
    return /^(?:all told|all up|in total|altogether)/.test(
      `${wordAt(this.#parse, word + 1)} ${wordAt(this.#parse, word + 2)}`,
    );
  }
}

const endsWith = (item: string, name: string): boolean => item.endsWith(` ${name}`);

/** How a formula names a figure: the item and what is measured of it. */
const reference = (item: string, attribute: Attribute): string =>
  item.endsWith(` ${attribute}`) || attribute === 'other' ? item : `${item} ${attribute}`;

/** The only sum or difference of two parts that comes to the target. */
function pairOf(parts: readonly Part[], target: number): string | undefined {
  const found = new Set<string>();
  parts.forEach((a, i) => {
    parts.forEach((b, j) => {
      if (i === j || a.text === b.text) return;
      if (i < j && near(a.worth + b.worth, target)) found.add(`${a.text} + ${b.text}`);
      if (a.worth > b.worth && near(a.worth - b.worth, target)) found.add(`${a.text} - ${b.text}`);
    });
  });
  return found.size === 1 ? [...found][0] : undefined;
}

/** The run of parts right before the figure that adds up to it. */
function totalOf(parts: readonly Part[], target: number): string | undefined {
  let sum = 0;
  for (let k = parts.length - 1; k >= 0; k--) {
    sum += (parts[k] as Part).worth;
    if (k < parts.length - 1 && Math.abs(sum - target) <= 1e-6 * target)
      return parts
        .slice(k)
        .map((part) => part.text)
        .join(' + ');
  }
  return undefined;
}
