/** What the talk is about at each point: the topic, the things mentioned last, and what "it" means. */
import { kindsOf, singular } from '../lexicon/trade-nouns.ts';
import type { Attribute, Dimension, Quantity } from '../notes.ts';
import { fitness, inMillimetres, isNoThing, sizeFit } from './fitness.ts';
import {
  agreement,
  canOwn,
  clauseStart,
  contrastedHeads,
  HOLDERS,
  isStuffOnly,
  isThing,
  MEASURED,
  mayBeOwned,
  nearness,
  VESSEL_PRONOUN,
} from './mentions.ts';
import {
  areFellows,
  isDependent,
  isRelational,
  joinNames,
  type KnownThings,
  nameOfOne,
  nameOfOther,
} from './naming.ts';
import type { Phrase } from './noun-phrases.ts';
import { behind, isSpeaker, lastPhraseBefore, type Parse, phraseAt, tagAt, wordAt } from './parse.ts';
import { placedApart, placeOf, standsBeside } from './told-apart.ts';
import { isWhole } from './wholes.ts';

export type Name = readonly string[];

export type Role = 'fronted' | 'subject' | 'object' | 'oblique';

/** What the figure needs of its thing. */
export interface Need {
  readonly dimension: Dimension;
  readonly attribute?: Attribute;
  /** The figure itself: a value that stands for one thing already points to it when it is said again. */
  readonly quantity?: Quantity;
}

export interface Said {
  readonly name: Name;
  readonly word: number;
  readonly sentence: number;
}

const ANY_LENGTH: Need = { dimension: 'length' };

const ROLE_WEIGHT: Readonly<Record<Role, number>> = { fronted: 0.7, subject: 0.5, object: 0.35, oblique: 0 };

export class Discourse {
  readonly parse: Parse;
  readonly known: KnownThings;
  /** Thing of the figure read last. */
  last: (Said & { readonly attribute: Attribute }) | undefined;
  #topic: Said | undefined;
  #topicAt = 0;
  readonly #names = new Map<number, Name | null>();
  /** What pronouns mean when no figure has settled them. */
  readonly #meant = new Map<number, Name | null>();
  readonly #nearbyOf = new Map<number, ReadonlySet<string>>();
  readonly #contrasted: ReadonlySet<string>;
  readonly #apart: ReadonlySet<string>;

  constructor(parse: Parse, known: KnownThings) {
    this.parse = parse;
    this.known = known;
    this.#contrasted = contrastedHeads(parse);
    this.#apart = placedApart(parse);
  }

  #place: string | null | undefined;

