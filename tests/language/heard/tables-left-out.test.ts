import { afterEach, expect, test } from 'vitest';
import { confusionsOf, confusionTable } from '../../../scripts/hearing/seen-in-talk.ts';
import { TalkCounting } from '../../../scripts/hearing/talk-counting.ts';
import { meantBy, seenInTalkBy, timesHeardAs } from '../../../src/language/heard/heard-as-table.ts';
import { countTalkBy, logChanceAfter, timesSaid } from '../../../src/language/heard/neighbours.ts';

afterEach(() => {
  countTalkBy();
  seenInTalkBy();
});

test('counts that a story was taken off again know nothing of it', () => {
  const counting = new TalkCounting();
  counting.add(['The sill is rotten. The sill is gone.']);
  counting.add(['The quoin is plumb. The quoin is dry.']);
  countTalkBy(counting.tables());
  expect(timesSaid('quoin')).toBe(2);
  const likely = logChanceAfter('the', 'quoin');
  counting.add(['The quoin is plumb. The quoin is dry.'], -1);
  countTalkBy(counting.tables());
  expect(timesSaid('quoin')).toBe(0);
  expect(timesSaid('sill')).toBe(2);
  expect(logChanceAfter('the', 'quoin')).toBeLessThan(likely);
});

test('what was heard for a word stands in the table between neighbours that were heard right', () => {
  const confusions = confusionsOf('We cut the purlin again today.', 'We cut the perlon again today.');
  expect(confusions).toEqual([{ heard: 'perlon', meant: 'purlin' }]);
  seenInTalkBy(confusionTable([...confusions, ...confusions]));
  expect(meantBy('perlon')).toContain('purlin');
  expect(timesHeardAs('perlon', 'purlin').times).toBe(2);
  seenInTalkBy('');
  expect(timesHeardAs('perlon', 'purlin').times).toBe(0);
});
