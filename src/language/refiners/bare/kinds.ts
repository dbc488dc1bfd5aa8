import { isPlural, isTradeNoun, kindsOf, singular } from '../../lexicon/trade-nouns.ts';
import { each, PhraseTable } from '../../phrases.ts';
import { localMoney } from '../../rules/money.ts';
import type { Amount, Room } from '../../rules/rule.ts';
import { wordAt } from '../../rules/rule.ts';
import { CONDUCTOR_SIZES } from '../../units/conductor-sizes.ts';
import { dimensionOfUnit } from '../../units/read-unit.ts';
import { type SaidBefore, saidBefore } from '../../units/said-before.ts';
import { type Kind, kindOf, usualUnit } from '../../units/spoken-of.ts';
import { speaksOf } from '../../units/surroundings.ts';
import { type Evidence, evidenceAfter, ON_A_MEASURE, PRICED_BY, SO_MUCH_EACH } from './evidence.ts';
import { asHeat } from './heat.ts';
import { type Meaning, TAPE_PARTS } from './lengths.ts';
import { close, nearWord, REMEMBERED, subjectIsPronoun } from './neighbours.ts';

const TURNS =
  /^(?:countershaft|spindle|shaft|motor|engine|pulley|fan|blade|blower|impeller|prop|propeller|chuck|cutter|grinder|wheel|drum|rotor|headstock|lathe|router|drill)$/;

/** "Running it at 450 for the roughing, 900 to finish": a machine tool and how it is run. */
function ranAt(room: Room, amount: Amount): boolean {
  if (amount.value < 40 || !Number.isInteger(amount.value) || evidenceAfter(room, amount)) return false;
  const tool = [
    'roughing',
    'finish',
    'finishing',
    'lathe',
    'spindle',
    'chuck',
    'drill',
    'router',
    'cutter',
    'mill',
    'parting',
    'boring',
    'facing',
  ].some((word) => nearWord(room, amount, word));
  const at = amount.from - 1;
  if (!tool || wordAt(room, at) !== 'at') return false;
  return [1, 2, 3].some((back) =>
    /^(?:run|runs|running|ran|spin|spins|spinning|turning)$/.test(wordAt(room, at - back)),
  );
}

/** "so the countershaft does 475", "566 on the rev counter". */
function asTurning(room: Room, amount: Amount, out: readonly Amount[]): Meaning | undefined {
  if (amount.value < 20) return undefined;
  const around = (at: number) => wordAt(room, at) === 'flat' && wordAt(room, at + 1) === 'out';
  const flatOut = [...Array(9).keys()].some((step) => around(amount.from - step) || around(amount.to + step));
  const known = out.slice(-REMEMBERED).some((other) => other.unit === 'rpm');
  if (amount.value >= 100 && flatOut && (known || amount.value <= 6000)) {
    return { value: amount.value, unit: 'rpm', dimension: 'speed', why: 'turns of a shaft, flat out' };
  }
  if (ranAt(room, amount))
    return { value: amount.value, unit: 'rpm', dimension: 'speed', why: 'turns of a machine' };
  const verb = /^(?:does|do|turns|turn|spins|at|of)$/.test(wordAt(room, amount.from - 1));
  const subject = [2, 3, 4].some((back) => TURNS.test(wordAt(room, amount.from - back)));
  const revs = [...Array(26).keys()].some((back) => {
    const token = room.tokens[amount.from - 1 - back];
    return (
      token?.sentence === room.tokens[amount.from]?.sentence &&
      /^(?:rev|revs|rpm|tach|tacho|tachometer)$/.test(token?.word ?? '')
    );
  });
  const runs = /^(?:does|turns|spins)$/.test(wordAt(room, amount.from - 1)) && subject;
  if (!runs && !revs) return undefined;
  if (!verb && !revs) return undefined;
  return { value: amount.value, unit: 'rpm', dimension: 'speed', why: 'turns of a shaft' };
}

