import * as z from 'zod/mini';
import { Weather } from './outlook.ts';
import { Id } from './values.ts';

/** Light that has changed since the robots were calibrated. */
export const OTHER_LIGHTS = ['brighter', 'darker', 'warmer'] as const;
export type OtherLight = (typeof OTHER_LIGHTS)[number];

/** One thing that is otherwise than when an entry was handed in; the entry stays as it is. */
export const WhatIf = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('light'), light: z.enum(OTHER_LIGHTS) }),
  /** The robot starts in the other berth. */
  z.strictObject({ kind: z.literal('start') }),
  /** Another robot, the `robot`th of twenty, in a weather of its own. */
  z.strictObject({
    kind: z.literal('weather'),
    weather: Weather,
    robot: z.int().check(z.gte(1), z.lte(20)),
  }),
  z.strictObject({
    kind: z.literal('band'),
    mark: Id,
    band: z.int().check(z.gte(0), z.lt(8)),
    ink: z.string().check(z.regex(/^[A-Z]$/)),
  }),
]);
export type WhatIf = z.output<typeof WhatIf>;
