import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { openWorkplace, type Workplace } from '../kit/command-line.ts';

let place: Workplace;
beforeAll(() => {
  place = openWorkplace();
  place.call(['init', '--name', 'Barn']);
});
afterAll(() => place.remove());

test('where tells of an empty project that nothing was taken', () => {
  expect(place.call(['where', '--on', '2026-02-20'])).toEqual({
    out: '# Where was I, Friday 2026-02-20: Barn\n\nNothing was taken in yet.\n\nNothing is open.\n',
    err: '',
    code: 0,
  });
});

test('where tells what was in the middle, as a page, as a file and as JSON', () => {
  place.file('a.txt', "We've started tiling the porch. I need to buy grout by the 1st of March.");
  place.call(['take', 'a.txt', '--at', '2026-02-03T17:00:00Z']);
  const page = `# Where was I, Friday 2026-02-20: Barn

Last talk: Tuesday 2026-02-03, 17 days ago (memo 1).

## In the middle

- “We've started tiling the porch.” (memo 1, 2026-02-03)

## Expected and due

- Sunday 2026-03-01, in 9 days: to do: Buy grout by the 1st of March (memo 1)

## Ready to go on with

- Buy grout by the 1st of March (memo 1)
`;
  expect(place.call(['where', '--on', '2026-02-20'])).toEqual({ out: page, err: '', code: 0 });
  expect(place.call(['where', '--on', '2026-02-20', '--out', 'where.md'])).toMatchObject({
    out: '',
    err: 'written: DIR/where.md\n',
  });
  expect(readFileSync(join(place.folder, 'where.md'), 'utf8')).toBe(page);
  expect(JSON.parse(place.call(['where', '--json']).out)).toMatchObject({
    lastTalk: { date: '2026-02-03', memoIds: ['m1'] },
    begun: [{ source: { memoId: 'm1', quote: "We've started tiling the porch." } }],
  });
});

test('a day that is none is refused', () => {
  expect(place.call(['where', '--on', 'Friday'])).toMatchObject({ out: '', code: 2 });
});
