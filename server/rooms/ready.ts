import type { Challenge } from '../../shared/documents/challenge.ts';
import { DEMO_KIT } from '../../shared/kit/demo-kit.ts';

/** A ready challenge by its key; stands in until the library is there. */
export const readyChallenge = (key: string): Challenge | undefined =>
  key.length > 0
    ? {
        version: 1,
        id: key,
        topic: 2,
        sentence: { en: 'Bring the robot to the finish berth.' },
        play: 'draw',
        kit: DEMO_KIT,
        sheet: {
          w: 297,
          h: 210,
          start: { name: { en: 'pier' }, at: { x: 40, y: 105 }, heading: 0, r: 12 },
          finish: { name: { en: 'lighthouse' }, at: { x: 257, y: 105 }, heading: 0, r: 12 },
          gates: [],
          areas: [],
          keepOut: [],
          given: { lines: [], marks: [] },
        },
        starts: ['start'],
        goals: [{ id: 'finish', formula: { kind: 'finish' }, must: true, weight: 1 }],
        limits: { time: 90 },
      }
    : undefined;
