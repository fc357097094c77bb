import type { Sheet } from '../../documents/sheet.ts';
import { ahead, bend } from '../pen.ts';
import { bareSheet, berth, both, design, type Recipe, rectangle, type Tools } from '../recipe.ts';

const BRISK = { kind: 'stretches', pace: 'brisk', how: 'exactly', count: 1, length: 120 } as const;

/** Three straights, the middle one on the pier. */
export const longPierSheet = (line: Tools['line']): Sheet => ({
  ...bareSheet(berth('Boathouse', 50, 160, 0), berth('Lighthouse', 240, 50, 180)),
  areas: [rectangle('pier', 'Long pier', 74, 76, 224, 115)],
  given: {
    lines: [
      line({ id: 'way', from: { x: 42, y: 160 }, heading: 0 }, [
        ahead(180),
        bend(-180, 27.5),
        ahead(150),
        bend(180, 27.5),
        ahead(180),
      ]),
    ],
    marks: [],
  },
});

export const longPier: Recipe = {
  key: 'long-pier',
  topic: 9,
  title: { en: 'The long pier', es: 'El muelle largo' },
  sentence: {
    en: 'Be brisk on the long pier, one stretch of 12 cm or more, and steady again.',
    es: 'Ve a paso ligero por el muelle largo, en un tramo de 12 cm o más. Luego sigue a paso normal.',
  },
  play: 'fill-in',
  note: {
    teaches: {
      en: 'Two marks make a bracket: one opens a stretch, the other closes it, and each acts a little late.',
      es: 'Dos marcas hacen un paréntesis: una abre un tramo, la otra lo cierra, y cada una actúa un poco tarde.',
    },
    mistakes: {
      en: 'The stretch is measured between the marks instead of between the places where they act.',
      es: 'El tramo se mide entre las marcas y no entre los sitios donde actúan.',
    },
    ask: {
      en: 'Where does the brisk stretch really begin and end?',
      es: '¿Dónde empieza y acaba de verdad el tramo a paso ligero?',
    },
  },
  seconds: 60,
  goals: [
    { id: 'brisk', formula: BRISK, must: true, weight: 6 },
    { id: 'steady', formula: both(BRISK, { kind: 'pace-at-end', pace: 'steady' }), must: true, weight: 3 },
    { id: 'finish', formula: { kind: 'finish' }, must: true, weight: 1 },
  ],
  cook: ({ line, marks }) => ({
    sheet: longPierSheet(line),
    model: design(
      [],
      marks([
        { id: 'faster', line: 'way', at: 138, action: 'faster' },
        { id: 'slower', line: 'way', at: 340, action: 'slower' },
      ]),
    ),
  }),
};
