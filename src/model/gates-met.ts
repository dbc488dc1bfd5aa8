/** What one memo, or a person's word, says of the things that open tasks wait for. */
import { isPlural, isTradeNoun } from '../language/lexicon/trade-nouns.ts';
import type { FigureNote } from '../language/notes.ts';
import type { Draft } from './draft.ts';
import { answersGate, type GateWords, gateWords } from './gate-words.ts';
import { saysCured, thingOf } from './gates.ts';
import { isSameGoods } from './goods.ts';
import { nameStems, shapeOf } from './names.ts';
import type { Gate, TaskRow } from './rows.ts';
import type { Source } from './views.ts';
import type { Working } from './working.ts';

interface Said {
  readonly words: GateWords;
  readonly text: string;
  readonly source: Source;
}

/** Goes over the gates of the open tasks in the light of this memo. `closed` are the tasks that it closed. */
export function meetGates(work: Working, closed: readonly TaskRow[]): void {
  const { notes, id } = work.memo;
  const deeds = notes.done.map((note) => said(`${note.gist} ${note.quote}`, work.source(note)));
  const came = notes.arrivals.filter((note) => note.received);
  const readings = notes.figures.filter(isReading);
  if (deeds.length + came.length + readings.length + notes.tasks.length === 0) return;
  for (const task of work.draft.gatedTasks()) {
    if (!task.gates) continue;
    const isNew = task.source.memoId === id;
    const gates = task.gates.map((gate): Gate => {
      if (gate.met) return gate;
      const read = withReading(work, task, gate, readings);
      if (isNew) return withStart(work, read, deeds);
      const byTask = closed.find((one) => one.id !== task.id && isMeant(gate, one));
      if (byTask) return { ...read, met: metBy(byTask) };
      const deed = deeds.find((one) => isDeedOf(gate, one));
      if (deed) return { ...read, met: deed.source };
      const arrival = came.find(
        ({ item }) => isArrivalOf(gate, item) || (isOnlyWaiting(task) && isGoodsOf(gate, item)),
      );
      if (arrival) return { ...read, met: { ...work.source(arrival), came: true } };
      return withStart(work, read, deeds);
    });
    if (gates.some((gate, at) => gate !== task.gates?.[at]))
      work.draft.put({ table: 'tasks', row: { ...task, gates } });
  }
}

/** A task was closed by hand: what waited for it waits no longer. */
export function meetGatesByHand(draft: Draft, closed: TaskRow): void {
  for (const task of draft.gatedTasks()) {
    if (!task.gates?.some((gate) => !gate.met && isMeant(gate, closed)) || task.id === closed.id) continue;
    const gates = task.gates.map((gate) =>
      !gate.met && isMeant(gate, closed) ? { ...gate, met: metBy(closed) } : gate,
    );
    draft.put({ table: 'tasks', row: { ...task, gates } });
  }
}

/** Whether a gate means this task: by its id, else by its words. */
export function isMeant(gate: Gate, task: Pick<TaskRow, 'id' | 'gist' | 'waitsFor'>): boolean {
  if (gate.taskId !== undefined) return gate.taskId === task.id;
  if (gate.kind !== 'event' && gate.kind !== 'hours') return false;
  const words = gate.kind === 'hours' ? thingOf(gate.words) : gate.words;
  return answersGate(gateWords(withoutWaits(task)), gateWords(words));
}

/** A task's own words: those of what it waits for are about other work. */
function withoutWaits({ gist, waitsFor }: Pick<TaskRow, 'gist' | 'waitsFor'>): string {
  return waitsFor.reduce((left, wait) => left.replace(wait, ' '), gist);
}

function said(text: string, source: Source): Said {
  return { text, source, words: gateWords(text) };
}

function metBy(task: TaskRow): NonNullable<Gate['met']> {
  return { ...(task.closedBy ?? task.source), taskId: task.id };
}

/** Something done answers a gate; where only time does it, something done starts the clock unless it says "dry". */
function isDeedOf(gate: Gate, deed: Said): boolean {
  if (gate.taskId !== undefined || gate.kind === 'date' || gate.kind === 'reading') return false;
  if (gate.kind !== 'hours') return answersGate(deed.words, gateWords(gate.words));
  return saysCured(deed.text) && startsClock(gate, deed.words);
}

/** "The glue" of "the glue has cured"; nothing is told apart where the thing was not named. */
function startsClock(gate: Gate, words: GateWords): boolean {
  const thing = gateWords(thingOf(gate.words));
  return thing.words.length > 0 && answersGate(words, thing);
}

function withStart(work: Working, gate: Gate, deeds: readonly Said[]): Gate {
  if (gate.kind !== 'hours') return gate;
  const deed = deeds.find((one) => startsClock(gate, one.words));
  if (deed) return { ...gate, since: deed.source };
  if (gate.since) return gate;
  const { head, stems } = shapeOf(thingOf(gate.words));
  const acts = work.draft
    .actsNaming(head, stems, 1)
    .filter(
      (act) =>
        act.act !== 'layered' && act.source.memoId !== work.memo.id && startsClock(gate, gateWords(act.what)),
    );
  const last = acts.at(-1);
  return last ? { ...gate, since: last.source } : gate;
}

