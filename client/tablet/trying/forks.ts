import type { Way } from '../../../shared/documents/kit.ts';
import type { RunEventOf, Trace } from '../../../shared/documents/trace.ts';
import type { Direction } from '../../../shared/geometry/piece.ts';
import type { PaperPoint, Seconds } from '../../../shared/geometry/units.ts';
import { poseAt } from '../../../shared/picture/replay.ts';

/** One way on from a junction that nothing decides. */
export interface ForkWay {
  readonly way: Way;
  /** Of those that come here. */
  readonly chance: number;
  /** The likeliest run that takes it. */
  readonly trace: Trace;
  readonly heading: Direction;
}

/** A junction at which the robot of a run chose by itself. */
export interface Fork {
  readonly t: Seconds;
  readonly at: PaperPoint;
  readonly took: Way;
  readonly ways: readonly ForkWay[];
}

type Chance = RunEventOf<'junction'>;

const chancesOf = ({ events }: Trace): Chance[] =>
  events.filter((event): event is Chance => event.kind === 'junction' && event.by === 'chance');

const TURN: Readonly<Record<Way, (d: Direction) => Direction>> = {
  left: ({ x, y }) => ({ x: y, y: -x }),
  straight: (d) => d,
  right: ({ x, y }) => ({ x: -y, y: x }),
};
const ORDER: readonly Way[] = ['left', 'straight', 'right'];

/** All such junctions of a run, in order, with what the other runs did that had come the same way until there. */
export function forksOf(traces: readonly Trace[], shown: Trace): Fork[] {
  const taken = chancesOf(shown);
  return taken.map((event, k) => {
    const alike = traces.filter(
      (trace) =>
        trace.start === shown.start &&
        chancesOf(trace)
          .slice(0, k)
          .every((one, i) => one.took === taken[i]!.took),
    );
    const here = alike.filter((trace) => chancesOf(trace)[k]);
    const sum = (some: readonly Trace[]) => some.reduce((total, { probability }) => total + probability, 0);
    const whole = sum(here);
    const heading = poseAt(shown, event.t).heading;
    const ways = ORDER.flatMap((way): ForkWay[] => {
      const going = here.filter((trace) => chancesOf(trace)[k]!.took === way);
      const likeliest = [...going].sort((a, b) => b.probability - a.probability)[0];
      if (!likeliest) return [];
      const trace = way === event.took ? shown : likeliest;
      return [{ way, chance: sum(going) / whole, trace, heading: TURN[way](heading) }];
    });
    return { t: event.t, at: { x: event.x, y: event.y }, took: event.took, ways };
  });
}