/** Where a pressure switch acts. Common practice, no source. */
const SWITCHES = new PhraseTable<true>(
  each(
    true,
    'kicks in at, kick in at, cuts in at, cut in at, cuts out at, cut out at, comes on at, come on at, goes off at, shuts off at, shut off at, switches off at, switches on at, trips at, cuts off at, starts at, stops at',
  ),
);

const ON_A_GAUGE = new PhraseTable<true>(
  each(true, 'on the clock, on the gauge, on the pressure gauge, on the test gauge, on the dial'),
);

/** Tyres are spoken of in pounds or bar without the unit. Common practice, no source. */
function asPressure(room: Room, amount: Amount): Meaning | undefined {
  const subject = [...Array(5).keys()].some((back) =>
    /^(?:tyre|tyres|tire|tires)$/.test(wordAt(room, amount.from - 2 - back)),
  );
  const pump =
    SWITCHES.endingAt(room.tokens, amount.from) &&
    ['pump', 'compressor', 'switch', 'well', 'accumulator'].some((word) => nearWord(room, amount, word));
  if (pump && amount.value <= 150 && !evidenceAfter(room, amount)) {
    const unit = usualUnit(room, 'pressure', amount.value) ?? 'bar';
    return { value: amount.value, unit, dimension: 'pressure', why: 'where a pump cuts in or out' };
  }
  const gauge = ON_A_GAUGE.startingAt(room.tokens, amount.to);
  if (gauge) {
    const known = (room.context.knownFigures ?? []).findLast(({ unit: one }) =>
      /^(?:psi|bar|kPa)$/.test(one),
    );
    const unit = known?.unit ?? usualUnit(room, 'pressure', amount.value) ?? 'bar';
    return { value: amount.value, unit, dimension: 'pressure', why: 'read off a gauge of pressure' };
  }
  if (!subject || amount.value > 150 || evidenceAfter(room, amount)) return undefined;
  const psi = amount.value > 8;
  return {
    value: amount.value,
    unit: psi ? 'psi' : 'bar',
    dimension: 'pressure',
    why: 'how hard tyres are pumped',
  };
}

const VESSELS =
  /^(?:tank|tanks|cistern|bladder|drum|drums|barrel|barrels|bucket|buckets|sump|boiler|cylinder|bowser|jerrycan|jerrycans|butt)$/;

/** "The tank holds ninety": what goes into a vessel. */
function asContents(room: Room, amount: Amount): Meaning | undefined {
  const verb = [1, 2].find((back) =>
    /^(?:holds|held|hold|takes|took)$/.test(wordAt(room, amount.from - back)),
  );
  if (amount.number.fraction || evidenceAfter(room, amount)) return undefined;
  if (inTank(room, amount)) {
    const litres = usualUnit(room, 'volume', amount.value);
    if (litres) return { value: amount.value, unit: litres, dimension: 'volume', why: 'what is in a tank' };
  }
  if (verb === undefined) return vesselOf(room, amount);
  const subject = [1, 2, 3].some((back) => VESSELS.test(wordAt(room, amount.from - verb - back)));
  const unit = usualUnit(room, 'volume', amount.value);
  if (!subject || !unit) return undefined;
  return { value: amount.value, unit, dimension: 'volume', why: 'what a vessel holds' };
}

/** "I've got ninety in the diesel tank": so much of what the tank is for. */
function inTank(room: Room, amount: Amount): boolean {
  if (amount.value < 10 || wordAt(room, amount.to) !== 'in') return false;
  if (!/^(?:the|my|each|our)$/.test(wordAt(room, amount.to + 1))) return false;
  const at = [2, 3, 4].find((step) =>
    /^(?:tank|tanks|bladder|cistern)$/.test(wordAt(room, amount.to + step)),
  );
  return (
    at !== undefined &&
    /^(?:got|have|'ve|has|is|'s|put|only|about|left|another)$/.test(wordAt(room, amount.from - 1))
  );
}

