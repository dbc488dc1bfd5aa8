/**
 * Words that make an input of every figure of some things: "every battery weight", "every weight in aft locker",
 * "every shelf weight in kiln". Things are meant by the words of their names, and by where talk said that they are.
 */
import { ATTRIBUTES, type Attribute } from '../../language/notes.ts';
import { shapeOf, wordsOf } from '../names.ts';
import { stemOf } from '../stems.ts';

/** What a group holds. Without a name it is everything; without a place it is wherever it is. */
export interface GroupWords {
  readonly attribute: Attribute;
  readonly name?: string;
  readonly place?: string;
}

const EVERY = /^(?:every|all) (.+)$/i;
const WHERE = / (?:in|on|inside|under) (.+)$/i;

/** Takes the words of a group apart; undefined for an expression that is none. */
export function groupWords(expression: string): GroupWords | undefined {
  const told = EVERY.exec(expression.trim())?.[1];
  if (told === undefined) return undefined;
  const place = WHERE.exec(` ${told}`)?.[1];
  const words = ` ${told}`.replace(WHERE, '').trim().split(/\s+/);
  const last = words.at(-1)?.toLowerCase();
  const attribute = ATTRIBUTES.find((one) => one === last && one !== 'other');
  if (!attribute) return undefined;
  const name = words.slice(0, -1).join(' ');
  return { attribute, ...(name === '' ? {} : { name }), ...(place === undefined ? {} : { place }) };
}

/** A thing that may be in a group: its name, and where its figure was said of, in the words of the talk. */
export interface Placed {
  readonly name: string;
  readonly place?: string;
}

/** Whether a thing belongs to a group. */
export function isInGroup({ name, place }: GroupWords, thing: Placed): boolean {
  return (
    (name === undefined || isNamedSo(name, thing.name)) && (place === undefined || isThere(place, thing))
  );
}

const stemsOf = (words: string): readonly string[] => wordsOf(words).map(stemOf);

/** "Starter battery" is a battery; a battery box is none. */
function isNamedSo(group: string, name: string): boolean {
  const stems = stemsOf(name);
  return shapeOf(name).head === shapeOf(group).head && stemsOf(group).every((stem) => stems.includes(stem));
}

/** Said to be there, or named after it: "roof box". The place itself is not in itself. */
function isThere(group: string, { name, place }: Placed): boolean {
  const wanted = stemsOf(group);
  if (place !== undefined && wanted.every((stem) => stemsOf(place).includes(stem))) return true;
  const stems = stemsOf(name);
  const head = shapeOf(group).head;
  return shapeOf(name).head !== head && wanted.every((stem) => stems.includes(stem));
}
