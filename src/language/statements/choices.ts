/** Choices told plainly: what is taken, kept or turned down, by its material or its merit. */
import { code, DET, daily, first, grounded } from './choice-grounds.ts';
import { chosenHere as decision } from './decision-rule.ts';
import type { StatementRule } from './draft.ts';
import { phrase } from './phrase.ts';
import { has } from './snag.ts';
import { supportOf } from './support.ts';

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
];
