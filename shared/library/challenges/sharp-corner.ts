import type { Line } from '../../documents/design.ts';
import { ahead, bend, turn } from '../pen.ts';
import { bareSheet, berth, design, type Recipe, type Tools } from '../recipe.ts';

/** Along the bottom, then back over itself at 30 degrees, up to the top left and across. */
const faulty = (line: Tools['line']): Line =>
  line({ id: 'way', from: { x: 42, y: 160 }, heading: 0 }, [
    ahead(170),
    turn(-150),
    ahead(140),
    turn(150),
    ahead(150),
  ]);

const mended = (line: Tools['line']): Line =>
  line({ id: 'way', from: { x: 42, y: 160 }, heading: 0 }, [
    ahead(150),
    bend(-150, 22),
    ahead(120),
    bend(150, 22),
    ahead(150),
  ]);

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
    { id: 'ink', formula: { kind: 'ink-limit', most: 480 }, must: false, weight: 1 },
  ],
  cook: ({ line }) => ({
    sheet: bareSheet(berth('Boathouse', 50, 160, 0), berth('Lighthouse', 247, 52, 0)),
    begin: design([faulty(line)], []),
    model: design([mended(line)], []),
  }),
};
