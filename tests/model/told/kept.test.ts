/** Stories of what is kept on record: deliveries against orders, the other hand, what is behind panels, missing sizes. */
import { describe, expect, test } from 'vitest';
import { readMemo } from '../../../src/language/pipeline.ts';
import { answerOf } from '../../../src/model/answer.ts';
import { dayView, nextView } from '../../../src/model/day-views.ts';
import { exportDocument } from '../../../src/model/export.ts';
import { batchViews, hiddenViews, orderViews, pairViews } from '../../../src/model/kept/kept-views.ts';
import { MemoryProject } from '../../../src/model/memory.ts';
import { AT, ToldStory } from '../../kit/told-story.ts';

const ON = '2026-02-20';
const next = (story: ToldStory) => nextView(story.project.rows, ON).kept;
const ask = (story: ToldStory, question: string) => answerOf(story.project.rows, question, []).kept;

describe('what came is held against what was ordered', () => {
  test('fewer than ordered, with both quotes and what hangs on it', () => {
    const story = new ToldStory().hear(
      'I ordered eight larch boards at 21 millimetres from the mill. I need to plank the cabin side with the larch boards.',
      'The larch boards arrived. There are only six of them.',
    );
    expect(story.found()).toEqual(['received: larch boards count 8 1 -> 6 1']);
    const [finding] = story.open();
    expect(finding?.was.source?.quote).toContain('eight larch boards');
    expect(finding?.now.source?.quote).toContain('only six of them');
    expect(finding?.consequences).toMatchObject([
      { act: 'planned', what: 'Plank the cabin side with the larch boards' },
    ]);
  });

  test('another size than ordered', () => {
    const story = new ToldStory().hear(
      'I ordered eight larch boards at 21 millimetres.',
      "The larch boards came and they're 18 thick.",
    );
    const [finding] = story.open();
    expect(finding).toMatchObject({ was: { value: 21 }, now: { value: 18 }, attribute: 'thickness' });
    expect(finding?.why).toContain('what came has another size than what was ordered');
    expect(story.open()).toHaveLength(1);
  });

  test('other goods than ordered', () => {
    const story = new ToldStory().hear("The varnish turned up but they've sent gloss instead of satin.");
    expect(story.open()).toMatchObject([{ kind: 'received', why: 'satin was ordered and gloss came' }]);
  });

  test('the rest comes later: the finding is settled by it', () => {
    const story = new ToldStory().hear(
      'Ordered ten sheets of 12 mil ply from the merchant.',
      'The ply came, two sheets short.',
    );
    expect(story.open()).toHaveLength(1);
    story.hear('The other two sheets of ply arrived.');
    expect(story.open()).toEqual([]);
    expect(orderViews(story.project.rows)).toMatchObject([{ item: 'ply sheets', status: 'complete' }]);
  });

  test('what is said of a delivery once more is not counted twice', () => {
    const story = new ToldStory().hear(
      'Ordered eight larch boards.',
      'Only six of the eight larch boards turned up.',
      'Only six of the eight larch boards turned up, did I say.',
    );
    expect(story.found()).toEqual(['received: larch boards count 8 1 -> 6 1']);
    expect(orderViews(story.project.rows)).toMatchObject([{ status: 'short' }]);
  });

  test('one of two sizes is another', () => {
    const story = new ToldStory().hear(
      'Ordered a radiator, 600 by 1000.',
      "The radiator came, it's 600 by 900.",
    );
    const [finding] = story.open();
    expect([story.open().length, finding?.was.value, finding?.now.value]).toEqual([1, 1000, 900]);
  });

  test('an order kept by hand counts as well', () => {
    const story = new ToldStory().hand({
      kind: 'record-kept',
      record: { kind: 'delivery', act: 'ordered', item: 'hinges', count: 12, sizes: [] },
    });
    story.hear('The hinges arrived, all ten.');
    expect(story.found()).toEqual(['received: hinges count 12 1 -> 10 1']);
  });

  test.each([
    ['as many as ordered', ['Ordered six larch boards.', 'The six larch boards came.']],
    ['no number was said', ['Ordered six larch boards.', 'The larch boards came.']],
    ['other goods', ['Ordered six larch boards.', 'The four hinges came.']],
    ['the same kind in another wood', ['Ordered six larch boards.', 'The four oak boards came.']],
    [
      'the size as ordered',
      ['Ordered larch boards at 21 millimetres.', "The larch boards came, they're 21 thick."],
    ],
    [
      'a level, and no size of what came',
      ['Oil is ordered, five litres.', "Oil turned up at nine, and it's in, three litres to the line."],
    ],
    [
      'an order that came and was not counted is over',
      ['Ordered eight larch boards.', 'The larch boards came.', 'The four larch boards came this morning.'],
    ],
    [
      'of two orders the one of that number',
      ['Ordered four hinges.', 'Ordered six hinges.', 'The four hinges came.'],
    ],
    [
      'two orders of other woods',
      ['Ordered eight larch boards.', 'Ordered eight oak boards.', 'The six boards came.'],
    ],
    ['packs are not pieces', ['Ordered two hundred tiles.', 'The tiles came, two boxes short.']],
    [
      'both sizes as ordered, the other way round',
      ['Ordered a radiator, 600 by 1000.', "The radiator came, it's 1000 by 600."],
    ],
    ['talk of boards in the job', ['Ordered six larch boards.', 'Only four of the six boards are up.']],
  ] as const)('nothing is found: %s', (_name, talk) => {
    const findings = new ToldStory().hear(...talk).findings();
    // A figure may clash for reasons of its own.
    expect(findings.filter(({ kind, why }) => kind === 'received' || why.includes('came'))).toEqual([]);
  });
});

