import type { Severity } from '../../shared/documents/verdict.ts';
import { atan2 } from '../../shared/geometry/exact-math.ts';
import { shapeOf } from '../../shared/geometry/piece.ts';
import type { Mm, PaperPoint } from '../../shared/geometry/units.ts';
import type { Missing } from '../../shared/picture/missing.ts';
import { COLOUR } from './colours.ts';
import { type Painter, strokeGhost, tracePieces } from './painter.ts';

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

/** Where the finger would catch: a ring for a place that was there, like a line's end, else a cross. */
export const paintCatch =
  (at: PaperPoint, kind: 'place' | 'spot'): Painter =>
  (ctx, pixel) => {
    ctx.strokeStyle = COLOUR.accent;
    ctx.lineWidth = 2.5 * pixel;
    ctx.beginPath();
    if (kind === 'spot') {
      const reach = 9 * pixel;
      ctx.moveTo(at.x - reach, at.y);
      ctx.lineTo(at.x + reach, at.y);
      ctx.moveTo(at.x, at.y - reach);
      ctx.lineTo(at.x, at.y + reach);
    } else ctx.arc(at.x, at.y, 13 * pixel, 0, 2 * Math.PI);
    ctx.stroke();
  };

/** Arms of a wedge and the bow between them, mm. */
const WEDGE = { arm: 32, bow: 16 } as const;

function traceMissing(ctx: CanvasRenderingContext2D, missing: Missing): void {
  switch (missing.kind) {
    case 'circle':
      ctx.arc(missing.at.x, missing.at.y, missing.radius, 0, 2 * Math.PI);
      break;
    case 'stretch':
      tracePieces(ctx, missing.pieces.map(shapeOf));
      break;
    case 'wedge': {
      const { at, arm, sweep } = missing;
      const start = atan2(arm.y, arm.x);
      ctx.arc(at.x, at.y, WEDGE.bow, start, start + sweep, sweep < 0);
      ctx.moveTo(at.x, at.y);
      ctx.lineTo(at.x + Math.cos(start + sweep) * WEDGE.arm, at.y + Math.sin(start + sweep) * WEDGE.arm);
    }
  }
}

/** A dashed ghost of how much there should be; along a line, as a broad edge on both of its sides. */
export const paintMissing =
  (missing: Missing, width: Mm): Painter =>
  (ctx, pixel) => {
    ctx.beginPath();
    traceMissing(ctx, missing);
    ctx.lineCap = 'butt';
    ctx.lineJoin = 'round';
    if (missing.kind === 'stretch') {
      ctx.lineWidth = width + 14 * pixel;
      ctx.globalAlpha = 0.3;
      ctx.strokeStyle = COLOUR.accent;
      ctx.stroke();
      ctx.globalAlpha = 1;
    }
    strokeGhost(ctx, pixel);
  };
