/** Closed-class words, verbs and adjectives that the shallow parse leans on. */
import { VERB_BASES as EVERYDAY_VERBS, NOUN_OR_VERB } from '../lexicon/everyday-words.ts';
import { wordSet } from '../word-table.ts';

export const DETERMINERS =
  wordSet(`the a an this that these those each every either neither both all any some no another
  which whichever what whatever half such most more enough other same`);
export const POSSESSIVES = wordSet('my your his her its our their whose');
export const PRONOUNS =
  wordSet(`i you he she it we they me him us them myself yourself itself themselves who whom which that this
  these those one ones mine yours hers ours theirs there everything something anything nothing everybody nobody somebody
  someone anyone everyone whoever 'em em`);
/** Subjects that act on a thing and are never the thing measured. */
export const SPEAKERS = wordSet(
  `i you he we me him us someone somebody anyone everybody nobody who everyone`,
);
export const PREPOSITIONS =
  wordSet(`of in on at to from off by for with without under over above below beneath beside between behind
  through across along around round into onto upon within inside outside up down out near past against per than
  since until till after before during via toward towards like except plus minus less as underneath opposite abaft
  aft forward atop beyond throughout`);
export const CONJUNCTIONS = wordSet(
  'and but or nor so because cause cos if when while though although whereas unless once then that where why how whether',
);
export const BE = wordSet(`is are was were be been being am 's 're 'm isn't aren't wasn't weren't ain't`);
export const AUXILIARIES =
  wordSet(`has have had having 've 'd do does did doing don't doesn't didn't hasn't haven't hadn't got gotten
  get gets getting let lets`);
export const MODALS =
  wordSet(`will would shall should can could may might must 'll won't wouldn't shan't shouldn't can't couldn't
  mustn't needn't cannot gonna gotta wanna oughta ought`);
export const ADVERBS =
  wordSet(`now then just only still already also too very really quite nearly almost about roughly around
  again always never ever here there maybe perhaps probably actually basically literally luckily sadly exactly precisely
  even yet soon later ago away back together apart instead anyway anyhow today tomorrow yesterday tonight once twice
  well right straight dead bang clean pretty rather fairly further farther overall alone apiece though however
  otherwise somehow somewhere everywhere upstairs downstairs abroad indoors outdoors in out up down off on over not n't inside outside underneath overhead below overnight sideways longways lengthways crossways endways elsewhere upright ashore alongside throughout meantime meanwhile
  call say reckon ish odd plus give take or so-ish give-or-take max maximum min minimum tops gross`);
export const FILLERS =
  wordSet(`um uh er erm ah oh ooh hmm mm yeah yes okay ok right well look listen see sorry hang lemme
  anyway hi hello hey bye thanks alright man boy ugh soooo sooo hm eh huh nope nah naw aye yep yup cheers`);
export const NEGATIVES = wordSet("not n't never no nor neither without nothing none");
export const DIMENSION_WORDS =
  wordSet(`wide deep long high tall thick across clear wider deeper longer higher taller thicker narrower
  shorter lower width depth length height thickness diameter radius clearance headroom diagonal diagonally square round`);

export const NUMBER_WORDS =
  wordSet(`zero nought oh one two three four five six seven eight nine ten eleven twelve thirteen fourteen
  fifteen sixteen seventeen eighteen nineteen twenty thirty forty fifty sixty seventy eighty ninety hundred thousand
  million dozen half third thirds quarter quarters eighth eighths sixteenth sixteenths thirty-second thirty-seconds
  seconds tenth tenths fifth fifths double triple treble point couple eighteens fours sixes eights twos threes twelves tens nineties`);
export const UNIT_WORDS =
  wordSet(`mm cm m km mil mils mill millimetre millimetres millimeter millimeters centimetre centimetres
  centimeter centimeters metre metres meter meters kilometre kilometres kilometer kilometers inch inches foot feet yard
  yards thou ft in thousandths degree degrees celsius fahrenheit centigrade c f gram grams kilo kilos kilogram
  kilograms kg g tonne tonnes ton tons pound pounds lb lbs ounce ounces oz stone litre litres liter liters l ml
  millilitre millilitres milliliter milliliters gallon gallons pint pints quart quarts volt volts v amp amps ampere
  amperes milliamp milliamps watt watts w kilowatt kilowatts kw horsepower horse hp va kva kilovolt newton newtons
  metre nm pascal pascals kilopascal kilopascals bar psi hour hours hr hrs minute minutes min mins second
  seconds day days percent per cent % rpm revs revolutions knot knots mph square squared cubic dollar dollars bucks buck
  quid pound pence cents euro euros grand krona kronor kroner crowns lbf °c °f ° kwh wh ah fluid centigrade`);

