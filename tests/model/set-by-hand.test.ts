import { expect, test } from 'vitest';
import { readMemo } from '../../src/language/pipeline.ts';
import type { NewEvent } from '../../src/model/events.ts';
import { MemoryProject } from '../../src/model/memory.ts';
import { findingViews, limitViews, standingFigures } from '../../src/model/project-views.ts';
import { taskViews } from '../../src/model/task-views.ts';

const AT = '2026-02-05T09:00:00+01:00';

/** Lets a project hear one memo more, a day later each time from the first of February. */
function hear(project: MemoryProject, text: string): void {
  const number = project.rows.all('memos').length + 1;
  const memoId = `m${number}`;
  const recordedAt = `2026-02-0${number}T17:00:00+01:00`;
  const source = { name: `${memoId}.txt`, kind: 'text', sha256: memoId, bytes: text.length } as const;
  const { notes } = readMemo(text, { units: 'metric', recordedAt });
  project.append([
    { kind: 'recording-kept', at: AT, memoId, source, file: 'x', recordedAt, recordedAtFrom: 'given' },
    { kind: 'transcript-made', at: AT, memoId, transcript: { text } },
    { kind: 'notes-read', at: AT, memoId, notes, reader: 'test' },
  ]);
}

function heard(...texts: readonly string[]): MemoryProject {
  const project = new MemoryProject();
  project.append([{ kind: 'project-made', at: AT, name: 'Shed', units: 'metric' }]);
  for (const text of texts) hear(project, text);
  return project;
}

const benchOf = (project: MemoryProject) =>
  standingFigures(project.rows, 'bench top').map(({ value, unit, status }) => `${value} ${unit} ${status}`);
const openOf = (project: MemoryProject) => findingViews(project.rows, { status: 'open' });
const historyOf = (project: MemoryProject) =>
  standingFigures(project.rows, 'bench top')[0]?.history.map(({ value, status }) => `${value} ${status}`);

const SLIP = [
  'The bench top is 915 millimetres high, I measured it.',
  'The bench top is 951 millimetres high.',
] as const;

test.each([
  ['keep-old', ['915 mm stands'], ['915 standing', '951 rejected']],
  ['take-new', ['951 mm stands'], ['915 superseded', '951 standing']],
  ['both-right', ['915 mm stands'], ['915 standing', '951 standing']],
] as const)('a slip settled with %s leaves %j', (choice, standing, history) => {
  const project = heard(...SLIP);
  const [slip] = openOf(project);
  expect([slip?.kind, benchOf(project)]).toEqual(['slip', ['915 mm in-doubt']]);
  project.append([
    { kind: 'finding-settled', at: AT, findingId: slip?.id ?? '', choice, reason: 'taped it' },
  ]);
  expect(openOf(project)).toEqual([]);
  expect(findingViews(project.rows)[0]?.settledBy).toEqual({ choice, at: AT, reason: 'taped it' });
  expect(benchOf(project)).toEqual(standing);
  expect(historyOf(project)).toEqual(history);
});

test('a slip settled with the correct value: neither side stands, the set one does', () => {
  const project = heard(...SLIP);
  project.append([
    {
      kind: 'finding-settled',
      at: AT,
      findingId: openOf(project)[0]?.id ?? '',
      choice: 'correct',
      value: { value: 91.6, unit: 'cm' },
    },
  ]);
  expect(benchOf(project)).toEqual(['91.6 cm stands']);
  expect(historyOf(project)).toEqual(['915 superseded', '951 rejected', '91.6 standing']);
});

test('a value said again after it was let stand as a second one clashes no more', () => {
  const project = heard(...SLIP);
  project.append([
    { kind: 'finding-settled', at: AT, findingId: openOf(project)[0]?.id ?? '', choice: 'both-right' },
  ]);
  hear(project, 'The bench top is 951 millimetres high.');
  hear(project, 'The bench top is 915 millimetres high.');
  expect(openOf(project)).toEqual([]);
});

test('settling is undone by leaving its event out of the replay', () => {
  const project = heard(...SLIP);
  const before = benchOf(project);
  const [event] = project.append([
    { kind: 'finding-settled', at: AT, findingId: openOf(project)[0]?.id ?? '', choice: 'take-new' },
  ]);
  project.append([{ kind: 'undone', at: AT, undoes: event?.seq ?? 0 }]);
  expect([benchOf(project), openOf(project).length]).toEqual([before, 1]);
});

test('a finding that is not there changes nothing', () => {
  const project = heard(...SLIP);
  project.append([{ kind: 'finding-settled', at: AT, findingId: 'm9.c9', choice: 'take-new' }]);
  expect([benchOf(project), openOf(project).length]).toEqual([['915 mm in-doubt'], 1]);
});

