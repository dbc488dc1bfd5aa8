import { expect, test } from 'vitest';
import { spanView } from '../../src/model/day-views.ts';
import { MemoryProject } from '../../src/model/memory.ts';

test('work that is done leaves no caution behind at the end of a span', () => {
  const project = new MemoryProject();
  const at = '2026-02-02T08:00:00Z';
  project.append([
    { kind: 'project-made', name: 'barge', units: 'metric', at },
    { kind: 'task-added', at, gist: 'set the jack stands under the hull' },
  ]);
  const next = () => spanView(project.rows, '2026-02-01', '2026-02-03').next;
  expect(next().ready).toHaveLength(1);
  expect(next().cautions.length).toBeGreaterThan(0);
  project.append([{ kind: 'task-closed', at, taskId: 's2' }]);
  expect(next()).toMatchObject({ ready: [], waiting: [], cautions: [] });
});
