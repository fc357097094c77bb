import { isBoardFact } from './apply-board.ts';
import { FIRST_BOARD } from './board.ts';
import { coachingOf } from './coaching.ts';
import { conditionsTo } from './conditions.ts';
import type { RoomEvent, RoomFact, Seat } from './events.ts';
import { NO_PLAN } from './plan.ts';
import { boardFactTo, boardOf } from './seen-board.ts';
import type { DocumentId, Entry, RoomCheck, RoomState, Team, TeamId } from './state.ts';

/**
 * What a seat may know. Desk and server know everything. A team knows its own designs and verdicts, and a design of
 * others from the moment it is staged. A board knows a design once it is staged, and a verdict once that counts for
 * the wall: its entry was staged, the desk showed the standings, or the lesson closes. What else the desk puts on
 * the board, drawings of the gallery and the fleet among it, the board alone knows. How a team is helped, in which
 * weather its robots drive, on which sheet it draws, what it was told, what it foretold, what it answered in a
 * closing check and what it had mended is for the desk and itself, but that the sheet of an entry is told with its
 * drawing; its wish about the wall, and that an entry counts no longer, are for the board too, as is the log of
 * calibrations. What is planned is the desk's. What is right in a closing check is told to all when it ends. What
 * real robots did is for the desk alone.
 */

const knowsAll = (seat: Seat) => seat.role === 'desk' || seat.role === 'server';
const owns = (seat: Seat, team: TeamId | undefined) => seat.role === 'team' && seat.team === team;
const ownerOf = (state: RoomState, id: string) => state.entries.find((e) => e.id === id)?.team;

/** The facts of which some seats get less; all others are for everybody. */
function seenFact(seat: Seat, fact: RoomFact, state: RoomState): RoomFact | null {
  if (knowsAll(seat)) return fact;
  if (isBoardFact(fact)) return seat.role === 'board' ? boardFactTo(fact, state) : null;
  switch (fact.kind) {
    case 'handed-in':
      return owns(seat, fact.team) ? fact : { ...fact, design: null, variant: undefined };
    case 'judged':
      if (seat.role === 'board') return fact.counted ? fact : null;
      return owns(seat, ownerOf(state, fact.entry)) ? { ...fact, counted: false } : null;
    case 'not-judged':
    case 'judging-again':
      return owns(seat, ownerOf(state, fact.entry)) ? fact : null;
    case 'help-set':
    case 'weather-set':
      return fact.team === null || owns(seat, fact.team) ? fact : null;
    case 'tried':
    case 'explained':
    case 'mended':
    case 'note-sent':
    case 'note-put-away':
    case 'note-taken-back':
    case 'gentler-set':
    case 'sheet-set':
      return owns(seat, fact.team) ? fact : null;
    case 'entry-returned':
    case 'entry-accepted':
      return seat.role === 'board' || owns(seat, ownerOf(state, fact.entry)) ? fact : null;
    case 'queue-changed':
    case 'continued':
    case 'trial-noted':
    case 'trial-withdrawn':
      return null;
    case 'robot-calibrated':
    case 'calibration-taken-back':
    case 'light-changed':
    case 'light-kept':
      return seat.role === 'board' ? fact : null;
    case 'wall-wished':
      return seat.role === 'board' || owns(seat, fact.team) ? fact : null;
    case 'verdicts-told':
      return seat.role === 'board' ? fact : null;
    case 'check-started':
    case 'check-resumed':
      return { ...fact, key: null };
    case 'check-answered':
      return owns(seat, fact.team) ? fact : null;
    case 'check-shown':
      return seat.role === 'board' ? fact : { ...fact, result: null };
    case 'staged': {
      const variants = fact.entries.map((id) => state.entries.find((e) => e.id === id)?.variant ?? null);
      return { ...fact, verdicts: seat.role === 'board' ? fact.verdicts : [], variants };
    }
    case 'standings-shown':
      return seat.role === 'board' ? fact : { ...fact, verdicts: [] };
    default:
      return fact;
  }
}

/** The event as `seat` receives it. `state` is any state of the room at or after the event. */
export function seen(seat: Seat, event: RoomEvent, state: RoomState): RoomEvent {
  if (event.fact === null) return event;
  return { ...event, fact: seenFact(seat, event.fact, state) };
}

function seenEntry(seat: Seat, entry: Entry): Entry {
  const own = owns(seat, entry.team);
  const onWall = seat.role === 'board' && entry.counted;
  return {
    ...entry,
    design: own || entry.shown ? entry.design : null,
    verdict: own || onWall ? entry.verdict : null,
    counted: onWall,
    unjudged: own && entry.unjudged,
    mended: own && entry.mended,
    gentler: own && entry.gentler,
    weather: own ? entry.weather : null,
    variant: own || entry.shown ? entry.variant : null,
    returned: (own || seat.role === 'board') && entry.returned,
  };
}

function seenTeam(seat: Seat, team: Team): Team {
  if (owns(seat, team.id)) return team;
  return { ...team, help: null, mended: [], wall: seat.role === 'board' ? team.wall : null };
}

const seenCheck = (seat: Seat, check: RoomCheck): RoomCheck => ({
  ...check,
  key: check.ended ? check.key : null,
  answers: check.answers.filter(({ team }) => owns(seat, team)),
  shown: seat.role === 'board' ? check.shown : null,
});

/** The whole state as `seat` may know it: the same as the fold of all events that it has seen. */
export function view(state: RoomState, seat: Seat): RoomState {
  if (knowsAll(seat)) return state;
  return {
    ...state,
    teams: state.teams.map((team) => seenTeam(seat, team)),
    removed: state.removed.map((team) => seenTeam(seat, team)),
    calibrations: seat.role === 'board' ? state.calibrations : [],
    tries: state.tries.filter(({ team }) => owns(seat, team)),
    entries: state.entries.map((entry) => seenEntry(seat, entry)),
    board: seat.role === 'board' ? boardOf(state) : FIRST_BOARD,
    checks: state.checks.map((check) => seenCheck(seat, check)),
    coaching: coachingOf(state.coaching, (team) => owns(seat, team)),
    conditions: conditionsTo(state.conditions, (team) => owns(seat, team)),
    plan: NO_PLAN,
    driving: { ...state.driving, trials: [] },
  };
}

/** The lines of a gentler form are for those who are given them. */
const mayReadLines = ({ coaching }: RoomState, seat: Seat): boolean =>
  knowsAll(seat) || (seat.role === 'team' && coaching.gentler.includes(seat.team));

/**
 * Whether `seat` may read a document of the room. A verdict tells of the drawing (places, mended
 * copies), so a board reads it only of an entry that has been staged; it reads a closing check when that has ended.
 */
export function mayRead(state: RoomState, seat: Seat, id: DocumentId): boolean {
  const own = view(state, seat);
  const { gallery, fleet, forecast } = own.board;
  if ([...gallery, fleet, forecast?.hung].some((hung) => hung?.design === id)) return true;
  if (own.kit === id || own.rounds.some((round) => round.challenge === id)) return true;
  if (own.checks.some((check) => check.document === id && (seat.role !== 'board' || check.ended)))
    return true;
  if (mayReadLines(own, seat) && own.rounds.some(({ gentler }) => gentler === id)) return true;
  // A team may have handed in just the lines that it was given: that is the same document.
  return own.entries.some(
    (e) => e.design === id || (e.verdict?.document === id && (seat.role !== 'board' || e.shown)),
  );
}
