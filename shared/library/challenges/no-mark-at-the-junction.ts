import { ahead, bend } from '../pen.ts';
import { bareSheet, berth, type Recipe, rectangle } from '../recipe.ts';

const LIGHTHOUSE = { kind: 'berth', berth: 'finish' } as const;

export const noMarkAtTheJunction: Recipe = {
  key: 'no-mark-at-the-junction',
  topic: 12,
  title: 'No mark at the junction',
  sentence: 'Twenty robots reach a junction with no mark. How many see the lighthouse?',
  play: 'predict',
  note: {
    teaches:
      'Where nothing decides, the robot chooses by chance. Chance can be counted, and it has no memory.',
    mistakes: 'After four robots to the left the fifth is thought to be due on the right.',
    ask: 'Ten of twenty are to be expected. Would seven surprise you? Would none?',
  },
  seconds: 60,
  goals: [],
  asks: [
    { kind: 'end', start: 'start' },
    { kind: 'how-many', start: 'start', place: LIGHTHOUSE, of: 20 },
  ],
  cook: ({ line }) => ({
    sheet: {
      ...bareSheet(berth('Boathouse', 148.5, 158, -90), berth('Lighthouse', 63.5, 58, 90)),
      areas: [rectangle('market', 'Fish market', 208.5, 36, 258.5, 72)],
      given: {
        lines: [
          line({ id: 'way', from: { x: 148.5, y: 166 }, heading: -90 }, [ahead(66)]),
          line({ id: 'left', from: { x: 148.5, y: 100 }, heading: 180 }, [
            ahead(60),
            bend(90, 25),
            ahead(25),
          ]),
          line({ id: 'right', from: { x: 148.5, y: 100 }, heading: 0 }, [
            ahead(60),
            bend(-90, 25),
            ahead(13),
          ]),
        ],
        marks: [],
      },
    },
  }),
};
