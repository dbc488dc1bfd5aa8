/** Published test sets in one shape. Each set's SOURCE.md names its origin, commit and licence. */
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Atom, type OutsideKind, seconds, theirAtom } from './units.ts';

/** What a sentence is said to hold; any of the keys will do ("degrees" may be an angle or a temperature). */
export interface Gold {
  readonly kind: OutsideKind;
  readonly keys: readonly string[];
}

export interface OutsideCase {
  readonly set: string;
  readonly id: string;
  readonly text: string;
  /** Kinds that the set labels in this sentence; what is found of other kinds counts for nothing. */
  readonly kinds: readonly OutsideKind[];
  readonly gold: readonly Gold[];
  readonly region?: string;
  /** When it was said, for dates. */
  readonly recordedAt?: string;
}

const MEASURES: readonly OutsideKind[] = ['length', 'area', 'volume', 'mass', 'angle', 'speed'];
const EVERYTHING: readonly OutsideKind[] = [...MEASURES, 'temperature', 'power', 'time', 'money', 'ratio'];
/** The sets are American unless they say otherwise. */
const REGION = 'US';

const goldOf = (found: Atom | undefined): readonly Gold[] =>
  found ? [{ kind: found.kind, keys: [found.key] }] : [];

function text(folder: string, name: string): string {
  const file = join(folder, name);
  return existsSync(file) ? readFileSync(file, 'utf8').replace(/^\uFEFF/, '') : '';
}

const lines = (folder: string, name: string) => text(folder, name).split('\n').filter(Boolean);
const json = <T>(folder: string, name: string): readonly T[] => JSON.parse(text(folder, name) || '[]');

interface Marked {
  readonly id: string;
  readonly text: string;
  readonly gold: readonly { readonly value: number; readonly unit: string }[];
}

function marked(folder: string, name: string, set: string, kindsOf: (id: string) => readonly OutsideKind[]) {
  return lines(folder, name).map((line): OutsideCase => {
    const { id, text: said, gold } = JSON.parse(line) as Marked;
    const kinds = kindsOf(id);
    const undecided = kinds.includes('temperature') ? 'temperature' : 'angle';
    return {
      set,
      id,
      text: said,
      kinds,
      region: REGION,
      gold: gold.flatMap(({ value, unit }) =>
        unit === 'Degree'
          ? [{ kind: undecided, keys: ['deg', 'degC', 'degF'].map((each) => `${value} ${each}`) } as const]
          : goldOf(theirAtom(value, unit)),
      ),
    };
  });
}

interface Spec {
  readonly Input: string;
  readonly Context?: { readonly ReferenceDateTime?: string };
  readonly Results: readonly {
    readonly TypeName?: string;
    readonly Type?: string;
    readonly Value?: { readonly FutureResolution?: { readonly duration?: string } };
    readonly Resolution?: {
      readonly value?: string;
      readonly unit?: string;
      readonly values?: readonly { readonly type?: string; readonly value?: string }[];
    };
  }[];
}

const recognizers = (folder: string, name: string): readonly Spec[] =>
  json<Spec>(folder, `recognizers-text-specs/${name}.json`);
const SPECS = 'recognizers-text specs';

function money(folder: string): readonly OutsideCase[] {
  return recognizers(folder, 'NumberWithUnit/English/CurrencyModel').map(({ Input, Results }, k) => ({
    set: SPECS,
    id: `CurrencyModel-${k}`,
    text: Input,
    kinds: ['money'],
    region: REGION,
    gold: Results.flatMap(({ Resolution: { value, unit } = {} }) =>
      // A currency named without an amount has no value.
      value ? goldOf(theirAtom(Number(value), unit === 'Pound' ? 'Pound sterling' : (unit ?? ''))) : [],
    ),
  }));
}

function percents(folder: string): readonly OutsideCase[] {
  return recognizers(folder, 'Number/English/PercentModel').map(({ Input, Results }, k) => ({
    set: SPECS,
    id: `PercentModel-${k}`,
    text: Input,
    kinds: ['ratio'],
    region: REGION,
    gold: Results.flatMap(({ Resolution: { value = '' } = {} }) =>
      /^-?[\d.]+%$/.test(value) ? goldOf(theirAtom(Number.parseFloat(value), '%')) : [],
    ),
  }));
}

