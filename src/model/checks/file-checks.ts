/** Checks that run by themselves: attached by speech or by hand, run anew when a figure that they read changes. */
import type { CheckNote, SpokenInput } from '../../language/notes.ts';
import type { CheckAdded, CheckRemoved } from '../events.ts';
import { readFormula, readsOf } from '../formula.ts';
import { laterOf } from '../instants.ts';
import type { FindingRow } from '../rows.ts';
import type { Kept, Source } from '../views.ts';
import type { Working } from '../working.ts';
import type { CheckRow, CheckRun } from './check-rows.ts';
import { intervalWords } from './interval-words.ts';
import { mayBeSame, productOfCheck } from './products.ts';
import { tiedToFigures } from './said-sizes.ts';
import { changedKeys, changing } from './watches.ts';
import { workCheck } from './work-check.ts';

/** Attaches a check that was said. Said again it changes nothing; said with another number it takes the old one's place. */
export function fileSpokenCheck(work: Working, note: Kept<CheckNote>): void {
  const { id, check, options } = note;
  const inputs = tiedToFigures(work, note.inputs);
  attach(work, { id, check, inputs, ...(options ? { options } : {}) }, work.source(note));
}

/** Attaches a check that a person added; its id is that of the event. */
export function addCheck(work: Working, event: CheckAdded): void {
  const { check, inputs, options, note } = event;
  const more = { ...(options ? { options } : {}), ...(note === undefined ? {} : { note }) };
  attach(work, { id: work.memo.id, check, inputs, ...more }, work.source({ quote: '' }));
}

/** Takes a check away, with what it found. An id that is none changes nothing. */
export function removeCheck(work: Working, { checkId }: CheckRemoved): void {
  const row = work.draft.check(checkId);
  if (row?.active) putAway(work, row, 'the check was taken away');
}

function putAway(work: Working, row: CheckRow, reason: string): void {
  work.draft.put({ table: 'checks', row: { ...row, active: false, watches: [] } });
  settleAll(work, row.id, 'taken-away', reason);
}

type Asked = Pick<CheckRow, 'id' | 'check' | 'inputs' | 'options' | 'note'>;

function attach(work: Working, asked: Asked, source: Source): void {
  const asOf = work.memo.recordedAt;
  const worked = workCheckOn(work, asked, asOf);
  const { run, inputs, watches } = worked;
  const older = work.draft.checksWatching([`=${run.check}`]);
  if (older.some((one) => sameWords(one) === sameWords({ ...asked, inputs }))) return;
  const isSaid = source.quote !== '';
  for (const one of older) {
    // The air is told again and again; each time it is another, and the last one is what there is.
    const isOldAir = isSaid && run.check === 'dew point' && one.source.quote !== '';
    if (isOldAir || saysAnew(one.inputs, inputs)) putAway(work, one, 'it was said anew');
  }
  const since = work.memo.recordedAt;
  const row: CheckRow = {
    ...asked,
    check: run.check,
    inputs,
    source,
    active: true,
    watches,
    last: { state: run.state, why: run.why, since, asOf },
  };
  work.draft.put({ table: 'checks', row });
  report(work, row, run, undefined);
}

/** What an input reads: names and slots, without the numbers between them. */
function readsOfInput({ expression }: SpokenInput): string {
  const names = intervalWords(expression).parts.flatMap((part) => {
    const read = readFormula(part);
    return read.ok ? readsOf(read.formula).map(({ text }) => text) : [part];
  });
  return names.sort().join(', ');
}

/**
 * Whether a check says an older one anew: it reads the same figures, and only one number is another. "Four at 610" and
 * "three at 500" of one sheet are two checks.
 */
function saysAnew(older: CheckRow['inputs'], newer: CheckRow['inputs']): boolean {
  if (older.length !== newer.length) return false;
  if (isOfSameProduct(older, newer)) return true;
  const differing = newer.filter((one, index) => {
    const before = older[index];
    return before?.input !== one.input || before.expression !== one.expression;
  });
  const [other] = differing;
  if (differing.length !== 1 || !other) return false;
  const before = older[newer.indexOf(other)];
  if (before?.input !== other.input || readsOfInput(before) !== readsOfInput(other)) return false;
  return newer.some((one) => readsOfInput(one) !== '');
}

/** Another time or temperature of one product, as its data sheet is read again. */
function isOfSameProduct(older: CheckRow['inputs'], newer: CheckRow['inputs']): boolean {
  const [before, now] = [older, newer].map((inputs) => productOfCheck({ inputs }));
  if (before === undefined || now === undefined || !mayBeSame(before, now)) return false;
  return newer.every((one, index) => {
    const other = older[index];
    return (
      one.of !== undefined &&
      other?.of !== undefined &&
      one.input === other.input &&
      isProductInput(one.input)
    );
  });
}

/** What a product's data sheet gives, in the checks that read it. */
const isProductInput = (name: string) =>
  /^(?:time|earliest|latest|least|most|data sheet temperature)$/.test(name);

const sameWords = ({ inputs, options = {} }: Pick<CheckRow, 'inputs' | 'options'>) =>
  JSON.stringify([
    inputs.map(({ input, expression }) => [input, expression]),
    Object.entries(options).sort(),
  ]);

