/** Reads what sheets are asked to weigh: "the bulkhead is 2 metres by 1.2 out of 18 mil ply, how heavy is that?" */
import type { Line } from '../kept/scene.ts';
import type { CheckNote, FigureNote } from '../notes.ts';
import { linesNear } from './figure-names.ts';
import { metres } from './metres.ts';
import { sizePairs } from './size-pairs.ts';
import { type CheckScene, checkNote, figuresOf, input, written } from './spoken-check.ts';

const ASKED =
  / (?:how heavy|weight of (?:it|that|them|those|one|each|the|a)|what (?:\S+ ){0,5}?weighs?|how much (?:\S+ ){1,5}?weighs?|work out (?:the|its|their) weight|how many (?:kilos|pounds)) /;
/** A word of each way to ask. */
export const asksWeight = (word: string): boolean => /^(?:heavy|weight|weighs?|kilos|pounds)$/.test(word);
/** Found on the scales. */
const KNOWN = / (?:weighed|scales|weighs (?:in at |about )?#|n't (?:care|matter)|never) /;
/** What a sheet is of, by the name that the check has a published density under. */
const MATERIALS: readonly (readonly [material: string, words: RegExp])[] = [
  ['plywood', / (?:ply|plywood|plies) /],
  ['mdf', / mdf /],
  ['acrylic', / acrylic /],
  ['aluminium', / (?:aluminium|aluminum|ali|alloy) /],
  ['steel', / steel /],
];
const SHEET = / (?:sheets?|panels?|boards?|plates?) /;
/** Thicker ones are no sheet. */
const THICKEST = 0.1;

/** The sheets of which one sentence asks the weight. */
export function sheetWeightIn(scene: CheckScene, line: Line): readonly CheckNote[] {
  if (!ASKED.test(line.words) || KNOWN.test(line.words)) return [];
  const near = linesNear(scene, line, 2, 0);
  const told = near.findLast((one) => sizePairs(scene, one).length > 0);
  const pair = told && sizePairs(scene, told)[0];
  if (!told || !pair) return [];
  const thick = thicknessOf(scene, told, [pair.first, pair.second]);
  const words = [told, line].map((one) => one.words).join('');
  const material = MATERIALS.find(([, of]) => of.test(words))?.[0];
  if (!thick || (material === undefined && !SHEET.test(words))) return [];
  const count = figuresOf(scene, told, 'count').find(({ value }) => Number.isInteger(value) && value >= 1);
  const of = pair.first.item === 'unnamed' ? undefined : pair.first.item;
  const inputs = [
    input('length', written(pair.first), of),
    input('width', written(pair.second), of),
    input('thickness', written(thick), of),
    ...(count && / sheets? | panels? | boards? | plates? /.test(told.words)
      ? [input('count', String(count.value))]
      : []),
  ];
  const options = material === undefined ? {} : { options: { material } };
  return [checkNote(scene, line, { check: 'sheet mass', inputs, ...options })];
}

function thicknessOf(scene: CheckScene, line: Line, not: readonly FigureNote[]): FigureNote | undefined {
  const [thick, more] = figuresOf(scene, line, 'length').filter(
    (one) => !not.includes(one) && metres(one) < THICKEST && metres(one) < Math.min(...not.map(metres)),
  );
  return more ? undefined : thick;
}
