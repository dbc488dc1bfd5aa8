import { describe, expect, test } from 'vitest';
import { wordsOf } from '../../../src/speech/recogniser/recognised.ts';
import { recognisedIn } from '../../../src/speech/recogniser/sherpa-recogniser.ts';
import { recognisedInJson } from '../../../src/speech/recogniser/whisper-recogniser.ts';

const part = (text: string, startSeconds: number, endSeconds?: number) => ({
  text,
  startSeconds,
  ...(endSeconds === undefined ? {} : { endSeconds }),
});

describe('parts of words', () => {
  test.each([
    ['a space begins a word', [' the', ' bul', 'warks', ' lean', '.'], 'the bulwarks lean.'],
    ['a low bar stands for a space', ['▁the', '▁bul', 'warks'], 'the bulwarks'],
    ['two at signs go on', [' bul@@', ' warks', ' lean'], undefined],
    ['parts that spell something else give no times', [' the', ' bulwark'], undefined],
    ['no parts give no times', [], undefined],
  ])('%s', (_, texts, spelt) => {
    const words = wordsOf(
      spelt ?? 'the bulwarks lean',
      texts.map((text, at) => part(text, at)),
      9,
    );
    expect(words?.map(({ text }) => text).join(' ')).toBe(spelt);
  });

  test('a word lasts from its first part to the end of its last, and no longer than 0.4 s into a pause', () => {
    expect(wordsOf('oak keel', [part(' oak', 1), part(' ke', 3), part('el', 3.2)], 9)).toEqual([
      { text: 'oak', startSeconds: 1, endSeconds: 1.4 },
      { text: 'keel', startSeconds: 3, endSeconds: 3.6 },
    ]);
    expect(wordsOf('oak', [part(' oak', 1, 1.1)], 9)).toEqual([
      { text: 'oak', startSeconds: 1, endSeconds: 1.1 },
    ]);
  });
});

describe('answers of the sherpa-onnx runtime', () => {
  test('tokens with times become words', () => {
    const answer = {
      text: ' oak keel',
      tokens: [' oak', ' ke', 'el'],
      timestamps: [0.5, 1, 1.2],
      durations: [],
    };
    expect(recognisedIn(answer, 2)).toMatchObject({
      text: 'oak keel',
      words: [
        { text: 'oak', startSeconds: 0.5 },
        { text: 'keel', startSeconds: 1 },
      ],
    });
  });
  test('durations are taken where the model gives them', () => {
    const answer = { text: 'oak', tokens: ['▁oak'], timestamps: [0.5], durations: [0.16] };
    expect(recognisedIn(answer, 2).words).toEqual([{ text: 'oak', startSeconds: 0.5, endSeconds: 0.66 }]);
  });
  test('tokens without times are text alone', () => {
    expect(recognisedIn({ text: 'oak', tokens: ['oak'], timestamps: [] }, 2)).toEqual({ text: 'oak' });
  });
});

describe('what a whisper.cpp program writes', () => {
  const token = (text: string, from: number, to: number) => ({ text, offsets: { from, to }, id: 1, p: 0.9 });
  const json = (...segments: readonly unknown[]) => JSON.stringify({ transcription: segments });

  test('segments are joined, marks are left out, and words get their times', () => {
    const first = {
      text: ' The keel',
      tokens: [
        token('[_BEG_]', 0, 0),
        token(' The', 190, 320),
        token(' keel', 320, 860),
        token('[_TT_50]', 900, 900),
      ],
    };
    const second = {
      text: ' is 40 mm.',
      tokens: [
        token(' is', 1000, 1100),
        token(' 40', 1100, 1500),
        token(' mm', 1500, 1800),
        token('.', 1800, 1810),
      ],
    };
    expect(recognisedInJson(json(first, second), 4)).toEqual({
      text: 'The keel is 40 mm.',
      words: [
        { text: 'The', startSeconds: 0.19, endSeconds: 0.32 },
        { text: 'keel', startSeconds: 0.32, endSeconds: 0.86 },
        { text: 'is', startSeconds: 1, endSeconds: 1.1 },
        { text: '40', startSeconds: 1.1, endSeconds: 1.5 },
        { text: 'mm.', startSeconds: 1.5, endSeconds: 1.81 },
      ],
    });
  });
  test('control characters inside a text, which the program does not escape, hinder nothing', () => {
    expect(recognisedInJson('{"transcription": [{"text": " oak\u0007\n keel"}]}', 4)).toEqual({
      text: 'oak keel',
    });
  });
  test.each(['[]', '{}', '{"transcription": 5}', 'null', 'no JSON'])('%s is an error', (text) => {
    expect(() => recognisedInJson(text, 4)).toThrow();
  });
  test('no talk is an empty text', () => {
    expect(recognisedInJson(json(), 4)).toEqual({ text: '' });
  });
});
