import type { Robot } from '../../shared/documents/kit.ts';
import type { Mm } from '../../shared/geometry/units.ts';
import type { Pose } from '../../shared/picture/replay.ts';
import { paintRobot, type RobotLook } from './paint-robot.ts';
import { toScreen, type View } from './view.ts';

/** Pixels of the sprite a CSS pixel, on every screen: turned by any angle, it stays sharp. */
const DENSITY = 2;
/** Around the outline, mm: half a stroke of it. */
const RIM: Mm = 1.5;

/**
 * Paints a robot on a canvas of its own, which is then only moved and turned: no frame of a replay has
 * to paint and hand over a canvas as large as the sheet. `scale` in CSS pixels a mm.
 */
export function paintSprite(canvas: HTMLCanvasElement, robot: Robot, scale: number, look: RobotLook): void {
  const behind = robot.axleToRear + RIM;
  const aside = robot.width / 2 + RIM;
  const width = Math.ceil((robot.length + 2 * RIM) * scale);
  const height = Math.ceil(2 * aside * scale);
  canvas.width = width * DENSITY;
  canvas.height = height * DENSITY;
  const [left, top] = [behind * scale, aside * scale];
  Object.assign(canvas.style, {
    width: `${width}px`,
    height: `${height}px`,
    left: `${-left}px`,
    top: `${-top}px`,
    transformOrigin: `${left}px ${top}px`,
  });
  const ctx = canvas.getContext('2d')!;
  ctx.scale(DENSITY, DENSITY);
  ctx.translate(left, top);
  ctx.scale(scale, scale);
  paintRobot({ at: { x: 0, y: 0 }, heading: { x: 1, y: 0 } }, robot, look)(ctx, 1 / scale);
}

/** Puts the middle of a sprite's axle to the place of the sheet where the robot stands, turned as it is. */
export function moveSprite(canvas: HTMLCanvasElement, view: View, { at, heading }: Pose): void {
  const { px, py } = toScreen(view, at);
  const { x, y } = heading;
  canvas.style.transform = `matrix(${[x, y, -y, x, px, py].map((value) => value.toFixed(4)).join()})`;
}
