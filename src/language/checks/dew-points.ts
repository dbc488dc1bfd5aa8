/**
 * Reads the air that a coat is put on in: "eighteen degrees in the shed, seventy percent humidity, the steel is at
 * fourteen". What the tin wants, what is forecast and what the air is outside is left.
 */
import type { Line } from '../kept/scene.ts';
import type { CheckNote, FigureNote } from '../notes.ts';
import { type CheckScene, checkNote, figuresOf, input, wordOfFigure, written } from './spoken-check.ts';

const HUMID = / (?:humidity|humid|rh|relative humidity|hygrometer) /;
export const namesHumidity = (word: string): boolean => /^(?:humidity|humid|rh|hygrometer)$/.test(word);
const NOT_HERE =
  / (?:says|said|sheet|label|tin|maximum|max|minimum|limit|recommends?|outside|outdoors|out there|forecast|tomorrow|tonight|overnight|if|unless|wants?|needs?|should|must|wait|under|below|drops?|falls?) /;
/** What a coat goes on. */
const SURFACE =
  /\b(?:surface|steel|metal|plate|plating|alloy|aluminium|aluminum|iron|hull|deck|slab|concrete|floor|wall|ceiling|roof|timber|wood|panel|bulkhead|chassis|frame|keel|substrate|plaster|brick|bilge|rail|sill|arch|topsides?)s?\b/i;
/** How near the humidity word stands to its figure, in words. */
const NEAR = 5;

/** "I want to get the paint on" says what for. */
const isNotHere = ({ words }: Line): boolean =>
  NOT_HERE.test(words.replace(/ (?:i|we|i'd|we'd) (?:really )?(?:wants?|needs?|should|must) /g, ' '));

/** The dew point that one sentence gives what is needed for: its air and surface stand in it, or right beside it. */
export function dewPointIn(scene: CheckScene, line: Line): readonly CheckNote[] {
  if (line.asks || !HUMID.test(line.words) || isNotHere(line)) return [];
  const humidity = figuresOf(scene, line, 'ratio').find(
    (one) => one.unit === '%' && isStated(one) && one.value <= 100 && isBesideHumid(scene, line, one),
  );
  if (!humidity) return [];
  const near = scene.lines
    .slice(Math.max(0, line.index - 1), line.index + 2)
    .filter((one) => !isNotHere(one));
  const warmths = near.flatMap((one) => figuresOf(scene, one, 'temperature')).filter(isStated);
  const surface = warmths.find(({ item }) => SURFACE.test(item) && !/^in /i.test(item));
  const air = warmths.find((one) => one !== surface && !SURFACE.test(one.item));
  // Where the air was told elsewhere the check takes it as it was told last.
  return [
    checkNote(scene, line, {
      check: 'dew point',
      inputs: [
        ...(air ? [input('air', written(air))] : []),
        input('humidity', written(humidity)),
        ...(surface ? [input('surface', written(surface), surface.item)] : []),
      ],
    }),
  ];
}

const isStated = ({ bound, state }: FigureNote) =>
  (bound === 'exact' || bound === 'about') && state !== 'quoted' && state !== 'target';

function isBesideHumid(scene: CheckScene, line: Line, figure: FigureNote): boolean {
  if (/humid|^rh$/i.test(figure.item)) return true;
  const at = wordOfFigure(scene, figure) - line.first;
  const words = line.words
    .trim()
    .split(' ')
    .slice(Math.max(0, at - NEAR), at + NEAR);
  return HUMID.test(` ${words.join(' ')} `);
}
