import type { Heard, RepairRule } from './repair.ts';

/**
 * Scots, Ulster and northern English as they are spelt by ear, and the words of the standard language: what a
 * recogniser or a helper writes down when someone says "aff the deck". Common knowledge of these dialects, no source.
 */
const SPELLINGS: ReadonlyMap<string, string> = new Map(
  `aff off|doon down|oot out|aboot about|roond round|ower over|abin above|abune above|ablow below|aneath beneath
  ahint behind|atween between|tae to|intae into|ontae onto|wi with|wae with|frae from|fae from|hunner hundred
  hunnerd hundred|thoosan thousand|twa two|fower four|eicht eight|mair more|maist most|whit what|noo now|hoose house
  auld old|ould old|lang long|deid dead|heid head|hame home|flaer floor|windae window|windaes windows|gie give
  gies gives|gied gave|awfy awfully|mibbe maybe|mebbe maybe|afore before|efter after|masel myself|yersel yourself
  yin one|wan one|nae no|thon that|ye you|yer your|oor our|naw no|cannae can't|canny can't|doesnae doesn't
  didnae didn't|isnae isn't|wasnae wasn't|wouldnae wouldn't|couldnae couldn't|shouldnae shouldn't|havenae haven't
  hasnae hasn't|hadnae hadn't|willnae won't|winnae won't|dinnae don't|arenae aren't|werenae weren't|gonnae going to
  summat something|owt anything|nowt nothing|mek make|tek take|reight right|watter water`
    .split(/[|\n]/)
    .map((pair) => {
      const [spelt = '', ...means] = pair.trim().split(' ');
      return [spelt, means.join(' ')] as const;
    }),
);

/** Spellings that are English words, names or letters too: not counted when it is asked whether the talk is dialect. */
const ALSO_WORDS: ReadonlySet<string> = new Set([
  'ye',
  'wan',
  'lang',
  'canny',
  'naw',
  'ould',
  'wae',
  'tek',
  'mek',
]);

/** How many different spellings show that the memo is spelt so. */
const ENOUGH = 2;

const spelt = ({ lower }: Heard) => SPELLINGS.get(lower.replace(/'(?:s|ll|re|d)$/, ''));

/** "two fifty ower", "aff the deck": read as the standard words once the memo has shown that it is spelt by ear. */
export const dialectSpellings: RepairRule = (words) => {
  const shown = new Set(
    words.filter(({ lower }) => SPELLINGS.has(lower) && !ALSO_WORDS.has(lower)).map((word) => word.lower),
  );
  if (shown.size < ENOUGH) return [];
  return words.flatMap((word) => {
    const means = spelt(word);
    if (!means) return [];
    const tail = /'(?:s|ll|re|d)$/.exec(word.lower)?.[0] ?? '';
    return [
      {
        start: word.start,
        end: word.end,
        means: means + tail,
        why: `"${word.lower}" is "${means}" in dialect`,
      },
    ];
  });
};
