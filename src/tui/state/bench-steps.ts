/** Steps of the screen around a recording: `r` starts and stops it, its events change what stands at the bench. */
import type { ListenEvent } from '../../project-api.ts';
import { findingLine } from '../../reports/finding-text.ts';
import { figureHeardLine, noteHeardLine, takenBackLine } from '../../reports/live-text.ts';
import { benchAfter, OPENING } from './bench.ts';
import type { ScreenState, Step } from './screen-state.ts';

/** Starts a recording, or stops the one that runs. One that is being opened or taken in is left alone. */
export function record(state: ScreenState): Step {
  switch (state.bench?.phase) {
    case 'recording':
      return { state, effects: [{ do: 'stop-recording' }] };
    case 'opening':
    case 'finishing':
      return { state, effects: [] };
    default:
      return {
        state: { ...state, view: 'bench', viewBefore: state.view, bench: OPENING, message: undefined },
        effects: [{ do: 'record', readBack: state.readsBack }],
      };
  }
}

/** Figures are read aloud as they are heard, or are not; said so, because nothing sounds before the next one. */
export function turnReadBack(state: ScreenState): Step {
  const isOn = !state.readsBack;
  const line = isOn ? 'figures are read aloud as they are heard' : 'nothing is read aloud any more';
  return {
    state: { ...state, readsBack: isOn, message: { tone: 'good', lines: [line] } },
    effects: [{ do: 'read-back', isOn }],
  };
}

/** `lines` is what the event has to say; of a trouble it is shown as one. */
export function withBench(
  state: ScreenState,
  event: ListenEvent,
  lines: readonly string[] | undefined,
): ScreenState {
  const bench = benchAfter(state.bench ?? OPENING, event);
  const readsBack = event.kind === 'not-read-back' ? false : state.readsBack;
  if (!lines) return { ...state, bench, ...elsewhere(state, event) };
  return { ...state, bench, readsBack, message: { tone: event.kind === 'taken' ? 'good' : 'bad', lines } };
}

/** Of what was just heard so much stands under another view: the newest. */
const MOST_LINES = 3;

/** Who looks at something else while recording sees it in a line. */
function elsewhere({ view }: ScreenState, event: ListenEvent): Pick<ScreenState, 'message'> {
  if (view === 'bench' || event.kind !== 'heard') return {};
  const open = event.clashes.filter(({ status }) => status === 'open');
  const lines = [
    ...event.takenBack.map(takenBackLine),
    ...event.figures.map((figure) => `heard  ${figureHeardLine(figure)}`),
    ...event.notes.map((note) => `heard  ${noteHeardLine(note)}`),
  ].slice(-MOST_LINES);
  lines.push(...open.map((clash) => `CLASH  ${findingLine({ ...clash, id: 'just said' })}: press v`));
  return lines.length === 0 ? {} : { message: { tone: open.length > 0 ? 'bad' : 'good', lines } };
}

/** With lines the recording could not be made, and the screen goes back to where it was. */
export function benchOver(state: ScreenState, lines: readonly string[] | undefined): ScreenState {
  if (!lines) return { ...state, bench: { ...(state.bench ?? OPENING), phase: 'over' } };
  const view = state.view === 'bench' ? state.viewBefore : state.view;
  return { ...state, view, bench: undefined, message: { tone: 'bad', lines } };
}
