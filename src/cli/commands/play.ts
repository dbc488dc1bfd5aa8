import { Command } from 'commander';
import { EXIT, Problem } from '../../problem.ts';
import { interruptSignal } from '../interrupt.ts';
import { withProject } from '../project-of.ts';

/** `play`: the stretch of a recording in which a note was said. */
export function playCommand(): Command {
  return new Command('play')
    .description('play the stretch of a recording in which a note was said')
    .argument('<note>', 'its id, as memos shows it: m3.f2')
    .action((id: string, _options: object, command: Command) =>
      withProject(command, async (project) => {
        const { everyNote } = await import('../../reports/note-doubts.ts');
        const memoId = id.split('.')[0] ?? '';
        const memo = project.memo(memoId);
        const note = memo && everyNote(memo).find((one) => one.id === id);
        if (!note) throw unknownNote(id);
        const { startSeconds: from = 0, endSeconds: to = from } = note;
        const played = await project.playClip(memoId, { from, to }, interruptSignal());
        if (!played.ok) throw played.problem;
      }),
    );
}

function unknownNote(id: string): Problem {
  return new Problem(`no note has the id "${id}"`, {
    code: 'note-unknown',
    exitCode: EXIT.usage,
    next: 'see the ids of memo 3 with: hearwright memos 3',
  });
}
