/**
 * Verbs of work on things, for any trade: wood, metal, masonry, wiring, plumbing, boats, vehicles, cloth, finishes,
 * and the errands around them. Regular forms are derived; irregular ones are listed. Written from general trade
 * vocabulary: common practice, no source.
 */

const REGULAR = `
add adjust align anchor anneal anodise anodize apply arrange assemble attach balance batten bed bevel bleach blank
block board bolt bond bore box brace bracket braze brick bridge brush buff bundle burnish bush button cable calibrate
canvas cap carry carve caulk cement centre center chamfer chase chisel chop clad clamp clean clear clip close coat coil
collect comb compact complete concrete condition connect contour cook cope cork correct counterbore countersink couple
cover crate crimp crop cure curve cushion dab damp deburr deck degrease demolish dent dig dimension disassemble
disconnect dismantle dovetail dowel drain dredge dress drill drop dry dust earth edge elbow empty enamel engrave
etch excavate expand extend face fair fasten feather felt fence ferrule fettle fibreglass fiberglass file fill fillet
filter finish fire fit fix flange flare flash flatten flip float flood floor flush foam fold form frame free fuel
fuse galvanise galvanize gasket gauge gild glaze glass glue gouge grade graft grease groove ground grout guard gut
hack hammer handle harden haul heat hem hinge hitch hoist hollow hone hook hose house inlay insert inspect install
insulate iron isolate jack join joint joist key knock knot lace lacquer ladder laminate lap lash latch lath
launch leather level lever lift line link liven load lock loosen lower lubricate lug machine mark mask mend mesh
mill mitre miter mix model mop mortar mortise mortice mould mold mount move mud mulch nail neaten nip notch nut oil open
order organise organize overhaul overlay pack pad paint panel paper pare parge park part patch pattern peen peg
perforate pickle piece pierce pin pipe pitch pivot plane plank plant plaster plate plug plumb point polish pop
position pot pour power press pressure-test pressurise pressurize prime print prise prize profile prop protect prune
pull pump punch purge push putty quarter rack rake ram rasp ream rebate reconnect recover reduce refill refinish refit refix
reface refurbish regrease reglue reinforce reinstall relocate remount remove render renew repair repaint repack repeat
replace repoint replumb replaster reposition reprime reroute reseal reseat resaw reshape resand restore restring resurface
retap retension rethread retighten retrim retrofit reupholster return reverse revarnish rewire rework ridge rig rip rivet
rod roll roof rotate rough round rout route rub rule rust-proof sand sandblast scaffold score scour scarf scrape scratch
screed screen screw scribe scrub seal seam seat secure separate service settle shape sharpen sheath sheathe sheet shellac
shelve shift shim shingle shoulder shovel shutter side sign silicone silver size skim skin slab slat slate sleeve slice slide
slip slot smooth snap snug soak solder sort space splice spray spring-clean square staple stack stain stake stamp
stabilise stabilize start steam steel stencil stiffen stitch stop store straighten strap streak stretch string strip strut
stud stuff suspend swage swap sweat swivel tack tag tailor tamp tank tap tape taper tar tarp template tenon
tension terminate test thin thread tidy tie tighten tile tilt timber tin top torch torque touch tow transfer
transplant trench trial trim trowel true try tuck tune turf turn twist unblock unbolt unclip unclog uncouple uncover
underpin undercoat unfold unhook unload unlock unpack unplug unscrew unseize unstick untangle upholster upgrade vacuum varnish
veneer vent veneer vulcanise wall wash waterproof wax weatherproof wedge weed weigh weld whip whitewash widen winch wipe
wire wrap x-ray yoke zinc zip commission decommission deliver hire rent borrow book phone email text message ring-fence
pick fetch measure photograph label number catalogue price cost quote register insure scrap dump skip bin recycle
rebed rebush recoat recaulk recharge recore rebore redraw rehouse resize restack regrout repitch refelt reslate
retile rehinge relabel reline relay-out remark remodel repot repressurise respray restain rescue revive
chock level-up top-up second-fix first-fix double-check dry-fit fine-tune hand-cut spot-weld tack-weld pre-drill predrill
countersink backfill bulkhead freewheel hardwire jump-start kiln-dry knurl lute parbuckle pay plumb-in sister spile
trammel tram kerf coppice plait serve marl worm parcel ballast bend-test burl card cleat cobble crosscut deadlock
declutter decorate defrost depressurise derust detach devise dilute dip disinfect dismount divert dose drape
embed emboss enclose erect exchange expose extract fabricate fashion feed-through firm flux furl gather gel
graze haunch herringbone impregnate infill inject jig jigsaw kit lag leach limewash lime log mangle marry
meter mist muck neutralise neutralize nest nudge offload outfit overcoat overlap pad-out paste patinate pave peel pile plait
ply pocket pouch preload preheat prep prepare quench quilt rail raise range reamer rebalance reclaim
recut-in rectify re-lay release relieve rescrew rinse rope rotavate rubber sash saddle sag-test salvage scallop
scoop scuff shackle shave shed shore shorten shot-blast shrink-wrap signwrite slacken slurry smear snake socket spindle spot
spread-eagle square-up squeeze stagger stash steady step stipple stow straddle strike-off strim sugar-soap supply support
surface switch tailgate tamper tangle tarmac tether thatch thicken thickness toenail tongue tool
trace track traverse treat trip truss tumble twine underlay undercut unroll unwrap upcycle valve wad warm weather
wet-sand wheel whittle winterise winterize wool wrench yank zinc-plate reattach reassemble relamp replank
bang slap thump wallop clout smash splash dollop smarm gob fling toss sling heave lug hump cart
fell limb buck season split rive shave smarten relash
dock grab swap slate slab nab bodge chamfer strap feather pack refill weatherstrip slush suck blast soda-blast pickle degas purge muster dish lever pry prise crowbar unscrew pop-rivet hot-glue veneer bung sluice hoover nurse ream rout burr deburr sort swage tin lash whip parcel serve splice reeve step unstep ship unship moor slip berth dock trailer hitch
telephone ring overhaul tackle demount hose descale redo blacken bush-hog needle-gun
reframe rebracket rebalance redeck reglaze repin regasket reskin respoke retread retube revalve rewax
`;

