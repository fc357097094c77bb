import type { Robot } from '../../shared/documents/kit.ts';
import type { Mm } from '../../shared/geometry/units.ts';
import type { Pose } from '../../shared/picture/replay.ts';
import { type RobotLook, robotShapes } from './robot-shapes.ts';
import { toScreen, type View } from './view.ts';

/** Around the outline, mm: half a stroke of it. */
const RIM: Mm = 1.5;
const SVG = 'http://www.w3.org/2000/svg';

/**
 * Draws a robot on an element of its own, which is then only moved and turned. No canvas: a browser without a
 * graphics processor copies every canvas that it moves at each frame, and draws larger ones more slowly. Shows the
 * first of its looks. `scale` in CSS pixels a mm.
 */
export function paintSprite(
  sprite: SVGSVGElement,
  robot: Robot,
  scale: number,
  looks: readonly RobotLook[],
): void {
  const behind = robot.axleToRear + RIM;
  const aside = robot.width / 2 + RIM;
  const [w, h] = [robot.length + 2 * RIM, 2 * aside];
  sprite.setAttribute('viewBox', `${-behind} ${-aside} ${w} ${h}`);
  Object.assign(sprite.style, {
    width: `${w * scale}px`,
    height: `${h * scale}px`,
    left: `${-behind * scale}px`,
    top: `${-aside * scale}px`,
    transformOrigin: `${behind * scale}px ${aside * scale}px`,
  });
  sprite.replaceChildren(...looks.map((look) => groupOf(robot, look)));
  showLook(sprite, 0);
}

function groupOf(robot: Robot, look: RobotLook): SVGGElement {
  const group = document.createElementNS(SVG, 'g');
  for (const { d, fill = 'none', stroke = 'none', width = 0 } of robotShapes(robot, look)) {
    const path = document.createElementNS(SVG, 'path');
    for (const [name, value] of Object.entries({ d, fill, stroke, 'stroke-width': String(width) }))
      path.setAttribute(name, value);
    group.append(path);
  }
  return group;
}

/** Shows one of the looks that a sprite was painted with, by its number. */
export function showLook(sprite: SVGSVGElement, shown: number): void {
  [...sprite.children].forEach((group, i) => {
    group.setAttribute('visibility', i === shown ? 'visible' : 'hidden');
  });
}

/** Puts the middle of a sprite's axle to the place of the sheet where the robot stands, turned as it is. */
export function moveSprite(sprite: SVGSVGElement, view: View, { at, heading }: Pose): void {
  const { px, py } = toScreen(view, at);
  const { x, y } = heading;
  sprite.style.transform = `matrix(${[x, y, -y, x, px, py].map((value) => value.toFixed(4)).join()})`;
}
