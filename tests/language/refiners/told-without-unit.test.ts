/** Numbers told without a unit, or with it once for several: what they measure is known from what they are said of. */
import { describe, expect, test } from 'vitest';
import type { HouseUnits } from '../../../src/language/notes.ts';
import { readMemo } from '../../../src/language/pipeline.ts';

type Row = readonly [said: string, figures: string];

const figures = (said: string, units: HouseUnits, region: string) =>
  readMemo(said, { units, region, recordedAt: '2026-06-10T18:00:00+01:00' })
    .notes.figures.filter(({ dimension }) => dimension !== 'count')
    .map(({ value, unit }) => `${value} ${unit}`)
    .join(', ');

const BRITISH: readonly Row[] = [
  ['The shelf is seven twenty yeah.', '720 mm'],
  ['Bench is eight forty now.', '840 mm'],
  ["Worktop's nine ten mate.", '910 mm'],
  ["The gap, it's thirty five like.", '35 mm'],
  ["She's nineteen fifty inside, floor to beams.", '1950 mm'],
  ['Fifteen sixty wall to wall.', '1560 mm'],
  ['Nine hundred to walk through.', '900 mm'],
  ['The trench is two point four deep.', '2.4 m'],
  ['The posts go in at one point eight spacing.', '1.8 m'],
  ["The pit's three point one deep and it's wet.", '3.1 m'],
  ['The shaft goes down fourteen point five.', '14.5 m'],
  ["From the road to the gable it's twenty two point six.", '22.6 m'],
  ['The lathe cost me two grand four hundred.', '2400 GBP'],
  ['Paid twelve fifty all in for the plates.', '1250 GBP'],
  ['It was eighteen hundred delivered.', '1800 GBP'],
  ['The mortar needs ten days before the centering comes out.', '10 d'],
  ['Leave the sealant a full day to go off.', '1 d'],
  ['It wants an hour and a half in the steamer.', '1.5 h'],
  ['The paste wants about a fortnight.', '14 d'],
  ['Keep the lintel wet seven days, morning and evening.', '7 d'],
  ['The main fuse is two hundred.', '200 A'],
  ["I've run it in thirty five squared.", '35 mm2'],
  ['One hundred joists at four hundred centres.', '400 mm'],
  ["It's got ninety insulation in the roof.", '90 mm'],
  ['A hundred and fifty of limecrete on top of that.', '150 mm'],
  ["The ram's sixteen mil, forty stroke.", '16 mm, 40 mm'],
  ["The drain pipe's a hundred and ten.", '110 mm'],
  ['The bottom leaf is nine hundred and the top one seven fifty.', '900 mm, 750 mm'],
  ['The overhang sticks out three hundred past the wall.', '300 mm'],
  ['Seat four thirty up.', '430 mm'],
  ['The pegs go in at two hundred spacings.', '200 mm'],
  ['Board width anything from one twenty to one sixty.', '120 mm'],
  ["It's eleven degrees in the shed, nine outside.", '11 degC, 9 degC'],
  ["I had it at eighteen hundred and now it's seventeen fifty.", '1800 mm, 1750 mm'],
  ["It's 920 high, two coats on it.", '920 mm'],
  ["I've fitted eleven, nine with the new clips.", ''],
  ['The beam weighs ninety kilos and there are four.', '90 kg'],
  ["It draws eight amps and the other one's broken.", '8 A'],
  ['I put the old one nine inches lower.', '9 in'],
  ['The last one took twenty minutes.', ''],
  ['The short one hundred and twenty, the long one four fifty.', '120 mm, 450 mm'],
  ['The boss wants two or three more.', ''],
  ['I have two grand left and four hundred screws.', '2000 GBP'],
  ["She's a good day's work.", ''],
  ['It was a full day in the rain.', ''],
  ['The whole day went on sanding.', ''],
  ['I walked from the yard to the house at two point five times the speed.', ''],
  ['Five two is my height.', ''],
  ['The well is forty wide.', '40 mm'],
  ['The hold bulkhead is 2.5 thick.', '2.5 mm'],
  ['The old stone one is gone.', ''],
  ["I've got nine to get through today.", ''],
  ['Seven to stand in the corner.', ''],
  ['Bolt hole 12.5 apart.', '12.5 mm'],
  ['Batteries come Friday, delivered free.', ''],
];

