/**
 * Gives back the memory of sound that has gone through. It comes in large pieces outside the heap, and Node, which sees
 * much memory free, waits long before it looks for those that nobody needs.
 */
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';

let collect: (() => void) | undefined;

/** Takes some hundredths of a second: for work of minutes, now and then. */
export function spareMemory(): void {
  if (!collect) {
    setFlagsFromString('--expose-gc');
    collect = runInNewContext('gc') as () => void;
    setFlagsFromString('--no-expose-gc');
  }
  collect();
}
