/** Things that fail, stick or come up short, and like words that tell of no trouble. */
import { describe, expect, test } from 'vitest';
import { readMemo } from '../../src/language/pipeline.ts';

const CONTEXT = { units: 'metric', region: 'GB', recordedAt: '2026-06-10T18:00:00+01:00' } as const;
const notesOf = (text: string) => readMemo(text, CONTEXT).notes;

describe('troubles', () => {
  test.each([
    ['The rail I cut is 10 mil short.', ['The rail I cut is 10 mil short']],
    ['The rail I cut is too long.', ['The rail I cut is too long']],
    ['The rail is too long.', ['The rail is too long']],
    ['The rail is painfully slow.', ['The rail is painfully slow']],
    ['Ten mil too long.', ['Ten mil too long']],
    ["It's too long.", ["It's too long"]],
    ["The door won't close.", ["The door won't close"]],
    ["The door won't close because the frame is out.", ["The door won't close"]],
    ["The glue won't cure.", ["The glue won't cure"]],
    ["The bracket won't hold a screw.", ["The bracket won't hold a screw"]],
    ["The pump won't start.", ["The pump won't start"]],
    ['The tank leaked.', ['The tank leaked']],
    ['The ply delaminates.', ['The ply delaminates']],
    ['The ply delaminated.', ['The ply delaminated']],
    ['The thread stripped.', ['The thread stripped']],
    ['The bolt broke.', ['The bolt broke']],
    ['It broke.', ['It broke']],
    ['The screws rust.', ['The screws rust']],
    ['These screws rust through.', ['These screws rust through']],
    ['The pump keeps tripping.', ['The pump keeps tripping']],
    ["There's water coming in.", ["There's water coming in"]],
    ["There's a board gone.", ["There's a board gone"]],
    ["There's a board out of true.", ["There's a board out of true"]],
    ["There's two slates slipped.", ["There's two slates slipped"]],
    ["The glue hasn't set.", ["The glue hasn't set"]],
    ["The glue hasn't set properly.", ["The glue hasn't set properly"]],
    ["I'm two boards short.", ["I'm two boards short"]],
    ['Two boards short.', ['Two boards short']],
    ['The inspector failed the wiring.', ['The inspector failed the wiring']],
    ['They sent the wrong glass.', ['They sent the wrong glass']],
    ['I got the wrong glass.', ['I got the wrong glass']],
    ['They sent me one short.', ['They sent me one short']],
    ['The pump has a leak.', ['The pump has a leak']],
    ['The pump developed a fault.', ['The pump developed a fault']],
    ['The pump is missing.', ['The pump is missing']],
    ['The rail is stuck.', ['The rail is stuck']],
    ['The panel is bent.', ['The panel is bent']],
    ['The panel is broken.', ['The panel is broken']],
  ])('"%s" is read', (text, read) => expect(notesOf(text).problems.map(({ quote }) => quote)).toEqual(read));

  test.each([
    'The door will close.',
    "I planed it so it doesn't rub.",
    "The glue won't cure below ten degrees.",
    "We can't work in metres.",
    'The tank never leaked.',
    'I leaked.',
    'The old rusted tank sits outside.',
    'I stripped the wax.',
    'Stripped the wax.',
    'Screws rust.',
    'The pump keeps running.',
    'The pump keeps going.',
    'I keep tripping.',
    "I'm two metres tall.",
    'The inspector passed the wiring.',
    'I failed the test.',
    'I failed it.',
    'I got the right glass.',
    "I'm missing out on the sun.",
    'The frame is ripped out.',
  ])('"%s" tells none', (text) => expect(notesOf(text).problems).toEqual([]));
});
