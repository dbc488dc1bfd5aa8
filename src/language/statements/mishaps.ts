/** What happened to a thing, or what somebody did to it by mistake. */
import type { StatementRule } from './draft.ts';
import { has, problem, subjectIsThing } from './snag.ts';
import type { Said } from './words.ts';

const says = (said: Said, words: RegExp) => words.test(said.code);

/** Parts that nobody wants to hit. */
const HIDDEN =
  '(?: pipe | pipes | cable | cables | wire | wires | wiring | loom | hose | line | joist | beam | duct | conduit | tank | main | membrane | skin | hull | ceiling | floor | windscreen | window | glass | thumb | deck )';
const BY_THEMSELVES =
  '(?: in my hand | in my hands | in his hand | on me | again | already | overnight | by itself | on its own | in the night | in the wind | straight away | last night | when <any> | as soon <any>* | the minute <any>* | the moment <any>* | the first time <any>* | first time <any>* )';

export const MISHAP_RULES: readonly StatementRule[] = [
  problem(
    '<thing> let go',
    "^<lead>* (?<subject> <plain>{1,7}? ) (?: 's | has | have | 've | is | are )? <adverb>* (?: let go | let itself go | gave way | gave out | gave up | given way | given out | given up | packed up | packed in | conked out | seized up | burnt out | burned out | blew up | blew out | blown out | blown up | caved in | fell off | fell out | fell in | fell down | fell over | fell apart | fell to | fallen off | fallen out | fallen in | fallen down | fallen apart | dropped off | dropped out | popped off | popped out | pinged off | sheared off | snapped off | broke off | broke up | broken off | pulled out | pulling out | pulled away | pulls out | came adrift | come adrift | come undone | came undone | come unstuck | came unstuck | come loose | came loose | came apart | come apart | come away | came away | rounded off | rounded over | stripped out | worn through | worn out | worn away | rotted away | rotted off | rotted out | rusted away | rusted through | rusted out | rusted in | cracked up | crumbled away | washed out | washed away | blew off | blown off | blew away | torn off | ripped off | slid off | slipped off | ran out of true | frozen up | furred up | clogged up | silted up | gummed up | bunged up | boiled over | overflowed | ground to a halt | bitten the dust | given up the ghost | gave up the ghost | had its day | died a death | keeled over | capsized | sprung a leak )",
    (found, said) =>
      subjectIsThing(found) &&
      !has(found.words, 'N') &&
      // "Mike dropped off the jigsaw": brought by somebody.
      !says(said, / dropped\/\w* off\/\w* (?:the|a|an|my|our|his|her|some|two|three|four|more)\//) &&
      !says(said, / (?:old|finally|easily|easy|purpose|lovely|clean)\//),
  ),
  problem(
    '<thing> came off in my hand',
    `^<lead>* (?<subject> <plain>{1,7}? ) (?: 's | has | have | 've )? <adverb>* (?: came | come | comes | went | fell | snapped | broke | pulled | popped | sheared | dropped | split | tore | blew | gone | bent | opened | lifted ) (?: off | out | away | loose | up | down | apart )? <adverb>* ${BY_THEMSELVES}`,
    (found, said) =>
      subjectIsThing(found) &&
      !has(found.words, 'N') &&
      !says(
        said,
        / (?:came|come|went)\/\w* (?:in|on|up|together|back|again)\/\w* (?:when|again|already|last)\//,
      ),
  ),
  problem(
    '<thing> has moved',
    "^<lead>* (?<subject> <plain>{1,7}? ) (?: (?: 's | has | have | 've ) <adverb>* (?: moved again | moved on me | shifted again | shifted on me | moved overnight | shifted overnight | slipped | sunk | shrunk | swollen | swelled | settled | sagged | dropped | wandered | crept | walked | worn | stretched | faded | yellowed | hardened | curled | expanded | drifted | spread | subsided | stopped (?: working | charging | running | turning | dead | pumping )? ) | (?: wandered | shrank | swelled | sank | crept | subsided | drifted | walked off ) ) (?<rest> <any>{0,5} ) $",
    (found, said) =>
      subjectIsThing(found) &&
      !has(found.words, 'N') &&
      // "It's stopped leaking" is right again; "it's stopped working" is a snag.
      !(
        says(said, / stopped\/\w* \S+ing\//) &&
        !says(said, / stopped\/\w* (?:working|charging|running|turning|pumping)\//)
      ) &&
      !/^(?:price|prices|date|delivery|deadline|schedule|plan|job|work|episode|lot|rain|wind|time|cost)$/.test(
        found.part('subject').at(-1)?.lower ?? '',
      ) &&
      !says(
        said,
        / (?:to|from|back|nicely|dropped\/\w* (?:in|into|off|round)|moved\/\w* (?:in|on|up|into|over)|spread\/\w* (?:out|on|over)|worn\/\w* (?:in|by)|settled\/\w* (?:in|down|on|into|for)|rain|raining)\//,
      ) &&
      !says(said, / dropped\/\w* (?:in|into|off|round|straight)\//),
  ),
  problem(
    '<thing> has gone <bad>',
    "^<lead>* (?<subject> <plain>{1,8}? ) (?: 's gone | is gone | has gone | have gone | 've gone | went | goes | is going | 's going | are going | has turned | 's turned | have turned | turned | came out | come out | comes out | 's come out | has come out | has come up | came up | dried | cured | set ) <adverb>* (?: a | bit | sort | kind | of | all )* (?: cloudy | milky | white | black | green | yellow | brown | dull | soft | hard | brittle | sticky | tacky | gummy | lumpy | stringy | mouldy | moldy | rusty | wrong | wonky | crooked | wavy | rough | patchy | streaky | blotchy | pear-shaped | haywire | limp | slack | stiff | thick | stodgy | dark | banana-shaped | bananas | mushy | sour | rotten | porous | spongy | crispy | crazy | gooey | foggy | murky | orange-peel | grainy | furry | flat | crumbly | curly | oval | egg-shaped | pink | uneven | mirror | backwards | faint | dim | bald | ragged | gritty )",
    (found, said) =>
      subjectIsThing(found) &&
      !has(found.words, 'N') &&
      !(
        says(said, / (?:flat|hard|white|black|green|yellow|brown|rough)\//) &&
        !says(said, / (?:gone|went|turned|goes|all|tyre|tire|battery)\//)
      ) &&
      !says(said, / (?:tea|coffee|dinner|set|cured|dried)\/\w* (?:\S+ )?(?:hard|cold)\//) &&
      !says(said, / (?:painted|paint\/\w* went|lovely|nice)\//),
  ),
  problem(
    '<thing> smells',
    "^<lead>* (?<subject> <plain>{1,6}? ) (?: smells | stinks | reeks | pongs | smelt | stank | is stinking | 's stinking ) (?: <adverb> | of | like | a | bit | to | terrible | awful | rank | horrible | bad | damp | musty | off | fishy | burning | burnt | hot ) (?<rest> <any>* )",
    (found, said) =>
      subjectIsThing(found) &&
      !has(found.words, 'N') &&
      !says(said, / (?:lovely|nice|gorgeous|good|great|like\/\w* (?:a|home|heaven|fresh))\//),
  ),
  problem(
    '<thing> runs hot',
    "^<lead>* (?<subject> <plain>{1,6}? ) (?: 's | is | are | was | were )? <adverb>* (?: running | getting | runs | ran | gets | got | went ) <adverb>* (?: hot | red hot | boiling | warm | rough | lumpy | backwards | too hot | hotter than <any>* | dry | ragged | lean | rich | slow | untrue )",
    (found, said) =>
      subjectIsThing(found) &&
      !has(found.words, 'N') &&
      !says(said, / (?:weather|day|sun|tea|coffee|kettle|water|stove)\//),
  ),
  problem(
    '<thing> is <idiom>',
    "^<lead>* (?<subject> <plain>{1,8}? ) (?: 's | is | are | 're | was | were | looks | looked ) <adverb>* (?: like )? (?: a | an | the | in | on | one | more | half | up | down | past | off | out )* (?: dog 's <any> | dogs <any> | pig 's <any> | shambles | disaster | disgrace | death trap | deathtrap | bodge | botch | bag of <any> | lost cause | goner | write-off | write off | right-off | sieve | colander | teabag | filler than <any> | rust than <any> | hole than <any> | the blink | fritz | knackers <any> | mess | ribbons | shreds | bits | pieces | tatters | state | nick | shape | way of true | of true | of round | of kilter | kilter | of whack | whack | of shape | of alignment | of balance | of position | of date | of action | of order | of adjustment | it 's best | its best | saving | repair | redemption | toast | dust | powder | crumbs | porridge | cheese | biscuit | swiss cheese | sloppy fit | loose fit | poor fit | bad fit | tight squeeze | rough cut | mirror image | wrong hand )",
    (found, said) => {
      if (!subjectIsThing(found) || has(found.words, 'N')) return false;
      if (says(said, / (?:good|great|lovely|fine|top|cracking)\/\w* (?:nick|shape|state|order)\//))
        return false;
      return (
        !/^(?:shape|state|nick)$/.test(found.words.at(-1)?.lower ?? '') ||
        says(said, / (?:out|bad|poor|rough|terrible|awful|sorry|dreadful|shocking|right|hell)\//)
      );
    },
  ),
  problem(
    '<thing> is full of <harm>',
    "(?: 's | is | are | was | were | 're | has | have )? (?: full of | riddled with | covered in | caked in | caked with | thick with | choked with | swimming in | peppered with | stuffed with | packed with | crawling with | eaten up with | soaked in | soaked with | clogged with | clogged up with | blocked with | blocked up with | green with | black with | jammed with ) (?: <any>{0,2}? ) (?: <ill> | <fault> | holes | rust | rot | runs | dust | muck | water | grit | worm | woodworm | mould | mold | filler | sand | mud | nails | sawdust | bubbles | bugs | ants | silt | scale | limescale | rubbish | leaves | sludge | swarf | hair | soot | crud | cracks | voids | pinholes | air | diesel | oil | damp | mice | wasps | moths | algae | barnacles | dents | knots | splinters | old <any> | gunk | grease | salt | dirt | debris | corrosion | mistakes | bird <any> | droppings | tar )",
    (found, said) =>
      !has(found.words, 'N') &&
      !says(
        said,
        / (?:i|we|me|my\/\w* (?:hair|hands|boots|jumper|ears|eyes|nose|lungs|socks))\/\w* (?:'m|'re|am|are|was|is|'s)\//,
      ) &&
      !says(said, / (?:i|we)\/\w* (?:\S+ ){0,2}(?:tank|bucket|skip|bags?)\//),
  ),
  problem(
    '<noise> from <thing>',
    "(?: there 's | there is | there are | there was | i can hear | i can smell | i can feel | i hear | makes | making | got | has | 's got ) (?: <adverb> | a | an | this | the | some | that )* (?: <plain>{0,3}? ) (?: knock | knocking | grinding | noise | whine | rattle | rattling | squeal | squealing | squeak | squeaking | clunk | clunking | hum | humming | hiss | hissing | buzz | buzzing | rumble | rumbling | smell | stink | vibration | judder | wobble | play | slop | flex | movement | backlash | bounce | condensation | mould | mold | damp | run | runs | sag | runout | run-out ) (?<rest> (?: <any>{0,7} ) ) $",
    (found, said) =>
      !has(found.words, 'N') &&
      !says(
        said,
        / (?:no|without|lovely|nice|good|enough|fix|cure|stop|run\/\w* (?:of|to|up|down|for|from)|room|for\/\w* (?:movement|flex|play))\//,
      ) &&
      (says(said, / (?:there|hear|smell|feel|noise|smell)\//) ||
        says(said, / (?:in|on|from|at|behind|under|when)\//)) &&
      !says(said, / (?:i|we)\/\w* (?:made|'ve made|have made)\//),
  ),
  problem(
    '<water> coming <in>',
    "(?<subject> <plain>{0,3}? (?: water | rain | damp | moisture | oil | diesel | fuel | dust | smoke | fumes | exhaust | light | daylight | draught | draughts | air | gas | steam | coolant | sand | frost | snow | wind ) ) (?: 's | is | are | was | were | has | have | keeps )? <adverb>* (?: coming | pouring | dripping | seeping | leaking | getting | weeping | running | blowing | spraying | comes | pours | drips | seeps | leaks | gets | runs | blows | sprays | got | came | pooling | pools | collecting | collects | sits | sitting | standing | tracking | wicking | creeping | escaping ) (?: in | through | past | under | behind | into | everywhere | all over | down the <any> | up through | round | between | out of the <any> )",
    (found, said) =>
      !has(found.words, 'N') &&
      !says(said, / (?:hot|cold|tap|taps|on\/\w* at|now\/\w* comes|lovely|supply|connected|i|we)\//),
  ),
  problem(
    '<pest> got into <thing>',
    "^<lead>* (?<subject> (?: <det> )? (?: frost | rain | wind | gale | storm | sun | heat | damp | mice | mouse | rats | rat | squirrels | birds | wasps | ants | beetle | worm | moths | thieves | somebody | someone | kids | dog | cat | fox | damp | salt | lightning | hail | snow | kerf | router | blade | saw | drill | previous owner | last owner | old owner | last bloke | last fella | builder | builders | plumber | electrician | last chap | idiot <any>{0,3} | whoever <any>{0,4}? ) ) (?: 's | has | have | 've | had )? <adverb>* (?: got into | got in | got at | got behind | got under | took | ruined | wrecked | flattened | ripped | tore | lifted | blew | split | cracked | ate | eaten | chewed | nicked | stole | stolen | taken | smashed | bent | broke | burnt | snatched | bodged | botched | butchered | left | put | cut | drilled | screwed | nailed | forgot | buried | hidden | hid | siliconed | painted over | plastered over | wandered | grabbed | skipped | jumped ) (?<rest> <any>+ )",
    (found, said) => {
      if (has(found.words, 'N') || / (?:dog|cat)\//.test(said.code)) return false;
      // Trades people put and cut things all day: only done badly it is a snag.
      const work = says(said, / (?:left|put|cut|took|taken|drilled|screwed|nailed|lifted|buried)\//);
      return (
        !work ||
        says(said, / (?:wrong|too|short|through|out|night|last|without|deep|crooked|upside|behind)\//)
      );
    },
  ),
  problem(
    'through the <pipe>',
    `(?: drilled | cut | sawed | screwed | nailed | put (?: a | the | my )? (?: screw | foot | drill | nail | blade | hole | bit | fork | spade | staple | knee | boot | bolt | chisel | elbow | hammer | saw )? | gone | went | stapled | pinned | sanded | grinded | ground | routed | planed ) <adverb>* (?: straight | right | clean | slap )? (?: through | into ) (?: the | a | an | my | one | that | one of <any>{1,2} | its )? (?: <plain>{0,3}? ) ${HIDDEN}`,
    (found, said) =>
      !has(found.words, 'N') &&
      (says(
        said,
        / (?:straight|right|clean|slap|managed|screw|nail|foot|accident|accidentally|somebody|someone|staple)\//,
      ) ||
        says(said, / (?:pipe|cable|loom|hose|wire|wires|membrane)\//)) &&
      !says(said, / (?:cable|wire|pipe)\/\w* (?:gland|entry|hole|clip)\//) &&
      !says(said, / (?:hole|holes|slot)\/\w* (?:for|through)\//),
  ),
  problem(
    'I managed to <spoil> <thing>',
    '(?: managed to | contrived to | went and | gone and | accidentally | stupidly | clumsily | by accident | by mistake | like an idiot | like a fool ) (?: went and | gone and )? (?<verb> put | drill | cut | snap | break | crack | drop | split | bend | strip | lose | scratch | shear | dent | spill | weld | glue | nail | screw | mix | measure | order | fit | leave | set | knock | burn | melt | tear | rip | sand | plane | reverse | wire | bolt | bury | paint | trap | swap | overtighten | over-tighten | cross-thread | drilled | broke | cracked | dropped | bent | stripped | lost | scratched | sheared | dented | spilt | spilled | welded | glued | nailed | screwed | mixed | measured | ordered | fitted | left | knocked | burnt | burned | melted | tore | ripped | sanded | planed | wired | bolted | painted | trapped | swapped | overtightened | snapped | routed ) (?<object> <any>+ )',
    (found, said) =>
      !has(found.words, 'N') &&
      (/^(?:snap|break|crack|drop|split|bend|strip|lose|scratch|shear|dent|spill|melt|tear|rip|overtighten|over-tighten|cross-thread|broke|cracked|dropped|bent|stripped|lost|scratched|sheared|dented|spilt|spilled|melted|tore|ripped|overtightened|snapped|burn|burnt|burned|trap|trapped)$/.test(
        found.part('verb')[0]?.lower ?? '',
      ) ||
        says(
          said,
          / (?:through|wrong|upside|backwards|short|side|off|accidentally|accident|mistake|idiot|fool|stupidly|twice|inside|without|too|hole)\//,
        )),
  ),
  problem(
    'I overtightened <thing>',
    "^<lead>* (?: i | we | he | she | they | <person> ) (?: 've | have | 's | has | 'd | had )? <adverb>* (?: overtightened | over-tightened | overcut | overdid | overheated | miscut | misread | mismeasured | miscounted | misjudged | mis-measured | mis-cut | mis-drilled | misdrilled | undercut | underestimated | crossthreaded | cross-threaded | mucked up | messed up | stuffed up | screwed up | cocked up | ballsed up | buggered up | botched | butchered | bodged | overshot | overloaded | over-filled | overfilled | muddled | mixed up | clobbered | gouged | overlooked | forgot | forgotten | neglected | rushed ) (?<object> (?: the | a | an | my | it | about | that | both | one | to | all | some | its | those | which ) (?<rest> <any>* ) )",
    (found, said) =>
      !has(found.words, 'N') &&
      !says(said, / (?:film|mention|say|tell|camera|lunch|show|press|subscribe|birthday|hat)\//),
  ),
  problem(
    'nobody allowed for <thing>',
    "(?: (?: never | not ) (?: allowed for | allow for | accounted for | account for | accounting for | left | leave | thought of | thought about | considered | reckoned on | reckoned with | counted on | counted the | took account of | taken into account ) | nobody (?: allowed | left | thought | told | checked | accounted | mentioned | measured ) | hadn't allowed | forgot to allow | forgot about | no allowance for | no provision for ) (?<rest> <any>+ )",
    (found, said) =>
      !says(said, / (?:will|'ll|would|leave\/\w* (?:it|that|me|you|home|till))\//) &&
      found.words.length > 1 &&
      !/ (?:left|leave)\/\w* (?:it|the|my)\//.test(said.code),
  ),
  problem(
    'I can not get <thing> <off>',
    '(?: (?: i | we | you ) )? (?: can not | could not | cannot ) (?: for the life of me | <adverb> )* (?: get | shift | budge | move | free | undo | loosen | crack | reach | find | source | open | close | turn | tighten | start | fit | match ) (?<object> (?: the | a | an | any | it | my | that | them | this | those | one | those | at | to the | its | enough | replacement | replacements | <plain> ) (?<rest> <any>* ) )',
    (found, said, scene) => {
      const next = scene.said[said.index + 1];
      if (
        next &&
        next.sentence === said.sentence &&
        /\b(?:until|till|before|unless|once|if|without)\b/.test(next.opener)
      )
        return false;
      if (says(said, / (?:till|until|today|yet|tomorrow|wait|without|day|before|tonight|week)\//))
        return false;
      const verb =
        found.words.find((word) =>
          /^(?:get|shift|budge|move|free|undo|loosen|crack|reach|find|source|open|close|turn|tighten|start|fit|match)$/.test(
            word.lower,
          ),
        )?.lower ?? '';
      if (verb === 'get')
        return (
          says(
            said,
            / (?:off|out|in|on|through|to|apart|up|down|into|loose|past|round|undone|any|replacement|parts|spare|spares|near|at)\//,
          ) && !says(said, / (?:enough\/\w* of|used|over|head|on\/\w* with|to\/\w* (?:bed|sleep))\//)
        );
      if (verb === 'find') return says(said, / (?:leak|fault|source|reason|cause|short|noise|where)\//);
      return !/\b(?:so|because|since)\b/.test(said.opener);
    },
  ),
  problem(
    '<thing> can not get <in>',
    '^<lead>* (?<subject> (?: the | a | my | that | no | your | our ) <plain>{1,4}? ) (?: can not | could not | will not | cannot ) (?: get | make it | fit | go | squeeze | come | pass | turn | reach | swing | drop | slide | stand ) (?: down | in | into | through | past | up | round | under | between | over | out | to | upright | behind ) (?<rest> <any>* )',
    (found, said, scene) => {
      const next = scene.said[said.index + 1];
      if (
        next &&
        next.sentence === said.sentence &&
        /\b(?:until|till|before|unless|once|if)\b/.test(next.opener)
      )
        return false;
      return (
        subjectIsThing(found) &&
        !says(said, / (?:till|until|today|yet|tomorrow|before|without)\//) &&
        !/\b(?:so|because|since)\b/.test(said.opener)
      );
    },
  ),
  problem(
    '<thing> never <sets>',
    '^<lead>* (?<subject> <plain>{1,7}? ) never <adverb>* (?: went | set | cured | dried | hardened | stuck | took | fitted | fit | worked | sealed | closed | kicked | bonded | turned | started | fired | lit | held | seated | reached | gripped ) (?<rest> <any>* )',
    (found, said) =>
      subjectIsThing(found) && !says(said, / (?:better|turned\/\w* up|went\/\w* up|took\/\w* off)\//),
  ),
  problem(
    '<thing> opens into <thing>',
    "^<lead>* (?<subject> <plain>{1,7}? ) <adverb>* (?: opens into | swings into | opens onto | bangs into | bangs against | bangs on | knocks into | knocks against | hits the <any> | bumps into | lands right on | lands bang on | lands square on | lands slap on | falls right on | comes out under | runs straight into | runs right into | goes straight into | goes right through | is right where | 's right where | is exactly where | sits right where | sits right in | ends up under | ends up behind | stops short | stops the <any>{1,3} from | fouls on | snags on | snags | jams on | jams against | jams in | catches the | scuffs | scrapes | scrapes at | scrapes on | grounds on | grounds out | bottoms out | bottoms on | touches the | touches on | chafes on | chafes against | presses on | pinches | gets in the way ) (?<rest> <any>* )",
    (found, said) =>
      subjectIsThing(found) &&
      !has(found.words, 'N') &&
      !says(said, / (?:so|nail|purpose|target|spot)\//) &&
      !/\b(?:so|until|till)\b/.test(said.opener),
  ),
  problem(
    '<thing> is in the wrong place',
    "^<lead>* (?<subject> <plain>{1,8}? ) (?: 's | is | are | 're | was | were | swings | opens | points | faces | went | goes | came | sits ) <adverb>* (?: on | in | at )? (?: back to front | upside down | inside out | the wrong <any> | wrong way <any> | backwards | in the way | too close to | a mirror image | left handed | right handed | cross threaded | seized | full on )",
    (found) => subjectIsThing(found) && !has(found.words, 'N'),
  ),
  problem(
    '<thing> needs more than it has',
    "^<lead>* (?: i | we ) (?: 've | have )? (?: only | just ) (?: got | have )? <number> (?<rest> <any>{0,4} ) $",
    (_, said, scene) => {
      const next = scene.said[said.index + 1];
      return (
        next !== undefined &&
        next.sentence === said.sentence &&
        says(next, / (?:need|needs|wants|want|takes|should|wanted)\//)
      );
    },
  ),
];
