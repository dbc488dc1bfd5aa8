/** A tank's volume in litres and both gallons, each under its own name. */
import type { Given, Range, Result } from './check.ts';
import { isAtLeast } from './noise.ts';
import { less, maybe, rangeOf } from './ranges.ts';
import { saidRange } from './said-range.ts';

export interface TankVolume {
  readonly verdict: 'holds' | 'broken' | 'told';
  readonly why: string;
  readonly results: readonly Result[];
  readonly notes: readonly string[];
}

/**
 * Volume and usable volume from the inside volume in cubic metres and the share of it that can be drawn; held against
 * what it has to hold, where that was given.
 */
export function tankVolume(given: Given, volume: Range): TankVolume {
  const { say } = given;
  const [share, wanted] = [maybe(given, USABLE_SHARE.name), maybe(given, WANTED_VOLUME.name)];
  const usable = share && rangeOf((all, part) => all * part, volume, share);
  const whole = inEach('', volume);
  const inUse = usable ? inEach('usable ', usable) : [];
  const said = (range: Range) =>
    `${saidRange(say, range, 'volume', 'L')} (${saidRange(say, range, 'volume', 'US gal')}, ${saidRange(say, range, 'volume', 'imp gal')})`;
  const left = wanted && less(usable ?? volume, wanted);
  const holds = left && isAtLeast(left.low, 0);
  const judged = left
    ? `; ${say(Math.abs(left.low), 'volume', 'L')} ${holds ? 'more than' : 'short of'} what is wanted, at worst`
    : '';
  return {
    verdict: left ? (holds ? 'holds' : 'broken') : 'told',
    why: `${said(volume)}${usable ? `; usable ${said(usable)}` : ''}${judged}`,
    results: [
      ...whole,
      ...inUse,
      ...(left ? [{ name: 'left over what is wanted', kind: 'volume', range: left, unit: 'L' }] : []),
    ],
    notes: [
      'sizes are inside sizes; fittings, baffles and corner radii are not taken off',
      ...(usable ? [] : ['no usable share was given: the whole inside is counted']),
    ],
  };
}

/** The first stands for the volume in a formula; the gallons say the same volume. */
const inEach = (which: string, range: Range): readonly Result[] => [
  { name: `${which}volume`, kind: 'volume', range, unit: 'L' },
  { name: `${which}volume in US gallons`, kind: 'volume', range, unit: 'US gal' },
  { name: `${which}volume in imperial gallons`, kind: 'volume', range, unit: 'imp gal' },
];

/** Input of both tank checks. */
export const USABLE_SHARE = {
  name: 'usable share',
  kind: 'ratio',
  says: 'share of it that can be drawn',
  optional: true,
  most: 1,
  unit: '%',
} as const;

/** What a tank has to hold, of both tank checks. */
export const WANTED_VOLUME = {
  name: 'wanted',
  kind: 'volume',
  says: 'volume that it has to hold, of what can be drawn',
  optional: true,
} as const;
