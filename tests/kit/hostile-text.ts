/** Texts that nobody dictates: made to break a reader, or to slow it down. Seeded by fast-check. */
import fc from 'fast-check';

/** Words that plain objects of the language answer to. */
const OBJECT_PARTS = ['constructor', '__proto__', 'toString', 'valueOf', 'hasOwnProperty', 'then', 'length'];

const NUMBERISH =
  '1 2 12 3/8 1/2 ½ 1,220 2.4 7\'4" 6" 0 007 1e9 one two twelve hundred thousand million half quarter a an the of by and to or point oh double couple'.split(
    ' ',
  );
const TALK =
  'mil mm inch inches foot feet metre kilos pounds degrees plus or minus give take between at least no more than about not no sorry scratch that wide high deep shelf door bench if would until before because need to decided order done cut is was it that the same again'.split(
    ' ',
  );
const MARKS = [...'.,;:!?-–—/\\\'"’“”()[]{}<>|*_#@&%$£€°²³½⅜ \t\n\r\u0000\u001b\u202e\u200d\ufeff\ufffd'];
/** Orders to a terminal, whole and broken off, with words in them. */
const SEQUENCES = [
  '\u001b]0;evil\u0007',
  '\u001b]52;c;ZXZpbA==\u001b\\',
  '\u001b[31m',
  '\u001b[2J',
  '\u001bPevil\u001b\\',
  '\u009d0;evil\u009c',
  '\u001b]0;evil',
  '\u001b]8;;evil\u0007link\u001b]8;;\u0007',
];
const SCRIPTS = [...'äßéñøłğıİſKаяжλωשלוםמرحباनमस्ते漢字かなカナ한글ไทย١٢٣①Ⅳ𝟙𝟜😀👩‍🔧🇬🇧e\u0301\ud800\udc00'];

const piece = fc.oneof(
  { weight: 4, arbitrary: fc.constantFrom(...NUMBERISH) },
  { weight: 4, arbitrary: fc.constantFrom(...TALK) },
  { weight: 2, arbitrary: fc.constantFrom(...MARKS) },
  { weight: 1, arbitrary: fc.constantFrom(...SCRIPTS) },
  { weight: 1, arbitrary: fc.constantFrom(...SEQUENCES) },
  { weight: 1, arbitrary: fc.constantFrom(...OBJECT_PARTS) },
  { weight: 1, arbitrary: fc.string({ unit: 'binary', maxLength: 12 }) },
);

/** One short run said over and over: what makes a careless pattern look everywhere again. */
const repeated = fc
  .tuple(
    fc.array(piece, { minLength: 1, maxLength: 4 }),
    fc.constantFrom('', ' ', '-', ', ', '/'),
    fc.nat(1900),
  )
  .map(([parts, joint, length]) => {
    const one = parts.join(joint) + joint || 'x';
    return one.repeat(Math.ceil((length + 1) / one.length));
  });
const mixed = fc
  .tuple(fc.array(piece, { maxLength: 300 }), fc.constantFrom('', ' '))
  .map(([parts, joint]) => parts.join(joint));
const nested = fc
  .tuple(fc.constantFrom('(', '"', "'", '1/', '2-', 'the ', 'of a ', 'not '), fc.nat(900), piece)
  .map(([open, depth, end]) => open.repeat(depth) + end);

/** Hostile texts of less than 2 kB (1,999 UTF-16 units). */
export const hostileText = fc
  .oneof(repeated, mixed, nested, fc.string({ unit: 'binary', maxLength: 400 }))
  .map((text) => text.slice(0, 1999));

/** Long texts in one line, by name: a memo of 2 MB without an end in sight. */
export const LONG_LINES: readonly (readonly [name: string, text: string])[] = [
  ['digits', '1'],
  ['commas', ','],
  ['blanks', ' '],
  ['letters', 'a'],
  ['and and and', 'and '],
  ['twenty twenty', 'twenty '],
  ['a half of a half of', 'a half of '],
  ['1/1/1/1', '1/'],
  ['1,1,1', '1,'],
  ['1.1.1', '1.'],
  ['quotes', '"'],
  ["n'n'n'", "n'"],
  ["'s's's", "'s"],
  ['1a1a1a', '1a'],
  ['the bench is 40 mm wide and', 'the bench is 40 mm wide and '],
  ['five by five by', 'five by '],
  ['no sorry no sorry', '40 mil no sorry '],
  ['NUL', '\u0000'],
  ['right to left', '\u202e'],
  ['a lone surrogate', '\ud800'],
  ['emoji', '👩‍🔧'],
  ['Chinese', '漢字'],
  ['hyphens', 'a-'],
].map(([name, unit]) => [name as string, (unit as string).repeat(Math.ceil(2e6 / (unit as string).length))]);

/** Paragraphs in other languages, of our own; none names a quantity in English. No figure may come of them. */
export const OTHER_LANGUAGES: readonly string[] = [
  'Heute habe ich die Bank gehobelt und danach die Klappe eingepasst. Morgen kommt das Holz.',
  "Aujourd'hui nous avons peint la coque et rangé l'atelier. Il faut encore poncer le pont.",
  'Hoy lijamos la cubierta y mañana pintamos la puerta. Falta el barniz.',
  'Oggi abbiamo montato la porta e domani arriva il legno dalla segheria.',
  'Idag hyvlade jag bordet och sedan satte jag in dörren. Fönstret väntar.',
  'Dzisiaj pomalowaliśmy drzwi, a jutro przyjedzie drewno na podłogę.',
  'Сегодня мы строгали доску и красили дверь. Завтра приедет дерево.',
  'היום צבענו את הדלת ומחר יגיע העץ לסדנה.',
  'اليوم طلينا الباب وغدا يصل الخشب إلى الورشة.',
  '今日は扉を塗って、明日は木材が届きます。',
  '今天我们刷了门，明天木头会到。',
  '오늘은 문을 칠했고 내일은 나무가 도착합니다.',
  'आज हमने दरवाज़ा रंगा और कल लकड़ी आएगी।',
];
