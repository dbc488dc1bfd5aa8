/**
 * Reads how much a run of cable may lose: "ten amps, six metres there and back at twelve volts, and I don't want to lose
 * more than three percent". It asks for the sum alone; whether a cable will do is for nobody here to say.
 */
import type { Line } from '../kept/scene.ts';
import type { CheckNote, FigureNote, SpokenInput } from '../notes.ts';
import { figuresNear, linesNear, reading } from './figure-names.ts';
import { metres } from './metres.ts';
import { type CheckScene, checkNote, figuresOf, input, type Spoken, written } from './spoken-check.ts';

const DROP = / (?:volt(?:age|s)? ?drop|drop|drops|dropping|lose|loses|losing|loss|lost) /;
/** The last word of each. */
export const tellsDrop = (word: string): boolean =>
  /^(?:(?:volt(?:age|s)?)?drop|drops|dropping|lose|loses|losing|loss|lost)$/.test(word);
const MOST =
  / (?:more than|under|below|less than|within|keep|max|maximum|at most|no worse than|inside|only|allow|allowed) /;
const BOTH_WAYS =
  / (?:there and back|round trip|both ways|out and back|return trip|to and fro|and return|total run) /;
const ONE_WAY =
  /[ ,](?:one way|one-way|each way|away|single run|from the (?:battery|batteries|panel|board|fuse ?box)|to the (?:battery|batteries|panel|board))[ ,.;]/;
/** Gauges of which the check knows the area of marine and vehicle wire, which is the smaller one. */
const SAE: ReadonlySet<string> = new Set(['10', '12', '14', '16', '18']);
const PLAIN: ReadonlySet<string> = new Set(['1', '2', '4', '6', '8']);
const GAUGES: Readonly<Record<string, string>> = {
  eighteen: '18',
  sixteen: '16',
  fourteen: '14',
  twelve: '12',
  ten: '10',
  eight: '8',
  six: '6',
  four: '4',
  two: '2',
};
const GAUGE = /\b(\d{1,2}|[a-z]+)[ -]?(?:gauge|awg)\b/i;
/** The formula, where it was named, or its constant. */
const FORMS: readonly (readonly [form: string, words: RegExp])[] = [
  [
    'us marine',
    / (?:marine|boat|boating) (?:formula|form|table|chart|constant|rule|convention|k) | k (?:of |is |= ?)?(?:10\.75|ten point seven five)(?=[ ,.;])/,
  ],
  [
    'us building',
    / (?:house wiring|building(?: wiring)?|house|mains) (?:formula|form|table|chart|constant|rule|convention|k) | k (?:of |is |= ?)?(?:12\.9|twelve point nine)(?=[ ,.;])/,
  ],
  ['iso', / (?:iso|metric) (?:formula|form|table|chart|constant|rule|convention) /],
];
/** Shorter ones are sizes of what the cable goes to. */
const SHORTEST_RUN = 0.3;

/** The loss that one sentence allows. */
export function voltageDropIn(scene: CheckScene, line: Line): readonly CheckNote[] {
  if (line.asks || !DROP.test(line.words) || / (?:if|unless|was|were) /.test(line.words)) return [];
  const share = figuresOf(scene, line, 'ratio').find(
    ({ unit, value, bound }) => unit === '%' && value <= 25 && (bound === 'at-most' || MOST.test(line.words)),
  );
  const current = figuresNear(scene, line, 'current')[0];
  const run = figuresNear(scene, line, 'length').find(isRun);
  if (!share || !(current || run)) return [];
  const area = figuresNear(scene, line, 'area').find(({ unit }) => unit === 'mm2');
  const voltage = figuresNear(scene, line, 'voltage')[0];
  const inputs: readonly SpokenInput[] = [
    ...(current ? [reading(scene, 'current', current)] : []),
    ...(run ? [reading(scene, 'length', run)] : []),
    ...(area ? [reading(scene, 'area', area)] : []),
    ...(voltage ? [reading(scene, 'voltage', voltage)] : []),
    input('allowed', written(share)),
  ];
  return [
    checkNote(scene, line, {
      check: 'voltage drop',
      inputs,
      ...optionsOf(scene, line, { run, area, voltage }),
    }),
  ];
}

const isRun = (figure: FigureNote): boolean => figure.limit === undefined && metres(figure) >= SHORTEST_RUN;

/** What was said of the wire and of how its length is counted. What was not is as the check takes it, and prints it. */
function optionsOf(scene: CheckScene, line: Line, { run, area, voltage }: Circuit): Pick<Spoken, 'options'> {
  const near = linesNear(scene, line);
  const words = near.map((one) => one.words).join(' ');
  const said = GAUGE.exec(words)?.[1]?.toLowerCase() ?? '';
  const gauge = GAUGES[said] ?? said;
  const isGauge = SAE.has(gauge) || PLAIN.has(gauge);
  const told = ` ${scene.text.slice(near[0]?.start, near.at(-1)?.end).toLowerCase()} `;
  const named = FORMS.find(([, one]) => one.test(words) || one.test(told))?.[0];
  const isCustomary = !area && (isGauge || CUSTOMARY.has(run?.unit ?? ''));
  const form = named ?? (isCustomary ? customaryForm(voltage) : undefined);
  // A house is wired with plain gauges, whose areas are larger.
  const isSae = SAE.has(gauge) && form !== 'us building';
  // "One way" may stand in the words of a line as a number.
  const has = (way: RegExp) => way.test(words) || way.test(told);
  const options = {
    ...(form === undefined ? {} : { form }),
    ...(has(BOTH_WAYS) ? {} : has(ONE_WAY) ? { 'length is': 'one way' } : {}),
    ...(isGauge && !area ? { wire: `${gauge} AWG (${isSae ? 'SAE' : 'plain'})` } : {}),
  };
  return Object.keys(options).length > 0 ? { options } : {};
}

/** What a sentence tells of the circuit, as far as it does. */
interface Circuit {
  readonly run: FigureNote | undefined;
  readonly area: FigureNote | undefined;
  readonly voltage: FigureNote | undefined;
}

const CUSTOMARY: ReadonlySet<string> = new Set(['ft', 'in', 'yd']);
/** Above it is the wiring of a house and no battery. Our own bound. */
const MOST_OF_A_BATTERY = 60;

/** Who counts in feet and gauges has tables with a constant of their own: of boats, or of house wiring. */
const customaryForm = (voltage: FigureNote | undefined): string =>
  voltage && voltage.unit === 'V' && voltage.value > MOST_OF_A_BATTERY ? 'us building' : 'us marine';
