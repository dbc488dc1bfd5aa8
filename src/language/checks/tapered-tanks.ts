/**
 * Reads what a tank has to hold that was measured by areas across it: "the bow tank is 1200 long, 0.12 square metres at
 * the front, 0.22 half way and 0.3 at the back, and I want 250 litres in it".
 */
import { figuresIn, type Line } from '../kept/scene.ts';
import type { CheckNote, FigureNote, Quantity } from '../notes.ts';
import { readQuantities } from '../quantities.ts';
import { tokenise } from '../tokens.ts';
import { linesNear } from './figure-names.ts';
import { type CheckScene, checkNote, figuresOf, input, written } from './spoken-check.ts';
import { isTank, usableShare } from './tank-sizes.ts';

const AREA =
  /\b(square (?:met(?:re|er)s?|centimet(?:re|er)s?|feet|foot|inch(?:es)?)|sq\.? ?(?:m|cm|ft|in)|m2|m²)(?![a-z0-9])/i;
const MIDDLE = /\b(?:middle|half ?way|half-way|cent(?:re|er)|mid(?:way|dle)?)\b/i;
const AT = '\\b(?:at|on|by|in|across) (?:the |its )?';
const OTHER = new RegExp(
  `\\b(?:other|far|after|narrow|small(?:er)?|second|back|stern) end\\b|${AT}(?:other|back|stern|aft|bottom|rear|after)\\b`,
  'i',
);
const END = new RegExp(
  `\\b(?:one|first|wide|big|large(?:r)?|near|front|bow|forward) end\\b|${AT}(?:front|bow|fore|forward|top)\\b`,
  'i',
);
/** Of what is no area. */
const ELSE = /\b(?:long|length|lit(?:re|er)s?|gallons?|kilos?|thick)\b/i;
const HOLDS = / (?:hold|holds|take|takes|carry|want|wants|need|needs|store|give|gives) /;
const AMOUNT = /(\d*\.\d+|\d+|(?:nought |zero |oh )?point(?: [a-z]+){1,3})/i;

/** The tapered tank of one sentence, with what it has to hold where that was said. */
export function taperedTankIn(scene: CheckScene, line: Line): readonly CheckNote[] {
  const text = scene.text.slice(line.start, line.end);
  const unit = AREA.exec(text)?.[1];
  if (line.asks || unit === undefined || / (?:if|unless|n't|not|never) /.test(line.words)) return [];
  const areas = areasIn(text, unit);
  const length = figuresOf(scene, line, 'length').find(({ attribute }) => attribute === 'length');
  const near = linesNear(scene, line, 1, 0);
  const tank = near.flatMap((one) => figuresIn(scene, one)).find(({ item }) => isTank(item));
  if (!areas || !length || !tank) return [];
  const wanted = wantedNear(scene, line);
  const share = usableShare(scene, line);
  const inputs = [
    input('first end', written(areas.first), tank.item),
    input('middle', written(areas.middle), tank.item),
    input('other end', written(areas.other), tank.item),
    input('length', written(length), tank.item),
    ...(share ? [input('usable share', written(share))] : []),
    ...(wanted ? [input('wanted', written(wanted))] : []),
  ];
  return [checkNote(scene, line, { check: 'prismoidal tank', inputs })];
}

const wantedNear = (scene: CheckScene, line: Line): FigureNote | undefined =>
  linesNear(scene, line, 0, 1)
    .filter((one) => !one.asks && HOLDS.test(one.words))
    .flatMap((one) => figuresOf(scene, one, 'volume'))
    .find(({ quote }) => /\b(?:lit(?:re|er)s?|gallons?)\b/i.test(quote));

/** An area for each place along the tank: a clause, or a part of a list, has one of each. */
function areasIn(
  text: string,
  unit: string,
): { readonly first: Quantity; readonly middle: Quantity; readonly other: Quantity } | undefined {
  const found = new Map<'first' | 'middle' | 'other', Quantity>();
  for (const piece of text.split(/[,;]|\band\b|\bthen\b/)) {
    const place = MIDDLE.test(piece)
      ? 'middle'
      : OTHER.test(piece)
        ? 'other'
        : END.test(piece)
          ? 'first'
          : undefined;
    const area = place && !ELSE.test(piece) ? areaIn(piece, unit) : undefined;
    if (place && area && !found.has(place)) found.set(place, area);
  }
  const [first, middle, other] = [found.get('first'), found.get('middle'), found.get('other')];
  return first && middle && other ? { first, middle, other } : undefined;
}

/** The number of a few words as an area, in the unit that was said of one of them. */
function areaIn(piece: string, unit: string): Quantity | undefined {
  const amount = AMOUNT.exec(piece)?.[1];
  if (amount === undefined) return undefined;
  const said = `${amount.replace(/ (?:square|at|in|half).*$/i, '')} ${unit}`;
  const { quantities } = readQuantities(said, tokenise(said), {
    units: 'metric',
    recordedAt: '2000-01-01T00:00:00Z',
  });
  const [one, more] = quantities;
  if (!one || more || one.dimension !== 'area') return undefined;
  return { value: one.value, unit: one.unit };
}