describe('a change on one hand asks about the other', () => {
  const PAIR = 'The port locker lid is a mirror of the starboard one. The port locker lid is 420 wide.';

  test('and copies nothing', () => {
    const story = new ToldStory().hear(
      `${PAIR} The starboard locker lid is 420 wide.`,
      'Change of plan, the port locker lid is now 440 wide.',
    );
    expect(story.found()).toEqual([
      'decided: port locker lid width 420 mm -> 440 mm',
      'hand: starboard locker lid width 420 mm -> 440 mm',
    ]);
    expect(story.figures('starboard locker lid')).toEqual(['starboard locker lid width 420 mm']);
  });

  test('also where the other side never had a figure of its own', () => {
    const story = new ToldStory().hear(PAIR, 'Change of plan, the port locker lid is now 440 wide.');
    expect(story.open().map(({ kind, item }) => `${kind}: ${item}`)).toEqual(['hand: starboard locker lid']);
  });

  test('the same change said of the other side answers it', () => {
    const story = new ToldStory().hear(
      `${PAIR} The starboard locker lid is 420 wide.`,
      'Change of plan, the port locker lid is now 440 wide.',
      'The starboard locker lid is now 440 wide as well, I decided.',
    );
    expect(story.open().filter(({ kind }) => kind === 'hand')).toEqual([]);
  });

  test('settled: the other side takes it, or the two may differ from now on', () => {
    const changed = () =>
      new ToldStory().hear(
        `${PAIR} The starboard locker lid is 420 wide.`,
        'Change of plan, the port locker lid is now 440 wide.',
      );
    expect(changed().settle('take-new', 'hand').figures('starboard locker lid')).toEqual([
      'starboard locker lid width 440 mm',
    ]);
    const apart = changed().settle('both-right', 'hand');
    expect(apart.figures('starboard locker lid')).toEqual(['starboard locker lid width 420 mm']);
    apart.hear('Change of plan, the port locker lid is now 450 wide.');
    expect(apart.open().filter(({ kind }) => kind === 'hand')).toEqual([]);
  });

  test.each([
    [
      'no pair was told',
      [
        'The port lid is 420 wide. The starboard lid is 420 wide.',
        'Change of plan, the port lid is now 440 wide.',
      ],
    ],
    [
      'the same on both sides is no hand',
      [
        'The port lid is 420 wide. The lids are the same both sides.',
        'Change of plan, the port lid is now 440 wide.',
      ],
    ],
    ['the sizes agree', [`${PAIR} The starboard locker lid is 420 wide.`]],
    ['another thing of that side', [PAIR, 'Change of plan, the port shelf is now 200 wide.']],
    ['a weight', [PAIR, 'The port locker lid is 3 kilos. The starboard locker lid is 4 kilos.']],
  ] as const)('nothing is asked: %s', (_name, talk) => {
    const story = new ToldStory().hear(...talk);
    expect(story.findings().filter(({ kind }) => kind === 'hand')).toEqual([]);
  });
});

