import type { Dimension } from '../notes.ts';
import type { Amount, Room } from '../rules/rule.ts';
import { wordAt } from '../rules/rule.ts';

/** What the words about a bare number say that it measures, other than a length. */
export interface Kind {
  readonly dimension: Dimension;
  readonly why: string;
  /** Tokens to the word that tells it. */
  readonly distance: number;
}

interface Cue {
  readonly dimension: Dimension;
  /** Values that people say without a unit; outside it the word tells nothing. */
  readonly low: number;
  readonly high: number;
  /** A value that shows its decimals: a battery of 12.4 is no length, one of 330 may be. */
  readonly decimals?: true;
}

/**
 * Things and deeds that are spoken of in one kind of measure, so that people leave its unit away: fuses in amps,
 * tyres in pressure, engines in turns. Common practice, no source.
 */
const SPOKEN_OF: readonly (readonly [string, Cue])[] = [
  [
    'fuse fuses fused breaker breakers mcb rcd rcbo alternator dynamo charger shunt',
    { dimension: 'current', low: 0.5, high: 800 },
  ],
  // A pump draws six; a hull that draws six hundred is told in length.
  ['draws', { dimension: 'current', low: 0.5, high: 60 }],
  // Told of what runs on current: see `pairedCue`.
  ['pulls pulled', { dimension: 'current', low: 0.5, high: 60, decimals: true }],
  ['battery batteries', { dimension: 'voltage', low: 2, high: 60, decimals: true }],
  ['stat thermostat thermometer forecast', { dimension: 'temperature', low: 3, high: 120 }],
  ['oven kiln', { dimension: 'temperature', low: 60, high: 1300 }],
  ['voltage voltmeter multimeter', { dimension: 'voltage', low: 1, high: 500 }],
  ['amperage', { dimension: 'current', low: 0.5, high: 800 }],
  ['wattage', { dimension: 'power', low: 1, high: 5000 }],
  [
    'weigh weighs weighed weighing weight payload laden weighbridge noseweight',
    { dimension: 'mass', low: 5, high: 40000 },
  ],
  [
    'tickover tick ticks ticking idle idles idling revs rev tacho tachometer spins spinning flat-out governed',
    { dimension: 'speed', low: 60, high: 30000 },
  ],
  [
    'tyre tyres tire tires pressure pressures compressor cut-in cut-out inflate inflated pumped',
    { dimension: 'pressure', low: 0.5, high: 1000 },
  ],
  ['moisture humidity damp dampness', { dimension: 'ratio', low: 4, high: 100 }],
  [
    'cost costs spent spend offered price priced prices paid pay charge charges charged quoted quote bill invoice deposit rent haggled money cash',
    { dimension: 'money', low: 2, high: 500000 },
  ],
  ['torque torqued torquing', { dimension: 'torque', low: 2, high: 900 }],
];

const CUES: ReadonlyMap<string, Cue> = new Map(
  SPOKEN_OF.flatMap(([words, cue]) => words.split(' ').map((word) => [word, cue] as const)),
);

/** Words that are cues only behind another: "three phase, 415", "the amp draw is 6.2". */
const SPOKEN_OF_PAIRS: readonly (readonly [RegExp, RegExp, Cue])[] = [
  [/^(?:single|one|1|two|split|three|3)$/, /^phase$/, { dimension: 'voltage', low: 100, high: 1000 }],
  [
    /^(?:pump|pumps|fridge|freezer|heater|fan|fans|light|lights|lamp|inverter|motor|compressor|winch|windlass|thruster|radio|kettle|bulb|autopilot|plotter|radar|blower|one|it)$/,
    /^(?:pulls|draws|pulling|drawing)$/,
    { dimension: 'current', low: 0.5, high: 60 },
  ],
  [
    /^(?:amp|amps|current)$/,
    /^(?:draw|drain|rating|load|reading)$/,
    { dimension: 'current', low: 0.1, high: 800 },
  ],
];

const pairedCue = (room: Room, index: number): Cue | undefined =>
  SPOKEN_OF_PAIRS.find(
    ([first, second]) =>
      second.test(wordAt(room, index)) &&
      first.test(wordAt(room, wordAt(room, index - 1) === '-' ? index - 2 : index - 1)),
  )?.[2];

/** Marks and words that end the part of a sentence that a cue speaks for. */
const PART_ENDS = /^(?:[.;:!?]|but|because|while|whereas)$/;
const BACK = 9;
const ON = 6;

/** Words behind a cue that make it another thing: "fuse box", "tyre width", "weight of the door". */
const OTHER_THING =
  /^(?:box|boxes|door|doors|shelf|shelves|holder|panel|board|post|room|house|bracket|brackets|cover|tray|locker|wall|width)$/;

function cueAt(room: Room, index: number, value: number): Cue | undefined {
  const cue = pairedCue(room, index) ?? CUES.get(wordAt(room, index));
  if (cue?.decimals && Number.isInteger(value)) return undefined;
  if (!cue || value < cue.low || value > cue.high) return undefined;
  return OTHER_THING.test(wordAt(room, index + 1)) ? undefined : cue;
}

/** The nearest word about a bare number that tells what it measures; those behind it count as farther away. */
export function kindOf(room: Room, amount: Amount): Kind | undefined {
  const sentence = room.tokens[amount.from]?.sentence;
  let best: Kind | undefined;
  const offer = (index: number, distance: number) => {
    const cue = cueAt(room, index, amount.value);
    if (!cue || (best && best.distance <= distance)) return;
    best = { dimension: cue.dimension, distance, why: `"${wordAt(room, index)}" is spoken of so` };
  };
  for (let step = 1; step <= BACK; step++) {
    const index = amount.from - step;
    if (room.tokens[index]?.sentence !== sentence || PART_ENDS.test(wordAt(room, index))) break;
    offer(index, step);
  }
  for (let step = 0; step < ON; step++) {
    const index = amount.to + step;
    if (room.tokens[index]?.sentence !== sentence || /^(?:[.;:!?,]|but|and|so)$/.test(wordAt(room, index)))
      break;
    offer(index, step + 3);
  }
  return best;
}

const METRIC_UNITS: Readonly<Partial<Record<Dimension, string>>> = {
  current: 'A',
  voltage: 'V',
  power: 'W',
  volume: 'L',
  mass: 'kg',
  speed: 'rpm',
  ratio: '%',
  torque: 'N.m',
};
const US_UNITS: Readonly<Partial<Record<Dimension, string>>> = {
  volume: 'gal',
  mass: 'lb',
  torque: 'ft.lbf',
};

/** Unit that a bare number of a dimension takes in a house and region when none was said before. */
export function usualUnit(room: Room, dimension: Dimension, value: number): string | undefined {
  if (dimension === 'temperature')
    return room.region === 'US' || (room.region === '' && room.house === 'us') ? 'degF' : 'degC';
  if (dimension === 'pressure') {
    if (room.region === 'US' || room.house === 'us') return 'psi';
    if (/^(?:AU|NZ|ZA)$/.test(room.region) && value >= 100) return 'kPa';
    return value > 8 ? 'psi' : 'bar';
  }
  return (room.house === 'us' ? US_UNITS[dimension] : undefined) ?? METRIC_UNITS[dimension];
}
