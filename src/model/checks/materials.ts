/**
 * Densities that may be chosen by name in place of a figure. None is taken unasked: a density is a range, and what
 * stands on the product's own sheet, or the scales, goes before all of these.
 */
import type { Range } from './check.ts';

export interface Material {
  readonly name: string;
  /** Kilograms in a cubic metre. */
  readonly low: number;
  readonly high: number;
  readonly source: string;
}

/** Choice of the option where the density itself is given. */
export const AS_GIVEN = 'as given';

/** Sheets. Every range as its page prints it, read there. */
export const SHEET_MATERIALS: readonly Material[] = [
  {
    name: 'plywood',
    low: 400,
    high: 700,
    source: 'https://vinawoodltd.com/blogs/news/density-of-plywood',
  },
  {
    name: 'mdf',
    low: 500,
    high: 1000,
    source:
      'https://view.joomag.com/publication-magazine-volume-2-wood-architecture/0277341001515560734?page=13',
  },
  {
    name: 'acrylic',
    low: 1150,
    high: 1220,
    source: 'https://cal53.calculator.city/acrylic-weight-calculator/',
  },
  {
    name: 'aluminium',
    low: 2580,
    high: 2900,
    source: 'http://haomei-aluminium.com/en/News/Companynews/aluminium-sheet-weight-chart.html',
  },
  { name: 'steel', low: 7750, high: 8050, source: 'https://mech.toolfusion.net/?p=478' },
];

/** What stands in tanks. */
export const TANK_CONTENTS: readonly Material[] = [
  // One kilogram to the litre: 0.5 % under at 30 degrees and right at 4. Common practice, no source.
  { name: 'fresh water', low: 1000, high: 1000, source: 'common practice, no source: 1 kg to the litre' },
  {
    name: 'diesel',
    low: 820,
    high: 845,
    source: 'EN 590 at 15 °C, as on https://www.ncheurope.com/en/diesel-requirements-eu',
  },
];

export interface Density {
  readonly range: Range;
  /** What the person should know of where it comes from. */
  readonly note: string;
}

/** The density given, or the one chosen by name; undefined when there is neither. The given one goes first. */
export function densityOf(
  given: Range | undefined,
  chosen: string | undefined,
  materials: readonly Material[],
): Density | undefined {
  if (given) return { range: given, note: 'density as given' };
  const material = materials.find(({ name }) => name === chosen);
  if (!material) return undefined;
  const { name, low, high, source } = material;
  const ends = low === high ? String(low) : `${low} to ${high}`;
  return {
    range: { low, mid: (low + high) / 2, high },
    note: `density of ${name} taken as ${ends} kg/m3 (${source}); the product's own goes first`,
  };
}
