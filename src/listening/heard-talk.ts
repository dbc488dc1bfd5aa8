/** The talk of a recording as it is known by now. Pure; times are seconds from the beginning of the recording. */
import type { Utterance } from '../model/views.ts';
import type { Heard } from '../speech/recogniser/listener.ts';

/** Times of utterances are rounded, and laid out anew when they are heard again. */
const ROUNDING_SECONDS = 0.1;

/** Every stretch comes early, and again with its neighbours: then that counts. */
export class HeardTalk {
  readonly #heard: Heard[] = [];
  #early: readonly Utterance[] = [];

  addEarly({ utterances }: Heard): void {
    this.#early = [...this.#early, ...utterances];
  }

  /** What comes here is heard in order; early talk up to its end is replaced by it. */
  add(heard: Heard): void {
    this.#heard.push(heard);
    const until = (heard.utterances.at(-1)?.endSeconds ?? 0) - ROUNDING_SECONDS;
    this.#early = this.#early.filter(({ startSeconds }) => startSeconds >= until);
  }

  /** What was heard for good between two times, in the time of a memo that begins at the first of them. */
  between(from: number, to: number): Heard {
    return {
      utterances: inside(
        this.#heard.flatMap(({ utterances }) => utterances),
        from,
        to,
      ),
      dropped: inside(
        this.#heard.flatMap(({ dropped }) => dropped),
        from,
        to,
      ),
    };
  }

  /** At most `count` utterances, the latest, in the time of a memo that begins at `from`. */
  latest(from: number, count: number): readonly Utterance[] {
    const { utterances } = this.between(from, Number.POSITIVE_INFINITY);
    return [...utterances, ...inside(this.#early, from, Number.POSITIVE_INFINITY)].slice(-count);
  }
}

function inside<U extends Utterance>(all: readonly U[], from: number, to: number): U[] {
  const at = (seconds: number) => Math.max(0, Math.round((seconds - from) * 100) / 100);
  return all
    .filter(({ startSeconds }) => startSeconds >= from && startSeconds < to)
    .map((one) => ({ ...one, startSeconds: at(one.startSeconds), endSeconds: at(one.endSeconds) }));
}
