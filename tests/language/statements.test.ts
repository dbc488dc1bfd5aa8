import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { byRulesAlone } from '../kit/by-rules-alone.ts';

type Kind = 'decisions' | 'tasks' | 'done' | 'arrivals' | 'problems' | 'promises';
const set = JSON.parse(readFileSync(new URL('./statements-sentences.json', import.meta.url), 'utf8')) as {
  readonly kinds: Readonly<Record<Kind, readonly string[]>>;
  readonly silent: readonly string[];
};

describe.each(Object.entries(set.kinds))('%s', (kind, sentences) => {
  test.each(sentences)('"%s"', (said) => {
    const { notes, trace } = byRulesAlone(`Right. ${said}. Lovely.`);
    const quotes = notes[kind as Kind].map(({ quote }) => quote);
    // The rules that fired are printed when this fails.
    expect({ quotes: quotes.length, trace: quotes.length > 0 ? [] : trace }).toEqual({
      quotes: expect.any(Number),
      trace: [],
    });
    expect(quotes.length).toBeGreaterThan(0);
  });
});

describe('left alone', () => {
  test.each(set.silent)('"%s"', (said) => {
    const { notes } = byRulesAlone(`Right. ${said}. Lovely.`);
    expect(Object.values(notes).flat()).toEqual([]);
  });
});

test.each([
  ['I need to order the glass by Friday.', '2026-06-12'],
  ['So, make a jig, by Sunday.', '2026-06-14'],
  ['The brackets need hiring, tomorrow ideally.', '2026-06-11'],
  ["The surveyor's Monday, so I've gotta staple the cable by then.", '2026-06-15'],
  ["I can't get to the ridge till Saturday.", '2026-06-13'],
  ['I need to sand the sill.', undefined],
  ['I have to strip the sash before Friday.', '2026-06-12'],
  ['The gutter needs doing before the twenty first.', '2026-06-21'],
  ['The sail needs patching, before the regatta on Saturday.', '2026-06-13'],
  ["I've got to get the footings poured before the inspector comes on Monday.", '2026-06-15'],
  ['I need to fit the keel before I paint the hull on Sunday.', undefined],
  ['I need to leave the clamps on until Friday.', undefined],
  ['I have to bleed the brakes before the test.', undefined],
])('"%s" is due %s', (text, due) => {
  expect(byRulesAlone(text).notes.tasks.map((task) => task.due)).toEqual([due]);
});

test.each([
  ["I can't close the wall until the wiring's signed off.", ['wiring signed off']],
  ["I've gotta bolt the plates down but I can't until the flashing's here.", ['flashing here']],
  ["I'll weld up the bracket, soon as I swap the bottle.", ['I swap the bottle']],
  ['Not one board goes up ahead of the inspection.', ['inspection']],
  ["The lid is primed. I can't hang it till it's dry.", ['lid dry']],
  ["I can't paint the sill until it stops raining.", ['it stops raining']],
  ["I'm going to plate the hole. Can't weld till the tank's out though.", ['tank out']],
  ["I've not glued the trunk yet as I'm waiting on the leather.", ['leather']],
])('"%s" waits for %j', (text, waitsFor) => {
  expect(byRulesAlone(text).notes.tasks.map((task) => task.waitsFor)).toEqual([waitsFor]);
});

test('a list of jobs is one task each', () => {
  const { notes } = byRulesAlone(
    'Jobs, then. Get the old felt off, order the oak by Friday, and ring the yard about a crane.',
  );
  expect(notes.tasks.map(({ quote, due }) => [quote, due])).toEqual([
    ['Get the old felt off', undefined],
    ['order the oak by Friday', '2026-06-12'],
    ['ring the yard about a crane', undefined],
  ]);
});

test.each([
  [
    'I need to sand the lid, hang the door and paint the sill.',
    ['I need to sand the lid', 'hang the door', 'paint the sill'],
  ],
  ['Still to do, grout the tiles and hang the pantry door.', ['grout the tiles', 'hang the pantry door']],
  ['Strip the frame and prime it.', ['Strip the frame and prime it']],
  ['I have to pull the sheaves and grease them.', ['I have to pull the sheaves and grease them']],
  ['Hang on, I need to sand the lid.', ['I need to sand the lid']],
])('"%s": a job with a thing of its own is a task of its own', (text, quotes) => {
  expect(byRulesAlone(text).notes.tasks.map(({ quote }) => quote)).toEqual(quotes);
});

test('a choice keeps its reason and what was turned down', () => {
  const { notes } = byRulesAlone('The panes go in on putty, not the silicone, because it comes out again.');
  expect(notes.decisions).toMatchObject([
    {
      quote: 'The panes go in on putty, not the silicone, because it comes out again',
      reason: 'it comes out again',
      turnedDown: 'not the silicone',
    },
  ]);
});

test('an arrival is received, or expected on a day', () => {
  const { notes } = byRulesAlone(
    "The glass is here. The hinges are ordered, coming Friday. The stove's on order, three weeks. The plywood is ordered. It's coming tomorrow. The paint is ordered. Tomorrow I rest.",
  );
  expect(notes.arrivals.map(({ item, received, expected }) => [item, received, expected])).toEqual([
    ['glass', true, undefined],
    ['hinges', false, '2026-06-12'],
    ['stove', false, '2026-07-01'],
    ['plywood', false, '2026-06-11'],
    ['paint', false, undefined],
  ]);
});

test('an order is done only where one was open', () => {
  expect(byRulesAlone('The oak is ordered.').notes.done).toEqual([]);
  expect(byRulesAlone('The oak is ordered.', ['Order the oak']).notes.done).toHaveLength(1);
});

test.each([
  "If I'd fitted the rail last week I'd be done by now.",
  'Should I have painted the hull?',
  'I owe the neighbours a cake, which is not a build task, do not write that down.',
])('nothing is read from "%s"', (text) => {
  const { notes } = byRulesAlone(text);
  expect([...notes.tasks, ...notes.done, ...notes.decisions, ...notes.problems]).toEqual([]);
});

test('what viewers were told is corrected', () => {
  const { notes } = byRulesAlone("In the last episode I said the rail was 905. It's 915.");
  expect(notes.corrections.map(({ quote }) => quote)).toEqual([
    "In the last episode I said the rail was 905. It's 915",
  ]);
});

test('every quote stands in the text at its span, whatever the text', () => {
  const word = fc.constantFrom(
    ..."I need to the wall is fitted because until Friday, it leaks. we ordered glass promise not and so won't fit".split(
      ' ',
    ),
  );
  fc.assert(
    fc.property(fc.array(word, { maxLength: 60 }), (words) => {
      const text = words.join(' ');
      for (const note of Object.values(byRulesAlone(text).notes).flat()) {
        expect(text.slice(note.span.start, note.span.end)).toBe(note.quote);
        expect(note.quote).not.toBe('');
      }
    }),
  );
});

test.each(["the wall's in, ", 'until the ', 'fitted and ', 'not ', 'i '])(
  'long memos of "%s" take linear time',
  (words) => {
    const once = (text: string) => {
      const start = performance.now();
      byRulesAlone(text);
      return performance.now() - start;
    };
    // The best of three: a machine with other work on it stalls now and then.
    const time = (count: number) => {
      const text = words.repeat(count);
      return Math.min(once(text), once(text), once(text));
    };
    time(500);
    // Four times the text: quadratic work would take sixteen times as long.
    expect(time(4000) / Math.max(time(1000), 5)).toBeLessThan(11);
  },
);
