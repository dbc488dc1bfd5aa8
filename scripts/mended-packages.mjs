// Faults of packages that are mended while bundling, each with the lines that it stands in: where a new version has
// other lines the build fails, and somebody looks whether it is still needed.

const MODULES = '[\\\\/]mediabunny[\\\\/]dist[\\\\/]modules[\\\\/]src[\\\\/]';

/** @type {readonly {filter: RegExp, lines: readonly {broken: string, mended: string}[]}[]} */
const FAULTS = [
  {
    // A search for the next whole element that finds none stops eight bytes before the end and tries them for ever.
    filter: new RegExp(`${MODULES}matroska[\\\\/]ebml\\.js$`),
    lines: [
      {
        broken: 'if (slice.length < MAX_VAR_INT_SIZE)\n            break;',
        mended: 'if (slice.length <= MAX_VAR_INT_SIZE)\n            break;',
      },
    ],
  },
  {
    // A table may say that it is about four thousand million samples: no more are listed than have a size (of samples
    // of one size, than a day and a night has), and those behind the last one are not gone through.
    filter: new RegExp(`${MODULES}isobmff[\\\\/]isobmff-demuxer\\.js$`),
    lines: [
      {
        broken: `            for (const entry of sampleTable.sampleTimingEntries) {
                for (let i = 0; i < entry.count; i++) {
                    sampleTable.presentationTimestamps.push({`,
        mended: `            const most = sampleTable.sampleSizes.length > 1 ? sampleTable.sampleSizes.length : 2 ** 22;
            for (const entry of sampleTable.sampleTimingEntries) {
                for (let i = 0; i < entry.count && sampleTable.presentationTimestamps.length < most; i++) {
                    sampleTable.presentationTimestamps.push({`,
      },
      {
        broken: `                    if (!sample) {
                        continue;
                    }
                    sample.presentationTimestamp += entry.offset;`,
        mended: `                    if (!sample) {
                        break;
                    }
                    sample.presentationTimestamp += entry.offset;`,
      },
    ],
  },
];

/** The code of a file without its faults. Throws when one is not where it was. */
function mendedCode(path, code, lines) {
  return lines.reduce((left, { broken, mended }) => {
    if (left.split(broken).length !== 2) throw new Error(`${path}: what is to be mended is not there`);
    return left.replace(broken, () => mended);
  }, code);
}

/** For esbuild. Throws when a fault is not where it was. */
export const mendedPackages = {
  name: 'mended-packages',
  setup({ onLoad, onEnd }) {
    const mended = new Set();
    for (const { filter, lines } of FAULTS)
      onLoad({ filter }, async ({ path }) => {
        const { readFile } = await import('node:fs/promises');
        const contents = mendedCode(path, await readFile(path, 'utf8'), lines);
        mended.add(filter);
        return { contents, loader: 'js' };
      });
    onEnd(({ errors }) => {
      if (errors.length === 0 && mended.size < FAULTS.length)
        throw new Error('mediabunny is bundled from other files than those that are to be mended');
    });
  },
};
