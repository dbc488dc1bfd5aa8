/** Words of what has to be from now on, shared by the readers of spoken checks. Each goes into a pattern of single spaces. */

/** Still to come: "had to" and "went" tell of what was. */
export const MUST =
  "(?:(?:has|have|'s got|'ve got|has got|have got|got|needs|need|wants|want|ought|going|'ll have|will have|supposed|meant) to|(?:want|wants|need|needs) (?:it|this|that|them|(?:the|that|this|my) (?:\\S+ ){0,2}\\S+) to|must|should|gotta|can only|could only)";
export const GO =
  '(?:go|come|fit|pass|squeeze|travel|get|be (?:carried|brought|got|taken|passed|moved|lifted|craned|slid|put))';
export const BRING =
  '(?:get|bring|take|carry|fit|squeeze|pass|pull|haul|lift|crane|manhandle|slide|feed|move|put|drop|lower)';
export const ADVERBS = '(?:all |both |still |just |be able to |somehow |eventually )*';

/** Before a demand that is none: supposed, denied, or told of what was. */
export const NO_DEMAND = / (?:if|unless|whether|[a-z]*n't|not|never|no|had) /;
