import { workBase } from '../lexicon/work-verbs.ts';
import type { TraceStep } from '../notes.ts';
import { dayOfJob } from './day-told.ts';
import { isJobDenied } from './denied.ts';
import type { Draft, Scene, StatementKind } from './draft.ts';
import { THING_WAITS } from './gates.ts';
import { namesNoGoods } from './goods-named.ts';
import { isHeading, isNoJob, pointsBack } from './no-job.ts';
import { isForgiven } from './no-matter.ts';
import type { Said } from './words.ts';

/** Looks over all drafts; returns those to keep, and tells the trace about the rest. */
interface Refiner {
  readonly name: string;
  readonly refine: (
    drafts: readonly Draft[],
    scene: Scene,
    drop: (draft: Draft, why: string, merged?: boolean, winner?: Draft) => void,
  ) => readonly Draft[];
}

const touches = (a: Draft, b: Draft) => a.start < b.end && b.start < a.end;
const covers = (a: Draft, b: Draft) => a.start <= b.start && b.end <= a.end;
const isKind =
  (...kinds: readonly StatementKind[]) =>
  (draft: Draft) =>
    kinds.includes(draft.kind);

/** How many clauses before and after a draft its rivals are looked for: keeps long memos linear. */
const REACH = 12;

/** Finds drafts that start within reach of a clause. */
function index(drafts: readonly Draft[]): (clause: number) => readonly Draft[] {
  const byClause = new Map<number, Draft[]>();
  for (const each of drafts) {
    const list = byClause.get(each.from);
    if (list) list.push(each);
    else byClause.set(each.from, [each]);
  }
  return (clause) => {
    const found: Draft[] = [];
    for (let k = clause - REACH; k <= clause + REACH; k++) found.push(...(byClause.get(k) ?? []));
    return found;
  };
}

/** Two drafts of one kind on the same words are one note; the gated, the stronger, then the longer one stays. */
const sameWords: Refiner = {
  name: 'one note for the same words',
  refine: (drafts, _scene, drop) => {
    const kept: Draft[] = [];
    for (const each of [...drafts].sort((a, b) => a.from - b.from)) {
      let rival = kept.length - 1;
      const oldest = Math.max(0, kept.length - REACH * 4);
      while (rival >= oldest && !isRival(kept[rival] as Draft, each)) rival--;
      if (rival < oldest) {
        kept.push(each);
        continue;
      }
      const other = kept[rival] as Draft;
      const [winner, loser] = rank(each) > rank(other) ? [each, other] : [other, each];
      drop(loser, `the same words are read by "${winner.rule}"`, true);
      kept[rival] = mergeInto(winner, loser);
    }
    return kept;
  },
};

const isRival = (a: Draft, b: Draft) => a.kind === b.kind && overlapsMostly(a, b);

function overlapsMostly(a: Draft, b: Draft): boolean {
  const shared = Math.min(a.end, b.end) - Math.max(a.start, b.start);
  return shared >= 0.5 * Math.min(a.end - a.start, b.end - b.start);
}
const rank = (draft: Draft) =>
  (draft.waitsFor?.length ? 4 : 0) + (draft.weak ? 0 : 2) + (draft.reason || draft.turnedDown ? 1 : 0);

function mergeInto(winner: Draft, loser: Draft): Draft {
  const reason = winner.reason ?? loser.reason;
  const turnedDown = winner.turnedDown ?? loser.turnedDown;
  const item = winner.item ?? loser.item;
  return {
    ...winner,
    ...(reason ? { reason } : {}),
    ...(turnedDown ? { turnedDown } : {}),
    ...(item ? { item } : {}),
  };
}

/** "I told you nine metres. That was wrong.": what was told before is put right, which is no snag of the work. */
const putRight: Refiner = {
  name: 'what was told before is put right',
  refine: (drafts, _scene, drop) => {
    const near = index(drafts);
    return drafts.filter((each) => {
      if (each.kind !== 'problem') return true;
      const rival = near(each.from).find((other) => other.kind === 'correction' && touches(other, each));
      if (rival) drop(each, `"${rival.rule}" puts it right`);
      return !rival;
    });
  },
};

