/** Before the tests: models/ is made complete, also where `npm ci` ran without scripts. */
import { prepareWeights } from '../../scripts/weights.mjs';

export default async function setup(): Promise<void> {
  await prepareWeights();
}