/** Runs the checks anew that read what this memo, or this word of a person, has changed so far. */
export function rerunChecks(work: Working): void {
  const changes = [...work.draft.changes()];
  // Time goes on with every memo.
  const keys = [...changedKeys(work.draft, changes), '@now'];
  const mayChange = changing(work.draft, new Set(keys), changes);
  for (const row of work.draft.checksWatching(keys)) if (mayChange(row.watches)) rerun(work, row);
}

function rerun(work: Working, row: CheckRow): void {
  const { last } = row;
  // A memo of an earlier day that is taken in late turns no clock back.
  const asOf = laterOf(last.asOf ?? work.memo.recordedAt, work.memo.recordedAt);
  const { run, inputs, watches } = workCheckOn(work, row, asOf);
  const isSame = last.state === run.state && last.why === run.why;
  const known = JSON.stringify([row.inputs, row.watches]);
  if (isSame && known === JSON.stringify([inputs, watches]) && !watches.includes('@now')) return;
  const since = last.state === run.state ? last.since : work.memo.recordedAt;
  work.draft.put({
    table: 'checks',
    row: { ...row, inputs, watches, last: { state: run.state, why: run.why, since, asOf } },
  });
  if (!isSame) report(work, row, run, last);
}

/** Where findings about a check are looked up. */
export const slotOfCheck = (id: string) => `check|${id}`;

/** A check that breaks is a finding; one that holds again settles it. What is not run or in doubt leaves it as it is. */
function report(work: Working, row: CheckRow, run: CheckRun, last: CheckRow['last'] | undefined): void {
  const hasOpen = openOn(work, row.id).length > 0;
  if (run.state === 'holds' || run.state === 'told') {
    if (hasOpen) settleAll(work, row.id, 'holds-again', `it holds again: ${run.why}`);
    return;
  }
  if (run.state !== 'broken') return;
  const isKnown = last?.state === 'broken' && last.why === run.why;
  if (isKnown) return;
  settleAll(work, row.id, 'changed-again', 'its figures have changed since');
  const things = thingsOf(run);
  const source = newestSource(work, row, run);
  const nothing = { value: 0, unit: '', source };
  work.find({
    kind: 'check',
    checkId: row.id,
    item: subjectOfCheck(run, row.note),
    itemId: '',
    attribute: 'other',
    slot: slotOfCheck(row.id),
    was: nothing,
    now: nothing,
    things,
    why: run.why,
  });
}

/** The things that a run reads figures of, and those that its plain sizes are of, each once. */
function thingsOf({ inputs, window }: Pick<CheckRun, 'inputs' | 'window'>): readonly string[] {
  const named = inputs
    .filter(({ name }) => !isOfAir(name))
    .flatMap(({ reads, of }) => [
      ...reads.map(({ name }) => name.replace(/ \S+$/, '')),
      ...(reads.length === 0 && of !== undefined ? [of] : []),
    ]);
  const things = [...new Set(named)];
  return things.length === 0 && window && window.product !== '' ? [window.product] : things;
}

/** The air is around the work, and no part of what a check is about. */
const isOfAir = (name: string) => /^(?:temperature|least temperature|air)$/.test(name);

/** So many things are named where a check is spoken of. */
const MOST_NAMED = 4;

/** "panel through opening (aft panel, side hatch)"; by the words that a person put to it where no thing was named. */
export function subjectOfCheck(run: CheckRun, note?: string): string {
  const known = thingsOf(run);
  const isPlain = known.length === 0 && run.inputs.every(({ missing }) => missing === undefined);
  const things = isPlain && note !== undefined ? [note] : known;
  const more = things.length - MOST_NAMED;
  const named = [...things.slice(0, MOST_NAMED), ...(more > 0 ? [`${more} more`] : [])];
  return named.length > 0 ? `${run.check} (${named.join(', ')})` : run.check;
}

/** The words that brought it to light: of the latest figure said in this memo, else those that asked for the check. */
function newestSource(work: Working, row: CheckRow, { inputs, window }: CheckRun): Source {
  const clocks = window ? [window.source, ...(window.usedSource ? [window.usedSource] : [])] : [];
  const said = [...inputs.flatMap(({ reads }) => reads.flatMap(({ source }) => source ?? [])), ...clocks];
  const own = said.filter(({ memoId }) => memoId === work.memo.id);
  return own[own.length - 1] ?? row.source;
}

function openOn(work: Working, id: string): readonly FindingRow[] {
  return work.draft.findingsOn(slotOfCheck(id));
}

/** What settles a broken check without a person. */
type Settled = 'holds-again' | 'changed-again' | 'taken-away';

function settleAll(work: Working, id: string, choice: Settled, reason: string): void {
  const settledBy = { choice, at: work.memo.recordedAt, reason };
  for (const finding of openOn(work, id)) work.amend({ ...finding, status: 'settled', settledBy });
}

/** Works a check out on a draft, asking names as filing does. */
export function workCheckOn(
  work: Pick<Working, 'draft' | 'settings'>,
  asked: Pick<CheckRow, 'check' | 'inputs' | 'options'>,
  now: string,
) {
  const names = { reader: work.draft, ruleOf: (key: string) => work.draft.nameRule(key) };
  return workCheck(names, asked, { ...work.settings, now });
}
