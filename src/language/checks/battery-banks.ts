/** Reads what a bank of batteries has to give: "1860 watt hours a day at 12 volts, and I'll only use half of the bank". */
import type { Line } from '../kept/scene.ts';
import type { CheckNote, FigureNote } from '../notes.ts';
import { figuresNear, linesNear, reading } from './figure-names.ts';
import { type CheckScene, checkNote, figuresOf, input, written } from './spoken-check.ts';

const USED =
  / (?:use|uses|using|draw|draws|take|takes|need|needs|pull|pulls|has to (?:give|do|cover|last|run)|have to (?:give|do|cover|last|run)|must (?:give|cover|last)|got to (?:give|do|cover|last)|want|wants) /;
/** The share of the bank that is drawn. */
const HALF =
  / (?:only (?:want to )?(?:use|draw|take) (?:down to )?half|half of it|down to half|fifty percent) /;

/** The energy that one sentence wants of a bank, with its voltage. */
export function batteryBankIn(scene: CheckScene, line: Line): readonly CheckNote[] {
  const energy = figuresOf(scene, line, 'energy').find(({ unit }) => /^k?Wh$/.test(unit));
  if (!energy || line.asks || !USED.test(line.words) || / (?:if|unless) /.test(line.words)) return [];
  const voltage = figuresNear(scene, line, 'voltage')[0];
  const near = linesNear(scene, line)
    .map(({ words }) => words)
    .join(' ');
  const bank = figuresNear(scene, line, 'charge').find(({ unit }) => unit === 'Ah');
  const isBank =
    bank !== undefined || / (?:bank|batter(?:y|ies)|lithium|agms?|leisure|house bank) /.test(near);
  if (!isBank) return [];
  const share = figuresNear(scene, line, 'ratio').find(isShare);
  const half = share ? [] : HALF.test(near) ? [input('usable share', '50 %')] : [];
  const inputs = [
    input('energy', written(energy)),
    ...(voltage ? [reading(scene, 'voltage', voltage)] : []),
    ...(share ? [input('usable share', written(share))] : half),
    ...(bank ? [input('bank', written(bank))] : []),
  ];
  return [checkNote(scene, line, { check: 'battery', inputs })];
}

const isShare = ({ unit, value }: FigureNote): boolean => unit === '%' && value >= 20 && value <= 100;
