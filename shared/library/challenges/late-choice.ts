import { ahead, bend } from '../pen.ts';
import { bareSheet, berth, both, design, type Recipe, rectangle } from '../recipe.ts';

export const lateChoice: Recipe = {
  key: 'late-choice',
  topic: 17,
  title: { en: 'It worked, then it didn’t', es: 'Primero sí, luego no' },
  sentence: {
    en: 'It worked, then it didn’t. Find out why and mend it.',
    es: 'Primero funcionó y luego no. Descubre por qué y arréglalo.',
  },
  play: 'mend',
  note: {
    teaches: {
      en: 'A choice that comes too late leaves the junction to luck: half of the runs look right.',
      es: 'Una elección que llega tarde deja el cruce al azar: la mitad de los recorridos parecen buenos.',
    },
    mistakes: {
      en: 'The mark is turned round or a second one is added, although the place is what is wrong.',
      es: 'Se gira la marca o se añade otra, aunque lo que está mal es el sitio.',
    },
    ask: {
      en: 'Where was the robot when the mark began to act?',
      es: '¿Dónde estaba el robot cuando la marca empezó a actuar?',
    },
  },
  seconds: 60,
  goingStraightSolves: true,
  goals: [
    { id: 'finish', formula: { kind: 'finish' }, must: true, weight: 3 },
    {
      id: 'marks',
      formula: both({ kind: 'finish' }, { kind: 'mark-limit', most: 2 }),
      must: false,
      weight: 1,
    },
  ],
  cook: ({ line, marks }) => ({
    sheet: {
      ...bareSheet(berth('Boathouse', 52, 165, -90), berth('Fish market', 242, 52, 180)),
      areas: [rectangle('bakery', 'Bakery', 224, 140, 272, 182)],
      given: {
        lines: [
          line({ id: 'way', from: { x: 52, y: 173 }, heading: -90 }, [ahead(81), bend(90, 40), ahead(153)]),
          line({ id: 'side', from: { x: 175, y: 52 }, heading: 90 }, [ahead(78), bend(-90, 30), ahead(20)]),
        ],
        marks: [],
      },
    },
    begin: design([], marks([{ id: 'mark', line: 'way', at: 192, action: 'straight-on' }])),
    model: design([], marks([{ id: 'mark', line: 'way', at: 175, action: 'straight-on' }])),
  }),
};
