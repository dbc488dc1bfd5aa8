import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { byRulesAlone } from '../kit/by-rules-alone.ts';

/** What the rules themselves make of our own sentences of many trades: read as the kind, left alone by it, and known gaps that no test holds to. */
interface Talk {
  readonly read: readonly string[];
  readonly leave: readonly string[];
  readonly gaps: readonly string[];
}

describe.each(['problems', 'decisions', 'arrivals', 'promises'] as const)('%s', (kind) => {
  const talk = JSON.parse(readFileSync(new URL(`./talk/${kind}.json`, import.meta.url), 'utf8')) as Talk;
  const quotes = (said: string) => {
    const text = `Right. ${said.slice(0, 1).toUpperCase()}${said.slice(1)}. Lovely.`;
    const { notes, trace } = byRulesAlone(text);
    return { quotes: notes[kind].map(({ quote }) => quote), rules: trace.map(({ rule }) => rule) };
  };
  test.each(talk.read)('"%s" is read', (said) => {
    const found = quotes(said);
    // The rules that fired are printed when this fails.
    expect(found, JSON.stringify(found)).toMatchObject({ quotes: [expect.any(String)] });
  });
  test.each(talk.leave)('"%s" is left alone', (said) => {
    const found = quotes(said);
    expect(found.quotes, JSON.stringify(found)).toEqual([]);
  });
});
