import * as z from 'zod/mini';
import { DRIVING_LIMITS } from '../room/driving.ts';

/** The forms of what is said about real robots: in commands, and in the files of rooms. */

const Name = z.string().check(
  z.minLength(1),
  z.maxLength(64),
  z.refine((text) => !text.includes('\0'), { error: 'character-nul' }),
);
/** The number on a robot, wherever it is spoken of. */
export const RobotNumber = z.int().check(z.gte(1), z.lte(DRIVING_LIMITS.robotNumber));
const Coordinate = z.int().check(z.gte(0), z.lte(4000));
const Seconds = z.number().check(z.gt(0), z.lte(DRIVING_LIMITS.seconds));
const Count = z.int().check(z.gte(0), z.lte(1000));

const Outcome = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('as-predicted'), seconds: z.nullable(Seconds) }),
  z.strictObject({
    kind: z.literal('lost'),
    at: z.nullable(z.strictObject({ x: Coordinate, y: Coordinate })),
  }),
  z.strictObject({ kind: z.literal('other-branch') }),
  z.strictObject({ kind: z.literal('time-up') }),
]);

const Foretold = z
  .strictObject({
    same: Count,
    of: Count,
    finish: z.nullable(z.number().check(z.gte(0), z.lte(1))),
    seconds: z.nullable(Seconds),
  })
  .check(z.refine(({ same, of }) => of > 0 && same <= of, { error: 'more-than-all' }));

const ROBOTS = { robots: z.array(RobotNumber).check(z.maxLength(DRIVING_LIMITS.robots)) };
const TURN = { turn: z.int().check(z.gte(0), z.lte(DRIVING_LIMITS.turns)) };
const TRIAL = { entry: Name, robot: RobotNumber, outcome: Outcome, foretold: z.nullable(Foretold) };
const WHICH_TRIAL = { trial: z.int().check(z.gte(0), z.lt(DRIVING_LIMITS.trials)) };

export const DRIVING_ASKS = [
  z.strictObject({ kind: z.literal('set-robots'), ...ROBOTS }),
  z.strictObject({ kind: z.literal('call-turn'), ...TURN }),
  z.strictObject({ kind: z.literal('note-trial'), ...TRIAL }),
  z.strictObject({ kind: z.literal('withdraw-trial'), ...WHICH_TRIAL }),
] as const;

export const DRIVING_FACTS = [
  z.strictObject({ kind: z.literal('robots-set'), ...ROBOTS }),
  z.strictObject({ kind: z.literal('turn-called'), ...TURN }),
  z.strictObject({ kind: z.literal('trial-noted'), ...TRIAL }),
  z.strictObject({ kind: z.literal('trial-withdrawn'), ...WHICH_TRIAL }),
] as const;
