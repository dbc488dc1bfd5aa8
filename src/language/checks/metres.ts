/** Lengths as talk gives them, in metres: to tell which of several is the longer one. */
import type { FigureNote } from '../notes.ts';

const METRES: Readonly<Record<string, number>> = {
  m: 1,
  ft: 0.3048,
  yd: 0.9144,
  in: 0.0254,
  cm: 0.01,
  mm: 0.001,
};

/** Nought for what is no length. */
export const metres = ({ value, unit }: Pick<FigureNote, 'value' | 'unit'>): number =>
  value * (METRES[unit] ?? 0);
