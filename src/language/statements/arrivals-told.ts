/** Goods on their way or come, in looser words: where they are now, who brings them, a thing and a day with no verb. */
import { kindsOf, type NounKind } from '../lexicon/trade-nouns.ts';
import { has } from './deed-words.ts';
import {
  type Draft,
  firstWord,
  isReason,
  isSubordinate,
  neighbour,
  phraseRule,
  type Scene,
  type StatementRule,
} from './draft.ts';
import { isBookedUp } from './no-job.ts';
import { type Found, phrase } from './phrase.ts';
import { dayIn } from './tasks.ts';
import type { Said, Word } from './words.ts';

type Guard = (found: Found, said: Said, scene: Scene) => boolean | Partial<Omit<Draft, 'kind' | 'rule'>>;
type Fate = 'come' | 'awaited';

const arrival = (name: string, fate: Fate, source: string, guard: Guard): StatementRule =>
  phraseRule('arrival', name, phrase(source), (found, said, scene) => {
    if (scene.unreal.has(said.index) || said.asks || isSubordinate(said) || isReason(said)) return false;
    if (has(found.words, 'E')) return false;
    const fields = guard(found, said, scene);
    if (!fields) return false;
    const item = found.part('goods');
    const [first] = item;
    const last = item.at(-1);
    return {
      received: fate === 'come',
      ...(first && last ? { item: scene.text.slice(first.start, last.end) } : {}),
      ...(fields === true ? {} : fields),
    };
  });

const code = (words: readonly Word[]) => words.map(({ lower }) => ` ${lower}/`).join('');
const lastOf = (words: readonly Word[]) => words.at(-1)?.lower ?? '';

const NO_GOODS =
  /^(?:i|we|you|he|she|me|us|who|everyone|everybody|nobody|somebody|someone|rain|sun|snow|weather|summer|winter|spring|autumn|christmas|weekend|day|days|week|time|moment|monday|tuesday|wednesday|thursday|friday|saturday|sunday|tomorrow|today|question|news|idea|tide|train|holiday|birthday|baby|kids|visitors|storm|wind|frost|light|dark|bill|job|work|what|which|next|all|that's)$/;
/** Kinds of nouns that a lorry brings. */
const GOODS: readonly NounKind[] = [
  'cable',
  'pipe',
  'round',
  'sheet',
  'material',
  'joist',
  'timber',
  'fastener',
  'coating',
  'liquid',
  'container',
  'electric',
  'appliance',
  'machine',
  'opening',
  'part',
];

/** "a day with a breaker bar": the thing is named before its first preposition. */
const headOf = (words: readonly Word[]) => {
  const at = words.findIndex((word, k) => k > 0 && /^(?:with|for|from|at|by|in)$/.test(word.lower));
  return at < 0 ? words : words.slice(0, at);
};
const isGoods = (phraseWords: readonly Word[], words: readonly Word[] = headOf(phraseWords)) =>
  words.length > 0 &&
  !NO_GOODS.test(lastOf(words)) &&
  !words.some((word) => /[JE]/.test(word.classes) && !CARRIER.test(word.lower));
const isMerchandise = (words: readonly Word[]) => {
  const kinds = kindsOf(words.filter((word) => !/^[TAL]+$/.test(word.classes)).map(({ lower }) => lower));
  return (
    GOODS.some((kind) => kinds.has(kind)) ||
    / (?:kit|kits|parts|delivery|parcel|goods|stuff|order|set|sets|bag|bags|box|boxes|roll|rolls|pack|load|supplies)\//.test(
      code(words),
    )
  );
};
const CARRIER =
  /^(?:truck|lorry|van|courier|delivery|pallet|order|parcel|crane|skip|digger|load|scaffold|hoist|trailer)$/;

const hasTime = (said: Said, scene: Scene) =>
  dayIn(said, scene) !== undefined ||
  / (?:weeks?|fortnight|days?|months?|soon|later|shortly|week|next)\//.test(said.code) ||
  / (?:noon|midday|teatime|dinnertime|lunchtime)\//.test(said.code);

/** Words that show the talk is of deliveries. */
const OF_DELIVERY =
  / (?:ordered|order|came|come|coming|comes|arrived|turned|delivery|delivered|delivers|courier|post|merchant|merchants|supplier|parcel|due|landed|shipped|posted|collected|stock|yard|foundry|sent|promised|expecting)\//;