/** "The box was dented but it's fine." */
const forgiven: Refiner = {
  name: 'a snag that does not matter',
  refine: (drafts, scene, drop) =>
    drafts.filter((each) => {
      if (each.kind !== 'problem' || each.sure) return true;
      const taken = isForgiven(scene, each.to);
      if (taken) drop(each, 'the next words say that it does not matter');
      return !taken;
    }),
};

/** "Each coat takes sixteen hours", "I've a bone to pick", "what's left to do": no work is told in it. */
const noJob: Refiner = {
  name: 'nothing is left to do by it',
  refine: (drafts, scene, drop) =>
    drafts.filter((each) => {
      if (each.kind !== 'task') return true;
      const said = scene.said[each.from] as Said;
      const idle = each.from === each.to && isNoJob(said);
      const denied =
        each.from === each.to && !each.waitsFor?.length && isJobDenied(said, scene.said[said.index + 1]);
      const heads = isHeading(each, scene);
      if (denied) drop(each, 'the job is denied');
      else if (idle) drop(each, 'it tells how long or how, or only introduces');
      else if (heads) drop(each, 'it is the heading of what is told next');
      return !idle && !denied && !heads;
    }),
};

/** "The struts need trimming. I'll do that tomorrow": one job, and its day. */
const pointingBack: Refiner = {
  name: 'words that point back at a task are part of it',
  refine: (drafts, scene, drop) => {
    const gone = new Set<Draft>();
    const grown = new Map<Draft, Draft>();
    const near = index(drafts);
    for (const each of drafts) {
      const said = scene.said[each.from] as Said;
      if (each.kind !== 'task' || each.waitsFor?.length || each.from !== each.to || !pointsBack(said))
        continue;
      const host = near(each.from)
        .filter(
          (other) =>
            other.kind === 'task' &&
            other !== each &&
            !gone.has(other) &&
            other.start < each.start &&
            (scene.said[other.to]?.sentence ?? -9) >= said.sentence - 1,
        )
        .sort((a, b) => a.start - b.start)
        .at(-1);
      if (!host) continue;
      grown.set(host, { ...(grown.get(host) ?? host), weak: false, dayIn: each.from });
      gone.add(each);
      drop(each, `it points back at "${host.rule}"`, true);
    }
    return drafts.filter((each) => !gone.has(each)).map((each) => grown.get(each) ?? each);
  },
};

/** A plan told with its reason or with what was turned down is a choice; the work itself is planned elsewhere. */
const intention: Refiner = {
  name: 'an intention with its reason is a choice',
  refine: (drafts, _scene, drop) => {
    const near = index(drafts);
    return drafts.filter((each) => {
      if (each.kind !== 'task' || !each.intends || (each.waitsFor?.length ?? 0) > 0) return true;
      const rival = near(each.from).find(
        (other) => other.kind === 'decision' && touches(other, each) && (other.reason || other.turnedDown),
      );
      if (rival) drop(each, `"${rival.rule}" reads it as settled`);
      return !rival;
    });
  },
};

const ANNOUNCES: Partial<Readonly<Record<StatementKind, RegExp>>> = {
  problem:
    /^(?:(?:so|and|but|now|well|then|also) )*(?:there's|there is|there was|i've got|we've got|i got|i have|we have|i had|(?:(?:i|we)(?:'ve| have)? )?(?:hit|struck|r[au]n into))(?: got)? (?:a|an|another|one|something|some) ?(?:\w+ )?(?:problem|problems|snag|issue|hitch|wrong)(?: today| yesterday| this morning| last night)?$/,
  decision:
    /^(?:(?:so|and|but|now|well|then) )*(?:i've|i have|we've|we have|i|we) changed (?:my|our) minds?$/,
};

