import type { Trace } from '../documents/trace.ts';
import type { DriveOptions, World } from './world.ts';

/** One run of one robot, from its berth to its end. Refuses a start from a finish berth that the sheet lacks. */
export function drive(_world: World, _options: DriveOptions): Trace {
  throw new RangeError('driving begins with the next change');
}
