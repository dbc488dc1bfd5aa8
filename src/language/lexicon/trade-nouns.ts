/**
 * Nouns of boat, van and house building and what kind of thing each one names. The kind tells which figures a
 * noun can carry: a breaker has a current and no drying time. Our own list, common practice, no source.
 * A word may be of several kinds; the first one listed below wins for its usual size.
 */
import { wordTable } from '../word-table.ts';
import { ABSTRACT, PEOPLE, TIMES } from './everyday-words.ts';

export const NOUN_KINDS = [
  'hole',
  'opening',
  'cable',
  'pipe',
  'round',
  'sheet',
  'material',
  'joist',
  'timber',
  'fastener',
  'coating',
  'liquid',
  'container',
  'electric',
  'appliance',
  'machine',
  'vessel',
  'space',
  'ground',
  'assembly',
  'part',
  'region',
  'air',
  'tool',
  'person',
  'time',
  'abstract',
  'measure',
] as const;
export type NounKind = (typeof NOUN_KINDS)[number];

/** Singular heads. Plurals are found by taking off the ending. */
const HEADS: Readonly<Record<NounKind, string>> = {
  hole: `hole bore counterbore mortise pilot cut-out cutout aperture slot notch housing rebate rabbet
    dado groove penetration drilling perforation scupper-hole limber weep eyelet borehole`,
  opening: `serving-hatch dogflap loading-door trapdoor manhole porthole-light clerestory lancet fanlight transom-light dormer-window letter-slot gunport
    opening door doorway window hatch hatchway companionway alcove niche bay recess porthole portlight
    skylight rooflight gate gateway doorframe casement sash reveal cubby fireplace inglenook passage corridor
    gangway aisle passageway entrance exit archway arch vent louvre grille letterbox catflap ventilator`,
  cable: `cable wire flex cord conductor lead tail tails earth neutral live jumper harness loom wiring earthing
    braid twin-and-earth armoured busbar`,
  pipe: `trap siphon syphon manifold-pipe gas-line heatpipe penstock culvert sewer tailpipe headpipe downtube inner-tube
    pipe pipework tube tubing hose duct ducting conduit waste drainpipe downpipe soakaway flue chimney
    exhaust silencer trunking overflow standpipe soil-pipe elbow hosepipe flexi stovepipe liner
    snorkel drain drainage suction tundish`,
  round: `pulley-wheel flange-wheel countersink roller-wheel rundle dowel-pin shim-ring
    roller capstan bollard stock shaft rod dowel pulley wheel disc disk blade prop propeller impeller spindle axle bearing bush bushing
    collar pin peg stanchion pole mast boom spar roller drum flywheel sprocket gear cog castor caster
    forestay backstay babystay ball button ring hoop grommet o-ring gland spigot plug thimble sheave rope line warp halyard countershaft layshaft camshaft crankshaft driveshaft log column newel baluster knob handwheel thread cutter bit piston valve seal gasket tyre tire rim hub`,
  sheet: `tarpaulin awning-cloth polythene polytunnel visqueen dpm breather-membrane vapour-barrier batten-board weatherboard clapboard shiplap t-and-g tongue-and-groove beadboard wallboard cement-board backer-board hardiplank slate-board flagstone paver slab-stone corrugated tin-sheet
    deadlight headlining washboard dropboard plating ply plywood mdf osb chipboard plasterboard drywall hardboard blockboard glass glazing pane perspex
    polycarbonate lexan acrylic veneer laminate melamine board sheet panel skin lining sheathing siding cladding
    insulation foam batt batts rockwool celotex polystyrene styrofoam wool matting mat plate sheeting shim gib
    flooring decking hardcore sub-base lino linoleum carpet vinyl cork underlay underlayment tile tiling slate shingle shake felt furring
    membrane foil fabric cloth canvas leather upholstery biaxial csm peel-ply fibreglass fiberglass grp planking
    ceiling floor wall partition headliner sole soleboard floorboard backboard splashback backsplash worktop
    countertop counter tabletop benchtop leaf tread facing fascia soffit bargeboard
    skirting baseboard architrave casing trim moulding molding lath screed flashing zinc aluminium
    aluminum corten tinplate checkerplate mesh netting fibre fiber woodfibre hemp fleece lid cover bottom deck mirror windshield windscreen backplate faceplate kickplate gusset doubler pad packer
    wedge transom centreboard daggerboard`,
  material: `timber lumber wood oak ash beech birch pine spruce larch cedar mahogany teak iroko sapele douglas
    fir walnut maple cherry elm sycamore poplar hardwood softwood bamboo steel stainless iron bronze brass copper
    lead alloy ali plastic rubber neoprene nylon acetal delrin hdpe pvc abs ptfe carbon kevlar glassfibre concrete
    brick blockwork block stone rubble flint granite marble limestone sandstone gravel hardcore sand
    ballast aggregate soil clay straw lime cement scrap offcut metal`,
  joist: `sleeper-beam sill-beam crossbeam tie-beam collar-beam floorbeam binder bressummer bressumer cruck brace-beam rim-joist bandjoist
    joist rafter beam bearer purlin ridge-beam trimmer lintel header girder rsj noggin nogging dwang carlin
    carline deckbeam frame stud batten stringer rib bulwark keelson stem ridge`,
  timber: `picket paling slatboard dado-rail picture-rail chair-rail scotia coping-board bargeboard-end cant fascia-board sprocket-piece sole-piece capping-rail
    post rail plank stile mullion muntin sill cill jamb head-rail plinth kingplank covering-board
    coverboard bunk strake garboard gunwale gunnel rubrail rubbing-strake chine keel sternpost deadwood futtock
    knee thwart coaming toerail bulwark-rail fiddle bead cockbead stop slat strip lipping edging
    nosing bullnose handrail banister string riser stair step ladder rung leg cleat upright spacer spline scarf bar crossbar crossmember member chord strut brace tie web flange angle-iron
    channel box-section c-section extrusion sleeper sole-plate wallplate glazing-bar barge wale sheer shelf-clamp quarter-round l-bracket unistrut`,
  fastener: `spike staple-nail coach-screw machine-screw carriage-bolt eyebolt pop-rivet toggle-bolt molly thumbscrew wingnut locknut washer-nut circlip rollpin split-pin cotter
    mount mounting bolt nut screw nail rivet staple setscrew coachscrew coach-bolt lag hanger-bolt anchor rawlplug
    wallplug tack brad pin-nail cap-screw grubscrew clip p-clip clamp hose-clip jubilee cable-tie zip-tie tie-wrap
    hinge bracket hanger joist-hanger penny turnbuckle shackle u-bolt chainplate latch
    catch hasp lock fixing fastening fastener bolthole coupling`,
  coating: `sealer limecoat whitewash creosote oil-finish danish-oil tung-oil decking-oil hardwax zinc-primer etch-primer rust-converter clearcoat basecoat tack-rag
    membrane paint primer undercoat topcoat varnish lacquer wax stain dye preservative epoxy resin hardener
    catalyst polyester vinylester gelcoat glue adhesive sealant silicone mastic caulk sikaflex putty filler fairing
    bog mortar plaster render skim grout thinset bitumen tar antifoul antifouling bondcoat bonding-coat coat mix batch
    finish limewash emulsion eggshell gloss distemper shellac french-polish flux solder paste
    compound gel threadlock loctite deck-paint undercoater tack-coat tie-coat lime-mortar levelling-compound`,
  liquid: `water oil fuel diesel petrol gasoline gas propane butane lpg coolant antifreeze grease solvent thinners
    acetone spirit turps meths kerosene paraffin brine refrigerant sewage greywater rainwater`,
  container: `drum-tank churn hopper-bin demijohn carboy vat pail watering-can toolbox locker-box tacklebox chest-box crate-box silo
    tank cistern cylinder boiler bucket sump gearbox bottle jerrycan can tin tub barrel butt
    reservoir bladder keg crate box locker chest bin bowser trough calorifier bilge holding-tank header-tank case
    carton skip hopper jar gearcase radiator rad pan`,
  electric: `ballast-unit charge-controller splitter dimmer doorbell transducer-cable strip-light ledstrip floodlight headlight taillight wiper horn-button relay-box fuse-holder fuseholder busbar-box
    breaker fuse supply inlet inverter battery bank charger alternator circuit ring main mains socket outlet
    receptacle switch isolator relay contactor starter overload rcd rcbo mcb gfci consumer-unit fusebox switchboard
    shunt solar array controller mppt converter transformer adaptor bulb lamp
    light lights led downlight spotlight sensor thermostat stat timer pcb module spur feed hookup shore-power
    generator genset dynamo magneto coil solenoid element cell lithium terminal connector
    ferrule lug crimp junction splice spark ignition stereo radio speaker antenna aerial router transducer sounder
    subpanel load-centre distribution-board subboard ammeter voltmeter`,
  appliance: `urn hotplate griddle kitchenette-sink washstand dehydrator incubator aga rayburn range-cooker bread-oven pizza-oven steamer proofer cooler chiller ice-maker smoker
    boiler radiator calorifier fridge refrigerator freezer washer dishwasher dryer cooker oven hob stove range grill microwave kettle
    heater towel-rail shower sink basin bath bathtub toilet loo wc bidet tap
    faucet mixer tray showertray extractor hood fan blower dehumidifier aircon conditioner heatpump
    woodburner burner fire woodstove multifuel television telly screen monitor computer icebox coolbox
    macerator watermaker mini-split minisplit geyser immersion waterheater mattress sofa settee bed bunkbed
    urinal`,
  machine: `chainsaw mower strimmer rotavator auger post-driver log-splitter pressure-washer concrete-mixer whacker wacker compactor roller-machine press-brake shear bender english-wheel rolls mangle treadle potter-wheel gear-hobber surface-grinder jointer overhand drum-sander scroll-saw pump-jack
    lathe bandsaw tablesaw planer thicknesser shaper mill milling-machine drill-press pillar-drill sander linisher
    router-table spindle-moulder mortiser grinder bench-grinder compressor motor engine outboard inboard pump
    bilge-pump winch windlass hoist crane gantry jack forklift telehandler digger excavator dumper cement-mixer welder plasma-cutter press guillotine folder tractor chipper sawmill saw mitre-saw
    chopsaw dust-extractor machine engine-block stern-drive saildrive thruster bow-thruster autopilot
    steering rudder tiller anvil forge kiln furnace vice vise drive transmission conveyor elevator
    lift stairlift chainhoist handbrake brake brakes caliper`,
  vessel: `tram bus-body locomotive loco railcar tender-wagon guard-van brake-van handcart tractor-cab fire-engine ambulance cabin-cruiser lugger coble cobble dory pram currach curragh pinnace wherry
    boat hull yacht dinghy runabout skiff launch narrowboat canoe kayak catamaran trimaran sloop ketch
    yawl tender punt raft houseboat van bus truck lorry camper campervan motorhome caravan trailer wagon
    carriage car pickup horsebox shipping-container chassis cab body bodywork house
    cottage shed barn garage hut chalet bungalow outbuilding greenhouse conservatory extension annexe
    annex tower church signal-box treehouse yurt tent lighthouse windmill boathouse stable dairy
    she rig vehicle ship tug lifeboat`,
  space: `parlour parlor scullery boot-room bootroom mudroom sunroom porch-room vestibule entry nursery den snug lean-to leanto byre sty coop run-in paddock orchard forecourt basin-room boiler-room plantroom pumphouse boathouse-bay
    room bedroom bathroom kitchen loft attic cellar basement hall hallway landing lounge living-room diner
    pantry larder utility porch study office workshop shop studio cabin saloon galley heads forepeak cockpit
    wheelhouse engine-room bilges lazarette berth v-berth cuddy hold crawlspace stairwell ensuite wetroom cupboard wardrobe closet booth stall pod interior inside outside compartment
    void cavity space chamber yard garden site upstairs downstairs driveway lane roof-space eaves`,
  ground: `ground dirt road pavement waterline datum baseline footpath subfloor tide flags hardstanding beach slipway dock quay`,
  assembly: `well wellhead stall-front pew pulpit-box lectern altar bandstand pagoda gazebo arbour trellis hurdle stile-gate footbridge bridge sluice weir lock-gate millrace kennel hutch henhouse chicken-coop beehive hive nestbox planter raised-bed coldframe log-store woodstore bike-rack kayak-rack crib cot cradle-bed high-chair sledge sled cart-bed dray limber-cart carousel seesaw slide-frame loom-frame easel
    pushpit pulpit-rail taffrail companionway-steps steps slab footing foundation pad padstone trench plinth-wall pontoon jetty bench table desk workbench cabinet carcass unit drawer bookcase shelf shelving
    dresser seat bench-seat settle dinette island peninsula vanity nightstand staircase stairs stair steps railing balustrade fence pergola platform scaffold trestle sawhorse jig template pattern mould mold
    former form strongback cradle stand dolly trolley cart rack framework subframe chassis-frame
    bulkhead roof gable dormer truss porch-roof canopy awning sail rigging dodger bimini tarp gutter guttering downspout waterwheel fence-panel gable-wall chimney-stack hearth
    mantel mantelpiece surround run bulwarks superstructure
    coachroof wheelhouse-roof cabin-top doghouse mast-step engine-bed bed-frame bedframe keelboard
    tabernacle davit gallows bowsprit pulpit pushpit fender mudguard bumper ramp slope stage shelter boxwork hitch towbar suspension spring
    leaf-spring shock damper bunk-board roofrack roof-rack pod-roof pop-top bellows concertina`,
  part: `stopcock ledge saddle shroud nock barb prong spigot-end ferrule-end journal tailstock headstock chuck carriage-stop arbor mandrel quill leadscrew backgear keyseat crown-wheel pinion crank conrod crankcase manifold rocker tappet camber-plate footrail headrail batten-pocket luff leech clew tack-point cringle reefpoint mast-foot gooseneck toggle fork yoke clevis gimbal hub-cap mudflap running-board tailgate dashboard dash grille-bar seatbox wheelarch wheel-arch spoke nave felloe tenon-shoulder axletree shaft-end swingletree
    fitting shank fluke crosstree spreader-tip washboard bollard fairlead cleat-horn pintle gudgeon rowlock oarlock
    quadrant binnacle pedestal lifeline jackline guardrail stem-head roller-cheek swash louvre-blade stop-end leg top apron stretcher side end back front base foot arm lip tongue tenon dovetail joint mitre
    miter bevel chamfer fillet corner edge face underside handle pull lever pedal arm-rest
    backrest footrest headboard runner slide track guide rail-drawer ram clapper
    pawl ratchet key keyway cap neck shoulder flank tip tooth teeth horn bow stern quarter shoe skid skeg bilge-keel
    strap sling webbing belt chain cable-tray slideway head tail mid-span middle
    centre center line-set lineset overhang overlap upstand downstand lap seam joint-line course
    row sill-plate nozzle spout lens bezel escutcheon rose
    insert infill blank piece part component section length half portion stay
    support spreader ear eye hook tang ferrule-part bolt-hole boss fin wing flap shutter
    curtain blind drawer-front drawer-box kickboard toe-kick cornice pelmet finial capping
    capstone coping flight winder pitch hip valley verge eave wing-wall footplate gunwale-cap forefoot breasthook hog sheerline spray-rail rubstrip centreline centerline clump counterweight
    tell-tale astragal meeting-edge meeting-rail sash-cord cords
    firebox baffle throatplate grate door-glass ashpan fluepipe cowl register-plate kick`,
  region: `left right port starboard east west north south nearside offside inboard outboard`,
  air: `air weather humidity moisture damp sun shade frost breeze wind dew rain snow`,
  tool: `meter tape ruler rule square level spirit-level gauge calipers callipers micrometer feeler feelers scale scales
    thermometer multimeter plumb plumb-bob bob chalk pencil marker chisel hammer mallet spanner wrench screwdriver driver drill hole-saw holesaw jigsaw circular-saw handsaw plane router brush gun torch
    knife scraper sandpaper respirator mask glove goggles camera tripod mic microphone headlamp phone
    laptop spreadsheet drawing plan sketch book manual spec label sidewall packet sticker
    nameplate datasheet instructions leaflet website paperwork invoice receipt`,
  person: `fella fellow feller dude buddy pal lads gal guys expert rep salesman postman teacher student apprentice
    foreman chippy sparky sparks brickie plasterer decorator painter tiler rigger sailmaker shipwright boatbuilder welder
    smith blacksmith farmer landlord tenant visitor customer helper missus grandson granddaughter nephew niece friend engineer plumber electrician brother sister neighbour neighbor chap guy man woman lady lad bloke
    joiner carpenter inspector surveyor architect builder roofer glazier fabricator mechanic viewer viewers audience subscriber comment comments mate dad father mum mother wife husband son daughter kid
    kids uncle aunt cousin boss supplier merchant seller dealer owner cop police officer council people someone
    somebody anyone anybody everybody everyone nobody idiot genius folks person crew team
    gent gaffer boy girl doctor physio grandad grandfather gran cat dog jackdaw pigeon mouse mice you-lot law
    manufacturer maker factory yardman harbourmaster broker insurer club`,
  time: `day week month year hour minute second morning afternoon evening night tonight today tomorrow yesterday
    monday tuesday wednesday thursday friday saturday sunday january february march april may june july august
    september october november december weekend fortnight moment while time lunchtime lunch dinner tea breakfast
    season summer autumn winter christmas easter birthday age century decade date deadline`,
  abstract: `spot job thing bit lot way idea money episode video film promise news confession story list question answer
    problem trouble mess mistake sum sums number numbers figure figures math maths arithmetic word words point reason
    chance luck fun joke fact truth matter sort kind type bunch couple pair dozen load loads budget cost price bill grand order delivery quote stuff things everything something
    anything nothing none love heart hand hands finger fingers wrist eye eyes nose mouth forehead mind language help work
    rest shot footage shame pity bother hurry rush patience progress start beginning
    difference change option choice decision sense worth rule rules licence license permit drizzle sunshine coffee beer pie cake biscuit chips fish cricket lesson title calendar
    music voice noise racket smell view tree trees pedants opinion credit thanks cheers bye hello pleasure relief surprise disaster miracle nightmare beauty bargain favour gram edition version detail stage-next bang go try look touch feel guess bet swear honest rate average estimate scout
    clue opposite reality secret speech `,
  measure: `height width length depth thickness diameter radius clearance headroom gap spacing fall drop
    rise offset weight mass volume capacity temperature angle pressure torque current voltage power speed size span
    reach travel stroke throw swing draught draft freeboard loa wheelbase track-width setback
    tolerance allowance margin play slack backlash kerf girth circumference perimeter
    gradient camber crown sag deflection stretch load payload limit maximum
    minimum rating consumption draw moisture-content ratio deadrise rake dimension measurement distance
    run-out runout reading floor-to-floor floor-to-ceiling wall-to-wall side-to-side end-to-end
    front-to-back top-to-bottom bumper-to-bumper centre-to-centre center-to-center face-to-face edge-to-edge twist cup `,
};

