/** Promises by what is shown and where: the slot it comes in, the camera, the asker, the reminder. */
import { neighbour, type StatementRule } from './draft.ts';
import { phrase } from './phrase.ts';
import { forViewers as promise } from './promise-rule.ts';
import { has } from './snag.ts';
import { dayAfter, dayIn } from './tasks.ts';

/** What viewers are shown or told. */
const SHOWN = `(?: <media> | costs | cost | costings | price | prices | bill | bills | receipts | numbers | figures | sums | maths | answer | answers | pictures | photos | pics | drawing | drawings | plans | plan | recipe | link | links | cutting list | list | reveal | result | results | footage | before and after | side by side | time lapse | timelapse | explanation | reasons | story | details | full tour | tour | q and a | rundown | breakdown | spreadsheet | invoice | invoices )`;
/** When or where it comes, as only viewers are told. */
const SLOT = `(?: (?: the | my | our | a | its | their )? (?: next | following | coming | later | another | separate | own | last | final | second | third ) (?: one | <media> | week's <any> ) | next (?: week | time | month | weekend ) | at the end | when (?: it | she | the | we | that | they ) <any>+ | part <any> | to follow | in the (?: description | comments | notes ) | below | underneath | on (?: the )? (?: channel | screen | camera | film | site | website | blog | page ) | (?: on the weekend | over the weekend | at the weekend | by the weekend ) | (?: on | by | this | next | for )? <day> (?: night | evening | morning | week )? | soon | later | tomorrow )`;
const WILL = "(?: 'll | will | 'm going to | 're going to | am going to | are going to | shall | going to )";
const SHOW = `(?: show | showing | film | filming | tell | telling | explain | answer | cover | share | post | upload | publish | prove | reveal | name | read out | come back to | go through | go into | go over | get into | get to | walk you | take you | talk you | talk through | talk about | run you | run through | demonstrate | link | put up | stick up | pop up | put | pop | stick | have it up | read | time-lapse | timelapse | shoot | shooting | record | recording | stream | streaming | break down | open the books | do a | do the | weigh | measure | test )`;

