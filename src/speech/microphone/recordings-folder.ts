/** Recordings on their way into a project. What a killed process left there is found and finished. */
import { existsSync, mkdirSync, readdirSync, rmSync, statSync } from 'node:fs';
import { uptime } from 'node:os';
import { join } from 'node:path';
import { isThere } from '../../unfinished.ts';
import { repairRecording } from './recording-file.ts';

const FOLDER = 'recordings';
/** The process that writes it stands in the name. */
const NAME = /^(talk-[\d-]+)\.(\d+)\.wav$/;

export interface LeftRecording {
  readonly path: string;
  /** What the person sees. */
  readonly name: string;
}

/** A path for a recording that begins at `startedAt` (wall time), and the name that a person sees. */
export function newRecording(projectHome: string, startedAt: string): LeftRecording {
  const folder = join(projectHome, FOLDER);
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  const stamp = startedAt.slice(0, 19).replace('T', '-').replaceAll(':', '');
  for (let number = 1; ; number++) {
    const stem = `talk-${stamp}${number > 1 ? `-${number}` : ''}`;
    const path = join(folder, `${stem}.${process.pid}.wav`);
    if (!existsSync(path)) return { path, name: `${stem}.wav` };
  }
}

/** A recording without talk in it, out of the way of `leftRecordings`. The new name is given back. */
export const SILENT_ENDING = '.no-talk.wav';

/** Recordings whose process is gone, put right, oldest first. Those that hold no sound are deleted. */
export async function leftRecordings(projectHome: string): Promise<readonly LeftRecording[]> {
  const folder = join(projectHome, FOLDER);
  const left: LeftRecording[] = [];
  for (const file of namesIn(folder)) {
    const [, stem, pid] = NAME.exec(file) ?? [];
    const path = join(folder, file);
    if (!stem || isWriting(Number(pid), path)) continue;
    const samples = await repairRecording(path);
    if (samples === 0) rmSync(path, { force: true });
    else if (samples !== undefined) left.push({ path, name: `${stem}.wav` });
  }
  return left;
}

/** How many recordings processes left there that are gone. Nothing is changed in them. */
export function countLeft(projectHome: string): number {
  const folder = join(projectHome, FOLDER);
  return namesIn(folder).filter((file) => {
    const [, , pid] = NAME.exec(file) ?? [];
    return pid !== undefined && !isWriting(Number(pid), join(folder, file));
  }).length;
}

function namesIn(folder: string): readonly string[] {
  try {
    return readdirSync(folder).sort();
  } catch {
    return [];
  }
}

/** Whether the process that began the file may still be at it. Numbers of processes begin anew with the system. */
function isWriting(pid: number, path: string): boolean {
  const startedUp = Date.now() - uptime() * 1000;
  if ((statSync(path, { throwIfNoEntry: false })?.mtimeMs ?? 0) < startedUp) return false;
  return isThere(pid);
}
