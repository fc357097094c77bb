import type { Challenge } from '../../../shared/documents/challenge.ts';
import type { Sheet } from '../../../shared/documents/sheet.ts';
import type { Seconds } from '../../../shared/geometry/units.ts';
import { DEMO_KIT } from '../../../shared/kit/demo-kit.ts';

/** A challenge on this sheet to draw a way from the start to the finish, with whatever is to be otherwise. */
export const challengeOn =
  (sheet: Sheet, time: Seconds) =>
  (over: Partial<Challenge> = {}): Challenge => ({
    version: 1,
    id: 'test',
    topic: 1,
    sentence: { en: 'Arrive.' },
    play: 'draw',
    kit: DEMO_KIT,
    sheet,
    starts: ['start'],
    goals: [{ id: 'g', formula: { kind: 'finish' }, must: true, weight: 1 }],
    limits: { time },
    ...over,
  });
