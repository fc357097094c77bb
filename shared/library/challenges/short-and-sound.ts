import { ahead, bend } from '../pen.ts';
import { bareSheet, berth, both, design, polygon, type Recipe } from '../recipe.ts';

export const shortAndSound: Recipe = {
  key: 'short-and-sound',
  topic: 5,
  title: { en: 'Short and sound', es: 'Corto y seguro' },
  sentence: {
    en: 'Round the sandbank with less than 30 cm of line.',
    es: 'Rodea el banco de arena con menos de 30 cm de línea.',
  },
  play: 'draw',
  note: {
    teaches: {
      en: 'Two wishes pull in two directions: the shortest line is not the soundest one.',
      es: 'Dos deseos tiran en dos sentidos: la línea más corta no es la más segura.',
    },
    mistakes: {
      en: 'The curves get so tight, or come so near to the sandbank, that some robots don’t make it.',
      es: 'Las curvas son tan cerradas, o pasan tan cerca del banco de arena, que algunos robots no lo logran.',
    },
    ask: {
      en: 'Which side is shorter, and how much line could you still give away?',
      es: '¿Qué lado es más corto, y cuánta línea podrías ahorrar aún?',
    },
  },
  seconds: 60,
  goals: [
    {
      id: 'clear',
      formula: both({ kind: 'finish' }, { kind: 'keep-out' }),
      must: true,
      weight: 2,
    },
    {
      id: 'short',
      formula: both({ kind: 'finish' }, { kind: 'ink-limit', most: 300 }),
      must: true,
      weight: 3,
    },
  ],
  cook: ({ line }) => ({
    sheet: {
      ...bareSheet(berth('Boathouse', 46, 120, 0), berth('Lighthouse', 251, 120, 180)),
      keepOut: [
        polygon('sandbank', 'Sandbank', [
          [96, 104],
          [100, 76],
          [124, 54],
          [158, 48],
          [188, 58],
          [203, 84],
          [201, 114],
          [180, 136],
          [148, 141],
          [116, 134],
        ]),
      ],
    },
    model: design(
      [
        line({ id: 'way', from: { x: 42, y: 120 }, heading: 0 }, [
          ahead(14),
          bend(60, 25),
          ahead(19.6),
          bend(-60, 25),
          ahead(78.8),
          bend(-60, 25),
          ahead(19.6),
          bend(60, 25),
          ahead(14),
        ]),
      ],
      [],
    ),
  }),
};
