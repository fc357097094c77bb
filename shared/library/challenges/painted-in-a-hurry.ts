import type { Mark } from '../../documents/design.ts';
import { ahead, bend } from '../pen.ts';
import { bareSheet, berth, both, design, type Recipe, rectangle } from '../recipe.ts';

const PARKED = { kind: 'park', area: 'landing' } as const;
const BRISK = { kind: 'stretches', pace: 'brisk', how: 'exactly', count: 1, length: 100 } as const;

export const paintedInAHurry: Recipe = {
  key: 'painted-in-a-hurry',
  topic: 11,
  title: { en: 'Painted in a hurry', es: 'Pintadas con prisa' },
  sentence: {
    en: 'Two of these three marks were painted in a hurry. Which? Mend them.',
    es: 'Dos de estas tres marcas se pintaron con prisa. ¿Cuáles? Arréglalas.',
  },
  play: 'mend',
  note: {
    teaches: {
      en: 'A robot measures bands: they have to be equally long, and no white may show between them.',
      es: 'Un robot mide las bandas: tienen que ser igual de largas y sin blanco entre ellas.',
    },
    mistakes: {
      en: 'The mark that looks worst is mended, and the one with the thin white slit is not seen.',
      es: 'Se arregla la marca que peor se ve, y no se descubre la que tiene una rendija blanca.',
    },
    ask: {
      en: 'How long is each band, and what lies between two of them?',
      es: '¿Cuánto mide cada banda, y qué hay entre dos de ellas?',
    },
  },
  seconds: 90,
  goals: [
    { id: 'brisk', formula: both(BRISK, { kind: 'pace-at-end', pace: 'steady' }), must: true, weight: 3 },
    { id: 'park', formula: PARKED, must: true, weight: 3 },
    { id: 'marks', formula: both(PARKED, { kind: 'mark-limit', most: 3 }), must: false, weight: 1 },
  ],
  cook: ({ line, marks }) => {
    const sound = marks([
      { id: 'first', line: 'way', at: 80, action: 'faster' },
      { id: 'second', line: 'way', at: 330, action: 'steady' },
      { id: 'third', line: 'way', at: 560, action: 'park' },
    ]);
    return {
      sheet: {
        ...bareSheet(berth('Boathouse', 50, 50, 0)),
        areas: [rectangle('landing', 'Ferry landing', 152, 136, 214, 178)],
        given: {
          lines: [
            line({ id: 'way', from: { x: 42, y: 50 }, heading: 0 }, [
              ahead(180),
              bend(180, 27.5),
              ahead(150),
              bend(-180, 27.5),
              ahead(180),
            ]),
          ],
          marks: [],
        },
      },
      begin: design([], sound.map(inAHurry)),
      model: design([], sound),
    };
  },
};

/** White shows between the bands of the second mark; one band of the third is more than half as long again. */
function inAHurry(mark: Mark): Mark {
  const { bands } = mark;
  if (mark.id === 'second') return { ...mark, bands: bands.map((b, i) => (i > 0 ? { ...b, gap: 1.4 } : b)) };
  if (mark.id !== 'third') return mark;
  return { ...mark, bands: bands.map((b, i) => (i === 1 ? { ...b, length: 9 } : b)) };
}
