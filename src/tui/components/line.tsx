/**
 * Lines that keep to the columns of the screen. Ink cuts and breaks text by measures of its own, which count some joined
 * characters twice; so every line is cut or broken here and comes to Ink as it is to stand.
 */
import { Box, Text, type TextProps } from 'ink';
import { createContext, useContext } from 'react';
import { cutLine, wrappedUnder } from '../../reports/columns.ts';

/** Columns of the screen. */
export const Columns = createContext(80);

/** Nothing is faint: on some grounds that cannot be read at arm's length. */
type Style = Pick<TextProps, 'bold' | 'underline' | 'color'>;

interface LineProps {
  readonly text: string;
  /** Its first word stands out, text and ground changed over: that can be read on any ground. */
  readonly loudWord?: boolean;
}

/** One line, cut with a sign where it is too long. */
export function Line({ text, loudWord = false, ...style }: LineProps & Style) {
  const columns = useContext(Columns);
  const shown = text === '' ? ' ' : cutLine(text, columns);
  const [word = ''] = loudWord ? (/^\S+/.exec(shown) ?? []) : [];
  return (
    <Text wrap="truncate-end" {...style}>
      {word === '' ? null : <Text inverse>{word}</Text>}
      {shown.slice(word.length)}
    </Text>
  );
}

interface ParagraphProps {
  readonly text: string;
  /** Lines at hand; what does not fit is left out. */
  readonly height?: number;
}

/** A text that runs on over several lines. */
export function Paragraph({ text, height = Number.POSITIVE_INFINITY, ...style }: ParagraphProps & Style) {
  const columns = useContext(Columns);
  return (
    <Box flexDirection="column" flexShrink={0}>
      {wrappedUnder(text, columns, height)
        .slice(0, height)
        .map((line, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: lines have no identity of their own
          <Line key={index} text={line} {...style} />
        ))}
    </Box>
  );
}
