import { pathFrom, pathPart } from '../../shared/geometry/path.ts';
import type { Seconds } from '../../shared/geometry/units.ts';
import { coveredAt, type Replay, type ReplayAct } from '../../shared/picture/replay.ts';
import { COLOUR } from './colours.ts';
import { type Painter, tracePieces } from './painter.ts';

/** From the middle of the line to the dashed edge of a fast stretch, mm, on top of half its width. */
const EDGE = 4.5;
const DASH = [5, 3.2] as const;
/** From one dash of the edge to the next, mm: less than a robot covers behind its axle. */
export const FAST_STEP = DASH[0] + DASH[1];

/**
 * Two dashed accent lines along what was driven fast by time `t`. A wide dashed stroke whose inside is
 * taken out again: so both edges go round corners and bends without a fold. To be painted first on a
 * layer that has nothing under it.
 */
export const paintFastEdges =
  (replays: readonly Replay[], t: Seconds): Painter =>
  (ctx, pixel) => {
    const runs = replays.flatMap((replay) =>
      replay.fast.flatMap((part) => {
        const covered = coveredAt(part, t);
        if (!covered) return [];
        const pieces = pathFrom(pathPart(part.line.path, covered.from, covered.to)).pieces;
        return [{ pieces, half: part.line.width / 2 + EDGE }];
      }),
    );
    const edge = Math.max(0.9, 2 * pixel);
    ctx.lineCap = 'butt';
    ctx.lineJoin = 'round';
    ctx.strokeStyle = COLOUR.accent;
    ctx.setLineDash([...DASH]);
    for (const { pieces, half } of runs) stroke(ctx, pieces, 2 * half + edge);
    ctx.setLineDash([]);
    ctx.lineCap = 'round';
    ctx.globalCompositeOperation = 'destination-out';
    for (const { pieces, half } of runs) stroke(ctx, pieces, 2 * half - edge);
  };

function stroke(
  ctx: CanvasRenderingContext2D,
  pieces: Parameters<typeof tracePieces>[1],
  width: number,
): void {
  ctx.beginPath();
  tracePieces(ctx, pieces);
  ctx.lineWidth = width;
  ctx.stroke();
}

/** A tick across the line where a mark acts, with a foot at each end. */
export const paintActs =
  (acts: readonly Pick<ReplayAct, 'at' | 'along'>[]): Painter =>
  (ctx, pixel) => {
    for (const { at, along } of acts) {
      const across = { x: -along.y, y: along.x };
      const reach = 6.5;
      ctx.beginPath();
      for (const side of [-1, 1]) {
        const end = { x: at.x + across.x * reach * side, y: at.y + across.y * reach * side };
        ctx.moveTo(at.x + across.x * 3.4 * side, at.y + across.y * 3.4 * side);
        ctx.lineTo(end.x, end.y);
        ctx.moveTo(end.x - along.x * 1.6, end.y - along.y * 1.6);
        ctx.lineTo(end.x + along.x * 1.6, end.y + along.y * 1.6);
      }
      ctx.lineCap = 'round';
      ctx.lineWidth = Math.max(1, 2.2 * pixel);
      ctx.strokeStyle = COLOUR.accent;
      ctx.stroke();
    }
  };
