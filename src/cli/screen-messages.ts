/** What passes between the screen and the thread that works for it. */
import type { ProblemDetails } from '../problem.ts';
import type { Effect, ScreenEvent } from '../tui/state/screen-state.ts';

export type ToWorker = { readonly kind: 'perform'; readonly effect: Effect } | { readonly kind: 'close' };

/** A problem as it can be passed on. */
export type ProblemTold = Omit<ProblemDetails, 'cause'> & { readonly message: string };

/**
 * What is told, as JSON: to read that costs a fraction of what copying it object by object does. A long list comes in
 * parts, so that between them keys are answered; they go where their path says, in their order.
 */
export type FromWorker =
  | { readonly kind: 'opened'; readonly json: string }
  | { readonly kind: 'event'; readonly json: string; readonly parts: number }
  | { readonly kind: 'part'; readonly path: readonly string[]; readonly json: string }
  | { readonly kind: 'problem'; readonly problem: ProblemTold }
  | { readonly kind: 'closed' };

/** Elements of a list that come at once: to read so many takes a few milliseconds. */
const AT_ONCE = 250;

/** The messages of one event. */
export function* messagesOf(event: ScreenEvent): Generator<FromWorker> {
  const parts: Extract<FromWorker, { kind: 'part' }>[] = [];
  const short = (value: unknown, path: readonly string[]): unknown => {
    if (Array.isArray(value)) {
      if (value.length <= AT_ONCE) return value;
      for (let from = 0; from < value.length; from += AT_ONCE)
        parts.push({ kind: 'part', path, json: JSON.stringify(value.slice(from, from + AT_ONCE)) });
      return [];
    }
    // Long lists stand near the top of an event.
    if (typeof value !== 'object' || value === null || path.length > 2) return value;
    return Object.fromEntries(
      Object.entries(value).map(([name, one]) => [name, short(one, [...path, name])]),
    );
  };
  const json = JSON.stringify(short(event, []));
  yield { kind: 'event', json, parts: parts.length };
  yield* parts;
}

/** Puts events together again. Give it each message of an event in order; it answers with the event once it is whole. */
export class EventParts {
  #event: ScreenEvent | undefined;
  #missing = 0;

  take(message: Extract<FromWorker, { kind: 'event' | 'part' }>): ScreenEvent | undefined {
    if (message.kind === 'event') {
      this.#event = JSON.parse(message.json) as ScreenEvent;
      this.#missing = message.parts;
    } else {
      let list: unknown = this.#event;
      for (const name of message.path) list = (list as Record<string, unknown>)[name];
      for (const one of JSON.parse(message.json) as readonly unknown[]) (list as unknown[]).push(one);
      this.#missing--;
    }
    if (this.#missing > 0) return undefined;
    const whole = this.#event;
    this.#event = undefined;
    return whole;
  }
}
