/** Temperatures that a data sheet's time is given for are the product's, and no air that anybody works in. */
import type { FigureNote, RecordNote } from '../notes.ts';
import { written } from './spoken-check.ts';

/** Figures of a memo, those that a check reads as its data sheet temperature named by their product. Pure. */
export function withSheetFigures(
  figures: readonly FigureNote[],
  records: readonly RecordNote[],
): readonly FigureNote[] {
  const sheets = records.flatMap((note) => {
    if (note.kind !== 'check') return [];
    const given = note.inputs.find(({ input }) => input === 'data sheet temperature');
    return given?.of === undefined ? [] : [{ span: note.span, of: given.of, expression: given.expression }];
  });
  if (sheets.length === 0) return figures;
  return figures.map((figure) => {
    if (figure.dimension !== 'temperature') return figure;
    const sheet = sheets.find(
      ({ span, expression }) =>
        figure.span.start >= span.start && figure.span.end <= span.end && written(figure) === expression,
    );
    return sheet ? { ...figure, item: sheet.of } : figure;
  });
}
