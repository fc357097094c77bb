import { ahead, bend } from '../pen.ts';
import { bareSheet, berth, both, design, type Recipe, rectangle } from '../recipe.ts';

export const railCrossing: Recipe = {
  key: 'rail-crossing',
  topic: 14,
  title: { en: 'Over the rail crossing', es: 'Por el cruce de vías' },
  sentence: { en: 'Go straight on over the rail crossing.', es: 'Sigue recto por el cruce de vías.' },
  play: 'fill-in',
  note: {
    teaches: {
      en: 'A crossing is a junction too: going straight on is one of three ways and has to be chosen.',
      es: 'Un cruce de vías es también un cruce: seguir recto es uno de tres caminos y hay que elegirlo.',
    },
    mistakes: {
      en: 'Straight on is thought to need no mark, because the line goes on straight.',
      es: 'Se cree que para ir recto no hace falta marca, porque la línea sigue recta.',
    },
    ask: {
      en: 'How many of twenty robots would cross the rails without a mark?',
      es: '¿Cuántos de veinte robots cruzarían las vías sin marca?',
    },
  },
  seconds: 60,
  goingStraightSolves: true,
  goals: [
    { id: 'finish', formula: { kind: 'finish' }, must: true, weight: 3 },
    {
      id: 'marks',
      formula: both({ kind: 'finish' }, { kind: 'mark-limit', most: 1 }),
      must: false,
      weight: 1,
    },
  ],
  cook: ({ line, marks }) => ({
    sheet: {
      ...bareSheet(berth('Boathouse', 50, 112, 0), berth('Lighthouse', 247, 112, 180)),
      areas: [
        rectangle('shed', 'Engine shed', 44, 32, 96, 66),
        rectangle('quay', 'Coal quay', 88, 152, 136, 186),
      ],
      given: {
        lines: [
          line({ id: 'way', from: { x: 42, y: 112 }, heading: 0 }, [ahead(213)]),
          line({ id: 'rails', from: { x: 84, y: 49 }, heading: 0 }, [
            ahead(50),
            bend(90, 38),
            ahead(54),
            bend(90, 28),
            ahead(20),
          ]),
        ],
        marks: [],
      },
    },
    model: design([], marks([{ id: 'on', line: 'way', at: 60, action: 'straight-on' }])),
  }),
};
