import * as z from 'zod/mini';
import { Action, Pace, Way } from './kit.ts';

/**
 * The record of one run. Samples at 50 Hz are for pictures; everything that must be exact comes from
 * the event list, whose times, places and ways are those of the simulation step at which they happened.
 */

/** How a run ended. */
export const ENDINGS = [
  'finished',
  'parked',
  'stopped',
  'lost',
  'off-paper',
  'time-up',
  'never-started',
] as const;
export const Ending = z.enum(ENDINGS);
export type Ending = (typeof ENDINGS)[number];

const Where = { t: z.number(), x: z.number(), y: z.number(), way: z.number(), pace: Pace };

/** Why the robot took the arm that it took. */
export const Decision = z.enum(['mark', 'chance', 'straight', 'only']);

export const RunEvent = z.discriminatedUnion('kind', [
  /** A word was understood. `mark` is the drawn mark under the sensor, absent where none is near. */
  z.strictObject({
    kind: z.literal('read'),
    ...Where,
    word: z.string(),
    mark: z.optional(z.string()),
    /** Whether the word was met in the direction of the line that carries the mark. */
    along: z.boolean(),
    action: z.optional(Action),
    /** Pace is already at the end of its range, so that the action changes nothing. */
    already: z.boolean(),
  }),
  /** The action of an earlier reading begins. `read` is the index of that event. */
  z.strictObject({ kind: z.literal('act'), ...Where, action: Action, read: z.int() }),
  z.strictObject({
    kind: z.literal('junction'),
    ...Where,
    took: z.enum(['left', 'straight', 'right']),
    by: Decision,
    arms: z.array(Way),
  }),
  z.strictObject({ kind: z.literal('corner'), ...Where, took: z.enum(['left', 'right']) }),
  /** The commanded pace changes; `pace` is the new one. */
  z.strictObject({ kind: z.literal('pace'), ...Where, from: Pace }),
  z.strictObject({ kind: z.literal('wait'), ...Where, until: z.number() }),
  z.strictObject({ kind: z.literal('signal'), ...Where, until: z.number() }),
  z.strictObject({ kind: z.literal('turn-back'), ...Where }),
  z.strictObject({ kind: z.literal('loose-end'), ...Where }),
  z.strictObject({ kind: z.literal('gate'), ...Where, gate: z.string() }),
  z.strictObject({ kind: z.literal('finish'), ...Where }),
  z.strictObject({ kind: z.literal('off-paper'), ...Where }),
  z.strictObject({ kind: z.literal('end'), ...Where, ending: Ending }),
]);
export type RunEvent = z.output<typeof RunEvent>;
export type RunEventOf<K extends RunEvent['kind']> = Extract<RunEvent, { kind: K }>;

export const TRACE_RATE = 50;

export const Trace = z.strictObject({
  version: z.literal(1),
  /** Which berth the robot started from, and the chance of this run among the forks. */
  start: z.enum(['start', 'finish']),
  probability: z.number(),
  seed: z.int(),
  ending: Ending,
  /** Samples at 50 Hz, one array a column, all of one length; heading as cosine and sine. */
  samples: z.strictObject({
    x: z.array(z.number()),
    y: z.array(z.number()),
    cos: z.array(z.number()),
    sin: z.array(z.number()),
    /** mm driven along the drawing under the middle sensor, never decreasing. */
    way: z.array(z.number()),
    /** Index into PACES. */
    pace: z.array(z.int()),
  }),
  events: z.array(RunEvent),
  /** Least distance of the robot's outline to each keep-out area, mm; negative is inside. */
  keepOut: z.record(z.string(), z.number()),
  /** Least distance of the robot's outline to the edge of the paper, mm; negative is over it. */
  edge: z.number(),
  /** Least distance of the axle to the finish berth's rim, mm; negative is inside. Absent without a finish. */
  finish: z.optional(z.number()),
  /** Over the state of every 50th step, as eight hexadecimal digits. */
  hash: z.string(),
});
export type Trace = z.output<typeof Trace>;
