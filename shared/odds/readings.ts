import type { Mm } from '../geometry/units.ts';
import { MODEL } from '../run/model.ts';
import { halfWidth } from './motion.ts';
import type { Road, RoadMap, RoadMark } from './roads.ts';

export interface RoadReading {
  /** Way of the bar at which the word is understood. */
  readonly at: Mm;
  readonly word: string;
}

/**
 * The marks of a road that a robot understands whose bar has seen nothing but plain line since the way
 * `plainFrom`: enough black before and after, straight enough line under the bands, and done before the bar
 * sees a corner or junction.
 */
export function readingsOn(map: RoadMap, road: Road, plainFrom: Mm): RoadReading[] {
  const last = road.end === 'round' || road.end === 'end' ? road.length : road.length - halfWidth(map.kit);
  const readings: RoadReading[] = [];
  let plain = plainFrom;
  const marks = [...road.marks].sort((a, b) => a.from - b.from);
  marks.forEach((mark, i) => {
    if (mark.to <= plain) return;
    const at = mark.to + MODEL.blackAfter;
    const next = marks[i + 1];
    const begun = mark.from - plain >= MODEL.blackBefore;
    const ended = at <= last && (!next || next.from >= at);
    if (begun && ended && mark.word !== undefined && isStraight(map, road, mark)) {
      readings.push({ at, word: mark.word });
    }
    plain = mark.to;
  });
  return readings;
}

/** A bend shorter than this does not throw the bar so far out. */
const SHORT_BEND: Mm = 6;

/** Whether the line stays near the middle of the bar from the mark's first band to the end of its word. */
function isStraight({ kit }: RoadMap, road: Road, mark: RoadMark): boolean {
  const most = MODEL.readWithin * kit.robot.sensorPitch;
  return !road.bends.some((bend) => {
    const low = Math.max(bend.from, mark.from - MODEL.blackBefore);
    const high = Math.min(bend.to, mark.to + MODEL.blackAfter);
    return bend.offset > most && high - low > SHORT_BEND;
  });
}
