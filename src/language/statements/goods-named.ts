/** What goods an arrival brings, by name: as it was said, or what its pronoun, number or day points back at. */
import { antecedentOf, lastNamed, spokenOfAgain } from './antecedent.ts';
import type { Draft, Scene } from './draft.ts';
import { isSupplier } from './suppliers.ts';
import type { Said, Word } from './words.ts';

const NO_THING =
  /^(?:i|we|you|he|she|it|that|they|this|those|these|there|what|who|somebody|someone|nobody|everybody|everything|one|which)$/;

/** The subject of the nearest clause before that names a thing. */
function thingBefore(index: number, scene: Scene): string | undefined {
  for (let k = index - 1; k >= Math.max(0, index - 5); k--) {
    const clause = scene.said[k] as Said;
    const thing = thingOf(clause, scene);
    if (thing) return thing;
  }
  return undefined;
}

function thingOf(clause: Said, scene: Scene): string | undefined {
  let from = 0;
  while (from < clause.words.length && clause.words[from]?.classes.includes('L')) from++;
  let to = from;
  while (to < clause.words.length && !/[SHM]/.test(clause.words[to]?.classes ?? '')) to++;
  const subject = clause.words.slice(from, to);
  if (to < clause.words.length && isThing(subject)) return textOf(subject, scene, clause.words[to]);
  return objectOf(clause.words.slice(from), scene);
}

/**
 * The thing that "I" did something to: "I went with rigid foam", "I've trimmed the transom plank". Whoever was only
 * asked for it is left out: "rung the timber yard about a length of larch".
 */
function objectOf(words: readonly Word[], scene: Scene): string | undefined {
  const at = words.findIndex((word, k) => k > 0 && /^(?:the|a|an|my|our|new|another|some)$/.test(word.lower));
  if (at < 0) return undefined;
  let to = at + 1;
  while (to < words.length && !/[SHMRAVL]/.test(words[to]?.classes ?? '')) to++;
  // "a length of larch", "a box of screws".
  if (
    words[to]?.lower === 'of' &&
    /^(?:length|box|bag|sheet|roll|tin|pot|load|lot|set|pair|bit|piece|pack|tub)$/.test(
      words[to - 1]?.lower ?? '',
    )
  )
    for (to++; to < words.length && !/[SHMRAVL]/.test(words[to]?.classes ?? ''); ) to++;
  if (to <= at + 1) return undefined;
  const isAmount = words.slice(at + 1, to).every((word) => /[QU]/.test(word.classes));
  if (isAmount || isSupplier(words[to - 1]?.lower ?? '')) return objectOf(words.slice(to), scene);
  return textOf(words.slice(at, to), scene, undefined);
}

const isThing = (words: readonly Word[]) =>
  words.length > 0 &&
  words.length <= 5 &&
  !words.some((word) => NO_THING.test(word.lower) || /[V]/.test(word.classes));

