/**
 * A made-up build of ten years, as the log's events: the same for the same size, so that two runs compare.
 * At size 1: 4,000 memos, 60,000 figures, about 5,000 things, 3,000 formulas and 10,000 tasks.
 */
import type {
  ArrivalNote,
  DoneNote,
  FigureNote,
  MemoNotes,
  PromiseNote,
  TaskNote,
} from '../../src/language/notes.ts';
import type { NewEvent } from '../../src/model/events.ts';

const PLACES =
  'port starboard saloon galley loft hall porch cabin forward aft upper lower inner outer east west north south kitchen attic cellar landing study pantry workshop stern bow wheelhouse larder bathroom lobby gable dormer veranda stair nursery boiler tank engine chart'.split(
    ' ',
  );
const THINGS =
  'bench locker bunk door window hatch shelf drawer panel floor beam frame rail post step wall table cupboard berth tank mast duct vent sill lintel joist rafter stringer cleat hinge batten plinth worktop settee partition bulkhead counter desk trunk rack'.split(
    ' ',
  );
const PARTS =
  'top leg side back face lining trim rail lip foot edge end base lid cap riser tread board opening slot'.split(
    ' ',
  );
const SIDES = ['width', 'height', 'depth', 'length', 'thickness'] as const;
const VERBS = [
  ['fit', 'fitted'],
  ['sand', 'sanded'],
  ['paint', 'painted'],
  ['glue', 'glued'],
  ['cut', 'cut'],
  ['oil', 'oiled'],
  ['hang', 'hung'],
  ['plane', 'planed'],
] as const;

const MEMOS = 4000;
const FIGURES_PER_MEMO = 15;
const ITEMS = 5000;
const TASKS_PER_MEMO = 2.5;
const FORMULAS = 3000;

/** Numbers that look random and are the same every time (Park and Miller's minimal standard generator, 1988). */
function dice(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
}

/** Writes one memo's text and remembers where each note's words stand in it. */
class Talk {
  text = '';
  say<N extends { readonly quote: string }>(sentence: string, note: N): N & { span: FigureNote['span'] } {
    const start = this.text.length + sentence.indexOf(note.quote);
    this.text += `${sentence} `;
    return { ...note, span: { start, end: start + note.quote.length } };
  }
}

export interface BuildMemo {
  readonly memoId: string;
  readonly events: readonly NewEvent[];
}

interface OpenTask {
  readonly what: string;
  readonly verb: (typeof VERBS)[number];
}

