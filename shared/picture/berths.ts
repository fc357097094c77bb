import type { Berth } from '../documents/sheet.ts';
import { cos, sin } from '../geometry/exact-math.ts';
import type { Mm, PaperPoint } from '../geometry/units.ts';
import type { PictureBerth, PictureLabel } from './shapes.ts';

/** Room that a name of one row needs above or below a berth, and beside its middle. */
const NAME = { height: 10, halfWidth: 26, gap: 2.5 } as const;

interface Extent {
  readonly w: Mm;
  readonly h: Mm;
}

/** The dashed U with its bow, in the place and heading of the berth. */
export function pictureBerth(
  role: PictureBerth['role'],
  berth: Berth,
  text: string,
  sheet: Extent,
): PictureBerth {
  const { at, heading, r } = berth;
  const c = cos(heading);
  const s = sin(heading);
  const place = (ahead: Mm, right: Mm): PaperPoint => ({
    x: at.x + ahead * c - right * s,
    y: at.y + ahead * s + right * c,
  });
  const side = r * 0.72;
  return {
    role,
    at,
    heading,
    r,
    hull: [place(side, -r), place(-r, -r), place(-r, r), place(side, r)],
    bow: [
      [place(side, -r), place(r, -side)],
      [place(side, r), place(r, side)],
    ],
    label: berthLabel(berth, text, sheet, s),
  };
}

/** The name stands above, or below where the robot drives out upwards or the paper ends. */
function berthLabel(berth: Berth, text: string, sheet: Extent, s: number): PictureLabel {
  const { at, r } = berth;
  const roomAbove = at.y - r - NAME.gap >= NAME.height;
  const roomBelow = sheet.h - at.y - r - NAME.gap >= NAME.height;
  const below = roomBelow && (s < -0.5 || !roomAbove);
  const y = below ? at.y + r + NAME.gap : at.y - r - NAME.gap;
  const baseline = below ? 'top' : 'bottom';
  if (at.x < NAME.halfWidth) return { text, at: { x: at.x - r, y }, align: 'left', baseline };
  if (at.x > sheet.w - NAME.halfWidth) return { text, at: { x: at.x + r, y }, align: 'right', baseline };
  return { text, at: { x: at.x, y }, align: 'middle', baseline };
}
