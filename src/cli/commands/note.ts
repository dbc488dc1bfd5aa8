import { Command } from 'commander';
import { ATTRIBUTES, type Quantity } from '../../language/notes.ts';
import { KIND_WORDS, kindFields } from '../../model/note-as-written.ts';
import { EXIT, Problem } from '../../problem.ts';
import type { HandChange, ProjectApi } from '../../project-api.ts';
import type { KeptNote } from '../../reports/note-doubts.ts';
import { print } from '../print.ts';
import { withProject } from '../project-of.ts';
import { dayValue, knownQuantity, oneOf, quantityValue } from '../values.ts';
import { memoOf } from './memos.ts';

const VERDICTS = ['accept', 'reject', 'amend'] as const;
type Verdict = (typeof VERDICTS)[number];

interface Options {
  readonly item?: string;
  readonly attribute?: string;
  readonly value?: Quantity;
  readonly gist?: string;
  readonly due?: string;
  readonly kind?: string;
}

/** `note`: a person's word on what was read: right, wrong, or put right. */
export function noteCommand(): Command {
  return new Command('note')
    .description('say that a note is right or wrong, or put it right')
    .argument(
      '<note>',
      'its id, as memos shows it: m3.f2; with accept also a memo, m3: all of its notes that are sure',
    )
    .argument('<verdict>', 'accept, reject or amend', (word) => oneOf('verdict', VERDICTS, word))
    .option('--item <name>', 'amend: the thing it is said of')
    .option('--attribute <word>', 'amend: what is measured', (word) => oneOf('--attribute', ATTRIBUTES, word))
    .option('--value <quantity>', 'amend: the value, "915 mm"', (value) => quantityValue('--value', value))
    .option('--gist <words>', 'amend: the words of a task, decision or other statement')
    .option('--due <date>', 'amend: the day it is due, YYYY-MM-DD', (value) => dayValue('--due', value))
    .option('--kind <word>', `amend: what it is: ${Object.keys(KIND_WORDS).join(', ')}`)
    .action((id: string, verdict: Verdict, options: Options, command: Command) =>
      withProject(command, async (project) => {
        if (verdict === 'accept' && !id.includes('.')) return acceptSure(project, id);
        const note = await noteOf(project, id);
        if (!note) throw unknownNote(id);
        project.setByHand(await changeOf(project, note, verdict, options));
        print(`${id}: ${{ accept: 'accepted', reject: 'rejected', amend: 'amended' }[verdict]}.`);
      }),
    );
}

/** Agrees with every note of a memo that nothing speaks against. */
async function acceptSure(project: ProjectApi, number: string): Promise<void> {
  const { doubtsOf, everyNote, sureNotes } = await import('../../reports/note-doubts.ts');
  const { counted } = await import('../../reports/source-text.ts');
  const memo = memoOf(project, number);
  const findings = project.findings({ memoId: memo.id, status: 'open' });
  const noteIds = sureNotes(memo, findings);
  if (noteIds.length > 0) project.setByHand({ kind: 'notes-accepted', noteIds });
  const unsure = everyNote(memo).filter((note) => doubtsOf(note, memo.text, findings).length > 0).length;
  const look = unsure === 0 ? '' : `; to see why: hearwright memos ${memo.id.slice(1)} --unsure`;
  print(`${memo.id}: ${counted(noteIds.length, 'note')} accepted, ${unsure} unsure${look}.`);
}

async function noteOf(project: ProjectApi, id: string): Promise<KeptNote | undefined> {
  const { everyNote } = await import('../../reports/note-doubts.ts');
  const memo = project.memo(id.split('.')[0] ?? '');
  return memo && everyNote(memo).find((note) => note.id === id);
}

async function changeOf(
  project: ProjectApi,
  note: KeptNote,
  verdict: Verdict,
  options: Options,
): Promise<HandChange> {
  const { id: noteId } = note;
  const { value: quantity, kind, ...words } = options;
  const given = quantity !== undefined || kind !== undefined || Object.keys(words).length > 0;
  if (given !== (verdict === 'amend')) throw fieldsMismatch(verdict);
  if (verdict === 'accept') return { kind: 'note-accepted', noteId };
  if (verdict === 'reject') return { kind: 'note-rejected', noteId };
  const value = quantity && (await knownQuantity('--value', quantity, project.info.region));
  return {
    kind: 'note-amended',
    noteId,
    fields: { ...(kind === undefined ? {} : fieldsOfKind(note, kind)), ...words, ...value },
  };
}

function fieldsOfKind(note: KeptNote, word: string): Readonly<Record<string, unknown>> {
  const read = kindFields(note, word);
  if (read.ok) return read.value;
  throw new Problem(`--kind: ${read.why}`, {
    code: 'value-invalid',
    exitCode: EXIT.usage,
    kept: 'nothing was changed',
    next: `hearwright note ${note.id} amend --kind "to do"`,
  });
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
