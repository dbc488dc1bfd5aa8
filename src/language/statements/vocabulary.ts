/** Classes of words that the statement rules speak of, one letter each. A word may belong to several. */

import { DAILY, MATERIALS } from '../lexicon/choice-words.ts';
import {
  FAULT_ADJECTIVES,
  FAULT_BASES,
  FAULT_GERUNDS,
  FAULT_NOUNS,
  FAULT_VERBS,
} from '../lexicon/fault-words.ts';
import { HARMERS, ILLS, MISHAPS, RULERS, SIZES } from '../lexicon/harm-words.ts';
import { workBase, workIng, workParticiple, workPast, workThird } from '../lexicon/work-verbs.ts';
import { wordSet } from '../word-table.ts';

export const NUMBER_WORDS = wordSet(`
zero oh nought one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen
seventeen eighteen nineteen twenty thirty forty fifty sixty seventy eighty ninety hundred thousand half quarter`);

/** Tools that only measure: putting one on a thing finishes no work. */
const MEASURING_TOOLS = wordSet(`
tape tapes ruler rule caliper calipers callipers gauge gauges feeler feelers level meter multimeter micrometer mic
thermometer scale scales straightedge laser plumb bob protractor probe bevel counter hygrometer clamp-meter
depth-gauge balance weighbridge dial indicator stopwatch calculator`);

const PEOPLE = wordSet(`
plumber electrician sparky spark joiner carpenter chippy builder roofer plasterer plasterers engineer surveyor inspector
welder fabricator machinist painter decorator glazier fitter mechanic rigger sailmaker shipwright boatbuilder upholsterer
mason bricklayer brickie labourer driver courier merchant supplier neighbour neighbor neighbours neighbors brother sister
dad mum mom father mother wife husband partner mate mates friend friends cousin uncle aunt son daughter lad lads guy
guys bloke chap fella man woman lady boys girls kids crew people viewer viewers everyone everybody somebody someone
beater sweep tiler blaster sprayer nephew nephews niece nieces granddad grandad grandfather cousins uncles aunts neighbours sisters brothers
sons daughters apprentice apprentices carpenters electricians plumbers roofers welders joiners fitters riggers masons feller fellers fella fellas
student students volunteers volunteer team gang nobody landlord architect officer council chandler blacksmith smith turner he`);

/** Words for what is published to viewers. */
const MEDIA = wordSet(`
video videos episode episodes film films footage vlog tour livestream stream clip clips short shorts reel upload uploads
part series channel q&a timelapse time-lapse montage recap walkthrough walk-through walkround before-and-after show
rundown breakdown tour tutorial giveaway livestreams premiere how-to demo demonstration`);

/** Words in "-ed" that are no finished work: feelings, talk, states, plain nouns. */
const NO_VERBS = wordSet(`
need needed wanted liked loved hated looked seemed happened walked talked asked tired indeed hundred shed sled speed seed
feed bleed breed weed creed greed steed used supposed interested pleased worried scared excited impressed surprised amazed
confused annoyed bored related limited aged naked wicked sacred rugged crooked beloved wretched required allowed involved
included concerned convinced married retired divorced blessed named rated believed expected reckoned promised hoped tried
failed managed decided agreed guessed wondered remembered noticed realised realized watched listened waited stayed lived died
killed smiled laughed cried joked mentioned explained commented subscribed discovered learned enjoyed missed dreamed
arrived ended started stopped helped followed belonged existed appeared remained measured increased decreased
mattered survived embarrassed relieved delighted disappointed frightened stunned shocked gutted chuffed buggered
exhausted confirmed suggested recommended claimed argued denied pretended intended tempted invited visited
travelled traveled showed changed-mind turned dropped suffered struggled owed owned preferred expected considered
guaranteed complained admitted confessed swore sounded tasted smelled smelt cared rained snowed poured sweated
left-handed right-handed one-sided double-sided so-called newfangled assumed figured doubted feared cursed
wished puzzled stumped baffled floored-by based designed rated listed published advertised`);
const NO_ADVERBS = wordSet(
  'supply assembly family belly trolley reply gully bully dolly holly jelly folly italy july lily tally rally doily curly',
);
export const NO_GERUNDS = wordSet(`
thing something anything everything nothing morning evening during king ring string spring wing sling bring ceiling
being going having saying thinking looking feeling knowing meaning waiting hoping talking wondering evening
coming getting telling asking seeing hearing living sleeping eating drinking laughing joking kidding crying trying
railing decking flooring cladding siding guttering awning coupling fitting bearing casing bushing housing lining
opening wiring plumbing tubing piping roofing planking ducting building shilling sterling darling pudding lightning
interesting amazing boring annoying exciting`);

/** Units as they are spoken after a number. */
const UNITS = wordSet(`
mil mils mm millimetre millimetres millimeter millimeters cm centimetre centimetres centimeter centimeters metre metres
meter meters inch inches foot feet ft thou eighth eighths sixteenth sixteenths thirty-second quarter quarters half degree
degrees kilo kilos pound pounds litre litres gallon gallons amp amps volt volts watt watts bar psi percent hair fraction`);

