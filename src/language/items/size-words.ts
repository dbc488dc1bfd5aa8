/**
 * Words that go with one of the sizes, wherever they stand in a clause. How much each place of such a word says is
 * learnt (`size-weights.ts`); here is only which size it goes with. Common practice, no source.
 */
import type { Attribute } from '../notes.ts';
import { wordTable } from '../word-table.ts';

const LISTS: Readonly<Partial<Record<Attribute, string>>> = {
  height: `high height tall taller higher lower lowest highest eaves ridge peak apex summit storey headroom lofty upright stands standing rises
    risen rise rising raised raise raising lowered lowering freeboard floor-to-ceiling floor-to-floor floor-to-roof top-to-bottom worktop-height
    ceiling roofline uplift mast-height knee-high waist-high lifts`,
  width: `wide width widest wider breadth broad broader narrow narrower narrowest narrowed beam beamy across widened widening widen wall-to-wall
    side-to-side shoulders half-breadth squeeze ripped rip face abeam athwart athwartships fat girthy`,
  length: `long length longer longest lengthen lengthened shorten shortened end-to-end ends tip stem-to-stern overall run runs running span spans
    spanning reaches stretch stretches docked crosscut footprint circuit perimeter gable-to-gable nose-to-tail bearing bears travel stroke footer
    footers lengths lengthways lengthwise course`,
  depth: `deep depth deeper deepest shallow shallower front-to-back sunk dug dig digging draught draft draws drawing drew buried underground trench
    bottom going tread sounding fathom keel-depth rebated housed`,
  thickness: `thick thickness thicker thickest thin thinner thinnest planed plane planing gauge sheet ply wall skin layer coat pour poured insulation
    batt batts foam sheath quilt laminate veneer micron microns plate lining screed membrane slab stuffed gauged film`,
  diameter: `diameter dia bore bored bores drill drilled drills round rounds hole holes drum shaft reamed reamer turned mike miked mikes micrometer
    calliper caliper callipers calipers spigot journal od id pipe tube circle cutter forstner`,
  radius: `radius radii radiused rounded fillet sweep`,
  clearance: `clearance clear clears cleared clearing clearances closer nearer spare play slack backlash swing combustible combustibles burner
    elbow-room legroom headroom kneeroom miss misses breathe stoop crouch`,
  gap: `gap gaps between apart air daylight space spaces opening joint joints fuss wiggle sloppy float expansion shadow crack cracks`,
  offset: `proud overhang overhangs overhanging offset setback inset back off away from past beyond out shy overlap overlaps overlapping lap laps
    lapped lapping fall falls drop drops dropped sag sags sagging bow bowed bulge belly hump twist camber crown rake runout run-out lean leans
    leaning projects projection projecting sticks stick poking pokes jut juts tolerance shift shifted shifts moved move moving bent`,
  size: `square squared size sized section nominal`,
  other: `centres centers centre center spacing spacings spaced pitch every apart pitches module gauge interval intervals stroke feed lift wear worn`,
};

/** Sizes that a word goes with; a word of two sizes is under both. */
export const SIZES_OF_WORD: Readonly<Record<string, readonly Attribute[]>> = (() => {
  const table: Record<string, Attribute[]> = {};
  for (const [size, words] of Object.entries(LISTS))
    for (const word of words.split(/\s+/)) table[word] = [...(table[word] ?? []), size as Attribute];
  return wordTable<readonly Attribute[]>(table);
})();