const speaksOfDelivery = (said: Said, scene: Scene) =>
  [scene.said[said.index - 1], scene.said[said.index - 2], scene.said[said.index + 1]].some(
    (other) =>
      other !== undefined && Math.abs(other.sentence - said.sentence) <= 1 && OF_DELIVERY.test(other.code),
  );

const WHERE =
  '(?: in (?: the )? (?: customs | transit | post | mail ) | at (?: the )? <plain>{0,2}? (?: depot | docks | port | airport | post office | sorting office | customs | merchants | warehouse | hub | station | galvanisers | platers | foundry | yard ) | with (?: the | a )? (?: courier | carrier | carriers | postman | driver | neighbours | neighbour | shippers | hauliers | next door ) | out (?: for delivery | with the courier | on the van ) | on (?: the | a | its | their )? (?: van | lorry | truck | boat | ferry | ship | train | water | road | way ) | somewhere (?: in | at | on | between ) <any>+ )';

/** "Feller's hauling the tin over Friday", "the stockist is dropping the plate off Monday". */
const CARRIES =
  '(?: bringing | brings | bring | dropping | drops | drop | delivering | delivers | deliver | hauling | hauls | haul | fetching | carting | sending | sends | send | posting | shipping | running | trucking | towing | carrying | lending | getting | unloading )';

