/**
 * Reads what all loads take between charges: "the fridge is 45 watts for ten hours and the lights are 20 watts for four,
 * it all has to come out of 1200 watt hours". One load alone, and what ran on some day, is only a figure.
 */
import { eachIn } from '../each-of-many.ts';
import { figuresIn, type Line, phrasesOf } from '../kept/scene.ts';
import type { CheckNote, FigureNote, Quantity, SpokenInput } from '../notes.ts';
import { smallNumber } from '../numbers/small-number.ts';
import { figuresNear, linesNear, reading } from './figure-names.ts';
import { type SaidTime, timesSaid } from './said-amounts.ts';
import {
  attributesOf,
  type CheckScene,
  checkNote,
  figuresOf,
  input,
  isThing,
  wordOfFigure,
  written,
} from './spoken-check.ts';

/** Somebody wants the sum, or tells what there is for it. */
const SUMMED =
  / (?:add(?:s|ed)? (?:it |that |them |those |these |all )*up|add up|tot up|adds up|all told|altogether|all together|in total|the lot|it all|all of (?:it|that|them)|all that|between charges|between them|budget|loads?|a day|per day|each day|every day|daily|overnight|out of|off the|run off|running off|from the (?:bank|battery|batteries)) /;
/** Told of what was, supposed, or denied. */
const NOT_ASKED =
  / (?:if|unless|was|were|had|ran|used|drew|pulled|would|could|might|may|(?:do|does|did|is|are|was|has|have) ?n't|not|never|instead of|no longer|yesterday|last (?:night|week|time)) /;
/** What is taken at most of what there is. */
const SUPPLY =
  / (?:out of|off|from|more than|over|under|below|within|inside|only|got|have|has|there 's|there is|gives?|giving|supply|spare|available|bank|battery|batteries|budget|at most|up to|than) /;
const MOST_LOADS = 20;

/** The loads that one sentence, and those that go on with it, add up. */
export function loadSumIn(scene: CheckScene, line: Line): readonly CheckNote[] {
  // First what most sentences lack: it costs less to look for than the words.
  if (line.asks || loadsIn(scene, line).length === 0) return [];
  if (NOT_ASKED.test(line.words) || figuresOf(scene, line, 'energy').some(isSum)) return [];
  const before = scene.lines[line.index - 1];
  if (before && loadsIn(scene, before).length > 0) return [];
  const lines = linesWithLoads(scene, line);
  const loads = lines.flatMap((one) => loadsIn(scene, one)).slice(0, MOST_LOADS);
  const near = linesNear(scene, line, 1, lines.length + 1);
  const supply = supplyNear(scene, near);
  const isSummed =
    supply !== undefined || near.some((one) => !NOT_ASKED.test(one.words) && SUMMED.test(one.words));
  if (loads.length === 0 || (loads.length === 1 && !supply) || !isSummed) return [];
  const inputs = [
    ...loads.map(({ load }) => load),
    ...loads.map(({ time }) => input('time on', written(time))),
    ...(supply ? [input('supply', supply)] : []),
  ];
  return [checkNote(scene, line, { check: 'load sum', inputs })];
}

/** "1860 watt hours a day" is the sum itself, where no load is told beside it. */
const isSum = ({ quote }: FigureNote): boolean => /\b(?:a|per|each|every) day\b/i.test(quote);

/** The sentence, and those behind it that tell of more loads. */
function linesWithLoads(scene: CheckScene, line: Line): readonly Line[] {
  const found: Line[] = [];
  for (let one: Line | undefined = line; one; one = scene.lines[one.index + 1]) {
    if (one.asks || NOT_ASKED.test(one.words) || loadsIn(scene, one).length === 0) break;
    found.push(one);
  }
  return found;
}

interface Load {
  readonly load: SpokenInput;
  readonly time: Quantity;
}

/** Powers and currents of a line, each with the time that is told with it. */
function loadsIn(scene: CheckScene, line: Line): readonly Load[] {
  const drawn = figuresIn(scene, line).filter(
    ({ dimension, value }) => (dimension === 'power' || dimension === 'current') && value > 0,
  );
  if (drawn.length === 0) return [];
  const text = scene.text.slice(line.start, line.end);
  const times = [...timesSaid(text), ...bareHours(text)].sort((a, b) => a.start - b.start);
  const places = drawn.map(({ span }) => span.start - line.start);
  const timesFirst =
    times.length > 0 && (times[0]?.start ?? 0) < (places[0] ?? 0) && times.length <= drawn.length;
  return drawn.flatMap((figure, index) => {
    const from = places[index] ?? 0;
    const [low, high] = timesFirst
      ? [places[index - 1] ?? -1, from]
      : [from, places[index + 1] ?? text.length];
    const time = times.find(({ start }) => start >= low && start < high);
    return time ? [{ load: loadOf(scene, line, figure), time }] : [];
  });
}

/** "20 watts for four": hours where nothing else was said, once hours were. */
function bareHours(text: string): readonly SaidTime[] {
  if (!/\bhours?\b/i.test(text)) return [];
  return [...text.matchAll(/\bwatts? (?:each )?for ([a-z]+|\d+)(?=\s*(?:[,.;]|$| and\b))/gi)].flatMap(
    (found) => {
      const hours = smallNumber(found[1] ?? '');
      return hours === undefined || hours <= 0
        ? []
        : [{ value: hours, unit: 'h' as const, start: found.index + 1, end: found.index + found[0].length }];
    },
  );
}

/** A load by the name of what takes it, so that a later memo changes it; a current at the voltage that was told. */
function loadOf(scene: CheckScene, line: Line, figure: FigureNote): SpokenInput {
  const at = wordOfFigure(scene, figure);
  const named = phrasesOf(scene, line).findLast((one) => one.last <= at && isThing(one));
  const name = named?.name.join(' ') ?? figure.item;
  const isOwn = figure.item.toLowerCase() === name.toLowerCase();
  const one = isOwn ? reading(scene, 'load', figure) : input('load', written(figure), name);
  const times = timesOver(scene, figure, isOwn ? figure.item : name);
  const plain = times === undefined ? one : input('load', `${times} * ${one.expression}`, one.of);
  if (figure.dimension === 'power') return plain;
  const voltage = figuresNear(scene, line, 'voltage')[0];
  if (!voltage) return input('load', `${times === undefined ? '' : `${times} * `}${name} power`);
  return input('load', `${plain.expression} * ${written(voltage)}`, plain.of);
}

/** How often a load that was told of each of several is taken: a number, or the count by name, for which the sum waits. */
function timesOver(scene: CheckScene, figure: FigureNote, name: string): string | undefined {
  const each = eachIn(scene.text, figure);
  if (!each) return undefined;
  const isCounted = attributesOf(scene, name).has('count');
  return each.count === undefined || isCounted ? `${name} count` : `${each.count}`;
}

/** What there is between charges: watt hours, or the charge of a bank at its voltage. */
function supplyNear(scene: CheckScene, near: readonly Line[]): string | undefined {
  for (const line of near) {
    if (line.asks || !SUPPLY.test(line.words)) continue;
    const energy = figuresOf(scene, line, 'energy').find(({ unit }) => /^k?Wh$/.test(unit));
    if (energy) return written(energy);
    const charge = figuresOf(scene, line, 'charge').find(({ unit }) => unit === 'Ah');
    const voltage = charge && figuresNear(scene, line, 'voltage')[0];
    if (charge && voltage) return `${written(charge)} * ${written(voltage)}`;
  }
  return undefined;
}
