/** Why a note is to be looked at before it is agreed with. A note without a doubt is one that only repeats its words. */
import { soundsLikeNumber } from '../language/heard/number-doubts.ts';
import type { FigureNote, Quantity } from '../language/notes.ts';
import type { FindingView, MemoView } from '../model/views.ts';
import { ofThing, quantityText } from './quantity-text.ts';
import { placeOf } from './source-text.ts';
import { oneLine } from './words.ts';

export type KeptNote = MemoView['notes'][keyof MemoView['notes']][number];

/** What was filled in, in words. */
const FILLED_IN: Readonly<Record<string, string>> = {
  unit: 'the unit was not said',
  item: 'what it is of was not said there',
  attribute: 'what is measured was not said',
};

/** Words by which a speaker takes half of it back. Common English, no source. */
const HEDGES =
  /\b(?:maybe|perhaps|probably|possibly|presumably|might(?: be| have)?|could be|i think|i guess|i reckon|i suppose|i believe|not (?:quite |really |too )?sure|no idea|if i remember|from memory|something like|or so|ish)\b/i;
/** A gist that points at something instead of naming it. */
const POINTING =
  /^(?:\S+\s+){0,2}(?:it|that|this|them|those|these|one|ones|some|stuff|things?|something)(?:\s+(?:up|down|in|out|on|off|back|too|again|now|done))?$/i;

/**
 * Every doubt of a note of a memo with this text, in words; none where it can be agreed with as it is. `findings` are the
 * open ones of the memo. What a person has gone over is not doubted.
 */
export function doubtsOf(note: KeptNote, text: string, findings: readonly FindingView[]): readonly string[] {
  if (note.review !== undefined) return [];
  return [...figureDoubts(note, findings), ...statementDoubts(note), ...hedges(note, text)];
}

/** Whether a person has still to say something of it. */
export const isToGoOver = ({ review }: Pick<KeptNote, 'review'>) => review === undefined;

function figureDoubts(note: KeptNote, findings: readonly FindingView[]): readonly string[] {
  if (note.kind !== 'figure') return [];
  const { alternatives = [], item, quote } = note;
  const assumed = note.assumed?.filter((field) => field !== 'unit' || !isPlainMillimetres(note));
  const clashes = findings.filter(
    ({ status, now }) => status === 'open' && now.source?.quote === quote && now.value === note.value,
  );
  return [
    ...clashes.map((finding) =>
      finding.was.unit === ''
        ? `clashes: ${oneLine(finding.why)}`
        : `clashes with ${quantityText(ofThing(finding.was, finding))}${finding.was.source ? ` (${placeOf(finding.was.source)})` : ''}`,
    ),
    ...(item.trim() === '' ? ['nobody said what it is of'] : []),
    ...(assumed ?? []).flatMap((field) => FILLED_IN[field] ?? []),
    ...alternatives.map((one) =>
      one.unit === note.unit && one.value === soundsLikeNumber(note.value)
        ? `sounds like ${quantityText(one)}`
        : `may also mean ${quantityText(one)}`,
    ),
  ];
}

/** Beside the value of a figure: "or 80 mm?". Empty where it has no other reading, or a person has gone over it. */
export function otherReadings({
  alternatives = [],
  review,
}: Pick<FigureNote, 'alternatives'> & { readonly review?: unknown }): string {
  if (review !== undefined || alternatives.length === 0) return '';
  return `or ${alternatives.map((one) => quantityText(one)).join(' or ')}?`;
}

/**
 * On metric sites a bare number of two digits and more is millimetres: common practice, no source. A smaller one may be
 * centimetres, or inches.
 */
const isPlainMillimetres = ({ unit, value }: Quantity) => unit === 'mm' && value >= 20;

function statementDoubts(note: KeptNote): readonly string[] {
  if (note.kind === 'figure' || !('gist' in note)) return [];
  const gist = oneLine(note.gist);
  return [
    ...(POINTING.test(gist) ? ['it points at something and does not name it'] : []),
    ...(gist.split(/\s+/).length < 2 ? ['one word alone'] : []),
  ];
}

/** So far around the quote its sentence is looked at. */
const REACH = 160;

/** Words of doubt in the sentence of the note. */
function hedges({ span }: KeptNote, text: string): readonly string[] {
  const before = /[^.!?\n]*$/.exec(text.slice(Math.max(0, span.start - REACH), span.start))?.[0] ?? '';
  const behind = /^[^.!?\n]*/.exec(text.slice(span.end, span.end + REACH))?.[0] ?? '';
  const word = HEDGES.exec(before + text.slice(span.start, span.end) + behind)?.[0];
  return word === undefined ? [] : [`said with a doubt: "${oneLine(word)}"`];
}

/** Notes of a memo that can be agreed with as they are: nobody went over them, and nothing speaks against them. */
export function sureNotes(memo: MemoView, findings: readonly FindingView[]): readonly string[] {
  return everyNote(memo).flatMap((note) =>
    isToGoOver(note) && doubtsOf(note, memo.text, findings).length === 0 ? [note.id] : [],
  );
}

/** Every note of a memo, in the order of speech. */
export function everyNote({ notes }: Pick<MemoView, 'notes'>): readonly KeptNote[] {
  const lists: readonly (readonly KeptNote[])[] = Object.values(notes);
  return lists.flat().sort((a, b) => a.span.start - b.span.start);
}
