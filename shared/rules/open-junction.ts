import type { Finding } from '../documents/verdict.ts';
import { distance } from '../geometry/exact-math.ts';
import type { PaperPoint } from '../geometry/units.ts';
import type { Track } from '../track/track.ts';
import { findingAt, pointPlace } from './findings.ts';

/**
 * Where the robot decides by itself so often that not every run can be followed, the junction that lies
 * first on its way is the one to decide: each of the others is met behind it. No drawing tells of that, only
 * runs do, so this is not in the list of rules; `at` is where the robot decided.
 */
export function openJunction({ nodes }: Track, at: PaperPoint, followed: number): Finding {
  const junctions = nodes.filter((node) => node.kind === 'junction').map((node) => node.at);
  const [nearest = at] = junctions.sort((a, b) => distance(a, at) - distance(b, at));
  return findingAt('R-open-junction', pointPlace(nearest), {
    severity: 'may-stop',
    allowed: followed,
    unit: 'count',
    remedy: 'decide-junction',
  });
}
