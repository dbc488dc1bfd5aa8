/**
 * Reads a story that is written as marked talk: the memos' words with every note marked where it is said. Quicker to
 * write and to look over than lists of quotes; docs/stories.md holds the format.
 *
 *     story drill-1
 *     units metric
 *     region GB
 *     about Steel barge gets a wheelhouse
 *
 *     memo 2026-03-02T18:10:00+00:00
 *     So {x|the sole bearers are in} and {f bench top / height / = 920 mm|the bench wants to be nine twenty high}.
 *     {t a @2026-03-06 <primer dry; Sam|I need to fit the fronts by Friday once the primer's dry and Sam is here}.
 *     ! bench top / height / 910 mm -> 920 mm / decided
 */
import { ATTRIBUTES, type Attribute, type Bound, type HouseUnits } from '../../src/language/notes.ts';
import { dimensionOfUnit } from '../../src/language/units/read-unit.ts';
import type { FindingKind } from '../../src/model/views.ts';
import type { GoldConflict, GoldFigure, GoldMemo, Story } from './story.ts';

/** A mark: what stands before the bar, and the words it holds, marks inside them taken away. */
interface Mark {
  readonly head: string;
  readonly start: number;
  readonly end: number;
  readonly line: number;
}

class MarkFault extends Error {}

/** A story from its marked talk. Throws a `MarkFault` that names the line where a mark cannot be read. */
export function readMarkedTalk(source: string): Story {
  const lines = source.split('\n');
  const head = new Map<string, string>();
  let at = 0;
  for (; at < lines.length && !lines[at]?.startsWith('memo '); at++) {
    const [word = '', ...rest] = (lines[at] ?? '').split(' ');
    if (word !== '') head.set(word, rest.join(' '));
  }
  const parts: { from: number; stamp: string; lines: string[] }[] = [];
  for (; at < lines.length; at++) {
    const line = lines[at] ?? '';
    if (line.startsWith('memo ')) parts.push({ from: at + 1, stamp: line.slice(5).trim(), lines: [] });
    else parts.at(-1)?.lines.push(line);
  }
  const ids = new Map<string, string>();
  const memos = parts.map((part, k) => readMemo(part, `m${k + 1}`, ids));
  const closed = new Set(memos.flatMap((memo) => (memo.done ?? []).map((done) => done.closes)));
  const region = head.get('region');
  return {
    story: head.get('story') ?? '',
    units: (head.get('units') ?? 'metric') as HouseUnits,
    ...(region ? { region } : {}),
    about: head.get('about') ?? '',
    memos,
    openAtEnd: memos
      .flatMap((memo) => (memo.tasks ?? []).map(({ id }) => id))
      .filter((id) => !closed.has(id)),
  };
}

type Part = { readonly from: number; readonly stamp: string; readonly lines: readonly string[] };

function readMemo(part: Part, id: string, ids: Map<string, string>): GoldMemo {
  const isConflict = (line: string) => line.startsWith('! ');
  const { text, marks } = takeMarks(
    part.lines.map((line) => (isConflict(line) ? '' : line)),
    part.from,
  );
  const memo: Record<
    'figures' | 'decisions' | 'tasks' | 'done' | 'arrivals' | 'problems' | 'promises',
    object[]
  > = {
    figures: [],
    decisions: [],
    tasks: [],
    done: [],
    arrivals: [],
    problems: [],
    promises: [],
  };
  for (const mark of [...marks].sort((a, b) => a.start - b.start || b.end - a.end)) {
    const quote = wholeQuote(text, mark);
    const kind = mark.head[0];
    const rest = mark.head.slice(1).trim();
    if (kind === 'f') memo.figures.push(figureOf(rest, quote, mark.line));
    else if (kind === 'd') memo.decisions.push({ quote, gist: rest || quote });
    else if (kind === 'p') memo.problems.push({ quote, gist: rest || quote });
    else if (kind === 'v') memo.promises.push({ quote, gist: rest || quote });
    else if (kind === 't') memo.tasks.push(taskOf(rest, quote, `${id}.t${memo.tasks.length + 1}`, ids));
    else if (kind === 'x') memo.done.push({ quote, gist: quote, closes: closerOf(rest, ids, mark.line) });
    else if (kind === 'a') memo.arrivals.push(arrivalOf(rest, quote));
    else throw new MarkFault(`line ${mark.line}: no mark is called ${JSON.stringify(mark.head)}`);
  }
  const conflicts = part.lines.flatMap((line, k) =>
    isConflict(line) ? [conflictOf(line.slice(2), part.from + k + 1)] : [],
  );
  return { id, recordedAt: part.stamp, text, ...memo, conflicts } as unknown as GoldMemo;
}

