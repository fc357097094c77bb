import { ahead, bend } from '../pen.ts';
import { placeNamed } from '../places.ts';
import { bareSheet, berth, design, type Recipe } from '../recipe.ts';

export const bakeryAndBack: Recipe = {
  key: 'bakery-and-back',
  topic: 22,
  title: { en: 'To the bakery and back', es: 'A la panadería y vuelta' },
  sentence: {
    en: 'Look in at the bakery, turn back, finish at the lighthouse.',
    es: 'Pasa por la panadería, da media vuelta y termina en el faro.',
  },
  play: 'fill-in',
  note: {
    teaches: {
      en: 'A mark may mean something in one direction only, and the last choice before a junction wins.',
      es: 'Una marca puede significar algo en un solo sentido, y la última elección antes de un cruce es la que vale.',
    },
    mistakes: {
      en: 'The robot turns back and meets its own marks from the other side without anybody having thought of it.',
      es: 'El robot da media vuelta y encuentra sus propias marcas por el otro lado sin que nadie lo haya pensado.',
    },
    ask: {
      en: 'What does each of your marks say to a robot that comes back?',
      es: '¿Qué le dice cada una de tus marcas a un robot que vuelve?',
    },
  },
  seconds: 90,
  goals: [
    { id: 'bakery', formula: { kind: 'gates', gates: ['bakery'], ordered: true }, must: true, weight: 2 },
    { id: 'back', formula: { kind: 'turn-back', count: 1 }, must: true, weight: 1 },
    { id: 'finish', formula: { kind: 'finish' }, must: true, weight: 2 },
  ],
  cook: ({ line, marks }) => ({
    sheet: {
      ...bareSheet(berth('Boathouse', 50, 155, 0), berth('Lighthouse', 220, 48, 180)),
      gates: [{ id: 'bakery', name: placeNamed('Bakery'), a: { x: 226, y: 140 }, b: { x: 226, y: 170 } }],
      given: {
        lines: [
          line({ id: 'street', from: { x: 42, y: 155 }, heading: 0 }, [ahead(228)]),
          line({ id: 'lane', from: { x: 128, y: 155 }, heading: -90 }, [ahead(72), bend(90, 35), ahead(65)]),
        ],
        marks: [],
      },
    },
    model: design(
      [],
      marks([
        { id: 'on', line: 'street', at: 33, action: 'straight-on' },
        { id: 'right', line: 'street', at: 126, action: 'take-right', met: 'against' },
        { id: 'back', line: 'street', at: 165, action: 'turn-back' },
      ]),
    ),
  }),
};
