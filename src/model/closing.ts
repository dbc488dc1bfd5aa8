/** Which open task a `done` note closes: by the things they share, the way of doing, and how rare the words are. */
import { actionsOf } from './actions.ts';
import { wordsOf } from './names.ts';
import type { TaskRow } from './rows.ts';
import { stemOf } from './stems.ts';

/** Words that say nothing about which task is meant. */
const EMPTY = new Set(
  `a an the this that these those it its i i'm i've we you he she they them him her my our your his their and or but so
  to of for in on at by with from into onto up down is are was were be been being am do did done does have has had having
  get got gotten getting gotta go goes going gone went will would can could should must need needs needed want wants
  wanted not no till until before after once when while as if then than there here now today tomorrow yesterday morning
  tonight night week day days monday tuesday wednesday thursday friday saturday sunday just only also too all both each
  one two some any bit lot thing things stuff really actually finally already yet still ever never next last new more
  much very quite well right okay yeah oh s t re ll ve d m whole every who what which where how why because since though
  about over under again back off out somebody someone anybody everybody nobody time first second third job jobs`
    .split(/\s+/)
    .map(stemOf),
);

/** Words of rank and side: when both sides have one of a set, it must be the same. */
const RIVALS: readonly (readonly string[])[] = [
  ['first', 'second', 'third', 'fourth', 'final', 'last'],
  ['east', 'west', 'north', 'south'],
  ['left', 'right'],
  ['port', 'starboard'],
  ['front', 'back', 'rear'],
  ['upper', 'lower'],
  ['top', 'bottom'],
  ['inner', 'outer'],
  ['inside', 'outside'],
  ['hot', 'cold'],
];

/** Stems of a text with what they weigh. */
type Weights = ReadonlyMap<string, number>;

export interface Described {
  readonly weights: Weights;
  readonly words: ReadonlySet<string>;
  readonly actions: ReadonlySet<string>;
}

const GIST = 1;
const QUOTE = 0.9;
const AROUND = 0.35;

/** After these stands where a deed was done, and not what was done: "the second coat is on the floor". */
const PLACE = new Set(
  'on in at under behind beside by near round around into onto through inside outside'.split(' '),
);
/** A place says less of a deed than the thing itself. */
const PLACED = 0.5;

/** Describes a deed: as `describe`, with the words for its place weighing less. */
export function describeDeed(gist: string, quote: string, around: string): Described {
  const described = describe(gist, quote, around);
  const weights = new Map(described.weights);
  const words = wordsOf(quote);
  const at = words.findIndex((word, index) => index > 0 && PLACE.has(word) && index < words.length - 1);
  if (at < 0) return described;
  const things = new Set(words.slice(0, at).map(stemOf));
  for (const word of words.slice(at + 1)) {
    const stem = stemOf(word);
    const weight = weights.get(stem);
    if (weight !== undefined && !things.has(stem)) weights.set(stem, weight * PLACED);
  }
  return { ...described, weights };
}

/** Describes a task or a deed by its gist, its quote and the talk around it. */
export function describe(gist: string, quote: string, around: string): Described {
  const weights = new Map<string, number>();
  const put = (text: string, weight: number) => {
    for (const word of wordsOf(text)) {
      const stem = stemOf(word);
      if (EMPTY.has(stem) && !PARTICLES.has(word)) continue;
      weights.set(stem, Math.max(weights.get(stem) ?? 0, weight));
    }
  };
  put(around, AROUND);
  put(quote, QUOTE);
  put(gist, GIST);
  const own = wordsOf(`${gist} ${quote}`);
  const actions = new Set(own.flatMap((word) => [...actionsOf(stemOf(word))]));
  return { weights, words: new Set(own), actions };
}

const PARTICLES: ReadonlySet<string> = new Set();

/** How well a deed answers a task: about 1 or more is a match. Rare words among the open tasks count for more. */
export function answers(deed: Described, task: Described, open: readonly Described[]): number {
  if (RIVALS.some((group) => areRivals(group, deed.words, task.words))) return 0;
  let things = 0;
  let acts = 0;
  for (const [stem, weight] of deed.weights) {
    const other = task.weights.get(stem);
    if (other === undefined) continue;
    const holders = open.filter((one) => (one.weights.get(stem) ?? 0) >= QUOTE).length;
    const rarity = 1 / Math.sqrt(Math.max(1, holders));
    const isAct = actionsOf(stem).size > 0;
    const worth = weight * other * rarity;
    if (isAct) acts += worth * 0.6;
    else things += worth;
  }
  if (things === 0 && acts < 0.55) return 0;
  const common = [...deed.actions].filter((action) => task.actions.has(action)).length;
  const clash = common === 0 && deed.actions.size > 0 && task.actions.size > 0;
  return things + acts + (common > 0 ? 0.45 : 0) - (clash ? 0.45 : 0);
}

function areRivals(group: readonly string[], a: ReadonlySet<string>, b: ReadonlySet<string>): boolean {
  const [left, right] = [group.filter((word) => a.has(word)), group.filter((word) => b.has(word))];
  return left.length > 0 && right.length > 0 && !left.some((word) => right.includes(word));
}

/** Enough for a deed to close a task. */
const CLOSES = 0.85;

/** "The bench has had its oil" ends the waiting of "fix the vice once the bench is oiled", and not that task. */
function opensGate(deed: Described, task: TaskRow, score: number, open: readonly Described[]): boolean {
  return task.waitsFor.some((wait) => answers(deed, describe(wait, wait, ''), open) > score);
}

/** A task's own words: what it waits for is other work. */
function withoutGates(task: TaskRow): string {
  return task.waitsFor.reduce((quote, wait) => {
    const at = quote.toLowerCase().indexOf(wait.toLowerCase());
    return at < 0 ? quote : quote.slice(0, at) + quote.slice(at + wait.length);
  }, task.quote);
}

/** The open task that a deed closes, if any: the best answer, and of equals the latest. */
export function closedBy(deed: Described, tasks: readonly TaskRow[]): TaskRow | undefined {
  const described = tasks.map((task) => describe(task.gist, withoutGates(task), task.around));
  let best: { readonly task: TaskRow; readonly score: number } | undefined;
  tasks.forEach((task, index) => {
    const score = answers(deed, described[index] as Described, described);
    if (opensGate(deed, task, score, described)) return;
    if (score >= CLOSES && score >= (best?.score ?? 0)) best = { task, score };
  });
  return best?.task;
}
