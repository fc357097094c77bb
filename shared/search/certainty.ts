import type { Challenge } from '../documents/challenge.ts';
import { EMPTY_DESIGN, EMPTY_DRAWING } from '../documents/design.ts';
import type { Gate } from '../documents/sheet.ts';
import type { Trace } from '../documents/trace.ts';
import type { Finding } from '../documents/verdict.ts';
import { distance } from '../geometry/exact-math.ts';
import { distanceToSegment, signedDistance } from '../geometry/polygon.ts';
import type { Mm, PaperPoint } from '../geometry/units.ts';
import { judge } from '../judge/judge.ts';
import { plainFindings, ruleContext } from '../rules/rules.ts';
import { RUN_RULES } from '../run/model.ts';
import { areasIn } from './formula-kinds.ts';
import type { MarksProblem } from './marks-problem.ts';
import { railRuns } from './rail-run.ts';

/** What the drawing rules would say of the given lines and marks if a team had drawn them, in boxes or not. */
export function findingsOnGiven({ sheet: { boxes: _, ...sheet }, kit, starts }: Challenge): Finding[] {
  return plainFindings(ruleContext({ ...sheet, given: EMPTY_DRAWING }, sheet.given, kit, starts));
}

/**
 * Whether the graph of the given lines foretells a robot well enough to prove anything: no drawing rule says
 * that a robot may lose them or come from one to another, no place is only grazed, and the robot goes over
 * the bare lines as the search does.
 */
export const isForetold = (problem: MarksProblem): boolean =>
  findingsOnGiven(problem.challenge).every(({ severity }) => severity === 'untidy') &&
  !grazesPlace(problem) &&
  goesAsOnRails(problem);

/** Rails have no width, and a robot halts up to 2 mm before or behind a loose end, by its pace. */
const GRAZE: Mm = 3;

/** Whether lines go just so far into a berth, an area or a gate, or just not, that the pace may decide. */
function grazesPlace({ challenge: { sheet }, map, track, must }: MarksProblem): boolean {
  const wanted = new Set(must.flatMap(({ formula }) => areasIn(formula)));
  const areas = sheet.areas.filter(({ id }) => wanted.has(id));
  const points = map.rails.flatMap(({ xs, ys }) => Array.from(xs, (x, i) => ({ x, y: ys[i]! })));
  const ends = track.nodes.filter(({ arms }) => arms.length === 1).map(({ at }) => at);
  const isGrazed = (depth: (p: PaperPoint) => Mm): boolean =>
    Math.abs(points.reduce((least, p) => Math.min(least, depth(p)), Number.POSITIVE_INFINITY)) <= GRAZE;
  const gateIsGrazed = ({ id, a, b }: Gate): boolean => {
    const isNear = (p: PaperPoint): boolean => distanceToSegment(p, a, b) <= GRAZE;
    const isCrossed = map.rails.some(({ gates }) => gates.some(({ gate }) => gate === id));
    const passesPost = points.some((p) => distance(p, a) <= GRAZE || distance(p, b) <= GRAZE);
    return passesPost || ends.some(isNear) || (!isCrossed && points.some(isNear));
  };
  const berths = [sheet.start, ...(sheet.finish ? [sheet.finish] : [])];
  return (
    berths.some(({ at, r }) => isGrazed((p) => distance(p, at) - r)) ||
    areas.some(({ polygon }) => isGrazed((p) => signedDistance(polygon, p))) ||
    sheet.gates.some(gateIsGrazed)
  );
}

function goesAsOnRails({ challenge, map, given }: MarksProblem): boolean {
  const driven = judge(challenge, EMPTY_DESIGN, 'live').traces;
  const { runs, tooMany } = railRuns(map, given, challenge.starts);
  if (tooMany || driven.length >= RUN_RULES.mostIdealRuns) return true;
  return (
    runs.length === driven.length &&
    runs.every(({ trace }, i) => {
      const [rails, robot] = [routeOf(trace), routeOf(driven[i]!)];
      // Where a ride went round until its time was up the search may have left it before.
      return trace.ending === 'time-up'
        ? rails.every((step, k) => step === robot[k])
        : rails.join() === robot.join();
    })
  );
}

/** Where a run went, as far as goals see it. */
const routeOf = ({ events }: Trace): string[] =>
  events.flatMap((event) => {
    if (event.kind === 'gate') return [event.gate];
    if (event.kind === 'junction') return [event.took];
    return event.kind === 'finish' ? ['finish'] : [];
  });
