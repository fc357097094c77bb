import type { Severity } from '../../shared/documents/verdict.ts';
import type { PaperPoint } from '../../shared/geometry/units.ts';
import { COLOUR } from './colours.ts';
import type { Painter } from './painter.ts';

const RING: Readonly<Record<Severity, string>> = {
  stops: COLOUR.stops,
  'may-stop': COLOUR.caution,
  untidy: COLOUR.quiet,
};

export interface Ring {
  readonly at: PaperPoint;
  readonly severity: Severity;
  /** The one whose callout is open. */
  readonly chosen: boolean;
}

/** A quiet ring at each place; the thicker the worse, so that colour isn't needed to tell. */
export const paintRings =
  (rings: readonly Ring[]): Painter =>
  (ctx, pixel) => {
    for (const { at, severity, chosen } of rings) {
      const radius = (chosen ? 19 : 15) * pixel;
      ctx.beginPath();
      ctx.arc(at.x, at.y, radius, 0, 2 * Math.PI);
      ctx.strokeStyle = COLOUR.sheet;
      ctx.lineWidth = 7 * pixel;
      ctx.stroke();
      ctx.strokeStyle = RING[severity];
      ctx.lineWidth = (severity === 'stops' ? 4 : 3) * pixel;
      if (severity === 'untidy') ctx.setLineDash([6 * pixel, 4 * pixel]);
      ctx.stroke();
      ctx.setLineDash([]);
    }
  };

/** Where the finger would catch: a ring for a line's end or berth, a cross for a place on the grid. */
export const paintCatch =
  (at: PaperPoint, kind: 'end' | 'line' | 'berth' | 'grid' | 'angle' | 'free'): Painter =>
  (ctx, pixel) => {
    ctx.strokeStyle = COLOUR.accent;
    ctx.lineWidth = 2.5 * pixel;
    ctx.beginPath();
    if (kind === 'free' || kind === 'grid' || kind === 'angle') {
      const reach = 9 * pixel;
      ctx.moveTo(at.x - reach, at.y);
      ctx.lineTo(at.x + reach, at.y);
      ctx.moveTo(at.x, at.y - reach);
      ctx.lineTo(at.x, at.y + reach);
    } else ctx.arc(at.x, at.y, 13 * pixel, 0, 2 * Math.PI);
    ctx.stroke();
  };
