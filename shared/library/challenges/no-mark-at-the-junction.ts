import { ahead, bend } from '../pen.ts';
import { bareSheet, berth, type Recipe, rectangle } from '../recipe.ts';

const LIGHTHOUSE = { kind: 'berth', berth: 'finish' } as const;

export const noMarkAtTheJunction: Recipe = {
  key: 'no-mark-at-the-junction',
  topic: 12,
  title: { en: 'No mark at the junction', es: 'Un cruce sin marca' },
  sentence: {
    en: 'Twenty robots reach a junction with no mark. How many see the lighthouse?',
    es: 'Veinte robots llegan a un cruce sin marca. ¿Cuántos ven el faro?',
  },
  play: 'predict',
  note: {
    teaches: {
      en: 'Where nothing decides, the robot chooses by chance. Chance can be counted, and it has no memory.',
      es: 'Donde nada decide, el robot elige al azar. El azar se puede contar, y no tiene memoria.',
    },
    mistakes: {
      en: 'After four robots to the left the fifth is thought to be due on the right.',
      es: 'Después de cuatro robots a la izquierda se cree que al quinto le toca la derecha.',
    },
    ask: {
      en: 'Ten of twenty are to be expected. Would seven surprise you? Would none?',
      es: 'De veinte se esperan diez. ¿Te sorprendería que fueran siete? ¿Y ninguno?',
    },
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
