import { expect, test } from 'vitest';
import { readMemo } from '../../src/language/pipeline.ts';
import { figuresSaid } from '../kit/figures-said.ts';

const OTHER_TONGUES: readonly (readonly [language: string, region: string, text: string])[] = [
  ['German', 'DE', 'Das Brett ist 82 cm breit und 24 mm dick. Der Tank hat 120 Liter.'],
  [
    'French',
    'FR',
    'Nous avons travaillé 8 heures. La porte fait 83 cm de large et le plan est à 92 cm du sol.',
  ],
  ['Spanish', 'ES', 'La puerta mide 80 cm de ancho y pesa 45 kilos. El tanque tiene 120 litros.'],
  ['Dutch', 'NL', 'De deur is 83 cm breed en kost 250 euro. Vandaag hebben we 8 uur gewerkt.'],
  ['Swedish', 'SE', 'Dörren är 83 cm bred och väger 40 kilo. Idag sågade jag 14 brädor.'],
  ['Italian', 'IT', 'La porta è larga 80 cm. Oggi abbiamo tagliato 14 assi da 40 mm.'],
  ['Polish', 'PL', 'Drzwi mają 80 cm i 2 metry, a jutro jest dzień wolny.'],
];
test.each(OTHER_TONGUES)('%s gives no figure', (_language, region, text) => {
  const { notes } = readMemo(text, { units: 'metric', region, recordedAt: '2026-05-01T12:00:00Z' });
  expect(notes.figures).toEqual([]);
});

// English of the mainland, place names and loan words stay English.
test.each([
  ['In the kitchen is the window 1,10 high', 'DE', '1.1 m'],
  ['The beam is 24 centimetre thick and lies in the wall', 'DE', '24 cm'],
  ['En suite door, 760 wide', 'GB', '760 mm'],
  ['De Witt says the mast is 9 metres', 'US', '9 m'],
  ['Le Havre next, the van is 2.4 high', 'GB', '2.4 m'],
])('"%s" (%s) is read: %s', (said, region, figures) => {
  expect(figuresSaid(said, 'metric', region)).toBe(figures);
});
