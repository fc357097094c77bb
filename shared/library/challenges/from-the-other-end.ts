import type { Recipe } from '../recipe.ts';
import { longPierSheet } from './long-pier.ts';

export const fromTheOtherEnd: Recipe = {
  key: 'from-the-other-end',
  topic: 10,
  title: 'From the other end',
  sentence: 'Start at the other end. Brisk on the pier again?',
  play: 'predict',
  note: {
    teaches:
      'A bracket of two marks works from both ends: the mark that opens it for one traveller closes it for the other.',
    mistakes: 'The second mark is thought to end the stretch, whichever side the robot comes from.',
    ask: 'What does each of the two marks say to a robot that comes from the lighthouse?',
  },
  seconds: 60,
  goals: [],
  starts: ['start', 'finish'],
  asks: [
    { kind: 'pace', start: 'start', area: 'pier' },
    { kind: 'marks', start: 'finish' },
    { kind: 'pace', start: 'finish', area: 'pier' },
  ],
  cook: ({ line, marks }) => {
    const sheet = longPierSheet(line);
    const bracket = marks([
      { id: 'lower', line: 'way', at: 138, action: 'faster', back: 'slower' },
      { id: 'upper', line: 'way', at: 533.8, action: 'slower', back: 'faster' },
    ]);
    return { sheet: { ...sheet, given: { ...sheet.given, marks: bracket } } };
  },
};
