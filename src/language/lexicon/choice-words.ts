/** Words that a builder chooses among, and words after "having", "going", "making" that settle nothing. Common practice, no source. */
import { wordSet } from '../word-table.ts';
/** Materials, finishes, fixings and kinds of power: named alone they are a choice ("oak it is", "it's tin, not felt"). */
export const MATERIALS = wordSet(`
oak ash beech elm pine fir spruce larch cedar douglas teak iroko mahogany sapele walnut maple birch poplar cypress redwood hickory
bamboo chestnut sycamore balsa jarrah spotted-gum merbau hardwood softwood timber wood ply plywood mdf osb chipboard blockboard
plasterboard drywall steel stainless galvanised galvanized galv tin zinc copper brass bronze aluminium aluminum alloy iron lead
titanium slate slates tile tiles brick bricks stone granite marble quartz sandstone limestone flagstone flint cob adobe straw hemp
hempcrete lime cement concrete mortar clay plaster render gypsum cork wool sheepswool cellulose fibreglass fiberglass glassfibre
polystyrene foam celotex rockwool felt shingle shingles shakes thatch turf rubber epdm canvas leather vinyl lino linoleum carpet
laminate melamine formica acrylic perspex polycarbonate glass oil varnish paint lacquer wax shellac stain limewash whitewash epoxy
polyester resin tar bitumen primer gelcoat rivets bolts screws nails dowels pegs glue welds hinges magnets latches led leds gas diesel
propane butane petrol electric solar induction woodburner wood-burner lithium agm canvas sailcloth hessian rope wire chain plastic
composite nylon delrin acetal ptfe phosphor cast-iron corten colorbond weatherboard clapboard shiplap cladding boards planks logs
gravel sand pea-shingle rubber-mat tarmac decking tongue-and-groove matchboard wainscot tweed denim linen velvet corduroy
black white red blue green grey gray cream maroon yellow orange brown ochre silver bronze-green navy`);

/** "Having lunch", "going to town", "making tea", "keeping an eye": daily life and no choice. */
export const DAILY = wordSet(`
lunch tea dinner coffee breakfast supper kip nap look go start progress eye warm town bed shop shops work brew break think moan swing
chat rest walk headway sure note notes track mess noise point list good do word mind company quiet calm dry busy fit time fun day
days week weekend morning afternoon cup bite pint beer beers smoke cigarette sandwich biscuit party house home fingers pace score
count records record cool promises hold fire watch guard mum sense friends money ends hay space way room dust sawdust shavings
holes cuts trouble problem problems fits kittens doubts thoughts words regrets second-thoughts visitors guests nightmares dreams
bother merchant yard supplier station hospital dentist doctor wedding school church pub store hardware dump tip market sawmill mill`);