/** The memos of a build of this size, one at a time. */
export function* tenYearBuild(size: number): Generator<BuildMemo> {
  const roll = dice(20_260_307);
  const pick = <T>(list: readonly T[]): T => list[Math.floor(roll() * list.length)] as T;
  const memos = Math.round(MEMOS * size);
  const names = itemNames(Math.round(ITEMS * size));
  const values = new Map<string, number>();
  const open: OpenTask[] = [];
  /** Things whose size of this sort was said lately: what a formula leans on. */
  const recent = Object.fromEntries(SIDES.map((side) => [side, [] as string[]])) as Record<
    (typeof SIDES)[number],
    string[]
  >;
  let formulas = 0;
  for (let number = 1; number <= memos; number++) {
    const talk = new Talk();
    const figures: FigureNote[] = [];
    const tasks: TaskNote[] = [];
    const done: DoneNote[] = [];
    // Work moves through the build: most talk is of what is at hand, some of what was made years ago.
    const here = (number / memos) * names.length;
    const thing = () => {
      const near = Math.floor(here + (roll() - 0.5) * 40);
      const index = roll() < 0.8 ? near : Math.floor(roll() * here);
      return names[Math.min(names.length - 1, Math.max(0, index))] as string;
    };
    while (done.length < TASKS_PER_MEMO - 0.1 && open.length > 12) {
      const { what, verb } = open.splice(Math.floor(roll() * open.length), 1)[0] as OpenTask;
      const gist = `${verb[1]} the ${what}`;
      done.push(talk.say(`I ${gist}.`, { kind: 'done', quote: gist, gist }) as DoneNote);
    }
    for (let count = 0; count < FIGURES_PER_MEMO; count++) {
      const item = thing();
      const attribute = pick(SIDES);
      const key = `${item} ${attribute}`;
      const known = values.get(key);
      const isChanged = known !== undefined && roll() < 0.05;
      const value = known === undefined || isChanged ? 20 + Math.floor(roll() * 2000) : known;
      const isNew = known === undefined;
      const source = isNew && count < 3 && formulas < FORMULAS * size ? pick(recent[attribute]) : undefined;
      if (isNew) recent[attribute] = [...recent[attribute].slice(-30), item];
      values.set(key, value);
      const change = isChanged ? ({ change: 'decided' } as const) : {};
      const formula = source === undefined ? {} : { formula: `${source} ${attribute} - 18 mm` };
      if (source !== undefined) formulas++;
      const quote = `${value} millimetres`;
      const words = `The ${item} is ${quote} ${attribute}${isChanged ? ' now, I changed it' : ''}.`;
      figures.push(
        talk.say(words, {
          kind: 'figure',
          quote,
          item,
          attribute,
          bound: 'exact',
          value,
          unit: 'mm',
          dimension: 'length',
          ...change,
          ...formula,
        }) as FigureNote,
      );
    }
    const wanted = number % 2 === 0 ? 3 : 2;
    for (let count = 0; count < wanted; count++) {
      const what = thing();
      const verb = pick(VERBS);
      open.push({ what, verb });
      const gist = `${verb[0]} the ${what}`;
      tasks.push(
        talk.say(`I need to ${gist}.`, { kind: 'task', quote: gist, gist, waitsFor: [] }) as TaskNote,
      );
    }
    const recordedAt = new Date(Date.UTC(2017, 0, 1) + number * 22 * 3_600_000).toISOString();
    yield memoEvents(`m${number}`, recordedAt, talk, { figures, tasks, done }, number);
  }
}

function memoEvents(
  memoId: string,
  recordedAt: string,
  talk: Talk,
  read: Pick<MemoNotes, 'figures' | 'tasks' | 'done'>,
  number: number,
): BuildMemo {
  const arrivals: ArrivalNote[] = [];
  const promises: PromiseNote[] = [];
  if (number % 5 === 0) {
    const quote = 'the hinges are ordered';
    arrivals.push(
      talk.say(`So ${quote}.`, { kind: 'arrival', quote, item: 'hinges', received: false }) as ArrivalNote,
    );
  }
  if (number % 20 === 0) {
    const quote = 'I will show you the joint';
    promises.push(
      talk.say(`${quote} next week.`, { kind: 'promise', quote, gist: 'show the joint' }) as PromiseNote,
    );
  }
  const text = talk.text.trim();
  const notes: MemoNotes = {
    ...read,
    arrivals,
    promises,
    decisions: [],
    problems: [],
    corrections: [],
    records: [],
  };
  const source = {
    name: `${memoId}.txt`,
    kind: 'text',
    sha256: memoId.padStart(64, '0'),
    bytes: text.length,
  } as const;
  const at = recordedAt;
  return {
    memoId,
    events: [
      {
        kind: 'recording-kept',
        at,
        memoId,
        source,
        file: `originals/${memoId}`,
        recordedAt,
        recordedAtFrom: 'given',
      },
      { kind: 'transcript-made', at, memoId, transcript: { text } },
      { kind: 'notes-read', at, memoId, notes, reader: 'bench' },
    ],
  };
}

/** Names of three words, every one different, neighbours of one place together as in a real build. */
function itemNames(count: number): readonly string[] {
  const names: string[] = [];
  for (const place of PLACES)
    for (const thing of THINGS)
      for (const part of PARTS) {
        names.push(`${place} ${thing} ${part}`);
      }
  // Every so many names, so that a small build too reaches every place.
  const step = Math.max(1, Math.floor(names.length / count));
  return names.filter((_, index) => index % step === 0).slice(0, count);
}
