/** Linear light, 0 to 1, of an sRGB channel 0 to 255 (IEC 61966-2-1), without Math.pow. */
export function linearLight(channel: number): number {
  const s = channel / 255;
  if (s <= 0.04045) return s / 12.92;
  const x = (s + 0.055) / 1.055;
  return x * x * fifthRoot(x * x);
}

/** By Newton's method from above; the number of rounds is fixed, so the bits are too. */
function fifthRoot(value: number): number {
  let root = 1;
  for (let round = 0; round < 40; round++) {
    const fourth = root * root * root * root;
    root -= (root * fourth - value) / (5 * fourth);
  }
  return root;
}

/** Relative luminance, 0 to 1, of `#RRGGBB` (IEC 61966-2-1; ITU-R BT.709 primaries). */
export function luminance(color: string): number {
  const channel = (at: number): number => linearLight(Number.parseInt(color.slice(at, at + 2), 16));
  return 0.2126 * channel(1) + 0.7152 * channel(3) + 0.0722 * channel(5);
}

/** Light that comes back from the surface itself, whatever is drawn on it. */
const GLARE = 0.05;

/** How many times as much light comes from one colour as from the other (WCAG 2.2, contrast ratio); below 1 where it is less. */
export const timesAsLight = (color: string, other: string): number =>
  (luminance(color) + GLARE) / (luminance(other) + GLARE);
