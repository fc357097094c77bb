import { ahead, bend } from '../pen.ts';
import { bareSheet, berth, both, design, type Recipe, rectangle } from '../recipe.ts';

export const ferryJunction: Recipe = {
  key: 'ferry-junction',
  topic: 13,
  title: { en: 'The ferry junction', es: 'El cruce del ferri' },
  sentence: {
    en: 'Take the left way at the ferry junction.',
    es: 'En el cruce del ferri, ve por la izquierda.',
  },
  mirrored: {
    en: 'Take the right way at the ferry junction.',
    es: 'En el cruce del ferri, ve por la derecha.',
  },
  play: 'fill-in',
  note: {
    teaches: {
      en: 'Without a mark the robot chooses by itself. A mark before the junction decides.',
      es: 'Sin marca el robot elige solo. Una marca antes del cruce decide.',
    },
    mistakes: {
      en: 'The mark stands so close to the junction that the choice comes too late, or it is turned round.',
      es: 'La marca está tan cerca del cruce que la elección llega tarde, o está al revés.',
    },
    ask: {
      en: 'Which side of the mark does the robot meet first?',
      es: '¿Qué lado de la marca encuentra primero el robot?',
    },
  },
  seconds: 60,
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
      ...bareSheet(berth('Boathouse', 50, 105, 0), berth('Lighthouse', 240, 45, 180)),
      areas: [rectangle('market', 'Fish market', 224, 146, 272, 184)],
      given: {
        lines: [
          line({ id: 'way', from: { x: 42, y: 105 }, heading: 0 }, [ahead(118)]),
          line({ id: 'left', from: { x: 160, y: 105 }, heading: -90 }, [ahead(30), bend(90, 30), ahead(60)]),
          line({ id: 'right', from: { x: 160, y: 105 }, heading: 90 }, [ahead(30), bend(-90, 30), ahead(34)]),
        ],
        marks: [],
      },
    },
    model: design([], marks([{ id: 'left-mark', line: 'way', at: 55, action: 'take-left' }])),
  }),
};
