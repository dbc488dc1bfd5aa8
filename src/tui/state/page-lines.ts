/** The lines of the page under `day`, as they will be written. */
import { plainText } from '../../plain-text.ts';
import type { ScreenState } from './screen-state.ts';

/** One line of a text that scrolls. */
export interface TextLine {
  readonly text: string;
  readonly heading?: boolean;
}

/** Every line of the shown page; none while nothing was taken. */
export function pageLines({ pages, page }: ScreenState): readonly TextLine[] {
  const text = pages?.[page]?.text.trimEnd();
  if (text === undefined) return [];
  return text.split('\n').map((line) => ({ text: plainText(line), heading: line.startsWith('#') }));
}
