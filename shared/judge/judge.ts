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
import { openJunction } from '../rules/open-junction.ts';
import { checkDrawing, mendedDrawing, plainFindings, ruleContext } from '../rules/rules.ts';
import { idealRuns } from '../run/ideal-runs.ts';
import { RUN_RULES } from '../run/model.ts';
import { SAME_LIGHT } from '../run/world.ts';
import { type OtherRobot, runsOf } from './other-robot.ts';
import { type Outlook, outlookOf } from './outlook.ts';
import { refusalOf } from './refusal.ts';
import { type SceneMaker, sceneOf, scenesInTurn } from './scene.ts';
import { settleSeverities } from './severity.ts';

export interface Judged {
  readonly verdict: Verdict;
  /** Beside `verdict.runs`, in the same order. */
  readonly traces: readonly Trace[];
  /** Why the design was not driven: the verdict then has neither findings nor runs, and no goal is met. */
  readonly refusal?: DesignRefusal;
}

/** What a judge that works step by step has just done; `robot` once for each disturbed robot. */
export type JudgeStep = 'ink' | 'runs' | 'rules' | 'odds' | 'robot';

/**
 * The front door of the engine: what would happen, what is wrong, which goals are met and what that is
 * worth; for an entry also its odds, its steadiness and mended designs. Pure and exact: the same challenge and design give
 * the same bits everywhere. A design that does not suit its sheet comes back as a refusal, and so does one on a
 * challenge with a start, a goal or a robot that nothing can be driven for; whether a challenge makes sense
 * beyond that is asked of `checkChallenge` where it comes in. A scene that is known already need not be set anew;
 * `robot` drives in the place of the undisturbed one.
 *
 * Budget of a typical A4 design on one core: live 8 ms, after a small change 4 ms; entry 40 ms in the middle,
 * 200 ms for the worst of a hundred. `npm run bench -- engine` measures both.
 */
export function judge(
  challenge: Challenge,
  design: Design,
  level: Verdict['level'],
  scenes: SceneMaker = sceneOf,
  robot: OtherRobot | null = null,
): Judged {
  const steps = judging(challenge, design, level, scenes, robot);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

/**
 * The same at level live, for one drawing after another: lines, meetings and ink that did not change since
 * the last one are taken over from it. The verdicts are the same, bit for bit. It belongs to one caller.
 */
export function liveJudge(): (challenge: Challenge, design: Design) => Judged {
  const scenes = scenesInTurn();
  return (challenge, design) => judge(challenge, design, 'live', scenes);
}

/**
 * The design in which one finding of it is mended; null where no quick remedy is known. Verdicts of level live
 * come without: trying mended designs takes longer than all else, and who draws looks at one finding at a time.
 */
export function mendedDesign(challenge: Challenge, design: Design, finding: Finding['id']): Design | null {
  if (refusalOf(challenge, design)) return null;
  const { sheet, kit, starts, limits } = challenge;
  const drawing = mendedDrawing(ruleContext(sheet, design.drawing, kit, starts, limits), finding);
  return drawing && { version: 1, drawing };
}

/** The same step by step, for those who may have to stop: nothing is lost by not asking for the next step. */
export function* judging(
  challenge: Challenge,
  design: Design,
  level: Verdict['level'],
  scenes: SceneMaker = sceneOf,
  robot: OtherRobot | null = null,
): Generator<JudgeStep, Judged> {
  const refusal = refusalOf(challenge, design);
  if (refusal) return refused(challenge, design, level, refusal);
  const { sheet, kit, starts, limits, light: ambient = SAME_LIGHT } = challenge;
  const { drawing, world, track } = scenes(challenge, design);
  yield 'ink';
  const how = { starts, limit: limits.time, ambient };
  const runs = robot ? runsOf(robot, world, how) : idealRuns(world, how);
  yield 'runs';
  // What is found wrong is said of the lines that were drawn.
  const context = { sheet, drawing: design.drawing, track, kit, starts, limits };
  const proposed = level === 'entry' ? checkDrawing(context) : plainFindings(context);
  yield 'rules';
  const outlook = level === 'entry' ? yield* outlookOf(challenge, world, track, runs) : {};
  const open = runs.firstOpen && openJunction(track, runs.firstOpen, RUN_RULES.mostIdealRuns);
  const findings = [...settleSeverities(proposed, runs.traces, outlook.steadiness), ...(open ? [open] : [])];
  const goals = results(challenge, runs, drawing, outlook);
  return {
    verdict: verdictOf({ challenge, drawing, level, findings, traces: runs.traces, goals, outlook }),
    traces: runs.traces,
  };
}

function refused(
  challenge: Challenge,
  { drawing }: Design,
  level: Verdict['level'],
  refusal: DesignRefusal,
): Judged {
  const goals = unmet(challenge);
  const verdict = verdictOf({ challenge, drawing, level, findings: [], traces: [], goals, outlook: {} });
  // Also where nothing must be met.
  return { verdict: { ...verdict, met: false }, traces: [], refusal };
}

function results(
  challenge: Challenge,
  runs: Runs,
  drawing: Design['drawing'],
  { steadiness }: Outlook,
): GoalResult[] {
  const context = { sheet: challenge.sheet, drawing, robot: challenge.kit.robot, steadiness };
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

interface Parts {
  readonly challenge: Challenge;
  readonly drawing: Drawing;
  readonly level: Verdict['level'];
  readonly findings: readonly Finding[];
  readonly traces: readonly Trace[];
  readonly goals: readonly GoalResult[];
  readonly outlook: Outlook;
}

function verdictOf({ challenge, drawing, level, findings, traces, goals, outlook }: Parts): Verdict {
  const stopped = findings.some((finding) => finding.severity === 'stops');
  const { par } = challenge;
  const thrift = par === undefined ? undefined : { cost: costOf(drawing), par };
  // In calm weather nearly every sound drawing is as steady as can be: then it gives no points.
  const steadiness = outlook.steadiness?.weather === 'calm' ? undefined : outlook.steadiness;
  const points = pointLines(challenge.goals, goals, { stopped, thrift, steadiness });
  const mustMet = challenge.goals.every((goal, i) => !goal.must || goals[i]!.met || goals[i]!.open);
  // Where answers are asked for there is nothing that a drawing could meet.
  const hasGoals = challenge.goals.length > 0;
  return {
    version: 1,
    engine: ENGINE_VERSION,
    level,
    findings: [...findings],
    runs: traces.map(summaryOf),
    ...outlook,
    goals: [...goals],
    met: hasGoals && mustMet && !stopped,
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
