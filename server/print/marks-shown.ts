import type { Ink, Kit } from '../../shared/documents/kit.ts';
import type { Mm, PaperPoint } from '../../shared/geometry/units.ts';
import { COLORS, type Item, type Stroke } from './page.ts';
import { circle, filled, line, path, rectangle, text } from './shapes.ts';

/** How light a colour looks, 0 to 1: on a dark one letters are white. */
function lightness(color: string): number {
  const value = Number.parseInt(color.slice(1), 16);
  return (0.3 * ((value >> 16) & 255) + 0.5 * ((value >> 8) & 255) + 0.2 * (value & 255)) / 255;
}
const DARK = 0.45;

const inkNamed = (kit: Kit, letter: string): Ink | undefined => kit.inks.find(({ id }) => id === letter);

export interface ShownLook {
  readonly size: Mm;
  /** Left white, for a printer without colours. */
  readonly empty?: boolean;
  readonly hatch?: boolean;
}

/** A mark to be looked at: its bands from left to right as squares with rim and letter. `at`: top left. */
export const shownMark = (word: string, at: PaperPoint, kit: Kit, look: ShownLook): Item[] =>
  [...word].flatMap((letter, i) => shownBand(letter, { x: at.x + i * look.size, y: at.y }, kit, look));

function shownBand(
  letter: string,
  { x, y }: PaperPoint,
  kit: Kit,
  { size, empty, hatch }: ShownLook,
): Item[] {
  const ink = inkNamed(kit, letter);
  const color = empty ? COLORS.white : (ink?.color ?? COLORS.white);
  const dark = !empty && lightness(color) < DARK;
  const rim: Stroke = { color: COLORS.ink, width: Math.min(0.5, size / 16) };
  const block = rectangle(x, y, size, size);
  const letterColor = dark && !hatch ? COLORS.white : COLORS.ink;
  const middle = { x: x + size / 2, y: y + size / 2 };
  return [
    filled(block, color),
    ...(hatch ? hatching(ink, { x, y }, size, dark) : []),
    path(block, { ...rim, square: true }),
    ...(hatch ? [filled(circle(middle, size * 0.3), COLORS.white)] : []),
    text(
      letter,
      { x: middle.x, y: middle.y + size * 0.17 },
      {
        size: size * (hatch ? 0.48 : 0.62),
        bold: true,
        align: 'middle',
        color: letterColor,
      },
    ),
  ];
}

/** The hatch of an ink over a square, in strokes of the unit square. */
const STROKES = {
  diagonal: [
    [0, 0.5, 0.5, 0],
    [0, 1, 1, 0],
    [0.5, 1, 1, 0.5],
  ],
  cross: [
    [0.33, 0, 0.33, 1],
    [0.67, 0, 0.67, 1],
  ],
  along: [
    [0, 0.33, 1, 0.33],
    [0, 0.67, 1, 0.67],
  ],
  dots: [],
} as const;
const DOTS = [
  [0.2, 0.2],
  [0.8, 0.2],
  [0.2, 0.8],
  [0.8, 0.8],
] as const;

function hatching(ink: Ink | undefined, { x, y }: PaperPoint, size: Mm, dark: boolean): Item[] {
  const color = dark ? COLORS.white : COLORS.ink;
  if (!ink) return [];
  if (ink.hatch === 'dots')
    return DOTS.map(([right, down]) =>
      filled(circle({ x: x + right * size, y: y + down * size }, size / 14), color),
    );
  return STROKES[ink.hatch].map(([a, b, c, d]) =>
    line(
      { x: x + a * size, y: y + b * size },
      { x: x + c * size, y: y + d * size },
      {
        color,
        width: size / 24,
        square: true,
      },
    ),
  );
}
