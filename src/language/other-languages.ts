import type { Token } from './tokens.ts';

/**
 * Little words that hold a sentence together in German, Dutch, French, Spanish, Italian, Portuguese, Polish and the
 * Scandinavian languages and are no English words. Common knowledge of these languages, no source.
 */
const ELSEWHERE: ReadonlySet<string> = new Set(
  `der das und ist sind haben habe wird wir ich nicht auf mit für eine einen ein dem vom zum zur noch auch sich bei nach
  heute morgen jetzt aber oder het een wij niet hebben heeft zijn voor naar ook dat deze maar vandaag gisteren kost breed
  le la les du une nous avons avez est sont dans avec il elle je qui que ce cette aux et il des fait font
  el los las del una hoy y en es que para por con está tiene mide pesa son nuestra
  gli della delle di che abbiamo sono è oggi lunga larga
  och är jag inte det som av till ett idag med på og er ikke jeg vi har
  na się jest są mają i w z oraz dzisiaj uma não com os dos das pelo`.split(/\s+/),
);

/** Words that no English sentence of some length does without and that those languages do not have. */
const ENGLISH: ReadonlySet<string> = new Set(
  `the and of that it i'm this with for my you they there have has are be by but from which been would will not all our
  its at 's 're 've 'll 'd 'm isn't don't to so is was he she we now only then about each about off over under them`.split(
    /\s+/,
  ),
);

/** Both in English and in a language of the mainland: they speak for neither when the rest is foreign. */
const SHARED: ReadonlySet<string> = new Set(
  'is was we he so at over under now all to for by be of is will'.split(' '),
);

/**
 * Numbers of the sentences that are not in English: two of another language's little words and none of English's own.
 * "La Rochelle, 900 wide" has one of them, and English of the mainland has "the" and "it".
 * A short sentence without any such word goes with the others of the text.
 */
export function foreignSentences(tokens: readonly Token[]): ReadonlySet<number> {
  const foreign = new Set<number>();
  const unsure: number[] = [];
  let theirs = new Set<string>();
  let ours = 0;
  let english = 0;
  let sentence = 0;
  const close = () => {
    if (theirs.size >= 2 && ours === 0) foreign.add(sentence);
    else if (ours === 0) unsure.push(sentence);
    else english++;
    theirs = new Set();
    ours = 0;
  };
  for (const token of tokens) {
    if (token.sentence !== sentence) close();
    sentence = token.sentence;
    if (token.kind !== 'word') continue;
    if (ELSEWHERE.has(token.word) || /^[ldjnm]'\p{L}{2,}$/u.test(token.word)) theirs.add(token.word);
    else if (ENGLISH.has(token.word) && !SHARED.has(token.word)) ours++;
  }
  close();
  // "Der Tank hat 120 Liter." between others of its language.
  if (foreign.size > english) for (const one of unsure) foreign.add(one);
  return foreign;
}