function textOf(words: readonly Word[], scene: Scene, after: Word | undefined): string {
  const first = words[0] as Word;
  const last = words.at(-1) as Word;
  const text = scene.text.slice(first.start, last.end);
  // "sills're", "foam's": the verb hangs on the last word.
  return after && after.start === last.start ? text.replace(/['’](?:s|re|ve|ll|d|m)$/i, '') : text;
}

/** "Another two hundred", "six more": of what was spoken of before. */
const ONLY_A_NUMBER =
  /^(?:(?:another|other|others|rest|remaining|remainder|last|first|more|some|a|few|couple|of|them|those|these|the|and|dozen|half|extra|one|ones|new|right|proper|\d[\d,.]*|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|fifteen|sixteen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety|hundred|thousand)[\s-]*)+$/i;

/** "Foundry says the 14th now": when, and no goods. */
const ONLY_A_DAY =
  /^(?:(?:the|a|an|on|by|in|of|at|for|it'd be|it'll be|next|this|till|until|about|around|now|instead|not|maybe|probably|end|start|middle|beginning|back|early|late|first|last|after|before|christmas|easter|couple|few|two|three|four|five|six|eight|ten|or|more|another|\d{1,2}(?:st|nd|rd|th)?|(?:mon|tues|wednes|thurs|fri|satur|sun)day|(?:jan|febr)uary|march|april|may|june|july|august|(?:sept|nov|dec)ember|october|tomorrow|days?|weeks?|weekend|months?|fortnight|year|summer|autumn|winter)(?![a-z\d])[\s,]*)+$/i;
const FROM_WHOM =
  /^(.*\b(?:them|those|these)|[\w ]*?)(?: (?:from|off|at|through|on|for|last|this|yesterday|today)\b.*)$/i;

/** "640 and said five weeks": words of talk, and no goods. */
const SAYS = /\b(?:said|says|quoted|reckons?|reckoned)\b/i;

/** The words that a rule took for the goods, without what goes on behind them. */
const withoutTail = (words: string): string =>
  words
    .replace(/['’](?:s|re|ve|ll|d)$/i, '')
    .replace(/\s+(?:together|as well|too|at last|in the end)$/i, '')
    // "The slates need to be here", "the limecrete booked", "the other bag for Monday": the goods end before.
    .replace(/(?<=\S)\s+(?:needs?|wants?|has|have|got|ought|should|must)(?: to)?$/i, '')
    // "The mill says the planks will be ready on Friday", "the anodes ship in three weeks", "the anodes never came"
    .replace(
      /(?<=\S)\s+(?:will|would|['’]ll|should)(?: be)?(?: (?:ready|here|there|done|in|out|with (?:us|me|you)))?(?: (?:on|by|next|in|tomorrow|this)\b.*)?$/i,
      '',
    )
    .replace(
      /(?<=\S)\s+(?:ships?|never|takes (?:a|two|three|four|five|six|eight|ten|\d+) (?:days?|weeks?|months?))$/i,
      '',
    )
    .replace(/^(?:on )?(?:(?:Mon|Tues|Wednes|Thurs|Fri|Satur|Sun)day|tomorrow) for (?=the |my |our )/i, '')
    .replace(/(?<=\S)\s+(?:booked|ordered|promised|lined up)$/i, '')
    .replace(/(?<=\S)\s+(?:for|on|by|at|to|of|with|in)$/i, '')
    // "The crack kit Friday", "the mattress Saturday to nineteen hundred": the day is when, not what.
    .replace(
      /(?<=\S)\s+(?:(?:on|last|this)\s+)?(?:(?:Mon|Tues|Wednes|Thurs|Fri|Satur|Sun)day|yesterday|today)\b.*$/i,
      '',
    )
    // "The glass to 600 by 400": how large.
    .replace(/(?<=\S)\s+(?:to|at)\s+[\w .,-]{1,40}?\bby\b.*$/i, '')
    // Where they come from is no part of the goods.
    .replace(/(?<=\S)\s+from\s+(?:the|a|an|my|our|that|[A-Z])\b.*$/, '')
    .trim();

const LEAD = /^(?:(?:so|and|but|the|a|an|my|our|your|his|her|their|new|well|right|okay|now|oh)\s+)+/i;
const ARTICLE = /^(?:the|a|an|my|our|new)\s+/i;

/** What an arrival brings; a pronoun is named by the words before it. */
export function itemOf(draft: Draft, scene: Scene): string {
  const told = draft.item === undefined ? '' : withoutTail(draft.item).replace(LEAD, '');
  const bare = broughtBy(told, draft, scene) ?? told;
  const isMany = pointsAtMany(bare);
  if (bare !== '' && !isMany && !namesNoGoods(bare)) return bare;
  // "The roller door, which I've ordered at 2.4 high".
  const isRelative = /\bwhich\b/.test(scene.said[draft.from]?.opener ?? '');
  const which = isRelative ? lastNamed(draft.from - 1, scene) : undefined;
  if (which) return spokenOfAgain(which.text).replace(ARTICLE, '');
  const meant = antecedentOf(draft.from, scene, true)?.text;
  const many = meant?.replace(A_NUMBER_OF, '');
  return (
    (isMany && many && !MEASURE_ONLY.test(many) && !ONLY_A_NUMBER.test(many) ? many : undefined) ??
    thingBefore(draft.from, scene)?.replace(ARTICLE, '') ??
    meant?.replace(ARTICLE, '') ??
    (bare === '' || ONLY_A_DAY.test(bare) || AT_A_SIZE.test(bare) ? undefined : bare) ??
    AWAITED.exec(scene.text.slice(draft.start, draft.end))?.[1] ??
    scene.text.slice(draft.start, draft.end)
  );
}
/** "The van turned up with the slates", "the courier left a parcel": of what it carried, and not of the van. */
const CARRIER =
  /^(?:(?:delivery|big|post|mail|parcel) )*(?:van|lorry|truck|wagon|pickup|barge|courier|driver|postman|postie|carrier|haulier|merchant|bloke|man|lads)$/i;
const CARRIED =
  /\b(?:with|left|brought|dropped(?: off)?|carrying|bringing) (the|my|our|a|an|some|all the|those) ([\p{L}' -]+?)(?= (?:on|at|by|in|with|for|from|and|this|last|yesterday|today|tomorrow)\b|[,.;]|$)/iu;
const CAME_WITH = /^(?:showed|turned|rocked) up\b/i;

function broughtBy(told: string, draft: Draft, scene: Scene): string | undefined {
  const words = scene.text.slice(draft.start, draft.end);
  if (!CARRIER.test(told) && !CAME_WITH.test(words)) return undefined;
  const [, article = '', goods] = CARRIED.exec(words) ?? [];
  // "Turned up with a crack in the top": how it came.
  if (!goods || PERSON.test(goods) || (!CARRIER.test(told) && /^(?:an?|some)$/i.test(article)))
    return undefined;
  return goods;
}
const PERSON = /\b(?:lads|lad|men|man|bloke|wife|son|brother|kids|dog|mate|mates|crew|driver|helper)$/i;

/** "Still waiting for the seals, a week they said". */
const AWAITED =
  /\b(?:waiting (?:on|for)|expecting|ordered) (?:the|my|our|those|these|some|a|an) (\p{L}[\p{L}' -]{1,30}?)(?=[,.;]|$)/iu;
const A_NUMBER_OF =
  /^(?:the|a|an|my|our|new|those|these|(?:one|two|three|four|five|six|seven|eight|nine|ten|twelve|\d+))\s+/i;

/**
 * "New ones in bronze", "those", "six more": of what was spoken of; also with where they are from ("40 of them from Tom on
 * Saturday").
 */
const pointsAtMany = (words: string): boolean =>
  words !== '' &&
  (/^(?:ones\b|(?:them|those|these|they)$)/i.test(words) ||
    ONLY_A_NUMBER.test(words) ||
    ONLY_A_NUMBER.test(FROM_WHOM.exec(words)?.[1] ?? ''));

/** "The door, which I've ordered at 2.4 high": how large, and no goods. */
const AT_A_SIZE = /^(?:at|in|to|for|by) (?:about |just |around )?\d/i;

/** "Bolts are at the yard, collect Thursday", "another one, ready on the 22nd", "it comes on the Friday". */
const STARTS_WITH_VERB =
  /^(?:(?:ready|collect|collecting|pick(?:ing)? (?:it|them) up|pick(?:ing)? up|fetch|fetching|being delivered)(?: |$)|(?:it|they)(?:['’](?:s|ll|re|d))? )/i;

/** Whether words that a rule took for goods are of something else: a pronoun, a number, a day, a size, talk. */
export const namesNoGoods = (words: string): boolean =>
  NO_THING.test(words.toLowerCase()) ||
  ONLY_A_NUMBER.test(words) ||
  ONLY_A_DAY.test(words) ||
  AT_A_SIZE.test(words) ||
  STARTS_WITH_VERB.test(words) ||
  FROM_WHERE.test(words) ||
  SAYS.test(words);

/** "Ordered from the mill": from whom, and no goods. */
const FROM_WHERE = /^(?:from|off|through|via) (?:the|a|an|my|our|that|this|his|her|[A-Z])/;

/** "Twenty five kilos each": how much of them, and no name of goods. */
const MEASURE_ONLY =
  /^(?:(?:twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety|one|two|three|four|five|six|seven|eight|nine|[\d.,]+|a) )*(?:kilos?|kg|grams?|mil|mm|millimetres?|metres?|feet|foot|inch(?:es)?|litres?|tonnes?|tons?|pounds?|quid|gallons?|per cent|amps?|volts?|watts?)\b/i;

/** "Now I got something wrong": what cannot be told from other goods is no delivery. */
export const isNamed = (item: string): boolean =>
  !/^(?:(?:some|any|every|no)thing\b(?! (?:of|for|from) )|(?:it all|everything else|trouble|word|wind|lucky)$)/i.test(
    item.trim(),
  );
