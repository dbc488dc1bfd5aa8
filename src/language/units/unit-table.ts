import type { Dimension, UnitName } from '../notes.ts';

/** What a unit's spelling can mean before context settles it. */
export type UnitKey =
  | UnitName
  | 'mil'
  | 'pounds'
  | 'degrees'
  | 'ton'
  | 'dollars'
  | 'cents'
  | 'ounces'
  | 'quid'
  | 'local-money'
  | 'minutes-mark';

export interface UnitEntry {
  readonly key: UnitKey;
  /** Undefined while the unit is ambiguous. */
  readonly dimension?: Dimension;
  /** Spoken or written out: may follow any number. Hyphens are left out. */
  readonly spoken: readonly string[];
  /** Written short: only after digits. */
  readonly short?: readonly string[];
  /** Factor from the said unit to the unit that is kept, for spellings that the notes have no name for. */
  readonly factor?: number;
}

const SIZES = (stem: string) => [stem, `${stem}s`];
const METRES = (prefix: string) => [...SIZES(`${prefix}metre`), ...SIZES(`${prefix}meter`)];
const LITRES = (prefix: string) => [...SIZES(`${prefix}litre`), ...SIZES(`${prefix}liter`)];
const GRAMS = (prefix: string) => [...SIZES(`${prefix}gram`), ...SIZES(`${prefix}gramme`)];
const SQUARED = (units: readonly string[]) =>
  units.flatMap((unit) => [`square ${unit}`, `sq ${unit}`, `${unit} squared`]);
const CUBED = (units: readonly string[]) =>
  units.flatMap((unit) => [`cubic ${unit}`, `cu ${unit}`, `${unit} cubed`]);
const PER_HOUR = (units: readonly string[]) =>
  units.flatMap((unit) => [`${unit} an hour`, `${unit} per hour`]);
const PER_MINUTE = (units: readonly string[]) =>
  units.flatMap((unit) => [`${unit} a minute`, `${unit} per minute`]);
const MILS = ['mil', 'mill', 'mils', 'mills', 'milli', 'millis'];
const LINEAR = (units: readonly string[]) =>
  units.flatMap((unit) => [`linear ${unit}`, `lineal ${unit}`, `running ${unit}`, `lin ${unit}`]);
const FEET = ['foot', 'feet'];
/** A big unit as one word or two, as recognisers write it: "kilowatt hours", "kilo watt hours". */
const BIG = (prefix: string, units: readonly string[]) =>
  units.flatMap((unit) => [`${prefix}${unit}`, `${prefix} ${unit}`]);

const WATT_HOURS = ['watt hour', 'watt hours'];

