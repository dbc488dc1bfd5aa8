import { counted } from '../reports/source-text.ts';
import { oneLine } from '../reports/words.ts';

/** Which originals an import left behind, and how they come back. */
export function absentText(names: readonly string[]): string {
  return [
    `Not here, since an export holds no sound: ${counted(names.length, 'original')}.`,
    ...names.map((name) => `  ${oneLine(name)}`),
    'Where you have them: hearwright take FILE... keeps them again.',
  ].join('\n');
}
