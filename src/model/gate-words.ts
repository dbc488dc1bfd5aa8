/** Whether words of something done, or of a task, are those of a gate: "foam laid" and "the foam's down". */
import { remembered } from '../remembered.ts';
import { actionsOf } from './actions.ts';
import { wordsOf } from './names.ts';
import { stemOf } from './stems.ts';
import { areRivalWords, EMPTY, isCompound } from './telling-words.ts';

/** Closing in: what is behind is out of sight afterwards. */
const CLOSING = new Set(
  'close board cover plaster plasterboard skim box line sheet ceil overboard conceal enclose seal shut bury backfill'
    .split(' ')
    .map(stemOf),
);

/** Where a thing has got to stands for how it got there: "the board's in", "the wall is down". */
const PARTICLES: Readonly<Record<string, string>> = {
  in: 'fit',
  on: 'fit',
  up: 'fit',
  down: 'fit',
  out: 'remove',
  off: 'remove',
};
/** Words that only look like a way of doing something beside a thing. */
const PREPOSITION_BEFORE = /\b(?:in|on|up|down|out|off)\s+(?:the|a|an|my|our|this|that|to|of)\b/gi;

interface GateWord {
  readonly stem: string;
  readonly ways: ReadonlySet<string>;
}

/** The telling words of a gate or of what answers it. */
export interface GateWords {
  readonly words: readonly GateWord[];
  readonly stems: ReadonlySet<string>;
  readonly ways: ReadonlySet<string>;
  readonly plain: ReadonlySet<string>;
}

/** Takes words apart once; the same words come back for every memo while a task is open. */
export const gateWords: (text: string) => GateWords = remembered(20_000, (text) => takeApart(text));

function takeApart(text: string): GateWords {
  const plain = wordsOf(text);
  const stems = [...new Set(plain.map(stemOf))].filter((stem) => !EMPTY.has(stem));
  const words = stems.map((stem): GateWord => ({ stem, ways: waysOf(stem) }));
  const placed = wordsOf(text.replace(PREPOSITION_BEFORE, ' ')).flatMap((word) => PARTICLES[word] ?? []);
  // "Bolted up": the verb says more than the particle.
  const hasVerb = words.some(({ ways }, index) => index > 0 && ways.size > 0);
  if (!hasVerb && placed[0]) words.push({ stem: '', ways: new Set(placed) });
  const ways = new Set([...words.flatMap((word) => [...word.ways]), ...placed]);
  return { words, stems: new Set(stems), ways, plain: new Set(plain) };
}

function waysOf(stem: string): ReadonlySet<string> {
  const ways = actionsOf(stem);
  return CLOSING.has(stem) ? new Set([...ways, 'close']) : ways;
}

/** Words of a gate that must be answered: all of two, two of three, three of four. */
const LEAST = 0.66;

/**
 * Whether these words answer a gate: its words come back, the same or as another word for the same way of doing, and
 * no word of rank or side speaks against it.
 */
export function answersGate(said: GateWords, gate: GateWords): boolean {
  if (gate.words.length === 0 || areRivalWords(said.plain, gate.plain)) return false;
  const answered = gate.words.filter(
    ({ stem, ways }) => isAmong(stem, said.stems) || [...ways].some((way) => said.ways.has(way)),
  );
  if (answered.length < gate.words.length * LEAST) return false;
  // Some word must be the same: two ways of fitting are no word about one thing.
  return answered.some(({ stem }) => isAmong(stem, said.stems));
}

const isAmong = (stem: string, stems: ReadonlySet<string>) =>
  stems.has(stem) || [...stems].some((other) => isCompound(stem, other));
