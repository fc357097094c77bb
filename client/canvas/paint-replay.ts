import type { ReplayAct } from '../../shared/picture/replay.ts';
import { COLOUR } from './colours.ts';
import type { Painter } from './painter.ts';

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
