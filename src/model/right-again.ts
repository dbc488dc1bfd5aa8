/** Snags that are told to be over, although nobody says what was done: "the wall's dry now", "it no longer drips". */
import { type Piece, sentencesOf } from './talk.ts';

/** A state that a thing is in again, and the snags that are over with it. */
const OVER: readonly (readonly [state: RegExp, snag: RegExp])[] = [
  [
    /\b(?:bone )?dr(?:y|ied|ier)(?: out| off| through| right through)?\b/i,
    /\b(?:damp|wet|water|leak\w*|drip\w*|moist\w*|condens\w*|puddl\w*|weep\w*|seep\w*|sweat\w*|flood\w*|soaked|sodden|rain\w*)\b/i,
  ],
  [
    /\b(?:tight|firm|solid|steady|rigid|stiff)\b/i,
    /\b(?:loose|wobbl\w*|rattl\w*|slack|play|rock(?:s|ing|y)|flex\w*|shak\w*|springy|sloppy|leak\w*|drip\w*)\b/i,
  ],
  [
    /\b(?:straight|true|square|level|flat|plumb|parallel|in line)\b/i,
    /(?:\b|(?=n['’]t))(?:bent|bow\w*|twist\w*|warp\w*|crook\w*|lean\w*|cup(?:ped|ping)|sag\w*|skew\w*|out of|not (?:square|level|flat|straight|true|plumb)|n['’]t (?:square|level|flat|straight|true|plumb)|hump\w*|run-?out|racked)\b/i,
  ],
  [
    /\b(?:quiet|silent|smooth|sweet)\b/i,
    /\b(?:nois\w*|squeal\w*|squeak\w*|rattl\w*|rumbl\w*|knock\w*|grind\w*|whin\w*|rough|vibrat\w*|hums?|humming)\b/i,
  ],
  [/\b(?:free|moving|loose)\b/i, /\b(?:stuck|seiz\w*|jam\w*|bind\w*|stiff|rusted|frozen)\b/i],
  [/\b(?:clear|flowing|draining)\b/i, /\b(?:block\w*|clog\w*|choke\w*|slow|drain\w*)\b/i],
  [
    /\b(?:work(?:s|ing)|run(?:s|ning)|start(?:s|ing)|live|go(?:es|ing)|charg(?:es|ing)|light(?:s|ing)|alive)\b/i,
    /(?:\b|(?=n['’]t))(?:n['’]t|not|dead|fail\w*|trips?|tripping|no (?:power|light|spark|juice)|flat|refus\w*|stall\w*|cut(?:s|ting) out)\b/i,
  ],
  [
    /\b(?:fits?|clos(?:es|ing)|shuts?|latch(?:es|ing)|catch(?:es|ing)|open(?:s|ing)|slid(?:es|ing)|clears?)\b/i,
    /\b(?:fit\w*|clos\w*|shut\w*|latch\w*|catch\w*|open\w*|slid\w*|foul\w*|bind\w*|stick\w*|stuck|jam\w*|rub\w*|hit\w*|clear\w*)\b/i,
  ],
  [/\b(?:cool|cold)\b/i, /\b(?:hot|overheat\w*|warm|boil\w*|cook\w*)\b/i],
  [/\b(?:warm|hot)\b/i, /\b(?:cold|freez\w*|frozen|froze)\b/i],
  [/\b(?:fine|right|good|ok|okay|sound|sorted|perfect|lovely)\b/i, /./],
];

/** Words by which a state is told to be a new one. */
const AGAIN = '(?:now|again|at last|at long last|finally|these days)';
const BE =
  "(?:['’](?:s|re)|\\bis|\\bare|\\bhas|\\bhave|['’]ve|\\bruns?|\\bsits?|\\bhangs?|\\bstands?|\\bstays?|\\bfeels?)";
/** "The wall's dry now", "the wall is finally dry", "now the door closes". */
const NOW = new RegExp(
  `${BE}\\b.{1,40}\\b${AGAIN}\\b|${BE} ${AGAIN} \\w|^(?:and |but |so )?now (?:the|my|our|that|it)\\b`,
  'i',
);
/** "The door closes again", with a verb for the state itself. */
const DOES_NOW = new RegExp(
  `\\b(?:works|runs|starts|closes|shuts|latches|fits|slides|opens|drains|flows|clears|charges|lights)\\b.{0,25}\\b${AGAIN}\\b`,
  'i',
);
/** "Has dried out", "have come straight". */
const PERFECT =
  /(?:['’](?:s|ve)|\bhas|\bhave)\b(?: \w+)? (?:dried|freed|straightened|stopped|cleared|settled|gone quiet|come (?:right|straight|free|good))\b/i;
/** "Stopped leaking", "no longer drips", "no more rattle", "doesn't squeal any more". */
const CEASED =
  /\b(?:stopped|quit|given up|finished with|done with) (\w{3,}ing)\b|\bno longer (?:\w+ )?(\w{4,})|\bno more (\w{4,})|(?:n['’]t|\bnot|\bnever) (\w{4,}) (?:any ?more|now|any longer)\b/i;
const DENIED =
  /\b(?:not|never|nowhere near|nearly|almost|hardly|barely|half|if|when|once|until|till|unless|before|should|must|needs?|hopefully|hope|wish|supposed|may|might|could|would|will|['’]ll|soon|tomorrow|yet|looks?|seems?)\b|n['’]t\b|\?$/i;

/** A clause that tells a thing to be right again. */
export interface RightAgain {
  readonly words: string;
  /** Whether a snag told in these words is over with it. */
  readonly ends: (snag: string) => boolean;
  /** Index of its sentence. */
  readonly index: number;
  readonly start: number;
}

/** The clauses of a memo that tell something to be right again, in order of speech. */
export function rightAgain(
  text: string,
  sentences: readonly Piece[] = sentencesOf(text),
): readonly RightAgain[] {
  return sentences.flatMap((sentence, index) =>
    clausesOf(sentence).flatMap(({ words, start }): readonly RightAgain[] => {
      const ends = endsWhat(words);
      return ends ? [{ words, ends, index, start }] : [];
    }),
  );
}

const VERB = new RegExp(
  `${BE}\\b|\\b(?:(?:has|have|had|finally|now|no longer|works|starts|closes|shuts|latches|fits|slides|opens|drains|flows|clears|charges|lights)\\b|(?:does|do|did)n['’]t\\b)`,
  'i',
);
/** What a clause tells of: the words before its verb; "no more tripping on the pump" tells it behind. */
export function subjectOf(words: string): string {
  const bare = words.replace(/^(?:(?:and|but|so|now|well|right|anyway|oh)\b[,\s]*)+/i, '');
  const at = bare.search(VERB);
  return at > 0 ? bare.slice(0, at) : bare.replace(CEASED, ' ');
}

function endsWhat(words: string): ((snag: string) => boolean) | undefined {
  const ceased = CEASED.exec(words);
  const verb = ceased?.slice(1).find((found) => found !== undefined);
  if (verb) {
    const root = verb
      .toLowerCase()
      .replace(/(?:ing|ed|es|s|y)$/, '')
      .replace(/(.)\1$/, '$1');
    return root.length < 3 ? undefined : (snag) => new RegExp(`\\b${root}`, 'i').test(snag);
  }
  if (DENIED.test(words) || !(NOW.test(words) || DOES_NOW.test(words) || PERFECT.test(words)))
    return undefined;
  const snags = OVER.filter(([state]) => state.test(words)).map(([, snag]) => snag);
  return snags.length === 0 ? undefined : (snag) => snags.some((kind) => kind.test(snag));
}

/** A sentence at its commas and at "and", "but", "so". */
function clausesOf(sentence: Piece): readonly { readonly words: string; readonly start: number }[] {
  const clauses: { words: string; start: number }[] = [];
  let start = 0;
  for (const cut of [...sentence.text.matchAll(/[,;:]\s+|\s+(?=(?:and|but|so|because)\s)/gi), undefined]) {
    const end = cut ? cut.index : sentence.text.length;
    const words = sentence.text
      .slice(start, end)
      .replace(/[.!?]+$/, (mark) => (mark.includes('?') ? '?' : ''));
    if (words.trim() !== '') clauses.push({ words: words.trim(), start: sentence.start + start });
    start = end + (cut?.[0].length ?? 0);
  }
  return clauses;
}