/** Units by what people say and write. Long spellings win over short ones, so order does not matter here. */
export const UNIT_TABLE: readonly UnitEntry[] = [
  // Lengths
  { key: 'mm', dimension: 'length', spoken: [...METRES('milli'), ...METRES('milli ')], short: ['mm', 'mms'] },
  {
    key: 'cm',
    dimension: 'length',
    spoken: [...METRES('centi'), ...METRES('centi '), 'centi', 'centis'],
    short: ['cm', 'cms'],
  },
  {
    key: 'm',
    dimension: 'length',
    spoken: [...METRES(''), ...LINEAR(METRES(''))],
    short: ['m', 'mtr', 'mtrs'],
  },
  { key: 'km', dimension: 'length', spoken: [...METRES('kilo'), 'klicks'], short: ['km', 'kms'] },
  {
    key: 'mm',
    dimension: 'length',
    factor: 0.001,
    spoken: [...SIZES('micron'), ...METRES('micro')],
    short: ['um', 'µm', 'μm'],
  },
  {
    key: 'mm',
    dimension: 'length',
    factor: 1e-6,
    spoken: METRES('nano'),
  },
  { key: 'cm', dimension: 'length', factor: 10, spoken: METRES('deci'), short: ['dm'] },
  {
    key: 'in',
    dimension: 'length',
    spoken: ['inch', 'inches', 'inchs', 'zoll', 'duim', 'tum', 'tommer'],
    short: ['in', 'ins', '"', "''"],
  },
  {
    key: 'ft',
    dimension: 'length',
    spoken: [...FEET, 'footer', 'footers', ...LINEAR(FEET)],
    short: ['ft', "'"],
  },
  { key: 'yd', dimension: 'length', spoken: SIZES('yard'), short: ['yd', 'yds'] },
  { key: 'mi', dimension: 'length', spoken: SIZES('mile'), short: ['mi'] },
  {
    key: 'thou',
    dimension: 'length',
    spoken: ['thou', 'thous', 'thousandth', 'thousandths', 'thousandths of an inch', 'thousandth of an inch'],
  },
  { key: 'mil', spoken: MILS },
  // Areas
  {
    key: 'mm2',
    dimension: 'area',
    spoken: [...SQUARED([...METRES('milli'), ...MILS]), 'square mm', 'sq mm', 'mm squared'],
    short: ['mm2', 'mm²', 'sqmm'],
  },
  {
    key: 'cm2',
    dimension: 'area',
    spoken: [...SQUARED(METRES('centi')), 'square cm', 'sq cm'],
    short: ['cm2', 'cm²'],
  },
  {
    key: 'm2',
    dimension: 'area',
    spoken: [...SQUARED(METRES('')), 'square m', 'sq m'],
    short: ['m2', 'm²', 'sqm'],
  },
  {
    key: 'ft2',
    dimension: 'area',
    spoken: [...SQUARED(FEET), 'square ft', 'sq ft'],
    short: ['ft2', 'ft²', 'sqft'],
  },
  { key: 'in2', dimension: 'area', spoken: [...SQUARED(['inch', 'inches']), 'sq in'], short: ['in2', 'in²'] },
  { key: 'yd2', dimension: 'area', spoken: [...SQUARED(SIZES('yard')), 'sq yd'], short: ['yd2', 'yd²'] },
  { key: 'km2', dimension: 'area', spoken: [...SQUARED(METRES('kilo')), 'square km'], short: ['km2', 'km²'] },
  { key: 'mi2', dimension: 'area', spoken: [...SQUARED(SIZES('mile')), 'sq mi'] },
  { key: 'acre', dimension: 'area', spoken: SIZES('acre') },
  { key: 'ha', dimension: 'area', spoken: SIZES('hectare') },
  // Volumes
  {
    key: 'mL',
    dimension: 'volume',
    spoken: [...LITRES('milli'), ...CUBED(METRES('centi')), 'c c'],
    short: ['ml', 'mls', 'cc', 'ccs', 'cm3', 'cm³'],
  },
  { key: 'L', dimension: 'volume', spoken: [...LITRES(''), ...SIZES('litter')], short: ['l', 'ltr', 'ltrs'] },
  { key: 'L', dimension: 'volume', factor: 0.01, spoken: LITRES('centi'), short: ['cl'] },
  { key: 'L', dimension: 'volume', factor: 1000, spoken: BIG('kilo', LITRES('')) },
  { key: 'L', dimension: 'volume', spoken: CUBED(BIG('deci', [...METRES('')])), short: ['dm3', 'dm³'] },
  // Spoons as cooks and makers of pots and sprays measure: 15 and 5 mL. Source: 21 CFR 101.9(b)(5)(viii), from memory.
  {
    key: 'mL',
    dimension: 'volume',
    factor: 15,
    spoken: [...SIZES('tablespoon'), ...SIZES('tablespoonful')],
    short: ['tbsp', 'tbsps'],
  },
  {
    key: 'mL',
    dimension: 'volume',
    factor: 5,
    spoken: [...SIZES('teaspoon'), ...SIZES('teaspoonful')],
    short: ['tsp', 'tsps'],
  },
  {
    key: 'm3',
    dimension: 'volume',
    spoken: [...CUBED(METRES('')), 'cube', 'cubes', 'cubic', 'kubik'],
    short: ['m3', 'm³'],
  },
  { key: 'ft3', dimension: 'volume', spoken: [...CUBED(FEET), 'cu ft'], short: ['ft3', 'ft³'] },
  { key: 'in3', dimension: 'volume', spoken: CUBED(['inch', 'inches']), short: ['in3', 'in³'] },
  { key: 'yd3', dimension: 'volume', spoken: CUBED(SIZES('yard')), short: ['yd3'] },
  { key: 'gal', dimension: 'volume', spoken: SIZES('gallon'), short: ['gal', 'gals'] },
  { key: 'qt', dimension: 'volume', spoken: SIZES('quart'), short: ['qt', 'qts'] },
  { key: 'pt', dimension: 'volume', spoken: SIZES('pint'), short: ['pt', 'pts'] },
  {
    key: 'floz',
    dimension: 'volume',
    spoken: ['fluid ounce', 'fluid ounces', 'fl oz', 'fluid oz'],
    short: ['floz'],
  },
  // Masses
  { key: 'g', dimension: 'mass', spoken: GRAMS(''), short: ['g', 'gm', 'gms', 'gsm'] },
  {
    key: 'kg',
    dimension: 'mass',
    spoken: [...GRAMS('kilo'), 'kilo', 'kilos', ...GRAMS('kilo ')],
    short: ['kg', 'kgs'],
  },
  { key: 'g', dimension: 'mass', factor: 0.001, spoken: GRAMS('milli'), short: ['mg'] },
  { key: 'g', dimension: 'mass', factor: 1e-6, spoken: GRAMS('micro'), short: ['µg', 'μg'] },
  { key: 't', dimension: 'mass', spoken: [...SIZES('tonne'), 'metric ton', 'metric tons'], short: ['t'] },
  { key: 'ton', spoken: SIZES('ton') },
  { key: 'oz', dimension: 'mass', spoken: SIZES('ounce'), short: ['oz', 'ozs'] },
  { key: 'pounds', spoken: ['pound', 'pounds'] },
  { key: 'lb', dimension: 'mass', spoken: ['pounds weight', 'pounds mass'], short: ['lb', 'lbs', 'lbm'] },
  { key: 'lb', dimension: 'mass', factor: 112, spoken: SIZES('hundredweight') },
  // Angles and temperatures
  { key: 'degrees', spoken: SIZES('degree'), short: ['deg', 'degs', '°'] },
  {
    key: 'degC',
    dimension: 'temperature',
    spoken: [
      'degrees c',
      'degrees celsius',
      'degree celsius',
      'degrees centigrade',
      'degree c',
      'celsius',
      'centigrade',
      'celcius',
      'degrees celcius',
      'deg celsius',
      'deg centigrade',
    ],
    short: ['° c', '°c', 'degc', 'deg c', 'c', '℃', '° celsius'],
  },
  {
    key: 'degF',
    dimension: 'temperature',
    spoken: [
      'degrees f',
      'degrees fahrenheit',
      'degree fahrenheit',
      'degree f',
      'fahrenheit',
      'farenheit',
      'degrees farenheit',
      'deg fahrenheit',
    ],
    short: ['° f', '°f', 'degf', 'deg f', 'f', '℉', '° fahrenheit'],
  },
  {
    key: 'deg',
    dimension: 'angle',
    spoken: ['degree angle', 'degree bevel', 'degree mitre', 'degree miter'],
  },
  // Electricity and power
  { key: 'mV', dimension: 'voltage', spoken: SIZES('millivolt'), short: ['mv'] },
  { key: 'V', dimension: 'voltage', spoken: SIZES('volt'), short: ['v', 'vdc', 'vac'] },
  { key: 'kV', dimension: 'voltage', spoken: SIZES('kilovolt'), short: ['kv'] },
  { key: 'mA', dimension: 'current', spoken: [...SIZES('milliamp'), ...SIZES('milliampere')], short: ['ma'] },
  { key: 'A', dimension: 'current', spoken: [...SIZES('amp'), ...SIZES('ampere')], short: ['a'] },
  {
    key: 'Ah',
    dimension: 'charge',
    spoken: ['amp hour', 'amp hours', 'ampere hours', 'ampere hour', 'amps hours', 'amp hr'],
    short: ['ah'],
  },
  { key: 'mAh', dimension: 'charge', spoken: ['milliamp hours', 'milliamp hour'], short: ['mah'] },
  { key: 'W', dimension: 'power', spoken: [...SIZES('watt'), 'watt peak'], short: ['w', 'wp'] },
  { key: 'kW', dimension: 'power', spoken: [...SIZES('kilowatt'), ...SIZES('kilo watt')], short: ['kw'] },
  { key: 'MW', dimension: 'power', spoken: SIZES('megawatt') },
  { key: 'VA', dimension: 'power', spoken: ['volt amps', 'volt amp'], short: ['va'] },
  { key: 'kVA', dimension: 'power', spoken: ['kva', 'k v a', 'kilovolt amps'], short: ['kva'] },
  {
    key: 'hp',
    dimension: 'power',
    spoken: ['horsepower', 'horse power', 'horse', 'hp', 'h p'],
    short: ['bhp'],
  },
  { key: 'BTU', dimension: 'energy', spoken: ['btu', 'btus', 'b t u', 'british thermal units'] },
  { key: 'Wh', dimension: 'energy', spoken: WATT_HOURS, short: ['wh'] },
  { key: 'kWh', dimension: 'energy', spoken: BIG('kilo', WATT_HOURS), short: ['kwh'] },
  { key: 'kWh', dimension: 'energy', factor: 1000, spoken: BIG('mega', WATT_HOURS), short: ['mwh'] },
  { key: 'kWh', dimension: 'energy', factor: 1e6, spoken: BIG('giga', WATT_HOURS), short: ['gwh'] },
  { key: 'J', dimension: 'energy', spoken: SIZES('joule'), short: ['j'] },
  { key: 'kJ', dimension: 'energy', spoken: SIZES('kilojoule'), short: ['kj'] },
  // Pressure, torque
  { key: 'Pa', dimension: 'pressure', spoken: SIZES('pascal'), short: ['pa'] },
  { key: 'kPa', dimension: 'pressure', spoken: [...SIZES('kilopascal'), 'kpa'], short: ['kpa'] },
  { key: 'kPa', dimension: 'pressure', factor: 1000, spoken: SIZES('megapascal'), short: ['mpa'] },
  { key: 'bar', dimension: 'pressure', spoken: ['bar'] },
  { key: 'bar', dimension: 'pressure', factor: 0.001, spoken: SIZES('millibar'), short: ['mbar'] },
  {
    key: 'psi',
    dimension: 'pressure',
    spoken: [
      'psi',
      'p s i',
      'pounds per square inch',
      'pounds a square inch',
      'pounds per inch',
      'pounds of pressure',
      'sigh',
      'pound per square inch',
    ],
  },
  {
    key: 'N.m',
    dimension: 'torque',
    spoken: [
      'newton metres',
      'newton metre',
      'newton meters',
      'newton meter',
      'newtonmetres',
      'newtons metres',
    ],
    short: ['nm', 'n m', 'n·m'],
  },
  {
    key: 'ft.lbf',
    dimension: 'torque',
    spoken: [
      'foot pounds',
      'foot pound',
      'feet pounds',
      'pound feet',
      'pound foot',
      'pounds feet',
      'pounds foot',
      'ft lbs',
      'ft lb',
      'ft pounds',
      'lb ft',
    ],
    short: ['ftlb', 'ftlbs'],
  },
  {
    key: 'ft.lbf',
    dimension: 'torque',
    factor: 1 / 12,
    spoken: ['inch pounds', 'inch pound', 'in lbs', 'in lb'],
  },
  // Time
  { key: 's', dimension: 'time', spoken: ['second', 'seconds', 'secs', 'sec'], short: ['s'] },
  { key: 'min', dimension: 'time', spoken: ['minute', 'minutes', 'mins', 'min'] },
  { key: 'h', dimension: 'time', spoken: ['hour', 'hours', 'hrs', 'hr'], short: ['h'] },
  { key: 'd', dimension: 'time', spoken: ['day', 'days'] },
  { key: 'd', dimension: 'time', factor: 7, spoken: ['week', 'weeks'] },
  { key: 'd', dimension: 'time', factor: 14, spoken: SIZES('fortnight') },
  { key: 'month', dimension: 'time', spoken: ['month', 'months'] },
  { key: 'year', dimension: 'time', spoken: ['year', 'years', 'yrs', 'yr'] },
  // Ratio, frequency, speed
  {
    key: '%',
    dimension: 'ratio',
    spoken: ['percent', 'procent', 'prozent', 'per cent', 'pc', 'percents', 'percentage'],
    short: ['%', '٪', '％'],
  },
  { key: 'Hz', dimension: 'frequency', spoken: ['hertz', 'hz'], short: ['hz'] },
  { key: 'kHz', dimension: 'frequency', spoken: BIG('kilo', ['hertz']), short: ['khz'] },
  { key: 'kHz', dimension: 'frequency', factor: 1000, spoken: BIG('mega', ['hertz']), short: ['mhz'] },
  { key: 'kHz', dimension: 'frequency', factor: 1e6, spoken: BIG('giga', ['hertz']), short: ['ghz'] },
  {
    key: 'rpm',
    dimension: 'speed',
    spoken: ['rpm', 'r p m', 'rpms', 'revs', ...PER_MINUTE(['revs', 'revolutions', 'turns', 'rev'])],
    short: ['rpm'],
  },
  { key: 'kn', dimension: 'speed', spoken: ['knots', 'knot'], short: ['kn', 'kts', 'kt'] },
  {
    key: 'mph',
    dimension: 'speed',
    spoken: [...PER_HOUR(['miles', 'mile']), 'mph', 'm p h'],
  },
  {
    key: 'km/h',
    dimension: 'speed',
    spoken: [...PER_HOUR([...METRES('kilo'), 'k', 'km', 'kay', 'kays']), 'kph', 'kmh', 'kmph'],
    short: ['km/h', 'km / h', 'km / hr'],
  },
  {
    key: 'm/s',
    dimension: 'speed',
    spoken: [
      'metres per second',
      'metres a second',
      'meters per second',
      'meters a second',
      'metre per second',
    ],
    short: ['m/s'],
  },
  {
    key: 'm/s',
    dimension: 'speed',
    factor: 1 / 60,
    spoken: PER_MINUTE(METRES('')),
    short: ['m/min'],
  },
  { key: 'm/s', dimension: 'speed', factor: 0.3048 / 60, spoken: PER_MINUTE(FEET), short: ['fpm'] },
  // Money
  { key: 'quid', dimension: 'money', spoken: ['quid'] },
  { key: 'GBP', dimension: 'money', spoken: ['pounds sterling', 'nicker'] },
  { key: 'ZAR', dimension: 'money', spoken: SIZES('rand'), short: ['zar'] },
  {
    key: 'local-money',
    dimension: 'money',
    spoken: [
      ...[
        'bob',
        ...SIZES('shilling'),
        ...SIZES('rupee'),
        ...SIZES('crown'),
        ...SIZES('peso'),
        ...SIZES('franc'),
      ],
      ...['krone', 'krona', 'koruna', 'zloty', ...SIZES('zloty'), 'forint', 'ringgit', 'baht', 'lei', 'lira'],
    ],
  },
  { key: 'EUR', dimension: 'money', spoken: ['euro', 'euros'], short: ['eur'] },
  { key: 'dollars', dimension: 'money', spoken: ['dollar', 'dollars', 'buck', 'bucks'] },
  { key: 'cents', dimension: 'money', spoken: ['cent', 'cents'] },
  { key: 'GBP', dimension: 'money', factor: 0.01, spoken: ['pence'], short: ['p'] },
  {
    key: 'USD',
    dimension: 'money',
    spoken: ['us dollars', 'us dollar', 'american dollars', 'united states dollars'],
    short: ['usd'],
  },
  { key: 'AUD', dimension: 'money', spoken: ['australian dollars'], short: ['aud'] },
  { key: 'CAD', dimension: 'money', spoken: ['canadian dollars'], short: ['cad'] },
  { key: 'NZD', dimension: 'money', spoken: ['new zealand dollars'], short: ['nzd'] },
  { key: 'GBP', dimension: 'money', spoken: [], short: ['gbp'] },
  { key: 'SEK', dimension: 'money', spoken: ['kronor'], short: ['sek'] },
  { key: 'NOK', dimension: 'money', spoken: [], short: ['nok'] },
  { key: 'DKK', dimension: 'money', spoken: ['kroner'], short: ['dkk'] },
  { key: 'CHF', dimension: 'money', spoken: ['swiss francs'], short: ['chf'] },
];

/** Signs that stand before the number. */
export const MONEY_SIGNS: ReadonlyMap<string, UnitKey> = new Map<string, UnitKey>([
  ['£', 'GBP'],
  ['€', 'EUR'],
  ['$', 'dollars'],
]);
