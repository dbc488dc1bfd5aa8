/** Which pictures a figure has: its history, what hangs on what, its parts where a formula adds them up. */
import type { StandingFigure } from '../../../model/views.ts';
import type { Desk } from '../fragments.ts';
import type { Part } from '../html.ts';
import type { Shelves } from '../thing-page.ts';
import { hangsOn } from './hangs-on.ts';
import { historyPicture } from './history.ts';
import { stackUpOfFigure } from './stack-up.ts';

/** The picture of the history stands before its table. */
export function historyOf(figure: StandingFigure, shelves: Shelves): Part {
  return historyPicture(figure, shelves.limitsOf(figure));
}

/** Where it comes from and what comes of it. */
export function relationsOf(desk: Desk, figure: StandingFigure, shelves: Shelves): Part {
  return [stackUpOfFigure(desk, figure, shelves.figureNamed), hangsOn(desk, figure, shelves)];
}
