import { batteryVolts } from './battery-volts.ts';
import { clockTimes } from './clock.ts';
import { calendarDates, ordinals, shortYears, years } from './dates.ts';
import { bareFeetAndInches, feetAndInches } from './feet-and-inches.ts';
import { partsAndTimes, sayings } from './idioms.ts';
import { fastenerNames, grades, numberedThings } from './labels.ts';
import { mannersOfSpeaking } from './manners-of-speaking.ts';
import { grand, moneySigns, notesByName, rands } from './money.ts';
import {
  bareSection,
  countOfSize,
  countOfUnitSize,
  hundredOfUnit,
  numberAlone,
  numberAndUnit,
  roughNumberAndUnit,
  sizeAsThing,
} from './plain-amounts.ts';
import { mixes, slopes } from './ratios.ts';
import type { AmountRule } from './rule.ts';
import { gaugesAlone } from './sheet-gauges.ts';
import { stockNames } from './stock-names.ts';
import { toolSizes } from './tools.ts';
import {
  largerAndSmaller,
  metresAndRest,
  moneyAndRest,
  oneOfUnit,
  partOfUnit,
  unitAndFraction,
} from './unit-and-rest.ts';

/** In order: the first rule that answers at a token takes it. */
export const AMOUNT_RULES: readonly AmountRule[] = [
  sayings,
  mannersOfSpeaking,
  // Before numbers of any kind: "the twenty second" is no twenty, "3 May" no three.
  ordinals,
  calendarDates,
  // Before bare numbers: "half seven" is no half, "part one" no one.
  clockTimes,
  years,
  shortYears,
  numberedThings,
  fastenerNames,
  toolSizes,
  // Before lists: "two by fours" has no unit to share.
  stockNames,
  // Before plain ranges: "five to one" is one figure.
  mixes,
  slopes,
  grades,
  gaugesAlone,
  moneySigns,
  rands,
  grand,
  notesByName,
  // Longest first: "7 foot 4", then "an inch and a half", then "an inch".
  feetAndInches,
  // Before feet and inches without their words: a battery has neither.
  batteryVolts,
  bareFeetAndInches,
  // Before sizes: "three 25 mil boards" is no 325.
  countOfUnitSize,
  unitAndFraction,
  largerAndSmaller,
  metresAndRest,
  moneyAndRest,
  partOfUnit,
  // After parts of units: "three quarters of an inch" is no part of a whole.
  partsAndTimes,
  // Before units: "home with 135s" is no time.
  sizeAsThing,
  numberAndUnit,
  roughNumberAndUnit,
  hundredOfUnit,
  oneOfUnit,
  bareSection,
  countOfSize,
  numberAlone,
];
