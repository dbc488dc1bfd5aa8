/** What the talk is about at each point: the topic, the things mentioned last, and what "it" means. */
import { isPlural, kindsOf, type NounKind, singular } from '../lexicon/trade-nouns.ts';
import type { Attribute, Dimension } from '../notes.ts';
import { fitness, isNoThing } from './fitness.ts';
import { headOf, isPartHead, joinNames, type KnownThings, nameOfOne, nameOfOther } from './naming.ts';
import type { Phrase } from './noun-phrases.ts';
import { isSpeaker, type Parse, phraseAt, tagAt, wordAt } from './parse.ts';

export type Name = readonly string[];

export type Role = 'fronted' | 'subject' | 'object' | 'oblique';

/** What the figure needs of its thing. */
export interface Need {
  readonly dimension: Dimension;
  readonly attribute?: Attribute;
}

interface Said {
  readonly name: Name;
  readonly word: number;
  readonly sentence: number;
}

const ROLE_WEIGHT: Readonly<Record<Role, number>> = { fronted: 0.7, subject: 0.5, object: 0.35, oblique: 0 };

export class Discourse {
  readonly parse: Parse;
  readonly known: KnownThings;
  /** Thing of the figure read last. */
  last: Said | undefined;
  #topic: Said | undefined;
  #topicAt = 0;
  readonly #names = new Map<number, Name | null>();

  constructor(parse: Parse, known: KnownThings) {
    this.parse = parse;
    this.known = known;
  }

  /** The fronted phrase that rules at a word: of its own sentence or of the ones just before. */
  topicAt(word: number): Said | undefined {
    const { parse } = this;
    for (; this.#topicAt < parse.phrases.length; this.#topicAt++) {
      const phrase = parse.phrases[this.#topicAt] as Phrase;
      if (phrase.first >= word) break;
      if (this.roleOf(phrase) !== 'fronted' || phrase.pronoun) continue;
      const name = this.nameOf(phrase, { dimension: 'length' });
      if (name)
        this.#topic = { name, word: phrase.first, sentence: parse.sentenceOf[phrase.first] as number };
    }
    return this.#topic;
  }

  roleOf(phrase: Phrase): Role {
    const { parse } = this;
    let before = phrase.first - 1;
    while (before >= 0 && (tagAt(parse, before) === 'adverb' || tagAt(parse, before) === 'filler')) before--;
    const left = tagAt(parse, before);
    if (left === 'preposition') return 'oblique';
    let after = phrase.last + 1;
    const right = tagAt(parse, after);
    if (
      (right === 'comma' || right === 'stop') &&
      this.#opensSentence(phrase.first) &&
      !isSpeaker(phrase) &&
      !isNoThing(phrase.kinds)
    )
      return 'fronted';
    while (tagAt(parse, after) === 'adverb') after++;
    const next = tagAt(parse, after);
    if (next === 'be' || next === 'modal' || next === 'auxiliary' || next === 'verb' || next === 'participle')
      return left === 'verb' || left === 'determiner' ? 'object' : 'subject';
    return 'object';
  }

  #opensSentence(at: number): boolean {
    const { parse } = this;
    for (let k = at - 1; k >= 0; k--) {
      const tag = tagAt(parse, k);
      if (tag === 'stop') return true;
      if (tag === 'comma' || tag === 'filler' || tag === 'conjunction' || tag === 'adverb') continue;
      return false;
    }
    return true;
  }

  /** The name of what a phrase means, or undefined when it means nothing that a figure is said of. */
  nameOf(phrase: Phrase, need: Need): Name | undefined {
    const memo = this.#names.get(phrase.index);
    if (memo !== undefined) return memo ?? undefined;
    // Set first: a pronoun that leads back to itself finds nothing.
    this.#names.set(phrase.index, null);
    const name = this.#nameOf(phrase, need);
    this.#names.set(phrase.index, name ?? null);
    return name;
  }

