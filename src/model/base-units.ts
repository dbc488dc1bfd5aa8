/** Units to print in where none was said of the result. */
const BASE_UNITS: Readonly<Record<string, string>> = {
  length: 'm',
  area: 'm2',
  volume: 'm3',
  mass: 'kg',
  angle: 'deg',
  voltage: 'V',
  current: 'A',
  charge: 'Ah',
  power: 'W',
  energy: 'Wh',
  density: 'kg/m3',
  pressure: 'Pa',
  torque: 'N.m',
  time: 's',
  speed: 'm/s',
  frequency: 'rpm',
  ratio: '1',
  count: '1',
};

/** The base unit of a kind of quantity, as it is written. */
export function baseUnit(kind: string): string {
  return BASE_UNITS[kind] ?? kind.replace(/^money:/, '');
}
