import type { Formula } from '../../documents/formula.ts';
import { ahead } from '../pen.ts';
import { placeNamed } from '../places.ts';
import { bareSheet, berth, both, design, type Recipe, rectangle } from '../recipe.ts';

const CALLS: Formula = { kind: 'gates', gates: ['market', 'bakery'], ordered: true };

export const threeCalls: Recipe = {
  key: 'three-calls',
  topic: 16,
  title: { en: 'Three calls', es: 'Tres visitas' },
  sentence: {
    en: 'Call at the fish market, then the bakery, then the lighthouse.',
    es: 'Pasa por el mercado de pescado, luego por la panadería y luego por el faro.',
  },
  play: 'fill-in',
  note: {
    teaches: {
      en: 'A plan is an order of choices: every junction on the way needs one, and each is used up once.',
      es: 'Un plan es una serie de elecciones: cada cruce del camino pide una, y cada una se gasta una vez.',
    },
    mistakes: {
      en: 'One junction is forgotten, or left and right are seen from above instead of from the robot.',
      es: 'Se olvida un cruce, o izquierda y derecha se miran desde arriba y no desde el robot.',
    },
    ask: {
      en: 'Put your finger on the line and drive: which hand points to the bakery at this junction?',
      es: 'Pon el dedo en la línea y conduce: ¿qué mano señala la panadería en este cruce?',
    },
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
        { id: 'market', name: placeNamed('Fish market'), a: { x: 166, y: 142 }, b: { x: 166, y: 174 } },
        { id: 'bakery', name: placeNamed('Bakery'), a: { x: 166, y: 36 }, b: { x: 166, y: 68 } },
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