const CLASSES: readonly (readonly [string, ReadonlySet<string>])[] = [
  ['S', wordSet(`is are was were am 's 're 'm be been being ain't`)],
  ['s', wordSet(`is are 's 're am 'm`)],
  ['H', wordSet(`has have had 's 've 'd having`)],
  ['h', wordSet(`has have 's 've`)],
  ['M', wordSet(`will would can could shall should may might must 'll 'd`)],
  [
    'V',
    wordSet(`do does did need needs want wants get gets got go goes went come comes came take takes took make makes made
    weighs sit sits stay stays says said thinks thought gives gave leaves holds measures turns turned arrived arrives
    lands know knows knew seem seems mean means meant keeps kept reckon reckons likes feel feels loves hates
    shows starts started happen happens happened tell tells told asks asked sees find finds found ought used puts
    looks`),
  ],
  [
    'T',
    wordSet(`the a an my our your his her its their this that these those another every each both all some any no whichever
    new old them yon one two three four five six seven eight nine ten twelve couple dozen last first second third other`),
  ],
  [
    'O',
    wordSet(
      `i we you he she it they me us him her them this that these those one ones everything something nothing anything`,
    ),
  ],
  ['I', wordSet('i we')],
  [
    'R',
    wordSet(`of to for with by at from into onto over under through across along against around about between behind below above
    beside inside outside near past off on in out up down towards toward upon within without per`),
  ],
  [
    'C',
    wordSet(
      'in on up down off out through over back away together round around apart along home aboard ashore under',
    ),
  ],
  [
    'c',
    wordSet(
      'in on up down off out through away together apart home aboard gone done finished complete completed sorted fixed ready-to-go',
    ),
  ],
  [
    'A',
    wordSet(`now all already finally just also too both well fully properly nicely only even still actually probably really
    definitely currently first half part double dry pre hand rough today yesterday again at-last eventually luckily
    about basically literally more less as very pretty quite right clean then ever each mostly almost nearly obviously
    simply quickly slowly carefully safely freshly newly straight`),
  ],
  ['K', wordSet('half nearly almost mostly partly partially barely')],
  ['N', wordSet('not never no none nothing nobody neither nor hardly barely')],
  [
    'L',
    wordSet(
      'so and but then yeah yes no okay ok right well um uh er erm oh ah anyway also plus now luckily alright hey like hang look see plus hi hello good great sorry basically honestly',
    ),
  ],
  [
    'D',
    wordSet(
      'monday tuesday wednesday thursday friday saturday sunday today tomorrow tonight yesterday weekend week fortnight morning',
    ),
  ],
  ['J', PEOPLE],
  ['E', MEDIA],
  ['Y', MEASURING_TOOLS],
  ['U', UNITS],
  ['F', new Set([...FAULT_ADJECTIVES, ...FAULT_GERUNDS])],
  ['f', FAULT_NOUNS],
  ['X', FAULT_VERBS],
  ['x', FAULT_BASES],
  ['Q', NUMBER_WORDS],
  ['Z', wordSet('bought ordered purchased requested reserved booked')],
];

const classesOfWord = new Map<string, string>();
for (const [letter, words] of CLASSES) {
  for (const word of words) classesOfWord.set(word, (classesOfWord.get(word) ?? '') + letter);
}

/** "thirty-eight" */
const SPOKEN_TENS = /^(?:twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)-[a-z]+$/;

/** The letters of every class that the word belongs to; empty for a plain noun. */
export function classesOf(word: string): string {
  let classes = classesOfWord.get(word) ?? '';
  if (workBase(word)) classes += 'B';
  if (workPast(word)) classes += 'b';
  if (workParticiple(word)) classes += 'P';
  if (workIng(word)) classes += 'G';
  if (workThird(word)) classes += 'g';
  if (/^\d/.test(word) || SPOKEN_TENS.test(word)) classes += 'Q';
  // Trades have more verbs than any table: an unknown "-ed" or "-ing" word is taken for work unless it is known as none.
  if (classes === '' && /[a-z]{3}ed$/.test(word) && !NO_VERBS.has(word)) classes = 'bP';
  if (classes === '' && /[a-z]{3}ly$/.test(word) && !NO_ADVERBS.has(word)) classes = 'A';
  if (classes === '' && /[a-z]{3}ing$/.test(word) && !NO_GERUNDS.has(word)) classes = 'G';
  return classes;
}

/** Classes of meaning beside those of grammar: a word may have one of these and still be a plain noun. */
const MEANINGS: readonly (readonly [string, ReadonlySet<string>])[] = [
  ['w', HARMERS],
  ['r', RULERS],
  ['z', SIZES],
  ['i', ILLS],
  ['t', MISHAPS],
  ['m', MATERIALS],
  ['d', DAILY],
];
const meaningsOfWord = new Map<string, string>();
for (const [letter, words] of MEANINGS) {
  for (const word of words) meaningsOfWord.set(word, (meaningsOfWord.get(word) ?? '') + letter);
}

/** The letters of the classes of meaning that the word belongs to; empty for most. */
export const meaningsOf = (word: string): string => meaningsOfWord.get(word) ?? '';
