/** What need not come in through a doorway: what stands where it is, and what talk said to stay out or to come in pieces. */
import { stemOf } from './stems.ts';

/** What stands where it is, or is gone into: nobody carries it in. */
const NEVER_CARRIED = new Set(
  `shed house home hull garden yard van boat trailer car bus lorry caravan barn garage cabin workshop room kitchen hall
  landing loft cellar roof wall floor ceiling deck ground slab fence drive driveway path road lawn patio pond terrace porch
  bay plot site field street pavement keel chassis hearth chimney fireplace footing foundation plinth screed partition pier
  slipway jetty pit well trench ditch gable ridge valley eaves`
    .split(/\s+/)
    .map(stemOf),
);
/** What was told of a thing that need not come in: where it stays, that it is there already, that it comes in pieces. */
const STAYS_OUT =
  /\b(?:(?:stays?|staying|lives?|living|kept|stands?|standing|built|building|made|making|put up|putting up)(?: \w+){0,3} (?:in|inside|out|outside|outdoors|where|here|there|on site|in place|in situ)|(?:is|it's|that's|they're|are) (?:already )?(?:outside|outdoors|out (?:the )?(?:back|front)|in the (?:yard|garden|drive))|already (?:in|inside|in place|here|up|there)|flat[- ]?pack(?:ed|s)?|in (?:two|three|four|five|six|several) (?:pieces|bits|halves|parts|sections)|in (?:pieces|bits|halves|sections)|(?:comes?|came|taken?|takes|coming) (?:it )?apart|knocks? down|(?:does|do|did|has|have)n't (?:have|need|got) to (?:come|go|fit)|needn't (?:come|go|fit)|(?:isn't|not|never|won't be) (?:coming|going) (?:in|through|inside))\b/i;
/** Said of it all the same: "it has to come in". */
const COMES_IN =
  /\b(?:(?:has|have|'s got|got|needs?|wants?|going|ought) to (?:come|go|fit|get|be (?:brought|carried|got))|must (?:come|go|fit|get)|to (?:bring|get|carry) (?:it|them|that) (?:in|through|inside)|coming (?:in|through))\b/i;

/** Whether a thing with this head (a stem) stays out of a way in, by the talk around its size. Pure. */
export const staysOut = (head: string, talk: string): boolean =>
  !COMES_IN.test(talk) && (NEVER_CARRIED.has(head) || STAYS_OUT.test(talk));
