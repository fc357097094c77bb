import { ahead, bend } from '../pen.ts';
import { bareSheet, type Recipe, rectangle, startBerth } from '../recipe.ts';

export const oneMarkTwoJunctions: Recipe = {
  key: 'one-mark-two-junctions',
  topic: 15,
  title: 'One mark, two junctions',
  sentence: 'One mark between two junctions. Where does each traveller end?',
  play: 'predict',
  note: {
    teaches: 'From the other side left becomes right and the next junction is another one. The place stays.',
    mistakes: 'Left and right are swapped twice: once for the side of the mark, and once more for the sheet.',
    ask: 'Turn the sheet until the robot drives away from you. What does its left hand point to?',
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
