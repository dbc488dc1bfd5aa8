/**
 * What speaks for a figure being the new size of something told before, and what against it. Each sign has a name and
 * a size; what it weighs stands in `change-weights.ts`.
 */
import type { Attribute } from '../language/notes.ts';
import type { Arriving } from './claims.ts';
import type { Sign } from './closing-signs.ts';
import { actsOn } from './finding.ts';
import { likenessOf } from './likeness.ts';
import { setsApart, shapeOf, wordsOf } from './names.ts';
import type { ItemRow, StandingRow } from './rows.ts';
import { stemOf } from './stems.ts';
import { agree, toleranceBetween } from './tolerance.ts';
import { exactQuantity } from './units.ts';
import type { Working } from './working.ts';

/** The stems of the talk around a figure, by how near they are. */
export interface Around {
  readonly sentence: ReadonlySet<string>;
  readonly before: ReadonlySet<string>;
  /** Of the two sentences before that one. */
  readonly further: ReadonlySet<string>;
  readonly after: ReadonlySet<string>;
  readonly memo: ReadonlySet<string>;
}

const stemsIn = (text: string): ReadonlySet<string> => new Set(wordsOf(text).map(stemOf));
const whole = new WeakMap<Working, ReadonlySet<string>>();

/** What is said around a figure. */
export function aroundOf(work: Working, { place }: Arriving): Around {
  const further = [place.index - 2, place.index - 3].map((at) => work.sentences[at]?.text ?? '');
  const memo = whole.get(work) ?? stemsIn(work.memo.text);
  whole.set(work, memo);
  return {
    sentence: stemsIn(place.sentence),
    before: stemsIn(place.before),
    further: stemsIn(further.join(' ')),
    after: stemsIn(place.after),
    memo,
  };
}

const share = (stems: readonly string[], words: ReadonlySet<string>): number =>
  stems.length === 0 ? 0 : stems.filter((stem) => words.has(stem)).length / stems.length;

const LOOSE: readonly Attribute[] = ['size', 'other', 'length'];
const ACROSS: readonly Attribute[] = ['width', 'diameter', 'clearance', 'gap', 'offset'];

function attributeSign(known: Attribute, said: Attribute): string {
  if (known === said) return 'same measure';
  if (LOOSE.includes(known) || LOOSE.includes(said)) return 'loose measure';
  if (ACROSS.includes(known) && ACROSS.includes(said)) return 'like measure';
  return 'other measure';
}

/** How far apart two figures are, as a sign. */
function ratioSign(ratio: number | undefined): string {
  if (ratio === undefined) return 'ratio unknown';
  for (const most of [1.02, 1.06, 1.15, 1.3, 1.6, 2.2]) if (ratio < most) return `ratio below ${most}`;
  return 'ratio far';
}

/** The signs of one figure against one that stands. */
export function signsOfChange(
  work: Working,
  arriving: Arriving,
  row: StandingRow,
  item: ItemRow,
  around: Around,
): readonly Sign[] {
  const { note, cue, place } = arriving;
  const { region } = work.settings;
  const signs: Sign[] = [['any', 1]];
  const put = (name: string, size: number | boolean = 1) => {
    const value = Number(size);
    if (value !== 0) signs.push([name, value]);
  };
  const isOwn = arriving.item.id === row.itemId;
  put('own thing', isOwn);
  put(`word ${cue.change ?? 'none'}`);
  put('word plain', Math.min(cue.weight, 6) / 3);
  put('word of the reader', note.change !== undefined);
  put('needed', cue.isNeeded);
  put('restated', cue.isRestated);
  const [a, b] = [shapeOf(note.item), shapeOf(item.name)];
  const moreA = a.stems.filter((stem) => !b.stems.includes(stem));
  const moreB = b.stems.filter((stem) => !a.stems.includes(stem));
  put('same head', a.head === b.head);
  put('head within', a.head !== b.head && b.stems.includes(a.head));
  put('head beside', a.head !== b.head && a.stems.includes(b.head));
  put('set apart', moreA.some(setsApart) && moreB.some(setsApart));
  put('name shared', share(b.stems, new Set(a.stems)));
  put('name in the sentence', share(b.stems, around.sentence));
  put('name before', share(b.stems, around.before));
  put('name further up', share(b.stems, around.further));
  put('name behind', share(b.stems, around.after));
  put('name in the memo', share(b.stems, around.memo));
  put('head in the sentence', around.sentence.has(b.head));
  put('head before', around.before.has(b.head) && !around.sentence.has(b.head));
  put('name unsaid', moreA.length > 0 && share(a.stems, around.sentence) === 0);
  const measure = attributeSign(row.attribute, note.attribute);
  put(measure);
  put(`${measure}, guessed`, note.assumed?.includes('attribute') ?? false);
  put('other measure told', measure === 'other measure' && !note.assumed?.includes('attribute'));
  put(`${measure}, own thing`, isOwn);
  const [x, y] = [exactQuantity(row, region)?.base.valueOf(), exactQuantity(note, region)?.base.valueOf()];
  const ratio = x && y && x > 0 && y > 0 ? Math.max(x / y, y / x) : undefined;
  put(ratioSign(ratio));
  put('same unit', row.unit === note.unit);
  put('of length', note.dimension === 'length');
  const likeness = likenessOf(row, note, region);
  put('alike', likeness?.weight ?? 0);
  put('alike, own thing', isOwn ? (likeness?.weight ?? 0) : 0);
  put('alike, no word', cue.change === undefined ? (likeness?.weight ?? 0) : 0);
  const tolerance = toleranceBetween(row, note, work.settings.tolerances, region);
  const agrees = (value: { readonly value: number; readonly unit: string }) =>
    agree(value, row, tolerance, region) === true;
  put('replaced', note.replaces !== undefined && agrees(note.replaces));
  put('another replaced', note.replaces !== undefined && !agrees(note.replaces));
  const again = work.memo.notes.figures.find(
    (other) =>
      other.id !== note.id &&
      other.id !== row.claimId &&
      other.dimension === note.dimension &&
      Math.abs(work.place(other.span).index - place.index) <= 2 &&
      agrees(other),
  );
  put('old value near', again !== undefined);
  put('old value near, before', again !== undefined && again.span.start < note.span.start);
  put(`was ${row.state ?? 'untold'}`);
  put(`now ${note.state ?? 'untold'}`);
  put('derived', work.draft.formula(row.slot) !== undefined);
  put('acted on', actsOn(work.draft, item.name).length > 0);
  put('in doubt', row.status === 'in-doubt');
  put('about', note.bound === 'about');
  const claim = row.claimId === undefined ? undefined : work.draft.claim(row.claimId);
  const rivals = work.draft
    .standingOf(row.itemId)
    .filter((other) => other.slot !== row.slot && other.dimension === row.dimension).length;
  put('rivals of the thing', Math.min(rivals, 4));
  put('worked out', claim === undefined);
  const isIn = (list: readonly { readonly span: { readonly start: number; readonly end: number } }[]) =>
    list.some(({ span }) => span.start < note.span.end && span.end > note.span.start);
  put('in a choice', isIn(work.memo.notes.decisions));
  put('in a snag', isIn(work.memo.notes.problems));
  put('in a deed', isIn(work.memo.notes.done));
  put('in an arrival', isIn(work.memo.notes.arrivals));
  put('in a task', isIn(work.memo.notes.tasks));
  put('own thing known', work.draft.standingOf(arriving.item.id).length > 0);
  return signs;
}
