/**
 * What single words and phrases are taken for, before any project is asked: the thing and the way of a deed, names that mean
 * one thing, what a gate waits for, goods, sizes, what is written by hand. A change in words.txt is a change of what is
 * understood: look the diff over before it is kept with `-u`.
 */
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { ATTRIBUTES, DIMENSIONS, type Quantity } from '../../../src/language/notes.ts';
import { describeDeed } from '../../../src/model/described.ts';
import { answersGate, gateWords } from '../../../src/model/gate-words.ts';
import { dateGate, gateOf, isEarliest, saysCured, thingOf } from '../../../src/model/gates.ts';
import { bareGoods, isSameGoods, partsOf } from '../../../src/model/goods.ts';
import { likenessOf } from '../../../src/model/likeness.ts';
import { isToMeasure, thingsToMeasure } from '../../../src/model/measured-tasks.ts';
import { dimensionOf, mayBe, usualDimension } from '../../../src/model/measures.ts';
import { kinship, nameKey, nameStems, shapeOf } from '../../../src/model/names.ts';
import { numberText, unitSign } from '../../../src/model/quantity-words.ts';
import { isSeries } from '../../../src/model/series.ts';
import { telling } from '../../../src/model/telling.ts';
import { readWrittenFigure, readWrittenLimit } from '../../../src/model/written.ts';
import { inLine } from '../../kit/state-lines.ts';

const PHRASES = [
  'glued the rib to the frame',
  'the ribs are glued',
  'put the hatch back on',
  'took the hatch off',
  'ordered copper nails for the hull',
  'picked up the new glass from the yard',
  'the second coat of varnish on the mast',
  'measured the galley bulkhead again',
  'measure how wide the doorway is',
  'weigh the rudder',
  'rang the glazier about the rooflight',
  'the leak under the sink is fixed',
  'cut the left locker lid and the right one',
  'all the slates are on, bar the ridge',
  'half of the floor is down',
  'started on the wiring',
  'welded up the tank, it leaks at the corner',
  'ripped out the old lining',
  'replaced the washer in the tap',
  'cleaned the bilge',
  'wired the pump to the battery',
  'poured the slab',
  'hung the doors',
  'took the sofa to the tip',
  'sold the old stove',
  'sanded it',
  'oak arrives',
  'the oak boards are here',
  'paint dry',
  'primer has had 24 hours',
  'a week after the pour',
  'overnight',
  'after Friday',
  'until the 14th',
  'next week',
  'tomorrow',
  'the weekend',
  '2026-07-01',
  "it's above 10 degrees",
  'moisture below 15 percent',
  'Sam is free',
  'the inspector has been',
  'the boards are planed',
  'cable in',
  'a missing base for the lamp',
  'six lengths of larch, four by three',
  'tins of gloss and brushes',
  'two sheets of ply too',
];

const NAMES: readonly (readonly [string, string])[] = [
  ['bench top', 'bench'],
  ['bench', 'workbench'],
  ['left door', 'right door'],
  ['door', 'the doors'],
  ['galley window', 'window'],
  ['window opening', 'window'],
  ['front beam', 'back beam'],
  ['first joist', 'second joist'],
  ['stove flue', 'flue'],
  ['mast step', 'mast'],
  ['upper shelf', 'lower shelf'],
  ['axle', 'rear axle'],
  ['water tank', 'diesel tank'],
  ['hole for the pipe', 'pipe'],
  ['cabin', 'cabin floor'],
  ['berth', 'bunk'],
];

const QUANTITIES: readonly (readonly [Quantity, Quantity])[] = [
  [
    { value: 15, unit: 'mm' },
    { value: 50, unit: 'mm' },
  ],
  [
    { value: 915, unit: 'mm' },
    { value: 951, unit: 'mm' },
  ],
  [
    { value: 12, unit: 'mm' },
    { value: 12, unit: 'in' },
  ],
  [
    { value: 120, unit: 'mm' },
    { value: 1200, unit: 'mm' },
  ],
  [
    { value: 1.2, unit: 'm' },
    { value: 1.3, unit: 'm' },
  ],
  [
    { value: 13, unit: 'kg' },
    { value: 30, unit: 'kg' },
  ],
  [
    { value: 2440, unit: 'mm' },
    { value: 2400, unit: 'mm' },
  ],
  [
    { value: 600, unit: 'mm' },
    { value: 60, unit: 'cm' },
  ],
  [
    { value: 7, unit: 'ft' },
    { value: 11, unit: 'ft' },
  ],
];

const UNITS =
  'mm cm m ft in thou deg degC degF g kg t lb oz L gal m3 m2 ft2 V A Ah W kW Wh kPa bar psi N.m ft.lbf s min h d % rpm m/s mph GBP 1'.split(
    ' ',
  );

