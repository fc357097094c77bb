import { type Action, actionOf, PACES } from '../documents/kit.ts';
import { TOLERANCE } from '../geometry/tolerances.ts';
import type { Mm } from '../geometry/units.ts';
import { type Barrier, plainAfter, plainBefore, type Room, wayToJunction } from '../track/room.ts';
import type { EdgeMark } from '../track/track.ts';
import type { RuleView } from './context.ts';
import { isMark, type Meeting } from './marks.ts';

/** What ends the plain line beside a mark; `start` is a robot's own berth. */
export type Until = Barrier | 'start';

/** Plain line beside a mark as found, and as the kit wants it. */
export interface Need {
  readonly until: Until;
  readonly measured: Mm;
  readonly allowed: Mm;
  readonly other?: EdgeMark;
}

/** Mark and berth, or mark and corner, are each rounded to the file form. */
export const isShort = (need: Need): boolean => need.measured < need.allowed - 2 * TOLERANCE.step;
export const shortfall = (need: Need): Mm => need.allowed - need.measured;

/** Between two marks the larger of the room after the one and before the other is enough. */
export const betweenMarks = ({ kit }: RuleView): Mm => Math.max(kit.rules.beforeMark, kit.rules.afterMark);

/** The room before a mark for a robot that meets it so. */
export function needBefore(view: RuleView, { edge, mark }: Meeting): Need {
  const { kit, track } = view;
  const room = plainBefore(track, edge, mark, kit.rules.straightFrom);
  if (room.until === 'mark') {
    return { ...measuredBy(room), allowed: betweenMarks(view), ...(room.mark && { other: room.mark }) };
  }
  const fromStart = sinceStart(view, edge, mark);
  // Nobody comes from a loose end at which robots stop: there the run begins at the berth.
  const nobody = room.until === 'end' && kit.robot.looseEnd === 'stop';
  if (fromStart !== undefined && (nobody || fromStart < room.length - TOLERANCE.step)) {
    return { until: 'start', measured: Math.max(0, fromStart), allowed: kit.rules.beforeMark };
  }
  const need = { ...measuredBy(room), allowed: kit.rules.beforeMark };
  return nobody ? { ...need, measured: Number.POSITIVE_INFINITY } : need;
}

const measuredBy = (room: Room): Pick<Need, 'until' | 'measured'> => ({
  until: room.until,
  measured: Math.max(0, room.length),
});

/** From the axle of a robot that starts on this edge, the nearest, to the mark. */
function sinceStart({ departures }: RuleView, edge: number, mark: EdgeMark): Mm | undefined {
  const ways = departures.flatMap(({ start }) =>
    start.kind === 'on' && start.edge === edge && start.bar < mark.to - TOLERANCE.step
      ? [mark.from - start.axle]
      : [],
  );
  return ways.length === 0 ? undefined : Math.min(...ways);
}

/** The rooms that a mark wants after it: for the reading, and for its action to be ready in time. */
export function needsAfter(view: RuleView, meeting: Meeting): Need[] {
  const { kit, track } = view;
  const { edge, mark } = meeting;
  const action = actionOf(kit, mark.word);
  const ready = kit.rules.actionReady[PACES[meeting.pace]!];
  // A mark has no straight line to keep after it, only plain line: no radius is a curve here.
  const room = plainAfter(track, edge, mark, 0);
  const needs: Need[] = [];
  if (room.until !== 'mark') {
    const acts = actsBefore(action, room.until);
    needs.push({ ...measuredBy(room), allowed: acts ? ready : kit.rules.afterMark });
  }
  if (action?.kind === 'choose' && room.until !== 'junction') {
    const way = wayToJunction(track, edge, mark);
    if (way.until === 'junction') needs.push({ ...measuredBy(way), allowed: ready });
  }
  return needs;
}

/**
 * Whether the action must be ready before a robot comes to such a place: a choice at its junction; what
 * happens at a place of its own (turning, parking, waiting) wherever the stretch ends. A pace may change
 * late, a signal may sound late.
 */
function actsBefore(action: Action | undefined, until: Barrier): boolean {
  if (action?.kind === 'choose') return until === 'junction';
  return action?.kind === 'turn-back' || action?.kind === 'park' || action?.kind === 'wait';
}

/** Marks that are bands in a row and can be met. */
export const metMarks = (meetings: readonly Meeting[]): Meeting[] =>
  meetings.filter((meeting) => isMark(meeting.mark.mark));