/** Adjectives that name no particular thing and say nothing lasting about it: left out of names. */
export const LIGHT_ADJECTIVES =
  wordSet(`little lovely nice big-old proper whole entire actual real own ugly gorgeous good bad great
  beautiful fine decent poor sad dear cheap expensive daft silly stupid bloody damn old-fashioned very own only
  single extra spare finished usual normal standard stock existing current original previous present next last
  remaining final fancy pretty massive tiny-little certain particular exact precise full total overall rotten rusty dirty
  clean wet dry freshly brand brand-new beautiful miserable awful weird funny odd ridiculous enormous huge giant skinny
  chunky clever famous so-called dreaded trusty poxy nasty horrible perfect cosmetic obvious inevitable humble honest
  stated claimed promised missing wrong right-sized bent broken cracked split blown bare new old used second-hand
  secondhand reclaimed salvaged leftover`);
/** Adjectives that tell one thing from its fellow: kept in names. */
export const TELLING_ADJECTIVES =
  wordSet(`upper lower inner outer inboard outboard front rear back fore aft forward port starboard left
  right east west north south eastern western northern southern top bottom middle centre center first second third
  fourth fifth sixth seventh main mizzen tall low high short long wide narrow deep shallow thick thin big small large
  medium hot cold fresh grey gray black white red green blue rough sheltered external internal exterior interior
  nearside offside vertical horizontal diagonal curved flat round square oval raised sunken fixed sliding folding
  hinged opening removable temporary double triple twin electric electrical hydraulic manual solid hollow laminated
  insulated galvanised galvanized stainless wooden plastic metal cast glazed armoured armored upstairs downstairs
  inside outside outdoor indoor end side corner`);
export const OTHER_ADJECTIVES =
  wordSet(`good better best bad worse worst happy sad tired ready free sure true false able afraid alive
  alone aware busy careful close closer closest dead different difficult done due early easy empty fair far fast glad
  gone hard heavy heavier lighter honest hungry impossible kind late light likely lucky mad near open possible quick
  quiet safe same serious sharp shut sick simple slow smart soft sorry sound special spongy stiff stiffer straight strange
  strong stuck sweet thirsty tight tighter loose level plumb flush proud shy scant clear worth wrong cheap cheaper bigger
  smaller larger warmer colder cooler hotter drier wetter oversize oversized undersize average less least fewer few
  many much several enough plenty bent square out-of-square perfect useless useful fine okay available missing rough
  sticky tacky damp dry wet warm cool cloudy sunny foggy rainy icy greasy dusty rusted rotten twisted bowed cupped
  warped octagonal hexagonal rectangular circular triangular precise approximate nominal critical fat fatter thinner`);

