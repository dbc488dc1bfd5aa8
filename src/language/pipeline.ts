import { escapeSequences } from '../plain-text.ts';
import { withBareAmounts } from './bare-amounts.ts';
import { withSheetFigures } from './checks/sheet-figures.ts';
import { withClearOpenings } from './clear-openings.ts';
import { withPieces } from './each-of-many.ts';
import { findRepairs } from './heard/find-repairs.ts';
import { mendText } from './heard/mended-text.ts';
import { withNumberDoubts } from './heard/number-doubts.ts';
import { placeBack } from './heard/place-back.ts';
import { withHeatClearances } from './heat-clearances.ts';
import { readItems } from './items/assign-items.ts';
import { withoutClockTimes } from './kept/clocks.ts';
import { withPlaces } from './kept/places-of-weights.ts';
import { readRecords } from './kept/read-records.ts';
import { sceneOf } from './kept/scene.ts';
import {
  type DoneNote,
  NO_NOTES,
  type ProblemNote,
  type ReadContext,
  type Reading,
  type RecordNote,
  type Span,
  type TraceStep,
} from './notes.ts';
import { readQuantities } from './quantities.ts';
import { splitSentences } from './sentences.ts';
import { readStatements } from './statements/read-statements.ts';
import { findTakenBack } from './taken-back.ts';
import { isNoTalk } from './talk.ts';
import { tokenise } from './tokens.ts';
import { withToldDifferences } from './told-difference.ts';

/**
 * Reads every note in one memo's text. Pure: the same text and context give the same reading.
 * Quotes are verbatim substrings; offsets count UTF-16 units of `text`.
 */
export function readMemo(text: string, context: ReadContext): Reading {
  const sequences = escapeSequences(text);
  if (sequences.length === 0) return readHeard(text, context);
  // A window title or a colour that was copied along with the words was not said.
  const shown = mendText(
    text,
    sequences.map((span) => ({ ...span, means: '' })),
  );
  const reading = placeBack(readHeard(shown.text, context), text, shown, []);
  return { ...reading, trace: [...sequences.map(droppedSequence), ...reading.trace] };
}

const droppedSequence = (span: Span): TraceStep => ({
  stage: 'talk',
  rule: 'escape sequence',
  span,
  outcome: 'dropped',
  why: 'a terminal takes orders from these characters: they are no words',
});

/** What a recogniser gave leaves some numbers in doubt. */
function readHeard(text: string, context: ReadContext): Reading {
  const reading = readTalk(text, context);
  return context.isHeard ? withNumberDoubts(text, reading) : reading;
}

function readTalk(text: string, context: ReadContext): Reading {
  if (isNoTalk(text)) return nothingIn(text);
  // What was misheard is put right first: a unit or a thing under another word misleads every stage after.
  const repairs = findRepairs(text, context);
  if (repairs.length === 0) return readWords(text, context);
  const mended = mendText(text, repairs);
  return {
    ...placeBack(readWords(mended.text, context), text, mended, repairs),
    repairs: repairs.map(({ start, end, means, why }) => ({
      start,
      end,
      quote: text.slice(start, end),
      means,
      why,
    })),
  };
}

function readWords(text: string, context: ReadContext): Reading {
  const tokens = tokenise(text);
  const takenBack = findTakenBack(tokens);
  // Quantities first: items hang on them, and statements may lean on figures.
  const { quantities, trace: quantityTrace } = readQuantities(text, tokens, context);
  const { figures: named, trace: itemTrace } = readItems(text, quantities, context);
  const sizes = withToldDifferences(text, withClearOpenings(text, withPieces(text, named)));
  const figures = withHeatClearances(text, withBareAmounts(text, sizes));
  const { notes: statements, trace: statementTrace } = readStatements(
    text,
    splitSentences(text),
    context,
    figures,
    { takenBack },
  );
  // Last: what is kept on record leans on figures and on what has come.
  const scene = sceneOf(text, figures, statements.arrivals);
  const { records, trace: recordTrace } = readRecords(scene, context, takenBack);
  const told = withPlaces(scene, withSheetFigures(figures, records));
  const sized = withoutClockTimes(text, told, records, context.recordedAt);
  return {
    notes: {
      figures: sized,
      ...statements,
      done: withoutPlaces(withoutHands(statements.done, records), records),
      problems: withoutHidden(statements.problems, records),
      records,
    },
    trace: [...quantityTrace, ...itemTrace, ...statementTrace, ...recordTrace],
  };
}

/** "The knees are handed" tells how they are, and of no work that is finished. */
function withoutHands(done: readonly DoneNote[], records: readonly RecordNote[]): readonly DoneNote[] {
  const hands = records.filter(({ kind }) => kind === 'hand');
  return done.filter(
    ({ quote, span }) =>
      !/(?:is|are|'s|'re) (?:all |both )?(?:handed|mirrored)\b/i.test(quote) ||
      !hands.some((hand) => span.start >= hand.span.start && span.end <= hand.span.end),
  );
}

/** "There's a cable running up behind the stud" tells where it runs, and of no work. */
function withoutPlaces(done: readonly DoneNote[], records: readonly RecordNote[]): readonly DoneNote[] {
  const hidden = records.filter(({ kind }) => kind === 'hidden');
  return done.filter(
    ({ quote, span }) =>
      !/^there(?:'s|’s| is| are|'re)\b/i.test(quote) ||
      !hidden.some((one) => span.start >= one.span.start && span.end <= one.span.end),
  );
}

/** "Behind the panel there's the feed" tells where a service runs; where something is wrong with it none is kept. */
function withoutHidden(
  problems: readonly ProblemNote[],
  records: readonly RecordNote[],
): readonly ProblemNote[] {
  const hidden = records.filter(({ kind }) => kind === 'hidden');
  return problems.filter(
    ({ quote, span }) =>
      IN_THE_WAY.test(quote) ||
      !hidden.some((one) => span.start >= one.span.start && span.end <= one.span.end),
  );
}
/** What stands just where something else is to go is a snag wherever it is hidden. */
const IN_THE_WAY = /\b(?:in the way|(?:right|bang|just|exactly|slap|smack) where)\b/i;

function nothingIn(text: string): Reading {
  const why = 'too many control characters: these bytes are no text';
  return {
    notes: NO_NOTES,
    trace: [
      { stage: 'talk', rule: 'no talk', span: { start: 0, end: text.length }, outcome: 'dropped', why },
    ],
  };
}