/** "Waiting on the cast wheels": nothing to do but that, and goods by whatever name. */
export const isOnlyWaiting = ({ gist }: Pick<TaskRow, 'gist'>): boolean =>
  /^(?:still )?waiting (?:on|for)\b(?!.*\b(?:before|to|so)\b)/i.test(gist);

const isGoodsOf = ({ words }: Gate, item: string): boolean => {
  const thing = thingOf(words);
  return thing !== '' && isSameGoods(item.replace(/\s*\(arrived\)\s*$/, ''), thing);
};

/** A bare name, or one with a word for coming: goods, and no work on them. */
function isArrivalOf(gate: Gate, item: string): boolean {
  if (gate.taskId !== undefined || (gate.kind !== 'arrival' && gate.kind !== 'event')) return false;
  const thing = thingOf(gate.words);
  if (gate.kind === 'event' && /\b(?:in|on|up|down|out|off|under|over|has|have|been|is|are)\b/i.test(thing))
    return false;
  if (gate.kind === 'event' && gateWords(withoutGoods(thing)).ways.size > 0) return false;
  return isGoodsOf(gate, item);
}

/**
 * What stands before several things of the trade: "oak boards", "the new tiles" are goods, whatever else one does to board or
 * to tile.
 */
function withoutGoods(name: string): string {
  const [, before = '', last = ''] = /^(.*?)([\p{L}'-]+)$/u.exec(name) ?? [];
  return isPlural(last.toLowerCase()) && isTradeNoun(last.toLowerCase()) ? before : name;
}

/** A figure that says how something is now, and binds nothing. */
function isReading(note: FigureNote): boolean {
  return (note.bound === 'exact' || note.bound === 'about') && note.limit === undefined;
}

/** Things that have the temperature of the place; a reading of them answers a gate that names no thing. */
const AIR =
  /\b(?:air|outside|outdoors?|inside|indoors?|workshop|shop|shed|barn|garage|hull|cabin|saloon|room|house|place|weather|day|night|morning|temperature|thermometer|it|here|forecast)\b/i;

function withReading(work: Working, task: TaskRow, gate: Gate, figures: readonly FigureNote[]): Gate {
  const { reading } = gate;
  if (!reading) return gate;
  const figure = figures.findLast((one) => one.dimension === reading.dimension && isReadOf(gate, task, one));
  if (!figure) return gate;
  const source = work.source(figure);
  const latest = { value: figure.value, unit: figure.unit, item: figure.item, source };
  return { ...gate, reading: { ...reading, latest } };
}

/** Words of a gate that are about the amount and not about the thing. */
const AMOUNT =
  /\b(?:above|below|over|under|degrees?|percent|per cent|celsius|fahrenheit|or|better|warmer|cooler|less|more|least|most|at|no|than|down|to|has|have|must|be|is|are|it|it's|reads?|gets?|temperature|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|fifteen|sixteen|eighteen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)\b|[\d.,%°]+/gi;

/** What a share can be of: a reading of one says nothing of the others. */
const SHARES: readonly RegExp[] = [
  /\b(?:moisture|damp(?:ness)?|dry|dried|wet(?:ness)?)\b/gi,
  /\bhumid(?:ity)?\b/gi,
  /\b(?:charge|charged|full)\b/gi,
];

function isReadOf(gate: Gate, task: TaskRow, figure: FigureNote): boolean {
  const share = gate.reading?.dimension === 'ratio' ? shareIn(gate.words) : undefined;
  const read = `${figure.item} ${figure.quote}`;
  const readShare = share && shareIn(read);
  if (share && readShare && share !== readShare) return false;
  const thing = thingsIn(gate.words, share);
  const named = thingsIn(figure.item, share);
  if (thing.some((stem) => named.includes(stem))) return true;
  if (gate.reading?.dimension === 'temperature')
    return (thing.length === 0 || AIR.test(gate.words)) && AIR.test(figure.item);
  // "The moisture has to be under 12 before I glue the planks": the planks' own reading, or one of nothing else.
  if (thing.length > 0 || share === undefined) return false;
  return named.length === 0 ? readShare !== undefined : isOfTask(task, named);
}

const isOfTask = (task: TaskRow, named: readonly string[]): boolean => {
  const own = nameStems(task.gist);
  return named.some((stem) => own.includes(stem));
};

const shareIn = (words: string): RegExp | undefined => SHARES.find((share) => words.search(share) >= 0);

/** Stems of the things that words name, without what tells an amount or what is read of them. */
const thingsIn = (words: string, share: RegExp | undefined): readonly string[] =>
  nameStems((share ? words.replace(share, ' ') : words).replace(AMOUNT, ' ')).filter(
    (stem) => stem.length > 2,
  );