  /** The first of these places that the memo names, else that is known; looked for once. */
  placeAmong(places: ReadonlySet<string>): string | undefined {
    if (this.#place === undefined)
      this.#place =
        this.parse.phrases.find((phrase) => places.has(phrase.head))?.head ??
        this.known.wordIn(places) ??
        null;
    return this.#place ?? undefined;
  }

  #wholeAt = 0;
  #whole: string | undefined;
  #wholes: Map<string, number> | undefined;

  /** What is being built as a whole, by the word that the talk has had most for it before a word: "bus", "barn". */
  wholeAt(word: number): string | undefined {
    const { parse } = this;
    if (!this.#wholes) {
      this.#wholes = this.known.countWords(isWhole);
      for (const [name, count] of this.#wholes) if (count > this.#timesSaid(this.#whole)) this.#whole = name;
    }
    for (; this.#wholeAt < parse.phrases.length; this.#wholeAt++) {
      const phrase = parse.phrases[this.#wholeAt] as Phrase;
      if (phrase.first >= word) break;
      const head = singular(phrase.head);
      if (phrase.pronoun || !isWhole(head)) continue;
      this.#wholes.set(head, this.#timesSaid(head) + 1);
      if (this.#timesSaid(head) >= this.#timesSaid(this.#whole)) this.#whole = head;
    }
    return this.#whole;
  }

  #timesSaid(whole: string | undefined): number {
    return whole === undefined ? 0 : (this.#wholes?.get(whole) ?? 0);
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
      return isStuffOnly(phrase.kinds) ? 'object' : 'fronted';
    // "Rafters I've worked out at 3640": put in front, though no comma says so.
    if (
      /^(?:i|we|you)$/.test(wordAt(parse, after)) &&
      this.#opensSentence(phrase.first) &&
      !isSpeaker(phrase) &&
      !isNoThing(phrase.kinds)
    )
      return 'fronted';
    while (tagAt(parse, after) === 'adverb') after++;
    // "the drawers I've cut are too fat": what is cut, and the subject of what follows.
    if (/^(?:i|we|you)$/.test(wordAt(parse, after)) && phrase.determiner && !phrase.pronoun) return 'subject';
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

  /** The same for a phrase that only stands by: a pronoun is settled without the figure at hand. */
  meaningOf(phrase: Phrase): Name | undefined {
    if (!phrase.pronoun || this.#names.get(phrase.index)) return this.nameOf(phrase, ANY_LENGTH);
    const memo = this.#meant.get(phrase.index);
    if (memo !== undefined) return memo ?? undefined;
    this.#meant.set(phrase.index, null);
    const name = this.#nameOf(phrase, ANY_LENGTH);
    this.#meant.set(phrase.index, name ?? null);
    return name;
  }

  /** Gives a phrase the name that a frame settled on, so that what follows finds it under that name. */
  rename(phrase: Phrase, name: Name): void {
    this.#names.set(phrase.index, name);
  }

  #nameOf(phrase: Phrase, need: Need): Name | undefined {
    if (isSpeaker(phrase)) return undefined;
    if (phrase.pronoun === 'one' || phrase.pronoun === 'ones') return this.#nameOfOne(phrase, need);
    if (phrase.pronoun) return this.antecedent(phrase.first, need, phrase);
    if (isNoThing(phrase.kinds) || phrase.name.length === 0) return undefined;
    return this.#nameOfNoun(phrase, need);
  }

  #nameOfOne(phrase: Phrase, need: Need): Name | undefined {
    const before = this.#nounBefore(phrase);
    const base = before ? this.nameOf(before, need) : (this.last?.name ?? undefined);
    if (!base) return phrase.name.length > 0 ? phrase.name : undefined;
    if (phrase.name.length === 0) {
      const other = phrase.determiner === 'other' || wordAt(this.parse, phrase.first + 1) === 'other';
      return other ? nameOfOther(base) : this.#aged(phrase.age, base);
    }
    if (phrase.name.includes('other')) return nameOfOther(base);
    const named = nameOfOne(phrase.name, base);
    const settled = this.#settled(named, need, phrase.first) ?? named;
    return this.#aged(phrase.age, settled);
  }

  /** Keeps "new" and "old" in a name where the talk sets one against the other. */
  #aged(age: 'new' | 'old' | undefined, name: Name): Name {
    const plain = name[0] === 'old' || name[0] === 'new' ? name.slice(1) : name;
    if (!age) return name;
    const aged = [age, ...plain];
    return this.#contrasted.has(singular(plain.at(-1) ?? '')) || this.known.has(aged.join(' ')) ? aged : name;
  }

  /** The noun that "one" stands for: alike in number, the counterpart of old or new, no mere place if it can be. */
  #nounBefore(one: Phrase): Phrase | undefined {
    const { parse } = this;
    let best: Phrase | undefined;
    let bestScore = Number.NEGATIVE_INFINITY;
    for (let index = one.index - 1, back = 0; index >= 0 && back < 16; index--, back++) {
      const phrase = parse.phrases[index] as Phrase;
      if (phrase.name.length === 0 || isSpeaker(phrase) || isNoThing(phrase.kinds)) continue;
      if (phrase.kinds.has('material') || phrase.kinds.has('measure')) continue;
      const score =
        -back * 0.15 -
        (this.roleOf(phrase) === 'oblique' ? 0.5 : 0) -
        (one.plural && !phrase.plural ? 1 : 0) +
        (one.age && phrase.age && one.age !== phrase.age ? 1.5 : 0) +
        (one.name.some((word) => phrase.name.some((other) => areFellows(word, other))) ? 1.5 : 0);
      if (score > bestScore) {
        best = phrase;
        bestScore = score;
      }
    }
    return best;
  }

  /** "underside of the loft" and "the loft's underside" are the loft underside. */
  #nameOfNoun(phrase: Phrase, need: Need): Name {
    const { parse } = this;
    const name: Name = this.#toldApart(phrase, this.#aged(phrase.age, phrase.name));
    const relational = isRelational(phrase) || phrase.kinds.has('measure');
    const link = wordAt(parse, phrase.last + 1);
    const runs = phrase.kinds.has('cable') || phrase.kinds.has('pipe');
    if (
      link === 'of' ||
      link === 'for' ||
      (runs && /^(?:to|from|between)$/.test(link)) ||
      (relational && /^(?:in|on|over|under|behind)$/.test(link))
    ) {
      const owner = phraseAt(parse, phrase.last + 2);
      const of = owner && this.#ownerAfter(owner, relational, phrase, need);
      // "the first coat of primer" is primer.
      if (of && singular(phrase.head) === 'coat' && link === 'of')
        return this.#settled(of, need, phrase.first) ?? of;
      if (of) {
        const joined = joinNames(of, name);
        return this.#settled(joined, need, phrase.first) ?? joined;
      }
    }
    const alone = phrase.name.filter((word) => word !== 'rough' && word !== 'clear').length === 1;
    if ((relational || isDependent(phrase)) && alone && mayBeOwned(phrase)) {
      const owner = this.#owner(phrase, relational ? 1 : 0);
      if (owner) {
        const joined = joinNames(owner, name);
        return this.#settled(joined, need, phrase.first) ?? joined;
      }
      const settled = this.#settled(name, need, phrase.first);
      if (settled) return settled;
      const weak = relational ? this.#weakOwner(phrase) : undefined;
      if (weak) return joinNames(weak, name);
    }
    return this.#settled(name, need, phrase.first) ?? name;
  }

  /** "The trough by the hen run" is the hen run trough; "the tap in the yard" only where there is one elsewhere, too. */
  #toldApart(phrase: Phrase, name: Name): Name {
    if (phrase.kinds.has('measure') || isRelational(phrase)) return name;
    const place = placeOf(this.parse, phrase);
    if (!place) return name;
    const isOne = this.#apart.has(phrase.name.map(singular).join(' '));
    return isOne || standsBeside(this.parse, phrase) ? joinNames(place.name, name) : name;
  }