/** "There's a problem", "I've changed my mind": what is wrong or chosen is told in the words after. */
const announcement: Refiner = {
  name: 'an announcement says nothing itself',
  refine: (drafts, scene, drop) =>
    drafts.filter((each) => {
      const words = scene.text
        .slice(each.start, each.end)
        .toLowerCase()
        .replace(/’/g, "'")
        .replace(/[^a-z']+/g, ' ')
        .trim();
      const says = !ANNOUNCES[each.kind]?.test(words);
      if (!says) drop(each, 'the matter is told in the words after');
      return says;
    }),
};

/** "Can't weld till the tank's out though" tells when the work named just before can start. */
const leaningGate: Refiner = {
  name: 'a gate leans on the task before it',
  refine: (drafts, scene, drop) => {
    const gone = new Set<Draft>();
    const grown = new Map<Draft, Draft>();
    const near = index(drafts);
    for (const gate of drafts) {
      if (!gate.leans) continue;
      const here = scene.said[gate.from]?.sentence ?? 0;
      const tasks = near(gate.from).filter(
        (other) =>
          other.kind === 'task' &&
          !other.leans &&
          !gone.has(other) &&
          other.start <= gate.start &&
          // "Hang the gutter, that's waiting on the brackets": of the words right before it.
          (gate.rule !== THING_WAITS || other.to === gate.from - 1) &&
          !isOtherWork(gate, other, scene) &&
          // "But I need to run the wires first" waits for nothing: it is what comes first.
          !(gate.aside?.includes(other.from) && other.from === gate.from) &&
          (scene.said[other.to]?.sentence ?? -9) >= here - 1,
      );
      const host = tasks.sort((a, b) => a.start - b.start).at(-1);
      if (!host && gate.aside?.includes(gate.from) && gate.from === gate.to) {
        gone.add(gate);
        drop(gate, 'no work is named that it would have to come before');
      }
      if (!host) continue;
      const same = scene.said[host.to]?.sentence === here;
      const before = grown.get(host) ?? host;
      grown.set(host, {
        ...before,
        waitsFor: [...(before.waitsFor ?? []), ...(gate.waitsFor ?? [])],
        aside: [...(before.aside ?? []), ...(gate.aside ?? [])],
        ...(same && gate.to - host.to <= 2
          ? { end: Math.max(host.end, gate.end), to: Math.max(host.to, gate.to) }
          : {}),
        weak: false,
      });
      gone.add(gate);
      drop(gate, `it tells what "${host.rule}" waits for`, true);
    }
    return drafts.filter((each) => !gone.has(each)).map((each) => grown.get(each) ?? each);
  },
};

/** "No varnishing until it's dry. I can't launch until the wind drops": two jobs, each with what it waits for. */
function isOtherWork(gate: Draft, task: Draft, scene: Scene): boolean {
  if (!task.waitsFor?.length) return false;
  const worksOf = ({ from, to }: Draft) =>
    scene.said
      .slice(from, to + 1)
      .flatMap(({ words }) => words.flatMap(({ lower }) => workBase(lower) ?? []));
  const [own = [], theirs] = [worksOf({ ...gate, to: gate.from }), worksOf(task)];
  return own.length > 0 && !own.some((work) => theirs.includes(work));
}

/** A hint stands only where nothing else of its kind is said in the sentence. */
const weakYield: Refiner = {
  name: 'a hint yields to plain words',
  refine: (drafts, scene, drop) => {
    const near = index(drafts);
    return drafts.filter((each) => {
      if (!each.weak) return true;
      const sentence = scene.said[each.from]?.sentence;
      const other = near(each.from).find(
        (rival) =>
          rival !== each &&
          !rival.weak &&
          rival.kind === each.kind &&
          scene.said[rival.from]?.sentence === sentence,
      );
      if (other) drop(each, `"${other.rule}" says it in the same sentence`, true);
      return !other;
    });
  },
};

/** Which kind keeps a clause that two kinds claim. The first of a pair yields to the second. */
const YIELDS: readonly (readonly [StatementKind, StatementKind, string])[] = [
  ['task', 'promise', 'it is said to viewers'],
  ['arrival', 'promise', 'it is said to viewers'],
  ['done', 'promise', 'it is said to viewers'],
  ['decision', 'promise', 'it is said to viewers'],
  ['done', 'problem', 'what was done went wrong'],
  ['problem', 'task', 'the work is still to do'],
  ['done', 'task', 'the work is still to do'],
  ['arrival', 'task', 'it is a task with a day'],
  ['done', 'arrival', 'the thing only arrived'],
  ['arrival', 'done', 'it is work on the thing'],
  ['problem', 'done', 'it was put right'],
  ['problem', 'decision', 'it was settled in the same breath'],
  ['done', 'decision', 'it is a choice'],
];

const oneKind: Refiner = {
  name: 'one kind for a clause',
  refine: (drafts, _scene, drop) => {
    const near = index(drafts);
    return drafts.filter((each) => {
      for (const [loser, winner, why] of YIELDS) {
        if (each.kind !== loser) continue;
        // What ends an open task is done, however it is told.
        if (each.finishes && (winner === 'arrival' || winner === 'decision')) continue;
        if (each.sure && (winner === 'arrival' || winner === 'problem')) continue;
        const rival = near(each.from).find(
          (other) =>
            other.kind === winner &&
            !other.weak &&
            (winner !== 'done' || other.sure === true) &&
            covers(other, each) &&
            other !== each &&
            !gateOnly(other, each),
        );
        if (rival) {
          drop(each, `${why}: "${rival.rule}"`, false, rival);
          return false;
        }
      }
      return true;
    });
  },
};

/** A snag or a delivery told inside a gate is no part of the task itself. */
const gateOnly = (task: Draft, each: Draft) =>
  task.from !== each.from && (task.aside?.includes(each.from) ?? false) && each.kind === 'arrival';

/** A plan with a day is a task; only a reason or a thing turned down makes it a decision as well. */
const datedPlan: Refiner = {
  name: 'a plan with a gate is a task',
  refine: (drafts, _scene, drop) => {
    const near = index(drafts);
    return drafts.filter((each) => {
      if (each.kind !== 'decision' || each.reason || each.turnedDown) return true;
      const rival = near(each.from).find(
        (other) => other.kind === 'task' && touches(other, each) && (other.waitsFor?.length ?? 0) > 0,
      );
      if (rival) drop(each, `it waits for something: "${rival.rule}"`);
      return !rival;
    });
  },
};

/** "That's ordered, should be here Thursday" is one delivery, told in two clauses. */
const oneDelivery: Refiner = {
  name: 'one delivery told twice',
  refine: (drafts, scene, drop) => {
    const arrivals = drafts.filter(isKind('arrival')).sort((a, b) => a.start - b.start);
    const gone = new Set<Draft>();
    const grown = new Map<Draft, Draft>();
    for (let k = 1; k < arrivals.length; k++) {
      const second = arrivals[k] as Draft;
      const first = arrivals[k - 1] as Draft;
      const apart = (scene.said[second.from]?.sentence ?? 0) - (scene.said[first.to]?.sentence ?? 0);
      // In the next sentence only by a pronoun that opens it: "The battery is ordered. It should be here Saturday."
      const near = apart === 0 ? second.from - first.to <= 2 : apart === 1 && second.from - first.to === 1;
      const anew =
        second.item !== undefined &&
        !namesNoGoods(second.item) &&
        !/^(?:it|that|they|this|those|these|it's|that's|they're)?$/i.test(second.item.replace(/['’].*$/, ''));
      if (!near || anew || first.received !== second.received) continue;
      gone.add(first);
      grown.set(second, {
        ...second,
        start: first.start,
        from: first.from,
        ...(first.item ? { item: first.item } : {}),
      });
      drop(first, 'the next words tell when it comes', true);
    }
    return drafts.filter((each) => !gone.has(each)).map((each) => grown.get(each) ?? each);
  },
};

