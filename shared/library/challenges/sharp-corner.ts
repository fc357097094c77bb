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
  title: 'A corner too sharp',
  sentence: 'This corner can lose the robot. Mend it with the least new ink.',
  play: 'mend',
  note: {
    teaches: 'A sharp corner looks like a junction or like the end of the line. A small change is enough.',
    mistakes: 'The whole line is drawn anew, or the corner is moved and stays as sharp as it was.',
    ask: 'What do the five sensors see in the corner, one after another?',
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
