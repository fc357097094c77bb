import type { Challenge } from '../documents/challenge.ts';
import type { Design, Drawing } from '../documents/design.ts';
import type { DesignRefusal } from '../documents/refusal.ts';
import type { RunEventOf, Trace } from '../documents/trace.ts';
import {
  ENGINE_VERSION,
  type Finding,
  type GoalResult,
  type Reading,
  type RunSummary,
  type Verdict,
} from '../documents/verdict.ts';
import { measureGoal, type Runs } from '../goals/measure.ts';
import { eventsOf } from '../goals/predicate.ts';
import { costOf } from '../points/cost.ts';
import { pointLines, totalOf } from '../points/points.ts';
import { checkDrawing, ruleContext } from '../rules/rules.ts';
import { idealRuns } from '../run/ideal-runs.ts';
import { worldOf } from '../run/world.ts';
import { canonicalDrawing } from '../track/canonical.ts';
import { layOut } from '../track/layout.ts';
import { refusalOf } from './refusal.ts';
import { settleSeverities } from './severity.ts';

export interface Judged {
  readonly verdict: Verdict;
  /** Beside `verdict.runs`, in the same order. */
  readonly traces: readonly Trace[];
  /** Why the design was not driven: the verdict then has neither findings nor runs, and no goal is met. */
  readonly refusal?: DesignRefusal;
}

/**
 * The front door of the engine: what would happen, what is wrong, which goals are met and what that is
 * worth. Pure and exact: the same challenge and design give the same bits everywhere. Never throws for
 * a challenge and a design that their schemas accept; what can't be judged comes back as a refusal.
 */
export function judge(challenge: Challenge, design: Design, level: Verdict['level']): Judged {
  const refusal = refusalOf(challenge, design);
  if (refusal) {
    const verdict = verdictOf(challenge, design.drawing, level, [], [], unmet(challenge));
    // Also where nothing must be met.
    return { verdict: { ...verdict, met: false }, traces: [], refusal };
  }
  const { sheet, kit, starts } = challenge;
  const drawing = canonicalDrawing(design.drawing, sheet.given);
  // What is driven is the canonical form; what is found wrong is said of the lines that were drawn.
  const runs = idealRuns(worldOf(layOut(sheet, drawing), sheet, kit), {
    starts,
    limit: challenge.limits.time,
  });
  const proposed = checkDrawing(ruleContext(sheet, design.drawing, kit, starts));
  const findings = settleSeverities(proposed, runs.traces);
  return {
    verdict: verdictOf(challenge, drawing, level, findings, runs.traces, results(challenge, runs, drawing)),
    traces: runs.traces,
  };
}

function results(challenge: Challenge, runs: Runs, drawing: Design['drawing']): GoalResult[] {
  const context = { sheet: challenge.sheet, drawing, robot: challenge.kit.robot };
  return challenge.goals.map((goal) => measureGoal(goal, runs, context));
}

const unmet = (challenge: Challenge): GoalResult[] =>
  challenge.goals.map(({ id }) => ({
    id,
    met: false,
    margin: -1,
    unit: 'count',
    by: 'refused',
    leftToLuck: false,
  }));

function verdictOf(
  challenge: Challenge,
  drawing: Drawing,
  level: Verdict['level'],
  findings: readonly Finding[],
  traces: readonly Trace[],
  goals: readonly GoalResult[],
): Verdict {
  const stopped = findings.some((finding) => finding.severity === 'stops');
  const { par } = challenge;
  const thrift = par === undefined ? undefined : { cost: costOf(drawing), par };
  const points = pointLines(challenge.goals, goals, { stopped, thrift });
  const mustMet = challenge.goals.every((goal, i) => !goal.must || goals[i]!.met);
  return {
    version: 1,
    engine: ENGINE_VERSION,
    level,
    findings: [...findings],
    runs: traces.map(summaryOf),
    goals: [...goals],
    met: mustMet && !stopped,
    points,
    total: totalOf(points),
  };
}

function summaryOf(trace: Trace): RunSummary {
  return {
    start: trace.start,
    probability: trace.probability,
    ending: trace.ending,
    duration: trace.events.at(-1)?.t ?? 0,
    readings: readingsOf(trace),
    traceHash: trace.hash,
  };
}

/** Every mark that was understood, with the place where its action began. */
function readingsOf(trace: Trace): Reading[] {
  const acts = eventsOf(trace, 'act');
  return trace.events.flatMap((event, i) =>
    event.kind === 'read'
      ? [
          readingOf(
            event,
            acts.find((act) => act.read === i),
          ),
        ]
      : [],
  );
}

const readingOf = (event: RunEventOf<'read'>, act: RunEventOf<'act'> | undefined): Reading => ({
  t: event.t,
  word: event.word,
  ...(event.mark === undefined ? {} : { mark: event.mark }),
  along: event.along,
  ...(event.action === undefined ? {} : { action: event.action }),
  ...(act ? { acted: { t: act.t, x: act.x, y: act.y } } : {}),
});
