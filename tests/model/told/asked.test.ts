/** Which figures a question is about. */
import { expect, test } from 'vitest';
import { answerOf } from '../../../src/model/answer.ts';
import { ToldStory } from '../../kit/told-story.ts';

const told = () =>
  new ToldStory().hear(
    'The old chapel door opening is 838 millimetres wide. The pantry shelf is 300 millimetres deep. The bench is 900 millimetres high. The bench top is 40 millimetres thick.',
  );
const asked = (question: string) =>
  answerOf(told().project.rows, question, []).figures.map(
    ({ item, attribute, value }) => `${item} ${attribute} ${value}`,
  );

test.each([
  ['how high is the bench', ['bench height 900']],
  ['how deep is the pantry shelf', ['pantry shelf depth 300']],
  ['how wide is the door', ['chapel door opening width 838']],
  ['how high is the door', []],
  ['how wide is the hatch', []],
])('"%s"', (question, figures) => {
  expect(asked(question)).toEqual(figures);
});
