/** A small build as it really comes out of the model, with hostile words wherever somebody's words stand. */
import { type Node, Parser } from 'commonmark';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { nextView, spanView } from '../../src/model/day-views.ts';
import { projectInfo, standingFigures } from '../../src/model/project-views.ts';
import { whereView } from '../../src/model/where-view.ts';
import { episodePage } from '../../src/reports/episode.ts';
import { journalOfDays } from '../../src/reports/journal.ts';
import { nextStepsPage } from '../../src/reports/next-steps.ts';
import { wherePage } from '../../src/reports/where-was-i.ts';
import { hostileWords } from '../kit/hostile-words.ts';
import { toldIn } from '../kit/told-in.ts';
import { ToldStory } from '../kit/told-story.ts';

const STORY = new ToldStory('mixed', 'GB').hear(
  'The hatch opening is 620 millimetres wide and 480 high. I need to run the feed before the wall is closed in. Next week I will show you the stove.',
  'Ordered the glass for the hatch opening. Mixed the epoxy five to one, 14 degrees in the shed, humidity 60 percent, and glued the sill. Ran the twelve volt cable behind the galley panel.',
  'The hatch opening is 640 millimetres wide, measured it again. The locker lids are 400 by 300, one port, one starboard. The roof leaks at the seam because the tape lifted.',
  'Eight larch boards came, not ten. Need to buy two hinges. Decided on oak rather than ash because it bends. I have to drill through the galley panel for the lamp.',
  'The hatch opening is 604 millimetres wide. Fixed the leak in the roof. Recoat after six hours it says on the tin.',
);
const { rows } = STORY.project;
const VIEWS = {
  span: spanView(rows, '2026-02-02', '2026-02-05'),
  next: nextView(rows, '2026-02-06T08:00:00+01:00'),
  where: whereView(rows, '2026-02-20T08:00:00+01:00'),
  standing: standingFigures(rows),
  project: projectInfo(rows),
};

function pagesIn(words: string): readonly string[] {
  const { span, next, where, standing, project } = toldIn(VIEWS, words);
  return [
    journalOfDays(span.days, project, span),
    episodePage(span, project, standing),
    nextStepsPage(next, project),
    wherePage(where, project),
  ];
}

/** Kinds of nodes in order, with the levels of headings. */
function shapeOf(markdown: string): string {
  // How many titles are alike hangs on the words: those of the chapters are left out.
  const fixed = markdown.replace(/\n## Proposed chapter titles\n[\s\S]*?(?=\n## |$)/, '');
  const walker = new Parser().parse(fixed).walker();
  const shape: string[] = [];
  for (let step = walker.next(); step; step = walker.next()) {
    const node: Node = step.node;
    if (node.type !== 'text' && step.entering) shape.push(`${node.type}${node.level ?? ''}`);
  }
  return shape.join(' ');
}

test('the build fills every section that hostile words could get into', () => {
  const [journal = '', outline = '', next = '', where = ''] = pagesIn('plain');
  for (const title of ['Done', 'Decided', 'Measured', 'Clashes', 'Made, ordered and received', 'Batches'])
    expect(journal).toContain(`### ${title}\n`);
  for (const title of ['Behind panels', 'Pairs of hands', 'Ordered and received', 'Problems', 'Tasks'])
    expect(journal).toContain(`### ${title}\n`);
  for (const title of ['Goal, and whether it was reached', 'Where we were', 'The setback', 'Next time'])
    expect(outline).toContain(`## ${title}\n`);
  for (const title of [
    'For the archive: what goes out of sight',
    'Missing shots: told, but no picture of it',
  ])
    expect(outline).toContain(`## ${title}\n`);
  for (const title of ['Before it is closed in', 'Promised to viewers', 'Questions'])
    expect(next).toContain(`## ${title}\n`);
  expect(where).toContain('## Promised and not kept yet\n');
});

test('no words change the structure of what a real build gives, and no control character comes through', () => {
  const plain = pagesIn('plain').map(shapeOf);
  fc.assert(
    fc.property(hostileWords, (words) => {
      const pages = pagesIn(words);
      expect(pages.map(shapeOf)).toEqual(plain);
      for (const page of pages) expect(page).not.toMatch(/[^\P{Cc}\n]|[\u202a-\u202e\u2066-\u2069]/u);
    }),
    { numRuns: 30 },
  );
});
