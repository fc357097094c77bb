import { ahead, bend } from '../pen.ts';
import { bareSheet, berth, type Recipe, rectangle } from '../recipe.ts';

export const twoTravellers: Recipe = {
  key: 'two-travellers',
  topic: 8,
  title: { en: 'Two travellers', es: 'Dos viajeros' },
  sentence: {
    en: 'Two travellers meet this mark. What does each do?',
    es: 'Dos viajeros encuentran esta marca. ¿Qué hace cada uno?',
  },
  play: 'predict',
  note: {
    teaches: {
      en: 'One mark has two meanings: which one holds depends on the band that is met first.',
      es: 'Una marca tiene dos significados: cuál vale depende de la banda que se encuentra primero.',
    },
    mistakes: {
      en: 'The mark is read from left to right, as words are, whichever way the robot comes.',
      es: 'La marca se lee de izquierda a derecha, como las palabras, venga por donde venga el robot.',
    },
    ask: {
      en: 'Which band comes first under the sensors of this traveller?',
      es: '¿Qué banda llega primero bajo los sensores de este viajero?',
    },
  },
  seconds: 60,
  goals: [],
  starts: ['start', 'finish'],
  asks: [
    { kind: 'marks', start: 'start' },
    { kind: 'pace', start: 'start', area: 'pier' },
    { kind: 'marks', start: 'finish' },
    { kind: 'pace', start: 'finish', area: 'beach' },
  ],
  cook: ({ line, marks }) => ({
    sheet: {
      ...bareSheet(berth('Boathouse', 50, 45, 0), berth('Lighthouse', 247, 165, 180)),
      areas: [rectangle('beach', 'Beach', 72, 30, 122, 76), rectangle('pier', 'Pier', 175, 134, 225, 180)],
      given: {
        lines: [
          line({ id: 'way', from: { x: 42, y: 45 }, heading: 0 }, [
            ahead(81.5),
            bend(90, 25),
            ahead(70),
            bend(-90, 25),
            ahead(81.5),
          ]),
        ],
        marks: marks([{ id: 'mark', line: 'way', at: 150.27, action: 'faster', back: 'slower' }]),
      },
    },
  }),
};
