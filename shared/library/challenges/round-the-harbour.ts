import type { Formula } from '../../documents/formula.ts';
import { ahead, bend } from '../pen.ts';
import { placeNamed } from '../places.ts';
import { bareSheet, berth, both, design, type Recipe, rectangle } from '../recipe.ts';

const CALLS: Formula = { kind: 'gates', gates: ['market', 'bakery'], ordered: true };
const FAST = { kind: 'stretches', pace: 'fast', how: 'exactly', count: 1, length: 200 } as const;
/** 18 of 20. */
const BREEZE = { kind: 'steadiness', least: 0.9 } as const;
const PARKED = { kind: 'park', area: 'landing' } as const;

export const roundTheHarbour: Recipe = {
  key: 'round-the-harbour',
  topic: 24,
  title: { en: 'Round the harbour', es: 'La vuelta al puerto' },
  sentence: {
    en: 'Call at the market, then the bakery, drive one fast stretch of 20 cm, and park on the landing. Then drive it for real and compare.',
    es: 'Pasa por el mercado y luego por la panadería, haz un tramo rápido de 20 cm y estaciona en el embarcadero. Después pruébalo con un robot real y compara.',
  },
  play: 'draw',
  note: {
    teaches: {
      en: 'All of it together, and then the test that counts: what a real robot does on paper, and why that differs.',
      es: 'Todo junto, y luego la prueba que cuenta: qué hace un robot real en el papel, y por qué no es lo mismo.',
    },
    mistakes: {
      en: 'The drawing works for the one perfect robot, and for too few of twenty ordinary ones.',
      es: 'El dibujo vale para el robot perfecto, y para muy pocos de veinte robots normales.',
    },
    ask: {
      en: 'Where did the real robot do something else, and what would you change in your drawing first?',
      es: '¿Dónde hizo otra cosa el robot real, y qué cambiarías primero en tu dibujo?',
    },
  },
  seconds: 120,
  weather: 'breezy',
  goals: [
    { id: 'calls', formula: CALLS, must: true, weight: 2 },
    { id: 'fast', formula: FAST, must: true, weight: 2 },
    { id: 'park', formula: PARKED, must: true, weight: 2 },
    { id: 'breeze', formula: both(PARKED, BREEZE), must: true, weight: 2 },
  ],
  cook: ({ line, marks }) => ({
    sheet: {
      ...bareSheet(berth('Boathouse', 62, 62, 0)),
      w: 420,
      h: 297,
      gates: [
        { id: 'market', name: placeNamed('Market'), a: { x: 200, y: 42 }, b: { x: 200, y: 82 } },
        { id: 'bakery', name: placeNamed('Bakery'), a: { x: 120, y: 128 }, b: { x: 120, y: 168 } },
      ],
      areas: [rectangle('landing', 'Ferry landing', 290, 206, 370, 264)],
    },
    model: design(
      [
        line({ id: 'way', from: { x: 54, y: 62 }, heading: 0 }, [
          ahead(280),
          bend(180, 43),
          ahead(250),
          bend(-180, 43),
          ahead(290),
        ]),
      ],
      marks([
        { id: 'first', line: 'way', at: 166, action: 'faster' },
        { id: 'second', line: 'way', at: 230, action: 'faster' },
        { id: 'steady', line: 'way', at: 560, action: 'steady' },
        { id: 'park', line: 'way', at: 1003, action: 'park' },
      ]),
    ),
  }),
};