export const ARRIVALS_TOLD: readonly StatementRule[] = [
  arrival(
    'no sign of <thing>',
    'awaited',
    "^<lead>* (?: still | there is | there 's | and )* no (?: sign | word | news | trace ) (?: yet )? (?: of | on | about ) (?<goods> <any>{1,6} )$",
    (found) => isGoods(found.part('goods')),
  ),
  arrival(
    '<thing> has not come yet',
    'awaited',
    "^<lead>* (?<goods> <plain>{1,7}? ) (?: still )? (?: (?: has | have | 've | 's | did | is | are ) (?: still )? not <adverb>* (?: yet )? (?: come | arrived | arrive | shown up | show up | turned up | turn up | landed | appeared | materialised | here | been delivered | been posted | in yet ) | (?: is | are | 's | has | have ) (?: still )? (?: yet to | still to | to ) (?: come | arrive | appear | land | turn up | be delivered ) ) (?<rest> <any>{0,5} )$",
    (found, said) =>
      isGoods(found.part('goods')) &&
      (/ (?:yet|still)\//.test(said.code) || isMerchandise(found.part('goods'))) &&
      !/^(?:off|out|down|up|apart|loose|to|together|away)$/.test(found.part('rest')[0]?.lower ?? ''),
  ),
  arrival(
    '<thing> is <on its way>',
    'awaited',
    `^<lead>* (?<goods> <plain>{1,6}? ) (?: is | are | 's | 're | was | were )? (?: <adverb> | still | stuck | sat | sitting | waiting | held )* ${WHERE} (?<rest> <any>{0,4} )$`,
    (found, said) =>
      isGoods(found.part('goods')) &&
      (isMerchandise(found.part('goods')) || /^(?:it|they|that|those)$/.test(lastOf(found.part('goods')))) &&
      / (?:customs|transit|delivery|post|mail|depot|docks|port|airport|office|hub|courier|carriers?|postman|lorry|truck|van|ferry|ship|train|way|warehouse|shippers|hauliers|boat)\//.test(
        said.code,
      ) &&
      !/ (?:i|we)\//.test(said.code) &&
      !(
        / (?:van|truck|boat)\//.test(said.code) &&
        !/ (?:ordered|coming)\//.test(said.code) &&
        / (?:is|are|'s|was|were)\/\w* (?:bolted|fixed|fitted|mounted)/.test(said.code)
      ) &&
      !/^(?:of|with|and|to)$/.test(found.part('rest')[0]?.lower ?? ''),
  ),
  arrival(
    '<thing> due <day>',
    'awaited',
    "^<lead>* (?<goods> <plain>{1,6}? ) (?: (?<be> is | are | 's | 're ) (?: <adverb> )* )? (?<verb> due | to follow | following | coming | promised | expected | back | ready | landing | arriving | to come | to be here | to be delivered | in ) (?<when> <any>{0,7} )$",
    (found, said, scene) => {
      const when = found.part('when');
      if (!isGoods(found.part('goods')) || has(found.words, 'N') || has(found.part('goods'), 'P'))
        return false;
      if (
        /^(?:off|out|down|up|apart|loose|together|away|its|their|through|along|round)$/.test(
          when[0]?.lower ?? '',
        )
      )
        return false;
      const [verb] = found.part('verb');
      if (
        found.part('be').length === 0 &&
        /^(?:in|back|ready)$/.test(verb?.lower ?? '') &&
        neighbour(scene, said, -1)
      )
        return false;
      const follows = / (?:follow|following)\//.test(code(found.words));
      const booked = / (?:back|ready|in)\//.test(
        code(found.words.slice(0, found.words.length - when.length).slice(-1)),
      );
      if (
        booked &&
        !(
          CARRIER.test(lastOf(found.part('goods'))) ||
          (dayIn(said, scene) !== undefined && isMerchandise(found.part('goods')))
        )
      )
        return false;
      return (
        (follows && !has(when, 'O')) ||
        / (?:any\/\w* (?:day|minute)|day|hour)\//.test(code(when)) ||
        hasTime(said, scene) ||
        (CARRIER.test(lastOf(found.part('goods'))) && has(when, 'Q'))
      );
    },
  ),
  arrival(
    '<somebody> <brings> <thing> <day>',
    'awaited',
    `^<lead>* (?<subject> <plain>{1,5}? ) (?: 's | is | are | 're | 'll | will | 's going to | is going to )? (?: <adverb> | be )* ${CARRIES} (?: me | us | over | round | out )? (?<goods> (?: <det> <any>{1,5}? | !<det> <any>{1,6}? ) ) (?: over | off | round | down | up | in | back | out | across )? (?: to me | for me | here )? (?<when> (?: on | for | by | in )? (?: next | this | the )? (?: <day> | <any> ) <any>{0,3} )$`,
    (found, said, scene) =>
      dayIn(said, scene) !== undefined &&
      !has(found.part('subject'), 'I') &&
      !has(found.words, 'N') &&
      isGoods(found.part('goods')) &&
      (has(found.part('subject'), 'J') ||
        /^(?:they|he|she|yard|merchant|merchants|supplier|stockist|stockists|shop|chandlery|mill|sawmill|foundry|depot|factory|farmer|farm|hire|firm|dealer|maker|makers|works|quarry|place|outfit|ironmonger|warehouse|people|folks)$/.test(
          lastOf(found.part('subject')),
        )),
  ),
  arrival(
    '<somebody> brought <thing>',
    'come',
    "^<lead>* (?<subject> <plain>{1,5}? ) (?: 's | has | have | 've )? <adverb>* (?: left | brought | dropped | fetched | carted | hauled | delivered | unloaded | came with | came by with | come by with | come with | turned up with | arrived with ) (?: me | us )? (?<goods> (?: the | my | our | a | some | both | all | two | three | <number> ) <any>{1,6} )$",
    (found, said) => {
      if (has(found.part('subject'), 'I') || has(found.words, 'N')) return false;
      const carrier = found
        .part('subject')
        .some(({ lower }) =>
          /^(?:postman|postie|courier|lorry|truck|van|driver|carrier|mailman|delivery|farmer|merchant|yard|stockist|supplier|feller|boat|ferry|post)$/.test(
            lower,
          ),
        );
      const left = / (?:left|dropped)\//.test(code(found.words));
      return carrier && (!left || / (?:with|on|at|by|in|off|outside)\//.test(said.code));
    },
  ),
  arrival(
    '<thing> was collected',
    'come',
    "^<lead>* (?<goods> <plain>{1,8}? ) (?: was | were | has been | have been | got | 've been | 's been ) <adverb>* (?: collected | picked up | brought | fetched | unloaded | dropped off | signed for | received | landed | handed over | brought round | brought over | delivered ) (?<rest> <any>{0,6} )$",
    (found) =>
      isGoods(found.part('goods')) &&
      !has(found.words, 'N') &&
      !/^(?:to|down|together|up|forward|about)$/.test(found.part('rest')[0]?.lower ?? ''),
  ),
  arrival(
    '<thing> is being brought <day>',
    'awaited',
    "^<lead>* (?<goods> <plain>{1,7}? ) (?: (?: is | are | 's | 're ) (?: being | getting | to be ) | will be | 'll be | should be | gets | get ) <adverb>* (?: brought | delivered | collected | sent | dropped | posted | shipped | fetched | unloaded | here | with me | with us | at the <any> | ready | back ) (?<rest> <any>{0,6} )$",
    (found, said, scene) =>
      isGoods(found.part('goods')) &&
      !has(found.words, 'N') &&
      dayIn(said, scene) !== undefined &&
      (!/ (?:ready|back|at)\//.test(said.code) || isMerchandise(found.part('goods'))),
  ),
  arrival(
    '<somebody> says <thing> is ready <day>',
    'awaited',
    "^<lead>* (?<subject> <plain>{1,7}? ) (?: says | say | said | reckons | reckon | promised | promises ) (?: that )? (?<goods> <plain>{1,5}? ) (?: 'll | will | should | 's | is | are | would ) (?: <adverb> | be )* (?: ready | here | back | in | done | delivered | shipped | posted | with me | come | arrive ) (?<rest> <any>{0,5} )$",
    (found, said, scene) =>
      isGoods(found.part('goods')) && dayIn(said, scene) !== undefined && !has(found.part('subject'), 'I'),
  ),
  arrival(
    '<supplier> cannot before <day>',
    'awaited',
    "^<lead>* (?<subject> <plain>{1,6}? ) (?: can | could | will | would | 'll ) not (?: <any>{0,4} ) $",
    (found, said, scene) => {
      const next = scene.said[said.index + 1];
      const man =
        has(found.part('subject'), 'J') ||
        /^(?:yard|foundry|mill|sawmill|shop|merchant|merchants|works|glazier|supplier|factory|makers?)$/.test(
          lastOf(found.part('subject')),
        );
      if (
        !man ||
        !next ||
        // "Can't take it till the 20th": they are to work on what is mine, and nothing comes.
        isBookedUp(said) ||
        !/\b(?:before|until|till)\b/.test(next.opener) ||
        dayIn(next, scene) === undefined ||
        next.words.length > 6
      )
        return false;
      return { to: next.index, end: next.end };
    },
  ),
  arrival(
    '<goods> reached site',
    'come',
    "^<lead>* (?<goods> <plain>{0,6}? ) (?: has | have | 's | 've )? <adverb>* reached (?: the | our | my )? (?: site | yard | house | boat | barn | workshop | shop | home | here | us | godown )",
    (found) => !has(found.words, 'N') && !has(found.part('goods'), 'J') && !has(found.part('goods'), 'I'),
  ),
  arrival(
    'parcel today',
    'come',
    '^<lead>* (?<goods> (?: big | another | a | my | the )? <plain>{0,3}? (?: parcel | parcels | delivery | deliveries | pallet | package ) ) (?: today | this morning | this afternoon | yesterday | at last | finally )',
    (found) => !has(found.words, 'N') && !has(found.words, 'M'),
  ),
  arrival(
    'got my delivery of <thing>',
    'come',
    "^<lead>* (?: (?: i | we ) (?: 've | have )? )? <adverb>* (?: got | had | took | received | picked up | collected | fetched | grabbed ) (?: my | our | the | a | some )? (?: delivery | load | parcel | batch | consignment | order ) (?: of (?<goods> <plain>{1,4} ) )?",
    (found) => !has(found.words, 'N'),
  ),
  arrival(
    'I am expecting <thing> <day>',
    'awaited',
    "^<lead>* (?: (?: i | we ) (?: 'm | 're | am | are ) )? <adverb>* (?: expecting | waiting on | waiting for | awaiting ) (?<goods> <any>{1,7} )$",
    (found, said, scene) =>
      !has(found.part('goods'), 'J') &&
      isGoods(found.part('goods').filter((word) => !/[DR]/.test(word.classes))) &&
      (hasTime(said, scene) || isMerchandise(found.part('goods'))) &&
      !/^(?:to|it|that|him|her)$/.test(found.part('goods')[0]?.lower ?? ''),
  ),
  arrival(
    'I got <thing> from <place>',
    'come',
    "^<lead>* (?: (?: i | we ) (?: 've | have )? )? (?: just | <adverb> )* got (?: me | us | hold of | myself )? (?<goods> (?: a | an | the | some | my | our | two | three | four | <number> ) <plain>{1,5}? ) (?: from | off | at ) (?: the | a | an | my | our | that | some ) (?<place> <any>{1,4} )",
    (found) =>
      isGoods(found.part('goods')) &&
      !/ (?:price|quote|call|letter|answer|lift|look|visit|discount|deal|email|message|text|hand|tip|idea|number|bill|warning|bargain)\//.test(
        code(found.part('goods')),
      ) &&
      !/[FfXxPN]/.test(found.part('goods').at(-1)?.classes ?? '') &&
      / (?:yard|junkyard|scrapyard|sawmill|mill|shop|store|merchant|merchants|chandler|chandlery|auction|sale|farm|supplier|dealer|dump|tip|breakers|breaker|guy|bloke|fella|neighbour|neighbor|mate|cousin|uncle|market|quarry|foundry|boatyard|reclaim|salvage)\//.test(
        code(found.part('place')),
      ),
  ),
  arrival(
    'I have <thing> coming',
    'awaited',
    "^<lead>* (?: (?: i | we ) (?: 've | have ) | there (?: 's | is | are ) | got ) (?: got )? (?<goods> <any>{1,6}? ) (?: coming | on order | on the way | on its way | on their way | in the post | due | arriving ) (?<rest> <any>{0,4} )$",
    (found) =>
      isGoods(found.part('goods')) &&
      // "There's a bow in the post": of wood.
      !/[FfXx]/.test(found.part('goods').at(-1)?.classes ?? '') &&
      !has(found.part('goods'), 'N') &&
      !/^(?:off|out|down|up|in|through|from|to|on|away|loose|along)$/.test(
        found.part('rest')[0]?.lower ?? '',
      ),
  ),
  arrival(
    'they put it back to <day>',
    'awaited',
    "^<lead>* (?: (?: they | he | she | <person> ) (?: 've | have | 's | has )? <adverb>* (?: put | pushed | moved | knocked | shoved ) (?<goods> it | that | them | (?: the | my ) <plain>{1,4}? ) (?: back | out | on )? (?: to | till | until ) | (?: it | that | they | delivery ) (?: 's | is | 're | are | has | have | been | now )* (?: moved | put back | pushed back | slipped | slid ) (?: to | till | until ) ) (?<rest> <any>{1,5} )$",
    (_, said, scene) => dayIn(said, scene) !== undefined,
  ),
  arrival(
    'it will reach me <day>',
    'awaited',
    "^<lead>* (?<goods> <plain>{1,6}? ) (?: 'll | will | should | ought to | might | is to | 's to ) (?: <adverb> | be )* (?: reach | get | land | arrive | come | turn up | with | here | at | in | be ) (?<rest> <any>{1,7} )$",
    (found, said, scene) =>
      dayIn(said, scene) !== undefined &&
      isGoods(found.part('goods')) &&
      !has(found.words, 'N') &&
      (isMerchandise(found.part('goods')) ||
        (speaksOfDelivery(said, scene) &&
          /^(?:it|they|that|one|ones|those)$/.test(lastOf(found.part('goods'))))) &&
      / (?:reach|get\/\w* here|land|arrive|come|turn|with|here|at)\//.test(said.code) &&
      !/ (?:off|out|down|up|apart|together|on\/\w* (?:its|the\/\w* (?:frame|wall|floor)))\//.test(
        code(found.part('rest').slice(0, 1)),
      ),
  ),
  arrival(
    'it is <lead time> from <place>',
    'awaited',
    "^<lead>* (?<goods> it | they | that | those | <plain>{1,4}? ) (?: 's | is | are | 're ) (?: about | another | <adverb> )* (?: <number> | a | an | another )+ (?: weeks | week | months | month | fortnight | days ) (?: from | off | away | out | yet | wait )* (?: the | a )? (?: <plain>{1,3} )? $",
    (found, said, scene) =>
      speaksOfDelivery(said, scene) &&
      !has(found.words, 'N') &&
      !/ (?:since|ago|old|work|now|late|behind|early)\//.test(said.code) &&
      !/^(?:i|we|that)$/.test(lastOf(found.part('goods'))),
  ),
  // "He'll cut it Friday and drop it off on the 24th"
  arrival(
    'and <bring> it <day>',
    'awaited',
    "^<lead>* (?: (?: they | he | she | <person> ) (?: 'll | will | 's going to )? )? (?: drop | bring | send | deliver | post | ship | haul ) (?<goods> it | them | the lot | (?: the | my ) <plain>{1,3}? )? (?: off | over | round | up | down )? (?: on | by | for )? (?<when> <any>{1,4} )$",
    (found, said, scene) =>
      (/^and/.test(said.opener) ||
        !/^(?:drop|bring|send|deliver|post|ship|haul)$/.test(found.words[0]?.lower ?? '')) &&
      dayIn(said, scene) !== undefined &&
      !has(neighbour(scene, said, -1)?.words.slice(0, 2) ?? [], 'I'),
  ),
  arrival(
    '<somebody> turned up with <thing>',
    'come',
    '^<lead>* (?<subject> he | she | they | <plain>{1,4}? ) <adverb>* (?: turned up | showed up | pulled up | rolled up | came | come | arrived | landed ) (?<rest> <any>{0,5}? ) with (?<goods> <any>+ )$',
    (found) =>
      (has(found.part('subject'), 'J') ||
        /^(?:he|she|they|lorry|truck|van|courier|driver)$/.test(lastOf(found.part('subject')))) &&
      !/^(?:off|out|up|down|apart|away|loose|along)$/.test(found.part('rest')[0]?.lower ?? '') &&
      (isMerchandise(found.part('goods')) || / (?:lot|load|rest|stuff)\//.test(code(found.part('goods')))),
  ),
  arrival(
    'here comes <thing>',
    'come',
    '^<lead>* here (?: comes | come | came ) (?<goods> <any>+ )$',
    (found) => isGoods(found.part('goods')) && isMerchandise(found.part('goods')),
  ),
  {
    // "Flue kit Thursday", "ballast next Wednesday", "courier, Thursday": goods and a day, with no verb.
    name: '<goods> <day>',
    read: (said, scene) => {
      if (scene.unreal.has(said.index) || scene.listed.has(said.index) || said.asks || isSubordinate(said))
        return undefined;
      if (said.words.length > 8) return undefined;
      const topic = neighbour(scene, said, -1);
      const isDayOnly =
        said.words.length <= 4 &&
        said.words.every(
          (word) => /[DTARQL]/.test(word.classes) || word.lower === 'next' || word.lower === 'still',
        );
      if (isDayOnly && (!topic || topic.opener)) return undefined;
      if (
        said.words.some((word) =>
          /[SHMVNEGbP]/.test(word.classes.replace(/B?bP$/, (all) => (/B/.test(all) ? '' : all))),
        ) ||
        said.words.length > 8
      )
        return undefined;
      const goods = isDayOnly
        ? (topic?.words ?? [])
            .slice(topic ? firstWord(topic) : 0)
            .filter((word) => !/^(?:though|however)$/.test(word.lower))
        : said.words.slice(
            firstWord(said),
            said.words.findIndex(
              (word, k) =>
                k > 0 && (/D/.test(word.classes) || /^(?:next|on|by|for|in|the|this)$/.test(word.lower)),
            ),
          );
      if (goods.length === 0 || goods.length > 5 || goods.some((word) => /[SHMVNEGDI]/.test(word.classes)))
        return undefined;
      if (!isGoods(goods) || !(isMerchandise(goods) || CARRIER.test(lastOf(goods)))) return undefined;
      const dated = / tomorrow\//.test(said.code);
      // "Rafters tomorrow" is work, "flue kit Thursday" a delivery: what was just spoken of settles it.
      if (
        !speaksOfDelivery(said, scene) &&
        (dated ||
          !/ (?:kit|kits|parts|delivery|parcel|courier|bags?|boxes|rolls?|nails|screws|bolts|hinges|nuts|washers|bushes|bearings)\//.test(
            code(goods),
          ))
      )
        return undefined;
      const day = dayIn(said, scene);
      if (day === undefined || day <= scene.dates.recordedAt.slice(0, 10)) return undefined;
      // "On order, stainless, Friday": the same delivery goes on.
      for (let k = said.index - 1; scene.said[k]?.sentence === said.sentence; k--)
        if (k !== topic?.index || !isDayOnly)
          if (OF_DELIVERY.test(scene.said[k]?.code ?? '')) return undefined;
      const from = isDayOnly && topic ? topic : said;
      return {
        kind: 'arrival',
        from: from.index,
        to: said.index,
        start: from.words[firstWord(from)]?.start ?? from.start,
        end: said.end,
        received: false,
        item: scene.text.slice(goods[0]?.start ?? from.start, goods.at(-1)?.end ?? from.end),
      };
    },
  },
];
