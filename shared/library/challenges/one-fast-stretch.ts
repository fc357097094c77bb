import { ahead, bend } from '../pen.ts';
import { bareSheet, berth, design, type Recipe } from '../recipe.ts';

export const oneFastStretch: Recipe = {
  key: 'one-fast-stretch',
  topic: 18,
  title: { en: 'One fast stretch', es: 'Un tramo rápido' },
  sentence: {
    en: 'Reach the lighthouse with one, and only one, fast stretch of 15 cm or more.',
    es: 'Llega al faro con un tramo rápido, y solo uno, de 15 cm o más.',
  },
  play: 'draw',
  note: {
    teaches: {
      en: 'Pace goes up in steps, and at a fast pace everything needs more room.',
      es: 'El paso sube por escalones, y a paso rápido todo necesita más sitio.',
    },
    mistakes: {
      en: 'One “faster” is thought to be enough, although fast is two steps up from steady; or the second one comes so late that too little way is left.',
      es: 'Se cree que basta un «más rápido», aunque del paso normal al rápido hay dos escalones; o el segundo llega tan tarde que queda poco camino.',
    },
    ask: {
      en: 'Which part of your line does the robot drive fast, from where to where?',
      es: '¿Qué parte de tu línea recorre rápido el robot, desde dónde hasta dónde?',
    },
  },
  seconds: 90,
  goals: [
    {
      id: 'fast',
      formula: { kind: 'stretches', pace: 'fast', how: 'exactly', count: 1, length: 150 },
      must: true,
      weight: 3,
    },
    { id: 'finish', formula: { kind: 'finish' }, must: true, weight: 2 },
  ],
  cook: ({ line, marks }) => ({
    sheet: bareSheet(berth('Boathouse', 50, 160, 0), berth('Lighthouse', 60, 50, 0)),
    model: design(
      [
        line({ id: 'way', from: { x: 42, y: 160 }, heading: 0 }, [
          ahead(180),
          bend(-90, 35),
          ahead(40),
          bend(-90, 35),
          ahead(172),
        ]),
      ],
      marks([
        { id: 'first', line: 'way', at: 40, action: 'faster' },
        { id: 'second', line: 'way', at: 90, action: 'faster' },
        { id: 'steady', line: 'way', at: 358, action: 'steady' },
      ]),
    ),
  }),
};
