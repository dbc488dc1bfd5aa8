/**
 * Files of sentences with all that is read from each. A line that begins with `> ` is a sentence; what stands beneath it is
 * what was read, and is written anew by `npx vitest run tests/language/as-read -u`. Lines before the first sentence say
 * what it is read with: `units us`, `heard`, `open Paint the door`, `stands door / width 600 mm`, `binds roof / weight <= 75 kg`;
 * `notes only` leaves the reasons out; `weighed` tells what was weighed instead, which changes when weights are fitted anew.
 */
import type {
  Attribute,
  HouseUnits,
  KnownFigure,
  KnownLimit,
  ReadContext,
  Reading,
} from '../../src/language/notes.ts';
import { readMemo } from '../../src/language/pipeline.ts';
import { dimensionOfUnit } from '../../src/language/units/read-unit.ts';
import { noteLines, traceLines, weighedLines } from './note-lines.ts';

/** A Wednesday. */
const WEDNESDAY = '2026-06-10T18:00:00+01:00';

function standing(words: string): KnownFigure {
  const [item = '', size = ''] = words.split(' / ');
  const [attribute, value, unit = ''] = size.split(' ');
  return { item, attribute: attribute as Attribute, value: Number(value), unit };
}

function binding(words: string): KnownLimit {
  const bound = words.includes(' <= ') ? 'at-most' : 'at-least';
  const figure = standing(words.replace(/[<>]= /, ''));
  const dimension = dimensionOfUnit(figure.unit);
  if (!dimension) throw new Error(`no unit is called ${figure.unit}`);
  return { ...figure, bound, dimension };
}

/** What the head of a file tells of the project that the sentences are said in. */
function contextOf(head: readonly string[]): ReadContext {
  const told = (word: string) =>
    head.flatMap((line) => (line.startsWith(`${word} `) ? [line.slice(word.length + 1)] : []));
  const knownFigures = told('stands').map(standing);
  return {
    units: (told('units')[0] ?? 'metric') as HouseUnits,
    region: told('region')[0] ?? 'GB',
    recordedAt: WEDNESDAY,
    openTasks: told('open'),
    knownFigures,
    knownLimits: told('binds').map(binding),
    knownItems: [...new Set(knownFigures.map(({ item }) => item))],
    ...(head.includes('heard') ? { isHeard: true } : {}),
    ...(head.includes('weighed') ? { explain: true } : {}),
  };
}

function reasonsOf(head: readonly string[], text: string, reading: Reading): readonly string[] {
  if (head.includes('notes only')) return [];
  return head.includes('weighed') ? weighedLines(text, reading) : traceLines(text, reading);
}

/**
 * A file of sentences with what is read of each now. A reason of the trace is told where it is met first: with each
 * sentence it would be ten times as much to look over.
 */
export function readAnew(file: string): string {
  const lines = file.split('\n');
  const first = lines.findIndex((line) => line.startsWith('> '));
  const head = lines.slice(0, first).filter((line) => line !== '');
  const context = contextOf(head);
  const told = new Set<string>();
  const isNew = (line: string) => {
    const reason = line.replace(/"[^"]*"|“[^”]*”|[\d.,]+/g, '');
    const isFirst = !told.has(reason);
    told.add(reason);
    return isFirst;
  };
  const blocks = lines
    .filter((line) => line.startsWith('> '))
    .map((line) => {
      const text = line.slice(2);
      const reading = readMemo(text, context);
      const reasons = reasonsOf(head, text, reading).filter(isNew);
      return [
        line,
        ...noteLines(reading.notes).map((note) => `  ${note}`),
        ...reasons.map((reason) => `    . ${reason}`),
      ].join('\n');
    });
  return `${[...(head.length > 0 ? [head.join('\n')] : []), ...blocks].join('\n')}\n`;
}
