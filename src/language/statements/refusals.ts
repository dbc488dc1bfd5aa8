/** Things that will not do what they should: any verb denied, but those that are no loss. */
import type { StatementRule } from './draft.ts';
import { neighbour } from './draft.ts';
import { phrase } from './phrase.ts';
import { has, problem } from './snag.ts';

/** Denied of a thing, these are no loss, or say nothing of what it does. */
const NO_LOSS = new Set(
  `be have need needs matter mean mind care look seem say know include show hurt harm bother cost weigh leak rattle squeak squeal
  creak move float slip drip rust rot crack split warp bend break snap tear burst fall fail drop wobble shake flex sag bounce swell shrink
  rub bind catch foul drag snag chafe scratch scrape stick jam seize smell stink smoke burn melt overheat trip wander twist bow cup
  sweat weep bleed crumble flake peel lift fade stain mark chip dent change want like get make give take let do see hear feel think
  belong exist happen come-with depend count differ involve require stop end last sink freeze corrode bite pinch blow vibrate hum
  buzz flicker come look's owe use eat live die worry deserve stay go keep chatter judder ring sing rock lean tip slide spill
  escape touch hit clash wear dent wait interfere bother show tell surprise help sound call appear remain contain`
    .trim()
    .split(/\s+/),
);

/** "go", "come", "stay", "take", "stop": a loss only with what follows. */
const WITH_WHERE: readonly (readonly [RegExp, RegExp])[] = [
  [
    /^(?:go|goes|going|come|comes|coming|get)$/,
    /^(?:in|on|up|down|off|out|through|past|under|over|round|home|into|back|together|near|between|anywhere|onto|full|apart|undone|loose|any)$/,
  ],
  [
    /^(?:stay|stays|keep|keeps)$/,
    /^(?:on|up|down|put|open|shut|closed|in|lit|still|level|running|time|tight)$/,
  ],
  [/^(?:take|takes|make|makes|give|gives)$/, /^(?:a|the|any|full|no|paint|stain|up|contact)$/],
  [
    /^(?:stop|stops)$/,
    /^(?:leaking|dripping|running|spinning|turning|beeping|humming|the|squealing|buzzing|ringing|weeping|rattling|vibrating|whistling)$/,
  ],
  [/^(?:show|shows|see|sees)$/, /^(?:up|anything|a)$/],
  [
    /^(?:touch|meet|bite|wear|slide|burn|move|swing|lift|bend|seal|ring)$/,
    /^(?:$|the|at|in|on|down|up|properly|evenly|back|freely|by|an|all|along|each|it)$/,
  ],
];

const DENIED = `(?: will not | 'll not | does not | do not | did not | can not | could not | 'll never | will never | never | has not | have not | is not | are not | 's not | 're not | was not | were not
  | is never going to | 's never going to | are never going to | 's not going to | is not going to | are not going to | (?: 's | has | have )? refused to | refuses to | refuse to | has refused to | does not want to | do not want to | did not want to | will not even | (?: 's | has | have )? (?: stopped | quit | given up ) )`;

