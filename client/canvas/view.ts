import type { Mm, PaperPoint, ScreenPoint } from '../../shared/geometry/units.ts';

/**
 * Where a sheet lies in its box on the screen. The only file that converts between paper and screen.
 */
export interface View {
  /** CSS pixels a millimetre. */
  readonly scale: number;
  /** Of the sheet's top left corner in the box, CSS pixels. */
  readonly left: number;
  readonly top: number;
}

/** Pixels of the screen to a CSS pixel, of what is painted. Sharper costs an old tablet more than an eye can tell. */
export const sharpness = (): number => Math.min(2, window.devicePixelRatio || 1);

/** A box in CSS pixels. */
export interface Box {
  readonly width: number;
  readonly height: number;
}

/** The whole sheet in the middle of the box, with `pad` pixels of table around it. */
export function fitView(sheet: { readonly w: Mm; readonly h: Mm }, box: Box, pad: number): View {
  const room = (side: number) => Math.max(side - 2 * pad, 1);
  const scale = Math.min(room(box.width) / sheet.w, room(box.height) / sheet.h);
  return {
    scale,
    left: Math.round((box.width - sheet.w * scale) / 2),
    top: Math.round((box.height - sheet.h * scale) / 2),
  };
}

/** The same with `beside` pixels left free at the top or at the right, whichever leaves the sheet larger. */
export function fitBeside(
  sheet: { readonly w: Mm; readonly h: Mm },
  box: Box,
  pad: number,
  beside: number,
): View {
  const atRight = fitView(sheet, { ...box, width: box.width - beside }, pad).scale;
  const onTop = fitView(sheet, { ...box, height: box.height - beside }, pad).scale;
  const scale = Math.max(atRight, onTop);
  const [width, height] = [sheet.w * scale, sheet.h * scale];
  const [left, top] = [(box.width - width) / 2, (box.height - height) / 2];
  return atRight >= onTop
    ? { scale, left: Math.round(Math.min(left, box.width - beside - width)), top: Math.round(top) }
    : { scale, left: Math.round(left), top: Math.round(Math.max(top, beside)) };
}

/** From a place in the box to the paper. */
export const toPaper = (view: View, at: ScreenPoint): PaperPoint => ({
  x: (at.px - view.left) / view.scale,
  y: (at.py - view.top) / view.scale,
});

/** From the paper to a place in the box. */
export const toScreen = (view: View, at: PaperPoint): ScreenPoint => ({
  px: view.left + at.x * view.scale,
  py: view.top + at.y * view.scale,
});

/** Whether a place of the paper is seen in the box. */
export function isSeen(view: View, { width, height }: Box, at: PaperPoint): boolean {
  const { px, py } = toScreen(view, at);
  return px >= 0 && py >= 0 && px <= width && py <= height;
}

/** How many mm a finger's width or a drawn hairline of so many CSS pixels covers on the paper. */
export const pixelsInMm = (view: View, pixels: number): Mm => pixels / view.scale;

/** The most that a sheet is enlarged, CSS pixels a millimetre: a line of 5 mm is then 60 pixels wide. */
const MOST_SCALE = 12;
/** So much of the box may be table beyond the paper's edge, so that corners can be worked on. */
const SLACK = 0.3;

/** What somebody looks at closely: this place of the paper in the middle of the box, so large. */
export interface Look {
  readonly at: PaperPoint;
  readonly scale: number;
}

/** A sheet in its box, and how it lies there as a whole. */
export interface Framed {
  readonly sheet: { readonly w: Mm; readonly h: Mm };
  readonly box: Box;
  readonly fitted: View;
}

const between = (value: number, low: number, high: number) => Math.max(low, Math.min(value, high));

/** Where one side of the paper begins: no further in than the slack, in the middle where it all fits. */
function held(start: number, paper: number, box: number): number {
  const slack = box * SLACK;
  const middle = (box - paper) / 2;
  return between(start, Math.min(middle, box - paper - slack), Math.max(middle, slack));
}

/** The view of a close look, or of the whole sheet where that is as large. */
export function viewOf(look: Look | null, { sheet, box, fitted }: Framed): View {
  if (!look || look.scale <= fitted.scale) return fitted;
  const scale = Math.min(look.scale, Math.max(MOST_SCALE, fitted.scale));
  return {
    scale,
    left: held(box.width / 2 - look.at.x * scale, sheet.w * scale, box.width),
    top: held(box.height / 2 - look.at.y * scale, sheet.h * scale, box.height),
  };
}

/** The look that shows paper place `at` at the screen place `to`; null where the whole sheet is in view. */
function lookWith(scale: number, at: PaperPoint, to: ScreenPoint, framed: Framed): Look | null {
  const { box, fitted } = framed;
  if (scale <= fitted.scale * 1.001) return null;
  const size = Math.min(scale, Math.max(MOST_SCALE, fitted.scale));
  const middle = { x: at.x + (box.width / 2 - to.px) / size, y: at.y + (box.height / 2 - to.py) / size };
  const view = viewOf({ at: middle, scale: size }, framed);
  return { scale: size, at: toPaper(view, { px: box.width / 2, py: box.height / 2 }) };
}

/** `factor` times as large; what lies at `about` stays there as far as the edges let it. */
export const lookCloser = (view: View, framed: Framed, factor: number, about: ScreenPoint): Look | null =>
  lookWith(view.scale * factor, toPaper(view, about), about, framed);

/** The paper pushed by so many pixels. */
export const lookBeside = (view: View, framed: Framed, dx: number, dy: number): Look | null =>
  lookWith(view.scale, toPaper(view, { px: 0, py: 0 }), { px: dx, py: dy }, framed);

const middleOf = ([a, b = a]: readonly ScreenPoint[]): ScreenPoint => ({
  px: (a!.px + b!.px) / 2,
  py: (a!.py + b!.py) / 2,
});

const apart = ([a, b = a]: readonly ScreenPoint[]): number => {
  const [dx, dy] = [a!.px - b!.px, a!.py - b!.py];
  return Math.sqrt(dx * dx + dy * dy);
};

/** One finger takes the paper along; two also enlarge it, and what lies between them stays there. */
export function lookPulled(
  view: View,
  framed: Framed,
  before: readonly ScreenPoint[],
  now: readonly ScreenPoint[],
): Look | null {
  const wide = apart(before);
  const factor = wide > 0 ? apart(now) / wide : 1;
  return lookWith(view.scale * factor, toPaper(view, middleOf(before)), middleOf(now), framed);
}

/** Brings a place into view, `rim` pixels from the box's edge, and leaves the paper where it can. */
export function lookAt(view: View, framed: Framed, at: PaperPoint, rim: number): Look | null {
  const { px, py } = toScreen(view, at);
  const { width, height } = framed.box;
  const dx = between(px, Math.min(rim, width / 2), Math.max(width - rim, width / 2)) - px;
  const dy = between(py, Math.min(rim, height / 2), Math.max(height - rim, height / 2)) - py;
  return lookBeside(view, framed, dx, dy);
}
