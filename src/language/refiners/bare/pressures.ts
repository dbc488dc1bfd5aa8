/** Bare numbers that are pressures: where a pump cuts in, what a gauge shows, how hard tyres are. */
import { each, PhraseTable } from '../../phrases.ts';
import { type Amount, type Room, wordAt } from '../../rules/rule.ts';
import { usualUnit } from '../../units/spoken-of.ts';
import { evidenceAfter } from './evidence.ts';
import type { Meaning } from './lengths.ts';
import { nearWord } from './neighbours.ts';

/** Where a pressure switch acts. Common practice, no source. */
export const SWITCHES = new PhraseTable<true>(
  each(
    true,
    'kicks in at, kick in at, cuts in at, cut in at, cuts out at, cut out at, comes on at, come on at, goes off at, shuts off at, shut off at, switches off at, switches on at, trips at, cuts off at, starts at, stops at',
  ),
);

const ON_A_GAUGE = new PhraseTable<true>(
  each(true, 'on the clock, on the gauge, on the pressure gauge, on the test gauge, on the dial'),
);

/** More than so many bar no cylinder is tested at. Common practice, no source. */
const BAR_TO = 45;

/** Tyres are spoken of in pounds or bar without the unit. Common practice, no source. */
export function asPressure(room: Room, amount: Amount): Meaning | undefined {
  const subject = [...Array(5).keys()].some((back) =>
    /^(?:tyre|tyres|tire|tires)$/.test(wordAt(room, amount.from - 2 - back)),
  );
  const pump =
    SWITCHES.endingAt(room.tokens, amount.from) &&
    ['pump', 'compressor', 'switch', 'well', 'accumulator'].some((word) => nearWord(room, amount, word)) &&
    // A float acts at a height of water.
    !['float', 'floats'].some((word) => nearWord(room, amount, word));
  if (pump && amount.value <= 150 && !evidenceAfter(room, amount)) {
    const unit = usualUnit(room, 'pressure', amount.value) ?? 'bar';
    return { value: amount.value, unit, dimension: 'pressure', why: 'where a pump cuts in or out' };
  }
  const gauge = ON_A_GAUGE.startingAt(room.tokens, amount.to);
  if (gauge) {
    const known = (room.context.knownFigures ?? []).findLast(({ unit: one }) =>
      /^(?:psi|bar|kPa)$/.test(one),
    );
    const unit = known?.unit ?? usualUnit(room, 'pressure', amount.value) ?? 'bar';
    return { value: amount.value, unit, dimension: 'pressure', why: 'read off a gauge of pressure' };
  }
  const compression = nearWord(room, amount, 'compression');
  if (compression && amount.value >= 5 && amount.value <= 600 && !evidenceAfter(room, amount))
    return {
      value: amount.value,
      unit: amount.value <= BAR_TO ? 'bar' : 'psi',
      dimension: 'pressure',
      why: 'what a cylinder is pressed to',
    };
  if (!subject || amount.value > 150 || evidenceAfter(room, amount)) return undefined;
  const psi = amount.value > 8;
  return {
    value: amount.value,
    unit: psi ? 'psi' : 'bar',
    dimension: 'pressure',
    why: 'how hard tyres are pumped',
  };
}
