import { ahead, bend } from '../pen.ts';
import { bareSheet, berth, polygon, type Recipe, rectangle } from '../recipe.ts';

export const endOfTheLine: Recipe = {
  key: 'end-of-the-line',
  topic: 1,
  title: { en: 'Where the line ends', es: 'Donde acaba la línea' },
  sentence: {
    en: 'Where will the robot stop? Put the flag there.',
    es: '¿Dónde se parará el robot? Pon allí la bandera.',
  },
  play: 'predict',
  note: {
    teaches: {
      en: 'A robot sees the ink under its sensors and nothing else. Where a line ends, the run ends.',
      es: 'Un robot ve la tinta que hay bajo sus sensores y nada más. Donde acaba la línea, acaba el recorrido.',
    },
    mistakes: {
      en: 'The eye jumps over the gap, or on to the line beside it, and takes the robot along.',
      es: 'El ojo salta el hueco, o pasa a la línea de al lado, y se lleva al robot con él.',
    },
    ask: {
      en: 'What do the five sensors see one finger’s width past the end of the line?',
      es: '¿Qué ven los cinco sensores un dedo más allá del final de la línea?',
    },
  },
  seconds: 60,
  goals: [],
  asks: [{ kind: 'end', start: 'start' }],
  cook: ({ line }) => ({
    sheet: {
      ...bareSheet(berth('Boathouse', 50, 158, 0), berth('Lighthouse', 242, 50, 180)),
      areas: [
        polygon('sandbank', 'Sandbank', [
          [98, 98],
          [112, 88],
          [160, 86],
          [178, 96],
          [176, 116],
          [150, 124],
          [110, 122],
        ]),
        rectangle('market', 'Fish market', 222, 140, 272, 176),
      ],
      given: {
        lines: [
          line({ id: 'way', from: { x: 42, y: 158 }, heading: 0 }, [ahead(90), bend(-90, 32), ahead(18)]),
          line({ id: 'on', from: { x: 164, y: 82 }, heading: -90 }, [bend(90, 32), ahead(54)]),
          line({ id: 'side', from: { x: 196, y: 108 }, heading: 0 }, [ahead(14), bend(90, 36), ahead(6)]),
        ],
        marks: [],
      },
    },
  }),
};
