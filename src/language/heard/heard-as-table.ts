/** What the bundled recogniser was seen to write for words of the trade. */
import { HEARD_AS } from './heard-as.ts';

interface Seen {
  readonly times: number;
  /** Of all the times that the heard words stood for another word of the trade, the share of this one. */
  readonly share: number;
}

const NEVER: Seen = { times: 0, share: 0 };
let unpacked: ReadonlyMap<string, ReadonlyMap<string, Seen>> | undefined;

/** Lines "heard>meant count,meant count". */
function unpack(): ReadonlyMap<string, ReadonlyMap<string, Seen>> {
  const table = new Map<string, Map<string, Seen>>();
  for (const line of HEARD_AS.trim().split('\n')) {
    const [heard = '', list = ''] = line.split('>');
    const counts = list.split(',').map((one) => {
      const cut = one.lastIndexOf(' ');
      return [one.slice(0, cut), Number(one.slice(cut + 1))] as const;
    });
    const all = counts.reduce((sum, [, count]) => sum + count, 0);
    table.set(heard, new Map(counts.map(([meant, times]) => [meant, { times, share: times / all }])));
  }
  return table;
}

function table(): ReadonlyMap<string, ReadonlyMap<string, Seen>> {
  unpacked ??= unpack();
  return unpacked;
}

/** What is heard of one thing is heard of many: "axels" is "axles" where "axel" is "axle". */
const withoutS = (word: string) => (/[^s]s$/.test(word) ? word.slice(0, -1) : undefined);

/** Words of the trade that were heard as these. */
export function meantBy(heard: string): readonly string[] {
  const whole = [...(table().get(heard)?.keys() ?? [])];
  const one = withoutS(heard);
  const many =
    one === undefined ? [] : [...(table().get(one)?.keys() ?? [])].filter((word) => !word.endsWith('s'));
  return [...whole, ...many.map((word) => `${word}s`)];
}

export function timesHeardAs(heard: string, meant: string): Seen {
  const seen = table().get(heard)?.get(meant);
  if (seen) return seen;
  const [oneHeard, oneMeant] = [withoutS(heard), withoutS(meant)];
  return (oneHeard && oneMeant && table().get(oneHeard)?.get(oneMeant)) || NEVER;
}
