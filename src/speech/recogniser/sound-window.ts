/** The last part of a stream of samples, addressed by position from the stream's beginning. */
export class SoundWindow {
  readonly #chunks: Float32Array[] = [];
  #from = 0;
  #to = 0;

  /** Position just after the newest sample. */
  get end(): number {
    return this.#to;
  }

  append(samples: Float32Array): void {
    this.#chunks.push(samples);
    this.#to += samples.length;
  }

  /** Forgets whole chunks before `position`. */
  forgetBefore(position: number): void {
    for (
      let first = this.#chunks[0];
      first && this.#from + first.length <= position;
      first = this.#chunks[0]
    ) {
      this.#from += first.length;
      this.#chunks.shift();
    }
  }

  /** A copy of the samples from `start` to `end`, as far as they are still held. */
  slice(start: number, end: number): Float32Array {
    const from = Math.max(start, this.#from);
    const to = Math.min(end, this.#to);
    const copy = new Float32Array(Math.max(0, to - from));
    let at = this.#from;
    for (const chunk of this.#chunks) {
      const left = Math.max(from, at);
      const right = Math.min(to, at + chunk.length);
      if (right > left) copy.set(chunk.subarray(left - at, right - at), left - from);
      at += chunk.length;
    }
    return copy;
  }
}
