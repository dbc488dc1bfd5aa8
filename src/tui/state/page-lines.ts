/** The lines of the page under `day`, as they will be written. */
import { plainText } from '../../plain-text.ts';
import type { ScreenState } from './screen-state.ts';
import { shortDay } from './words.ts';

/** One line of a text that scrolls. */
export interface TextLine {
  readonly text: string;
  readonly heading?: boolean;
}

/** Which day is shown, and of how many: "Mon 9 Mar 2026, day 2 of 3". */
export function dayLine({ days = [], day = days.at(-1) }: ScreenState): string {
  if (day === undefined) return '';
  return `${shortDay(day)} ${day.slice(0, 4)}, day ${days.indexOf(day) + 1} of ${days.length} with talk`;
}

/** Every line of the shown page; none while nothing was taken. */
export function pageLines({ pages, page }: ScreenState): readonly TextLine[] {
  const text = pages?.[page]?.text.trimEnd();
  if (text === undefined) return [];
  return text.split('\n').map((line) => ({ text: plainText(line), heading: line.startsWith('#') }));
}
