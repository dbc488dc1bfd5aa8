/** Reads the cut list of a finished film and lays it over the project's recordings. */
import { readFileSync } from 'node:fs';
import { EXIT, Problem } from '../problem.ts';
import type { ProjectApi } from '../project-api.ts';
import { readCutList } from '../reports/cut/cut-list.ts';
import { meantBy, type Programme, programmeOf } from '../reports/cut/programme.ts';
import { decodeText, readProblem } from '../text-file.ts';
import { tell } from './print.ts';

/** The film that a cut list tells of. Throws a Problem that names every fault by its line. */
export function programmeFrom(project: ProjectApi, file: string): Programme {
  const read = readCutList(decodeText(bytesOf(file), file, 'read'));
  if (!read.ok) throw cutFaults(file, read.faults);
  // Ten years of memos are not opened for a film that is made of twenty.
  const memos = meantBy(read.cuts, project.memos()).flatMap(({ id }) => project.memo(id) ?? []);
  const laid = programmeOf(read.cuts, memos);
  if (!laid.ok) throw cutFaults(file, laid.faults);
  const { unknown } = laid.programme;
  if (unknown.length > 0) tell(`not among the project's recordings: ${unknown.join(', ')}`);
  return laid.programme;
}

function bytesOf(file: string): Buffer {
  try {
    return readFileSync(file);
  } catch (error) {
    throw readProblem(error, file, 'read');
  }
}

function cutFaults(file: string, faults: readonly string[]): Problem {
  return new Problem(`the cut list ${file} cannot be followed:\n  ${faults.join('\n  ')}`, {
    code: 'cut-list-unread',
    exitCode: EXIT.usage,
    next: 'put these lines right; the format stands in docs/outputs.md',
  });
}

/** What comes of the cut list breaks the rules for chapters. */
export function chapterRulesBroken(faults: readonly string[]): Problem {
  return new Problem(`no chapters can be made of this cut:\n  ${faults.join('\n  ')}`, {
    code: 'chapters-refused',
    exitCode: EXIT.usage,
    next: 'name chapters in the title column of the cut list, or leave names out',
  });
}
