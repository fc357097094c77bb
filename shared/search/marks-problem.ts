import type { Challenge, Goal } from '../documents/challenge.ts';
import { type Drawing, EMPTY_DRAWING, type Mark } from '../documents/design.ts';
import { type Formula, isPredicate } from '../documents/formula.ts';
import { canonicalDrawing } from '../track/canonical.ts';
import { buildTrack } from '../track/graph.ts';
import { layOut } from '../track/layout.ts';
import { startOn } from '../track/start.ts';
import type { Track } from '../track/track.ts';
import { kindsIn } from './formula-kinds.ts';
import { markPlaces } from './mark-places.ts';
import type { PlacedMark } from './rail-marks.ts';
import { railsOf } from './rails.ts';
import type { RailMap } from './ride.ts';

/** What is given and what is asked, worked out once for a search over marks. */
export interface MarksProblem {
  readonly challenge: Challenge;
  readonly track: Track;
  readonly map: RailMap;
  /** Goals that an entry has to meet. */
  readonly must: readonly Goal[];
  /** Marks that stand on the sheet already. */
  readonly given: readonly PlacedMark[];
}

/** Whether the lines are fixed and marks alone are the team's. */
export const isAboutMarks = ({ play, sheet, begin }: Challenge): boolean =>
  sheet.given.lines.length > 0 &&
  (play === 'fill-in' || (play === 'mend' && begin?.drawing.lines.length === 0));

export function marksProblem(challenge: Challenge): MarksProblem {
  const { sheet, kit, goals, limits } = challenge;
  const layout = layOut(sheet, canonicalDrawing(EMPTY_DRAWING, sheet.given));
  const track = buildTrack(layout, kit);
  const must = goals.filter((goal) => goal.must);
  const starts = {
    start: startOn(track, sheet.start, kit),
    ...(sheet.finish ? { finish: startOn(track, sheet.finish, kit) } : {}),
  };
  const sampled = must.some((goal) => !isPlain(goal.formula));
  const cutsLoops = !must.some((goal) => isNumeric(goal.formula));
  const map = {
    rails: railsOf(track, sheet, kit),
    sheet,
    kit,
    starts,
    limit: limits.time,
    sampled,
    cutsLoops,
    places: markPlaces(layout, sheet.boxes),
  };
  const lines = new Map(layout.lines.map((line, i) => [line.id, i]));
  const given = layout.marks.map(({ line, from, to, word }) => ({ line: lines.get(line)!, from, to, word }));
  return { challenge, track, map, must, given };
}

const NUMERIC = ['stretches', 'pace-at-end', 'time', 'way', 'lasting', 'always', 'eventually', 'until'];

/** Whether way, pace or time decide in a formula, not only where the robot goes and what it does there. */
export const isNumeric = (formula: Formula): boolean =>
  kindsIn(formula).some((kind) => NUMERIC.includes(kind));

/** Whether a formula speaks of a whole run only, and of no moment in it. */
function isPlain(formula: Formula): boolean {
  if (isPredicate(formula)) return true;
  if (formula.kind === 'not') return isPlain(formula.of);
  return (formula.kind === 'and' || formula.kind === 'or') && formula.of.every(isPlain);
}

/** A drawing of marks alone, each as the tray makes it: equal bands edge to edge. */
export function drawingOf({ challenge, track }: MarksProblem, marks: readonly PlacedMark[]): Drawing {
  const { bandUnit } = challenge.kit.robot;
  const taken = new Set(challenge.sheet.given.marks.map(({ id }) => id));
  let number = 0;
  const nextId = (): string => {
    do number++;
    while (taken.has(`mark-${number}`));
    return `mark-${number}`;
  };
  return {
    lines: [],
    marks: marks.map(
      ({ line, from, word }): Mark => ({
        id: nextId(),
        line: track.lines[line]!.line.id,
        at: from,
        bands: [...word].map((ink) => ({ ink, length: bandUnit, gap: 0 })),
      }),
    ),
  };
}
