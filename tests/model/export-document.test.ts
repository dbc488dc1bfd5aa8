/** The project as one document: every field of a small one, and what is left out of it. */
import { describe, expect, test } from 'vitest';
import { exportDocument, memoObject } from '../../src/model/export.ts';
import { figure, NotedStory } from '../kit/noted-story.ts';

type Document = { readonly memos: readonly Record<string, unknown>[]; readonly open: readonly string[] };
const told = () =>
  new NotedStory()
    .memo('The gate is 915. Oil the gate.', figure('gate', 'width', 915, { quote: 'The gate is 915' }), {
      kind: 'task',
      gist: 'Oil the gate',
      waitsFor: [],
      quote: 'Oil the gate',
    })
    .memo(
      'The gate is 951. Oiled the gate. The tap drips. It is oak. I will show it. The oak comes.',
      figure('gate', 'width', 951, { quote: 'The gate is 951' }),
      { kind: 'done', gist: 'Oiled the gate', quote: 'Oiled the gate' },
      { kind: 'problem', gist: 'The tap drips', quote: 'The tap drips' },
      { kind: 'decision', gist: 'It is oak', quote: 'It is oak' },
      { kind: 'promise', gist: 'Show it', quote: 'I will show it' },
      { kind: 'arrival', item: 'oak', received: false, quote: 'The oak comes' },
      { kind: 'hidden', panel: 'gate', what: 'cable', service: 'cable', quote: 'The tap drips' },
    );
const document = (story = told()) => exportDocument(story.project.rows) as Document & Record<string, unknown>;

describe('the document', () => {
  test('tells its format and the project', () => {
    expect(document()).toMatchObject({
      format: 1,
      project: { name: 'Shed', units: 'metric', region: 'GB', tolerances: {} },
    });
    expect(Object.keys(document())).toEqual([
      'format',
      'project',
      'memos',
      'figures',
      'limits',
      'batches',
      'behind',
      'hands',
      'orders',
      'checks',
      'open',
    ]);
  });

  test('holds each memo with its notes by kind, and the clashes that it brought', () => {
    expect(document().memos).toEqual([
      {
        id: 'm1',
        recordedAt: '2026-02-01T17:00:00+01:00',
        source: 'm1.txt',
        sha256: 'm1',
        text: 'The gate is 915. Oil the gate.',
        figures: [
          {
            id: 'm1.f1',
            quote: 'The gate is 915',
            item: 'gate',
            attribute: 'width',
            dimension: 'length',
            bound: 'exact',
            value: 915,
            unit: 'mm',
          },
        ],
        decisions: [],
        tasks: [{ id: 'm1.t1', quote: 'Oil the gate', gist: 'Oil the gate', waitsFor: [] }],
        done: [],
        arrivals: [],
        problems: [],
        promises: [],
        corrections: [],
        records: [],
        conflicts: [],
      },
      {
        id: 'm2',
        recordedAt: '2026-02-02T17:00:00+01:00',
        source: 'm2.txt',
        sha256: 'm2',
        text: 'The gate is 951. Oiled the gate. The tap drips. It is oak. I will show it. The oak comes.',
        figures: [expect.objectContaining({ id: 'm2.f1', value: 951 })],
        decisions: [{ id: 'm2.d1', quote: 'It is oak', gist: 'It is oak' }],
        tasks: [],
        done: [{ id: 'm2.x1', quote: 'Oiled the gate', gist: 'Oiled the gate', closes: 'm1.t1' }],
        arrivals: [{ id: 'm2.a1', quote: 'The oak comes', item: 'oak', received: false }],
        problems: [{ id: 'm2.p1', quote: 'The tap drips', gist: 'The tap drips' }],
        promises: [{ id: 'm2.v1', quote: 'I will show it', gist: 'Show it' }],
        corrections: [],
        records: [
          {
            kind: 'hidden',
            id: 'm2.r1',
            quote: 'The tap drips',
            panel: 'gate',
            what: 'cable',
            service: 'cable',
          },
        ],
        conflicts: [
          {
            id: 'm2.c1',
            item: 'gate',
            attribute: 'width',
            was: { value: 915, unit: 'mm' },
            now: { value: 951, unit: 'mm' },
            kind: 'slip',
            why: expect.stringMatching(/, and nothing was said of a change$/),
            status: 'open',
          },
        ],
      },
    ]);
  });

  test('lists the tasks that are open', () => {
    expect(document().open).toEqual([]);
    const reopened = told().hand({ kind: 'task-reopened', taskId: 'm1.t1' });
    expect(document(reopened).open).toEqual(['m1.t1']);
    expect(document(reopened).memos[1]?.done).toEqual([
      { id: 'm2.x1', quote: 'Oiled the gate', gist: 'Oiled the gate' },
    ]);
  });

  test('leaves out what a person rejected', () => {
    const story = told();
    for (const noteId of ['m2.f1', 'm2.x1', 'm2.p1', 'm2.d1', 'm2.v1', 'm2.a1', 'm2.r1', 'm1.t1'])
      story.hand({ kind: 'note-rejected', noteId });
    const [first, second] = document(story).memos;
    expect(first?.tasks).toEqual([]);
    for (const kind of [
      'figures',
      'decisions',
      'done',
      'arrivals',
      'problems',
      'promises',
      'records',
      'conflicts',
    ])
      expect([kind, second?.[kind]]).toEqual([kind, []]);
  });

  test('holds the log where it is asked for', () => {
    const { rows } = told().project;
    expect(exportDocument(rows, [])).toMatchObject({ log: [] });
    expect(exportDocument(rows)).not.toHaveProperty('log');
  });
});

test('one text read without a project has the shape of a memo', () => {
  const notes = {
    figures: [],
    decisions: [],
    tasks: [],
    done: [],
    arrivals: [],
    problems: [],
    promises: [],
    corrections: [],
    records: [],
  };
  const memo = { id: 'm1', recordedAt: '2026-02-01T17:00:00+01:00', source: 'talk.txt', text: 'We had tea.' };
  expect(memoObject({ ...memo, notes })).toEqual({ ...memo, ...notes, conflicts: [] });
});
