import type { Mm, PaperPoint } from '../../shared/geometry/units.ts';
import { poseAt, type Replay, type ReplayReading } from '../../shared/picture/replay.ts';
import { COLOUR } from './colours.ts';
import { type Painter, paintLabel, tracePoints } from './painter.ts';

/** From the middle of a mark to the number of its reading, mm beyond half the letters. */
const BESIDE: Mm = 8;

/** A whole run as one picture: the way of the axle, and a number at each mark in the order of reading. */
export const paintWay =
  (replays: readonly Replay[], textSize: number): Painter =>
  (ctx, pixel) => {
    ctx.lineCap = 'round';
    ctx.lineJoin = 'round';
    for (const { trace } of replays) {
      const { x, y } = trace.samples;
      ctx.beginPath();
      tracePoints(
        ctx,
        x.map((value, i) => ({ x: value, y: y[i]! })),
      );
      ctx.strokeStyle = COLOUR.sheet;
      ctx.lineWidth = 3.4 * pixel;
      ctx.stroke();
      ctx.strokeStyle = COLOUR.accent;
      ctx.lineWidth = 1.8 * pixel;
      ctx.stroke();
    }
    for (const replay of replays)
      for (const { text, at } of numbered(replay, BESIDE + (textSize * pixel) / 2))
        paintLabel(ctx, { text, at, align: 'middle', baseline: 'middle' }, textSize, pixel, COLOUR.accent);
  };

/** What was read again has both numbers. */
function numbered(
  { readings, trace }: Replay,
  off: Mm,
): { readonly text: string; readonly at: PaperPoint }[] {
  const places = new Map<string, { readonly first: ReplayReading; readonly numbers: number[] }>();
  readings.forEach((reading, i) => {
    const key = `${reading.at.x} ${reading.at.y}`;
    const place = places.get(key);
    if (place) place.numbers.push(i + 1);
    else places.set(key, { first: reading, numbers: [i + 1] });
  });
  return [...places.values()].map(({ first, numbers }) => {
    const { x, y } = poseAt(trace, first.t).heading;
    return { text: numbers.join(', '), at: { x: first.at.x + y * off, y: first.at.y - x * off } };
  });
}
