/** Choices in few words: intentions, what becomes of a thing, and bare names of what is taken. */
import { code, daily, grounded } from './choice-grounds.ts';
import { chosenHere as decision } from './decision-rule.ts';
import { draft, firstWord, neighbour, type StatementRule } from './draft.ts';
import { phrase } from './phrase.ts';
import { has } from './snag.ts';
import { supportOf } from './support.ts';

export const SHORT_CHOICE_RULES: readonly StatementRule[] = [
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
    (found, said) =>
      !has(found.words, 'N') &&
      !daily(found) &&
      (/ (?:go\/\S* (?:with|for)|use|stick\/\S* with)\//.test(said.code) ? { plain: true } : true),
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

const OTHER_FAILS =
  /^(?: \S+){0,4}? (?:would|'d|looked|looks)\/\w* (?:have|never|only|just|be|not|puny|silly|daft|wrong|mean|lost|flimsy|thin|rot|rust|split|sag|bend|warp|stain|leak|rattle|flex|crack|burn|stink|kill|cost|take|eat|steal|need)\//;
