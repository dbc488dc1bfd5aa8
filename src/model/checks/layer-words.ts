/** Words of work that changes what was measured before it. */
import { stemOf } from '../stems.ts';

/** Stems of the words in a text. */
export const stemsIn = (words: string) => new Set(words.split(/\s+/).map(stemOf));

/** Stands among the stems of an act that changes what was measured before it, so that such acts are found at once. */
export const LAYER_MARK = '*layer';

/** Work that puts a layer on, or takes one off: what was measured before it is another size after it. */
export const LAYER_WORK: ReadonlySet<string> = stemsIn(
  `line lined lining clad cladding insulate insulated insulation skin skinned sheathe sheathed sheathing veneer
  veneered tile tiled tiling floor floored carpet carpeted board boarded plank planked batten battened fair faired
  render rendered plaster plastered foam foamed felt felted pad padded upholster upholstered laminate laminated screed
  screeded level levelled pack packed fur furred case cased edge edged lip lipped overlay overlaid cover covered
  plane planed trim trimmed shave shaved ease eased widen widened enlarge enlarged narrow narrowed shorten shortened
  raise raised lower lowered thin thinned`,
);
