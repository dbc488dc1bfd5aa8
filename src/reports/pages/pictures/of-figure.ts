/** Which pictures a figure has. */
import type { StandingFigure } from '../../../model/views.ts';
import type { Desk } from '../fragments.ts';
import type { Part } from '../html.ts';
import type { Shelves } from '../thing-page.ts';

export function picturesOf(_desk: Desk, _figure: StandingFigure, _shelves: Shelves): Part {
  return undefined;
}
