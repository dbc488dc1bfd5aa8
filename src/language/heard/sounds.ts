/**
 * How a written word sounds, roughly: one letter for each sound, by rules of English spelling, and how far two such
 * sounds are from being taken for each other. The costs follow the classes of phonetics (voice, place and manner of
 * consonants; height and place of vowels) and are our own. Source for the classes: any textbook; common practice.
 */

/** Spelling to sound, tried in order at each place; what stands in no rule stands for itself. */
const RULES: readonly (readonly [RegExp, string])[] = [
  [/^kn|^gn/y, 'n'],
  [/^wr/y, 'r'],
  [/^ps/y, 's'],
  [/^wh/y, 'w'],
  [/ought|aught/y, 'ot'],
  [/igh/y, 'I'],
  [/eigh/y, 'A'],
  [/ough/y, 'o'],
  [/tch/y, 'C'],
  [/[ts]ion/y, 'S@n'],
  [/ture$/y, 'C@'],
  [/ch/y, 'C'],
  [/sh/y, 'S'],
  [/ph/y, 'f'],
  [/th/y, 'T'],
  [/ck|cc(?![ei])/y, 'k'],
  [/qu/y, 'kw'],
  [/x/y, 'ks'],
  [/ng(?![aeiou])/y, 'N'],
  [/dge?/y, 'J'],
  [/ge(?=s?$)/y, 'J'],
  [/g(?=[ey])/y, 'J'],
  [/mb(?=s?$)/y, 'm'],
  [/c(?=[eiy])/y, 's'],
  [/c/y, 'k'],
  [/([b-df-hj-np-tv-z])\1/y, '$1'],
  [/(?<=[b-df-hj-np-tv-z])le(?=s?$)/y, '@l'],
  // A vowel before one consonant and a silent "e" is long.
  [/a(?=[bcdfgklmnprstvz]e(?:[sd]?$))/y, 'A'],
  [/i(?=[bcdfgklmnprstvz]e(?:[sdr]?$))/y, 'I'],
  [/o(?=[bcdfgklmnprstvz]e(?:[sd]?$))/y, 'O'],
  [/u(?=[bcdfgklmnprstvz]e(?:[sd]?$))/y, 'U'],
  [/ee|ea|ie(?=.)|ei/y, 'E'],
  [/oo|ew|ue|ui/y, 'U'],
  [/ou|ow/y, 'W'],
  [/oa|oe/y, 'O'],
  [/ai|ay|ey/y, 'A'],
  [/oi|oy/y, 'Y'],
  [/au|aw|al(?=[kl])/y, 'o'],
  [/(?<=[sxz]|C|S|J)es$/y, '@z'],
  [/(?<=[b-df-hj-np-tv-z])es$/y, 'z'],
  [/(?<=[td])ed$/y, '@d'],
  [/ed$/y, 'd'],
  [/(?<=^[^aeiou]{1,2})y$/y, 'I'],
  [/y$/y, 'E'],
  [/(?<=.)e$/y, ''],
  [/(?<=[bdgvzmnlraeiou])s$/y, 'z'],
];

/** The sounds of a word in lower case; apostrophes, hyphens and blanks are silent. */
export function soundsOf(word: string): string {
  const letters = word.replace(/[^a-z]/g, '');
  let sounds = '';
  for (let at = 0; at < letters.length; ) {
    let matched = false;
    for (const [pattern, sound] of RULES) {
      pattern.lastIndex = at;
      const found = pattern.exec(letters);
      if (!found) continue;
      sounds += sound === '$1' ? found[1] : sound;
      at += found[0].length;
      matched = true;
      break;
    }
    if (!matched) sounds += letters[at++];
  }
  return sounds;
}

/** Place of each vowel: front to back, and high to low. */
const VOWELS: Readonly<Record<string, readonly [number, number]>> = {
  E: [0, 0],
  i: [0.2, 0.3],
  A: [0.1, 0.5],
  e: [0.2, 0.8],
  a: [0.4, 1.2],
  '@': [0.6, 0.7],
  u: [0.8, 0.9],
  U: [1, 0.1],
  O: [1, 0.5],
  o: [1, 1],
  I: [0.4, 0.9],
  W: [0.7, 1],
  Y: [0.8, 0.6],
  y: [0.1, 0.2],
};

