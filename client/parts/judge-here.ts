import type { Challenge } from '../../shared/documents/challenge.ts';
import type { Design } from '../../shared/documents/design.ts';
import type { Finding } from '../../shared/documents/verdict.ts';
import { type Certain, certainFrom } from '../../shared/goals/certain.ts';
import { dependsOnRuns } from '../../shared/goals/evaluate.ts';
import { measureGoal } from '../../shared/goals/measure.ts';
import type { GoalContext } from '../../shared/goals/predicate.ts';
import { type Judged, judge, liveJudge, mendedDesign } from '../../shared/judge/judge.ts';
import type { OtherRobot } from '../../shared/judge/other-robot.ts';
import { refusalOf } from '../../shared/judge/refusal.ts';
import { sceneOf } from '../../shared/judge/scene.ts';
import type { BarReadings } from '../../shared/run/bar.ts';
import { barReadings } from '../../shared/run/bar-readings.ts';
import { SAME_LIGHT } from '../../shared/run/world.ts';
import { canonicalDrawing } from '../../shared/track/canonical.ts';

/** In how many of the ways that count for a goal it is missed. */
export interface MissedWays {
  readonly missed: number;
  readonly of: number;
}

/** By the goal's id; only for goals that are missed although the robot can go several ways. */
export type WaysOfGoals = Readonly<Record<string, MissedWays>>;

/** By the goal's id: beside the traces when each goal becomes certain in them; null where the end tells. */
export type CertainGoals = Readonly<Record<string, readonly (Certain | null)[]>>;

/** What the judge says, and for missed goals in how many ways: the verdict keeps the worst one only. */
export interface JudgedHere extends Judged {
  readonly ways: WaysOfGoals;
  /** Only for a stage. */
  readonly certain?: CertainGoals;
  /** What the sensors read, beside the traces; only for a stage, and of the undisturbed robot. */
  readonly bars?: readonly BarReadings[];
}

/** What a stage asks for beside the verdict: its readings, or the run of another robot. */
export interface Staging {
  readonly robot: OtherRobot | null;
}

/**
 * What pages ask the engine: the verdict on a design, its findings alone, or the design in which one finding of it
 * is mended.
 */
export interface Asked {
  readonly design: Design;
  readonly mend: Finding['id'] | null;
  readonly staging?: Staging | null;
  /** Only what is found wrong: of many drawings, traces and ways would be most of what crosses to the page. */
  readonly findingsOnly?: boolean;
  /** Whose drawings follow one another, each mostly like the last: what stayed is taken over from that one. */
  readonly series?: string;
}
export type Outcome =
  | { readonly judged: JudgedHere }
  | { readonly mended: Design | null }
  | { readonly findings: readonly Finding[] };

export type JudgeHere = (challenge: Challenge, asked: Asked) => Outcome;

/** The engine as the pages use it, in the worker or in the page, for one design after another of each series. */
export function startJudgeHere(): JudgeHere {
  const lives = new Map<string, ReturnType<typeof liveJudge>>();
  const liveOf = (series: string) => {
    const live = lives.get(series) ?? liveJudge();
    lives.set(series, live);
    return live;
  };
  return (challenge, { design, mend, staging, findingsOnly, series = '' }) => {
    if (mend !== null) return { mended: mendedDesign(challenge, design, mend) };
    if (staging) return { judged: stagedHere(challenge, design, staging) };
    const judged = liveOf(series)(challenge, design);
    if (findingsOnly) return { findings: judged.verdict.findings };
    return { judged: { ...judged, ways: waysOf(challenge, design, judged) } };
  };
}

/** A run as a stage shows it. */
function stagedHere(challenge: Challenge, design: Design, { robot }: Staging): JudgedHere {
  const scene = robot || refusalOf(challenge, design) ? null : sceneOf(challenge, design);
  const judged = judge(challenge, design, 'live', scene ? () => scene : sceneOf, robot);
  const shown = {
    ...judged,
    ways: waysOf(challenge, design, judged),
    certain: certainGoals(challenge, design, judged),
  };
  if (!scene) return shown;
  const { light = SAME_LIGHT } = challenge;
  return { ...shown, bars: judged.traces.map((trace) => barReadings(scene.world, trace, light)) };
}

function certainGoals(challenge: Challenge, design: Design, { traces }: Judged): CertainGoals {
  const context = contextOf(challenge, design);
  const certain = challenge.goals.map(
    ({ id, formula }) => [id, traces.map((trace) => certainFrom(formula, trace, context))] as const,
  );
  return Object.fromEntries(certain);
}

const contextOf = ({ sheet, kit }: Challenge, design: Design): GoalContext => ({
  sheet,
  drawing: canonicalDrawing(design.drawing, sheet.given),
  robot: kit.robot,
});

function waysOf(challenge: Challenge, design: Design, { verdict, traces }: Judged): WaysOfGoals {
  const context = { ...contextOf(challenge, design), steadiness: verdict.steadiness };
  const ways = challenge.goals.flatMap((goal) => {
    const result = verdict.goals.find(({ id }) => id === goal.id);
    const counted = traces.filter(({ start }) => goal.start === undefined || start === goal.start);
    const unclear = !result || result.met || result.leftToLuck || result.open;
    if (unclear || counted.length < 2 || !dependsOnRuns(goal.formula)) return [];
    const missed = counted.filter(
      (trace) => !measureGoal(goal, { traces: [trace], tooMany: false }, context).met,
    );
    return [[goal.id, { missed: missed.length, of: counted.length }] as const];
  });
  return Object.fromEntries(ways);
}
