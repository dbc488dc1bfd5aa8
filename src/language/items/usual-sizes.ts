/**
 * Which size of a thing a bare number is likely to be, by how big it is: 18 of a shelf is its thickness, 300 its depth,
 * 900 its length. Common practice, no source. These are only likely; words beside the number count for more.
 */
import type { Attribute } from '../notes.ts';
import { wordTable } from '../word-table.ts';
import { SIZE_LETTERS } from './size-table.ts';

/** Letters with the most millimetres that a size is likely to have; the last has no end. */
const BANDS: readonly (readonly [string, string])[] = [
  // Stuff that is bought flat or as boards.
  ['t60 w400 l', 'board plank floorboard decking planking weatherboard clapboard cladding strake'],
  [
    't60 w1300 l',
    'ply plywood mdf osb chipboard plasterboard drywall hardboard blockboard sheet panel cement-board plexiglass perspex acrylic',
  ],
  ['t70 w900 l', 'top worktop countertop counter benchtop slab-top tabletop'],
  ['t40 w450 l', 'veneer lipping edging laminate batten lath slat strip lathing stave'],
  [
    't400',
    'insulation foam wool batt batting rockwool fleece cork polystyrene styrofoam celotex fibreglass fiberglass sheepwool hemp thatch',
  ],
  [
    't400 d800 l',
    'slab screed limecrete concrete hardcore gravel sand ballast mulch topsoil scalpings sub-base subbase blinding',
  ],
  [
    't60',
    'plaster render mortar coat coating skim grout epoxy paint primer varnish adhesive underlay membrane felt carpet lino vinyl cork-tile laminate-floor gasket seal shim washer veneer-face',
  ],
  ['t250 w900 l', 'cushion mattress pad squab upholstery bolster'],
  ['t30 w3000 l', 'canvas tarp tarpaulin awning-cloth fabric cloth polythene curtain sailcloth sail'],
  [
    't40 h1200 l',
    'skirting architrave trim moulding molding beading cornice dado baseboard plinth kickboard fascia bargeboard coving upstand splashback backsplash gunwale',
  ],
  ['t40 w700 l', 'tile paver flag flagstone shingle slate shake'],
  ['t60 w1300 h', 'glass pane glazing window-glass sidelight'],
  ['t350 h', 'wall partition bulkhead bund stud-wall gable'],
  ['t120 h', 'hedge fence hoarding screen balustrade railing guardrail handrail banister parapet'],
  [
    't30',
    'plate plating sheeting steelwork baseplate shell skin tin corrugated membrane lid-skin cheek wear-plate doubler gusset flange-plate',
  ],
  // Timbers and sections.
  ['w30 d400 l', 'joist rafter beam girder lintel purlin bressummer header floor-joist tie-beam'],
  [
    's200 l',
    'post stud strut newel upright mullion noggin dwang baluster spindle-post column pillar king-post',
  ],
  [
    'w250 l',
    'rail stile muntin transom ledger plate-timber sole-plate wallplate bearer sleeper stringer keelson stringboard frame-rail cleat',
  ],
  ['t80 l', 'leg arm spoke rung stave tine handle lever crank pole-arm'],
  ['t80 w400 h', 'rib frame mould mold former station'],
  ['w300 l', 'sill cill threshold saddle hearthstone coping capping kerb curb'],
  // Round things.
  ['o200 l', 'pipe tube hose conduit shaft axle pole spar mast boom sleeve standpipe downpipe'],
  ['o60 l', 'rod bar dowel spindle tiebar rebar tubing cable flex wire rope line chain warp halyard'],
  [
    'o4000',
    'wheel disc disk pulley drum sprocket gear flange flywheel propeller impeller sheave piston cylinder bush bushing bearing journal hub rim ring collar grommet thimble ball button knob lamp washer-ring porthole portlight rotor roller windlass capstan chuck faceplate blade-disc saw-blade spigot plug well-ring turret millstone',
  ],
  [
    'o600',
    'hole bore flue chimney vent duct drain pilot cut-out borehole counterbore eyelet weep socket chimney-liner liner',
  ],
  ['o26 l', 'bolt screw nail rivet pin peg stud-bolt coach-bolt spike tack staple dog trenail treenail brad'],
  // Openings.
  [
    'w',
    'opening doorway gateway gate hatch hatchway window casement sash skylight rooflight aperture entrance archway companionway',
  ],
  ['w1500 l', 'corridor passage aisle gangway path walkway alley lane road drive track runway'],
  ['w30 d60 l', 'groove slot dado mortise housing rabbet rebate keyway kerf channel chase'],
  [
    'd1500 l',
    'trench ditch footing footings foundation pit well pond pool hole-in-the-ground trial-pit pier excavation',
  ],
  ['g60 w', 'gap joint seam crack slit'],
  // Furniture and fittings.
  ['t45 d700 l', 'shelf shelving mantel mantelpiece ledge'],
  ['t50 h1300 l', 'table desk bench workbench stool chair seat settle island pew lectern'],
  ['t45 w1100 h', 'wardrobe bookcase dresser larder locker chest'],
  // Base units stand at counter height less the top.
  ['t45 w830 h960 w1200 h', 'cupboard cabinet carcass unit'],
  [
    't45 w900 d',
    'drawer tray basin sink stove hob cooker oven fridge freezer range hearth heater washer dryer toilet basin-unit',
  ],
  ['w1700 l', 'bed bunk berth bath bathtub sofa cot crib'],
  ['t40 w', 'tread'],
  ['h', 'riser step rise plinth-box platform dais threshold-step kerbstone deckhouse wheelhouse'],
  ['t40 w1200 h', 'door leaf shutter flap'],
  // Buildings, boats, vehicles.
  [
    'h',
    'ceiling roof ridge apex peak eave eaves storey headboard tower chimney-stack mast-head scaffold belfry steeple floor-to-ceiling floor-to-plate flagpole pylon tree cowl crest summit',
  ],
  [
    'l',
    'boat hull vessel barge trailer wagon truck van ship sloop ketch dinghy canoe kayak yawl cutter narrowboat caravan bus carriage',
  ],
  [
    'l',
    'room kitchen cabin bedroom hall barn shed workshop cottage house garage parlour lounge porch nave chapel greenhouse studio annexe annex veranda terrace patio deck-area shop hangar byre',
  ],
  ['l', 'run span reach stroke travel offcut length roll spool coil lead tail circuit drain-run hem'],
  ['w', 'beam-width aisle-width body chassis wheelbase-track bay stall berth-space slip'],
  [
    'x',
    'overhang setback projection rake fall drop sag bow twist camber crown bulge hump runout run-out wobble alignment misalignment lean offset lap overlap nosing horn deflection tilt wind belly',
  ],
  ['c', 'clearance headroom legroom kneeroom play slack backlash freeplay swing'],
  ['e', 'spacing centre center pitch gauge interval wear feed lift'],
];

interface Band {
  readonly most: number;
  readonly size: Attribute;
}
const bandsOf = (text: string): readonly Band[] =>
  text.split(' ').map((band) => ({
    size: SIZE_LETTERS[band.charAt(0)] as Attribute,
    most: band.length > 1 ? Number(band.slice(1)) : Number.POSITIVE_INFINITY,
  }));

const BY_HEAD: Readonly<Record<string, readonly Band[]>> = wordTable(
  Object.fromEntries(
    BANDS.flatMap(([bands, heads]) => heads.split(/\s+/).map((head) => [head, bandsOf(bands)] as const)),
  ),
);

/** The likely size of a thing with this head; `undefined` for a head or a value that the table does not hold. */
export function likelySize(head: string, millimetres: number): Attribute | undefined {
  return BY_HEAD[head]?.find(({ most }) => millimetres <= most)?.size;
}
