import type { Kit } from '../documents/kit.ts';
import { radians } from '../geometry/exact-math.ts';

/**
 * The kit that a new room starts with: an invented robot, inks and chart. A class types in its own.
 * Inks keep a CIEDE2000 difference of more than 21 for normal and colour-deficient sight.
 */
export const DEMO_KIT: Kit = {
  version: 1,
  id: 'demo',
  name: 'Demo kit',
  robot: {
    name: 'Demo robot',
    width: 28,
    length: 29,
    axleToRear: 12,
    wheelTrack: 24,
    barAhead: 11,
    sensorPitch: 4,
    paces: { creep: 20, steady: 40, brisk: 60, fast: 80 },
    startPace: 'steady',
    topWheelSpeed: 130,
    unmarkedJunction: 'any',
    looseEnd: 'stop',
    actsAfter: 0.7,
    bandUnit: 5.5,
  },
  line: { color: '#16181D' },
  inks: [
    { id: 'C', name: { en: 'coral', es: 'coral' }, color: '#F4743B', hatch: 'diagonal' },
    { id: 'A', name: { en: 'aqua', es: 'agua' }, color: '#2FB5C7', hatch: 'cross' },
    { id: 'V', name: { en: 'violet', es: 'violeta' }, color: '#6F3FA0', hatch: 'dots' },
  ],
  equalNeighbours: false,
  chart: [
    { word: 'CA', action: { kind: 'pace-by', steps: 1 } },
    { word: 'AC', action: { kind: 'pace-by', steps: -1 } },
    { word: 'AV', action: { kind: 'choose', way: 'left' } },
    { word: 'VA', action: { kind: 'choose', way: 'right' } },
    { word: 'VC', action: { kind: 'turn-back' } },
    { word: 'CV', action: { kind: 'nothing' } },
    { word: 'ACA', action: { kind: 'choose', way: 'straight' } },
    { word: 'AVA', action: { kind: 'pace-to', pace: 'steady' } },
    { word: 'CAC', action: { kind: 'pace-to', pace: 'creep' } },
    { word: 'VCV', action: { kind: 'wait', time: 2 } },
    { word: 'CVC', action: { kind: 'signal', time: 1 } },
    { word: 'VAV', action: { kind: 'park' } },
  ],
  rules: {
    lineWidth: { nominal: 5, least: 4, most: 7 },
    corner: { untidyBelow: radians(90), mayStopBelow: radians(50) },
    curveRadius: 15,
    clearance: 15,
    sheetMargin: 20,
    beforeMark: 25,
    afterMark: 25,
    straightFrom: 50,
    actionReady: { creep: 15, steady: 30, brisk: 45, fast: 60 },
    bands: {
      least: 2,
      most: 4,
      shortest: 4,
      longest: 7,
      tidyShortest: 5,
      tidyLongest: 6,
      equalWithin: 0.2,
      gap: 0.6,
      overlap: 1,
      unknownFrom: 8,
      colouredFrom: 20,
    },
    junction: { armsApart: radians(75), armLength: 25, snap: 3 },
  },
};
