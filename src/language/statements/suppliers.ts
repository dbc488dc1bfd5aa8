/** Who makes, sells and brings goods, by the last word of what they are called. */
import { wordSet } from '../word-table.ts';

/** Those who make or sell. */
const MAKERS_AND_SELLERS = `yard boatyard merchant merchants supplier suppliers shop store stores dealer dealers chandler chandlers
  chandlery foundry mill sawmill quarry works factory firm company depot warehouse website fabricator fabricators machinist
  machinists blacksmith blacksmiths smith smithy joiner joiners glazier glaziers seller breaker breakers scrapyard wholesaler
  galvaniser galvanisers galvanizer galvanizers galvanising galvanizing welder welders blaster blasters coater coaters plater
  platers upholsterer upholsterers sailmaker sailmakers auction`;
const OTHERS =
  'people lads guy guys man bloke fella courier driver site place plumber sparky electrician counter';

const makersAndSellers = wordSet(MAKERS_AND_SELLERS);
const suppliers = wordSet(`${MAKERS_AND_SELLERS} ${OTHERS}`);

/** Whether goods are made or sold by what goes by this word, in lower case. */
export const isMakerOrSeller = (word: string): boolean => makersAndSellers.has(word);

/** The same for whoever brings goods or was asked for them: never what comes. */
export const isSupplier = (word: string): boolean => suppliers.has(word);
