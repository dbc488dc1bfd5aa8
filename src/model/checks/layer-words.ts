/** Words of work that changes what was measured before it. */
import { kindsOf } from '../../language/lexicon/trade-nouns.ts';
import { wordsOf } from '../names.ts';
import { stemOf } from '../stems.ts';

/** Stems of the words in a text. */
export const stemsIn = (words: string) => new Set(words.split(/\s+/).map(stemOf));

/** Stands among the stems of an act that changes what was measured before it, so that such acts are found at once. */
export const LAYER_MARK = '*layer';

/** Work that names by itself that it puts a layer on, or takes one off. */
const LAYER_WORK: ReadonlySet<string> = stemsIn(
  `line lined lining clad cladding insulate insulated insulation skin skinned sheathe sheathed sheathing veneer
  veneered tile tiled tiling floor floored carpet carpeted board boarded plank planked batten battened fair faired
  render rendered plaster plastered foam foamed felt felted pad padded upholster upholstered laminate laminated screed
  screeded level levelled pack packed fur furred case cased edge edged lip lipped overlay overlaid cover covered
  plane planed trim trimmed shave shaved ease eased widen widened enlarge enlarged narrow narrowed shorten shortened
  raise raised lower lowered thin thinned`,
);

/** Work that takes something off: how much of it is gone, no thickness tells. */
const TAKEN_OFF = stemsIn(
  'plane planed trim trimmed shave shaved ease eased widen widened enlarge enlarged narrow narrowed shorten shortened lower lowered thin thinned rip ripped pull pulled strip stripped tear tore lift lifted peel peeled scrape scraped remove removed took',
);

/** Verbs of putting something on something, and those that stick it there. */
const PUT =
  /^(?:put|got|get|fitted|fixed|screwed|nailed|pinned|stapled|tacked|fastened|added|applied|set|bolted|riveted|rolled|poured|spread|packed|finished|slid)$/;
const STUCK = /^(?:stuck|glued|bonded|laid|bedded|cemented|epoxied|siliconed|relaid|reskinned)$/;
const WENT = /^(?:went|gone|goes|is|are|'s|'re|was|were|has|have)$/;
const ON = /^(?:on|onto|over|down|across|against|up|round|around|along|behind|underneath|beneath)$/;
const OFF = /^(?:off|up|out|away|down|from)$/;
const TOOK = /^(?:ripped|pulled|took|taken|stripped|tore|torn|lifted|peeled|scraped|removed)$/;
/** Things that are named like sheets and are put in or hung, and cover nothing. */
const NO_LAYER =
  /^(?:door|hatch|lid|window|pane|panel|shelf|shelves|drawer|curtain|blind|washboard|frame)s?$/;
/** So many words may stand between the verb and what it puts on. */
const REACH = 8;

/** Whether work that is done put a layer on something or took one off: by its verb, or by what was put where. */
export function isLayerWork(said: string): boolean {
  const words = wordsOf(said);
  return words.some((word) => LAYER_WORK.has(stemOf(word))) || putsLayer(words);
}

/** Whether it may have taken something off: no thickness tells what is left. */
export const takesOff = (said: string): boolean => wordsOf(said).some((word) => TAKEN_OFF.has(stemOf(word)));

/** "Put the cork down on the sole", "the carpet went down", "ripped the vinyl up". */
function putsLayer(words: readonly string[]): boolean {
  return words.some((word, at) => {
    const near = words.slice(at + 1, at + 1 + REACH);
    if (PUT.test(word) || STUCK.test(word)) {
      const on = near.findIndex((one) => ON.test(one));
      if (on < 0) return false;
      const object = near.slice(0, on === 0 ? REACH : on);
      const isNamed = object.some(isCovering);
      // "Glued the formica on": whatever is stuck on a face is a layer of it, but for what is no sheet at all.
      return isNamed || (STUCK.test(word) && on > 0 && object.every((one) => kindsOf([one]).size === 0));
    }
    if (TOOK.test(word)) return near.some(isCovering) && near.some((one) => OFF.test(one));
    const next = near.slice(0, 3);
    return isCovering(word) && next.some((one) => WENT.test(one)) && next.some((one) => ON.test(one));
  });
}

function isCovering(word: string): boolean {
  if (NO_LAYER.test(word)) return false;
  const kinds = kindsOf([word]);
  return kinds.has('sheet') || kinds.has('material');
}

/** "Put the cork down": a floor is meant where no other face is named. */
export const floorMeant = (said: string): readonly string[] =>
  / down(?: (?:now|today|at last|too|first|yesterday|this (?:morning|afternoon)))?$/.test(
    ` ${wordsOf(said).join(' ')}`,
  )
    ? ['floor', 'sole', 'deck'].map(stemOf)
    : [];
