import fc from 'fast-check';
import { expect, test } from 'vitest';
import { escapeMarkdown } from '../../../src/reports/markdown.ts';
import { fileStem, fileStems } from '../../../src/reports/pages/file-names.ts';
import { escapeHtml, html, joinedBy } from '../../../src/reports/pages/html.ts';
import { mentionsLinked } from '../../../src/reports/pages/mentions.ts';
import { outlineHtml } from '../../../src/reports/pages/outline-html.ts';
import { weekOf } from '../../../src/reports/pages/weeks.ts';
import { oneLine } from '../../../src/reports/words.ts';
import { hostileMarkup } from '../../kit/hostile-markup.ts';
import { hostileText } from '../../kit/hostile-text.ts';

/** What a reader of HTML sees of escaped words. */
const ENTITIES: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', '#39': "'" };
const seen = (text: string) => text.replace(/&([a-z]+|#\d+);/g, (_, name: string) => ENTITIES[name] ?? '?');

test('the template escapes words and keeps its own markup', () => {
  const inner = html`<b>${'<i>'}</b>`;
  expect(html`<p title="${'"&'}">${inner}${[1, ' & ', inner]}${undefined}${false}</p>`.text).toBe(
    '<p title="&quot;&amp;"><b>&lt;i&gt;</b>1 &amp; <b>&lt;i&gt;</b></p>',
  );
});

test('what only looks like markup of ours is refused', () => {
  expect(() => html`${{ text: '<b>' } as never}`).toThrow(TypeError);
});

test('pieces are joined with something between', () => {
  expect(html`${joinedBy(['a', 'b', 'c'], ', ')}`.text).toBe('a, b, c');
});

test('any words come out as the plain words they were', () => {
  fc.assert(
    fc.property(fc.oneof(hostileText, hostileMarkup), (words) => {
      const text = escapeHtml(words);
      expect(text).not.toMatch(/[<>"']|[^\P{Cc}]|[\u202a-\u202e\u2066-\u2069]/u);
      expect(oneLine(seen(text))).toBe(oneLine(words));
    }),
    { numRuns: 500 },
  );
});

test.each([
  ['Bench top', /^bench-top-[a-z0-9]{7}$/],
  ['../../etc/passwd', /^etc-passwd-[a-z0-9]{7}$/],
  ['CON', /^con-[a-z0-9]{7}$/],
  ['Brücke', /^brucke-[a-z0-9]{7}$/],
  ['漢字', /^thing-[a-z0-9]{7}$/],
  ['', /^thing-[a-z0-9]{7}$/],
])('the file of "%s" has a plain name', (name, stem) => {
  expect(fileStem(name)).toMatch(stem);
});

test('file names are safe and different, and hang on the own name alone', () => {
  fc.assert(
    fc.property(fc.uniqueArray(hostileText, { minLength: 1, maxLength: 30 }), (names) => {
      const stems = [...fileStems(names).values()];
      expect(new Set(stems).size).toBe(names.length);
      for (const stem of stems) expect(stem).toMatch(/^[a-z0-9]+(?:-[a-z0-9]+)*$/);
      for (const stem of stems) expect(stem.length).toBeLessThan(56);
      const [first = ''] = names;
      expect(fileStems(names).get(first)?.startsWith(fileStem(first))).toBe(true);
    }),
    { numRuns: 200 },
  );
});

// Source of the weeks: ISO 8601's own rule, worked out by hand from the calendar of these years.
test.each([
  ['2026-01-01', '2026-W01', '2025-12-29'],
  ['2027-01-03', '2026-W53', '2026-12-28'],
  ['2026-11-26', '2026-W48', '2026-11-23'],
  ['2024-12-30', '2025-W01', '2024-12-30'],
])('%s lies in week %s from %s', (date, name, from) => {
  expect(weekOf(date)).toMatchObject({ name, from });
});

test('our own Markdown comes out as HTML with memos linked', () => {
  const lines = [
    '# Left out',
    '',
    '## Done',
    '',
    '- **Lid** cut (memo 3, 00:12) \\[m3.t2\\] \\[m3.t3\\] memo 4',
    '  - as said: “so”',
    '',
    'Words.',
  ];
  const words = mentionsLinked({
    memo: ({ memoId }) => (memoId === 'm3' ? 'days/x.html#m3' : undefined),
    task: (id) => (id === 'm3.t2' ? 'tasks.html#m3.t2' : undefined),
    finding: () => undefined,
  });
  expect(html`${outlineHtml(lines, words)}`.text).toBe(
    '<h2>Done</h2>\n<ul>\n<li><strong>Lid</strong> cut (<a href="days/x.html#m3">memo 3</a>, 00:12) [<a href="tasks.html#m3.t2">m3.t2</a>] [m3.t3] memo 4\n<ul>\n<li>as said: “so”</li>\n</ul>\n</li>\n</ul>\n<p>Words.</p>\n',
  );
});

test('words that were escaped for Markdown come out as they were', () => {
  const plain = (text: string) => text;
  fc.assert(
    fc.property(
      fc.oneof(hostileText, hostileMarkup).filter((words) => oneLine(words) !== ''),
      (words) => {
        const page = html`${outlineHtml([`- ${escapeMarkdown(words)}`], plain)}`.text;
        const [, inside = ''] = /^<ul>\n<li>([^<]*)<\/li>\n<\/ul>\n$/.exec(page) ?? [];
        expect(seen(inside)).toBe(oneLine(words));
      },
    ),
    { numRuns: 500 },
  );
});
