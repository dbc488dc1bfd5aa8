// Faults of packages that are mended while bundling, each with the lines that it stands in: where a new version has
// other lines the build fails, and somebody looks whether it is still needed.

/** A search for the next whole element that finds none stops eight bytes before the end and tries them for ever. */
const SEARCH = {
  filter: /[\\/]mediabunny[\\/]dist[\\/]modules[\\/]src[\\/]matroska[\\/]ebml\.js$/,
  broken: 'if (slice.length < MAX_VAR_INT_SIZE)\n            break;',
  mended: 'if (slice.length <= MAX_VAR_INT_SIZE)\n            break;',
};

/** For esbuild. Throws when a fault is not where it was. */
export const mendedPackages = {
  name: 'mended-packages',
  setup({ onLoad, onEnd }) {
    let mended = 0;
    onLoad({ filter: SEARCH.filter }, async ({ path }) => {
      const { readFile } = await import('node:fs/promises');
      const code = await readFile(path, 'utf8');
      if (code.split(SEARCH.broken).length !== 2)
        throw new Error(`${path}: what is to be mended is not there`);
      mended++;
      return { contents: code.replace(SEARCH.broken, SEARCH.mended), loader: 'js' };
    });
    onEnd(({ errors }) => {
      if (errors.length === 0 && mended === 0)
        throw new Error('mediabunny is bundled from other files than those that are to be mended');
    });
  },
};
