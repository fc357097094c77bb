import { ahead, bend } from '../pen.ts';
import { bareSheet, type Recipe, rectangle, startBerth } from '../recipe.ts';

export const oneMarkTwoJunctions: Recipe = {
  key: 'one-mark-two-junctions',
  topic: 15,
  title: { en: 'One mark, two junctions', es: 'Una marca, dos cruces' },
  sentence: {
    en: 'One mark between two junctions. Where does each traveller end?',
    es: 'Una marca entre dos cruces. ¿Dónde acaba cada viajero?',
  },
  play: 'predict',
  note: {
    teaches: {
      en: 'From the other side left becomes right and the next junction is another one. The place stays.',
      es: 'Desde el otro lado la izquierda es la derecha y el próximo cruce es otro. El sitio no cambia.',
    },
    mistakes: {
      en: 'Left and right are swapped twice: once for the side of the mark, and once more for the sheet.',
      es: 'Izquierda y derecha se cambian dos veces: una por el lado de la marca y otra por la hoja.',
    },
    ask: {
      en: 'Turn the sheet until the robot drives away from you. What does its left hand point to?',
      es: 'Gira la hoja hasta que el robot se aleje de ti. ¿Qué señala su mano izquierda?',
    },
  },
  seconds: 60,
  goals: [],
  starts: ['start', 'finish'],
  asks: [
    { kind: 'marks', start: 'start' },
    { kind: 'end', start: 'start' },
    { kind: 'marks', start: 'finish' },
    { kind: 'end', start: 'finish' },
  ],
  cook: ({ line, marks }) => ({
    sheet: {
      ...bareSheet(startBerth('Boathouse', 90, 105, 0), startBerth('Ferry', 207, 105, 180)),
      areas: [
        rectangle('bakery', 'Bakery', 76, 24, 124, 58),
        rectangle('lighthouse', 'Lighthouse', 173, 24, 221, 58),
        rectangle('market', 'Fish market', 76, 152, 124, 186),
        rectangle('loft', 'Sail loft', 173, 152, 221, 186),
      ],
      given: {
        lines: [
          line({ id: 'street', from: { x: 50, y: 105 }, heading: 0 }, [ahead(197)]),
          line({ id: 'west', from: { x: 86, y: 41 }, heading: 180 }, [
            ahead(8),
            bend(-90, 28),
            ahead(72),
            bend(-90, 28),
            ahead(8),
          ]),
          line({ id: 'east', from: { x: 211, y: 41 }, heading: 0 }, [
            ahead(8),
            bend(90, 28),
            ahead(72),
            bend(90, 28),
            ahead(8),
          ]),
        ],
        marks: marks([{ id: 'mark', line: 'street', at: 93, action: 'take-left', back: 'take-right' }]),
      },
    },
  }),
};