export const SHOWN_RULES: readonly StatementRule[] = [
  promise(
    'remind me to show you',
    phrase(
      `^<lead>* (?: somebody | someone | you lot )? (?: remind me | make me | make sure i | do not let me forget | do not let me | nag me | hold me | bug me | pester me | shout at me ) (?: to | if i | about | into | till | until | forget to )? (?: not )? (?: <any> ){0,3}? (?: ${SHOW} | explain | film | you | ye | the camera ) (?<rest> <any>* )`,
    ),
    (_, said) => !/ (?:buy|order|ring|call|pick)\//.test(said.code),
  ),
  promise(
    'I will <show> <when>',
    phrase(
      `(?: i | we ) (?: ${WILL} | 'm | 're | should ) (?: <adverb> | be | try to | definitely | finally )* (?<verb> ${SHOW} ) (?<object> <any>*? ) ${SLOT}`,
    ),
    (found, said) => {
      const verb = found.part('verb')[0]?.lower ?? '';
      if (
        /^(?:weigh|measure|test|cover|do|put|pop|stick|read|have|run|take|go|get|come|stick|pop|talk)$/.test(
          verb,
        )
      )
        return (
          FOR_SCREEN.test(said.code) ||
          (/^(?:talk|go|come|get)$/.test(verb) &&
            /(?:through|into|over|back|about|to)/.test(found.part('verb')[1]?.lower ?? '') &&
            has(said.words, 'E'))
        );
      return !NOT_VIEWERS.test(said.code);
    },
  ),
  promise(
    'I will <film> it',
    phrase(
      "(?: (?: i | we ) (?: 'll | will | 'm | 're | 'm going to | 're going to | 'd ) | ^<lead>* will | going to | gonna ) (?: <adverb> | be | also | try to | going to )* (?<verb> film | filming | time-lapse | timelapse | shoot | shooting | video | stream | streaming | vlog | livestream | record ) (?<object> <any>* )",
    ),
    (found, said) =>
      !NOT_VIEWERS.test(said.code) &&
      / (?:'ll|will|going|gonna|tomorrow|next|'d|filming|shooting|streaming)\//.test(said.code) &&
      !/ (?:been|was|were|stop|stopped|start|finish|finished|about|off|foam|bolts?|blast)\//.test(
        found.words.map(({ lower }) => ` ${lower}/`).join(''),
      ) &&
      (!/^(?:filming|shooting|streaming)$/.test(found.part('verb')[0]?.lower ?? '') ||
        / (?:whole|start|finish|next|tomorrow|all|every|'ll|will|going|gonna)\//.test(said.code) ||
        has(said.words, 'D')),
  ),
  promise(
    'the camera will be there',
    phrase(
      "(?: (?: 'll | will | going to | gonna | 'm | 're | shall | get | gets | goes ) (?: <any> ){0,9}? (?: the camera | a camera | filmed | streamed | camera out | cameras | on camera | on screen | on film | the tripod | for the camera | to camera | in shot | in the picture | in time lapse | in real time | in one take ) | (?: leave | leaving | get | getting | keep | keeping ) (?: the | a ) camera (?: out | running | rolling | on | up | going ) )",
    ),
    (found, said) =>
      !has(found.words, 'N') &&
      / (?:'ll|will|going|gonna|tomorrow|next|leave|get)\//.test(said.code) &&
      !/ (?:clean|charge|fix|buy|mend|battery|was|broke|died)\//.test(said.code),
  ),
  promise(
    'you get to <see> <when>',
    phrase(
      "^<lead>* (?: <any> ){0,5}? (?: you | ye | y'all | you lot | you folks | everyone | folks | yous ) (?: <adverb> | all )* (?: can | will | 'll | get to | get | are going to | 're going to | gonna | shall | will be able to | 'll be able to ) (?: <adverb> | be able to | get to | all | folks )* (?<verb> watch | witness | see | hear | have | get | be | find | know | judge | meet | ride ) (?<object> <any>* )",
    ),
    (found, said, scene) => {
      const timed =
        dayIn(said, scene) !== undefined ||
        dayAfter(said, scene) !== undefined ||
        / (?:next|soon|later)\//.test(said.code) ||
        has(said.words, 'E');
      if (
        has(found.words, 'N') ||
        / (?:if|can\/\w* see|could|from\/\w* (?:the|here)|need|want|might)\//.test(
          said.code.replace(/ can\/\w* (?:watch|hear)/, ''),
        )
      )
        return false;
      return (
        timed ||
        / (?:witness|all\/\w* (?:see|get|hear|witness)|whole|full|every|penny|figures|numbers|proper|warts|first|bills?|tour|story|lesson|reveal)\//.test(
          said.code,
        )
      );
    },
  ),
  promise(
    '<shown> <when>, without a verb',
    phrase(
      `^<lead>* (?: the | a | an | my | full | whole | more | all the | proper | quick | complete | long | slow | every | some | cost | by popular demand | of | and | <plain> ){0,5}? (?<subject> ${SHOWN} ) (?: <plain> | of | on | about | for | the | with | to the penny | in full ){0,5}? (?: 's | is | are | comes | coming | goes | go | follow | will | be | up )* (?<when> ${SLOT} ) `,
    ),
    (found, said, scene) => {
      const when = found
        .part('when')
        .map(({ lower }) => lower)
        .join(' ');
      if (
        has(found.words, 'N') ||
        / (?:was|were|had|did|i|we|need|needs|order|ring|by|pay|due|finish|check|arrived?|came|left|says|said|cut|put)\//.test(
          said.code,
        )
      )
        return false;
      if (/^when /.test(when))
        return (
          has(found.part('subject'), 'E') ||
          / (?:full|cost|costs|bill|tour|price|figures|photos|pictures)\//.test(said.code)
        );
      return (
        FOR_SCREEN.test(said.code) ||
        has(found.part('subject'), 'E') ||
        /^(?:next|to follow|at the end)/.test(when) ||
        (/ (?:costs?|bills?|pictures|photos|pics|tour|answers?|reveal|before|receipts|figures)\//.test(
          found.words.map(({ lower }) => ` ${lower}/`).join(''),
        ) &&
          dayIn(said, scene) !== undefined)
      );
    },
  ),
  promise(
    '<day>, the <show>',
    phrase(
      "^<lead>* (?: this | next | on | come | tomorrow's | <day> | 's | 's_ | week | week's | time | tomorrow | morning | night | episode | video | film | upload | short )+ (?: it )? (?: 's | 's_ | is | , | : | comes | then )* (?: the | a | an | all about )? (?<thing> <plain>{1,7} )$",
    ),
    (found, said) =>
      has(found.words.slice(0, found.words.length - found.part('thing').length), 'E') &&
      !has(said.words, 'N') &&
      !/ (?:was|were|did|had|last|i|we)\//.test(said.code),
  ),
  promise(
    "that is <day>'s <video>",
    phrase(
      `(?: 's | is | are | be | makes | for | 're ) (?: <day> | next week | this week | tomorrow ) (?: 's | 's_ )? (?: <plain> )? (?: <media> | upload )`,
    ),
    (found) =>
      !has(found.words, 'N') &&
      found.words.some(({ lower }) => lower === "'s" || lower === "'s_" || /'s$/.test(lower)),
  ),
  promise(
    'out on <day>',
    phrase(
      `^<lead>* (?: (?: it | that | this | they | <det> <plain>{1,4}? ) (?: 's | is | goes | comes | 'll be | will be )? )? (?: out | up | live | online | on here | on here on | on the channel | goes up | going up | up here ) (?: on | this | next | by | for )? (?: <day> | tomorrow | tonight | the weekend )(?<rest> <any>{0,4} )$`,
    ),
    (found, said, scene) =>
      !has(found.words, 'N') &&
      // "Going up Saturday with the trailer": a trip.
      !/ going\/\w* up\/\w*(?: \S+)* (?:with|to|for|in)\/\w* (?:the|a|my|our)\//.test(said.code) &&
      (has(said.words, 'E') ||
        / (?:goes|live|online|here|channel|going)\//.test(said.code) ||
        has(neighbour(scene, said, -1)?.words ?? [], 'E') ||
        / (?:film|filmed|edit|edited|can|cut|footage|camera)\//.test(neighbour(scene, said, -1)?.code ?? '')),
  ),
  promise(
    'the whole <thing>, <day>',
    phrase(
      `^<lead>* (?: (?: this | next )? <day> (?: night | week )? | next week | next time )? (?: the | a | that | its | my | whole | full | all | more | some )* (?<thing> <plain>{1,5}? ) (?: (?: in full | full length | uncut | start to finish | to the penny | from start to finish | in one take | warts and all | live | with sound | and all | unedited | in real time | on here | in time lapse | every step | every penny | no cuts ) | (?<when> (?: this | on | next )? (?: <day> | tomorrow | next week | next time ) (?: night | week | evening | morning )? ) )+ $`,
    ),
    (found, said, scene) => {
      if (has(said.words, 'N') || said.words.some(({ classes }) => /[SHMVb]/.test(classes))) return false;
      const all = [said, neighbour(scene, said, 1), neighbour(scene, said, 2), neighbour(scene, said, -1)];
      return (
        MANNER.test(said.code) &&
        all.some((clause) => clause !== undefined && has(clause.words, 'D')) &&
        !/ (?:sand|paint|cut|order|ring|fit)\//.test(found.words[0]?.lower ?? '')
      );
    },
  ),
  promise(
    'that is for the next <video>',
    phrase(
      "(?: (?: that | this | it | they | which | those | the <plain>{1,4} ) (?: 's | is | are | 'll be | will be )? (?: <adverb> )* (?: for | a story for | one for | a job for | saved for | kept for | going in | going on | in | on | getting | gets | deserves | coming in | to come in ) | (?: saving | keeping | leaving | holding | kept | saved ) (?: that | it | this | them | the <any>{1,3}? | those ) (?: one | bit | part )? (?: back )? for ) (?: the | a | an | another | its | his | her | their )? (?: whole )? (?: next | own | another | separate | later | different | full | coming | second | following )? (?: <media> | week | time | one )(?<rest> <any>{0,4} )$",
    ),
    (found, said) =>
      !has(found.words, 'N') &&
      (has(said.words, 'E') || / (?:story|saving|one)\//.test(said.code)) &&
      / (?:next|own|another|separate|later|full|following|whole|different)\//.test(said.code) &&
      !/ (?:last|was|were)\//.test(said.code),
  ),
  promise(
    'more about that <when>',
    phrase(
      '^<lead>* (?: more | much more | lots more | plenty more ) (?: about | on | of ) (?: that | this | it | them | those | the <any>{1,4}? | him | her ) (?: later | soon | next | on <day> | when | in | at | once | as | tomorrow | another )(?<rest> <any>* )$',
    ),
    (found) => !has(found.words, 'N'),
  ),
  promise(
    'come back <day>',
    phrase(
      "^<lead>* (?: come back | see you | see ye | see yous | see y'all | catch you | join me | join us | tune in | be there | be here | look out | keep an eye out | same time | back here | till | until ) (?: again | all | back | lot | folks | here | there | in | on | for | from )* (?: <day> | next (?: week | time | one ) | the next | tomorrow | soon )(?<rest> <any>* )$".replace(
        "\\'",
        "'",
      ),
    ),
    (found, said) =>
      !has(found.words, 'N') &&
      /^(?:come|see|catch|join|tune|look|keep|same|back|be)$/.test(
        found.words.find(({ classes }) => !classes.includes('L'))?.lower ?? '',
      ) &&
      (/ (?:for|with|when|fire|launch|to)\//.test(said.code) || has(said.words, 'E')),
  ),
  promise(
    'you asked about <thing>, it comes',
    phrase(
      "(?: (?: somebody | someone | some of you | a few of you | few of you | lots of you | a lot of you | lot of you | several of you | many of you | loads of you | one of you | you lot | you | people | everyone | everybody | folks | those | whoever | (?: the )? (?: chap | lady | fella | bloke | lad | woman | man | guy | viewer | gentleman | person | girl ) ) (?: who | that | have | 've | 's | has | <adverb> | kept | keep | keeps | all )* (?: asked | asking | ask | wrote | writing | wanted to | wondering | wondered | been asking | wrote in | commented | emailed | messaged ) | by popular demand | by request | for the asker )(?<rest> <any>* )",
    ),
    (_, said, scene) => {
      for (const step of [0, 1, 2]) {
        const clause =
          step === 0
            ? said
            : (neighbour(scene, said, step) ?? (step === 1 ? scene.said[said.index + 1] : undefined));
        if (!clause || clause.sentence > said.sentence + 1) return false;
        if (
          step > 0 &&
          / (?:answer|just|only|because|no|not|it's|there)\//.test(clause.code) &&
          !ANSWERS.test(clause.code)
        )
          return false;
        if (ANSWERS.test(clause.code)) return { end: clause.end, to: clause.index };
      }
      return false;
    },
  ),
  promise(
    'I owe viewers <thing>',
    phrase(
      "^<lead>* (?: i | we ) (?: still | also | do | did | <adverb> | 've | have )* (?: owe | owed | promised | promise | said i 'd give ) (?: you | ye | yous | y'all | our viewers | my viewers | the viewers | viewers | the channel | everyone | folks | people | him | her | them | a | the | that ) (?<object> (?: <any> )* )",
    ),
    (found, said) => {
      if (has(found.words, 'N')) return false;
      const to = found.words.some(({ lower }) =>
        /^(?:you|ye|yous|viewers|channel|everyone|folks)$/.test(lower),
      );
      if (/ owed?\//.test(said.code)) return to && found.part('object').length > 0;
      return has(found.part('object'), 'E');
    },
  ),
  promise(
    'I <show> you that in the next film, said of now',
    phrase(
      '^<lead>* (?: (?: i | we ) (?: show | make | do | film | put | tell | explain | give | bring ) | in the next <media> comes | next week comes | next <media> comes | then comes | showing you | doing (?: a | the | another ) <any>{0,2}? <media> | making (?: a | the ) <any>{0,2}? <media> )(?<rest> <any>* )',
    ),
    (found, said, scene) =>
      !has(found.words, 'N') &&
      (has(said.words, 'E') || / (?:you|picture|screen|camera)\//.test(said.code)) &&
      (dayIn(said, scene) !== undefined || / (?:next|soon|coming)\//.test(said.code)),
  ),
  {
    // "Next episode: the launch", "Full tour when the cladding's on": the film, then what or when in a clause of its own.
    name: '<video>, and what comes in it',
    read: (said, scene) => {
      if (scene.unreal.has(said.index) || said.asks || said.words.length > 6) return undefined;
      if (
        !has(said.words, 'E') ||
        said.words.some(({ classes }) => /[SHMVbN]/.test(classes) && !/[TL]/.test(classes))
      )
        return undefined;
      const next = neighbour(scene, said, 1);
      if (!next || neighbour(scene, said, -1) !== undefined) return undefined;
      const comes =
        /^(?: \S+\/\w*[LT]\w*)* (?:next|sunday's|friday's|coming|sunday|saturday|friday|wednesday|thursday|tuesday|monday)\//.test(
          said.code,
        ) && next.opener === '';
      const once =
        /\b(?:when|once|as soon as)\b/.test(next.opener) &&
        / (?:tour|full|cost|price|video|film|breakdown|walkthrough|reveal)\//.test(said.code);
      if (!comes && !once) return undefined;
      return {
        kind: 'promise',
        from: said.index,
        to: next.index,
        start: said.words[0]?.start ?? said.start,
        end: next.end,
      };
    },
  },
];

/** Said of the film itself, and of nothing on the bench. */
const FOR_SCREEN =
  / (?:you|ye|yous|online|viewers|camera|screen|video|film|episode|channel|description|comments|notes|link|below|footage|series|livestream|live|books|part|you're)\/|\S+\/\w*E\w*(?: |$)/;
/** In what manner a thing is shown. */
const MANNER =
  / (?:full\/\w* length|uncut|start\/\w* to\/\w* finish|to\/\w* the\/\w* penny|in\/\w* full|one\/\w* take|live|real\/\w* time|unedited|warts|every\/\w* (?:penny|step)|on\/\w* here)/;
const NOT_VIEWERS =
  / (?:show\/\w* up|dad's|cover\/\w* off|inspector|plumber|sparky|electrician|surveyor|engineer|wife|dad|mum|mam|son|daughter|neighbour|neighbor|council|parcel|letter|letters|key|keys|phone|door|cheque|merchant|sawmill|mill|yard|brother|sister|lad|apprentice|boss|parts?\/\w* back|back\/\w* (?:to|the))\//;
const ANSWERS =
  / (?:i|we)\/\w* (?:'ll|will|'m|'re|owe)\/| (?:next|coming|soon|tonight|tomorrow|sunday|saturday|friday|thursday|wednesday|tuesday|monday|end)\/| \S+\/\w*E\w*(?: |$)| answers?\/\w* (?:in|on|at|next|to)\//;
