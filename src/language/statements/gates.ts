/** Work that something else holds up: "I can't close the walls until the wiring's signed off". */
import { workBase } from '../lexicon/work-verbs.ts';
import { antecedentOf } from './antecedent.ts';
import { type Draft, draft, firstWord, neighbour, type Scene } from './draft.ts';
import { isOrderToSelf } from './job-lists.ts';
import { isBookedUp, isTheirTime } from './no-job.ts';
import { type Found, find, matches, phrase } from './phrase.ts';
import { dayIn } from './tasks.ts';
import type { Said, Word } from './words.ts';

const UNTIL = /\b(?:until|till|'til|unless|before)\b/;
const ONCE = /\b(?:once|soon as|after|when)\b/;

const BLOCKED = phrase(
  '(?: not !only | put off | hang fire | hangs fire | queue | queues | held up | parked | on hold | no | none | nothing | never | neither | nobody | sits | sit | stays | stay | staying | waits | waiting | wait | hold | holding | held | sitting )',
);
/** "I can't", "but not", "I can't do that", "only": stands for the work named before. */
const ELLIPTIC = phrase(
  "^<lead>* (?: (?: i | we | it | that | they | this | those ) (?: <modal> | 'm | 're | is | 's | are )? )? (?: can | could | will | is | are | going | only | <modal> )* (?: not | only | just )? (?: yet | start | do | begin | go | touch | happen | on | in | it | that | them | those | this | any | of )* $",
);
const PRONOUN_FIRST = phrase('^<lead>* (?: it | that | this | they | those ) ');
/** "Can't weld till the tank's out", "can't start those till": nobody and nothing named, the work was named before. */
const LEANING = phrase(
  '^<lead>* (?: (?: i | we ) )? (?: can | could ) not <adverb>* <do>? (?: start | do | begin | touch | go | on | them | those | that | it | these | this )* $',
);
/** "Can't line it till ...": work on something that was named before. */
const SAME_WORK = phrase(
  '^<lead>* (?: i | we | you )? (?: can | could | will | must | should | dare | may ) not <adverb>* (?<verb> <any> ) (?: it | them | that | this | those ) (?: up | off | in | down | on | over | out | yet )* $',
);
const CLAUSES_BACK = 4;

/** Whether a clause speaks once more of the work that a clause just before it names by the same verb. */
function isSameWork(main: Said, scene: Scene): boolean {
  const verb = find(SAME_WORK, main)?.part('verb')[0]?.lower;
  if (!verb) return false;
  const base = workBase(verb) ?? verb;
  return scene.said
    .slice(Math.max(0, main.index - CLAUSES_BACK), main.index)
    .some(
      (other) =>
        other.sentence >= main.sentence - 1 &&
        other.words.some(({ lower }) => lower === verb || workBase(lower) === base),
    );
}

const VIEWERS = /(?: you| viewers| i\/\w* (?:do|does)\/\w* not\/\w* (?:know|think))\//;
const SEEING =
  / (?:see|know|tell|believe|wait|sleep|rest|stop|remember|understand|hear|kick|cure|dry|set|weigh|say|bothered|realise|realize|notice)\//;
const PAST = / (?:was|were|had|did|went|came|got|'d)\//;

/** "Before the diver's had a look": a perfect, and no past. */
const HAS_HAD = / (?:'s|has|have|had|'ve)\/\w* (?:had|got)\//;

/** "Once the lid was on": told of what was, and no state to wait for; "before the diver's had a look" is. */
export const tellsOfPast = ({ code }: Said): boolean => PAST.test(code) && !HAS_HAD.test(code);

/** Main clauses that plan work, so that "once ..." after them names what it waits for. */
const PLANS = phrase(
  "(?: 'll | will | can | going to | need | needs | have to | has to | 've to | got to | want | wants | get | gets | goes | go | <does> | 'm | 're | starts | start | comes | come | must )",
);
/** States that must be reached before other work: "it's to be under 17 before any wood fibre goes near it". */
const CONDITION = phrase(
  "(?: (?: 's | is | are | has | have | 've | needs | need | want | wants | got | must | 'll have | ought ) (?: got | all )* (?: to be | be | to get | to come | to drop | to reach ) (?: <adverb> )* !<done> )",
);
const GOES_IN = phrase(
  '(?: goes | go | gets | get | going | comes | come | touches | is | are | can | i | we )',
);

/** "But I need the fuse block first", "only the inspector has to come first": told of the work just before. */
const FIRST_NEEDED = phrase(
  "^<lead>* (?: (?: i | we ) (?: 'll | will | still | do )* (?: need | want | have got to have | must have ) (?<thing> <any>{1,6}? ) first $ | (?<other> <any>{1,6}? ) (?: has to | have to | must | needs to | need to | got to | wants to ) (?: be | come | go | get )? <any>{0,2}? first $ )",
);

/** Phrases inside a clause that gate it: "ahead of the inspection", "no order without a measurement". */
const INSIDE = phrase(
  '^<lead>* (?<main> (?: <any>+? ) ) (?: ahead of | without | prior to | pending ) (?<gate> <any>+ )$',
);
const WAITS_FOR = phrase(
  "^<lead>* (?<subject> <any>{1,8}? ) (?: 's | is | are | 're | has | have | 've | 'll | will | must | needs | got | to | <adverb> )* (?: waiting | wait | waits | held up | hold off | holding off ) (?: on | for | by ) (?<gate> <any>+ )$",
);

const WAIT_FIRST = phrase('(?: wait | waiting ) (?: for | on ) (?<gate> <any>+ )$');

const wordsText = (scene: Scene, words: readonly Word[]) => {
  const first = words[0];
  const last = words.at(-1);
  return first && last ? scene.text.slice(first.start, last.end) : '';
};

const TIME = /\b(?:overnight|hours?|days?|weeks?|minutes?|night|fortnight)\b/i;

/** Whether the gate is a mere date: then it is a due day and nothing to wait for. */
function isOnlyDay(said: Said, scene: Scene): boolean {
  return (
    dayIn(said, scene) !== undefined &&
    said.words.length <= 4 &&
    !said.words.some((word) => /[SH]/.test(word.classes))
  );
}

/** "Nothing bigger than that comes in unless ...": a limit, and no work. */
const ANY_SIZE =
  /^(?: \S+\/\w*L\w*)* (?:nothing|no \S+|anything)\/?\w* (?:bigger|larger|wider|taller|longer|higher|deeper|thicker|heavier|over|above)\//;

/** "I want to get the motor tested before I close it up": the work itself, and no state to wait for. */
const SPEAKER = /^(?: \S+\/\w*L\w*)* (?:i|we|want|need|got|like|hoping)\//;
/** "It has to sit for two days before I prime it": the time is waited for, and the work comes after it. */
const SITS = phrase(
  "(?: has | have | 's got | 've got | needs | need | wants | want | must | got | should | 'll | will ) (?: to )? (?: sit | stay | stand | rest | cure | dry | dry out | soak | settle | harden | go off | set | cool | wait | be left | acclimatise | air | bake ) <any>{0,3}? (?: for | at least | about )* (?<time> (?: <number> | a | an | overnight | over ) <any>{0,4} ) $",
);

/** "Has to dry", "must cure", "'s got to go off": what stuff does by itself. */
const SETS_FIRST = phrase(
  "^<lead>* (?! i | we | you ) <plain>{1,6}? (?: has | have | 's | 've | needs | need | wants | want | must | got | gotta )+ (?: to )? (?: go off | cure | dry | dry out | set | harden | cool | settle | skin over ) (?: <adverb> | first | right | all the way | through )* $",
);

const NO_USE = / no\/\S* (?:point|sense|use|hurry|rush|good)\//;

type Gated = Omit<Draft, 'rule'> & { readonly rule: string };

/** Reads the gate that the clause is, with the work it holds up, or undefined. */
function readGate(gate: Said, scene: Scene): Gated | undefined {
  if (scene.unreal.has(gate.index) || gate.asks) return undefined;
  const until = UNTIL.test(gate.opener);
  if (!until && !ONCE.test(gate.opener)) return undefined;
  const before = neighbour(scene, gate, -1);
  const beforeIsMain = before && !/\b(?:because|since)\b/.test(before.opener);
  if (beforeIsMain) {
    const read = until ? heldUntil(before, gate, scene) : plannedOnce(before, gate, scene);
    if (read) return read;
  }
  // "Before any plywood goes near her, those frames have to be sanded", "once that's behind me they get their first".
  const after = neighbour(scene, gate, 1);
  const opens = !before || before.words.every((word) => word.classes.includes('L'));
  // "Until that's here I can't close up the berth".
  if (after && until && opens && !/\bbefore\b/.test(gate.opener) && matches(BLOCKED, after)) {
    const held = heldUntil(after, gate, scene);
    return held?.waitsFor?.length ? { ...held, ...span('task', after, after) } : undefined;
  }
  return after && !until && (opens || /\band\b/.test(gate.opener))
    ? plannedOnce(after, gate, scene)
    : undefined;
}

const STAYS =
  / (?:stay|stays|stop|stops|staying)\/\w* (?:on|in|up|off|down|there|put)\/| (?:holding|keeping|holds|keeps)\/\S* (?:it|them|two|three|some|a|the|one|\d+)\//;

function heldUntil(main: Said, gate: Said, scene: Scene): Gated | undefined {
  const before = /\bbefore\b/.test(gate.opener);
  if (VIEWERS.test(main.code) || (before && tellsOfPast(gate))) return undefined;
  const sits =
    before && /^ (?:i|we|you|it|anything|any|the)\//.test(gate.code) ? find(SITS, main) : undefined;
  if (sits && TIME.test(wordsText(scene, sits.part('time')))) {
    return {
      ...span('task', main, gate),
      rule: '<thing> sits <time> before <work>',
      waitsFor: [wordsText(scene, sits.part('time'))],
      aside: [main.index],
    };
  }
  // "The resin's got to go off before I hang anything": the work comes after it.
  if (before && matches(SETS_FIRST, main) && / (?:i|we)\//.test(gate.code))
    return {
      ...span('task', main, gate),
      rule: '<stuff> sets before <work>',
      waitsFor: [textOfClause(main, scene)],
      aside: [main.index],
    };
  const blocked = matches(BLOCKED, main);
  const waiting = before ? find(WAIT_FIRST, main) : undefined;
  if (waiting) {
    return {
      ...span('task', main, gate),
      rule: 'wait for <gate> before <work>',
      waitsFor: [wordsText(scene, waiting.part('gate'))],
      aside: [main.index],
    };
  }
  if (!blocked) {
    if (before && SPEAKER.test(main.code) && matches(CONDITION, main)) {
      return { ...span('task', main, main), rule: 'I want <work> before <work>' };
    }
    if (before && matches(CONDITION, main) && matches(GOES_IN, gate) && !SPEAKER.test(main.code)) {
      return {
        ...span('task', main, gate),
        rule: '<state> before <work>',
        waitsFor: [textOfClause(main, scene)],
        aside: [main.index],
      };
    }
    return undefined;
  }
  // "Don't let me forget to seal that before it rains": it is to be done before, and waits for nothing.
  if (/ forget\//.test(main.code)) return undefined;
  // "There's no point carrying on till that's out": no work is told.
  if (NO_USE.test(main.code)) return undefined;
  if (ANY_SIZE.test(main.code) || SEEING.test(main.code) || / (?:until|was|were|had|did)\//.test(main.code))
    return undefined;
  // "The toerail's held up till July", "the glass man can't before the end of July": goods and other people's time.
  const isOnlyWhen = isOnlyDay(gate, scene) || WEEK.test(gate.code);
  if (
    isOnlyWhen &&
    (isBookedUp(main) ||
      COMES_NOT.test(main.code) ||
      / (?:held|delayed|pushed|backordered)\//.test(main.code) ||
      main.words.some(
        (word, k) =>
          word.classes.includes('J') && k < 4 && !/N/.test(word.classes) && !/^(?:they|he)$/.test(word.lower),
      ))
  )
    return undefined;
  // "Rang the foundry, they can't pour till the week after next".
  if (isOnlyWhen && isTheirTime(main, gate)) return undefined;
  // "Clamps stay on till tomorrow", "the ironmonger's holding two till Friday": how it is left, and no work.
  if (isOnlyDay(gate, scene) && STAYS.test(main.code) && !SPEAKER.test(main.code)) return undefined;
  const waits = isOnlyDay(gate, scene) ? [] : [textOfClause(gate, scene)];
  const aside = waits.length > 0 ? [gate.index] : [];
  const work = neighbour(scene, main, -1);
  if (
    matches(ELLIPTIC, main) ||
    (matches(PRONOUN_FIRST, main) && / (?:put|held|hold|wait|waits|waiting|parked)\//.test(main.code))
  ) {
    if (work)
      return {
        ...span('task', work, gate),
        rule: '<work>, but not until <gate>',
        waitsFor: waits,
        aside,
        leans: true,
      };
  }
  if ((matches(LEANING, main) && !work) || isSameWork(main, scene)) {
    return {
      ...span('task', main, gate),
      rule: '<work>, but not until <gate>',
      waitsFor: waits,
      aside,
      leans: true,
    };
  }
  return { ...span('task', main, gate), rule: 'not <work> until <gate>', waitsFor: waits, aside };
}

/** "The slates won't be here till Friday": when they come, and no work. */
const COMES_NOT =
  / (?:will|'ll|is|are|'s|'re)\/\S* not\/\S* (?:be\/\S* )?(?:here|come|coming|arrive|arriving|land|landing|delivered)\/\S* ?$/;

const LOOKING = /^ \S+ (?:'m|am|'re|are)\/\S*$/;
const WEEK =
  /^(?: the\/\S*)? (?:week|month|weekend|middle|end|year|spring|summer|autumn|winter|january|february|march|april|may|june|july|august|september|october|november|december)\/\S*(?: after\/\S* next\/\S*| after\/\S*)? ?$/;

const IM_THERE =
  /^(?: \S+\/\w*L\w*)* (?:i|we)\/\S* (?:(?:'m|am|'re|are)\/\S* (?!done|finished|through|paid)|gets?\/\S* (?:there|home|in|up|back|round|down|over)\/)/;

function plannedOnce(main: Said, gate: Said, scene: Scene): Gated | undefined {
  if (tellsOfPast(gate)) return undefined;
  if (VIEWERS.test(main.code) || scene.unreal.has(main.index)) return undefined;
  if (
    /\bwhen\b/.test(gate.opener) &&
    !/ (?:comes|come|arrives|arrive|here|back|lands|land|turns|turn|dries|cures|sets|warms|stops|gets|clears|up|in|done|dry|round|cured|hard|set|warm|warmer|cold|cool|free|gone|finished|ready|treated|skinned|drops|eases|dies|falls|calms|settles|lifts)\//.test(
      gate.code,
    )
  )
    return undefined;
  // "I'll swap it when I'm in town": when, and nothing that must happen first.
  if (/\bwhen\b/.test(gate.opener) && IM_THERE.test(gate.code)) return undefined;
  if (/\bafter\b/.test(gate.opener) && gate.words.length < 2) return undefined;
  // "I'm after eighteen twenty to stand in", "I'm after a new one": looked for, and waited for by nothing.
  const isLookedFor = /\bafter\b/.test(gate.opener) && LOOKING.test(main.code.trimEnd());
  if (isLookedFor && gate.words.slice(0, 3).some(({ classes }) => classes.includes('Q'))) return undefined;
  const waits = isLookedFor || isOnlyDay(gate, scene) ? [] : [textOfClause(gate, scene)];
  const [first, last] = main.index < gate.index ? [main, gate] : [gate, main];
  const work = neighbour(scene, main, -1);
  if (main.index < gate.index && matches(ELLIPTIC, main) && work) {
    return {
      ...span('task', work, gate),
      rule: '<work>, only once <gate>',
      waitsFor: waits,
      aside: [gate.index],
    };
  }
  const ordered = gate.index < main.index && isOrderToSelf(main, scene);
  const plans = ordered || matches(PLANS, main) || / (?:by|be|being)\/\w* \w+\/\w*G/.test(main.code);
  const says = / (?:was|were|had|did|thought|said)\//.test(main.code) || PAST.test(main.code);
  if (!plans || says || main.words.length < 2) return undefined;
  // "He comes when he comes"
  if (
    main.words.length === 2 &&
    /^(?:he|she|they|it)$/.test(main.words[0]?.lower ?? '') &&
    gate.words[0]?.lower === main.words[0]?.lower
  )
    return undefined;
  return { ...span('task', first, last), rule: '<work> once <gate>', waitsFor: waits, aside: [gate.index] };
}

function span(kind: 'task', first: Said, last: Said): Omit<Draft, 'rule'> {
  return {
    ...draft(kind, first, {}, firstWord(first)),
    to: last.index,
    end: last.end,
  };
}

/** States of work, beside participles: "till it's dry". */
const OF_THING = /^(?:dry|set|hard|cured|here|in|off|done|finished)$/;

/** What must come first, as it was said and without the words that lead it in; "it" by its name where that is clear. */
export function textOfClause(said: Said, scene: Scene): string {
  const [first, ...rest] = said.words.slice(firstWord(said));
  if (!first) return '';
  // "until it stops raining", "till it's warmer": the weather has no name.
  const isOfThing =
    /^(?:it|they|that|this|those|these)$/.test(first.lower) &&
    rest.slice(0, 3).some((word) => word.classes.includes('P') || OF_THING.test(word.lower));
  const thing = isOfThing
    ? antecedentOf(said.index, scene, /^(?:they|those|these)$/.test(first.lower))?.text.replace(
        /^(?:the|a|an|my|our|that|this) /i,
        '',
      )
    : undefined;
  if (!thing) return wordsText(scene, [first, ...rest]);
  // "it's" is one word in the text: its verb goes with it.
  return `${thing} ${wordsText(scene, rest[0]?.lower === "'s" ? rest.slice(1) : rest)}`;
}

function readInside(said: Said, scene: Scene): Gated | undefined {
  if (scene.unreal.has(said.index) || said.asks) return undefined;
  const inside = find(INSIDE, said);
  if (inside && isBlockedPart(inside)) return gated(said, inside, scene, 'no <work> ahead of <gate>');
  const waits = find(WAITS_FOR, said);
  if (!waits || /^(i|we|you)$/.test(waits.part('subject')[0]?.lower ?? '')) return undefined;
  const held = gated(said, waits, scene, THING_WAITS);
  // "The glass man's waiting on a drawing from me": somebody waits for this work, and it waits for nothing.
  if (FROM_ME.test(codeOf(waits.part('gate')))) return { ...held, waitsFor: [] };
  // "Hang the gutter, that's waiting on the brackets": told of the work just before.
  return matches(THAT_WAITS, said) ? { ...held, leans: true } : held;
}

export const THING_WAITS = '<work> waits for <gate>';
const FROM_ME = / (?:from|off|of) (?:me|us) | (?:from|off|of) (?:me|us)$/;
const THAT_WAITS = phrase('^<lead>* (?: that | it | this | they | those | these | which ) ');
const codeOf = (words: readonly Word[]) => words.map(({ lower }) => ` ${lower}`).join('');

/** "No order without a measurement"; but "can't close it without swearing" waits for nothing. */
const isBlockedPart = (found: Found) =>
  found.part('main').some((word) => word.classes.includes('N')) &&
  (!found.words.some(({ lower }) => lower === 'without') ||
    found
      .part('gate')
      .some(({ lower }) =>
        /^(?:measurement|measurements|measure|measuring|inspection|drawing|drawings|permit|certificate|licence|license|sign-off|approval|test|template|pattern|quote|go-ahead|okay|ok|say-so|signature|survey|check|gasket|primer)$/.test(
          lower,
        ),
      ));

function gated(said: Said, found: Found, scene: Scene, rule: string): Gated {
  return {
    ...draft('task', said, {}, firstWord(said)),
    rule,
    waitsFor: [wordsText(scene, found.part('gate'))],
  };
}

/** What must come first, told after the work that waits for it. */
function readFirst(said: Said, scene: Scene): Gated | undefined {
  if (scene.unreal.has(said.index) || said.asks || !/\b(?:but|only|though|except)\b/.test(said.opener))
    return undefined;
  const found = find(FIRST_NEEDED, said);
  if (!found) return undefined;
  const thing = found.part('thing');
  const gate = thing.length > 0 ? thing : found.part('other');
  const waits =
    thing.length > 0 ? wordsText(scene, gate) : wordsText(scene, said.words.slice(firstWord(said)));
  return {
    ...draft('task', said, {}, firstWord(said)),
    rule: '<work>, but <gate> first',
    waitsFor: [waits],
    aside: [said.index],
    leans: true,
  };
}

/** All work in the memo that something holds up. */
export function readGates(scene: Scene): readonly Draft[] {
  return scene.said.flatMap((said) => {
    const read = readGate(said, scene) ?? readInside(said, scene) ?? readFirst(said, scene);
    return read ? [read] : [];
  });
}