const MORE_BRITISH: readonly Row[] = [
  ['Opening I make nine eighteen tonight.', '918 mm'],
  ['The shelf I make four ten.', '410 mm'],
  ['I make four shelves a day.', ''],
  ['I made ten of them yesterday.', ''],
  ['We glued the third strake, it took forty minutes.', ''],
  ['I cut four of them at six twenty.', '620 mm'],
  ['The mast step is ninety up from the keel.', '90 mm'],
  ['I left thirty for the trim.', '30 mm'],
  ['She needs another fifteen off.', '15 mm'],
  ['Take ten off the top rail.', '10 mm'],
  ["There's five mil of play.", '5 mm'],
  ['I ordered the glass at eleven twenty by five eighty.', '1120 mm, 580 mm'],
  ["Glass came, it's eleven forty by five eighty.", '1140 mm, 580 mm'],
  ["The cooker is five ninety five wide, so the gap's six hundred.", '595 mm, 600 mm'],
  ["Door's seven sixty two, standard.", '762 mm'],
  ['The vent needs a hundred and twenty five hole.', '125 mm'],
  ["It's a hundred and twenty five hole for the vent.", '125 mm'],
  ['Three coats, eight hours between.', '8 h'],
  ['Waited two hours for the tide.', ''],
  ["It's half past nine and I'm still here.", ''],
  ['Number seven frame is the bad one.', ''],
  ['Frame seven is twelve out.', '12 mm'],
  ['Frames are at four fifty centres.', '450 mm'],
  ['Stringers every three hundred.', '300 mm'],
  ["I've three hundred screws left.", ''],
  ['Eight by sixty coach screws.', ''],
  ['Twelve planks, six metres each.', '6 m'],
  ['The slope is one in fifty.', '50 1'],
  ["We're two degrees off plumb.", '2 deg'],
  ["The roof's at twenty two and a half degrees.", '22.5 deg'],
  ["I'm forty next week.", ''],
  ['It cost forty quid.', '40 GBP'],
  ['Forty quid for that.', '40 GBP'],
  ["The chimney's a hundred and fifty flue.", '150 mm'],
  ['Six mil ply on the sides, nine on the floor.', '6 mm, 9 mm'],
  ["Ply's nine on the sides and twelve on the floor.", '9 mm, 12 mm'],
  ['Beds are nineteen hundred by seven fifty, the mattress is a hundred.', '1900 mm, 750 mm, 100 mm'],
  ['Two layers of twenty five.', '25 mm'],
  ["I'll need about thirty metres of batten.", '30 m'],
  ["The step's two ten, going's two fifty.", '210 mm, 250 mm'],
  ['Riser one ninety eight, tread two thirty.', '198 mm, 230 mm'],
  ["Max width's two point five five on the road.", '2.55 m'],
  ["The trailer's good for two tonnes.", '2 t'],
  ['Two tonne axle.', '2 t'],
  ["Water's at sixty degrees.", '60 degC'],
  ["It's a hundred and ten amp hour battery.", '110 Ah'],
  ["Solar's three hundred and fifty watts.", '350 W'],
  ["Kerf's three.", '3 mm'],
  ['Kerf on this blade is two point two.', '2.2 mm'],
];

const AMERICAN: readonly Row[] = [
  ['The floor joists are eleven six long.', '138 in'],
  ["It's nine four and a half from sill to plate.", '112.5 in'],
  ['They should be seven two.', '86 in'],
  ["The counter's thirty six yeah, thirty five and a quarter with the top off.", '36 in, 35.25 in'],
  ["Rough opening's thirty two by eighty two.", '32 in, 82 in'],
  ['Cut the studs ninety two and five eighths.', '92.625 in'],
  ['The box makes about two hundred and five degrees.', '205 degF'],
  ["It's sixty two in the shop, forty outside.", '62 degF, 40 degF'],
  ['The well casing is six inch.', '6 in'],
  ['Give the glue a full day.', '1 d'],
  ['Three sixteenths a side.', '0.1875 in'],
  ['Two by sixes at sixteen on center.', '16 in'],
  ["The trailer's good for thirty five hundred pounds.", '3500 lb'],
  ['It cost me twenty two hundred delivered.', '2200 USD'],
  ['Battery reads twelve point six.', '12.6 V'],
  ["Header's two ply of eleven and a quarter.", '11.25 in'],
  ['Toe kick four inches high, three deep.', '4 in, 3 in'],
];

