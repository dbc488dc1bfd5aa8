/** The work of the screen in the screen's own thread: for what takes no time, and for tests. */
import type { ScreenWork } from './app.tsx';
import { type HostSetup, ScreenHost } from './screen-host.ts';
import type { ScreenEvent } from './state/screen-state.ts';

export function workHere(setup: Omit<HostSetup, 'emit'>): ScreenWork {
  let onEvent: (event: ScreenEvent) => void = () => {};
  const host = new ScreenHost({ ...setup, emit: (event) => onEvent(event) });
  return {
    perform: (effect) => host.perform(effect),
    listen(listener) {
      onEvent = listener;
      return () => {
        onEvent = () => {};
      };
    },
  };
}
