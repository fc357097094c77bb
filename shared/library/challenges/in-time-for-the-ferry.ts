import { ahead, bend } from '../pen.ts';
import { bareSheet, berth, both, design, type Recipe } from '../recipe.ts';

const WINDOW = { kind: 'time', from: 17, to: 21 } as const;

export const inTimeForTheFerry: Recipe = {
  key: 'in-time-for-the-ferry',
  topic: 19,
  title: { en: 'In time for the ferry', es: 'A tiempo para el ferri' },
  sentence: { en: 'Arrive after 17 s and before 21 s.', es: 'Llega después de 17 s y antes de 21 s.' },
  play: 'fill-in',
  note: {
    teaches: {
      en: 'Time is way over pace: how much slower, and for how far, can be worked out before trying.',
      es: 'El tiempo es camino entre paso: cuánto más despacio, y durante cuánto, se puede calcular antes de probar.',
    },
    mistakes: {
      en: 'The robot is slowed down and never made steady again, or the marks are pushed about by trial.',
      es: 'Se frena al robot y nunca vuelve al paso normal, o se mueven las marcas a ver qué pasa.',
    },
    ask: {
      en: 'How many seconds does one stretch between two bends take at tiptoe, and how many when steady?',
      es: '¿Cuántos segundos dura un tramo entre dos curvas de puntillas, y cuántos a paso normal?',
    },
  },
  seconds: 60,
  goals: [
    { id: 'time', formula: WINDOW, must: true, weight: 3 },
    { id: 'marks', formula: both(WINDOW, { kind: 'mark-limit', most: 2 }), must: false, weight: 1 },
  ],
  cook: ({ line, marks }) => ({
    sheet: {
      ...bareSheet(berth('Boathouse', 58.5, 148, -90), berth('Ferry', 238.5, 148, -90)),
      given: {
        lines: [
          line({ id: 'way', from: { x: 58.5, y: 156 }, heading: -90 }, [
            ahead(86),
            bend(180, 30),
            ahead(75),
            bend(-180, 30),
            ahead(75),
            bend(180, 30),
            ahead(86),
          ]),
        ],
        marks: [],
      },
    },
    model: design(
      [],
      marks([
        { id: 'slow', line: 'way', at: 212, action: 'tiptoe' },
        { id: 'on', line: 'way', at: 380, action: 'steady' },
      ]),
    ),
  }),
};