/** base, past, participle; a second spelling stands as a line of its own. */
const IRREGULAR = `
bend bent bent/bind bound bound/bleed bled bled/blow blew blown/break broke broken/bring brought brought
build built built/burn burnt burnt/burn burned burned/buy bought bought/cast cast cast/cut cut cut/deal dealt dealt
dig dug dug/do did done/draw drew drawn/drive drove driven/feed fed fed/find found found/fit fit fit/get got got
get got gotten/grind ground ground/hang hung hung/hew hewed hewn/hold held held/inlay inlaid inlaid
lay laid laid/let let let/light lit lit/make made made/mow mowed mown/offset offset offset/overlay overlaid overlaid
pay paid paid/put put put/rebind rebound rebound/rebuild rebuilt rebuilt/recast recast recast/recut recut recut
redo redid redone/redraw redrew redrawn/regrind reground reground/rehang rehung rehung/relay relaid relaid
remake remade remade/rerun reran rerun/reset reset reset/rewind rewound rewound/rewrite rewrote rewritten
ring rang rung/rive rived riven/run ran run/saw sawed sawn/saw sawed sawed/sell sold sold/send sent sent
set set set/sew sewed sewn/sew sewed sewed/shave shaved shaven/shear sheared shorn/shoot shot shot/shrink shrank shrunk
shut shut shut/sink sank sunk/slide slid slid/slit slit slit/sling slung slung/sling slung slung/speak spoke spoken
spend spent spent/spin spun spun/split split split/spread spread spread/spring sprang sprung/stick stuck stuck
strike struck struck/string strung strung/strip stripped stripped/sweep swept swept/take took taken/tear tore torn
thin thinned thinned/throw threw thrown/unbind unbound unbound/undercut undercut undercut/underlay underlaid underlaid
undo undid undone/unstick unstuck unstuck/unwind unwound unwound/upset upset upset/weave wove woven/wet wet wet
wet wetted wetted/wind wound wound/write wrote written/wring wrung wrung/give gave given/hide hid hid/hide hid hidden
choose chose chosen/swing swung swung/stand stood stood/lose lost lost/hit hit hit/meet met met/leave left left
tread trod trodden/drag dragged dragged/drag drug drug/draw drawed drawed/put putten putten/dig dug dug/shoe shod shod/spill spilt spilt/spoil spoilt spoilt/rid rid rid
call called called/weave wove woven/shear sheared sheared/mend mended mended/show showed shown/bodge bodged bodged/chuck chucked chucked/lob lobbed lobbed
whack whacked whacked/wrestle wrestled wrestled/finish finished finished/sort sorted sorted/figure figured figured
work worked worked/check checked checked/plan planned planned/sketch sketched sketched/tell told told/contact contacted contacted
chase chased chased/post posted posted/use used used/swap swapped swapped/pass passed passed/hook hooked hooked
`;

/** Final consonants of short verbs double ("fitted"); these longer or vowel-pair ones do so as well. */
const DOUBLING =
  /^(?:(?:re|un|over|under|pre)?[^aeiou]*[aeiou][bdgklmnprtvz]|upset|offset|retrofit|transfer|unzip|reship)$/;
const NO_DOUBLING = new Set([
  'box',
  'fix',
  'mix',
  'wax',
  'tow',
  'saw',
  'sew',
  'key',
  'lay',
  'fillet',
  'gasket',
]);

