import { ahead, bend } from '../pen.ts';
import { bareSheet, berth, design, type Recipe } from '../recipe.ts';

export const firstLine: Recipe = {
  key: 'first-line',
  topic: 2,
  title: { en: 'The first line', es: 'La primera línea' },
  sentence: {
    en: 'Bring the robot from the boathouse to the lighthouse.',
    es: 'Lleva el robot del cobertizo al faro.',
  },
  play: 'draw',
  note: {
    teaches: {
      en: 'A robot follows ink and nothing else: a line of the right width has to lead from berth to berth.',
      es: 'Un robot sigue la tinta y nada más: una línea del ancho justo tiene que ir de amarre a amarre.',
    },
    mistakes: {
      en: 'The line stops short of the berth, begins beside the robot, or runs along the edge of the paper.',
      es: 'La línea no llega al amarre, empieza al lado del robot o va por el borde del papel.',
    },
    ask: {
      en: 'Where exactly does the robot start to see your line?',
      es: '¿Dónde empieza exactamente el robot a ver tu línea?',
    },
  },
  seconds: 60,
  goals: [{ id: 'finish', formula: { kind: 'finish' }, must: true, weight: 1 }],
  cook: ({ line }) => ({
    sheet: bareSheet(berth('Boathouse', 50, 158, 0), berth('Lighthouse', 247, 52, 180)),
    model: design(
      [
        line({ id: 'way', from: { x: 42, y: 158 }, heading: 0 }, [
          ahead(66.5),
          bend(-90, 40),
          ahead(26),
          bend(90, 40),
          ahead(68.5),
        ]),
      ],
      [],
    ),
  }),
};
