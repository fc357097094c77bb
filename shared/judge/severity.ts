import type { RunEvent, Trace } from '../documents/trace.ts';
import type { Finding, Severity } from '../documents/verdict.ts';
import { distance } from '../geometry/exact-math.ts';
import type { Mm, PaperPoint } from '../geometry/units.ts';

/** A robot that loses the line goes on for a while and searches: its failure lies within so much of the fault. */
const NEAR: Mm = 40;

/**
 * Rules propose from the drawing alone. A finding stops the robot only where an undisturbed run
 * really fails near its place; one that a rule took for stopping, but every run passes, may stop it.
 */
export function settleSeverities(findings: readonly Finding[], traces: readonly Trace[]): Finding[] {
  const failures = traces.flatMap((trace) => failureOf(trace) ?? []);
  return findings.map((finding) => ({ ...finding, severity: settled(finding, failures, traces) }));
}

function settled(finding: Finding, failures: readonly PaperPoint[], traces: readonly Trace[]): Severity {
  // A line that never comes to the finish is wrong as a whole: the run fails wherever the line ends.
  if (finding.rule === 'R-finish-reachable') return traces.some(misses) ? 'stops' : finding.severity;
  const fails = failures.some((place) => distance(place, finding.place.at) <= NEAR);
  if (fails) return 'stops';
  return finding.severity === 'stops' ? 'may-stop' : finding.severity;
}

/** Where a run came to grief, or undefined where it ended by itself. */
function failureOf(trace: Trace): PaperPoint | undefined {
  if (trace.ending !== 'lost' && trace.ending !== 'off-paper' && trace.ending !== 'never-started')
    return undefined;
  const last = trace.events.findLast((event: RunEvent) => event.kind === 'end');
  return last && { x: last.x, y: last.y };
}

const misses = (trace: Trace): boolean => trace.finish !== undefined && trace.finish > 0;
