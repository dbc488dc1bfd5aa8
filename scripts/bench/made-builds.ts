/** The made-up build as a project on the disk, of any size. */
import { existsSync, mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { createStore } from '../../src/store/store.ts';
import { tenYearBuild } from '../../tests/kit/ten-year-build.ts';

const AT_ONCE = 100;

/** Makes the project of `size` times ten years in `folder`, unless it is there already. */
export function makeBuild(folder: string, size: number): void {
  const home = join(folder, '.hearwright');
  if (existsSync(home)) return;
  mkdirSync(home, { recursive: true });
  const store = createStore(join(home, 'project.db'), {
    name: 'ten years',
    units: 'mixed',
    at: '2017-01-01T08:00:00Z',
  });
  let left = [];
  for (const { events } of tenYearBuild(size)) {
    left.push(...events);
    if (left.length < AT_ONCE) continue;
    store.append(left);
    left = [];
  }
  store.append(left);
  store.close();
}
