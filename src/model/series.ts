import type { FigureNote } from '../language/notes.ts';

/** Things whose readings change by themselves. */
const RISES_AND_FALLS =
  /\b(?:moisture|damp(?:ness)?|humid(?:ity)?|wet(?:ness)?|charge|state of charge|level|reading|temperature|so far|spent|budget|total cost|progress|hours?|tide|wind)\b/i;
const READ_NOW =
  /\b(?:right now|at the moment|this morning|tonight|today|at present|is showing|meter showing)\b/i;

/** Whether a figure is one of a series: readings that never clash with each other. */
export function isSeries(
  note: Pick<FigureNote, 'dimension' | 'item' | 'attribute' | 'bound'>,
  clause: string,
): boolean {
  if (note.dimension === 'temperature') return true;
  if (RISES_AND_FALLS.test(note.item))
    return (
      note.dimension === 'ratio' ||
      note.dimension === 'money' ||
      note.dimension === 'volume' ||
      note.dimension === 'charge' ||
      note.dimension === 'speed'
    );
  if (note.dimension === 'ratio' && RISES_AND_FALLS.test(clause)) return true;
  return (
    (note.dimension === 'voltage' || note.dimension === 'current' || note.dimension === 'pressure') &&
    READ_NOW.test(clause)
  );
}
