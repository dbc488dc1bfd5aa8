/** Names that a system does not take for a file, though it may seem to. */

/** Source: "Naming Files, Paths, and Namespaces", Microsoft Learn, from memory. */
const DEVICES = /^(?:con|prn|aux|nul|com[1-9¹²³]|lpt[1-9¹²³])(?:\.|$)/i;
const SIGNS = /[<>:"|?*]/;
const DRIVE = /^[a-z]:/i;

/**
 * Why Windows would not keep a file of this path under its name, as a clause; undefined where it would, and elsewhere.
 * A colon is the worst: what is written goes into a hidden part of another file, and nothing says so.
 */
export function whyUnfit(path: string, platform: NodeJS.Platform = process.platform): string | undefined {
  if (platform !== 'win32') return undefined;
  for (const name of path.replace(DRIVE, '').split(/[\\/]/)) {
    const sign = SIGNS.exec(name)?.[0];
    if (sign) return `Windows has no "${sign}" in the names of files`;
    if (DEVICES.test(name)) return `Windows keeps the name ${name} for itself`;
    if (/[. ]$/.test(name) && !/^\.{1,2}$/.test(name))
      return `Windows drops the ${name.endsWith('.') ? 'dot' : 'blank'} at the end of a name`;
  }
  return undefined;
}