test('a figure set by hand stands, and settles the doubts about it', () => {
  const project = heard(...SLIP);
  project.append([
    {
      kind: 'figure-set',
      at: AT,
      item: 'bench top',
      attribute: 'height',
      quantity: { value: 920, unit: 'mm' },
      reason: 'taped it',
    },
  ]);
  expect(benchOf(project)).toEqual(['920 mm stands']);
  expect(findingViews(project.rows)[0]?.settledBy).toEqual({
    choice: 'correct',
    at: AT,
    reason: 'taped it',
    value: { value: 920, unit: 'mm' },
  });
});

test('a figure set for a thing nobody spoke of makes the thing', () => {
  const project = heard();
  project.append([
    {
      kind: 'figure-set',
      at: AT,
      item: 'roof hatch',
      attribute: 'weight',
      quantity: { value: 12, unit: 'kg' },
    },
  ]);
  expect(standingFigures(project.rows, 'hatch')).toMatchObject([
    {
      item: 'roof hatch',
      attribute: 'weight',
      dimension: 'mass',
      value: 12,
      unit: 'kg',
      rule: 'set by hand',
    },
  ]);
});

const set = (item: string, value: number): NewEvent => ({
  kind: 'figure-set',
  at: AT,
  item,
  attribute: 'height',
  quantity: { value, unit: 'mm' },
});
const formula = (text: string): NewEvent => ({
  kind: 'formula-set',
  at: AT,
  item: 'splashback',
  attribute: 'height',
  formula: text,
});

test('a formula set by hand is worked out, and again when a figure in it changes', () => {
  const project = heard();
  project.append([
    set('bench top', 900),
    set('window sill', 1400),
    formula('window sill height - bench top height'),
  ]);
  const splashback = () =>
    standingFigures(project.rows, 'splashback').map(({ value, rule }) => ({ value, rule }));
  expect(splashback()).toMatchObject([{ value: 500 }]);
  project.append([set('bench top', 920)]);
  expect(splashback()).toMatchObject([{ value: 480 }]);
  expect(openOf(project)).toMatchObject([
    { kind: 'stale', item: 'splashback', was: { value: 500 }, now: { value: 480 } },
  ]);
  project.append([formula('')]);
  expect(standingFigures(project.rows, 'splashback')[0]?.formula).toBeUndefined();
});

test('a formula with a name that stands for nothing is said not to run', () => {
  const project = heard();
  project.append([set('splashback', 500), formula('mast height - 10 mm')]);
  expect(openOf(project)).toMatchObject([{ kind: 'not-run', item: 'splashback' }]);
  expect(openOf(project)[0]?.why).toBe('it waits for figures that were never said: mast height');
});

test('a limit set by hand takes the place of the older one, and a figure set over it is found', () => {
  const project = heard();
  const limit = (value: number): NewEvent => ({
    kind: 'limit-set',
    at: AT,
    item: 'bench top',
    attribute: 'height',
    about: '',
    bound: 'at-most',
    quantity: { value, unit: 'mm' },
  });
  project.append([limit(950), limit(930)]);
  expect(limitViews(project.rows).map(({ value, bound }) => `${bound} ${value}`)).toEqual(['at-most 930']);
  project.append([set('bench top', 940)]);
  const [breach] = openOf(project);
  expect(breach).toMatchObject({ kind: 'limit', was: { value: 930 }, now: { value: 940 } });
  project.append([{ kind: 'finding-settled', at: AT, findingId: breach?.id ?? '', choice: 'take-new' }]);
  expect(openOf(project)).toEqual([]);
  expect(limitViews(project.rows).map(({ id, value, bound }) => `${id} ${bound} ${value}`)).toEqual([
    's5 at-most 940',
  ]);
});

test('a task is added, closed and opened again by hand', () => {
  const project = heard();
  project.append([{ kind: 'task-added', at: AT, gist: 'ring the glazier', due: '2026-02-09' }]);
  const shown = () =>
    taskViews(project.rows, AT).map(({ id, gist, status, due }) => ({ id, gist, status, due }));
  const task = { id: 's2', gist: 'ring the glazier', due: '2026-02-09' };
  expect(shown()).toEqual([{ ...task, status: 'ready' }]);
  project.append([{ kind: 'task-closed', at: AT, taskId: 's2' }]);
  expect(shown()).toEqual([{ ...task, status: 'done' }]);
  project.append([{ kind: 'task-reopened', at: AT, taskId: 's2' }]);
  expect(shown()).toEqual([{ ...task, status: 'ready' }]);
  project.append([{ kind: 'task-closed', at: AT, taskId: 's99' }]);
  expect(shown()).toHaveLength(1);
});
