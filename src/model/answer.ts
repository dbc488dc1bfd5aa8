/** Finds what a question is about by its words. */
import type { Attribute } from '../language/notes.ts';
import { wordTable } from '../language/word-table.ts';
import { type CheckView, checkViews } from './checks/check-views.ts';
import { actsOnAny } from './finding.ts';
import { keptAnswer } from './kept/kept-of.ts';
import { nameStems, wordsOf } from './names.ts';
import { findingViews, standingFigure } from './project-views.ts';
import type { ItemRow, ProjectRows, StandingRow } from './rows.ts';
import type { Answer, Consequence } from './views.ts';

/** Words that ask and name nothing. */
const ASKING = new Set(
  'a about am an and any are at be can did do does for from had has have how i in is it its me much many of on or our say said should so that the their there they this to was we were what when where which who why will with you'.split(
    ' ',
  ),
);

/** Words that ask for an attribute. */
const ATTRIBUTE_WORDS = wordTable<Attribute>({
  high: 'height',
  height: 'height',
  tall: 'height',
  wide: 'width',
  width: 'width',
  long: 'length',
  length: 'length',
  deep: 'depth',
  depth: 'depth',
  thick: 'thickness',
  thickness: 'thickness',
  diameter: 'diameter',
  radius: 'radius',
  clearance: 'clearance',
  gap: 'gap',
  offset: 'offset',
  big: 'size',
  size: 'size',
  angle: 'angle',
  steep: 'angle',
  hot: 'temperature',
  cold: 'temperature',
  warm: 'temperature',
  temperature: 'temperature',
  heavy: 'weight',
  weight: 'weight',
  weigh: 'weight',
  volume: 'volume',
  area: 'area',
  voltage: 'voltage',
  volts: 'voltage',
  current: 'current',
  amps: 'current',
  power: 'power',
  watts: 'power',
  pressure: 'pressure',
  torque: 'torque',
  tight: 'torque',
  fast: 'speed',
  speed: 'speed',
  cost: 'money',
  price: 'money',
  money: 'money',
});

/** How much of a name the question holds, 0 to 1. */
function likeness(name: string, stems: ReadonlySet<string>): number {
  const own = nameStems(name);
  const shared = own.filter((stem) => stems.has(stem)).length;
  return own.length === 0 ? 0 : shared / own.length;
}

/** Whether a name holds all that the question names: "the door" may be the chapel door opening. */
function holdsAll(name: string, things: readonly string[]): boolean {
  const own = nameStems(name);
  return things.length > 0 && things.every((stem) => own.includes(stem));
}

/** A name that shares fewer than half of its words with the question is another thing. */
const LEAST_LIKENESS = 0.5;

function figuresFor(rows: ProjectRows, words: readonly string[]): readonly StandingRow[] {
  const stems = new Set(nameStems(words.join(' ')));
  const attributes = new Set(words.map((word) => ATTRIBUTE_WORDS[word]));
  const things = nameStems(words.filter((word) => !ATTRIBUTE_WORDS[word]).join(' '));
  const sharing = rows.itemsSharing([...stems]).map((item) => {
    const names = [item.name, ...item.aliases];
    return {
      item,
      rate: Math.max(...names.map((name) => likeness(name, stems))),
      isShort: names.some((name) => holdsAll(name, things)),
    };
  });
  const near = sharing.filter(({ rate }) => rate >= LEAST_LIKENESS).sort((a, b) => b.rate - a.rate);
  if (near.some(({ item }) => rows.standingOf(item.id).length > 0))
    return likestFigures(rows, near, attributes);
  // Nothing goes by that name: what goes by a longer one, where it has the size asked for.
  return sharing
    .filter(({ isShort }) => isShort)
    .flatMap(({ item }) => rows.standingOf(item.id))
    .filter((figure) => attributes.has(figure.attribute));
}

function likestFigures(
  rows: ProjectRows,
  rated: readonly { readonly item: ItemRow; readonly rate: number }[],
  attributes: ReadonlySet<Attribute | undefined>,
): readonly StandingRow[] {
  const likest: StandingRow[] = [];
  let best = 0;
  for (const { item, rate } of rated) {
    if (rate < best) break;
    const figures = rows.standingOf(item.id);
    if (figures.length > 0) best = rate;
    likest.push(...figures);
  }
  const asked = likest.filter((figure) => attributes.has(figure.attribute));
  return asked.length > 0 ? asked : likest;
}

/** The words of a question that can be looked for. A question of nothing else keeps them all. */
export function tellingWords(question: string): readonly string[] {
  const words = wordsOf(question);
  const telling = words.filter((word) => !ASKING.has(word));
  return telling.length > 0 ? telling : words;
}

/** The words of a question that name something; those that ask for a measure do not. */
export function namingWords(question: string): readonly string[] {
  return tellingWords(question).filter((word) => !ATTRIBUTE_WORDS[word]);
}

/** Whether a question asks for a measure of something: "how wide is the hatch". */
function asksForMeasure(question: string): boolean {
  return namingWords(question).length > 0 && tellingWords(question).some((word) => ATTRIBUTE_WORDS[word]);
}

/** What was ordered, made, closed in, filmed or promised of the things that a question is about, orders first. */
function doneOn(rows: ProjectRows, standing: readonly StandingRow[]): readonly Consequence[] {
  const names = [...new Set(standing.map(({ itemId }) => rows.item(itemId)?.name ?? ''))];
  return actsOnAny(rows, names).map(({ act, what, source }) => ({ act, what, source }));
}

/** Figures and clashes that a question is about; `said` is the talk that holds its words, best first. */
export function answerOf(rows: ProjectRows, question: string, said: Answer['said']): Answer {
  const standing = figuresFor(rows, tellingWords(question));
  const findings = [...new Set(standing.map(({ slot }) => slot))].flatMap((slot) =>
    findingViews(rows, { slot }),
  );
  const kept = keptAnswer(rows, question, tellingWords(question));
  const checks = checksFor(rows, tellingWords(question));
  const figures = standing.map((row) => standingFigure(rows, row));
  const isUnknown = figures.length === 0 && asksForMeasure(question);
  return {
    question,
    kept,
    figures,
    said,
    findings,
    checks,
    onIt: doneOn(rows, standing),
    ...(isUnknown ? { isUnknown } : {}),
  };
}

/** So many are shown: more say nothing to anybody. */
const MOST_CHECKS = 5;

/** Checks that a question names: by their own name, by a thing that they are about, or by a part of either. */
function checksFor(rows: ProjectRows, words: readonly string[]): readonly CheckView[] {
  const asked = nameStems(words.join(' '));
  if (asked.length === 0) return [];
  const holds = (name: string) => {
    const own = nameStems(name);
    return own.length > 0 && own.every((stem) => asked.includes(stem));
  };
  return checkViews(rows)
    .filter(({ check, subject }) => {
      const things = subject.slice(check.length).replace(/^ \(|\)$/g, '');
      return [check, ...things.split(', ')].some(holds) || holdsAll(subject.replace(/[(),]/g, ' '), asked);
    })
    .slice(0, MOST_CHECKS);
}
