/** Choices that change what stood: what is left out, swapped, made bigger or smaller. */
import { code, daily, grounded } from './choice-grounds.ts';
import { chosenHere as decision } from './decision-rule.ts';
import { firstWord, neighbour, type StatementRule } from './draft.ts';
import { phrase } from './phrase.ts';
import { has } from './snag.ts';

const WEIGHED = / (?:could|might|or|either|option|thinking|tempted)\//;

/** What a person comes round to, or settles of what they weighed up. */
export const CHANGE_OF_MIND_RULES: readonly StatementRule[] = [
  decision(
    'I have changed my mind about <thing>',
    phrase(
      "(?: i | we ) (?: 've | have | 'd )? <adverb>* (?: changed (?: my | our ) (?: mind | minds ) | had a change of heart | come round | come around | had second thoughts | gone off ) (?: about | on | over | to | with | the | that | those | it | them )",
    ),
    (found, said, scene) => {
      if (has(found.words, 'N')) return false;
      // "..., they're going to be 175": what it is now is told in the words after.
      const next = neighbour(scene, said, 1);
      const tells = next !== undefined && / (?:going|'ll|will|be|want|is|'s|are|'re)\//.test(next.code);
      return { plain: true, ...(tells ? { to: next.index, end: next.end } : {}) };
    },
  ),
  decision(
    "let's do <that>",
    phrase(
      "^<lead>* (?: let us | i 'll | we 'll | i 'm going to | we 're going to | i think i 'll ) (?: do | go with | go for ) (?: that | it | this | them | those ) (?: then | one | instead | anyway | so )* $",
    ),
    (_, said, scene) => {
      // What it is was weighed up just before: "I could take 20 off the feet".
      const weighed = scene.said.slice(Math.max(0, said.index - 3), said.index);
      if (!weighed.some(({ code: words }) => WEIGHED.test(words))) return false;
      const from = weighed.find(({ sentence, words }) => sentence === said.sentence && words.length > 2);
      return {
        plain: true,
        ...(from ? { from: from.index, start: from.words[firstWord(from)]?.start ?? from.start } : {}),
      };
    },
  ),
];

export const CHANGED_RULES: readonly StatementRule[] = [
  decision(
    'no <thing>, then',
    phrase(
      '^<lead>* (?: no | goodbye | bye | farewell | forget | ditch | lose | scrap | bin ) (?<object> (?: the | that | my | any )? <plain>{1,4}? ) (?: then | for me | for us | at all | in this <any> | on this <any> | in my <any> | idea )? $',
    ),
    (found, said, scene) => {
      const head = found.words.find(({ classes, lower }) => !classes.includes('L') || lower === 'no')?.lower;
      const next = neighbour(scene, said, 1);
      const swaps = next !== undefined && /^ (?:hello|welcome|hi|in|just|only)\//.test(next.code);
      const ends =
        /^(?:then|me|us|all|idea)$/.test(said.words.at(-1)?.lower ?? '') ||
        / (?:this|my)\/\w* \S+$/.test(said.code);
      if (
        has(found.part('object'), 'f') ||
        / (?:rain|idea|sign|luck|problem|worries|rush|word|idea\/\w* (?:why|what)|matter|way|wonder|doubt|fear)\//.test(
          said.code,
        )
      )
        return false;
      const dropped =
        found.words.some(({ lower }) => lower === 'forget' || lower === 'scrap') &&
        found.part('object').length > 1 &&
        said.words.length <= 5;
      const trails = next !== undefined && head === 'no' && /^ then\/\w*$/.test(next.code);
      return swaps || dropped || trails || (ends && (head === 'no' || head === 'forget'));
    },
  ),
  decision(
    'that is <thing> gone from the plan',
    phrase(
      "(?: 's | is | are | was | got )? (?: the <plain>{1,4}? )? (?: gone | out | off | struck | dropped | cut | crossed off | scratched | deleted ) (?: of | from | off )* (?: the | my )? (?: plan | plans | list | drawing | drawings | budget | picture | design | build | scheme | menu )",
    ),
    (found, said) => !has(found.words, 'N') && !/ (?:ticked|done|job|jobs)\//.test(said.code),
  ),
  decision(
    '<winner> won',
    phrase(
      "^<lead>* (?: in the end | after all that | <adverb> )* (?<subject> (?: the )? <plain>{1,4}? ) (?: won | wins | won out | wins out | won the day | gets it | got it | takes it | gets the job | it shall be | is the winner | 's the winner | gets the vote | carried the day )(?<rest> <any>{0,5} )$|^<lead>* the (?: winner | choice | verdict | decision | answer ) (?: 's | is | was )",
    ),
    (found) => {
      if (has(found.words, 'N')) return false;
      const [subject] = found.part('subject');
      // "The winner is the larch": said in so many words.
      if (!subject) return { plain: true };
      return !/^(?:i|we|it|he|she|they|that|nobody|who)$/.test(subject.lower);
    },
  ),
  decision(
    'back to <the other>',
    phrase(
      '^<lead>* (?: back to | moving to | moving from | switching from | switching to | going from | going back to | swapping to | swapping from | staying at | staying with | staying on | sticking at | keeping to | keeping with | down to | up to ) (?<object> (?: plan | the | <number> | twelve | a | my | <material> | our ) <any>* )',
    ),
    (found, said, scene) =>
      !daily(found) &&
      !has(found.words, 'N') &&
      !has(said.words, 'S') &&
      (grounded(said, scene) ||
        / (?:plan|volt|old|from|staying|sticking)\//.test(code(found)) ||
        has(found.part('object').slice(0, 1), 'Q')) &&
      !/ (?:work|reality|basics|square|front|bed|town|waiting|bare)\//.test(said.code),
  ),
  decision(
    'call it <size> and be done',
    phrase(
      "(?: call it | say | make it | settled it | done deal | that 's settled | that settles it | deal | sorted | final answer | settled ) (?: <lead> | then )* (?<object> <number> <any>{0,4}? ) and? (?: have done with it | be done | done | leave it | that 's that | that 's it | final ) ",
    ),
    (found) => !has(found.words, 'N'),
  ),
  decision(
    '<changed> <thing> to <size>, nobody named',
    phrase(
      '^<lead>* (?: <adverb> | and | then )* (?<verb> thickened | bumped | upped | raised | lowered | shortened | widened | narrowed | deepened | lengthened | stretched | shrunk | shrank | dropped | moved | pulled | pushed | shifted | brought | knocked | took | swapped | switched | scrapped | doubled | halved | upgraded | downgraded | lightened | stiffened | made | cut ) (?<object> (?: the | my | it | them | both | all | that | sides | those | up | down | every ) <any>+ )',
    ),
    (found, said, scene) => {
      const verb = found.part('verb')[0]?.lower ?? '';
      const object = found.part('object');
      if (
        has(found.words, 'N') ||
        has(said.words, 'E') ||
        / (?:kids|car|van\/\w* to|skip|tip|wall|shed\/\w* floor)\//.test(said.code)
      )
        return false;
      const sized = / (?:to|by|up|down|in|out|back)\/\w* (?:\S+ ){0,2}?\S+\/\w*Q/.test(said.code);
      if (/^(?:scrapped|swapped|switched|upgraded|downgraded)$/.test(verb)) return true;
      if (
        /^(?:thickened|bumped|upped|shortened|widened|narrowed|deepened|lengthened|stretched|shrunk|shrank|doubled|halved|lightened|stiffened)$/.test(
          verb,
        )
      )
        return object.length > 1;
      return (
        (sized &&
          /^(?:raised|lowered|dropped|moved|pulled|pushed|shifted|brought|knocked|took|made)$/.test(verb) &&
          grounded(said, scene)) ||
        (/^(?:raised|lowered|moved|dropped|shifted)$/.test(verb) && grounded(said, scene))
      );
    },
  ),
  decision(
    'I have swapped <this> for <that>',
    phrase(
      "^<lead>* (?: i | we ) (?: 've | have )? (?: <adverb> )* (?: swapped | traded | exchanged | replaced | switched ) (?<object> <any>{1,6}? (?: for | with | to ) (?: a | an | the | two | three | <material> | some ) <any>+ )",
    ),
    (found) =>
      !has(found.words, 'N') &&
      !/ (?:broken|cracked|blown|dead|worn|leaking|leaky|perished|rotten|faulty|new\/\w* one|numbers|stories|ends)\//.test(
        code(found),
      ),
  ),
  decision(
    '<thing> gains or loses <much>',
    phrase(
      "^<lead>* (?<subject> (?: the | my | our | its | each | every | that | both ) <plain>{1,4}? ) (?: loses | gains | grows | shrinks | goes up | goes down | comes up | comes down | goes out | comes in | moves | shifts | drops | rises | gets | turns | swings | slides | stretches | is turning | 's turning | is losing | is gaining | 's losing | 's gaining | swaps ) (?<object> (?: by | to | up | down | left | right | a | an | <number> | another | out | back ) <any>* )",
    ),
    (found, said, scene) =>
      !has(found.words, 'N') &&
      !has(found.words, 'E') &&
      !has(found.part('object'), 'D') &&
      !/ (?:temperature|moisture|pressure|humidity|voltage|tide|price|needle|dial|gauge|water|sun|wind|week|weather)\//.test(
        code(found),
      ) &&
      (grounded(said, scene) || /\bso\b/.test(said.opener) || / (?:now|course|instead)\//.test(said.code)) &&
      !daily(found),
  ),
  decision(
    '<thing> rather <this way>, so <this way>',
    phrase(
      "^<lead>* (?: i | we ) (?: prefer | like | fancy | 'd rather have | would rather have | like the look of | love ) (?<object> <any>+ )",
    ),
    (found, said, scene) => {
      const next = neighbour(scene, said, 1);
      return (
        next !== undefined &&
        /\bso\b/.test(next.opener) &&
        !has(found.words, 'N') &&
        next.words.length <= 8 &&
        !/ (?:need|must|have\/\w* to|going\/\w* to|'ll)\//.test(next.code)
      );
    },
  ),
  decision(
    'my eye was on <that>, but it is <this>',
    phrase(
      "^<lead>* (?: (?: it | they | that | so )? (?: 's | is | are | 're | 'll be | will be )? (?: <lead> | no | now | the | a | an | <adverb> )* (?<object> <plain>{1,4} ) ) $",
    ),
    (found, said, scene) => {
      const before = neighbour(scene, said, -1) ?? undefined;
      const further = before?.words.every(({ classes }) => /[LN]/.test(classes))
        ? neighbour(scene, before, -1)
        : before;
      if (!further || has(found.part('object'), 'P') || daily(found)) return false;
      return (
        WAS_FOR.test(further.code) &&
        (/\bbut|so\b/.test(said.opener) || further !== before || / now\//.test(said.code))
      );
    },
  ),
];

/** What was thought of before. */
const WAS_FOR =
  / (?:had\/\w* my\/\w* eye|thought\/\w* about|looked\/\w* at|was\/\w* going\/\w* to|were\/\w* going\/\w* to|'d\/\w* sketched|sketched|planned|fancied|wanted|tempted|toyed\/\w* with|considered|the\/\w* plan\/\w* was|originally|meant\/\w* to|drawn)/;
