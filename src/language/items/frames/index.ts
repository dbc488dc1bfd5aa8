/**
 * Ways of saying what a quantity belongs to, in the order they are tried. The first that answers with a thing that
 * can carry the figure wins.
 */
import type { Frame } from '../site.ts';
import {
  carriedOn,
  eachOf,
  figureMeant,
  nearest,
  ownDoing,
  pairSecond,
  restated,
  restatedOf,
  topic,
  total,
} from './carried-on.ts';
import { draught } from './draught.ts';
import { hadBesideAsked } from './had.ts';
import { limitOfLoad, limitOnAnything, limitOnEverything } from './limits.ts';
import { newOne } from './new-one.ts';
import { offsetFrom } from './offsets.ts';
import { oneBeside, otherOne } from './other-ones.ts';
import { sizeOfPart } from './part-sizes.ts';
import { openAir, placeTemperature } from './places.ts';
import { ellipsis, measureNounOf, pairedPremodifier, premodifier, quantityOf } from './premodifiers.ts';
import { between, roomAbout } from './rooms.ts';
import { eachSide, perPart } from './sides.ts';
import { spacing } from './spacing.ts';
import { sectionOf } from './stock.ts';
import { apposition, forThing, namedBehind, reachOf, saidBehind, takenOff, verbSubject } from './subjects.ts';
import { windSpeed } from './wind.ts';

export const FRAMES: readonly Frame[] = [
  // Before all: "nothing wider than 740 comes in" would be a figure of what stands before it.
  limitOnAnything,
  limitOfLoad,
  limitOnEverything,
  // Before what stands nearest: the figure itself is named.
  figureMeant,
  // Before the nearest: what it reaches to is no thing of the size.
  reachOf,
  // Before the nearest: what there is is of the thing that asks for it.
  hadBesideAsked,
  // Before what stands nearest: the stuff is no thing, and the noun is the other one's.
  newOne,
  // Before the subject: the noun is its fellow's.
  otherOne,
  oneBeside,
  // Before the nearest: the part is what the sum takes away, and not what it comes to.
  sizeOfPart,
  // Before the second of a pair: both sizes of "90 by 45 rails" are the rails'.
  pairedPremodifier,
  // Before the measure: "lengths of 100" would be how long they are.
  sectionOf,
  pairSecond,
  draught,
  spacing,
  eachSide,
  eachOf,
  perPart,
  quantityOf,
  takenOff,
  saidBehind,
  // Before the premodifier: "a 210 on the countershaft" names no countershaft of 210.
  ellipsis,
  roomAbout,
  between,
  premodifier,
  measureNounOf,
  offsetFrom,
  windSpeed,
  openAir,
  placeTemperature,
  namedBehind,
  restatedOf,
  forThing,
  verbSubject,
  apposition,
  total,
  ownDoing,
  carriedOn,
  restated,
  topic,
  nearest,
];
