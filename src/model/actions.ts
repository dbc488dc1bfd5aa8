import { stemOf } from './stems.ts';

/** Ways of doing that are said for each other: what was to be bought is done when it is ordered. */
const GROUPS: Readonly<Record<string, string>> = {
  buy: 'order buy get purchase book pay reserve',
  ask: 'ring call phone telephone tell ask speak talk email message contact chase grovel text reach pester nag',
  fetch: 'fetch collect pick borrow hire rent bring',
  cut: 'cut saw trim rip shorten chop notch resaw router rout rebate dado plane shave hew dock crop slice bandsaw jigsaw crosscut',
  drill: 'drill bore ream tap counterbore',
  fit: 'fit put install hang mount bolt lay screw set stand connect wire attach fix run bed glue clamp drop stick nail seat place hook plumb pin rivet assemble swap lift insert strap staple clip',
  remove:
    'remove strip pull dismantle empty drain scrap demolish unbolt unscrew clear hack off out gut prise extract lift pull clear chop',
  make: 'make build rebuild weld frame fabricate form laminate sew print turn machine mill knock assemble mix cast forge bend shape',
  coat: 'paint prime oil varnish coat stain seal lacquer epoxy wax skim render plaster primer undercoat preservative galvanise caulk fill limewash creosote tar antifoul topcoat sealer sealant waterproof goop',
  measure: 'measure tape weigh check survey mark template gauge',
  test: 'test try commission run inspect pressure',
  join: 'weld glue stick bolt screw rivet solder braze nail bond clamp assemble dowel peg peen laminate scarf splice join',
  mend: 'fix repair mend plug patch replace straighten adjust reset sort rewire resolve scarf',
  send: 'send return ship post deliver drop back',
  think: 'work figure decide design draw plan sketch choose find think price quote cost research',
  clean: 'clean sand scrape degrease fair wash polish sweep tidy plane dress grind file blast wire',
  fill: 'fill charge top refill pump stuff insulate',
  raise: 'raise lift hoist jack erect stand',
  pour: 'pour cast concrete screed grout',
  swap: 'swap change exchange trade replace renew',
  fell: 'fell drop chop cut tree',
  pay: 'pay settle',
  dig: 'dig excavate trench shovel barrow',
  keep: 'keep',
  show: 'film show record shoot edit upload publish',
};

const GROUPS_OF = new Map<string, Set<string>>();
for (const [group, verbs] of Object.entries(GROUPS)) {
  for (const verb of verbs.split(' ')) {
    const stem = stemOf(verb);
    const groups = GROUPS_OF.get(stem) ?? new Set<string>();
    groups.add(group);
    GROUPS_OF.set(stem, groups);
  }
}

/** The ways of doing that a word may name. */
export function actionsOf(stem: string): ReadonlySet<string> {
  // "Through-bolted" is bolted, "re-sawn" is sawn.
  const own = /-[a-z]{3,}$/.test(stem) ? stemOf(stem.slice(stem.lastIndexOf('-') + 1)) : stem;
  return GROUPS_OF.get(own) ?? (/^re[a-z]{3,}/.test(own) ? GROUPS_OF.get(own.slice(2)) : undefined) ?? NONE;
}
const NONE: ReadonlySet<string> = new Set();
