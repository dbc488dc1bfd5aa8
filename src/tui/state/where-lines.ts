/** The lines of "where was I". */
import { lastTalkWords, whereSections } from '../../reports/where-was-i.ts';
import type { TextLine } from './page-lines.ts';
import type { ScreenState } from './screen-state.ts';

/** Every line; none until it was read. */
export function whereLines({ where }: ScreenState): readonly TextLine[] {
  if (!where) return [];
  const sections = whereSections(where);
  return [
    { text: lastTalkWords(where) },
    ...(sections.length === 0 ? [{ text: 'Nothing is open.' }] : []),
    ...sections.flatMap(({ title, entries }) => [
      { text: '' },
      { text: title, heading: true },
      ...entries.flatMap(([first = '', ...more]) => [
        { text: `- ${first}` },
        ...more.map((text) => ({ text: `    ${text}` })),
      ]),
    ]),
  ];
}
