/** Numbers in large signs, five rows high, to be read from across a bench. Pure. */

/** Three by five cells each; a narrow sign has fewer. Drawn for this screen. */
const SIGNS: Readonly<Record<string, readonly string[]>> = {
  '0': ['###', '# #', '# #', '# #', '###'],
  '1': [' # ', '## ', ' # ', ' # ', '###'],
  '2': ['###', '  #', '###', '#  ', '###'],
  '3': ['###', '  #', ' ##', '  #', '###'],
  '4': ['# #', '# #', '###', '  #', '  #'],
  '5': ['###', '#  ', '###', '  #', '###'],
  '6': ['###', '#  ', '###', '# #', '###'],
  '7': ['###', '  #', '  #', ' # ', ' # '],
  '8': ['###', '# #', '###', '# #', '###'],
  '9': ['###', '# #', '###', '  #', '###'],
  '.': [' ', ' ', ' ', ' ', '#'],
  ',': [' ', ' ', ' ', '#', '#'],
  '/': ['  #', '  #', ' # ', '#  ', '#  '],
  '-': ['  ', '  ', '##', '  ', '  '],
  ' ': [' ', ' ', ' ', ' ', ' '],
};

/** Cells of the terminal for each cell of a sign: twice as wide looks square. */
const WIDTHS = [2, 1];

/** The rows of `text`, as wide as `columns` lets them be; none where a sign is not known or nothing fits. */
export function bigRows(text: string, columns: number): readonly string[] {
  const signs = [...text].map((sign) => SIGNS[sign]);
  if (signs.length === 0 || signs.includes(undefined)) return [];
  for (const width of WIDTHS) {
    const rows = [0, 1, 2, 3, 4].map((row) =>
      signs
        .map((sign) =>
          [...(sign?.[row] ?? '')].map((cell) => (cell === '#' ? '█' : ' ').repeat(width)).join(''),
        )
        .join(' '.repeat(width)),
    );
    if ((rows[0]?.length ?? 0) <= columns) return rows;
  }
  return [];
}
