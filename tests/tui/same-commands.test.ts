/** Everything that a key of the screen does, a command does too. */
import type { Command } from 'commander';
import { expect, test } from 'vitest';
import { buildProgram } from '../../src/cli/program.ts';
import { type Intent, KEYS } from '../../src/tui/keys.ts';

/** A key that only moves about, or that shows what is on the screen already. */
const MOVES = 'moves';

/** What to call for the same, as docs/commands.md has it. The compiler sees to it that no intent is left out. */
const SAME: Readonly<Record<Intent, string>> = {
  up: MOVES,
  down: MOVES,
  'page-up': MOVES,
  'page-down': MOVES,
  back: MOVES,
  leave: MOVES,
  'see-keys': '--help',
  open: 'memos 3',
  take: 'take talk.wav',
  record: 'listen',
  'see-bench': 'listen',
  'read-back': 'listen --aloud',
  play: 'play m3.f2',
  // Control-C in take and watch: what was kept is gone on with.
  cancel: 'resume',
  'see-memos': 'memos',
  'see-clashes': 'findings',
  'see-figures': 'figures',
  'see-rules': 'checks',
  'see-tasks': 'tasks',
  'see-day': 'journal',
  'see-next': 'next',
  'see-where': 'where',
  'old-holds': 'settle m2.c1 keep-old',
  'new-holds': 'settle m2.c1 take-new',
  'both-right': 'settle m2.c1 both-right',
  'right-size': 'settle m2.c1 correct --value 915mm',
  'note-right': 'note m3.f2 accept',
  'other-reading': 'note m3.f2 amend --value 80mm',
  'note-wrong': 'note m3.f2 reject',
  'accept-sure': 'note m3 accept',
  'unsure-alone': 'memos 3 --unsure',
  'amend-note':
    'note m3.f2 amend --item bench --attribute height --value 915mm --gist words --due 2026-05-01',
  'note-kind': 'note m3.t1 amend --kind done',
  reword: 'words m3 18 80',
  'earlier-memo': 'memos 2',
  'later-memo': 'memos 4',
  'see-transcripts': 'transcripts 3',
  'choose-transcript': 'transcripts 3 2',
  join: 'merge bumk bunk',
  apart: 'split bunk',
  'set-figure': 'figures set bench',
  find: 'figures bench',
  'close-task': 'close m1.t1',
  'reopen-task': 'reopen m1.t1',
  sooner: 'before m1.t2 m1.t1',
  later: 'before m1.t1 m1.t2',
  'set-due': 'due m1.t1 2026-05-01',
  'no-task': 'withdraw m1.t1',
  undo: 'undo',
  redo: 'redo',
  'add-task': 'todo words',
  'add-wait': 'wait m1.t1 --task m1.t2 --until 2026-05-01 --hours 24 --reading reading --nothing',
  journal: 'journal 2026-05-01',
  'next-steps': 'next',
  outline: 'episode',
  'earlier-day': 'journal 2026-05-01',
  'later-day': 'journal 2026-05-02',
  write: 'journal --out .',
};

/** The command that the words call, its own subcommands included, and what is left of them. */
function called(words: readonly string[], from: Command): readonly [Command, readonly string[]] {
  const [first, ...rest] = words;
  const sub = from.commands.find((one) => one.name() === first);
  return sub ? called(rest, sub) : [from, words];
}

test.each(Object.entries(SAME).filter(([, call]) => call !== MOVES && call !== '--help'))(
  'what "%s" does, `hearwright %s` does',
  (_intent, call) => {
    const program = buildProgram();
    const [command, rest] = called(call.split(' '), program);
    expect(command).not.toBe(program);
    const options = rest.filter((word) => word.startsWith('--'));
    expect(command.options.map(({ long }) => long)).toEqual(expect.arrayContaining(options));
  },
);

test('every key stands for an intent that is listed here, and no intent is without a key', () => {
  const bound = new Set(KEYS.map(({ intent }) => intent));
  expect([...bound].sort()).toEqual(Object.keys(SAME).sort());
});
