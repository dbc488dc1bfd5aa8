/**
 * Control-C during a long job, a closed terminal, or a system that shuts down: the first one stops it in good order, the
 * second one ends the program.
 */

let controller: AbortController | undefined;

/** A signal that the first SIGINT, SIGTERM or SIGHUP sets off. */
export function interruptSignal(): AbortSignal {
  if (!controller) {
    const made = new AbortController();
    controller = made;
    for (const name of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.once(name, () => made.abort());
  }
  return controller.signal;
}
