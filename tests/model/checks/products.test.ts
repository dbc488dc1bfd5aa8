/** Whether two names may mean one product, or one thing that it is put on. */
import { expect, test } from 'vitest';
import { isSameThing, mayBeSame, productOfCheck } from '../../../src/model/checks/products.ts';

test.each([
  ['primer', 'primer', true],
  ['primer', 'grey primer', true],
  ['grey primer', 'primer', true],
  ['grey primer', 'white primer', false],
  ['thick grey primer', 'grey primer', true],
  ['primer', 'varnish', false],
  ['epoxy', 'resin', true],
  ['slow epoxy', 'casting resin', true],
  ['glue', 'adhesive', true],
  ['sealant', 'mastic', true],
  ['sealer', 'caulk', true],
  ['concrete', 'slab', true],
  ['epoxy', 'glue', false],
  ['primer coat', 'primer', false],
  ['', 'primer', true],
  ['primer', '', true],
])('"%s" and "%s" may be one product: %s', (one, other, answer) => {
  expect(mayBeSame(one, other)).toBe(answer);
});

test.each([
  ['deck', 'deck', true],
  ['deck', 'aft deck', true],
  ['aft deck', 'deck', true],
  ['port side', 'starboard side', false],
  ['deck', 'deck beam', false],
  ['aft deck beam', 'aft beam', true],
  ['hull', 'deck', false],
])('"%s" and "%s" may be one thing: %s', (one, other, answer) => {
  expect(isSameThing(one, other)).toBe(answer);
});

test.each([
  [[], undefined],
  [[{ input: 'time', expression: '4 h' }], undefined],
  [[{ input: 'time', expression: '4 h', of: 'primer' }], 'primer'],
  [
    [
      { input: 'time', expression: '4 h' },
      { input: 'most', expression: '9 h', of: 'primer' },
      { input: 'least', expression: '1 h', of: 'varnish' },
    ],
    'primer',
  ],
])('%# of the first input that names one', (inputs, product) => {
  expect(productOfCheck({ inputs })).toBe(product);
});
