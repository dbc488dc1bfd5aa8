/** Work that goes on several at once, and whose results are wanted in the order in which it was begun. */
interface Job<T> {
  /** Where in the sound its piece begins. */
  readonly from: number;
  readonly result: Promise<T>;
  isDone: boolean;
}

export class InHand<T> {
  readonly #jobs: Job<T>[] = [];

  /** Where the first job's piece begins: sound from there on is still needed. */
  get from(): number | undefined {
    return this.#jobs[0]?.from;
  }

  /** How many jobs were begun and not taken. */
  get count(): number {
    return this.#jobs.length;
  }

  /** True where `next` need not be waited for. */
  get isNextDone(): boolean {
    return this.#jobs[0]?.isDone === true;
  }

  start(from: number, work: () => Promise<T>): void {
    const job: Job<T> = { from, result: work(), isDone: false };
    const done = () => {
      job.isDone = true;
    };
    // Whoever takes the result learns of a failure; until then it is nobody's.
    job.result.then(done, done);
    this.#jobs.push(job);
  }

  /** The result of the job that was begun first; fails as that did. There must be one. */
  async next(): Promise<T> {
    const job = this.#jobs[0];
    if (!job) throw new Error('nothing is in hand');
    try {
      return await job.result;
    } finally {
      this.#jobs.shift();
    }
  }
}