/** Tanks of boats and vans: "the fresh tank's 90, the grey's 60". Larger bare numbers are lengths. */
function vesselOf(room: Room, amount: Amount): Meaning | undefined {
  const be = /^(?:'s|is|was)$/.test(wordAt(room, amount.from - 1))
    ? 1
    : /^(?:'s|is|was)$/.test(wordAt(room, amount.from - 2)) && wordAt(room, amount.from - 1) === 'a'
      ? 2
      : 0;
  const thing = wordAt(room, amount.from - 1 - be);
  const water = /^(?:fresh|grey|gray|black|waste|diesel|water|fuel|header|holding)$/;
  const tank = /^tanks?$/.test(thing) && water.test(wordAt(room, amount.from - 2 - be));
  const fellow = be === 1 && /^(?:fresh|grey|gray|black)$/.test(thing);
  if (be === 0 || !(tank || fellow) || amount.value < 15 || amount.value > 320) return undefined;
  const unit = usualUnit(room, 'volume', amount.value);
  return unit ? { value: amount.value, unit, dimension: 'volume', why: 'what a tank holds' } : undefined;
}

/** Where something hangs or stands to be weighed. */
const ON_THE_SCALES = new PhraseTable<true>(
  each(
    true,
    'on the scales, on the scale, on the hook, on the weighbridge, on the bathroom scales, on the luggage scales, on the crane scales, on the fish scales, on the load cell',
  ),
);

/** Words behind a number that make it a length; "each" and "a side" say nothing of what it measures. */
function sizedAfter(room: Room, amount: Amount): boolean {
  const after = evidenceAfter(room, amount);
  return after !== undefined && after.why !== SO_MUCH_EACH && after.why !== ON_A_MEASURE;
}

function asWeight(room: Room, amount: Amount, out: readonly Amount[]): Meaning | undefined {
  const weighs = [1, 2, 3].some((back) =>
    /^(?:weigh|weighs|weighed|weighing|weight)$/.test(wordAt(room, amount.from - back)),
  );
  const scale =
    speaksOf(room, 'weight', amount.from, amount.to, 12) &&
    amount.value >= 20 &&
    subjectIsPronoun(room, amount);
  const scales = ON_THE_SCALES.startingAt(room.tokens, amount.to) !== undefined;
  if ((!weighs && !scale && !scales) || sizedAfter(room, amount)) return undefined;
  const usual = out.slice(-REMEMBERED).findLast((other) => other.dimension === 'mass')?.unit;
  const unit = usual ?? (room.house === 'us' ? 'lb' : 'kg');
  return { value: amount.value, unit, dimension: 'mass', why: 'what something weighs' };
}

/** What the nearest telling word says that a bare number measures, in the unit that was said last for it. */
function asKind(
  room: Room,
  amount: Amount,
  kind: Kind | undefined,
  out: readonly Amount[],
): Meaning | undefined {
  if (!kind || sizedAfter(room, amount) || amount.number.fraction) return undefined;
  const last = out.slice(-REMEMBERED).findLast((other) => other.dimension === kind.dimension && other.unit);
  const money = kind.dimension === 'money' ? localMoney(room.region) : undefined;
  const unit =
    last?.unit && close(last.value, amount.value, 6)
      ? last.unit
      : (money ?? usualUnit(room, kind.dimension, amount.value));
  return unit ? { value: amount.value, unit, dimension: kind.dimension, why: kind.why } : undefined;
}

/** "Disc still says one oh five oh": a number that was said of something before and of nothing by length. */
function saidAgain(room: Room, amount: Amount): Meaning | undefined {
  if (amount.value < 100 || sizeNamed(room, amount)) return undefined;
  const same = (room.context.knownFigures ?? []).filter((figure) => figure.value === amount.value);
  const unit = same[same.length - 1]?.unit;
  const dimension = unit && dimensionOfUnit(unit);
  if (!unit || !dimension || same.some((figure) => figure.unit !== unit)) return undefined;
  if (/^(?:length|money|time)$/.test(dimension)) return undefined;
  return { value: amount.value, unit, dimension, why: 'the unit that the number had before' };
}

/** "The height less the top, 850": a size is named before the number in its sentence. */
function sizeNamed(room: Room, { from }: Amount): boolean {
  const sentence = room.tokens[from]?.sentence;
  for (let at = from - 1; at >= from - 8 && room.tokens[at]?.sentence === sentence; at--)
    if (/^(?:height|width|length|depth|thickness|opening|gap|diameter|radius)$/.test(wordAt(room, at)))
      return true;
  return false;
}

const SUBJECT_REACH = 5;

/** The trade nouns that stand shortly before a number, in its sentence. */
function nounsBefore(room: Room, { from }: Amount): readonly string[] {
  const nouns: string[] = [];
  const sentence = room.tokens[from]?.sentence;
  for (let k = from - 1; k >= from - SUBJECT_REACH && room.tokens[k]?.sentence === sentence; k--)
    if (isTradeNoun(wordAt(room, k))) nouns.push(singular(wordAt(room, k)));
  return nouns;
}

/** How many figures of the memo are looked back over for the same thing. */
const SAID_ABOVE = 40;

/** "The fridge pulls 4.5 amps ... With the lid shut the fridge is at 4": said of the same thing earlier in the memo. */
function saidAbove(room: Room, amount: Amount, out: readonly Amount[]): Meaning | undefined {
  if (sizedAfter(room, amount)) return undefined;
  const nouns = nounsBefore(room, amount);
  if (nouns.length === 0) return undefined;
  for (let k = out.length - 1; k >= Math.max(0, out.length - SAID_ABOVE); k--) {
    const other = out[k] as Amount;
    if (
      !other.unit ||
      !other.dimension ||
      other.unitAssumed ||
      /^(?:length|time|money|count)$/.test(other.dimension)
    )
      continue;
    if (
      !close(other.value, amount.value, 1.6) ||
      !nounsBefore(room, other).some((noun) => nouns.includes(noun))
    )
      continue;
    return {
      value: amount.value,
      unit: other.unit,
      dimension: other.dimension,
      why: 'the unit that its thing was said in above',
    };
  }
  return undefined;
}

const FIXED = /^(?:screwed|nailed|tacked|stapled|clipped|strapped|bolted|riveted|pinned|pegged|tied)$/;
const CUT =
  /^(?:cut|cutting|sawn|sawing|planed|planing|trimmed|trimming|ripped|docked|shortened|lengthened|bored|drilled|turned|filed|ground|thicknessed)$/;

/** "Screwed every two hundred", "getting cut to 120": a spacing or a size, whatever its thing was told in before. */
function cutOrSpaced(room: Room, amount: Amount): boolean {
  const before = wordAt(room, amount.from - 1);
  if (before === 'every') return !/^(?:minute|minutes|hour|hours|day|days)$/.test(wordAt(room, amount.to));
  if (before === 'at' && FIXED.test(wordAt(room, amount.from - 2))) return amount.value >= 20;
  return before === 'to' && [2, 3, 4].some((back) => CUT.test(wordAt(room, amount.from - back)));
}

/** "The saw draws 3 kW ... the saw blade's 315": another thing is named nearer than the one of the old figure. */
function ofAnother(room: Room, amount: Amount, { at, unit }: SaidBefore): boolean {
  if (at === undefined || at >= amount.from || unit === 'mm2') return false;
  for (let k = at + 1; k < amount.from; k++)
    // "The winch stays at three hundred" is no rigging.
    if (isTradeNoun(wordAt(room, k)) && /^(?:'s|is|are|was|were|,|:)$/.test(wordAt(room, k + 1))) return true;
  return false;
}

/** "I've got sixty five head bolts": so many of them, whatever their torque is. */
function counts(room: Room, { value, from, to, number }: Amount): boolean {
  if (!Number.isInteger(value) || number.fraction) return false;
  const isHad = [1, 2].some((back) =>
    /^(?:have|'ve|got|has|bought|need|needs|want|ordered)$/.test(wordAt(room, from - back)),
  );
  return (
    isHad && [0, 1].some((step) => isTradeNoun(wordAt(room, to + step)) && isPlural(wordAt(room, to + step)))
  );
}

/** A measure other than a length, told by its thing, by words about it or by what was said before. */
export function otherKind(
  room: Room,
  amount: Amount,
  evidence: Evidence,
  out: readonly Amount[],
): Meaning | undefined {
  const heat = asHeat(room, amount, out);
  if (heat) return heat;
  const tape = amount.number.fraction && TAPE_PARTS.has(amount.number.denominator ?? 0);
  if (cutOrSpaced(room, amount)) return undefined;
  const dried = evidence.grade === 'none' ? undefined : driedTo(room, amount, out);
  if (dried) return dried;
  const before = evidence.grade === 'none' || tape ? undefined : saidBefore(room, amount);
  const thing = before && dimensionOfUnit(before.unit);
  if (before && thing && thing !== 'length' && !ofAnother(room, amount, before) && !counts(room, amount)) {
    return { ...before, dimension: thing, why: 'the unit that its thing was said in before' };
  }
  const above = evidence.grade === 'none' || tape ? undefined : saidAbove(room, amount, out);
  if (above) return above;
  const again = evidence.grade === 'none' || tape ? undefined : saidAgain(room, amount);
  if (again) return again;
  return (
    asPrice(room, amount) ??
    asKind(room, amount, kindOf(room, amount), out) ??
    asDampness(room, amount) ??
    asContents(room, amount) ??
    asPressure(room, amount) ??
    asTurning(room, amount, out) ??
    asWeight(room, amount, out) ??
    wiring(room, amount, out)
  );
}

/** "The oak's at nineteen on the meter": moisture, as a meter shows it. */
function asDampness(room: Room, amount: Amount): Meaning | undefined {
  const meter = [1, 2, 3].some(
    (step) => wordAt(room, amount.to + step) === 'meter' && wordAt(room, amount.to) === 'on',
  );
  if (!meter || amount.value < 4 || amount.value > 60 || amount.number.fraction) return undefined;
  const isWood = woodBefore(room, amount);
  return isWood
    ? { value: amount.value, unit: '%', dimension: 'ratio', why: 'read off a moisture meter' }
    : undefined;
}

const DRIES = /^(?:down|got|at|reading|reads|read|still|dried|drying|come|been|hit|gone)$/;
const SHAPED =
  /^(?:planed|thick|thicknessed|cut|sawn|ripped|sanded|milled|wide|long|high|deep|mil|millimetres|inches|inch)$/;
/** How far a reading of wood is from the last one told in percent. */
const DRIES_BY = 1.7;

/** "The ribs are down to seventeen" where wood was told in percent before: how wet it is now. */
function driedTo(room: Room, amount: Amount, out: readonly Amount[]): Meaning | undefined {
  const { value, number } = amount;
  if (number.fraction || value < 6 || value > 40 || evidenceAfter(room, amount)) return undefined;
  if (!/^(?:|[.,;:!?]|and|so|now|but|today|already)$/.test(wordAt(room, amount.to))) return undefined;
  const told = [...(room.context.knownFigures ?? []), ...out.slice(-REMEMBERED)].filter(
    (other) => other.unit === '%' && other.value >= 6 && other.value <= 40,
  );
  if (!told.some((other) => close(other.value, value, DRIES_BY))) return undefined;
  const sentence = room.tokens[amount.from]?.sentence;
  const before = [1, 2, 3, 4, 5, 6]
    .filter((back) => room.tokens[amount.from - back]?.sentence === sentence)
    .map((back) => wordAt(room, amount.from - back));
  if (!before.slice(0, 3).some((word) => DRIES.test(word)) || before.some((word) => SHAPED.test(word)))
    return undefined;
  const isOfWood =
    woodBefore(room, amount) ||
    before.some((word) => /^(?:ribs?|frames?|boards?|planks?|logs?|sleepers?|posts?)$/.test(word));
  return isOfWood ? { value, unit: '%', dimension: 'ratio', why: 'how wet wood still is' } : undefined;
}

/** Whether wood is named shortly before the number. */
function woodBefore(room: Room, amount: Amount): boolean {
  return [...Array(8).keys()].some((back) => {
    const kinds = kindsOf([wordAt(room, amount.from - 1 - back)]);
    return kinds.has('timber') || kinds.has('sheet') || kinds.has('joist') || kinds.has('material');
  });
}

const DEALS = new PhraseTable<true>(
  each(
    true,
    'he asked, she asked, they asked, he wants, asking, i offered, i gave him, i gave her, i gave them, gave him, gave her, gave them, beat him down to, beat her down to, beat them down to, knocked him down to, knocked it down to, talked him down to, haggled it down to, got it for, got them for, had it for, let it go for, let them go for, went for, i owe him, i owe her',
  ),
);

/** "He asked 90, I gave him 70.": what two people settle on. */
function asDeal(room: Room, amount: Amount): Meaning | undefined {
  if (amount.value < 3 || amount.number.fraction || !DEALS.endingAt(room.tokens, amount.from))
    return undefined;
  if (!/^(?:|[.,;:!?]|for|and|but|so|i|he|she|they|we|all|cash)$/.test(wordAt(room, amount.to)))
    return undefined;
  return {
    value: amount.value,
    unit: localMoney(room.region),
    dimension: 'money',
    why: 'what was asked or given',
  };
}

const COST = /^(?:cost|costs|costing|spent|spend|spending|bill|invoice|damage|priced|pricing|quoted)$/;
const BOUGHT_FOR = /^(?:bought|paid|cost|costs|priced|charged|charges|quoted|bill|invoice|spent)$/;
const WHOLE_SUM = new PhraseTable<true>(
  each(true, 'all told, altogether, in total, in all, all in, the lot, for the lot, all up'),
);

/** "He asked what it's costing. Three eighty on oak.", "bought and paid for, 2,180 all in": money told of a deal. */
function asCost(room: Room, amount: Amount): boolean {
  if (amount.value < 5 || amount.number.fraction || amount.group) return false;
  const sentence = room.tokens[amount.from]?.sentence ?? 0;
  const opens = room.tokens[amount.from - 1]?.sentence !== sentence;
  if (opens && !sizedAfter(room, amount)) {
    for (let at = amount.from - 1; room.tokens[at]?.sentence === sentence - 1 && at > amount.from - 9; at--)
      if (COST.test(wordAt(room, at))) return true;
  }
  return asWholeSum(room, amount);
}

/** "Bought and paid for, 2,180 all in", "three lengths bought, 21,000 altogether". */
function asWholeSum(room: Room, amount: Amount): boolean {
  const sentence = room.tokens[amount.from]?.sentence;
  if (
    amount.group ||
    amount.number.fraction ||
    amount.value < 20 ||
    !WHOLE_SUM.startingAt(room.tokens, amount.to)
  )
    return false;
  for (let at = amount.from - 1; room.tokens[at]?.sentence === sentence && at > amount.from - 14; at--)
    if (BOUGHT_FOR.test(wordAt(room, at))) return true;
  return false;
}

const ANGLES: ReadonlySet<number> = new Set([11.25, 15, 22, 22.5, 30, 45, 60, 67.5, 87.5, 90, 135]);

/** "A two fifty fuse", "the compressor cuts out at 120", "no bend over 45": told by the word beside the number. */
export function asBeside(room: Room, amount: Amount): Meaning | undefined {
  const { value } = amount;
  if (
    /^(?:fuse|fuses|breaker|breakers|mcb|rcd)$/.test(wordAt(room, amount.to)) &&
    value >= 3 &&
    value <= 800 &&
    Number.isInteger(value) &&
    !isFewOf(room, amount)
  )
    return { value, unit: 'A', dimension: 'current', why: 'a fuse behind it' };
  const compressed = ['compressor', 'accumulator'].some((word) => nearWord(room, amount, word));
  if (
    compressed &&
    SWITCHES.endingAt(room.tokens, amount.from) &&
    value >= 2 &&
    value <= 200 &&
    !evidenceAfter(room, amount)
  )
    return {
      value,
      unit: value > 15 ? 'psi' : 'bar',
      dimension: 'pressure',
      why: 'where a compressor cuts in or out',
    };
  const bent = [1, 2, 3, 4].some(
    (back) =>
      room.tokens[amount.from - back]?.sentence === room.tokens[amount.from]?.sentence &&
      /^(?:bend|bends|elbow|elbows|mitre|mitres|miter|miters|bevel|bevels|crank)$/.test(
        wordAt(room, amount.from - back),
      ),
  );
  const bounded = /^(?:over|under|above|below|at|of|to|than)$/.test(wordAt(room, amount.from - 1));
  if (
    bent &&
    bounded &&
    ANGLES.has(value) &&
    !evidenceAfter(room, amount) &&
    /^(?:|[.,;!?]|and|or|so|but)$/.test(wordAt(room, amount.to))
  )
    return { value, unit: 'deg', dimension: 'angle', why: 'how far something is bent' };
  return undefined;
}

/** "Three fuses", "ten breakers" count. */
const isFewOf = (room: Room, amount: Amount): boolean =>
  /s$/.test(wordAt(room, amount.to)) && amount.value < 13;

/** The price of all that was bought, wherever the number stands. */
export function asPaidInAll(room: Room, amount: Amount): Meaning | undefined {
  if (!asWholeSum(room, amount)) return undefined;
  return {
    value: amount.value,
    unit: localMoney(room.region),
    dimension: 'money',
    why: 'what was paid in all',
  };
}

function asPrice(room: Room, amount: Amount): Meaning | undefined {
  const deal = asDeal(room, amount);
  if (deal) return deal;
  if (asCost(room, amount))
    return {
      value: amount.value,
      unit: localMoney(room.region),
      dimension: 'money',
      why: 'what was asked or paid',
    };
  if (!PRICED_BY.startingAt(room.tokens, amount.to) || amount.number.fraction) return undefined;
  const why = 'what goods are priced by';
  return { value: amount.value, unit: localMoney(room.region), dimension: 'money', why };
}

const CIRCUITS = /^(?:socket|sockets|lights|lighting|ring|cooker|shower|spur|hob|immersion|radial)$/;
/** Thicker ones are never left to a bare number. */
const isConductor = (value: number) => value >= 1 && value <= 70 && CONDUCTOR_SIZES.has(value);

/** "the heater gets its own run in four": after a cable's size, the next one needs no unit. */
function wiring(room: Room, amount: Amount, out: readonly Amount[]): Meaning | undefined {
  const cable = out
    .slice(-REMEMBERED)
    .some(
      (other) =>
        other.unit === 'mm2' &&
        Math.abs((room.tokens[other.from]?.sentence ?? 0) - (room.tokens[amount.from]?.sentence ?? 0)) <= 1,
    );
  const circuit =
    /^(?:on|in)$/.test(wordAt(room, amount.from - 1)) &&
    CIRCUITS.test(wordAt(room, amount.from - 2)) &&
    (cable || !Number.isInteger(amount.value));
  if (circuit && isConductor(amount.value) && !evidenceAfter(room, amount))
    return { value: amount.value, unit: 'mm2', dimension: 'area', why: 'the cable of a circuit' };
  const said = wordAt(room, amount.from - 1) === 'in' || !Number.isInteger(amount.value);
  if (!cable || !isConductor(amount.value) || !said) return undefined;
  return { value: amount.value, unit: 'mm2', dimension: 'area', why: 'the size of another cable' };
}
