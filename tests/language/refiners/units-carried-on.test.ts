/** Bare numbers that take the unit of the figure beside them, and those that do not. */
import { describe, expect, test } from 'vitest';
import { readMemo } from '../../../src/language/pipeline.ts';

const CONTEXT = { units: 'metric', region: 'GB', recordedAt: '2026-06-10T18:00:00+01:00' } as const;
const notesOf = (text: string) => readMemo(text, CONTEXT).notes;
const figuresOf = (text: string) =>
  notesOf(text).figures.map(
    ({ value, unit, bound }) => `${value} ${unit}${bound === 'exact' ? '' : ` ${bound}`}`,
  );

describe('the unit of the figure beside', () => {
  test.each([
    ['The gearbox is 210 kilos and the tail is 55 long.', ['210 kg', '55 mm']],
    ["The vessel's set to three bar, relief's at six.", ['3 bar', '6 bar']],
    ["The fresh tank's 180 litres, the grey's a ninety.", ['180 L', '90 L']],
    ["It's 92 degrees to port and 90 to starboard.", ['92 deg', '90 deg']],
    ['Twelve thou, anything over ten is worn out.', ['12 thou', '10 thou at-most']],
    ['It ran four metres and the book says no more than three.', ['4 m', '3 m at-most']],
    ['The seller swore eighty nine kilowatt. The plate says 98.', ['89 kW', '98 kW']],
    ['The seller swore eighty nine kilowatt. The plate says 980.', ['89 kW', '980 mm']],
    ['The seller swore eighty nine kilowatt. The plate is 98.', ['89 kW', '98 mm']],
    ['The seller swore eighty nine mil. The plate says 98.', ['89 mm', '98 mm']],
    ["I swapped it for a ten amp. I don't like that. The book says seven and a half.", ['10 A', '7.5 A']],
    ['The flow is 40 litres, ours is 50.', ['40 L', '50 L']],
    ['The flow is 40 litres, it climbs to 50.', ['40 L', '50 L']],
    ['The flow is 40 litres, it should be 50.', ['40 L', '50 L']],
    ['The flow is 40 litres, it might be 50.', ['40 L', '50 L']],
    ['400 grams of resin to 80 of hardener.', ['400 g', '80 g']],
    ['I watched her come on at thirty and cut out at fifteen psi.', ['30 psi', '15 psi']],
    ['I watched her come on at thirty boards and cut out at fifteen psi.', ['30 1', '15 psi']],
    ['It starts at thirty and stops at ninety mil.', ['30 mm', '90 mm']],
    ["It's four metres twenty one way and three sixty the other.", ['4.2 m', '3.6 m']],
    ["It's two thirty in the middle and only one ninety at the sides.", ['230 mm', '190 mm']],
    ["It's 110 amp hours, 90 all told.", ['110 Ah', '90 mm']],
    ["It's 110 amp hours, 330 in total.", ['110 Ah', '330 Ah']],
    ["Bottom plate's 10 mil, the sides are 6.", ['10 mm', '6 mm']],
    ["Bottom plate's 10 mil, the sides are 60.", ['10 mm', '60 mm']],
    ['The panels are 22 kilos each, so 44.', ['22 kg', '44 kg']],
    ['The panels are 22 kilos each, so 45.', ['22 kg', '45 mm']],
    ['The panels are 22 kilos, so 44.', ['22 kg', '44 mm']],
    ['The panels are 22 kilos each, then 44.', ['22 kg', '44 mm']],
    ['The panels are 22 mil each, so 44.', ['22 mm', '44 mm']],
    ['The room is 3.6 metres by 3.', ['3.6 m', '3 m']],
    ['The room is 3.6 metres x 3.', ['3.6 m', '3 m']],
    ['The rod is 20 mil at the top and 15 at the bottom.', ['20 mm', '15 mm']],
    ['The pump draws 12 amps on load and 8 on idle.', ['12 A', '8 A']],
    ['The pump draws 12 amps on load and 8 bolts.', ['12 A', '8 1']],
    ['The first is 20 kilos, the second 25.', ['20 kg', '25 kg']],
    ['The air is 14 degrees, the floor 11.', ['14 degC', '11 degC']],
    ['The air is 14 degrees, the floor eleven boards.', ['14 degC', '11 1']],
    ["The gearbox is 210 kilos and the tail's 55.", ['210 kg', '55 kg']],
    ["The gap is twenty thou, and it's at eleven.", ['20 thou', '11 thou']],
    ["The gearbox is 210 mil and the tail's 55.", ['210 mm', '55 mm']],
  ])('"%s" is read', (text, read) => expect(figuresOf(text)).toEqual(read));
});
