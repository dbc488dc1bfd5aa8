import { expect, test } from 'vitest';
import { nextView, spanView } from '../../../src/model/day-views.ts';
import { problemViews } from '../../../src/model/project-views.ts';
import { ToldStory } from '../../kit/told-story.ts';

const open = (story: ToldStory) =>
  nextView(story.project.rows, '2026-02-28').problems?.map((problem) => problem.gist);

test('a snag is among the next steps until it is said to be put right', () => {
  const story = new ToldStory().hear(
    'The roof leaks at the chimney. The saw blade is cracked.',
    'Swept the yard.',
  );
  expect(open(story)).toEqual(['The saw blade is cracked', 'The roof leaks at the chimney']);
  story.hear('I fixed the leak at the chimney.');
  expect(open(story)).toEqual(['The saw blade is cracked']);
  // A page of earlier days shows what was open then.
  const then = spanView(story.project.rows, '2026-02-01', '2026-02-02').next.problems;
  expect(then?.map(({ gist }) => gist)).toEqual([
    'The saw blade is cracked',
    'The roof leaks at the chimney',
  ]);
  const [leak] = problemViews(story.project.rows);
  expect([leak?.status, leak?.solvedBy?.memoId]).toEqual(['solved', 'm3']);
});

test.each([
  ['The hose leaks at the seacock.', 'I replaced the hose.'],
  ['The door is jammed.', 'The door has been planed and freed.'],
  ['The pump bracket is cracked.', 'I welded up the pump bracket, good as new.'],
])('"%s" is put right by "%s"', (snag, remedy) => {
  expect(open(new ToldStory().hear(snag, remedy))).toEqual([]);
});

test.each([
  ['The hose leaks at the seacock.', 'I painted the hose locker.'],
  ['The left hinge is bent.', 'I replaced the right hinge.'],
  ['The saw blade is cracked.', 'I sharpened the chisels.'],
  ['The roof leaks at the chimney.', 'I replaced the door.'],
])('"%s" is not put right by "%s"', (snag, deed) => {
  expect(open(new ToldStory().hear(snag, deed))).toHaveLength(1);
});

test('a person says that a snag is put right, and that it is not', () => {
  const story = new ToldStory().hear('The saw blade is cracked.');
  story.hand({ kind: 'problem-solved', problemId: 'm1.p1' });
  expect(open(story)).toEqual([]);
  story.hand({ kind: 'problem-reopened', problemId: 'm1.p1' });
  expect(open(story)).toEqual(['The saw blade is cracked']);
  story.hand({ kind: 'note-rejected', noteId: 'm1.p1' });
  expect(open(story)).toEqual([]);
});
