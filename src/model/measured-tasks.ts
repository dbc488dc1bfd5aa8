/** Tasks of measuring: "measure the gap" is done when the gap is told, by whoever measured it and with whatever words. */
import type { Attribute, FigureNote } from '../language/notes.ts';
import { wordsOf } from './names.ts';
import type { TaskRow } from './rows.ts';
import { stemOf } from './stems.ts';
import type { Place } from './talk.ts';
import { areRivalWords, EMPTY } from './telling-words.ts';

/** To measure it, in so many words. */
const MEASURES =
  /\b(?:re-?)?(?:measur(?:e|es|ing)|tap(?:e|ing) (?:the|that|out|it|up)|weigh(?:s|ing)?|gaug(?:e|ing)|calliper|caliper)\b|\b(?:get|put|run|take) (?:a|the|my) (?:tape|rule|calipers?|callipers?|gauge|measure|measurement|reading|scales?)\b|\b(?:get|take|need|want) (?:a |the |another )?(?:measurements?|dimensions?|readings?|sizes?)\b/i;
/** To find out what it is: how wide, what it weighs, the size of it. */
const FINDS_OUT =
  /\b(?:check(?:ing)?|find(?:ing)? out|see|get|figure out|work out|establish|confirm|know)\b.{0,40}?\b(?:how (?:wide|high|tall|long|deep|thick|heavy|big|far|much|many)|what\b.{1,40}\b(?:weighs?|measures?|is|are)|(?:width|height|length|depth|thickness|weight|diameter|radius|angle|gap|clearance|headroom|distance|size|voltage|pressure|spacing|fall|slope)s?\b)/i;
/** Figures of these are told by nobody who has measured. */
const UNMEASURED: ReadonlySet<string> = new Set([
  'target',
  'decided',
  'calculated',
  'estimated',
  'assumed',
  'ordered',
]);
/** Told as what was or what shall be. */
const NOT_NOW =
  /\b(?:should|must|needs?|wants?|ought|supposed|going to|gonna|will|['’]ll|would|could|might|used to|was meant|allow(?:ed|ing)?|leave|make it|make them)\b/i;

/** Words for sizes, by the attribute that they ask for. */
const SIZE_WORDS: readonly (readonly [RegExp, readonly Attribute[]])[] = [
  [/\b(?:width|wide|breadth|across)\b/i, ['width', 'diameter']],
  [/\b(?:height|high|tall|headroom)\b/i, ['height', 'clearance', 'gap']],
  [/\b(?:length|long)\b/i, ['length', 'width', 'height']],
  [/\b(?:depth|deep)\b/i, ['depth', 'height', 'thickness']],
  [/\b(?:thickness|thick)\b/i, ['thickness']],
  [/\b(?:weight|heavy|weighs?)\b/i, ['weight']],
  [/\b(?:diameter)\b/i, ['diameter', 'width', 'thickness']],
  [/\b(?:gap|clearance|space|play)\b/i, ['gap', 'clearance', 'offset']],
  [/\b(?:angle|fall|slope|pitch)\b/i, ['angle']],
];
const SIZE_STEMS: ReadonlySet<string> = new Set(
  `width wide breadth across height high tall headroom length long depth deep thickness thick weight heavy weigh diameter
  gap clearance space play angle fall slope pitch size measurement measure dimension tape reading figure number rule
  caliper calliper gauge scale exactly properly check find see out how what far big much need know come mil mm
  millimetre millimeter inch centimetre metre foot kilo kilogram gram pound degree behind between above below actual
  turn exact proper same call`
    .split(/\s+/)
    .map(stemOf),
);

/** Whether a task is to measure something, and nothing else. */
export function isToMeasure(task: Pick<TaskRow, 'gist' | 'quote'>): boolean {
  const own = `${task.gist} ${task.quote}`;
  return MEASURES.test(own) || FINDS_OUT.test(own);
}

/** The stems of the words that tell which thing is measured: no sizes, numbers or units. */
export function thingsToMeasure(text: string): ReadonlySet<string> {
  const stems = wordsOf(text)
    .map(stemOf)
    .filter((stem) => !EMPTY.has(stem) && !SIZE_STEMS.has(stem) && !/\d/.test(stem) && !NUMBERS.has(stem));
  return new Set(stems);
}
const NUMBERS: ReadonlySet<string> = new Set(
  `zero two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen
  nineteen twenty thirty forty fifty sixty seventy eighty ninety hundred thousand half quarter point`
    .split(/\s+/)
    .map(stemOf),
);

const asked = (text: string) =>
  SIZE_WORDS.filter(([words]) => words.test(text)).flatMap(([, sizes]) => sizes);

/** A figure as far as it can end a task: the note, and where it was said. */
export interface Reading {
  readonly note: Pick<FigureNote, 'item' | 'attribute' | 'dimension' | 'bound' | 'state' | 'limit' | 'quote'>;
  readonly place: Pick<Place, 'clause' | 'sentence'>;
}

/** Whether a figure is what a task was to find out: the same thing, the size that was asked for, told as it is. */
export function isReadingFor({ note, place }: Reading, task: TaskRow): boolean {
  if (note.limit || note.bound === 'at-least' || note.bound === 'at-most') return false;
  if (UNMEASURED.has(note.state ?? '') || NOT_NOW.test(place.clause)) return false;
  const own = `${task.gist} ${task.quote}`;
  const sizes = asked(own);
  if (sizes.length > 0 && !sizes.includes(note.attribute) && note.attribute !== 'size') return false;
  if (sizes.length === 0 && !MEASURED_DIMENSIONS.has(note.dimension)) return false;
  if (/\bweigh/i.test(own) !== (note.dimension === 'mass')) return false;
  const clause = new Set(wordsOf(place.clause));
  if (areRivalWords(new Set(wordsOf(own)), clause)) return false;
  const wanted = thingsToMeasure(task.gist);
  const told = thingsToMeasure(place.clause);
  const named = new Set([...told, ...thingsToMeasure(note.item)]);
  const shared = [...wanted].filter((stem) => named.has(stem));
  if (shared.length > 0) return shared.length * 2 >= Math.min(wanted.size, 3);
  // "The gap's 42": the size is the thing, and no other one is named.
  return (
    told.size === 0 && sizes.length > 0 && SIZE_IS_THING.test(task.gist) && SIZE_IS_THING.test(place.clause)
  );
}
const MEASURED_DIMENSIONS: ReadonlySet<string> = new Set(['length', 'mass', 'angle']);
const SIZE_IS_THING = /\b(?:gap|clearance|headroom|fall|run-?out|play|overhang|span|pitch|slope)s?\b/i;
