/**
 * What a published film says and no longer holds: figures that are heard in it, with their time in the film, and what
 * stands now.
 */
import type { HouseUnits } from '../../language/notes.ts';
import type { FindingView, Kept, MemoView, ProjectInfo, StandingFigure } from '../../model/views.ts';
import { heldBy } from '../episode-figures.ts';
import { subjectOf } from '../finding-text.ts';
import { bullet, escapeMarkdown, page, quoted, section } from '../markdown.ts';
import { figureText } from '../quantity-text.ts';
import { dayOf, placeOf } from '../source-text.ts';
import { heardAtMs, isHeardIn, type Programme, programmeTime } from './programme.ts';

type Spoken = Kept<MemoView['notes']['figures'][number]>;

interface Heard {
  readonly memo: MemoView;
  readonly spoken: Spoken;
  /** Every programme time at which it is heard. */
  readonly atMs: readonly number[];
  readonly figure: StandingFigure;
  readonly claim: StandingFigure['history'][number];
}

/** Figures that are heard in a film, each once, in the order of the film. */
function heardIn(programme: Programme, standing: readonly StandingFigure[]): readonly Heard[] {
  const heard = new Map<string, Heard>();
  for (const stretch of programme.stretches) {
    const { memo } = stretch;
    for (const spoken of memo?.notes.figures ?? []) {
      if (!memo || spoken.review === 'rejected' || !isHeardIn(stretch, spoken)) continue;
      const held = heldBy(spoken, memo.id, standing);
      if (!held) continue;
      const before = heard.get(spoken.id)?.atMs ?? [];
      heard.set(spoken.id, { memo, spoken, ...held, atMs: [...before, heardAtMs(stretch, spoken)] });
    }
  }
  return [...heard.values()];
}

/** The finding that took a spoken figure's place, where one did. */
function findingOf({ memo, spoken }: Heard, findings: readonly FindingView[]): FindingView | undefined {
  const isIt = ({ was }: FindingView) =>
    was.source?.memoId === memo.id && was.source.quote === spoken.quote && was.unit === spoken.unit;
  return findings.filter(isIt).at(-1);
}

/** Whether viewers who copied the old figure may come to harm or cost: a limit was broken, or it is dear to get wrong. */
const weightOf = (finding: FindingView | undefined) =>
  finding === undefined ? 0 : (finding.kind === 'limit' ? 1000 : 0) + finding.cost;

const times = ({ atMs }: Heard) => atMs.map(programmeTime).join(', ');

function correctionEntry(heard: Heard, finding: FindingView | undefined, units: HouseUnits): string {
  const { spoken, figure, memo } = heard;
  const now = figureText(figure, units);
  const day = figure.source ? `, said on ${dayOf(figure.source.recordedAt)} (${placeOf(figure.source)})` : '';
  return bullet(
    `at ${times(heard)}: **${escapeMarkdown(subjectOf(figure))}**, heard ${quoted(spoken.quote)}, now ${now}${escapeMarkdown(day)}`,
    `to write under the film: At ${times(heard)} I say ${figureText(spoken, units)} for the ${escapeMarkdown(subjectOf(figure))}; it is ${now}.`,
    finding && `why: ${escapeMarkdown(finding.why)}`,
    `clip: ${escapeMarkdown(memo.source.name)}, ${escapeMarkdown(placeOf({ memoId: memo.id, ...startOf(spoken) }))}`,
  );
}

const startOf = ({ startSeconds }: Spoken) => (startSeconds === undefined ? {} : { startSeconds });

const doubtEntry = (heard: Heard, units: HouseUnits): string =>
  bullet(
    `at ${times(heard)}: **${escapeMarkdown(subjectOf(heard.figure))}**, heard ${quoted(heard.spoken.quote)}; ${heard.figure.status === 'stale' ? 'stale' : 'in doubt'} against ${figureText(heard.figure, units)}`,
  );

/**
 * Returns the corrections that a published film needs, as CommonMark, dearest first. `findings` tell why a figure
 * changed. Times are programme times of that film; the clip is named beside them.
 */
export function filmCorrectionsPage(
  programme: Programme,
  standing: readonly StandingFigure[],
  findings: readonly FindingView[],
  project: ProjectInfo,
): string {
  const heard = heardIn(programme, standing);
  const past = heard
    .filter(({ claim }) => claim.status === 'superseded')
    .map((one) => ({ one, finding: findingOf(one, findings) }));
  const unsure = heard.filter(
    ({ claim, figure }) =>
      claim.status === 'doubted' ||
      (claim.status === 'standing' && ['in-doubt', 'stale'].includes(figure.status)),
  );
  const ordered = past
    .map((entry, place) => ({ ...entry, place }))
    .sort((a, b) => weightOf(b.finding) - weightOf(a.finding) || a.place - b.place);
  const body = [
    ...section(
      2,
      'No longer so',
      ordered.map(({ one, finding }) => correctionEntry(one, finding, project.units)),
    ),
    ...section(
      2,
      'Not settled yet',
      unsure.map((one) => doubtEntry(one, project.units)),
    ),
  ];
  return page([
    `# Corrections to a published film: ${escapeMarkdown(project.name)}`,
    '',
    `${programmeTime(programme.lengthMs)} long. Times are those of the film.`,
    '',
    ...(body.length > 0
      ? body
      : ['Every figure that is heard in it still holds, as far as the project knows.']),
  ]);
}
