import { nanoid } from 'nanoid';
import type { Challenge } from '../../../shared/documents/challenge.ts';
import { EMPTY_DRAWING } from '../../../shared/documents/design.ts';
import type { Kit } from '../../../shared/documents/kit.ts';
import { NEW_CHALLENGE, PLACE_TEXTS } from '../../../shared/wording/fresh.ts';

export const newOwnId = (): string => `own-${nanoid(12)}`;

/** mm: where robots set out on a new sheet, and within which a berth is reached. */
const START = { x: 45, y: 105 } as const;
const RIM = 15;
/** s */
const USUAL_TIME = 90;

/** A sheet of A4 with a start berth: everything else is still to be made. */
export const blankChallenge = (id: string, kit: Kit): Challenge => ({
  version: 1,
  id,
  topic: 1,
  title: NEW_CHALLENGE.title,
  sentence: NEW_CHALLENGE.sentence,
  play: 'fill-in',
  kit,
  sheet: {
    w: 297,
    h: 210,
    start: { name: PLACE_TEXTS.start, at: START, heading: 0, r: RIM },
    gates: [],
    areas: [],
    keepOut: [],
    given: EMPTY_DRAWING,
  },
  starts: ['start'],
  goals: [],
  limits: { time: USUAL_TIME },
});

/** The same challenge as one that is being built: par is worked out anew, and goals are known by their numbers. */
export function asBuilt({ par: _, ...challenge }: Challenge): Challenge {
  const goals = challenge.goals.map((goal, i) => ({ ...goal, id: String(i + 1) }));
  return { ...challenge, goals };
}
