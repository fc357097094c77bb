import { ahead, bend } from '../pen.ts';
import { bareSheet, berth, both, design, polygon, type Recipe } from '../recipe.ts';

export const roundTheSandbank: Recipe = {
  key: 'round-the-sandbank',
  topic: 4,
  title: { en: 'Round the sandbank', es: 'Alrededor del banco de arena' },
  sentence: { en: 'Go round the sandbank without touching it.', es: 'Rodea el banco de arena sin tocarlo.' },
  play: 'draw',
  note: {
    teaches: {
      en: 'The robot is wider than its line, and it cuts curves on the inside: a line needs distance.',
      es: 'El robot es más ancho que su línea y corta las curvas por dentro: la línea necesita distancia.',
    },
    mistakes: {
      en: 'The line keeps clear of the sandbank, and a wheel does not.',
      es: 'La línea no toca el banco de arena, pero una rueda sí.',
    },
    ask: {
      en: 'Which part of the robot comes nearest to the sandbank, and where?',
      es: '¿Qué parte del robot se acerca más al banco de arena, y dónde?',
    },
  },
  seconds: 60,
  goals: [
    { id: 'finish', formula: { kind: 'finish' }, must: true, weight: 2 },
    { id: 'clear', formula: both({ kind: 'finish' }, { kind: 'keep-out' }), must: true, weight: 3 },
  ],
  cook: ({ line }) => ({
    sheet: {
      ...bareSheet(berth('Boathouse', 48, 105, 0), berth('Lighthouse', 249, 105, 180)),
      keepOut: [
        polygon('sandbank', 'Sandbank', [
          [102, 110],
          [114, 92],
          [138, 84],
          [168, 87],
          [188, 97],
          [196, 113],
          [184, 130],
          [152, 137],
          [118, 130],
        ]),
      ],
    },
    model: design(
      [
        line({ id: 'way', from: { x: 40, y: 105 }, heading: 0 }, [
          ahead(18),
          bend(-60, 30),
          ahead(14),
          bend(60, 30),
          ahead(63.07),
          bend(60, 30),
          ahead(14),
          bend(-60, 30),
          ahead(18),
        ]),
      ],
      [],
    ),
  }),
};
