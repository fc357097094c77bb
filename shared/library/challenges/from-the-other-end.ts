import type { Recipe } from '../recipe.ts';
import { longPierSheet } from './long-pier.ts';

export const fromTheOtherEnd: Recipe = {
  key: 'from-the-other-end',
  topic: 10,
  title: { en: 'From the other end', es: 'Desde el otro extremo' },
  sentence: {
    en: 'Start at the other end. Brisk on the pier again?',
    es: 'Sal del otro extremo. ¿Va otra vez a paso ligero por el muelle?',
  },
  play: 'predict',
  note: {
    teaches: {
      en: 'A bracket of two marks works from both ends: the mark that opens it for one traveller closes it for the other.',
      es: 'Un paréntesis de dos marcas vale desde los dos extremos: la marca que lo abre para un viajero lo cierra para el otro.',
    },
    mistakes: {
      en: 'The second mark is thought to end the stretch, whichever side the robot comes from.',
      es: 'Se cree que la segunda marca acaba el tramo, venga el robot por el lado que venga.',
    },
    ask: {
      en: 'What does each of the two marks say to a robot that comes from the lighthouse?',
      es: '¿Qué le dice cada una de las dos marcas a un robot que viene del faro?',
    },
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