/** The bare words of a memo's lines, joined by spaces, and the marks with their places in them. */
function takeMarks(lines: readonly string[], from: number): { text: string; marks: Mark[] } {
  let text = '';
  const marks: Mark[] = [];
  const open: { head: string; start: number; line: number }[] = [];
  lines.forEach((raw, k) => {
    const line = raw.trim();
    if (line === '') return;
    if (text !== '') text += ' ';
    for (let i = 0; i < line.length; i++) {
      const sign = line[i];
      if (sign === '{') {
        const bar = line.indexOf('|', i);
        if (bar < 0) throw new MarkFault(`line ${from + k + 1}: a mark without its bar`);
        open.push({ head: line.slice(i + 1, bar).trim(), start: text.length, line: from + k + 1 });
        i = bar;
      } else if (sign === '}') {
        const mark = open.pop();
        if (!mark) throw new MarkFault(`line ${from + k + 1}: a closing brace too many`);
        marks.push({ ...mark, end: text.length });
      } else text += sign;
    }
  });
  const left = open[0];
  if (left) throw new MarkFault(`line ${left.line}: a mark that is never closed`);
  return { text, marks };
}

/** The mark's words, lengthened word by word to both sides until they stand only once in the text. */
function wholeQuote(text: string, mark: Mark): string {
  let { start, end } = mark;
  while (/\s/.test(text[start] ?? '')) start++;
  while (/\s/.test(text[end - 1] ?? '')) end--;
  for (
    let turn = 0;
    text.indexOf(text.slice(start, end)) !== text.lastIndexOf(text.slice(start, end));
    turn++
  ) {
    if (start === 0 && end === text.length) break;
    if (turn % 2 === 0 && start > 0) start = text.lastIndexOf(' ', start - 2) + 1;
    else {
      const space = text.indexOf(' ', end + 1);
      end = space < 0 ? text.length : space;
    }
  }
  return text.slice(start, end);
}

const BOUND_OF: Readonly<Record<string, Bound>> = {
  '=': 'exact',
  '~': 'about',
  '>=': 'at-least',
  '<=': 'at-most',
  '..': 'between',
};

/** "bench top / height / = 920 mm", "shelf / width / .. 40 50 mm", "door / height / = 1900 mm +- 2 mm". */
function figureOf(words: string, quote: string, line: number): GoldFigure {
  const [item, attribute, said] = words.split(' / ').map((part) => part.trim());
  const found = /^(=|~|>=|<=|\.\.)\s*([\d.]+)(?:\s+([\d.]+))?\s+(\S+)(?:\s+\+-\s*([\d.]+)\s+(\S+))?$/.exec(
    said ?? '',
  );
  if (!item || !found) throw new MarkFault(`line ${line}: "${words}" is no figure`);
  if (!ATTRIBUTES.includes(attribute as Attribute))
    throw new MarkFault(`line ${line}: no attribute is called ${attribute}`);
  const [, sign = '=', low, high, unit = '', spread, spreadUnit] = found;
  const isMoney = /^[A-Z]{3}$/.test(unit);
  const dimension = isMoney
    ? 'money'
    : attribute === 'count'
      ? 'count'
      : unit === '1'
        ? 'ratio'
        : dimensionOfUnit(unit);
  if (!dimension) throw new MarkFault(`line ${line}: no unit is called ${unit}`);
  return {
    quote,
    item,
    attribute: attribute as Attribute,
    bound: BOUND_OF[sign] as Bound,
    value: Number(low),
    unit,
    dimension,
    ...(high ? { high: Number(high) } : {}),
    ...(spread ? { plusMinus: Number(spread), plusMinusUnit: spreadUnit ?? unit } : {}),
  };
}

/** "a @2026-03-06 <primer dry; Sam": a name of its own to be closed by, a due day, what it waits for; all may be left out. */
function taskOf(words: string, quote: string, id: string, ids: Map<string, string>) {
  const [before = '', waits] = words.split('<');
  const due = /@(\d{4}-\d{2}-\d{2})/.exec(before)?.[1] ?? null;
  const name = before.replace(/@\S+/, '').trim();
  if (name) ids.set(name, id);
  const waitsFor = (waits ?? '')
    .split(';')
    .map((wait) => wait.trim())
    .filter(Boolean);
  return { id, quote, gist: quote, due, waitsFor };
}

function closerOf(words: string, ids: ReadonlyMap<string, string>, line: number): string | null {
  const name = /^>\s*(\S+)/.exec(words)?.[1];
  if (!name) return null;
  const id = ids.get(name);
  if (!id) throw new MarkFault(`line ${line}: no task before this is called ${name}`);
  return id;
}

function arrivalOf(words: string, quote: string) {
  const expected = /@(\d{4}-\d{2}-\d{2})/.exec(words)?.[1] ?? null;
  return { quote, item: words.replace(/@\S+/, '').trim() || quote, expected };
}

/** "bench top / height / 910 mm -> 920 mm / decided". */
function conflictOf(words: string, line: number): GoldConflict {
  const [item = '', attribute, change = '', kind] = words.split(' / ').map((part) => part.trim());
  const found = /^([\d.]+)\s+(\S+)\s*->\s*([\d.]+)\s+(\S+)$/.exec(change);
  if (!found) throw new MarkFault(`line ${line}: "${words}" is no conflict`);
  const [, was, wasUnit = '', now, nowUnit = ''] = found;
  return {
    item,
    attribute: attribute as Attribute,
    was: { value: Number(was), unit: wasUnit },
    now: { value: Number(now), unit: nowUnit },
    kind: kind as FindingKind,
  };
}
