/** Jobs told in few words, plans that are no job of the speaker's, and choices told as what there will be. */
import { describe, expect, test } from 'vitest';
import { notesTold as notesOf } from '../kit/told.ts';

const jobsOf = (text: string) => notesOf(text).tasks.map(({ gist }) => gist);

describe('a job', () => {
  test.each([
    ["The engine's getting rebuilt next week.", "The engine's getting rebuilt next week"],
    ["I'm going to have to sand the deck.", 'Sand the deck'],
    ['Twelve holes to drill.', 'Twelve holes to drill'],
    ['Twelve holes to be drilled.', 'Twelve holes to be drilled'],
    ['Two more boards to fit.', 'Two more boards to fit'],
    ['Just the sink to fit.', 'The sink to fit'],
    ['Another coat to go on.', 'Another coat to go on'],
    ['Need to fit the sink.', 'Fit the sink'],
    ['Need to fit out the galley.', 'Fit out the galley'],
    ['Need to think about the galley.', 'Think about the galley'],
    ['Need to come back to the galley.', 'Come back to the galley'],
    ['The stove wants its door rehanging.', 'The stove wants its door rehanging'],
    ["That's a job for tomorrow.", "That's a job"],
    ["It's one for the weekend.", "It's one for the weekend"],
    ["We'll have to move the sink in the corner.", 'Move the sink in the corner'],
    ["We'll have the sink done by Friday.", 'Have the sink done by Friday'],
  ])('"%s"', (text, gist) => expect(jobsOf(text)).toEqual([gist]));
});

describe('no job', () => {
  test.each([
    "The engine's getting used to it.",
    "The engine's getting tired.",
    'The boards are getting delivered on Friday.',
    "He's getting married.",
    "I'm going to show the deck.",
    "I'm going to leave the deck.",
    'Two hours to fit the boards.',
    'The last to go.',
    'Five to go.',
    'Need to think.',
    'The slates need to land.',
    "The stove doesn't want its door rehanging.",
    'My brother wants his hair cutting.',
    "We'll usually have the tea at four.",
  ])('"%s"', (text) => expect(jobsOf(text)).toEqual([]));
});

describe('a choice told as what there will be', () => {
  test.each([
    ["We'll have the sink in the corner.", ["We'll have the sink in the corner"]],
    ["She'll have a brass tap instead.", ["She'll have a brass tap instead"]],
    ['We talked it over, the bath stays.', ['the bath stays']],
    ['Oak for the floor. Decided.', ['Oak for the floor. Decided']],
    ["She'll have a brass tap.", []],
    ["We'll have to move the sink in the corner.", []],
    ["We'll have the sink done by Friday.", []],
    ["We'll usually have the tea at four.", []],
  ])('"%s"', (text, quotes) => expect(notesOf(text).decisions.map(({ quote }) => quote)).toEqual(quotes));
});

describe('done, told by where it went and whom it was told', () => {
  test.each([
    'Got hold of the plumber',
    'Got the plumber on the phone',
    'I let the inspector know',
    'The panel went on nicely',
    'The panel went on in two pieces',
  ])('"%s"', (text) => expect(notesOf(`${text}.`).done.map(({ quote }) => quote)).toEqual([text]));

  test.each([
    'I got the blue kettle.',
    'I let the dog out.',
    'He went on nicely.',
    'It went fine.',
    'It went in with a tap.',
    'The rails came in from the mill.',
    'The video went up at four.',
  ])('"%s" is none', (text) => expect(notesOf(text).done).toEqual([]));
});

describe('what is promised to be shown', () => {
  test.each([
    ["I said I'd show you the joint on Friday.", 'Show you the joint on Friday', '2026-06-12'],
    ["I told you I'd post the plans tomorrow.", 'Post the plans tomorrow', '2026-06-11'],
    ['The video is out on Friday.', 'The video is out on Friday', '2026-06-12'],
    ["I said I'd show you the joint.", 'Show you the joint', undefined],
    ["I'm going to show the deck.", 'Show the deck', undefined],
  ])('"%s"', (text, gist, due) =>
    expect(notesOf(text).promises.map((each) => [each.gist, each.due])).toEqual([[gist, due]]),
  );

  test('but a bath that is out is none', () => {
    expect(notesOf('The bath is out on Friday.').promises).toEqual([]);
  });
});

describe('goods on their way', () => {
  test.each([
    ['The stove is another three weeks.', 'stove', '2026-07-01'],
    ["I ordered the stove. It's another three weeks.", 'stove', '2026-07-01'],
    ["He'll drop the glass off on the 24th.", 'glass', '2026-06-24'],
    ['The boards are getting delivered on Friday.', 'boards', '2026-06-12'],
  ])('"%s"', (text, item, expected) =>
    expect(notesOf(text).arrivals.map((each) => [each.item, each.expected])).toEqual([[item, expected]]),
  );

  test.each([
    "It's two weeks away.",
    "The stove isn't three weeks off.",
    'Drop it off on the 24th.',
    "I'll drop it off on the 24th.",
    "The courier didn't turn up with the bath.",
  ])('"%s" tells of none', (text) => expect(notesOf(text).arrivals).toEqual([]));
});
