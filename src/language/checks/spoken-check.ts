/** What the readers of spoken checks share: the note, and figures and things as inputs of a check. */
import type { Phrase } from '../items/noun-phrases.ts';
import { isSpeaker, phraseAt, wordAt } from '../items/parse.ts';
import { figuresIn, type Line, phrasesOf, type RecordScene } from '../kept/scene.ts';
import type { NounKind } from '../lexicon/trade-nouns.ts';
import type { Attribute, CheckNote, FigureNote, HouseUnits, KnownFigure, SpokenInput } from '../notes.ts';

/** A memo with the figures that stand already, and with ways to find both that do not look through all of them. */
export interface CheckScene extends RecordScene {
  readonly known: readonly KnownFigure[];
  /** Units of the project: those of a length that was said without any. */
  readonly units: HouseUnits;
  /** Word that stands for each figure of the memo. */
  readonly wordOf: ReadonlyMap<FigureNote, number>;
  /** Figures of a thing, by its name in lower case: those that stand, then those of the memo. */
  readonly ofItem: ReadonlyMap<string, readonly (FigureNote | KnownFigure)[]>;
}

export function checkScene(scene: RecordScene, known: readonly KnownFigure[], units: HouseUnits): CheckScene {
  const ofItem = new Map<string, (FigureNote | KnownFigure)[]>();
  for (const figure of [...known, ...scene.figures]) {
    const name = figure.item.toLowerCase();
    const list = ofItem.get(name);
    if (list) list.push(figure);
    else ofItem.set(name, [figure]);
  }
  const wordOf = new Map(
    scene.figures.map((figure, index) => [figure, scene.parse.wordOfQuantity[index] ?? -1]),
  );
  return { ...scene, known, units, ofItem, wordOf };
}

/** A check as a line says it. Inputs in the order of the check. */
export interface Spoken {
  readonly check: string;
  readonly inputs: readonly SpokenInput[];
  readonly options?: Readonly<Record<string, string>>;
}

/** One input; `of` is the thing that a plain size is of. */
export const input = (name: string, expression: string, of?: string): SpokenInput => ({
  input: name,
  expression,
  ...(of === undefined || of === '' ? {} : { of }),
});

/** The whole sentence that says a check is its quote: what it holds stands all over it. */
export function checkNote(scene: RecordScene, line: Line, { check, inputs, options }: Spoken): CheckNote {
  const { start } = line;
  const end = start + scene.text.slice(start, line.end).replace(/[\s.!?…,;]*$/, '').length;
  return {
    kind: 'check',
    quote: scene.text.slice(start, end),
    span: { start, end },
    check,
    inputs,
    ...(options ? { options } : {}),
  };
}

/** A figure as an input is written: "2440 mm". */
export const written = ({ value, unit }: Pick<FigureNote, 'value' | 'unit'>): string => `${value} ${unit}`;

/** Figures of a line that are of a dimension, in order of speech. Nought and less are no size of anything. */
export const figuresOf = (scene: RecordScene, line: Line, dimension: FigureNote['dimension']) =>
  figuresIn(scene, line).filter((figure) => figure.dimension === dimension && figure.value > 0);

/** Word that stands for a figure. */
export const wordOfFigure = ({ wordOf }: CheckScene, figure: FigureNote): number => wordOf.get(figure) ?? -1;

/** What is measured of a thing, said in this memo or standing already. */
export const attributesOf = ({ ofItem }: CheckScene, item: string): ReadonlySet<Attribute> =>
  new Set((ofItem.get(item.toLowerCase()) ?? []).map(({ attribute }) => attribute));

/** Kinds that are no thing to carry, to cut or to weigh. */
const NO_THING: ReadonlySet<NounKind> = new Set([
  'person',
  'time',
  'abstract',
  'measure',
  'air',
  'liquid',
  'coating',
  'region',
  'space',
  'ground',
  'opening',
  'hole',
]);

/** Whether a phrase names a thing, and is no pronoun, place, person or stuff without a shape. */
export const isThing = (phrase: Phrase): boolean =>
  phrase.pronoun === undefined &&
  phrase.name.length > 0 &&
  !isSpeaker(phrase) &&
  [...phrase.kinds].every((kind) => !NO_THING.has(kind));

export const nameOf = (phrase: Phrase): string => phrase.name.join(' ');

/** The last thing named before a word of a line: in it, or in the two before. */
export function thingBefore(
  scene: RecordScene,
  line: Line,
  word: number,
  fits: (phrase: Phrase) => boolean = isThing,
): Phrase | undefined {
  const here = phrasesOf(scene, line).findLast((phrase) => phrase.last < word && fits(phrase));
  if (here) return here;
  return scene.lines
    .slice(Math.max(0, line.index - 2), line.index)
    .flatMap((one) => phrasesOf(scene, one))
    .findLast(fits);
}

/** The phrase that begins at a word. */
export function phraseFrom({ parse }: RecordScene, word: number): Phrase | undefined {
  const phrase = phraseAt(parse, word);
  return phrase?.first === word ? phrase : undefined;
}

/** The words from one to before another, with one space between them. */
export function wordsOf({ parse }: RecordScene, from: number, to: number): string {
  let words = '';
  for (let k = from; k < to; k++) words += ` ${wordAt(parse, k)}`;
  return words.trim();
}
