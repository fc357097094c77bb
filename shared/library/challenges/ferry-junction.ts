import { ahead, bend } from '../pen.ts';
import { bareSheet, berth, both, design, type Recipe, rectangle } from '../recipe.ts';

export const ferryJunction: Recipe = {
  key: 'ferry-junction',
  topic: 13,
  title: 'The ferry junction',
  sentence: 'Take the left way at the ferry junction.',
  mirrored: 'Take the right way at the ferry junction.',
  play: 'fill-in',
  note: {
    teaches: 'Without a mark the robot chooses by itself. A mark before the junction decides.',
    mistakes:
      'The mark stands so close to the junction that the choice comes too late, or it is turned round.',
    ask: 'Which side of the mark does the robot meet first?',
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
