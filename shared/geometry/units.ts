/**
 * Units carried by types. A flavoured number accepts a plain number, so arithmetic stays readable,
 * but one unit is never accepted in the place of another.
 */
type Flavoured<Unit extends string> = number & { readonly __unit?: Unit };

/** Lengths on paper, millimetres. */
export type Mm = Flavoured<'mm'>;
/** Angles, radians, measured from +x towards +y (clockwise on the sheet, because y points down). */
export type Rad = Flavoured<'rad'>;
export type Seconds = Flavoured<'s'>;
export type MmPerSecond = Flavoured<'mm/s'>;
/** 1/mm, positive where the line bends to the right of travel. */
export type PerMm = Flavoured<'1/mm'>;
/** Wall-clock time of the server, milliseconds since 1970. The core only ever receives it. */
export type Millis = Flavoured<'ms since 1970'>;

/** A point on the sheet: origin at the top left corner, x right, y down. */
export interface PaperPoint {
  readonly x: Mm;
  readonly y: Mm;
}

/** A point on a screen, in CSS pixels. Only `client/canvas` converts between the two. */
export interface ScreenPoint {
  readonly px: Flavoured<'px'>;
  readonly py: Flavoured<'px'>;
}
