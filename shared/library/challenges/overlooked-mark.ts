import { ahead, turn } from '../pen.ts';
import { bareSheet, berth, both, design, type Recipe, rectangle } from '../recipe.ts';

const PARKED = { kind: 'park', area: 'landing' } as const;

export const overlookedMark: Recipe = {
  key: 'overlooked-mark',
  topic: 7,
  title: { en: 'The mark that nobody reads', es: 'La marca que nadie lee' },
  sentence: {
    en: 'The robot overlooks this mark. Move it as little as you can.',
    es: 'El robot no ve esta marca. Muévela lo menos que puedas.',
  },
  play: 'mend',
  note: {
    teaches: {
      en: 'After a corner the robot needs plain straight line before it can take bands for a mark.',
      es: 'Después de una esquina el robot necesita línea recta y lisa para poder leer unas bandas como marca.',
    },
    mistakes: {
      en: 'The mark is moved so far that the robot reads it well and parks in the wrong place.',
      es: 'La marca se mueve tanto que el robot la lee bien y estaciona donde no debe.',
    },
    ask: {
      en: 'What does the robot do in the corner while the mark goes by under it?',
      es: '¿Qué hace el robot en la esquina mientras la marca pasa por debajo?',
    },
  },
  seconds: 60,
  goals: [
    { id: 'park', formula: PARKED, must: true, weight: 3 },
    { id: 'marks', formula: both(PARKED, { kind: 'mark-limit', most: 1 }), must: false, weight: 1 },
  ],
  cook: ({ line, marks }) => ({
    sheet: {
      ...bareSheet(berth('Boathouse', 62, 52, 0)),
      areas: [rectangle('landing', 'Landing', 128, 136, 172, 176)],
      given: {
        lines: [
          line({ id: 'way', from: { x: 54, y: 52 }, heading: 0 }, [
            ahead(176),
            turn(90),
            ahead(110),
            turn(90),
            ahead(176),
          ]),
        ],
        marks: [],
      },
    },
    begin: design([], marks([{ id: 'park', line: 'way', at: 300, action: 'park' }])),
    model: design([], marks([{ id: 'park', line: 'way', at: 316, action: 'park' }])),
  }),
};
