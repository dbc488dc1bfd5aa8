/** Which pictures a figure has: its history, what hangs on what, its parts where a formula adds them up. */
import type { StandingFigure } from '../../../model/views.ts';
import type { Desk } from '../fragments.ts';
import type { Part } from '../html.ts';
import type { Shelves } from '../thing-page.ts';
import { hangsOn } from './hangs-on.ts';
import { historyPicture } from './history.ts';
import { stackUpOfFigure } from './stack-up.ts';

/** The picture of the history stands before its table. `anchor` is the figure's place on its page. */
export function historyOf(figure: StandingFigure, anchor: string, shelves: Shelves): Part {
  return historyPicture(figure, anchor, shelves.limitsOf(figure));
}

/** Where it comes from and what comes of it. */
export function relativesOf(
  desk: Desk,
  figure: StandingFigure,
  anchor: string,
  { relations }: Shelves,
): Part {
  return [stackUpOfFigure(desk, figure, anchor, relations), hangsOn(desk, figure, anchor, relations)];
}