const WRITTEN = [
  'bench height = 900 mm',
  'bench height = 900 mm +- 2 mm',
  'bench height = bench top height - 38 mm',
  'bench height =',
  'bench = 900 mm',
  'bench height = 9o0 mm',
  'bench height = 900 kg',
  'door width at most 740 mm',
  'door width at least 600 mm',
  'shelf length between 1200 mm and 1300 mm',
  'shelf length between 1200 mm  and 1300',
  'shelf length between 1200 mm',
  'door width 740 mm',
  'roof weight at most 75 kg',
];

const CLAUSES = ['it reads so now', 'this morning it is showing', 'humidity in the shed', 'the worktop'];
const ITEMS = ['moisture', 'battery', 'tank level', 'diesel price', 'worktop', 'money spent'];

const set = (words: ReadonlySet<string>) => [...words].sort().join(' ') || '-';

function phraseLines(phrase: string): readonly string[] {
  const deed = describeDeed(phrase, phrase, `Before it. ${phrase}. After the stove.`);
  const { ways, words } = gateWords(phrase) as {
    ways?: ReadonlySet<string>;
    words: readonly { stem?: string }[];
  };
  const { things, plain } = telling(phrase, phrase);
  const gate = gateOf(phrase, { recordedAt: '2026-06-10T18:00:00+01:00', figures: [] });
  const answers = PHRASES.filter(
    (other) => other !== phrase && answersGate(gateWords(other), gateWords(phrase)),
  );
  return [
    `> ${phrase}`,
    `  deed: named ${set(deed.named)}; things ${set(deed.things)}; ways ${set(deed.actions)}; goes ${deed.goes ?? '-'}; weights ${[...deed.weights].map(([stem, weight]) => `${stem} ${weight}`).join(', ')}`,
    `  gate: ${inLine(gate)}; thing ${thingOf(phrase)}; words ${words.length}${ways ? ` ${set(ways)}` : ''}; earliest ${isEarliest(phrase)}; cured ${saysCured(phrase)}`,
    `  telling: things ${set(things)}; plain ${set(plain)}`,
    `  goods: ${bareGoods(phrase)}; parts ${partsOf(phrase).join(' | ')}`,
    ...(isToMeasure({ gist: phrase, quote: phrase } as never)
      ? [`  to measure: ${set(thingsToMeasure(phrase))}`]
      : []),
    ...(answers.length > 0 ? [`  answered by: ${answers.join(' | ')}`] : []),
  ];
}

const nameLine = ([one, other]: readonly [string, string]) =>
  `${one} / ${other}: ${kinship(one, other)}, ${kinship(other, one)}; same goods ${isSameGoods(one, other)}; key ${nameKey(one)}; stems ${nameStems(one).join(' ')}; ${inLine(Object.fromEntries(Object.entries(shapeOf(one)).map(([name, part]) => [name, part instanceof Set ? [...part] : part])))}`;

test('words are taken for what was looked over', async () => {
  const lines = [
    ...PHRASES.flatMap(phraseLines),
    '== names',
    ...NAMES.map(nameLine),
    '== slips',
    ...QUANTITIES.map(
      ([was, now]) => `${inLine(was)} -> ${inLine(now)}: ${inLine(likenessOf(was, now) ?? 'none')}`,
    ),
    '== measures',
    ...ATTRIBUTES.map(
      (attribute) =>
        `${attribute}: ${usualDimension(attribute)}; may be ${DIMENSIONS.filter((one) => mayBe(attribute, one)).join(' ')}; ${UNITS.map((unit) => `${unit} ${dimensionOf(attribute, unit) ?? '-'}`).join(', ')}`,
    ),
    '== numbers',
    ...UNITS.map(
      (unit) =>
        `${unit}: ${unitSign(unit)} ${[0, 0.046875, 1.5, 12, 1234.567, -3].map((value) => numberText(value, unit)).join(' | ')}`,
    ),
    '== series',
    ...ITEMS.flatMap((item) =>
      CLAUSES.map((clause) => {
        const kinds = DIMENSIONS.filter((dimension) => isSeries({ item, dimension } as never, clause));
        return `${item}, "${clause}": ${kinds.join(' ')}`;
      }),
    ),
    '== written',
    inLine(dateGate('2026-07-01')),
    ...WRITTEN.flatMap((text) => [
      `${text}: figure ${inLine(readWrittenFigure(text))}`,
      `${text}: limit ${inLine(readWrittenLimit(text, 'anything through it'))}`,
    ]),
  ];
  const file = fileURLToPath(new URL('./words.txt', import.meta.url));
  await expect(`${lines.join('\n')}\n`).toMatchFileSnapshot(file);
});
