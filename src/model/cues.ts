/** Words around a figure that say why it differs from what was said before. */
import type { ChangeCue, FigureNote } from '../language/notes.ts';
import { remembered } from '../remembered.ts';
import type { Place } from './talk.ts';

/** A size chosen anew. */
const DECIDED =
  /\b(?:chang(?:e|ed|ing) (?:of (?:plan|heart)|my mind|it|that|the|to)|one change|new plan|decid(?:ed|ing)|settl(?:ed|ing) on|plump(?:ed|ing) for|final answer|instead|rather than|(?:i'm|we're|i am|we are|i've|we've|am|are|is|'s|it's|they're) (?:now )?(?:going|gone|making|taking|dropping|raising|lowering|lifting|moving|shifting|stretching|shrinking|widening|narrowing|flipping|switching|swapping|bumping|upping|having|lengthening|shortening|thickening|deepening|upgrading|opting|coming (?:up|down)) ?(?:it|them|that|those|this|the|up|down|to|from|for|with|bigger|smaller|wider|narrower|taller|shorter|longer|a|an)?|gone (?:up|down|for|with|to)|went (?:up|down|for|with|to)|goes (?:up|down) to|bump(?:s|ed|ing) (?:it|that|the|them)?|up(?:ped|ping) (?:it|that|the)|(?:dropped|raised|lowered|moved|switched|swapped|stretched|widened|narrowed|shortened|lengthened|upgraded) (?:it|that|them|the|to|down|up)|bought (?:a|an|another|the) (?:new|bigger|smaller|better|different)|(?:made|making|built|building|cut|cutting|set|setting|bored|boring|hung|hanging) (?:it |them |that |the \w+ )?(?:lower|higher|wider|narrower|taller|shorter|longer|deeper|shallower|thicker|thinner|bigger|smaller|closer)|reduc(?:ed|ing) (?:it |them |that |the \w+ )?to|(?:open|clos|spac)(?:ed|ing) (?:it|them|that|her|him|the \w+)(?: up| out)? to|(?:up|down)-?siz(?:ed|ing)|(?:come|comes|came) (?:up|down) from|(?:for|with|to) a (?:bigger|smaller|heavier|lighter|longer|shorter|wider) one|closer,? rather|let's (?:go|make|call)|from the .{1,30} to (?:a|an|the) |'?ll (?:go|make it|be) .{0,20}instead|on purpose)\b/i;

/** A size measured anew, or found to be other than it was said to be. */
const REMEASURED =
  /\b(?:re-?measur(?:e|ed|ing)|measur(?:ed|ing)|(?:put|laid|ran|got|had|took|with|held) (?:a|the|my) (?:tape|rule|ruler|calipers?|callipers?|verniers?|gauge|feelers?|stick|square|laser|level|meter|paint stick|scale|micrometer)|(?:calipers?|callipers?|verniers?|tape|micrometer|scale|gauge) (?:say|says|said|read|reads|show|shows|showed)|taped|weighed|check(?:ed|ing)|double.?check(?:ed)?|turn(?:s|ed) out|turned out|really|in fact|in truth|isn't what|wasn't what|not what i (?:told|said)|got (?:it|that) wrong|was wrong|my mistake|i was out|confession|i'd been measuring|i had been measuring|misread|mismeasured|plumb bob|dropped a plumb|lies|lied|believed the|spec sheet|that's what i had my tape on|half flat|true (?:size|width|height|length|number)|actual(?:ly)?)\b/i;

/** What a thing should be now, and is not yet. */
const NEEDED =
  /\b(?:(?:trim|shave|plane|dock|bring|take|shorten|cut)(?:med|d|s|ming|ing)? (?:it|them|that|those|these|each|every one|the \w+|both|all)(?: back| down| off| up| out)? to|(?:wants?|needs?|ha(?:s|ve)|got) to (?:come|go) (?:back|down|up|out|in)|(?:has|have|had|having|'s|'ve) (?:got )?to (?:be|go|come)|gotta (?:be|go|come)|got to (?:be|go|come)|needs? (?:to be|to go|to come|trimming|cutting)|wants? to (?:be|go|come)|ought(?:a| to) (?:be|go|come)|should (?:now )?(?:be|have been)|must (?:be|go|come)|supposed to be|will need to be|'ll need to be|'ll want to be)\b/i;

/** An old figure said once more. */
const RESTATED =
  /\b(?:remember|for the record|same(?: as)?|still|as ever|as before|as i said|like i said|like .{1,20} says|that's the|no change|stays?|again|in case you|told you|for those|for whoever|whoever|somebody asked|someone asked|asked)\b/i;

/** Plainly measured a second time, or owned up to, so that no likeness of digits makes it a slip. */
const MEASURED_AGAIN =
  /\b(?:re-?(?:measur|check|weigh|tap)\w+|(?:measur|check|weigh|tap|siz)\w* .{0,50}?\b(?:again|once more|a second time|twice|properly|over)\b|second (?:measurement|measure|look|reading|go with the tape)|(?:i|we)(?:'d| had|'ve| have)? (?:had|got|read|called|said|wrote|written|measured|marked) (?:it|that|this|them|those) (?:down )?wrong|(?:i was|was|were) wrong|my (?:mistake|bad|error|fault)|misread|mismeasured|misheard myself|(?:the )?(?:first|last) time (?:round|i measured|out)|what i was (?:doing|thinking|looking at|reading) (?:the )?(?:first|last|before)|(?:not sure|no idea|god knows|lord knows) (?:what|how|where) i .{0,30}(?:first|last|before|from))\b/i;

/** Told once more to somebody who asked: "for the lady drawing us up", "for them that's sounding their harbour". */
const ADDRESSED =
  /\bfor (?:them|those|whoever|anyone|anybody|everyone|everybody|the record|(?:the|that|our|my) (?:[\w-]+ ){0,2}?(?:lady|ladies|gentleman|gent|fellas?|fellers?|fellow|chaps?|blokes?|boys?|lads?|kids?|girls?|lass|guys?|folks?|people|viewers?|students?|class|commenters?))\b/i;

export interface Cue {
  readonly change: ChangeCue | undefined;
  /** 0 to 6: how plainly it is said. */
  readonly weight: number;
  /** "has to be", "wants to be". */
  readonly isNeeded: boolean;
  readonly isRestated: boolean;
}

/** Each sentence is asked for the figures in it, and as the one before and the one after. */
const MOST_SENTENCES = 1000;
const tellsDecided = remembered(MOST_SENTENCES, (sentence) => DECIDED.test(sentence));
const tellsRemeasured = remembered(MOST_SENTENCES, (sentence) => REMEASURED.test(sentence));

/** Reads the cues for one figure. The reader's own word comes first; a decision in the same sentence counts for it. */
export function cueOf(note: Pick<FigureNote, 'change'>, place: Place, isInDecision: boolean): Cue {
  const isNeeded = NEEDED.test(place.clause);
  const again = MEASURED_AGAIN.test(place.sentence) || MEASURED_AGAIN.test(`${place.before} `);
  const isRestated = !again && (RESTATED.test(place.clause) || ADDRESSED.test(place.until));
  if (note.change) return { change: note.change, weight: 6, isNeeded, isRestated };
  const weigh = (words: RegExp, isSaidIn: (sentence: string) => boolean) =>
    (words.test(place.clause) ? 3 : words.test(place.until) ? 2 : isSaidIn(place.sentence) ? 1 : 0) +
    (isSaidIn(place.before) ? 0.75 : 0) +
    (isSaidIn(place.after) ? 0.25 : 0);
  const decided = weigh(DECIDED, tellsDecided) + (isInDecision ? 2 : 0);
  const remeasured = weigh(REMEASURED, tellsRemeasured) + (again ? 3 : 0);
  if (decided === 0 && remeasured === 0) return { change: undefined, weight: 0, isNeeded, isRestated };
  return decided >= remeasured
    ? { change: 'decided', weight: decided, isNeeded, isRestated }
    : { change: 'remeasured', weight: remeasured, isNeeded, isRestated };
}

/** Work on a thing that is told as done: "the brackets I'd bent", "already cut". */
const MADE =
  /\b(?:(?:i|we|he|she|they)(?:'d|'ve| have| had)?(?: already| just| only| all| both| gone and| done)*|already|was|were|been|being|are|as) (?:cut|bent|made|sawn|sawed|docked|built|welded|planed|ripped|mitred|mitered|folded|milled|turned|bored|routed|cast|glued|framed|shaped|sewn|formed|rolled)\b/i;

/** Whether the words around a figure tell of work that is done to it. */
export function isToldMade({ sentence, before }: Pick<Place, 'sentence' | 'before'>): boolean {
  return MADE.test(sentence) || MADE.test(before);
}
