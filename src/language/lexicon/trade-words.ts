/**
 * Words and phrases of the trades that build boats, vans and houses, in every form in which they are said: what a
 * recogniser of everyday speech is most likely to take for something else. Our own list, common practice, no source.
 * The nouns of `trade-nouns.ts` and the verbs of `work-verbs.ts` are part of it; below stands what these have no use for:
 * names of two words, and words for how a thing is.
 */
import { NOUN_KINDS, type NounKind, nounsOf, singular } from './trade-nouns.ts';
import { formsOfVerb, WORK_BASES } from './work-verbs.ts';

const TRADES = {
  boat: `bunk top|bunk tops|bulkhead|bulkheads|deck head|hull side|hull bottom|keel cooler|keel band|stern post|stern gland|
    stem post|stem head|transom knee|mast head|mast foot|mast partner|forestay|backstay|shroud|shrouds|chain plate|bilge keel|
    bilge stringer|cabin top|cabin side|cabin sole|cabin roof|coach roof|coachroof|side deck|fore deck|foredeck|aft deck|well deck|
    gas locker|weed hatch|engine bearer|engine bed|prop shaft|shaft log|cutless bearing|rudder stock|rudder blade|rudder post|
    tiller arm|king plank|garboard plank|sheer plank|hood end|hood ends|butt block|butt strap|rolling bevel|spiling|spiling batten|
    lofting|lofted|planking|carvel|clinker|lapstrake|strip planked|caulking|caulking iron|oakum|payed|treenail|trunnel|trenail|
    floor timber|frame head|deck shelf|beam shelf|half beam|hanging knee|lodging knee|quarter knee|sampson post|samson post|
    fair lead|fairlead|bow roller|anchor roller|hawse pipe|spurling pipe|navel pipe|gooseneck|cunningham|reefing|reef point|
    bolt rope|sail track|sprayhood|dodger|bimini|cockpit well|lazarette|cuddy|companionway step|washboard|dead light|port light|
    navigation light|bilge pump|bilge float|seacock|seacocks|skin fitting|through hull|hull thickness|hull plating|base plate|
    baseplate|swim|counter stern|tumblehome|freeboard|waterline|boot top|boot topping|antifoul|blacking|anode|anodes|osmosis|
    slipway|cradle|cradle pad|staging|trestle|trestles|gunwale|gunwales|gunnel|gunnels|rubbing strake|breasthook|thwart|thwarts|
    rowlock|rowlocks|oarlock|centreboard|centreboard case|daggerboard case|skeg|stem band|keelson|futtock|futtocks`,
  van: `wheel arch|wheel arches|bulkhead panel|load bay|sliding door|barn doors|roof vent|roof fan|pop top|swivel seat|seat base|
    leisure battery|split charge|shore power|hook up|solar panel|charge controller|diesel heater|gas locker|drop out|awning rail|
    roof bars|roof rack|ply lining|ply lined|carpet lining|four way stretch|sound deadening|thermal break|vapour barrier|cross member|
    crossmember|outrigger|outriggers|sill panel|inner sill|outer sill|jacking point|spare wheel|tow bar|tow hitch|drawbar|prop stand|
    leaf spring|leaf springs|spring hanger|shackle pin|bump stop|shock absorber|ride height|axle|axles|stub axle|half shaft|wheel hub|
    brake line|brake shoe|brake drum|gross weight|payload|tare|nose weight|front axle|rear axle|bakkie|ute|tray back|camper|campervan`,
  house: `floor joist|floor joists|ceiling joist|roof joist|hip rafter|valley rafter|jack rafter|common rafter|principal rafter|
    collar tie|collar beam|ridge board|ridge beam|ridge tile|wall plate|sole plate|sill plate|sill plates|top plate|king post|queen post|
    king stud|jack stud|cripple stud|trimmer joist|strutting|herringbone strutting|noggins|dwangs|blocking|joist hanger|joist hangers|
    restraint strap|truss clip|gang nail|window board|window reveal|window sill|door lining|door casing|door stop|door head|
    stair string|stair tread|stair riser|newel post|spandrel|winder|winders|half landing|balustrade|bargeboard|barge board|
    fascia board|soffit board|gutter bracket|downpipe|rain water|drip edge|lead flashing|step flashing|soaker|soakers|lead valley|
    counter batten|roofing batten|breather membrane|damp course|damp proof|dpc|dpm|sub floor|floor deck|floating floor|screed|
    stud wall|partition wall|party wall|gable|gable end|dormer|dormers|eaves|verge|verges|purlin|purlins|lath and plaster|
    skim coat|scratch coat|float coat|bonding coat|plasterboard|dry lining|dot and dab|coving|cornice|picture rail|dado rail|
    skirting board|architrave|rough opening|header|headers|footing|footings|strip footing|pad stone|padstone|underpinning|pile|piles|
    bearer|bearers|stump|stumps|verandah|veranda|decking board|handrail|loft hatch|crawl space|basement|cellar`,
  timber: `marine ply|birch ply|exterior ply|shuttering ply|hardwood ply|plywood sheet|sheet of ply|ply|plywood|sawn|planed|
    planed all round|par|rough sawn|quarter sawn|plain sawn|kiln dried|air dried|green oak|seasoned|sapwood|heartwood|
    end grain|long grain|cross grain|knotty|knot free|clear grade|tanalised|pressure treated|mortise|mortises|tenon|tenons|
    mortise and tenon|dovetail|dovetails|half lap|bridle joint|scarf joint|scarf|scarfed|finger joint|housing joint|biscuit joint|
    domino|loose tongue|splined|spline|chamfer|chamfered|bevel|bevelled|beveled|rebate|rebated|rabbet|rabbeted|dado|stopped|
    kerf|kerfs|kerfing|arris|arrises|bullnose|roundover|ovolo|ogee|moulding|beading|quadrant|edge banding|lipping|lippings|veneer|
    laminate|laminated|laminating|steam bent|steam box|former|formers|jig|jigs|template|templates|offcut|offcuts|stickers|
    larch|iroko|sapele|utile|meranti|douglas fir|western red cedar|siberian larch|sitka|spruce|accoya|balsa|hackmatack|tamarack|
    ipe|teak|ash|beech|oak|elm|walnut|sycamore|cupping|cupped|warped|twisted|shakes|checks|wane|waney edge|sistered|furring|furrings|
    firring|firrings|batten|battens|battening|lath|laths|noggin`,
  metal: `mild steel|stainless steel|galvanised|galvanized|galv|corten|box section|angle iron|flat bar|round bar|channel section|
    plate steel|checker plate|chequer plate|weld|welds|welded|butt weld|fillet weld|plug weld|spot weld|stitch weld|tack weld|
    root run|mig|tig|stick welder|arc|flux core|slag|spatter|penetration|heat affected|grinding disc|flap disc|cutting disc|
    wire wheel|deburred|countersunk|counterbored|reamed|reamer|tapped|tap and die|taps|dies|thread|threads|thread pitch|
    helicoil|thread insert|stud extractor|hub puller|bearing puller|keyway|key steel|woodruff key|grub screw|set screw|
    lathe|lathes|chuck|chucks|collet|collets|tailstock|headstock|saddle|apron|gib|gibs|gib strip|lead screw|feed screw|half nut|
    change gear|change wheels|back gear|bull wheel|ram|rams|shaper|planer|milling cutter|end mill|slot drill|fly cutter|
    dial gauge|feeler gauge|micrometer|vernier|blueing|scraped|scraping|shim|shims|shimmed|bush|bushes|bushing|bushings|
    bronze bush|white metal|babbitt|line bored|line boring|journal|journals|crank|crankshaft|camshaft|tappet|tappets|rocker|
    piston ring|gudgeon pin|cylinder head|head gasket|manifold|flywheel|backlash|end float|runout|axle box|spindle|spindles|
    swarf|chatter|knurl|knurled|quill|arbor|arbour|mandrel|vee belt|v belt|flat belt|pulley|pulleys|idler|tensioner`,
  resin: `epoxy|epoxy resin|polyester resin|vinylester|gelcoat|gel coat|flow coat|flowcoat|hardener|slow hardener|fast hardener|
    catalyst|accelerator|thickened epoxy|microballoons|micro balloons|micro fibres|microfibres|colloidal silica|fillet|fillets|
    filleting|glass cloth|woven roving|chopped strand|chopped strand mat|biaxial|biax|peel ply|vacuum bag|vacuum bagging|infusion|
    layup|lay up|wet out|wetted out|roller|laminating roller|pot life|amine blush|blush|hot coat|tack free|tacky|cured|curing|cure|
    post cure|exotherm|fairing|faired|fairing compound|long board|longboard|guide coat|barrier coat|tie coat|primer|primed|
    undercoat|undercoats|topcoat|topcoats|varnish|varnished|two pack|one pack|clear coat|flatting|flatted|keyed|solvent wipe|
    acetone|amine|sealant|sealants|polyurethane|bedding compound|butyl|butyl tape|sikaflex|tack cloth|wet edge|sags|runs|orange peel`,
  electrics: `consumer unit|fuse box|fuse board|distribution board|breaker|breakers|circuit breaker|main breaker|rcd|rcbo|mcb|
    isolator|isolators|battery isolator|busbar|bus bar|bus bars|negative bus|shunt|battery monitor|inverter|inverters|
    inverter charger|charger|battery charger|alternator|alternators|split charge relay|solenoid|relay|relays|mppt|
    solar controller|charge controller|solar array|lithium battery|lithium|lead acid|agm|cell|cells|cell balance|bms|
    amp hours|amps|volts|watts|kilowatt|kilowatts|voltage drop|earth rod|earth bond|bonding|earthed|grounded|neutral|live|
    twin and earth|tinned cable|tinned wire|flex|conduit|trunking|gland|glands|cable gland|grommet|grommets|crimp|crimps|crimped|
    lug|lugs|ferrules|heat shrink|heatshrink|junction box|back box|spur|spurs|socket|sockets|ring main|radial|lighting circuit|
    dimmer|led strip|downlight|downlights|switch panel|fuse holder|blade fuse|mega fuse|class t fuse|megger|multimeter|
    continuity|polarity|three phase|single phase|phase converter|contactor|overload relay|soft start|starter motor|glow plug|glow plugs`,
  plumbing: `copper pipe|plastic pipe|pex|barrier pipe|waste pipe|soil pipe|soil stack|vent pipe|air admittance|p trap|
    bottle trap|trap|traps|u bend|elbow|elbows|tee|tees|reducer|reducers|coupling|couplings|compression fitting|push fit|
    solder ring|soldered|olive|olives|ptfe|jubilee clip|jubilee clips|hose clip|hose tail|hose barb|stop cock|stopcock|
    isolating valve|ball valve|gate valve|check valve|non return valve|drain cock|drain valve|pressure relief|expansion tank|
    expansion vessel|header tank|cold tank|fresh tank|grey tank|gray tank|black tank|holding tank|calorifier|immersion heater|
    immersion|water heater|combi boiler|boiler|manifold|manifolds|underfloor heating|underfloor|heating loop|pipe run|
    radiator|radiators|towel rail|accumulator|water pump|shower pump|macerator|cassette toilet|cistern|cisterns|shower tray|
    shower pan|basin|basins|bidet|mixer tap|taps|faucet|spigot|float valve|ball cock|ballcock|flux|flue|flues|flue pipe|gas regulator|
    gas bottle|gas pipe|gas tap|bubble tester|leak test|pressure test|head of water|fall on the pipe|septic tank|soakaway|gully|gullies`,
  stone: `dressed stone|rubble stone|rubble wall|dry stone|ashlar|quoin|quoins|corbel|corbels|corbelled|voussoir|voussoirs|
    keystone|springer|mullion|mullions|lintel|lintels|sill stone|coping stone|plinth|plinths|string course|footing stone|
    hearth stone|hearth|hearths|hearthstone|flagstone|flagstones|slate|slates|slate hook|slating|pointing|repointing|pointed|
    lime mortar|lime putty|hydraulic lime|hot lime|slaked|hair plaster|horsehair|harling|render|rendered|pebble dash|
    lime wash|limewash|limecrete|cob|adobe|rammed earth|earth block|compressed block|dpc brick|engineering brick|stretcher|
    header course|soldier course|english bond|flemish bond|bed joint|perpend|perpends|brick tie|wall tie|wall ties|weep hole|
    weep holes|cavity|cavities|concrete block|block work|ready mix|ballast|sharp sand|soft sand|building sand|cement mixer|
    slab|slabs|rebar|mesh|shuttering|formwork|kicker|starter bar|vault|vaults|vaulted|arch|arches|barrel vault|flint|flints|
    sandstone|limestone|granite|millstone|bed stone|runner stone|stone nut|curb|cap|windshaft|fantail|stock|stocks|sail bar`,
  workshop: `table saw|band saw|mitre saw|miter saw|chop saw|track saw|circular saw|scroll saw|tenon saw|panel saw|coping saw|
    hand saw|pull saw|saw blade|rip fence|crosscut sled|push stick|riving knife|planer thicknesser|thicknesser|jointer|
    spindle moulder|router table|router bit|flush trim bit|straight cutter|plunge router|palm router|belt sander|orbital sander|
    random orbital|drum sander|sanding block|sanding disc|sanding belt|grit|sandpaper|eighty grit|scraper|cabinet scraper|spokeshave|spokeshaves|drawknife|drawknives|adzes|marking gauges|
    adze|adzed|broad axe|block plane|smoothing plane|jack plane|shoulder plane|rebate plane|chisel|chisels|gouge|gouges|mallet|
    bench hook|bench dog|bench dogs|bench top|bench vice|face vice|tail vice|hold fast|holdfast|sash clamp|sash clamps|g clamp|
    g clamps|c clamp|bar clamp|quick clamp|cramps|cramp|marking gauge|mortise gauge|combination square|try square|framing square|
    bevel gauge|sliding bevel|straight edge|spirit level|laser level|plumb bob|chalk line|string line|story stick|storey rod|
    dust extractor|dust extraction|shop vac|compressor|air line|nail gun|brad nailer|pin nailer|staple gun|impact driver|
    combi drill|drill bit|twist drill|forstner bit|auger bit|spade bit|hole saw|hole saws|pilot hole|pilot holes|counterbore|
    countersink|plug cutter|pocket hole|pocket screw|coach bolt|coach bolts|coach screw|carriage bolt|lag bolt|lag bolts|
    penny washer|penny washers|spring washer|nyloc|nylocs|nyloc nut|threaded rod|all thread|rawl plug|chemical anchor|resin anchor|
    workbench|sawhorse|sawhorses|anvil|anvils|forge|vise|vice|vices`,
} as const satisfies Readonly<Record<string, string>>;

