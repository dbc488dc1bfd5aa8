import { expect, test } from 'vitest';
import { readMemo } from '../../src/language/pipeline.ts';

function figuresIn(said: string) {
  const { figures } = readMemo(said, {
    units: 'metric',
    region: 'GB',
    recordedAt: '2026-06-10T12:00:00Z',
  }).notes;
  return figures.map(({ value, unit }) => [value, unit]);
}

test.each([
  ['the plot is two square miles', [2, 'mi2']],
  ['the coating is 850 nanometres', [0.00085, 'mm']],
  ['the bar is 10 dm long', [100, 'cm']],
  ['the tank holds two kilo litres', [2000, 'L']],
  ['the mould takes 3 cubic decimetres', [3, 'L']],
  ['the mix wants two tablespoons of salt', [30, 'mL']],
  ['add 3 tsp of borax', [15, 'mL']],
  ['the dose is 150 micrograms', [0.00015, 'g']],
  ['the gantry lifts 100t', [100, 't']],
  ['the kettle is 40 deg celsius', [40, 'degC']],
  ['the kiln is at 900 celcius', [900, 'degC']],
  ['the pack holds two kilo watt hours', [2, 'kWh']],
  ['the radio runs at 27 megahertz', [27_000, 'kHz']],
  ['the cart does 10 km/hr', [10, 'km/h']],
  ['the pump shifts 150 c c', [150, 'mL']],
])('"%s" is read', (said, figure) => {
  expect(figuresIn(said)).toEqual([figure]);
});

test.each(['fit 4 T-nuts in the corner', 'back in a fortnight', 'the other 2 t bolts'])(
  '"%s" holds no tonnes and no working time',
  (said) => {
    expect(figuresIn(said).map(([, unit]) => unit)).not.toContain('t');
    expect(figuresIn(said).map(([, unit]) => unit)).not.toContain('d');
  },
);
