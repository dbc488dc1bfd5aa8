// esbuild splits by who asks for what: opening a project loads some forty small pieces, and finding and linking each costs
// Node the better part of a millisecond. Pieces that always come together are put into one file here.
import { readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { build } from 'esbuild';

/** One piece's names as another asks for them, and a piece that is only to be run, as esbuild writes it without white space. */
const NAMED = /\bimport\{([^}]*)\}from"\.\/([\w-]+\.js)"/g;
const BARE = /\bimport"\.\/([\w-]+\.js)";/g;

/** No two pieces' names are the same with that of their piece behind them. */
const nameOf = (piece, name) => `${name}$${piece.replace(/\W/g, '_')}`;

/** The pieces that come with `start` by plain imports. */
function comingWith(start, outputs) {
  const found = new Set();
  const todo = [start];
  for (let path = todo.pop(); path; path = todo.pop())
    for (const { path: next, kind } of outputs[path].imports)
      if (kind === 'import-statement' && outputs[next] && !found.has(next)) {
        found.add(next);
        todo.push(next);
      }
  return found;
}

/** Code that asks `into` for what it asked the merged pieces for. */
function askingAnew(code, merged, into) {
  let isRun = false;
  return code
    .replace(NAMED, (asked, names, piece) => {
      if (!merged.has(piece)) return asked;
      const anew = names.split(',').map((one) => {
        const [name, as = name] = one.split(' as ');
        return `${nameOf(piece, name)} as ${as}`;
      });
      return `import{${anew}}from"./${into}"`;
    })
    .replace(BARE, (asked, piece) => {
      if (!merged.has(piece)) return asked;
      const once = isRun ? '' : `import"./${into}";`;
      isRun = true;
      return once;
    });
}

/**
 * Merges the pieces in `folder` that come with the output `start` and not with `without`, into the file `into` there.
 * `outputs` is esbuild's own account of its run. Pieces that something asks for by itself stay.
 */
export async function mergeChunks({ folder, start, without, into, outputs, options }) {
  const before = without === undefined ? new Set() : comingWith(without, outputs);
  const paths = [...comingWith(start, outputs)].filter(
    (path) => !before.has(path) && path !== without && outputs[path].entryPoint === undefined,
  );
  const merged = new Set(paths.map((path) => basename(path)));
  const lines = paths.map((path) => {
    const piece = basename(path);
    const names = outputs[path].exports.map((name) => `${name} as ${nameOf(piece, name)}`);
    return names.length === 0 ? `import "./${piece}";` : `export { ${names} } from "./${piece}";`;
  });
  const stayOut = {
    name: 'stay-out',
    setup({ onResolve }) {
      onResolve({ filter: /^\.\// }, ({ path }) =>
        merged.has(basename(path)) ? undefined : { path, external: true },
      );
    },
  };
  await build({
    ...options,
    stdin: { contents: lines.join('\n'), resolveDir: folder },
    outfile: `${folder}/${into}`,
    bundle: true,
    plugins: [stayOut],
  });
  for (const path of paths) rmSync(path);
  for (const name of readdirSync(folder)) {
    const path = join(folder, name);
    if (name.endsWith('.js')) writeFileSync(path, askingAnew(readFileSync(path, 'utf8'), merged, into));
  }
}
