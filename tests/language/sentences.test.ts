import fc from 'fast-check';
import { expect, test } from 'vitest';
import { splitSentences } from '../../src/language/sentences.ts';

const sentencesOf = (text: string) => splitSentences(text).map(({ start, end }) => text.slice(start, end));
const clausesOf = (text: string) =>
  splitSentences(text).flatMap(({ clauses }) =>
    clauses.map((clause) =>
      [clause.opener, text.slice(clause.bodyStart, clause.end)].filter(Boolean).join(' > '),
    ),
  );

test.each([
  ['The shelf is 2.4 metres. It sags.', ['The shelf is 2.4 metres.', 'It sags.']],
  ["It's 6'10\" wide. Fine.", ["It's 6'10\" wide.", 'Fine.']],
  ['Use no. 8 screws. Not ten.', ['Use no. 8 screws.', 'Not ten.']],
  ['Is it square? Yes!', ['Is it square?', 'Yes!']],
  ['approx. 40 mil, e.g. the side rail. Done.', ['approx. 40 mil, e.g. the side rail.', 'Done.']],
  ['Bring it in. The rail is up.', ['Bring it in.', 'The rail is up.']],
  ['it was, well... about a metre', ['it was, well... about a metre']],
  ['Fit the rail\n\nOrder glue', ['Fit the rail', 'Order glue']],
  ['- cut the legs\n- order glue', ['cut the legs', 'order glue']],
  ['the rail sits on\ntwo brackets', ['the rail sits on\ntwo brackets']],
  ['the rail sits on\nTwo brackets', ['the rail sits on', 'Two brackets']],
  ['the rail sits on,\nTwo brackets', ['the rail sits on,\nTwo brackets']],
  ['the rail sits on;\nTwo brackets', ['the rail sits on;\nTwo brackets']],
  ['the rail sits on; \nTwo brackets', ['the rail sits on; \nTwo brackets']],
  ['* cut the legs\n* order glue', ['cut the legs', 'order glue']],
  ['• cut the legs\n• order glue', ['cut the legs', 'order glue']],
  ['1 cut the legs\n2 more', ['1 cut the legs\n2 more']],
  [
    'the long rail that runs all along the back of the shed sits\nTwo brackets',
    ['the long rail that runs all along the back of the shed sits', 'Two brackets'],
  ],
  [
    'the long rail that runs all along the back of the shed sits on\nTwo brackets',
    ['the long rail that runs all along the back of the shed sits on\nTwo brackets'],
  ],
  ['Cut it to 40 in. long.', ['Cut it to 40 in. long.']],
  ['Cut it to forty in. long.', ['Cut it to forty in. long.']],
  ['Bring the rail in. long ones too.', ['Bring the rail in.', 'long ones too.']],
  ['Cut it to 40 in. Long ones too.', ['Cut it to 40 in.', 'Long ones too.']],
  ['Cut it to 40 in. 12 more.', ['Cut it to 40 in. 12 more.']],
  ['Use no. screws.', ['Use no.', 'screws.']],
  ['Use nos. 8 and 10. Fine.', ['Use nos. 8 and 10.', 'Fine.']],
  ['It is approx.', ['It is approx.']],
  ['It was wide... It fits.', ['It was wide...', 'It fits.']],
  ['It was wide… it fits.', ['It was wide… it fits.']],
  ['It was wide… It fits.', ['It was wide…', 'It fits.']],
  ['(It was wide.) It fits.', ['It was wide.)', 'It fits.']],
  ['“It was wide.” It fits.', ['It was wide.”', 'It fits.']],
  ['Wide? yes! it fits.', ['Wide?', 'yes!', 'it fits.']],
])('%j is split into its sentences', (text, expected) => {
  expect(sentencesOf(text)).toEqual(expected);
});

test.each([
  [
    "I need to oil it, but I can't until the glue's dry.",
    ['I need to oil it', "but > I can't", "until > the glue's dry"],
  ],
  ['The rail is cut and sanded, 1,180 long', ['The rail is cut and sanded', '1,180 long']],
  ["the rail's up and the shelf's glued", ["the rail's up", "and > the shelf's glued"]],
  ['it is so heavy', ['it is so heavy']],
  ["I'll weld it, soon as I get gas", ["I'll weld it", 'soon as > I get gas']],
  ["pine rather than oak since it's light", ['pine', 'rather than > oak', "since > it's light"]],
])('%j is split into its clauses', (text, expected) => {
  expect(clausesOf(text)).toEqual(expected);
});

test('unpunctuated speech is cut at turns of speech, conjunctions and fresh subjects', () => {
  const text =
    "right so the top is sanded and i've oiled the legs it's looking good okay so next i need to order the glass by thursday because the frame's nearly ready i've also lost a hinge";
  expect(sentencesOf(text)).toEqual([
    "right so the top is sanded and i've oiled the legs it's looking good",
    "okay so next i need to order the glass by thursday because the frame's nearly ready i've also lost a hinge",
  ]);
  expect(clausesOf(text)).toContain("it's looking good");
  expect(clausesOf(text)).toContain("because > the frame's nearly ready");
  expect(clausesOf(text)).toContain("i've also lost a hinge");
});

test('a question is marked', () => {
  expect(splitSentences('Will it fit? It fits.').map(({ asks }) => asks)).toEqual([true, false]);
});

test('sentences and clauses lie in order inside the text, whatever the text', () => {
  fc.assert(
    fc.property(fc.string({ maxLength: 200, unit: 'grapheme' }), (text) => {
      let last = 0;
      for (const sentence of splitSentences(text)) {
        expect(sentence.start).toBeGreaterThanOrEqual(last);
        expect(sentence.end).toBeLessThanOrEqual(text.length);
        last = sentence.end;
        for (const clause of sentence.clauses) {
          expect(clause.start).toBeGreaterThanOrEqual(sentence.start);
          expect(clause.bodyStart).toBeLessThanOrEqual(clause.end);
          expect(clause.end).toBeLessThanOrEqual(sentence.end);
        }
      }
    }),
  );
});
