import { ahead, bend, turn } from '../pen.ts';
import { bareSheet, berth, both, design, type Recipe } from '../recipe.ts';

/** The legs of the corner lie so far apart that its middle can be redrawn with an arc of 22 mm. */
const LEG = 82;
/** Where the corner's first leg begins, and how sharp it is. */
const KNEE = { x: 130, y: 165 } as const;
const ANGLE = 30;

export const sharpCorner: Recipe = {
  key: 'sharp-corner',
  topic: 3,
  title: { en: 'A corner too sharp', es: 'Una esquina muy cerrada' },
  sentence: {
    en: 'This corner can lose the robot. Mend it with the least new ink.',
    es: 'En esta esquina el robot se puede perder. Arréglala con la menor tinta nueva.',
  },
  play: 'mend',
  note: {
    teaches: {
      en: 'A sharp corner looks like a junction or like the end of the line. A small change is enough.',
      es: 'Una esquina cerrada parece un cruce o el final de la línea. Basta un cambio pequeño.',
    },
    mistakes: {
      en: 'The whole line is drawn anew, or the corner is moved and stays as sharp as it was.',
      es: 'Se dibuja otra vez toda la línea, o se mueve la esquina y queda igual de cerrada.',
    },
    ask: {
      en: 'What do the five sensors see in the corner, one after another?',
      es: '¿Qué ven los cinco sensores en la esquina, uno tras otro?',
    },
  },
  seconds: 60,
  goals: [
    { id: 'finish', formula: { kind: 'finish' }, must: true, weight: 3 },
    {
      id: 'ink',
      formula: both({ kind: 'finish' }, { kind: 'ink-limit', most: 120 }),
      must: false,
      weight: 1,
    },
  ],
  cook: ({ line }) => {
    const corner = line({ id: 'corner', from: KNEE, heading: 0 }, [
      ahead(LEG),
      turn(ANGLE - 180),
      ahead(LEG),
    ]);
    const far = corner.pieces.at(-1)!.to;
    return {
      sheet: {
        ...bareSheet(berth('Boathouse', 50, KNEE.y, 0), berth('Lighthouse', 247, 58, 180)),
        given: {
          lines: [
            line({ id: 'out', from: { x: 42, y: KNEE.y }, heading: 0 }, [ahead(KNEE.x - 42)]),
            line({ id: 'on', from: far, heading: ANGLE - 180 }, [
              ahead(42),
              bend(180 - ANGLE, 24),
              ahead(140),
            ]),
          ],
          marks: [],
        },
      },
      begin: design([corner], []),
      model: design([line({ id: 'corner', from: KNEE, heading: 0 }, [bend(ANGLE - 180, 21.97)])], []),
    };
  },
};
