import { ahead, bend } from '../pen.ts';
import { bareSheet, berth, both, design, type Recipe, rectangle } from '../recipe.ts';

const WAITED = { kind: 'act-in', act: 'wait', area: 'landing' } as const;

export const waitAtTheLanding: Recipe = {
  key: 'wait-at-the-landing',
  topic: 21,
  title: { en: 'Wait at the landing', es: 'Espera en el embarcadero' },
  sentence: { en: 'Wait at the ferry landing, then go on.', es: 'Espera en el embarcadero y luego sigue.' },
  play: 'fill-in',
  note: {
    teaches: {
      en: 'An action happens at a place. Which place that is follows from the mark, the pace and a little time.',
      es: 'Una acción ocurre en un sitio. Cuál es depende de la marca, del paso y de un poco de tiempo.',
    },
    mistakes: {
      en: 'The mark is put on the landing, so that the robot waits when it is past it.',
      es: 'La marca se pone en el embarcadero, así que el robot espera cuando ya lo ha pasado.',
    },
    ask: {
      en: 'Where would the robot wait if it came along on tiptoe?',
      es: '¿Dónde esperaría el robot si viniera de puntillas?',
    },
  },
  seconds: 60,
  goals: [
    { id: 'wait', formula: WAITED, must: true, weight: 3 },
    { id: 'finish', formula: both(WAITED, { kind: 'finish' }), must: true, weight: 2 },
    { id: 'marks', formula: both(WAITED, { kind: 'mark-limit', most: 1 }), must: false, weight: 1 },
  ],
  cook: ({ line, marks }) => ({
    sheet: {
      ...bareSheet(berth('Boathouse', 52, 150, -90), berth('Lighthouse', 245, 150, -90)),
      areas: [rectangle('landing', 'Ferry landing', 148, 34, 206, 90)],
      given: {
        lines: [
          line({ id: 'way', from: { x: 52, y: 158 }, heading: -90 }, [
            ahead(63),
            bend(90, 40),
            ahead(113),
            bend(90, 40),
            ahead(63),
          ]),
        ],
        marks: [],
      },
    },
    model: design([], marks([{ id: 'wait', line: 'way', at: 152, action: 'wait' }])),
  }),
};
