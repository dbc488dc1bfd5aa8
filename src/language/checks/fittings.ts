/** What stands out of a thing that is carried: handles, hinges, stubs. Nobody measures a lid with its handle on. */
import { figuresIn } from '../kept/scene.ts';
import { singular } from '../lexicon/trade-nouns.ts';
import type { Attribute, FigureNote, KnownFigure, SpokenInput } from '../notes.ts';
import { wordSet } from '../word-table.ts';
import { type CheckScene, input, written } from './spoken-check.ts';

const FITTINGS = wordSet(
  'handle hinge knob latch lock stub spigot catch pull fitting flange lip bracket foot castor caster wheel tap valve bolt stay strap lug tab pipe spout nozzle boss batten stud stop',
);
/** How far it stands out, by what talk measures of it; how wide it is says nothing of that. */
const STANDS_OUT: ReadonlySet<Attribute> = new Set([
  'offset',
  'thickness',
  'depth',
  'height',
  'length',
  'size',
  'other',
]);

const headOf = (name: string) => singular(name.toLowerCase().split(' ').at(-1) ?? '');

/** The fittings of a thing that talk gave a size of: in its name ("fridge handle"), or in its sentence. */
export function fittingsOf(scene: CheckScene, thing: string): readonly SpokenInput[] {
  const head = headOf(thing);
  const sizes = [...scene.ofItem.values()].flat().filter(isFitting);
  return sizes.flatMap((figure) => {
    const words = figure.item.toLowerCase().split(' ').map(singular);
    if (words.slice(0, -1).includes(head)) return [input('fittings', `${figure.item} ${figure.attribute}`)];
    if (!('span' in figure)) return [];
    const line = scene.lines.find((one) => figuresIn(scene, one).includes(figure));
    const isNamed = line?.words.split(' ').some((word) => singular(word) === head) ?? false;
    return isNamed ? [input('fittings', written(figure), figure.item)] : [];
  });
}

function isFitting(figure: FigureNote | KnownFigure): boolean {
  if (!FITTINGS.has(headOf(figure.item)) || !STANDS_OUT.has(figure.attribute) || !(figure.value > 0))
    return false;
  return 'dimension' in figure
    ? figure.dimension === 'length' && figure.limit === undefined
    : isLength(figure.unit);
}

const isLength = (unit: string) => /^(?:mm|cm|m|in|ft|thou|yd)$/.test(unit);
