/**
 * Reads which length is wanted as a tape in inches reads it, or in millimetres: "I need the shelf width in sixteenths",
 * "what's 1220 mil in inches", "five and three sixteenths, what's that in mil". The only question that attaches a check:
 * nobody asks it but for the sum.
 */
import { type Line, phrasesOf } from '../kept/scene.ts';
import { ATTRIBUTES, type CheckNote, type FigureNote, type SpokenInput } from '../notes.ts';
import { figuresNear, reading } from './figure-names.ts';
import {
  type CheckScene,
  checkNote,
  figuresOf,
  input,
  nameOf,
  wordOfFigure,
  written,
} from './spoken-check.ts';

const WANTED =
  / (?:what 's|what is|what are|what does|what would|what|need|needs|want|wants|give me|tell me|work out|convert|put|read|mark|turn|say|get|how much is|how many|call|comes? to|round) /;
const TO_INCHES =
  / (?:in|into|to|as|on) (?:the |a |an )?(?:nearest |closest )?(?:inches|inch|sixteenths?|16ths?|1\/16|thirty seconds?|thirty-seconds?|32nds?|feet and inches|foot and inches|imperial|fractions?|inch tape|old money|inches tape)(?: of an inch| inch)? /;
const TO_MM =
  / (?:in|into|to|as) (?:the |a )?(?:nearest )?(?:mil|mils|mm|millimetres?|millimeters?|metric|milli ?metres) /;
/** A word of each measure that is asked for. */
export const namesTape = (word: string): boolean =>
  /^(?:inch|inches|sixteenths?|16ths?|1\/16|thirty|thirty-seconds?|32nds?|imperial|fractions?|old|mils?|mm|millimet(?:re|er)s?|metric|milli)$/.test(
    word,
  );

/** What a person measures in, and what was so. */
const LEFT =
  / (?:if|unless|was|were|had|did|n't|[a-z]+n't|not|never|tape 's|drawn|dimensioned|marked|printed|comes in|came in|sold|work in|working in|works in|think in|thinking in|everything) /;

/** The length that one sentence wants in the other system. */
export function fractionsIn(scene: CheckScene, line: Line): readonly CheckNote[] {
  const inches = TO_INCHES.exec(line.words);
  const metric = inches ? null : TO_MM.exec(line.words);
  const found = inches ?? metric;
  if (!found || !WANTED.test(line.words) || LEFT.test(line.words)) return [];
  const length = lengthAsked(scene, line, found.index, inches !== null);
  if (!length) return [];
  return [
    checkNote(scene, line, {
      check: inches ? 'length in fractions' : 'fractions to millimetres',
      inputs: [length],
    }),
  ];
}

/** The length that is asked for: in the sentence, known by name, or the one that was said just before. */
function lengthAsked(
  scene: CheckScene,
  line: Line,
  until: number,
  isMetric: boolean,
): SpokenInput | undefined {
  const fits = ({ unit }: FigureNote) => /^(?:in|ft|yd)$/.test(unit) !== isMetric;
  const own = figuresOf(scene, line, 'length').filter(fits);
  const before = own.findLast((one) => (line.starts[wordOfFigure(scene, one) - line.first] ?? 0) < until);
  const said = before ?? own[0];
  if (said) return lengthRead(scene, said);
  const named = namedIn(scene, line);
  if (named !== undefined) return input('length', named);
  if (!/ (?:that|it|this|them|those) /.test(line.words)) return undefined;
  const near = figuresNear(scene, line, 'length').filter((one) => fits(one) && one.span.end <= line.start);
  const last = near.at(-1);
  return last && lengthRead(scene, last);
}

/** By its name, but for what the words of the question were taken for. */
function lengthRead(scene: CheckScene, figure: FigureNote): SpokenInput {
  const isUnit = /^(?:inch(?:es)?|mils?|mm|sixteenths?|millimetres?|metric|tape)$/i.test(figure.item);
  return isUnit ? input('length', written(figure)) : reading(scene, 'length', figure);
}

/** "The shelf width": a figure that stands, by its thing and what is measured of it. */
function namedIn(scene: CheckScene, line: Line): string | undefined {
  for (const phrase of phrasesOf(scene, line)) {
    const name = nameOf(phrase).toLowerCase();
    const words = name.split(' ');
    const attribute = ATTRIBUTES.find((one) => one === words.at(-1));
    const item = attribute ? words.slice(0, -1).join(' ') : name;
    const lengths = (scene.ofItem.get(item) ?? []).filter((one) =>
      attribute ? one.attribute === attribute : true,
    );
    if (item !== '' && attribute && lengths.length > 0) return `${item} ${attribute}`;
    if (item !== '' && lengths.length === 1) return `${item} ${lengths[0]?.attribute}`;
  }
  return undefined;
}