/** Heads of two words or more whose kind is not that of their last word. */
const COMPOUNDS: Readonly<Partial<Record<NounKind, string>>> = {
  appliance: `mini split|water heater|air conditioner|towel rail|washing machine|tumble dryer|shower tray|range cooker|heat
    pump|wood burner|wood stove|composting toilet|cold plate|ice box|induction hob|gas hob|cooker hood|water softener`,
  electric: `power inlet|shore power|consumer unit|battery bank|solar panel|solar array|fuse box|circuit breaker|ring
    main|electrical panel|electric panel|switch panel|junction box|supply box|bus bar|battery monitor|power supply|charge
    controller|battery charger|distribution board|electricity supply|breaker panel|main switch|shore lead|hook up|control
    box|back box|meter box|float switch|bilge alarm|light fitting|ring circuit|socket ring|starter motor`,
  container: `water tank|fuel tank|gas tank|fresh tank|grey tank|gray tank|black tank|holding tank|header tank|day tank|gas
    bottle|gas cylinder|oil tank|hot tank|expansion tank|expansion vessel|gear box|gas locker|chain locker|anchor locker`,
  pipe: `line set|bath waste|sink waste|shower drain|sink drain|floor drain|soil pipe|vent run|stern tube|exhaust hose|fuel
    line|gas line|water line|brake line|cockpit drain|waste pipe|flue pipe|breather hose|fill hose|air line`,
  part: `bench top|table top|desk top|meeting edge|meeting rail|glazing bar|drawer runner|drawer front|drawer box|toe
    kick|leading edge|trailing edge|prop tip|propeller tip|blade tip|spring seat|ram slide|table slide|cross slide|ball
    joint|stair tread|cutting edge|fore edge|ridge line|water line mark|sheer line|drip edge|hand hold|grab rail|grab
    handle|center line|centre line|drawer bottom|drawer side|drawer back|kick board|side panel|end panel|end grain|front
    rail|back rail|bottom rail|top rail|lock rail|corner post|door leaf|step treads|finger joint|half lap|scarf joint`,
  sheet: `wood fibre|wood fiber|sheep's wool|rigid foam|glass fibre|mineral wool|peel ply|bubble wrap|vapour barrier|vapor
    barrier|breather membrane|damp proof course|cement board|tile backer|outer skin|inner skin|inside layer|outside
    layer|bottom planking|side planking|lead flashing|roof metal|metal roof|metal siding|floor deck|sub floor|kick
    plate|back plate|face plate|base plate|motor plate|hull plating|deck plating|marine ply`,
  timber: `sill plate|top plate|sole plate|wall plate|sill board|top plank|strip|covering board|king plank|rub
    rail|toe rail|hand rail|header beam|ridge board|barge board|window board|cover strip|angle iron|box section|cross
    member|bed rail|bunk board|drawer rail|curtain rail|sheer strake|floor bearer|cross bearer|cabin sole bearer`,
  opening: `rough opening|shower door|cabinet door|hatch opening|roof vent|roof light|window opening|door opening|sash
    opening|cat flap|washer niche|serving hatch|loft hatch|engine hatch|escape hatch|sliding door|back door|front door`,
  round: `drive pulley|prop shaft|propeller shaft|stern gear|cutless bearing|cutlass bearing|hole saw|drill bit|router
    bit|saw blade|curtain pole|shower head|steering wheel|jockey wheel|spare wheel|drop spindle|flag pole|tow ball`,
  machine: `bench lathe|band saw|table saw|mitre saw|miter saw|bilge pump|water pump|fuel pump|shower pump|anchor
    windlass|bow thruster|stern thruster|pillar drill|drill press|dust extractor|extractor motor|fresh water pump`,
  assembly: `lever frame|window seat|bench seat|roof rack|roof slope|chart table|kitchen unit|base unit|wall unit|bed
    platform|engine bed|mast step|rear bumper|fuel rack|bed frame|pop top|spice rack|steering gear|shower pan`,
  coating: `bonding coat|deck paint|linseed oil|linseed putty|tile adhesive|floor paint|contact adhesive|anti foul|wood
    glue|hot glue|spray foam|expanding foam|top coat|base coat|tie coat|barrier coat|barn paint|first coat|second coat`,
  space: `engine room|wheel house|wet room|living room|dining room|locking room|boiler room|machine room|shower
    room|utility room|tool store|upstairs room|big room|back bedroom|front bedroom|main cabin|aft cabin|fore
    cabin|v berth|crawl space|roof space|loft space|chain locker space`,
  fastener: `coach bolt|coach screw|joist hanger|hose clip|cable tie|cable clip|pipe clip|hub nut|wheel nut|wheel
    bolt|head bolt|keel bolt|engine mount|machine screw|self tapper|lag bolt|lag screw|stud bolt|anchor bolt|wall
    anchor|prop nut|lock nut|jam nut|u bolt|chain plate|holding down bolt`,
  cable: `battery cable|socket cable|earth strap|ground strap|extension lead|shower cable|heater cable|cooker
    cable|lighting cable|armoured cable|bonding wire|ground wire|steering cable|throttle cable`,
  joist: `floor joist|ceiling joist|deck beam|roof beam|carlin beam|tie beam|stair trimmer|collar tie|ceiling tie|knee brace|wind brace|cross brace|corner brace|wall
    stud|roof rafter|floor timber|ridge beam|window header|door header|bond beam`,
  vessel: `tiny house|shipping container|signal cabin|house boat|motor home|flat bed|box van|panel van|horse box`,
};

