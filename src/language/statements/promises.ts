import { draft, firstWord, neighbour, type StatementRule } from './draft.ts';
import { type Found, find, matches, phrase } from './phrase.ts';
import { KEPT, forViewers as promise } from './promise-rule.ts';
import { SHOWN_RULES } from './promises-shown.ts';
import { PROMISES_TOLD } from './promises-told.ts';
import { dayAfter, dayIn } from './tasks.ts';
import type { Said, Word } from './words.ts';

const has = (words: readonly Word[], letter: string) => words.some((word) => word.classes.includes(letter));

/** Giving one's word. */
const VOW = phrase(
  "(?: i promise | we promise | 's a promise | is a promise | you (?: 've | have ) (?: got )? my word | my word on it | mark my words | cross my heart | i swear (?: on | to ) <any>{1,3} $ | my hand to <any> | hand on heart | hand on my heart | pinky swear | pinky promise | scout 's hono | scout 's honour | scout 's honor | scouts honour | on my life | i swear | swear (?: on | to ) <any> | hold me to (?: it | that )? | you can hold me | i give you my word | word of honour | word of honor | promise $ | promise you | my hand to | swear down | blood oath | on my mother | on my honour | no word of a lie | not going to forget | on pain of | you heard it here | that 's a deal | no excuses | i guarantee )",
);
/** Whether the clause is nothing but the vow: then what is promised was said just before. */
const isBare = (said: Said, found: Found) =>
  said.words.length - (found.to - found.from) <= 2 && !(found.from === 0 && found.to < said.words.length - 2);

const AHEAD = / (?:'ll|will|going|coming|soon|next|tomorrow|tonight|up|gets|get|this|'s|is|on|out|goes|go)\//;

/** Who or where the viewers are: "show you", "on camera", "in the next one", "everyone who asked". */
const FOR_VIEWERS =
  / (?:you|ye|yous|yez|viewers|everyone|everybody|folks|anyone|channel|description|website|site|blog|comments|questions)\/| on\/\w* (?:camera|film|screen)\/| (?:next|own|separate|another|later|following|whole|full|second)\/\w* \S+\/\w*E| (?:next|following|later)\/\w* (?:time|week|one)\/| (?:a|the|its|this)\/\w* (?:\S+ )?\S+\/\w*E| at\/\w* the\/\w* end\/| for\/\w* (?:those|people|whoever)\/| part\/\w* \S+\/\w*Q/;
/** Viewers named, or the film. */
const TO_VIEWERS =
  / (?:you|ye|yous|yez|viewers|everyone|everybody|folks|channel|description|website|site|blog|comments|questions|camera|film|screen)\/(?!\w* out\/)| \S+\/\w*E\w*(?: |$)| part\/\w* \S+\/\w*Q| for\/\w* (?:those|people|whoever)\//;
const SHOWS =
  / (?:film|filming|show|showing|tell|telling|explain|answer|share|post|upload|publish|reveal|prove|demonstrate|talk|owe|report|stream|cover)\//;
const SLOT =
  / (?:next|coming|following|this|later|sunday's|friday's)\/\w* (?:\S+ )?(?:\S+\/\w*E|time\/|week\/|one\/|month\/|sunday\/|saturday\/|friday\/)| at\/\w* the\/\w* end\/| part\/\w* \S+\/\w*Q|'s_\/\w* \S+\/\w*E|\S+\/\w*D\w* 's\S*\/\w* \S+\/\w*E/;
/** Telling and showing, as the verb of a promise. */
const TELLS =
  / (?:film|filming|show|showing|share|post|upload|publish|record|explain|answer|cover|go|going|talk|walk|run|take|tell|test|weigh|time|measure|break|read|do|doing|make|making|give|put|putting|get|have|bring|demo|demonstrate|link|list|write|edit|cut|stream|keep|come|try|leave|draw|open|owe|dedicate|prove|reveal|report)\//;
