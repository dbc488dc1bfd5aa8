/** Entries by a key, groups in order of their first entry. */
export function grouped<T>(
  entries: readonly T[],
  keyOf: (entry: T) => string,
): ReadonlyMap<string, readonly T[]> {
  const groups = new Map<string, T[]>();
  for (const entry of entries) {
    const key = keyOf(entry);
    const group = groups.get(key);
    if (group) group.push(entry);
    else groups.set(key, [entry]);
  }
  return groups;
}