const kinds = new Map<string, Set<NounKind>>();
function add(noun: string, kind: NounKind): void {
  const known = kinds.get(noun);
  if (known) known.add(kind);
  else kinds.set(noun, new Set([kind]));
}
for (const kind of NOUN_KINDS) {
  for (const noun of HEADS[kind].split(/\s+/)) add(noun, kind);
  for (const phrase of COMPOUNDS[kind]?.split('|') ?? []) add(phrase.trim().replace(/\s+/g, ' '), kind);
}

const IRREGULAR = wordTable<string>({
  feet: 'foot',
  teeth: 'tooth',
  knives: 'knife',
  shelves: 'shelf',
  leaves: 'leaf',
  halves: 'half',
  men: 'man',
  women: 'woman',
  people: 'people',
  children: 'child',
  mice: 'mouse',
  axes: 'axis',
  sheaves: 'sheave',
  wharves: 'wharf',
  batteries: 'battery',
  glass: 'glass',
  brass: 'brass',
  chassis: 'chassis',
  cross: 'cross',
  truss: 'truss',
  press: 'press',
  compass: 'compass',
  windlass: 'windlass',
  bus: 'bus',
  gas: 'gas',
  lens: 'lens',
  canvas: 'canvas',
  heads: 'heads',
  mains: 'mains',
  stairs: 'stairs',
  calipers: 'calipers',
  celotex: 'celotex',
  eaves: 'eaves',
  mattress: 'mattress',
  harness: 'harness',
  recess: 'recess',
  thickness: 'thickness',
  distress: 'distress',
  stainless: 'stainless',
});

