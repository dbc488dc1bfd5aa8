/**
 * What holds up a task that was read otherwise, told in the words beside it: "weld up the legs once the gas has been
 * swapped", "that comes off the first dry day", "the brakes can't be bled without the pump". Only a state that is still to
 * come is waited for: where the speaker will be ("when I'm in town") and what was, are none.
 */
import type { TraceStep } from '../notes.ts';
import { type Draft, firstWord, neighbour, type Scene } from './draft.ts';
import { THING_WAITS, tellsOfPast, textOfClause } from './gates.ts';
import { find, matches, phrase } from './phrase.ts';
import type { Said, Word } from './words.ts';

/** A gate as it was told, and the clause that holds it where that is another one than the task's own. */
interface Beside {
  readonly words: string;
  readonly clause?: number;
}

const ONCE = /\b(?:once|soon as|provided(?: that)?|providing(?: that)?|supposing(?: that)?)$/;
const WHEN = /\bwhen$/;
const WHILE = /\bwhile$/;
const IF = /\bif$/;
const UNTIL = /\b(?:until|till|'til|before)$/;

const SPEAKER = /^(?: \S+\/\w*L\w*)* (?:i|we|you)\//;
/** "I've scrounged some steel", "we get a day": done, or given, before the work. */
const SPEAKER_DONE = phrase("^<lead>* (?: i | we ) (?: (?: 've | have ) <any>* | get a <any>+ )");
/** How the work feels, and no state of a thing: "once I face it", "once my temper's cooled". */
const MOOD =
  / (?:temper|swearing|laughing|crying|sulking|nerve|nerves|mood|breath|coffee|tea|lunch|breakfast)\//;
const SPEAKER_MOOD =
  / (?:feel|feels|fancy|suits|face|bothered|remember|get|getting|need|want|like)\/\S*(?: |$)/;

const DENIED = / (?:not|no|never|wait|waits|waiting|stays|stay)\//;
/** "If that sixth beam's in", "if it's above ten": a thing in its place, or a number reached. */
const STATE = phrase(
  "(?: 's | is | are | 're ) (?: <done> | in | on | up | down | here | dry | back ) (?: by then )? $",
);
const REACHES = phrase(
  "^<lead>* (?: it | that ) (?: 's | is | stays | gets ) (?: over | above | below | under | past ) <number>",
);

/** "But not while it's wet": says no more than that the work named before is held up. */
const NOT_YET = phrase('^<lead>* (?: <adverb> | just )* not (?: <adverb> | yet )* $');

/** "Paint the sills once it's dry": the work itself is not what must be dry. */
function wordsOfGate(gate: Said, task: Said, scene: Scene): string {
  const words = textOfClause(gate, scene);
  const work = task.words[firstWord(task)];
  const isWork = work?.classes.includes('B') && words.toLowerCase().startsWith(`${work.lower} `);
  const own = gate.words.slice(firstWord(gate));
  // Talk without stops runs on into what comes next.
  return isWork || own.length > MOST_WORDS ? textOf(scene, own.slice(0, MOST_WORDS)) : words;
}
const MOST_WORDS = 9;

/** The state that a clause behind the task or before it tells of, if the task must wait for it. */
function stateIn(gate: Said, task: Said, scene: Scene): string | undefined {
  if (gate.asks || gate.words.length < 2 || tellsOfPast(gate) || MOOD.test(gate.code)) return undefined;
  const told = () => wordsOfGate(gate, task, scene);
  const speaks = SPEAKER.test(gate.code);
  if (ONCE.test(gate.opener)) return speaks && SPEAKER_MOOD.test(gate.code) ? undefined : told();
  if (WHEN.test(gate.opener)) return speaks && !matches(SPEAKER_DONE, gate) ? undefined : told();
  if (WHILE.test(gate.opener)) return DENIED.test(task.code) && !speaks ? told() : undefined;
  if (IF.test(gate.opener)) return matches(STATE, gate) || matches(REACHES, gate) ? told() : undefined;
  return undefined;
}

/** "A new one, quarter inch plate, soon as ...": what stands between tells of the thing alone. */
const isScrap = ({ opener, words }: Said) =>
  !opener && words.length <= 4 && !words.some(({ classes }) => /[SHMVOI]/.test(classes));

/** The next clauses of the sentence: "…, but not while it's wet" too. */
function gateBehind(last: Said, scene: Scene): Beside | undefined {
  const beside = neighbour(scene, last, 1);
  const next = beside && isScrap(beside) ? neighbour(scene, beside, 1) : beside;
  if (!next) return undefined;
  const state = stateIn(next, last, scene);
  if (state) return { words: state, clause: next.index };
  if (!/\b(?:but|only|though)\b/.test(next.opener) || !matches(NOT_YET, next)) return undefined;
  const held = neighbour(scene, next, 1);
  if (!held || held.words.length < 2) return undefined;
  return UNTIL.test(held.opener) || WHILE.test(held.opener)
    ? { words: textOfClause(held, scene), clause: held.index }
    : undefined;
}

/** "Once the gas has been swapped, weld up the legs": opens its sentence. */
function gateAhead(first: Said, scene: Scene): Beside | undefined {
  const before = neighbour(scene, first, -1);
  if (!before || first.opener || neighbour(scene, before, -1)) return undefined;
  const state =
    ONCE.test(before.opener) || WHEN.test(before.opener) ? stateIn(before, first, scene) : undefined;
  return state ? { words: state, clause: before.index } : undefined;
}

const WEATHER = 'dry | warm | fine | still | calm | windless | frost-free | rainless';
const DAY = 'day | days | spell | morning | afternoon | evening | night | week | weekend';
/** "The first dry day we get", "in a dry week", "wants a still day". */
const ON_FAIR_DAY = phrase(
  `(?: the | a | an | one | next | first | couple of | few )+ (?<day> (?: ${WEATHER} ) (?: ${WEATHER} )? (?: ${DAY} ) )`,
);
/** "It was a dry day", "on a dry day they're fine": told of the weather, and no wait. */
const WAS = / (?:was|were|had|been|did)\//;

/** "Can't be bled without the pump", "can't go in without an adaptor". */
const CANNOT_WITHOUT = phrase(
  '(?: can | could | will ) not <any>{0,6}? without (?<thing> (?: a | an | the | some | more | another | those | that | my ) <any>{1,4} ) $',
);

const textOf = (scene: Scene, words: readonly Word[]): string =>
  words.length > 0 ? scene.text.slice((words[0] as Word).start, (words.at(-1) as Word).end) : '';

/** "Can't be bled without the pump": what is not there, named in the task's own clause. */
function gateWithin(said: Said, scene: Scene): Beside | undefined {
  const without = find(CANNOT_WITHOUT, said)?.part('thing') ?? [];
  return without.length > 0 ? { words: textOf(scene, without) } : undefined;
}

/** A day of fair weather, named in the task's own clause or in a scrap right behind it. */
function fairDay(said: Said, scene: Scene): Beside | undefined {
  const scrap = neighbour(scene, said, 1);
  const scraps = scrap && !scrap.opener && scrap.words.length <= 6 ? [said, scrap] : [said];
  for (const clause of scraps) {
    const day = WAS.test(clause.code) ? [] : (find(ON_FAIR_DAY, clause)?.part('day') ?? []);
    if (day.length > 0)
      return { words: textOf(scene, day), ...(clause === said ? {} : { clause: clause.index }) };
  }
  return undefined;
}

/** "Hang the gutter, that's waiting on the brackets": a task of its own by another rule, and told of the one before. */
function waitBehind(task: Draft, scene: Scene, drafts: ReadonlyMap<number, Draft>): Beside | undefined {
  const next = drafts.get(task.to + 1);
  if (!next?.leans || next.rule !== THING_WAITS) return undefined;
  const isSame = scene.said[next.from]?.sentence === scene.said[task.to]?.sentence;
  const [words] = next.waitsFor ?? [];
  return isSame && words ? { words, clause: next.to } : undefined;
}

/** Gives each task that waits for nothing yet what the words beside it say that it waits for, and every one its fair day. */
export function withGatesBeside(
  drafts: readonly Draft[],
  scene: Scene,
  trace: TraceStep[],
): readonly Draft[] {
  const tasks = drafts.filter(({ kind }) => kind === 'task');
  const byClause = new Map(tasks.map((each) => [each.from, each]));
  /** Clauses that say no more than what another one waits for. */
  const taken = new Set<number>();
  const held = drafts.map((each): Draft => {
    const [first, last] = [scene.said[each.from], scene.said[each.to]];
    if (each.kind !== 'task' || !first || !last) return each;
    const waitsFor = each.waitsFor ?? [];
    const gate =
      waitsFor.length > 0
        ? undefined
        : (waitBehind(each, scene, byClause) ??
          gateBehind(last, scene) ??
          gateAhead(first, scene) ??
          gateWithin(last, scene));
    // "Varnish it once the legs are sanded, first dry day we get": a fair day goes with any other wait.
    const gates = [gate, fairDay(scene.said[gate?.clause ?? each.to] ?? last, scene)].filter(
      (one) => one !== undefined && !waitsFor.includes(one.words),
    ) as readonly Beside[];
    if (gates.length === 0) return each;
    const words = gates.map((one) => one.words);
    tell(each, `it waits for "${words.join('" and "')}"`, 'read', trace);
    const clauses = gates.flatMap(({ clause }) => (clause === undefined ? [] : [clause]));
    for (const clause of clauses) for (let k = Math.min(each.to + 1, clause); k <= clause; k++) taken.add(k);
    return { ...each, waitsFor: [...waitsFor, ...words], aside: [...(each.aside ?? []), ...clauses] };
  });
  return held.filter((each) => {
    const isGate = each.kind === 'task' && taken.has(each.from) && taken.has(each.to);
    if (isGate) tell(each, 'it says what the task beside it waits for', 'merged', trace);
    return !isGate;
  });
}

function tell(each: Draft, why: string, outcome: TraceStep['outcome'], trace: TraceStep[]): void {
  const span = { start: each.start, end: each.end };
  trace.push({ stage: 'statements: what holds a task up', rule: each.rule, span, outcome, why });
}
