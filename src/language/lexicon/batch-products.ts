/** What is mixed and put on in batches. Our own list, common practice, no source. */
import { wordSet, wordTable } from '../word-table.ts';
import { singular } from './trade-nouns.ts';

/** Heads that name a product, singular. */
const PRODUCTS =
  wordSet(`resin epoxy polyester vinylester gelcoat flowcoat topcoat basecoat clearcoat glue adhesive pva
  cascamite sealant caulk mastic silicone polyurethane putty filler bog compound paint primer undercoat enamel emulsion
  eggshell varnish lacquer shellac stain dye preservative antifoul antifouling bondcoat concrete cement mortar screed
  grout plaster render limewash whitewash thinset bitumen hardener catalyst microcement stucco daub cob slurry levelling-compound
  tie-coat tack-coat limecoat creosote distemper`);
/** Oils and waxes are products only with the word that tells which. */
const FINISHING_OIL =
  /^(?:danish|tung|linseed|teak|decking|deck|hard-?wax|hardwax|boiled|raw|finishing|wood|osmo|beeswax)$/;

/** Words for a portion of a product: "a batch of epoxy", "the first coat of varnish". */
export const PORTIONS = wordSet(
  'batch mix pot brew coat layer tin bucket cup tub tube barrow barrowload load bag pour lot dollop wipe lick pass',
);

/** Verbs that name their product. */
const PRODUCT_OF_VERB = wordTable<string>({
  varnished: 'varnish',
  painted: 'paint',
  primed: 'primer',
  undercoated: 'undercoat',
  lacquered: 'lacquer',
  stained: 'stain',
  epoxied: 'epoxy',
  glued: 'glue',
  grouted: 'grout',
  rendered: 'render',
  plastered: 'plaster',
  skimmed: 'plaster',
  antifouled: 'antifouling',
  limewashed: 'limewash',
  gelcoated: 'gelcoat',
  concreted: 'concrete',
  screeded: 'screed',
  siliconed: 'silicone',
  creosoted: 'creosote',
});

/** Whether the name of a phrase is that of a product. */
export function isProduct(name: readonly string[]): boolean {
  const head = singular(name.at(-1) ?? '');
  if (PRODUCTS.has(head)) return true;
  return /^(?:oil|wax)$/.test(head) && name.slice(0, -1).some((word) => FINISHING_OIL.test(word));
}

/** The product that a verb of coating names: "varnished" is varnish. */
export const productOfVerb = (verb: string): string | undefined => PRODUCT_OF_VERB[verb];