/** Takes a plural ending off: `sashes` is `sash`, `batteries` is `battery`, `brass` stays. */
export function singular(noun: string): string {
  const irregular = IRREGULAR[noun];
  if (irregular) return irregular;
  if (!noun.endsWith('s')) return noun;
  if (kinds.has(noun) && !/[^s]s$/.test(noun)) return noun;
  if (noun.endsWith('ies') && noun.length > 4) return `${noun.slice(0, -3)}y`;
  if (/(?:sh|ch|x|ss|z)es$/.test(noun)) return noun.slice(0, -2);
  if (/[^su]s$/.test(noun)) return noun.slice(0, -1);
  return noun;
}

export function isPlural(noun: string): boolean {
  return singular(noun) !== noun;
}

/** True for nouns and two-word heads that the list holds, in the singular or plural. */
export function isTradeNoun(noun: string): boolean {
  return kinds.has(noun) || kinds.has(singular(noun));
}

const firstOfTwo = new Set(
  [...kinds.keys()].filter((noun) => noun.includes(' ')).map((noun) => noun.split(' ')[0]),
);

/** Whether a word and the one behind it, in the singular, are a head of two words that the list holds. */
export const isTwoWordNoun = (first: string, second: string): boolean =>
  firstOfTwo.has(first) && isTradeNoun(`${first} ${singular(second)}`);

