/** Rows for many views at once: what they share is read once and held. */
import type { ProjectRows } from './rows.ts';

/** What days ask for again and again: whole tables, and the few rows of a thing. The talk itself is not held. */
const HELD: ReadonlySet<PropertyKey> = new Set([
  'all',
  'item',
  'claim',
  'claimsOf',
  'standing',
  'formula',
  'records',
  'openTasks',
  'openProblems',
  'openPromises',
  'expectedArrivals',
  'questions',
]);

/** The same rows; what was read is remembered. Holds only while nothing is written. */
export function heldRows(rows: ProjectRows): ProjectRows {
  const known = new Map<string, unknown>();
  return new Proxy(rows, {
    get(target, name) {
      const method: unknown = Reflect.get(target, name);
      if (typeof method !== 'function') return method;
      if (!HELD.has(name)) return method.bind(target);
      return (...asked: unknown[]) => {
        const key = [name, ...asked].join(' ');
        if (!known.has(key)) known.set(key, method.apply(target, asked));
        return known.get(key);
      };
    },
  });
}
