import type { Cause, Steadiness, Stray } from '../documents/outlook.ts';
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
  'R-loose-end': ['off-paper'],
  'R-start-on-line': ['never-started', 'lost', 'off-paper'],
};

/** A robot that does not get over a gap stops as at any loose end. */
const BEFORE_GAP: readonly Ending[] = ['stopped', 'lost', 'off-paper'];

const causesOf = ({ rule, variant }: Finding): readonly Ending[] =>
  rule === 'R-loose-end' && variant === 'gap' ? BEFORE_GAP : (CAUSES[rule] ?? []);

/** Rules of the challenge rather than of driving: what breaks them counts for nothing, however it drives. */
const OF_CHALLENGE: readonly RuleId[] = [
  'R-keep-out',
  'R-given-lines',
  'R-ink-budget',
  'R-mark-budget',
  'R-mark-box',
];

/** A line that leads past an area breaks the challenge only where a robot really reaches in. */
const isBroken = ({ rule, variant }: Finding, traces: readonly Trace[]): boolean =>
  OF_CHALLENGE.includes(rule) &&
  (variant !== 'near' || traces.some((trace) => Object.values(trace.keepOut).some((margin) => margin < 0)));

/** How a disturbed robot goes astray where a rule of lines, or a rule of marks, is broken. */
const ASTRAY = {
  line: ['never-started', 'lost', 'off-paper', 'time-up', 'other-branch', 'other-end'],
  mark: ['mark-missed', 'mark-misread', 'other-branch'],
} as const satisfies Record<string, readonly Cause[]>;

/** Fewer than 19 of 20 robots: two of them went astray. */
const TOO_MANY_ASTRAY = 2;

/**
 * Rules propose from the drawing alone. A finding stops the robot only where an undisturbed run really
 * fails near its place; one that a rule took for stopping, but every run passes, may stop it. Where
 * disturbed robots were driven too, they decide between "may stop" and "untidy", wherever a run tries it.
 */
export const settleSeverities = (
  findings: readonly Finding[],
  traces: readonly Trace[],
  steadiness?: Steadiness,
): Finding[] => findings.map((finding) => ({ ...finding, severity: settled(finding, traces, steadiness) }));

function settled(finding: Finding, traces: readonly Trace[], steadiness: Steadiness | undefined): Severity {
  if (isBroken(finding, traces)) return 'stops';
  // What is still to be drawn is no fault on the way: the goals tell that nobody arrives.
  if (finding.rule === 'R-finish-reachable') return finding.severity;
  if (traces.some((trace) => failsThere(trace, causesOf(finding), finding.place.at))) return 'stops';
  const proposed = finding.severity === 'stops' ? 'may-stop' : finding.severity;
  if (!steadiness || !traces.some((trace) => isTried(trace, finding))) return proposed;
  const astray = steadiness.strays.filter((stray) => isOf(stray, finding)).length;
  const loses = (trace: Trace): boolean => losesChoice(trace, finding) || wastesChoice(trace, finding);
  if (astray >= TOO_MANY_ASTRAY || traces.some(loses)) return 'may-stop';
  return 'untidy';
}

function failsThere(trace: Trace, endings: readonly Ending[], place: PaperPoint): boolean {
  const end = trace.events.findLast((event) => event.kind === 'end');
  return endings.includes(trace.ending) && end !== undefined && distance(end, place) <= NEAR;
}

/** Whether a run tells something of a finding: it comes by, and where it is about a mark, reads that mark. */
function isTried({ samples, events }: Trace, { place }: Finding): boolean {
  if (place.kind === 'mark')
    return events.some((event) => event.kind === 'read' && event.mark === place.mark);
  return samples.x.some((x, i) => distance({ x, y: samples.y[i]! }, place.at) <= NEAR);
}

/** Whether a robot went astray by what the finding is about. */
function isOf(stray: Stray, { rule, place }: Finding): boolean {
  const causes: readonly Cause[] = place.kind === 'mark' ? ASTRAY.mark : ASTRAY.line;
  const reads = rule === 'R-line-width' && ASTRAY.mark.some((cause) => cause === stray.cause);
  if (!causes.includes(stray.cause) && !reads) return false;
  if (place.kind === 'mark' && stray.mark !== undefined) return stray.mark === place.mark;
  return distance(stray.at, place.at) <= NEAR;
}

/** A corner that is taken for a junction uses up a waiting choice, which is then missing at its junction. */
const losesChoice = (trace: Trace, { rule, place }: Finding): boolean =>
  rule === 'R-corner' &&
  trace.events.some(
    (event) => event.kind === 'junction' && event.by === 'mark' && distance(event, place.at) <= AT_CORNER,
  );

/** A choice for an arm that is not there leaves the next junction to chance. */
const wastesChoice = ({ events }: Trace, { rule, place }: Finding): boolean =>
  rule === 'R-missing-arm' &&
  events.some((event, i) => {
    const read = event.kind === 'act' ? events[event.read] : undefined;
    if (read?.kind !== 'read' || place.kind !== 'mark' || read.mark !== place.mark) return false;
    const junction = events.slice(i).find((later) => later.kind === 'junction');
    return junction?.kind === 'junction' && junction.by === 'chance';
  });

/** mm from a corner at which the robot decides about it. */
const AT_CORNER: Mm = 15;
