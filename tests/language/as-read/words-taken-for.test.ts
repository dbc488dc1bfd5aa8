/**
 * What the words of a sentence are taken for before any rule looks at them: clauses with their classes and grammar, parts of
 * speech and the phrases that name things. A change here is seen also where the same notes come out.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { type Parse, parseMemo } from '../../../src/language/items/parse.ts';
import { readQuantities } from '../../../src/language/quantities.ts';
import { splitSentences } from '../../../src/language/sentences.ts';
import { grammarOf } from '../../../src/language/statements/clause-grammar.ts';
import { type Said, wordClauses } from '../../../src/language/statements/words.ts';
import { tokenise } from '../../../src/language/tokens.ts';

const CONTEXT = { units: 'metric', region: 'GB', recordedAt: '2026-06-10T18:00:00+01:00' } as const;
const folder = fileURLToPath(new URL('./words-taken-for/', import.meta.url));

const wordsOf = (words: readonly { readonly lower: string }[]) => words.map(({ lower }) => lower).join(' ');

function clauseLine(said: Said): string {
  const grammar = grammarOf(said);
  const read = grammar
    ? [
        grammar.form,
        grammar.doer,
        `${wordsOf(grammar.subject)} | ${grammar.verb?.lower ?? ''} | ${wordsOf(grammar.rest)}`,
        ...(grammar.negated ? ['negated'] : []),
      ]
    : [];
  const marks = [
    ...(said.opener ? [`opens ${said.opener}`] : []),
    ...(said.afterPause ? ['after a pause'] : []),
    ...(said.asks ? ['asks'] : []),
  ];
  return `  ${said.sentence}${said.code}; ${[...marks, ...read].join('; ')}`;
}

function phraseLines({ phrases, words }: Parse): readonly string[] {
  return phrases.map((phrase) => {
    const said = wordsOf(words.slice(phrase.first, phrase.last + 1));
    const more = [
      ...[...phrase.kinds].sort(),
      ...(phrase.plural ? ['plural'] : []),
      ...(phrase.determiner ? [`by ${phrase.determiner}`] : []),
      ...(phrase.pronoun ? [`for ${phrase.pronoun}`] : []),
      ...(phrase.age ? [phrase.age] : []),
      ...(phrase.quantity === undefined ? [] : [`with ${phrase.quantity + 1}`]),
      ...(phrase.bare ? ['bare'] : []),
    ];
    return `  [${said}] ${phrase.name.join(' ')}: ${phrase.head}; ${more.join(', ')}`;
  });
}

function takenFor(text: string): string {
  const { quantities } = readQuantities(text, tokenise(text), CONTEXT);
  const parse = parseMemo(
    text,
    quantities.map(({ span, core }) => ({ ...(core ?? span), isCore: core !== undefined })),
  );
  const tags = parse.words.map(({ lower, tag }) => `${lower}/${tag}`).join(' ');
  const clauses = wordClauses(text, splitSentences(text)).map(clauseLine);
  return [`> ${text}`, ...clauses, `  ${tags}`, ...phraseLines(parse)].join('\n');
}

test.each(readdirSync(folder).sort())('%s', { timeout: 60_000 }, async (name) => {
  const file = `${folder}${name}`;
  const texts = readFileSync(file, 'utf8')
    .split('\n')
    .flatMap((line) => (line.startsWith('> ') ? [line.slice(2)] : []));
  await expect(`${texts.map(takenFor).join('\n')}\n`).toMatchFileSnapshot(file);
});
