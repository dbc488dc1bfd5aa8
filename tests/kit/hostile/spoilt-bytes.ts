/** Ways in which the bytes of a file go wrong: on a card, on the way, or on purpose. */

export type Chance = () => number;

interface Spoiling {
  readonly name: string;
  readonly spoil: (bytes: Buffer, chance: Chance) => Buffer;
}

const place = (bytes: Buffer, chance: Chance) => Math.floor(chance() * bytes.length);
/** Most of what a container says of itself stands at its two ends. */
const placeNearAnEnd = (bytes: Buffer, chance: Chance) => {
  const far = Math.floor(chance() ** 3 * Math.min(bytes.length, 4000));
  return chance() < 0.7 ? far : Math.max(0, bytes.length - 1 - far);
};

const copyOf = (bytes: Buffer) => Buffer.from(bytes);

export const SPOILINGS: readonly Spoiling[] = [
  { name: 'cut off', spoil: (bytes, chance) => copyOf(bytes.subarray(0, place(bytes, chance))) },
  { name: 'without its beginning', spoil: (bytes, chance) => copyOf(bytes.subarray(place(bytes, chance))) },
  {
    name: 'single bytes changed',
    spoil: (bytes, chance) => {
      const spoilt = copyOf(bytes);
      for (let times = 1 + Math.floor(chance() * 20); times > 0; times--)
        spoilt[placeNearAnEnd(bytes, chance)] = Math.floor(chance() * 256);
      return spoilt;
    },
  },
  {
    name: 'numbers made the largest there are',
    spoil: (bytes, chance) => {
      const spoilt = copyOf(bytes);
      for (let times = 1 + Math.floor(chance() * 3); times > 0; times--) {
        const at = Math.min(placeNearAnEnd(bytes, chance), Math.max(0, bytes.length - 8));
        const end = Math.min(bytes.length, at + (chance() < 0.5 ? 4 : 8));
        spoilt.fill(chance() < 0.5 ? 0xff : 0x7f, at, end);
      }
      return spoilt;
    },
  },
  {
    name: 'a stretch of noughts',
    spoil: (bytes, chance) => {
      const at = place(bytes, chance);
      return copyOf(bytes).fill(0, at, Math.min(bytes.length, at + Math.floor(chance() * 3000)));
    },
  },
  {
    name: 'a stretch missing',
    spoil: (bytes, chance) => {
      const at = placeNearAnEnd(bytes, chance);
      return Buffer.concat([bytes.subarray(0, at), bytes.subarray(at + 1 + Math.floor(chance() * 900))]);
    },
  },
  {
    name: 'a stretch twice',
    spoil: (bytes, chance) => {
      const at = placeNearAnEnd(bytes, chance);
      return Buffer.concat([bytes.subarray(0, at + 1 + Math.floor(chance() * 900)), bytes.subarray(at)]);
    },
  },
  {
    name: 'noise behind its first bytes',
    spoil: (bytes, chance) => {
      const spoilt = copyOf(bytes);
      for (let at = 12 + Math.floor(chance() * 60); at < spoilt.length; at++)
        spoilt[at] = Math.floor(chance() * 256);
      return spoilt;
    },
  },
];

export function spoilt(bytes: Buffer, chance: Chance): { readonly how: string; readonly bytes: Buffer } {
  const way = SPOILINGS[Math.floor(chance() * SPOILINGS.length)] as Spoiling;
  return { how: way.name, bytes: way.spoil(bytes, chance) };
}