const VERB_BASES = `add adjust agree align allow anchor answer apply arrive ask attach balance bed bend bleed bolt bond bore borrow
  box brace break bridge bring brush build bump buy call carry carve cast catch change charge check chisel choose chop
  clad clamp clean clear clip close coat come connect cook cool copy cost count cover crack creak crimp cross cure curse
  cut damage decide degrease deliver die dig dip do drag drain draw dream dress drill drive drop dry earn ease eat
  email end epoxy expect explain extend face fair fall fasten feed feel fetch file fill film find finish fire fit fix
  flash flip float flood flush foam fold forget form frame freeze gain get give glass glaze glue go grind grovel grow guess
  hack hang happen haul have head hear heat help hinge hit hold hope hunt hurt insist install insulate joggle join jump
  keep kick kill know lag laminate land last lay lead leak lean leave let lie lift light like line list live load lock
  look lose love lower machine make mark mask matter mean measure meet mend mention mess mill miss mix mount move nail
  need notch notice offer oil open order owe own pack paint park pay peel pick pin place plan plane plant plaster plug
  plumb plump point polish pop post pour press prime print promise prop prove pull pump push put quote rain raise ram
  reach read rebuild receive reckon record recut refit relax remake remember remove repair replace require reset rest
  return rewind rewire ride ring rip rise rivet roll rot route rout rub run rust sand save saw say scarf scrape scribe screw
  seal seat see seem sell send service set settle sew shake shape shave shift shim ship shoot shorten show shrink shut
  sign sit size skim slide slip slope slot smell snap soak sort spend spin split spray spread stain stamp stand staple
  start stay stick stiffen stop strap stretch strip subscribe supply support suppose swap swear sweep swell swing switch
  take talk tap tape taper tell template test thank thin think thread tighten tile tilt tip tolerate torque tot total
  touch trace trail trim true try turn twist undercut undo unscrew use varnish vent vibrate wait wake walk want warm wash
  watch wear weep weigh weld wet widen wind wipe wire wish wonder work worry wrap write bellow warp cup bow scarf splice
  pencil staple bed machine lathe chamfer bevel mitre miter route rebate rabbet groove hollow fillet fare step taper
  deal tick idle book cancel collect unload carry swap figure chew bounce squeeze dangle tuck poke shove pack carcass dovetail
  offset overlap overhang clear project protrude stick sag deflect span weigh rate accept handle manage tolerate bear
  stretch burn consume produce generate output hum spill flow spin lose gain shed stretch scale survey reckon recheck remeasure double halve raise reduce increase shorten lengthen widen narrow`;
/** Irregular pasts and past participles. */
export const PAST_FORMS =
  wordSet(`came bought brought built began bent bit bled blew broke caught chose cost cut dug did done drew drawn drove driven
  drank ate eaten fell fallen fed felt fought found flew forgot forgotten froze frozen got gave given went gone ground
  grew grown hung heard hid hidden hit held hurt kept knew known laid led left lent let lay lain lit lost made meant met
  paid put quit read rode rang rung rose risen ran said saw seen sold sent set sewn shook shaken shone shot showed shown
  shrank shrunk shut sang sat slept slid spoke spent spun split spread stood stole stuck stung struck swore sworn swept
  swelled swollen swam swung took taken taught tore torn told thought threw thrown understood woke wore worn wove won
  wound wrote written undid undone rebuilt remade recut reset bound overlaid outgrown leaned leant burnt spilt
  learnt spelt dreamt been`);

export function inflect(base: string): string[] {
  const stem = base.endsWith('e') ? base.slice(0, -1) : base;
  const doubled = /[^aeiou][aeiou][bdgmnprt]$/.test(base) ? base + base.at(-1) : stem;
  const third = /(?:s|sh|ch|x|z|o)$/.test(base)
    ? `${base}es`
    : /[^aeiou]y$/.test(base)
      ? `${base.slice(0, -1)}ies`
      : `${base}s`;
  const past = /[^aeiou]y$/.test(base) ? `${base.slice(0, -1)}ied` : `${doubled}ed`;
  return [base, third, past, `${doubled}ing`, `${stem}ed`, `${stem}ing`];
}

const verbForms = new Set(PAST_FORMS);
for (const base of [...wordSet(VERB_BASES), ...EVERYDAY_VERBS])
  for (const form of inflect(base)) verbForms.add(form);
/** Words that may be nouns as well, in the base form and with -s. */
const eitherForms = new Set<string>();
for (const base of NOUN_OR_VERB) {
  const [plain, third, ...rest] = inflect(base) as [string, string, ...string[]];
  if (!verbForms.has(plain)) eitherForms.add(plain);
  if (!verbForms.has(third)) eitherForms.add(third);
  for (const form of rest) verbForms.add(form);
}

/** Verb forms: the base, -s, -ed, -ing and irregular pasts of common workshop verbs. */
export const VERBS: ReadonlySet<string> = verbForms;

/** Everyday words that are nouns or verbs; workshop verbs that are nouns as well are in `VERBS`. */
export const NOUNS_OR_VERBS: ReadonlySet<string> = eitherForms;