describe('what is behind a panel', () => {
  const TOLD = "Behind the galley panel there's the feed for the bilge pump.";

  test('is shown when work goes through it and when it is asked for', () => {
    const story = new ToldStory().hear(TOLD, 'I need to drill the galley panel for the hooks.');
    expect(next(story)?.behindWork).toMatchObject([
      { panel: 'galley panel', there: [{ what: 'feed for the bilge pump' }] },
    ]);
    expect(dayView(story.project.rows, '2026-02-02')?.kept?.behindWork).toHaveLength(1);
    expect(ask(story, "what's behind the galley panel")?.hidden).toHaveLength(1);
    expect(hiddenViews(story.project.rows, 'galley')).toHaveLength(1);
  });

  test('is found by its place too, where no panel goes by that name', () => {
    const story = new ToldStory().hear("Behind the boards by the pantry there's a cable.");
    const found = (words: string) => hiddenViews(story.project.rows, words).map(({ what }) => what);
    expect(found('pantry')).toEqual(['cable']);
    expect(found('boards')).toEqual(['cable']);
    expect(found('larder')).toEqual([]);
  });

  test.each([
    ['another panel', 'I need to drill the saloon panel for the hooks.'],
    ['no work through it', 'I need to paint the galley panel.'],
    ['another place in the galley', 'I need to drill the galley bulkhead.'],
  ])('is not shown: %s', (_name, said) => {
    expect(next(new ToldStory().hear(TOLD, said))?.behindWork).toEqual([]);
  });

  test('"the panel" means the only one that is known, and none of two', () => {
    const one = new ToldStory().hear(TOLD, 'I need to drill the panel for the hooks.');
    expect(next(one)?.behindWork).toHaveLength(1);
    const two = new ToldStory().hear(
      TOLD,
      'The gas pipe runs behind the cooker panel.',
      'I need to drill the panel for the hooks.',
    );
    expect(next(two)?.behindWork).toEqual([]);
  });

  test('a recording is named as the clip to look at', () => {
    const { project } = new ToldStory();
    const told = { at: AT, memoId: 'm1', recordedAt: AT } as const;
    const source = { name: 'walk.mp4', kind: 'recording', sha256: 'x', bytes: 1 } as const;
    const text = TOLD;
    const { notes } = readMemo(text, { units: 'metric', recordedAt: AT });
    const utterances = [{ startSeconds: 137, endSeconds: 141, text }];
    project.append([
      { kind: 'recording-kept', ...told, source, file: 'x', recordedAtFrom: 'given' },
      { kind: 'transcript-made', ...told, transcript: { text, utterances } },
      { kind: 'notes-read', ...told, notes, reader: 'test' },
    ]);
    expect(hiddenViews(project.rows)).toMatchObject([{ clip: 'walk.mp4', source: { startSeconds: 137 } }]);
  });

  test('the sentence that tells it warns of nothing', () => {
    const story = new ToldStory().hear('Screwed a backing pad behind the trim panel for the grab rail.');
    expect(dayView(story.project.rows, '2026-02-01')?.kept?.behindWork).toEqual([]);
    expect(hiddenViews(story.project.rows)).toHaveLength(1);
  });
});

