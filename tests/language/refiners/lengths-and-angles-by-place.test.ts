/** What a bare number is by what stands around it: cables, bends, room sizes, bolts, limits, and what is only supposed. */
import { describe, expect, test } from 'vitest';
import { readMemo } from '../../../src/language/pipeline.ts';

const CONTEXT = { units: 'metric', region: 'GB', recordedAt: '2026-06-10T18:00:00+01:00' } as const;
const figuresOf = (text: string) =>
  readMemo(text, CONTEXT).notes.figures.map(({ value, unit }) => `${value} ${unit}`);

describe('cables of circuits', () => {
  test.each([
    ['Sockets in 2.5 mm2, cooker on six.', ['2.5 mm2', '6 mm2']],
    ['Cooker on six mil twin and earth and the shower on ten.', ['6 mm2', '10 mm2']],
    ['Lights on 1.5.', ['1.5 mm2']],
    ['Lights in 1.5.', ['1.5 mm2']],
    ['Lights inside 1.5.', ['1.5 m']],
    ['Lights onto 1.5.', ['1.5 m']],
    ['The wiring for the socket on four.', []],
  ])('"%s"', (text, read) => expect(figuresOf(text)).toEqual(read));
});

describe('how far something is bent', () => {
  test.each([
    ['The pipe has a bend of 45.', ['45 deg']],
    ['The pipe has a bend over 30, and a brace.', ['30 deg']],
    ['The pipe bends at 45.', ['45 deg']],
    ['The bevel is at 30 and holds.', ['30 deg']],
    ['The mitre is cut to 22.5.', ['22.5 deg']],
    ['The pipe bends at 45 mil.', ['45 mm']],
    ['The elbow moreover 45.', ['45 mm']],
    ['The elbow is flat 45.', ['45 mm']],
    ['The pipe bends at 47.', ['47 mm']],
    ['The mitre thereof 22.5.', ['22.5 mm']],
  ])('"%s"', (text, read) => expect(figuresOf(text)).toEqual(read));
});

describe('metres told figure by figure', () => {
  test.each([
    ['Room is 6.1 long and two oh eight wide.', ['6.1 m', '2.08 m']],
    ['The room is 6.1 metres long and two oh eight wide.', ['6.1 m', '2.08 m']],
    ['The room is 3.2 metres long and four fifteen wide.', ['3.2 m', '4.15 m']],
    ['The room is 6.1 metres long, two oh eight wide.', ['6.1 m', '2.08 m']],
    ['The room is 6.1 metres long, and by two oh eight wide.', ['6.1 m', '208 mm']],
    ['The room is 3.2 metres long by four fifteen.', ['3.2 m', '4.15 m']],
    ['The room is 6.1 metres long and I would say two oh eight wide.', ['6.1 m', '208 mm']],
    ["The tank weighs 6.1 kilos and it's two oh eight wide.", ['6.1 kg', '208 mm']],
    ['The room is four fifteen wide and 3.2 metres long.', ['415 mm', '3.2 m']],
  ])('"%s"', (text, read) => expect(figuresOf(text)).toEqual(read));
});

describe('what is only supposed', () => {
  test.each([
    ["If the ridge was at six metres I'd have a gallery.", []],
    ['If the ridge was at six metres we could have a gallery.', []],
    ["If the ridge was at six metres. I'd have a gallery.", ['6 m']],
    ['If the ridge is at six metres I have a gallery.', ['6 m']],
    ['The ridge is at six metres.', ['6 m']],
    ["If the ridge was at six metres the old stove from the barn and the bath fits, I'd go.", ['6 m']],
  ])('"%s"', (text, read) => expect(figuresOf(text)).toEqual(read));
});

describe('what was told or written before', () => {
  test.each([
    ["I'd written 48 on the sheet in March, it's 46.", ['46 mm']],
    ["I wrote 48 on the sheet, it's 46.", ['46 mm']],
    ["I gave them 40 mil, it's 45 mil.", ['45 mm']],
    ["I said 40 mil, it's 45 mil.", ['45 mm']],
    ['They told you eighteen foot.', ['18 ft']],
    ['I gave him eighteen foot of rope.', ['18 ft']],
  ])('"%s"', (text, read) => expect(figuresOf(text)).toEqual(read));
});

describe('what is had', () => {
  test.each([
    ["I've got 40 to spare.", ['40 mm']],
    ["There's only forty between them.", ['40 mm']],
    ["I've barely forty behind the door.", ['40 mm']],
    ['That leaves us 40 behind the door.', ['40 mm']],
    ["I've lonely forty behind the door.", []],
    ["I've commonly forty behind the door.", []],
  ])('"%s"', (text, read) => expect(figuresOf(text)).toEqual(read));
});

describe('torques of bolts', () => {
  const bolts = 'Head bolts at 60 newton metres.';
  test.each([
    ['Head bolts again, sixty five this time.', ['65 N.m']],
    ['Head bolts again, sixty five.', ['65 N.m']],
    ['Second pass, ninety.', ['90 N.m']],
    ['Head bolts again, sixty five that time.', []],
    ['Head bolts, sixty five this time.', []],
    ['Second pass, ninety boards.', ['90 1']],
  ])('"%s"', (text, read) => expect(figuresOf(`${bolts} ${text}`)).toEqual(['60 N.m', ...read]));

  test.each(['Head bolts again, sixty five this time.', 'Sixty five on the head bolts.'])(
    '"%s" alone is left alone',
    (text) => expect(figuresOf(text)).toEqual([]),
  );
});

describe('measured against a limit', () => {
  test.each([
    ['Not more than nine metres. I measured eleven.', ['9 m', '11 m']],
    ['Not more than nine metres. I measured eleven boards.', ['9 m', '11 1']],
    ['Not more than nine metres. They measured eleven.', ['9 m', '11 mm']],
    ['Nine metres. I measured eleven.', ['9 m', '11 mm']],
  ])('"%s"', (text, read) => expect(figuresOf(text)).toEqual(read));
});

describe('gauges and hundreds', () => {
  test.each([
    ['The sheet is 0.9 mm, that is a 20 gauge.', ['0.9 mm']],
    ["The sheet is 0.9 mm, that's a twenty.", ['0.9 mm']],
    ["The sheet is 6 mm, that's a twenty.", ['6 mm', '20 mm']],
    ['hundred and eighteen mil to the post.', ['118 mm']],
    ['A few hundred and two more.', []],
    ['Hundred and a bit of gravel.', []],
  ])('"%s"', (text, read) => expect(figuresOf(text)).toEqual(read));
});
