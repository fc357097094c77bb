import type { Formula } from '../documents/formula.ts';
import type { Impossibility } from '../documents/par.ts';
import type { Texts } from '../documents/values.ts';
import type { GoalResult } from '../documents/verdict.ts';
import { signedDistance } from '../geometry/polygon.ts';
import type { StartBerth } from '../run/world.ts';
import { twin } from '../track/track.ts';
import type { MarksProblem } from './marks-problem.ts';
import { conjuncts, kindNeeded } from './needs.ts';
import type { Rail } from './rails.ts';

/** What the graph alone rules out, whatever the marks. None means that a search is worth its while. */
export function graphProblems(problem: MarksProblem): Impossibility[] {
  const { challenge, map } = problem;
  const unstarted = challenge.starts.filter((start) => map.starts[start]?.kind !== 'on');
  if (unstarted.length > 0) return unstarted.map((berth) => ({ code: 'no-start', berth }));
  return [...actionsMissing(problem), ...placesOutOfReach(problem), ...boxesMissed(problem)];
}

/** Whether marks go into boxes, and not even the smallest fits into one on a line that a robot comes to. */
function boxesMissed(problem: MarksProblem): Impossibility[] {
  const { challenge, map } = problem;
  if (!challenge.sheet.boxes) return [];
  const { least, shortest } = challenge.kit.rules.bands;
  const length = least * shortest;
  const takesMark = ({ edge: { line, low, high } }: Rail): boolean =>
    map.places(line, length).some((way) => way + length > low && way < high);
  const some = challenge.starts.some((start) => reached(problem, start).some(takesMark));
  return some ? [] : [{ code: 'no-box' }];
}

function actionsMissing({ challenge, must }: MarksProblem): Impossibility[] {
  const known = new Set(challenge.kit.chart.map(({ action }) => action.kind));
  return must.flatMap((goal) =>
    conjuncts(goal.formula).flatMap((wish): Impossibility[] => {
      const action = kindNeeded(wish);
      return action && !known.has(action) ? [{ code: 'action-missing', goal: goal.id, action }] : [];
    }),
  );
}

function placesOutOfReach(problem: MarksProblem): Impossibility[] {
  const { challenge, must } = problem;
  return challenge.starts.flatMap((start) => {
    const rails = reached(problem, start);
    const goals = must.filter((goal) => goal.start === undefined || goal.start === start);
    return goals.flatMap((goal) =>
      conjuncts(goal.formula).flatMap((wish): Impossibility[] => {
        const place = missedPlace(problem, wish, start, rails);
        return place === undefined ? [] : [{ code: 'out-of-reach', goal: goal.id, place }];
      }),
    );
  });
}

/** Rails that a robot can come to, whatever it decides and wherever it turns back. */
function reached({ map }: MarksProblem, start: StartBerth): Rail[] {
  const from = map.starts[start];
  const seen = new Set<number>();
  const open = from?.kind === 'on' ? [from.edge] : [];
  for (let index = open.pop(); index !== undefined; index = open.pop()) {
    if (seen.has(index)) continue;
    seen.add(index);
    open.push(twin(index), ...map.rails[index]!.exits.map((exit) => exit.rail));
  }
  return [...seen].map((index) => map.rails[index]!);
}

/** The name of the first place that a wish needs and no rail comes to. */
function missedPlace(
  { challenge }: MarksProblem,
  wish: Formula,
  start: StartBerth,
  rails: readonly Rail[],
): Texts | undefined {
  const { sheet } = challenge;
  switch (wish.kind) {
    case 'finish':
    case 'time': {
      const aim = start === 'start' ? 'finish' : 'start';
      const berth = aim === 'finish' ? sheet.finish : sheet.start;
      return rails.some((rail) => rail.berths[aim].length > 0) ? undefined : (berth?.name ?? { en: aim });
    }
    case 'gates': {
      const missed = wish.gates.find((id) => !rails.some((rail) => rail.gates.some((g) => g.gate === id)));
      return sheet.gates.find(({ id }) => id === missed)?.name;
    }
    case 'park':
    case 'act-in': {
      const area = sheet.areas.find(({ id }) => id === wish.area);
      return area && !rails.some((rail) => comesInto(rail, area.polygon)) ? area.name : undefined;
    }
    default:
      return undefined;
  }
}

const comesInto = ({ xs, ys }: Rail, polygon: Parameters<typeof signedDistance>[0]): boolean =>
  xs.some((x, i) => signedDistance(polygon, { x, y: ys[i]! }) <= 0);

/** What a search over everything has found: goals that nothing meets, or else that they clash. */
export function searchProblems(
  { must }: MarksProblem,
  best: ReadonlyMap<string, GoalResult>,
  marks: number,
): Impossibility[] {
  const never = must.flatMap((goal): Impossibility[] => {
    const result = best.get(goal.id);
    if (!result || result.met) return [];
    return [{ code: 'goal-never-met', goal: goal.id, marks, margin: result.margin, unit: result.unit }];
  });
  if (never.length > 0) return never;
  return [{ code: 'goals-clash', goals: must.map(({ id }) => id), marks }];
}
