/** A project on disk that was told some texts, in a folder of its own. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { makeProject, openNearestProject } from '../../src/project.ts';
import type { ProjectApi } from '../../src/project-api.ts';

export interface ToldText {
  /** Name of the file. */
  readonly name: string;
  /** When it was said, ISO 8601. */
  readonly at: string;
  readonly text: string;
}

export interface ToldProject {
  readonly folder: string;
  readonly project: ProjectApi;
  /** Takes one more text in; throws where it is not taken. */
  readonly tell: (text: ToldText) => Promise<void>;
  /** Closes the project and takes its folder away. */
  readonly remove: () => void;
}

/** Makes the project and takes each text in. */
export async function toldProject(
  made: Parameters<typeof makeProject>[1],
  ...texts: readonly ToldText[]
): Promise<ToldProject> {
  const folder = mkdtempSync(join(tmpdir(), 'hearwright-'));
  await makeProject(folder, made);
  const project = await openNearestProject(folder);
  const tell = async ({ name, at, text }: ToldText) => {
    const file = join(folder, name);
    writeFileSync(file, text);
    const taken = await project.take(file, { at });
    if (!taken.ok) throw taken.problem;
  };
  for (const text of texts) await tell(text);
  const remove = () => {
    project.close();
    rmSync(folder, { recursive: true, force: true });
  };
  return { folder, project, tell, remove };
}
