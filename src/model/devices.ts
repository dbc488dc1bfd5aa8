/** Recorders whose clocks a person told of. Pure. */
import type { ProjectRows } from './rows.ts';
import type { DeviceView } from './views.ts';

/** In the order in which they were first told of. */
export function deviceViews(rows: ProjectRows): readonly DeviceView[] {
  return rows.all('devices').flatMap(({ name, clock }) => (clock ? [{ name, ...clock }] : []));
}

/** A file as far as it tells which recorder made it. */
export interface MadeBy {
  readonly fileName: string;
  /** Maker and model, as the file names them. */
  readonly device?: string;
}

/**
 * The recorder that made a file: the one whose name or file names fit, of several the one told of last. A name fits when
 * every word of it stands in what the file says of its recorder.
 */
export function deviceOf(
  devices: readonly DeviceView[],
  { fileName, device = '' }: MadeBy,
): DeviceView | undefined {
  const says = wordsOf(device);
  return devices.findLast(({ name, files = [] }) => {
    const words = wordsOf(name);
    const isNamed = words.length > 0 && words.every((word) => says.includes(word));
    return isNamed || files.some((pattern) => fits(pattern, fileName));
  });
}

const wordsOf = (text: string): readonly string[] => text.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? [];

/** Whether a file name fits a pattern, in capitals or not; `*` stands for any run of characters, `?` for one. */
export function fits(pattern: string, fileName: string): boolean {
  const wanted = [...pattern.toLowerCase()];
  const name = [...fileName.toLowerCase()];
  // After a star it is enough to go back to the last one: no name takes longer than its length by that of the pattern.
  let [at, star, from] = [0, -1, 0];
  for (let place = 0; place < name.length; ) {
    if (wanted[at] === '*') {
      star = at++;
      from = place;
    } else if (wanted[at] === '?' || (wanted[at] !== undefined && wanted[at] === name[place])) {
      at++;
      place++;
    } else if (star >= 0) {
      at = star + 1;
      place = ++from;
    } else return false;
  }
  return wanted.slice(at).every((one) => one === '*');
}
