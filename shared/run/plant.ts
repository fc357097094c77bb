import type { Mm, MmPerSecond, Rad } from '../geometry/units.ts';
import type { Drivetrain } from './machine.ts';

/** Pose and wheels of a differential drive. Headings are unit vectors on the sheet, y down. */
export interface Rolling {
  /** The middle of the axle. */
  x: Mm;
  y: Mm;
  cos: number;
  sin: number;
  speedLeft: MmPerSecond;
  speedRight: MmPerSecond;
  /** Held over the step. */
  commandLeft: MmPerSecond;
  commandRight: MmPerSecond;
  /** What a wheel truly travels over what its encoder counts. */
  scaleLeft: number;
  scaleRight: number;
  /** By the encoders: way of the axle's middle, and angle turned to the left. */
  odometer: Mm;
  turned: Rad;
}

/**
 * One step of a differential drive whose motors answer with first-order lag: exact in the wheels'
 * travel, and in the pose but for terms of the fifth order in the angle turned. No trigonometry.
 */
export function roll(r: Rolling, d: Drivetrain): void {
  const { commandLeft, commandRight } = r;
  const missLeft = r.speedLeft - commandLeft;
  const missRight = r.speedRight - commandRight;
  const left = commandLeft * d.step + missLeft * d.lagTravel;
  const right = commandRight * d.step + missRight * d.lagTravel;
  r.speedLeft = commandLeft + missLeft * d.lagLeft;
  r.speedRight = commandRight + missRight * d.lagLeft;
  r.odometer += (left + right) * 0.5;
  r.turned += (right - left) * d.perTrack;

  const trueLeft = left * r.scaleLeft;
  const trueRight = right * r.scaleRight;
  // Half of the angle turned, positive to the right, as angles on the sheet are.
  const half = (trueLeft - trueRight) * d.perTrack * 0.5;
  const square = half * half;
  const c = 1 - square * (0.5 - square * (1 / 24));
  const s = half * (1 - square * (1 / 6 - square * (1 / 120)));
  const middleCos = r.cos * c - r.sin * s;
  const middleSin = r.sin * c + r.cos * s;
  const chord = (trueLeft + trueRight) * 0.5 * (1 - square * (1 / 6));
  r.x += chord * middleCos;
  r.y += chord * middleSin;
  const cos = middleCos * c - middleSin * s;
  const sin = middleSin * c + middleCos * s;
  const norm = 1.5 - 0.5 * (cos * cos + sin * sin);
  r.cos = cos * norm;
  r.sin = sin * norm;
}
