/**
 * Words around what goes wrong: who or what does harm, who sets a limit, what is found where it should not be, and
 * what careless hands do. For any trade; common practice, no source.
 */
import { wordSet } from '../word-table.ts';
/** Weather, beasts and thieves: what they do to a build is harm. */
export const HARMERS = wordSet(`
frost rain wind gale gales storm storms snow hail lightning flood floods tide surge sun damp salt mouse mice rat rats squirrel
squirrels bird birds pigeon pigeons swallow swallows jackdaw jackdaws starlings wasp wasps bees hornets ant ants termite termites
beetle beetles worm moths bats fox foxes badger badgers deer rabbit rabbits goat goats sheep cow cows horse bear bears raccoon
raccoons possum possums baboons monkeys gophers groundhog woodchuck woodpecker skunk thief thieves vandals burglars stone branch tree
weevils crows magpies seagulls slugs mole moles bullock bull pig pigs chickens cockroaches elephants hyena termite vermin roots ivy`);

/** Whoever and whatever sets a limit. */
export const RULERS = wordSet(`
book plate road law rule rules regs regulations regulation code spec specs sheet label maker makers manual inspector council papers
licence license limit rating handbook chart tag sticker crane bridge lock davit jib hoist jack sling trailer insurance surveyor
manufacturer yard lift axle planners planner officer permit ticket datasheet standard survey county ministry harbour harbourmaster
marina park box tin certificate scale scales carport barn shed tunnel gate beam winch shackle chain ladder scaffold truck ferry`);

/** Sizes by which a thing may be off. */
export const SIZES = wordSet(`
long short wide narrow tall high low deep shallow thick thin fat heavy light big small tight loose slack proud shy over under out
oversize undersize oversized undersized adrift skinny wider narrower longer shorter taller deeper thicker thinner higher lower bigger smaller fatter`);

/** Found on or in a thing without being asked in. */
export const ILLS = wordSet(`
borer mice rats wasps termites ants beetle worm woodworm moths flies bats squirrels nest nests bug bugs orange-peel pinholes runs sags
noise noises smell stink smoke mildew mould mold damp rot rust corrosion leak leaks crack cracks hole holes scratch scratches dent
dents patch puddle puddles pool daylight draught draughts condensation water moisture rattle squeak squeal knock wobble vibration fumes
sparks stain stains rattles bulge bubble bubbles blister blisters splits split limescale algae slime mushrooms fungus toadstools grit swarf
sludge gunk silt muck droppings termites subsidence leakage seepage bleeding fracture fractures clunk hum whine buzz hiss flaking`);

/** What hands do by mishap, in the past: never work on purpose. */
export const MISHAPS = wordSet(`
dropped snapped cracked smashed sheared shattered splintered chipped scratched dented mangled spilt spilled ruined wrecked
cross-threaded crossthreaded overtightened miscut mismeasured misread bodged botched gouged scorched singed split broke bent lost tore
ripped kinked burst jammed trapped punctured stripped burnt burned melted nicked flooded fried cooked crushed`);

/** Plainly well: words that take the harm out of a clause. */
export const WELL =
  / (?:fine|good|lovely|perfect|perfectly|sorted|spot|happy|great|plenty|fixed|mended|cured|welded|replaced|repaired|purpose|drawn|planned|beautifully|sweet|nicely|luckily|glad|ok|okay|thankfully|dead\/\w* on|bang\/\w* on|to\/\w* spare|new\/\w* one|instead)\//;
