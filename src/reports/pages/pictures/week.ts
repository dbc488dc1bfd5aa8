/** The talk of a week: its memos in order along the days, and how many notes of each kind each of them holds. */
import type { DayView, MemoView } from '../../../model/views.ts';
import { clock, counted, dayName, memoName } from '../../source-text.ts';
import { type Desk, linked } from '../fragments.ts';
import { type Html, html, type Part } from '../html.ts';
import { datesOf, type Week } from '../weeks.ts';
import { at, label, line, picture, rectangle } from './picture.ts';

const KINDS: readonly (readonly [keyof MemoView['notes'], string])[] = [
  ['figures', 'figures'],
  ['decisions', 'decisions'],
  ['done', 'done'],
  ['tasks', 'tasks'],
  ['problems', 'problems'],
  ['arrivals', 'arrivals'],
  ['promises', 'promises'],
  ['corrections', 'corrections'],
  ['records', 'on record'],
];

const LEFT = 104;
const TOP = 58;
const ROW = 30;
const SLOT = 46;
/** A day without talk still takes its place. */
const QUIET = 62;

const countOf = (memo: MemoView, kind: keyof MemoView['notes']) =>
  memo.notes[kind].filter(({ review }) => review !== 'rejected').length;

export function weekPicture(desk: Desk, week: Week, days: readonly DayView[]): Part {
  const memos = days.flatMap((day) => day.memos);
  if (memos.length === 0) return undefined;
  const kinds = KINDS.filter(([kind]) => memos.some((memo) => countOf(memo, kind) > 0));
  const columns = columnsOf(week, days);
  const width = Math.max(columns.at(-1)?.end ?? 0, 320) + 8;
  const bottom = TOP + kinds.length * ROW;
  const most = Math.max(1, ...memos.flatMap((memo) => kinds.map(([kind]) => countOf(memo, kind))));
  return [
    picture({
      id: `week-${week.name}`,
      title: `Memos and notes of week ${week.name}`,
      description: `${counted(memos.length, 'memo')}: ${memos.map((memo) => memoSentence(memo, kinds)).join('; ')}.`,
      width,
      height: bottom + 10,
      body: [
        kinds.map(([, words], row) => [
          row % 2 === 0 && rectangle({ x: 0, y: TOP + row * ROW, width, height: ROW }, 'stripe'),
          label({ x: 4, y: TOP + row * ROW + 20 }, words, 'small'),
        ]),
        columns.map((column) => dayParts(column, bottom)),
        columns.flatMap(({ memos: some }) => some.map((spot) => memoParts(spot, kinds, most))),
      ],
      caption: 'Each column is a memo at its time of day; the larger the disc, the more notes of that kind.',
    }),
    weekTable(desk, memos, kinds),
  ];
}

interface Spot {
  readonly memo: MemoView;
  readonly x: number;
}
interface Column {
  readonly date: string;
  readonly start: number;
  readonly end: number;
  readonly memos: readonly Spot[];
}

function columnsOf(week: Week, days: readonly DayView[]): readonly Column[] {
  let start = LEFT;
  return datesOf(week).map((date) => {
    const memos = days.find((day) => day.date === date)?.memos ?? [];
    const width = Math.max(QUIET, memos.length * SLOT + 12);
    const own = start;
    start += width;
    const step = width / Math.max(memos.length, 1);
    return {
      date,
      start: own,
      end: start,
      memos: memos.map((memo, index) => ({ memo, x: own + step * (index + 0.5) })),
    };
  });
}

const shortDay = (date: string) => `${dayName(date).slice(0, 3)} ${date.slice(8)}`;

function dayParts({ date, start, end, memos }: Column, bottom: number): Part {
  return [
    line({ x: start, y: 6 }, { x: start, y: bottom }, 'grid'),
    label(
      { x: (start + end) / 2, y: 22 },
      shortDay(date),
      memos.length > 0 ? 'middle strong small' : 'middle faint small',
    ),
  ];
}

function memoParts({ memo, x }: Spot, kinds: typeof KINDS, most: number): Part {
  return [
    label({ x, y: 44 }, clock(memo.recordedAt).slice(11, 16), 'middle faint tiny'),
    kinds.map(([kind], row) => {
      const count = countOf(memo, kind);
      if (count === 0) return undefined;
      const y = TOP + row * ROW + ROW / 2;
      const radius = 8 + 6 * Math.sqrt(count / most);
      return html`<circle class="disc" cx="${at(x)}" cy="${at(y)}" r="${at(radius)}"/>${label({ x, y: y + 4.5 }, count, 'middle in-disc')}`;
    }),
  ];
}

function memoSentence(memo: MemoView, kinds: typeof KINDS): string {
  const told = kinds.flatMap(([kind, words]) => {
    const count = countOf(memo, kind);
    return count === 0 ? [] : [`${count} ${words}`];
  });
  return `${memoName(memo.id)} on ${clock(memo.recordedAt)}, ${told.length === 0 ? 'nothing read' : told.join(', ')}`;
}

function weekTable(desk: Desk, memos: readonly MemoView[], kinds: typeof KINDS): Html {
  return html`<div class="wide" tabindex="0" role="group" aria-label="Notes by memo"><table>
<caption>Notes by memo</caption>
<thead><tr><th scope="col">Memo</th><th scope="col">Recorded</th>${kinds.map(([, words]) => html`<th scope="col">${words}</th>`)}</tr></thead>
<tbody>
${memos.map(
  (memo) =>
    html`<tr><th scope="row">${linked(memoName(memo.id), desk.links.memo({ memoId: memo.id }))}</th><td><time datetime="${memo.recordedAt}">${clock(memo.recordedAt)}</time></td>${kinds.map(([kind]) => html`<td>${countOf(memo, kind)}</td>`)}</tr>\n`,
)}</tbody></table></div>
`;
}