  #nameOf(phrase: Phrase, need: Need): Name | undefined {
    if (isSpeaker(phrase)) return undefined;
    if (phrase.pronoun === 'one' || phrase.pronoun === 'ones') return this.#nameOfOne(phrase, need);
    if (phrase.pronoun) return this.antecedent(phrase.first, need, phrase);
    if (isNoThing(phrase.kinds)) return undefined;
    return this.#nameOfNoun(phrase, need);
  }

  #nameOfOne(phrase: Phrase, need: Need): Name | undefined {
    const before = this.#nounBefore(phrase.first);
    const base = before ? this.nameOf(before, need) : (this.last?.name ?? undefined);
    if (!base) return phrase.name.length > 0 ? phrase.name : undefined;
    if (phrase.name.length === 0)
      return phrase.determiner === 'other' || wordAt(this.parse, phrase.first + 1) === 'other'
        ? nameOfOther(base)
        : base;
    if (phrase.name.includes('other')) return nameOfOther(base);
    const modifiers =
      phrase.age === 'new' ? ['new', ...phrase.name.filter((word) => word !== 'new')] : phrase.name;
    return nameOfOne(modifiers, base);
  }

  #nounBefore(word: number): Phrase | undefined {
    const { parse } = this;
    let index = parse.phrases.length - 1;
    while (index >= 0 && (parse.phrases[index] as Phrase).first >= word) index--;
    for (let back = 0; index >= 0 && back < 12; index--, back++) {
      const phrase = parse.phrases[index] as Phrase;
      if (
        phrase.name.length > 0 &&
        !isSpeaker(phrase) &&
        !isNoThing(phrase.kinds) &&
        !phrase.kinds.has('material')
      )
        return phrase;
    }
    return undefined;
  }

  /** "underside of the loft" and "the loft's underside" are the loft underside. */
  #nameOfNoun(phrase: Phrase, need: Need): Name {
    const { parse } = this;
    let name: Name = phrase.age === 'old' && phrase.name[0] !== 'old' ? phrase.name : phrase.name;
    const joinsOwner = isPartHead(phrase) || phrase.kinds.has('measure') || phrase.kinds.has('part');
    if (
      wordAt(parse, phrase.last + 1) === 'of' ||
      (joinsOwner && /^(?:in|on)$/.test(wordAt(parse, phrase.last + 1)))
    ) {
      const owner = phraseAt(parse, phrase.last + 2);
      const isOf = wordAt(parse, phrase.last + 1) === 'of';
      if (owner && !owner.pronoun && !isSpeaker(owner) && !isNoThing(owner.kinds) && (isOf || joinsOwner))
        return this.#settled(joinNames(owner.name, name), need) ?? joinNames(owner.name, name);
      if (owner?.pronoun && joinsOwner && isOf) {
        const of = this.antecedent(phrase.first, need, owner);
        if (of) return this.#settled(joinNames(of, name), need) ?? joinNames(of, name);
      }
    }
    if (joinsOwner && phrase.name.filter((word) => word !== 'rough' && word !== 'clear').length === 1) {
      const owner = this.#owner(phrase);
      if (owner) name = joinNames(owner, name);
      else {
        const settled = this.#settled(name, need);
        if (settled) return settled;
        const weak = this.#weakOwner(phrase);
        if (weak) name = joinNames(weak, name);
      }
    }
    return this.#settled(name, need) ?? name;
  }

  #settled(name: Name, need: Need): Name | undefined {
    return this.known.settle(name, need.attribute);
  }

  /** The fronted thing of the same sentence, or a one-phrase sentence just before. */
  #owner(phrase: Phrase): Name | undefined {
    if (
      phrase.determiner &&
      !/^(?:the|its|their|her|his|each|every|both|all|my|our)$/.test(phrase.determiner)
    )
      return undefined;
    const topic = this.topicAt(phrase.first);
    if (!topic || topic.word === phrase.first) return undefined;
    const sentence = this.parse.sentenceOf[phrase.first] as number;
    if (sentence - topic.sentence > 1) return undefined;
    if (headOf(topic.name) === singular(phrase.head)) return undefined;
    if (!canOwn(topic.name)) return undefined;
    return topic.name;
  }

  /** The thing spoken of last, when nothing else says whose part it is. */
  #weakOwner(phrase: Phrase): Name | undefined {
    const { parse } = this;
    if (phrase.determiner !== undefined && !/^(?:the|its|their|her)$/.test(phrase.determiner))
      return undefined;
    const sentence = parse.sentenceOf[phrase.first] as number;
    const last = this.last;
    const head = singular(phrase.head);
    if (
      last &&
      sentence - last.sentence <= 1 &&
      !last.name.some((word) => singular(word) === head) &&
      canOwn(last.name) &&
      last.name.length <= 3
    )
      return last.name;
    for (let index = phrase.index - 1, back = 0; index >= 0 && back < 6; index--, back++) {
      const other = parse.phrases[index] as Phrase;
      if (sentence - (parse.sentenceOf[other.first] as number) > 1) break;
      if (other.pronoun || isSpeaker(other) || isNoThing(other.kinds)) continue;
      if (this.roleOf(other) !== 'subject' || singular(other.head) === head) continue;
      const name = this.nameOf(other, { dimension: 'length' });
      return name && canOwn(name) && name.length <= 3 ? name : undefined;
    }
    return undefined;
  }

  /** What a pronoun at `word` means: the likeliest thing said before it, given what the figure needs. */
  antecedent(word: number, need: Need, pronoun?: Phrase): Name | undefined {
    const { parse } = this;
    const sentence = parse.sentenceOf[word] as number;
    let best: Name | undefined;
    let bestScore = -0.6;
    let index = (pronoun?.index ?? parse.phrases.length) - 1;
    while (index >= 0 && (parse.phrases[index] as Phrase).first >= word) index--;
    const wantsPlural = pronoun?.plural ?? false;
    const seen = new Set<string>();
    for (let back = 0; index >= 0 && back < 24; index--, back++) {
      const phrase = parse.phrases[index] as Phrase;
      const away = sentence - (parse.sentenceOf[phrase.first] as number);
      if (away > 3) break;
      if (isSpeaker(phrase) || isNoThing(phrase.kinds)) continue;
      if (phrase.pronoun && pronoun === undefined && phrase.first >= word) continue;
      const name = this.nameOf(phrase, need);
      if (!name || name.length === 0) continue;
      const key = name.join(' ');
      if (seen.has(key)) continue;
      seen.add(key);
      const kinds = phrase.pronoun ? kindsOf(name) : phrase.kinds;
      const plural = phrase.pronoun ? isPlural(name.at(-1) ?? '') : phrase.plural;
      const agreement = !pronoun || pronoun.pronoun === 'that' ? 0 : plural === wantsPlural ? 0.2 : -0.6;
      const score =
        ROLE_WEIGHT[this.roleOf(phrase)] +
        fitness(kinds, need.dimension) -
        away * 0.45 -
        (word - phrase.last) * 0.012 +
        agreement +
        (kinds.size === 0 ? -0.4 : 0) +
        (this.last && this.last.name.join(' ') === key ? 0.35 : 0) +
        (this.known.has(key) ? 0.25 : 0);
      if (score > bestScore) {
        best = name;
        bestScore = score;
      }
    }
    const topic = this.topicAt(word);
    if (topic && sentence - topic.sentence <= 3 && !seen.has(topic.name.join(' '))) {
      const score = 0.5 + fitness(kindsOf(topic.name), need.dimension) - (sentence - topic.sentence) * 0.35;
      if (score > bestScore) best = topic.name;
    }
    return best;
  }
}

const NO_OWNER: ReadonlySet<NounKind> = new Set([
  'person',
  'time',
  'abstract',
  'measure',
  'air',
  'tool',
  'region',
]);
function canOwn(name: Name): boolean {
  const kinds = kindsOf(name);
  if (kinds.size === 0) return true;
  for (const kind of kinds) if (!NO_OWNER.has(kind)) return true;
  return false;
}
