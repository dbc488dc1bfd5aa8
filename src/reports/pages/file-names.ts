/** File names of pages. A name follows from the thing's own name alone, so that it stays the same as a project grows. */

/** Longer stems are cut: some systems and archives still count. */
const MOST = 40;

/** FNV-1a over UTF-16 units, 32 bits. Source: draft-eastlake-fnv, from memory. Tells apart names that read alike. */
function fingerprint(name: string): string {
  let hash = 0x811c9dc5;
  for (let at = 0; at < name.length; at++) hash = Math.imul(hash ^ name.charCodeAt(at), 0x01000193);
  return (hash >>> 0).toString(36).padStart(7, '0');
}

/**
 * A file name without its ending for any words: lower-case ASCII letters, digits and single hyphens, never empty, never
 * a name that a system keeps for itself.
 */
export function fileStem(name: string): string {
  const words = name
    .normalize('NFKD')
    .toLowerCase()
    .replace(/\p{M}+/gu, '')
    .replace(/[^a-z0-9]+/g, '-')
    .slice(0, MOST)
    .replace(/^-+|-+$/g, '');
  return `${words === '' ? 'thing' : words}-${fingerprint(name)}`;
}

/** A stem for each name, all different: of two that would get the same, the later one in order of the names gets a number. */
export function fileStems(names: Iterable<string>): ReadonlyMap<string, string> {
  const taken = new Set<string>();
  const stems = new Map<string, string>();
  for (const name of [...new Set(names)].sort()) {
    const stem = fileStem(name);
    let own = stem;
    for (let number = 2; taken.has(own); number++) own = `${stem}-${number}`;
    taken.add(own);
    stems.set(name, own);
  }
  return stems;
}

/** Words as the name of a place within a page. */
export function anchorOf(words: string): string {
  return words.replace(/[^A-Za-z0-9.]+/g, '-');
}