  #ownerAfter(owner: Phrase, open: boolean, part: Phrase, need: Need): Name | undefined {
    if (isSpeaker(owner) || isNoThing(owner.kinds)) return undefined;
    if (owner.pronoun) return open ? this.antecedent(part.first, need, owner) : undefined;
    return owner.name.length > 0 && isThing(owner.name) ? owner.name : undefined;
  }

  #settled(name: Name, need: Need, word: number): Name | undefined {
    return this.known.settle(name, need.attribute, this.#nearby(word));
  }

  /** Words of the sentence around a word and of the one before, in the singular. */
  #nearby(word: number): ReadonlySet<string> {
    const { parse } = this;
    const sentence = parse.sentenceOf[word] as number;
    const known = this.#nearbyOf.get(sentence);
    if (known) return known;
    const words = new Set<string>();
    const from = parse.sentenceStart[Math.max(0, sentence - 1)] as number;
    for (let k = from; k < parse.words.length && (parse.sentenceOf[k] as number) <= sentence; k++)
      if (tagAt(parse, k) === 'noun' || tagAt(parse, k) === 'adjective')
        words.add(singular(wordAt(parse, k)));
    this.#nearbyOf.set(sentence, words);
    return words;
  }

  /** The fronted thing of the same sentence, or of one that went at most `back` sentences before. */
  #owner(phrase: Phrase, back: number): Name | undefined {
    const topic = this.topicAt(phrase.first);
    if (!topic || topic.word === phrase.first) return undefined;
    const sentence = this.parse.sentenceOf[phrase.first] as number;
    const fragment = this.#isFragment(topic);
    if (sentence - topic.sentence > (fragment ? Math.max(1, back) : 0)) return undefined;
    if (topic.name.some((word) => singular(word) === singular(phrase.head))) return undefined;
    return canOwn(topic.name) ? topic.name : undefined;
  }

  /** "Loft." as a sentence of its own, as against "Windows, the east one is". */
  #isFragment(topic: Said): boolean {
    const { parse } = this;
    const phrase = phraseAt(parse, topic.word);
    return phrase !== undefined && /^(?:stop)$/.test(tagAt(parse, phrase.last + 1) ?? '');
  }

  /** The thing spoken of last, when nothing else says whose part it is. */
  #weakOwner(phrase: Phrase): Name | undefined {
    const { parse } = this;
    const sentence = parse.sentenceOf[phrase.first] as number;
    const head = singular(phrase.head);
    const fits = (name: Name) =>
      canOwn(name) &&
      HOLDERS.some((kind) => kindsOf(name).has(kind)) &&
      name.length <= 2 &&
      !name.some((word) => singular(word) === head) &&
      !kindsOf(name).has('material');
    for (let index = phrase.index - 1, back = 0; index >= 0 && back < 6; index--, back++) {
      const other = parse.phrases[index] as Phrase;
      if (sentence - (parse.sentenceOf[other.first] as number) > 1) break;
      if (other.pronoun || isSpeaker(other) || isNoThing(other.kinds)) continue;
      if (this.roleOf(other) !== 'subject' || singular(other.head) === head) continue;
      const name = this.nameOf(other, { dimension: 'length' });
      if (name && fits(name)) return name;
      // "The bench is 900 high, the top's 27, so the legs want to be 873": parts of one thing.
      const owner = isDependent(other) || isRelational(other) ? name?.slice(0, -1) : undefined;
      if (owner && owner.length > 0 && fits(owner)) return owner;
      // "The trailer's 2300 wide, the floor's 18 and the sides are 600": no floor has sides.
      if ((parse.sentenceOf[other.first] as number) !== sentence) break;
    }
    const last = this.last;
    return last && sentence - last.sentence <= 1 && fits(last.name) ? last.name : undefined;
  }

  /** What a pronoun at `word` means: the likeliest thing said before it, given what the figure needs. */
  antecedent(word: number, need: Need, pronoun?: Phrase): Name | undefined {
    const { parse } = this;
    const sentence = parse.sentenceOf[word] as number;
    const equal = need.quantity
      ? this.known.withValue(need.dimension, need.quantity.value, need.quantity.unit, need.attribute)
      : undefined;
    const topic = this.topicAt(word);
    const topicKey = topic?.name.join(' ');
    const clause = clauseStart(parse, word);
    const mm =
      need.quantity && need.dimension === 'length'
        ? inMillimetres(need.quantity.value, need.quantity.unit)
        : 0;
    const lastSubject = this.#subjectNearest(word, pronoun);
    let best: Name | undefined;
    let bestScore = -0.6;
    const take = (name: Name, score: number) => {
      if (score <= bestScore) return;
      best = name;
      bestScore = score;
    };
    let index = pronoun ? pronoun.index - 1 : lastPhraseBefore(parse, word);
    while (index >= 0 && (parse.phrases[index] as Phrase).first >= word) index--;
    const seen = new Set<string>();
    for (let back = 0; index >= 0 && back < 24; index--, back++) {
      const phrase = parse.phrases[index] as Phrase;
      const away = sentence - (parse.sentenceOf[phrase.first] as number);
      if (away > 3) break;
      if (isSpeaker(phrase) || isNoThing(phrase.kinds) || phrase.first >= word) continue;
      const name = this.meaningOf(phrase);
      if (!name || name.length === 0) continue;
      const key = name.join(' ');
      // The latest mention counts; a pronoun among them does not hide its noun.
      if (seen.has(key)) continue;
      if (!phrase.pronoun || this.roleOf(phrase) !== 'oblique') seen.add(key);
      const kinds = phrase.pronoun ? kindsOf(name) : phrase.kinds;
      take(
        name,
        this.#weight(phrase) +
          fitness(kinds, need.dimension) +
          agreement(phrase, name, kinds, pronoun) +
          nearness(parse, phrase, word, clause, pronoun) -
          away * 0.4 -
          (word - phrase.last) * 0.008 +
          (kinds.size === 0 ? -0.4 : kinds.has('measure') && kinds.size === 1 ? -0.7 : 0) +
          (this.last?.name.join(' ') === key ? 0.3 : 0) +
          (this.known.has(key) ? 0.2 : 0) +
          (equal?.has(key) ? 0.9 : 0) +
          (key === topicKey && away <= 1 ? 0.4 : 0) +
          (phrase.index === lastSubject ? 0.45 : 0) +
          this.#likeness(key, need) +
          (mm ? sizeFit(kinds, mm) : 0),
      );
    }
    if (topic && topicKey && sentence - topic.sentence <= 3 && !seen.has(topicKey))
      take(
        topic.name,
        0.5 + fitness(kindsOf(topic.name), need.dimension) - (sentence - topic.sentence) * 0.35,
      );
    if (
      pronoun &&
      VESSEL_PRONOUN.test(pronoun.head) &&
      bestScore < 0.6 &&
      !(best && kindsOf(best).has('vessel'))
    )
      return this.known.latestOf('vessel') ?? best;
    // Nothing near: a value that only one known thing has points to it.
    if (equal?.size === 1 && bestScore < 0.5) {
      const [only] = equal;
      if (only) return only.split(' ');
    }
    return best;
  }

  /** The nearest phrase before a word, in its sentence, that is a subject: "the duct comes up, it's 100". */
  #subjectNearest(word: number, pronoun: Phrase | undefined): number {
    const { parse } = this;
    const sentence = parse.sentenceOf[word] as number;
    let index = pronoun ? pronoun.index - 1 : lastPhraseBefore(parse, word);
    while (index >= 0 && (parse.phrases[index] as Phrase).first >= word) index--;
    for (; index >= 0; index--) {
      const phrase = parse.phrases[index] as Phrase;
      if (parse.sentenceOf[phrase.first] !== sentence) return -1;
      if (isSpeaker(phrase) || isNoThing(phrase.kinds)) continue;
      const role = this.roleOf(phrase);
      if (role === 'subject' || role === 'fronted') return index;
    }
    return -1;
  }

  /** How well a value goes with what is known of a thing: near an older size of it, or far from them all. */
  #likeness(item: string, need: Need): number {
    if (!need.quantity || need.dimension !== 'length') return 0;
    const mm = inMillimetres(need.quantity.value, need.quantity.unit);
    const lengths = this.known
      .lengthsOf(item)
      .filter((length) => !need.attribute || length.attribute === need.attribute);
    if (lengths.length === 0) return 0;
    const nearest = Math.min(...lengths.map((length) => Math.abs(Math.log(length.millimetres / mm))));
    return nearest < 0.25 ? 0.35 : nearest > 1.8 ? -0.3 : 0;
  }

  /** "I bought a bandsaw": the doer is no thing, so what is done to is what the clause is about. */
  #isDoneTo(phrase: Phrase): boolean {
    const { parse } = this;
    let k = phrase.first - 1;
    while (
      tagAt(parse, k) === 'adverb' ||
      (tagAt(parse, k) === 'preposition' && /^(?:up|out|down|off|on|in|at)$/.test(wordAt(parse, k)))
    )
      k--;
    if (tagAt(parse, k) !== 'verb' && tagAt(parse, k) !== 'participle' && tagAt(parse, k) !== 'auxiliary')
      return false;
    for (let steps = 0; steps < 6; steps++, k--) {
      const tag = tagAt(parse, k);
      if (tag === 'pronoun') return /^(?:i|we|you|he|they)$/.test(wordAt(parse, k));
      if (tag === 'stop' || tag === 'comma' || tag === 'noun' || tag === undefined) return false;
    }
    return false;
  }

  /** How much a phrase stands out by its place in its clause. */
  #weight(phrase: Phrase): number {
    const { parse } = this;
    const next = wordAt(parse, phrase.last + 1);
    // "the box says 13": what reports is not what is reported on.
    if (/^(?:says|said|reckons|claims|reads|shows)$/.test(next)) return -1.2;
    // "I put the tape on it", "measured the turn": what a tool is laid on is what is measured.
    if (MEASURED.test(behind(parse, phrase.first, 4))) return 0.9;
    const before = tagAt(parse, phrase.first - 1);
    if (before === 'be' && this.roleOf(phrase) === 'object') return -0.1;
    if (this.#isDoneTo(phrase)) return 0.75;
    return ROLE_WEIGHT[this.roleOf(phrase)];
  }
}
