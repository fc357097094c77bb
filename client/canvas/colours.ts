/** The look's colours for painting on a canvas, the same as in `client/parts/theme.css`. */
export const COLOUR = {
  sheet: '#ffffff',
  gridFine: '#ede5d6',
  grid: '#dcd0ba',
  ink: '#16181d',
  given: '#33363f',
  quiet: '#5b6070',
  paper: '#fbf7ef',
  table: '#f3ecdd',
  rule: '#ddd3c0',
  accent: '#24478f',
  accentWash: '#e9edf6',
  met: '#2e7d4f',
  caution: '#9a5200',
  cautionWash: '#fbeedd',
  stops: '#b3261e',
} as const;

export const FACE = '"Hyperlegible", "Verdana", "DejaVu Sans", sans-serif';

/** Channels of `#rrggbb` weighed for how light an ink looks, 0 to 1. */
function lightness(color: string): number {
  const value = Number.parseInt(color.slice(1), 16);
  const [r, g, b] = [(value >> 16) & 255, (value >> 8) & 255, value & 255];
  return (0.3 * r + 0.5 * g + 0.2 * b) / 255;
}

/** A hatch must stand out from its ink. */
export const hatchColour = (ink: string): string => (lightness(ink) < 0.45 ? COLOUR.sheet : COLOUR.ink);
