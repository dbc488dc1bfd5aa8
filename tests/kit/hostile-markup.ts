/** Words made to become markup: tags, ends of what they stand in, attributes, comments, entities, among other hostile texts. */
import fc from 'fast-check';
import { hostileText } from './hostile-text.ts';

const PIECES = [
  '<b>',
  '</b>',
  '<script>alert(1)</script>',
  '"><img src=x onerror=alert(1)>',
  "' onclick='alert(1)",
  '" onclick="alert(1)',
  '</title><p>',
  '</desc></svg><p>',
  '</text><circle r="9"/>',
  '<!--',
  '-->',
  '<![CDATA[',
  ']]>',
  '<br/>',
  '&lt;b&gt;',
  '&#60;b&#62;',
  '&amp',
  '<a href="javascript:alert(1)">x</a>',
  '</script><script>',
  '*/',
  '\\u003cb',
] as const;

/** At least one such piece, so that what escapes nothing is found at once. */
export const hostileMarkup = fc
  .tuple(
    fc.constantFrom(...PIECES),
    fc.array(fc.oneof(fc.constantFrom(...PIECES), hostileText), { maxLength: 3 }),
  )
  .map(([first, others]) => [first, ...others].join(' ').slice(0, 1999));
