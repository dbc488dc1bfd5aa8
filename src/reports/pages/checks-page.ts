/** Checks that run by themselves: whether each holds, why, what it read, and a picture where one tells more. */

import type { InputRead } from '../../model/checks/check-rows.ts';
import type { CheckView } from '../../model/checks/check-views.ts';
import { stateText } from '../check-words.ts';
import { amountText, inOrder, rangeText } from '../checks-text.ts';
import { clock } from '../source-text.ts';
import { productWords } from '../window-words.ts';
import { oneLine } from '../words.ts';
import { anchorOf } from './file-names.ts';
import { ageWords, type Desk, facts, linked, place, quote } from './fragments.ts';
import { type Html, html, joinedBy, type Part } from './html.ts';
import { openingPictures } from './pictures/opening.ts';
import { stackUpOfCheck } from './pictures/stack-up.ts';

export function checksMain(desk: Desk, checks: readonly CheckView[]): Part {
  if (checks.length === 0) return html`<p>No check stands.</p>\n`;
  return [
    html`<p>A check that holds says nothing of what it did not read. None says that a thing is safe.</p>\n`,
    inOrder(checks).map((check) => checkArticle(desk, check)),
  ];
}

function checkArticle(desk: Desk, check: CheckView): Html {
  const { state, id, why, options, notes, ask, source } = check;
  const given = new Set(check.inputs.map(({ range }) => range && rangeText(range, 'mixed')));
  // "Recoat from 6 h" is the data sheet's time as it went in: told once.
  const results = check.results.filter((result) => !given.has(rangeText(result, 'mixed')));
  return html`<article class="check ${state}" id="${anchorOf(id)}">
<h2>${check.subject}: ${stateText(state)}</h2>
<p class="mark"><span class="id">${id}</span></p>
${facts([
  ['why', why],
  ...(check.window === undefined ? [] : [check.window, ...(check.alsoRunning ?? [])]).map(
    (window): [string, Part] => ['its clock', windowWords(desk, window)],
  ),
  ...results.map((result) => [oneLine(result.name), rangeText(result, 'mixed')] as const),
  ...check.inputs.map((input) => [input.name, inputWords(desk, input)] as const),
  ...Object.entries(options),
  ...notes.map((note) => ['note', note] as const),
  ...ask.map((line) => ['to do', line] as const),
  check.note !== undefined && ['for', check.note],
  [
    'since',
    html`${clock(check.since)}, ${place(desk, source)}${source.quote !== '' && html` ${quote(source.quote)}`}`,
  ],
  check.formula !== '' && ['formula', check.formula],
  check.formulaSource !== '' && ['source', check.formulaSource],
])}${openingPictures(check)}${stackUpOfCheck(check)}</article>
`;
}

function windowWords(desk: Desk, window: NonNullable<CheckView['window']>): Part {
  const { act, startedAt, source, opens, closes } = window;
  return [
    `${productWords(window) || 'coat'} ${act} ${clock(startedAt)}, `,
    place(desk, source),
    opens !== undefined && `; opens ${clock(opens)}`,
    closes !== undefined && `; closes ${clock(closes)}`,
  ];
}

/** What went in, the figures it was read from, their age, and what is to be said against them. */
function inputWords(desk: Desk, input: InputRead): Part {
  const { expression, open, reads, missing } = input;
  if (missing !== undefined) return `missing: ${missing}`;
  const amount = amountText(input, 'mixed');
  const figures = reads.map(
    ({ name, source, state, doubt }) =>
      html`${linked(name, desk.links.named(name, source))} (${
        source ? html`${place(desk, source)}, ${ageWords(desk, source)}` : 'worked out'
      }${state !== undefined && `, ${state}`}${doubt !== undefined && `; doubtful: ${doubt}`})`,
  );
  const isSelf = reads.length === 0 || (reads.length === 1 && reads[0]?.name === expression);
  return [
    amount,
    open !== undefined && `, open ${open}`,
    !isSelf && `, ${expression}`,
    figures.length > 0 && [', ', joinedBy(figures, '; ')],
  ];
}
