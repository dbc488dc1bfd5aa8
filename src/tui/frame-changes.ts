/** From one frame of the screen to the next with few bytes: over a slow line each costs a millisecond. Pure. */

/** One printable ASCII character, or an order for style: what takes one column or none, whatever the terminal. */
const PLAIN = /[ -~]|\p{Cc}\[[0-9;]*m/uy;

/**
 * What to write to a terminal that shows `before`, row by row from its top, so that it shows `after`. Empty where nothing
 * differs. Styles are taken to end within their row. With nothing before, the terminal is taken to be empty.
 */
export function changesBetween(before: readonly string[], after: readonly string[]): string {
  const orders: string[] = [];
  for (let row = 0; row < Math.max(before.length, after.length); row++) {
    const [was, now] = [before[row] ?? '', after[row] ?? ''];
    if (was !== now) orders.push(rowChange(row, was, now));
  }
  return orders.join('');
}

/** Goes to where the row begins to differ, takes away what stands from there on, and writes the new. */
function rowChange(row: number, was: string, now: string): string {
  const { length, column, style } = sameStart(was, now);
  // Taken away before it is written: behind a full row the cursor still stands on its last character.
  const erase = was === '' ? '' : '\u001b[K';
  return `\u001b[${row + 1};${column + 1}H${erase}${style}${now.slice(length)}`;
}

/** How far two rows are the same: characters, the columns they take, and the style that holds there. */
function sameStart(was: string, now: string): { length: number; column: number; style: string } {
  let [length, column, style] = [0, 0, ''];
  for (;;) {
    PLAIN.lastIndex = length;
    const token = PLAIN.exec(now)?.[0];
    if (token === undefined || !was.startsWith(token, length)) break;
    // A mark that joins the character before it would be torn off.
    if (isJoined(was, length + token.length) || isJoined(now, length + token.length)) break;
    length += token.length;
    if (token.length === 1) column++;
    else style += token;
  }
  return { length, column, style };
}

const isJoined = (text: string, at: number) => text.charCodeAt(at) > 0x7f;
