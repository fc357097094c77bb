import type { Formula } from '../../documents/formula.ts';
import { ahead } from '../pen.ts';
import { bareSheet, berth, both, design, type Recipe, rectangle } from '../recipe.ts';

const CALLS: Formula = { kind: 'gates', gates: ['market', 'bakery'], ordered: true };

export const threeCalls: Recipe = {
  key: 'three-calls',
  topic: 16,
  title: 'Three calls',
  sentence: 'Call at the fish market, then the bakery, then the lighthouse.',
  play: 'fill-in',
  note: {
    teaches: 'A plan is an order of choices: every junction on the way needs one, and each is used up once.',
    mistakes: 'One junction is forgotten, or left and right are seen from above instead of from the robot.',
    ask: 'Put your finger on the line and drive: which hand points to the bakery at this junction?',
  },
  seconds: 90,
  goals: [
    { id: 'calls', formula: CALLS, must: true, weight: 4 },
    { id: 'finish', formula: both(CALLS, { kind: 'finish' }), must: true, weight: 4 },
    {
      id: 'marks',
      formula: { kind: 'and', of: [CALLS, { kind: 'finish' }, { kind: 'mark-limit', most: 4 }] },
      must: false,
      weight: 2,
    },
  ],
  cook: ({ line, marks }) => ({
    sheet: {
      ...bareSheet(berth('Boathouse', 46, 158, 0), berth('Lighthouse', 46, 52, 0)),
      gates: [
        { id: 'market', name: { en: 'Fish market' }, a: { x: 166, y: 142 }, b: { x: 166, y: 174 } },
        { id: 'bakery', name: { en: 'Bakery' }, a: { x: 166, y: 36 }, b: { x: 166, y: 68 } },
      ],
      areas: [
        rectangle('loft', 'Sail loft', 238, 35, 282, 69),
        rectangle('quay', 'Quay', 238, 141, 282, 175),
      ],
      given: {
        lines: [
          line({ id: 'lower', from: { x: 38, y: 158 }, heading: 0 }, [ahead(208)]),
          line({ id: 'upper', from: { x: 38, y: 52 }, heading: 0 }, [ahead(208)]),
          line({ id: 'lane', from: { x: 122, y: 158 }, heading: -90 }, [ahead(106)]),
          line({ id: 'street', from: { x: 210, y: 158 }, heading: -90 }, [ahead(106)]),
        ],
        marks: [],
      },
    },
    model: design(
      [],
      marks([
        { id: 'first', line: 'lower', at: 36, action: 'straight-on' },
        { id: 'second', line: 'lower', at: 118, action: 'take-left' },
        { id: 'third', line: 'street', at: 50, action: 'take-left' },
        { id: 'fourth', line: 'upper', at: 117, action: 'straight-on', met: 'against' },
      ]),
    ),
  }),
};