function durations(folder: string): readonly OutsideCase[] {
  const parser = recognizers(folder, 'DateTime/English/DurationParser').map(({ Input, Results }, k) => ({
    id: `DurationParser-${k}`,
    text: Input,
    values: Results.map(({ Value }) => Value?.FutureResolution?.duration),
  }));
  const model = recognizers(folder, 'DateTime/English/DateTimeModel').flatMap(({ Input, Results }, k) =>
    Results.length > 0 && Results.every(({ TypeName }) => TypeName === 'datetimeV2.duration')
      ? [
          {
            id: `DateTimeModel-${k}`,
            text: Input,
            values: Results.map(({ Resolution }) => Resolution?.values?.[0]?.value),
          },
        ]
      : [],
  );
  const seen = new Set<string>();
  return [...parser, ...model]
    .filter(({ text: said }) => !seen.has(said) && seen.add(said))
    .map(({ id, text: said, values }) => ({
      set: SPECS,
      id,
      text: said,
      kinds: ['time'],
      region: REGION,
      gold: values.flatMap((value) => (Number(value) > 0 ? goldOf(seconds(Number(value))) : [])),
    }));
}

/** Sentences that hold nothing but days and instants: ranges and repeats are other kinds. */
function dates(folder: string, name: string, region: string): readonly OutsideCase[] {
  return recognizers(folder, name).flatMap(({ Input, Context, Results }, k) => {
    const ofDays = Results.every(({ TypeName }) => /\.date(?:time)?$/.test(TypeName ?? ''));
    if (!ofDays || !Context?.ReferenceDateTime) return [];
    return [
      {
        set: SPECS,
        id: `${region === 'GB' ? 'EnglishOthers-' : ''}DateTimeModel-${k}`,
        text: Input,
        kinds: ['date'] as const,
        region,
        recordedAt: Context.ReferenceDateTime,
        gold: Results.map(({ Resolution }) => ({
          kind: 'date' as const,
          keys: [...new Set((Resolution?.values ?? []).map(({ value = '' }) => value.slice(0, 10)))],
        })),
      },
    ];
  });
}

const SIGNED_MONEY = /^([$£€])(\d[\d.]*)(?: (thousand|million|billion))?$/;
const SCALE: Readonly<Record<string, number>> = { thousand: 1e3, million: 1e6, billion: 1e9 };

function spokenMoney(folder: string): readonly OutsideCase[] {
  return lines(folder, 'nemo-itn-en/itn/test_cases_money.txt').flatMap((line, k) => {
    const [said = '', written = ''] = line.split('~');
    const found = SIGNED_MONEY.exec(written.trim());
    if (!found) return [];
    const [, sign = '', digits, scale = ''] = found;
    const gold = goldOf(theirAtom(Number(digits) * (SCALE[scale] ?? 1), sign));
    return [
      { set: 'nemo itn', id: `money-${k}`, text: said, kinds: ['money'] as const, region: REGION, gold },
    ];
  });
}

const MONTHS = 'january february march april may june july august september october november december'.split(
  ' ',
);
const FULL_DATE = /^(?:(?<month>[a-z]+) (?<day>\d+)|(?<day2>\d+) (?<month2>[a-z]+)) (?<year>\d{4})$/;

function spokenDates(folder: string): readonly OutsideCase[] {
  return lines(folder, 'nemo-itn-en/itn/test_cases_date.txt').flatMap((line, k) => {
    const [said = '', written = ''] = line.split('~');
    const { month, month2, day, day2, year } = FULL_DATE.exec(written.trim())?.groups ?? {};
    const at = MONTHS.indexOf(month ?? month2 ?? '');
    if (at < 0) return [];
    const iso = `${year}-${String(at + 1).padStart(2, '0')}-${(day ?? day2 ?? '').padStart(2, '0')}`;
    const gold = [{ kind: 'date' as const, keys: [iso] }];
    const recordedAt = '2016-11-07T00:00:00';
    return [
      {
        set: 'nemo itn',
        id: `date-${k}`,
        text: said,
        kinds: ['date'] as const,
        region: REGION,
        recordedAt,
        gold,
      },
    ];
  });
}

/** Ages are labelled by the set; to us they are decoys: no figure of a build may come of them. */
export function ageDecoys(folder: string): readonly string[] {
  return recognizers(folder, 'NumberWithUnit/English/AgeModel').map(({ Input }) => Input);
}

/** Every sentence of the sets in `folder`; none when the folder holds no set. */
export function outsideCases(folder: string): readonly OutsideCase[] {
  return [
    ...marked(folder, 'recognizers-text-specs/units-gold.jsonl', SPECS, (id) =>
      id.startsWith('Temperature') ? ['temperature'] : MEASURES,
    ),
    ...money(folder),
    ...percents(folder),
    ...durations(folder),
    ...dates(folder, 'DateTime/English/DateTimeModel', 'US'),
    ...dates(folder, 'DateTime/EnglishOthers/DateTimeModel', 'GB'),
    ...marked(folder, 'quantulum3-tests/units-gold.jsonl', 'quantulum3 tests', () => EVERYTHING),
    ...marked(folder, 'nemo-itn-en/measure-gold.jsonl', 'nemo itn', () => EVERYTHING),
    ...spokenMoney(folder),
    ...spokenDates(folder),
  ];
}
