/** What the bundled recogniser was seen to write for words of the trade. */
import { HEARD_AS } from './heard-as.ts';
import { HEARD_IN_TALK } from './heard-in-talk.ts';

interface Seen {
  readonly times: number;
  /** Of all the times that the heard words stood for another word of the trade, the share of this one. */
  readonly share: number;
}

const NEVER: Seen = { times: 0, share: 0 };
let unpacked: ReadonlyMap<string, ReadonlyMap<string, Seen>> | undefined;

/** Adds lines "heard>meant count,meant count". */
function count(counts: Map<string, Map<string, number>>, lines: string): void {
  for (const line of lines.trim().split('\n')) {
    const [heard = '', list = ''] = line.split('>');
    if (list === '') continue;
    const row = counts.get(heard) ?? new Map<string, number>();
    for (const one of list.split(',')) {
      const cut = one.lastIndexOf(' ');
      const meant = one.slice(0, cut);
      row.set(meant, (row.get(meant) ?? 0) + Number(one.slice(cut + 1)));
    }
    counts.set(heard, row);
  }
}

function unpack(inTalk: string): ReadonlyMap<string, ReadonlyMap<string, Seen>> {
  const counts = new Map<string, Map<string, number>>();
  count(counts, HEARD_AS);
  count(counts, inTalk);
  const table = new Map<string, ReadonlyMap<string, Seen>>();
  for (const [heard, row] of counts) {
    const all = [...row.values()].reduce((sum, times) => sum + times, 0);
    table.set(heard, new Map([...row].map(([meant, times]) => [meant, { times, share: times / all }])));
  }
  return table;
}

function table(): ReadonlyMap<string, ReadonlyMap<string, Seen>> {
  unpacked ??= unpack(HEARD_IN_TALK);
  return unpacked;
}

/** Takes another table of what was heard in talk from now on, so that a story can be judged by one that does not hold it. */
export function seenInTalkBy(inTalk = HEARD_IN_TALK): void {
  unpacked = unpack(inTalk);
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
