import { expect, test } from 'vitest';
import { HeardTalk } from '../../src/listening/heard-talk.ts';

const said = (startSeconds: number, endSeconds: number, text: string) => ({ startSeconds, endSeconds, text });
const heard = (...utterances: ReturnType<typeof said>[]) => ({ utterances, dropped: [] });

test('early talk stands until the same is heard with its neighbours', () => {
  const talk = new HeardTalk();
  talk.addEarly(heard(said(1, 3, 'The bench')));
  talk.addEarly(heard(said(4, 6, 'is 915 high.')));
  talk.addEarly(heard(said(8, 9, 'The hatch.')));
  expect(talk.latest(0, 9).map(({ text }) => text)).toEqual(['The bench', 'is 915 high.', 'The hatch.']);
  talk.add(heard(said(1.02, 5.96, 'The bench top is 915 high.')));
  expect(talk.latest(0, 9)).toEqual([
    said(1.02, 5.96, 'The bench top is 915 high.'),
    said(8, 9, 'The hatch.'),
  ]);
  expect(talk.latest(0, 1)).toEqual([said(8, 9, 'The hatch.')]);
  expect(talk.between(0, 60).utterances).toHaveLength(1);
});

test('a memo that begins later has its own time, and only its own talk', () => {
  const talk = new HeardTalk();
  const why = 'no words in it';
  talk.add({ utterances: [said(1, 3, 'before')], dropped: [{ ...said(3, 4, 'mm'), why }] });
  talk.add({ utterances: [said(101, 103.5, 'behind')], dropped: [{ ...said(104, 105, 'mm'), why }] });
  expect(talk.between(0, 90)).toEqual({
    utterances: [said(1, 3, 'before')],
    dropped: [{ ...said(3, 4, 'mm'), why }],
  });
  expect(talk.between(90.5, 200)).toEqual({
    utterances: [said(10.5, 13, 'behind')],
    dropped: [{ ...said(13.5, 14.5, 'mm'), why }],
  });
});

test('talk that was heard in a piece without words leaves early talk as it is', () => {
  const talk = new HeardTalk();
  talk.addEarly(heard(said(1, 3, 'The bench')));
  talk.add(heard());
  expect(talk.latest(0, 9)).toEqual([said(1, 3, 'The bench')]);
});
