/** Cross-sections that conductors are sold in, mm². Source: IEC 60228, from memory. */
export const CONDUCTOR_SIZES: ReadonlySet<number> = new Set([
  0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95, 120, 150, 185, 240,
]);
