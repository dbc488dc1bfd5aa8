/** Choices told plainly: what is taken, kept, changed or left out, with or without a reason. */
import { chosenHere as decision } from './decision-rule.ts';
import { draft, firstWord, neighbour, type Scene, type StatementRule } from './draft.ts';
import { type Found, phrase } from './phrase.ts';
import { has } from './snag.ts';
import { supportOf } from './support.ts';
import type { Said } from './words.ts';

const DET = '(?: a | an | the | my | our | all | two | three | four | some | no | <number> )';
const daily = (found: Found, name = 'object') =>
  found
    .part(name)
    .slice(0, 4)
    .some(({ meanings }) => meanings.includes('d'));
const first = (found: Found, name = 'object') => found.part(name)[0]?.lower ?? '';
const code = (found: Found) => found.words.map(({ lower }) => ` ${lower}/`).join('');
/** The clause after gives what the chosen thing does, or what the other would have done. */
const GROUNDS =
  / (?:would|'d|looked|looks|costs|cost|gives|gave|saves|saved|clears|keeps|lets|suits|suited|wants|steals|stains|rots|rusts|bends|weighs|too|lighter|cheaper|stronger|thinner|better|quieter|warmer|simpler|quicker|easier|nicer|less|more|half|fewer|enough|opens|holds|drains|swings|stays|lasts|sheds|fits|got|need|needs)\//;
const grounded = (said: Said, scene: Scene) => {
  const next = neighbour(scene, said, 1);
  return (
    supportOf(said, scene).strong ||
    (next !== undefined && !/\b(?:and|but|when|then|if)\b/.test(next.opener) && GROUNDS.test(next.code))
  );
};

export const CHOICE_RULES: readonly StatementRule[] = [
  decision(
    'we will have <thing> <there>',
    phrase(
      `^<lead>* (?: i | we | she | he | it ) (?: 'll | will ) (?: <adverb> )* have (?<object> ${DET} <any>+ )`,
    ),
    (found, said) =>
      first(found) !== 'to' &&
      !daily(found) &&
      !has(said.words, 'E') &&
      !/ (?:to\/\w* \S+\/\w*B|done|finished|ready|look)\//.test(said.code) &&
      (/^(?:i|we)$/.test(said.words.find(({ classes }) => /O/.test(classes))?.lower ?? '') ||
        / (?:instead|no|not)\//.test(said.code)),
  ),
  decision(
    'it makes more sense to <do>',
    phrase(
      "(?: makes more sense to | makes more sense if | makes sense to | it 's (?: better | simpler | easier | cheaper | quicker | safer | wiser ) to | better to | better off | no sense in | no point in | not worth ) (?<object> <any>+ )",
    ),
    (found, said) =>
      !/ (?:wait|ask|check|say|worry|know|worrying|asking|arguing|moaning|crying|talking)\//.test(
        said.code,
      ) &&
      !/ no\/\w* point\/| not\/\w* worth\//.test(said.code) &&
      found.to > 0,
  ),
  decision(
    'it is <material> for <thing>',
    phrase(
      `^<lead>* (?: <day> | <adverb> | in the end | for better or worse | (?: on | for | in | under | as for | round | over | after ) (?: the | my | a | both | all ) <plain>{1,3}? )* (?: it | that | they | those | she | we | them )? (?: 's | 'll be | is | are | 're | will be | 's going to be | is going to be | gets | get ) (?: going to be | to be | <adverb> | getting | having )* (?<object> (?: (?: a | the | two | three | plain | good | old | local | green | reclaimed | secondhand | proper | real | <number> | <unit> | coats of | layers of | <plain> ) ){0,4}? <material> (?<rest> <any>{0,6} ) )$`,
    ),
    (found, said, scene) => {
      const object = found.part('object');
      const rest = found.part('rest');
      // "it's paint on my hands", "it's steel": what it is; a choice says what for, or gives its grounds.
      if (has(found.words, 'N') && !/ (?:not|no)\/\w* (?:\S+ ){0,2}\S+\/\w*m/.test(said.code)) return false;
      if (
        object
          .slice(0, object.length - rest.length)
          .some(
            ({ classes, meanings }) =>
              !meanings.includes('m') && /[PbGF]/.test(classes) && !/T/.test(classes),
          ) ||
        has(object, 'Y')
      )
        return false;
      const placed =
        rest.some(({ lower }) =>
          /^(?:for|in|on|under|over|round|throughout|all|then|instead)$/.test(lower),
        ) ||
        / (?:on|for|in|under|round|over)\/\w* (?:the|my|a|both|all)\/\w* (?:\S+ ){1,3}(?:it|they|that)?/.test(
          said.code.slice(0, said.codeStarts[Math.max(0, found.to - object.length)] ?? 0),
        );
      const ahead =
        / (?:'ll|will|going|so|then|instead|getting|gets|end|worse)\//.test(code(found)) ||
        /\bso\b/.test(said.opener);
      return (
        (placed && !/ (?:hands?|hair|way|water|sky)\//.test(said.code)) ||
        ahead ||
        supportOf(said, scene).strong ||
        grounded(said, scene)
      );
    },
  ),
  decision(
    '<thing> will be <material>',
    phrase(
      `^<lead>* (?<subject> (?: the | my | our | all | both | every | these | those | its <plain> ) <plain>{0,5}? ) (?: 's going to be | is going to be | are going to be | 'll be | will be | 's to be | are to be | is to be | becomes | become | shall be ) (?: <adverb> )* (?<object> (?: <plain> ){0,3}? <material> <any>{0,6} )$`,
    ),
    (found) => !has(found.words, 'N') && !has(found.part('object'), 'D'),
  ),
  decision(
    'it will be a <thing>, then',
    phrase(
      "^<lead>* (?: it | that | this | they | those | these ) (?: 'll | will ) be (?: <adverb> )* (?<object> (?: a | an | two | three | <plain> ) <any>+ )",
    ),
    (found, said, scene) =>
      (said.words.at(-1)?.lower === 'then' || grounded(said, scene) || / (?:instead)\//.test(said.code)) &&
      !daily(found) &&
      !has(found.words, 'N') &&
      !/^(?:ready|done|dry|fine|okay|good|great|worth|right|ok|here|nice|lovely|back|up|off|on|in|at|the|too|stronger|warm)$/.test(
        first(found),
      ) &&
      !/ (?:job|problem|laugh|while|day|relief|tight|squeeze|miracle|pain|fight|struggle)\//.test(
        said.code,
      ) &&
      !has(found.part('object').slice(0, 1), 'P') &&
      !has(found.part('object'), 'D'),
  ),
  decision(
    'I decided against <thing>',
    phrase(
      "(?: (?: ^<lead>* | i | we ) (?: 've | 'm | are | 're | have | had | has )? (?: <adverb> )* (?: decided against | deciding against | turned down | said no to | said yes to | passed on | ruled out | doing without | do without | gone off (?= the | that | it ) | went off (?= the | that | it ) | given up on | gone cold on | voted against | thought better of | seen sense about | drew the line at | dropped the idea | signed off on | put my foot down | went against ) | can live without | could do without | can do without | can not be doing with | can not be bothered with | can not be having | have no use for | had no time for | will put up with | 'll put up with | will live with | 'll live with | will make do with | 'll make do with | making do with | settle for ) (?<object> <any>+ )",
    ),
    (found, said) =>
      !has(found.part('object').slice(0, 1), 'N') &&
      !/ (?:should|might|could|haven't)\//.test(said.code.replace(/ could\/\w* do/, '')) &&
      !/ (?:he|they|she|passed\/\w* on\/\w* (?:to|the\/\w* message)|off\/\w* (?:like|in|with))\//.test(
        said.code,
      ),
  ),
  decision(
    'I took the <better> one',
    phrase(
      "^<lead>* (?: i | we ) (?: 've | have | 'll | will )? (?: <adverb> )* (?: took | taken | take | taking | bought | had | chose | ordered | picked | pick ) (?<object> (?: the | a ) (?: <adverb> )* (?: cheaper | dearer | bigger | smaller | longer | shorter | thicker | thinner | heavier | lighter | wider | narrower | better | plain | other | second | first | stronger | slower | faster | older | newer | local | next size | higher | lower | darker | paler | middle | cheapest | cheap | dear ) <any>* )",
    ),
    (found, said) =>
      !has(found.words, 'N') &&
      !/ (?:half|coat|load|trailer|lot|run|trip|day|week|pieces?)\//.test(said.code) &&
      !daily(found),
  ),
  decision(
    'we take <thing>, said of now',
    phrase(
      '^<lead>* (?: then | now | so | instead | there )* (?: i | we ) (?<verb> take | use | go | choose | let | leave | keep | build | hang | stay | skip | change | switch | move | put | make | buy | paint | do ) (?: <adverb> )* (?<object> <any>+ )',
    ),
    (found, said, scene) => {
      if (
        has(found.words, 'N') ||
        has(said.words, 'E') ||
        daily(found) ||
        / (?:always|usually|every|when|whenever|often|sometimes|mostly|never|home|time|tomorrow|today|tonight|hope|think|know|need|want)\//.test(
          said.code,
        )
      )
        return false;
      const { reason, turnedDown } = supportOf(said, scene);
      const better =
        / (?:smaller|bigger|thicker|thinner|heavier|lighter|longer|shorter|wider|narrower|higher|lower|deeper|another|other|instead|over\/\w* to|how|as)\//.test(
          said.code,
        );
      return (
        reason !== undefined ||
        turnedDown !== undefined ||
        (better &&
          (/\b(?:so|then)\b/.test(said.opener) ||
            / (?:so|then|now|instead|how|smaller|bigger|thicker|lower|higher|shorter|longer)\//.test(
              said.code,
            )))
      );
    },
  ),
  decision(
    'there comes <thing>',
    phrase(
      '^<lead>* (?: <adverb> | there )* (?: it | there ) (?: comes | gets | becomes ) (?<object> (?: a | an | no | another | two | <number> ) <any>+ )',
    ),
    (found) =>
      !has(found.part('object'), 'J') &&
      !daily(found) &&
      !/ (?:point|time|man|lorry|van|smell|noise)\//.test(code(found)),
  ),
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
    (found) =>
      !has(found.words, 'N') &&
      !/^(?:i|we|it|he|she|they|that|nobody|who)$/.test(found.part('subject')[0]?.lower ?? 'the'),
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
  decision(
    "I'll go with <thing>",
    phrase(
      "(?: i | we ) (?: 'll | will | 'd best | 'd better ) (?: <adverb> )* (?: go with | go for | stick with | stay with | settle for | plump for | opt for | do without | make do with ) (?<object> <any>+ )",
    ),
    (found) => !has(found.words, 'N') && !daily(found),
  ),
  decision(
    'there will be <this> instead of <that>',
    phrase("^<lead>* there (?: 'll | will | 's | is | are ) (?: going to )? (?: be )? (?<object> <any>+ )"),
    (found, said, scene) => {
      const { turnedDown, reason } = supportOf(said, scene);
      const going =
        / (?:a|an|another|two|three|extra|\S+\/\w*Q)\/?\w* (?:\S+ ){0,4}going\/\w* (?:in|under|on|over|up|behind|across|between|round|there|down|where|along|through)\//.test(
          said.code,
        );
      return (
        (going && !has(found.words, 'N')) ||
        (turnedDown !== undefined &&
          / (?:'ll|will|going)\//.test(said.code) &&
          / (?:instead|rather)\//.test(`${said.code} ${scene.said[said.index + 1]?.opener ?? ''}/`)) ||
        (reason !== undefined &&
          / (?:'ll|will)\//.test(said.code) &&
          has(found.part('object').slice(0, 2), 'Q'))
      );
    },
  ),
  decision(
    '<thing> becomes <this>',
    phrase(
      "^<lead>* (?<subject> (?: the | my | our | all | both | these | those | its | <plain> ) <plain>{0,5}? ) (?: becomes | become | will become | 'll become | turns into | turn into | 's becoming | is becoming | 's to be | is to be | are to be | 's tae be | is tae be ) (?: <adverb> )* (?<object> <any>+ )",
    ),
    (found, said, scene) =>
      !has(found.words, 'N') &&
      !has(found.part('subject'), 'J') &&
      (grounded(said, scene) ||
        found
          .part('object')
          .slice(0, 3)
          .some(({ meanings, classes }) => meanings.includes('m') || classes.includes('Q'))),
  ),
  decision(
    'I went <heavier>',
    phrase(
      "^<lead>* (?: (?: i | we ) (?: 've | have )? (?: <adverb> )* )? (?: went | gone ) (?: up (?: to | a size | one ) | down (?: to | a size | one ) | a size | one size | heavier | bigger | thicker | thinner | lighter | smaller | wider | longer | shorter | deeper | higher | lower | stronger | the other way | over to | back to ) (?<object> <any>* )",
    ),
    (found, _said) =>
      !has(found.words, 'N') &&
      !daily(found) &&
      !/ (?:town|bed|work|house|home|shop|ladder|roof|hill|road|stairs|loft)\//.test(code(found)),
  ),
  decision(
    'I will do it myself',
    phrase(
      "^<lead>* (?: i | we ) (?: 'll | will | 'm going to | 're going to ) <any>{1,6}? (?: myself | ourselves | me self | meself )",
    ),
    (found) => !has(found.words, 'N') && !has(found.words, 'E'),
  ),
  decision(
    "I'm after choosing <thing>",
    phrase(
      "^<lead>* (?: i | we ) (?: 'm | 're ) after (?: deciding | choosing | settling | picking | going (?: with | for ) | taking (?: it | the | a ) | agreeing | changing | switching | saying yes | saying no ) (?<object> <any>* )",
    ),
    (found) => !daily(found),
  ),
  decision(
    "I figured I'd go with <thing>",
    phrase(
      "^<lead>* (?: i | we )? (?: figured | reckoned | thought | decided | figure ) (?: that )? (?: i | we ) (?: 'd | would | 'll ) (?: <adverb> )* (?: go | use | put | have | run | make | do | keep | leave | stick | build | hang ) (?<object> <any>+ )",
    ),
    (found) => !has(found.words, 'N') && !daily(found),
  ),
  decision(
    'I will leave <thing> as it is',
    phrase(
      "^<lead>* (?: i | we )? (?: 'll | will | 'm | 're )? (?: <adverb> )* (?: leave | leaving | keep | keeping | left ) (?<object> (?: the | my | our | that | those | it | them | all ) <any>{0,5}? (?: where | how | as | the way | bare | exposed | on show | as is | natural | alone | rough | open | proud | visible ) (?<rest> <any>{0,6} ) )$",
    ),
    (found, said) =>
      !has(found.words, 'N') &&
      !/ (?:till|until|overnight|dry|open\/\w* (?:to|for|while))\//.test(said.code) &&
      (/ (?:i|we)\//.test(said.code) || / (?:leave|keep)\//.test(code(found))),
  ),
  decision(
    'keep <thing>, it has <merit>',
    phrase(
      '^<lead>* (?: keep | lose | skip | bin | use | leave ) (?<object> (?: the | my | that | those | all ) <plain>{1,4} ) $',
    ),
    (_, said, scene) => {
      const next = neighbour(scene, said, 1);
      return (
        next !== undefined &&
        next.opener === '' &&
        / (?:it|they|that|she)\/\w* (?:'s|'re|is|are|'ve|has|have|looks|adds)\//.test(next.code)
      );
    },
  ),
  {
    // "M10s, eights looked puny", "four legs, three would have rocked": the thing, and what the other would have done.
    name: '<this>, <that> would have <failed>',
    read: (said, scene) => {
      if (scene.unreal.has(said.index) || said.asks || said.opener !== '' || said.words.length > 7)
        return undefined;
      if (said.words.some(({ classes }) => /[SHMVb]/.test(classes)) || has(said.words, 'N')) return undefined;
      const next = neighbour(scene, said, 1);
      if (next?.opener !== '' || !OTHER_FAILS.test(next.code)) return undefined;
      return draft(
        'decision',
        said,
        { end: next.end, to: next.index, reason: scene.text.slice(next.start, next.end) },
        firstWord(said),
      );
    },
  },
  {
    // "As for the roof, shingles", "Floor, cork."
    name: 'as for <thing>, <material>',
    read: (said, scene) => {
      if (scene.unreal.has(said.index) || said.asks || said.words.length > 5) return undefined;
      const before = neighbour(scene, said, -1);
      if (
        !before ||
        !/^(?: \S+\/\w*L\w*)* (?:as|for|on|in)\/\w* (?:for\/\w* )?(?:the|my|a)\//.test(before.code) ||
        before.words.length > 6
      )
        return undefined;
      if (
        said.words.some(({ classes }) => /[SHMVN]/.test(classes)) ||
        !said.words.some(({ meanings }) => meanings.includes('m'))
      )
        return undefined;
      return { kind: 'decision', from: before.index, to: said.index, start: before.start, end: said.end };
    },
  },
  {
    // "So: oak. Done.", "Right, six fifty, final."
    name: '<thing>, done',
    read: (said, scene) => {
      if (scene.unreal.has(said.index) || said.asks || said.words.length > 3) return undefined;
      if (
        !/^(?: \S+\/\w*L\w*)* (?:done|final|finished|finito|basta|settled|sold|decided|deal|sorted|stop|period)\/\w*$/.test(
          said.code,
        )
      )
        return undefined;
      const before = scene.said[said.index - 1];
      if (!before || before.words.length > 5 || before.words.some(({ classes }) => /[SHMV]/.test(classes)))
        return undefined;
      const opens =
        /^(?: \S+\/\w*L\w*)+/.test(before.code) ||
        /\bso\b/.test(before.opener) ||
        scene.said[before.index - 1]?.sentence !== before.sentence;
      if (!opens) return undefined;
      const named = before.words.some(
        ({ meanings, classes }) => meanings.includes('m') || classes.includes('Q'),
      );
      if (!named && said.words.at(-1)?.lower !== 'sold') return undefined;
      return { kind: 'decision', from: before.index, to: said.index, start: before.start, end: said.end };
    },
  },
];

const WAS_FOR =
  / (?:had\/\w* my\/\w* eye|thought\/\w* about|looked\/\w* at|was\/\w* going\/\w* to|were\/\w* going\/\w* to|'d\/\w* sketched|sketched|planned|fancied|wanted|tempted|toyed\/\w* with|considered|the\/\w* plan\/\w* was|originally|meant\/\w* to|drawn)/;
const OTHER_FAILS =
  /^(?: \S+){0,4}? (?:would|'d|looked|looks)\/\w* (?:have|never|only|just|be|not|puny|silly|daft|wrong|mean|lost|flimsy|thin|rot|rust|split|sag|bend|warp|stain|leak|rattle|flex|crack|burn|stink|kill|cost|take|eat|steal|need)\//;
