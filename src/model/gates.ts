/** What a task waits for, taken from its words: which kind of thing, and the figure, date or hours that bind it. */
import type { FigureNote } from '../language/notes.ts';
import type { Gate } from './rows.ts';
import { convert } from './units.ts';

/** What helps to understand the words: the day they were said, and the figures of the same sentence. */
export interface GateClues {
  readonly recordedAt: string;
  readonly figures: readonly FigureNote[];
}

const ARRIVING =
  /\b(?:arriv\w*|deliver\w*|turn(?:s|ed)? up|show(?:s|ed)? up|com(?:es?|ing)(?: in| through| home)?|came(?: in| through)?|land(?:s|ed)|get(?:s|ting)? here|got here|(?:is|are|'s|'re|has been|have been) (?:here|in my hands?|to hand)|here|in my hands?|to hand|fetched|picked up|collected|bought)\s*$/i;

/** Words that say that time alone does it. */
const CURING =
  /\b(?:cur(?:e[sd]?|ing)|dr(?:y|ies|ied|ier|ying)|gone? off|set(?: up)? hard|harden\w*|hard|cool(?:s|ed|ing)?(?: down| off)?|soak(?:s|ed|ing)?|settled?|rested?|aged)\b/i;

/** Spoken spans of time that hold no number. */
const SPANS: readonly (readonly [RegExp, number])[] = [
  [/\bovernight\b/i, 12],
  [/\b(?:a|one) (?:full |whole |good )?day\b/i, 24],
  [/\b(?:a|one) (?:full |whole |good )?week\b/i, 168],
  [/\b(?:a|one) (?:full |whole |good )?fortnight\b/i, 336],
];

/** Readings that can be waited for. */
const READ: ReadonlySet<string> = new Set(['temperature', 'ratio', 'speed', 'pressure', 'voltage', 'charge']);

/** Takes the words of a gate apart. */
export function gateOf(words: string, clues: GateClues): Gate {
  const date = dayMeant(words, clues.recordedAt);
  if (date) return { kind: 'date', words, date };
  const own = clues.figures.filter((figure) => isIn(figure.quote, words));
  const reading = readingOf(own, words);
  if (reading) return { kind: 'reading', words, reading };
  const hours = hoursOf(own, words);
  if (hours !== undefined) return { kind: 'hours', words, hours };
  if (ARRIVING.test(words)) return { kind: 'arrival', words };
  if (CURING.test(words)) return { kind: 'hours', words };
  return { kind: 'event', words };
}

/** A gate that the sentence states by its date alone: "not before Monday". */
export function dateGate(date: string): Gate {
  return { kind: 'date', words: date, date };
}

/** Whether a day is when a task may begin, and not by when it must be done: "not before Monday", "can't till Friday". */
export function isEarliest(sentence: string): boolean {
  return NOT_BEFORE.test(sentence);
}
const DAY = '(?:mon|tues|wednes|thurs|fri|satur|sun)day';
const MONTH = '(?:january|february|march|april|may|june|july|august|september|october|november|december)';
const NOT_BEFORE = new RegExp(
  `(?:\\bnot?\\b|n't\\b|\\bcannot\\b|\\bnever\\b)[^.!?]*?\\b(?:before|until|till|earlier than)\\s+(?:(?:next|this|the|on)\\s+)*(?:${DAY}|tomorrow|week(?:end)?\\b|\\d{1,2}(?:st|nd|rd|th)?\\b|first\\b|${MONTH})`,
  'i',
);

function isIn(quote: string, words: string): boolean {
  const plain = (text: string) =>
    text
      .toLowerCase()
      .replace(/[^\p{L}\p{N}]+/gu, ' ')
      .trim();
  const [figure, gate] = [plain(quote), plain(words)];
  if (figure === '' || gate === '') return false;
  if (gate.includes(figure) || figure.includes(gate)) return true;
  const numbers = figure.split(' ').filter((word) => /\d/.test(word));
  return numbers.length > 0 && numbers.every((word) => gate.split(' ').includes(word));
}

function readingOf(figures: readonly FigureNote[], words: string): Gate['reading'] {
  const figure = figures.find(({ dimension }) => READ.has(dimension));
  if (!figure) return undefined;
  const { dimension, value, unit } = figure;
  const downward =
    /\b(?:below|under|down to|less|at most|no more|or drier|cooler|or lower|dry|dries|dried)\b/i;
  const bound =
    figure.bound === 'at-least' || figure.bound === 'at-most'
      ? figure.bound
      : downward.test(words) || dimension === 'speed'
        ? 'at-most'
        : 'at-least';
  return { dimension, bound, value, unit };
}

function hoursOf(figures: readonly FigureNote[], words: string): number | undefined {
  const figure = figures.find(({ dimension }) => dimension === 'time');
  if (figure) return convert(figure, 'h')?.value;
  return SPANS.find(([span]) => span.test(words))?.[1];
}

/** The words without those for arriving, time and drying: the thing itself. */
export function thingOf(words: string): string {
  const bare = words
    .replace(ARRIVING, ' ')
    .replace(
      /\b(?:for|after|at least|another)?\s*\d+(?:[.,]\d+)?\s*(?:h|hours?|days?|weeks?|min(?:utes)?)\b/gi,
      ' ',
    )
    .replace(/\b(?:hours?|days?|weeks?|fortnight|overnight)\b/gi, ' ')
    .replace(CURING, ' ');
  return bare.replace(/\s+/g, ' ').trim();
}

/** Whether the words say that something has dried, set or hardened. */
export const saysCured = (words: string): boolean => CURING.test(words);

const DAYS = ['sunday', 'monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday'];
const MS_PER_DAY = 86_400_000;

/** The day that is the whole of a gate: "Monday", "tomorrow", "2026-05-04"; nothing for other words. */
function dayMeant(words: string, recordedAt: string): string | undefined {
  const said = words
    .toLowerCase()
    .replace(/^(?:(?:until|till|after|before|on|the|next|this|at)\s+)+/, '')
    .trim();
  if (/^\d{4}-\d{2}-\d{2}$/.test(said)) return said;
  const from = Date.parse(`${recordedAt.slice(0, 10)}T00:00:00Z`);
  const after = (days: number) => new Date(from + days * MS_PER_DAY).toISOString().slice(0, 10);
  if (said === 'tomorrow') return after(1);
  const today = new Date(from).getUTCDay();
  const weekday = said === 'weekend' ? 6 : said === 'week' ? 1 : DAYS.indexOf(said.replace(/s$/, ''));
  return weekday < 0 ? undefined : after(((weekday - today + 6) % 7) + 1);
}
