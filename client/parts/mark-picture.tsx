import type { Kit } from '../../shared/documents/kit.ts';
import { useKitOnScreen } from './kit-on-screen.ts';
import './mark-picture.css';

export interface MarkPictureProps {
  readonly kit: Kit;
  readonly word: string;
  /** For pens and paper: in the kit's own colours, whatever the screen shows. */
  readonly onPaper?: boolean;
  /** Side of a band, CSS pixels. */
  readonly size?: number;
}

const LIGHT = 0.45;

/** How light an ink looks, 0 to 1: a dark one gets a light hatch. */
function lightness(color: string): number {
  const value = Number.parseInt(color.slice(1), 16);
  return (0.3 * ((value >> 16) & 255) + 0.5 * ((value >> 8) & 255) + 0.2 * (value & 255)) / 255;
}

const HATCH = {
  diagonal: 'M0 10L10 0M0 20L20 0M10 20L20 10',
  cross: 'M6.7 0V20M13.3 0V20',
  along: 'M0 6.7H20M0 13.3H20',
  dots: 'M6 6h0M14 6h0M6 14h0M14 14h0',
} as const;

/** A mark as it lies on a line that runs from left to right: colour, hatch and a rim of ink. */
export function MarkPicture({ kit, word, onPaper = false, size = 20 }: MarkPictureProps) {
  const shown = useKitOnScreen(kit);
  const { inks } = onPaper ? kit : shown;
  const bands = [...word].map((letter, place) => ({ place, ink: inks.find((ink) => ink.id === letter) }));
  return (
    <svg
      className="mark-picture"
      width={size * bands.length + 2}
      height={size + 2}
      viewBox={`-1 -1 ${bands.length * 20 + 2} 22`}
      aria-hidden="true"
      focusable="false"
    >
      {bands.map(({ place, ink }) => (
        <g key={place} transform={`translate(${place * 20} 0)`}>
          <rect width="20" height="20" style={{ fill: ink?.color ?? kit.line.color }} />
          <path
            d={HATCH[ink?.hatch ?? 'cross']}
            data-hatch={ink?.hatch === 'dots' ? 'dots' : 'strokes'}
            data-light={lightness(ink?.color ?? kit.line.color) < LIGHT}
          />
          <rect width="20" height="20" className="mark-picture-rim" />
        </g>
      ))}
    </svg>
  );
}
