/** A tank's volume in litres and both gallons, each under its own name. */
import type { Range, Result, Say } from './check.ts';
import { rangeOf } from './ranges.ts';
import { saidRange } from './said-range.ts';

export interface TankVolume {
  readonly why: string;
  readonly results: readonly Result[];
  readonly notes: readonly string[];
}

/** Volume and usable volume from the inside volume in cubic metres and the share of it that can be drawn. */
export function tankVolume(say: Say, volume: Range, share: Range | undefined): TankVolume {
  const usable = share && rangeOf((all, part) => all * part, volume, share);
  const whole = inEach('', volume);
  const inUse = usable ? inEach('usable ', usable) : [];
  const said = (range: Range) =>
    `${saidRange(say, range, 'volume', 'L')} (${saidRange(say, range, 'volume', 'US gal')}, ${saidRange(say, range, 'volume', 'imp gal')})`;
  return {
    why: `${said(volume)}${usable ? `; usable ${said(usable)}` : ''}`,
    results: [...whole, ...inUse],
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