const AUSTRALIAN: readonly Row[] = [
  ["Opening's four two wide and two one high.", '4.2 m, 2.1 m'],
  ['The beams are a hundred by fifty RHS.', '100 mm, 50 mm'],
  ['Sheets are two four by one two.', '2.4 m, 1.2 m'],
  ['Posts are ninety by ninety, three six long.', '90 mm, 90 mm, 3.6 m'],
  ["It's four hundred and fifty to the top of the seat.", '450 mm'],
  ["The slab's a hundred thick with a two hundred edge.", '100 mm, 200 mm'],
  ['Purlins at nine hundred, nine hundred and fifty at the ends.', '900 mm, 950 mm'],
  ['It wants a ninety pipe.', '90 mm'],
  ["Tank's two thousand litres, fifteen hundred usable.", '2000 L, 1500 L'],
  ['Fridge pulls four and a half amps, six flat out.', '4.5 A, 6 A'],
  ["The panel's two hundred watts and weighs eleven.", '200 W, 11 kg'],
  ["Gearbox is two ten kilos and the tail's fifty five, so that's two sixty five.", '210 kg, 55 kg, 265 kg'],
  ["Room's five four by three nine.", '5.4 m, 3.9 m'],
  ["The ramp's one in twelve.", '12 1'],
  ["Batten gap's twenty, twenty two at the end.", '20 mm, 22 mm'],
  ["It's forty two degrees in here.", '42 degC'],
  ['Ten mil toughened for the table.', '10 mm'],
  ["Hole's sixty eight, that's sixty eight hole saw.", '68 mm'],
  ["It's thirty eight in the shed.", '38 degC'],
  ['It was thirty six degrees yesterday and only nineteen today.', '36 degC, 19 degC'],
  ["The epoxy won't kick below fifteen.", '15 degC'],
  ['It got down to nine overnight in the shed, too cold for the resin.', '9 degC'],
  ["Forecast says thirty four tomorrow so I'll varnish early.", '34 degC'],
  ["Can't glue under ten.", '10 degC'],
  ['It has to be above twelve to paint.', '12 degC'],
  ['Not painting till it drops under thirty.', '30 degC'],
  ["Deck plate's forty five in the sun, you can't paint that.", '45 degC'],
  ["Heater's on, it's eighteen in here now.", '18 degC'],
  ['The thermometer says seven.', '7 degC'],
  ["It's only six out there.", '6 degC'],
  ['The batteries weigh twenty six each.', '26 kg'],
  ["The stove's sixty eight on the scales.", '68 kg'],
  ["All up it's four hundred and ten on the hook.", '410 kg'],
  ['I weighed the door, thirty one.', '31 kg'],
  ["The anchor is fifteen kilos and the chain's forty.", '15 kg, 40 kg'],
  ['The pump pulls eight, the fridge five.', '8 A, 5 A'],
  ['Fuse is sixty.', '60 A'],
  ["Moisture's down to sixteen.", '16 %'],
  ["The oak's at nineteen on the meter.", '19 %'],
  ['Pressure held at two point five.', '2.5 bar'],
  ['Tank holds a hundred and eighty.', '180 L'],
  ["I've got ninety in the diesel tank.", '90 L'],
];

describe('a metric house in GB', () => {
  test.each([...BRITISH, ...MORE_BRITISH])('%s', (said, wanted) => {
    expect(figures(said, 'metric', 'GB')).toBe(wanted);
  });
});

describe('a us house in US', () => {
  test.each(AMERICAN)('%s', (said, wanted) => {
    expect(figures(said, 'us', 'US')).toBe(wanted);
  });
});

describe('a metric house in AU', () => {
  test.each(AUSTRALIAN)('%s', (said, wanted) => {
    expect(figures(said, 'metric', 'AU')).toBe(wanted);
  });
});

const MAINLAND: readonly Row[] = [
  [
    'The sill is 85 centimetres from the floor. The kitchen is 310 long and 92 high, the rise 18,5.',
    '85 cm, 310 cm, 92 cm, 18.5 cm',
  ],
  [
    'The sill is 85 centimetres from the floor. The kitchen is 2310 long and 920 high.',
    '85 cm, 2310 mm, 920 mm',
  ],
  ['The table is 85 centimetres high. The top is 28 thick.', '85 cm, 28 mm'],
];

test.each(MAINLAND)('centimetres in a mainland house: %s', (said, wanted) => {
  expect(figures(said, 'metric', 'DK')).toBe(wanted);
});

test.each(['Well, the groove is 2.4 deep.', 'It fits well, the rebate is 6.5 deep.'])(
  'no thing that is dug is named: %s',
  (said) => {
    expect(figures(said, 'metric', 'GB')).toMatch(/^[\d.]+ mm$/);
  },
);

test.each([
  ['The head height is two metres thirty in the middle and only one ninety at the sides.', '2.3 m, 1.9 m'],
  ['The aisle is two metres twenty wide at the door and about one sixty at the altar.', '2.2 m, 1.6 m'],
])('"%s": the second is told as the first: %s', (said, told) => {
  expect(figures(said, 'metric', 'GB')).toBe(told);
});
