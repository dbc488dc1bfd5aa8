/**
 * Words for what goes wrong with a thing, for any trade. Verbs are listed by their base, other forms are derived.
 * Written from general trade vocabulary: common practice, no source.
 */

import { wordSet } from '../word-table.ts';
import { ingOf, pastOf, thirdOf } from './work-verbs.ts';

/** States that are a fault by themselves: "is warped", "came out blotchy". */
export const FAULT_ADJECTIVES = wordSet(`
cracked rotten rotted rotting rusted rusty corroded seized frozen froze bent warped bowed twisted cupped buckled chipped
scratched dented snapped sheared broken bust busted burst blown burnt-out perished frayed chafed delaminated delaminating
blistered blistering punctured leaky leaking weeping dripping seeping split splitting torn worn jammed stuck blocked clogged
choked contaminated crooked wonky skewed misaligned undersized undersize lumpy soggy sodden mouldy moldy soft
spongy brittle crumbling crumbly flaking peeling lifting loose wobbly faulty defective duff knackered shot dead
kaput toast bubbling flickering vibrating overloaded oversized overlong cupping drooping backwards scrap firewood ruined useless wrecked damaged missing lost wrong mangled crushed collapsed collapsing sagging sagged
binding rubbing sticking slipping slipped fouling overheating smoking sparking shorting tripping
woodworm wormy riddled infested porous pitted scored gouged creaky rattling squealing grinding noisy unsafe
dangerous live-wire undersquare unlevel uneven proud hollow short
crazed cloudy blotchy patchy streaky gappy sloppy baggy furred silted gummed gunged worn-out clapped-out munted stuffed rooted buggered
dodgy iffy ropey ropy manky tatty moth-eaten worm-eaten waterlogged saturated swollen shrunken shrunk misshapen distorted
deformed lopsided cockeyed askew cock-eyed unbalanced imbalanced undersprung underpowered overtightened misfiring misthreaded cross-threaded
crossthreaded unusable unreadable unserviceable irreparable illegal noncompliant mismatched mislabelled mispriced misdrilled
backward upside-down inside-out back-to-front lame limp threadbare crumpled wrinkled wavy pockmarked
spalled spalling crazing cracking leaching chattering juddering wandering squeaking creaking jumping dragging stalling
stinking smelly musty clammy gummy stringy congealed curdled separated-out blunt gapped snagged tangled kinked pinched shattered splintered splintering fractured debonded disbonded adrift unseated dislodged mis-cut miscut condemned `);

/** Things that are a fault by themselves: "there's a leak". */
export const FAULT_NOUNS = wordSet(`
leak leaks crack cracks rot split splits dent dents woodworm puncture short mould mold damp fault faults snag snags problem trouble
issue mistake error mess disaster gap bodge drip drips delamination blister blisters void voids wobble rattle vibration noise knock squeal ridge hump bulge burr kink scratch scratches chip chips
ding nick gouge tear rip pinhole pinholes hairline sag rung-gone clash interference shortage
shake shakes twist bow warp corrosion rust hole
fracture fractures bubble bubbles dings tears holes gaps dips dip runs wrinkle wrinkles crease creases ripple ripples blemish
rattles squeak squeaks creak creaks knocking grinding clunk whine hum judder shudder clatter screech wear pitting scoring spalling rubbing
backlash slop dampness condensation mildew osmosis ingress seepage blockage obstruction airlock kinks weep weeps
breakage mismatch discrepancy misalignment overlap hiccup hitch glitch calamity nightmare cock-up balls-up botch bodges bodge-job booboo blunder oversight`);

/** What a faulty thing does, by base: "binds", "has perished", "keep tripping". Never useful work on a thing. */
const FAULT_BASE_WORDS = `
leak weep seep dribble ooze jam bind rattle squeal squeak creak groan wobble wander stall sag droop bounce flex chatter
flicker misfire backfire overheat vibrate judder shudder smoke trip fail perish corrode rust rot delaminate
blister bubble craze crumble flake spall buckle warp cup shrink swell crack snap burst collapse shatter splinter fray
unravel chafe seize clog foul catch rub drag clash reek pong shear stick peel lift scrape crunch clunk whine
whistle wilt crumple crinkle wrinkle ripple curl pucker kink bulge bleed disintegrate deform distort detach debond sweat
perforate rock slip bow twist misbehave malfunction overflow overheat lurch splutter sputter cough hesitate lag snag`;
/** These are useful work with an object and a fault without one. */
const FAULT_PAST = wordSet(`
leaked wept seeped stuck jammed slipped cracked snapped sheared split broke burst cupped warped bowed twisted
overheated tripped stalled failed died popped shattered fell melted smoked blew scratched chipped dented tore ripped flickered bubbled
collapsed buckled delaminated blistered peeled flaked rusted rotted perished seized stripped bent dropped-off
corroded shorted foamed curdled clogged shrank swelled swole perforated crazed crumbled spalled frayed`);
const FAULT_PRESENT = wordSet(
  `dies fails cuts-out moves-about buzzes knocks melts drips grinds bubbles sinks`,
);

/** Spelled like a fault and mostly something else. */
const NO_FAULTS =
  wordSet(`cup cups rock rocks lift lifts lifted lifting bow bows bowed twist twists twisted catch caught catching
  bled bleeds bleed bleeding dragged rubbed stick crunch lag lags lagging lagged snag curl curls bound whistle scraped scraping smoked cough rocking bulge sweat sweated
  sweating snapping cracking slipping slip slips bounced stuck peel peeling peeled slipped drag scrape flex clash trip cupped`);

const bases = FAULT_BASE_WORDS.trim().split(/\s+/);
const without = (words: readonly string[]) => words.filter((word) => !NO_FAULTS.has(word));

/** "leaks", "has perished": third person and past. */
export const FAULT_VERBS = new Set([
  ...FAULT_PAST,
  ...FAULT_PRESENT,
  ...without(bases.map(thirdOf)),
  ...without(bases.flatMap(pastOf)),
  ...'catches clashes drags rubs scrapes lifts peels bulges bleeds sticks slips'.split(' '),
]);

/** "is leaking", "keeps wandering". */
export const FAULT_GERUNDS = new Set(without(bases.flatMap(ingOf)));

/** What several faulty things do: "the doors bind". */
export const FAULT_BASES = new Set([
  ...without(bases),
  ...'stick slip clash drip catch grind drag scrape lift peel trip twist bow cup'.split(' '),
]);