describe('sizes that a thing lacks before it can be made', () => {
  const missing = (...talk: string[]) =>
    next(new ToldStory().hear(...talk))?.missingSizes.map(
      ({ thing, missing }) => `${thing}: ${missing.join(', ')}`,
    );

  test.each([
    [['I need to cut the locker lid.'], ['locker lid: width, length or height, thickness']],
    [['The locker lid is 400 by 320.', 'I need to cut the locker lid.'], ['locker lid: thickness']],
    [
      ['The locker lid is 400 wide and 18 thick.', 'I need to cut the locker lid.'],
      ['locker lid: length or height'],
    ],
    [['I need to cut a hole in the bulkhead for the duct.'], ['hole: diameter, or width and height']],
    [['I need to make the drawer box.'], ['drawer box: width, height, depth']],
  ])('%j lacks %j', (talk, expected) => {
    expect(missing(...talk)).toEqual(expected);
  });

  test.each([
    [['The locker lid is 400 wide, 320 long and 18 thick.', 'I need to cut the locker lid.']],
    [['The port lid is 400 wide, 320 long and 18 thick.', 'I need to cut the starboard lid.']],
    [['I need to cut the grass.']],
    [['I need to cut the lid to the template.']],
    [["I can't cut the locker lid until the ply comes."]],
    [['I cut the locker lid.']],
  ])('%j lacks nothing', (talk) => {
    expect(missing(...talk)).toEqual([]);
  });

  test('a question about the thing tells what is missing', () => {
    const story = new ToldStory().hear('The locker lid is 400 by 320.', 'I need to cut the locker lid.');
    expect(ask(story, 'locker lid')?.missingSizes).toMatchObject([{ missing: ['thickness'] }]);
    expect(ask(story, 'cabin sole')?.missingSizes).toEqual([]);
  });
});

test('batches keep their facts with memo and words, and answer for the place they went to', () => {
  const story = new ToldStory().hear(
    'Mixed the epoxy, five to one by weight, 14 degrees in the shed, for the keel floors.',
  );
  expect(batchViews(story.project.rows)).toMatchObject([
    { id: 'm1.r1', product: 'epoxy', source: { memoId: 'm1' } },
  ]);
  expect(ask(story, 'keel floors')?.batches).toHaveLength(1);
  expect(ask(story, 'cabin top')?.batches).toEqual([]);
});

/** Everything of this kind, told and by hand, with a rejected note and an undo among it. */
function everything(): ToldStory {
  return new ToldStory()
    .hear(
      "Ordered eight larch boards. Behind the galley panel there's the pump feed. The knees are handed, one of each.",
      'The larch boards came, two short. Mixed the epoxy, five to one, 14 degrees, for the floors.',
      'The port knee is 300 long. The starboard knee is 310 long.',
    )
    .hand(
      {
        kind: 'record-kept',
        record: { kind: 'hidden', panel: 'bed panel', what: 'gas pipe', service: 'pipe' },
      },
      { kind: 'record-kept', record: { kind: 'batch', product: 'primer', facts: [] } },
      { kind: 'record-kept', record: { kind: 'pair', part: 'seat base', sides: ['left', 'right'] } },
    )
    .hand({ kind: 'note-rejected', noteId: 'm1.r2' })
    .hand({ kind: 'undone', undoes: 12 });
}

test('withdrawn and undone records are gone; the log rebuilds the same model', () => {
  const story = everything();
  const { rows } = story.project;
  expect(hiddenViews(rows).map(({ panel }) => panel)).toEqual(['bed panel']);
  expect(batchViews(rows).map(({ product }) => product)).toEqual(['epoxy']);
  expect(pairViews(rows).map(({ part }) => part)).toEqual(['knees', 'seat base']);
  expect(story.open().map(({ kind }) => kind)).toEqual(['received', 'hand']);
  const again = new MemoryProject();
  again.append(story.project.log().map(({ seq: _seq, ...event }) => event));
  expect(again.rows.all('records')).toEqual(rows.all('records'));
  expect(again.rows.all('findings')).toEqual(rows.all('findings'));
});

test('the export has the records beside the contract`s fields', () => {
  const document = exportDocument(everything().project.rows) as Record<string, readonly unknown[]>;
  expect(
    Object.fromEntries(['batches', 'behind', 'hands', 'orders'].map((key) => [key, document[key]?.length])),
  ).toEqual({ batches: 1, behind: 1, hands: 2, orders: 1 });
});
