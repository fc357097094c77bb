import type { Mm } from '../../geometry/units.ts';
import { numbers } from './numbers.ts';

const { length, list } = numbers;

/** On paper: what robots are timed on, and what finds their limits. */
export const fitPaper = {
  lineTitle: 'Timed line',
  lineHow:
    'Set a robot at an arrow and start the watch when its front passes the first stroke; stop it when the same part passes the second. Time each robot three times or more at each pace. After taping, measure: 500 mm from stroke to stroke. Keep a hand’s width from the table’s edge.',
  noMark: (paces: readonly string[]) =>
    `This chart has no mark for ${list(paces)}: time that pace as the maker’s sheet says.`,
  at: (pace: string) => `${pace}`,
  start: 'start',
  stop: 'stop',
  circleTitle: 'Timed circle',
  circleHow: (pace: string) =>
    `Set a robot on the line behind the stroke, facing as the arrow points. It drives round at its pace “${pace}”. Start the watch when its front passes the stroke, and stop it after five laps at the stroke. Time each robot twice or more.`,
  radius: (r: Mm) => `radius ${length(r)}`,
  lap: 'a lap ends here',
  cornersTitle: 'Limits: corners',
  cornersHow:
    'Set a robot at the beginning of a line and see whether it gets round the corner and stays on the line. Begin with the widest corner. Note for each corner how many robots get round it, and type that in at the desk.',
  bandsTitle: 'Limits: bands',
  bandsHow: (does: string) =>
    `Every line has the same mark: “${does}”. Its bands get shorter from line to line. Set a robot at the beginning of a line and see whether it does that. Note for each length how many robots do, and type that in at the desk.`,
};
