import { Command } from 'commander';
import { ATTRIBUTES, type Quantity } from '../../language/notes.ts';
import { EXIT, Problem } from '../../problem.ts';
import type { HandChange, ProjectApi } from '../../project-api.ts';
import { print } from '../print.ts';
import { withProject } from '../project-of.ts';
import { dayValue, knownQuantity, oneOf, quantityValue } from '../values.ts';

const VERDICTS = ['accept', 'reject', 'amend'] as const;
type Verdict = (typeof VERDICTS)[number];

interface Options {
  readonly item?: string;
  readonly attribute?: string;
  readonly value?: Quantity;
  readonly gist?: string;
  readonly due?: string;
}

/** `note`: a person's word on what was read: right, wrong, or put right. */
export function noteCommand(): Command {
  return new Command('note')
    .description('say that a note is right or wrong, or put it right')
    .argument('<note>', 'its id, as memos shows it: m3.f2')
    .argument('<verdict>', 'accept, reject or amend', (word) => oneOf('verdict', VERDICTS, word))
    .option('--item <name>', 'amend: the thing it is said of')
    .option('--attribute <word>', 'amend: what is measured', (word) => oneOf('--attribute', ATTRIBUTES, word))
    .option('--value <quantity>', 'amend: the value, "915 mm"', (value) => quantityValue('--value', value))
    .option('--gist <words>', 'amend: the words of a task, decision or other statement')
    .option('--due <date>', 'amend: the day it is due, YYYY-MM-DD', (value) => dayValue('--due', value))
    .action((id: string, verdict: Verdict, options: Options, command: Command) =>
      withProject(command, async (project) => {
        if (!hasNote(project, id)) throw unknownNote(id);
        project.setByHand(await changeOf(project, id, verdict, options));
        print(`${id}: ${{ accept: 'accepted', reject: 'rejected', amend: 'amended' }[verdict]}.`);
      }),
    );
}

function hasNote(project: ProjectApi, id: string): boolean {
  const memo = project.memo(id.split('.')[0] ?? '');
  const lists: readonly (readonly { readonly id: string }[])[] = memo ? Object.values(memo.notes) : [];
  return lists.some((list) => list.some((note) => note.id === id));
}

async function changeOf(
  project: ProjectApi,
  noteId: string,
  verdict: Verdict,
  options: Options,
): Promise<HandChange> {
  const { value: quantity, ...words } = options;
  const given = quantity !== undefined || Object.keys(words).length > 0;
  if (given !== (verdict === 'amend')) throw fieldsMismatch(verdict);
  if (verdict === 'accept') return { kind: 'note-accepted', noteId };
  if (verdict === 'reject') return { kind: 'note-rejected', noteId };
  const value = quantity && (await knownQuantity('--value', quantity, project.info.region));
  return { kind: 'note-amended', noteId, fields: { ...words, ...value } };
}

function unknownNote(id: string): Problem {
  return new Problem(`no note has the id "${id}"`, {
    code: 'note-unknown',
    exitCode: EXIT.usage,
    next: 'see the ids of memo 3 with: hearwright memos 3',
  });
}

function fieldsMismatch(verdict: Verdict): Problem {
  return new Problem(
    verdict === 'amend' ? 'amend: nothing to put right was given' : `${verdict}: fields go with amend only`,
    { code: 'value-mismatch', exitCode: EXIT.usage, next: 'hearwright note NOTE amend --item "bench top"' },
  );
}
