import type { Formula } from '../../documents/formula.ts';
import { ahead, bend } from '../pen.ts';
import { bareSheet, berth, both, design, polygon, type Recipe } from '../recipe.ts';

const AT_NEST = { kind: 'in-area', area: 'nest' } as const;
const TIPTOE: Formula = {
  kind: 'always',
  of: {
    kind: 'or',
    of: [
      { kind: 'not', of: AT_NEST },
      { kind: 'pace', pace: 'creep' },
    ],
  },
};
const PAST: Formula = both({ kind: 'eventually', of: AT_NEST }, TIPTOE);

export const pastTheNest: Recipe = {
  key: 'past-the-nest',
  topic: 20,
  title: { en: 'Past the nest', es: 'Junto al nido' },
  sentence: {
    en: 'Tiptoe past the nest, then be steady again.',
    es: 'Pasa de puntillas junto al nido y luego ve otra vez a paso normal.',
  },
  play: 'draw',
  note: {
    teaches: {
      en: 'A pace is a state that lasts until a mark ends it: it must begin before the place and end after it.',
      es: 'Un paso dura hasta que una marca lo cambia: tiene que empezar antes del sitio y acabar después.',
    },
    mistakes: {
      en: 'The mark stands at the nest, so that the robot tiptoes only when it is past it.',
      es: 'La marca está junto al nido, así que el robot va de puntillas cuando ya lo ha pasado.',
    },
    ask: {
      en: 'Where is the robot on tiptoe for the first time, and where for the last time?',
      es: '¿Dónde va el robot de puntillas por primera vez, y dónde por última?',
    },
  },
  seconds: 90,
  goals: [
    { id: 'nest', formula: PAST, must: true, weight: 3 },
    { id: 'steady', formula: both(PAST, { kind: 'pace-at-end', pace: 'steady' }), must: true, weight: 2 },
    { id: 'finish', formula: { kind: 'finish' }, must: true, weight: 2 },
  ],
  cook: ({ line, marks }) => ({
    sheet: {
      ...bareSheet(berth('Boathouse', 48, 52, 0), berth('Lighthouse', 249, 158, 180)),
      areas: [
        polygon('nest', 'Nest', [
          [106, 96],
          [130, 87],
          [168, 85],
          [190, 98],
          [186, 117],
          [152, 125],
          [112, 121],
        ]),
      ],
    },
    model: design(
      [
        line({ id: 'way', from: { x: 40, y: 52 }, heading: 0 }, [
          ahead(52),
          bend(90, 30),
          ahead(46),
          bend(-90, 30),
          ahead(105),
        ]),
      ],
      marks([
        { id: 'tiptoe', line: 'way', at: 35, action: 'tiptoe' },
        { id: 'steady', line: 'way', at: 219, action: 'steady' },
      ]),
    ),
  }),
};