export const REFUSAL_RULES: readonly StatementRule[] = [
  problem(
    '<thing> will not <do>',
    phrase(
      `^<lead>* (?<subject> <plain>{1,8}? ) (?<no> ${DENIED} ) (?: <adverb> | even | quite | seem to | want to | bloody | look like )* (?<verb> <any> ) (?<rest> <any>* )`,
    ),
    (found, said, scene) => {
      const subject = found.part('subject');
      const first = subject[0]?.lower ?? '';
      if (
        subject.some(({ lower }) =>
          /^(?:i|we|you|he|nobody|that|this|nothing|what|who|there|us|me|kids|people)$/.test(lower),
        )
      )
        return false;
      if (has(subject.slice(0, 1), 'Q') && has(subject.slice(-1), 'U')) return false;
      if (
        subject.every(({ classes }) => /[AL]/.test(classes)) ||
        has(subject, 'J') ||
        has(subject, 'E') ||
        /^(?:not|so)$/.test(first)
      )
        return false;
      const verb = found.part('verb')[0];
      const base = (verb?.lower ?? '').replace(/ing$|ed$|s$/, '');
      const after = found.part('rest')[0]?.lower ?? '';
      const denial = found
        .part('no')
        .map(({ lower }) => lower)
        .join(' ');
      const next = neighbour(scene, said, 1);
      if (next && /\b(?:until|till|unless|before|once|if)\b/.test(next.opener)) return false;
      if (
        /\b(?:so|because|since|which|as)\b/.test(said.opener) &&
        (/^(?:it|they|she|water|rain)$/.test(first) ||
          / (?:water|rain|damp|wind|frost|snow|mice|nobody|dust)\//.test(said.code))
      )
        return false;
      if (
        / (?:yet|until|till|before|so|today|tomorrow|below|without|any\/\w* more\/\w* trouble|any\/\w* bother)\//.test(
          said.code,
        )
      )
        return false;
      if (/\b(?:stopped|quit|given up)$/.test(denial))
        return (
          /^(?:working|charging|running|turning|pumping|closing|heating|draining|firing|reading|spinning|sealing|sticking|cutting|gripping|holding|opening)$/.test(
            verb?.lower ?? '',
          ) || verb?.lower === 'dead'
        );
      const placed = WITH_WHERE.find(([verbs]) => verbs.test(verb?.lower ?? ''));
      if (placed) return placed[1].test(after);
      if (
        !verb ||
        /[NTRQ]/.test(verb.classes) ||
        NO_LOSS.has(verb.lower) ||
        NO_LOSS.has(base) ||
        NO_LOSS.has(`${base}e`)
      )
        return false;
      // "is not painted" is work to do; "is not sitting", "is not square" are snags.
      if (/(?:is|are|'s|'re|was|were|has|have) not$/.test(denial))
        return (
          (/ing$/.test(verb.lower) &&
            !/^(?:going|getting|being|having|bad)$/.test(verb.lower) &&
            / (?:not|never)\//.test(said.code)) ||
          OUGHT_TO_BE.test(verb.lower)
        );
      return /never$/.test(denial)
        ? /^(?:went|goes|got|closed|fitted|seated|took|worked|had|left|start|reach|fit|clear|close|go|sits|sit|lines|meets|meet|pass|make)$/.test(
            verb.lower,
          )
        : true;
    },
  ),
  problem(
    'she is <leaking>',
    phrase(
      `^<lead>* she (?: 's | is | was ) <adverb>* (?: <plain>{0,2}? ) (?: leaking | sinking | listing | smoking | misfiring | overheating | making water | taking on | rotten | rusty | rusted | seized | out of | down by the | not <any>{0,2}? (?: square | level | plumb | straight | true | right | happy | running | starting | firing | charging | floating | sitting ) | too <size> )`,
    ),
  ),
  problem(
    'and it would not',
    phrase(
      `^<lead>* (?: it | they | she | <det> <plain>{1,3}? ) (?: would | will | did | does | could | can ) (?: not | never ) (?: <adverb> | have it | budge | go | play | play ball | have any of it | shift )* $`,
    ),
    (_, said, scene) =>
      neighbour(scene, said, -1) !== undefined && !/\b(?:if|so|unless|until)\b/.test(said.opener),
  ),
  problem(
    'would it heck',
    phrase(
      `(?: would | will | does | did | can | could ) (?: it | they | she | i ) (?: heck | hell | buggery | bother | thump | 'eck )`,
    ),
  ),
  problem(
    '<thing> does not like <it>',
    phrase(
      `^<lead>* (?<subject> (?: the | my | our | <plain> ) <plain>{0,4}? ) (?: does not | did not | do not ) like (?: the | my | being | it | a | that | any )`,
    ),
    (found) =>
      !found
        .part('subject')
        .some(({ lower }) => /^(?:i|we|you|he|she|they|who|people|nobody)$/.test(lower)) &&
      !has(found.part('subject'), 'J'),
  ),
  problem(
    'the <day> <opens> not any more',
    // Word order of Dutch and German: "the door closes not any more".
    phrase(
      `^<lead>* (?<subject> <det> <plain>{1,4}? ) <any> not (?: any more | anymore | good | right | well | more | properly )`,
    ),
    (found) => !has(found.part('subject'), 'J'),
  ),
];

/** Denied, these are faults: "aren't parallel", "is not correct". */
const OUGHT_TO_BE =
  /^(?:square|level|plumb|straight|true|right|correct|flat|flush|tight|parallel|even|round|happy|safe|legal|strong|sound|solid|watertight|airtight|sealed|earthed|centred|centered|aligned|symmetrical|smooth|deep|wide|long|thick|big|hot|warm|clean|clear|set|cured|hard|stable|steady|usable|original|available|identical)$/;