const NO_KIND: ReadonlySet<NounKind> = new Set();

/** The kinds of thing that a noun phrase names: those of its longest known ending, none when unknown. */
export function kindsOf(words: readonly string[]): ReadonlySet<NounKind> {
  const all = kindsOfEnding(coreOfName(words));
  return all;
}

const LINKS = new Set([
  'from',
  'above',
  'below',
  'between',
  'through',
  'in',
  'on',
  'at',
  'to',
  'each',
  'all',
  'for',
  'under',
  'over',
  'across',
  'behind',
  'around',
]);

/** A name without its "from the wall", "each side", "between coats". */
function coreOfName(words: readonly string[]): readonly string[] {
  const link = words.findIndex((word, k) => k > 0 && LINKS.has(word));
  return link > 0 ? words.slice(0, link) : words;
}

const FASTENER: ReadonlySet<NounKind> = new Set(['fastener']);

function kindsOfEnding(words: readonly string[]): ReadonlySet<NounKind> {
  const last = words.at(-1);
  if (!last) return NO_KIND;
  // Metric threads name their bolt: "M10s".
  if (/^m\d+s?$/.test(last)) return FASTENER;
  const before = words.at(-2);
  const pair = before
    ? (kinds.get(`${before} ${singular(last)}`) ?? kinds.get(`${before} ${last}`))
    : undefined;
  return pair ?? kinds.get(last) ?? kinds.get(singular(last)) ?? everydayKind(singular(last));
}

const PERSON: ReadonlySet<NounKind> = new Set(['person']);
const TIME: ReadonlySet<NounKind> = new Set(['time']);
const MATTER: ReadonlySet<NounKind> = new Set(['abstract']);

/** What an everyday word of no trade names, when that is no thing. */
function everydayKind(noun: string): ReadonlySet<NounKind> {
  if (PEOPLE.has(noun)) return PERSON;
  if (TIMES.has(noun)) return TIME;
  return ABSTRACT.has(noun) ? MATTER : NO_KIND;
}

/** How many nouns and phrases the list holds. */
export const tradeNounCount = kinds.size;

/** The nouns and phrases of one kind, in the singular. */
export function nounsOf(kind: NounKind): readonly string[] {
  return [...kinds].filter(([, of]) => of.has(kind)).map(([noun]) => noun);
}
