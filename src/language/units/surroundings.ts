import type { Room } from '../rules/rule.ts';

/** Subjects that the words of a sentence give away; they settle what a number or a unit can mean. */
export type Subject =
  | 'heat'
  | 'moisture'
  | 'turning'
  | 'weight'
  | 'money'
  | 'cable'
  | 'liquid'
  | 'film'
  | 'angle'
  | 'pressure'
  | 'process'
  | 'machining'
  | 'cutting'
  | 'fluidFlow';

const WORDS: Readonly<Record<Subject, string>> = {
  heat: 'cook cooks cooked chill chills chilled chiller warm warmer warms warmed cold colder cool cooler cools hot hotter heat heater heating heats freezing freeze frost thermometer temperature temp temps weather oven kiln forge furnace boil boiling sweat sweating baking bake chilly tarp sun sunny roasting boiler thermostat celsius fahrenheit radiator shade',
  moisture: 'moisture damp dampness humidity humid wet wetter meter dry drier dryer',
  turning:
    'rpm revs rev speed speeds spins spin spinning spun tach tacho tachometer idle idles spindle countershaft lathe',
  weight:
    'weigh weighs weighed weighing weight weights scale scales heavy heavier hefty load loads loaded lift lifts lifting payload ballast hoist crane kilo kilos kg tonne tonnes lighter hook axle axles mass tongue',
  money:
    'cost costs costing price prices priced pricey pay pays paid paying charge charges charged quid bucks cheap cheaper cheapest expensive budget bill bills invoice invoiced quote quoted spend spent bought buy worth deposit refund refunded money cash fee fees dear shipping delivery sold sell labour discount saving saved bargain tip',
  cable:
    'cable cables wire wires wired wiring conductor conductors lug lugs flex twin earth ring circuit circuits socket sockets breaker breakers fuse feed armoured feeder battery inverter lighting lights light isolator ferrule crimp consumer shower cooker tails',
  liquid:
    'hardener resin epoxy catalyst thinner thinners solvent oil paint varnish glue water cup syringe pump pumps mix mixed mixing litre litres bottle coolant fluid fuel petrol diesel primer dose squirt',
  film: 'vapor-barrier barrier pond underlay wax powder foil poly polythene plastic sheeting film vapor vapour membrane coating coat coats paint shim tape visqueen feeler clearance plastigauge liner tarp galvanizing anodizing',
  angle:
    'slate slates shingles thatch steep steeper ladder vents angle angles mitre mitres mitred miter miters mitered bevel bevels beveled bevelled pitch pitches slope slopes sloped sloping flatten flattened canted raking square tilt tilted tilts tilting lean leans leaning rake raked splay splayed cant heel flare degree compound roof leading tipped tip tips rotate rotated turn turned rafter rafters blade deadrise chine protractor corner corners cut incline quadrant crank timing countersink bend bends bent elbow elbows sweep taper tapered chamfer chamfered deflects swing swings',
  pressure:
    'pressure pressures pressurise pressurised pump pumped tyre tyres tire tires gauge regulator compressor inflate inflated vacuum blast hydraulic accumulator bottle',
  process:
    'remain remains coat coats coating recoat dry dries drying dried dry-time cure cures curing cured set sets setting kick kicks kicked kicking gone goes pot life working open tack tacky hard harden hardens hardened harden soak soaks soaking soaked clamp clamps clamped clamping leave leaves leaving left stay stays stood stand sit sits sitting rest rests settle acclimatise acclimatize hold holds held holding test tests tested testing run runs running charge charges charged charging warm warms warm-up bake baked baking steam steams steamed steaming heat boil boiled wait waits between before primer varnish paint glue epoxy resin putty mortar concrete plaster screed grout adhesive sealant silicone filler oil stain lacquer had needs wants walk sanding sand mix pressure alarm timer cycle duty lasts last battery burn discharge rated fermented prove proved',
  machining:
    'thou feeler micrometer caliper calipers bearing bearings journal journals shaft bore bored reamer reamed spigot lathe mill turned gib slide backlash runout valve piston ring shim',
  cutting: 'kerf blade blades bit veneer veneers shim shims feeler drill tenon slop backlash mesh tap',
  fluidFlow: 'flow flows pump pumps litres gallons hose tap',
};

const SUBJECTS: ReadonlyMap<string, readonly Subject[]> = (() => {
  const subjects = new Map<string, Subject[]>();
  for (const [subject, words] of Object.entries(WORDS) as [Subject, string][]) {
    for (const word of new Set(words.split(' ')))
      subjects.set(word, [...(subjects.get(word) ?? []), subject]);
  }
  return subjects;
})();

/** Tokens searched on each side. */
const REACH = 26;

/** Distance in tokens to the nearest word of the subject in the same sentence; undefined when there is none. */
export function nearestOf(
  room: Room,
  subject: Subject,
  from: number,
  to: number,
  reach = REACH,
): number | undefined {
  const sentence = room.tokens[from]?.sentence;
  for (let distance = 1; distance <= reach; distance++) {
    for (const index of [from - distance, to - 1 + distance]) {
      const token = room.tokens[index];
      if (token?.sentence !== sentence || !token) continue;
      if (SUBJECTS.get(token.word)?.includes(subject)) return distance;
    }
  }
  return undefined;
}

/** True when the sentence names the subject. */
export function speaksOf(room: Room, subject: Subject, from: number, to: number, reach = REACH): boolean {
  return nearestOf(room, subject, from, to, reach) !== undefined;
}
