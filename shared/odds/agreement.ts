import type { RunEventOf, Trace } from '../documents/trace.ts';
import { distance } from '../geometry/exact-math.ts';
import type { Mm, PaperPoint, Seconds } from '../geometry/units.ts';
import type { Track } from '../track/track.ts';
import type { Lead, TrackChain, TrackEnding } from './track-chain.ts';

/** Where a chain leads a robot that takes given ways. */
interface Foretold {
  readonly ending: TrackEnding | 'endless' | 'on the way' | 'otherwise';
  readonly t: Seconds;
}

/** An event of a run this near to a junction of the track belongs to it. */
const AT_JUNCTION: Mm = 15;
/** How far a run may end from where it was said to. */
const SAME_END: Mm = 25;
/** How much a run may take longer or shorter. */
const SAME_TIME: Seconds = 0.25;
const SAME_TIME_SHARE = 0.02;
const slackAt = (t: Seconds): Seconds => SAME_TIME + SAME_TIME_SHARE * t;
/** A run goes on for so long after its end. */
const AFTER_END: Seconds = 0.5;

/**
 * Whether undisturbed runs do what a chain says: each comes to the same forks with the same ways, and ends
 * in the same way, place and time.
 */
export const agrees = (chain: TrackChain, track: Track, runs: readonly Trace[], limit: Seconds): boolean =>
  runs.every((run) => agreesWith(chain, track, run, limit));

function agreesWith(chain: TrackChain, track: Track, run: Trace, limit: Seconds): boolean {
  const { ending, t } = foretell(chain, decisionsOf(run, track), limit);
  if (ending === 'otherwise') return false;
  if (run.ending === 'time-up') return t > limit - slackAt(limit);
  if (typeof ending === 'string' || ending.ending !== run.ending) return false;
  const end = run.events.findLast((event) => event.kind === 'end')!;
  const arrival = run.events.find((event) => event.kind === 'finish');
  if ((arrival !== undefined) !== ending.arrived) return false;
  if (run.ending === 'never-started') return true;
  const measured = arrival?.t ?? end.t - AFTER_END;
  if (Math.abs(measured - t) > slackAt(t)) return false;
  return ending.ending === 'finished' || distance(end, ending.at) <= SAME_END;
}

type Decided = RunEventOf<'junction'>;

/** What the run left to chance, but for corners that it took for junctions: all ways lead on from there. */
function decisionsOf(run: Trace, track: Track): Decided[] {
  const near = (p: PaperPoint): boolean =>
    track.nodes.some((node) => node.kind === 'junction' && distance(node.at, p) <= AT_JUNCTION);
  return run.events.filter(
    (event): event is Decided => event.kind === 'junction' && event.by === 'chance' && near(event),
  );
}

function foretell(chain: TrackChain, decisions: readonly Decided[], limit: Seconds): Foretold {
  let lead: Lead = chain.first;
  let t = 0;
  for (let i = 0; ; i++) {
    if (lead.to === 'endless') return { ending: 'endless', t: Number.POSITIVE_INFINITY };
    t += lead.time;
    if (lead.to === 'ending')
      return { ending: i === decisions.length ? chain.endings[lead.index]! : 'otherwise', t };
    const decided = decisions[i];
    if (!decided) return { ending: t > limit - slackAt(limit) ? 'on the way' : 'otherwise', t };
    const { branches } = chain.forks[lead.index]!;
    const taken = branches.find(({ way }) => way === decided.took);
    if (!taken || branches.length !== decided.arms.length) return { ending: 'otherwise', t };
    lead = taken.leads;
  }
}