/** "So that one's off, and I'm having the little one" is one choice, told in two clauses. */
const oneChoice: Refiner = {
  name: 'one choice told twice',
  refine: (drafts, scene, drop) => {
    const choices = drafts.filter(isKind('decision')).sort((a, b) => a.start - b.start);
    const gone = new Set<Draft>();
    const grown = new Map<Draft, Draft>();
    for (let k = 1; k < choices.length; k++) {
      const second = choices[k] as Draft;
      const original = choices[k - 1] as Draft;
      const first = grown.get(original) ?? original;
      if (scene.said[first.to]?.sentence !== scene.said[second.from]?.sentence) continue;
      if (second.from - first.to > 1) continue;
      gone.add(original);
      grown.set(
        second,
        mergeInto(
          { ...second, start: first.start, from: first.from, end: Math.max(first.end, second.end) },
          first,
        ),
      );
      drop(original, 'the next words go on with the same choice', true);
    }
    return drafts.filter((each) => !gone.has(each)).map((each) => grown.get(each) ?? each);
  },
};

/** "It won't come off, the coupling's frozen solid", "I'm filming it, out Thursday": one note, told in two clauses. */
const toldTwice: Refiner = {
  name: 'one note told twice',
  refine: (drafts, scene, drop) => {
    const gone = new Set<Draft>();
    const grown = new Map<Draft, Draft>();
    for (const kind of ['problem', 'promise'] as const) {
      const notes = drafts.filter(isKind(kind)).sort((a, b) => a.start - b.start);
      for (let k = 1; k < notes.length; k++) {
        const second = notes[k] as Draft;
        const original = notes[k - 1] as Draft;
        const first = grown.get(original) ?? original;
        const [here, next] = [scene.said[first.to], scene.said[second.from]];
        if (!here || !next || here.sentence !== next.sentence || second.from - first.to > 1) continue;
        // "and the pump leaks": a note of its own.
        const joins = /\b(?:and|but)\b/.test(next.opener);
        if (joins && !/^(?:it|they|that|this|she|he|you)$/.test(next.words[0]?.lower ?? '')) continue;
        gone.add(original);
        grown.set(second, mergeInto({ ...second, start: first.start, from: first.from }, first));
        drop(original, 'the next words go on with the same', true);
      }
    }
    return drafts.filter((each) => !gone.has(each)).map((each) => grown.get(each) ?? each);
  },
};

/** In this order: gates and vows settle what a clause is before the looser readings are weighed. */
const REFINERS: readonly Refiner[] = [
  leaningGate,
  sameWords,
  // Before kinds are settled: "that's for Friday" sounds like a delivery.
  dayOfJob,
  weakYield,
  oneKind,
  datedPlan,
  announcement,
  putRight,
  forgiven,
  pointingBack,
  noJob,
  intention,
  oneDelivery,
  oneChoice,
  toldTwice,
];

/**
 * Those that stand. A draft that yielded its clause to one of another kind is told to `yielded`, with the one that it
 * yielded to.
 */
export function refine(
  drafts: readonly Draft[],
  scene: Scene,
  trace: TraceStep[],
  yielded?: Map<Draft, Draft>,
): readonly Draft[] {
  return REFINERS.reduce<readonly Draft[]>(
    (left, { name, refine: settle }) =>
      settle(left, scene, (each, why, merged = false, winner) => {
        if (winner) yielded?.set(each, winner);
        trace.push({
          stage: `statements: ${name}`,
          rule: each.rule,
          span: { start: each.start, end: each.end },
          outcome: merged ? 'merged' : 'dropped',
          why,
        });
      }),
    drafts,
  );
}
