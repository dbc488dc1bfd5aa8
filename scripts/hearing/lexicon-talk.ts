/** The words of the trade, each in a plain sentence: what a recogniser makes of them is learned from that. */
import { NOUN_KINDS, type NounKind, nounsOf } from '../../src/language/lexicon/trade-nouns.ts';
import { pluralOf } from '../../src/language/lexicon/trade-words.ts';

const ONE = [
  'The * is done.',
  'I put the * on the bench.',
  'We need another * for it.',
  'That * is twelve mil thick.',
  'I measured the * again.',
  'The new * came today.',
];
const MANY = [
  'The * are done.',
  'I cut two * this morning.',
  'We need more * for it.',
  'Those * are twelve mil thick.',
  'I measured the * again.',
  'The new * came today.',
];
const NO_TRADE: ReadonlySet<NounKind> = new Set(['person', 'time', 'abstract', 'region', 'air', 'measure']);
const PER_TALK = 25;

/** Talks of 25 sentences. `form` is which form of each noun is said; the sentences change from word to word. */
export function lexiconTalks(form: 'one' | 'many'): readonly string[] {
  const nouns = NOUN_KINDS.filter((kind) => !NO_TRADE.has(kind)).flatMap(nounsOf);
  const single = [...new Set(nouns)].filter((noun) => /^[a-z]{3,}$/.test(noun));
  const words = single.map((noun) => (form === 'one' ? noun : pluralOf(noun)));
  const frames = form === 'one' ? ONE : MANY;
  const sentences = words.map((word, at) => (frames[at % frames.length] as string).replace('*', word));
  const talks: string[] = [];
  for (let at = 0; at < sentences.length; at += PER_TALK)
    talks.push(sentences.slice(at, at + PER_TALK).join(' '));
  return talks;
}
