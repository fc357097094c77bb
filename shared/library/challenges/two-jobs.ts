import type { Formula } from '../../documents/formula.ts';
import { ahead, bend } from '../pen.ts';
import { bareSheet, both, design, type Recipe, rectangle, startBerth } from '../recipe.ts';

const reach = (area: string): Formula => ({ kind: 'eventually', of: { kind: 'in-area', area } });

export const twoJobs: Recipe = {
  key: 'two-jobs',
  topic: 23,
  title: { en: 'One drawing, two jobs', es: 'Un dibujo, dos tareas' },
  sentence: {
    en: 'From the boathouse to the lighthouse, and from the ferry to the bakery.',
    es: 'Del cobertizo al faro, y del ferri a la panadería.',
  },
  play: 'draw',
  note: {
    teaches: {
      en: 'One drawing serves two travellers: every mark has to be right for each of them who meets it.',
      es: 'Un dibujo sirve a dos viajeros: cada marca tiene que valer para cada uno que la encuentra.',
    },
    mistakes: {
      en: 'A mark that helps the one is met by the other, or the two lines cross where no mark decides.',
      es: 'El otro encuentra una marca que ayuda a uno, o las dos líneas se cruzan donde ninguna marca decide.',
    },
    ask: {
      en: 'Which of your marks does the ferry’s robot meet, and from which side?',
      es: '¿Cuáles de tus marcas encuentra el robot del ferri, y por qué lado?',
    },
  },
  seconds: 90,
  starts: ['start', 'finish'],
  goals: [
    { id: 'lighthouse', formula: reach('lighthouse'), must: true, weight: 4, start: 'start' },
    { id: 'bakery', formula: reach('bakery'), must: true, weight: 4, start: 'finish' },
    {
      id: 'marks',
      formula: both({ kind: 'mark-limit', most: 3 }, { kind: 'ink-limit', most: 560 }),
      must: false,
      weight: 1,
    },
  ],
  cook: ({ line, marks }) => ({
    sheet: {
      ...bareSheet(startBerth('Boathouse', 48, 45, 0), startBerth('Ferry', 48, 165, 0)),
      areas: [
        rectangle('bakery', 'Bakery', 226, 24, 274, 66),
        rectangle('lighthouse', 'Lighthouse', 226, 144, 274, 186),
      ],
    },
    model: design(
      [
        line({ id: 'down', from: { x: 40, y: 45 }, heading: 0 }, [
          ahead(27),
          bend(45, 52),
          ahead(126.6),
          bend(-45, 52),
          ahead(20),
        ]),
        line({ id: 'up', from: { x: 40, y: 165 }, heading: 0 }, [
          ahead(27),
          bend(-45, 52),
          ahead(126.6),
          bend(45, 52),
          ahead(20),
        ]),
      ],
      marks([
        { id: 'on-down', line: 'down', at: 84.5, action: 'straight-on' },
        { id: 'on-up', line: 'up', at: 84.5, action: 'straight-on' },
      ]),
    ),
  }),
};
