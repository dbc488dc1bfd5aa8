/** What is typed of a thing and of a clash: another name of it, a figure set by hand, the size that is right. */
import { readWrittenFigure, readWrittenQuantity } from '../../model/written.ts';
import { oneLine } from '../../reports/words.ts';
import { foundFigures } from './figure-rows.ts';
import { chosenNote } from './rows.ts';
import type { ScreenState, Step, Typing } from './screen-state.ts';
import { askAgain } from './typed-note.ts';

const stay = (state: ScreenState): Step => ({ state, effects: [] });

/** The thing that a mark stands on: that of a figure among the notes, or of a figure in the list or at length. */
export function chosenThing(state: ScreenState): string | undefined {
  const name = thingOf(state);
  return name === undefined || name.trim() === '' ? undefined : name;
}

function thingOf(state: ScreenState): string | undefined {
  switch (state.view) {
    case 'heard': {
      const note = chosenNote(state)?.note;
      return note?.kind === 'figure' || note?.kind === 'arrival' ? note.item : undefined;
    }
    case 'figures':
      return foundFigures(state)[state.chosen.figures]?.item;
    case 'figure':
      return state.opened?.listed.item;
    default:
      return undefined;
  }
}

/** Opens the line in which the other name of a thing is typed. */
export function askJoin(state: ScreenState): Step {
  const about = chosenThing(state);
  if (about === undefined) return stay(state);
  return stay({ ...state, typing: { what: 'join', text: '', about }, message: undefined });
}

/** Says that a name means a thing of its own. */
export function standApart(state: ScreenState): Step {
  const name = chosenThing(state);
  if (name === undefined) return stay(state);
  const line = `"${oneLine(name)}" means a thing of its own`;
  return { state, effects: [{ do: 'by-hand', change: { kind: 'items-split', name }, line }] };
}

/** Opens the line in which a figure is set by hand. */
export function askSet(state: ScreenState): Step {
  const figure = state.view === 'figure' ? state.opened?.listed : foundFigures(state)[state.chosen.figures];
  if (!figure) return stay(state);
  const { item, attribute, value, unit } = figure;
  const text = `${item} ${attribute} = ${value}${unit === '1' ? '' : ` ${unit}`}`;
  return stay({ ...state, typing: { what: 'set', text, about: item }, message: undefined });
}

export function finishThing(state: ScreenState, typing: Typing, text: string): Step {
  if (typing.what === 'join') {
    const from = typing.about ?? '';
    const line = `"${oneLine(from)}" means "${oneLine(text)}"`;
    return { state, effects: [{ do: 'by-hand', change: { kind: 'items-merged', from, into: text }, line }] };
  }
  const read = readWrittenFigure(text, state.data.region);
  if (!read.ok) return askAgain(state, typing, read.why);
  return { state, effects: [{ do: 'by-hand', change: read.value, line: `set: ${oneLine(text)}` }] };
}

/** Settles a clash by a size that is neither of the two. */
export function finishClash(state: ScreenState, typing: Typing, text: string): Step {
  const id = typing.about ?? '';
  if (!state.data.findings.some((finding) => finding.id === id)) return stay(state);
  const read = readWrittenQuantity(text, state.data.region);
  if (!read.ok) return askAgain(state, typing, read.why);
  return { state, effects: [{ do: 'settle', id, choice: 'correct', value: read.value }] };
}