/** "I'll tell you what", "I'll give it to you", "if you ask": no promise. */
const ASIDE =
  / (?:tell|give|show)\/\w* (?:you|ye)\/\w* (?:what|this|straight|now|honestly|for)\/| (?:thank|bet|promise|if|as|when|can|could|may|might|believe|hear)\/\w* (?:you|ye)\/| (?:you|ye)\/\w* (?:can|could|know|see|'ve|have|may|might|think|said|asked|want|need|guessed|told)\/| (?:spare|remind|miss|lie|lying|telling|warn)\/\w* (?:you|ye)?\/?| (?:wife|inspector|plumber|sparky|surveyor|brother|neighbour|yard|son|daughter)\//;

export const PROMISE_RULES: readonly StatementRule[] = [
  ...PROMISES_TOLD,
  {
    name: 'a vow',
    read: (said, scene) => {
      const found = find(VOW, said);
      if (!found || said.asks || KEPT.test(said.code) || / (?:not|never|broke|promised)\//.test(said.code))
        return undefined;
      if (!isBare(said, found)) return draft('promise', said, {}, firstWord(said));
      let before = scene.said[said.index - 1];
      // A scrap between the promise and the vow: "a full rundown at the end, every receipt, hold me to that".
      while (
        before &&
        before.words.length <= 3 &&
        !/[SHM]/.test(before.words.map((word) => word.classes).join('')) &&
        scene.said[before.index - 1]?.sentence === before.sentence
      ) {
        before = scene.said[before.index - 1];
      }
      if (!before || before.sentence < said.sentence - 1) return undefined;
      const near = before.sentence === said.sentence || said.words.length <= 5;
      if (!near) return undefined;
      return {
        kind: 'promise',
        from: before.index,
        to: said.index,
        start: before.words[firstWord(before)]?.start ?? before.start,
        end: said.end,
      };
    },
  },
  promise(
    "I'll <film> <thing>",
    phrase(
      "^<lead>* (?: i | we ) (?: 'll | will | 'm going to | 're going to ) (?: <adverb> | be )* (?<verb> film | filming | post | posting | upload | publish | show | showing | share | link | put up | put out | do you | give you | make you | record | vlog | explain | answer ) (?<object> <any>* )",
    ),
    (found, said) => {
      const verb = found.part('verb')[0]?.lower ?? '';
      const object = found.part('object');
      if (
        has(object.slice(0, 4), 'J') ||
        / (?:show\/\w* up|you\/\w* (?:that|this|credit|what)\/\w*(?: it|$)|phone|door)/.test(said.code)
      )
        return false;
      if (
        / (?:inspector|plumber|sparky|electrician|surveyor|engineer|wife|neighbour|council|parcel|letter|key|keys|box)\//.test(
          found.words.map((word) => ` ${word.lower}/`).join(''),
        )
      )
        return false;
      if (/^(show|showing|share|explain|answer|give|make|do)$/.test(verb))
        return /^(you|it|that|this|how|them|the|all|both|my)$/.test(
          object[0]?.lower ?? found.part('verb')[1]?.lower ?? '',
        );
      return true;
    },
  ),
  promise(
    'I will do <video>',
    "(?: i | we ) (?: 'll | will | 'm | 're | am | are | 'm going to | owe ) (?: <adverb> | be | going to | definitely )* (?: do | doing | make | making | run | running | have | put out | record | recording | cut together | edit | bring | take | read | answer | owe | you ) (?<object> <any>{0,7}? (?: <media> | costs | cost | build costs | questions | comments | drawings | plans | sums | numbers | receipts | full story | footage | along ) <any>{0,6} )",
    (found, said) =>
      !/ (?:my|the)\/\w* (?:plans|numbers|sums)\//.test(said.code) &&
      / (?:you|next|episode|video|film|rundown|tour|breakdown|walkthrough|walk-through|comments|questions|series|part|costs?|receipts)\//.test(
        said.code,
      ) &&
      !/ (?:fit|wire|drill)\//.test(said.code) &&
      found.part('object').length > 0,
  ),
  promise(
    'there will be <video>',
    "(?: there 'll be | there will be | there 's going to be | there 's | expect | look out for | watch for ) (?<object> <any>{0,5}? (?: <media> | questions | footage ) <any>* )",
    (found, said) =>
      / (?:'ll|will|going|soon|next|coming|expect|look|watch)\//.test(said.code) && !has(found.words, 'N'),
  ),
  promise(
    "I'll <do> it for the viewers",
    phrase(
      "^<lead>* <plain>{0,5}? (?: i | we ) <adverb>* (?: 'll | will | 'm going to | 're going to | 'm gonna | am going to | 'm | shall | owe ) (?: <adverb> | be | also | try to )* (?<verb> <any> ) (?<rest> <any>* )",
    ),
    (found, said) => {
      const verb = found.part('verb')[0]?.lower ?? '';
      const code = ` ${verb}/ ${said.code}`;
      if (ASIDE.test(said.code) || !FOR_VIEWERS.test(said.code)) return false;
      // "I'll run the cable next week": only a day, and nothing of viewers.
      if (!TO_VIEWERS.test(said.code) && !SHOWS.test(` ${verb}/`)) return false;
      if (/ owe\//.test(said.code)) return / you\//.test(said.code);
      return TELLS.test(code);
    },
  ),
  promise(
    'more on that in the next <video>',
    phrase(
      "^<lead>* (?<subject> (?: more | details | full details | all the details | details of | the rest | the link | link | links | part <any> | the full <plain> | full <plain> | a full <plain> | results | the results | the numbers | the figures | the reveal | the story ) <any>{0,5}? ) (?: (?: is | are | 's | will be | 'll be | comes | coming | to follow | follows ) )? <adverb>* (?: on | in | at | next | later | soon | to | coming | below | by | tomorrow | tonight ) (?<rest> <any>* )",
    ),
    (found, said) =>
      !has(found.words, 'N') &&
      (SLOT.test(said.code) ||
        / (?:description|comments|soon|below|channel|site|website)\//.test(said.code)) &&
      !/ (?:was|were|had)\//.test(said.code),
  ),
  promise(
    'stay tuned',
    '(?: stay tuned | watch this space | keep an eye out | look out for it | tune in | do not miss | you will not want to miss | see you there | come back (?: for | next ) | join me (?: for | next | on ) | join us (?: for | next | on ) )',
    (_, said, scene) => {
      const next = neighbour(scene, said, 1);
      return next ? { end: next.end, to: next.index } : true;
    },
  ),
  promise(
    'you will <get> <thing>',
    phrase(
      "^<lead>* <plain>{0,6}? (?: you lot | you | ye | everyone | everybody | y'all | you all | folks ) <adverb>* (?: 'll | will | 're going to | are going to | 're gonna | shall ) (?: <adverb> )* (?: get | see | have | hear | be getting | be seeing | be the first | find out ) (?<object> <any>* )",
    ),
    (found, said, scene) =>
      !has(found.words, 'N') &&
      (/ (?:first\/\w* to\/\w* know|full|proper|story|every|whole)\b/.test(said.code) ||
        SLOT.test(said.code) ||
        dayIn(said, scene) !== undefined ||
        has(found.part('object'), 'E')) &&
      !/ (?:need|want|notice|hammer)\//.test(said.code),
  ),
  promise(
    '<thing> will be up on the <channel>',
    phrase(
      "^<lead>* (?<subject> <any>{1,8}? ) (?: 's | is | are | 'll | will | goes | go | gets | come | comes | lands | drops ) (?: <adverb> | be | all | going | coming | up | out | put | posted | live )* (?: in | on | under | below ) (?: the | my | our | a | its )? (?: next | own | separate | full | second | later | following )? (?: description | comments | channel | site | website | notes | blog | page | video | film | episode | livestream | q&a | shop | forum | one ) (?<rest> <any>* )",
    ),
    (found, said) =>
      !has(found.words, 'N') &&
      / (?:'ll|will|next|by|tonight|tomorrow|soon|goes|going|coming|own|separate)\//.test(said.code) &&
      !/ (?:said|asked|wrote|was|were|someone|somebody)\//.test(said.code) &&
      !(/ one\/\w* *(?:\S+ ?)*$/.test(said.code) && !/ next\/\w* one\//.test(said.code)),
  ),
  promise(
    '<episode> is <thing>',
    phrase(
      "^<lead>* (?: the )? (?: next | this | coming )? (?: <media> | week | time | one ) (?: <number> | <unit> )* (?: 's | is | will be | 'll be | lands | drops | goes out | comes | covers | has | shows ) (?<rest> <any>+ )",
    ),
    (found, said, scene) =>
      !has(found.words, 'N') &&
      has(said.words, 'E') &&
      !/ (?:was|were|still|rendering|done|edited|flat|dead)\//.test(said.code) &&
      (dayIn(said, scene) !== undefined ||
        dayAfter(said, scene) !== undefined ||
        / (?:next|coming)\/\w* \S+\/\w*E/.test(said.code)),
  ),
  promise(
    '<show> on <day>',
    '^<lead>* (?: <plain>{0,4}? ) (?: q and a | q&a | live stream | livestream | timelapse | time lapse | walkaround | tour | walkthrough | walk-through | rundown | breakdown | premiere | reveal | receipts | whole bill | full bill | cost breakdown | before and after ) (?<rest> <any>{0,9} ) $',
    (found, said, scene) =>
      (dayIn(said, scene) !== undefined || / (?:soon|next|end)\//.test(said.code)) &&
      !has(found.words, 'N') &&
      !/ (?:was|were|went|yesterday|did|last|i|we)\//.test(said.code),
  ),
  promise(
    'the <launch> will be live',
    "(?<subject> <plain>{1,6}? ) (?: will be | 'll be | is going to be | 's going to be | goes ) <adverb>* (?: live | on camera | filmed | streamed | on film | recorded )",
    (found, said) => !has(found.words, 'N') && !/ (?:wire|cable|circuit|busbar|terminal)\//.test(said.code),
  ),
  promise(
    'I promised you <thing>, it is coming',
    "^<lead>* (?: i | we ) (?: 've | have | did )? (?: promised | promise | owe | owed ) (?: you | ye | you lot | y'all | everyone | folks | people | the (?<owed> <any> ) ) (?<object> <any>+ )",
    (found, said, scene) => {
      // "I owe the back door a coat of paint": owed to the work, and not to viewers.
      const owedTo = found.part('owed')[0];
      if (owedTo && !owedTo.classes.includes('J') && !/s$/.test(owedTo.lower)) return false;
      if (/ owe\//.test(said.code)) return true;
      const next = neighbour(scene, said, 1) ?? scene.said[said.index + 1];
      return next !== undefined &&
        / (?:next|coming|tomorrow|tonight|soon|sunday|saturday|friday|thursday|wednesday|tuesday|monday|week|will|'ll)\//.test(
          next.code,
        )
        ? { end: next.end, to: next.index }
        : false;
    },
  ),
  promise(
    "I'll let you know",
    "(?: i | we ) (?: 'll | will ) (?: <adverb> )* (?: let you know | keep you posted | report back | tell you (?: how | what | all | next | the | more ) | get back to you )",
    (_, said) => !/ (?:now|straight)\/|you\/\w* what\/\w*$/.test(said.code),
  ),
  promise(
    '<thing> is in the next <video>',
    "(?<subject> <any>{1,6}? ) (?: 's | is | are | goes | comes | going | coming | 'll be | will be ) (?: up | going | coming | all )* (?: in | on ) (?: the | a | its own | another | that )? (?: next | separate | another | following | own | later | second ) (?: one | <media> )",
    (found) => !has(found.words, 'N'),
  ),
  promise(
    'next time, <thing>',
    "^<lead>* next (?: time | week | one | episode | video | up | film ) (?: we | i | it 's | is | you | 'll | <media> )* <any>*",
    (found, said, scene) => {
      if (/ next\/\w* up\//.test(said.code) || has(found.words, 'N')) return false;
      if (
        /^(?: \S+\/\w*L\w*)* next\/\w* (?:time|one)\/\w* (?:i\/\w* 'll\/\w* (?:use|buy|get|know|make|cut|leave|do|put)|'s\/\w* the)\//.test(
          said.code,
        )
      )
        return false;
      if (/ next\/\w* (?:time|one|episode|video|film)\//.test(said.code))
        return / (?:'s|is|we|'ll|will|i)\//.test(said.code);
      return (
        said.words.length <= 3 &&
        neighbour(scene, said, 1) !== undefined &&
        neighbour(scene, said, -1) === undefined &&
        /^ (?:the|we)\//.test(neighbour(scene, said, 1)?.code ?? '') &&
        !/[SHMV]/.test(
          neighbour(scene, said, 1)
            ?.words.map((w) => w.classes)
            .join('') ?? '',
        )
      );
    },
  ),
  promise(
    '<thing> goes out <day>',
    "^<lead>* (?<subject> <plain>{1,8}? ) (?: 's | is | are | 're | 'll | will | should )* (?: be )? (?: going out | going up | goes out | goes up | goes live | going live | go out | go up | go live | drops | airs | filmed | out | up | live | online | on the channel | go online | goes online ) (?<rest> <any>* )",
    (found, said, scene) => {
      const verb = found.words[found.words.length - found.part('rest').length - 1]?.lower ?? '';
      if (/ (?:i|we)\/\w* (?:\S+ )?filmed\//.test(said.code)) return false;
      if (has(found.words, 'N') || / (?:was|were)\//.test(said.code)) return false;
      if (!dayIn(said, scene) && !dayAfter(said, scene) && !/ (?:next|soon)\//.test(said.code)) return false;
      if (/^(?:out|up|drops)$/.test(verb))
        return (
          has(found.part('subject'), 'E') ||
          / (?:going|live|goes)\/\w* (?:out)\//.test(said.code) ||
          (said.words.length <= 6 && / up\//.test(said.code) && has(found.part('subject'), 'E'))
        );
      return true;
    },
  ),
  promise(
    'I said I would <show>',
    "(?: i | we ) (?: said | told you ) (?: i | we ) (?: 'd | would | 'll | will ) (?: show | do | film | post | put | make | answer | explain | give )",
    (_, said, scene) => {
      const next = neighbour(scene, said, 1);
      if (next && dayIn(next, scene)) return { end: next.end, to: next.index };
      return dayIn(said, scene) !== undefined;
    },
  ),
  promise(
    '<video> is <day>',
    phrase(
      "^<lead>* (?<subject> <any>{0,6}? <media> <plain>{0,4}? ) (?: it | that )? (?: 's | is | are | 'll | will | goes | go | comes | lands | drops | gets | should | going | coming | on ) (?<rest> <any>+ )",
    ),
    (found, said, scene) => {
      if (
        has(found.part('subject'), 'N') ||
        / (?:was|were|had|did|said|asked|commented|filming)\//.test(said.code)
      )
        return false;
      const dated =
        dayIn(said, scene) !== undefined || / (?:next|soon)\/\w* (?:week|month|time)?/.test(said.code);
      return dated && AHEAD.test(said.code);
    },
  ),
  promise(
    '<video> <day>',
    phrase(
      '^<lead>* (?<subject> <plain>{0,5}? <media> <plain>{0,3}? ) (?: on | next | this )? (?: <day> | next week | soon | next time | at the end of <any>{1,3} | by the end of <any>{1,3} ) ',
    ),
    (found, said, scene) =>
      !has(found.part('subject'), 'N') &&
      said.words.length <= 9 &&
      (dayIn(said, scene) !== undefined || / (?:next|end)\//.test(said.code)),
  ),
  promise(
    '<thing> gets its own <video>',
    phrase(
      '(?: gets | get | getting | deserves | needs ) (?: its | their | his | her | a whole ) (?: own | whole | separate )? (?: <plain> )? <media>',
    ),
    () => true,
  ),
  promise(
    'you will <see> <thing>',
    phrase(
      "^<lead>* you (?: 'll | will ) (?: <adverb> )* (?: get | see | have | be getting | be seeing | hear ) (?<object> <any>+ )",
    ),
    (found, said, scene) =>
      / (?:on|next|soon|in|by)\//.test(said.code) &&
      (dayIn(said, scene) !== undefined ||
        has(found.part('object'), 'E') ||
        has(neighbour(scene, said, 1)?.words ?? [], 'E')),
  ),
  promise(
    'it is coming <day>',
    phrase(
      "^<lead>* (?: it | that | they ) (?: 's | is | 're | 'll be | will be ) (?: coming | going up | up | out | live | on the channel ) (?<rest> <any>* )",
    ),
    (_, said, scene) => {
      const before = neighbour(scene, said, -1);
      if (!before || !has(before.words, 'E') || before.words.length > 6) return false;
      const dated =
        dayIn(said, scene) !== undefined ||
        dayAfter(said, scene) !== undefined ||
        / (?:next|soon)\//.test(said.code);
      return dated
        ? { start: before.words[firstWord(before)]?.start ?? before.start, from: before.index }
        : false;
    },
  ),
  ...SHOWN_RULES,
];

/** Words in which the speaker mends what viewers were told. */
export const CORRECTION_RULES: readonly StatementRule[] = [
  {
    name: 'I told you <this>, it is <that>',
    read: (said, scene) => {
      if (scene.unreal.has(said.index) || !matches(TOLD, said)) return undefined;
      const next = scene.said[said.index + 1];
      const near = next && next.sentence <= said.sentence + 1;
      const mends = matches(MENDS, said) || (near && matches(MENDS, next));
      if (!mends) return undefined;
      const last = near && matches(MENDS, next) ? next : said;
      return {
        kind: 'correction',
        from: said.index,
        to: last.index,
        start: said.words[firstWord(said)]?.start ?? said.start,
        end: last.end,
      };
    },
  },
];
const TOLD = phrase(
  '(?: (?: last | previous ) (?: time | week | video | episode | film | part ) <any>{0,4}? (?: i | we ) (?: said | told | gave | wrote | put | called ) | (?: in | on ) (?: the )? (?: last | first | previous )? (?: episode | video | part | film ) <any>{0,4}? (?: i | we ) (?: said | told | gave | wrote | put | called ) | (?: i | we ) (?: said | told you | gave you | wrote | put up ) <any>{0,9}? (?: last | previous | episode | video | film | part ) | what i (?: told | gave | said ) | (?: i | we ) told you )',
);
const MENDS = phrase(
  "(?: it 's | it is | they 're | they are | that 's wrong | that was wrong | should be | should have been | is not what | 's not what | correction | sorry | actually | was wrong | scratch that | not <number> | make that | turns out )",
);
