/**
 * Reads from where to where something turns: "from flat to 70 degrees", "up to ninety", "down to minus 20 degrees". Degrees
 * that nobody said to be of an arc are taken for warmth elsewhere, so that the words of the swing are read for themselves.
 */
import { smallNumber } from '../numbers/small-number.ts';

const LEVEL = '(?:flat|level|shut|closed|horizontal|lying down|lying flat|down flat)';
const UPRIGHT = '(?:upright|vertical|straight up|plumb|right up)';
const NUMBER =
  '(?:(?:minus |negative |-)?(?:\\d{1,3}(?:\\.\\d+)?|[a-z]+(?:[ -](?:one|two|three|four|five|six|seven|eight|nine))?))';
const ANGLE = `(?:${LEVEL}|${UPRIGHT}|straight down|${NUMBER})`;
const DEGREES = '(?: ?(?:degrees|degree|deg|°))?';

const FROM_TO = new RegExp(
  `\\bfrom (${ANGLE})${DEGREES} (?:up |down |right up )?(?:to|through to) (?:about )?(${ANGLE})${DEGREES}`,
  'i',
);
const TO = new RegExp(
  `\\b(?:to|through|up|down|by) (?:about |a good )?(${ANGLE})(?: ?(?:degrees|degree|deg|°)|(?= (?:without|and|so|past|clear)\\b)|(?=[,.;]|$))`,
  'gi',
);
/** Turned by so much, whichever word stands before it. */
const DEGREES_SAID = new RegExp(`(?:^|[ ,])(${NUMBER}) ?(?:degrees|degree|deg|°)`, 'i');

/** Begin and end of a swing in degrees, as far as some words say them. */
export function swingAngles(words: string): readonly [from: number | undefined, to: number | undefined] {
  const both = FROM_TO.exec(words);
  if (both) {
    const [from, to] = [degreesOf(both[1]), degreesOf(both[2])];
    if (from !== undefined && to !== undefined) return [from, to];
  }
  for (const found of words.matchAll(TO)) {
    const to = degreesOf(found[1]);
    if (to !== undefined && to !== 0) return [undefined, to];
  }
  return [undefined, degreesOf(DEGREES_SAID.exec(words)?.[1])];
}

const ALL_LEVEL = new RegExp(`^${LEVEL}$`, 'i');
const ALL_UPRIGHT = new RegExp(`^${UPRIGHT}$`, 'i');

function degreesOf(said: string | undefined): number | undefined {
  if (said === undefined) return undefined;
  if (ALL_LEVEL.test(said)) return 0;
  if (ALL_UPRIGHT.test(said)) return 90;
  if (/^straight down$/i.test(said)) return -90;
  const [, minus, number = ''] = /^(minus |negative |-)?(.*)$/i.exec(said) ?? [];
  const value = /^(?:zero|nought)$/i.test(number) ? 0 : smallNumber(number);
  return value === undefined ? undefined : minus ? -value : value;
}
