/** The one error class: what happened, what was kept, what to do next. */

/** Exit codes are part of the command line's contract. */
export const EXIT = { done: 0, unexpected: 1, usage: 2, partly: 3, damaged: 4 } as const;
export type ExitCode = (typeof EXIT)[keyof typeof EXIT];

export interface ProblemDetails {
  /** Stable name for scripts and docs/errors.md: `file-missing`. */
  readonly code: string;
  readonly exitCode: ExitCode;
  readonly kept?: string;
  readonly next?: string;
  readonly cause?: unknown;
}

/** A failure that a person can act on. The message is one clause: the thing, then the reason. */
export class Problem extends Error {
  readonly code: string;
  readonly exitCode: ExitCode;
  readonly kept: string | undefined;
  readonly next: string | undefined;

  constructor(message: string, details: ProblemDetails) {
    super(message, details.cause === undefined ? undefined : { cause: details.cause });
    this.name = 'Problem';
    this.code = details.code;
    this.exitCode = details.exitCode;
    this.kept = details.kept;
    this.next = details.next;
  }
}

/** Wrong input is a value, not an exception. */
export type Result<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problem: Problem };
