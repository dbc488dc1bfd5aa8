/** What can hinder the taking of a memo, in words: what was kept, and what to do next. */
import { basename } from 'node:path';
import type { MemoRow } from './model/rows.ts';
import { EXIT, Problem } from './problem.ts';

export function notRecorded(memo: MemoRow): Problem {
  return new Problem(`memo ${memo.id.slice(1)} was written: there is nothing to hear`, {
    code: 'memo-not-recorded',
    exitCode: EXIT.usage,
    next: 'see which memos are recordings with: hearwright memos',
  });
}

export function notReadYet(memoId: string): Problem {
  return new Problem(`cannot put the words of memo ${memoId.slice(1)} right: nothing was read from it yet`, {
    code: 'memo-not-read',
    exitCode: EXIT.usage,
    kept: 'nothing was changed',
    next: 'hearwright resume',
  });
}

export function changedMeanwhile(memoId: string): Problem {
  return new Problem(`the words of memo ${memoId.slice(1)} were changed by another program meanwhile`, {
    code: 'memo-changed',
    exitCode: EXIT.usage,
    kept: 'what the other program did',
    next: 'look at the memo again, and put the words right there',
  });
}

/** The recording is safe although it was not heard. The recogniser knows it only by its kept name. */
export function keptButNotHeard(problem: Problem, memo: MemoRow): Problem {
  const { name } = memo.source;
  const next = problem.code === 'cancelled' ? 'go on with: hearwright resume' : problem.next;
  return new Problem(problem.message.replaceAll(basename(memo.file), name), {
    code: problem.code,
    exitCode: EXIT.partly,
    kept: `${name} is kept as memo ${memo.id.slice(1)}, not read yet`,
    next: next?.replaceAll(basename(memo.file), name) ?? 'hearwright resume',
    cause: problem.cause ?? problem,
  });
}

/** Another engine could not hear it: what stands, stands. */
export function standsAsItWas(problem: Problem, memo: MemoRow): Problem {
  const number = memo.id.slice(1);
  const next = problem.code === 'cancelled' ? `go on with: hearwright hear ${number}` : problem.next;
  return new Problem(problem.message.replaceAll(basename(memo.file), memo.source.name), {
    code: problem.code,
    exitCode: EXIT.partly,
    kept: `memo ${number} stands as it was`,
    ...(next === undefined ? {} : { next: next.replaceAll(basename(memo.file), memo.source.name) }),
    cause: problem.cause ?? problem,
  });
}
