import type { Seat } from '../../shared/room/events.ts';
import type { RoomState } from '../../shared/room/state.ts';
import type { LatestDown, LatestUp } from '../../shared/wire/protocol.ts';
import { type Checked, checkAnswers, checkDesign } from '../../shared/wire/schemas.ts';

const refused = (code: 'not-for-this-seat' | 'other-round' | 'team-removed'): Checked<never> => ({
  ok: false,
  refusal: { code },
});

/** A lossy value as the others get it: with its team or the server's time, and checked. */
export function passedOn(value: LatestUp, seat: Seat, state: RoomState, now: number): Checked<LatestDown> {
  if (value.kind === 'stage-clock') {
    if (seat.role !== 'desk') return refused('not-for-this-seat');
    return { ok: true, value: { kind: 'stage-clock', clock: { ...value.clock, since: now } } };
  }
  if (seat.role !== 'team') return refused('not-for-this-seat');
  const { team } = seat;
  if (!state.teams.some((known) => known.id === team)) return refused('team-removed');
  if (value.kind === 'doing') return { ok: true, value: { kind: 'doing', team, doing: value.doing } };
  if (value.round !== state.rounds.length - 1) return refused('other-round');
  const { round } = value;
  // The forms are strict: what has passed one is the file form already, and nothing else.
  if (value.answers !== undefined) {
    const answers = checkAnswers(value.answers);
    if (!answers.ok) return answers;
    return { ok: true, value: { kind: 'draft', team, round, answers: value.answers } };
  }
  const design = checkDesign(value.design);
  if (!design.ok) return design;
  const { variant } = value;
  const onSheet = variant === undefined ? {} : { variant };
  return { ok: true, value: { kind: 'draft', team, round, design: value.design, ...onSheet } };
}
