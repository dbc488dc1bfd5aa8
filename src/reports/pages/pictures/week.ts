import type { DayView } from '../../../model/views.ts';
import type { Desk } from '../fragments.ts';
import type { Part } from '../html.ts';
import type { Week } from '../weeks.ts';

export function weekPicture(_desk: Desk, _week: Week, _days: readonly DayView[]): Part {
  return undefined;
}
