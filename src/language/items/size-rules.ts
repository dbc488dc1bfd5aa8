/** Which size a length is, by the words beside its number. Each rule is one way of saying it. */
import type { Attribute } from '../notes.ts';

export interface SizeRule {
  readonly name: string;
  readonly attribute: Attribute;
  /** Tested on the words after the number, joined by spaces; `#` stands for another quantity. */
  readonly after?: RegExp;
  /** Tested on the words before it. */
  readonly before?: RegExp;
  /** Both must match, not one of them. */
  readonly both?: true;
  /** What else speaks for a size is not weighed against these words. */
  readonly settles?: true;
}

/** In the order they are tried: spacing before gaps, "each side" before "clear". */
export const SIZE_RULES: readonly SizeRule[] = [
  {
    name: 'part of a sum',
    attribute: 'offset',
    before:
      /(?:^|[\w'] )(?:less|minus|take away|take off|knock off|allowing|allow)(?: a| an| the| about| another| only)?$/,
  },
  {
    // What matters of bars and slats is the way through between two.
    name: 'bars apart',
    attribute: 'gap',
    both: true,
    before: /\b(?:balusters|spindles|slats|bars|pickets|palings|louvres|louvers|rails)\b(?: [\w',]+){0,7}$/,
    after: /^(?:mil |mm )?apart\b/,
  },
  {
    name: 'spacing',
    attribute: 'other',
    after: /^(?:mil |mm )?(?:on |to |at )?(?:cent(?:re|er)s?\b|oc\b|apart\b|spacings?\b|pitch\b|gauge for\b)/,
    before:
      /\b(?:every|spaced(?: \w+)?(?: at)?|spacing(?: of|'s| is)?|centres(?: of| at| are)?|centers(?: of| at| are)?|gauge(?: of| down to| to|'s| is)?|one in every)(?: a)?$/,
  },
  { name: 'slate gauge', attribute: 'other', after: /^gauge\b/ },
  {
    name: 'gap',
    attribute: 'gap',
    after: /^(?:of )?(?:\w+ )?gap\b/,
    before: /\bgaps? (?:of|is|are|'s|to|at)(?: \w+)?$/,
  },
  {
    name: 'gap behind',
    attribute: 'gap',
    before:
      /\bgaps? (?:behind|under|round|around|between|above|below|over|beside|in front of|at the \w+ of) (?:\w+ ){1,3}(?:, )?(?:of|is|'s|that 's|that is)(?: about)?$/,
  },
  { name: 'of air', attribute: 'gap', after: /^of (?:clear )?(?:air|daylight)\b/ },
  {
    name: 'hole to hole',
    attribute: 'other',
    after: /^(?:hole(?: to |-to-)hole|screw(?: to |-to-)screw|bolt(?: to |-to-)bolt|pin(?: to |-to-)pin)\b/,
  },
  {
    name: 'hole',
    attribute: 'diameter',
    after:
      /^(?:\w+ )?(?:holes?|bores?|drill|dia(?:meter)?|in diameter)\b|^round\b(?! (?:the|it|every|each|a)\b)/,
  },
  {
    name: 'headroom',
    attribute: 'clearance',
    after: /^(?:of |more |less )?(?:headroom|head room)\b/,
    before: /\bhead ?room(?: \w+)? (?:is|'s|comes? to|of|are|now|drops? to)(?: ,? ?\w+ ?,?)?$/,
  },
  { name: 'to stand in', attribute: 'clearance', after: /^(?:to stand (?:up )?in|standing)\b/ },
  {
    name: 'clearance',
    attribute: 'clearance',
    after: /^(?:of )?(?:\w+ )?(?:clearance|play|slack|to spare|backlash)\b/,
    before: /\b(?:clearance|clearances|play) (?:is|are|'s|of|to|at)(?: \w+)?$/,
  },
  {
    name: 'fouls by',
    attribute: 'offset',
    settles: true,
    before:
      /\b(?:fouls?|fouled|fouling|hits?|catches|overshoots?) (?:\w+ ){1,3}by(?: a)?(?: good| bare| about)?$/,
  },
  {
    name: 'miss by',
    attribute: 'clearance',
    before: /\b(?:miss(?:es|ed)?|clears?|cleared) (?:\w+ ){0,4}by(?: a| about)?(?: good| bare| about)?$/,
  },
  {
    name: 'not closer than',
    attribute: 'clearance',
    before: /\b(?:closer|nearer) than$/,
  },
  {
    name: 'keep off',
    attribute: 'clearance',
    before: /\b(?:keeps?|kept|stays?)(?: it| them| anything| everything)?(?: at least| a good)?$/,
    after: /^(?:off|from|away|clear|between)\b/,
    both: true,
  },
  {
    name: 'to the roof',
    attribute: 'height',
    after:
      /^(?:to the roof|out of the water|from (?:the )?(?:water|floor|ground|deck|road|slab|sole)(?: up)? to)\b/,
  },
  {
    name: 'below the water',
    attribute: 'depth',
    after: /^below (?:the )?(?:water|waterline|ground|surface)\b/,
  },
  {
    name: 'up from the ground',
    attribute: 'height',
    after: /^up from (?:the )?(?:ground|floor|deck|water|waterline|sole|slab|road|pavement|flags)\b/,
  },
  {
    // "Sockets at 450 to the bottom", where "450 to the bottom" alone may be how deep a hole is.
    name: 'fixed at, to a part of it',
    attribute: 'height',
    settles: true,
    before:
      /\b(?:sockets?|switch(?:es)?|outlets?|box(?:es)?|mixers?|valves?|taps?|rails?|hooks?|lights?|isolators?|controls?) (?:is |are |'s )?(?:set |fixed |fitted |mounted )?at$/,
    after: /^(?:mil |mm )?to the (?:bottom|cent(?:re|er)|middle|top)\b/,
    both: true,
  },
  {
    name: 'where a float acts',
    attribute: 'height',
    settles: true,
    before:
      /\b(?:float|switch|sensor|alarm)(?: \w+)? (?:cuts?|kicks?|comes|goes|trips) ?(?:in|on|out|off)? at(?: about)?$/,
  },
  {
    name: 'so far up',
    attribute: 'height',
    settles: true,
    before: /(?:^| )(?:be|is|'s|are|at|sits?|sat|goes|go|set|put|fixed|mounted)(?: about)?$/,
    after: /^up(?: [,.]| and| so| now|$)/,
    both: true,
  },
  { name: 'down from', attribute: 'offset', after: /^(?:down|up|in|back) from\b/ },
  {
    name: 'from one to the other',
    attribute: 'length',
    after: /^from (?:the )?(?:\w+ )?\w+ to (?:the )?\w+/,
  },
  {
    name: 'in the ground',
    attribute: 'depth',
    after: /^(?:\w+ )?in(?:to)? the (?:ground|clay|earth|rock|concrete|soil|sand)\b/,
    before: /\b(?:in|into) the (?:ground|clay|earth|rock|concrete|soil|sand)(?: by| about)?$/,
  },
  { name: 'bears', attribute: 'length', before: /\b(?:bears|bear|bearing)(?: on)?$/ },
  {
    name: 'hump',
    attribute: 'offset',
    after: /^(?:of (?:an? )?)?(?:\w+ )?(?:hump|belly|dip|bulge|bow|sag|twist|crown|hogging)\b/,
  },
  {
    name: 'sticks out',
    attribute: 'offset',
    before:
      /\b(?:sticks?|stuck|sticking|pokes?|juts?|projects?|protrudes?)(?: out| in| up| proud| past \w+)*(?: by)?(?: about| a good)?$/,
  },
  {
    name: 'to the top of it',
    attribute: 'height',
    after:
      /^to the (?:eaves|beams?|underside|soffit|ridge|ceiling|wall ?plate|joists?|rafters?|purlin|gutter|fascia)\b/,
  },
  {
    name: 'down below',
    attribute: 'depth',
    after: /^down\b(?! (?:to|the|from))/,
    before:
      /\b(?:dug|dig|digging|goes|go|going|sunk|buried)(?: it| them)? down$|\b(?:dug|dig|digging)(?: it| them| that)?$/,
  },
  {
    // "Forty mil wider than the drawing": by how much two differ, and no width.
    name: 'so much more than another',
    attribute: 'offset',
    settles: true,
    after:
      /^(?:longer|shorter|wider|narrower|taller|thicker|thinner|deeper|shallower|higher|lower|bigger|smaller|larger) than (?:the|my|a|an|its|it|that|this|what|on)\b/,
  },
  {
    name: 'over or under size',
    attribute: 'offset',
    after:
      /^(?:too (?:deep|long|short|wide|narrow|fat|high|low|tall|thick|thin|big|small|tight)|over|under|out|short|shy|proud|oversize|undersize|more|less|longer|shorter|wider|narrower|to come off|off it|apiece (?:too|to come))\b(?! (?:than|the|of))/,
    before:
      /(?<!# )\b(?:too )?(?:deep|long|short|wide|narrow|high|low|tall|thick|thin|proud|out|over|under|shy|down|up) by(?: a| an)?$/,
  },
  {
    name: 'heart to heart',
    attribute: 'other',
    before: /\b(?:heart|centre|center|middle)(?: to |-to-)(?:heart|centre|center|middle)(?: at| is| ,)?$/,
  },
  {
    name: 'set back',
    attribute: 'offset',
    after:
      /^(?:of )?(?:overhang|hanging over|proud|back|lower|higher|setback|of (?:deflection|sag|fall|drop|camber|rake|crown))\b/,
    before:
      /\b(?:(?:is|'s|are|sits?|runs?|set|hangs?) (?:down|back|proud|out|over|in|shy)|laps?|lapping|lapped|sticks? out|overhangs?)(?: by)?(?: a| an)?$/,
  },
  {
    name: 'wide',
    attribute: 'width',
    after:
      /^(?:\w+ )?(?:wide|across|in width|width|at the widest|beam|wall-to-wall|side-to-side|square across)\b/,
    before:
      /\b(?:(?:wider|narrower|broader) than|(?:wall-to-wall|side-to-side)(?: it)?(?: is|'s| comes out at| was))$/,
  },
  {
    name: 'deep',
    attribute: 'depth',
    after: /^(?:\w+ )?(?:deep|in depth|front-to-back)\b/,
    before: /\b(?:deeper|shallower) than$/,
  },
  {
    name: 'thick',
    attribute: 'thickness',
    after: /^(?:\w+ )?(?:thick|in thickness)\b/,
    before: /\b(?:thicker|thinner) than$/,
  },
  {
    name: 'long',
    attribute: 'length',
    after:
      /^(?:\w+ )?(?:long|in length|end-to-end|bumper-to-bumper|stem-to-stern|nose-to-tail|bow-to-stern|overall|on deck|footers?)\b/,
    before: /\b(?:longer|shorter) than$/,
  },
  {
    name: 'high',
    attribute: 'height',
    after:
      /^(?:\w+ )?(?:high|tall|in height|floor-to-floor|floor-to-ceiling|floor-to-roof|under the (?:ribs|beams|joists))\b/,
    before:
      /\b(?:(?:higher|taller|lower) than|(?:floor-to-floor|floor-to-ceiling|top-to-bottom)(?: it)?(?: is|'s| comes out at| was)?)$/,
  },
  { name: 'square', attribute: 'size', after: /^square\b(?! (?:across|mil|m|metres?|feet|foot|inch))/ },
  { name: 'radius', attribute: 'radius', after: /^(?:\w+ )?radius\b/, before: /\bradius(?: of)?$/ },
  { name: 'bearing', attribute: 'length', after: /^(?:of )?bearing\b|^into (?:the|each) \w+/ },
  { name: 'lap', attribute: 'offset', after: /^(?:of )?(?:\w+ )?(?:overlap|lap)\b/ },
  { name: 'ripped to', attribute: 'width', before: /\b(?:rip|ripped|ripping)(?: \w+){0,3} to$/ },
  {
    name: 'docked to',
    attribute: 'length',
    before: /\b(?:dock|docked|docking|crosscut)(?: \w+){0,4} (?:to|at)$/,
  },
  {
    name: 'up and down',
    attribute: 'height',
    before:
      /\b(?:water|waterline|deck|floor|ground|ceiling|ridge|eaves|roof|sole|sill|cill|keel|rail|slab|step|road|bench) (?:up )?to (?:the )?(?:top|bottom|underside|roof|ridge|eaves|ceiling|floor|ground|water|waterline|deck|cowl|sole|rail|beam|joists?|road|sill|cill)(?: of (?:the )?\w+)?(?: is|'s|'ll be| was| comes to| comes out at|,| ,)?(?: now| only| about| just)?$|\b(?:cowl|mast|top|ridge|eaves|wheelhouse|chimney|beam|rail) to (?:the )?(?:water|waterline|deck|floor|ground|sole|flags|slab)(?: is|'s|'ll be| was| ,)?$/,
  },
  {
    name: 'comes down to',
    attribute: 'height',
    before:
      /\b(?:wheelhouse|roof|ceiling|mast|wall|walls|bench|table|seat|rail|shelf|it|canopy|ridge|bunk|loft|cabin) (?:comes|came|goes|went|coming|going|gone|drops|dropped|has to come|is coming) (?:down|up) to$/,
  },
  {
    name: 'moved to',
    attribute: 'height',
    before:
      /\b(?:drop(?:s|ped|ping)?|rais(?:e|es|ed|ing)|lower(?:s|ed|ing)?|lift(?:s|ed|ing)?) (?:(?:it|that|them|the \w+(?: \w+)?) )?(?:down |up )?to$/,
  },
  {
    name: 'needs room',
    attribute: 'clearance',
    before:
      /\b(?:needs?|wants?|requires?|leave|leaving|left|keep|keeping)(?: it| them)?(?: at least| a minimum of| about)?$/,
    after:
      /^(?:clear )?(?:to the (?!top|underside)|at the (?:back|side|front|top|sides|rear)|behind|above|under|in front|around|round|beside|below|beneath|either side|each side|on top|all round)\b/,
    both: true,
  },
  {
    name: 'moved by',
    attribute: 'offset',
    before:
      /\b(?:drop(?:ped|ping)?|rais(?:e|ed|ing)|lower(?:ed|ing)?|mov(?:e|ed|ing)|shift(?:ed|ing)?|lift(?:ed|ing)?|jack(?:ed|ing)?) (?:it|that|them|the \w+(?: \w+)?)(?: by| up| down| over| back| in| out)*$|\b(?:cut|cutting|set|setting|took|take|taking) (?:it|that|them|the \w+(?: \w+)?) (?:back|down|in)(?: by)?$|\b(?:raised|lowered|dropped|moved|shifted) (?:\w+ ){1,3}by$/,
  },
  {
    name: 'fall of',
    attribute: 'offset',
    before: /\b(?:fall|falls|drop|drops|slope|rake|sag|camber|bow|twist)(?: of| is| 's)?(?: about)?$/,
  },
  {
    name: 'level within',
    attribute: 'offset',
    before:
      /\b(?:level|true|flat|square|straight|plumb|inside|lines? up|middle's) (?:\w+ )?(?:to )?within(?: ,)?(?: what)?(?: ,)?$|\b(?:out|off) by$|\b(?:is|'s|are|to) within(?: ,)?(?: what)?(?: ,)?$|\b(?:that|it) inside$/,
  },
  {
    name: 'draws',
    attribute: 'depth',
    before: /\b(?:draws?|drawing|drew)(?: about| over| under| more than| less than)?$/,
  },
  {
    name: 'between',
    attribute: 'gap',
    after: /^(?:clear )?between\b/,
    before: /\bbetween (?:\w+ ){1,4}(?:there )?(?:is|'s|was)$/,
  },
  {
    name: 'each side',
    attribute: 'gap',
    after:
      /^(?:clear |clearance )?(?:(?:on |at )?(?:each|either|both) (?:side|end|way)s?|(?:a|per) (?:side|end)|all (?:a)?round)\b/,
  },
  {
    name: 'out of true',
    attribute: 'offset',
    before:
      /\b(?:out of|outta|off) (?:level|plumb|true|square|line|wind|parallel)(?: by| ,)?$|\b(?:plumb|level|square|true|parallel|diagonals?|runout) (?:to|inside|within)$/,
  },
  {
    name: 'grows by',
    attribute: 'offset',
    settles: true,
    before:
      /\b(?:grows?|grew|growing|shrinks?|shrunk|shrinking|widens?|widened|overlaps?|overlapped|overlapping|oversails?|projects?|overruns?|overshot) (?:\w+ )?by(?: a| about)?$/,
  },
  {
    name: 'fall over a run',
    attribute: 'offset',
    settles: true,
    before: /\bover(?: a| the)? # (?:, )?(?:so )?(?:that 's|that is|it 's|comes to|makes)(?: about)?$/,
  },
  {
    name: 'moved a way',
    attribute: 'offset',
    before:
      /\b(?:forward|forwards|back|backwards|sideways|along|inwards?|outwards?|over|aft) by(?: a| about)?$/,
  },
  {
    name: 'bigger or smaller by',
    attribute: 'offset',
    after: /^(?:smaller|bigger|larger|taller|too low|too high|low|proud|fat)\b(?! (?:than|the|of))/,
    before: /\b(?:have|has|had|need|needs|got) to lose(?: about| another)?$/,
  },
  {
    name: 'left over',
    attribute: 'clearance',
    after:
      /^(?:left|to spare|to play with|spare)(?: over)?(?: ,| and| at| on| each| above| below| behind| under| over|$)/,
  },
  {
    name: 'has room',
    attribute: 'clearance',
    before:
      /\b(?:got|have|has|had|there 's|there is|leaves?|leaving|gives?|giving)(?: it| them| me| us)?(?: only| just| barely| a good| about| maybe)*$/,
    after: /^(?:clear |free |spare )?(?:behind|underneath|beneath|above|below|overhead|in front)\b/,
    both: true,
  },
  { name: 'daylight', attribute: 'clearance', before: /\bdaylight(?: of| is| 's)?$/ },
  {
    name: 'bored to',
    attribute: 'diameter',
    before:
      /\b(?:bored|reamed|counterbored|opened (?:up|out) to|bore (?:is|'s|of|at)|mikes? (?:up )?at|miked (?:up )?at)(?: out)?(?: to| at)?$/,
    after: /^through(?: at the \w+)?(?: ,|$)/,
  },
  {
    name: 'tops out at',
    attribute: 'height',
    before: /\b(?:tops? out|topped out) at$|\b(?:has|have|needs?|wants?) to lift$|\blifts?$/,
    after: /^(?:, )?floor-to-(?:roof|ceiling)\b/,
  },
  { name: 'there and back', attribute: 'length', after: /^(?:there and back|round trip|long in all)\b/ },
  {
    name: 'laid across',
    attribute: 'width',
    before:
      /\b(?:tape|stick|laser|rule|ruler|rod|staff|steel|measured|measure) (?:right )?across (?:the|it|its|my|that|there)(?: [a-z',]+){0,5}$/,
  },
];
