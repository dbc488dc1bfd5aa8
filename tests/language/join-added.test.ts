import { describe, expect, test } from 'vitest';
import type { TraceStep } from '../../src/language/notes.ts';
import { splitSentences } from '../../src/language/sentences.ts';
import type { Draft, StatementKind } from '../../src/language/statements/draft.ts';
import { joinAdded } from '../../src/language/statements/evidence/join-added.ts';
import { RULE } from '../../src/language/statements/evidence/rule-name.ts';
import { sceneOf } from '../../src/language/statements/read-statements.ts';

const CONTEXT = { units: 'metric', recordedAt: '2026-06-10T18:00:00+01:00' } as const;
const TEXT =
  'The film of the weir goes out on Sunday, and you will see the gates lifted. Then you get the turbine.';
const scene = sceneOf(TEXT, splitSentences(TEXT), CONTEXT);
const [weir, gates, turbine] = ['The film of the weir', 'see the gates lifted', 'you get the turbine'].map(
  (words) => scene.said.findIndex(({ start, end }) => TEXT.slice(start, end).includes(words)),
) as [number, number, number];

function on(clause: number, rule: string, kind: StatementKind = 'promise', more: Partial<Draft> = {}): Draft {
  const { start, end } = scene.said[clause] ?? { start: -1, end: -1 };
  return { kind, rule, from: clause, to: clause, start, end, ...more };
}

function joined(standing: readonly Draft[], added: readonly Draft[]) {
  const trace: TraceStep[] = [];
  const told = joinAdded(standing, added, scene, trace).map(({ kind, rule, start, end }) => ({
    kind,
    rule,
    quote: TEXT.slice(start, end),
  }));
  return { told, outcomes: trace.map(({ outcome }) => outcome) };
}

describe('what evidence adds beside a note of its kind', () => {
  test('is one note with it, under the rule that read it', () => {
    expect(joined([on(weir, '<film> is out <day>')], [on(gates, RULE)])).toEqual({
      told: [
        {
          kind: 'promise',
          rule: '<film> is out <day>',
          quote: 'The film of the weir goes out on Sunday, and you will see the gates lifted',
        },
      ],
      outcomes: ['merged'],
    });
    expect(joined([on(gates, 'read')], [on(weir, RULE)]).told).toHaveLength(1);
    expect(joined([], [on(weir, RULE), on(gates, RULE)]).told).toHaveLength(1);
  });

  test('keeps what the rule knew of it', () => {
    const [only] = joinAdded(
      [on(gates, 'read', 'decision', { reason: 'the river rises' })],
      [on(weir, RULE, 'decision', { turnedDown: 'a sluice' })],
      scene,
      [],
    );
    expect(only).toMatchObject({
      rule: 'read',
      reason: 'the river rises',
      turnedDown: 'a sluice',
      from: weir,
    });
  });

  test('stays a note of its own in another sentence, of another kind, of other goods', () => {
    expect(joined([on(gates, 'read')], [on(turbine, RULE)]).told).toHaveLength(2);
    expect(joined([on(weir, 'read', 'problem')], [on(gates, RULE)]).told).toHaveLength(2);
    const came = on(weir, 'read', 'arrival', { received: true });
    expect(joined([came], [on(gates, RULE, 'arrival', { received: false })]).told).toHaveLength(2);
  });

  test('jobs and deeds told side by side stay apart, as do two notes that rules read', () => {
    for (const kind of ['task', 'done'] as const)
      expect(joined([on(weir, 'read', kind)], [on(gates, RULE, kind)])).toMatchObject({ outcomes: [] });
    expect(joined([on(weir, 'one'), on(gates, 'another')], [on(turbine, RULE)]).told).toHaveLength(3);
  });
});
