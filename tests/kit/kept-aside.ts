/** Stories that nobody reads who writes rules: they are looked at as scores alone. */
const KEPT_ASIDE: ReadonlySet<number> = new Set([4, 11, 18, 22, 28, 33, 37, 41]);

/** By a story's file name: `aside-1.json`, `drill-11.talk`; of later drill talk every fifth is kept. */
export function isKeptAside(name: string): boolean {
  if (name.startsWith('aside-')) return true;
  const number = Number(/^drill-(\d+)/.exec(name)?.[1] ?? Number.NaN);
  return KEPT_ASIDE.has(number) || (number >= 45 && [4, 9].includes(number % 10));
}
