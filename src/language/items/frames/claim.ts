import type { Name } from '../discourse.ts';
import type { Claim } from '../site.ts';

/** A claim on a name, or nothing when there is none. */
export const claim = (name: Name | undefined, more: Omit<Claim, 'name'> = {}): Claim | undefined =>
  name && name.length > 0 ? { name, ...more } : undefined;
