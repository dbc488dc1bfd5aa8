/** Harm done by weather, beasts, hands and people who stand in the way; goods that come wrong or not at all. */
import { WELL } from '../lexicon/harm-words.ts';
import type { StatementRule } from './draft.ts';
import { phrase } from './phrase.ts';
import { has, problem, subjectIsThing } from './snag.ts';

const SOMEONE =
  "(?: somebody | someone | some <plain>{1,3}? | whoever <any>{1,5}? | (?: the )? (?: previous | last | old | former ) (?: owner | owners | bloke | fella | lot | man | people | builder ) | kids | vandals | courier | couriers | driver | forklift | lorry | truck | van | tractor | digger | boat | <det> (?: kids | courier | driver | forklift | lorry | truck | tractor | digger | dog | cat | neighbour | neighbour's <any> | cleaner | plasterers | builders ) )";

export const HARM_RULES: readonly StatementRule[] = [
  problem(
    '<weather or beast> <did> <thing>',
    phrase(
      `(?: ^<lead>* | ^<day>? <lead>* | and | , | overnight | yesterday | night | morning )? (?<subject> (?: a | an | the | some | that | those | last <any> )+ <plain>{0,2}? <harmer> | ^<lead>* (?: <plain> )? <harmer> ) (?: 's | has | have | 've | had )? (?: <adverb> | gone and | been and | been )* (?<verb> <did> | <done> | <fails> | did | got | took | came | threw | ate | bit | dug | blew | bored | made | shat | peed | nested | at | eaten | gnawed | chewed | stolen | ruined | wrecked | found | left | lifted | knocked | brought | wore | worn | gone ) (?<rest> <any>+ )`,
    ),
    (found, said) => {
      const verb = found.part('verb')[0]?.lower ?? '';
      if (
        has(found.words, 'N') ||
        WELL.test(said.code) ||
        !/ (?:the|a|my|our|at|in|into|under|behind|through|off|its|all|his|half|both|every|that|it|up|one|two|three)\//.test(
          found
            .part('rest')
            .map(({ lower }) => ` ${lower}/`)
            .join(''),
        )
      )
        return false;
      return !/^(?:and|or|for|proof|guard|screen|is|are|was|stopped|held|remains|lives|waits|says|sings|[a-z]{3,}[^s]s|watched|followed|sat|looked|came|comes|went|goes|eased|out|up|on|in|at|keeps|stays|kept|helped|left|shone|dried|said|weighs|does|house|box|shed|barn|run|wire|mesh|frame)$/.test(
        verb,
      );
    },
  ),
  problem(
    '<somebody> <harmed> <thing>',
    phrase(
      `^<lead>* (?<subject> ${SOMEONE} ) (?: 's | has | have | had | 'd )? (?: <adverb> | gone and | been and | went and )* (?<verb> pinched | nicked | stolen | stole | robbed | taken | used | painted over | wired | bodged | hacked | buried | hid | siliconed | filled | glued | nailed | welded | drilled | cut | left | backed into | reversed into | drove into | clipped | hit | dented | scraped | trod on | stood on | sat on | walked on | kicked | forgot | forgotten | chopped | butchered | bent | broke | broken | dropped | ran over | driven over | lost | mixed up | put | hooked | knocked | smashed | spilt | eaten | chewed | dug up | peed | swapped ) (?<rest> <any>+ )`,
    ),
    (found, said) =>
      !has(found.words, 'N') &&
      !WELL.test(said.code) &&
      !/ (?:kindly|lent|asked|message|note|comment|video|behind\/\w* for)\//.test(said.code) &&
      (!/^(?:put|left|cut|drilled|welded|glued|filled|used|taken)$/.test(
        found.part('verb')[0]?.lower ?? '',
      ) ||
        / (?:whoever|owner|owners|bloke|fella|wrong|out|off|open|through|old|last)\//.test(said.code)),
  ),
  problem(
    '<somebody> stands in the way',
    phrase(
      "^<lead>* (?<subject> <any>{1,5}? ) (?: (?: will not | would not | 'll not | does not | did not ) (?: have | allow | let | hear of | sign | pass | wear | come | deliver | sell | touch | insure | lift | approve | accept | take | cut | weld | do ) | says no (?: $ | to ) | said no (?: $ | to ) | say no (?: $ | to ) | has said no | refused | refuses | have refused | has refused | was not happy | is not happy | 's not happy | were not happy | knocked (?: us | me | it ) back | turned (?: us | me | it ) down | shook (?: his | her | their ) head | shakes (?: his | her | their ) head | let (?: me | us ) down | 's let me down | has let me down | cancelled | canceled | never showed | never turned up | did not show | did not turn up | pulled out | went bust | 's gone bust | has gone bust | has shut | have shut | 's shut | shut down | have closed | has closed | went under | put the price up | wants double | is off sick | 's off sick | can not make it | can not come | stopped the job | red tagged | failed (?: me | us | it | the ) | has failed | condemned ) (?<rest> <any>* )",
    ),
    (found, said) => {
      const subject = found.part('subject');
      return (
        !subject.some(({ lower }) => /^(?:i|we|you|it|they|that|this|which|she)$/.test(lower)) &&
        (has(subject, 'J') ||
          subject.some(({ meanings }) => meanings.includes('r')) ||
          subject.some(({ lower }) =>
            /^(?:firm|company|shop|people|merchant|supplier|mill|foundry|garage|bank|crane|pilot|skipper|boss|agent|quarry|dealer|depot)$/.test(
              lower,
            ),
          )) &&
        !WELL.test(said.code)
      );
    },
  ),
  problem(
    '<goods> are not to be had',
    '(?: back ordered | backordered | on back order | out of stock | sold out | discontinued | lost in the (?: post | mail ) | gone astray | went astray | lost in transit | not to be had | stuck in customs | stuck at customs | stuck in port | held up (?: at | in | by ) | nowhere to be (?: found | had ) | not in stock | none (?: till | until | left | to be had | anywhere ) | got none | have none | has none | no longer made | stopped making | do not make <any>{1,4}? any more | no sign of | not a sign of | no word from | never arrived | never turned up | never came | has not turned up | have not turned up | has not shown up | gone missing | went missing | did not arrive | did not turn up | did not come | short delivered | late again | went up (?: in price )? by | gone up to | doubled in price )',
    (found, said) =>
      !has(said.words.slice(0, found.from), 'J') &&
      !/ (?:seeing|rust|rot|leaks?|damp|water|trouble|cracks?|life|wear|movement|worm|mould|moisture|strangers?|him|her|kids)\//.test(
        said.code.slice(said.codeStarts[Math.min(found.to, said.words.length - 1)] ?? 0),
      ) &&
      !/ (?:now|finally|last)\/\w* (?:here|arrived)\//.test(said.code),
  ),
  problem(
    '<thing> went in the wrong way round',
    phrase(
      `(?: 's | is | are | was | were | been | put | hung | fitted | went | gone | goes | sits | mounted | installed | wired | glued | came | laid | screwed | bolted ) (?: <any> ){0,3}? (?: upside down | back to front | inside out | backwards | the wrong way | wrong way round | arse about face | handed wrong | mirrored )`,
    ),
    (found, said) =>
      !has(found.words, 'N') &&
      !/ (?:turn|turned|flip|flipped|lie|lay|lying|worked|hanging\/\w* upside|my\/\w* head)\//.test(
        said.code,
      ),
  ),
  problem(
    'there is <ill> at <thing>',
    phrase(
      `there (?: 's | is | are | was | were ) (?: <adverb> | still | a | an | some | the | more | this | <number> | wet | damp | little | big | great | slight | small | bit of | whole )* (?: <plain> )? <ill> (?: in | at | on | under | behind | along | across | from | all | everywhere | round | around | between | through | by | down | somewhere | inside | again | where | near | off ) `,
    ),
    (found, said) =>
      !has(found.words, 'N') &&
      !WELL.test(said.code) &&
      !/ (?:no|for|enough|mil|mm|inch|drilled)\/\w* (?:holes?|water|draughts?|air)?/.test(said.code),
  ),
  problem(
    'it lets <water> in',
    phrase(
      `^<lead>* (?<subject> <plain>{1,6}? ) (?: 's | is | are | has | have | keeps )? (?: let | lets | letting ) (?: in | water in | the rain in | the water in | the wet in | rain in | the wind in | the weather in | the damp in | a <any>{1,3} in | go )`,
    ),
    (found, said) =>
      subjectIsThing(found) &&
      !has(found.words, 'N') &&
      !/ (?:light|sun|air|fresh|finally|go\/\w* (?:after|of))\//.test(said.code),
  ),
  problem(
    'I hit <rock>',
    phrase(
      `^<lead>* (?: (?: i | we | he | they | the <plain>{1,2}? ) (?: 've | have | 's | has )? )? <adverb>* (?: hit | struck | ran into | found | met | went through ) (?: <adverb> | a | an | the | solid | old | some | more | big | live )* (?: rock | bedrock | ledge | clay | groundwater | water | roots | root | boulder | boulders | pipe | cable | drain | gas main | water main | nail | nails | knot | shake | crossmember | rebar | slab | footing | asbestos | lead paint | dry rot | wet rot | rot | woodworm )`,
    ),
    (found, said) =>
      !has(found.words, 'N') &&
      !WELL.test(said.code) &&
      !/ (?:found|met)\/\w* (?:a|the|an)\/\w* (?:pipe|cable|nail|nails|water|slab|drain)/.test(said.code),
  ),
  problem(
    '<thing> is like <cake>',
    phrase(
      `^<lead>* (?<subject> <plain>{1,8}? ) (?: 's | is | are | 're | was | were | 's gone | has gone | have gone | feels | looks ) (?: <adverb> )* (?: like | just | nothing but ) (?: a | an | old | wet | soft | stale | damp | dry )* (?: cake | biscuit | porridge | sponge | butter | cheese | mush | weetabix | toast | cardboard | paper | soup | pudding | crisps | lace | swiss | sieve | colander | banana | crackers | cornflakes | rubble | dust | sawdust | powder | compost | mud | rust | chewing gum | jelly | treacle | rag | string | biscuits | cakes | sponges | crisps | rags | pretzels | noodles | bread | clay | chalk | papier | honeycomb | skin | peat | tea bag | teabag | dishcloth )`,
    ),
    (found, said) =>
      subjectIsThing(found) &&
      !has(found.words, 'N') &&
      !WELL.test(said.code) &&
      !/ (?:mortar|mix|texture|consistency|paste|filler|slip)\//.test(said.code),
  ),
  problem(
    'one with the <part> <broken>',
    phrase(
      `with (?: the | a | an | one | two | its | both | half | no )+ <plain>{1,3}? (?: broken | missing | cracked | bent | chipped | torn | smashed | split | snapped | dented | stripped | rusted | rotten | gone | off | stove in | hanging off )`,
    ),
    (found, said) =>
      !/ (?:pull|work|drive|i|walk|managed|run|ran|runs)\//.test(
        said.code.slice(0, said.codeStarts[found.from] ?? 0),
      ),
  ),
  problem(
    'it would <take> <thing> <off>',
    phrase(
      `^<lead>* (?<subject> <plain>{1,5}? ) (?: would | 'd | will | 'll ) (?: <adverb> )* (?: peel | tear | rip | knock | scrape | clip | snap | crush | sink | cook | melt | buckle | foul | tip over | flip | crack | blow | trip | drown | strip | shear | flood | smash | wreck | clout | swipe | have | take | smoke | leak | rattle | flood | scorch | stink ) (?: it | the | them | my | her | him | those | every | off | over | out | me | a | your | somebody's | $ )`,
    ),
    (found, said) => {
      const subject = found.part('subject').at(-1)?.lower ?? '';
      // "That'd smoke": only as what would come of it, and not what people say will.
      if (found.to === said.words.length && !/ (?:would|'d)\//.test(said.code)) return false;
      if (
        /^(?:i|we|you|he|what|who)$/.test(subject) ||
        has(found.words, 'N') ||
        /\b(?:if|so|unless|when|until|or)\b/.test(said.opener)
      )
        return false;
      return !/ (?:have|take|blow|crack)\//.test(said.code) || / (?:off|over|clean|out)\//.test(said.code);
    },
  ),
  problem(
    '<thing> is fitted wrong',
    phrase(
      `^<lead>* (?<subject> <plain>{1,6}? ) (?: 's been | has been | have been | is | are | was | were | 's | 've been ) (?: <adverb> )* (?: run | fitted | laid | hung | wired | plumbed | bolted | nailed | screwed | welded | notched | drilled | cut | built | set | put ) (?: <any>{0,2}? ) (?: uphill | crooked | skew | backwards | short | through | on the skew | out of <any> | into fresh air | off centre | off center | on the piss | with a hammer | for a pipe | for the pipe | for a cable | too <any> )`,
    ),
    (found, said) =>
      subjectIsThing(found) &&
      !has(found.words, 'N') &&
      !WELL.test(said.code) &&
      !/ (?:purpose|so|tomorrow|drawing)\//.test(said.code),
  ),
  problem(
    'I miss <much>',
    phrase(
      `^<lead>* (?: i | we ) (?: miss | lack | am missing | 'm missing | are missing | 're missing | am lacking ) (?: <number> | <det> <number> | a | some ) (?<rest> <any>{0,4} )$`,
    ),
  ),
  problem(
    'the <label> lies',
    phrase(
      `(?: sheet | label | book | drawing | drawings | plate | advert | listing | tape | plan | plans | gauge | dial | template | spec | box | manual | packet | scales | website | invoice ) (?: lies | lied | lying | is lying | 's lying | was lying | is wrong | was wrong | were wrong | are wrong | 's wrong | is out | is telling lies )`,
    ),
  ),
  problem(
    'they sent <other goods>',
    phrase(
      `(?: sent | supplied | delivered | shipped | posted | brought | sold | gave | cut | arrived | came | turned up | come | comes ) (?: me | us | in | as | out | through )? (?: <adverb> | all | two | <number> | in )* (?: metric | imperial | left handed | left-handed | right handed | right-handed | one short | two short | half the | half of | two left | two right | the wrong | interior | untreated | warped | wet | chipped | in bits | in pieces | two different | different <any> | odd <any> | without | with no | with (?: a | one | two )? <plain>{0,3}? (?: missing | dent | crack | chip | scratch | hole | broken | cracked | bent ) )`,
    ),
    (found, said) =>
      !has(found.words, 'N') && !/ (?:i|we)\/\w* (?:cut|brought|sold|gave|supplied)\//.test(said.code),
  ),
  problem(
    'the <thing> they sent is <this>',
    phrase(
      "^<lead>* (?: the | what | those | all the ) <plain>{0,4}? (?: that )? (?: they | he | she | the <plain>{1,2}? ) (?: 've | has | have )? (?: sent | supplied | delivered | sold | gave | cut | posted | made | brought ) (?: me | us | for me )? (?: is | are | was | were | 's | turned out | does not | do not | will not ) (?<rest> <any>+ )",
    ),
    (_, said) => !WELL.test(said.code),
  ),
  problem(
    'I <broke> <thing>, nobody named',
    phrase(
      `^<lead>* (?: (?: and | then | went and | also | nearly )* ) (?<verb> <mishap> ) (?<object> (?: the | a | an | my | one | it | two | another | both | that | its | three ) (?<rest> <any>* ) )`,
    ),
    (found, said) => {
      const verb = found.part('verb')[0]?.lower ?? '';
      // "Snapped a chalk line down it": marked out.
      if (/ (?:chalk|snap|string)\/\S* lines?\//.test(said.code)) return false;
      if (
        /^(?:split|bent|tore|ripped|burst|stripped|burnt|burned|melted|cut|cooked|trapped|broke|crushed|lost|dropped)$/.test(
          verb,
        )
      )
        return (
          / (?:last|only|in\/\w* the\/\w* (?:cut|lake|river|bilge|canal|water|drink|sea)|in\/\w* half|by\/\w* (?:mistake|accident)|on\/\w* me|off\/\w* in|driving|trying|corner|again|taking|getting|good|brand|new|nice|nearly|thread|head|down\/\w* the|overboard|clean|somewhere|first|expensive|through)\//.test(
            said.code,
          ) &&
          !/ (?:into\/\w* (?:place|position)|off\/\w* (?:at|in\/\w* (?:the|a)\/\w* skip)|loads?|old|rope)\//.test(
            said.code,
          )
        );
      return !/ (?:into\/\w* place|old)\//.test(said.code);
    },
  ),
  problem(
    '<thing> has <come> <apart>',
    phrase(
      "^<lead>* (?<subject> <plain>{1,8}? ) (?: 's | has | have | 've | had | is | are )? (?: <adverb> | just | been )* (?<verb> cut out | cuts out | cutting out | conked out | packed up | packed in | gave out | given out | given up | gave up the | gave way | given way | let go | went bang | went pop | went phut | burnt out | burned out | blown up | blew up | fell off | fallen off | fell over | fallen over | fell out | fallen out | fell in | fallen in | came apart | come apart | came away | come away | came off | came undone | come undone | broke off | broken off | broke down | broken down | snapped off | sheared off | rotted off | rusted off | shook loose | shaken loose | worked loose | come loose | came loose | came adrift | come adrift | seized up | silted up | iced up | frozen up | frozen solid | caught fire | run dry | ran dry | ran hot | runs hot | running hot | getting hot | gets hot | hand warm | boiled over | lost pressure | lost power | losing pressure | losing power | washed out | washed away | dropped on its | dropped at | slumped | vanished | disappeared | walked | racked | picked up (?: again )? $ | just hums | hums and | just clicks | just spins | turns over but | taking on water | takes on water | making water | makes water | hanging in the air | hanging by | hanging off | painted shut | painted in | stuck fast | stuck solid | rusted solid | seized solid | swollen shut | rusted through | rotted through | worn through | worn hollow | split through | gone through | given way | gone soft | went soft | gone off | gone milky | gone cloudy | gone hard | gone brittle | gone wrong | gone again | done for | finished | had it | cactus | carked it | banjaxed | kaput | munted | stuffed | buggered | rooted | fubar | bolloxed | fried | toast | shot | et up | eaten up | upside down | back to front | inside out | drawing backwards | running backwards | turning backwards | wired backwards | lost its <plain> | lost all <any> | blocking | fouling | in the way of | trapping | overhanging | poking through | sticking out | poking out | dropping off | dropping out | sinking | tipping | leaning over | lying )",
    ),
    (found, said) => {
      const verb = found
        .part('verb')
        .map(({ lower }) => lower)
        .join(' ');
      if (
        !(
          subjectIsThing(found) ||
          /^she\b/.test(found.part('subject')[0]?.lower ?? '') ||
          has(found.part('subject').slice(0, 1), 'Q')
        ) ||
        has(found.words, 'N')
      )
        return false;
      if (
        /^(?:finished|cuts out|gone off|walked|shot|stuffed|lying|let go|came off|come off|cut out|gone through|gone hard|had it|fried|painted in|came away|come away|fell over)$/.test(
          verb,
        )
      ) {
        if (verb === 'finished')
          return (
            / (?:both|all|two|they)\/\w* (?:\S+ ){0,3}(?:are|is|'s|were)\/\w* finished\/\w*$/.test(
              said.code,
            ) && !/ (?:now|nearly|almost)\//.test(said.code)
          );
        if (verb === 'came off' || verb === 'come off' || verb === 'came away' || verb === 'come away')
          return / (?:in\/\w* my\/\w* hands?|with\/\w* it|on\/\w* me|again)\//.test(said.code);
        if (verb === 'had it') return / (?:'s|has|have)\/\w* (?:\S+ )?had\/\w* it\/\w*$/.test(said.code);
        if (
          /^cuts? out$/.test(verb) &&
          / (?:and|at)\/\w* \S+\/\w*[PQ]|out\/\w* now\/| all\/\w* cut\//.test(said.code)
        )
          return false;
        if (verb === 'cut out')
          return (
            !/ (?:the|a|with|of|for)\//.test(
              said.code.slice(said.codeStarts[Math.min(found.to, said.words.length - 1)] ?? 0),
            ) || / under\//.test(said.code)
          );
        return verb === 'shot' || verb === 'stuffed' || verb === 'fried';
      }
      return !/ (?:would|could|might|if|old)\//.test(said.code);
    },
  ),
];
