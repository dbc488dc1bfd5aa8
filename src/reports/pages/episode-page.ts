/** The outline of the episode of one week, with a picture of its memos and notes. */
import type { ProjectInfo, SpanView, StandingFigure } from '../../model/views.ts';
import { episodePage } from '../episode.ts';
import { type Desk, dayLink } from './fragments.ts';
import { html, joinedBy, type Part } from './html.ts';
import { mentionsLinked } from './mentions.ts';
import { outlineHtml } from './outline-html.ts';
import { weekPicture } from './pictures/week.ts';
import type { Week } from './weeks.ts';

export function episodeMain(
  desk: Desk,
  week: Week,
  span: SpanView,
  info: ProjectInfo,
  standing: readonly StandingFigure[],
): Part {
  const words = mentionsLinked(desk.links);
  const lines = episodePage(span, info, standing).split('\n');
  return [
    html`<p>Days: ${joinedBy(
      span.days.map(({ date }) => dayLink(desk, date)),
      ', ',
    )}.</p>\n`,
    weekPicture(desk, week, span.days),
    outlineHtml(lines, words),
  ];
}
