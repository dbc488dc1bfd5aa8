import { expect, test } from 'vitest';
import { checksIn } from '../../kit/records.ts';

test.each([
  [
    'The fridge is 45 watts for ten hours, the lights are 20 watts for four hours and the pump’s 60 watts for half an hour, it all has to come out of 1200 watt hours.',
    'load=fridge power; load=lights power; load=pump power; time on=10 h; time on=4 h; time on=30 min; supply=1200 Wh',
  ],
  [
    'The kiln fan runs ten hours a day at 45 watts, lights four hours at 20 watts. There’s 1200 watt hours in the bank.',
    'load=kiln fan power; load=lights power; time on=10 h; time on=4 h; supply=1200 Wh',
  ],
  [
    'Add up the loads, fridge 45 watts for 10 hours, laptop 60 watts for 5 hours.',
    'load=45 W; load=60 W; time on=10 h; time on=5 h',
  ],
  [
    'The loads can’t come to more than 1200 watt hours a day. The fridge is 45 watts round the clock. The heater’s 80 watts for six hours.',
    'load=fridge power; load=heater power; time on=24 h; time on=6 h; supply=1200 Wh',
  ],
  [
    'The fridge pulls 4 amps for ten hours and the lights 2 amps for an hour and a half, all off the 100 amp hour bank at 12 volts.',
    'load=fridge current * 12 V; load=lights current * 12 V; time on=10 h; time on=90 min; supply=100 Ah * 12 V',
  ],
  [
    'The lights are 8 watts each, three of them, for four hours, and the fridge is 45 watts for ten hours, it all has to come out of 1200 watt hours.',
    'load=3 * lights power; load=fridge power; time on=4 h; time on=10 h; supply=1200 Wh',
  ],
  [
    'The fridge is 45 watts for ten hours, and there are four lights, 8 watts each for four hours, all out of 1200 watt hours.',
    'load=fridge power; load=lights count * lights power; time on=10 h; time on=4 h; supply=1200 Wh',
  ],
  [
    'The fridge is 45 watts for ten hours and the pumps are 2 amps each for four hours, two of them, at 12 volts, all out of 1200 watt hours.',
    'load=fridge power; load=2 * pumps current * 12 V; time on=10 h; time on=4 h; supply=1200 Wh',
  ],
])('"%s" asks for the sum', (said, inputs) => {
  expect(checksIn(said)).toEqual([`load sum: ${inputs}`]);
});

test.each([
  'The heater was on for four hours at 500 watts.',
  'If we ran the fridge ten hours a day at 45 watts and the lights four hours at 20 watts.',
  'Could the bank run a 45 watt fridge for ten hours and 20 watts for four hours?',
  'The kiln takes 3000 watts for two hours.',
  'I bought a 60 watt lamp and a 45 watt fridge.',
  'I worked four hours on the 60 watt panel.',
])('"%s" asks for none', (said) => {
  expect(checksIn(said)).toEqual([]);
});
