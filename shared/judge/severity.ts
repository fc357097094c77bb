import type { Ending, Trace } from '../documents/trace.ts';
import type { Finding, RuleId, Severity } from '../documents/verdict.ts';
import { distance } from '../geometry/exact-math.ts';
import type { Mm, PaperPoint } from '../geometry/units.ts';

/** A robot that loses the line goes on for a while and searches: its failure lies within so much of the fault. */
const NEAR: Mm = 40;

/**
 * Which failures a fault of this rule can bring about. A mark that is misread sends the robot the wrong
 * way, but it never takes the line from under it.
 */
const CAUSES: Readonly<Partial<Record<RuleId, readonly Ending[]>>> = {
  'R-line-width': ['lost', 'off-paper'],
  'R-corner': ['lost', 'off-paper'],
  'R-curve-radius': ['lost', 'off-paper'],
  'R-clearance': ['lost', 'off-paper'],
  'R-margin': ['off-paper'],
  'R-start-on-line': ['never-started', 'lost', 'off-paper'],
};

/**
 * Rules propose from the drawing alone. A finding stops the robot only where an undisturbed run
 * really fails near its place; one that a rule took for stopping, but every run passes, may stop it.
 */
export const settleSeverities = (findings: readonly Finding[], traces: readonly Trace[]): Finding[] =>
  findings.map((finding) => ({ ...finding, severity: settled(finding, traces) }));

function settled(finding: Finding, traces: readonly Trace[]): Severity {
  // A line that never comes to the finish is wrong as a whole: the run fails wherever the line ends.
  const stops =
    finding.rule === 'R-finish-reachable'
      ? traces.some(misses)
      : traces.some((trace) => failsThere(trace, CAUSES[finding.rule] ?? [], finding.place.at));
  if (stops) return 'stops';
  return finding.severity === 'stops' ? 'may-stop' : finding.severity;
}

function failsThere(trace: Trace, endings: readonly Ending[], place: PaperPoint): boolean {
  const end = trace.events.findLast((event) => event.kind === 'end');
  return endings.includes(trace.ending) && end !== undefined && distance(end, place) <= NEAR;
}

const misses = (trace: Trace): boolean => trace.finish !== undefined && trace.finish > 0;
