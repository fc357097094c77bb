import * as z from 'zod/mini';
import { Drawing } from './design.ts';
import { Angle, Id, Length, Point, Texts } from './values.ts';

/** A place for a robot: a U with a notch that shows which way the robot faces. Reached within `r`. */
export const Berth = z.strictObject({
  name: Texts,
  at: Point,
  heading: Angle,
  r: Length,
  /** Robots only set out from here: a run that comes through goes on, and nothing is to arrive. */
  startOnly: z.optional(z.boolean()),
});

/** Crossed when the middle of the axle passes between `a` and `b`, from either side. */
export const Gate = z.strictObject({ id: Id, name: Texts, a: Point, b: Point });

/** A closed polygon: a place to act in (`areas`) or to stay out of (`keepOut`). */
export const Area = z.strictObject({
  id: Id,
  name: Texts,
  polygon: z.array(Point).check(z.minLength(3), z.maxLength(24)),
});

/** A frame to put marks into, upright on the sheet; `at` is its top left corner. */
export const MarkBox = z.strictObject({ id: Id, name: Texts, at: Point, w: Length, h: Length });

export const Sheet = z.strictObject({
  w: Length,
  h: Length,
  start: Berth,
  finish: z.optional(Berth),
  gates: z.array(Gate).check(z.maxLength(12)),
  areas: z.array(Area).check(z.maxLength(12)),
  keepOut: z.array(Area).check(z.maxLength(12)),
  /** Where there are any, each mark of a team lies wholly inside one of them. Absent where there are none. */
  boxes: z.optional(z.array(MarkBox).check(z.minLength(1), z.maxLength(12))),
  given: Drawing,
});

export type Berth = z.output<typeof Berth>;
export type Gate = z.output<typeof Gate>;
export type Area = z.output<typeof Area>;
export type MarkBox = z.output<typeof MarkBox>;
export type Sheet = z.output<typeof Sheet>;