/** Kinds of noun that name no thing of a trade: people, times, thoughts, the weather. */
const NO_TRADE: ReadonlySet<NounKind> = new Set(['person', 'time', 'abstract', 'region', 'air']);

const ODD_PLURALS: Readonly<Record<string, string>> = {
  knife: 'knives',
  shelf: 'shelves',
  leaf: 'leaves',
  half: 'halves',
  foot: 'feet',
  tooth: 'teeth',
  sheaf: 'sheaves',
};

/** Never said of one. */
const MANY_ONLY: ReadonlySet<string> = new Set(
  'mains stairs calipers callipers eaves heads rolls works headphones scissors pliers pincers tongs shears'.split(
    ' ',
  ),
);

/** More than one of a thing: "sash" gives "sashes", "gully" "gullies". */
export function pluralOf(noun: string): string {
  const last = noun.split(/[ -]/).at(-1) ?? noun;
  const odd = ODD_PLURALS[last];
  if (odd) return noun.slice(0, noun.length - last.length) + odd;
  if (singular(last) !== last || MANY_ONLY.has(last)) return noun;
  if (/(?:s|sh|ch|x|z)$/.test(last)) return `${noun}es`;
  return /[^aeiou]y$/.test(last) ? `${noun.slice(0, -1)}ies` : `${noun}s`;
}

const plain = (word: string) => word.replaceAll('-', ' ');

/** Names of things, and what is said of how they are; without the verbs of work. */
export function thingWords(): readonly string[] {
  const all = new Set<string>();
  for (const kind of NOUN_KINDS) {
    if (NO_TRADE.has(kind)) continue;
    for (const noun of nounsOf(kind)) for (const form of [noun, pluralOf(noun)]) all.add(plain(form));
  }
  for (const list of Object.values(TRADES))
    for (const phrase of list.split('|')) all.add(phrase.trim().replace(/\s+/g, ' '));
  return [...all];
}

function gather(): ReadonlySet<string> {
  const all = new Set(thingWords());
  for (const base of WORK_BASES) for (const form of formsOfVerb(base)) all.add(plain(form));
  all.delete('');
  return all;
}

let gathered: ReadonlySet<string> | undefined;

/** Every word and phrase, in lower case, words parted by one blank. Put together when it is first asked for. */
export function tradeWords(): ReadonlySet<string> {
  gathered ??= gather();
  return gathered;
}