export function pastOf(base: string): readonly string[] {
  if (base.endsWith('e')) return [`${base}d`];
  if (/[^aeiou]y$/.test(base)) return [`${base.slice(0, -1)}ied`];
  if (/[aeiou]l$/.test(base) && !/[aeiou]{2}l$/.test(base)) return [`${base}led`, `${base}ed`];
  if (DOUBLING.test(base) && !NO_DOUBLING.has(base)) return [`${base}${base.at(-1)}ed`];
  return [`${base}ed`];
}

export function ingOf(base: string): readonly string[] {
  if (/ie$/.test(base)) return [`${base.slice(0, -2)}ying`];
  if (/[^eoy]e$/.test(base)) return [`${base.slice(0, -1)}ing`];
  if (/[aeiou]l$/.test(base) && !/[aeiou]{2}l$/.test(base)) return [`${base}ling`, `${base}ing`];
  if (DOUBLING.test(base) && !NO_DOUBLING.has(base)) return [`${base}${base.at(-1)}ing`];
  return [`${base}ing`];
}

const baseForms = new Map<string, string>();
const pastForms = new Map<string, string>();
const participles = new Map<string, string>();
const ingForms = new Map<string, string>();
const thirdForms = new Map<string, string>();

export function thirdOf(base: string): string {
  if (/(s|x|z|ch|sh|o)$/.test(base)) return `${base}es`;
  return /[^aeiou]y$/.test(base) ? `${base.slice(0, -1)}ies` : `${base}s`;
}

const irregularBases = new Set<string>();
for (const line of IRREGULAR.trim().split(/[/\n]/)) {
  const [base, past, participle] = line.trim().split(' ') as [string, string, string];
  irregularBases.add(base);
  baseForms.set(base, base);
  pastForms.set(past, base);
  participles.set(participle, base);
  // "sewed" beside "sewn", "shaved" beside "shaven": the regular form serves as participle as well.
  if (past.endsWith('ed')) participles.set(past, base);
  thirdForms.set(thirdOf(base), base);
  for (const ing of ingOf(base)) ingForms.set(ing, base);
}
for (const base of REGULAR.trim().split(/\s+/)) {
  if (irregularBases.has(base) && base !== 'fit') continue;
  baseForms.set(base, base);
  thirdForms.set(thirdOf(base), base);
  for (const past of pastOf(base)) {
    pastForms.set(past, base);
    participles.set(past, base);
  }
  for (const ing of ingOf(base)) ingForms.set(ing, base);
}

/** "Regrind", "unbolt", "over-drill": work done again, undone or overdone is work. */
const PREFIX = /^(?:re|un|pre|over|under|dis|de)-?(?=[a-z]{3})/;
/** Words that only look prefixed. */
const NO_PREFIX =
  /^(?:read|reads|reading|ready|real|reach|rest|rests|rent|until|unit|union|delight|display|discount|discharge|press|present|pretend|result|require|remark|resort|report|restrain|request|understand|overlook|overall|depart|record|regard|regards|resolve|review|reserve|reflect|revolve|redress|rebound|deport|dispose|disclose|unfit|undone|undergo|retired|unused|unfinished|unpainted|unplaned|untreated|unsanded|uncut|unmade|unmarked|uncovered-by|unlined|unheated|unpaid|unsorted|unfixed|unfitted|unlit|unseen|unwanted|reserved|rested|reported|recorded|required|related|received|designed|depressed|demanded|determined|deserved|decided|delayed|departed|descended|displayed|discharged|discovered|discussed|distorted|overdone|overgrown|overlooked|overheated|overloaded|overrun|undercut|undertook|underlined)$/;

/** Looks a form up as it is, else without its prefix. */
function lookUp(forms: ReadonlyMap<string, string>, word: string): string | undefined {
  const known = forms.get(word);
  if (known !== undefined) return known;
  const prefix = PREFIX.exec(word)?.[0];
  if (!prefix || NO_PREFIX.test(word)) return undefined;
  const bare = forms.get(word.slice(prefix.length));
  return bare === undefined ? undefined : `${prefix}${bare}`;
}

/** Each looks a lower-case form up and gives the verb's base form. */
export const workBase = (word: string): string | undefined => lookUp(baseForms, word);
export const workPast = (word: string): string | undefined => lookUp(pastForms, word);
export const workParticiple = (word: string): string | undefined => lookUp(participles, word);
export const workIng = (word: string): string | undefined => lookUp(ingForms, word);
export const workThird = (word: string): string | undefined => lookUp(thirdForms, word);

/** How many verbs the table holds. */
export const workVerbCount = baseForms.size;

/** The verbs in their base form. */
export const WORK_BASES: readonly string[] = [...baseForms.keys()];

const formsByBase = new Map<string, Set<string>>();
for (const forms of [baseForms, pastForms, participles, ingForms, thirdForms])
  for (const [form, base] of forms) formsByBase.set(base, (formsByBase.get(base) ?? new Set()).add(form));

/** Every form of a verb that stands in the table, given in its base form. */
export const formsOfVerb = (base: string): readonly string[] => [...(formsByBase.get(base) ?? [])];
