/** Control-C during a long job: the first one stops it in good order, the second one ends the program. */

let controller: AbortController | undefined;

/** A signal that the first SIGINT or SIGTERM sets off. */
export function interruptSignal(): AbortSignal {
  if (!controller) {
    const made = new AbortController();
    controller = made;
    for (const name of ['SIGINT', 'SIGTERM'] as const) process.once(name, () => made.abort());
  }
  return controller.signal;
}
