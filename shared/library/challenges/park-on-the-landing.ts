import { ahead, bend } from '../pen.ts';
import { bareSheet, berth, both, design, type Recipe, rectangle } from '../recipe.ts';

const PARKED = { kind: 'park', area: 'landing' } as const;

export const parkOnTheLanding: Recipe = {
  key: 'park-on-the-landing',
  topic: 6,
  title: { en: 'Park on the landing', es: 'Estaciona en el embarcadero' },
  sentence: { en: 'Park on the ferry landing.', es: 'Estaciona en el embarcadero.' },
  play: 'fill-in',
  note: {
    teaches: {
      en: 'A mark acts after it has been read: the robot drives on for a moment before it obeys.',
      es: 'Una marca actúa después de leerla: el robot sigue un momento antes de obedecer.',
    },
    mistakes: {
      en: 'The mark stands on the landing itself, so that the robot stops beyond it.',
      es: 'La marca está en el propio embarcadero, así que el robot se para más allá.',
    },
    ask: {
      en: 'How far does the robot drive between reading the mark and standing still?',
      es: '¿Cuánto avanza el robot desde que lee la marca hasta que se queda quieto?',
    },
  },
  seconds: 60,
  goals: [
    { id: 'park', formula: PARKED, must: true, weight: 3 },
    { id: 'marks', formula: both(PARKED, { kind: 'mark-limit', most: 1 }), must: false, weight: 1 },
  ],
  cook: ({ line, marks }) => ({
    sheet: {
      ...bareSheet(berth('Boathouse', 50, 52, 0)),
      areas: [rectangle('landing', 'Ferry landing', 112, 116, 172, 172)],
      given: {
        lines: [
          line({ id: 'way', from: { x: 42, y: 52 }, heading: 0 }, [
            ahead(160),
            bend(90, 45),
            ahead(16),
            bend(90, 45),
            ahead(165),
          ]),
        ],
        marks: [],
      },
    },
    model: design([], marks([{ id: 'park', line: 'way', at: 345, action: 'park' }])),
  }),
};
