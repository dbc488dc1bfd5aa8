/** Bare numbers that tell how fast a shaft or a machine turns. */
import { type Amount, type Room, wordAt } from '../../rules/rule.ts';
import { evidenceAfter } from './evidence.ts';
import type { Meaning } from './lengths.ts';
import { nearWord, REMEMBERED } from './neighbours.ts';

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
export function asTurning(room: Room, amount: Amount, out: readonly Amount[]): Meaning | undefined {
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
