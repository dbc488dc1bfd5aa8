import { isTradeNoun } from '../lexicon/trade-nouns.ts';
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
import { type Found, type Phrase, phrase } from './phrase.ts';
import { isMakerOrSeller } from './suppliers.ts';
import { dayAfter, dayIn } from './tasks.ts';
import type { Said, Word } from './words.ts';

const has = (words: readonly Word[], letter: string) => words.some((word) => word.classes.includes(letter));

type Guard = (found: Found, said: Said, scene: Scene) => boolean | Partial<Omit<Draft, 'kind' | 'rule'>>;

const arrival = (name: string, received: boolean, pattern: Phrase | string, guard: Guard): StatementRule =>
  phraseRule('arrival', name, pattern, (found, said, scene) => {
    if (
      scene.unreal.has(said.index) ||
      said.asks ||
      (isSubordinate(said) &&
        !(/when$/.test(said.opener) && !received && dayIn(said, scene) !== undefined)) ||
      isReason(said)
    )
      return false;
    // "It won't be here till Friday" tells the new day, whatever it denies.
    const denied = denialsIn(found.words);
    if (denied > (found.part('negation').length > 0 || / never\//.test(said.code) ? 1 : 0)) return false;
    const fields = guard(found, said, scene);
    if (!fields) return false;
    const item =
      ['subject', 'object', 'goods', 'late', 'second', 'third', 'fourth']
        .map((name) => found.part(name))
        .find((words) => words.length > 0) ?? [];
    const first = item[0];
    const last = item.at(-1);
    const pair = first === said.words[firstWord(said)] ? pairedWith(said, scene) : undefined;
    const start = pair ? (pair.words[firstWord(pair)] as Word).start : first?.start;
    return {
      received,
      ...(pair && start !== undefined ? { start, from: pair.index } : {}),
      ...(start !== undefined && last ? { item: scene.text.slice(start, last.end) } : {}),
      ...(fields === true ? {} : fields),
    };
  });

/** What is denied but for a day that was told before: "the 14th now, not the 7th" is a delivery. */
const denialsIn = (words: readonly Word[]): number =>
  words.filter((word, k) => word.classes.includes('N') && !opensDay(words.slice(k + 1))).length;

function opensDay(words: readonly Word[]): boolean {
  const [word] = words.slice(words[0]?.lower === 'the' ? 1 : 0);
  return (
    /D/.test(word?.classes ?? '') || /^\d+(?:st|nd|rd|th)$|(?:th|first|second|third)$/.test(word?.lower ?? '')
  );
}

/** "The bath and the basin came": the first of the two stands in a clause of its own. */
function pairedWith(said: Said, scene: Scene): Said | undefined {
  const before = said.opener === 'and' ? neighbour(scene, said, -1) : undefined;
  const words = before?.words.slice(firstWord(before)) ?? [];
  const isBare =
    words.length > 0 &&
    words.length <= 5 &&
    !words.some(({ classes }) => /[SHMVIONDJ]/.test(classes.replace(/B/g, ''))) &&
    !words.some(({ classes }, k) => /[bG]/.test(classes) && k === 0 && words.length > 1) &&
    isTradeNoun(words.at(-1)?.lower ?? '');
  return isBare ? before : undefined;
}

/** A day or a stretch of time from now. */
const hasTime = (said: Said, scene: Scene) =>
  dayIn(said, scene) !== undefined || / (?:weeks?|fortnight|days|months?|soon)\//.test(said.code);

const WHO =
  /^(i|we|you|he|she|me|us|who|everyone|everybody|nobody|somebody|spring|summer|winter|autumn|rain|christmas|weekend|moment|monday|tuesday|wednesday|thursday|friday|saturday|sunday|time|here)$/;
/** Carriers arrive with something; other people only turn up. */
const CARRIER = /\b(truck|lorry|van|courier|delivery|postman|pallet|driver|order|parcel|box)\b/;

/** "Six of the eight": so many of what was ordered. */
const isSomeOf = (words: readonly Word[]): boolean => {
  const of = words.findIndex(({ lower }) => lower === 'of');
  return of > 0 && has(words.slice(of - 1, of), 'Q') && has(words.slice(of + 1), 'Q');
};

/** Whether the thing spoken of can be delivered: no person, no video, no season. */
function isGoods(found: Found): boolean {
  const subject = found.part('subject');
  if (has(subject, 'E')) return false;
  // "Tuesday the hinges came": the day is no part of the goods.
  const dated = subject.length > 1 && subject[0]?.classes.includes('D') && subject[1]?.classes.includes('T');
  const words = subject.slice(dated ? 1 : 0).map((word) => word.lower);
  if (words.some((word) => CARRIER.test(word))) return true;
  // "The new spring arrived": a part, and no season.
  if (words.at(-1) === 'spring' && words.length > 1 && !/^(?:this|last|next)$/.test(words[0] ?? ''))
    return true;
  return (
    !words.some((word) => WHO.test(word)) &&
    !subject.some((word) => word.classes.includes('J') && word.lower !== 'they')
  );
}

/** "six weeks", "a fortnight", "any day". */
const findsLead = (said: Said) => / (?:weeks?|fortnight|months?|days)\//.test(said.code);

const OTHER_END =
  /^(off|out|down|up|apart|to|loose|round|undone|unstuck|away|away|along|from|in at|in handy|true|back|and|as|clean|free|across|together|under|over|with)$/;

/** "The legs came from the galvaniser's": from somebody who made or sold them, as no noise does. */
const isFromTrade = (found: Found): boolean =>
  found.part('rest')[0]?.lower === 'from' &&
  found
    .part('rest')
    .slice(1, 5)
    .some(({ lower }) => isMakerOrSeller(lower));

/** What somebody brings is goods with an article, or a thing of the trade: no scones, no smoke. */
function isBrought(found: Found, part: string): boolean {
  const words = found.part(part);
  return (
    words.length === 0 ||
    /[TOQ]/.test(words[0]?.classes ?? '') ||
    words.some(({ lower }) => isTradeNoun(lower))
  );
}

export const ARRIVAL_RULES: readonly StatementRule[] = [
  arrival(
    '<thing> is here',
    true,
    phrase(
      "^<lead>* (?<subject> <plain>{1,8}?) (?: 's | is | are | 're ) <adverb>* (?: here | delivered | dropped off ) (?<rest> <any>* )",
    ),
    (found, said, scene) =>
      isGoods(found) &&
      dayIn(said, scene) === undefined &&
      !/^(we|now)$/.test(found.part('rest')[0]?.lower ?? ''),
  ),
  arrival(
    '<thing> came',
    true,
    phrase(
      "^<lead>* (?<subject> <plain>{1,8}?) (?: 's | has | have | 've )? (?: <adverb> | been )* (?: arrived | reached | came | come | landed | showed up | turned up | rocked up | got here | made it here | made it <day> | was delivered | were delivered | was waiting | were waiting | rolled up | delivered | got delivered | showed ) (?<rest> <any>* )",
    ),
    (found, said, scene) => {
      const verb = found.words[found.words.length - found.part('rest').length - 1]?.lower ?? '';
      const next = found.part('rest')[0]?.lower ?? '';
      // "The foam kit come too", "skin come on the truck": a past, where no day ahead is named.
      if (verb === 'come' && !found.words.some((word) => /^('s|has|have|'ve)$/.test(word.lower))) {
        const one =
          !/s$/.test(found.part('subject').at(-1)?.lower ?? 's') ||
          /^(?:today|yesterday|this|by|in)$/.test(next);
        if (
          !one ||
          (found.part('rest').length > 0 &&
            !/^(?:too|in|on|today|yesterday|this|by|with|at|early|late)$/.test(next))
        )
          return false;
        if (dayIn(said, scene) !== undefined && !/ today\//.test(said.code)) return false;
      }
      if (/^(came|come)$/.test(verb) && OTHER_END.test(next) && next !== 'with' && !isFromTrade(found))
        return false;
      if (verb === 'came' && next === 'in' && !/^(the|this|a|on)$/.test(found.part('rest')[1]?.lower ?? ''))
        return (
          found
            .part('rest')
            .slice(1)
            .every(({ classes }) => /[DAT]/.test(classes)) &&
          isTradeNoun(found.part('subject').at(-1)?.lower ?? '') &&
          isGoods(found)
        );
      // "Only six of the eight turned up" is said of nothing but goods.
      return isGoods(found) && (isSomeOf(found.part('subject')) ? { plain: true } : true);
    },
  ),
  arrival(
    'showed up <day>',
    true,
    phrase(
      '^<lead>* (?: showed up | turned up | arrived | landed | came ) (?: <adverb> | <day> | this <day> | this arvo )+ (?: with (?: the | my | our | a ) <any>{1,6} | from <plain>{1,4} )? $',
    ),
    () => true,
  ),
  arrival(
    'they dropped <thing> off',
    true,
    phrase(
      "(?: they | he | she | <person> | courier | lorry | truck | postman | van | merchant ) (?: 've | 's | have | has )? <adverb>* (?: dropped (?<object> <any>{1,5}? ) off | dropped off (?<second> <any>+ ) | delivered (?<third> <any>+ ) | brought (?<fourth> <any>+ ) )",
    ),
    (found) =>
      !has(found.words, 'E') &&
      ['object', 'second', 'third', 'fourth'].every((name) => isBrought(found, name)),
  ),
  arrival(
    'I picked <thing> up',
    true,
    phrase(
      "(?: i | we ) (?: 've | have )? <adverb>* (?: picked up (?<object> (?: the | my | our | a ) <any>{1,5}? ) from | collected (?<second> (?: the | my | our ) <any>{1,5} ) )",
    ),
    (found) => !has(found.words, 'E'),
  ),
  arrival(
    '<thing> is coming <day>',
    false,
    phrase(
      "^<lead>* (?<subject> <plain>{0,9}? ) (?: (?: 's | is | are | 're | should | 'll | will | ought to | supposed to | due to | might | <adverb> | be )* ) (?<verb> coming | comes | come | lands | land | landing | due | arrives | arrive | arriving | delivered | here | expected | promised | in | turning up | turn up | rock up | show up | with me | with us | shipping | ships | ship | shipped | posted | dispatched | being delivered | being shipped | meant to <any> | back ) (?<rest> <any>* )",
    ),
    (found, said, scene) => {
      const verb = found.part('verb')[0]?.lower ?? '';
      const rest = found.part('rest');
      const next = rest[0]?.lower ?? '';
      if (!isGoods(found) && found.part('subject').length > 0) return false;
      if (
        /^(off|out|down|up|apart|together|on|in|to|back|round|through|along|undone|loose|home|from|as|away)$/.test(
          next,
        ) &&
        !(next === 'on' && has(rest, 'D')) &&
        !(next === 'on' && / (?:van|truck|lorry|train|boat|the)\//.test(said.code))
      )
        return false;
      if (verb === 'in' || verb === 'back' || verb === 'come') {
        if (
          dayIn(said, scene) === undefined ||
          (verb !== 'come' && !/ (?:should|'ll|will|due)\//.test(said.code))
        )
          return false;
      }
      if (verb === 'due' && /^(its|their|a|another|her|his|the)$/.test(next)) return false;
      if (
        /^(due|here|expected|delivered)$/.test(verb) ||
        /^(coming|comes|come|lands?|landing|arriv\w+|turning|turn|show|ships?|shipping|with|in|back|promised|rock|being|shipped|posted|dispatched|meant)$/.test(
          verb,
        )
      ) {
        const dated = hasTime(said, scene) || /^(?:shipped|dispatched|posted)$/.test(verb);
        if (!dated) return false;
      }
      if (said.words.length > 14) return false;
      return true;
    },
  ),
  arrival(
    'I have <thing> coming <day>',
    false,
    phrase(
      "(?: i | we | there ) (?: 've | have | 's | are | is | 're )? (?: got )? (?<object> (?: <det> | <number> | more ) <plain>{1,6}? ) (?: coming | arriving | landing | being delivered | on the way | on order | due | turning up ) (?<rest> <any>* )",
    ),
    (found, said, scene) =>
      !has(found.part('object'), 'E') &&
      !has(found.part('object'), 'J') &&
      (hasTime(said, scene) || / (?:order|way|delivered)\//.test(said.code)) &&
      !/^(?:off|out|down|up|in|through|from)$/.test(found.part('rest')[0]?.lower ?? ''),
  ),
  arrival(
    'a delivery of <thing> on <day>',
    false,
    phrase(
      "(?: delivery | deliveries | pallet | load | skip ) (?: of (?<object> <plain>{1,4}? ) )? (?: is | 's | on | for | coming | due )* (?: <day> | the | next )",
    ),
    (_, said, scene) =>
      dayIn(said, scene) !== undefined && !/ (?:was|were|came|out\/\w* for)\//.test(said.code),
  ),
  arrival(
    '<person> is dropping <thing> off <day>',
    false,
    phrase(
      "(?: he | she | they | <person> | yard | merchant | merchants | supplier | shop | chandlery | mill | sawmill | foundry | fabricator | depot | lad | factory ) (?: 's | 'll | are | is | 're | will | has | have | 've )? <adverb>* (?: dropping | drop | bringing | bring | sending | send | delivering | deliver | shipping | ship | has | have | got | getting | promised | posting | posted ) (?: me | us )? (?<object> <any>{1,6}? ) (?: <day> | off | round | over | in | on | for me | by | next )",
    ),
    (found, said, scene) => dayIn(said, scene) !== undefined && !has(found.words, 'E'),
  ),
  arrival(
    'waiting on <thing>',
    false,
    phrase(
      "^<lead>* (?: (?: i | we ) (?: 'm | 're | am | are ) )? <adverb>* (?: waiting on | waiting for | expecting ) (?<object> (?: the | a | some | my | new | those | more | two | another ) <any>+ )",
    ),
    (found, said, scene) => {
      const next = scene.said[said.index + 1];
      const near = next !== undefined && next.sentence === said.sentence && hasTime(next, scene);
      return (
        !has(found.part('object'), 'J') && !has(found.part('object'), 'E') && (hasTime(said, scene) || near)
      );
    },
  ),
  arrival(
    'received <thing>',
    true,
    phrase(
      "^<lead>* (?: (?: i | we ) (?: 've | have )? )? (?: <adverb> )* (?: received | got hold of | took delivery of | unpacked | unboxed | signed for ) (?<object> (?: the | my | our | a | all | both | some | two | those ) <any>+ )",
    ),
    (found) => !has(found.words, 'E'),
  ),
  arrival(
    '<carrier> brought <thing>',
    true,
    phrase(
      "(?: postie | postman | courier | lorry | truck | van | carrier | delivery man | delivery guy | mailman | ups | he | she | they | <person> ) (?: 's | 've | has | have )? <adverb>* (?: brought | delivered | dropped off | dropped round | unloaded ) (?: me | us | round )? (?<object> <any>+ )",
    ),
    (found) =>
      !has(found.words, 'E') &&
      isBrought(found, 'object') &&
      !/^(?:up|back to)$/.test(found.part('object')[0]?.lower ?? ''),
  ),
  arrival(
    '<name> dropped off <thing>',
    true,
    phrase(
      "^<lead>* (?<who> <plain>{1,2} ) (?: 's | has )? (?: dropped off | dropped round | dropped in | brought round | brought over | came by with | came round with | turned up with | showed up with ) (?<object> (?: the | a | an | my | our | his | her | some | both | two | three | four | five | six | more ) <any>+ )",
    ),
    (found) =>
      !/[TOQ]/.test(found.part('who')[0]?.classes ?? '') &&
      !has(found.part('object'), 'E') &&
      !has(found.part('object'), 'J') &&
      isBrought(found, 'object'),
  ),
  arrival(
    '<name> dropped <thing> round',
    true,
    phrase(
      "^<lead>* (?<who> <plain>{1,2} ) (?: 's | has )? (?: dropped | brought ) (?<object> (?: the | a | an | my | our | his | her | some | both | two | three | four | five | six | more ) <any>{1,4}? ) (?: round | over | off | by | in | back ) (?: <day> | this | morning | afternoon | evening | last | night )* $",
    ),
    (found) =>
      !/[TOQ]/.test(found.part('who')[0]?.classes ?? '') &&
      !has(found.part('object'), 'E') &&
      !has(found.part('object'), 'J') &&
      isBrought(found, 'object'),
  ),
  arrival(
    '<thing> has come, collected',
    true,
    phrase('^ (?: <adverb> )* (?: collected | delivered | picked up | received | landed ) $'),
    (_found, said, scene) => {
      const before = neighbour(scene, said, -1);
      if (!before || before.words.length > 5 || before.words.some((word) => /[SHM]/.test(word.classes)))
        return false;
      return {
        start: before.words[firstWord(before)]?.start ?? before.start,
        from: before.index,
        item: scene.text.slice(before.words[firstWord(before)]?.start ?? before.start, before.end),
      };
    },
  ),
  arrival(
    'picked up <thing> <day>',
    true,
    phrase(
      "^<lead>* (?: i | we )? (?: 've | have )? <adverb>* (?: picked up | collected | fetched ) (?<object> (?: the | my | our | a | some | both ) <any>+ )",
    ),
    (found, said) =>
      / (?:from|way|home|yesterday|today|morning|monday|tuesday|wednesday|thursday|friday|saturday|sunday)\//.test(
        said.code,
      ) && !has(found.words, 'E'),
  ),
  arrival(
    '<thing> is held up till <day>',
    false,
    phrase(
      "^<lead>* (?<subject> <plain>{1,7}? ) (?: 's | is | are | has | have | 've ) (?: <adverb> | been )* (?: delayed | held up | put back | pushed back | late | pushed to | pushed out to | moved to | slipped to | put off | stuck (?: in | at ) | backordered | on back order | on backorder )",
    ),
    (found, said) =>
      isGoods(found) &&
      !/ (?:me|i|my)\//.test(
        found
          .part('subject')
          .map((word) => ` ${word.lower}/`)
          .join(''),
      ) &&
      (/ (?:till|until|customs|depot|order|post)\//.test(said.code) || found.part('rest').length >= 0),
  ),
  arrival(
    'it is <day> now',
    false,
    phrase(
      "^<lead>* (?: it 's | it is | new date 's | the new date 's | that 's | they 're | now ) (?: not | now | looking like | more like )* (?: next )? <day> (?: now | instead | at the earliest | earliest )",
    ),
    (_, said, scene) => {
      const before = neighbour(scene, said, -1) ?? scene.said[said.index - 1];
      return (
        before !== undefined &&
        / (?:came|come|coming|here|held|delayed|rang|late|delivery|ordered|arrive|friday|won)\//.test(
          before.code + said.code,
        )
      );
    },
  ),
  arrival(
    '<thing> is <day>, delivery',
    false,
    phrase(
      "^<lead>* (?<subject> delivery | (?: <plain>{1,4} ) delivery | new date | eta ) (?: 's | is ) (?<rest> <any>+ )",
    ),
    (_, said, scene) => dayIn(said, scene) !== undefined,
  ),
  arrival(
    '<thing> will not come till <day>',
    false,
    phrase(
      "^<lead>* (?<subject> <plain>{1,8}? ) (?: (?: 's | is | are | will | has | have | did | was | 're ) (?<negation> not ) | never ) <adverb>* (?: coming | come | be here | here | be coming | arriving | arrive | arrived | turning up | turn up | turned up | came | show up | showed up | landing | land | be ready | ready | getting here | due ) (?<rest> <any>* )",
    ),
    (found, said, scene) => {
      if (!isGoods(found) || OTHER_END.test(found.part('rest')[0]?.lower ?? '')) return false;
      const next = scene.said[said.index + 1];
      const told =
        next !== undefined &&
        next.sentence === said.sentence &&
        dayIn(next, scene) !== undefined &&
        next.words.length < 9;
      if (told && next) return { end: next.end, to: next.index };
      return dayIn(said, scene) !== undefined || dayAfter(said, scene) !== undefined;
    },
  ),
  arrival(
    'on <day> the <thing> comes',
    false,
    phrase(
      "^<lead>* (?: on )? (?: <day> | next week | this week | the <any> ) (?: comes | come | arrives | arrive | lands )? (?<subject> (?: <det> | more | some )? <plain>{1,6}? ) (?: (?: 's | is | are | 're | will | 'll )? (?: be )? <adverb>* (?: coming | comes | come | arrives | arrive | arriving | lands | landing | due | delivered | being delivered | turns up | here ) )? (?: at <any>{1,3} | in the <any> | first thing | from <any>{1,4} )? $",
    ),
    (found, said, scene) =>
      dayIn(said, scene) !== undefined &&
      isGoods(found) &&
      found.part('subject').length > 0 &&
      / (?:coming|comes|come|arrives?|arriving|lands?|landing|due|delivered)\//.test(said.code) &&
      !/ (?:plumber|electrician|inspector|surveyor|engineer|i|we|off|out|down)\//.test(said.code),
  ),
  arrival(
    'I get <thing> <day>',
    false,
    phrase(
      "^<lead>* <plain>{0,3}? (?: i | we ) (?: 'll | will | should | 'm | 're )? (?: be )? (?: get | have | getting | having | collect | collecting | pick up | picking up | receive ) (?<object> (?: the | a | my | some | our | more | new | those | them | it | two ) <plain>{0,5}? ) (?: back )? (?: from <any>{1,4}? )? (?: on | by | next | this | in )? (?: <day> | the <any> | <number> ) (?<rest> <any>{0,3} ) $",
    ),
    (found, said, scene) =>
      dayIn(said, scene) !== undefined &&
      !has(found.part('object'), 'E') &&
      !has(found.part('object'), 'J') &&
      !has(found.part('object'), 'P') &&
      !/ (?:look|go|day|chance|wash|rest|break|beer|lift|ready|it\/\w* (?:done|out|up|in|on))\//.test(
        said.code,
      ) &&
      !/ (?:get|have|getting)\/\w* it\//.test(said.code),
  ),
  arrival(
    '<thing> is ready <day>',
    false,
    phrase(
      "^<lead>* (?<subject> <plain>{1,7}? ) (?: 's | is | are | 're | will be | 'll be | should be ) <adverb>* (?: ready | available | back | in stock | in ) <adverb>* (?: for (?: collection | pickup | pick-up | me ) | to collect | from <any>{1,3}? | at the <any>{1,3}? | in | on | by | next | for )* (?: <day> | the <any> | <number> <any> ) (?<rest> <any>{0,3} ) $",
    ),
    (found, said, scene) =>
      dayIn(said, scene) !== undefined &&
      isGoods(found) &&
      / (?:ready|available|stock|back)\//.test(said.code) &&
      !/ (?:go|paint|sand|fit|walk|i|we|power)\//.test(said.code),
  ),
  arrival(
    '<thing> is back from <place>',
    true,
    phrase(
      "^<lead>* (?<subject> <plain>{1,7}? ) (?: 's | is | are | came | 've come | has come | have come ) <adverb>* back (?: from )? (?<rest> <any>* )",
    ),
    (found, said) =>
      isGoods(found) &&
      / from\/\w* (?:\S+ ){0,3}?(?:shop|machinist|machinists|galvaniser|galvanisers|galvanizer|galvanizing|galvanising|foundry|welder|yard|powder|coater|coaters|blaster|blasters|grinder|printer|maker|plater|platers|sailmaker|upholsterer|chrome|balancing|engineering|works|anodiser|anodisers|anodising|turner|joiner|joiners)\//.test(
        said.code,
      ),
  ),
  arrival(
    '<supplier> says <day>',
    false,
    phrase(
      "^<lead>* (?: (?: the | my | a )? (?: supplier | merchant | merchants | yard | shop | foundry | mill | sawmill | glazier | maker | makers | factory | depot | courier | tracking | fabricator | chandler | chandlery | manufacturer | warehouse | dealer | ironmonger | quarry | blacksmith | smith | joiner | welder | machinist | upholsterer | sailmaker | galvaniser | galvanizer | they | he | she | boy | lad | fella | fellow | man | guy | lady ) (?: says | say | said | reckons | reckon | reckoned | rang | promised | promises | quoted | has <any>{1,3} ready | is getting | 's getting | delivers | deliver | can do | is posting | 's posting | posting | sending ) ) (?<object> <any>* )",
    ),
    (found, said, scene) => {
      const object = found.part('object');
      if (
        denialsIn(object) > 0 ||
        has(object, 'E') ||
        / (?:he|she|they)\/\w* (?:says|say|said|reckons?|reckoned)\//.test(said.code) ||
        said.words.length > 14
      )
        return false;
      return dayIn(said, scene) !== undefined || findsLead(said);
    },
  ),
  arrival(
    'lead time on <thing>',
    false,
    phrase(
      "(?: (?: lead time | delivery | wait | waiting time | turnaround | delivery time ) (?: on | for | of )? (?<object> <plain>{1,5}? )? (?: is | 's | are ) | <number> (?: weeks | months | days ) (?: for | on ) (?<goods> (?: the | a | my | new | some ) <plain>{1,4} ) (?: they | he | she )? | (?<late> (?: the | my | our | new )? <plain>{1,4}? ) (?: 's | is | are | will be | 'll be ) (?: another | about | still | only | <adverb> )* (?: <number> | a | an | another )+ (?: weeks | week | months | month | fortnight | days ) (?: away | out | off | yet | now | wait )? $ )",
    ),
    (found, said) =>
      findsLead(said) &&
      isGoods(found) &&
      !/ (?:i|we|job|holiday|ago|old|work|cure|cures|drying|dry|launch|roof|project|build|behind|late|spent|took|weekend|season|video|episode|it|that|there)\//.test(
        said.code,
      ),
  ),
  arrival(
    'got <thing> ordered',
    false,
    phrase(
      "^<lead>* (?: (?: i | we ) (?: 've | have )? )? <adverb>* (?: got | had | have ) (?<object> (?: the | a | some | my | two | three | four | more | new | another | both | all | those )? <plain>{1,5}? ) (?: ordered | on order | booked in | on its way | on their way | on the way | reserved )",
    ),
    (found) => !has(found.words, 'E'),
  ),
  arrival(
    '<thing> ordered, <day>',
    false,
    phrase(
      '^<lead>* (?<subject> <plain>{1,6}? ) (?: ordered | dispatched | shipped | on order | in the post | on the way | on its way | on their way ) $',
    ),
    (found) =>
      isGoods(found) &&
      !has(found.part('subject'), 'N') &&
      // "Picked up the tape on the way": told of an errand.
      !/^(?:picked|got|bought|fetched|collected|grabbed|dropped|called|stopped)$/.test(
        found.part('subject')[0]?.lower ?? '',
      ),
  ),
  arrival(
    '<thing> has been sent',
    false,
    phrase(
      "^<lead>* (?<subject> <plain>{1,7}? ) (?: 's been | has been | have been | 've been | got | was | were | 's | has | have ) <adverb>* (?: dispatched | shipped | posted | sent off | sent out | despatched | put on a (?: truck | lorry | van | boat ) | ordered )",
    ),
    (found) => isGoods(found),
  ),
  arrival(
    'they are sending <thing>',
    false,
    phrase(
      "(?: they | he | she | supplier | maker | makers | factory | shop | yard | merchant | merchants ) (?: 're | 's | are | is | will | 'll ) <adverb>* (?: sending | posting | shipping | delivering | send | post | ship | dropping | bringing ) (?: me | us | out | over | round )* (?<object> (?: a | another | the | some | two | new | my | more | one ) <any>{1,6} )",
    ),
    (found) =>
      !has(found.words, 'E') &&
      !/ (?:lads|men|bloke|man)\//.test(found.words.map((word) => ` ${word.lower}/`).join('')),
  ),
  arrival(
    'we have the <thing> now',
    true,
    phrase(
      "^<lead>* (?: finally | at last | we now have | (?: i | we ) (?: now | finally )? (?: 've | have )? (?: now | finally )? (?: got | have | got hold of | got my hands on ) ) (?: got | got hold of | got my hands on | have )? (?<object> (?: the | my | our | a )? <plain>{1,5}? ) (?: now | at last | finally | in my hands | in hand | in the shed | on site | in the van | off him | off them )* $",
    ),
    (found, said) =>
      / (?:now|last|finally|hands|hand|site)\//.test(said.code) &&
      found.part('object').length > 0 &&
      !/[PbGcRLEQ]/.test(
        found
          .part('object')
          .map((word) => word.classes)
          .join(''),
      ) &&
      !/ (?:power|water|light|lights|heat|idea|plan|problem|time|day|room|space|view|headroom|list|roof|floor|wall|walls)\//.test(
        said.code,
      ),
  ),
  arrival(
    '<post> brought <thing>',
    true,
    phrase(
      "^<lead>* (?: <any>{0,3}? ) (?: post | mail | postman | postie | courier | parcel | lorry | uncle | brother | neighbour | mate | <person> ) (?: 's | has | just )? <adverb>* (?: brought | came by with | came with | came round with | turned up with | showed up with | dropped round | fetched | arrived with | pulled in with | handed over ) (?: me | us | over )? (?<object> <any>+ )",
    ),
    (found) =>
      !has(found.words, 'E') &&
      isBrought(found, 'object') &&
      !/^(?:up|his|her|lunch|tea|coffee|cake|news|bad)$/.test(found.part('object')[0]?.lower ?? ''),
  ),
  arrival(
    '<thing> rolled in',
    true,
    phrase(
      "^<lead>* (?<subject> <plain>{1,7}? ) (?: 's | has | have )? (?: <adverb> | been )* (?: rolled in | rocked up | pitched up | fetched up | blew in | got dropped off | got delivered | got here | been dropped off | been delivered | waiting for me | sat in the (?: hall | shed | garage | yard ) | sitting in the (?: hall | shed | garage | yard | porch ) waiting )",
    ),
    (found) => isGoods(found),
  ),
  arrival(
    '<thing> is on order',
    false,
    phrase(
      "^<lead>* (?<subject> <plain>{1,8}? ) (?: 's | is | are | 're ) <adverb>* (?: ordered | on order | on back order | on backorder | back ordered | backordered | on its way | on their way | on the way | in the post | in the mail | on a (?: truck | van | lorry | boat | train | ship | pallet ) | on (?: his | her | their | the | a ) (?: van | truck | lorry | boat | train ) )",
    ),
    (found) => isGoods(found),
  ),
  arrival(
    'I ordered <thing>',
    false,
    phrase(
      "^<lead>* (?: (?: i | we ) (?: 've | have )? )? (?: <adverb> | went ahead and )* (?: ordered | sent for | sent off for | put in an order for | put an order in for | put the order in for | placed an order for ) (?<object> <any>* )",
    ),
    (found) =>
      !/^(wrong|less|around)$/.test(found.part('object')[0]?.lower ?? '') &&
      !/^(the old|the wrong)/.test(
        found
          .part('object')
          .map((w) => w.lower)
          .join(' '),
      ) && { plain: true },
  ),
  arrival(
    'ordered, coming <day>',
    false,
    phrase("^<lead>* (?: that | it ) (?: 's | is ) ordered"),
    () => true,
  ),
];