/** Sounds that are taken for each other, the nearest first. */
const NEAR: readonly (readonly [string, number])[] = [
  ['pb', 0.3],
  ['td', 0.25],
  ['kg', 0.3],
  ['fv', 0.25],
  ['sz', 0.1],
  ['TD', 0.2],
  ['CJ', 0.3],
  ['SC', 0.35],
  ['gJ', 0.45],
  ['mn', 0.35],
  ['nN', 0.25],
  ['fT', 0.3],
  ['sT', 0.4],
  ['sS', 0.35],
  ['zS', 0.45],
  ['tT', 0.45],
  ['dT', 0.45],
  ['vb', 0.5],
  ['pt', 0.5],
  ['tk', 0.5],
  ['pk', 0.5],
  ['bd', 0.5],
  ['dg', 0.5],
  ['lr', 0.55],
  ['lw', 0.5],
  ['rw', 0.5],
  ['vw', 0.5],
  ['fp', 0.5],
  ['tC', 0.45],
  ['dJ', 0.45],
  ['hf', 0.5],
  ['fs', 0.5],
  ['mb', 0.6],
  ['nd', 0.6],
  ['nl', 0.6],
];

const CODES = 128;
const swap = new Float32Array(CODES * CODES).fill(1);
const drop = new Float32Array(CODES).fill(0.8);

function fill(): void {
  const set = (a: string, b: string, cost: number) => {
    swap[a.charCodeAt(0) * CODES + b.charCodeAt(0)] = cost;
    swap[b.charCodeAt(0) * CODES + a.charCodeAt(0)] = cost;
  };
  const vowels = Object.entries(VOWELS);
  for (const [a, [ax, ay]] of vowels)
    for (const [b, [bx, by]] of vowels)
      set(a, b, a === b ? 0 : Math.min(0.6, 0.12 + 0.4 * Math.hypot(ax - bx, ay - by)));
  for (const [pair, cost] of NEAR) set(pair[0] as string, pair[1] as string, cost);
  for (let code = 0; code < CODES; code++) swap[code * CODES + code] = 0;
  for (const [vowel] of vowels) drop[vowel.charCodeAt(0)] = 0.55;
  for (const [sound, cost] of [
    ['@', 0.35],
    ['h', 0.4],
    ['r', 0.35],
    ['w', 0.5],
    ['t', 0.6],
    ['d', 0.5],
    ['s', 0.6],
    ['z', 0.55],
    ['l', 0.6],
    ['n', 0.6],
  ] as const)
    drop[sound.charCodeAt(0)] = cost;
}
fill();

/** A word of more sounds is no word. */
const MOST_SOUNDS = 40;
const before = new Float32Array(MOST_SOUNDS + 1);
const current = new Float32Array(MOST_SOUNDS + 1);

/** How far two rows of sounds are apart, for each sound of the longer: 0 the same, 1 nothing alike. */
export function soundDistance(a: string, b: string): number {
  if (a === b) return 0;
  const [m, n] = [Math.min(a.length, MOST_SOUNDS), Math.min(b.length, MOST_SOUNDS)];
  if (m === 0 || n === 0) return 1;
  let [last, row] = [before, current];
  last[0] = 0;
  for (let j = 1; j <= n; j++)
    last[j] = (last[j - 1] as number) + (drop[b.charCodeAt(j - 1) & 127] as number);
  for (let i = 1; i <= m; i++) {
    const from = a.charCodeAt(i - 1) & 127;
    const cost = drop[from] as number;
    row[0] = (last[0] as number) + cost;
    for (let j = 1; j <= n; j++) {
      const to = b.charCodeAt(j - 1) & 127;
      // How a word begins is heard best.
      const weight = i === 1 && j === 1 ? 1.2 : 1;
      row[j] = Math.min(
        (last[j - 1] as number) + weight * (swap[from * CODES + to] as number),
        (last[j] as number) + cost,
        (row[j - 1] as number) + (drop[to] as number),
      );
    }
    [last, row] = [row, last];
  }
  return (last[n] as number) / Math.max(m, n);
}
