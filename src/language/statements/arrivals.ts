import { type Draft, isReason, isSubordinate, phraseRule, type Scene, type StatementRule } from './draft.ts';
import { type Found, phrase } from './phrase.ts';
import { dayIn } from './tasks.ts';
import type { Said, Word } from './words.ts';

const has = (words: readonly Word[], letter: string) => words.some((word) => word.classes.includes(letter));

type Guard = (found: Found, said: Said, scene: Scene) => boolean | Partial<Omit<Draft, 'kind' | 'rule'>>;

const arrival = (name: string, received: boolean, pattern: RegExp, guard: Guard): StatementRule =>
  phraseRule('arrival', name, pattern, (found, said, scene) => {
    if (scene.unreal.has(said.index) || said.asks || isSubordinate(said) || isReason(said)) return false;
    if (has(found.words, 'N')) return false;
    const fields = guard(found, said, scene);
    if (!fields) return false;
    const item = found.part('subject').length > 0 ? found.part('subject') : found.part('object');
    const first = item[0];
    const last = item.at(-1);
    return {
      received,
      ...(first && last ? { item: scene.text.slice(first.start, last.end) } : {}),
      ...(fields === true ? {} : fields),
    };
  });

const WHO =
  /^(i|we|you|he|she|me|us|who|everyone|everybody|nobody|somebody|spring|summer|winter|autumn|rain|christmas|weekend|monday|tuesday|wednesday|thursday|friday|saturday|sunday|time|here)$/;
/** Carriers arrive with something; other people only turn up. */
const CARRIER = /\b(truck|lorry|van|courier|delivery|postman|pallet|driver|order|parcel|box)\b/;

/** Whether the thing spoken of can be delivered: no person, no video, no season. */
function isGoods(found: Found): boolean {
  const subject = found.part('subject');
  if (has(subject, 'E')) return false;
  const words = subject.map((word) => word.lower);
  if (words.some((word) => CARRIER.test(word))) return true;
  return (
    !words.some((word) => WHO.test(word)) &&
    !subject.some((word) => word.classes.includes('J') && word.lower !== 'they')
  );
}

const OTHER_END =
  /^(off|out|down|up|apart|to|loose|round|undone|unstuck|away|away|along|from|in at|in handy|true|back|and|as|clean|free|across|together|under|over|with)$/;

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
      "^<lead>* (?<subject> <plain>{1,8}?) (?: 's | has | have | 've )? (?: <adverb> | been )* (?: arrived | came | come | landed | showed up | turned up | got here | rolled up | delivered | got delivered | showed | finally ) (?<rest> <any>* )",
    ),
    (found) => {
      const verb = found.words[found.words.length - found.part('rest').length - 1]?.lower ?? '';
      const next = found.part('rest')[0]?.lower ?? '';
      if (verb === 'come' && !found.words.some((word) => /^('s|has|have|'ve)$/.test(word.lower)))
        return false;
      if (/^(came|come)$/.test(verb) && OTHER_END.test(next) && next !== 'with') return false;
      if (verb === 'came' && next === 'in' && !/^(the|this|a|on)$/.test(found.part('rest')[1]?.lower ?? ''))
        return false;
      return isGoods(found);
    },
  ),
  arrival(
    'showed up <day>',
    true,
    phrase(
      '^<lead>* (?: showed up | turned up | arrived | landed | came ) (?: <adverb> | <day> | this <day> )+ $',
    ),
    () => true,
  ),
  arrival(
    'they dropped <thing> off',
    true,
    phrase(
      "(?: they | he | she | <person> | courier | lorry | truck | postman | van | merchant ) (?: 've | 's | have | has )? <adverb>* (?: dropped (?<object> <any>{1,5}? ) off | dropped off (?<second> <any>+ ) | delivered (?<third> <any>+ ) | brought (?<fourth> <any>+ ) )",
    ),
    (found) => !has(found.words, 'E'),
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
      "^<lead>* (?<subject> <plain>{0,9}? ) (?: (?: 's | is | are | 're | should | 'll | will | ought to | supposed to | due to | might | <adverb> | be )* ) (?<verb> coming | comes | come | lands | land | landing | due | arrives | arrive | arriving | delivered | here | expected | promised | in | turning up | turn up | show up | with me | with us | shipping | ships | back ) (?<rest> <any>* )",
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
        /^(coming|comes|come|lands?|landing|arriv\w+|turning|turn|show|ships|shipping|with|in|back|promised)$/.test(
          verb,
        )
      ) {
        const dated =
          dayIn(said, scene) !== undefined ||
          / (?:week|weeks|fortnight|days|month|months|soon|the \d+th)\//.test(said.code);
        if (!dated) return false;
      }
      if (said.words.length > 14) return false;
      return true;
    },
  ),
  arrival(
    '<thing> is on order',
    false,
    phrase(
      "^<lead>* (?<subject> <plain>{1,8}? ) (?: 's | is | are | 're ) <adverb>* (?: ordered | on order | on back order | back ordered | backordered | on its way | on their way | on the way | in the post | in the mail | on (?: his | her | their | the | a ) (?: van | truck | lorry | boat | train ) )",
    ),
    (found) => isGoods(found),
  ),
  arrival(
    'I ordered <thing>',
    false,
    phrase(
      "^<lead>* (?: i | we ) (?: 've | have )? (?: <adverb> | went ahead and )* (?: ordered | sent for | sent off for | put in an order for | placed an order for ) (?<object> <any>* )",
    ),
    (found) =>
      !/^(wrong|less|around)$/.test(found.part('object')[0]?.lower ?? '') &&
      !/^(the old|the wrong)/.test(
        found
          .part('object')
          .map((w) => w.lower)
          .join(' '),
      ),
  ),
  arrival(
    'ordered, coming <day>',
    false,
    phrase("^<lead>* (?: that | it ) (?: 's | is ) ordered"),
    () => true,
  ),
];
